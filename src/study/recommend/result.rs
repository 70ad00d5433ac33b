//! The recommendation, under public names.

use super::Reason;
use crate::line::{Evaluation, Line};
use crate::noun;
use crate::quantity::{Class, Side, Word};

const OFFERED: &str = "one of the offers";
const SAME: &str = "the same evaluate as every line";

macro_rules! set_up_noun { ($declare:ident) => { $declare! {
    /// A set-up: what would be set at the line.
    LineSetUp / LineSetUpSi, "set_up" {
        method as method: Word [WORD] "how the joints get their oil" {}
        oil as oil: Word [WORD] "the oil" {}
        oil_number as oil_number: i64 [ONE] "number of the oil among the offered, from 0" { formula: "as offered", source: OFFERED }
        shot_ul as shot: f64 [UL] "oil of one shot in one gap; of a spray, what a gap gets as its joint passes; of a round by hand, the dose of a joint" { formula: "as offered", source: OFFERED }
        flow_ml_per_min as flow: Option<f64> [ML_PER_MIN] "flow of a nozzle that gives that much, for spray and drip" { formula: "{set_up.shot_ul} / {kinematics.joint_time_s}", source: "definition", class: Class::Derived }
        every_nth as every_nth: i64 [ONE] "one joint in how many gets the shot" { symbol: "n", formula: "as offered", source: OFFERED }
        points as points: i64 [ONE] "gaps of one joint served, per strand" { formula: "as offered", source: OFFERED }
        run_min as run: Option<f64> [MIN] "time for which oil is given; not there: it never stops" { symbol: "R", formula: "as offered", source: OFFERED }
        dwell_min as dwell: Option<f64> [MIN] "pause until the next run" { symbol: "D", formula: "as offered", source: OFFERED }
        application_section as application_section: Option<i64> [ONE] "number of the section where oil is applied, from 0" { formula: "as offered, or the best point", source: OFFERED }
        application_position as application_position: f64 [ONE] "place in that section, as a share of its length" { formula: "as offered, or the best point", source: OFFERED }
        application_side as application_side: Side [WORD] "side from which oil is applied" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use set_up_noun;
set_up_noun!(noun);

macro_rules! alternative_noun { ($declare:ident) => { $declare! {
    /// A set-up that keeps every limit, with what decides its place.
    Alternative / AlternativeSi, "alternatives" {
        rank as rank: i64 [ONE] "place, the best first" { formula: "within 2 % of the least cost by margin in the loss of oil, overflow, starts, strokes of the valve, n, longest wait; then by cost", source: "rules of our own", class: Class::Closure }
        set_up as set_up: LineSetUp [WORD] "what would be set" {}
        total_per_year as total: f64 [MONEY_A_YEAR] "cost of a year" { formula: "{cost.total_per_year}", source: SAME, class: Class::Derived }
        applied_l_per_year as applied: f64 [L_PER_YEAR] "oil that leaves the applicator" { formula: "{supply.applied_l_per_year}", source: SAME, class: Class::Derived }
        dripped_share as dripped_share: f64 [ONE] "share of the applied oil that drips" { formula: "{supply.dripped_share}", source: SAME, class: Class::Derived }
        overflow_share as overflow_share: f64 [ONE] "share of the oil in the gaps that spills over" { formula: "overflow / dose", source: SAME, class: Class::Derived }
        lowest_fill_reached as lowest_fill_reached: f64 [ONE] "lowest fill of the joints that are reached" { formula: "{fill.lowest_fill_reached}", source: SAME, class: Class::Derived }
        mean_fill as mean_fill: f64 [ONE] "mean fill of all joints" { formula: "{fill.mean_fill}", source: SAME, class: Class::Derived }
        never_reached as never_reached: f64 [ONE] "share of joints that never get oil" { formula: "{fill.never_reached}", source: SAME, class: Class::Derived }
        worst_wait_h as worst_wait: f64 [H] "longest wait, in running time" { formula: "{fill.worst_wait_h}", source: SAME, class: Class::Derived }
        lock_risk as lock_risk: f64 [ONE] "share of the possible speed errors at which a stretch of chain waits too long" { formula: "{fill.lock_risk}", source: SAME, class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use alternative_noun;
alternative_noun!(noun);

macro_rules! rejection_noun { ($declare:ident) => { $declare! {
    /// A set-up that was refused, with the first test that it failed.
    Rejection / RejectionSi, "rejections" {
        reason as reason: Reason [WORD] "the test that it failed" {}
        value as value: Option<f64> [ONE] "what it reached, in the unit beside it; not there where no number is to blame" { formula: "by the test", source: SAME, class: Class::Derived }
        limit as limit: Option<f64> [ONE] "what the test asks for, in the same unit" { formula: "by the test", source: SAME, class: Class::Derived }
        unit as unit: Word [WORD] "that unit" {}
        missed_by as missed_by: f64 [ONE] "how far it missed: a share of the limit, or the difference of two shares" { formula: "value / limit − 1, or value − limit", source: "definition", class: Class::Derived }
        set_up as set_up: LineSetUp [WORD] "the set-up" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use rejection_noun;
rejection_noun!(noun);

macro_rules! refused_noun { ($declare:ident) => { $declare! {
    /// All set-ups that were refused for one reason.
    Refused / RefusedSi, "refused" {
        reason as reason: Reason [WORD] "the test that they failed" {}
        count as count: i64 [ONE] "how many" { formula: "counted", source: SAME, class: Class::Derived }
        means as means: Word [WORD] "what the test says" {}
        nearest as nearest: Word [WORD] "the one that missed by least, in words" {}
        missed_by as missed_by: f64 [ONE] "how far that one missed: a share of the limit, or the difference of two shares" { formula: "least of all", source: "definition", class: Class::Derived }
        cure as cure: Word [WORD] "what would have to change" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use refused_noun;
refused_noun!(noun);

macro_rules! sheet_noun { ($declare:ident) => { $declare! {
    /// The set-up sheet: what the fitter sets, checks and comes back to.
    SetUpSheet / SetUpSheetSi, "sheet" {
        name as name: Word [WORD] "the line" {}
        set_up as set_up: LineSetUp [WORD] "what to set" {}
        clock as clock: Word [WORD] "clock of the timer" {}
        point as point: Word [WORD] "where to apply" {}
        point_why as point_why: Word [WORD] "why there" {}
        worst_wait_h as worst_wait: f64 [H] "longest wait of a joint, in running time" { formula: "{fill.worst_wait_h}", source: SAME, class: Class::Derived }
        lowest_fill_reached as lowest_fill_reached: f64 [ONE] "lowest fill of the joints that are reached" { formula: "{fill.lowest_fill_reached}", source: SAME, class: Class::Derived }
        never_reached as never_reached: f64 [ONE] "share of joints that never get oil" { formula: "{fill.never_reached}", source: SAME, class: Class::Derived }
        applied_l_per_year as applied: f64 [L_PER_YEAR] "oil that leaves the applicator" { formula: "{supply.applied_l_per_year}", source: SAME, class: Class::Derived }
        reservoir_days as reservoir_time: Option<f64> [DAYS] "days until the reservoir wants oil" { formula: "{supply.reservoir_days}", source: SAME, class: Class::Derived }
        line_bore_mm as line_bore: Option<f64> [MM] "bore of the oil line as surveyed" { formula: "{supply.line_bore_mm}", source: "survey" }
        least_line_bore_mm as least_line_bore: Option<f64> [MM] "least bore that leaves the pump its margin when the oil is coldest" { formula: "(128 η L Q/(π Δp))^¼ with what the pump can spare", source: "Hagen-Poiseuille", class: Class::Derived }
        cable_mm2 as cable_area: Option<f64> [MM2] "cross-section of one conductor of the 24 V cable as surveyed" { formula: "{supply.cable_mm2}", source: "survey" }
        least_cable_mm2 as least_cable: Option<f64> [MM2] "smallest nominal cross-section at which the device keeps its voltage" { formula: "{supply.cable_v} and {supply.cable_inrush_v} at {supply.least_voltage_v} or more", source: "IEC 60228", class: Class::Derived }
        check as check: Vec<Word> [WORD] "what to check on the day" {}
        prove as prove: Vec<Word> [WORD] "how to prove it later" {}
        cautions as cautions: Vec<Word> [WORD] "what can hurt people, and whose rules decide" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use sheet_noun;
sheet_noun!(noun);

macro_rules! recommendation_noun { ($declare:ident) => { $declare! {
    /// Which set-up to use, why, and why not the others.
    Recommendation / RecommendationSi, "" {
        feasible as feasible: bool [WORD] "whether any set-up keeps every limit" {}
        candidates as candidates: i64 [ONE] "set-ups that were judged" { formula: "product of the offers", source: SAME, class: Class::Derived }
        feasible_candidates as feasible_candidates: i64 [ONE] "set-ups that keep every limit" { formula: "counted", source: SAME, class: Class::Derived }
        set_up as set_up: Option<LineSetUp> [WORD] "the set-up to use" {}
        why as why: Vec<Word> [WORD] "why this one" {}
        sheet as sheet: Option<SetUpSheet> [WORD] "the set-up sheet" { aside: true }
        line as line: Option<Line> [WORD] "the survey with that set-up" { aside: true }
        evaluation as evaluation: Option<Evaluation> [WORD] "that line, evaluated" { aside: true }
        alternatives as alternatives: Vec<Alternative> [WORD] "set-ups that keep every limit, the best first" { aside: true }
        refused as refused: Vec<Refused> [WORD] "why the others were refused, a reason at a time" {}
        rejections as rejections: Vec<Rejection> [WORD] "refused set-ups one by one, of each reason those first that missed by least" { aside: true }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use recommendation_noun;
recommendation_noun!(noun);
