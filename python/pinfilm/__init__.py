"""Conveyor chain joints: what they go through, which oil they need, whether they get it, what that is worth."""

from __future__ import annotations

from . import errors
from ._core import (
    Chain,
    Circuit,
    Costs,
    Drip,
    Drive,
    Duty,
    Fill,
    Friction,
    Joint,
    Line,
    Manual,
    Oil,
    Spray,
    Straight,
    Supply,
    Surface,
    Synchronised,
    Timer,
    Turn,
    Wear,
    version,
)
from .errors import ConvergenceError, InputError, PinfilmError, PinfilmRangeWarning, TableError, UnitError

__version__ = version()

__all__ = [
    "Chain",
    "Circuit",
    "ConvergenceError",
    "Costs",
    "Drip",
    "Drive",
    "Duty",
    "Fill",
    "Friction",
    "InputError",
    "Joint",
    "Line",
    "Manual",
    "Oil",
    "PinfilmError",
    "PinfilmRangeWarning",
    "Spray",
    "Straight",
    "Supply",
    "Surface",
    "Synchronised",
    "TableError",
    "Timer",
    "Turn",
    "UnitError",
    "Wear",
    "errors",
]
