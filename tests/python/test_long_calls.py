"""Long calls: Ctrl-C stops them, progress is told, and other Python threads run meanwhile. Bounds are loose."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import textwrap
import threading
import time
from collections.abc import Callable
from typing import Any

import pytest

import pinfilm

pytestmark = pytest.mark.filterwarnings("ignore::pinfilm.PinfilmRangeWarning")

ENDLESS = {
    "sample": "pinfilm.sample(line, {'wear.wear_coefficient_dry': None}, n=1 << 22, outputs=['wear.life_years'])",
    "sensitivity": "pinfilm.sensitivity(line, output='wear.life_years', n=1 << 20)",
    "sweep": "pinfilm.sweep(line, {'duty.ambient_c': range(10, 40), 'oil.noack_pct': range(90), "
    "'costs.labour_rate_per_h': range(2000)}, outputs=['wear.life_years'])",
    "calibrate": "pinfilm.calibrate(line, [pinfilm.Reading.elongation(0.5, running_h=2000)], n=1 << 18)",
}


@pytest.mark.skipif(sys.platform == "win32", reason="SIGINT is sent in another way there")
@pytest.mark.parametrize("verb", ENDLESS)
def test_ctrl_c_stops_it(verb: str) -> None:
    """Each of these would run for a minute or more; it must end soon after the signal."""
    program = f"""
    import warnings, pinfilm
    warnings.simplefilter("ignore")
    line = pinfilm.examples.load("oven_now")
    print("begins", flush=True)
    try:
        {ENDLESS[verb]}
    except KeyboardInterrupt:
        print("interrupted", flush=True)
    """
    with subprocess.Popen([sys.executable, "-c", textwrap.dedent(program)], stdout=subprocess.PIPE, text=True) as child:
        assert child.stdout is not None
        assert child.stdout.readline() == "begins\n"
        time.sleep(0.7)
        assert child.poll() is None, "it was over before it could be interrupted"
        os.kill(child.pid, signal.SIGINT)
        sent = time.monotonic()
        said = child.stdout.readline()
        took = time.monotonic() - sent
        child.kill()
    assert said == "interrupted\n"
    assert took < 5.0  # half a second on an idle machine; loose for one that is not


def calls() -> dict[str, Callable[..., Any]]:
    line = pinfilm.examples.load("oven_now")
    one = {"wear.wear_coefficient_dry": None}
    return {
        "sample": lambda **kw: pinfilm.sample(line, one, n=8192, outputs=["wear.life_years"], **kw),
        "sensitivity": lambda **kw: pinfilm.sensitivity(line, one, output="wear.life_years", n=4096, **kw),
        "sweep": lambda **kw: pinfilm.sweep(line, {"oil.noack_pct": range(1, 90)}, outputs=["wear.life_years"], **kw),
        "calibrate": lambda **kw: pinfilm.calibrate(
            line, [pinfilm.Reading.elongation(0.5, running_h=2000)], one, n=2048, **kw
        ),
    }


@pytest.mark.parametrize("verb", list(ENDLESS))
def test_progress_rises_to_the_end(verb: str) -> None:
    told: list[tuple[int, int]] = []
    calls()[verb](progress=lambda done, whole: told.append((done, whole)))
    assert told[-1][0] == told[-1][1] > 0
    assert all(0 <= done <= whole for done, whole in told)


@pytest.mark.parametrize("verb", list(ENDLESS))
def test_what_progress_raises_stops_it(verb: str) -> None:
    def enough(done: int, whole: int) -> None:
        raise RuntimeError("enough")

    with pytest.raises(RuntimeError, match="enough"):
        calls()[verb](progress=enough)
    with pytest.raises(TypeError, match="progress"):
        calls()[verb](progress=7)


def test_other_threads_run_meanwhile() -> None:
    counted = 0
    over = threading.Event()

    def count() -> None:
        nonlocal counted
        while not over.is_set():
            counted += 1
            time.sleep(0.001)

    counter = threading.Thread(target=count)
    counter.start()
    try:
        before = counted
        calls()["sample"](threads=2)
        meanwhile = counted - before
    finally:
        over.set()
        counter.join()
    assert meanwhile > 3
