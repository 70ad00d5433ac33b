//! The curves, as people get them.

use crate::noun;
use crate::quantity::Class;

macro_rules! round_loop_noun { ($declare:ident) => { $declare! {
    /// Tension and temperature along the chain, from the exit of the drive round to its entry.
    RoundLoop / RoundLoopSi, "round_loop" {
        section as section: Vec<i64> [ONE] "section of the survey in which each point lies, from 0" {}
        position_m as position: Vec<f64> [M] "distance along the chain from the exit of the drive" { symbol: "s", formula: "even steps through each section of {circuit.sections.length_m}", source: "definition", class: Class::Derived }
        time_s as time: Vec<f64> [S] "time since a joint left the drive" { symbol: "t", formula: "share of {kinematics.circuit_time_s} by length", source: "definition", class: Class::Derived }
        tension_n as tension: Vec<f64> [N] "effective tension of all strands"
            { symbol: "S", formula: "straight line between the ends of each section, {tension.profile_n}", source: "exact on straights; on turns only the ends are computed", class: Class::Derived }
        temperature_c as temperature: Vec<f64> [C] "chain temperature"
            { symbol: "ϑ", formula: "ϑ_env + (ϑ_in − ϑ_env) exp(−t/τ), ends as {kinematics.section_c}", source: "lumped heat balance", class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use round_loop_noun;
round_loop_noun!(noun);

macro_rules! shot_record_noun { ($declare:ident) => { $declare! {
    /// Which joint got oil when over some circuits of a settled line, and how full every joint is at their end.
    ShotRecord / ShotRecordSi, "shot_record" {
        joints as joints: i64 [ONE] "joints of one strand" { symbol: "N", formula: "{kinematics.joints}", source: "definition", class: Class::Derived }
        horizon_h as horizon: f64 [H] "running time that is followed" { formula: "circuits × {kinematics.circuit_time_s}", source: "definition", class: Class::Derived }
        by_chance as by_chance: bool [WORD] "whether chance decides who gets oil, so that this is one possible course" { formula: "manual or drip", source: "definition", class: Class::Derived }
        time_h as time: Vec<f64> [H] "running time of each shot" { symbol: "t", formula: "every passage of every joint while the timer runs and the counter is due, {kinematics.joint_time_s} apart", source: "event by event; agrees with the closed form", class: Class::Derived }
        joint as joint: Vec<i64> [ONE] "joint that got it, counted against the travel from the one that passed first" { formula: "passage modulo {kinematics.joints}", source: "definition", class: Class::Derived }
        position_m as position: Vec<f64> [M] "where each joint is at the end, along the chain from the exit of the drive" { symbol: "s", formula: "place of the point + travel − joint × {chain.pitch_mm}", source: "definition", class: Class::Derived }
        fill as fill: Vec<f64> [ONE] "fill of each joint at the end of that time" { symbol: "φ", formula: "shots of {fill.dose_in_joint_ul} into {fill.capacity_ul}, loss {fill.loss_rate_per_h} between them, from {fill.mean_fill_reached} on", source: "first-order loss between shots (exact solution)", class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use shot_record_noun;
shot_record_noun!(noun);

macro_rules! friction_curve_noun { ($declare:ident) => { $declare! {
    /// Friction of one articulation of a joint that gets oil, against film: the same joint with thinner and thicker oil.
    FrictionCurve / FrictionCurveSi, "friction_curve" {
        event as event: i64 [ONE] "articulation, by its place in the events of the result, from 0" {}
        viscosity_mpa_s as viscosity: Vec<f64> [MPA_S] "dynamic viscosity" { symbol: "η", formula: "factors of {joint.events.viscosity_mpa_s}", source: "definition", class: Class::Derived }
        lambda_ratio as lambda: Vec<f64> [ONE] "film over roughness" { symbol: "Λ", formula: "as {joint.events.lambda_ratio}", source: "as the result", class: Class::Closure }
        friction_reached as friction_reached: Vec<f64> [ONE] "friction coefficient of a joint that gets oil" { symbol: "µ", formula: "as {joint.events.friction_reached}", source: "as the result", class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use friction_curve_noun;
friction_curve_noun!(noun);

macro_rules! elongation_curve_noun { ($declare:ident) => { $declare! {
    /// Growth of the chain over calendar time.
    ElongationCurve / ElongationCurveSi, "elongation_curve" {
        time_years as time: Vec<f64> [YEARS] "calendar time since the chain was new" { symbol: "t", formula: "even steps", source: "definition", class: Class::Derived }
        elongation_pct as elongation: Vec<f64> [PCT] "elongation of the whole chain" { symbol: "ε", formula: "mean depth of the joints over {chain.pitch_mm}, as {wear.elongation_1_year_pct}", source: "Archard 1953; running-in is a closure", class: Class::Closure }
        limit_pct as limit: f64 [PCT] "elongation at which the chain is replaced" { formula: "{wear.limit_pct}", source: "as the result", class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use elongation_curve_noun;
elongation_curve_noun!(noun);
