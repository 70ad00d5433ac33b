"""Walk: joints whose shots neither fill them nor come at one wait, through the run of their timer until they settle.

All rows and starts are walked at once: a Python step is one block of equal waits for thousands of lanes, and a block is
crossed in closed form (Slater 1967: five kinds of block are all there are).
"""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np

from . import words

LONGEST, STARTS, GUESSED, BURNT, COUNTED, FORGOTTEN, SMALL = 8192, 16, 64, 1024, 512, np.exp(-30.0), 1e-5
LANES = 8192  # whose state stays in the second-level cache
FEW = 0.75  # lanes that have ended are dropped when fewer than this share still walk


def walk_all(found: list[Rows]) -> None:
    """Walk the rows that need it, those of many chunks at once: a Python step should move many lanes."""
    ticks = np.concatenate([one.ticks for one in found], axis=1)
    numbers = np.concatenate([one.numbers for one in found], axis=1)
    run, cell = ticks[4], ticks[5]
    shots = (run + cell - 1) // cell
    mean, lowest = np.empty(len(run)), np.empty(len(run))
    order = np.argsort(shots)  # lanes of one batch end at about the same time
    few = int(np.count_nonzero(shots <= LONGEST))
    for rows, walker, size in ((order[:few], whole_cycles, LANES // 2), (order[few:], many_starts, LANES // STARTS)):
        for start in range(0, len(rows), size):
            here = rows[start : start + size]
            mean[here], lowest[here] = walker(ticks[:, here], numbers[:, here])
    mean, lowest = mean / numbers[2], lowest / numbers[2]
    start = 0
    for one in found:
        part = slice(start, start + len(one.rows))
        one.mean[one.rows], one.lowest[one.rows] = mean[part], lowest[part]
        start = part.stop


def tables(ticks: np.ndarray, numbers: np.ndarray) -> Rows:
    """The five kinds of block of each row, flat: row × 5 + kind."""
    n1, d1, n2, d2, run, _, period = ticks
    circuit, dose, capacity, rate, _ = numbers
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
    whole = np.int32 if period.max() < 2**30 else np.int64
    flat: dict[str, np.ndarray] = {
        "by": by.astype(whole), "waits": waits, "kept": np.exp(-m * decay), "added": dose * total,
        "kept_before": np.exp(-(m - 1.0) * decay), "added_before": dose * before, "left": np.exp(-decay),
        "sum": total, "gained": dose * gained, "life": lost / rate, "time": m * circuits * circuit,
        "one_decay": decay, "lost": lost,
    }  # fmt: skip
    limits = np.stack([run - d1 - (forth - 1) * d1, run - d1, d2, back * d2])
    return Rows(
        rows=len(run), limits=limits.astype(whole), dose=dose, capacity=capacity, whole=whole,
        **{name: np.ascontiguousarray(value.T).ravel() for name, value in flat.items()},
        begins=((0 * run, np.minimum(d1, run - d1)), (run - d1, d1 + d2 - run), (later, run - later)),
    )  # fmt: skip


def kinds(first: np.ndarray, limits: np.ndarray, phase: np.ndarray) -> np.ndarray:
    """Place in the flat tables of the block that starts at a phase; `first` is that of the lane's row."""
    kind = (phase >= limits[0]).view(np.int8)
    kind += (phase >= limits[1]).view(np.int8)
    kind += (phase >= limits[2]).view(np.int8)
    kind += (phase >= limits[3]).view(np.int8)
    place = kind.astype(np.intp)
    place += first
    return place


def hurry(
    walk: Rows, row: np.ndarray, state: tuple[np.ndarray, ...], blocks: int, shots: np.ndarray | None = None
) -> np.ndarray:
    """Walk lanes without sums until blocks or shots run out, or too little is left of what was there at the start.

    A state is the phase, the fill of a start that was full, that of one that was empty and knew no cap, and the share
    left of the start. That is the whole map: a start V gives the lesser of the first fill and share × V + the second.
    """
    ends = np.zeros((4, len(row)))
    lanes, first, limits, top = np.arange(len(row)), 5 * row, walk.limits.take(row, axis=1), walk.capacity[row]
    phase, fill, empty, all_kept = (one.copy() for one in state)
    left, going = shots, np.ones(len(row), bool)
    for _ in range(blocks):
        place = kinds(first, limits, phase)
        kept, added = walk.kept.take(place), walk.added.take(place)
        phase += walk.by.take(place)
        fill *= kept
        fill += added
        np.minimum(fill, top, out=fill)
        empty *= kept
        empty += added
        all_kept *= kept
        if left is None:
            ended = all_kept <= FORGOTTEN
        else:
            left = left - walk.waits.take(place)
            ended = left <= 0
        ended &= going
        if not ended.any():
            continue
        ends[:, lanes[ended]] = phase[ended], fill[ended], empty[ended], all_kept[ended]
        going &= ~ended
        still = np.count_nonzero(going)
        if still == 0:
            return ends
        if still < FEW * len(going):
            lanes, first, limits, top = lanes[going], first[going], limits.compress(going, axis=1), top[going]
            phase, fill, empty, all_kept = phase[going], fill[going], empty[going], all_kept[going]
            left, going = None if left is None else left[going], np.ones(still, bool)
    ends[:, lanes[going]] = phase[going], fill[going], empty[going], all_kept[going]
    return ends


def burn(walk: Rows, phase: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """States of lanes (starts × rows) after the first 64 blocks, and when the start is forgotten, after 1024 at most.

    Eight blocks at a time until the next would be one too many; the rest a block at a time.
    """
    word = words.eight_blocks(walk)
    shape, columns = phase.shape, np.arange(walk.rows)
    guess, ends, stopped = np.zeros((4, *shape)), np.zeros((4, *shape)), np.zeros(shape, bool)
    cuts, base, going = word.cuts, word.words * columns, np.ones(shape, bool)
    fill, empty, all_kept = np.tile(walk.capacity, (shape[0], 1)), np.zeros(shape), np.ones(shape)
    for step in range(BURNT // words.BLOCKS):
        place = words.number(cuts, phase)
        place += base
        kept, added = word.kept.take(place), word.added.take(place)
        short = going & (all_kept * kept <= FORGOTTEN)
        if short.any():
            lane, column = np.nonzero(short)
            ends[:, lane, columns[column]] = phase[short], fill[short], empty[short], all_kept[short]
            stopped[lane, columns[column]] = True
            going &= ~short
            busy = going.any(axis=0)
            still = np.count_nonzero(busy)
            if still == 0:
                break
            if still < FEW * len(busy):
                columns, base, cuts, going = columns[busy], base[busy], cuts.compress(busy, 1), going.compress(busy, 1)
                phase, fill, empty = phase.compress(busy, 1), fill.compress(busy, 1), empty.compress(busy, 1)
                all_kept, place = all_kept.compress(busy, 1), place.compress(busy, 1)
                kept, added = kept.compress(busy, 1), added.compress(busy, 1)
        phase = phase + word.by.take(place)
        fill = np.minimum(kept * fill + added, word.top.take(place))
        empty *= kept
        empty += added
        all_kept *= kept
        if step == GUESSED // words.BLOCKS - 1:
            guess[:, :, columns] = phase, fill, empty, all_kept
    else:
        lane, column = np.nonzero(going)
        ends[:, lane, columns[column]] = phase[going], fill[going], empty[going], all_kept[going]
    lane, column = np.nonzero(stopped)
    if lane.size:
        state = ends[:, lane, column]
        ends[:, lane, column] = hurry(walk, column, (state[0].astype(walk.whole), *state[1:]), words.BLOCKS)
    return guess, ends


def count(
    walk: Rows, row: np.ndarray, phase: np.ndarray, fill: np.ndarray, blocks: int, shots: np.ndarray | None = None
) -> np.ndarray:
    """Walk lanes with sums: integral of the fill, time, lowest fill, whether any shot overflowed."""
    ends = np.zeros((4, len(row)))
    lanes, first, limits, top, dose = (
        np.arange(len(row)),
        5 * row,
        walk.limits.take(row, axis=1),
        walk.capacity[row],
        walk.dose[row],
    )
    phase, left, going = phase.copy(), shots, np.ones(len(row), bool)
    integral, time, low, over = (
        np.zeros(len(row)),
        np.zeros(len(row)),
        np.full(len(row), np.inf),
        np.zeros(len(row), bool),
    )
    for _ in range(blocks):
        place = kinds(first, limits, phase)
        last = walk.kept_before.take(place)
        last *= fill
        last += walk.added_before.take(place)
        kept = walk.left.take(place)
        after = walk.sum.take(place)
        after *= fill
        after += walk.gained.take(place)
        np.minimum(low, kept * np.minimum(fill, last), out=low)
        capped = last > top
        which = np.flatnonzero(capped)
        if which.size:
            over |= capped
            np.minimum(last, top, out=last)
            start, full = fill.take(which), top.take(which)
            stays = start == full  # a full joint that gains from shot to shot stays full
            here = which.compress(stays)
            after[here] = walk.waits.take(place.take(here)) * full.compress(stays)
            rises = ~stays
            here = which.compress(rises)
            after[here], last[here] = capped_block(walk, place[here], start[rises], full[rises], dose[here])
        kept *= last
        kept += dose
        over |= kept > top
        fill = np.minimum(kept, top, out=kept)
        after *= walk.life.take(place)
        integral += after
        time += walk.time.take(place)
        phase += walk.by.take(place)
        if left is None:
            continue
        left = left - walk.waits.take(place)
        ended = (left <= 0) & going
        if not ended.any():
            continue
        ends[:, lanes[ended]] = integral[ended], time[ended], low[ended], over[ended]
        going &= ~ended
        still = np.count_nonzero(going)
        if still == 0:
            return ends
        if still < FEW * len(going):
            lanes, first, limits, top, dose = (
                lanes[going],
                first[going],
                limits.compress(going, axis=1),
                top[going],
                dose[going],
            )
            phase, fill, left, integral = phase[going], fill[going], left[going], integral[going]
            time, low, over, going = time[going], low[going], over[going], np.ones(still, bool)
    ends[:, lanes[going]] = integral[going], time[going], low[going], over[going]
    return ends


def capped_block(
    walk: Rows, place: np.ndarray, start: np.ndarray, top: np.ndarray, dose: np.ndarray
) -> tuple[Any, Any]:
    """Sum of the fills after each shot, and the fill after the last but one, where the joint fills within the block."""
    decay, lost, m = walk.one_decay.take(place), walk.lost.take(place), walk.waits.take(place).astype(float)
    j = np.minimum(np.ceil(np.log1p(lost * (top - start) / (dose - lost * top)) / decay), m)
    gone = -np.expm1(-(j - 1.0) * decay)
    left, before = 1.0 - gone, gone / lost
    total = before + left
    slow = 0.5 * j * (j - 1.0) * (1.0 - decay * (j - 2.0) / 3.0)
    gained = np.where(j * decay < SMALL, slow, (j - total) / lost)
    after = (m - j) * top + start * total + dose * gained
    return after, np.where(j < m, top, start * left + dose * before)


def fixed_point(top: np.ndarray, added: np.ndarray, lost: np.ndarray) -> np.ndarray:
    return np.minimum(top, added / lost)


def many_starts(ticks: np.ndarray, numbers: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Mean and lowest volume of a long walk from sixteen starts."""
    walk = tables(ticks, numbers)
    circuit, dose, _, rate, mean_wait = numbers
    row = np.tile(np.arange(walk.rows), STARTS)
    everything = sum(length for _, length in walk.begins)
    tick = (2 * np.arange(STARTS)[:, None] + 1) * everything // (2 * STARTS)
    phase, open_ = np.zeros_like(tick), np.ones(tick.shape, bool)
    for start, length in walk.begins:
        here = open_ & (tick < length)
        phase = np.where(here, start + tick, phase)
        open_ &= ~here
        tick = tick - length
    guessed, end = (one.reshape(4, -1) for one in burn(walk, phase.astype(walk.whole)))
    # a start that was not forgotten is the one that the first blocks would settle at if they repeated for ever
    start = np.where(end[3] > FORGOTTEN, fixed_point(guessed[1], guessed[2], 1.0 - guessed[3]), walk.capacity[row])
    fill = np.minimum(end[1], end[3] * start + end[2])
    integral, time, lowest, spilled = count(walk, row, end[0].astype(walk.whole), fill, COUNTED).reshape(4, STARTS, -1)
    mean = np.where(spilled.any(axis=0), integral.sum(axis=0) / time.sum(axis=0), dose / (rate * mean_wait * circuit))
    return mean, lowest.min(axis=0)


def whole_cycles(ticks: np.ndarray, numbers: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Mean and lowest volume over a whole cycle of both classes of joints, where phases repeat soon."""
    walk = tables(ticks, numbers)
    run, cell = ticks[4], ticks[5]
    shots, rest = run // cell, run % cell
    more = rest / cell
    two = np.flatnonzero(rest > 0)
    row = np.concatenate([np.arange(walk.rows), two])
    phase = np.concatenate([np.zeros(walk.rows, np.int64), rest[two]]).astype(walk.whole)
    budget = np.concatenate([shots + (rest > 0), shots[two]])
    share = np.concatenate([np.where(rest > 0, more, 1.0), 1.0 - more[two]])
    state = (phase, walk.capacity[row], np.zeros(len(row)), np.ones(len(row)))
    end = hurry(walk, row, state, 2 * LONGEST, shots=budget)
    lost = -np.expm1(-(ticks[6] // cell) * numbers[0] * numbers[3])
    integral, time, low, _ = count(walk, row, phase, fixed_point(end[1], end[2], lost[row]), 2 * LONGEST, shots=budget)
    mean, lowest = np.bincount(row, share * integral / time, walk.rows), low[: walk.rows]
    lowest[two] = np.minimum(lowest[two], low[walk.rows :])
    return mean, lowest
