"""Which joints a timer, a counter or a round really reaches, and how long they wait."""

from __future__ import annotations

from ._core import (
    EveryNth,
    LockTime,
    ManualInterval,
    PointsCoverage,
    TimerCoverage,
    every_nth,
    handbook_methods,
    lock_risk,
    lock_time_s,
    manual_interval,
    points_coverage,
    reached_joints,
    three_gaps,
    timer_coverage,
)

__all__ = [
    "EveryNth",
    "LockTime",
    "ManualInterval",
    "PointsCoverage",
    "TimerCoverage",
    "every_nth",
    "handbook_methods",
    "lock_risk",
    "lock_time_s",
    "manual_interval",
    "points_coverage",
    "reached_joints",
    "three_gaps",
    "timer_coverage",
]
