"""Pictures of results on a given matplotlib axes, which every function returns; ``ax=None`` makes new ones.

Labels and units come from the register of quantities. Colours are those of Okabe and Ito 2008, which colour-blind
people can tell apart; line styles, markers and hatches say the same, so that a grey print loses nothing. Needs the
extra ``plot``.

Functions that take results accept one :class:`~pinfilm.Evaluation`, a :class:`~pinfilm.Comparison`, or several
evaluations by name as a dictionary.
"""

from __future__ import annotations

from .evidence import log_with_changes, watch_chart
from .loop import fill_round_loop, temperature_round_loop, tension_round_loop
from .money import cash_flow, payback_distribution, savings
from .oil import stribeck, viscosity_window
from .oiling import joints_reached, waiting_times
from .studies import sweep_map, tornado
from .wear import elongation, pull_shares

__all__ = [
    "cash_flow",
    "elongation",
    "fill_round_loop",
    "joints_reached",
    "log_with_changes",
    "payback_distribution",
    "pull_shares",
    "savings",
    "stribeck",
    "sweep_map",
    "temperature_round_loop",
    "tension_round_loop",
    "tornado",
    "viscosity_window",
    "waiting_times",
    "watch_chart",
]
