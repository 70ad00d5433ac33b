"""Lines walked through their weeks, against arithmetic by hand and against the closed form."""

from __future__ import annotations

import math
import threading
import time
import warnings
from typing import Any

import pytest

import pinfilm

LINES = ["oven", "slat", "paint", "floor", "packing"]
NONSTOP = [pinfilm.Shift(start_h=0, length_h=168)]


def under_timer(name: str, run_min: float, dwell_min: float, **timer: Any) -> pinfilm.Line:
    """Return a demo line as it is, its joints sprayed on a timer: the trade's habit."""
    spray = pinfilm.Spray(
        flow_ml_per_min=5.0, timer=pinfilm.Timer(run_min=run_min, dwell_min=dwell_min, **timer), application_section=1
    )
    return pinfilm.examples.load(f"{name}_now").replace(lubrication=spray)


def quietly(line: pinfilm.Line, **options: Any) -> pinfilm.SimulatedLine:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)
        return pinfilm.simulate(line, **options)


# Share never reached, by hand: in ticks of 1 ms g = gcd(circuit, period); locked if run <= g, then 1 - run/g.
def never_by_hand(circuit_s: float, run_min: float, dwell_min: float) -> float:
    period, run = round((run_min + dwell_min) * 60_000), round(run_min * 60_000)
    cell = math.gcd(round(circuit_s * 1000), period)
    return max(0.0, 1 - run / cell)


@pytest.mark.parametrize("name", LINES)
def test_five_minutes_in_each_hour_and_in_two(name: str) -> None:
    """Common practice, no source: five minutes of running in each hour, in two hours where the chain is too wet."""
    for dwell in (55.0, 115.0):
        line = under_timer(name, 5.0, dwell)
        walked = quietly(line, weeks=5, shifts=NONSTOP)
        circuit = pinfilm.evaluate(line).kinematics.circuit_time_s
        by_hand = never_by_hand(circuit, 5.0, dwell)
        assert walked.never_reached_closed_form == pytest.approx(by_hand, abs=1e-12)
        # joints are whole: a stretch may hold one more or one less at each of its ends
        assert walked.never_reached == pytest.approx(by_hand, abs=2 * 6 / walked.joints)


def test_what_the_habit_does_to_the_oven() -> None:
    # one turn in 20 min, period 60 min: three turns a period, five of the twenty minutes of chain get it for ever
    for dwell, wait in ((55.0, 3), (115.0, 6)):
        walked = quietly(under_timer("oven", 5.0, dwell), weeks=2, shifts=NONSTOP)
        assert walked.never_reached == walked.never_reached_closed_form == 0.75
        assert walked.wait_circuits == (wait,)
        assert walked.worst_wait_h == pytest.approx(wait / 3, abs=1e-6)
        starved = [dry for dry, shots in zip(walked.longest_dry_h, walked.shots, strict=True) if shots == 0]
        assert len(starved) == 420 and set(starved) == {336.0}


def test_stretching_the_pause_halves_the_oil() -> None:
    hour, two = (quietly(under_timer("slat", 5.0, dwell), shifts=NONSTOP) for dwell in (55.0, 115.0))
    assert hour.oil_used_l == pytest.approx(2 * two.oil_used_l, rel=1e-3)
    # flow × points × strands × a twelfth of the time
    line = under_timer("slat", 5.0, 55.0)
    by_hand = 5.0e-3 * line.lubrication.points * line.circuit.strands * 4 * 168 * 60 / 12
    assert hour.oil_used_l == pytest.approx(by_hand, rel=1e-9)


def test_a_night_of_whole_periods_keeps_the_lock_another_breaks_it() -> None:
    whole = [pinfilm.Shift(start_h=24 * day, length_h=16) for day in range(7)]
    broken = [pinfilm.Shift(start_h=24 * day, length_h=15 + 50 / 60) for day in range(7)]
    wall, machine = (under_timer("oven", 10.0, 50.0, clock=clock) for clock in ("wall", "machine"))
    assert quietly(wall, weeks=2, shifts=whole).never_reached == 0.5
    assert quietly(wall, weeks=2, shifts=broken).never_reached == 0.0
    assert quietly(machine, weeks=2, shifts=broken).never_reached == 0.5


def test_a_clock_of_its_own_without_an_interlock_oils_what_stands() -> None:
    shifts = [pinfilm.Shift(start_h=24 * day, length_h=16) for day in range(7)]
    free, held = (under_timer("oven", 10.0, 50.0, clock="wall", interlocked=held) for held in (False, True))
    free_walk, held_walk = quietly(free, weeks=1, shifts=shifts), quietly(held, weeks=1, shifts=shifts)
    assert free_walk.oil_standing_l == pytest.approx(free_walk.oil_used_l / 3)
    assert held_walk.oil_standing_l == 0.0
    assert held_walk.lost_run_h == pytest.approx(7 * 8 / 6)
    assert free_walk.shots == held_walk.shots


def test_stops_and_speeds_of_a_shift() -> None:
    line = pinfilm.examples.load("oven_now")
    stopping = pinfilm.Shift(start_h=0, length_h=8, stop_every_min=50, stop_min=10)
    walked = quietly(line, weeks=1, shifts=[stopping, pinfilm.Shift(start_h=8, length_h=8, speed_m_per_min=7.0)])
    assert walked.running_h == pytest.approx(8 * 50 / 60 + 8)
    assert walked.circuits == pytest.approx((8 * 50 * 3.5 + 480 * 7.0) / 70.0)


@pytest.mark.parametrize("name", LINES)
def test_the_proposed_lines_reach_all(name: str) -> None:
    walked = quietly(pinfilm.examples.load(f"{name}_proposed"), weeks=5, shifts=NONSTOP)
    assert walked.never_reached == walked.never_reached_closed_form == 0.0
    assert walked.worst_wait_h <= walked.worst_wait_closed_form_h + 1e-6
    assert len(walked.shots) == walked.joints


@pytest.mark.parametrize(
    ("options", "field", "code"),
    [
        ({"weeks": 0}, "weeks", "out_of_range"),
        ({"weeks": math.nan}, "weeks", "not_finite"),
        ({"weeks": 1e4}, "weeks", "out_of_range"),
        ({"phase_min": -1}, "phase_min", "out_of_range"),
        ({"shifts": []}, "shifts", "missing"),
        (
            {"shifts": [pinfilm.Shift(start_h=0, length_h=9), pinfilm.Shift(start_h=8, length_h=9)]},
            "shifts",
            "inconsistent",
        ),
        ({"shifts": [pinfilm.Shift(start_h=167, length_h=2)]}, "shifts", "out_of_range"),
        ({"threads": 0}, "threads", "out_of_range"),
        (
            {"weeks": 500, "shifts": [pinfilm.Shift(start_h=0, length_h=168, speed_m_per_min=900)]},
            "weeks",
            "out_of_range",
        ),
    ],
)
def test_impossible_walks_say_what_to_change(options: dict[str, Any], field: str, code: str) -> None:
    with pytest.raises(pinfilm.InputError) as caught:
        quietly(pinfilm.examples.load("oven_now"), **options)
    assert (caught.value.field, caught.value.code) == (field, code)


def test_a_round_by_hand_has_no_clock() -> None:
    with pytest.raises(pinfilm.InputError, match="manual") as caught:
        pinfilm.simulate(pinfilm.examples.load("slat_now"))
    assert caught.value.code == "unsupported"


def test_a_walk_can_be_stopped_and_leaves_python_free() -> None:
    fast = pinfilm.examples.load("packing_now").replace(
        lubrication=pinfilm.Spray(flow_ml_per_min=1.0, timer=pinfilm.Timer(run_min=1, dwell_min=10))
    )
    told: list[tuple[int, int]] = []

    class EnoughError(Exception):
        """Raised by the callback."""

    def progress(done: int, every: int) -> None:
        told.append((done, every))
        raise EnoughError

    ticks = 0
    running = True

    def beside() -> None:
        nonlocal ticks
        while running:
            ticks += 1
            time.sleep(0.001)

    other = threading.Thread(target=beside)
    other.start()
    started = time.monotonic()
    with pytest.raises(EnoughError):
        quietly(fast, weeks=6, shifts=NONSTOP, progress=progress)
    running = False
    other.join()
    assert time.monotonic() - started < 30
    assert len(told) == 1 and ticks > 0
