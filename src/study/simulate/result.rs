//! What became of the joints, under public names.

use crate::noun;
use crate::quantity::{Class, Word};

const WALK: &str = "every passage of every joint, one after the other";

macro_rules! simulated_noun { ($declare:ident) => { $declare! {
    /// A line walked through its weeks: who got oil, who waited, what was used.
    SimulatedLine / SimulatedLineSi, "simulation" {
        name as name: Word [WORD] "name of the line" {}
        weeks as weeks: f64 [ONE] "weeks walked through" { formula: "as asked", source: "survey" }
        joints as joints: i64 [ONE] "joints of a strand" { formula: "{kinematics.joints}", source: "survey" }
        running_h as running: f64 [H] "running time in these weeks" { formula: "sum over the timetable", source: WALK, class: Class::Derived }
        circuits as circuits: f64 [CIRCUITS] "turns of the chain in these weeks" { formula: "travel / {kinematics.length_m}", source: WALK, class: Class::Derived }
        shots as shots: Vec<i64> [ONE] "shots that each joint got, in the order of the chain" { formula: "counted", source: WALK, class: Class::Derived }
        never_reached as never_reached: f64 [ONE] "share of joints that got none" { formula: "joints without a shot / {simulation.joints}", source: WALK, class: Class::Derived }
        never_reached_closed_form as never_reached_closed_form: f64 [ONE] "share that `evaluate` says never gets oil" { formula: "{fill.never_reached}", source: "closed form at one speed without stops", class: Class::Derived }
        wait_circuits as wait_circuits: Vec<i64> [CIRCUITS] "waits between two shots at a joint, shortest first" { formula: "counted", source: WALK, class: Class::Derived }
        wait_counts as wait_counts: Vec<i64> [ONE] "how often each of them occurred" { formula: "counted", source: WALK, class: Class::Derived }
        longest_dry_h as longest_dry: Vec<f64> [H] "longest time of the calendar that each joint was without new oil, from the start and to the end too" { formula: "longest of the times between its shots", source: WALK, class: Class::Derived }
        worst_wait_h as worst_wait: f64 [H] "longest running time between two shots at a joint" { formula: "longest of all joints", source: WALK, class: Class::Derived }
        worst_wait_closed_form_h as worst_wait_closed_form: f64 [H] "the same as `evaluate` says" { formula: "{fill.worst_wait_h}", source: "closed form at one speed without stops", class: Class::Derived }
        worst_wall_wait_h as worst_wall_wait: f64 [H] "longest time of the calendar between two shots at a joint" { formula: "longest of all joints", source: WALK, class: Class::Derived }
        oil_used_l as oil_used: f64 [L] "oil that left the applicator in these weeks" { formula: "shots or flow × points × {circuit.strands}", source: WALK, class: Class::Derived }
        oil_standing_l as oil_standing: f64 [L] "part of it that fell on a standing chain" { formula: "of runs in stops, without an interlock", source: WALK, class: Class::Derived }
        applied_l_per_year as applied: f64 [L_PER_YEAR] "the same for a year of such weeks" { formula: "{simulation.oil_used_l} / {simulation.weeks}", source: WALK, class: Class::Derived }
        lost_run_h as lost_run: f64 [H] "runs of the timer lost in stops, because the interlock held the applicator" { formula: "sum over the timetable", source: WALK, class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use simulated_noun;
simulated_noun!(noun);
