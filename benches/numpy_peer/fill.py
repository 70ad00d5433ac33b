"""Fill: how full joints are once the line has settled, by the age of their oil.

Joints that every shot fills, or that know one wait only, have a closed form. For the others the walk of a joint through the
run of its timer is followed for all rows and starts at once: a Python step is one block of equal waits for thousands of
lanes, and a block is crossed in closed form (Slater 1967: five kinds of block are all there are).
"""

from __future__ import annotations

import math
from types import SimpleNamespace as Rows
from typing import Any

import numpy as np
from scipy.special import exp1

from .columns import at

LONGEST, STARTS, GUESSED, BURNT, COUNTED, FORGOTTEN, SMALL = 8192, 16, 64, 1024, 512, 30.0, 1e-5
FEW = 0.75  # lanes that have ended are dropped when fewer than this share still walk


def mean_kept(decay: Any) -> Any:
    return -np.expm1(-decay) / decay


def periodic(t: Rows, circuit: np.ndarray, dose: np.ndarray, capacity: np.ndarray, rate: np.ndarray) -> tuple[Any, Any, Any]:
    """Mean fill of the joints reached, their lowest fill, whether every shot fills them."""
    worst = rate * t.worst * circuit
    lost = -np.expm1(-worst)
    full = dose >= capacity * lost
    decays = rate * t.circuits * circuit
    after = np.minimum(dose / (lost * capacity), 1.0)
    mean = after * (t.weight * mean_kept(decays)).sum(axis=0)
    lowest = after * np.exp(-worst)
    rows = np.flatnonzero(~(full | t.single) & (dose > 0.0))
    if rows.size:
        picked = (t.n1[rows], t.d1[rows], t.n2[rows], t.d2[rows], t.run[rows])
        shots = (t.run[rows] + t.cell[rows] - 1) // t.cell[rows]
        for short in (True, False):
            chosen = np.flatnonzero((shots <= LONGEST) == short)
            if not chosen.size:
                continue
            here = rows[chosen]
            walk = tables(*(one[chosen] for one in picked), circuit[here], dose[here], capacity[here], rate[here])
            if short:
                found = whole_cycles(walk, t.cell[here], t.period[here] // t.cell[here] * circuit[here] * rate[here])
            else:
                found = many_starts(walk, dose[here] / (rate[here] * t.mean_wait[here] * circuit[here]))
            mean[here], lowest[here] = found[0] / capacity[here], found[1] / capacity[here]
    return np.where(dose > 0.0, mean, 0.0), np.where(dose > 0.0, lowest, 0.0), full


def tables(
    n1: np.ndarray, d1: np.ndarray, n2: np.ndarray, d2: np.ndarray, run: np.ndarray,
    circuit: np.ndarray, dose: np.ndarray, capacity: np.ndarray, rate: np.ndarray,
) -> Rows:  # fmt: skip
    """The five kinds of block of each row, flat: kind × rows + row."""
    forth, back, one = (run - 1) // d1, (run - 1) // d2, np.ones_like(run)
    waits = np.stack([forth, np.maximum(forth - 1, 1), one, np.maximum(back - 1, 1), back])
    circuits = np.stack([n1, n1, n1 + n2, n2, n2])
    by = waits * np.stack([d1, d1, d1 - d2, -d2, -d2])
    decay, m = rate * (circuits * circuit), waits.astype(float)
    lost = -np.expm1(-decay)
    total = -np.expm1(-m * decay) / lost
    before = -np.expm1(-(m - 1.0) * decay) / lost
    slow = 0.5 * m * (m - 1.0) * (1.0 - decay * (m - 2.0) / 3.0)
    gained = np.where(m * decay < SMALL, slow, (m - total) / lost)
    later = np.maximum(d2, run - d2)
    flat: dict[str, np.ndarray] = {
        "by": by, "waits": waits, "decay": m * decay, "kept": np.exp(-m * decay), "added": dose * total,
        "kept_before": np.exp(-(m - 1.0) * decay), "added_before": dose * before, "left": np.exp(-decay),
        "sum": total, "gained": dose * gained, "life": lost / rate, "time": m * circuits * circuit,
        "one_decay": decay, "lost": lost,
    }  # fmt: skip
    return Rows(
        rows=len(run), limits=np.stack([run - d1 - (forth - 1) * d1, run - d1, d2, back * d2]), dose=dose,
        capacity=capacity, run=run, **{name: np.ascontiguousarray(value).ravel() for name, value in flat.items()},
        begins=((0 * run, np.minimum(d1, run - d1)), (run - d1, d1 + d2 - run), (later, run - later)),
    )  # fmt: skip


def kinds(walk: Rows, row: np.ndarray, limits: np.ndarray, phase: np.ndarray) -> np.ndarray:
    """Place in the flat tables of the block that starts at a phase."""
    kind = (phase >= limits[0]).view(np.int8) + (phase >= limits[1]).view(np.int8)
    kind += (phase >= limits[2]).view(np.int8)
    kind += (phase >= limits[3]).view(np.int8)
    place = kind.astype(np.intp)
    place *= walk.rows
    place += row
    return place


def hurry(
    walk: Rows, row: np.ndarray, phase: np.ndarray, fill: np.ndarray, blocks: int,
    limit: float = np.inf, shots: np.ndarray | None = None,
) -> tuple[np.ndarray, ...]:  # fmt: skip
    """Walk lanes without sums until blocks, decay or shots run out: phase, fill, fill of an empty start, decay."""
    lanes = np.arange(len(row))
    ends = [phase.copy(), fill.copy(), np.zeros(len(row)), np.zeros(len(row))]
    phase, fill, empty, decay = phase.copy(), fill.copy(), np.zeros(len(row)), np.zeros(len(row))
    limits, top = walk.limits[:, row], walk.capacity[row]
    left, going = None if shots is None else shots.copy(), np.ones(len(row), bool)
    counted = limit == np.inf and shots is None
    for _ in range(blocks):
        place = kinds(walk, row, limits, phase)
        kept, added = walk.kept.take(place), walk.added.take(place)
        phase += walk.by.take(place)
        fill *= kept
        fill += added
        np.minimum(fill, top, out=fill)
        empty *= kept
        empty += added
        decay += walk.decay.take(place)
        if counted:
            continue
        if left is not None:
            left -= walk.waits.take(place)
        ended = going & ((decay >= limit) if left is None else (left <= 0))
        if not ended.any():
            continue
        for end, value in zip(ends, (phase, fill, empty, decay), strict=True):
            end[lanes[ended]] = value[ended]
        going &= ~ended
        still = np.count_nonzero(going)
        if still == 0:
            return tuple(ends)
        if still < FEW * len(going):
            lanes, row, phase, fill, empty = lanes[going], row[going], phase[going], fill[going], empty[going]
            decay, limits, top = decay[going], limits[:, going], top[going]
            left = None if left is None else left[going]
            going = np.ones(len(row), bool)
    for end, value in zip(ends, (phase, fill, empty, decay), strict=True):
        end[lanes[going]] = value[going]
    return tuple(ends)


def count(
    walk: Rows, row: np.ndarray, phase: np.ndarray, fill: np.ndarray, blocks: int, shots: np.ndarray | None = None
) -> tuple[np.ndarray, ...]:
    """Walk lanes with sums: integral of the fill, time, lowest fill, whether any shot overflowed."""
    totals = np.zeros((2, len(row)))
    lowest, spilled = np.full(len(row), np.inf), np.zeros(len(row), bool)
    lanes, phase, fill = np.arange(len(row)), phase.copy(), fill.copy()
    limits, top, dose = walk.limits[:, row], walk.capacity[row], walk.dose[row]
    left = None if shots is None else shots.copy()
    integral, time, low, over = np.zeros(len(row)), np.zeros(len(row)), lowest.copy(), spilled.copy()

    def store(ended: np.ndarray | slice) -> None:
        totals[:, lanes[ended]] = integral[ended], time[ended]
        lowest[lanes[ended]], spilled[lanes[ended]] = low[ended], over[ended]

    for _ in range(blocks):
        place = kinds(walk, row, limits, phase)
        last = walk.kept_before.take(place)
        last *= fill
        last += walk.added_before.take(place)
        kept = walk.left.take(place)
        after = walk.sum.take(place)
        after *= fill
        after += walk.gained.take(place)
        np.minimum(low, kept * np.minimum(fill, last), out=low)
        offered = kept * last
        offered += dose
        capped = last > top
        if capped.any():
            which = np.flatnonzero(capped)
            after[which], offered[which] = capped_block(walk, place[which], fill[which], top[which], dose[which])
            over |= capped
        over |= offered > top
        fill = np.minimum(offered, top, out=offered)
        after *= walk.life.take(place)
        integral += after
        time += walk.time.take(place)
        phase += walk.by.take(place)
        if left is None:
            continue
        left -= walk.waits.take(place)
        ended = left <= 0
        if ended.any():
            store(ended)
            going = ~ended
            lanes, row, phase, fill, left = lanes[going], row[going], phase[going], fill[going], left[going]
            limits, top, dose = limits[:, going], top[going], dose[going]
            integral, time, low, over = integral[going], time[going], low[going], over[going]
            if not lanes.size:
                break
    if lanes.size:
        store(slice(None))
    return totals[0], totals[1], lowest, spilled


def capped_block(walk: Rows, place: np.ndarray, start: np.ndarray, top: np.ndarray, dose: np.ndarray) -> tuple[Any, Any]:
    """Sum of the fills after each shot, and what the last shot offers, where the joint is full before the block ends."""
    decay, lost, m, kept = walk.one_decay[place], walk.lost[place], walk.waits[place].astype(float), walk.left[place]
    short = np.maximum(top - start, 0.0)
    j = np.clip(np.ceil(np.log1p(lost * short / (dose - lost * top)) / decay), 0.0, m)
    left = np.exp(-(j - 1.0) * decay)
    before = -np.expm1(-(j - 1.0) * decay) / lost
    total = before + left
    slow = 0.5 * j * (j - 1.0) * (1.0 - decay * (j - 2.0) / 3.0)
    gained = np.where(j * decay < SMALL, slow, (j - total) / lost)
    after = (m - j) * top + np.where(j > 0.0, start * total + dose * gained, 0.0)
    last = np.where(j < m, top, start * left + dose * before)
    return after, kept * last + dose


def fixed_point(top: np.ndarray, added: np.ndarray, decay: np.ndarray) -> np.ndarray:
    return np.minimum(top, added / -np.expm1(-decay))


def many_starts(walk: Rows, without_overflow: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Mean and lowest volume of a long walk from sixteen starts."""
    row = np.tile(np.arange(walk.rows), STARTS)
    everything = sum(length for _, length in walk.begins)
    tick = (2 * np.arange(STARTS)[:, None] + 1) * everything // (2 * STARTS)
    phase = np.zeros_like(tick)
    open_ = np.ones(tick.shape, bool)
    for start, length in walk.begins:
        here = open_ & (tick < length)
        phase = np.where(here, start + tick, phase)
        open_ &= ~here
        tick = tick - length
    phase = phase.ravel()
    _, fill, empty, decay = hurry(walk, row, phase, walk.capacity[row], GUESSED)
    phase, fill, _, _ = hurry(walk, row, phase, fixed_point(fill, empty, decay), BURNT, limit=FORGOTTEN)
    integral, time, lowest, spilled = (one.reshape(STARTS, -1) for one in count(walk, row, phase, fill, COUNTED))
    mean = integral.sum(axis=0) / time.sum(axis=0)
    return np.where(spilled.any(axis=0), mean, without_overflow), lowest.min(axis=0)


def whole_cycles(walk: Rows, cell: np.ndarray, decay: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Mean and lowest volume over a whole cycle of both classes of joints, where phases repeat soon."""
    shots, rest = walk.run // cell, walk.run % cell
    more = rest / cell
    two = np.flatnonzero(rest > 0)
    row = np.concatenate([np.arange(walk.rows), two])
    phase = np.concatenate([np.zeros(walk.rows, np.int64), rest[two]])
    budget = np.concatenate([shots + (rest > 0), shots[two]])
    share = np.concatenate([np.where(rest > 0, more, 1.0), 1.0 - more[two]])
    _, fill, empty, _ = hurry(walk, row, phase, walk.capacity[row], 2 * LONGEST, shots=budget)
    settled = fixed_point(fill, empty, decay[row])
    integral, time, low, _ = count(walk, row, phase, settled, 2 * LONGEST, shots=budget)
    mean, lowest = np.bincount(row, share * integral / time, walk.rows), low[: walk.rows]
    lowest[two] = np.minimum(lowest[two], low[walk.rows :])
    return mean, lowest


# how old the oil of the joints is

ENTIRE = [(-1.0) ** (n + 1) / (n * math.factorial(n)) for n in range(1, 19)]
SLOW = 0.1
NODES = (0.5 - 0.5 * 0.6**0.5, 0.5, 0.5 + 0.5 * 0.6**0.5)
WEIGHTS = (5.0 / 18.0, 8.0 / 18.0, 5.0 / 18.0)


def entire_part(x: np.ndarray) -> np.ndarray:
    """∫ (1 − e^−t)/t dt from 0 to x, for x up to 1."""
    total = np.full_like(x, ENTIRE[-1])
    for coefficient in reversed(ENTIRE[:-1]):
        total *= x
        total += coefficient
    return total * x


def age_law(mean: np.ndarray, rate: np.ndarray, wait: np.ndarray, weight: np.ndarray, boundary_fill: Any) -> tuple[Any, Any]:
    """Fill right after a visit, and the fill that has the mean boundary friction."""
    a = rate * wait
    start = np.minimum(mean / (weight * mean_kept(a)).sum(axis=0), 1.0)
    x = start / boundary_fill
    thin = x <= 1.0
    part: Any = 0.0
    for node, share in zip(NODES, WEIGHTS, strict=True):
        y = x * np.exp(-a * node)
        np.negative(y, out=y)
        part = part + share * np.where(thin, -np.expm1(y), np.exp(y))
    fast = (a * (1.0 + x) >= SLOW) & (weight > 0.0)
    for choose, few in ((fast & ~thin, False), (fast & thin, True)):
        which, rows = np.nonzero(choose)
        if rows.size:
            x_here, a_here = x[rows], a[which, rows]
            if few:
                difference = entire_part(x_here) - entire_part(x_here * np.exp(-a_here))
            else:
                # E1 of a vanishing argument is −γ − ln x, which stays exact
                low = x_here * np.exp(-a_here)
                tiny = low < 1e-300
                first = np.where(tiny, -np.euler_gamma - np.log(x_here) + a_here, exp1(np.maximum(low, 1e-300)))
                difference = first - exp1(x_here)
            part[which, rows] = difference / a_here
    total = (weight * part).sum(axis=0)
    effective = -boundary_fill * np.where(thin, np.log1p(-total), np.log(total))
    return start, np.where(start > 0.0, effective, 0.0)


def subset(t: Rows, rows: np.ndarray) -> Rows:
    return Rows(**{name: at(value, rows) for name, value in vars(t).items()})
