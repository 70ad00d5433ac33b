"""Conveyor chain joints: what they go through, which oil they need, whether they get it, what that is worth."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from . import (
    coverage,
    economics,
    electrics,
    errors,
    examples,
    fill,
    film,
    hydraulics,
    kinematics,
    motor,
    oil,
    tension,
    wear,
)
from ._core import (
    Caution,
    Chain,
    Circuit,
    Comparison,
    Cost,
    Costs,
    Drip,
    Drive,
    DriveState,
    Duty,
    ElongationCurve,
    Evaluation,
    Event,
    Explanation,
    Fill,
    FillState,
    Friction,
    FrictionCurve,
    Joint,
    JointState,
    Kinematics,
    Line,
    LossParts,
    Manual,
    Oil,
    RollerContact,
    RoundLoop,
    Savings,
    ShotRecord,
    Spray,
    Straight,
    Supply,
    SupplyState,
    Surface,
    Synchronised,
    Tension,
    Timer,
    Turn,
    TwoSprocket,
    Warning,
    Wear,
    WearState,
    blank_survey,
    compare,
    evaluate,
    register,
    standards,
    version,
)
from .errors import ConvergenceError, InputError, PinfilmError, PinfilmRangeWarning, TableError, UnitError
from .reporting import report

if TYPE_CHECKING:
    from . import plot

Result = Evaluation

__version__ = version()


def __getattr__(name: str) -> Any:
    """Import what needs matplotlib only when somebody asks for it."""
    if name == "plot":
        from importlib import import_module

        return import_module(".plot", __name__)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


__all__ = [
    "Caution",
    "Chain",
    "Circuit",
    "Comparison",
    "ConvergenceError",
    "Cost",
    "Costs",
    "Drip",
    "Drive",
    "DriveState",
    "Duty",
    "ElongationCurve",
    "Evaluation",
    "Event",
    "Explanation",
    "Fill",
    "FillState",
    "Friction",
    "FrictionCurve",
    "InputError",
    "Joint",
    "JointState",
    "Kinematics",
    "Line",
    "LossParts",
    "Manual",
    "Oil",
    "PinfilmError",
    "PinfilmRangeWarning",
    "Result",
    "RollerContact",
    "RoundLoop",
    "Savings",
    "ShotRecord",
    "Spray",
    "Straight",
    "Supply",
    "SupplyState",
    "Surface",
    "Synchronised",
    "TableError",
    "Tension",
    "Timer",
    "Turn",
    "TwoSprocket",
    "UnitError",
    "Warning",
    "Wear",
    "WearState",
    "blank_survey",
    "compare",
    "coverage",
    "economics",
    "electrics",
    "errors",
    "evaluate",
    "examples",
    "fill",
    "film",
    "hydraulics",
    "kinematics",
    "motor",
    "oil",
    "plot",
    "register",
    "report",
    "standards",
    "tension",
    "wear",
]
