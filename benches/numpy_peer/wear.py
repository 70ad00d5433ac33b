"""Wear: coefficients over the age of the oil, case and core, elongation, the lives and which of them governs."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np
from scipy.special import exp1, expi

from .columns import MM, MPA, PCT, YEAR, Columns, at, full

GREATEST, BOUNDARY_UP_TO, FULL_FROM, TRANSITION_WIDTH = 5e-3, 0.4, 3.0, 15.0
LITTLE, DRY_FILL = 0.5, 1e-5
NODES, WEIGHTS = np.polynomial.legendre.leggauss(8)
GOVERNS = np.array(["mean", "local", "pin", "bush"])


class Law:
    """ln K = dry − relief × effect(fill) at one kind of place, at most the greatest coefficient."""

    def __init__(self, dry: Any, relief: Any, half_square: Any, dry_coefficient: Any) -> None:
        self.dry, self.relief, self.half_square, self.dry_coefficient = dry, relief, half_square, dry_coefficient

    def of(self, rows: np.ndarray) -> Law:
        return Law(*(at(one, rows) for one in (self.dry, self.relief, self.half_square, self.dry_coefficient)))

    def coefficient(self, fill: Any) -> Any:
        square = fill * fill
        effect = (1.0 + self.half_square) * square / (square + self.half_square)
        return np.minimum(np.exp(self.dry - self.relief * effect), GREATEST)

    def share(self, fill: Any) -> Any:
        return fill * fill / (fill * fill + self.half_square)


def between(fall: Any, high: Any, low: Any) -> Any:
    """∫ e^(−B s)/(s (1 − s)) ds from low to high share in exponential integrals; B > 0."""
    over = expi(fall * (1.0 - low)) - expi(fall * (1.0 - high))
    return exp1(fall * low) - exp1(fall * high) + np.exp(-fall) * over


def integral(law: Law, first: np.ndarray, last: np.ndarray, length: np.ndarray) -> np.ndarray:
    """∫ K dx for a fill that falls as e^(−x); the cap of the coefficient cuts off the empty end."""
    fuller, emptier = law.share(first), law.share(last)
    dry, fall = np.exp(law.dry), law.relief * (1.0 + law.half_square)
    cap = np.log(dry / GREATEST) / fall
    cut = (cap > 0.0) & (cap < 1.0) & (cap > emptier) & (cap < fuller)
    low = np.where(cut, cap, emptier)
    free = 0.5 * dry * between(fall, fuller, low)
    if np.any(cut):
        capped = 0.5 * np.log(cap / emptier * ((1.0 - emptier) / (1.0 - cap)))
        free = np.where(cut, GREATEST * capped + free, free)
    always = ~cut & (law.coefficient(0.5 * (first + last)) >= GREATEST)
    return np.where(always, GREATEST * length, free)


def mean_over_waits(law: Law, fill: np.ndarray, rate: np.ndarray, wait: np.ndarray, weight: np.ndarray) -> np.ndarray:
    """Mean wear coefficient over the age of the oil; waits begin alike, so that each stretch is integrated once."""
    until_dry = np.maximum(np.log(np.maximum(fill, 1e-300) / DRY_FILL), 0.0)
    x = rate * wait
    per_x = weight / x
    mean = (per_x * np.maximum(x - until_dry, 0.0)).sum(axis=0) * law.dry_coefficient
    ends = np.minimum(x, until_dry)
    order = np.argsort(ends, axis=0)
    ends, per_x = np.take_along_axis(ends, order, axis=0), np.take_along_axis(per_x, order, axis=0)
    start: Any = np.zeros(ends.shape[1])
    for place in range(len(ends)):
        end, factor = ends[place], per_x[place:].sum(axis=0)
        length = end - start
        first = fill * np.exp(-start)
        short = np.flatnonzero((length > 0.0) & (length <= LITTLE) & (factor > 0.0))
        if short.size:
            here = law.of(short)
            half = 0.5 * length[short]
            ages = half * (NODES[:, None] + 1.0)
            values = here.coefficient(first[short] * np.exp(-ages))
            mean[short] += half * factor[short] * (WEIGHTS @ values)
        long = np.flatnonzero((length > LITTLE) & (factor > 0.0))
        if long.size:
            here = law.of(long)
            last = first[long] * np.exp(-length[long])
            mean[long] += factor[long] * integral(here, first[long], last, length[long])
        start = np.maximum(end, start)
    return mean


def coefficients(c: Columns, temperatures: tuple[Any, ...], ratio: np.ndarray, reach: Rows) -> tuple[np.ndarray, Any]:
    """Wear coefficient of the joints reached at each articulation, and that of the dry ones."""
    dry, boundary = c.si("wear.wear_coefficient_dry", 1.0, 5e-4), c.si("wear.wear_coefficient_boundary", 1.0, 5e-6)
    mixed = c.si("wear.wear_coefficient_mixed") if c.has("wear.wear_coefficient_mixed") else 0.2 * boundary
    thick = c.si("wear.wear_coefficient_full", 1.0, 3e-8)
    half = c.si("wear.fill_half", 1.0, 0.25)
    worse = c.si("duty.dust_factor", 1.0, 1.0) * c.si("duty.water_factor", 1.0, 1.0)
    transition = c.si("oil.boundary_transition_c", 1.0, 150.0)
    around = np.log(worse)
    ln_dry, ln_boundary, ln_mixed, ln_full = (np.log(one) + around for one in (dry, boundary, mixed, thick))
    dry_coefficient = np.minimum(dry * worse, GREATEST)

    def law(temperature: Any, ratio: np.ndarray) -> Law:
        effective = np.clip(ratio, BOUNDARY_UP_TO, FULL_FROM)
        oiled: Any = ln_boundary
        if (effective > BOUNDARY_UP_TO).any():
            ln = np.log(effective)
            oiled = np.where(
                effective < 1.0,
                ln_mixed + (ln_boundary - ln_mixed) * ln / np.log(BOUNDARY_UP_TO),
                ln_mixed + (ln_full - ln_mixed) * ln / np.log(FULL_FROM),
            )
        survival = 1.0 / (1.0 + np.exp((temperature - transition) / TRANSITION_WIDTH))
        return Law(ln_dry, full(survival * (ln_dry - oiled), c.count), half * half, dry_coefficient)

    out = np.empty((4, c.count))
    laws = [law(temperatures[event % len(temperatures)], ratio[event]) for event in range(4)]
    for event, one in enumerate(laws):
        # temperature and film ratio alone tell the articulations apart: what is alike is averaged once
        todo = np.ones(c.count, bool)
        for earlier in range(event):
            alike = todo & (laws[earlier].relief == one.relief)
            out[event, alike] = out[earlier, alike]
            todo &= ~alike
        rows = np.flatnonzero(todo)
        if rows.size:
            args = (reach.start, reach.rate, reach.wait, reach.weight)
            out[event, rows] = mean_over_waits(one.of(rows), *(at(arg, rows) for arg in args))
    return out, dry_coefficient


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
    of_events, dry = coefficients(c, temperatures, settled.ratio, reach)
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
