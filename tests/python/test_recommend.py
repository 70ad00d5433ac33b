"""Recommended set-ups, against full enumeration with `evaluate` alone, and against lines where the answer is known."""

from __future__ import annotations

import math
import signal
import threading
import time
import warnings
from collections import Counter
from collections.abc import Iterator
from itertools import product
from typing import Any, NamedTuple

import pytest

import pinfilm

OVEN = pinfilm.examples.load("oven_proposed")
GRID = {
    "shots_ul": [2.0, 4.0, 8.0, 16.0, 40.0],
    "every_nth": [1, 8, 9, 11],
    "run_min": [10.0, 60.0, 180.0, 240.0],
    "dwell_min": [0.0, 50.0, 540.0, 1620.0, 6000.0],
}


@pytest.fixture(autouse=True)
def _no_range_warnings() -> Iterator[None]:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)
        yield


class Candidate(NamedTuple):
    shot: float
    n: int
    run: float
    dwell: float


def candidates(grid: dict[str, list[Any]]) -> list[Candidate]:
    """Every set-up of a grid; a timer that never stops stands once, with the first run."""
    every = product(grid["shots_ul"], grid["every_nth"], grid["run_min"], grid["dwell_min"])
    return [Candidate(*one) for one in every if one[3] > 0 or one[2] == grid["run_min"][0]]


def running_viscosity(oil: pinfilm.Oil, celsius: float) -> float:
    """Return the viscosity of an oil by grade on the running chain (mPa s)."""
    v100 = pinfilm.oil.v100_mm2_s(oil.iso_vg, oil.viscosity_index)
    kinematic = pinfilm.oil.kinematic_viscosity_mm2_s(celsius, 40.0, oil.iso_vg, 100.0, v100)
    density = pinfilm.oil.density_kg_per_m3(oil.density_15_kg_per_m3, celsius)
    return float(pinfilm.oil.dynamic_viscosity_mpa_s(kinematic, density))


def judged(line: pinfilm.Line, one: Candidate) -> tuple[str, pinfilm.Evaluation]:
    """Evaluate a set-up and give the first limit that it breaks; no shortcut, nothing of `recommend`."""
    timer = pinfilm.Timer(run_min=one.run, dwell_min=one.dwell) if one.dwell > 0 else None
    method = line.lubrication.replace(shot_ul=one.shot, every_nth=one.n, timer=timer)
    found = pinfilm.evaluate(line.replace(lubrication=method))
    fill, supply = found.fill, found.supply
    lasts = -math.log(line.fill.floor) / fill.loss_rate_per_h
    overflow = 1 - (1 - supply.dripped_share) / (method.capture * fill.entered_share)
    if math.gcd(one.n, found.kinematics.joints) > 1:
        return "joints_never_dosed", found
    if supply.injector_s is not None and supply.injector_s > one.n * found.kinematics.joint_time_s:
        return "injector_too_slow", found
    if fill.never_reached > 0:
        return "timer_locked", found
    if fill.worst_wait_h > lasts:
        return "wait_too_long", found
    if (fill.lock_risk or 0) > 0.05:
        return "lock_risk", found
    if fill.lowest_fill_reached < line.fill.floor:
        return "below_floor", found
    if overflow > 0.1:
        return "overflow", found
    if running_viscosity(line.oil, found.kinematics.mean_c) < fill.viscosity_least_mpa_s:
        return "no_grade_fits", found
    if supply.outlet_use is not None and supply.outlet_use > 0.8:
        return "line_pressure", found
    if min(v for v in (supply.cable_v, supply.cable_inrush_v, 99.0) if v is not None) < line.supply.least_voltage_v:
        return "cable", found
    return "", found


def keeps_floor_if_lost_quicker(line: pinfilm.Line, one: Candidate, found: pinfilm.Evaluation) -> bool:
    """Evaluate the set-up anew with oil that dust takes besides, a quarter of all that is lost."""
    timer = pinfilm.Timer(run_min=one.run, dwell_min=one.dwell) if one.dwell > 0 else None
    method = line.lubrication.replace(shot_ul=one.shot, every_nth=one.n, timer=timer)
    running = line.duty.hours_per_day / 24 * line.duty.days_per_year / 365  # dust settles all the time
    more = line.duty.dust_loss_per_s + 0.25 * found.fill.loss_rate_per_h / 3600 * running
    fill = pinfilm.evaluate(line.replace({"duty.dust_loss_per_s": more}).replace(lubrication=method)).fill
    assert fill.loss_rate_per_h == pytest.approx(1.25 * found.fill.loss_rate_per_h)
    return fill.lowest_fill_reached >= line.fill.floor


def enumerated(line: pinfilm.Line, grid: dict[str, list[Any]]) -> tuple[Counter[str], Candidate | None]:
    """Count the reasons and find the best by full enumeration."""
    reasons: Counter[str] = Counter()
    kept = []
    for one in candidates(grid):
        reason, found = judged(line, one)
        reasons[reason] += 1
        if not reason:
            overflow = 1 - (1 - found.supply.dripped_share) / (line.lubrication.capture * found.fill.entered_share)
            starts = 60 / (one.run + one.dwell) if one.dwell else 0.0
            running = one.run / (one.run + one.dwell) if one.dwell else 1.0
            strokes = running / (one.n * found.kinematics.joint_time_s)
            key = (
                not keeps_floor_if_lost_quicker(line, one, found),
                round(100 * max(0.0, overflow)),
                starts > 1,
                round(math.log2(strokes)),
                one.n,
                round(found.fill.worst_wait_h, 6),
                starts,
                one.shot,
                one.run,
            )
            kept.append((found.cost.total_per_year, key, one))
    least = min((cost for cost, _, _ in kept), default=math.nan)
    near = sorted((key, one) for cost, key, one in kept if cost <= 1.02 * least)
    return reasons, near[0][1] if near else None


@pytest.mark.parametrize("price", [27.0, 9000.0])
@pytest.mark.parametrize("floor", [0.2, 0.6])
def test_full_enumeration_finds_the_same(price: float, floor: float) -> None:
    line = OVEN.replace({"oil.price_per_l": price, "fill.floor": floor})
    reasons, best = enumerated(line, GRID)
    found = pinfilm.recommend(line, points=[2], **GRID)
    # the surveyed place and the best point are both tried; ask for the surveyed one alone to count
    one_place = pinfilm.recommend(line, application_sections=[1], application_positions=[0.85], sides=["top"], **GRID)
    assert {group.reason: group.count for group in one_place.refused} == {k: v for k, v in reasons.items() if k}
    assert one_place.feasible_candidates == reasons[""]
    assert one_place.candidates == sum(reasons.values()) == len(candidates(GRID))
    assert best is not None and one_place.set_up is not None
    chosen = one_place.set_up
    assert (chosen.shot_ul, chosen.every_nth, chosen.dwell_min or 0.0) == (best.shot, best.n, best.dwell)
    if best.dwell:
        assert chosen.run_min == best.run
    assert found.alternatives[0].total_per_year <= one_place.alternatives[0].total_per_year * 1.02


def test_the_recommended_line_evaluates_to_what_is_said_of_it() -> None:
    found = pinfilm.recommend(OVEN, **GRID)
    assert found.line is not None and found.sheet is not None
    again = pinfilm.evaluate(found.line)
    assert again == found.evaluation
    best = found.alternatives[0]
    assert best.set_up == found.set_up == found.sheet.set_up
    assert best.total_per_year == again.cost.total_per_year
    assert best.lowest_fill_reached == again.fill.lowest_fill_reached
    assert found.sheet.applied_l_per_year == again.supply.applied_l_per_year
    assert [a.rank for a in found.alternatives] == list(range(1, len(found.alternatives) + 1))
    assert found.candidates == found.feasible_candidates + sum(group.count for group in found.refused)


def test_dear_oil_buys_the_least_of_it() -> None:
    """With oil that costs more than everything else, the best set-up is one that uses least, within two per cent."""
    found = pinfilm.recommend(OVEN.replace({"oil.price_per_l": 10000.0}), keep=1000, **GRID)
    least = min(alternative.applied_l_per_year for alternative in found.alternatives)
    assert found.alternatives[0].applied_l_per_year == pytest.approx(least, rel=0.021)


def test_any_number_of_threads_gives_the_same() -> None:
    one, two, many = (pinfilm.recommend(OVEN, threads=threads, all_rejections=True, **GRID) for threads in (1, 2, 5))
    assert one == two == many
    assert len(one.rejections) == one.candidates - one.feasible_candidates


def test_what_is_not_offered_is_worked_out_from_the_line() -> None:
    for name in ("oven_now", "slat_now", "floor_now", "packing_proposed"):
        line = pinfilm.examples.load(name)
        found = pinfilm.recommend(line, [2, 5, 10, 20, 50])
        assert found.candidates > 5, name
        if found.feasible:
            assert found.evaluation is not None and found.evaluation.fill.never_reached == 0.0, name


def test_nothing_feasible_says_so_and_names_the_nearest() -> None:
    found = pinfilm.recommend(OVEN, shots_ul=[8], run_min=[5], dwell_min=[55], every_nth=[8, 9])
    assert not found.feasible and found.feasible_candidates == 0
    assert found.line is found.evaluation is found.sheet is found.set_up is None
    assert found.alternatives == ()
    assert {group.reason for group in found.refused} >= {"joints_never_dosed"}
    for group in found.refused:
        assert group.count > 0 and group.nearest and group.cure
    assert "nothing is recommended" in found.why[0]
    assert "No recommendation" in str(found) and "No recommendation" in found._repr_html_()
    for rejection in found.rejections:
        assert rejection.message


def test_joints_behind_attachments_are_never_hidden() -> None:
    """One gap in 14 is covered by an attachment: whatever the timer, those joints stay without oil."""
    line = OVEN.replace({"circuit.attachment_every": 14, "circuit.attachment_blocks": [3]})
    refused = pinfilm.recommend(line, **GRID)
    assert not refused.feasible
    unreached = {group.reason: group for group in refused.refused}["joints_unreached"]
    assert unreached.missed_by == pytest.approx(1 / 14)
    allowed = pinfilm.recommend(line, most_unreached=0.1, **GRID)
    assert allowed.feasible and allowed.evaluation is not None
    assert allowed.evaluation.fill.never_reached == pytest.approx(1 / 14)
    assert any("stay without oil" in sentence for sentence in allowed.why)
    assert allowed.sheet is not None and allowed.sheet.never_reached == pytest.approx(1 / 14)


def test_open_food_wants_a_food_grade_oil() -> None:
    line = OVEN.replace({"duty.food_contact": True})
    plain, food = line.oil, line.oil.replace(food_grade=True)
    found = pinfilm.recommend(line, oils=[plain, food], **GRID)
    assert found.feasible and found.set_up is not None and found.set_up.oil_number == 1
    refused = {group.reason: group.count for group in found.refused}
    # counted once for the surveyed place and once for the best one
    assert refused["not_food_grade"] == 2 * len(candidates(GRID)) == found.candidates // 2


def test_hot_oil_is_refused_unless_confirmed() -> None:
    # the oven has 195 °C; within 20 K of the flash point somebody must confirm
    hot = OVEN.oil.replace(flash_point_c=150.0)
    found = pinfilm.recommend(OVEN, oils=[hot, OVEN.oil], **GRID)
    assert found.feasible and found.set_up is not None and found.set_up.oil_number == 1
    assert {group.reason for group in found.refused} >= {"hot_oil"}
    confirmed = OVEN.replace({"fill.hot_oil_confirmed": True})
    assert "hot_oil" not in {group.reason for group in pinfilm.recommend(confirmed, oils=[hot], **GRID).refused}


def test_a_freezer_wants_a_low_pour_point() -> None:
    cold = pinfilm.examples.load("slat_proposed").replace(
        {"duty.ambient_c": -25.0, "duty.wash_interval_h": None, "duty.surroundings": "freezer"}
    )
    cold = cold.replace(supply=None)
    stiff = pinfilm.Oil.from_grade(32, 140, pour_point_c=-15.0, price_per_l=12.0, food_grade=True)
    fluid = stiff.replace(pour_point_c=-50.0)
    found = pinfilm.recommend(cold, [2, 5, 10, 20], [stiff, fluid])
    reasons = {group.reason: group.count for group in found.refused}
    assert reasons["oil_does_not_flow"] == pinfilm.recommend(cold, [2, 5, 10, 20], [stiff]).candidates
    assert {
        rejection.set_up.oil_number for rejection in found.rejections if rejection.reason == "oil_does_not_flow"
    } == {0}
    if found.feasible:
        assert found.set_up is not None and found.set_up.oil_number == 1


def test_a_place_in_a_wash_or_above_food_is_refused() -> None:
    sections = [
        section.replace(above_product=True) if i == 1 else section for i, section in enumerate(OVEN.circuit.sections)
    ]
    line = OVEN.replace(circuit=OVEN.circuit.replace(sections=sections))
    found = pinfilm.recommend(line, application_sections=[1, 3], **GRID)
    reasons = {group.reason: group for group in found.refused}
    assert "above open product" in reasons["point_excluded"].nearest
    assert found.set_up is None or found.set_up.application_section == 3


def test_methods_by_name_and_as_objects() -> None:
    spray = pinfilm.Spray(
        flow_ml_per_min=1, timer=pinfilm.Timer(run_min=1, dwell_min=1), capture=0.4, zone_length_mm=50
    )
    grid = {"shots_ul": [10, 20, 40], "run_min": [21, 42], "dwell_min": [540, 1620]}
    methods = ["synchronised", spray, "drip", "manual"]
    found = pinfilm.recommend(OVEN, methods=methods, all_rejections=True, **grid)
    tried = {rejection.set_up.method for rejection in found.rejections}
    tried |= {alternative.set_up.method for alternative in found.alternatives}
    assert tried == {"synchronised", "timed_spray", "drip", "manual"}
    only = pinfilm.recommend(OVEN, methods=[spray], most_overflow=1, most_lock_risk=1, **grid)
    for alternative in only.alternatives:
        joints_per_min = OVEN.duty.speed_m_per_min * 1000 / OVEN.chain.pitch_mm
        assert alternative.set_up.flow_ml_per_min == pytest.approx(alternative.set_up.shot_ul * joints_per_min / 1000)


@pytest.mark.parametrize(
    ("changes", "field", "code"),
    [
        ({"shots_ul": []}, "shots_ul", "missing"),
        ({"shots_ul": [5, -1]}, "shots_ul.1", "out_of_range"),
        ({"shots_ul": [5, 0]}, "shots_ul.1", "out_of_range"),
        ({"shots_ul": [math.nan]}, "shots_ul.0", "not_finite"),
        ({"shots_ul": [math.inf]}, "shots_ul.0", "not_finite"),
        ({"shots_ul": ["five"]}, "shots_ul.0", "wrong_type"),
        ({"oils": []}, "oils", "missing"),
        ({"run_min": []}, "run_min", "missing"),
        ({"run_min": [0]}, "run_min.0", "out_of_range"),
        ({"dwell_min": [-5]}, "dwell_min.0", "out_of_range"),
        ({"every_nth": [0]}, "every_nth.0", "out_of_range"),
        ({"every_nth": [2.5]}, "every_nth.0", "wrong_type"),
        ({"points": [3]}, "points.0", "out_of_range"),
        ({"application_sections": [99]}, "application_sections", "out_of_range"),
        ({"application_positions": [1.5]}, "application_positions.0", "out_of_range"),
        ({"sides": ["left"]}, "sides.0", "unknown_choice"),
        ({"methods": ["brush"]}, "methods", "unknown_choice"),
        ({"methods": []}, "methods", "missing"),
        ({"most_overflow": 2}, "most_overflow", "out_of_range"),
        ({"pump_ml_per_min": 0}, "pump_ml_per_min", "out_of_range"),
        ({"threads": 0}, "threads", "out_of_range"),
        ({"run_min": range(1, 4000), "dwell_min": range(1, 4000)}, "shots_ul", "out_of_range"),
        (
            {"run_min": range(1, 800), "dwell_min": range(1, 800), "all_rejections": True},
            "all_rejections",
            "out_of_range",
        ),
    ],
)
def test_offers_that_cannot_be_say_what_to_change(changes: dict[str, Any], field: str, code: str) -> None:
    offers = {"shots_ul": [5, 10], "every_nth": [9], **changes}
    with pytest.raises(pinfilm.InputError) as caught:
        pinfilm.recommend(OVEN, **offers)
    assert (caught.value.field, caught.value.code) == (field, code)


def test_units_are_converted() -> None:
    pint = pytest.importorskip("pint")
    units = pint.UnitRegistry()
    grid = {**GRID, "run_min": [3 * units.hour], "dwell_min": units.Quantity([9.0, 27.0], "hour")}
    plain = {**GRID, "run_min": [180.0], "dwell_min": [540.0, 1620.0]}
    assert pinfilm.recommend(OVEN, **grid) == pinfilm.recommend(OVEN, **plain)


def large() -> dict[str, Any]:
    """Return offers that take long: everything passes the sieve and is evaluated."""
    return {
        "shots_ul": [8 + i / 1e5 for i in range(200_000)],
        "run_min": [180],
        "dwell_min": [540, 1620],
        "every_nth": [9],
    }


def test_ctrl_c_stops_a_search() -> None:
    """A signal while it computes: KeyboardInterrupt, long before the end; the calling thread asks every 50 ms."""
    told: list[tuple[int, int]] = []
    timer = threading.Timer(0.5, signal.raise_signal, [signal.SIGINT])
    timer.start()
    with pytest.raises(KeyboardInterrupt):
        pinfilm.recommend(OVEN, progress=lambda done, every: told.append((done, every)), **large())
    timer.join()
    assert not told or told[-1][0] < 400_000


def test_progress_rises_and_other_threads_go_on() -> None:
    told: list[tuple[int, int]] = []
    seen = []
    over = threading.Event()

    def beside() -> None:
        while not over.wait(0.002):
            seen.append(time.monotonic())

    other = threading.Thread(target=beside)
    other.start()
    offers = {**large(), "shots_ul": [8 + i / 1e3 for i in range(1500)]}
    pinfilm.recommend(OVEN, progress=lambda done, every: told.append((done, every)), threads=1, **offers)
    over.set()
    other.join()
    assert told[-1][0] == told[-1][1] and told == sorted(told, key=lambda pair: pair[0])
    assert len(seen) > 10


def test_an_error_in_the_callback_is_raised() -> None:
    def broken(_done: int, _every: int) -> None:
        raise RuntimeError("no display")

    with pytest.raises(RuntimeError, match="no display"):
        pinfilm.recommend(OVEN, progress=broken, **large())


def test_pages_come_from_the_register() -> None:
    found = pinfilm.recommend(OVEN, **GRID)
    assert found.sheet is not None
    text, html = str(found), found._repr_html_()
    for page in (text, html, str(found.sheet), found.sheet._repr_html_()):
        assert "shot_ul" in page and "µL" in page
    assert "oil of one shot in one gap" in text
    assert "what to check on the day" in str(found.sheet)
    paths = {row["path"] for row in pinfilm.register()}
    assert {"recommendation.set_up.shot_ul", "recommendation.sheet.least_cable_mm2", "simulation.oil_used_l"} <= paths
