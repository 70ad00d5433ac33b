//! Formulas that give several results at once: each outcome is declared here once, with its names, units and meanings.

use super::{Row, unit};

/// Declares every outcome with the given macro. A line is `public_name: kind [UNIT] "what it means"`; the kinds are
/// `Number`, `Count`, `Flag` (a value, or an array of them) and `Numbers`, `Counts` (a list of any length).
macro_rules! outcomes {
    ($declare:ident) => {
        $declare! {
            /// A steady journal bearing as a solution of the Reynolds equation.
            ReynoldsBearing of "pinfilm.film" {
                sommerfeld: Number [ONE] "Sommerfeld number (η N 2 R L/W) (R/c)²"
                attitude_deg: Number [DEG] "angle between load and line of centres"
                friction: Number [ONE] "(R/c) times the friction coefficient, drag over the whole circumference"
                friction_striated: Number [ONE] "the same where only streamers fill the gap behind the rupture"
                flow: Number [ONE] "oil entering at the widest gap, Q/(R c N L)"
                side_flow_share: Number [ONE] "share of it that leaves at the ends"
                pressure_ratio: Number [ONE] "mean bearing pressure over greatest film pressure"
            }
            /// Which joints a timer reaches and how long they wait.
            TimerCoverage of "pinfilm.coverage" {
                wait_circuits: Counts [CIRCUITS] "waits between two shots at a joint, shortest first"
                share_of_shots: Numbers [ONE] "share of all shots that are followed by each wait"
                share_of_joints: Numbers [ONE] "share of all joints that stand in each wait at a random moment"
                never_reached: Number [ONE] "share of the joints that no shot ever reaches"
                mean_wait_circuits: Number [CIRCUITS] "mean wait between two shots at a joint that is reached"
                worst_wait_circuits: Count [CIRCUITS] "longest wait of a joint that is reached"
                mean_age_circuits: Number [CIRCUITS] "mean time since the last shot of the joints that are reached"
                lock_circuits: Count [CIRCUITS] "circuits after which every phase repeats"
                locked: Flag [WORD] "whether some joints are shot for ever and the others never, or all at every lock"
            }
            /// Waits of the joints that pass several points on one timer.
            PointsCoverage of "pinfilm.coverage" {
                wait_circuits: Counts [CIRCUITS] "waits between circuits in which a joint is shot, shortest first"
                share_of_shots: Numbers [ONE] "share of all shots that are followed by each wait"
                share_of_joints: Numbers [ONE] "share of all joints that stand in each wait at a random moment"
                never_reached: Number [ONE] "share of the joints that no point ever reaches"
            }
            /// What a counter that doses every n-th joint reaches.
            EveryNth of "pinfilm.coverage" {
                reached: Count [ONE] "joints that are ever dosed"
                never: Count [ONE] "joints that are never dosed"
                spacing: Count [ONE] "joints from one dosed joint to the next along the chain"
                wait_circuits: Count [CIRCUITS] "circuits between two doses at the same joint"
            }
            /// How long the locked pattern of a timer holds.
            LockTime of "pinfilm.coverage" {
                starved_s: Number [S] "width of the starved stretch, in time of passing chain"
                constant_s: Number [S] "time until a constant error has crept over the whole stretch"
                random_s: Number [S] "typical time until a wandering error has done so"
                contiguous: Flag [WORD] "whether the creep leaves no new gaps, so that the constant time holds"
            }
            /// Time between two visits of a manual round at one joint.
            ManualInterval of "pinfilm.coverage" {
                mean_h: Number [H] "mean time"
                sd_h: Number [H] "standard deviation"
                p5_h: Number [H] "time that 5 visits in 100 fall short of"
                p50_h: Number [H] "median"
                p95_h: Number [H] "time that 5 visits in 100 exceed"
            }
            /// Viscosities that get in at the application point and stay while running.
            ViscosityWindow of "pinfilm.hydraulics" {
                least_mpa_s: Number [MPA_S] "least viscosity while running: the larger of the two below"
                most_mpa_s: Number [MPA_S] "greatest viscosity at the application point"
                least_pumping_mpa_s: Number [MPA_S] "least viscosity that articulation does not pump out too fast"
                least_film_mpa_s: Number [MPA_S] "least viscosity whose film does not drain off the plates too fast"
            }
            /// What a joint loses, by cause, in shares of its oil per running hour.
            LossRates of "pinfilm.fill" {
                evaporation_per_h: Number [PER_H] "evaporation"
                oxidation_per_h: Number [PER_H] "oxidation"
                articulation_per_h: Number [PER_H] "pumping by articulation"
                wash_per_h: Number [PER_H] "washing"
                total_per_h: Number [PER_H] "all together"
                half_life_h: Number [H] "running time in which half of the oil is lost"
            }
            /// How full the joints are once a line under a timer has settled.
            PeriodicFill of "pinfilm.fill" {
                mean_fill: Number [ONE] "mean over time and all joints, those never reached counted as empty"
                mean_fill_reached: Number [ONE] "mean over time and the joints that are reached"
                lowest_fill_reached: Number [ONE] "lowest fill of a reached joint, right before a shot"
                fill_after_shot: Number [ONE] "mean fill right after a shot"
                overflow_ul: Number [UL] "oil that overflows at a shot"
                never_reached: Number [ONE] "share of the joints that no shot meets"
                always_full: Flag [WORD] "whether every shot fills its joint"
            }
            /// Changes of level of a series.
            LevelChanges of "pinfilm.statistics" {
                points: Counts [ONE] "first reading of each new level, counted from 0"
                levels: Numbers [ONE] "mean of each level, one more than there are changes"
                penalty: Number [ONE] "price of a change, in the cost used"
                lag1: Number [ONE] "lag-one autocorrelation of the noise"
                deviation: Number [ONE] "standard deviation of a reading about its level"
            }
            /// Sums of a chart after each reading.
            CusumPath of "pinfilm.statistics" {
                up: Number [ONE] "sum of what was too high"
                down: Number [ONE] "sum of what was too low"
                alarms: Counts [ONE] "readings in alarm, counted from 0"
            }
            /// A three-phase cage induction motor at one load.
            OperatingPoint of "pinfilm.motor" {
                slip: Number [ONE] "lag behind the synchronous speed, as a share of it"
                speed_rpm: Number [RPM] "speed of the shaft"
                current_a: Number [A] "line current"
                rotor_current_a: Number [A] "rotor current, referred to the stator"
                power_factor: Number [ONE] "power factor, current lagging"
                input_power_w: Number [W] "electrical input power"
                stator_copper_loss_w: Number [W] "loss in the stator winding"
                core_loss_w: Number [W] "loss in the core, where it has a resistance of its own"
                air_gap_power_w: Number [W] "power through the air gap"
                rotor_copper_loss_w: Number [W] "loss in the rotor"
                converted_power_w: Number [W] "power turned into mechanical power"
                shaft_power_w: Number [W] "power at the shaft"
                efficiency: Number [ONE] "shaft power over input power"
                induced_torque_nm: Number [NM] "torque of the air gap"
                shaft_torque_nm: Number [NM] "torque at the shaft"
            }
        }
    };
}
#[cfg(feature = "python")]
pub(crate) use outcomes;

macro_rules! outcome_rows {
    ($( $(#[doc = $doc:literal])+ $name:ident of $module:literal {
        $( $field:ident : $kind:ident [$unit:ident] $means:literal )+
    } )+) => {
        /// The rows of each outcome, under the name of its class.
        pub const OUTCOMES: &[(&str, &[Row])] = &[ $( (stringify!($name), &[ $( Row {
            name: stringify!($field),
            unit: &unit::$unit,
            means: $means,
            ..Row::BLANK
        } ),+ ]) ),+ ];
    };
}
outcomes!(outcome_rows);
