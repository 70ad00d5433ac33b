"""Many threads on the same objects: on a free-threaded interpreter they really run at once (see DEVELOPERS.md)."""

from __future__ import annotations

import sys
import sysconfig
import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import Any

import numpy as np
from conftest import quietly

import pinfilm

THREADS = 8


def together(work: Callable[[int], Any], times: int = THREADS) -> list[Any]:
    """Run `work` in as many threads, which all begin at the same moment."""
    start = threading.Barrier(times)

    def one(number: int) -> Any:
        start.wait()
        return work(number)

    with ThreadPoolExecutor(times) as pool:
        return list(pool.map(one, range(times)))


def test_import_does_not_bring_the_lock_back() -> None:
    if sysconfig.get_config_var("Py_GIL_DISABLED"):
        assert not sys._is_gil_enabled()  # type: ignore[attr-defined]


def test_lines_and_results_are_shared(line: pinfilm.Line) -> None:
    expected = quietly(line)

    def look(number: int) -> None:
        for _ in range(5):
            result = pinfilm.evaluate(line)
            assert result == expected
            assert hash(result) == hash(expected)
            assert line.replace({"duty.ambient_c": 20.0 + number}).duty.ambient_c == 20.0 + number
            assert expected.explain("tension.pull_n").value
            assert expected.to_dict() == result.to_dict()
            assert pinfilm.Evaluation.from_json(result.to_json()) == expected

    import warnings

    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)
        together(look)


def test_long_calls_run_beside_each_other() -> None:
    line = pinfilm.examples.load("oven_now")
    given = {"wear.wear_coefficient_dry": None}

    def draw(_: int) -> list[float]:
        return pinfilm.sample(line, given, n=256, outputs=["wear.life_years"], threads=2)["wear.life_years"].tolist()

    first, *others = together(draw, 4)
    assert all(other == first for other in others)


def test_a_capsule_that_many_are_handed_is_emptied_once() -> None:
    class Careless:
        """Hands the same capsule to everybody, which a producer should not."""

        def __init__(self, table: pinfilm.Table) -> None:
            self.capsule = table.__arrow_c_stream__()

        def __arrow_c_stream__(self, requested_schema: object = None) -> object:
            return self.capsule

    both = pinfilm.examples.lines(20)
    columns = {name.removeprefix("now."): both[name] for name in both if not name.startswith("proposed.")}
    table = pinfilm.evaluate_table(columns, outputs=["tension.pull_n"])
    for _ in range(20):
        stream = Careless(table)

        def take(_: int, stream: Careless = stream) -> str:
            try:
                pinfilm.evaluate_table(stream, outputs=["drive.current_a"])
            except pinfilm.TableError as error:
                return error.code
            return "none"

        # who got it finds the results of before among the columns; all others find nothing
        assert sorted(together(take)) == ["duplicate_column"] + ["not_a_table"] * (THREADS - 1)


def test_a_watch_is_taken_by_one_thread_at_a_time() -> None:
    time = np.datetime64("2025-01-01") + np.arange(60) * np.timedelta64(1, "D")
    current = 3.0 + 0.01 * (np.arange(60) * 7 % 10)
    quiet = pinfilm.CurrentLog(time=time, current_a=current, rules=pinfilm.LogRules(window_h=0))
    watch = pinfilm.LogWatch.learn(quiet)

    def take(number: int) -> int:
        try:
            watch.take(f"2025-03-{number + 2:02}", current_a=3.04)
        except (RuntimeError, pinfilm.InputError):  # in use by another thread; not later than the last
            return 0
        return 1

    taken = sum(together(take))
    assert taken >= 1
    assert pinfilm.LogWatch.from_json(watch.to_json()) == watch
