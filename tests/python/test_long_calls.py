"""Every long call: Ctrl-C stops it, other Python threads run meanwhile, progress is told, threads change no bit.

Times are processor time of the process, by one thread: how busy the machine is hardly matters to them.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
import pytest
from long_calls import WITH_THREADS, WITHOUT, call

pytestmark = pytest.mark.filterwarnings("ignore::pinfilm.PinfilmRangeWarning")


@cache
def interrupted(name: str) -> dict[str, Any]:
    """Press Ctrl-C in the middle of a call in a process of its own."""
    program = Path(__file__).with_name("long_calls.py")
    alone = {**os.environ, "RAYON_NUM_THREADS": "1", "OMP_NUM_THREADS": "1"}
    done = subprocess.run([sys.executable, program, name], env=alone, capture_output=True, text=True, check=True)
    return json.loads(done.stdout)


@pytest.mark.skipif(sys.platform == "win32", reason="SIGINT is sent in another way there")
@pytest.mark.parametrize("name", WITH_THREADS + WITHOUT)
def test_ctrl_c_is_raised_within_half_a_second(name: str) -> None:
    found = interrupted(name)
    assert found["raised"], "it was over before it could be interrupted"
    assert found["processor_s"] < 0.5


@pytest.mark.skipif(sys.platform == "win32", reason="SIGINT is sent in another way there")
@pytest.mark.parametrize("name", WITH_THREADS + WITHOUT)
def test_other_threads_run_meanwhile(name: str) -> None:
    """The thread that presses Ctrl-C waits in steps of two milliseconds: it can count them only while it has Python."""
    assert interrupted(name)["ticks"] >= 5


@pytest.mark.parametrize("name", WITH_THREADS)
def test_progress_rises_to_the_end(name: str) -> None:
    told: list[tuple[int, int]] = []
    call(name, False)(progress=lambda done, whole: told.append((done, whole)))
    assert told[-1][0] == told[-1][1] > 0
    assert all(0 <= done <= whole for done, whole in told)
    shares = [done / whole for done, whole in told]
    assert shares == sorted(shares)


@pytest.mark.parametrize("name", WITH_THREADS)
def test_what_progress_raises_stops_it(name: str) -> None:
    def enough(done: int, whole: int) -> None:
        raise RuntimeError("enough")

    with pytest.raises(RuntimeError, match="enough"):
        call(name, False)(progress=enough)
    with pytest.raises(TypeError):
        call(name, False)(progress=7)


@pytest.mark.parametrize("name", WITH_THREADS)
def test_threads_change_no_bit(name: str) -> None:
    work = call(name, False)
    one, two, three, all_of_them = (written(work(threads=threads)) for threads in (1, 2, 3, None))
    assert len(one) > 100
    assert one == two == three == all_of_them


def written(found: Any) -> bytes:
    """Write a result as bytes, every number with all its bits."""
    if isinstance(found, bytes):
        return found
    if isinstance(found, list):
        return b"".join(map(written, found))
    if hasattr(found, "to_json"):
        return found.to_json().encode()
    if hasattr(found, "__arrow_c_stream__"):
        return b"".join(bits(column.to_numpy(zero_copy_only=False)) for column in pa.table(found).columns)
    if hasattr(found, "guesses"):
        tables = (found.draws, found.guesses(), found.predictions(), found.readings())
        return b"".join(map(written, tables)) + repr((found.learnt, found.spread_left, found.misfit)).encode()
    if hasattr(found, "percentile"):
        return written(found.inputs) + written(found.columns)
    if hasattr(found, "swings"):
        return written(found.table()) + written(found.swings())
    return b"".join(bits(np.asarray(found[name])) for name in found)


def bits(column: Any) -> bytes:
    return repr(column.tolist()).encode() if column.dtype == object else column.tobytes()
