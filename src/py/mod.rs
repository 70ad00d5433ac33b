//! The border to Python: the only place that names pyo3 or numpy. No formula, default or limit stands here.
//!
//! | file | what it does |
//! |---|---|
//! | `arrow`, `columns` | columns across without a copy; tables of any origin |
//! | `border` | values across: Python objects to survey data and back |
//! | `curves` | what lies between the numbers of a result, and blank survey files |
//! | `errors` | the one error type as Python's exceptions |
//! | `formulas` | formulas by name, over numbers and arrays |
//! | `logs` | current logs: columns in, verdicts out |
//! | `long` | long calls: threads, progress, Ctrl-C |
//! | `study` | grids, draws, sensitivity, calibration; long calls |
//! | `nouns` | a Python class for every noun, made from its declaration |
//! | `recommend` | `recommend`, `simulate` |
//! | `ranking`, `tables` | which lines first; many lines at once |
//! | `verbs` | `evaluate`, `compare` and what can be asked of their results |

/// A result is a few hundred small pieces of memory: this allocator hands them out in half the time, on every thread alike.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

mod arrow;
mod border;
mod columns;
mod curves;
mod errors;
mod formulas;
mod logs;
mod long;
mod nouns;
mod ranking;
mod recommend;
mod study;
mod tables;
mod verbs;

use pyo3::prelude::*;

/// The compiled core of pinfilm. Import from `pinfilm`, not from here.
#[pymodule]
mod _core {
    #[pymodule_export]
    use super::curves::blank_survey;
    #[pymodule_export]
    use super::formulas::coverage::{
        every_nth, handbook_methods, lock_risk, lock_time_s, manual_interval, points_coverage, reached_joints,
        three_gaps, timer_coverage,
    };
    #[pymodule_export]
    use super::formulas::economics::{
        discounted_payback_years, irr, irr_roots, irr_status, npv, payback_days, payback_status, payback_years,
        single_present_value_factor, uniform_present_value_factor,
    };
    #[pymodule_export]
    use super::formulas::electrics::{conductor_resistance_ohm_per_km, load_voltage_v, voltage_drop_v};
    #[pymodule_export]
    use super::formulas::fill::{
        demand_ul_per_joint_h, fill_between_shots, loss_rates_per_h, periodic_fill, smallest_shot_ul,
    };
    #[pymodule_export]
    use super::formulas::film::{
        asperity_integral, eccentricity_short, line_contact_film_um, pressure_mpa, reynolds_bearing, sommerfeld_short,
        squeeze_time_short_s,
    };
    #[pymodule_export]
    use super::formulas::formulas;
    #[pymodule_export]
    use super::formulas::hydraulics::{
        joint_entry_time_s, penetration_time_s, pressure_drop_kpa, vent_time_s, viscosity_window_mpa_s,
    };
    #[pymodule_export]
    use super::formulas::kinematics::{
        articulation_angle_deg, centre_distance_mm, chain_length_pitches, chain_speed_m_per_s, pitch_diameter_mm,
        roller_chain_power_kw, speed_ripple,
    };
    #[pymodule_export]
    use super::formulas::motor::{current_from_power_a, equivalent_circuit, power_from_current_kw};
    #[pymodule_export]
    use super::formulas::oil::{
        blend_viscosity_mm2_s, density_kg_per_m3, dynamic_viscosity_mpa_s, grade_limits_mm2_s, handbook_grade,
        handbook_sae_grade, kinematic_viscosity_mm2_s, v100_mm2_s, viscosity_index,
    };
    #[pymodule_export]
    use super::formulas::outcomes::classes::{
        CusumPath, EveryNth, LevelChanges, LockTime, LossRates, ManualInterval, OperatingPoint, PeriodicFill,
        PointsCoverage, ReynoldsBearing, TimerCoverage, ViscosityWindow,
    };
    #[pymodule_export]
    use super::formulas::statistics::{
        change_points, cusum, cv_rmse_pct, effective_sample_size, lag1, newey_west_se, nmbe_pct, savings_uncertainty,
    };
    #[pymodule_export]
    use super::formulas::tension::{capstan_ratio, rolling_resistance, sag_tension_n};
    #[pymodule_export]
    use super::formulas::wear::{archard_volume_mm3, elongation_pct, unlubricated_coefficient};
    #[pymodule_export]
    use super::logs::{CurrentLog, LogWatch, oil_use, watch_many};
    #[pymodule_export]
    use super::nouns::classes::{
        Alternative, LineSetUp, Recommendation, Refused, Rejection, SetUpSheet, Shift, SimulatedLine,
    };
    #[pymodule_export]
    use super::nouns::classes::{
        AvoidedUse, BeforeAfter, Change, ChangePoints, Cleaning, LogNote, LogRow, LogRules, OilCheck, OilUse, Proof,
        PullChange, WatchAlarm, WatchReport, WatchStep,
    };
    #[pymodule_export]
    use super::nouns::classes::{
        Caution, Chain, Circuit, Comparison, Cost, Costs, Drip, Drive, DriveState, Duty, ElongationCurve, Evaluation,
        Event, Fill, FillState, Friction, FrictionCurve, Joint, JointOrbit, JointState, Kinematics, Line, LossParts,
        Manual, Oil, OrbitEvent, RollerContact, RoundLoop, Savings, ShotRecord, Spray, Straight, Supply, SupplyState,
        Surface, Synchronised, Tension, Timer, Turn, TwoSprocket, Warning, Wear, WearState,
    };
    #[pymodule_export]
    use super::ranking::{Ranking, rank};
    #[pymodule_export]
    use super::recommend::{recommend, simulate};
    #[pymodule_export]
    use super::study::{
        Calibration, Columns, Distribution, Estimate, Reading, Sample, Sensitivity, calibrate, default_uncertainty,
        sample, sensitivity, sweep,
    };
    #[pymodule_export]
    use super::tables::{Table, compare_table, evaluate_table};
    #[pymodule_export]
    use super::verbs::{Explanation, compare, evaluate, joint_orbit, register, standards, version};

    /// The exceptions are ready before anything can be raised. It takes no module, so that the stub stays complete.
    #[pymodule_init]
    fn init() -> pyo3::PyResult<()> {
        pyo3::Python::attach(super::errors::import)
    }
}
