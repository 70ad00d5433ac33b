"""Life: case and core, elongation, the lives of a chain and which of them governs."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from . import wear
from .columns import MM, MPA, PCT, YEAR, Columns, at, full

GOVERNS = np.array(["mean", "local", "pin", "bush"])


def excess_over_angle(t: np.ndarray) -> np.ndarray:
    """t − atan t without cancellation."""
    out = t - np.arctan(t)
    small = t <= 0.125
    if small.any():
        x, series = t[small] ** 2, 0.0
        for order in range(9, 0, -1):
            series = 1.0 / (2 * order + 1) - x * series
        out[small] = t[small] * x * series
    return out


def worn_area(depth: Any, radius: Any, clearance: Any) -> Any:
    u = depth / clearance
    return 2.0 * radius * clearance * excess_over_angle(np.sqrt(u * (2.0 + u)))


def worn_depth(area: np.ndarray, radius: Any, clearance: Any) -> np.ndarray:
    """Inverse of the worn area: Newton on t − atan t, for all rows at once."""
    q = area / (2.0 * radius * clearance)
    small = np.cbrt(3.0 * q)
    t = np.minimum(small * (1.0 + 0.2 * small * small), q + 0.5 * np.pi)
    for _ in range(12):
        square = t * t
        step = (excess_over_angle(t) - q) * (1.0 + square) / square
        t = t - step
        if not (np.abs(step) > 1e-12 * t).any():
            break
    square = t * t
    return np.where(q > 0.0, clearance * square / (1.0 + np.sqrt(1.0 + square)), 0.0)


class WornJoint:
    """Wear work ⇄ depth. Pin and bush are of one steel and wear alike: case and core are the only two phases."""

    def __init__(self, c: Columns, hardness_factor: Any) -> None:
        self.pin = full(c.si("chain.pin_diameter_mm", MM), c.count)
        self.bore = c.si("chain.bush_bore_mm", MM)
        self.radius, self.clearance = 0.5 * self.pin, 0.5 * (self.bore - self.pin)
        self.length = c.si("chain.joint_length_mm", MM)
        depth = c.si("chain.case_depth_mm", MM) if c.has("chain.case_depth_mm") else 0.06 * self.pin
        self.case = full(depth, c.count)
        case, core = c.si("chain.case_hardness_mpa", MPA, 7000.0), c.si("chain.core_hardness_mpa", MPA, 3000.0)
        cased = self.case > 0.0
        self.in_core = 2.0 * np.where(cased, c.raw("chain.core_factor", 3.0), 1.0) / core / hardness_factor
        self.in_case = np.where(cased, 2.0 / case / hardness_factor, self.in_core)
        self.area_through = worn_area(2.0 * self.case, self.radius, self.clearance)
        self.work_through = self.length * self.area_through / self.in_case

    def work(self, total: Any) -> Any:
        """Wear work that brings pin and bush together to a depth."""
        area = worn_area(total, self.radius, self.clearance)
        beyond = self.work_through + self.length * (area - self.area_through) / self.in_core
        return np.where(total < 2.0 * self.case, self.length * area / self.in_case, beyond)

    def depth(self, work: Any, rows: Any = slice(None)) -> tuple[Any, Any]:
        """Depth after some wear work, and how fast it grows with it."""
        pick = lambda value: value[rows] if np.ndim(value) else value  # noqa: E731
        radius, clearance, length = pick(self.radius), pick(self.clearance), pick(self.length)
        cased, through, area_through = work < pick(self.work_through), pick(self.work_through), pick(self.area_through)
        compliance = np.where(cased, pick(self.in_case), pick(self.in_core))
        area = np.where(cased, work * compliance / length, area_through + (work - through) * compliance / length)
        total = worn_depth(area, radius, clearance)
        width = 2.0 * radius * np.sqrt(total * (2.0 * clearance + total)) / (clearance + total)
        return total, compliance / (length * width)


def steady_time(time: Any, fade: Any, worth: Any) -> Any:
    return time - worth * np.expm1(-time / fade)


def running_time(steady: np.ndarray, factor: Any, fade: Any, worth: Any) -> np.ndarray:
    """Inverse of the steady time; far beyond running-in it is a difference."""
    time = np.maximum(steady - worth, 0.0)
    for _ in range(60):
        fading = np.expm1(-time / fade)
        step = (steady - (time - worth * fading)) / (1.0 + (factor - 1.0) * (1.0 + fading))
        time = time + step
        if not (step > 1e-14 * time).any():
            break
    return np.where(worth > 0.0, time, steady)


def lives(c: Columns, loop: Rows, settled: Rows, temperatures: tuple[Any, ...], reach: Rows, running: Any) -> Rows:
    """Elongation of a year, the lives in calendar seconds, and which of them governs."""
    of_events, dry = wear.coefficients(c, temperatures, settled.ratio, reach)
    tension = np.maximum(settled.tension, 0.0)
    angles = (loop.angle[0], loop.angle[0], loop.angle[1], loop.angle[1])
    load_angle = np.stack([one * angle for one, angle in zip(tension, angles, strict=True)])
    weight = load_angle.sum(axis=0)
    loaded = weight > 0.0
    safe = np.where(loaded, weight, 1.0)
    reached = np.where(loaded, (load_angle * of_events).sum(axis=0) / safe, of_events.mean(axis=0))
    if len(temperatures) == 1:
        temperature = temperatures[0]
    else:
        warm = np.stack(temperatures)
        temperature = np.where(loaded, (load_angle * warm).sum(axis=0) / safe, warm.mean(axis=0))
    joint = WornJoint(c, np.maximum(1.0 - 4e-4 * (temperature - 20.0), 0.4))
    sliding = 2.0 * (loop.angle[0] + loop.angle[1]) * joint.radius / loop.circuit_time
    work_rate = weight * joint.radius / (3.0 * loop.circuit_time)
    factor, distance = c.si("wear.run_in_factor", 1.0, 3.0), c.si("wear.run_in_distance_m", 1.0, 20.0)
    fade = distance / sliding
    worth = (factor - 1.0) * fade

    never = reach.never
    wet, both = never < 1.0, (never > 0.0) & (never < 1.0)
    # coefficients of the two classes; a class that does not occur has the other's
    first, second = np.where(wet, reached, dry), np.where(never > 0.0, dry, reached)
    worst = np.maximum(first, second)
    most = np.maximum(loop.teeth[0], loop.teeth[1])
    roller = c.si("chain.roller_diameter_mm", MM, np.nan)
    roller = np.where(np.isnan(roller), c.si("chain.bush_diameter_mm", MM), roller)
    tip = (1.25 * loop.pitch - roller) * np.sin(np.pi / most) / loop.pitch
    limit = np.minimum(np.minimum(c.si("chain.elongation_limit_pct", PCT, 3.0), 2.0 / most), tip)
    limit_depth = full(limit * loop.pitch, c.count)
    limit_work = joint.work(limit_depth)

    mean_steady = limit_work / (worst * work_rate)
    rows = np.flatnonzero(both & (first != second) & loaded)
    if rows.size:
        mean_steady[rows] = together(
            joint, rows, limit_depth[rows], limit_work[rows] / work_rate[rows], work_rate[rows],
            ((1.0 - never[rows], first[rows]), (never[rows], second[rows])),
        )  # fmt: skip
    shortest = limit_work / (worst * work_rate)
    wall = 0.5 * ((c.si("chain.bush_diameter_mm", MM) - joint.bore) / 2.0)
    pin_work = joint.work(2.0 * c.si("chain.pin_wear_limit_pct", PCT, 15.0) * joint.pin)
    bush_work = joint.work(full(2.0 * wall, c.count))
    ends = np.stack([
        mean_steady,
        np.where(reach.contiguous, np.minimum(mean_steady, shortest), mean_steady),
        pin_work / (worst * work_rate),
        bush_work / (worst * work_rate),
    ])  # fmt: skip
    # running-in keeps the order of times: only the first end needs its running time
    which = ends.argmin(axis=0)
    life = running_time(ends[which, np.arange(c.count)], factor, fade, worth) / running
    other = c.si("costs.other_life_years", YEAR, 8.0)

    year = steady_time(running * YEAR, fade, worth) if np.any(worth > 0.0) else running * YEAR
    grown = np.zeros(c.count)
    depth_first, _ = joint.depth(first * work_rate * year)
    grown += (1.0 - never) * depth_first
    dry_rows = np.flatnonzero(never > 0.0)
    if dry_rows.size:
        work = second[dry_rows] * work_rate[dry_rows] * at(full(year, c.count), dry_rows)
        grown[dry_rows] += never[dry_rows] * joint.depth(work, dry_rows)[0]
    return Rows(
        elongation=grown / loop.pitch, life=life, governs=which, service=-other * np.expm1(-life / other),
        reached=reached, temperature=temperature, limit=limit, sliding=sliding,
    )  # fmt: skip


def together(
    joint: WornJoint, rows: np.ndarray, limit: Any, limit_time: Any, work_rate: Any, classes: Any
) -> np.ndarray:
    """Steady time at which classes that wear differently reach the limit: Newton in logarithms in a bracket."""
    slowest = np.minimum(classes[0][1], classes[1][1])
    fastest = np.maximum(classes[0][1], classes[1][1])
    first, last = limit_time / fastest, limit_time / slowest
    time = np.clip(limit_time / sum(share * one for share, one in classes), first, last)
    low, high = first.copy(), last.copy()
    out, live = time.copy(), np.arange(len(rows))
    for _ in range(100):
        depth: Any = 0.0
        growth: Any = 0.0
        for share, coefficient in classes:
            work = coefficient[live] * work_rate[live] * time
            total, slope = joint.depth(work, rows[live])
            depth = depth + share[live] * total
            growth = growth + share[live] * slope * work
        excess = np.log(depth / limit[live])
        low, high = np.where(excess < 0.0, time, low), np.where(excess < 0.0, high, time)
        step = -excess * depth / growth
        following = time * np.exp(step)
        settled = (np.abs(step) <= 1e-12) | (high <= low * (1.0 + 1e-13))
        out[live] = np.clip(following, first[live], last[live])
        if settled.all():
            break
        time = np.where((low < following) & (following < high), following, np.sqrt(low * high))
        left = ~settled
        live, time, low, high = live[left], time[left], low[left], high[left]
    return out
