"""
The compiled core of pinfilm. Import from `pinfilm`, not from here.
"""

from _typeshed import SupportsGetItem
from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from os import PathLike
from pinfilm.typing import Column, Columns as Columns2, Correlations, Defaults, Doubts, DoubtsOut, Draws, Floats, FloatsOut, Grid, Lines, Progress, Scalar
from typing import Any, SupportsFloat, SupportsIndex, final

__all__ = ["Alternative", "AvoidedUse", "BeforeAfter", "Calibration", "Caution", "Chain", "Change", "ChangePoints", "Circuit", "Cleaning", "Columns", "Comparison", "Cost", "Costs", "CurrentLog", "CusumPath", "Distribution", "Drip", "Drive", "DriveState", "Duty", "ElongationCurve", "Estimate", "Evaluation", "Event", "EveryNth", "Explanation", "Fill", "FillState", "Friction", "FrictionCurve", "Joint", "JointOrbit", "JointState", "Kinematics", "LevelChanges", "Line", "LineSetUp", "LockTime", "LogNote", "LogRow", "LogRules", "LogWatch", "LossParts", "LossRates", "Manual", "ManualInterval", "Oil", "OilCheck", "OilUse", "OperatingPoint", "OrbitEvent", "PeriodicFill", "PointsCoverage", "Proof", "PullChange", "Ranking", "Reading", "Recommendation", "Refused", "Rejection", "ReynoldsBearing", "RollerContact", "RoundLoop", "Sample", "Savings", "Sensitivity", "SetUpSheet", "Shift", "ShotRecord", "SimulatedLine", "Spray", "Straight", "Supply", "SupplyState", "Surface", "Synchronised", "Table", "Tension", "Timer", "TimerCoverage", "Turn", "TwoSprocket", "ViscosityWindow", "Warning", "WatchAlarm", "WatchReport", "WatchStep", "Wear", "WearState", "archard_volume_mm3", "articulation_angle_deg", "asperity_integral", "blank_survey", "blend_viscosity_mm2_s", "calibrate", "capstan_ratio", "centre_distance_mm", "chain_length_pitches", "chain_speed_m_per_s", "change_points", "compare", "compare_table", "conductor_resistance_ohm_per_km", "current_from_power_a", "cusum", "cv_rmse_pct", "default_uncertainty", "demand_ul_per_joint_h", "density_kg_per_m3", "discounted_payback_years", "dynamic_viscosity_mpa_s", "eccentricity_short", "effective_sample_size", "elongation_pct", "equivalent_circuit", "evaluate", "evaluate_table", "every_nth", "fill_between_shots", "formulas", "grade_limits_mm2_s", "handbook_grade", "handbook_methods", "handbook_sae_grade", "irr", "irr_roots", "irr_status", "joint_entry_time_s", "joint_orbit", "kinematic_viscosity_mm2_s", "lag1", "line_contact_film_um", "load_voltage_v", "lock_risk", "lock_time_s", "loss_rates_per_h", "manual_interval", "newey_west_se", "nmbe_pct", "npv", "oil_use", "payback_days", "payback_status", "payback_years", "penetration_time_s", "periodic_fill", "pitch_diameter_mm", "points_coverage", "power_from_current_kw", "pressure_drop_kpa", "pressure_mpa", "rank", "reached_joints", "recommend", "register", "reynolds_bearing", "roller_chain_power_kw", "rolling_resistance", "sag_tension_n", "sample", "savings_uncertainty", "sensitivity", "simulate", "single_present_value_factor", "smallest_shot_ul", "sommerfeld_short", "speed_ripple", "squeeze_time_short_s", "standards", "sweep", "three_gaps", "timer_coverage", "uniform_present_value_factor", "unlubricated_coefficient", "v100_mm2_s", "vent_time_s", "version", "viscosity_index", "viscosity_window_mpa_s", "voltage_drop_v", "watch_many"]

@final
class Alternative:
    """
    A set-up that keeps every limit, with what decides its place.
    """
    def __copy__(self, /) -> Alternative: ...
    def __deepcopy__(self, /, _memo: Any) -> Alternative: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, rank: int | None, set_up: LineSetUp | None, total_per_year: Scalar | None, applied_l_per_year: Scalar | None, dripped_share: Scalar | None, overflow_share: Scalar | None, lowest_fill_reached: Scalar | None, mean_fill: Scalar | None, never_reached: Scalar | None, worst_wait_h: Scalar | None, lock_risk: Scalar | None) -> Alternative: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def applied_l_per_year(self, /) -> float:
        """
        oil that leaves the applicator
        """
    @property
    def dripped_share(self, /) -> float:
        """
        share of the applied oil that drips
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Alternative:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Alternative:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Alternative:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def lock_risk(self, /) -> float:
        """
        share of the possible speed errors at which a stretch of chain waits too long
        """
    @property
    def lowest_fill_reached(self, /) -> float:
        """
        lowest fill of the joints that are reached
        """
    @property
    def mean_fill(self, /) -> float:
        """
        mean fill of all joints
        """
    @property
    def never_reached(self, /) -> float:
        """
        share of joints that never get oil
        """
    @property
    def overflow_share(self, /) -> float:
        """
        share of the oil in the gaps that spills over
        """
    @property
    def rank(self, /) -> int:
        """
        place, the best first
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Alternative:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def set_up(self, /) -> LineSetUp:
        """
        what would be set
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def total_per_year(self, /) -> float:
        """
        cost of a year
        """
    @property
    def worst_wait_h(self, /) -> float:
        """
        longest wait, in running time
        """

@final
class AvoidedUse:
    """
    Energy and money avoided since a change, with the uncertainty of measurement and verification.
    """
    def __copy__(self, /) -> AvoidedUse: ...
    def __deepcopy__(self, /, _memo: Any) -> AvoidedUse: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, sentence: str | None, may_be_claimed: bool | None, name: str | None, logged: str | None, changed: str | None, last: str | None, running_h: Scalar | None, avoided_kwh: Scalar | None, avoided_low_kwh: Scalar | None, avoided_high_kwh: Scalar | None, confidence_pct: Scalar | None, avoided_pct: Scalar | None, avoided_kwh_per_year: Scalar | None = None, money: Scalar | None = None, money_per_year: Scalar | None = None, currency: str | None = None, uncertainty_68_pct: Scalar | None, motor_spread_pct: Scalar | None, guideline_90_pct: Scalar | None, guideline_90_by_months_pct: Scalar | None, factor_by_months: Scalar | None, cv_rmse_pct: Scalar | None, nmbe_pct: Scalar | None, good_fit: bool | None, placebo_rank: Scalar | None, placebo_agrees: bool | None = None, notes: Sequence[LogNote] | None, cleaning: Cleaning | None) -> AvoidedUse: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def avoided_high_kwh(self, /) -> float:
        """
        its interval, high end
        """
    @property
    def avoided_kwh(self, /) -> float:
        """
        energy avoided in these hours
        """
    @property
    def avoided_kwh_per_year(self, /) -> float | None:
        """
        the same over the running hours of a year; needs the line
        """
    @property
    def avoided_low_kwh(self, /) -> float:
        """
        its interval, low end
        """
    @property
    def avoided_pct(self, /) -> float:
        """
        avoided, of what would have been used
        """
    @property
    def changed(self, /) -> str:
        """
        day of the change
        """
    @property
    def cleaning(self, /) -> Cleaning:
        """
        what cleaning did
        """
    @property
    def confidence_pct(self, /) -> float:
        """
        confidence of the interval
        """
    @property
    def currency(self, /) -> str | None:
        """
        currency
        """
    @property
    def cv_rmse_pct(self, /) -> float:
        """
        scatter of the model before; limit 15 % for days, 30 % for hours
        """
    @property
    def factor_by_months(self, /) -> float:
        """
        that factor
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> AvoidedUse:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> AvoidedUse:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> AvoidedUse:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def good_fit(self, /) -> bool:
        """
        whether both are within the guideline's limits
        """
    @property
    def guideline_90_by_months_pct(self, /) -> float:
        """
        the same with the factor by months
        """
    @property
    def guideline_90_pct(self, /) -> float:
        """
        the guideline's uncertainty at 90 % with the factor 1.26
        """
    @property
    def last(self, /) -> str:
        """
        last day of the log
        """
    @property
    def logged(self, /) -> str:
        """
        current_a or power_kw
        """
    @property
    def may_be_claimed(self, /) -> bool:
        """
        whether something was avoided, its uncertainty at 68 % is below one half, and the placebo agrees
        """
    @property
    def money(self, /) -> float | None:
        """
        money avoided in these hours
        """
    @property
    def money_per_year(self, /) -> float | None:
        """
        money avoided in a year
        """
    @property
    def motor_spread_pct(self, /) -> float:
        """
        part of it that comes from reading power off a current, one standard deviation; 0 for logged power
        """
    @property
    def name(self, /) -> str:
        """
        name of the log
        """
    @property
    def nmbe_pct(self, /) -> float:
        """
        bias of the model before; limit 5 % for days, 10 % for hours
        """
    @property
    def notes(self, /) -> tuple[LogNote, ...]:
        """
        what to read this with
        """
    @property
    def placebo_agrees(self, /) -> bool | None:
        """
        whether the real |t| exceeds them all; none with fewer than 19 dates
        """
    @property
    def placebo_rank(self, /) -> float:
        """
        rank of the change among dates before at which the same was tried
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> AvoidedUse:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def running_h(self, /) -> float:
        """
        logged running hours since
        """
    @property
    def sentence(self, /) -> str:
        """
        the verdict in one sentence
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def uncertainty_68_pct(self, /) -> float:
        """
        uncertainty at 68 % confidence, of what was avoided; the guideline's limit is 50 %
        """

@final
class BeforeAfter:
    """
    What changed on a day: the difference at equal load, speed and temperature, and how sure that is.
    """
    def __copy__(self, /) -> BeforeAfter: ...
    def __deepcopy__(self, /, _memo: Any) -> BeforeAfter: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, sentence: str | None, verdict: str | None, name: str | None, logged: str | None, changed: str | None, first: str | None, last: str | None, means_before: int | None, means_after: int | None, means_left_out: int | None, level_before_a: Scalar | None = None, level_before_kw: Scalar | None = None, difference_a: Scalar | None = None, difference_kw: Scalar | None = None, saving_pct: Scalar | None, saving_low_pct: Scalar | None, saving_high_pct: Scalar | None, confidence_pct: Scalar | None, error_pct: Scalar | None, error_hac_pct: Scalar | None, error_ar1_pct: Scalar | None, degrees: Scalar | None, t: Scalar | None, p_value: Scalar | None, lag1: Scalar | None, lags: int | None, scatter_pct: Scalar | None, covariates: Sequence[str] | None, effects: Mapping[str, float] | None, placebo_splits: int | None, placebo_largest_t: Scalar | None, placebo_rank: Scalar | None, placebo_agrees: bool | None = None, detectable_pct: Scalar | None, needed_days: int | None = None, active_saving_pct: Scalar | None = None, pull: PullChange | None = None, pin_share_pct: Scalar | None = None, halved_pins_pct: Scalar | None = None, halved_all_pct: Scalar | None = None, notes: Sequence[LogNote] | None, cleaning: Cleaning | None) -> BeforeAfter: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def active_saving_pct(self, /) -> float | None:
        """
        saved of the active current, by the quick form for a clamp on the mains side of a motor without converter
        """
    @property
    def changed(self, /) -> str:
        """
        day of the change
        """
    @property
    def cleaning(self, /) -> Cleaning:
        """
        what cleaning did
        """
    @property
    def confidence_pct(self, /) -> float:
        """
        confidence of the intervals
        """
    @property
    def covariates(self, /) -> tuple[str, ...]:
        """
        what was taken out: load, speed, temperature
        """
    @property
    def degrees(self, /) -> float:
        """
        degrees of freedom that the means are worth
        """
    @property
    def detectable_pct(self, /) -> float:
        """
        least change that so many days could show
        """
    @property
    def difference_a(self, /) -> float | None:
        """
        current after less before, at equal covariates
        """
    @property
    def difference_kw(self, /) -> float | None:
        """
        power after less before, likewise
        """
    @property
    def effects(self, /) -> dict[str, float]:
        """
        change of the reading per unit of each, A or kW
        """
    @property
    def error_ar1_pct(self, /) -> float:
        """
        standard error from their lag-one autocorrelation
        """
    @property
    def error_hac_pct(self, /) -> float:
        """
        standard error from the autocovariances of the residuals
        """
    @property
    def error_pct(self, /) -> float:
        """
        standard error that counts
        """
    @property
    def first(self, /) -> str:
        """
        first day of the period before
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> BeforeAfter:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> BeforeAfter:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> BeforeAfter:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def halved_all_pct(self, /) -> float | None:
        """
        fall of the current if pin, roller and track friction were all halved; needs the line
        """
    @property
    def halved_pins_pct(self, /) -> float | None:
        """
        fall of the current if pin/bush friction were halved; needs the line
        """
    @property
    def lag1(self, /) -> float:
        """
        lag-one autocorrelation of the residuals
        """
    @property
    def lags(self, /) -> int:
        """
        lags of the autocovariances
        """
    @property
    def last(self, /) -> str:
        """
        last day of the period after
        """
    @property
    def level_before_a(self, /) -> float | None:
        """
        current before, at the covariates of the period after
        """
    @property
    def level_before_kw(self, /) -> float | None:
        """
        power before, likewise
        """
    @property
    def logged(self, /) -> str:
        """
        current_a or power_kw
        """
    @property
    def means_after(self, /) -> int:
        """
        means after
        """
    @property
    def means_before(self, /) -> int:
        """
        means before
        """
    @property
    def means_left_out(self, /) -> int:
        """
        means on the day of the change and while the oil settled
        """
    @property
    def name(self, /) -> str:
        """
        name of the log
        """
    @property
    def needed_days(self, /) -> int | None:
        """
        days on each side that would show the saving, of means as far apart as these; none where no number would do
        """
    @property
    def notes(self, /) -> tuple[LogNote, ...]:
        """
        what to read this with
        """
    @property
    def p_value(self, /) -> float:
        """
        probability of a greater |t| if nothing changed
        """
    @property
    def pin_share_pct(self, /) -> float | None:
        """
        share of the pull that pins and bushes make; needs the line
        """
    @property
    def placebo_agrees(self, /) -> bool | None:
        """
        whether the real |t| exceeds them all; happens in 16 to 20 % of logs where nothing was done; none with fewer than 19 dates
        """
    @property
    def placebo_largest_t(self, /) -> float:
        """
        largest |t| among them
        """
    @property
    def placebo_rank(self, /) -> float:
        """
        (1 + dates with |t| at least as large) / (1 + dates); no p value
        """
    @property
    def placebo_splits(self, /) -> int:
        """
        dates before the change at which the same test was tried
        """
    @property
    def pull(self, /) -> PullChange | None:
        """
        the same as pull of the chain; needs the line
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> BeforeAfter:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def saving_high_pct(self, /) -> float:
        """
        its interval, high end
        """
    @property
    def saving_low_pct(self, /) -> float:
        """
        its interval, low end
        """
    @property
    def saving_pct(self, /) -> float:
        """
        saved, of the level before
        """
    @property
    def scatter_pct(self, /) -> float:
        """
        scatter of the means about the model, of the level before
        """
    @property
    def sentence(self, /) -> str:
        """
        the verdict in one sentence
        """
    @property
    def t(self, /) -> float:
        """
        difference over its error
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def verdict(self, /) -> str:
        """
        saving, more_use, not_proven, nothing_seen or cannot_be_told
        """

@final
class Calibration:
    """
    What readings taught.
    """
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def agreeing_starts(self, /) -> tuple[int, int]:
        """
        Starts of the search that agree, of how many.
        """
    @property
    def bell_shaped(self, /) -> bool:
        """
        Whether a bell curve described the answer; if not, walkers drew it.
        """
    @property
    def doubtful(self, /) -> list[str]:
        """
        Readings that the most probable values leave unexplained, in sentences.
        """
    @property
    def draws(self, /) -> Columns:
        """
        Draws of the guesses after the readings, a column each.
        """
    @property
    def effective_draws(self, /) -> list[float] | None:
        """
        Effective draws of each guess, and of the zero reading, where walkers ran.
        """
    def guesses(self, /) -> Columns:
        """
        Each guess before and after: the values that 5, 50 and 95 % lie below.
        """
    @property
    def learnt(self, /) -> list[str]:
        """
        Combinations of guesses with how well they are learnt, in sentences, best learnt first.
        """
    @property
    def misfit(self, /) -> float:
        """
        Half the squared distance from readings and guesses, in their errors and spreads.
        """
    def predictions(self, /) -> Columns:
        """
        Predictions before and after: the values that 5, 50 and 95 % lie below; infinite is never.

        Only the guesses that were calibrated are uncertain here.
        """
    @property
    def r_hat(self, /) -> list[float] | None:
        """
        Split R̂ of each guess, and of the zero reading, where walkers ran.
        """
    def readings(self, /) -> Columns:
        """
        Each reading with what is computed for it, with the guesses in their middle and with the most probable values.
        """
    @property
    def spread_left(self, /) -> list[float]:
        """
        Share of its guessed spread that is left of each of these.
        """
    def to_arviz(self, /) -> Any:
        """
        As ArviZ InferenceData: posterior draws, readings as observed data. Needs ArviZ.
        """
    @property
    def zero_pct(self, /) -> tuple[float, float] | None:
        """
        The error of the zero reading (%): most probable value and standard deviation; None without elongations.
        """

@final
class Caution:
    """
    A caution for people who will stand at the machine.
    """
    def __copy__(self, /) -> Caution: ...
    def __deepcopy__(self, /, _memo: Any) -> Caution: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, code: str | None, message: str | None) -> Caution: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def code(self, /) -> str:
        """
        stable word of the hazard
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Caution:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Caution:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Caution:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def message(self, /) -> str:
        """
        what to mind, and whose rules decide
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Caution:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Chain:
    """
    One strand of chain: the dimensions and materials of its joints.
    """
    def __copy__(self, /) -> Chain: ...
    def __deepcopy__(self, /, _memo: Any) -> Chain: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, designation: str | None = None, pitch_mm: Scalar | None, pin_diameter_mm: Scalar | None, bush_bore_mm: Scalar | None, bush_diameter_mm: Scalar | None, joint_length_mm: Scalar | None, roller_diameter_mm: Scalar | None = None, roller_bore_mm: Scalar | None = None, inner_width_mm: Scalar | None = None, rollers_per_pitch: Scalar | None = None, plate_gap_mm: Scalar | None, plate_depth_mm: Scalar | None, mass_kg_per_m: Scalar | None, tensile_strength_kn: Scalar | None = None, elongation_limit_pct: Scalar | None = None, pin_wear_limit_pct: Scalar | None = None, case_hardness_mpa: Scalar | None = None, core_hardness_mpa: Scalar | None = None, case_depth_mm: Scalar | None = None, core_factor: Scalar | None = None) -> Chain: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def bush_bore_mm(self, /) -> float:
        """
        bore of the bush
        """
    @property
    def bush_diameter_mm(self, /) -> float:
        """
        outside diameter of the bush
        """
    @property
    def case_depth_mm(self, /) -> float | None:
        """
        depth of the hardened case; 0 for through-hardened or stainless; not given: 0.06 of the pin diameter
        """
    @property
    def case_hardness_mpa(self, /) -> float:
        """
        hardness of the case of pin and bush at 20 °C
        """
    @property
    def core_factor(self, /) -> float:
        """
        wear coefficient below the case over that of the case
        """
    @property
    def core_hardness_mpa(self, /) -> float:
        """
        hardness below the case at 20 °C
        """
    @property
    def designation(self, /) -> str | None:
        """
        standard and number of the chain, where it is a standard one
        """
    @property
    def elongation_limit_pct(self, /) -> float:
        """
        elongation at which the chain is replaced
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Chain:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Chain:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Chain:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def inner_width_mm(self, /) -> float | None:
        """
        width between the inner plates, which the roller fills
        """
    @property
    def joint_length_mm(self, /) -> float:
        """
        length of the bush, which carries the pin
        """
    @property
    def mass_kg_per_m(self, /) -> float:
        """
        mass of one strand with its attachments
        """
    @property
    def pin_diameter_mm(self, /) -> float:
        """
        diameter of the pin
        """
    @property
    def pin_wear_limit_pct(self, /) -> float:
        """
        wear of the pin, in shares of its diameter, at which the chain is replaced
        """
    @property
    def pitch_mm(self, /) -> float:
        """
        pitch, joint to joint
        """
    @property
    def plate_depth_mm(self, /) -> float:
        """
        depth of the side plates
        """
    @property
    def plate_gap_mm(self, /) -> float:
        """
        gap between inner and outer plate, through which oil enters the joint
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Chain:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def roller_bore_mm(self, /) -> float | None:
        """
        bore of the roller
        """
    @property
    def roller_diameter_mm(self, /) -> float | None:
        """
        diameter of the roller; none for a bush chain
        """
    @property
    def rollers_per_pitch(self, /) -> float:
        """
        rollers of one strand in one pitch
        """
    @staticmethod
    def standard(standard: str, designation: str, /, **given: "object") -> Chain:
        """
        A chain of a standard's table; what the standard leaves open, or what differs, is given by name.

        Parameters
        ----------
        standard, designation : str
            Such as ``"ISO 606", "16B-2"`` or ``"ISO 1977", "M112"``; see `pinfilm.standards`.
        **given
            Public names of `Chain`. Tensile strength and mass are per strand.

        Raises
        ------
        InputError
            For an unknown standard or designation (naming the nearest), or a value that is still missing.

        Examples
        --------
        >>> import pinfilm
        >>> pinfilm.Chain.standard("ISO 606", "16B", bush_diameter_mm=11.0, mass_kg_per_m=2.7).pin_diameter_mm
        8.28
        """
    @property
    def tensile_strength_kn(self, /) -> float | None:
        """
        least tensile strength of one strand
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Change:
    """
    A day on which the level of a log changed.
    """
    def __copy__(self, /) -> Change: ...
    def __deepcopy__(self, /, _memo: Any) -> Change: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, day: str | None, index: int | None, before_a: Scalar | None = None, before_kw: Scalar | None = None, after_a: Scalar | None = None, after_kw: Scalar | None = None, step_pct: Scalar | None) -> Change: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def after_a(self, /) -> float | None:
        """
        current after
        """
    @property
    def after_kw(self, /) -> float | None:
        """
        power after
        """
    @property
    def before_a(self, /) -> float | None:
        """
        current before, at mean covariates
        """
    @property
    def before_kw(self, /) -> float | None:
        """
        power before, likewise
        """
    @property
    def day(self, /) -> str:
        """
        first day of the new level
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Change:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Change:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Change:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def index(self, /) -> int:
        """
        its number among the means, from 0
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Change:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def step_pct(self, /) -> float:
        """
        step, of the level before
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class ChangePoints:
    """
    The days on which the level of a log changed. A change point proposes a date; `before_after` proves it.
    """
    def __copy__(self, /) -> ChangePoints: ...
    def __deepcopy__(self, /, _memo: Any) -> ChangePoints: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, sentence: str | None, name: str | None, logged: str | None, change_of: str | None, changes: Sequence[Change] | None, means: int | None, least_segment: int | None, penalty: Scalar | None, lag1: Scalar | None, noise_pct: Scalar | None, covariates: Sequence[str] | None, notes: Sequence[LogNote] | None, cleaning: Cleaning | None) -> ChangePoints: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def change_of(self, /) -> str:
        """
        mean or mean_variance
        """
    @property
    def changes(self, /) -> tuple[Change, ...]:
        """
        the changes, in order
        """
    @property
    def cleaning(self, /) -> Cleaning:
        """
        what cleaning did
        """
    @property
    def covariates(self, /) -> tuple[str, ...]:
        """
        what was taken out: load, speed, temperature
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> ChangePoints:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> ChangePoints:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> ChangePoints:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def lag1(self, /) -> float:
        """
        lag-one autocorrelation of the noise
        """
    @property
    def least_segment(self, /) -> int:
        """
        least means between two changes
        """
    @property
    def logged(self, /) -> str:
        """
        current_a or power_kw
        """
    @property
    def means(self, /) -> int:
        """
        means of the log
        """
    @property
    def name(self, /) -> str:
        """
        name of the log
        """
    @property
    def noise_pct(self, /) -> float:
        """
        standard deviation of the noise, of the mean level
        """
    @property
    def notes(self, /) -> tuple[LogNote, ...]:
        """
        what to read this with
        """
    @property
    def penalty(self, /) -> float:
        """
        price of a change in the cost used (A² or kW² for mean)
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> ChangePoints:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sentence(self, /) -> str:
        """
        the same in one sentence
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Circuit:
    """
    The closed loop of chain, its take-up and its attachments.
    """
    def __copy__(self, /) -> Circuit: ...
    def __deepcopy__(self, /, _memo: Any) -> Circuit: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, sections: Sequence[Straight | Turn] | None, strands: int | None = None, joints: int | None = None, take_up_n: Scalar | None, take_up_at: int | None = None, least_tension_n: Scalar | None = None, strand_share_factor: Scalar | None = None, surface_factor: Scalar | None = None, start_time_s: Scalar | None = None, attachment_every: int | None = None, attachment_blocks: Sequence[int] | None = None) -> Circuit: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def attachment_blocks(self, /) -> tuple[int, ...]:
        """
        joints of that pattern, counted from 0, whose gap the attachments hide from the applicator
        """
    @property
    def attachment_every(self, /) -> int | None:
        """
        joints from one attachment to the next
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Circuit:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Circuit:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Circuit:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joints(self, /) -> int | None:
        """
        joints of one strand, counted; not given: the even number nearest to length over pitch
        """
    @property
    def least_tension_n(self, /) -> float | None:
        """
        least tension that keeps the chain in line; not given: 2 % sag on one metre
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Circuit:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sections(self, /) -> tuple[Straight | Turn, ...]:
        """
        straights and turns in travel order
        """
    @property
    def start_time_s(self, /) -> float:
        """
        time in which the drive runs up
        """
    @property
    def strand_share_factor(self, /) -> float | None:
        """
        tension of the heaviest strand over the mean; not given: 1, 1.2, 1.3 for 1, 2, more strands
        """
    @property
    def strands(self, /) -> int:
        """
        parallel strands of chain
        """
    @property
    def surface_factor(self, /) -> float:
        """
        cooled surface over that of an equal round bar
        """
    @property
    def take_up_at(self, /) -> int | None:
        """
        section number of the turn that carries a weight or spring take-up
        """
    @property
    def take_up_n(self, /) -> float:
        """
        running tension of all strands at the drive exit, or the force on the frame of the take-up turn
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @staticmethod
    def two_sprocket(**given: "object") -> Circuit:
        """
        The everyday loop of two sprockets, from the keywords of `TwoSprocket`.

        Examples
        --------
        >>> import pinfilm
        >>> loop = pinfilm.Circuit.two_sprocket(
        ...     pitch_mm=100, centre_distance_m=20, teeth_drive=12, teeth_tail=12, carried_kg_per_m=60, take_up_n=1500
        ... )
        >>> len(loop.sections)
        4
        """

@final
class Cleaning:
    """
    Seven steps of cleaning with a count for each. Rows left out and rows kept add up to the rows read.
    """
    def __copy__(self, /) -> Cleaning: ...
    def __deepcopy__(self, /, _memo: Any) -> Cleaning: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, rows_read: int | None, unreadable: int | None, negative: int | None, repeated_hour: int | None, skipped_hour: int | None, clock_shifts: int | None, clock_shifted: int | None, pieces: int | None, out_of_order: int | None, duplicates_equal: int | None, duplicates_averaged: int | None, stopped: int | None, starts: int | None, start_up: int | None, warm_up: int | None, gaps: int | None, windows_with_gaps: int | None, windows_missing: int | None, spikes: int | None, without_covariates: int | None, kept: int | None, means: int | None, sample_s: Scalar | None, display_step_a: Scalar | None = None, display_step_kw: Scalar | None = None, cautions: Sequence[str] | None, sentence: str | None) -> Cleaning: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def cautions(self, /) -> tuple[str, ...]:
        """
        what a reader of the log should know
        """
    @property
    def clock_shifted(self, /) -> int:
        """
        rows moved by that
        """
    @property
    def clock_shifts(self, /) -> int:
        """
        step 1: times that the clock was found an hour out and put right
        """
    @property
    def display_step_a(self, /) -> float | None:
        """
        step of the clamp's display
        """
    @property
    def display_step_kw(self, /) -> float | None:
        """
        step of the power meter's display
        """
    @property
    def duplicates_averaged(self, /) -> int:
        """
        left out: same stamp as another row, into whose mean they went
        """
    @property
    def duplicates_equal(self, /) -> int:
        """
        left out: same stamp and reading as another row
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Cleaning:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Cleaning:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Cleaning:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def gaps(self, /) -> int:
        """
        step 5, left out: in a window that the log covers too little of
        """
    @property
    def kept(self, /) -> int:
        """
        step 7: rows that went into the means
        """
    @property
    def means(self, /) -> int:
        """
        means (or single readings) that are left
        """
    @property
    def negative(self, /) -> int:
        """
        left out: below zero
        """
    @property
    def out_of_order(self, /) -> int:
        """
        rows that were out of order, and sorted
        """
    @property
    def pieces(self, /) -> int:
        """
        pieces that other changes of the clock split the log into; 1 for a whole log
        """
    @property
    def repeated_hour(self, /) -> int:
        """
        rows in the hour that the clock shows twice in autumn, told apart by their order
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Cleaning:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rows_read(self, /) -> int:
        """
        rows of the log
        """
    @property
    def sample_s(self, /) -> float:
        """
        usual time between rows
        """
    @property
    def sentence(self, /) -> str:
        """
        the same in one sentence
        """
    @property
    def skipped_hour(self, /) -> int:
        """
        rows in the hour that the clock should have skipped in spring
        """
    @property
    def spikes(self, /) -> int:
        """
        step 6, left out: far from their neighbours
        """
    @property
    def start_up(self, /) -> int:
        """
        step 3, left out: just started
        """
    @property
    def starts(self, /) -> int:
        """
        starts of the line
        """
    @property
    def stopped(self, /) -> int:
        """
        step 2, left out: the line stood
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def unreadable(self, /) -> int:
        """
        left out: no number, or no time stamp
        """
    @property
    def warm_up(self, /) -> int:
        """
        step 4, left out: warming up after a long stop
        """
    @property
    def windows_missing(self, /) -> int:
        """
        windows without any row, between the first and the last
        """
    @property
    def windows_with_gaps(self, /) -> int:
        """
        such windows
        """
    @property
    def without_covariates(self, /) -> int:
        """
        left out: no load, speed or temperature to go with them
        """

@final
class Columns:
    """
    A table by columns: NumPy arrays under their names, with the unit and the meaning of each.

    It reads like a dict (`table["oil.iso_vg"]`, `list(table)`, `dict(table)`) and goes into pandas or polars where these
    are installed.

    Examples
    --------
    >>> import pinfilm
    >>> table = pinfilm.sweep(pinfilm.examples.load("oven_now"), {"oil.iso_vg": [150, 220]}, outputs=["cost.energy"])
    >>> table["oil.iso_vg"].tolist()
    [150, 220]
    >>> table.units["cost.energy"]
    'money/year'
    """
    def __contains__(self, name: str, /) -> bool: ...
    def __getitem__(self, name: str, /) -> Column: ...
    def __iter__(self, /) -> Iterator[str]: ...
    def __len__(self, /) -> int:
        """
        Number of columns.
        """
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    def keys(self, /) -> list[str]:
        """
        Names of the columns.
        """
    @property
    def meanings(self, /) -> dict[str, str]:
        """
        What each column means.
        """
    @property
    def rows(self, /) -> int:
        """
        Number of rows.
        """
    def to_dict(self, /) -> dict[str, Column]:
        """
        As a dict of NumPy arrays; they are shared, not copied.
        """
    def to_pandas(self, /) -> Any:
        """
        As a pandas DataFrame, with units and meanings in its `attrs`. Needs pandas.
        """
    def to_polars(self, /) -> Any:
        """
        As a polars DataFrame. Needs polars.
        """
    @property
    def units(self, /) -> dict[str, str]:
        """
        Unit of each column; empty for words and pure numbers.
        """

@final
class Comparison:
    """
    Now against proposed: what the change saves, and whether and when it pays back.
    """
    def __copy__(self, /) -> Comparison: ...
    def __deepcopy__(self, /, _memo: Any) -> Comparison: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, now: Evaluation | None, proposed: Evaluation | None, saving_items: Savings | None, saving_per_year: Scalar | None, saving_without_chain_per_year: Scalar | None, invest: Scalar | None, payback_status: str | None, payback_days: Scalar | None, payback_status_without_chain: str | None, payback_days_without_chain: Scalar | None, payback_status_downtime_halved: str | None, payback_days_downtime_halved: Scalar | None, discounted_payback_status: str | None, discounted_payback_years: Scalar | None, npv: Scalar | None, npv_without_chain: Scalar | None, irr: Scalar | None, irr_status: str | None, irr_roots: Sequence[Scalar] | None, discount_rate: Scalar | None, horizon_years: int | None, cash_flow: Sequence[Scalar] | None) -> Comparison: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def cash_flow(self, /) -> tuple[float, ...]:
        """
        capital now, saving at each year end
        """
    @property
    def discount_rate(self, /) -> float:
        """
        discount rate of a year
        """
    @property
    def discounted_payback_status(self, /) -> str:
        """
        status of the discounted payback
        """
    @property
    def discounted_payback_years(self, /) -> float | None:
        """
        years until the discounted flows have returned the capital
        """
    def explain(self, /, path: str) -> Explanation:
        """
        Explain a number as `Evaluation.explain` does; the two lines stand under `now.` and `proposed.`.
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Comparison:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Comparison:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Comparison:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def horizon_years(self, /) -> int:
        """
        years over which the change is judged
        """
    @property
    def invest(self, /) -> float:
        """
        capital that the change needs now
        """
    @property
    def irr(self, /) -> float | None:
        """
        internal rate of return of a year; with several, the one nearest zero, which decides nothing
        """
    @property
    def irr_roots(self, /) -> tuple[float, ...]:
        """
        all internal rates of return
        """
    @property
    def irr_status(self, /) -> str:
        """
        none, unique, several or out_of_range
        """
    @property
    def now(self, /) -> Evaluation:
        """
        the line as it is
        """
    @property
    def npv(self, /) -> float:
        """
        net present value over the horizon
        """
    @property
    def npv_without_chain(self, /) -> float:
        """
        the same without chain and sprockets
        """
    @property
    def payback_days(self, /) -> float | None:
        """
        days until the saving has returned the capital
        """
    @property
    def payback_days_downtime_halved(self, /) -> float | None:
        """
        days if standstill costs only half
        """
    @property
    def payback_days_without_chain(self, /) -> float | None:
        """
        days without counting chain and sprockets
        """
    @property
    def payback_status(self, /) -> str:
        """
        how it ends: pays_back, immediate, never or loses_after
        """
    @property
    def payback_status_downtime_halved(self, /) -> str:
        """
        the same status at half the downtime cost
        """
    @property
    def payback_status_without_chain(self, /) -> str:
        """
        the same status without chain and sprockets
        """
    @property
    def proposed(self, /) -> Evaluation:
        """
        the line as proposed
        """
    def quantity(self, /, path: str, registry: Any | None = None) -> Any:
        """
        A number with its unit as `Evaluation.quantity` gives it; the two lines stand under `now.` and `proposed.`.
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Comparison:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def saving_items(self, /) -> Savings:
        """
        saving of a year, item by item
        """
    @property
    def saving_per_year(self, /) -> float:
        """
        saving of a year
        """
    @property
    def saving_without_chain_per_year(self, /) -> float:
        """
        the same without chain and sprockets, which rest on an estimated wear life
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Cost:
    """
    Cost of a year, item by item. Safety is not put into money.
    """
    def __copy__(self, /) -> Cost: ...
    def __deepcopy__(self, /, _memo: Any) -> Cost: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, currency: str | None, oil: Scalar | None, application_labour: Scalar | None, energy: Scalar | None, cleaning: Scalar | None, downtime: Scalar | None, chain: Scalar | None, sprockets: Scalar | None, waste: Scalar | None, upkeep: Scalar | None, total_per_year: Scalar | None) -> Cost: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_labour(self, /) -> float:
        """
        work of oiling, refills and checks
        """
    @property
    def chain(self, /) -> float:
        """
        new chain
        """
    @property
    def cleaning(self, /) -> float:
        """
        cleaning
        """
    @property
    def currency(self, /) -> str:
        """
        currency of these amounts
        """
    @property
    def downtime(self, /) -> float:
        """
        standstill
        """
    @property
    def energy(self, /) -> float:
        """
        electrical energy
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Cost:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Cost:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Cost:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def oil(self, /) -> float:
        """
        oil
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Cost:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sprockets(self, /) -> float:
        """
        new sprockets
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def total_per_year(self, /) -> float:
        """
        all items
        """
    @property
    def upkeep(self, /) -> float:
        """
        upkeep of the oiling equipment
        """
    @property
    def waste(self, /) -> float:
        """
        disposal of oil
        """

@final
class Costs:
    """
    Prices, yearly work and stops, and what a change costs. Money is in one currency, all real or all nominal.
    """
    def __copy__(self, /) -> Costs: ...
    def __deepcopy__(self, /, _memo: Any) -> Costs: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, currency: str | None = None, energy_price_per_kwh: Scalar | None, labour_rate_per_h: Scalar | None, downtime_cost_per_h: Scalar | None = None, applications_per_year: Scalar | None = None, hours_per_application: Scalar | None = None, cleanings_per_year: Scalar | None = None, cleaning_h: Scalar | None = None, cleaning_material: Scalar | None = None, breakdowns_per_year: Scalar | None = None, breakdown_h: Scalar | None = None, planned_stop_h: Scalar | None = None, chain_price_per_m: Scalar | None = None, fit_h: Scalar | None = None, fit_downtime_h: Scalar | None = None, sprocket_set_price: Scalar | None = None, chains_per_sprocket: Scalar | None = None, other_life_years: Scalar | None = None, waste_price_per_l: Scalar | None = None, upkeep_per_year: Scalar | None = None, invest: Scalar | None = None, discount_rate: Scalar | None = None, horizon_years: int | None = None, year_days: Scalar | None = None) -> Costs: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def applications_per_year(self, /) -> float | None:
        """
        oilings, or refills and checks, in a year; not given: from the interval of a manual round
        """
    @property
    def breakdown_h(self, /) -> float:
        """
        standstill of one breakdown
        """
    @property
    def breakdowns_per_year(self, /) -> float:
        """
        breakdowns of the chain in a year
        """
    @property
    def chain_price_per_m(self, /) -> float:
        """
        price of one metre of one strand
        """
    @property
    def chains_per_sprocket(self, /) -> float:
        """
        chains that one set of sprockets outlasts
        """
    @property
    def cleaning_h(self, /) -> float:
        """
        work of one cleaning
        """
    @property
    def cleaning_material(self, /) -> float:
        """
        material of one cleaning
        """
    @property
    def cleanings_per_year(self, /) -> float:
        """
        cleanings in a year
        """
    @property
    def currency(self, /) -> str:
        """
        label of the currency
        """
    @property
    def discount_rate(self, /) -> float:
        """
        discount rate of a year
        """
    @property
    def downtime_cost_per_h(self, /) -> float:
        """
        cost of one hour of standstill
        """
    @property
    def energy_price_per_kwh(self, /) -> float:
        """
        price of electrical energy
        """
    @property
    def fit_downtime_h(self, /) -> float:
        """
        standstill to fit a new chain
        """
    @property
    def fit_h(self, /) -> float:
        """
        work to fit a new chain
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Costs:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Costs:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Costs:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def horizon_years(self, /) -> int:
        """
        years over which the change is judged
        """
    @property
    def hours_per_application(self, /) -> float:
        """
        work of one oiling, refill or check
        """
    @property
    def invest(self, /) -> float:
        """
        capital that this method needs now
        """
    @property
    def labour_rate_per_h(self, /) -> float:
        """
        cost of one working hour
        """
    @property
    def other_life_years(self, /) -> float:
        """
        mean life of the chain if it did not wear: corrosion, damage, change of product
        """
    @property
    def planned_stop_h(self, /) -> float:
        """
        planned standstill for the chain in a year
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Costs:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sprocket_set_price(self, /) -> float:
        """
        price of a set of sprockets, fitted
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def upkeep_per_year(self, /) -> float:
        """
        upkeep of the oiling equipment
        """
    @property
    def waste_price_per_l(self, /) -> float:
        """
        cost of disposing of oil
        """
    @property
    def year_days(self, /) -> float:
        """
        days in the year of a payback: 365 calendar days, or the working days
        """

@final
class CurrentLog:
    """
    A log of a drive's current or power, as a plant has it: columns of equal length in the order of the file.

    Parameters
    ----------
    time : array_like
        Time stamps: NumPy or pandas dates, `datetime` objects, ISO text. With offsets, or without: then by a clock on
        the wall, whose zone `time_zone` names.
    current_a, power_kw : array_like
        One of the two; power is the better witness and is used where both are given. NaN is counted as unreadable.
    load_pct, load_kg_per_m, speed_m_per_min, temperature_c : array_like, optional
        What the reading follows, where it was logged.
    running : array_like of bool, optional
        Whether the line ran.
    time_zone : str, optional
        IANA name such as ``"Europe/Vienna"``: the zone of the clock, whose days and hours the means follow. Not given: that
        of a pandas or polars column with a zone, else UTC. Without it, and without offsets, jumps of an hour are found and
        mended.
    rules : LogRules, optional
        How to clean.
    name : str
        What to call it.

    Raises
    ------
    InputError
        For columns of unlike length, an unknown time zone, stamps of which only some have an offset.
    TableError
        For a column that cannot be read as numbers or dates.

    Examples
    --------
    >>> import numpy as np, pinfilm
    >>> time = np.datetime64("2025-01-01") + np.arange(60) * np.timedelta64(1, "D")
    >>> current = np.where(np.arange(60) < 30, 3.0, 2.8) + 0.01 * (np.arange(60) * 7 % 10)
    >>> log = pinfilm.CurrentLog(time=time, current_a=current, rules=pinfilm.LogRules(window_h=0))
    >>> round(log.before_after("2025-01-31").saving_pct, 1)
    6.5
    """
    def __copy__(self, /) -> CurrentLog: ...
    def __deepcopy__(self, /, _memo: Any) -> CurrentLog: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __len__(self, /) -> int: ...
    def __new__(cls, /, *, time: Any, current_a: Any | None = None, power_kw: Any | None = None, load_pct: Any | None = None, load_kg_per_m: Any | None = None, speed_m_per_min: Any | None = None, temperature_c: Any | None = None, running: Any | None = None, time_zone: str | None = None, rules: LogRules | None = None, name: str | None = None) -> CurrentLog: ...
    def __reduce__(self, /) -> tuple[Any, Any]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    def before_after(self, changed: Any, /, *, line: Line | None = None, **settings: "object") -> BeforeAfter:
        """
        Compare the periods before and after a change: the saving at equal load, how sure it is, what hides it.

        Parameters
        ----------
        changed : date, datetime or str
            Day of the change, by the clock of the log; the day itself is left out.
        line : Line, optional
            Turns current into pull and says what this current can see.
        **settings
            Names of `Proof`: `confidence_pct`, `power_pct`, `systematic_pct`, `systematic_independence`,
            `expected_saving_pct`, `settle_days`.

        Returns
        -------
        BeforeAfter
            `sentence` is the verdict; the numbers behind it and the notes to read it with follow.

        Raises
        ------
        InputError
            For a date outside the log, fewer means than the model needs, a log in pieces or that never changes.
        """
    def change_points(self, /, *, line: Line | None = None, change_of: str | None = None, least_segment: SupportsIndex | None = None) -> ChangePoints:
        """
        The days on which the level changed. A change point proposes a date; `before_after` proves it.

        Parameters
        ----------
        line : Line, optional
            For the cleaning.
        change_of : {"mean", "mean_variance"}
            Whether the scatter may change with the level.
        least_segment : int
            Least means between two changes; 10 if not given.

        Returns
        -------
        ChangePoints
            `sentence`, `changes` with their dates and steps, the price of a change and the noise that set it.

        Raises
        ------
        InputError
            For a log shorter than two segments, in pieces, or that never changes.
        """
    def cleaning(self, /, *, line: Line | None = None) -> Cleaning:
        """
        What cleaning does to the log: seven steps, a count for each, no row left out unsaid.

        Parameters
        ----------
        line : Line, optional
            Gives the rules what they leave open: reading without load, rated reading, warm-up of ovens and freezers.

        Returns
        -------
        Cleaning

        Raises
        ------
        InputError
            For a log without readings, mostly below zero, or far from rated (milliamperes, per cent of rated: `UnitError`).
        """
    @property
    def covariates(self, /) -> list[str]:
        """
        Names of what is logged beside the reading.
        """
    @property
    def logged(self, /) -> str:
        """
        What was logged: ``"current_a"`` or ``"power_kw"``.
        """
    def means(self, /, *, line: Line | None = None) -> dict[str, Any]:
        """
        The clean means as a dict of NumPy arrays: time (UTC), the reading, covariates, rows in each mean.
        """
    @property
    def name(self, /) -> str:
        """
        What it is called.
        """
    @classmethod
    def read(cls, /, source: Any, *, columns: Any | None = None, time_format: str | None = None, time_zone: str | None = None, rules: LogRules | None = None, name: str | None = None) -> CurrentLog:
        """
        Read a log from a table or a file.

        Parameters
        ----------
        source : mapping of arrays, pandas or polars frame, object with `__arrow_c_stream__`, or path of a CSV or Parquet file
            Files and Arrow need polars: ``pip install pinfilm[log]``.
        columns : mapping of str to str, optional
            The name that a column has in the source, by the name that it has here: ``{"time": "Zeit", "current_a": "I1"}``.
            Others are read where the source has them under the names of `CurrentLog`.
        time_format : str, optional
            How stamps of a CSV file are written, such as ``"%m/%d/%Y %H:%M"``, where that is not plain.
        time_zone, rules, name
            As `CurrentLog` takes them.

        Raises
        ------
        TableError
            For a source without the columns, or one that cannot be read; it names what the source has.

        Examples
        --------
        >>> import pinfilm
        >>> log = pinfilm.CurrentLog.read({"when": ["2025-01-01", "2025-01-02"], "current_a": [2.9, 3.0]}, columns={"time": "when"})
        >>> len(log)
        2
        """
    def replace(self, /, *, rules: LogRules | None = None, time_zone: str | None = None, name: str | None = None) -> CurrentLog:
        """
        The same log cleaned by other rules, in another zone, or under another name.
        """
    @property
    def rules(self, /) -> LogRules:
        """
        How it is cleaned.
        """
    def savings(self, changed: Any, /, *, line: Line | None = None, energy_price_per_kwh: Scalar | None = None, **settings: "object") -> AvoidedUse:
        """
        Energy and money avoided since a change, with the uncertainty of measurement and verification.

        Parameters
        ----------
        changed : date, datetime or str
            Day of the change, by the clock of the log; the day itself is left out.
        line : Line
            Turns current into power, gives price and hours of a year. Not needed for a log of power.
        energy_price_per_kwh : float, optional
            In place of the line's.
        **settings
            Names of `Proof`.

        Returns
        -------
        AvoidedUse

        Raises
        ------
        InputError
            As `before_after`; also for a log of current without a line.
        """
    @property
    def time_zone(self, /) -> str | None:
        """
        IANA name of the zone of its clock.
        """
    def watch(self, quiet_until: Any, /, *, quiet_from: Any | None = None, line: Line | None = None) -> WatchReport:
        """
        Watch the log from a day on, against what the line drew until then.

        Parameters
        ----------
        quiet_until, quiet_from : date, datetime or str
            The period from which the baseline is learnt; it needs 30 means or more. `quiet_from` not given: from the
            beginning of the log.
        line : Line, optional
            For the cleaning.

        Returns
        -------
        WatchReport
            `sentence`, `alarms` with their causes, `steps` reading by reading, and how often it would alarm falsely.

        Raises
        ------
        InputError
            For a quiet period that is too short, or whose means resemble each other too much to watch by.
        """

@final
class CusumPath:
    """
    Sums of a chart after each reading.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, up: Any, down: Any, alarms: Any) -> CusumPath: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def alarms(self, /) -> tuple[int, ...]:
        """
        readings in alarm, counted from 0
        """
    @property
    def down(self, /) -> FloatsOut:
        """
        sum of what was too low
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """
    @property
    def up(self, /) -> FloatsOut:
        """
        sum of what was too high
        """

@final
class Distribution:
    """
    What is thought of an uncertain input: a distribution in the unit that its path carries.

    Made by the functions below; each refuses parameters that are no distribution. Whether it fits the allowed range of a
    path is checked where the path is known: `sample`, `sensitivity`, `calibrate`.

    Examples
    --------
    >>> import pinfilm
    >>> price = pinfilm.Distribution.triangular(low=0.12, mode=0.19, high=0.30)
    >>> round(price.quantile(0.95), 3)
    0.269
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __reduce__(self, /) -> tuple[Any, Any]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @staticmethod
    def beta(low: SupportsFloat | SupportsIndex, high: SupportsFloat | SupportsIndex, a: SupportsFloat | SupportsIndex, b: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Beta distribution with shapes a and b, stretched from low to high.
        """
    @staticmethod
    def beta_90(p5: SupportsFloat | SupportsIndex, p95: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Beta distribution between 0 and 1, from the values that 5 % and 95 % lie below: for shares.
        """
    @staticmethod
    def constant(value: SupportsFloat | SupportsIndex) -> Distribution:
        """
        One value, certain.
        """
    @property
    def kind(self, /) -> str:
        """
        The word for its kind.
        """
    @staticmethod
    def lognormal(median: SupportsFloat | SupportsIndex, ln_sd: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Bell curve of the logarithm, from the median and the standard deviation of the natural logarithm.
        """
    @staticmethod
    def lognormal_90(p5: SupportsFloat | SupportsIndex, p95: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Bell curve of the logarithm, from the values that 5 % and 95 % lie below.
        """
    @staticmethod
    def lognormal_factor(median: SupportsFloat | SupportsIndex, factor: SupportsFloat | SupportsIndex, within: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Bell curve of the logarithm with a share `within` of it between median / factor and median × factor.
        """
    @staticmethod
    def loguniform(low: SupportsFloat | SupportsIndex, high: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Any factor between two (both above 0) as likely as any other.
        """
    @staticmethod
    def normal(mean: SupportsFloat | SupportsIndex, sd: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Bell curve, from mean and standard deviation.
        """
    @staticmethod
    def normal_90(p5: SupportsFloat | SupportsIndex, p95: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Bell curve, from the values that 5 % and 95 % lie below.
        """
    @property
    def parameters(self, /) -> dict[str, float]:
        """
        Its parameters by name.
        """
    @staticmethod
    def pert(low: SupportsFloat | SupportsIndex, mode: SupportsFloat | SupportsIndex, high: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Least, most likely and greatest value with a rounded peak, as project planning takes it.
        """
    def quantile(self, /, u: SupportsFloat | SupportsIndex) -> float:
        """
        The value that a share `u` (above 0, below 1) lies below.
        """
    @staticmethod
    def triangular(low: SupportsFloat | SupportsIndex, mode: SupportsFloat | SupportsIndex, high: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Least, most likely and greatest value.
        """
    @staticmethod
    def truncated_normal(mean: SupportsFloat | SupportsIndex, sd: SupportsFloat | SupportsIndex, low: SupportsFloat | SupportsIndex, high: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Bell curve cut off at both ends; mean and sd are those before the cut.
        """
    @staticmethod
    def uniform(low: SupportsFloat | SupportsIndex, high: SupportsFloat | SupportsIndex) -> Distribution:
        """
        Any value between two as likely as any other.
        """

@final
class Drip:
    """
    A dripper that never stops.
    """
    def __copy__(self, /) -> Drip: ...
    def __deepcopy__(self, /, _memo: Any) -> Drip: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, flow_ml_per_min: Scalar | None, drop_ul: Scalar | None = None, capture: Scalar | None = None, points: int | None = None, application_section: int | None = None, application_position: Scalar | None = None, application_side: str | None = None, time_available_s: Scalar | None = None) -> Drip: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0; not given: the best point
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied: top, side or bottom
        """
    @property
    def capture(self, /) -> float:
        """
        share of the oil that lands in the gaps
        """
    @property
    def drop_ul(self, /) -> float:
        """
        volume of one drop
        """
    @property
    def flow_ml_per_min(self, /) -> float:
        """
        flow at each point
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Drip:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Drip:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Drip:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand: 1 or 2
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Drip:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def time_available_s(self, /) -> float | None:
        """
        time the oil has to enter; not given: from the circuit
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Drive:
    """
    A three-phase cage induction motor by its nameplate, its gear, and how the current is measured.
    """
    def __copy__(self, /) -> Drive: ...
    def __deepcopy__(self, /, _memo: Any) -> Drive: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, rated_power_kw: Scalar | None, rated_voltage_v: Scalar | None, rated_current_a: Scalar | None, rated_speed_rpm: Scalar | None, rated_efficiency: Scalar | None, rated_power_factor: Scalar | None, rated_frequency_hz: Scalar | None = None, gear_efficiency: Scalar | None, gear_fixed_share: Scalar | None = None, gear_rated_power_kw: Scalar | None = None, gear_extra_efficiency: Scalar | None = None, no_load_current_a: Scalar | None = None, empty_current_a: Scalar | None = None, locked_rotor_torque_ratio: Scalar | None = None, supply_voltage_v: Scalar | None = None, frequency_hz: Scalar | None = None, converter: bool | None = None, current_measured_at: str | None = None, converter_efficiency: Scalar | None = None, line_power_factor: Scalar | None = None, leakage_pu: Scalar | None = None, core_share: Scalar | None = None, friction_windage_share: Scalar | None = None, stray_factor: Scalar | None = None, measured_current_a: Scalar | None = None, measured_power_kw: Scalar | None = None) -> Drive: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def converter(self, /) -> bool:
        """
        whether a frequency converter feeds the motor
        """
    @property
    def converter_efficiency(self, /) -> float:
        """
        efficiency of the converter
        """
    @property
    def core_share(self, /) -> float:
        """
        share of core loss in the constant losses
        """
    @property
    def current_measured_at(self, /) -> str:
        """
        where the clamp sits: motor or before_converter
        """
    @property
    def empty_current_a(self, /) -> float | None:
        """
        measured current of the running line without product
        """
    @property
    def frequency_hz(self, /) -> float | None:
        """
        actual frequency; not given: rated
        """
    @property
    def friction_windage_share(self, /) -> float:
        """
        share of friction and windage in the losses
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Drive:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Drive:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Drive:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def gear_efficiency(self, /) -> float:
        """
        efficiency of the gear at its rated load
        """
    @property
    def gear_extra_efficiency(self, /) -> float:
        """
        efficiency of a further belt or chain between gear and sprocket
        """
    @property
    def gear_fixed_share(self, /) -> float:
        """
        share of the gear's loss that does not depend on load
        """
    @property
    def gear_rated_power_kw(self, /) -> float | None:
        """
        rated power of the gear; not given: that of the motor
        """
    @property
    def leakage_pu(self, /) -> float:
        """
        leakage reactance over base impedance, where no no-load current was measured
        """
    @property
    def line_power_factor(self, /) -> float:
        """
        true power factor before the converter: 0.90 with a choke, 0.60 to 0.70 without
        """
    @property
    def locked_rotor_torque_ratio(self, /) -> float | None:
        """
        starting torque over rated torque, from the motor's data
        """
    @property
    def measured_current_a(self, /) -> float | None:
        """
        current read on the running line, if known
        """
    @property
    def measured_power_kw(self, /) -> float | None:
        """
        electrical power read on the running line, if known
        """
    @property
    def no_load_current_a(self, /) -> float | None:
        """
        measured current of the uncoupled motor
        """
    @property
    def rated_current_a(self, /) -> float:
        """
        rated line current of the connection in use
        """
    @property
    def rated_efficiency(self, /) -> float:
        """
        rated efficiency of the motor
        """
    @property
    def rated_frequency_hz(self, /) -> float:
        """
        rated frequency
        """
    @property
    def rated_power_factor(self, /) -> float:
        """
        rated power factor
        """
    @property
    def rated_power_kw(self, /) -> float:
        """
        rated shaft power
        """
    @property
    def rated_speed_rpm(self, /) -> float:
        """
        rated speed
        """
    @property
    def rated_voltage_v(self, /) -> float:
        """
        rated line voltage of the connection in use
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Drive:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def stray_factor(self, /) -> float:
        """
        stray load loss over its assigned value
        """
    @property
    def supply_voltage_v(self, /) -> float | None:
        """
        actual line voltage; not given: rated
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class DriveState:
    """
    Power, current and energy.
    """
    def __copy__(self, /) -> DriveState: ...
    def __deepcopy__(self, /, _memo: Any) -> DriveState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, chain_power_w: Scalar | None, shaft_power_w: Scalar | None, load: Scalar | None, current_a: Scalar | None, input_power_w: Scalar | None, power_factor: Scalar | None, slip: Scalar | None, no_load_current_a: Scalar | None, current_per_pull_a_per_n: Scalar | None, energy_kwh_per_year: Scalar | None, pull_detectable_n: Scalar | None, current_drop_joint_a: Scalar | None, current_drop_all_a: Scalar | None) -> DriveState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def chain_power_w(self, /) -> float:
        """
        power at the drive sprocket
        """
    @property
    def current_a(self, /) -> float | None:
        """
        current where the clamp sits
        """
    @property
    def current_drop_all_a(self, /) -> float | None:
        """
        fall of current if pin/bush, bush/roller and plate/track friction were all halved
        """
    @property
    def current_drop_joint_a(self, /) -> float | None:
        """
        fall of current if pin/bush friction alone were halved
        """
    @property
    def current_per_pull_a_per_n(self, /) -> float | None:
        """
        change of current with pull
        """
    @property
    def energy_kwh_per_year(self, /) -> float:
        """
        electrical energy of a year
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> DriveState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> DriveState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> DriveState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def input_power_w(self, /) -> float | None:
        """
        electrical power
        """
    @property
    def load(self, /) -> float:
        """
        shaft power over rated power
        """
    @property
    def no_load_current_a(self, /) -> float:
        """
        current of the uncoupled motor
        """
    @property
    def power_factor(self, /) -> float | None:
        """
        power factor
        """
    @property
    def pull_detectable_n(self, /) -> float | None:
        """
        least change of pull that a month of logged current could show on each side
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> DriveState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def shaft_power_w(self, /) -> float:
        """
        power at the motor's shaft
        """
    @property
    def slip(self, /) -> float | None:
        """
        slip
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Duty:
    """
    What the line does all year, and what it works in.
    """
    def __copy__(self, /) -> Duty: ...
    def __deepcopy__(self, /, _memo: Any) -> Duty: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, speed_m_per_min: Scalar | None, hours_per_day: Scalar | None, days_per_year: Scalar | None, ambient_c: Scalar | None, surroundings: str | None = None, food_contact: bool | None = None, dust_factor: Scalar | None = None, water_factor: Scalar | None = None, dust_loss_per_s: Scalar | None = None, wash_interval_h: Scalar | None = None, wash_removed_share: Scalar | None = None) -> Duty: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def ambient_c(self, /) -> float:
        """
        temperature of the room
        """
    @property
    def days_per_year(self, /) -> float:
        """
        working days in a year
        """
    @property
    def dust_factor(self, /) -> float:
        """
        wear over that of a clean line: clean 1, light dust 2, dusty 5, abrasive 15
        """
    @property
    def dust_loss_per_s(self, /) -> float:
        """
        oil taken up by dust: clean 0, dusty 1e-6, very dusty 5e-6
        """
    @property
    def food_contact(self, /) -> bool:
        """
        whether open food is near the chain
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Duty:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Duty:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Duty:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def hours_per_day(self, /) -> float:
        """
        running hours in a working day
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Duty:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def speed_m_per_min(self, /) -> float:
        """
        chain speed
        """
    @property
    def surroundings(self, /) -> str:
        """
        what the chain works in: dry, dusty, wash_down, oven or freezer
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wash_interval_h(self, /) -> float | None:
        """
        calendar time between washes
        """
    @property
    def wash_removed_share(self, /) -> float:
        """
        share of the oil in a joint that a wash removes
        """
    @property
    def water_factor(self, /) -> float:
        """
        wear over that of a dry line: dry 1, damp 1.5, wash-down 3, caustic 5
        """

@final
class ElongationCurve:
    """
    Growth of the chain over calendar time.
    """
    def __copy__(self, /) -> ElongationCurve: ...
    def __deepcopy__(self, /, _memo: Any) -> ElongationCurve: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, time_years: Sequence[Scalar] | None, elongation_pct: Sequence[Scalar] | None, limit_pct: Scalar | None) -> ElongationCurve: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def elongation_pct(self, /) -> tuple[float, ...]:
        """
        elongation of the whole chain
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> ElongationCurve:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> ElongationCurve:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> ElongationCurve:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def limit_pct(self, /) -> float:
        """
        elongation at which the chain is replaced
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> ElongationCurve:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def time_years(self, /) -> tuple[float, ...]:
        """
        calendar time since the chain was new
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Estimate:
    """
    A number with the error of its drawing.
    """
    def __float__(self, /) -> float: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def error(self, /) -> float | None:
        """
        Its standard error over eight nets; None where it is not known.
        """
    @property
    def value(self, /) -> float:
        """
        The number; infinite where it is `never`, NaN where no draw has one.
        """

@final
class Evaluation:
    """
    A line, evaluated: what its joints go through, what oil does in them, what that costs.
    """
    def __copy__(self, /) -> Evaluation: ...
    def __deepcopy__(self, /, _memo: Any) -> Evaluation: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, line: Line | None, kinematics: Kinematics | None, tension: Tension | None, joint: JointState | None, fill: FillState | None, wear: WearState | None, drive: DriveState | None, supply: SupplyState | None, cost: Cost | None, warnings: Sequence[Warning] | None, cautions: Sequence[Caution] | None) -> Evaluation: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def cautions(self, /) -> tuple[Caution, ...]:
        """
        what can hurt people
        """
    @property
    def cost(self, /) -> Cost:
        """
        cost of a year
        """
    @property
    def drive(self, /) -> DriveState:
        """
        power, current, energy
        """
    def elongation_curve(self, /, until_years: Scalar | None = None, points: SupportsIndex | None = None) -> ElongationCurve:
        """
        Elongation of a new chain over calendar time.

        `until_years` is more than 0; if not given a quarter beyond the wear life, at most 50 years.
        """
    def explain(self, /, path: str) -> Explanation:
        """
        Explain a number: formula, numbers put in with their units, where each came from, source and its class.

        `path` is dotted: a result (`"joint.events.2.friction"`; `"joint.pressure_mpa"` for the event with the greatest), or
        an input by its survey key (`"chain.pitch_mm"`). Raises InputError for a path that is none, naming the nearest.
        """
    @property
    def fill(self, /) -> FillState:
        """
        oil in the joints
        """
    def friction_curve(self, /, event: SupportsIndex, points: SupportsIndex | None = None) -> FrictionCurve:
        """
        Film and friction of one articulation with the same oil thinned and thickened: its Stribeck curve.

        `event` is the place of the articulation in `joint.events`. Viscosities at which the contact model has no answer
        are left out.
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Evaluation:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Evaluation:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Evaluation:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joint(self, /) -> JointState:
        """
        what the joints go through
        """
    @property
    def kinematics(self, /) -> Kinematics:
        """
        lengths, times and temperatures
        """
    @property
    def line(self, /) -> Line:
        """
        the survey
        """
    def quantity(self, /, path: str, registry: Any | None = None) -> Any:
        """
        A number with its unit, as a quantity of the pint library: `result.quantity("tension.pull_n").to("force_pound")`.

        `path` is dotted, survey keys among them; `registry` is a `pint.UnitRegistry`, pint's own where none is given. None
        where there is no value. Raises InputError for a path that is none and UnitError for words and money.
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Evaluation:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def round_loop(self, /, points: SupportsIndex | None = None) -> RoundLoop:
        """
        Tension and temperature along the chain, from the exit of the drive round to its entry.

        `points` in each section, both ends included: 2 to 100000, 25 if not given. Exact at every point on straights;
        on turns the tension is computed at the ends alone.
        """
    def shot_record(self, /, circuits: SupportsIndex | None = None) -> ShotRecord:
        """
        Which joint got oil when over some circuits of the settled line, and how full every joint is at their end.

        `circuits` is 1 or more; twice the longest wait if not given. Where chance decides (by hand, dripper) it is one
        possible course, the same at every call, and `by_chance` says so.
        """
    @property
    def supply(self, /) -> SupplyState:
        """
        oil used and its supply
        """
    @property
    def tension(self, /) -> Tension:
        """
        pull and tension
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def warnings(self, /) -> tuple[Warning, ...]:
        """
        what to read with care
        """
    @property
    def wear(self, /) -> WearState:
        """
        wear and life
        """

@final
class Event:
    """
    One articulation of a joint on its way round the loop.
    """
    def __copy__(self, /) -> Event: ...
    def __deepcopy__(self, /, _memo: Any) -> Event: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, section: int | None, kind: str | None, count: Scalar | None, time_s: Scalar | None, tension_n: Scalar | None, angle_deg: Scalar | None, temperature_c: Scalar | None, rest_s: Scalar | None, rest_tension_n: Scalar | None, viscosity_mpa_s: Scalar | None, pressure_mpa: Scalar | None, contact_pressure_mpa: Scalar | None, film_um: Scalar | None, lambda_ratio: Scalar | None, lambda_fill_1: Scalar | None, regime: str | None, asperity_share: Scalar | None, friction_reached: Scalar | None, friction: Scalar | None, flash_temperature_k: Scalar | None, wear_coefficient_reached: Scalar | None) -> Event: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def angle_deg(self, /) -> float:
        """
        angle of articulation
        """
    @property
    def asperity_share(self, /) -> float:
        """
        share of the load on asperities
        """
    @property
    def contact_pressure_mpa(self, /) -> float:
        """
        mean pressure in the strip that carries the load; at the ends of a bush up to four times as much where the pin bends
        """
    @property
    def count(self, /) -> float:
        """
        articulations in one circuit
        """
    @property
    def film_um(self, /) -> float:
        """
        oil film at the effective fill
        """
    @property
    def flash_temperature_k(self, /) -> float:
        """
        greatest flash temperature rise
        """
    @property
    def friction(self, /) -> float:
        """
        friction coefficient, mean over all joints
        """
    @property
    def friction_reached(self, /) -> float:
        """
        friction coefficient of a joint that gets oil
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Event:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Event:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Event:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def kind(self, /) -> str:
        """
        entry or exit of a turn, or idler
        """
    @property
    def lambda_fill_1(self, /) -> float:
        """
        film over roughness if the joint were full
        """
    @property
    def lambda_ratio(self, /) -> float:
        """
        film over roughness
        """
    @property
    def pressure_mpa(self, /) -> float:
        """
        nominal bearing pressure of the pin in its bush
        """
    @property
    def regime(self, /) -> str:
        """
        boundary, mixed or full film
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Event:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rest_s(self, /) -> float:
        """
        time at rest before it
        """
    @property
    def rest_tension_n(self, /) -> float:
        """
        mean tension during that rest
        """
    @property
    def section(self, /) -> int:
        """
        section of the survey, from 0
        """
    @property
    def temperature_c(self, /) -> float:
        """
        chain temperature
        """
    @property
    def tension_n(self, /) -> float:
        """
        tension of the heaviest strand
        """
    @property
    def time_s(self, /) -> float:
        """
        time in the circuit, from the drive exit
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def viscosity_mpa_s(self, /) -> float:
        """
        dynamic viscosity at this temperature
        """
    @property
    def wear_coefficient_reached(self, /) -> float:
        """
        wear coefficient of a joint that gets oil, mean over its waits
        """

@final
class EveryNth:
    """
    What a counter that doses every n-th joint reaches.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, reached: Any, never: Any, spacing: Any, wait_circuits: Any) -> EveryNth: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def never(self, /) -> FloatsOut:
        """
        joints that are never dosed
        """
    @property
    def reached(self, /) -> FloatsOut:
        """
        joints that are ever dosed
        """
    @property
    def spacing(self, /) -> FloatsOut:
        """
        joints from one dosed joint to the next along the chain
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """
    @property
    def wait_circuits(self, /) -> FloatsOut:
        """
        circuits between two doses at the same joint
        """

@final
class Explanation:
    """
    One number, explained: formula, numbers put in, where each came from, source and its class.
    """
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def filled(self, /) -> str:
        """
        Formula with numbers.
        """
    @property
    def formula(self, /) -> str:
        """
        Formula with names; empty for an input.
        """
    @property
    def inputs(self, /) -> list[tuple[str, str, str]]:
        """
        The numbers put in: path, value with unit, where it came from.
        """
    @property
    def means(self, /) -> str:
        """
        What it means.
        """
    @property
    def origin(self, /) -> str:
        """
        Where the number itself came from.
        """
    @property
    def path(self, /) -> str:
        """
        Path of the quantity, with the number of the list item.
        """
    @property
    def source(self, /) -> str:
        """
        Source of the relation or default.
        """
    @property
    def source_class(self, /) -> str:
        """
        How well the source is founded.
        """
    @property
    def spread(self, /) -> str:
        """
        Low and high of a default or closure; empty where none is stated.
        """
    @property
    def value(self, /) -> str:
        """
        Value with its unit, as people read it.
        """

@final
class Fill:
    """
    What oil does once it is in a joint: the closures of loss and capacity, and the floors that a set-up must keep.
    """
    def __copy__(self, /) -> Fill: ...
    def __deepcopy__(self, /, _memo: Any) -> Fill: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, articulation_loss: Scalar | None = None, articulation_loss_exponent: Scalar | None = None, articulation_loss_reference_pa_s: Scalar | None = None, air_factor: Scalar | None = None, noack_mass_per_area_kg_per_m2: Scalar | None = None, floor: Scalar | None = None, ring_share: Scalar | None = None, film_min_um: Scalar | None = None, keep: Scalar | None = None, hot_oil_confirmed: bool | None = None) -> Fill: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def air_factor(self, /) -> float:
        """
        evaporation over that of the test cup: 0.3 in still air, 1 in moving hot air
        """
    @property
    def articulation_loss(self, /) -> float:
        """
        share of the pumped oil that an articulation loses
        """
    @property
    def articulation_loss_exponent(self, /) -> float:
        """
        exponent with which thicker oil is lost less
        """
    @property
    def articulation_loss_reference_pa_s(self, /) -> float:
        """
        viscosity at which the articulation loss holds
        """
    @property
    def film_min_um(self, /) -> float:
        """
        thickness of the film that must stay on the plates
        """
    @property
    def floor(self, /) -> float:
        """
        lowest fill that a set-up may let a joint fall to
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Fill:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Fill:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Fill:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def hot_oil_confirmed(self, /) -> bool:
        """
        whether a competent person has confirmed oil within 20 K of its flash point
        """
    @property
    def keep(self, /) -> float:
        """
        share of its oil that a joint must keep between shots
        """
    @property
    def noack_mass_per_area_kg_per_m2(self, /) -> float:
        """
        oil per open area in the cup of the evaporation test
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Fill:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def ring_share(self, /) -> float:
        """
        share of the plate-gap ring that stays wet
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class FillState:
    """
    Which joints are reached and when; what enters, stays and drips.
    """
    def __copy__(self, /) -> FillState: ...
    def __deepcopy__(self, /, _memo: Any) -> FillState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, never_reached: Scalar | None, never_reached_if_miscounted: Scalar | None, wait_s: Sequence[Scalar] | None, wait_weight: Sequence[Scalar] | None, wait_circuits: Sequence[int] | None, wait_h: Sequence[Scalar] | None, share_of_joints: Sequence[Scalar] | None, mean_interval_h: Scalar | None, worst_wait_h: Scalar | None, visits_per_year: Scalar | None, pass_chance: Scalar | None, always_full: bool | None, lock_risk: Scalar | None, application_section: int | None, application_position: Scalar | None, application_side: str | None, application_score: Scalar | None, application_c: Scalar | None, viscosity_application_mpa_s: Scalar | None, time_available_s: Scalar | None, entry_plate_gap_s: Scalar | None, entry_joint_s: Scalar | None, entered_share: Scalar | None, viscosity_most_mpa_s: Scalar | None, viscosity_least_mpa_s: Scalar | None, capacity_ul: Scalar | None, retained_width_mm: Scalar | None, dose_in_joint_ul: Scalar | None, loss_rate_per_h: Scalar | None, loss_parts_per_h: LossParts | None, half_life_h: Scalar | None, fill_after_shot: Scalar | None, mean_fill: Scalar | None, mean_fill_reached: Scalar | None, lowest_fill_reached: Scalar | None, after_wash_fill: Scalar | None, effective_fill: Scalar | None, demand_ul_per_joint_h: Scalar | None, residue_years: Scalar | None) -> FillState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def after_wash_fill(self, /) -> float | None:
        """
        mean fill of reached joints right after a wash
        """
    @property
    def always_full(self, /) -> bool | None:
        """
        whether every shot fills the joint
        """
    @property
    def application_c(self, /) -> float:
        """
        chain temperature where oil is applied
        """
    @property
    def application_position(self, /) -> float | None:
        """
        place in that section
        """
    @property
    def application_score(self, /) -> float | None:
        """
        score of that place, 1 at best
        """
    @property
    def application_section(self, /) -> int | None:
        """
        section where oil is applied
        """
    @property
    def application_side(self, /) -> str | None:
        """
        side from which it is applied
        """
    @property
    def capacity_ul(self, /) -> float:
        """
        oil that a full joint holds
        """
    @property
    def demand_ul_per_joint_h(self, /) -> float:
        """
        oil that keeps a joint half full
        """
    @property
    def dose_in_joint_ul(self, /) -> float:
        """
        oil that one visit brings into a joint
        """
    @property
    def effective_fill(self, /) -> float:
        """
        fill that gives the mean boundary friction
        """
    @property
    def entered_share(self, /) -> float:
        """
        share of the captured oil that enters in time
        """
    @property
    def entry_joint_s(self, /) -> float:
        """
        further time to fill the annulus
        """
    @property
    def entry_plate_gap_s(self, /) -> float:
        """
        time to pass the plate gap
        """
    @property
    def fill_after_shot(self, /) -> float:
        """
        age-law fill right after a visit
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> FillState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> FillState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> FillState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def half_life_h(self, /) -> float:
        """
        running time in which half is lost
        """
    @property
    def lock_risk(self, /) -> float | None:
        """
        share of possible speed errors at which some stretch waits too long
        """
    @property
    def loss_parts_per_h(self, /) -> LossParts:
        """
        the same by cause
        """
    @property
    def loss_rate_per_h(self, /) -> float:
        """
        share of its oil that a joint loses in a running hour
        """
    @property
    def lowest_fill_reached(self, /) -> float:
        """
        lowest fill of the joints that are reached
        """
    @property
    def mean_fill(self, /) -> float:
        """
        mean fill of all joints
        """
    @property
    def mean_fill_reached(self, /) -> float:
        """
        mean fill of the joints that are reached
        """
    @property
    def mean_interval_h(self, /) -> float | None:
        """
        mean running time between two visits of a manual round
        """
    @property
    def never_reached(self, /) -> float:
        """
        share of joints that never get oil
        """
    @property
    def never_reached_if_miscounted(self, /) -> float | None:
        """
        the worst of the same if the number of joints is up to 4 off, where it was computed
        """
    @property
    def pass_chance(self, /) -> float | None:
        """
        chance that a passing joint catches a drop
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> FillState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def residue_years(self, /) -> float | None:
        """
        time in which residue blocks half the clearance
        """
    @property
    def retained_width_mm(self, /) -> float:
        """
        width of the oil ring that stays in the plate gap on the sharpest turn
        """
    @property
    def share_of_joints(self, /) -> tuple[float, ...] | None:
        """
        share of joints standing in each wait
        """
    @property
    def time_available_s(self, /) -> float:
        """
        time the oil has to enter
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def viscosity_application_mpa_s(self, /) -> float:
        """
        dynamic viscosity there
        """
    @property
    def viscosity_least_mpa_s(self, /) -> float:
        """
        viscosity below which a joint keeps less than its share between shots
        """
    @property
    def viscosity_most_mpa_s(self, /) -> float:
        """
        viscosity above which oil does not enter in time
        """
    @property
    def visits_per_year(self, /) -> float | None:
        """
        manual rounds in a year
        """
    @property
    def wait_circuits(self, /) -> tuple[int, ...] | None:
        """
        the same in circuits
        """
    @property
    def wait_h(self, /) -> tuple[float, ...] | None:
        """
        the same in running hours, for manual rounds
        """
    @property
    def wait_s(self, /) -> tuple[float, ...]:
        """
        waits between shots at one joint, in running time
        """
    @property
    def wait_weight(self, /) -> tuple[float, ...]:
        """
        share of time spent in each of these waits
        """
    @property
    def worst_wait_h(self, /) -> float:
        """
        longest wait of the joints that are reached, in running time; for manual rounds that of 95 in 100
        """

@final
class Friction:
    """
    Friction of each pair; `joint` and `bush_roller` are computed from the joint model where they are not given.
    """
    def __copy__(self, /) -> Friction: ...
    def __deepcopy__(self, /, _memo: Any) -> Friction: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, joint: Scalar | None = None, bush_roller: Scalar | None = None, plate_track: Scalar | None = None, plate_track_oiled: Scalar | None = None, track_oiled: bool | None = None, rolling_arm_mm: Scalar | None = None, track_factor: Scalar | None = None, trolley_coefficient: Scalar | None = None, idler_coefficient: Scalar | None = None, turn_roller_coefficient: Scalar | None = None, load_bed: Scalar | None = None, wheel_bearing: Scalar | None = None, breakaway_factor: Scalar | None = None) -> Friction: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def breakaway_factor(self, /) -> float:
        """
        friction at breakaway over running friction
        """
    @property
    def bush_roller(self, /) -> float | None:
        """
        friction coefficient of bush in roller; not given: computed
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Friction:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Friction:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Friction:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def idler_coefficient(self, /) -> float:
        """
        resistance of idlers over their load
        """
    @property
    def joint(self, /) -> float | None:
        """
        friction coefficient of pin in bush; not given: computed
        """
    @property
    def load_bed(self, /) -> float:
        """
        friction coefficient of the load on its bed, or of the chain under a standing load
        """
    @property
    def plate_track(self, /) -> float:
        """
        friction coefficient of side plates on their track
        """
    @property
    def plate_track_oiled(self, /) -> float:
        """
        the same where oil reaches the track
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Friction:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rolling_arm_mm(self, /) -> float:
        """
        lever arm of rolling friction of a roller on its track
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def track_factor(self, /) -> float:
        """
        factor for flange rub, dirt and rail joints
        """
    @property
    def track_oiled(self, /) -> bool:
        """
        whether oil from the joints also reaches the track
        """
    @property
    def trolley_coefficient(self, /) -> float:
        """
        resistance of trolleys over their load
        """
    @property
    def turn_roller_coefficient(self, /) -> float:
        """
        resistance of a roller turn over its load
        """
    @property
    def wheel_bearing(self, /) -> float:
        """
        friction coefficient of the wheels' bearings at the shaft radius
        """

@final
class FrictionCurve:
    """
    Friction of one articulation of a joint that gets oil, against film: the same joint with thinner and thicker oil.
    """
    def __copy__(self, /) -> FrictionCurve: ...
    def __deepcopy__(self, /, _memo: Any) -> FrictionCurve: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, event: int | None, viscosity_mpa_s: Sequence[Scalar] | None, lambda_ratio: Sequence[Scalar] | None, friction_reached: Sequence[Scalar] | None) -> FrictionCurve: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def event(self, /) -> int:
        """
        articulation, by its place in the events of the result, from 0
        """
    @property
    def friction_reached(self, /) -> tuple[float, ...]:
        """
        friction coefficient of a joint that gets oil
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> FrictionCurve:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> FrictionCurve:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> FrictionCurve:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def lambda_ratio(self, /) -> tuple[float, ...]:
        """
        film over roughness
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> FrictionCurve:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def viscosity_mpa_s(self, /) -> tuple[float, ...]:
        """
        dynamic viscosity
        """

@final
class Joint:
    """
    How oil wets the gap of a joint.
    """
    def __copy__(self, /) -> Joint: ...
    def __deepcopy__(self, /, _memo: Any) -> Joint: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, contact_angle_deg: Scalar | None = None, eccentricity_ratio: Scalar | None = None) -> Joint: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def contact_angle_deg(self, /) -> float:
        """
        angle at which the oil meets the steel
        """
    @property
    def eccentricity_ratio(self, /) -> float:
        """
        eccentricity of the resting pin over the clearance
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Joint:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Joint:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Joint:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Joint:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class JointOrbit:
    """
    The path of a pin in its bush through all events of the circuit, periodic, with the closed form beside it.
    """
    def __copy__(self, /) -> JointOrbit: ...
    def __deepcopy__(self, /, _memo: Any) -> JointOrbit: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, circuits: int | None, length_to_diameter: Scalar | None, radial_clearance_um: Scalar | None, events: Sequence[OrbitEvent] | None) -> JointOrbit: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def circuits(self, /) -> int:
        """
        circuits until the path repeats itself
        """
    @property
    def events(self, /) -> tuple[OrbitEvent, ...]:
        """
        each articulation, in the order of travel from the drive
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> JointOrbit:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> JointOrbit:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> JointOrbit:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def length_to_diameter(self, /) -> float:
        """
        joint length over pin diameter
        """
    @property
    def radial_clearance_um(self, /) -> float:
        """
        radial clearance of the run-in joint
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> JointOrbit:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class JointState:
    """
    What the joints go through, event by event, and the friction that comes of it.
    """
    def __copy__(self, /) -> JointState: ...
    def __deepcopy__(self, /, _memo: Any) -> JointState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, events: Sequence[Event] | None, mu_joint: Sequence[Sequence[Scalar]] | None, mu_joint_drive: Scalar | None, roller: Sequence[RollerContact] | None, plate_track: Scalar | None, rounds: int | None) -> JointState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def events(self, /) -> tuple[Event, ...]:
        """
        articulations of one joint in one circuit
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> JointState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> JointState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> JointState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def mu_joint(self, /) -> tuple[tuple[int, float], ...]:
        """
        friction coefficient of pin in bush by section
        """
    @property
    def mu_joint_drive(self, /) -> float:
        """
        friction coefficient of pin in bush at the drive
        """
    @property
    def plate_track(self, /) -> float:
        """
        friction coefficient of side plates on their track
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> JointState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def roller(self, /) -> tuple[RollerContact, ...]:
        """
        rollers of each straight that runs on them
        """
    @property
    def rounds(self, /) -> int:
        """
        rounds of friction and pull until they agreed
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Kinematics:
    """
    Lengths, times and temperatures round the loop.
    """
    def __copy__(self, /) -> Kinematics: ...
    def __deepcopy__(self, /, _memo: Any) -> Kinematics: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, joints: int | None, joints_counted: bool | None, survey_length_m: Scalar | None, length_m: Scalar | None, circuit_time_s: Scalar | None, joint_time_s: Scalar | None, speed_ripple: Scalar | None, running_h_per_year: Scalar | None, section_c: Sequence[Sequence[Scalar]] | None, mean_c: Scalar | None) -> Kinematics: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def circuit_time_s(self, /) -> float:
        """
        time of one revolution of the chain
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Kinematics:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Kinematics:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Kinematics:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joint_time_s(self, /) -> float:
        """
        time between two joints passing one place
        """
    @property
    def joints(self, /) -> int:
        """
        joints of one strand
        """
    @property
    def joints_counted(self, /) -> bool:
        """
        whether the joints were counted, not computed
        """
    @property
    def length_m(self, /) -> float:
        """
        length of one strand
        """
    @property
    def mean_c(self, /) -> float:
        """
        time mean of the chain temperature
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Kinematics:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def running_h_per_year(self, /) -> float:
        """
        running hours in a year
        """
    @property
    def section_c(self, /) -> tuple[tuple[float, float, float], ...]:
        """
        chain temperature of each section: entry, exit, mean
        """
    @property
    def speed_ripple(self, /) -> float:
        """
        greatest less least over mean chain speed at the drive
        """
    @property
    def survey_length_m(self, /) -> float:
        """
        sum of the section lengths along the chain
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class LevelChanges:
    """
    Changes of level of a series.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, points: Any, levels: Any, penalty: Any, lag1: Any, deviation: Any) -> LevelChanges: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def deviation(self, /) -> FloatsOut:
        """
        standard deviation of a reading about its level
        """
    @property
    def lag1(self, /) -> FloatsOut:
        """
        lag-one autocorrelation of the noise
        """
    @property
    def levels(self, /) -> tuple[float, ...]:
        """
        mean of each level, one more than there are changes
        """
    @property
    def penalty(self, /) -> FloatsOut:
        """
        price of a change, in the cost used
        """
    @property
    def points(self, /) -> tuple[int, ...]:
        """
        first reading of each new level, counted from 0
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """

@final
class Line:
    """
    One conveyor line as it was surveyed: the input of `evaluate`.

    The settings `friction`, `surface`, `joint`, `fill` and `wear` may be left out: they are then those that their
    classes give without arguments. So may `supply`, where there is none.
    """
    def __copy__(self, /) -> Line: ...
    def __deepcopy__(self, /, _memo: Any) -> Line: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, name: str | None, chain: Chain | None, circuit: Circuit | None, duty: Duty | None, oil: Oil | None, lubrication: Manual | Drip | Spray | Synchronised | None, drive: Drive | None, costs: Costs | None, supply: Supply | None = None, friction: Friction | None = None, surface: Surface | None = None, joint: Joint | None = None, fill: Fill | None = None, wear: Wear | None = None) -> Line: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def chain(self, /) -> Chain:
        """
        the chain
        """
    @property
    def circuit(self, /) -> Circuit:
        """
        the loop
        """
    @property
    def costs(self, /) -> Costs:
        """
        prices and yearly work
        """
    @property
    def drive(self, /) -> Drive:
        """
        motor and gear
        """
    @property
    def duty(self, /) -> Duty:
        """
        what it does all year
        """
    @property
    def fill(self, /) -> Fill:
        """
        what oil does in a joint
        """
    @property
    def friction(self, /) -> Friction:
        """
        friction of each pair
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Line:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Line:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Line:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joint(self, /) -> Joint:
        """
        wetting of the joints
        """
    @property
    def lubrication(self, /) -> Manual | Drip | Spray | Synchronised:
        """
        how joints get their oil
        """
    @property
    def name(self, /) -> str:
        """
        name of the line
        """
    @property
    def oil(self, /) -> Oil:
        """
        the oil
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Line:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def supply(self, /) -> Supply | None:
        """
        reservoir, pump, line, cable
        """
    @property
    def surface(self, /) -> Surface:
        """
        surfaces of the joints
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wear(self, /) -> Wear:
        """
        wear coefficients
        """

@final
class LineSetUp:
    """
    A set-up: what would be set at the line.
    """
    def __copy__(self, /) -> LineSetUp: ...
    def __deepcopy__(self, /, _memo: Any) -> LineSetUp: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, method: str | None, oil: str | None, oil_number: int | None, shot_ul: Scalar | None, flow_ml_per_min: Scalar | None, every_nth: int | None, points: int | None, run_min: Scalar | None, dwell_min: Scalar | None, application_section: int | None, application_position: Scalar | None, application_side: str | None) -> LineSetUp: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied
        """
    @property
    def dwell_min(self, /) -> float | None:
        """
        pause until the next run
        """
    @property
    def every_nth(self, /) -> int:
        """
        one joint in how many gets the shot
        """
    @property
    def flow_ml_per_min(self, /) -> float | None:
        """
        flow of a nozzle that gives that much, for spray and drip
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> LineSetUp:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> LineSetUp:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> LineSetUp:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def method(self, /) -> str:
        """
        how the joints get their oil
        """
    @property
    def oil(self, /) -> str:
        """
        the oil
        """
    @property
    def oil_number(self, /) -> int:
        """
        number of the oil among the offered, from 0
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> LineSetUp:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def run_min(self, /) -> float | None:
        """
        time for which oil is given; not there: it never stops
        """
    @property
    def shot_ul(self, /) -> float:
        """
        oil of one shot in one gap; of a spray, what a gap gets as its joint passes; of a round by hand, the dose of a joint
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class LockTime:
    """
    How long the locked pattern of a timer holds.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, starved_s: Any, constant_s: Any, random_s: Any, contiguous: Any) -> LockTime: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def constant_s(self, /) -> FloatsOut:
        """
        time until a constant error has crept over the whole stretch
        """
    @property
    def contiguous(self, /) -> FloatsOut:
        """
        whether the creep leaves no new gaps, so that the constant time holds
        """
    @property
    def random_s(self, /) -> FloatsOut:
        """
        typical time until a wandering error has done so
        """
    @property
    def starved_s(self, /) -> FloatsOut:
        """
        width of the starved stretch, in time of passing chain
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """

@final
class LogNote:
    """
    Something that a reader of a verdict must know.
    """
    def __copy__(self, /) -> LogNote: ...
    def __deepcopy__(self, /, _memo: Any) -> LogNote: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, code: str | None, message: str | None) -> LogNote: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def code(self, /) -> str:
        """
        stable word for programs
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> LogNote:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> LogNote:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> LogNote:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def message(self, /) -> str:
        """
        the whole sentence
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> LogNote:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class LogRow:
    """
    What is logged in one row, under the names that the columns of a log have.
    """
    def __copy__(self, /) -> LogRow: ...
    def __deepcopy__(self, /, _memo: Any) -> LogRow: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, current_a: Scalar | None = None, power_kw: Scalar | None = None, load_pct: Scalar | None = None, load_kg_per_m: Scalar | None = None, speed_m_per_min: Scalar | None = None, temperature_c: Scalar | None = None) -> LogRow: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def current_a(self, /) -> float | None:
        """
        current where the clamp sits
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> LogRow:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> LogRow:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> LogRow:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def load_kg_per_m(self, /) -> float | None:
        """
        load of the line
        """
    @property
    def load_pct(self, /) -> float | None:
        """
        load of the line, of its usual or full one
        """
    @property
    def power_kw(self, /) -> float | None:
        """
        electrical power, the better witness
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> LogRow:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def speed_m_per_min(self, /) -> float | None:
        """
        chain speed
        """
    @property
    def temperature_c(self, /) -> float | None:
        """
        temperature of the room, or of the gear
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class LogRules:
    """
    How to clean a log. What is not given comes from the line, where one is given.
    """
    def __copy__(self, /) -> LogRules: ...
    def __deepcopy__(self, /, _memo: Any) -> LogRules: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, no_load_current_a: Scalar | None = None, no_load_power_kw: Scalar | None = None, rated_current_a: Scalar | None = None, rated_power_kw: Scalar | None = None, start_up_s: Scalar | None = None, warm_up_min: Scalar | None = None, long_stop_h: Scalar | None = None, gaps_are_stops: bool | None = None, may_be_negative: bool | None = None, window_h: Scalar | None = None, coverage_pct: Scalar | None = None, display_step_a: Scalar | None = None, display_step_kw: Scalar | None = None) -> LogRules: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def coverage_pct(self, /) -> float:
        """
        least share of a window that the log covers, stops counted as covered
        """
    @property
    def display_step_a(self, /) -> float | None:
        """
        step of the display; not given: the smallest difference in the log
        """
    @property
    def display_step_kw(self, /) -> float | None:
        """
        the same of a power meter
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> LogRules:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> LogRules:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> LogRules:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def gaps_are_stops(self, /) -> bool:
        """
        whether a gap in the log is a stop, as with a logger that is off when the line is
        """
    @property
    def long_stop_h(self, /) -> float:
        """
        a stop longer than this is long
        """
    @property
    def may_be_negative(self, /) -> bool:
        """
        whether readings below zero are real, as power on a line that runs downhill; else they are left out
        """
    @property
    def no_load_current_a(self, /) -> float | None:
        """
        current without load: below half of it the line stands; not given: that of the line's motor
        """
    @property
    def no_load_power_kw(self, /) -> float | None:
        """
        power without load, likewise
        """
    @property
    def rated_current_a(self, /) -> float | None:
        """
        rated current, against logs in the wrong unit; not given: that of the line's motor
        """
    @property
    def rated_power_kw(self, /) -> float | None:
        """
        rated electrical power, likewise
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> LogRules:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def start_up_s(self, /) -> float:
        """
        left out after each start
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def warm_up_min(self, /) -> float | None:
        """
        left out after a long stop; not given: 60, and 180 for ovens and freezers
        """
    @property
    def window_h(self, /) -> float:
        """
        length of the means by the clock of the log: whole days from midnight, or hours or minutes that go into a day; 0 to keep single readings
        """

@final
class LogWatch:
    """
    A watch that takes one reading at a time, learnt from a quiet log. Saved as JSON and read back, it goes on as it was.

    Examples
    --------
    >>> import numpy as np, pinfilm
    >>> time = np.datetime64("2025-01-01") + np.arange(60) * np.timedelta64(1, "D")
    >>> quiet = pinfilm.CurrentLog(
    ...     time=time, current_a=3.0 + 0.01 * (np.arange(60) * 7 % 10), rules=pinfilm.LogRules(window_h=0)
    ... )
    >>> watch = pinfilm.LogWatch.learn(quiet)
    >>> watch = pinfilm.LogWatch.from_json(watch.to_json())
    >>> watch.take("2025-03-02", current_a=3.04).alarm
    False
    """
    def __copy__(self, /) -> LogWatch: ...
    def __deepcopy__(self, /, _memo: Any) -> LogWatch: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __reduce__(self, /) -> tuple[Any, tuple[str]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def covariates(self, /) -> list[str]:
        """
        Names of the covariates that every reading needs.
        """
    @staticmethod
    def from_json(text: str) -> LogWatch:
        """
        From JSON text as `to_json` gives it.
        """
    @staticmethod
    def learn(quiet: CurrentLog, /, *, line: Line | None = None) -> LogWatch:
        """
        Learn what the line should draw from all of a log, a quiet period of 30 means or more.
        """
    @property
    def logged(self, /) -> str:
        """
        What it reads: ``"current_a"`` or ``"power_kw"``.
        """
    def reset(self, /) -> None:
        """
        Put the charts back to nothing, after an alarm was dealt with; the baseline stays.
        """
    def take(self, time: Any, /, *, started: bool = False, **row: "object") -> WatchStep:
        """
        Take one reading, later than the last, in the unit that the watch was learnt in.

        Parameters
        ----------
        time : date, datetime or str
            When; without an offset by the clock of the log.
        started : bool
            Whether the line was started since the reading before.
        **row
            Names of `LogRow`: `current_a` or `power_kw`, and every covariate that the watch knows.

        Returns
        -------
        WatchStep

        Raises
        ------
        InputError
            For a reading that is no number, not later than the last, or without what the watch knows; the watch stays as it
            was.
        """
    @property
    def threshold(self, /) -> float:
        """
        Threshold of the CUSUM.
        """
    def to_json(self, /) -> str:
        """
        As JSON text, with all that it has seen.
        """

@final
class LossParts:
    """
    What a joint loses, by cause, per running hour.
    """
    def __copy__(self, /) -> LossParts: ...
    def __deepcopy__(self, /, _memo: Any) -> LossParts: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, evaporation: Scalar | None, oxidation: Scalar | None, articulation: Scalar | None, wash: Scalar | None, dust: Scalar | None, standing: Scalar | None) -> LossParts: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def articulation(self, /) -> float:
        """
        pumping by articulation
        """
    @property
    def dust(self, /) -> float:
        """
        uptake by dust
        """
    @property
    def evaporation(self, /) -> float:
        """
        evaporation
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> LossParts:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> LossParts:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> LossParts:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def oxidation(self, /) -> float:
        """
        oxidation
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> LossParts:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def standing(self, /) -> float:
        """
        evaporation and oxidation while standing
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wash(self, /) -> float:
        """
        washing
        """

@final
class LossRates:
    """
    What a joint loses, by cause, in shares of its oil per running hour.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, evaporation_per_h: Any, oxidation_per_h: Any, articulation_per_h: Any, wash_per_h: Any, total_per_h: Any, half_life_h: Any) -> LossRates: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def articulation_per_h(self, /) -> FloatsOut:
        """
        pumping by articulation
        """
    @property
    def evaporation_per_h(self, /) -> FloatsOut:
        """
        evaporation
        """
    @property
    def half_life_h(self, /) -> FloatsOut:
        """
        running time in which half of the oil is lost
        """
    @property
    def oxidation_per_h(self, /) -> FloatsOut:
        """
        oxidation
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """
    @property
    def total_per_h(self, /) -> FloatsOut:
        """
        all together
        """
    @property
    def wash_per_h(self, /) -> FloatsOut:
        """
        washing
        """

@final
class Manual:
    """
    A person with a brush or can.
    """
    def __copy__(self, /) -> Manual: ...
    def __deepcopy__(self, /, _memo: Any) -> Manual: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, interval_h: Scalar | None, dose_ul: Scalar | None, interval_cv: Scalar | None = None, miss_share: Scalar | None = None, unreached_share: Scalar | None = None, capture: Scalar | None = None, points: int | None = None, application_section: int | None = None, application_position: Scalar | None = None, application_side: str | None = None, time_available_s: Scalar | None = None) -> Manual: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0; not given: the best point
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied: top, side or bottom
        """
    @property
    def capture(self, /) -> float:
        """
        share of the oil that lands in the gaps
        """
    @property
    def dose_ul(self, /) -> float:
        """
        oil given to one joint in a round
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Manual:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Manual:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Manual:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def interval_cv(self, /) -> float:
        """
        scatter of the interval: standard deviation over mean
        """
    @property
    def interval_h(self, /) -> float:
        """
        calendar time between rounds
        """
    @property
    def miss_share(self, /) -> float:
        """
        share of joints that a round misses by chance
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand: 1 or 2
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Manual:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def time_available_s(self, /) -> float | None:
        """
        time the oil has to enter; not given: from the circuit
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def unreached_share(self, /) -> float:
        """
        share of joints that no round reaches: guards, tunnels
        """

@final
class ManualInterval:
    """
    Time between two visits of a manual round at one joint.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, mean_h: Any, sd_h: Any, p5_h: Any, p50_h: Any, p95_h: Any) -> ManualInterval: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def mean_h(self, /) -> FloatsOut:
        """
        mean time
        """
    @property
    def p50_h(self, /) -> FloatsOut:
        """
        median
        """
    @property
    def p5_h(self, /) -> FloatsOut:
        """
        time that 5 visits in 100 fall short of
        """
    @property
    def p95_h(self, /) -> FloatsOut:
        """
        time that 5 visits in 100 exceed
        """
    @property
    def sd_h(self, /) -> FloatsOut:
        """
        standard deviation
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """

@final
class Oil:
    """
    An oil: its viscosity by grade and index or by two measurements, and what heat, water and time do to it.
    """
    def __copy__(self, /) -> Oil: ...
    def __deepcopy__(self, /, _memo: Any) -> Oil: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, name: str | None = None, iso_vg: int | None = None, viscosity_index: Scalar | None = None, t1_c: Scalar | None = None, v1_mm2_s: Scalar | None = None, t2_c: Scalar | None = None, v2_mm2_s: Scalar | None = None, density_15_kg_per_m3: Scalar | None = None, pressure_viscosity_factor: Scalar | None = None, surface_tension_mn_per_m: Scalar | None = None, noack_pct: Scalar | None = None, vaporisation_kj_per_mol: Scalar | None = None, oxidation_half_life_h: Scalar | None = None, oxidation_reference_c: Scalar | None = None, boundary_friction: Scalar | None = None, limiting_friction: Scalar | None = None, boundary_transition_c: Scalar | None = None, residue_evaporation_share: Scalar | None = None, residue_oxidation_share: Scalar | None = None, flash_point_c: Scalar | None = None, pour_point_c: Scalar | None = None, food_grade: bool | None = None, price_per_l: Scalar | None) -> Oil: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def boundary_friction(self, /) -> float:
        """
        friction coefficient of oiled steel in boundary lubrication
        """
    @property
    def boundary_transition_c(self, /) -> float:
        """
        temperature above which the boundary layer fails
        """
    @property
    def density_15_kg_per_m3(self, /) -> float:
        """
        density at 15 °C
        """
    @property
    def flash_point_c(self, /) -> float | None:
        """
        flash point
        """
    @property
    def food_grade(self, /) -> bool:
        """
        whether the oil may touch food by accident
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Oil:
        """
        From a dictionary as `to_dict` gives it.
        """
    @staticmethod
    def from_grade(iso_vg: int, viscosity_index: Scalar | None = None, /, **given: "object") -> Oil:
        """
        An oil by its ISO viscosity grade and viscosity index; everything else by name.

        Examples
        --------
        >>> import pinfilm
        >>> pinfilm.Oil.from_grade(220, 95, price_per_l=9.0).iso_vg
        220
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Oil:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Oil:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def iso_vg(self, /) -> int | None:
        """
        viscosity grade of ISO 3448
        """
    @property
    def limiting_friction(self, /) -> float:
        """
        greatest friction coefficient of a sheared oil film
        """
    @property
    def name(self, /) -> str | None:
        """
        name of the oil, as the plant calls it
        """
    @property
    def noack_pct(self, /) -> float:
        """
        share lost in the one-hour evaporation test at 250 °C
        """
    @property
    def oxidation_half_life_h(self, /) -> float:
        """
        time in which half of the oil is oxidised at the reference temperature
        """
    @property
    def oxidation_reference_c(self, /) -> float:
        """
        temperature at which half of the oil is oxidised in that time
        """
    @property
    def pour_point_c(self, /) -> float | None:
        """
        pour point
        """
    @property
    def pressure_viscosity_factor(self, /) -> float:
        """
        factor on the pressure-viscosity coefficient
        """
    @property
    def price_per_l(self, /) -> float:
        """
        price of the oil
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Oil:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def residue_evaporation_share(self, /) -> float:
        """
        share of the evaporated oil that stays as residue
        """
    @property
    def residue_oxidation_share(self, /) -> float:
        """
        share of the oxidised oil that stays as residue
        """
    @property
    def surface_tension_mn_per_m(self, /) -> float:
        """
        surface tension
        """
    @property
    def t1_c(self, /) -> float:
        """
        temperature of the first measured viscosity
        """
    @property
    def t2_c(self, /) -> float:
        """
        temperature of the second measured viscosity
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def v1_mm2_s(self, /) -> float | None:
        """
        first measured kinematic viscosity
        """
    @property
    def v2_mm2_s(self, /) -> float | None:
        """
        second measured kinematic viscosity
        """
    @property
    def vaporisation_kj_per_mol(self, /) -> float:
        """
        heat of vaporisation
        """
    @property
    def viscosity_index(self, /) -> float:
        """
        viscosity index
        """
    def viscosity_mpa_s(self, /, temperature_c: Floats) -> FloatsOut:
        """
        Dynamic viscosity of this oil at any temperature.

        Parameters
        ----------
        temperature_c : array_like
            Temperature; -100 to 400 °C.

        Returns
        -------
        float or ndarray
            Dynamic viscosity in mPa s.

        Raises
        ------
        InputError
            A temperature outside its range, or at which the oil leaves what its viscosity line covers.
        UnitError
            A quantity of another dimension than the name says.

        Notes
        -----
        The line through its two viscosities (ASTM D341) times its density at that temperature.

        Examples
        --------
        >>> import pinfilm
        >>> round(pinfilm.Oil.from_grade(220, 95, price_per_l=9.0).viscosity_mpa_s(40.0), 1)
        192.3
        """

@final
class OilCheck:
    """
    A reading of the reservoir between two refills, and the shots of that time.
    """
    def __copy__(self, /) -> OilCheck: ...
    def __deepcopy__(self, /, _memo: Any) -> OilCheck: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, used_l: Scalar | None, shots: Scalar | None, shot_ul: Scalar | None, reading_error_l: Scalar | None = None, shot_error_pct: Scalar | None = None) -> OilCheck: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> OilCheck:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> OilCheck:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> OilCheck:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def reading_error_l(self, /) -> float:
        """
        standard deviation of the fall as read
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> OilCheck:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def shot_error_pct(self, /) -> float:
        """
        standard deviation of the shot
        """
    @property
    def shot_ul(self, /) -> float:
        """
        oil of one shot
        """
    @property
    def shots(self, /) -> float:
        """
        shots counted in that time
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def used_l(self, /) -> float:
        """
        fall of the reservoir
        """

@final
class OilUse:
    """
    What the reservoir says of the supply.
    """
    def __copy__(self, /) -> OilUse: ...
    def __deepcopy__(self, /, _memo: Any) -> OilUse: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, sentence: str | None, verdict: str | None, dispensed_l: Scalar | None, deviations: Scalar | None) -> OilUse: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def deviations(self, /) -> float:
        """
        difference in standard deviations
        """
    @property
    def dispensed_l(self, /) -> float:
        """
        oil that the shots should have taken
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> OilUse:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> OilUse:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> OilUse:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> OilUse:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sentence(self, /) -> str:
        """
        the verdict in one sentence
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def verdict(self, /) -> str:
        """
        consistent, high (a leak, a valve stuck open) or low (a blockage, an empty reservoir)
        """

@final
class OperatingPoint:
    """
    A three-phase cage induction motor at one load.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, slip: Any, speed_rpm: Any, current_a: Any, rotor_current_a: Any, power_factor: Any, input_power_w: Any, stator_copper_loss_w: Any, core_loss_w: Any, air_gap_power_w: Any, rotor_copper_loss_w: Any, converted_power_w: Any, shaft_power_w: Any, efficiency: Any, induced_torque_nm: Any, shaft_torque_nm: Any) -> OperatingPoint: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def air_gap_power_w(self, /) -> FloatsOut:
        """
        power through the air gap
        """
    @property
    def converted_power_w(self, /) -> FloatsOut:
        """
        power turned into mechanical power
        """
    @property
    def core_loss_w(self, /) -> FloatsOut:
        """
        loss in the core, where it has a resistance of its own
        """
    @property
    def current_a(self, /) -> FloatsOut:
        """
        line current
        """
    @property
    def efficiency(self, /) -> FloatsOut:
        """
        shaft power over input power
        """
    @property
    def induced_torque_nm(self, /) -> FloatsOut:
        """
        torque of the air gap
        """
    @property
    def input_power_w(self, /) -> FloatsOut:
        """
        electrical input power
        """
    @property
    def power_factor(self, /) -> FloatsOut:
        """
        power factor, current lagging
        """
    @property
    def rotor_copper_loss_w(self, /) -> FloatsOut:
        """
        loss in the rotor
        """
    @property
    def rotor_current_a(self, /) -> FloatsOut:
        """
        rotor current, referred to the stator
        """
    @property
    def shaft_power_w(self, /) -> FloatsOut:
        """
        power at the shaft
        """
    @property
    def shaft_torque_nm(self, /) -> FloatsOut:
        """
        torque at the shaft
        """
    @property
    def slip(self, /) -> FloatsOut:
        """
        lag behind the synchronous speed, as a share of it
        """
    @property
    def speed_rpm(self, /) -> FloatsOut:
        """
        speed of the shaft
        """
    @property
    def stator_copper_loss_w(self, /) -> FloatsOut:
        """
        loss in the stator winding
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """

@final
class OrbitEvent:
    """
    One articulation of a joint: the load and time it gets, and the smallest gap that a rigid flooded pin keeps.
    """
    def __copy__(self, /) -> OrbitEvent: ...
    def __deepcopy__(self, /, _memo: Any) -> OrbitEvent: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, section: int | None, kind: str | None, count: Scalar | None, angular_speed_rad_per_s: Scalar | None, turn_s: Scalar | None, squeeze_time_s: Scalar | None, rest_s: Scalar | None, rest_squeeze_time_s: Scalar | None, film_start_um: Scalar | None, film_mean_um: Scalar | None, film_end_um: Scalar | None, fast_film_start_um: Scalar | None, fast_film_mean_um: Scalar | None, fast_film_end_um: Scalar | None) -> OrbitEvent: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def angular_speed_rad_per_s(self, /) -> float:
        """
        speed of pin against bush, with its sense
        """
    @property
    def count(self, /) -> float:
        """
        articulations in one circuit
        """
    @property
    def fast_film_end_um(self, /) -> float:
        """
        smallest gap when the turn ends, closed form
        """
    @property
    def fast_film_mean_um(self, /) -> float:
        """
        mean smallest gap over the turn, closed form
        """
    @property
    def fast_film_start_um(self, /) -> float:
        """
        smallest gap when the turn begins, closed form
        """
    @property
    def film_end_um(self, /) -> float:
        """
        smallest gap when the turn ends, orbit
        """
    @property
    def film_mean_um(self, /) -> float:
        """
        mean smallest gap over the turn, orbit
        """
    @property
    def film_start_um(self, /) -> float:
        """
        smallest gap when the turn begins, orbit
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> OrbitEvent:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> OrbitEvent:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> OrbitEvent:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def kind(self, /) -> str:
        """
        entry or exit of a turn, or the last of the idlers of a straight
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> OrbitEvent:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rest_s(self, /) -> float:
        """
        time at rest before it
        """
    @property
    def rest_squeeze_time_s(self, /) -> float:
        """
        the same time scale for the mean load at rest
        """
    @property
    def section(self, /) -> int:
        """
        section of the survey, from 0
        """
    @property
    def squeeze_time_s(self, /) -> float:
        """
        time scale on which the load of the turn squeezes a film out
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def turn_s(self, /) -> float:
        """
        duration of the turn
        """

@final
class PeriodicFill:
    """
    How full the joints are once a line under a timer has settled.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, mean_fill: Any, mean_fill_reached: Any, lowest_fill_reached: Any, fill_after_shot: Any, overflow_ul: Any, never_reached: Any, always_full: Any) -> PeriodicFill: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def always_full(self, /) -> FloatsOut:
        """
        whether every shot fills its joint
        """
    @property
    def fill_after_shot(self, /) -> FloatsOut:
        """
        mean fill right after a shot
        """
    @property
    def lowest_fill_reached(self, /) -> FloatsOut:
        """
        lowest fill of a reached joint, right before a shot
        """
    @property
    def mean_fill(self, /) -> FloatsOut:
        """
        mean over time and all joints, those never reached counted as empty
        """
    @property
    def mean_fill_reached(self, /) -> FloatsOut:
        """
        mean over time and the joints that are reached
        """
    @property
    def never_reached(self, /) -> FloatsOut:
        """
        share of the joints that no shot meets
        """
    @property
    def overflow_ul(self, /) -> FloatsOut:
        """
        oil that overflows at a shot
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """

@final
class PointsCoverage:
    """
    Waits of the joints that pass several points on one timer.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, wait_circuits: Any, share_of_shots: Any, share_of_joints: Any, never_reached: Any) -> PointsCoverage: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def never_reached(self, /) -> FloatsOut:
        """
        share of the joints that no point ever reaches
        """
    @property
    def share_of_joints(self, /) -> tuple[float, ...]:
        """
        share of all joints that stand in each wait at a random moment
        """
    @property
    def share_of_shots(self, /) -> tuple[float, ...]:
        """
        share of all shots that are followed by each wait
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """
    @property
    def wait_circuits(self, /) -> tuple[int, ...]:
        """
        waits between circuits in which a joint is shot, shortest first
        """

@final
class Proof:
    """
    How sure a verdict is to be, and what is known of the measurement.
    """
    def __copy__(self, /) -> Proof: ...
    def __deepcopy__(self, /, _memo: Any) -> Proof: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, confidence_pct: Scalar | None = None, power_pct: Scalar | None = None, systematic_pct: Scalar | None = None, systematic_independence: Scalar | None = None, expected_saving_pct: Scalar | None = None, settle_days: Scalar | None = None, months_after: Scalar | None = None) -> Proof: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def confidence_pct(self, /) -> float:
        """
        confidence of the intervals
        """
    @property
    def expected_saving_pct(self, /) -> float | None:
        """
        saving that the log is to show, for the days that it takes; not given: the one found
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Proof:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Proof:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Proof:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def months_after(self, /) -> float | None:
        """
        months after the change, for the guideline's second factor; not given: those of the log
        """
    @property
    def power_pct(self, /) -> float:
        """
        probability with which a change is to be seen
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Proof:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def settle_days(self, /) -> float:
        """
        left out after the day of the change, until oil has crept in
        """
    @property
    def systematic_independence(self, /) -> float:
        """
        how far that differs before and after: 1 for a clamp that was fitted anew, towards 0 for one left in place
        """
    @property
    def systematic_pct(self, /) -> float:
        """
        spread of what stays the same within a period (voltage, gear oil, how the clamp sits); no number of days removes it
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class PullChange:
    """
    What the log says of the pull of the chain, read through motor and gear.
    """
    def __copy__(self, /) -> PullChange: ...
    def __deepcopy__(self, /, _memo: Any) -> PullChange: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, pull_before_n: Scalar | None, pull_after_n: Scalar | None, pull_saving_pct: Scalar | None, pull_saving_low_pct: Scalar | None, pull_saving_high_pct: Scalar | None, error_log_pct: Scalar | None, error_motor_pct: Scalar | None, motor_load: Scalar | None, draws: int | None, draws_without_load: int | None) -> PullChange: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def draws(self, /) -> int:
        """
        draws of what nameplate and gear leave open
        """
    @property
    def draws_without_load(self, /) -> int:
        """
        of these, draws in which no load of the motor gives both readings
        """
    @property
    def error_log_pct(self, /) -> float:
        """
        standard error from the scatter of the log
        """
    @property
    def error_motor_pct(self, /) -> float:
        """
        standard deviation from what nameplate and gear leave open
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> PullChange:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> PullChange:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> PullChange:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def motor_load(self, /) -> float:
        """
        shaft power before over rated power
        """
    @property
    def pull_after_n(self, /) -> float:
        """
        pull after, at the same load
        """
    @property
    def pull_before_n(self, /) -> float:
        """
        pull before, at the load of the after period
        """
    @property
    def pull_saving_high_pct(self, /) -> float:
        """
        its interval, high end
        """
    @property
    def pull_saving_low_pct(self, /) -> float:
        """
        its interval, low end
        """
    @property
    def pull_saving_pct(self, /) -> float:
        """
        pull saved
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> PullChange:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Ranking:
    """
    The lines to do within a budget.
    """
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def bound(self, /) -> float:
        """
        No choice within the budget is worth more.
        """
    @property
    def chosen(self, /) -> list[bool]:
        """
        Whether each row is chosen.
        """
    @property
    def cost(self, /) -> float:
        """
        Money that it needs.
        """
    @property
    def exact(self, /) -> bool:
        """
        Whether no choice is worth more than this one; if not, `bound` says how much is missing at most.
        """
    @property
    def left_out(self, /) -> list[int]:
        """
        Rows that were left out because they have no value or no cost: rows with an error.
        """
    @property
    def rows(self, /) -> list[int]:
        """
        Numbers of the chosen rows, the best value for money first.
        """
    @property
    def shares(self, /) -> list[float] | None:
        """
        For each row the share of draws in which it is chosen; None without draws.
        """
    @property
    def value(self, /) -> float:
        """
        Net present value of all that is chosen.
        """

@final
class Reading:
    """
    A reading on a line, for `calibrate`, with the standard deviation of its error.

    Examples
    --------
    >>> import datetime, pinfilm
    >>> pinfilm.Reading.elongation(0.42, running_h=3000)
    Reading.elongation(0.42, running_h=3000.0, error_pct=0.05)
    >>> new, today = datetime.date(2024, 3, 1), datetime.date(2025, 3, 1)
    >>> pinfilm.Reading.elongation(0.42, new_on=new, read_on=today)
    Reading.elongation(0.42, days=365.0, error_pct=0.05)
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @staticmethod
    def current(current_a: SupportsFloat | SupportsIndex, *, error_a: SupportsFloat | SupportsIndex, proposed: bool = False) -> Reading:
        """
        Current of the drive where the survey says it is measured (A); of a pair, now or as proposed.
        """
    @staticmethod
    def elongation(elongation_pct: SupportsFloat | SupportsIndex, *, running_h: SupportsFloat | SupportsIndex | None = None, days: SupportsFloat | SupportsIndex | None = None, new_on: date | None = None, read_on: date | None = None, changed_running_h: SupportsFloat | SupportsIndex | None = None, changed_on: date | None = None, error_pct: SupportsFloat | SupportsIndex | None = None) -> Reading:
        """
        Elongation of a stretch of many links, in % of the new length.

        Give the running hours since the chain was new, or the calendar days, or two dates; days run as the duty of the
        line says. `error_pct` is 0.05 % of length if read with care, three times that by habit. Once the oiling has been
        changed on the same chain, say when: `changed_running_h` or `changed_on`, counted from the new chain.
        """
    @staticmethod
    def number(path: str, value: SupportsFloat | SupportsIndex, *, error: SupportsFloat | SupportsIndex) -> Reading:
        """
        Any number of the result, by its dotted path.
        """
    @staticmethod
    def oil_used(l_per_year: SupportsFloat | SupportsIndex, *, error_l: SupportsFloat | SupportsIndex, proposed: bool = False) -> Reading:
        """
        Oil that left the applicator in a year (L); of a pair, now or as proposed.
        """
    @staticmethod
    def saving(found: BeforeAfter) -> Reading:
        """
        What a log has shown of a change of oiling: the fall of current or power, with the error that `before_after` found.

        For a pair of lines. The error holds for the log alone: where the load, the speed or something else of the line
        changed with the oiling and was not logged, the reading is wrong by more.

        Examples
        --------
        >>> import pinfilm
        >>> demo = pinfilm.examples.current_log("oven")
        >>> reading = pinfilm.Reading.saving(demo.log().before_after(demo.changed, line=demo.line))
        >>> pair, guesses = pinfilm.examples.pair("oven"), {"surface.dry_friction": None}
        >>> pinfilm.calibrate(pair, [reading], guesses, n=64).spread_left[0] < 0.5
        True
        """

@final
class Recommendation:
    """
    Which set-up to use, why, and why not the others.
    """
    def __copy__(self, /) -> Recommendation: ...
    def __deepcopy__(self, /, _memo: Any) -> Recommendation: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, feasible: bool | None, candidates: int | None, feasible_candidates: int | None, set_up: LineSetUp | None, why: Sequence[str] | None, sheet: SetUpSheet | None, line: Line | None, evaluation: Evaluation | None, alternatives: Sequence[Alternative] | None, refused: Sequence[Refused] | None, rejections: Sequence[Rejection] | None) -> Recommendation: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def alternatives(self, /) -> tuple[Alternative, ...]:
        """
        set-ups that keep every limit, the best first
        """
    @property
    def candidates(self, /) -> int:
        """
        set-ups that were judged
        """
    @property
    def evaluation(self, /) -> Evaluation | None:
        """
        that line, evaluated
        """
    @property
    def feasible(self, /) -> bool:
        """
        whether any set-up keeps every limit
        """
    @property
    def feasible_candidates(self, /) -> int:
        """
        set-ups that keep every limit
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Recommendation:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Recommendation:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Recommendation:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def line(self, /) -> Line | None:
        """
        the survey with that set-up
        """
    @property
    def refused(self, /) -> tuple[Refused, ...]:
        """
        why the others were refused, a reason at a time
        """
    @property
    def rejections(self, /) -> tuple[Rejection, ...]:
        """
        refused set-ups one by one, of each reason those first that missed by least
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Recommendation:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def set_up(self, /) -> LineSetUp | None:
        """
        the set-up to use
        """
    @property
    def sheet(self, /) -> SetUpSheet | None:
        """
        the set-up sheet
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def why(self, /) -> tuple[str, ...]:
        """
        why this one
        """

@final
class Refused:
    """
    All set-ups that were refused for one reason.
    """
    def __copy__(self, /) -> Refused: ...
    def __deepcopy__(self, /, _memo: Any) -> Refused: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, reason: str | None, count: int | None, means: str | None, nearest: str | None, missed_by: Scalar | None, cure: str | None) -> Refused: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def count(self, /) -> int:
        """
        how many
        """
    @property
    def cure(self, /) -> str:
        """
        what would have to change
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Refused:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Refused:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Refused:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def means(self, /) -> str:
        """
        what the test says
        """
    @property
    def missed_by(self, /) -> float:
        """
        how far that one missed: a share of the limit, or the difference of two shares
        """
    @property
    def nearest(self, /) -> str:
        """
        the one that missed by least, in words
        """
    @property
    def reason(self, /) -> str:
        """
        the test that they failed
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Refused:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Rejection:
    """
    A set-up that was refused, with the first test that it failed.
    """
    def __copy__(self, /) -> Rejection: ...
    def __deepcopy__(self, /, _memo: Any) -> Rejection: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, reason: str | None, value: Scalar | None, limit: Scalar | None, unit: str | None, missed_by: Scalar | None, set_up: LineSetUp | None) -> Rejection: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Rejection:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Rejection:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Rejection:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def limit(self, /) -> float | None:
        """
        what the test asks for, in the same unit
        """
    @property
    def message(self, /) -> str:
        """
        What happened, with numbers, in a sentence.
        """
    @property
    def missed_by(self, /) -> float:
        """
        how far it missed: a share of the limit, or the difference of two shares
        """
    @property
    def reason(self, /) -> str:
        """
        the test that it failed
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Rejection:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def set_up(self, /) -> LineSetUp:
        """
        the set-up
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def unit(self, /) -> str:
        """
        that unit
        """
    @property
    def value(self, /) -> float | None:
        """
        what it reached, in the unit beside it; not there where no number is to blame
        """

@final
class ReynoldsBearing:
    """
    A steady journal bearing as a solution of the Reynolds equation.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, sommerfeld: Any, attitude_deg: Any, friction: Any, friction_striated: Any, flow: Any, side_flow_share: Any, pressure_ratio: Any) -> ReynoldsBearing: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def attitude_deg(self, /) -> FloatsOut:
        """
        angle between load and line of centres
        """
    @property
    def flow(self, /) -> FloatsOut:
        """
        oil entering at the widest gap, Q/(R c N L)
        """
    @property
    def friction(self, /) -> FloatsOut:
        """
        (R/c) times the friction coefficient, drag over the whole circumference
        """
    @property
    def friction_striated(self, /) -> FloatsOut:
        """
        the same where only streamers fill the gap behind the rupture
        """
    @property
    def pressure_ratio(self, /) -> FloatsOut:
        """
        mean bearing pressure over greatest film pressure
        """
    @property
    def side_flow_share(self, /) -> FloatsOut:
        """
        share of it that leaves at the ends
        """
    @property
    def sommerfeld(self, /) -> FloatsOut:
        """
        Sommerfeld number (η N 2 R L/W) (R/c)²
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """

@final
class RollerContact:
    """
    The rollers of one straight on their bushes.
    """
    def __copy__(self, /) -> RollerContact: ...
    def __deepcopy__(self, /, _memo: Any) -> RollerContact: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, section: int | None, load_n: Scalar | None, contact_pressure_mpa: Scalar | None, lambda_ratio: Scalar | None, friction_reached: Scalar | None, friction: Scalar | None) -> RollerContact: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def contact_pressure_mpa(self, /) -> float:
        """
        mean pressure in the strip that carries the load
        """
    @property
    def friction(self, /) -> float:
        """
        friction coefficient, mean over all rollers
        """
    @property
    def friction_reached(self, /) -> float:
        """
        friction coefficient of a roller that gets oil
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> RollerContact:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> RollerContact:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> RollerContact:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def lambda_ratio(self, /) -> float:
        """
        film over roughness
        """
    @property
    def load_n(self, /) -> float:
        """
        load on one roller
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> RollerContact:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def section(self, /) -> int:
        """
        section of the survey, from 0
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class RoundLoop:
    """
    Tension and temperature along the chain, from the exit of the drive round to its entry.
    """
    def __copy__(self, /) -> RoundLoop: ...
    def __deepcopy__(self, /, _memo: Any) -> RoundLoop: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, section: Sequence[int] | None, position_m: Sequence[Scalar] | None, time_s: Sequence[Scalar] | None, tension_n: Sequence[Scalar] | None, temperature_c: Sequence[Scalar] | None) -> RoundLoop: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> RoundLoop:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> RoundLoop:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> RoundLoop:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def position_m(self, /) -> tuple[float, ...]:
        """
        distance along the chain from the exit of the drive
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> RoundLoop:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def section(self, /) -> tuple[int, ...]:
        """
        section of the survey in which each point lies, from 0
        """
    @property
    def temperature_c(self, /) -> tuple[float, ...]:
        """
        chain temperature
        """
    @property
    def tension_n(self, /) -> tuple[float, ...]:
        """
        effective tension of all strands
        """
    @property
    def time_s(self, /) -> tuple[float, ...]:
        """
        time since a joint left the drive
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Sample:
    """
    Draws of a line or a pair, and what came out.

    `found["payback_days"]` is the column of an output, or of a drawn input; NaN where a draw has no number, infinite where
    a payback never comes.
    """
    def __getitem__(self, path: str, /) -> Column: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def columns(self, /) -> Columns:
        """
        Outputs, a column each.
        """
    @property
    def failures(self, /) -> Any:
        """
        Why some could not: code, count, number of the first such draw, and what was wrong with it.
        """
    @property
    def inputs(self, /) -> Columns:
        """
        Drawn inputs, a column each; of a pair, on the side that has them.
        """
    @property
    def n(self, /) -> int:
        """
        Draws in all.
        """
    @property
    def outputs(self, /) -> list[str]:
        """
        Paths of the outputs.
        """
    def percentile(self, /, path: str, p: SupportsFloat | SupportsIndex) -> Estimate:
        """
        The value of an output that a share `p` of the computed draws lies below, with the error of its drawing.
        """
    def probability(self, /, path: str, at_most: SupportsFloat | SupportsIndex) -> Estimate:
        """
        Probability that an output is at most a limit, over the computed draws, with the error of its drawing.

        Examples
        --------
        >>> import pinfilm
        >>> change = pinfilm.sample(pinfilm.examples.pair("oven"), n=64, outputs=["payback_days"])
        >>> 0 <= change.probability("payback_days", at_most=365).value <= 1
        True
        """
    @property
    def seed(self, /) -> int:
        """
        Seed of the draws.
        """
    @property
    def share_failed(self, /) -> float:
        """
        Share of the draws that could not be computed.
        """
    def summary(self, /) -> Columns:
        """
        Percentiles of every output with their errors, and draws without a number.
        """
    @property
    def uncertain(self, /) -> Columns:
        """
        What was uncertain, in the order of the dimensions.
        """

@final
class Savings:
    """
    Saving of a year, item by item; negative where the proposal costs more.
    """
    def __copy__(self, /) -> Savings: ...
    def __deepcopy__(self, /, _memo: Any) -> Savings: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, currency: str | None, oil: Scalar | None, application_labour: Scalar | None, energy: Scalar | None, cleaning: Scalar | None, downtime: Scalar | None, chain: Scalar | None, sprockets: Scalar | None, waste: Scalar | None, upkeep: Scalar | None) -> Savings: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_labour(self, /) -> float:
        """
        work of oiling, refills and checks
        """
    @property
    def chain(self, /) -> float:
        """
        new chain
        """
    @property
    def cleaning(self, /) -> float:
        """
        cleaning
        """
    @property
    def currency(self, /) -> str:
        """
        currency of these amounts
        """
    @property
    def downtime(self, /) -> float:
        """
        standstill
        """
    @property
    def energy(self, /) -> float:
        """
        electrical energy
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Savings:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Savings:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Savings:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def oil(self, /) -> float:
        """
        oil
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Savings:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def sprockets(self, /) -> float:
        """
        new sprockets
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def upkeep(self, /) -> float:
        """
        upkeep of the oiling equipment
        """
    @property
    def waste(self, /) -> float:
        """
        disposal of oil
        """

@final
class Sensitivity:
    """
    What a result hangs on.
    """
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def left_out(self, /) -> float:
        """
        Share of the base rows that was left out, because a draw of theirs could not be computed.
        """
    @property
    def log(self, /) -> bool:
        """
        Whether its logarithm was studied.
        """
    @property
    def mean(self, /) -> float | None:
        """
        Mean of the result; None where it does not vary.
        """
    @property
    def middle(self, /) -> float:
        """
        The result with all inputs in their middle.
        """
    @property
    def n(self, /) -> int:
        """
        Base rows in all.
        """
    @property
    def output(self, /) -> str:
        """
        Path of the result.
        """
    @property
    def rows(self, /) -> int:
        """
        Draws that were computed for the indices.
        """
    def swings(self, /) -> Columns:
        """
        The result at the 5 % and 95 % value of each input, all others in their middle: the bars of a tornado, longest first.
        """
    def table(self, /) -> Columns:
        """
        Indices of every input or group of correlated inputs, most important first, with half widths of 95 % confidence.

        Empty where the result does not vary. Small negative indices are noise, left as they are.
        """
    @property
    def uncertain(self, /) -> Columns:
        """
        What was uncertain, in the order of the dimensions.
        """
    @property
    def unit(self, /) -> str:
        """
        Its unit.
        """
    @property
    def variance(self, /) -> float | None:
        """
        Its variance; None where it does not vary.
        """

@final
class SetUpSheet:
    """
    The set-up sheet: what the fitter sets, checks and comes back to.
    """
    def __copy__(self, /) -> SetUpSheet: ...
    def __deepcopy__(self, /, _memo: Any) -> SetUpSheet: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, name: str | None, set_up: LineSetUp | None, clock: str | None, point: str | None, point_why: str | None, worst_wait_h: Scalar | None, lowest_fill_reached: Scalar | None, never_reached: Scalar | None, applied_l_per_year: Scalar | None, reservoir_days: Scalar | None, line_bore_mm: Scalar | None, least_line_bore_mm: Scalar | None, cable_mm2: Scalar | None, least_cable_mm2: Scalar | None, check: Sequence[str] | None, prove: Sequence[str] | None, cautions: Sequence[str] | None) -> SetUpSheet: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def applied_l_per_year(self, /) -> float:
        """
        oil that leaves the applicator
        """
    @property
    def cable_mm2(self, /) -> float | None:
        """
        cross-section of one conductor of the 24 V cable as surveyed
        """
    @property
    def cautions(self, /) -> tuple[str, ...]:
        """
        what can hurt people, and whose rules decide
        """
    @property
    def check(self, /) -> tuple[str, ...]:
        """
        what to check on the day
        """
    @property
    def clock(self, /) -> str:
        """
        clock of the timer
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> SetUpSheet:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> SetUpSheet:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> SetUpSheet:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def least_cable_mm2(self, /) -> float | None:
        """
        smallest nominal cross-section at which the device keeps its voltage
        """
    @property
    def least_line_bore_mm(self, /) -> float | None:
        """
        least bore that leaves the pump its margin when the oil is coldest
        """
    @property
    def line_bore_mm(self, /) -> float | None:
        """
        bore of the oil line as surveyed
        """
    @property
    def lowest_fill_reached(self, /) -> float:
        """
        lowest fill of the joints that are reached
        """
    @property
    def name(self, /) -> str:
        """
        the line
        """
    @property
    def never_reached(self, /) -> float:
        """
        share of joints that never get oil
        """
    @property
    def point(self, /) -> str:
        """
        where to apply
        """
    @property
    def point_why(self, /) -> str:
        """
        why there
        """
    @property
    def prove(self, /) -> tuple[str, ...]:
        """
        how to prove it later
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> SetUpSheet:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def reservoir_days(self, /) -> float | None:
        """
        days until the reservoir wants oil
        """
    @property
    def set_up(self, /) -> LineSetUp:
        """
        what to set
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def worst_wait_h(self, /) -> float:
        """
        longest wait of a joint, in running time
        """

@final
class Shift:
    """
    A stretch of a week in which the line runs, with the stops that interrupt it.
    """
    def __copy__(self, /) -> Shift: ...
    def __deepcopy__(self, /, _memo: Any) -> Shift: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, start_h: Scalar | None, length_h: Scalar | None, speed_m_per_min: Scalar | None = None, stop_every_min: Scalar | None = None, stop_min: Scalar | None = None) -> Shift: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Shift:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Shift:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Shift:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def length_h(self, /) -> float:
        """
        length of the shift, stops included
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Shift:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def speed_m_per_min(self, /) -> float | None:
        """
        chain speed in this shift; not given: that of the line
        """
    @property
    def start_h(self, /) -> float:
        """
        start, counted from the beginning of the week (Monday 0:00)
        """
    @property
    def stop_every_min(self, /) -> float | None:
        """
        running time between two stops in it; not given: no stops
        """
    @property
    def stop_min(self, /) -> float:
        """
        length of each such stop
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class ShotRecord:
    """
    Which joint got oil when over some circuits of a settled line, and how full every joint is at their end.
    """
    def __copy__(self, /) -> ShotRecord: ...
    def __deepcopy__(self, /, _memo: Any) -> ShotRecord: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, joints: int | None, horizon_h: Scalar | None, by_chance: bool | None, time_h: Sequence[Scalar] | None, joint: Sequence[int] | None, position_m: Sequence[Scalar] | None, fill: Sequence[Scalar] | None) -> ShotRecord: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def by_chance(self, /) -> bool:
        """
        whether chance decides who gets oil, so that this is one possible course
        """
    @property
    def fill(self, /) -> tuple[float, ...]:
        """
        fill of each joint at the end of that time
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> ShotRecord:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> ShotRecord:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> ShotRecord:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def horizon_h(self, /) -> float:
        """
        running time that is followed
        """
    @property
    def joint(self, /) -> tuple[int, ...]:
        """
        joint that got it, counted against the travel from the one that passed first
        """
    @property
    def joints(self, /) -> int:
        """
        joints of one strand
        """
    @property
    def position_m(self, /) -> tuple[float, ...]:
        """
        where each joint is at the end, along the chain from the exit of the drive
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> ShotRecord:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def time_h(self, /) -> tuple[float, ...]:
        """
        running time of each shot
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class SimulatedLine:
    """
    A line walked through its weeks: who got oil, who waited, what was used.
    """
    def __copy__(self, /) -> SimulatedLine: ...
    def __deepcopy__(self, /, _memo: Any) -> SimulatedLine: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, name: str | None, weeks: Scalar | None, joints: int | None, running_h: Scalar | None, circuits: Scalar | None, shots: Sequence[int] | None, never_reached: Scalar | None, never_reached_closed_form: Scalar | None, wait_circuits: Sequence[int] | None, wait_counts: Sequence[int] | None, longest_dry_h: Sequence[Scalar] | None, worst_wait_h: Scalar | None, worst_wait_closed_form_h: Scalar | None, worst_wall_wait_h: Scalar | None, oil_used_l: Scalar | None, oil_standing_l: Scalar | None, applied_l_per_year: Scalar | None, lost_run_h: Scalar | None) -> SimulatedLine: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def applied_l_per_year(self, /) -> float:
        """
        the same for a year of such weeks
        """
    @property
    def circuits(self, /) -> float:
        """
        turns of the chain in these weeks
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> SimulatedLine:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> SimulatedLine:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> SimulatedLine:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joints(self, /) -> int:
        """
        joints of a strand
        """
    @property
    def longest_dry_h(self, /) -> tuple[float, ...]:
        """
        longest time of the calendar that each joint was without new oil, from the start and to the end too
        """
    @property
    def lost_run_h(self, /) -> float:
        """
        runs of the timer lost in stops, because the interlock held the applicator
        """
    @property
    def name(self, /) -> str:
        """
        name of the line
        """
    @property
    def never_reached(self, /) -> float:
        """
        share of joints that got none
        """
    @property
    def never_reached_closed_form(self, /) -> float:
        """
        share that `evaluate` says never gets oil
        """
    @property
    def oil_standing_l(self, /) -> float:
        """
        part of it that fell on a standing chain
        """
    @property
    def oil_used_l(self, /) -> float:
        """
        oil that left the applicator in these weeks
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> SimulatedLine:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def running_h(self, /) -> float:
        """
        running time in these weeks
        """
    @property
    def shots(self, /) -> tuple[int, ...]:
        """
        shots that each joint got, in the order of the chain
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wait_circuits(self, /) -> tuple[int, ...]:
        """
        waits between two shots at a joint, shortest first
        """
    @property
    def wait_counts(self, /) -> tuple[int, ...]:
        """
        how often each of them occurred
        """
    @property
    def weeks(self, /) -> float:
        """
        weeks walked through
        """
    @property
    def worst_wait_closed_form_h(self, /) -> float:
        """
        the same as `evaluate` says
        """
    @property
    def worst_wait_h(self, /) -> float:
        """
        longest running time between two shots at a joint
        """
    @property
    def worst_wall_wait_h(self, /) -> float:
        """
        longest time of the calendar between two shots at a joint
        """

@final
class Spray:
    """
    A nozzle that sprays all joints that pass while a timer runs.
    """
    def __copy__(self, /) -> Spray: ...
    def __deepcopy__(self, /, _memo: Any) -> Spray: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, flow_ml_per_min: Scalar | None, timer: Timer | None, zone_length_mm: Scalar | None = None, speed_tolerance_pct: Scalar | None = None, capture: Scalar | None = None, points: int | None = None, application_section: int | None = None, application_position: Scalar | None = None, application_side: str | None = None, time_available_s: Scalar | None = None) -> Spray: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0; not given: the best point
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied: top, side or bottom
        """
    @property
    def capture(self, /) -> float:
        """
        share of the oil that lands in the gaps
        """
    @property
    def flow_ml_per_min(self, /) -> float:
        """
        flow at each point while it sprays
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Spray:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Spray:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Spray:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand: 1 or 2
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Spray:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def speed_tolerance_pct(self, /) -> float:
        """
        how far circuit time and timer may drift apart
        """
    @property
    def time_available_s(self, /) -> float | None:
        """
        time the oil has to enter; not given: from the circuit
        """
    @property
    def timer(self, /) -> Timer:
        """
        run and dwell of the spray
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def zone_length_mm(self, /) -> float:
        """
        length of chain that the spray covers
        """

@final
class Straight:
    """
    A straight piece of the circuit.
    """
    def __copy__(self, /) -> Straight: ...
    def __deepcopy__(self, /, _memo: Any) -> Straight: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, length_m: Scalar | None, rise_m: Scalar | None = None, load_kg_per_m: Scalar | None = None, support: str | None, load_on: str | None = None, loads: bool | None = None, feed_speed_m_per_min: Scalar | None = None, idler_spacing_m: Scalar | None = None, extra_pull_n: Scalar | None = None, temperature_c: Scalar | None = None, heat_transfer_w_per_m2_k: Scalar | None = None, wash: bool | None = None, access: str | None = None, reachable_sides: Sequence[str] | None = None, gap_open_share: Scalar | None = None, above_product: bool | None = None, ignition_source: bool | None = None) -> Straight: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def above_product(self, /) -> bool:
        """
        whether open product passes below
        """
    @property
    def access(self, /) -> str:
        """
        how a person gets at it: open, guarded or climb
        """
    @property
    def extra_pull_n(self, /) -> float:
        """
        pull of brushes, scrapers and seals
        """
    @property
    def feed_speed_m_per_min(self, /) -> float:
        """
        speed of the product along the line as it is placed
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Straight:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Straight:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Straight:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def gap_open_share(self, /) -> float:
        """
        share of the plate gap that an applicator sees
        """
    @property
    def heat_transfer_w_per_m2_k(self, /) -> float:
        """
        heat transfer between chain and air
        """
    @property
    def idler_spacing_m(self, /) -> float | None:
        """
        distance between idlers, or free span
        """
    @property
    def ignition_source(self, /) -> bool:
        """
        whether flames, glowing or very hot surfaces are near
        """
    @property
    def length_m(self, /) -> float:
        """
        length along the chain
        """
    @property
    def load_kg_per_m(self, /) -> float:
        """
        all that rides with the chain, all strands together: slats, hangers, product
        """
    @property
    def load_on(self, /) -> str:
        """
        what carries the load: chain, bed or accumulating
        """
    @property
    def loads(self, /) -> bool:
        """
        whether product is placed at the start of this section
        """
    @property
    def reachable_sides(self, /) -> tuple[str, ...]:
        """
        sides from which an applicator can reach the chain
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Straight:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rise_m(self, /) -> float:
        """
        rise in travel direction; negative downwards
        """
    @property
    def support(self, /) -> str:
        """
        what carries the chain: rollers, slide, trolleys, idlers or free
        """
    @property
    def temperature_c(self, /) -> float | None:
        """
        temperature around the chain; not given: ambient
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wash(self, /) -> bool:
        """
        whether this section is washed
        """

@final
class Supply:
    """
    Reservoir, pump, line and 24 V cable. What is not given is not computed.
    """
    def __copy__(self, /) -> Supply: ...
    def __deepcopy__(self, /, _memo: Any) -> Supply: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, line_length_m: Scalar | None = None, line_bore_mm: Scalar | None = None, delivery_s: Scalar | None = None, coldest_c: Scalar | None = None, pump_ratio: Scalar | None = None, air_pressure_kpa: Scalar | None = None, pump_efficiency: Scalar | None = None, opening_pressure_kpa: Scalar | None = None, reset_pressure_kpa: Scalar | None = None, bulk_modulus_gpa: Scalar | None = None, hose_compliance_per_gpa: Scalar | None = None, reservoir_l: Scalar | None = None, refill_share: Scalar | None = None, cable_length_m: Scalar | None = None, cable_mm2: Scalar | None = None, conductor_class: int | None = None, cable_temperature_c: Scalar | None = None, device_power_w: Scalar | None = None, inrush_factor: Scalar | None = None, inrush: str | None = None, supply_voltage_v: Scalar | None = None, least_voltage_v: Scalar | None = None) -> Supply: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def air_pressure_kpa(self, /) -> float | None:
        """
        air pressure at the pump
        """
    @property
    def bulk_modulus_gpa(self, /) -> float:
        """
        bulk modulus of the oil
        """
    @property
    def cable_length_m(self, /) -> float | None:
        """
        length of the 24 V cable, one way
        """
    @property
    def cable_mm2(self, /) -> float | None:
        """
        cross-section of one conductor
        """
    @property
    def cable_temperature_c(self, /) -> float:
        """
        temperature of the cable
        """
    @property
    def coldest_c(self, /) -> float | None:
        """
        lowest temperature of the line
        """
    @property
    def conductor_class(self, /) -> int:
        """
        conductor class: 1 or 2 solid and stranded, 5 or 6 flexible
        """
    @property
    def delivery_s(self, /) -> float | None:
        """
        time in which a shot is delivered
        """
    @property
    def device_power_w(self, /) -> float | None:
        """
        power of the 24 V device while it runs
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Supply:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Supply:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Supply:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def hose_compliance_per_gpa(self, /) -> float:
        """
        relative swelling of the line
        """
    @property
    def inrush(self, /) -> str:
        """
        what it looks like while it switches on: resistive or constant_power
        """
    @property
    def inrush_factor(self, /) -> float:
        """
        power while it switches on over running power
        """
    @property
    def least_voltage_v(self, /) -> float:
        """
        least voltage at the device
        """
    @property
    def line_bore_mm(self, /) -> float | None:
        """
        bore of the oil line
        """
    @property
    def line_length_m(self, /) -> float | None:
        """
        length of the oil line
        """
    @property
    def opening_pressure_kpa(self, /) -> float:
        """
        pressure that opens the injector or nozzle
        """
    @property
    def pump_efficiency(self, /) -> float:
        """
        share of the ratio that the pump reaches
        """
    @property
    def pump_ratio(self, /) -> float | None:
        """
        oil pressure over air pressure of the pump
        """
    @property
    def refill_share(self, /) -> float:
        """
        share of the volume at which it is refilled
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Supply:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def reservoir_l(self, /) -> float | None:
        """
        volume of the reservoir
        """
    @property
    def reset_pressure_kpa(self, /) -> float | None:
        """
        pressure to which the line must fall before the next shot
        """
    @property
    def supply_voltage_v(self, /) -> float:
        """
        voltage at the feeding end
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class SupplyState:
    """
    Oil used, and whether line, pump, reservoir and cable carry it.
    """
    def __copy__(self, /) -> SupplyState: ...
    def __deepcopy__(self, /, _memo: Any) -> SupplyState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, applied_l_per_year: Scalar | None, in_joints_l_per_year: Scalar | None, dripped_share: Scalar | None, reservoir_days: Scalar | None, line_drop_kpa: Scalar | None, reynolds: Scalar | None, outlet_use: Scalar | None, vent_s: Scalar | None, injector_s: Scalar | None, time_between_shots_s: Scalar | None, cable_v: Scalar | None, cable_inrush_v: Scalar | None) -> SupplyState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def applied_l_per_year(self, /) -> float:
        """
        oil that leaves the applicator
        """
    @property
    def cable_inrush_v(self, /) -> float | None:
        """
        voltage at the device while it switches on
        """
    @property
    def cable_v(self, /) -> float | None:
        """
        voltage at the device while it runs
        """
    @property
    def dripped_share(self, /) -> float:
        """
        share of the applied oil that drips
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> SupplyState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> SupplyState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> SupplyState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def in_joints_l_per_year(self, /) -> float:
        """
        oil that the joints take up and lose
        """
    @property
    def injector_s(self, /) -> float | None:
        """
        time that an injector needs for one shot
        """
    @property
    def line_drop_kpa(self, /) -> float | None:
        """
        pressure drop of the line while oil flows, at its coldest
        """
    @property
    def outlet_use(self, /) -> float | None:
        """
        pressure needed over pump outlet pressure
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> SupplyState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def reservoir_days(self, /) -> float | None:
        """
        days until the reservoir wants oil
        """
    @property
    def reynolds(self, /) -> float | None:
        """
        Reynolds number in the line
        """
    @property
    def time_between_shots_s(self, /) -> float | None:
        """
        time from one shot to the next
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def vent_s(self, /) -> float | None:
        """
        time for the line to relax after a shot
        """

@final
class Surface:
    """
    The surfaces of pin, bush and roller: roughness, dry friction and the closures of mixed friction.
    """
    def __copy__(self, /) -> Surface: ...
    def __deepcopy__(self, /, _memo: Any) -> Surface: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, roughness_um: Scalar | None = None, dry_friction: Scalar | None = None, boundary_fill: Scalar | None = None, starvation_exponent: Scalar | None = None, conformity: Scalar | None = None, roller_edge_share: Scalar | None = None, asperity_stiffness_mpa: Scalar | None = None, film_factor: Scalar | None = None, modulus_gpa: Scalar | None = None, poisson_ratio: Scalar | None = None) -> Surface: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def asperity_stiffness_mpa(self, /) -> float:
        """
        stiffness of the asperities
        """
    @property
    def boundary_fill(self, /) -> float:
        """
        fill at which most of the boundary layer has formed
        """
    @property
    def conformity(self, /) -> float:
        """
        clearance over the local clearance of the run-in bush
        """
    @property
    def dry_friction(self, /) -> float:
        """
        friction coefficient of the dry pair
        """
    @property
    def film_factor(self, /) -> float:
        """
        factor on the film thickness: carries the error of all film models
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Surface:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Surface:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Surface:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def modulus_gpa(self, /) -> float:
        """
        modulus of elasticity of pin and bush
        """
    @property
    def poisson_ratio(self, /) -> float:
        """
        Poisson's ratio of pin and bush
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Surface:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def roller_edge_share(self, /) -> float:
        """
        share of a roller's load on its edges and faces
        """
    @property
    def roughness_um(self, /) -> float:
        """
        combined root-mean-square roughness of both surfaces
        """
    @property
    def starvation_exponent(self, /) -> float:
        """
        exponent with which the film thins as fill falls
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Synchronised:
    """
    An applicator driven by the chain: each shot lands in the plate gap of a joint.
    """
    def __copy__(self, /) -> Synchronised: ...
    def __deepcopy__(self, /, _memo: Any) -> Synchronised: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, shot_ul: Scalar | None, every_nth: int | None = None, timer: Timer | None = None, speed_tolerance_pct: Scalar | None = None, capture: Scalar | None = None, points: int | None = None, application_section: int | None = None, application_position: Scalar | None = None, application_side: str | None = None, time_available_s: Scalar | None = None) -> Synchronised: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def application_position(self, /) -> float:
        """
        place in that section, as a share of its length
        """
    @property
    def application_section(self, /) -> int | None:
        """
        number of the section where oil is applied, from 0; not given: the best point
        """
    @property
    def application_side(self, /) -> str:
        """
        side from which oil is applied: top, side or bottom
        """
    @property
    def capture(self, /) -> float:
        """
        share of the oil that lands in the gaps
        """
    @property
    def every_nth(self, /) -> int:
        """
        one joint in how many gets the shot while the timer runs
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Synchronised:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Synchronised:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Synchronised:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def points(self, /) -> int:
        """
        gaps of one joint served, per strand: 1 or 2
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Synchronised:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def shot_ul(self, /) -> float:
        """
        oil of one shot at one point
        """
    @property
    def speed_tolerance_pct(self, /) -> float:
        """
        how far circuit time and timer may drift apart
        """
    @property
    def time_available_s(self, /) -> float | None:
        """
        time the oil has to enter; not given: from the circuit
        """
    @property
    def timer(self, /) -> Timer | None:
        """
        run and dwell of the applicator; not given: it never pauses
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Table:
    """
    A table of results: the columns that came in, then results, then `status`, `code` and `message` of each row.

    It hands its columns over by the Arrow C stream interface without a copy: `pandas.DataFrame.from_arrow(table)`,
    `polars.DataFrame(table)`, `pyarrow.table(table)`, and duckdb reads it by name. Unit and meaning stand in the
    metadata of each field.
    """
    def __arrow_c_schema__(self, /) -> Any: ...
    def __arrow_c_stream__(self, /, requested_schema: Any | None = None) -> Any: ...
    def __getitem__(self, name: str, /) -> Any: ...
    def __len__(self, /) -> int: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def column_names(self, /) -> list[str]:
        """
        Names of the columns.
        """
    def line(self, /, row: SupportsIndex, side: SupportsIndex = 0) -> Line:
        """
        The line that a row was evaluated as, to look at it by itself: `evaluate(table.line(17)).explain("tension.pull_n")`.

        `side` is 1 for the proposed line of a comparison. Raises what the row's error says where it made no line.
        """
    @property
    def meanings(self, /) -> dict[str, str]:
        """
        Meaning of each column that was read or computed.
        """
    @property
    def metadata(self, /) -> dict[str, Any]:
        """
        What became of the columns: `read`, `kept` (the caller's own), `misspelt` (column and the name it was probably meant
        to have), `defaults` (value by path that held for every row), `numbers_from_text`, `outputs`.
        """
    @property
    def status_counts(self, /) -> dict[str, int]:
        """
        How many rows are `ok`, `warning` and `error`.
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        The columns by name: numbers as NumPy arrays (null is NaN; whole numbers without nulls stay whole), the rest as lists.
        """
    @property
    def units(self, /) -> dict[str, str]:
        """
        Unit of each column that has one.
        """

@final
class Tension:
    """
    Pull and tension of all strands together.
    """
    def __copy__(self, /) -> Tension: ...
    def __deepcopy__(self, /, _memo: Any) -> Tension: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, pull_n: Scalar | None, tight_n: Scalar | None, slack_n: Scalar | None, least_n: Scalar | None, required_take_up_n: Scalar | None, take_up_sensitivity: Scalar | None, heaviest_strand_n: Scalar | None, breakaway_pull_n: Scalar | None, shares: Mapping[str, float] | None, profile_n: Sequence[Sequence[Scalar]] | None) -> Tension: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def breakaway_pull_n(self, /) -> float:
        """
        pull when the line starts after a stop
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Tension:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Tension:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Tension:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def heaviest_strand_n(self, /) -> float:
        """
        greatest tension in one strand, with its centrifugal part
        """
    @property
    def least_n(self, /) -> float:
        """
        least effective tension anywhere
        """
    @property
    def profile_n(self, /) -> tuple[tuple[float, float], ...]:
        """
        effective tension at the ends of each section
        """
    @property
    def pull_n(self, /) -> float:
        """
        effective pull at the drive
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Tension:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def required_take_up_n(self, /) -> float:
        """
        slack-side tension at which no section hangs loose
        """
    @property
    def shares(self, /) -> dict[str, float]:
        """
        share of the pull by cause
        """
    @property
    def slack_n(self, /) -> float:
        """
        effective tension on the slack side of the drive
        """
    @property
    def take_up_sensitivity(self, /) -> float:
        """
        pull gained by one newton more of take-up
        """
    @property
    def tight_n(self, /) -> float:
        """
        effective tension on the tight side of the drive
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class Timer:
    """
    A timer: run, dwell, run, dwell.
    """
    def __copy__(self, /) -> Timer: ...
    def __deepcopy__(self, /, _memo: Any) -> Timer: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, run_min: Scalar | None, dwell_min: Scalar | None = None, clock: str | None = None, interlocked: bool | None = None) -> Timer: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def clock(self, /) -> str:
        """
        clock of the timer: wall or machine
        """
    @property
    def dwell_min(self, /) -> float:
        """
        pause until the next run
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Timer:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Timer:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Timer:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def interlocked(self, /) -> bool:
        """
        whether oil stops while the line stands
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Timer:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def run_min(self, /) -> float:
        """
        time for which oil is given
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class TimerCoverage:
    """
    Which joints a timer reaches and how long they wait.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, wait_circuits: Any, share_of_shots: Any, share_of_joints: Any, never_reached: Any, mean_wait_circuits: Any, worst_wait_circuits: Any, mean_age_circuits: Any, lock_circuits: Any, locked: Any) -> TimerCoverage: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def lock_circuits(self, /) -> FloatsOut:
        """
        circuits after which every phase repeats
        """
    @property
    def locked(self, /) -> FloatsOut:
        """
        whether some joints are shot for ever and the others never, or all at every lock
        """
    @property
    def mean_age_circuits(self, /) -> FloatsOut:
        """
        mean time since the last shot of the joints that are reached
        """
    @property
    def mean_wait_circuits(self, /) -> FloatsOut:
        """
        mean wait between two shots at a joint that is reached
        """
    @property
    def never_reached(self, /) -> FloatsOut:
        """
        share of the joints that no shot ever reaches
        """
    @property
    def share_of_joints(self, /) -> tuple[float, ...]:
        """
        share of all joints that stand in each wait at a random moment
        """
    @property
    def share_of_shots(self, /) -> tuple[float, ...]:
        """
        share of all shots that are followed by each wait
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """
    @property
    def wait_circuits(self, /) -> tuple[int, ...]:
        """
        waits between two shots at a joint, shortest first
        """
    @property
    def worst_wait_circuits(self, /) -> FloatsOut:
        """
        longest wait of a joint that is reached
        """

@final
class Turn:
    """
    A turn: a wheel, a roller turn, a curve or a corner.
    """
    def __copy__(self, /) -> Turn: ...
    def __deepcopy__(self, /, _memo: Any) -> Turn: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, kind: str | None, teeth: int | None = None, radius_mm: Scalar | None = None, wrap_deg: Scalar | None, rise_m: Scalar | None = None, load_kg_per_m: Scalar | None = None, contact: str | None = None, support: str | None = None, side: int | None = None, plane: str | None = None, shaft_diameter_mm: Scalar | None = None, extra_pull_n: Scalar | None = None, temperature_c: Scalar | None = None, heat_transfer_w_per_m2_k: Scalar | None = None, drive: bool | None = None) -> Turn: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def contact(self, /) -> str:
        """
        what touches the wall of a curve or corner: slide, rollers or trolleys
        """
    @property
    def drive(self, /) -> bool:
        """
        whether this is the drive sprocket
        """
    @property
    def extra_pull_n(self, /) -> float:
        """
        pull of brushes, scrapers and seals
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Turn:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Turn:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Turn:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def heat_transfer_w_per_m2_k(self, /) -> float:
        """
        heat transfer between chain and air
        """
    @property
    def kind(self, /) -> str:
        """
        what turns the chain: wheel, roller_turn, curve or corner
        """
    @property
    def load_kg_per_m(self, /) -> float:
        """
        all that rides with the chain, all strands together
        """
    @property
    def plane(self, /) -> str:
        """
        plane of the turn: main (about the pins) or cross
        """
    @property
    def radius_mm(self, /) -> float | None:
        """
        radius of the joints' path on a smooth turn
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Turn:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rise_m(self, /) -> float:
        """
        rise in travel direction; negative downwards
        """
    @property
    def shaft_diameter_mm(self, /) -> float | None:
        """
        diameter of the wheel's shaft; not given: 0.15 of the wheel
        """
    @property
    def side(self, /) -> int:
        """
        1 where the inside of the loop bends inwards, -1 for a reverse bend
        """
    @property
    def support(self, /) -> str:
        """
        what carries the weight on the floor of a corner
        """
    @property
    def teeth(self, /) -> int | None:
        """
        teeth of the sprocket
        """
    @property
    def temperature_c(self, /) -> float | None:
        """
        temperature around the chain; not given: ambient
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wrap_deg(self, /) -> float:
        """
        angle of wrap
        """

@final
class TwoSprocket:
    """
    The everyday loop by a few numbers: it fits one row of a table.
    """
    def __copy__(self, /) -> TwoSprocket: ...
    def __deepcopy__(self, /, _memo: Any) -> TwoSprocket: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, pitch_mm: Scalar | None, centre_distance_m: Scalar | None, teeth_drive: int | None, teeth_tail: int | None, lift_m: Scalar | None = None, support: str | None = None, return_support: str | None = None, carried_kg_per_m: Scalar | None = None, returning_kg_per_m: Scalar | None = None, loads: bool | None = None, strands: int | None = None, joints: int | None = None, take_up_n: Scalar | None, carry_temperature_c: Scalar | None = None, return_temperature_c: Scalar | None = None, extra_pull_n: Scalar | None = None) -> TwoSprocket: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def carried_kg_per_m(self, /) -> float:
        """
        slats, carriers and product on the carrying strand, all strands together
        """
    @property
    def carry_temperature_c(self, /) -> float | None:
        """
        temperature around the carrying strand; not given: ambient
        """
    @property
    def centre_distance_m(self, /) -> float:
        """
        distance between the shafts
        """
    @property
    def extra_pull_n(self, /) -> float:
        """
        pull of brushes, scrapers and seals on the carrying strand
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> TwoSprocket:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> TwoSprocket:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> TwoSprocket:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def joints(self, /) -> int | None:
        """
        joints of one strand, counted
        """
    @property
    def lift_m(self, /) -> float:
        """
        height of the drive shaft over the tail shaft
        """
    @property
    def loads(self, /) -> bool:
        """
        whether product is placed at the tail
        """
    @property
    def pitch_mm(self, /) -> float:
        """
        pitch of the chain
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> TwoSprocket:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def return_support(self, /) -> str:
        """
        what carries the return strand
        """
    @property
    def return_temperature_c(self, /) -> float | None:
        """
        temperature around the return strand; not given: ambient
        """
    @property
    def returning_kg_per_m(self, /) -> float:
        """
        slats and carriers on the return strand and the wheels, all strands together
        """
    @property
    def strands(self, /) -> int:
        """
        parallel strands of chain
        """
    @property
    def support(self, /) -> str:
        """
        what carries the carrying strand
        """
    @property
    def take_up_n(self, /) -> float:
        """
        running tension of all strands at the drive exit
        """
    @property
    def teeth_drive(self, /) -> int:
        """
        teeth of the drive sprocket
        """
    @property
    def teeth_tail(self, /) -> int:
        """
        teeth of the tail sprocket
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class ViscosityWindow:
    """
    Viscosities that get in at the application point and stay while running.
    """
    def __eq__(self, other: object, /) -> bool: ...
    def __new__(cls, /, *, least_mpa_s: Any, most_mpa_s: Any, least_pumping_mpa_s: Any, least_film_mpa_s: Any) -> ViscosityWindow: ...
    def __reduce__(self, /) -> tuple[Any, tuple[Any, tuple[()], dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def least_film_mpa_s(self, /) -> FloatsOut:
        """
        least viscosity whose film does not drain off the plates too fast
        """
    @property
    def least_mpa_s(self, /) -> FloatsOut:
        """
        least viscosity while running: the larger of the two below
        """
    @property
    def least_pumping_mpa_s(self, /) -> FloatsOut:
        """
        least viscosity that articulation does not pump out too fast
        """
    @property
    def most_mpa_s(self, /) -> FloatsOut:
        """
        greatest viscosity at the application point
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of names and values.
        """

@final
class Warning:
    """
    A warning: the number stands, but outside what the model was made for, or it means trouble on the line.
    """
    def __copy__(self, /) -> Warning: ...
    def __deepcopy__(self, /, _memo: Any) -> Warning: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, code: str | None, field: str | None, value: Scalar | None = None, unit: str | None, limit: str | None, message: str | None) -> Warning: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def code(self, /) -> str:
        """
        stable word for programs
        """
    @property
    def field(self, /) -> str:
        """
        path of the quantity it is about
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Warning:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Warning:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Warning:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def limit(self, /) -> str:
        """
        what would have been usual
        """
    @property
    def message(self, /) -> str:
        """
        the whole sentence
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Warning:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def unit(self, /) -> str:
        """
        that unit
        """
    @property
    def value(self, /) -> float | None:
        """
        its value, in the unit of its name
        """

@final
class WatchAlarm:
    """
    A stretch of a log in alarm.
    """
    def __copy__(self, /) -> WatchAlarm: ...
    def __deepcopy__(self, /, _memo: Any) -> WatchAlarm: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, first: str | None, last: str | None, readings: int | None, too_much: bool | None, cause: str | None, rise_pct: Scalar | None) -> WatchAlarm: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def cause(self, /) -> str:
        """
        what it looks like, as most of its readings say
        """
    @property
    def first(self, /) -> str:
        """
        first day in alarm
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> WatchAlarm:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> WatchAlarm:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> WatchAlarm:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def last(self, /) -> str:
        """
        last day in alarm
        """
    @property
    def readings(self, /) -> int:
        """
        readings in alarm
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> WatchAlarm:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def rise_pct(self, /) -> float:
        """
        mean share by which it was above what it should draw
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def too_much(self, /) -> bool:
        """
        whether the line drew too much; else too little
        """

@final
class WatchReport:
    """
    What a watch saw in a log after a quiet period.
    """
    def __copy__(self, /) -> WatchReport: ...
    def __deepcopy__(self, /, _memo: Any) -> WatchReport: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, sentence: str | None, name: str | None, logged: str | None, quiet_until: str | None, readings_quiet: int | None, readings_watched: int | None, scatter_pct: Scalar | None, lag1: Scalar | None, allowance: Scalar | None, threshold: Scalar | None, run_length: Scalar | None, false_alarm_share: Scalar | None, shift_pct: Scalar | None, shift_found_after: Scalar | None, alarms: Sequence[WatchAlarm] | None, load_change_readings: int | None, steps: Sequence[WatchStep] | None, covariates: Sequence[str] | None, notes: Sequence[LogNote] | None, cleaning: Cleaning | None) -> WatchReport: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def alarms(self, /) -> tuple[WatchAlarm, ...]:
        """
        stretches in alarm
        """
    @property
    def allowance(self, /) -> float:
        """
        allowance of the CUSUM
        """
    @property
    def cleaning(self, /) -> Cleaning:
        """
        what cleaning did
        """
    @property
    def covariates(self, /) -> tuple[str, ...]:
        """
        what the baseline knows: load, speed, temperature
        """
    @property
    def false_alarm_share(self, /) -> float:
        """
        share of quiet lines that alarm falsely within 100 readings
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> WatchReport:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> WatchReport:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> WatchReport:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def lag1(self, /) -> float:
        """
        its lag-one autocorrelation
        """
    @property
    def load_change_readings(self, /) -> int:
        """
        readings at another load than usual that the line followed: no alarm
        """
    @property
    def logged(self, /) -> str:
        """
        current_a or power_kw
        """
    @property
    def name(self, /) -> str:
        """
        name of the log
        """
    @property
    def notes(self, /) -> tuple[LogNote, ...]:
        """
        what to read this with
        """
    @property
    def quiet_until(self, /) -> str:
        """
        end of the quiet period that the baseline was learnt from
        """
    @property
    def readings_quiet(self, /) -> int:
        """
        readings of the quiet period
        """
    @property
    def readings_watched(self, /) -> int:
        """
        readings watched
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> WatchReport:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def run_length(self, /) -> float:
        """
        mean readings between false alarms, were the baseline known
        """
    @property
    def scatter_pct(self, /) -> float:
        """
        scatter about the baseline
        """
    @property
    def sentence(self, /) -> str:
        """
        the same in one sentence
        """
    @property
    def shift_found_after(self, /) -> float:
        """
        readings until such a rise gives an alarm, on average
        """
    @property
    def shift_pct(self, /) -> float:
        """
        lasting rise that the chart is set for
        """
    @property
    def steps(self, /) -> tuple[WatchStep, ...]:
        """
        reading by reading
        """
    @property
    def threshold(self, /) -> float:
        """
        threshold of the CUSUM
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

@final
class WatchStep:
    """
    What one reading did to the charts of a watch.
    """
    def __copy__(self, /) -> WatchStep: ...
    def __deepcopy__(self, /, _memo: Any) -> WatchStep: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, day: str | None, residual_pct: Scalar | None, innovation: Scalar | None, cusum_up: Scalar | None, cusum_down: Scalar | None, ewma: Scalar | None, ewma_out: bool | None, alarm: bool | None, too_much: bool | None, cause: str | None) -> WatchStep: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def alarm(self, /) -> bool:
        """
        whether a sum is above the threshold
        """
    @property
    def cause(self, /) -> str:
        """
        what it looks like: running_dry, idle_drag, mechanical, ambiguous; load_change without an alarm; quiet
        """
    @property
    def cusum_down(self, /) -> float:
        """
        sum of what was too low
        """
    @property
    def cusum_up(self, /) -> float:
        """
        sum of what was too high
        """
    @property
    def day(self, /) -> str:
        """
        its date
        """
    @property
    def ewma(self, /) -> float:
        """
        moving average of the innovations
        """
    @property
    def ewma_out(self, /) -> bool:
        """
        whether that is beyond its limits; for the eye, no alarm
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> WatchStep:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> WatchStep:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> WatchStep:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def innovation(self, /) -> float:
        """
        what is new in that, standard deviations
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> WatchStep:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def residual_pct(self, /) -> float:
        """
        share by which it is above what the line should draw
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def too_much(self, /) -> bool:
        """
        whether the alarm is one of too much
        """

@final
class Wear:
    """
    Wear coefficients (volume = K load distance / (3 hardness)) and running-in.
    """
    def __copy__(self, /) -> Wear: ...
    def __deepcopy__(self, /, _memo: Any) -> Wear: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, wear_coefficient_dry: Scalar | None = None, wear_coefficient_boundary: Scalar | None = None, wear_coefficient_mixed: Scalar | None = None, wear_coefficient_full: Scalar | None = None, fill_half: Scalar | None = None, sprocket_hardness_mpa: Scalar | None = None, run_in_factor: Scalar | None = None, run_in_distance_m: Scalar | None = None) -> Wear: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def fill_half(self, /) -> float:
        """
        fill at which oil does half of its work against wear
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> Wear:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> Wear:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> Wear:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> Wear:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def run_in_distance_m(self, /) -> float:
        """
        sliding distance over which joints run in
        """
    @property
    def run_in_factor(self, /) -> float:
        """
        wear of new joints over steady wear
        """
    @property
    def sprocket_hardness_mpa(self, /) -> float:
        """
        hardness of the sprocket's flanks
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """
    @property
    def wear_coefficient_boundary(self, /) -> float:
        """
        wear coefficient in boundary lubrication
        """
    @property
    def wear_coefficient_dry(self, /) -> float:
        """
        wear coefficient of the dry joint
        """
    @property
    def wear_coefficient_full(self, /) -> float:
        """
        wear coefficient under a full film (starts and stops)
        """
    @property
    def wear_coefficient_mixed(self, /) -> float | None:
        """
        wear coefficient in mixed lubrication; not given: a fifth of boundary
        """

@final
class WearState:
    """
    Wear, elongation and life.
    """
    def __copy__(self, /) -> WearState: ...
    def __deepcopy__(self, /, _memo: Any) -> WearState: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self, /) -> int: ...
    def __new__(cls, /, *, coefficient_reached: Scalar | None, coefficient_never: Scalar | None, temperature_c: Scalar | None, hardness_factor: Scalar | None, limit_pct: Scalar | None, sliding_m_per_h: Scalar | None, elongation_1_year_pct: Scalar | None, life_years: Scalar | None, life_mean_years: Scalar | None, life_local_years: Scalar | None, life_pin_years: Scalar | None, life_bush_years: Scalar | None, case_through_years: Scalar | None, governs: str | None, service_life_years: Scalar | None, sprocket_flank_um_per_year: Scalar | None, roller_bush_um_per_year: Scalar | None) -> WearState: ...
    def __reduce__(self, /) -> tuple[Any, tuple[dict[str, Any]]]: ...
    def __repr__(self, /) -> str: ...
    def __str__(self, /) -> str: ...
    def _repr_html_(self, /) -> str: ...
    @property
    def case_through_years(self, /) -> float:
        """
        time until the worst pin is worn through its case
        """
    @property
    def coefficient_never(self, /) -> float | None:
        """
        wear coefficient of joints that never get oil
        """
    @property
    def coefficient_reached(self, /) -> float:
        """
        wear coefficient of joints that get oil, mean over events
        """
    @property
    def elongation_1_year_pct(self, /) -> float:
        """
        elongation after one year of this duty
        """
    @classmethod
    def from_dict(cls, /, data: Mapping[str, Any]) -> WearState:
        """
        From a dictionary as `to_dict` gives it.
        """
    @classmethod
    def from_json(cls, /, source: str | PathLike[str]) -> WearState:
        """
        From JSON text, or from a file given as a path object or a name that ends in `.json`.
        """
    @classmethod
    def from_toml(cls, /, source: str | PathLike[str]) -> WearState:
        """
        From TOML text, or from a file given as a path object or a name that ends in `.toml`.
        """
    @property
    def governs(self, /) -> str:
        """
        what ends the wear life: mean, local, pin or bush
        """
    @property
    def hardness_factor(self, /) -> float:
        """
        hardness there over that at 20 °C
        """
    @property
    def life_bush_years(self, /) -> float | None:
        """
        time until the worst bush is worn by half its wall
        """
    @property
    def life_local_years(self, /) -> float:
        """
        time until the worst stretch meets that limit
        """
    @property
    def life_mean_years(self, /) -> float:
        """
        time until the mean elongation meets its limit
        """
    @property
    def life_pin_years(self, /) -> float:
        """
        time until the worst pin is worn by its limit
        """
    @property
    def life_years(self, /) -> float:
        """
        wear life: time to the first limit
        """
    @property
    def limit_pct(self, /) -> float:
        """
        elongation at which the chain is replaced
        """
    def replace(self, paths: Mapping[str, Any] | None = None, /, **changes: "object") -> WearState:
        """
        The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
        """
    @property
    def roller_bush_um_per_year(self, /) -> float | None:
        """
        wear of the bush under its roller, indicative
        """
    @property
    def service_life_years(self, /) -> float:
        """
        mean life with wear and other causes
        """
    @property
    def sliding_m_per_h(self, /) -> float:
        """
        sliding distance of pin in bush
        """
    @property
    def sprocket_flank_um_per_year(self, /) -> float | None:
        """
        wear of the drive sprocket's flanks, indicative
        """
    @property
    def temperature_c(self, /) -> float:
        """
        mean temperature of the wear
        """
    def to_dict(self, /) -> dict[str, Any]:
        """
        As a dictionary of plain values.
        """
    def to_json(self, /) -> str:
        """
        As JSON text.
        """
    def to_toml(self, /) -> str:
        """
        As TOML text.
        """

def archard_volume_mm3(coefficient: Floats, load_n: Floats, distance_m: Floats, hardness_mpa: Floats) -> FloatsOut:
    """
    Volume worn off the softer side of a sliding pair.

    Parameters
    ----------
    coefficient : array_like
        Wear coefficient K; 0 to 1. About 5e-4 dry, 5e-6 oiled in boundary lubrication.
    load_n : array_like
        Load W; above 0 and at most 100000000 N.
    distance_m : array_like
        Sliding distance s; 0 to 1000000000000 m.
    hardness_mpa : array_like
        Hardness H of the softer side; above 0 and at most 1000000 MPa.

    Returns
    -------
    float or ndarray
        Worn volume in mm³.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    V = K W s/(3 H). The 3 belongs to the law as Archard wrote it: coefficients tabulated for V = K W s/H are three
    times too low here. Wear coefficients scatter by a factor of ten between like pairs.

    References
    ----------
    Archard 1953, J. Appl. Phys. 24, 981.

    Examples
    --------
    >>> from pinfilm import wear
    >>> round(wear.archard_volume_mm3(7e-3, 100, 1000, 1176), 3)
    198.413
    """

def articulation_angle_deg(teeth: Floats) -> FloatsOut:
    """
    Angle by which one joint bends when it enters a sprocket.

    Parameters
    ----------
    teeth : array_like
        Teeth of the sprocket; 3 to 200.

    Returns
    -------
    float or ndarray
        Angle in degrees; the joint straightens by the same angle when it leaves.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity with a unit.

    Notes
    -----
    α = 360°/z. Exact.

    References
    ----------
    Geometry of the regular polygon.

    Examples
    --------
    >>> from pinfilm import kinematics
    >>> kinematics.articulation_angle_deg(10)
    36.0
    """

def asperity_integral(height_ratio: Floats, order: Floats) -> FloatsOut:
    """
    Integral of Greenwood and Tripp over the asperities that reach the other surface.

    Parameters
    ----------
    height_ratio : array_like
        Distance of the mean planes over the combined roughness; -40 to 35.
    order : array_like
        Order n of the integral; 0 to 10. 5/2 for the load, 2 for the contact area.

    Returns
    -------
    float or ndarray
        F_n(H).

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity with a unit.

    Notes
    -----
    F_n(H) = (1/√(2π)) ∫_H^∞ (s − H)^n exp(−s²/2) ds, to about 12 digits. Heights are taken as normally distributed.

    References
    ----------
    Greenwood and Tripp 1970, Proc. Inst. Mech. Eng. 185, 625.

    Examples
    --------
    >>> from pinfilm import film
    >>> round(film.asperity_integral(0.0, 2.5), 6)
    0.616634
    """

def blank_survey(full: bool = False) -> str:
    """
    A blank survey file: every key with its unit, range and meaning as comments; what must be given stands empty.

    Parameters
    ----------
    full : bool
        Every key, or those of an everyday survey.

    Returns
    -------
    str
        TOML, to be filled in.

    Examples
    --------
    >>> import pinfilm
    >>> "pitch_mm =" in pinfilm.blank_survey()
    True
    """

def blend_viscosity_mm2_s(v_a_mm2_s: Floats, v_b_mm2_s: Floats, fraction_a: Floats) -> FloatsOut:
    """
    Kinematic viscosity of a blend of two oils at the temperature at which theirs are given.

    Parameters
    ----------
    v_a_mm2_s, v_b_mm2_s : array_like
        Viscosities of the two oils at one temperature; 0.3 to 20000000 mm²/s.
    fraction_a : array_like
        Share of the first oil; 0 to 1.

    Returns
    -------
    float or ndarray
        Kinematic viscosity of the blend in mm²/s.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    log log (ν + 0.7) is averaged with the volume fractions. Good for oils of one kind; mixtures of unlike base oils
    may lie some 10 % off.

    References
    ----------
    Wright 1946; ASTM D7152.

    Examples
    --------
    >>> from pinfilm import oil
    >>> round(oil.blend_viscosity_mm2_s(32, 1000, 0.3), 3)
    277.269
    """

def calibrate(lines: Lines, readings: SupportsGetItem[int, Reading], uncertain: Doubts | None = None, *, outputs: SupportsGetItem[int, str] | None = None, zero_error_pct: SupportsFloat | SupportsIndex | None = None, n: SupportsIndex | None = None, seed: SupportsIndex | None = None, threads: SupportsIndex | None = None, progress: Progress | None = None) -> Calibration:
    """
    What readings teach about the guesses of a line, and what that changes.

    Parameters
    ----------
    lines : Line or (Line, Line)
        The line as the readings found it, or (now, proposed).
    readings : sequence of Reading
        Elongations, currents, oil used.
    uncertain : mapping of str to Distribution, optional
        The guesses, as in `sample`; independent of each other. Not given: dry and boundary friction, dry and boundary
        wear coefficient, capture, as the register thinks of them, where they enter.
    outputs : sequence of str, optional
        What to predict before and after; not given: what people ask for first.
    zero_error_pct : float, default 0.05
        Error (% of length) of the reading on the new chain that all elongations are taken against; 0: none.
    n : int, default 1024
        Draws for the predictions, a power of two.
    seed, threads, progress
        As in `sample`.

    Returns
    -------
    Calibration
        Each guess before and after, what is learnt and what is not in words, predictions before and after.

    Raises
    ------
    InputError
        For no readings, an error of a reading that is none, a path that is none.
    ConvergenceError
        If the search or the walkers do not settle.

    Notes
    -----
    Most probable values by damped least squares from five starts; errors from the curvature there, or, where that is no
    bell curve, from an ensemble of walkers (Goodman and Weare 2010). What is not among the guesses is taken as surveyed:
    an error in it goes into the guesses, tension times wear coefficient above all.

    Examples
    --------
    >>> import pinfilm
    >>> line = pinfilm.examples.load("oven_now")
    >>> readings = [pinfilm.Reading.elongation(pct, running_h=h) for pct, h in [(0.5, 2000), (0.75, 3000)]]
    >>> found = pinfilm.calibrate(line, readings, {"wear.wear_coefficient_dry": None}, n=64)
    >>> found.guesses()["input"].tolist()
    ['wear.wear_coefficient_dry']
    """

def capstan_ratio(friction: Floats, wrap_deg: Floats) -> FloatsOut:
    """
    Tension after a sliding turn over the tension before it.

    Parameters
    ----------
    friction : array_like
        Friction coefficient of chain on wall; 0 to 5.
    wrap_deg : array_like
        Angle of wrap; 0 to 7200 °.

    Returns
    -------
    float or ndarray
        Ratio of tensions, at least 1.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    S₂/S₁ = exp(μ θ). A belt without weight or centrifugal force; a chain's links make no difference here.

    References
    ----------
    Euler 1769; Eytelwein 1808.

    Examples
    --------
    >>> from pinfilm import tension
    >>> round(tension.capstan_ratio(0.25, 180), 4)
    2.1933
    """

def centre_distance_mm(length_pitches: Floats, pitch_mm: Floats, teeth_1: Floats, teeth_2: Floats) -> FloatsOut:
    """
    Distance of the shafts for a chain of so many pitches; the inverse of `chain_length_pitches`.

    Parameters
    ----------
    length_pitches : array_like
        Length of the closed chain; above 0 and at most 1000000 pitches.
    pitch_mm : array_like
        Pitch of the chain; 4 to 1000 mm.
    teeth_1, teeth_2 : array_like
        Teeth of the two sprockets; 3 to 200.

    Returns
    -------
    float or ndarray
        Centre distance in mm.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        chain too short to reach round both sprockets is an error too.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The exact root of the formula of `chain_length_pitches`.

    References
    ----------
    ISO 10823:2004, centre distance.

    Examples
    --------
    >>> from pinfilm import kinematics
    >>> round(kinematics.centre_distance_mm(106, 19.05, 17, 34), 3)
    765.026
    """

def chain_length_pitches(centre_mm: Floats, pitch_mm: Floats, teeth_1: Floats, teeth_2: Floats) -> FloatsOut:
    """
    Length of a chain over two sprockets, in pitches.

    Parameters
    ----------
    centre_mm : array_like
        Distance of the shafts; above 0 and at most 10000000 mm.
    pitch_mm : array_like
        Pitch of the chain; 4 to 1000 mm.
    teeth_1, teeth_2 : array_like
        Teeth of the two sprockets; 3 to 200.

    Returns
    -------
    float or ndarray
        Length in pitches, not yet rounded to a whole (better even) number.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    X = 2 C/p + (z₁ + z₂)/2 + ((z₂ − z₁)/(2π))² p/C, the usual approximation for an open loop without sag.

    References
    ----------
    ISO 10823:2004, chain length.

    Examples
    --------
    >>> from pinfilm import kinematics
    >>> round(kinematics.chain_length_pitches(762.0, 19.05, 17, 34), 4)
    105.683
    """

def chain_speed_m_per_s(pitch_mm: Floats, teeth: Floats, speed_rpm: Floats) -> FloatsOut:
    """
    Mean speed of a chain that a turning sprocket drives.

    Parameters
    ----------
    pitch_mm : array_like
        Pitch of the chain; 4 to 1000 mm.
    teeth : array_like
        Teeth of the sprocket; 3 to 200.
    speed_rpm : array_like
        Speed of the shaft; 0 to 100000 1/min.

    Returns
    -------
    float or ndarray
        Chain speed in m/s.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    v = z p n: each turn passes as many pitches as there are teeth. Exact as a mean.

    References
    ----------
    Definition.

    Examples
    --------
    >>> from pinfilm import kinematics
    >>> round(kinematics.chain_speed_m_per_s(160, 8, 9.375), 6)
    0.2
    """

def change_points(values: Floats, least_segment: Floats | None = None, cost: str | None = None) -> LevelChanges:
    """
    Changes of level of a series, and what they rest on.

    Parameters
    ----------
    values : array_like
        Readings in the order of time; any number. A drive's power or current, a day's means.
    least_segment : int, optional
        Fewest readings between two changes; 2 to 1000000; 10 if not given.
    cost : {'mean', 'mean_variance'}, optional
        What changes: the mean (as if not given), or mean and spread.

    Returns
    -------
    LevelChanges
        First reading of each new level, the levels, the price of a change, spread and autocorrelation of the noise.

    Raises
    ------
    InputError
        A reading that is not finite, too few readings for two segments, or a series that never changes.
    UnitError
        Readings that carry a unit.

    Notes
    -----
    The cheapest division of the whole series, exactly; the price of a change grows with the autocorrelation, since a
    level that wanders by itself looks like many changes. A change point proposes a date, and proves nothing.

    References
    ----------
    Jackson et al. 2005; penalty after Yao 1988, its factor for autocorrelation a closure of our own.

    Examples
    --------
    >>> from pinfilm import statistics
    >>> power = [5.0, 5.2, 4.9, 5.1, 5.0, 4.9, 3.1, 3.0, 3.3, 3.1, 2.9, 3.2]
    >>> statistics.change_points(power, least_segment=5).points
    (6,)
    """

def compare(now: Line, proposed: Line) -> Comparison:
    """
    Compare a line as it is with the same line as proposed: savings item by item, payback, net present value.

    Parameters
    ----------
    now, proposed : Line
        The two surveys. Capital, discount rate, horizon and days of a year are those of the proposed one.

    Returns
    -------
    Comparison
        Savings, payback in days with its status word, discounted payback, NPV and IRR with all roots.

    Raises
    ------
    InputError
        If one of the two cannot be evaluated, or their currencies differ.

    Examples
    --------
    >>> import pinfilm
    >>> change = pinfilm.compare(*pinfilm.examples.pair("oven"))
    >>> change.payback_status
    'pays_back'
    """

def compare_table(table: Columns2, proposed: Columns2 | None = None, outputs: SupportsGetItem[int, str] | None = None, *, threads: SupportsIndex | None = None, progress: Any | None = None, defaults: Defaults | None = None, units: Mapping[str, str] | None = None) -> Table:
    """
    Compare many lines as they are with the same lines as proposed: `compare` for every row.

    Parameters
    ----------
    table : table or mapping of arrays
        One table: columns with the prefix ``now.`` or ``proposed.`` say something of one of the two lines, columns without
        it of both; so a proposal needs only what changes. Values of a method of oiling that a line does not have are passed
        by. With `proposed`: the lines as they are.
    proposed : table or mapping of arrays, optional
        The lines as proposed, row by row, each complete in itself. Its columns come out with the prefix ``proposed.``.
    outputs, threads, progress, defaults, units
        As in `evaluate_table`; outputs are paths of a `Comparison` (``"npv"``, ``"now.fill.never_reached"``), and defaults
        and units may have the prefixes too.

    Returns
    -------
    Table
        As `evaluate_table` gives it.

    Raises
    ------
    TableError
        As `evaluate_table`; also where the two tables have different numbers of rows.

    Examples
    --------
    >>> import pinfilm
    >>> now, proposed = pinfilm.examples.pair("oven")
    >>> table = pinfilm.compare_table({"survey": [now]}, {"survey": [proposed]})
    >>> bool(table["payback_days"][0] == pinfilm.compare(now, proposed).payback_days)
    True
    """

def conductor_resistance_ohm_per_km(area_mm2: Floats, conductor_class: Floats) -> FloatsOut:
    """
    Greatest resistance of a copper conductor at 20 °C.

    Parameters
    ----------
    area_mm2 : array_like
        Nominal cross-section, one of the standard's; 0.5 to 16 mm².
    conductor_class : array_like
        Class: 1 solid, 2 stranded, 5 or 6 flexible; 1 to 6.

    Returns
    -------
    float or ndarray
        Resistance of one conductor in Ω/km.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        cross-section or class that the tables do not hold is an error.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Plain annealed copper, as the tables print it.

    References
    ----------
    IEC 60228, tables 1 to 4.

    Examples
    --------
    >>> from pinfilm import electrics
    >>> round(electrics.conductor_resistance_ohm_per_km(1.5, 5), 4)
    13.3
    """

def current_from_power_a(shaft_power_kw: Floats, rated_power_kw: Floats, rated_voltage_v: Floats, rated_current_a: Floats, rated_speed_rpm: Floats, rated_efficiency: Floats, rated_power_factor: Floats, rated_frequency_hz: Floats | None = None, supply_voltage_v: Floats | None = None, no_load_current_a: Floats | None = None, leakage_pu: Floats | None = None, core_share: Floats | None = None, friction_windage_share: Floats | None = None, stray_factor: Floats | None = None) -> FloatsOut:
    """
    Line current of a motor under a load, from its nameplate.

    Parameters
    ----------
    shaft_power_kw : array_like
        Load at the shaft; 0 to 5000 kW.
    rated_power_kw : array_like
        Rated shaft power; above 0 and at most 1000 kW.
    rated_voltage_v : array_like
        Rated line voltage; 50 to 1000 V.
    rated_current_a : array_like
        Rated line current; above 0 and at most 5000 A.
    rated_speed_rpm : array_like
        Rated speed; 100 to 3600 1/min.
    rated_efficiency : array_like
        Rated efficiency; 0.05 to 0.999.
    rated_power_factor : array_like
        Rated power factor; 0.05 to 0.999.
    rated_frequency_hz : array_like, optional
        Rated frequency; 10 to 100 Hz; 50 Hz if not given.
    supply_voltage_v : array_like, optional
        Actual line voltage; 20 to 1200 V; rated if not given.
    no_load_current_a : array_like, optional
        Measured current of the uncoupled motor; above 0 and at most 5000 A. Worth more than the next four.
    leakage_pu : array_like, optional
        Leakage reactance over rated impedance, where no current at no load is known; 0.02 to 0.4; 0.2 if not given.
    core_share : array_like, optional
        Share of core loss in the losses of stator and core; 0 to 1; 0.4 if not given.
    friction_windage_share : array_like, optional
        Share of friction and windage in all loss; 0 to 1; 0.1 if not given.
    stray_factor : array_like, optional
        Stray load loss over its assigned value; 0 to 3; 1 if not given.

    Returns
    -------
    float or ndarray
        Line current of the motor in A.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        nameplate that contradicts itself or that no motor can have, and a load beyond pull-out, are errors.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    An equivalent circuit that meets the nameplate exactly is found in closed form and solved for the load. Below a
    quarter load the result hangs on the leakage, which no nameplate states: measure the current without load.

    References
    ----------
    Stray load loss assigned as in IEC 60034-2-1; the split of the other losses is a closure of our own.

    Examples
    --------
    >>> from pinfilm import motor
    >>> plate = dict(
    ...     rated_power_kw=4, rated_voltage_v=400, rated_current_a=8.05, rated_speed_rpm=1450,
    ...     rated_efficiency=0.886, rated_power_factor=0.81,
    ... )
    >>> round(motor.current_from_power_a(2.0, **plate), 3)
    5.105
    """

def cusum(values: Floats, target: Floats, k: Floats, h: Floats) -> CusumPath:
    """
    Chart of the summed excess of readings over a target, both ways.

    Parameters
    ----------
    values : array_like
        Readings in the order of time; any number.
    target : float
        Level that they should keep; any number.
    k : float
        Allowance: half of the shift that is to be found, in the unit of the readings; at least 0.
    h : float
        Threshold of an alarm, in the unit of the readings; above 0.

    Returns
    -------
    CusumPath
        Both sums after each reading, labelled as the readings were, and the readings in alarm.

    Raises
    ------
    InputError
        A number outside its range, or a reading that is not finite.
    UnitError
        Readings that carry a unit.

    Notes
    -----
    C⁺ = max(0, C⁺ + x − target − k), C⁻ = max(0, C⁻ − x + target − k); an alarm above h. With k of half and h of 4.76
    standard deviations of independent readings, a false alarm comes once in about 370 readings on average; readings that resemble
    their neighbours need a higher h.

    References
    ----------
    Page 1954.

    Examples
    --------
    >>> from pinfilm import statistics
    >>> statistics.cusum([0.0, 3.0, 3.0], 0.0, 0.5, 4.0).alarms
    (2,)
    """

def cv_rmse_pct(measured: Floats, modelled: Floats, parameters: Floats) -> FloatsOut:
    """
    Coefficient of variation of the root-mean-square error of a model.

    Parameters
    ----------
    measured, modelled : array_like
        Readings and what the model says for them; any number.
    parameters : int
        Parameters that were fitted; 0 to 1000.

    Returns
    -------
    float
        Coefficient in percent; at most 15 for a model of monthly, 30 of hourly readings.

    Raises
    ------
    InputError
        A reading that is not finite, unequal lengths, not more readings than parameters, or a mean of 0.
    UnitError
        Readings that carry a unit.

    Notes
    -----
    √(Σ(y − ŷ)²/(n − p)) over the mean reading.

    References
    ----------
    ASHRAE Guideline 14-2014.

    Examples
    --------
    >>> from pinfilm import statistics
    >>> round(statistics.cv_rmse_pct([10, 12, 14, 12], [10.5, 11.5, 14.5, 11.5], 1), 3)
    4.811
    """

def default_uncertainty(lines: Lines) -> DoubtsOut:
    """
    What is uncertain about a line or a pair if nobody says, from the register.

    Parameters
    ----------
    lines : Line or (Line, Line)
        A line, or (now, proposed).

    Returns
    -------
    dict
        Distribution by dotted path, of those inputs that move a number of the result: closures of our own, values from
        memory, common practice. Of a pair, two distributions (now, proposed) share their draw; a path led by `now.` or
        `proposed.` is one side alone. Change it as you like and give it to `sample`.

    Raises
    ------
    InputError
        If the line cannot be evaluated.

    Notes
    -----
    A spread is taken about the value of the line. What the survey names of an oil or a motor is taken as read, and prices
    of labour, standstill and chain are not drawn unless you name them.

    Examples
    --------
    >>> import pinfilm
    >>> pinfilm.default_uncertainty(pinfilm.examples.load("oven_now"))["wear.wear_coefficient_dry"].kind
    'lognormal'
    """

def demand_ul_per_joint_h(loss_rate_per_h: Floats, capacity_ul: Floats, target_fill: Floats | None = None) -> FloatsOut:
    """
    Oil that a joint needs in an hour to keep a mean fill.

    Parameters
    ----------
    loss_rate_per_h : array_like
        Share of its oil that the joint loses in a running hour; 0 to 1000000 1/h.
    capacity_ul : array_like
        Oil that the joint can hold; above 0 and at most 10000000 µL.
    target_fill : array_like, optional
        Mean fill; 0 to 1; 0.5 if not given.

    Returns
    -------
    float or ndarray
        Demand in µL per joint and running hour.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    k φ V: what is lost must come back.

    References
    ----------
    First-order loss.

    Examples
    --------
    >>> from pinfilm import fill
    >>> round(fill.demand_ul_per_joint_h(0.018, 100), 4)
    0.9
    """

def density_kg_per_m3(density_15_kg_per_m3: Floats, temperature_c: Floats) -> FloatsOut:
    """
    Density of a lubricating oil at a temperature, from that at 15 °C.

    Parameters
    ----------
    density_15_kg_per_m3 : array_like
        Density at 15 °C; 700 to 1200 kg/m³.
    temperature_c : array_like
        Temperature; -100 to 400 °C.

    Returns
    -------
    float or ndarray
        Density in kg/m³.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    ρ = ρ₁₅ exp(−α Δ (1 + 0.8 α Δ)) with α = 0.6278/ρ₁₅ per K and Δ the temperature above 15 °C: the correction of
    the petroleum tables for lubricating oils.

    References
    ----------
    ASTM D1250, lubricating oils.

    Examples
    --------
    >>> from pinfilm import oil
    >>> round(oil.density_kg_per_m3(890, 60), 3)
    861.498
    """

def discounted_payback_years(rate: Floats, cash_flows: Floats) -> FloatsOut:
    """
    Time until discounted cash flows have paid back what was invested.

    Parameters
    ----------
    rate : array_like
        Discount rate of a year; above -1.
    cash_flows : array_like
        Money now, then at the end of each year, along the last axis; any number money.

    Returns
    -------
    float or ndarray
        Years; one for each project where `cash_flows` has more axes, broadcast with `rate`.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. Flows
        that do not pay back are an error for one project (`no_answer`), NaN in arrays; `payback_status` says why.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    As `payback_years`, with each flow discounted to now.

    References
    ----------
    Definition; linear inside the year as in Ross, Westerfield and Jaffe, Corporate Finance.

    Examples
    --------
    >>> from pinfilm import economics
    >>> round(economics.discounted_payback_years(0.10, [-100, 60, 60]), 4)
    1.9167
    """

def dynamic_viscosity_mpa_s(kinematic_viscosity_mm2_s: Floats, density_kg_per_m3: Floats) -> FloatsOut:
    """
    Dynamic viscosity of an oil from its kinematic viscosity and density at the same temperature.

    Parameters
    ----------
    kinematic_viscosity_mm2_s : array_like
        Kinematic viscosity; above 0 and at most 1000000000 mm²/s.
    density_kg_per_m3 : array_like
        Density at that temperature; 500 to 2000 kg/m³.

    Returns
    -------
    float or ndarray
        Dynamic viscosity in mPa s.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    η = ν ρ. Exact.

    References
    ----------
    Definition of kinematic viscosity.

    Examples
    --------
    >>> from pinfilm import oil
    >>> round(oil.dynamic_viscosity_mpa_s(100, 850), 3)
    85.0
    """

def eccentricity_short(sommerfeld: Floats, length_to_diameter: Floats) -> FloatsOut:
    """
    Eccentricity of a short journal bearing from its Sommerfeld number; the inverse of `sommerfeld_short`.

    Parameters
    ----------
    sommerfeld : array_like
        Sommerfeld number; above 0 and at most 1000000000000.
    length_to_diameter : array_like
        Length over diameter; 0.01 to 1000.

    Returns
    -------
    float or ndarray
        Offset of the pin over the radial clearance, 0 to 1.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity with a unit.

    Notes
    -----
    By Newton's method in logarithms. Assumptions as in `sommerfeld_short`.

    References
    ----------
    DuBois and Ocvirk 1953, NACA Report 1157.

    Examples
    --------
    >>> from pinfilm import film
    >>> round(film.eccentricity_short(50, 0.5), 9)
    0.008104465
    """

def effective_sample_size(count: Floats, lag1: Floats) -> FloatsOut:
    """
    Number of independent readings that a series of readings is worth.

    Parameters
    ----------
    count : array_like
        Number of readings; 1 to 1000000000000000.
    lag1 : array_like
        Lag-one autocorrelation; -0.999999 to 0.999999.

    Returns
    -------
    float or ndarray
        Number of independent readings whose mean is as sure.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity with a unit.

    Notes
    -----
    n (1 − ρ)/(1 + ρ), for first-order autoregressive noise and many readings.

    References
    ----------
    First-order autoregressive noise, from memory.

    Examples
    --------
    >>> from pinfilm import statistics
    >>> round(statistics.effective_sample_size(8760, 0.9), 1)
    461.1
    """

def elongation_pct(pin_wear_um: Floats, bush_wear_um: Floats, pitch_mm: Floats) -> FloatsOut:
    """
    Elongation of a chain whose joints have worn.

    Parameters
    ----------
    pin_wear_um, bush_wear_um : array_like
        Depth worn off pin and bush; 0 to 1000000 µm.
    pitch_mm : array_like
        Pitch of the chain; 4 to 1000 mm.

    Returns
    -------
    float or ndarray
        Elongation in percent.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    e = (w_pin + w_bush)/p: one joint in each pitch. Exact where all joints wear alike.

    References
    ----------
    Definition.

    Examples
    --------
    >>> from pinfilm import wear
    >>> round(wear.elongation_pct(400, 360, 25.4), 3)
    2.992
    """

def equivalent_circuit(stator_resistance_ohm: Floats, stator_reactance_ohm: Floats, rotor_resistance_ohm: Floats, rotor_reactance_ohm: Floats, magnetising_reactance_ohm: Floats, voltage_v: Floats, frequency_hz: Floats, poles: Floats, slip: Floats | None = None, shaft_power_w: Floats | None = None, core_resistance_ohm: Floats | None = None, friction_windage_w: Floats | None = None, stray_loss_w: Floats | None = None, stray_current_a: Floats | None = None) -> OperatingPoint:
    """
    A three-phase cage induction motor at a slip or under a load, from its equivalent circuit.

    Parameters
    ----------
    stator_resistance_ohm, stator_reactance_ohm : array_like
        Resistance and leakage reactance of the stator, each phase of the star; 0 to 1000000 Ω.
    rotor_resistance_ohm : array_like
        Resistance of the rotor, referred to the stator; above 0 and at most 1000000 Ω.
    rotor_reactance_ohm : array_like
        Leakage reactance of the rotor, referred to the stator; 0 to 1000000 Ω.
    magnetising_reactance_ohm : array_like
        Magnetising reactance; above 0 and at most 1000000000 Ω.
    voltage_v : array_like
        Voltage from line to line; above 0 and at most 100000 V.
    frequency_hz : array_like
        Frequency, at which the reactances hold; above 0 and at most 1000 Hz.
    poles : array_like
        Poles, twice the pole pairs; 2 to 96.
    slip : array_like, optional
        Slip; 0 to 1. Give this or the load.
    shaft_power_w : array_like, optional
        Load at the shaft; 0 to 10000000 W. Give this or the slip.
    core_resistance_ohm : array_like, optional
        Resistance beside the magnetising reactance that stands for the core loss; above 0 and at most 1000000000000
        Ω. Not given: no core loss there.
    friction_windage_w : array_like, optional
        Friction and windage, or all rotational loss where the core loss is counted with it; 0 to 1000000 W; 0 if
        not given.
    stray_loss_w : array_like, optional
        Stray load loss at `stray_current_a`; 0 to 1000000 W; 0 if not given.
    stray_current_a : array_like, optional
        Rotor current at which the stray loss was stated; above 0 and at most 100000 A; 1 A if not given.

    Returns
    -------
    OperatingPoint
        Slip, speed, currents, power factor, powers, losses, efficiency and torques, each a float or an array.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        load beyond what the motor can turn is an error, and so are slip and load together, or neither.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The T circuit, solved without approximation; a load is solved on the stable side of pull-out in closed form.
    Saturation and skin effect are not in it.

    References
    ----------
    Fitzgerald, Kingsley and Umans, Electric Machinery; the circle diagram of Heyland and Ossanna.

    Examples
    --------
    >>> from pinfilm import motor
    >>> point = motor.equivalent_circuit(
    ...     0.641, 1.106, 0.332, 0.464, 26.3, voltage_v=460, frequency_hz=60, poles=4, slip=0.022,
    ...     friction_windage_w=1100,
    ... )
    >>> round(point.current_a, 3), round(point.power_factor, 4), round(point.speed_rpm, 1)
    (18.892, 0.8321, 1760.4)
    """

def evaluate(line: Line) -> Evaluation:
    """
    Evaluate a line: kinematics, tension, joints, fill, wear, drive, supply and cost of a year.

    Parameters
    ----------
    line : Line
        The survey.

    Returns
    -------
    Evaluation
        Groups of results, with `warnings` and `cautions`.

    Raises
    ------
    InputError
        For a survey that cannot be computed; it names field, value, unit and limit.
    ConvergenceError
        If friction and pull do not settle.

    Warns
    -----
    PinfilmRangeWarning
        For every value outside its usual range; also listed in `warnings`.

    Examples
    --------
    >>> import pinfilm
    >>> result = pinfilm.evaluate(pinfilm.examples.load("oven_now"))
    >>> result.fill.never_reached > 0
    True
    """

def evaluate_table(table: Columns2, outputs: SupportsGetItem[int, str] | None = None, *, threads: SupportsIndex | None = None, progress: Any | None = None, defaults: Defaults | None = None, units: Mapping[str, str] | None = None) -> Table:
    """
    Evaluate many lines: columns in, columns out, each row as `evaluate` gives it.

    Parameters
    ----------
    table : table or mapping of arrays
        Anything with ``__arrow_c_stream__`` (pandas, polars, pyarrow, duckdb) or a dict of arrays. A column is named as the
        survey names the value (``"duty.speed_m_per_min"``); a loop of two sprockets by the names of `TwoSprocket`
        (``"circuit.centre_distance_m"``); a standard chain by ``"chain.standard"`` and ``"chain.designation"``; the column
        ``"survey"`` holds whole surveys as JSON or structs, over which other columns are put. All other columns are kept.
    outputs : list of str, optional
        Paths of results, such as ``"drive.current_a"``; without it the usual ones.
    threads : int, optional
        Threads; without it as many as there are processors. The numbers do not depend on it.
    progress : callable, optional
        Called with rows done and rows in all, some times a second; what it raises stops the run.
    defaults : Line or mapping, optional
        What holds where no cell says otherwise: a whole line, or values by path.
    units : mapping, optional
        Units of columns that are not in the unit of their name, such as ``{"duty.ambient_c": "degF"}`` (needs pint).

    Returns
    -------
    Table
        The columns that came in, results, and ``status`` (ok, warning, error), ``code`` and ``message`` of each row. A row
        that cannot be computed has nulls for results and says why; an empty cell takes the default of its value, and the row
        says so.

    Raises
    ------
    TableError
        Before any row is computed: columns that every line needs are missing, have the wrong type, or stand there twice.
    UnitError
        If a unit cannot be converted.

    Warns
    -----
    PinfilmTableWarning
        For a column that looks misspelt; also in `Table.metadata`.

    Notes
    -----
    Text in a column of numbers is read as a number where it spells one; where not, the row is an error. NaN is no number:
    the row is an error. Warnings of a row come as codes; their sentences are those of ``evaluate(table.line(row))``.

    Examples
    --------
    >>> import pinfilm
    >>> oven = pinfilm.examples.load("oven_now")
    >>> speeds = {"asset": ["A1", "A2"], "duty.speed_m_per_min": [3.0, 6.0]}
    >>> table = pinfilm.evaluate_table(speeds, outputs=["kinematics.circuit_time_s"], defaults=oven)
    >>> times = table["kinematics.circuit_time_s"]
    >>> bool(abs(times[0] / times[1] - 2) < 1e-12)
    True
    """

def every_nth(joints: Floats, n: Floats, attachment_every: Floats | None = None, blocked: Floats | None = None) -> EveryNth:
    """
    What a counter that doses every n-th joint reaches; the counter is never reset.

    Parameters
    ----------
    joints : array_like
        Joints of one strand, counted; 1 to 1000000000.
    n : array_like
        The counter doses every n-th joint; 1 to 1000000000.
    attachment_every : array_like, optional
        Joints from one attachment to the next, which must divide the number of joints; 1 to 1000000. Not given: nothing
        is in the way.
    blocked : sequence of int, optional
        Joints of that pattern, counted from 0, whose gap is hidden from the applicator; 0 to 1000000.

    Returns
    -------
    EveryNth
        Joints reached and never reached, spacing of the dosed joints and wait in circuits; whole numbers, or arrays.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
        Attachments that do not close on the loop are an error.
    UnitError
        A quantity with a unit.

    Notes
    -----
    Reached are N/gcd(N, n), less those whose shots always meet an attachment (Chinese remainder theorem). A loop
    without a cranked link has an even number of joints: n must then be odd. Exact, but one joint miscounted changes it
    all.

    References
    ----------
    Modular arithmetic.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> coverage.every_nth(900, 7)
    EveryNth(reached=900, never=0, spacing=1, wait_circuits=7)
    >>> coverage.every_nth(2400, 4, attachment_every=6, blocked=[0, 1]).reached
    400
    """

def fill_between_shots(fill_start: Floats, loss_rate_per_h: Floats, time_h: Floats) -> FloatsOut:
    """
    Fill of a joint some time after a shot.

    Parameters
    ----------
    fill_start : array_like
        Fill at the start; 0 to 1.
    loss_rate_per_h : array_like
        Share of its oil that the joint loses in a running hour; 0 to 1000000 1/h.
    time_h : array_like
        Running time since; 0 to 1000000000 h.

    Returns
    -------
    float or ndarray
        Fill, 0 to 1.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    φ = φ₀ exp(−k t): loss in proportion to what is there.

    References
    ----------
    First-order loss, exact solution.

    Examples
    --------
    >>> from pinfilm import fill
    >>> round(fill.fill_between_shots(0.8, 0.01, 24.0), 4)
    0.6293
    """

def formulas() -> list[dict[str, Any]]:
    """
    Every formula: module, name, and the register rows of its arguments and results (name, unit, meaning, range,
    default).
    """

def grade_limits_mm2_s(iso_vg: Floats) -> tuple[FloatsOut, FloatsOut]:
    """
    Least and greatest kinematic viscosity at 40 °C that a viscosity grade allows.

    Parameters
    ----------
    iso_vg : array_like
        Viscosity grade, one of the standard's; 2 to 3200.

    Returns
    -------
    tuple of float or ndarray
        Least and greatest viscosity in mm²/s.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        number that is no grade of the standard is an error.
    UnitError
        A quantity with a unit.

    Notes
    -----
    The midpoint less and plus 10 %.

    References
    ----------
    ISO 3448.

    Examples
    --------
    >>> from pinfilm import oil
    >>> low, high = oil.grade_limits_mm2_s(68)
    >>> round(low, 2), round(high, 2)
    (61.2, 74.8)
    """

def handbook_grade(ambient_c: Floats) -> FloatsOut:
    """
    Viscosity grade that a handbook names for roller chains in a room of this temperature.

    Parameters
    ----------
    ambient_c : array_like
        Temperature of the room; -60 to 150 °C.

    Returns
    -------
    float or ndarray
        Grade of ISO 3448.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        temperature outside the table is an error for numbers (`no_answer`), NaN in arrays.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    VG 68 up to 5 °C, 100 up to 25 °C, 150 up to 45 °C, 220 up to 70 °C.
    For orientation: it knows neither load nor the time an oil has to enter; `hydraulics.viscosity_window_mpa_s` does.

    References
    ----------
    ISO 10823:2004, from memory.

    Examples
    --------
    >>> from pinfilm import oil
    >>> oil.handbook_grade(20)
    100.0
    """

def handbook_methods(chain_speed_m_per_s: Floats) -> tuple[str, ...]:
    """
    Ways of oiling that a handbook names for a transmission chain of this speed.

    Parameters
    ----------
    chain_speed_m_per_s : float
        Speed of the chain; 0 to 1000 m/s.

    Returns
    -------
    tuple of str
        Of `slow_drip`, `fast_drip`, `dip` and `spray` those that it allows, plainest first.

    Raises
    ------
    InputError
        A number outside its range or not finite.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    5 to 10 drops a minute up to 3 m/s, more than 20 up to 7.5 m/s, dip up to 10 m/s, spray from 7.5 m/s. A conveyor
    always falls under slow drip, whatever its joints need: for orientation only.

    References
    ----------
    Neale, The Tribology Handbook, sheet C9.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> coverage.handbook_methods(0.2)
    ('slow_drip', 'dip')
    """

def handbook_sae_grade(ambient_c: Floats) -> FloatsOut:
    """
    SAE number that a handbook names for roller chains in a room of this temperature.

    Parameters
    ----------
    ambient_c : array_like
        Temperature of the room; -60 to 150 °C.

    Returns
    -------
    float or ndarray
        SAE number of an engine oil.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        temperature outside the table is an error for numbers (`no_answer`), NaN in arrays.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    SAE 20 from 20 °F, 30 from 40 °F, 40 from 100 °F, 50 from 120 °F to below 140 °F.
    For orientation: it knows neither load nor the time an oil has to enter; `hydraulics.viscosity_window_mpa_s` does.

    References
    ----------
    ASME B29; Machinery's Handbook, from memory.

    Examples
    --------
    >>> from pinfilm import oil
    >>> oil.handbook_sae_grade(20)
    30.0
    """

def irr(cash_flows: Floats) -> FloatsOut:
    """
    Internal rate of return of cash flows; of several the one nearest zero.

    Parameters
    ----------
    cash_flows : array_like
        Money now, then at the end of each year, along the last axis; any number money.

    Returns
    -------
    float or ndarray
        Rate of a year; one for each project where `cash_flows` has more axes.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. Flows
        without such a rate are an error for one project (`no_answer`), NaN in arrays; `irr_status` says why.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The rate at which the net present value is nothing. Flows that change sign more than once may have several:
    `irr_roots` gives all of them, and then none of them means much.

    References
    ----------
    Definition; uniqueness by Descartes' rule of signs.

    Examples
    --------
    >>> from pinfilm import economics
    >>> round(economics.irr([-3, 1, 1, 1, 1]), 6)
    0.125898
    """

def irr_roots(cash_flows: Floats) -> tuple[float, ...]:
    """
    All rates at which the net present value of cash flows is nothing.

    Parameters
    ----------
    cash_flows : array_like
        Money now, then at the end of each year; any number money. One project.

    Returns
    -------
    tuple of float
        Rates of a year above −1, rising; empty where there are none.

    Raises
    ------
    InputError
        A flow that is not finite.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Roots of the polynomial in the discount factor, each found between the turning points on both sides.

    References
    ----------
    Definition.

    Examples
    --------
    >>> from pinfilm import economics
    >>> [round(rate, 9) for rate in economics.irr_roots([-100, 230, -132])]
    [0.1, 0.2]
    """

def irr_status(cash_flows: Floats) -> str | list[str]:
    """
    What the internal rate of return of cash flows is worth.

    Parameters
    ----------
    cash_flows : array_like
        Money now, then at the end of each year, along the last axis; any number money.

    Returns
    -------
    str or list of str
        `unique`, `several`, `none` or `out_of_range`; a list of them for several projects in two axes, `nan` where a
        flow is not known.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The word that goes with each number of `irr`.

    References
    ----------
    Descartes' rule of signs.

    Examples
    --------
    >>> from pinfilm import economics
    >>> economics.irr_status([-100, 230, -132])
    'several'
    """

def joint_entry_time_s(viscosity_mpa_s: Floats, plate_gap_mm: Floats, plate_path_mm: Floats, pin_diameter_mm: Floats, joint_clearance_um: Floats, joint_depth_mm: Floats, surface_tension_mn_per_m: Floats | None = None, contact_angle_deg: Floats | None = None, density_kg_per_m3: Floats | None = None, pin_eccentricity: Floats | None = None) -> FloatsOut:
    """
    Time until oil from the edge of the side plate has filled a joint.

    Parameters
    ----------
    viscosity_mpa_s : array_like
        Dynamic viscosity at the application point; 0.01 to 1000000000 mPa s.
    plate_gap_mm : array_like
        Gap between inner and outer plate; 0.001 to 5 mm.
    plate_path_mm : array_like
        Way from the plate edge to the bush; above 0 and at most 500 mm.
    pin_diameter_mm : array_like
        Diameter of the pin; 0.5 to 200 mm.
    joint_clearance_um : array_like
        Radial clearance of pin and bush; above 0 and at most 10000 µm. It grows with wear.
    joint_depth_mm : array_like
        Length of joint to fill from one gap, half of it if oiled from both sides; above 0 and at most 1000 mm.
    surface_tension_mn_per_m : array_like, optional
        Surface tension; 5 to 80 mN/m; 30 mN/m if not given.
    contact_angle_deg : array_like, optional
        Angle at which the oil meets the steel; 0 to 180 °; 20° if not given.
    density_kg_per_m3 : array_like, optional
        Density; 500 to 2000 kg/m³; 890 kg/m³ if not given.
    pin_eccentricity : array_like, optional
        Offset of the resting pin over the clearance; 0 to 1; 1 if not given.

    Returns
    -------
    float or ndarray
        Time in s, in proportion to the viscosity; infinite where the oil does not wet.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    First down the plate gap by capillarity and gravity, then along the annulus round the pin, fed through the
    filled plate gap. Real times spread by a factor of 2.

    References
    ----------
    Washburn 1921; annulus with an eccentric pin: Piercy, Hooper and Winny 1933; in series with a fixed resistance:
    derived.

    Examples
    --------
    >>> from pinfilm import hydraulics
    >>> round(hydraulics.joint_entry_time_s(80, 0.6, 10, 14, 150, 20), 3)
    10.685
    """

def joint_orbit(line: Line) -> JointOrbit:
    """
    Follow the pin of a joint in its bush round the loop, in time, and set the closed form of `evaluate` beside it.

    The joint is flooded and rigid; its loads are the settled tensions of `evaluate`. A reference: a thousand times
    slower than the closed form, and free of its fit.

    Parameters
    ----------
    line : Line
        The survey.

    Returns
    -------
    JointOrbit
        For each articulation the smallest gap at its start, on average and at its end (µm), by orbit and by closed form.

    Raises
    ------
    InputError
        If the line cannot be evaluated, or the chain hangs slack at an articulation.
    ConvergenceError
        If the path of the pin does not repeat itself.

    Notes
    -----
    Mobility method (Booker 1965) with the exact half film; the finite length by a closure of our own. Each time step is
    within 1e-9 of its film, and the path repeats within 1e-7.

    Examples
    --------
    >>> import pinfilm
    >>> orbit = pinfilm.joint_orbit(pinfilm.examples.load("floor_now"))
    >>> all(event.film_start_um < event.film_end_um for event in orbit.events)
    True
    """

def kinematic_viscosity_mm2_s(temperature_c: Floats, t1_c: Floats, v1_mm2_s: Floats, t2_c: Floats, v2_mm2_s: Floats) -> FloatsOut:
    """
    Kinematic viscosity at any temperature, from two measured ones.

    Parameters
    ----------
    temperature_c : array_like
        Temperature asked for; -100 to 400 °C.
    t1_c : array_like
        Temperature of the first viscosity; -60 to 350 °C.
    v1_mm2_s : array_like
        First viscosity; 0.21 to 20000000 mm²/s.
    t2_c : array_like
        Temperature of the second viscosity; -60 to 350 °C.
    v2_mm2_s : array_like
        Second viscosity; 0.21 to 20000000 mm²/s.

    Returns
    -------
    float or ndarray
        Kinematic viscosity in mm²/s.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
        Equal temperatures, a viscosity that rises with temperature and a result outside 0.21 to 2e7 mm²/s are
        errors.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    log log Z = A − B log T with Z = ν + 0.7 + corrections below 2 mm²/s. A straight line between and moderately
    beyond the two points; below the cloud point or far above the second temperature an oil may leave it.

    References
    ----------
    ASTM D341.

    Examples
    --------
    >>> from pinfilm import oil
    >>> round(oil.kinematic_viscosity_mm2_s(150, 40, 220, 100, 18.9), 3)
    6.268
    """

def lag1(values: Floats) -> float:
    """
    Lag-one autocorrelation of a series.

    Parameters
    ----------
    values : array_like
        Readings in the order of time; any number.

    Returns
    -------
    float
        Autocorrelation, -1 to 1; 0 for a series that never changes.

    Raises
    ------
    InputError
        A reading that is not finite, or fewer than two.
    UnitError
        Readings that carry a unit.

    Notes
    -----
    Σ d(t) d(t+1)/Σ d², d from the mean. Estimated from n readings it is on average (1 + 4ρ)/n too low.

    References
    ----------
    Box and Jenkins 1970.

    Examples
    --------
    >>> from pinfilm import statistics
    >>> statistics.lag1([1.0, 3.0, 2.0])
    -0.5
    """

def line_contact_film_um(viscosity_mpa_s: Floats, speed_m_per_s: Floats, load_n_per_mm: Floats, radius_mm: Floats, pressure_viscosity_per_gpa: Floats, modulus_gpa: Floats | None = None, formula: str | None = None) -> FloatsOut:
    """
    Film thickness of an elastohydrodynamic line contact.

    Parameters
    ----------
    viscosity_mpa_s : array_like
        Dynamic viscosity at ambient pressure; 0.01 to 1000000000 mPa s.
    speed_m_per_s : array_like
        Entraining speed, the mean of both surfaces; 0 to 1000 m/s.
    load_n_per_mm : array_like
        Load over length; above 0 and at most 1000000 N/mm.
    radius_mm : array_like
        Reduced radius; for a pin of radius R in a bush with clearance c it is R (R + c)/c; above 0 and at most
        10000000 mm.
    pressure_viscosity_per_gpa : array_like
        Pressure-viscosity coefficient; 0 to 200 1/GPa.
    modulus_gpa : array_like, optional
        Elastic modulus E′ of the pair; 0.001 to 2000 GPa; that of steel on steel, 226.374 GPa, if not given.
    formula : {'minimum', 'central', 'dowson_higginson'}, optional
        Smallest film (as if not given), film in the middle, or the older formula for the smallest film.

    Returns
    -------
    float or ndarray
        Film thickness in µm.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    With U = η u/(E′ R), W = w/(E′ R), G = α E′: smallest film over R is the larger of 3.10 U^0.6 W^−0.2 and
    1.714 U^0.694 G^0.568 W^−0.128; central 2.922 U^0.692 G^0.470 W^−0.166; older 2.65 U^0.7 G^0.54 W^−0.13. Smooth,
    fully supplied with oil, isothermal. Taking the larger of soft and hard film is a closure of our own.

    References
    ----------
    Hamrock 1994, Fundamentals of Fluid Film Lubrication; Pan and Hamrock 1989; Dowson and Higginson 1968.

    Examples
    --------
    >>> from pinfilm import film
    >>> round(film.line_contact_film_um(100, 0.5, 100, 10, 20), 4)
    0.297
    """

def load_voltage_v(power_w: Floats, length_m: Floats, area_mm2: Floats, conductor_class: Floats, temperature_c: Floats, supply_voltage_v: Floats | None = None) -> FloatsOut:
    """
    Voltage that arrives at a device which draws the same power at any voltage.

    Parameters
    ----------
    power_w : array_like
        Power of the device; above 0 and at most 100000 W.
    length_m : array_like
        Length of the cable; 0 to 100000 m.
    area_mm2 : array_like
        Nominal cross-section; 0.5 to 16 mm².
    conductor_class : array_like
        Class: 1 solid, 2 stranded, 5 or 6 flexible; 1 to 6.
    temperature_c : array_like
        Temperature of the conductor; -100 to 400 °C.
    supply_voltage_v : array_like, optional
        Voltage at the feeding end; 5 to 60 V; 24 V if not given.

    Returns
    -------
    float or ndarray
        Voltage at the load in V.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        load that the cable cannot carry at any voltage is an error (`no_operating_point`).
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    U = U₀/2 + √(U₀²/4 − P R): the stable one of two solutions of U = U₀ − R P/U.

    References
    ----------
    Ohm's law with a constant-power load; IEC 60228; IEC 60028.

    Examples
    --------
    >>> from pinfilm import electrics
    >>> round(electrics.load_voltage_v(60.0, 50.0, 1.5, 5, 40.0), 4)
    19.611
    """

def lock_risk(circuit_time_s: Floats, run_s: Floats, dwell_s: Floats, speed_tolerance_pct: Floats, longest_wait_h: Floats) -> FloatsOut:
    """
    Share of the possible speed errors at which some stretch of chain waits too long for its oil.

    Parameters
    ----------
    circuit_time_s : array_like
        Time of one revolution of the chain; 0.001 to 10000000000 s.
    run_s : array_like
        Time for which oil is given; 0.001 to 10000000000 s.
    dwell_s : array_like
        Pause until the next run; 0 to 10000000000 s.
    speed_tolerance_pct : array_like
        How far circuit time and timer may drift apart; above 0 and at most 49.9 %.
    longest_wait_h : array_like
        Longest wait a joint may have; above 0 and at most 1000000000 h.

    Returns
    -------
    float or ndarray
        Risk, 0 to 1. Reject a setting above 0.05.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Errors are taken as uniform within the tolerance. Where the wait spans many cycles the starved errors near all
    simple fractions are united, good to 0.01; else 1001 errors are judged exactly.

    References
    ----------
    Derivation of our own from Slater's gap theorem, 1967.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> coverage.lock_risk(5716, 15336, 11540, speed_tolerance_pct=0.5, longest_wait_h=3)
    1.0
    """

def lock_time_s(circuit_time_s: Floats, run_s: Floats, dwell_s: Floats, ratio_error: Floats, correlation_h: Floats | None = None, lock_circuits: Floats | None = None) -> LockTime:
    """
    How long the locked pattern of a timer starves a stretch of chain, when circuit and timer drift.

    Parameters
    ----------
    circuit_time_s : array_like
        Time of one revolution of the chain; 0.001 to 10000000000 s.
    run_s : array_like
        Time for which oil is given; 0.001 to 10000000000 s.
    dwell_s : array_like
        Pause until the next run; 0 to 10000000000 s.
    ratio_error : array_like
        Relative error of circuit over period, for the wandering time its root mean square; above 0 and at most 0.5.
    correlation_h : array_like, optional
        Time over which the speed keeps its error; above 0 and at most 10000 h; 8 h if not given.
    lock_circuits : array_like, optional
        Circuits after which the pattern repeats; 1 to 10000000000000 circuits. Not given: exactly those of circuit
        and timer, which makes a near
        miss of a simple fraction no lock at all.

    Returns
    -------
    LockTime
        Width of the starved stretch and how long it starves under a constant and under a wandering error.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        run that leaves nothing starved has no lock: an error for numbers, NaN in arrays.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Constant error: width over error, good to one and a half cycles. Wandering: a random walk with steps of the
    correlation time, a closure of our own; typical, no bound.

    References
    ----------
    Derived from Slater 1967.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> lock = coverage.lock_time_s(1200, 600, 3000, ratio_error=0.005)
    >>> round(lock.starved_s), round(lock.constant_s), round(lock.random_s)
    (600, 120000, 500000)
    """

def loss_rates_per_h(temperature_c: Floats, viscosity_mpa_s: Floats, angle_deg: Floats, articulations_per_circuit: Floats, circuit_time_s: Floats, mass_per_area_kg_per_m2: Floats, noack_pct: Floats | None = None, vaporisation_kj_per_mol: Floats | None = None, air_factor: Floats | None = None, noack_mass_per_area_kg_per_m2: Floats | None = None, oxidation_half_life_h: Floats | None = None, oxidation_reference_c: Floats | None = None, pin_eccentricity: Floats | None = None, articulation_loss: Floats | None = None, articulation_loss_exponent: Floats | None = None, articulation_loss_reference_pa_s: Floats | None = None, wash_interval_h: Floats | None = None, wash_removed_share: Floats | None = None, running_share: Floats | None = None) -> LossRates:
    """
    What a joint loses in an hour, by cause, as shares of the oil that is in it.

    Parameters
    ----------
    temperature_c : array_like
        Temperature of the joint; -100 to 400 °C.
    viscosity_mpa_s : array_like
        Dynamic viscosity at that temperature; 0.01 to 1000000000 mPa s.
    angle_deg : array_like
        Angle of one articulation; above 0 and at most 360 °.
    articulations_per_circuit : array_like
        Articulations of a joint in a circuit; 0 to 1000000.
    circuit_time_s : array_like
        Time of one revolution of the chain; 0.001 to 10000000000 s.
    mass_per_area_kg_per_m2 : array_like
        Oil in the joint over its area open to the air; above 0 and at most 1000000 kg/m².
    noack_pct : array_like, optional
        Evaporation loss in an hour at 250 °C; 0 to 99 %; 8 % if not given.
    vaporisation_kj_per_mol : array_like, optional
        Heat of vaporisation; 20 to 300 kJ/mol; 100 kJ/mol if not given.
    air_factor : array_like, optional
        Evaporation over that of the test cup; 0 to 100; 0.3, still air, if not given.
    noack_mass_per_area_kg_per_m2 : array_like, optional
        Oil over open area in the test cup; above 0 and at most 1000 kg/m²; 23 kg/m² if not given.
    oxidation_half_life_h : array_like, optional
        Time in which half of the oil is oxidised; above 0 and at most 10000000 h; 1000 h if not given.
    oxidation_reference_c : array_like, optional
        Temperature of that half life; -20 to 300 °C; 100 °C if not given.
    pin_eccentricity : array_like, optional
        Offset of the pin over the clearance; 0 to 1; 1 if not given.
    articulation_loss : array_like, optional
        Share of the pumped oil that an articulation loses; 0 to 1; 0.0005 if not given.
    articulation_loss_exponent : array_like, optional
        Exponent with which thicker oil is lost less; 0 to 3; 0.5 if not given.
    articulation_loss_reference_pa_s : array_like, optional
        Viscosity at which that loss holds; 0.0001 to 1000 Pa s; 0.1 Pa s if not given.
    wash_interval_h : array_like, optional
        Time between two washes, by the clock on the wall; above 0 and at most 1000000 h. Not given: no wash.
    wash_removed_share : array_like, optional
        Share of the oil that one wash removes; 0 to 0.999; 0 if not given.
    running_share : array_like, optional
        Share of time that the line runs; above 0 and at most 1; 1 if not given.

    Returns
    -------
    LossRates
        Rates per running hour by cause, their sum and the half life; floats or arrays.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    First-order loss, dV/dt = −k V. Evaporation: the rate of the test, scaled by vapour pressure (Clausius-
    Clapeyron) and by mass over open area. Oxidation doubles with every 10 K. Pumping: a closure of our own on the
    side flow of a bearing. Uncalibrated, the sum is good to a factor of 5 to 10. For a joint that meets several
    temperatures average the rates, not the temperatures.

    References
    ----------
    ASTM D5800 for the evaporation test; the closures are our own.

    Examples
    --------
    >>> from pinfilm import fill
    >>> rates = fill.loss_rates_per_h(60, 70, 30, 4, 1200, 0.9)
    >>> round(rates.total_per_h, 6), round(rates.half_life_h)
    (0.000642, 1079)
    """

def manual_interval(interval_h: Floats, interval_cv: Floats, miss_share: Floats) -> ManualInterval:
    """
    Time between two visits of a manual round at one joint: mean, spread and quantiles.

    Parameters
    ----------
    interval_h : array_like
        Mean time between two rounds; above 0 and at most 1000000 h.
    interval_cv : array_like
        Scatter of that time: standard deviation over mean; 0.01 to 3.
    miss_share : array_like
        Share of joints that a round misses by chance; 0 to 0.99.

    Returns
    -------
    ManualInterval
        Mean, standard deviation and 5, 50 and 95 % quantiles in hours; floats or arrays.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
        Rounds that miss so many joints that one in twenty waits for 400 rounds are an error (`not_converged`).
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Intervals are gamma distributed and misses independent: a geometric mixture of gamma laws. Mean T/(1 − m).

    References
    ----------
    Renewal process; mean and variance by Wald's identity.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> visits = coverage.manual_interval(8, 0.3, 0.05)
    >>> round(visits.mean_h, 4), round(visits.sd_h, 4), round(visits.p95_h, 4)
    (8.4211, 3.0998, 14.062)
    """

def newey_west_se(values: Floats, lags: Floats, correction: str | None = None) -> float:
    """
    Standard error of the mean of a series whose readings resemble their neighbours.

    Parameters
    ----------
    values : array_like
        Readings in the order of time; any number.
    lags : int
        Neighbours that are allowed for; 0 to 1000000.
    correction : {'none', 'small_sample'}, optional
        Nothing (as if not given), or the factor n/(n − 1) of a short series on the variance.

    Returns
    -------
    float
        Standard error in the unit of the readings.

    Raises
    ------
    InputError
        A reading that is not finite, fewer than two, or as many lags as readings.
    UnitError
        Readings that carry a unit.

    Notes
    -----
    Autocovariances up to `lags` with Bartlett's weights. With short series it is too small: the proofs of a current log
    take the wider of two errors.

    References
    ----------
    Newey and West 1987.

    Examples
    --------
    >>> from pinfilm import statistics
    >>> round(statistics.newey_west_se([2.0, 4.0, 3.0, 5.0], 0, correction="small_sample"), 6)
    0.645497
    """

def nmbe_pct(measured: Floats, modelled: Floats, parameters: Floats) -> FloatsOut:
    """
    Normalised mean bias error of a model.

    Parameters
    ----------
    measured, modelled : array_like
        Readings and what the model says for them; any number.
    parameters : int
        Parameters that were fitted; 0 to 1000.

    Returns
    -------
    float
        Bias in percent, positive where the model is too low; at most 5 for monthly, 10 for hourly readings.

    Raises
    ------
    InputError
        A reading that is not finite, unequal lengths, not more readings than parameters, or a mean of 0.
    UnitError
        Readings that carry a unit.

    Notes
    -----
    Σ(y − ŷ)/((n − p) mean reading).

    References
    ----------
    ASHRAE Guideline 14-2014.

    Examples
    --------
    >>> from pinfilm import statistics
    >>> round(statistics.nmbe_pct([10, 12, 14, 12], [9, 11, 13, 11], 0), 3)
    8.333
    """

def npv(rate: Floats, cash_flows: Floats) -> FloatsOut:
    """
    Net present value of cash flows.

    Parameters
    ----------
    rate : array_like
        Discount rate of a year; above -1.
    cash_flows : array_like
        Money now, then at the end of each year, along the last axis; any number money.

    Returns
    -------
    float or ndarray
        Net present value; one for each project where `cash_flows` has more axes, broadcast with `rate`.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Σ F_k (1 + r)^−k from k = 0: the first flow is not discounted.

    References
    ----------
    Definition; Fuller and Petersen 1996, NIST Handbook 135.

    Examples
    --------
    >>> from pinfilm import economics
    >>> round(economics.npv(0.08, [-40000, 5000, 8000, 12000, 30000]), 3)
    3065.223
    """

def oil_use(**check: "object") -> OilUse:
    """
    Whether the fall of the reservoir agrees with the shots, within three standard deviations.

    Parameters
    ----------
    **check
        Names of `OilCheck`: `used_l`, `shots`, `shot_ul`; `reading_error_l` and `shot_error_pct` where they are known.

    Returns
    -------
    OilUse

    Examples
    --------
    >>> import pinfilm
    >>> pinfilm.oil_use(used_l=3.1, shots=120_000, shot_ul=18).verdict
    'high'
    """

def payback_days(invest: Floats, saving_per_year: Floats, year_days: Floats | None = None) -> FloatsOut:
    """
    Simple payback in days of an investment by yearly savings.

    Parameters
    ----------
    invest : array_like
        Capital needed now; any number money.
    saving_per_year : array_like
        Money saved in a year, evenly; any number money.
    year_days : array_like, optional
        Days that make a year, of the calendar or of work; 1 to 366; 365 if not given.

    Returns
    -------
    float or ndarray
        Days; 0 where there is nothing to pay back.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        saving that never pays back is an error for numbers (`no_answer`), NaN in arrays.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    I/S times the days of a year. Neither interest nor what comes after.

    References
    ----------
    Definition.

    Examples
    --------
    >>> from pinfilm import economics
    >>> economics.payback_days(1000, 500)
    730.0
    """

def payback_status(cash_flows: Floats) -> str | list[str]:
    """
    Whether and how cash flows pay back.

    Parameters
    ----------
    cash_flows : array_like
        Money now, then at the end of each year, along the last axis; any number money.

    Returns
    -------
    str or list of str
        `pays_back`, `pays_back_then_loses`, `immediate`, `never`, `loses_after` or `beyond_horizon`; a list of them for
        several projects in two axes, `nan` where a flow is not known.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The word that goes with each number of `payback_years`.

    References
    ----------
    Definition.

    Examples
    --------
    >>> from pinfilm import economics
    >>> economics.payback_status([[-100, 60, 60], [-100, 10, 10], [-100, -10, -10]])
    ['pays_back', 'beyond_horizon', 'never']
    """

def payback_years(cash_flows: Floats) -> FloatsOut:
    """
    Time until cash flows have paid back what was invested.

    Parameters
    ----------
    cash_flows : array_like
        Money now, then at the end of each year, along the last axis; any number money.

    Returns
    -------
    float or ndarray
        Years; 0 where there is nothing to pay back; one for each project where `cash_flows` has more axes.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. Flows
        that do not pay back are an error for one project (`no_answer`), NaN in arrays; `payback_status` says why.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The first time the running sum is no longer negative, linear inside the year, without interest.

    References
    ----------
    Definition.

    Examples
    --------
    >>> from pinfilm import economics
    >>> round(economics.payback_years([-100, 60, 60]), 4)
    1.6667
    """

def penetration_time_s(depth_mm: Floats, gap_um: Floats, viscosity_mpa_s: Floats, surface_tension_mn_per_m: Floats, contact_angle_deg: Floats, angle_to_vertical_deg: Floats | None = None, density_kg_per_m3: Floats | None = None) -> FloatsOut:
    """
    Time in which capillarity and gravity draw oil into a slot.

    Parameters
    ----------
    depth_mm : array_like
        Depth to fill; 0 to 10000 mm.
    gap_um : array_like
        Full width of the slot; above 0 and at most 10000 µm.
    viscosity_mpa_s : array_like
        Dynamic viscosity; 0.01 to 1000000000 mPa s.
    surface_tension_mn_per_m : array_like
        Surface tension; 5 to 80 mN/m.
    contact_angle_deg : array_like
        Angle at which the oil meets the steel; 0 to 180 °.
    angle_to_vertical_deg : array_like, optional
        Way of the oil, 0 straight down, 90 level, 180 straight up; 0 to 180 °; level if not given.
    density_kg_per_m3 : array_like, optional
        Density; 500 to 2000 kg/m³; 890 kg/m³ if not given.

    Returns
    -------
    float or ndarray
        Time in s; infinite where the oil does not wet the steel or gravity holds it back before that depth.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    t = (a/b²)(u − ln(1 + u)), u = b x/a, with a = h² p/(12 η), p = 2 γ cos θ/h and b = h² ρ g cos β/(12 η); level:
    t = 3 η x²/(γ h cos θ). Newtonian oil in plenty at the edge, air free to leave. Real times spread by a factor of
    2.

    References
    ----------
    Lucas 1918; Washburn 1921, Phys. Rev. 17, 273.

    Examples
    --------
    >>> from pinfilm import hydraulics
    >>> round(hydraulics.penetration_time_s(10, 50, 100, 30, 0, 90), 6)
    20.0
    """

def periodic_fill(circuit_time_s: Floats, run_s: Floats, dwell_s: Floats, dose_ul: Floats, capacity_ul: Floats, loss_rate_per_h: Floats, uptake_ul_per_joint_h: Floats | None = None) -> PeriodicFill:
    """
    How full the joints of a line are once a timer and the loss have settled.

    Parameters
    ----------
    circuit_time_s : array_like
        Time of one revolution of the chain; 0.001 to 10000000000 s.
    run_s, dwell_s : array_like
        Time for which oil is given; 0.001 to 10000000000 s and 0 to 10000000000 s.
    dose_ul : array_like
        Oil that one shot brings into the joint; 0 to 10000000 µL.
    capacity_ul : array_like
        Oil that the joint can hold; above 0 and at most 10000000 µL.
    loss_rate_per_h : array_like
        Share of its oil that the joint loses in a running hour; 0 to 1000000 1/h.
    uptake_ul_per_joint_h : array_like, optional
        Constant loss; 0 to 10000000 µL/h; 0 if not given.

    Returns
    -------
    PeriodicFill
        Mean, lowest and greatest fill, overflow and the share never reached; floats or arrays.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Shots in, exponential loss, overflow at the capacity, over the waits that the timer makes with the circuit.
    Exact for locked timers, for joints that are always full and for cycles of up to 8192 shots; else sampled, good
    to 1e-6 usually.

    References
    ----------
    Slater 1967, Proc. Camb. Phil. Soc. 63, 1115, for the waits; the walk over the fills is our own.

    Examples
    --------
    >>> from pinfilm import fill
    >>> settled = fill.periodic_fill(1440, 300, 6900, dose_ul=30, capacity_ul=100, loss_rate_per_h=0.018)
    >>> round(settled.mean_fill, 4), round(settled.never_reached, 4)
    (0.2046, 0.7917)
    """

def pitch_diameter_mm(pitch_mm: Floats, teeth: Floats) -> FloatsOut:
    """
    Diameter of the circle through the joints of a chain on a sprocket.

    Parameters
    ----------
    pitch_mm : array_like
        Pitch of the chain, joint to joint; 4 to 1000 mm.
    teeth : array_like
        Teeth of the sprocket; 3 to 200.

    Returns
    -------
    float or ndarray
        Pitch diameter in mm.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    d = p / sin(π/z): the joints are the corners of a regular polygon with sides of one pitch. Exact.

    References
    ----------
    ISO 606, pitch diameter of sprockets.

    Examples
    --------
    >>> from pinfilm import kinematics
    >>> round(kinematics.pitch_diameter_mm(25.4, 17), 3)
    138.232
    """

def points_coverage(circuit_time_s: Floats, run_s: Floats, dwell_s: Floats, delays_s: Floats) -> PointsCoverage:
    """
    Waits of the joints that pass several application points on one timer.

    Parameters
    ----------
    circuit_time_s : float
        Time of one revolution of the chain; 0.001 to 10000000000 s.
    run_s : float
        Time for which oil is given; 0.001 to 10000000000 s.
    dwell_s : float
        Pause until the next run; 0 to 10000000000 s.
    delays_s : sequence of float
        Travel time of the chain from a reference point to each application point; -10000000000 to 10000000000 s.

    Returns
    -------
    PointsCoverage
        Waits in circuits with their shares of shots and joints, and the share never reached.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        pattern that repeats too late to be walked is an error (`unsupported`); arrays of times are not accepted.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Exact: walks the phases of circuit and timer over the united runs of all points. A second point helps a locked timer
    only if its delay falls beside the first one's run.

    References
    ----------
    Derived; waits as in `timer_coverage`.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> coverage.points_coverage(1200, 400, 3200, [0, 400, 800]).never_reached
    0.0
    """

def power_from_current_kw(current_a: Floats, rated_power_kw: Floats, rated_voltage_v: Floats, rated_current_a: Floats, rated_speed_rpm: Floats, rated_efficiency: Floats, rated_power_factor: Floats, rated_frequency_hz: Floats | None = None, supply_voltage_v: Floats | None = None, no_load_current_a: Floats | None = None, leakage_pu: Floats | None = None, core_share: Floats | None = None, friction_windage_share: Floats | None = None, stray_factor: Floats | None = None) -> FloatsOut:
    """
    Load of a motor from its line current and nameplate; the inverse of `current_from_power_a`.

    Parameters
    ----------
    current_a : array_like
        Line current of the motor; 0 to 5000 A.
    rated_power_kw : array_like
        Rated shaft power; above 0 and at most 1000 kW.
    rated_voltage_v : array_like
        Rated line voltage; 50 to 1000 V.
    rated_current_a : array_like
        Rated line current; above 0 and at most 5000 A.
    rated_speed_rpm : array_like
        Rated speed; 100 to 3600 1/min.
    rated_efficiency : array_like
        Rated efficiency; 0.05 to 0.999.
    rated_power_factor : array_like
        Rated power factor; 0.05 to 0.999.
    rated_frequency_hz : array_like, optional
        Rated frequency; 10 to 100 Hz; 50 Hz if not given.
    supply_voltage_v : array_like, optional
        Actual line voltage; 20 to 1200 V; rated if not given.
    no_load_current_a : array_like, optional
        Measured current of the uncoupled motor; above 0 and at most 5000 A. Worth more than the next four.
    leakage_pu : array_like, optional
        Leakage reactance over rated impedance, where no current at no load is known; 0.02 to 0.4; 0.2 if not given.
    core_share : array_like, optional
        Share of core loss in the losses of stator and core; 0 to 1; 0.4 if not given.
    friction_windage_share : array_like, optional
        Share of friction and windage in all loss; 0 to 1; 0.1 if not given.
    stray_factor : array_like, optional
        Stray load loss over its assigned value; 0 to 3; 1 if not given.

    Returns
    -------
    float or ndarray
        Power at the shaft in kW.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        current that no load draws is an error (`not_invertible`).
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Exact inverse on the stable side. Near no load the current is nearly all magnetising current and says little of
    the load: log the power there.

    References
    ----------
    As `current_from_power_a`.

    Examples
    --------
    >>> from pinfilm import motor
    >>> plate = dict(
    ...     rated_power_kw=4, rated_voltage_v=400, rated_current_a=8.05, rated_speed_rpm=1450,
    ...     rated_efficiency=0.886, rated_power_factor=0.81,
    ... )
    >>> round(motor.power_from_current_kw(motor.current_from_power_a(2.0, **plate), **plate), 6)
    2.0
    """

def pressure_drop_kpa(flow_ml_per_min: Floats, viscosity_mpa_s: Floats, bore_mm: Floats, length_m: Floats, density_kg_per_m3: Floats | None = None) -> FloatsOut:
    """
    Pressure lost in a round oil line.

    Parameters
    ----------
    flow_ml_per_min : array_like
        Flow during delivery; 0 to 1000000 mL/min.
    viscosity_mpa_s : array_like
        Dynamic viscosity of the coldest stretch; 0.01 to 1000000000 mPa s.
    bore_mm : array_like
        Bore of the line; 0.1 to 1000 mm.
    length_m : array_like
        Length of the line; 0 to 100000 m.
    density_kg_per_m3 : array_like, optional
        Density, for the check that the flow is laminar; 500 to 2000 kg/m³; 890 kg/m³ if not given.

    Returns
    -------
    float or ndarray
        Pressure drop in kPa, without fittings and height.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        flow with a Reynolds number above 2040 is an error (`turbulent`).
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Δp = 128 η L Q/(π d⁴). Laminar, Newtonian, developed flow.

    References
    ----------
    Hagen 1839; Poiseuille 1840; onset of turbulence: Avila et al. 2011, Science 333, 192.

    Examples
    --------
    >>> from pinfilm import hydraulics
    >>> round(hydraulics.pressure_drop_kpa(12, 1000, 4, 20), 3)
    636.62
    """

def pressure_mpa(load_n: Floats, pin_diameter_mm: Floats, joint_length_mm: Floats) -> FloatsOut:
    """
    Nominal bearing pressure of a pin in its bush: load over projected area.

    Parameters
    ----------
    load_n : array_like
        Load on the joint; above 0 and at most 100000000 N.
    pin_diameter_mm : array_like
        Diameter of the pin; 0.5 to 200 mm.
    joint_length_mm : array_like
        Length of the bush; 0.5 to 1000 mm.

    Returns
    -------
    float or ndarray
        Pressure in MPa.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    p = F/(d L). Exact by definition; the true contact is narrower and its pressure higher.

    References
    ----------
    Projected-area convention of machine design; ISO 10823:2004.

    Examples
    --------
    >>> from pinfilm import film
    >>> round(film.pressure_mpa(25000, 15, 46), 3)
    36.232
    """

def rank(results: Columns2, *, budget: SupportsFloat | SupportsIndex, value: str = "npv", cost: str = "invest", draws: Draws | None = None) -> Ranking:
    """
    Choose the lines that are worth most together within a budget.

    Parameters
    ----------
    results : table or mapping of arrays
        A table with the columns `value` and `cost`: what `compare_table` gives, or joined data.
    budget : float
        Money there is, in the currency of the table.
    value, cost : str
        Columns of the net present value and of the capital needed now.
    draws : array of shape (draws, rows), or table with the columns ``draw``, ``row`` and `value`, optional
        Values under uncertainty. Prices of the whole plant must be drawn once for all lines of a draw.

    Returns
    -------
    Ranking
        The rows to do; with draws the choice on expected value, and for each row the share of draws in which it is chosen.

    Raises
    ------
    TableError
        If a column is missing or holds no numbers, or the draws have another number of rows.
    InputError
        If the budget is negative or no number.

    Notes
    -----
    Exact by branch and bound for moderate numbers of lines; beyond a million steps the best choice found, with a bound on
    what any other could be worth. Lines that cost nothing and lose nothing are always in.

    Examples
    --------
    >>> import pinfilm
    >>> found = pinfilm.rank({"npv": [6.0, 5.0, 5.0], "invest": [6.0, 5.0, 5.0]}, budget=10.0)
    >>> found.rows, found.value, found.exact
    ([1, 2], 10.0, True)
    """

def reached_joints(joints: Floats, circuit_time_s: Floats, run_s: Floats, dwell_s: Floats, delays_s: Floats | None = None) -> FloatsOut:
    """
    Number of joints that a timer ever reaches, by one or several application points.

    Parameters
    ----------
    joints : array_like
        Joints of one strand, counted; 1 to 1000000000.
    circuit_time_s : array_like
        Time of one revolution of the chain; 0.001 to 10000000000 s.
    run_s : array_like
        Time for which oil is given; 0.001 to 10000000000 s.
    dwell_s : array_like
        Pause until the next run; 0 to 10000000000 s.
    delays_s : sequence of float, optional
        Travel time of the chain from a reference point to each application point; -10000000000 to 10000000000 s. One
        point at 0 s if not given.

    Returns
    -------
    int or ndarray
        Joints reached.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Exact in whole milliseconds, for joint 0 at the reference point at the start of a run; another start changes the
    number by at most the joints that share a phase. Constant speed.

    References
    ----------
    Counting of residues, a derivation of our own.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> coverage.reached_joints(900, 1200, 600, 3000)
    450
    >>> coverage.reached_joints(900, 1200, 600, 3000, delays_s=[0, 600])
    900
    """

def recommend(line: Line, shots_ul: Sequence[Scalar], oils: Sequence[Oil] | None = None, *, run_min: Sequence[Scalar] | None = None, dwell_min: Sequence[Scalar] | None = None, every_nth: Sequence[int] | None = None, points: Sequence[int] | None = None, application_sections: Sequence[int] | None = None, application_positions: Sequence[Scalar] | None = None, sides: Sequence[str] | None = None, methods: Any | None = None, pump_ml_per_min: Scalar | None = None, injector_s: Scalar | None = None, most_overflow: SupportsFloat | SupportsIndex | None = None, most_lock_risk: SupportsFloat | SupportsIndex | None = None, most_unreached: SupportsFloat | SupportsIndex | None = None, most_outlet_use: SupportsFloat | SupportsIndex | None = None, keep: SupportsIndex | None = None, all_rejections: bool = False, threads: SupportsIndex | None = None, progress: Progress | None = None) -> Recommendation:
    """
    Find the set-up to use among all that the lists make, and say why the others were refused.

    Every set-up goes through exact tests (counter, injector, pump, timer, longest wait, lock risk, floor of fill,
    overflow) and then through `evaluate` (joints unreached, viscosity window, line pressure, cable, cost of a year). Of
    those that keep every limit the cheapest is recommended; within 2 % of the least cost the one that a fitter would rather
    set up and leave alone: the floor kept even if oil is lost a quarter quicker than guessed, then least overflow (in whole
    per cent), at most one start an hour, few large shots rather than many small ones (within a factor of about two), the
    smallest n, the shortest longest wait, fewest starts, smallest shot, run, dwell, and the better point.

    Parameters
    ----------
    line : Line
        The survey. Its oil, method, shot, timer and place are replaced by the offers; `fill.floor` is the lowest fill.
        The yearly work in its costs is taken as it stands, whatever the method.
    shots_ul : sequence of float
        Oil of one shot in one gap (µL, > 0); of a spray, what a gap gets as its joint passes; by hand, a joint's dose.
    oils : sequence of Oil, optional
        Not given: the survey's.
    run_min, dwell_min : sequence of float, optional
        Run (> 0) and pause (0 = never stops), min. Not given: a run in which the counter meets every joint, one that meets
        nearly all of them equally often, and pauses of 1 to 1/32 of the time in which a full joint falls to the floor, in
        steps that a timer can be set to; and those of the survey.
    every_nth : sequence of int, optional
        One joint in how many. Not given: the least that reaches every joint and lets the injector follow, a larger one,
        and that of the survey.
    points : sequence of int, optional
        Gaps of a joint served, per strand: 1 or 2.
    application_sections, application_positions, sides : sequences, optional
        Sections of the survey, places in them (0 to 1) and sides ("top", "side", "bottom"). Not given: the place of the
        survey, and the best point.
    methods : sequence of str or of Manual, Drip, Spray, Synchronised, optional
        Not given: the survey's if it has a timer, else "synchronised". An object brings capture, zone, clock and the rest.
    pump_ml_per_min, injector_s : float, optional
        What the pump gives, and the time of one shot. Not given: not tested; from the survey's supply.
    most_overflow, most_lock_risk, most_unreached, most_outlet_use : float, optional
        Limits, as shares 0 to 1: overflow of what lands in the gaps (0.1), lock risk (0.05), joints that may stay without
        oil (0), pump outlet pressure in use (0.8).
    keep : int, optional
        How many alternatives, and refused set-ups of each reason, are listed (20).
    all_rejections : bool
        List every refused set-up.
    threads : int, optional
        Threads to use; all cores if not given. The result is the same for any number.
    progress : callable, optional
        Called with (done, all) some twenty times a second.

    Returns
    -------
    Recommendation
        `feasible`, `set_up`, `why`, `line` and its `evaluation`, `sheet`, ranked `alternatives`, `refused` by reason and
        `rejections` one by one. Where nothing keeps every limit, `feasible` is false and the nearest misses are listed.

    Raises
    ------
    InputError
        For a survey that cannot be computed; for a list that is empty, or holds a number that is negative or not finite;
        for more set-ups than one search takes.
    KeyboardInterrupt
        Ctrl-C stops the search.

    Notes
    -----
    Limits and ranks are closures of our own; the tests are the functions that `evaluate` calls.

    Examples
    --------
    >>> import pinfilm
    >>> line = pinfilm.examples.load("oven_proposed")
    >>> found = pinfilm.recommend(line, shots_ul=[4, 8, 16], run_min=[180], dwell_min=[540, 1620], every_nth=[8, 9])
    >>> found.feasible, found.set_up.every_nth, found.line.lubrication.every_nth
    (True, 9, 9)
    >>> # an even loop and n = 8: refused at the surveyed place and at the best one
    >>> [(group.reason, group.count) for group in found.refused if group.reason == "joints_never_dosed"]
    [('joints_never_dosed', 12)]
    """

def register() -> list[dict[str, str]]:
    """
    Where every public quantity is described: path, symbol, unit, meaning, ranges, default, formula, source, class.
    """

def reynolds_bearing(eccentricity_ratio: Floats, length_to_diameter: Floats, cavitation: str | None = None) -> ReynoldsBearing:
    """
    A steady journal bearing of finite length: two-dimensional solution of the Reynolds equation.

    Parameters
    ----------
    eccentricity_ratio : array_like
        Offset of the pin over the radial clearance; 0.000000001 to 0.999999999, and at most 0.999.
    length_to_diameter : array_like
        Length over diameter; 0.01 to 1000.
    cavitation : {'reynolds', 'half', 'full'}, optional
        What happens below ambient pressure: the film ruptures (as if not given), negative pressures are left out,
        or they count.

    Returns
    -------
    ReynoldsBearing
        Sommerfeld number, attitude angle, friction, flow, side flow and pressure ratio, each a float or an array.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity with a unit.

    Notes
    -----
    Finite volumes on 240 × 24 cells; load within 0.1 to 0.3 % of the limit of fine grids, about a millisecond each.
    Full (360°) bearing, isoviscous, rigid, oil at ambient pressure at the widest gap and at both ends.

    References
    ----------
    Reynolds 1886; Raimondi and Boyd 1958 for the outputs; rupture of Swift 1932 and Stieber 1933.

    Examples
    --------
    >>> from pinfilm import film
    >>> bearing = film.reynolds_bearing(0.8, 1.0)
    >>> round(bearing.sommerfeld, 3), round(bearing.attitude_deg, 1)
    (0.045, 36.2)
    """

def roller_chain_power_kw(pitch_mm: Floats, teeth: Floats, speed_rpm: Floats) -> FloatsOut:
    """
    Power for which the standard rates a roller chain drive of one strand.

    Parameters
    ----------
    pitch_mm : array_like
        Pitch of the chain; 4 to 1000 mm; the rating covers 6.35 to 76.2 mm.
    teeth : array_like
        Teeth of the small sprocket; 3 to 200.
    speed_rpm : array_like
        Speed of its shaft; 0 to 100000 1/min.

    Returns
    -------
    float or ndarray
        Rated power in kW, before any service factor.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        pitch that the rating does not cover is an error.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The lesser of H₁ = 0.004 N^1.08 n^0.9 p^(3 − 0.07 p), fatigue of the side plates, and H₂ = 1000 K N^1.5 p^0.8/n^1.5,
    impact of rollers, in horsepower, inches and 1/min; K = 17, or 29 below half an inch. For transmission drives with
    plenty of oil, as an orientation: conveyors are limited by pull, joint pressure and wear, and `evaluate` does not
    use it. The light chain 41 is not covered.

    References
    ----------
    ASME B29.1; Shigley, Mechanical Engineering Design.

    Examples
    --------
    >>> from pinfilm import kinematics
    >>> round(kinematics.roller_chain_power_kw(12.7, 17, 1000), 2)
    4.08
    """

def rolling_resistance(friction: Floats, axle_diameter_mm: Floats, wheel_diameter_mm: Floats, rolling_arm_mm: Floats) -> FloatsOut:
    """
    Resistance of a loaded wheel or chain roller, over its load.

    Parameters
    ----------
    friction : array_like
        Friction coefficient between axle (the bush) and wheel (the roller); 0 to 5.
    axle_diameter_mm : array_like
        Diameter of the axle, on which the wheel slides; 0 to 10000 mm.
    wheel_diameter_mm : array_like
        Diameter of the wheel; above 0 and at most 10000 mm.
    rolling_arm_mm : array_like
        Lever arm of rolling friction on the track; 0 to 10 mm.

    Returns
    -------
    float or ndarray
        Resistance over load.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    c = (μ d + 2 f)/D: moments about the point of contact. Only the first part is oil's business.

    References
    ----------
    Statics of the wheel; lever arms of rolling friction as in DIN 22101 and mechanics textbooks.

    Examples
    --------
    >>> from pinfilm import tension
    >>> round(tension.rolling_resistance(0.2, 21, 60, 0.5), 5)
    0.08667
    """

def sag_tension_n(mass_kg_per_m: Floats, span_m: Floats, sag_m: Floats) -> FloatsOut:
    """
    Tension of a strand that sags between two supports at one height.

    Parameters
    ----------
    mass_kg_per_m : array_like
        Mass of the strand with its attachments; above 0 and at most 500 kg/m.
    span_m : array_like
        Distance of the supports; above 0 and at most 5000 m.
    sag_m : array_like
        Sag in the middle; above 0 and at most 500 m.

    Returns
    -------
    float or ndarray
        Horizontal tension in N.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    T = m g L²/(8 s): the parabola that stands for the catenary. Good to 1 % up to a sag of a tenth of the span.

    References
    ----------
    Parabolic approximation of the catenary.

    Examples
    --------
    >>> from pinfilm import tension
    >>> round(tension.sag_tension_n(5.0, 2.0, 0.04), 2)
    612.92
    """

def sample(lines: Lines, uncertain: Doubts | None = None, *, correlation: Correlations | None = None, n: SupportsIndex | None = None, seed: SupportsIndex | None = None, outputs: SupportsGetItem[int, str] | None = None, generator: str | None = None, threads: SupportsIndex | None = None, progress: Progress | None = None) -> Sample:
    """
    Draw what is uncertain about a line or a change, evaluate every draw, and say how far the results spread.

    Parameters
    ----------
    lines : Line or (Line, Line)
        A line, or (now, proposed): a pair is compared, and shares its draws.
    uncertain : mapping of str to Distribution, optional
        By dotted path; None as a value stands for what the register thinks. Not given: `default_uncertainty(lines)`, with
        friction and wear of a surface correlated by 0.5.
    correlation : mapping of (str, str) to float, or matrix, optional
        Correlations of the normal scores of the uncertain inputs.
    n : int, default 4096
        Draws in all, in eight shifted nets: a power of two for "sobol".
    seed : int, default 1
        Same seed, same draws, for any number of threads.
    outputs : sequence of str, optional
        Dotted paths of the result; not given: every single number.
    generator : {"sobol", "random"}
        Evenly spread points, or independent random numbers.
    threads : int, optional
        Not given: all of the machine.
    progress : callable, optional
        Called with (draws done, all draws) some twenty times a second; what it raises stops the calculation.

    Returns
    -------
    Sample
        Percentiles and probabilities with the error of their drawing, the draws, and why some could not be computed.

    Raises
    ------
    InputError
        For a path that is none (naming the nearest), a distribution outside what its path allows, a correlation matrix
        that is none, a number of draws that makes no nets or does not fit into memory.

    Notes
    -----
    Sobol points under eight digital shifts; Gaussian copula (Nelsen 2006); the error is that between the nets.

    Examples
    --------
    >>> import pinfilm
    >>> price = {"costs.energy_price_per_kwh": pinfilm.Distribution.uniform(0.1, 0.3)}
    >>> found = pinfilm.sample(pinfilm.examples.load("oven_now"), price, n=64, outputs=["cost.energy"])
    >>> low, high = (found.percentile("cost.energy", p).value for p in (0.05, 0.95))
    >>> low < high
    True
    """

def savings_uncertainty(quantile: Floats, cv_rmse_pct: Floats, saved_share: Floats, count_before: Floats, count_after: Floats, lag1: Floats, months: Floats | None = None, savings_factor: str | None = None) -> FloatsOut:
    """
    Uncertainty of a saving, as a share of the saving.

    Parameters
    ----------
    quantile : array_like
        Quantile of the confidence, such as 1.645 for 90 %; above 0 and at most 100.
    cv_rmse_pct : array_like
        Coefficient of variation of the model before the change; above 0 and at most 1000 %.
    saved_share : array_like
        Share of the use that was saved; above 0 and at most 1.
    count_before, count_after : array_like
        Readings before and after the change; 1 to 1000000000000000.
    lag1 : array_like
        Lag-one autocorrelation of the model's residuals; -0.999999 to 0.999999.
    months : array_like, optional
        Months logged after the change; 1 to 120; needed by the factors for daily and monthly readings.
    savings_factor : {'original', 'daily', 'monthly'}, optional
        Factor that stands for the covariates: 1.26 (original, as if not given), or a polynomial in the months.

    Returns
    -------
    float or ndarray
        Uncertainty over saving; a saving is usually claimed below 0.5 at 68 %.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        factor that needs the months without them.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    t f (CV/F) √((n/n′)(1 + 2/n′)/m) with n′ = n (1 − ρ)/(1 + ρ). For the audit trail; `CurrentLog` widens intervals for
    short logs too.

    References
    ----------
    ASHRAE Guideline 14-2014, annex B; Reddy and Claridge 2000; Sun and Baltazar 2013.

    Examples
    --------
    >>> from pinfilm import statistics
    >>> round(statistics.savings_uncertainty(1.645, 8, 0.1, 365, 365, 0.6), 4)
    0.1755
    """

def sensitivity(lines: Lines, uncertain: Doubts | None = None, *, output: str | None = None, log: bool = False, correlation: Correlations | None = None, n: SupportsIndex | None = None, seed: SupportsIndex | None = None, threads: SupportsIndex | None = None, progress: Progress | None = None) -> Sensitivity:
    """
    Which uncertain input a result hangs on: Sobol indices of first order and in total, with their confidence.

    Parameters
    ----------
    lines : Line or (Line, Line)
        A line, or (now, proposed).
    uncertain, correlation
        As in `sample`. Correlated inputs have an index together.
    output : str, optional
        Dotted path of one number of the result; not given: the first that people ask for (the saving of a pair).
    log : bool, default False
        Study its natural logarithm.
    n : int, default 4096
        Base rows in all, a power of two; n × (inputs + 2) draws are computed, in eight shifted designs.
    seed, threads, progress
        As in `sample`.

    Returns
    -------
    Sensitivity
        Its `table()` has the inputs, most important first: share of the variance that goes if this input alone were known
        (`first`), share that stays if all others were known (`total`), and the result at its 5 % and 95 % values.

    Raises
    ------
    InputError
        As in `sample`, and for an output that has no number in some draw: study the saving, not a payback that may never
        come.

    Notes
    -----
    First order of Saltelli et al. (2010), total of Jansen (1999), on Sobol points; confidence from the differences of the
    eight designs. A base row with a draw that cannot be computed is left out whole, and shares hold among the rest; fewer than
    half are refused.

    Examples
    --------
    >>> import pinfilm
    >>> line = pinfilm.examples.load("oven_now")
    >>> inputs = {"costs.energy_price_per_kwh": None, "wear.wear_coefficient_dry": None}
    >>> found = pinfilm.sensitivity(line, inputs, output="cost.energy", n=64)
    >>> found.table()["input"][0]
    'costs.energy_price_per_kwh'
    """

def simulate(line: Line, *, shifts: Sequence[Shift] | None = None, weeks: SupportsFloat | SupportsIndex | None = None, phase_min: Scalar | None = None, counter_reset: bool = False, threads: SupportsIndex | None = None, progress: Progress | None = None) -> SimulatedLine:
    """
    Walk a line through its weeks, joint by joint, with shifts, stops and changes of speed.

    Parameters
    ----------
    line : Line
        A survey whose method has a timer or never pauses; a round by hand has no clock.
    shifts : sequence of Shift, optional
        The timetable of a week. Not given: the survey's hours a day from 6:00 on (from midnight if they are more than 18),
        on as many days from Monday on as its days a year make a week (common practice, no source).
    weeks : float, optional
        Weeks to walk through, up to 520; 4 if not given.
    phase_min : float, optional
        Where in its period the timer stands at the start, min after the beginning of a run; 0 if not given.
    counter_reset : bool
        Whether the counter of joints starts again at each run of the timer.
    threads, progress
        As in `recommend`; the walk itself takes one thread.

    Returns
    -------
    SimulatedLine
        Shots and longest dry time of every joint, waits, share never reached, oil used, and what `evaluate` says of the
        same line. With one speed and a timer on running time the two agree.

    Raises
    ------
    InputError
        Shifts that overlap or leave the week, weeks outside the range, a method without a clock, more than some hundred
        million passages.

    Notes
    -----
    The applicator meets every passage of every joint; a passage at the instant of a stop belongs to the next start.

    Examples
    --------
    >>> import pinfilm
    >>> oven = pinfilm.examples.load("oven_now")
    >>> walked = pinfilm.simulate(oven, weeks=2)
    >>> round(walked.never_reached, 2), round(walked.never_reached_closed_form, 2)
    (0.6, 0.6)
    """

def single_present_value_factor(rate: Floats, years: Floats) -> FloatsOut:
    """
    Present value of one unit of money paid once.

    Parameters
    ----------
    rate : array_like
        Discount rate of a year; above -1.
    years : array_like
        Years from now; at least 0 years.

    Returns
    -------
    float or ndarray
        Factor.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    SPV = (1 + r)^−n.

    References
    ----------
    Fuller and Petersen 1996, NIST Handbook 135.

    Examples
    --------
    >>> from pinfilm import economics
    >>> round(economics.single_present_value_factor(0.03, 10), 4)
    0.7441
    """

def smallest_shot_ul(circuit_time_s: Floats, run_s: Floats, dwell_s: Floats, capacity_ul: Floats, loss_rate_per_h: Floats, floor: Floats, uptake_ul_per_joint_h: Floats | None = None) -> FloatsOut:
    """
    Smallest dose that keeps every joint above a floor.

    Parameters
    ----------
    circuit_time_s : array_like
        Time of one revolution of the chain; 0.001 to 10000000000 s.
    run_s, dwell_s : array_like
        Time for which oil is given; 0.001 to 10000000000 s and 0 to 10000000000 s.
    capacity_ul : array_like
        Oil that the joint can hold; above 0 and at most 10000000 µL.
    loss_rate_per_h : array_like
        Share of its oil that the joint loses in a running hour; 0 to 1000000 1/h.
    floor : array_like
        Lowest fill; above 0 and at most 0.999.
    uptake_ul_per_joint_h : array_like, optional
        Constant loss; 0 to 10000000 µL/h; 0 if not given.

    Returns
    -------
    float or ndarray
        Dose in the joint in µL; divide by what is captured and enters to get the shot at the nozzle.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
        Where the timer never reaches some joints, or full joints fall below the floor in the longest wait, there is
        no such dose: an error for numbers, NaN in arrays.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Bisection on `periodic_fill`, whose lowest fill rises with the dose.

    References
    ----------
    As `periodic_fill`.

    Examples
    --------
    >>> from pinfilm import fill
    >>> round(fill.smallest_shot_ul(1237, 300, 3300, capacity_ul=100, loss_rate_per_h=0.0036, floor=0.5), 4)
    0.7716
    """

def sommerfeld_short(eccentricity_ratio: Floats, length_to_diameter: Floats) -> FloatsOut:
    """
    Sommerfeld number of a short journal bearing at an eccentricity.

    Parameters
    ----------
    eccentricity_ratio : array_like
        Offset of the pin over the radial clearance; 0.000000001 to 0.999999999.
    length_to_diameter : array_like
        Length over diameter; 0.01 to 1000.

    Returns
    -------
    float or ndarray
        S = (η N 2 R L/W) (R/c)² with N in revolutions per second.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity with a unit.

    Notes
    -----
    1/S = π (L/D)² e/(1 − e²)² √(π²(1 − e²) + 16 e²). Half film, steady turning, rigid, isoviscous, bearing much
    shorter than wide: a chain joint is none of that, and the film found this way is many times too thick.

    References
    ----------
    DuBois and Ocvirk 1953, NACA Report 1157.

    Examples
    --------
    >>> from pinfilm import film
    >>> round(film.sommerfeld_short(0.6, 0.5), 6)
    0.250119
    """

def speed_ripple(teeth: Floats) -> FloatsOut:
    """
    Ripple of the chain speed at constant speed of the shaft: greatest less least, over the mean.

    Parameters
    ----------
    teeth : array_like
        Teeth of the sprocket; 3 to 200.

    Returns
    -------
    float or ndarray
        Ripple as a share of the mean speed.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity with a unit.

    Notes
    -----
    (v_max − v_min)/v_mean = (π/z) tan(π/(2z)), from v_max = π d n and v_min = v_max cos(π/z). Kinematics alone: an
    elastic chain smooths it.

    References
    ----------
    Polygon action of chain drives; derived from the pitch polygon.

    Examples
    --------
    >>> from pinfilm import kinematics
    >>> round(kinematics.speed_ripple(8), 4)
    0.0781
    """

def squeeze_time_short_s(viscosity_mpa_s: Floats, radius_mm: Floats, length_mm: Floats, load_n: Floats, clearance_um: Floats, e1: Floats, e2: Floats, film: str | None = None) -> FloatsOut:
    """
    Time in which a load squeezes the film of a short joint from one eccentricity to a greater one.

    Parameters
    ----------
    viscosity_mpa_s : array_like
        Dynamic viscosity; 0.01 to 1000000000 mPa s.
    radius_mm : array_like
        Radius of the pin; above 0 and at most 10000000 mm.
    length_mm : array_like
        Length of the bush; above 0 and at most 100000 mm.
    load_n : array_like
        Load; above 0 and at most 100000000 N.
    clearance_um : array_like
        Radial clearance; above 0 and at most 100000 µm.
    e1, e2 : array_like
        Offset over clearance at start and end; 0 to 0.999999999.
    film : {'half', 'full'}, optional
        Which part of the film carries: the closing half (as if not given) or, flooded under pressure, all of it.

    Returns
    -------
    float or ndarray
        Time in s.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. An
        end before the start is an error.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    t = η R L³/(W c²) [J(e₂) − J(e₁)] with J = e arccos(−e)/(1 − e²)^1.5 + 1/(1 − e²) for the half film and
    π e/(1 − e²)^1.5 for the full one. Constant load, no turning, smooth and rigid: contact is never reached.

    References
    ----------
    Pinkus and Sternlicht 1961, Theory of Hydrodynamic Lubrication.

    Examples
    --------
    >>> from pinfilm import film
    >>> round(film.squeeze_time_short_s(200, 7.5, 30, 5000, 50, 0.1, 0.999), 4)
    113.7708
    """

def standards() -> dict[str, list[str]]:
    """
    Standards in the tables, with the designations of each.
    """

def sweep(lines: Lines, grid: Grid, *, outputs: SupportsGetItem[int, str] | None = None, threads: SupportsIndex | None = None, progress: Progress | None = None) -> Columns:
    """
    Evaluate a line, or compare a pair, for every combination of the values named.

    Parameters
    ----------
    lines : Line or (Line, Line)
        A line, or (now, proposed); then a path led by `now.` or `proposed.` is one side, any other both.
    grid : mapping of str to sequence
        Values by dotted path; the last path changes fastest. A value may be a whole group, such as an Oil or a Spray.
    outputs : sequence of str, optional
        Dotted paths of the result, words too; not given: every single number.
    threads : int, optional
        Not given: all of the machine.
    progress : callable, optional
        Called with (rows done, all rows) some twenty times a second; what it raises stops the calculation.

    Returns
    -------
    Columns
        A column for each path of the grid and each output, then `status` ("ok" or "error"), `code` and `message`: a
        combination that cannot be computed is told in its row and stops no other.

    Raises
    ------
    InputError
        For a path that is none (naming the nearest), a value of the wrong kind, an empty axis, a grid too large for memory.

    Examples
    --------
    >>> import pinfilm
    >>> line = pinfilm.examples.load("oven_now")
    >>> grid = {"lubrication.timer.dwell_min": [45.0, 52.0], "oil.iso_vg": [150, 220]}
    >>> table = pinfilm.sweep(line, grid, outputs=["fill.never_reached"])
    >>> table.rows, set(table["status"])
    (4, {'ok'})
    """

def three_gaps(step: Floats, count: Floats) -> list[tuple[float, int]]:
    """
    Gaps between points laid round a circle at equal steps: the three-gap theorem.

    Parameters
    ----------
    step : float
        Step round a circle of length 1, whose whole part does not matter; -1000000000 to 1000000000.
    count : int
        Number of points, the first at 0; 1 to 1000000000000000.

    Returns
    -------
    list of (float, int)
        Length of the gaps and how many have it, shortest first: one, two or three pairs.

    Raises
    ------
    InputError
        A number outside its range or not finite. Arrays are not accepted.
    UnitError
        A quantity with a unit.

    Notes
    -----
    At most three lengths occur, and of three the longest is the sum of the other two. Found from the continued fraction
    of the step in a few divisions, whatever the count. Points nearer than rounding coincide and leave gaps of length 0.

    References
    ----------
    Sós 1958, Ann. Univ. Sci. Budapest 1, 127; Slater 1967.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> [(round(length, 6), count) for length, count in coverage.three_gaps(0.6180339887498949, 5)]
    [(0.145898, 2), (0.236068, 3)]
    """

def timer_coverage(circuit_time_s: Floats, run_s: Floats, dwell_s: Floats) -> TimerCoverage:
    """
    Which joints a timer reaches, and how long they wait between two shots.

    Parameters
    ----------
    circuit_time_s : float
        Time of one revolution of the chain; 0.001 to 10000000000 s.
    run_s : float
        Time for which oil is given; 0.001 to 10000000000 s.
    dwell_s : float
        Pause until the next run; 0 to 10000000000 s.

    Returns
    -------
    TimerCoverage
        Waits in circuits with their shares of shots and joints, share never reached, mean and worst wait.

    Raises
    ------
    InputError
        A number outside its range or not finite. Arrays are not accepted.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Exact in whole milliseconds: a timer against a chain is a rotation of a circle, and the waits take at most three
    values. If the run is not longer than the greatest common divisor of circuit and period the pattern is locked: some
    joints are shot again and again, the others never. Assumes joints all round the loop, constant speed and a steady
    clock.

    References
    ----------
    Slater 1967, Gaps and steps for the sequence nθ mod 1, Proc. Camb. Phil. Soc. 63, 1115.

    Examples
    --------
    >>> from pinfilm import coverage
    >>> oven = coverage.timer_coverage(1200, run_s=600, dwell_s=3000)
    >>> oven.never_reached, oven.wait_circuits
    (0.5, (3,))
    >>> coverage.timer_coverage(1200, run_s=900, dwell_s=2820).wait_circuits
    (3, 10, 13)
    """

def uniform_present_value_factor(rate: Floats, years: Floats) -> FloatsOut:
    """
    Present value of one unit of money at every year end.

    Parameters
    ----------
    rate : array_like
        Discount rate of a year; above -1.
    years : array_like
        Years for which it is paid; at least 0 years.

    Returns
    -------
    float or ndarray
        Factor; the number of years at rate 0.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    UPV = (1 − (1 + r)^−n)/r, exact down to tiny rates.

    References
    ----------
    Fuller and Petersen 1996, NIST Handbook 135.

    Examples
    --------
    >>> from pinfilm import economics
    >>> round(economics.uniform_present_value_factor(0.03, 10), 3)
    8.53
    """

def unlubricated_coefficient(pair: str | None = None) -> float:
    """
    Measured wear coefficient of a dry pair of materials.

    Parameters
    ----------
    pair : {'mild_steel', 'brass', 'hard_tool_steel', 'ferritic_stainless', 'polythene'}, optional
        Mild steel on itself (as if not given), brass, hardened tool steel, ferritic stainless steel, polyethylene.

    Returns
    -------
    float
        Coefficient K of V = K W s/(3 H).

    Raises
    ------
    InputError
        A pair that was not measured.

    Notes
    -----
    An order of magnitude. The dry joint of `evaluate` takes 5e-4, between hardened and mild steel, until one reading of
    elongation says better.

    References
    ----------
    Archard and Hirst 1956, as an encyclopaedia prints them.

    Examples
    --------
    >>> from pinfilm import wear
    >>> wear.unlubricated_coefficient("hard_tool_steel")
    0.00013
    """

def v100_mm2_s(v40_mm2_s: Floats, viscosity_index: Floats) -> FloatsOut:
    """
    Kinematic viscosity at 100 °C from that at 40 °C and the viscosity index.

    Parameters
    ----------
    v40_mm2_s : array_like
        Kinematic viscosity at 40 °C; 0.21 to 20000000 mm²/s.
    viscosity_index : array_like
        Viscosity index; -50 to 400.

    Returns
    -------
    float or ndarray
        Kinematic viscosity at 100 °C in mm²/s.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        result outside what the standard covers is an error.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The inverse of `viscosity_index`, by root finding on the standard's own procedures.

    References
    ----------
    ASTM D2270; ISO 2909.

    Examples
    --------
    >>> from pinfilm import oil
    >>> round(oil.v100_mm2_s(220, 95), 3)
    18.75
    """

def vent_time_s(length_m: Floats, bore_mm: Floats, viscosity_mpa_s: Floats, pressure_kpa: Floats, reset_pressure_kpa: Floats, bulk_modulus_gpa: Floats | None = None, hose_compliance_per_gpa: Floats | None = None) -> FloatsOut:
    """
    Time in which the pressure of a line, closed at its far end, falls so far that the injectors reset.

    Parameters
    ----------
    length_m : array_like
        Length of the line; 0 to 100000 m.
    bore_mm : array_like
        Bore of the line; 0.1 to 1000 mm.
    viscosity_mpa_s : array_like
        Dynamic viscosity of the coldest stretch; 0.01 to 1000000000 mPa s.
    pressure_kpa : array_like
        Pressure at delivery; above 0 and at most 100000 kPa.
    reset_pressure_kpa : array_like
        Pressure to which it must fall; above 0 and at most 100000 kPa.
    bulk_modulus_gpa : array_like, optional
        Bulk modulus of the oil; 0.1 to 5 GPa; 1.4 GPa if not given.
    hose_compliance_per_gpa : array_like, optional
        Relative swelling of the line over pressure; 0 to 100 1/GPa; 0.2 1/GPa if not given.

    Returns
    -------
    float or ndarray
        Time in s; 0 where nothing has to vent.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    The slowest mode of the diffusion of pressure along the line: good for a reset pressure below 0.4 of the
    pressure. No air in the line.

    References
    ----------
    Diffusion equation of a compressible line with laminar friction, first term of its series.

    Examples
    --------
    >>> from pinfilm import hydraulics
    >>> round(hydraulics.vent_time_s(30, 6, 2000, 6000, 1000), 3)
    1.206
    """

def version() -> str:
    """
    The version of the compiled core.
    """

def viscosity_index(v40_mm2_s: Floats, v100_mm2_s: Floats) -> FloatsOut:
    """
    Viscosity index from the kinematic viscosities at 40 and 100 °C.

    Parameters
    ----------
    v40_mm2_s, v100_mm2_s : array_like
        Kinematic viscosity at 40 °C and at 100 °C; 0.21 to 20000000 mm²/s.

    Returns
    -------
    float or ndarray
        Viscosity index, not rounded.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        viscosity at 100 °C outside what the standard covers, or not below that at 40 °C, is an error.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Procedure A up to 100, procedure B above, with the table of the standard interpolated as it says.

    References
    ----------
    ASTM D2270; ISO 2909.

    Examples
    --------
    >>> from pinfilm import oil
    >>> round(oil.viscosity_index(73.30, 8.86), 1)
    92.4
    """

def viscosity_window_mpa_s(time_available_s: Floats, articulations: Floats, angle_deg: Floats, film_time_h: Floats, plate_gap_mm: Floats, plate_path_mm: Floats, pin_diameter_mm: Floats, joint_clearance_um: Floats, joint_depth_mm: Floats, keep: Floats | None = None, film_min_um: Floats | None = None, surface_tension_mn_per_m: Floats | None = None, contact_angle_deg: Floats | None = None, density_kg_per_m3: Floats | None = None, pin_eccentricity: Floats | None = None, articulation_loss: Floats | None = None, articulation_loss_exponent: Floats | None = None, articulation_loss_reference_pa_s: Floats | None = None) -> ViscosityWindow:
    """
    Viscosities that get into a joint at the application point and stay there while it runs.

    Parameters
    ----------
    time_available_s : array_like
        Time the oil has to enter; above 0 and at most 1000000000 s.
    articulations : array_like
        Articulations of a joint between two shots; above 0 and at most 1000000000.
    angle_deg : array_like
        Angle of one articulation; above 0 and at most 360 °.
    film_time_h : array_like
        Time for which a film must stay on the plates; above 0 and at most 1000000 h.
    plate_gap_mm : array_like
        Gap between inner and outer plate; 0.001 to 5 mm.
    plate_path_mm : array_like
        Way from the plate edge to the bush; above 0 and at most 500 mm.
    pin_diameter_mm : array_like
        Diameter of the pin; 0.5 to 200 mm.
    joint_clearance_um : array_like
        Radial clearance of pin and bush; above 0 and at most 10000 µm.
    joint_depth_mm : array_like
        Length of joint to fill from one gap; above 0 and at most 1000 mm.
    keep : array_like, optional
        Share of its oil that a joint must keep between shots; 0.01 to 0.99; 0.5 if not given.
    film_min_um : array_like, optional
        Mean film that must stay on the plates; above 0 and at most 100 µm; 0.3 µm if not given.
    surface_tension_mn_per_m : array_like, optional
        Surface tension; 5 to 80 mN/m; 30 mN/m if not given.
    contact_angle_deg : array_like, optional
        Angle at which the oil meets the steel; 0 to 180 °; 20° if not given.
    density_kg_per_m3 : array_like, optional
        Density; 500 to 2000 kg/m³; 890 kg/m³ if not given.
    pin_eccentricity : array_like, optional
        Offset of the pin over the clearance; 0 to 1; 1 if not given.
    articulation_loss : array_like, optional
        Share of the pumped oil that an articulation loses; 0 to 1; 0.0005 if not given.
    articulation_loss_exponent : array_like, optional
        Exponent with which thicker oil is lost less; 0 to 3; 0.5 if not given.
    articulation_loss_reference_pa_s : array_like, optional
        Viscosity at which that loss holds; 0.0001 to 1000 Pa s; 0.1 Pa s if not given.

    Returns
    -------
    ViscosityWindow
        Greatest viscosity at the application point and least while running, with what sets it; floats or arrays. A
        least above the greatest is no contradiction: the two hold at different temperatures.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    Greatest: the joint fills in the time available. Least: the larger of what articulation pumps out too fast (a
    closure of our own, spread a factor of 10) and of what drains off an upright plate.

    References
    ----------
    Washburn 1921; Jeffreys 1930, Proc. Camb. Phil. Soc. 26, 204.

    Examples
    --------
    >>> from pinfilm import hydraulics
    >>> window = hydraulics.viscosity_window_mpa_s(600, 20000, 17, 24, 0.25, 5, 5.72, 60, 7.7, film_min_um=1.0)
    >>> round(window.least_mpa_s, 1), round(window.most_mpa_s)
    (339.3, 10854)
    """

def voltage_drop_v(current_a: Floats, length_m: Floats, area_mm2: Floats, conductor_class: Floats, temperature_c: Floats) -> FloatsOut:
    """
    Voltage lost in a two-wire cable.

    Parameters
    ----------
    current_a : array_like
        Current; 0 to 5000 A.
    length_m : array_like
        Length of the cable; 0 to 100000 m.
    area_mm2 : array_like
        Nominal cross-section; 0.5 to 16 mm².
    conductor_class : array_like
        Class: 1 solid, 2 stranded, 5 or 6 flexible; 1 to 6.
    temperature_c : array_like
        Temperature of the conductor; -100 to 400 °C.

    Returns
    -------
    float or ndarray
        Voltage lost there and back, in V.

    Raises
    ------
    InputError
        A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
        cross-section or class that the tables do not hold is an error.
    UnitError
        A quantity of another dimension than the name says.

    Notes
    -----
    ΔU = 2 L I R₂₀ (1 + 0.00393 (t − 20)).

    References
    ----------
    IEC 60228; IEC 60028 for the temperature coefficient of copper.

    Examples
    --------
    >>> from pinfilm import electrics
    >>> round(electrics.voltage_drop_v(2.0, 50.0, 1.5, 5, 20.0), 4)
    2.66
    """

def watch_many(logs: SupportsGetItem[int, CurrentLog], quiet_until: Any, *, quiet_from: Any | None = None, lines: SupportsGetItem[int, Line | None] | None = None, threads: SupportsIndex | None = None, progress: Any | None = None) -> list[Any]:
    """
    Watch many logs in parallel; one that fails stops no other.

    Parameters
    ----------
    logs : sequence of CurrentLog
    quiet_until, quiet_from : date, datetime or str
        The quiet period of all of them.
    lines : sequence of Line or None, optional
        A line for each log.
    threads : int, optional
        Not given: as many as the machine has. The result does not depend on it.
    progress : callable, optional
        Called with the number done and the number of all, between groups of logs.

    Returns
    -------
    list
        For each log, in order, its `WatchReport`, or the error (a `PinfilmError`) that it met.

    Examples
    --------
    >>> import pinfilm
    >>> pinfilm.watch_many([], "2025-01-01")
    []
    """
