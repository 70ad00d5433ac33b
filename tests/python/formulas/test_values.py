"""Numbers that stand elsewhere, round trips, and what has no answer."""

from __future__ import annotations

import copy
import math
import pickle
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pinfilm import (
    InputError,
    coverage,
    economics,
    electrics,
    fill,
    film,
    hydraulics,
    kinematics,
    motor,
    oil,
    tension,
    wear,
)

FLOWS = st.lists(st.floats(-1e4, 1e4), min_size=1, max_size=12)


def near(value: float, relative: float = 1e-9) -> object:
    return pytest.approx(value, rel=relative)


class TestPublished:
    """The units of the border are right: one number of an outside source for every module."""

    def test_kinematics(self) -> None:
        assert kinematics.pitch_diameter_mm(100, 5) == near(170.13016167, 1e-9)
        assert kinematics.articulation_angle_deg(19) == near(18.94736842105263)
        assert kinematics.speed_ripple(5) == near(0.2041530661383851)

    def test_tension(self) -> None:
        assert tension.capstan_ratio(0.3, 180) == near(math.exp(0.3 * math.pi))
        assert tension.sag_tension_n(5, 2, 0.04) == near(5 * 9.80665 * 4 / 0.32)

    def test_oil(self) -> None:
        assert oil.kinematic_viscosity_mm2_s(150, 40, 220, 100, 18.9) == near(6.267506127137519, 1e-8)
        assert oil.v100_mm2_s(100, 0) == near(8.0, 1e-6)
        assert oil.blend_viscosity_mm2_s(32, 1000, 0.3) == near(277.26902964073696)
        assert oil.density_kg_per_m3(890, 60) == near(861.4979591929585)
        assert oil.grade_limits_mm2_s(220) == (near(198), near(242))

    def test_film(self) -> None:
        assert film.eccentricity_short(50, 0.5) == near(0.0081044646035295)
        assert film.squeeze_time_short_s(200, 7.5, 30, 5000, 50, 0.1, 0.999) == near(113.77077463558221)
        assert film.asperity_integral(-3, 2.5) == near(18.811329832415773, 1e-6)
        bearing = film.reynolds_bearing(0.5, 2.5)
        assert bearing.sommerfeld == near(0.0777729495177668, 5e-3)
        assert bearing.attitude_deg == near(58.020000191268885, 5e-3)

    def test_coverage(self) -> None:
        oven = coverage.timer_coverage(1200, 600, 3000)
        assert (oven.wait_circuits, oven.share_of_joints, oven.never_reached) == ((3,), (0.5,), 0.5)
        assert (oven.locked, oven.lock_circuits) == (True, 3)
        three = coverage.timer_coverage(126, 120, 1680)
        assert three.wait_circuits == (14, 15, 29)
        assert three.share_of_shots == (near(0.7), near(0.25), near(0.05))
        assert (three.mean_wait_circuits, three.worst_wait_circuits) == (15.0, 29)
        every = coverage.every_nth(2400, 24)
        assert (every.reached, every.never, every.spacing, every.wait_circuits) == (100, 2300, 24, 1)
        assert coverage.every_nth(2400, 4, attachment_every=6, blocked=[0, 1]).reached == 400
        assert coverage.reached_joints(840, 1.05, 0.025, 0.175) == 420
        lock = coverage.lock_time_s(1200, 600, 3000, 0.005)
        assert (lock.starved_s, lock.constant_s, lock.random_s, lock.contiguous) == (600, near(12e4), near(5e5), True)
        visits = coverage.manual_interval(8, 0.3, 0.05)
        assert visits.mean_h * 3600 == near(30315.789473684214)
        assert visits.p95_h * 3600 == near(50623.265885824025, 1e-7)
        gaps = coverage.three_gaps(math.sqrt(2) - 1, 8)
        assert [count for _, count in gaps] == [3, 1, 4]
        assert [length for length, _ in gaps] == [near(0.07106781, 1e-6), near(0.1005051, 1e-6), near(0.1715729, 1e-6)]

    def test_hydraulics(self) -> None:
        assert hydraulics.penetration_time_s(10, 50, 100, 30, 0, 90) == near(20.0)
        up = hydraulics.penetration_time_s(200, 100, 100, 30, 20, 180, density_kg_per_m3=880)
        assert up == math.inf
        falling = hydraulics.penetration_time_s(10, 600, 80, 30, 20, 0, density_kg_per_m3=900)
        assert falling == near(0.8908841028998815, 1e-8)

    def test_fill(self) -> None:
        settled = fill.periodic_fill(1440, 300, 6900, 30, 100, 5e-6 * 3600)
        assert settled.mean_fill == near(0.20462793123192696, 1e-6)
        assert settled.overflow_ul == near(26.46402934831231, 1e-6)
        assert settled.always_full is True
        assert fill.smallest_shot_ul(1237, 300, 3300, 100, 1e-6 * 3600, 0.5) == near(0.7716019742486202, 1e-6)

    def test_electrics(self) -> None:
        areas = [0.5, 0.75, 1.0, 1.5, 2.5, 4, 6, 10, 16]
        stranded = [36.0, 24.5, 18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15]
        flexible = [39.0, 26.0, 19.5, 13.3, 7.98, 4.95, 3.3, 1.91, 1.21]
        np.testing.assert_allclose(electrics.conductor_resistance_ohm_per_km(areas, 2), stranded)
        np.testing.assert_allclose(electrics.conductor_resistance_ohm_per_km(areas, 6), flexible)
        assert electrics.voltage_drop_v(2, 50, 1.5, 5, 20) == near(2.66)
        assert electrics.load_voltage_v(60, 50, 1.5, 5, 40) == near(19.611026212016352, 1e-6)

    def test_motor(self) -> None:
        at_slip = motor.equivalent_circuit(
            0.641, 1.106, 0.332, 0.464, 26.3, 460, 60, 4, slip=0.022, friction_windage_w=1100
        )
        assert at_slip.current_a == near(18.89195, 1e-6)
        assert at_slip.power_factor == near(0.8321225, 1e-6)
        assert at_slip.input_power_w == near(12525.14, 1e-6)
        assert at_slip.air_gap_power_w == near(11838.81, 1e-6)
        six_poles = motor.equivalent_circuit(
            0.294, 0.503, 0.144, 0.209, 13.25, 220, 60, 6, slip=0.02, friction_windage_w=403
        )
        assert six_poles.speed_rpm == near(1176.0)
        assert six_poles.shaft_torque_nm == near(42.4, 3e-3)
        assert six_poles.efficiency == near(0.863, 3e-3)

    def test_wear_and_economics(self) -> None:
        assert wear.archard_volume_mm3(7e-3, 100, 1000, 1176) == near(198.4126984)
        assert economics.npv(0.08, [-40_000, 5_000, 8_000, 12_000, 30_000]) == near(3065.2226681795255)
        assert economics.single_present_value_factor(0.03, 10) == near(0.744, 5e-4)
        assert economics.irr([-3, 1, 1, 1, 1]) == near(0.12589832496244302)
        assert economics.payback_years([-100, 60, 60]) == near(5 / 3)
        assert economics.discounted_payback_years(0.1, [-100, 60, 60]) == near(1.9166666666666665)


class TestRoundTrips:
    @given(st.floats(2.3, 3.2), st.floats(1, 6), st.floats(3, 100), st.floats(3, 100))
    def test_chain_length(self, lg: float, ratio: float, z1: float, z2: float) -> None:
        pitch, centre = 10**lg / 10, 10**lg * ratio * 5
        length = kinematics.chain_length_pitches(centre, pitch, z1, z2)
        back = kinematics.centre_distance_mm(length, pitch, z1, z2)
        spread = (abs(z1 - z2) / math.pi) ** 2 * pitch / centre  # two centres have this length where teeth differ much
        if centre / pitch > spread:
            assert back == near(centre, 1e-6)

    @given(st.floats(10, 1000), st.floats(-20, 250))
    def test_viscosity_index(self, v40: float, index: float) -> None:
        try:
            v100 = oil.v100_mm2_s(v40, index)
        except InputError:
            return  # beyond the standard
        assert oil.viscosity_index(v40, v100) == pytest.approx(index, abs=1e-4)

    @given(st.floats(0.001, 0.9999), st.floats(0.1, 10))
    def test_short_bearing(self, e: float, slenderness: float) -> None:
        assert film.eccentricity_short(film.sommerfeld_short(e, slenderness), slenderness) == near(e, 1e-8)

    @given(st.floats(0.3, 6))
    def test_motor(self, load: float) -> None:
        plate = {
            "rated_power_kw": 4, "rated_voltage_v": 400, "rated_current_a": 8.05, "rated_speed_rpm": 1450,
            "rated_efficiency": 0.886, "rated_power_factor": 0.81, "no_load_current_a": 3.4,
        }  # fmt: skip
        assert motor.power_from_current_kw(motor.current_from_power_a(load, **plate), **plate) == near(load, 1e-6)


class TestCashFlows:
    @settings(max_examples=200)
    @given(st.lists(FLOWS, min_size=1, max_size=5), st.floats(-0.5, 2))
    def test_projects_in_rows_give_what_each_gives_alone(self, projects: list[list[float]], rate: float) -> None:
        length = min(map(len, projects))
        table = np.array([flows[:length] for flows in projects])
        np.testing.assert_array_equal(economics.npv(rate, table), [economics.npv(rate, flows) for flows in table])
        for many, status, fine in [
            (economics.irr(table), economics.irr_status(table), {"unique", "several"}),
            (
                economics.payback_years(table),
                economics.payback_status(table),
                {"pays_back", "pays_back_then_loses", "immediate"},
            ),
        ]:
            assert [not math.isnan(value) for value in many] == [word in fine for word in status]
        for flows, value, word in zip(table, economics.irr(table), economics.irr_status(table), strict=True):
            assert economics.irr_status(flows) == word
            if word in {"unique", "several"}:
                assert economics.irr(flows) == value
                assert any(root == pytest.approx(value, abs=1e-9) for root in economics.irr_roots(flows))
            else:
                with pytest.raises(InputError) as refused:
                    economics.irr(flows)
                assert (refused.value.code, refused.value.value) == ("no_answer", word)

    def test_rates_broadcast_with_projects(self) -> None:
        flows = np.array([[-10.0, 6, 6], [-10, 20, -5]])
        rates = np.array([0.0, 0.05, 0.1])
        grid = economics.npv(rates[:, None], flows)
        assert grid.shape == (3, 2)
        assert grid[1, 1] == economics.npv(0.05, flows[1])
        assert economics.npv(rates, flows[0]).shape == (3,)
        assert economics.discounted_payback_years(rates[:, None], flows).shape == (3, 2)
        with pytest.raises(InputError):
            economics.npv(rates, flows)
        cube = np.arange(24.0).reshape(2, 3, 4) - 5
        assert economics.npv(rates, cube)[1, 2] == economics.npv(rates[2], cube[1, 2])

    def test_what_is_not_known_or_not_given(self) -> None:
        with pytest.raises(InputError) as refused:
            economics.npv(0.1, [-1.0, math.nan])
        assert refused.value.code == "not_finite"
        table = [[-1.0, math.nan], [-1.0, 2.0]]
        assert np.isnan(economics.npv(0.1, table)).tolist() == [True, False]
        assert economics.payback_status(table) == ["nan", "pays_back"]
        assert np.isnan(economics.npv([0.1, math.nan], [-1.0, 2.0])).tolist() == [False, True]
        for empty in ([], [[], []], 5.0):
            with pytest.raises(InputError):
                economics.npv(0.1, empty)
        assert economics.npv(0.1, np.empty((0, 3))).shape == (0,)
        with pytest.raises(InputError):
            economics.irr_roots([[-1.0, 2.0]])

    def test_payback_that_never_comes(self) -> None:
        for flows, word in [([-100, 10, 10], "beyond_horizon"), ([-100, -10], "never"), ([10, -30, 5], "loses_after")]:
            assert economics.payback_status(flows) == word
            with pytest.raises(InputError) as refused:
                economics.payback_years(flows)
            assert (refused.value.code, refused.value.value) == ("no_answer", word)
        assert economics.payback_years([0, 5]) == 0.0
        with pytest.raises(InputError) as refused:
            economics.payback_days(1000, 0)
        assert refused.value.code == "no_answer"
        assert np.isnan(economics.payback_days(1000, [500.0, 0.0])).tolist() == [False, True]


class TestCoverage:
    @given(st.integers(1, 400), st.integers(1, 300), st.integers(0, 300))
    def test_shares_add_up(self, circuit: int, run: int, dwell: int) -> None:
        found = coverage.timer_coverage(circuit, run, dwell)
        assert sum(found.share_of_joints) + found.never_reached == near(1.0)
        assert sum(found.share_of_shots) == near(1.0)
        assert len(found.wait_circuits) <= 3
        assert list(found.wait_circuits) == sorted(found.wait_circuits)
        assert all(isinstance(wait, int) for wait in found.wait_circuits)

    @given(
        st.integers(1, 60),
        st.integers(1, 30),
        st.integers(0, 40),
        st.lists(st.integers(-50, 50), min_size=1, max_size=3),
    )
    def test_reached_joints_by_walking(self, joints: int, run: int, dwell: int, delays: list[int]) -> None:
        period = run + dwell
        passes = [[(joint + n * joints) for n in range(period)] for joint in range(joints)]
        reached = sum(any((t + d) % period < run for t in times for d in delays) for times in passes)
        assert coverage.reached_joints(joints, joints, run, dwell, delays) == reached

    @given(st.integers(1, 5000), st.integers(1, 100))
    def test_every_nth(self, joints: int, n: int) -> None:
        found = coverage.every_nth(joints, n)
        assert found.reached == joints // math.gcd(joints, n)
        assert found.reached + found.never == joints
        assert all(isinstance(value, int) for value in found.to_dict().values())

    def test_points(self) -> None:
        assert coverage.points_coverage(1200, 400, 3200, [0, 300]).never_reached == near(5 / 12)
        one = coverage.points_coverage(126, 120, 1680, [0])
        assert one.wait_circuits == coverage.timer_coverage(126, 120, 1680).wait_circuits
        with pytest.raises(InputError):
            coverage.points_coverage(1200, 400, 3200, [])

    def test_no_lock_is_no_answer(self) -> None:
        with pytest.raises(InputError) as refused:
            coverage.lock_time_s(1240, 900, 27900, 0.005)
        assert refused.value.code == "no_answer"
        locks = coverage.lock_time_s([1200, 1240], [600, 900], [3000, 27900], 0.005)
        assert np.isnan(locks.starved_s).tolist() == [False, True]
        assert locks.contiguous.tolist() == [True, False]

    def test_counts_are_whole_and_lists_take_numbers(self) -> None:
        for call in (
            lambda: coverage.every_nth(900.5, 7),
            lambda: coverage.three_gaps(0.3, 2.5),
            lambda: coverage.timer_coverage([1200.0], 600, 3000),
            lambda: coverage.reached_joints(900.5, 1200, 600, 3000),
            lambda: electrics.conductor_resistance_ohm_per_km(1.5, 5.5),
        ):
            with pytest.raises(InputError) as refused:
                call()
            assert refused.value.code == "wrong_type"
        with pytest.raises(InputError):
            coverage.every_nth(900, 7, blocked=[0])


class TestOutcomes:
    def test_copies_are_equal(self) -> None:
        for outcome in (
            coverage.timer_coverage(1200, 600, 3000),
            coverage.every_nth([900, 901], 7),
            film.reynolds_bearing([0.5, 0.6], 1),
            fill.periodic_fill(1440, 300, 6900, 30, 100, 0.018),
        ):
            assert pickle.loads(pickle.dumps(outcome)) == outcome
            assert copy.copy(outcome) == outcome
            assert copy.deepcopy(outcome) == outcome
            assert outcome != 1
        one = coverage.every_nth(900, 7)
        assert eval(repr(one), vars(coverage)) == one
        assert one != coverage.every_nth(900, 8)
        with pytest.raises(AttributeError):
            one.reached = 3  # type: ignore[misc]

    def test_attributes_are_arrays_where_arguments_were(self) -> None:
        pandas = pytest.importorskip("pandas")
        curve = motor.equivalent_circuit(
            0.641, 1.106, 0.332, 0.464, 26.3, 460, 60, 4, slip=pandas.Series([0.01, 1.0], index=["run", "start"])
        )
        assert list(curve.shaft_torque_nm.index) == ["run", "start"]
        assert curve.speed_rpm["start"] == 0.0
        assert curve.shaft_torque_nm["start"] == curve.induced_torque_nm["start"]


class TestMotor:
    CIRCUIT = (0.641, 1.106, 0.332, 0.464, 26.3, 460, 60, 4)

    def test_slip_or_load(self) -> None:
        by_load = motor.equivalent_circuit(*self.CIRCUIT, shaft_power_w=1e4)
        by_slip = motor.equivalent_circuit(*self.CIRCUIT, slip=by_load.slip)
        assert by_slip.shaft_power_w == near(1e4)
        for arguments, code in [
            ({}, "missing"),
            ({"slip": 0.02, "shaft_power_w": 1e4}, "inconsistent"),
            ({"shaft_power_w": 1e6}, "motor.pull_out"),
        ]:
            with pytest.raises(InputError) as refused:
                motor.equivalent_circuit(*self.CIRCUIT, **arguments)
            assert refused.value.code == code
        with pytest.raises(InputError, match=r"at element \[1\]"):
            motor.equivalent_circuit(*self.CIRCUIT, shaft_power_w=[1e4, 1e6])


def test_choices_are_named() -> None:
    with pytest.raises(InputError) as refused:
        film.reynolds_bearing(0.5, 1, cavitation="half-sommerfeld")
    assert refused.value.code == "unknown_choice"
    assert film.reynolds_bearing(0.5, 1, cavitation="full").attitude_deg == near(90, 1e-3)
    assert film.reynolds_bearing(0.5, 1) == film.reynolds_bearing(0.5, 1, cavitation="reynolds")
    smallest = film.line_contact_film_um(100, 0.5, 100, 10, 20)
    assert smallest < film.line_contact_film_um(100, 0.5, 100, 10, 20, formula="central")


def test_numbers_of_other_kinds() -> None:
    assert kinematics.articulation_angle_deg(Fraction(10)) == 36.0


def test_core_refusals_in_arrays_name_the_element() -> None:
    with pytest.raises(InputError, match=r"at element \[0, 1\]") as refused:
        oil.grade_limits_mm2_s([[68, 70]])
    assert refused.value.code == "no_such_grade"
    with pytest.raises(InputError) as refused:
        hydraulics.pressure_drop_kpa(1e5, 1.0, 4.0, 1.0)
    assert refused.value.code == "turbulent"
