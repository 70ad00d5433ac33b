"""Methods: what spray, chain-driven applicator, dripper and rounds by hand bring into a joint, and how it waits."""

from __future__ import annotations

from types import SimpleNamespace as Rows
from typing import Any

import numpy as np
from scipy.special import gammainc, gammaln, ndtri

from . import coverage, fill
from .columns import HOUR, MINUTE, ML_PER_MIN, MM, UL, Columns, full

CHANCES = (1.0 / 6.0, 0.5, 5.0 / 6.0, 0.95)


def timer(c: Columns) -> tuple[Any, Any]:
    return c.si("lubrication.timer.run_min", MINUTE), c.si("lubrication.timer.dwell_min", MINUTE, 0.0)


def has_timer(c: Columns) -> bool:
    return c.has("lubrication.timer.run_min")


def in_stops(c: Columns, applied: Any, running: Any) -> Any:
    """A timer on wall time that is not stopped with the line also gives oil while it stands."""
    wall = c.is_word("lubrication.timer.clock", "wall", "machine")
    return np.where(wall & np.logical_not(c.raw("lubrication.timer.interlocked", True)), applied / running, applied)


def every_nth(c: Columns, loop: Rows) -> tuple[Any, Any]:
    """Circuits between two doses at a joint, and the share of the joints that are dosed."""
    joints = np.asarray(loop.joints).astype(np.int64)
    every = np.asarray(c.raw("lubrication.every_nth", 1)).astype(np.int64)
    spacing = np.gcd(every, joints)
    return every // spacing, (joints // spacing) / joints


def next_run(c: Columns, loop: Rows, method: str, running: Any) -> Any:
    """Time (s of running) until the next oil comes, where nothing takes it before."""
    if method == "manual":
        return c.si("lubrication.interval_h", HOUR) * running
    if method == "drip":
        return loop.circuit_time / np.minimum(offered(c, loop) / c.si("lubrication.drop_ul", UL, 40.0), 1.0)
    if method == "synchronised" and not has_timer(c):
        return loop.circuit_time * every_nth(c, loop)[0]
    run, dwell = timer(c)
    return np.maximum(loop.circuit_time, run + dwell)


def offered(c: Columns, loop: Rows) -> Any:
    flow = c.si("lubrication.flow_ml_per_min", ML_PER_MIN)
    return flow * c.raw("lubrication.points", 2) * loop.joint_time * c.raw("lubrication.capture", 0.12)


def reach(c: Columns, loop: Rows, joint: Rows, rate: Any, entered: Any, method: str, running: Any) -> Rows:
    """Who is reached, when, and how full that keeps the joints (`settled`). Times are running seconds, volumes m³."""
    args = (c, loop, full(joint.capacity, c.count), full(rate, c.count), entered)
    if method == "manual":
        return by_hand(*args, running)
    if method == "drip":
        return dripping(*args)
    return timed(*args, method, running)


def timed(
    c: Columns, loop: Rows, capacity: np.ndarray, rate: np.ndarray, entered: Any, method: str, running: Any
) -> Rows:
    points, circuit = c.raw("lubrication.points", 2), full(loop.circuit_time, c.count)
    counted = 1.0
    ticks = coverage.ticks(circuit)
    if method == "timed_spray":
        run, dwell = timer(c)
        zone = c.si("lubrication.zone_length_mm", MM, 0.0) / loop.speed
        flow = c.si("lubrication.flow_ml_per_min", ML_PER_MIN)
        run_ticks = coverage.ticks(full(run, c.count))
        period = run_ticks + coverage.ticks(full(dwell, c.count))
        run_ticks = np.minimum(run_ticks + coverage.ticks(full(zone, c.count)), period)
        reaching = np.minimum(run + dwell, run + zone)
        dose = flow * points * loop.joint_time * (run / reaching) * c.raw("lubrication.capture", 0.25) * entered
        applied = run / (run + dwell) * flow * points * loop.strands
    else:
        wait, counted = every_nth(c, loop)
        ticks, circuit = ticks * wait, circuit * wait
        run, dwell = timer(c) if has_timer(c) else (circuit, 0.0)
        run_ticks = coverage.ticks(full(run, c.count))
        period = run_ticks + coverage.ticks(full(dwell, c.count))
        shot = c.si("lubrication.shot_ul", UL)
        dose = shot * points * c.raw("lubrication.capture", 0.9) * entered
        every = c.raw("lubrication.every_nth", 1) * loop.joint_time
        applied = run / (run + dwell) / every * shot * points * loop.strands
    if has_timer(c) and c.has("lubrication.timer.clock"):
        applied = in_stops(c, applied, running)
    against = coverage.against_timer(ticks, run_ticks, period)
    by_timer = against.never
    return Rows(
        never=1.0 - counted * (1.0 - by_timer) if method == "synchronised" else by_timer,
        contiguous=by_timer > 0.0 if method == "synchronised" else np.True_, wait=against.circuits * circuit,
        weight=against.weight, worst=against.worst * circuit, dose=dose, applied=applied, rounds=0.0,
        settled=fill.periodic(against, circuit, full(dose, c.count), capacity, rate),
    )  # fmt: skip


def dripping(c: Columns, loop: Rows, capacity: np.ndarray, rate: np.ndarray, entered: Any) -> Rows:
    drop, circuit, offer = c.si("lubrication.drop_ul", UL, 40.0), loop.circuit_time, offered(c, loop)
    chance = np.minimum(offer / drop, 1.0)
    dose = np.where(chance < 1.0, drop, offer) * entered
    with np.errstate(divide="ignore", invalid="ignore"):
        ln = np.log1p(-chance)
        circuits = [np.where(chance < 1.0, np.maximum(np.ceil(np.log1p(-one) / ln), 1.0), 1.0) for one in CHANCES]
    waits = np.stack(circuits[:3])
    decay = rate * circuit
    lost = -np.expm1(-decay)
    if_filled = chance * lost / ((lost + chance * (1.0 - lost)) * decay)
    mean = np.minimum(chance * dose / decay / capacity, if_filled)
    flow = c.si("lubrication.flow_ml_per_min", ML_PER_MIN)
    return Rows(
        never=np.zeros(c.count), contiguous=np.True_, wait=waits * circuit, weight=waits / waits.sum(axis=0),
        worst=circuits[3] * circuit, dose=dose, settled=Rows(mean=mean, lowest=None),
        applied=flow * c.raw("lubrication.points", 2) * loop.strands, rounds=0.0,
    )  # fmt: skip


def by_hand(c: Columns, loop: Rows, capacity: np.ndarray, rate: np.ndarray, entered: Any, running: Any) -> Rows:
    interval = full(c.si("lubrication.interval_h", HOUR) * running, c.count)
    spread, miss = c.raw("lubrication.interval_cv", 0.3), c.raw("lubrication.miss_share", 0.05)
    unreached = c.raw("lubrication.unreached_share", 0.0)
    quantiles = interval * visit_quantiles(spread, miss)
    waits = quantiles[:3]
    square = spread * spread
    one = np.exp(-np.log1p(rate * interval * square) / square)
    kept = (1.0 - miss) * one / (1.0 - miss * one)
    given = c.si("lubrication.dose_ul", UL)
    dose = given * c.raw("lubrication.capture", 0.3) * entered
    after = np.minimum(dose / (capacity * (1.0 - kept)), 1.0)
    return Rows(
        never=full(unreached, c.count), contiguous=np.True_, wait=waits, weight=waits / waits.sum(axis=0),
        worst=quantiles[3], dose=dose,
        settled=Rows(
            mean=after * (1.0 - kept) / (rate * interval / (1.0 - miss)), lowest=after * np.exp(-rate * quantiles[3])
        ),
        applied=given * loop.joints * loop.strands * (1.0 - unreached) / interval,
        rounds=1.0 / c.si("lubrication.interval_h", HOUR),
    )  # fmt: skip


def visit_quantiles(spread: Any, miss: Any) -> np.ndarray:
    """Quantiles of the time between visits over the interval: one set where spread and miss are alike in all rows.

    A geometric mixture of gamma laws: Newton in a bracket on all rows and chances at once.
    """
    spread, miss = np.broadcast_arrays(np.atleast_1d(spread).astype(float), np.atleast_1d(miss).astype(float))
    shape, chance = np.tile(1.0 / (spread * spread), 4), np.repeat(CHANCES, len(spread))
    miss = np.tile(miss, 4)
    # a start from mean and variance of the mixture, by Wilson and Hilferty
    mean, square = 1.0 / (1.0 - miss), (1.0 / shape + miss / (1.0 - miss)) * (1.0 - miss) / 9.0
    time = mean * np.maximum(1.0 - square + ndtri(chance) * np.sqrt(square), 0.3) ** 3
    out, rows = time.copy(), np.arange(len(time))
    low, high = np.zeros(len(time)), np.full(len(time), 400.0)
    for round_ in range(200):
        below, density = np.zeros(len(rows)), np.zeros(len(rows))
        x, a, weight = time * shape, shape.copy(), 1.0 - miss
        log_x = np.log(x)
        while True:
            part = weight * gammainc(a, x)
            below += part
            density += weight * np.exp(a * log_x - x - gammaln(a))
            weight *= miss
            a += shape
            if not (part * miss > 1e-16 * below).any():
                break
        density /= time
        off = below - chance
        low, high = np.where(off < 0.0, time, low), np.where(off < 0.0, high, time)
        following = time - off / density
        inside = (following > low) & (following < high)
        settled = (inside & (np.abs(following - time) < 1e-8 * time)) | (high - low <= 1e-13 * high)
        time = np.where(inside & ((round_ % 4 != 3) | settled), following, 0.5 * (low + high))
        out[rows] = time
        if settled.all():
            break
        left = ~settled
        rows, time, low, high, shape, chance, miss = (one[left] for one in (rows, time, low, high, shape, chance, miss))
    return out.reshape(4, -1)
