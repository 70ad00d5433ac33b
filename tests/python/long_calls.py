"""Every call that may take long, small for a look at what it gives and endless for one at how it is stopped.

Run as a program with the name of a call, it presses Ctrl-C on itself in the middle of the endless one and prints what
came of it.
"""

from __future__ import annotations

import json
import os
import signal
import sys
import tempfile
import threading
import time
import warnings
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq

import pinfilm
from pinfilm import film, statistics

Call = Callable[..., Any]

WITH_THREADS = [
    "sample",
    "sensitivity",
    "sweep",
    "calibrate",
    "recommend",
    "simulate",
    "evaluate_table",
    "compare_table",
    "evaluate_file",
    "watch_many",
]
"""Calls with the arguments `threads` and `progress`."""
WITHOUT = [
    "rank_draws",
    "change_points",
    "log.change_points",
    "log.before_after",
    "log.savings",
    "log.watch",
    "reynolds_bearing",
]
"""Calls that have neither, and yet take long where they are given much.

`rank` without draws is none of them: a hundred thousand lines take it a tenth of a second."""

ONE = {"wear.wear_coefficient_dry": None}
LIFE = ["wear.life_years"]


def call(name: str, endless: bool) -> Call:
    """Prepare a call; what it takes to prepare is not part of it."""
    return _CALLS[name](endless)


def _oven() -> pinfilm.Line:
    return pinfilm.examples.load("oven_now")


def _sample(endless: bool) -> Call:
    return partial(pinfilm.sample, _oven(), ONE, n=1 << 22 if endless else 4096, outputs=LIFE)


def _sensitivity(endless: bool) -> Call:
    return partial(pinfilm.sensitivity, _oven(), ONE, output=LIFE[0], n=1 << 20 if endless else 1024)


def _sweep(endless: bool) -> Call:
    grid = {"duty.ambient_c": range(10, 40), "oil.noack_pct": range(90), "costs.labour_rate_per_h": range(2000)}
    small = {"oil.noack_pct": range(1, 90), "duty.ambient_c": range(10, 40)}
    return partial(pinfilm.sweep, _oven(), grid if endless else small, outputs=[*LIFE, "wear.governs"])


def _calibrate(endless: bool) -> Call:
    reading = pinfilm.Reading.elongation(0.5, running_h=2000)
    return partial(pinfilm.calibrate, _oven(), [reading], None if endless else ONE, n=1 << 18 if endless else 1024)


def _recommend(endless: bool) -> Call:
    """Give offers of which everything passes the cheap tests and is evaluated."""
    shots = [8 + i / 1e5 for i in range(4000 if endless else 1500)]
    pauses = [540 + i / 10 for i in range(400)] if endless else [540, 1080]
    oven = pinfilm.examples.load("oven_proposed")
    return partial(pinfilm.recommend, oven, shots, run_min=[180], dwell_min=pauses, every_nth=[9])


def _simulate(endless: bool) -> Call:
    packing = pinfilm.examples.load("packing_proposed")
    week = [pinfilm.Shift(start_h=0, length_h=168)]
    return partial(pinfilm.simulate, packing, shifts=week, weeks=6.5 if endless else 0.2)


def _lines(endless: bool, now: bool) -> pa.Table:
    """Give lines, both of each or only the one as it is."""
    lines = pinfilm.examples.lines(200)
    if now:
        lines = {key.removeprefix("now."): lines[key] for key in lines if not key.startswith("proposed.")}
    many = pa.table({key: values * (50 if endless else 1) for key, values in lines.items()})
    return pa.concat_tables([many] * 30) if endless else many


def _evaluate_table(endless: bool) -> Call:
    return partial(pinfilm.evaluate_table, _lines(endless, now=True))


def _compare_table(endless: bool) -> Call:
    return partial(pinfilm.compare_table, _lines(endless, now=False))


def _evaluate_file(endless: bool) -> Call:
    folder = Path(tempfile.mkdtemp())
    pq.write_table(_lines(endless, now=True), folder / "lines.parquet")

    def run(**settings: Any) -> bytes:
        target = folder / "results.parquet"
        pinfilm.evaluate_file(folder / "lines.parquet", target, part_rows=50_000, resume=False, **settings)
        return target.read_bytes()

    return run


def _log(endless: bool) -> pinfilm.CurrentLog:
    """Readings of 100 days, every two seconds or every ten minutes."""
    step = 2 if endless else 600
    time = np.datetime64("2025-01-01", "s") + np.arange(0, 100 * 86_400, step)
    noise = np.random.default_rng(1).normal(size=len(time))
    return pinfilm.CurrentLog(time=time.astype("datetime64[ns]"), current_a=3 + 0.05 * noise)


def _watch_many(endless: bool) -> Call:
    return partial(pinfilm.watch_many, [_log(endless)] * (10 if endless else 12), "2025-03-01")


def _of_log(name: str, *arguments: Any, **settings: Any) -> Callable[[bool], Call]:
    return lambda endless: partial(getattr(_log(endless), name), *arguments, **settings)


def _money(rows: int) -> dict[str, Any]:
    """Worth and cost of lines that are alike in worth for money: hard to choose from."""
    cost = np.random.default_rng(2).integers(1000, 2000, rows).astype(float)
    return {"npv": cost + 100.0, "invest": cost}


def _rank_draws(endless: bool) -> Call:
    table = _money(400 if endless else 20)
    spread = np.random.default_rng(3).normal(1.0, 0.05, (4000 if endless else 16, len(table["npv"])))
    return partial(pinfilm.rank, table, budget=0.5 * float(np.sum(table["invest"])), draws=table["npv"] * spread)


def _change_points(endless: bool) -> Call:
    return partial(statistics.change_points, np.random.default_rng(4).normal(size=4_000_000 if endless else 2000))


def _reynolds(endless: bool) -> Call:
    return partial(film.reynolds_bearing, np.linspace(0.1, 0.99, 100_000 if endless else 3), 1.5)


_CALLS: dict[str, Callable[[bool], Call]] = {
    "sample": _sample,
    "sensitivity": _sensitivity,
    "sweep": _sweep,
    "calibrate": _calibrate,
    "recommend": _recommend,
    "simulate": _simulate,
    "evaluate_table": _evaluate_table,
    "compare_table": _compare_table,
    "evaluate_file": _evaluate_file,
    "watch_many": _watch_many,
    "rank_draws": _rank_draws,
    "change_points": _change_points,
    "log.change_points": _of_log("change_points"),
    "log.before_after": _of_log("before_after", "2025-03-01"),
    "log.savings": _of_log("savings", "2025-03-01", line=_oven()),
    "log.watch": _of_log("watch", "2025-03-01"),
    "reynolds_bearing": _reynolds,
}

UNDER_WAY_S = 0.1
"""Processor time after which a call is in its middle."""


def main(name: str) -> None:
    """Press Ctrl-C in the middle of a call; print the processor time until it was raised."""
    warnings.simplefilter("ignore")
    endless = partial(call(name, True), **({"threads": 1} if name in WITH_THREADS else {}))
    pressed: list[float] = []
    ticks = 0

    def press() -> None:
        nonlocal ticks
        while time.process_time() < begun + UNDER_WAY_S:
            time.sleep(0.002)
            ticks += 1
        pressed.append(time.process_time())
        os.kill(os.getpid(), signal.SIGINT)

    finger = threading.Thread(target=press, daemon=True)
    begun = time.process_time()
    try:
        finger.start()
        endless()
        said = {"raised": False}
    except KeyboardInterrupt:
        said = {"raised": True, "processor_s": time.process_time() - pressed[0], "ticks": ticks}
    print(json.dumps(said), flush=True)
    os._exit(0)  # work that was left behind need not end


if __name__ == "__main__":
    main(sys.argv[1])
