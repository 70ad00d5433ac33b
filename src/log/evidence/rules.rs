//! How a log is to be cleaned, and how sure a verdict is to be.

use crate::quantity::{Class, above, between, up_to};
use crate::{choice, noun};

choice! {
    /// What was logged.
    LoggedAs {
        /// Current, in amperes: most of it may magnetise the motor.
        Current = "current_a",
        /// Electrical power, in kilowatts: the better witness.
        Power = "power_kw",
    }
}

macro_rules! log_rules_noun { ($declare:ident) => { $declare! {
    /// How to clean a log. What is not given comes from the line, where one is given.
    LogRules / LogRulesSi, "rules" {
        no_load_current_a as no_load_current: Option<f64> [A = None] "current without load: below half of it the line stands; not given: that of the line's motor" { allowed: up_to(0.0, 5000.0) }
        no_load_power_kw as no_load_power: Option<f64> [KW = None] "power without load, likewise" { allowed: up_to(0.0, 5000.0) }
        rated_current_a as rated_current: Option<f64> [A = None] "rated current, against logs in the wrong unit; not given: that of the line's motor" { allowed: up_to(0.0, 5000.0) }
        rated_power_kw as rated_power: Option<f64> [KW = None] "rated electrical power, likewise" { allowed: up_to(0.0, 5000.0) }
        start_up_s as start_up: f64 [S = 60.0] "left out after each start" { allowed: between(0.0, 86_400.0), class: Class::CommonPractice, source: "inrush and run-up of conveyor drives" }
        warm_up_min as warm_up: Option<f64> [MIN = None] "left out after a long stop; not given: 60, and 180 for ovens and freezers" { allowed: between(0.0, 10_000.0), class: Class::CommonPractice, source: "gear oil and chain come to temperature" }
        long_stop_h as long_stop: f64 [H = 4.0] "a stop longer than this is long" { allowed: between(0.0, 10_000.0), class: Class::CommonPractice, source: "gear oil cools" }
        gaps_are_stops as gaps_are_stops: bool [WORD = false] "whether a gap in the log is a stop, as with a logger that is off when the line is" {}
        may_be_negative as may_be_negative: bool [WORD = false] "whether readings below zero are real, as power on a line that runs downhill; else they are left out" {}
        window_h as window: f64 [H = 24.0] "length of the means by the clock of the log: whole days from midnight, or hours or minutes that go into a day; 0 to keep single readings" { allowed: between(0.0, 10_000.0), class: Class::Closure, source: "days resemble each other less than minutes do" }
        coverage_pct as coverage: f64 [PCT = 70.0] "least share of a window that the log covers, stops counted as covered" { allowed: between(0.0, 100.0), class: Class::CommonPractice, source: "common practice" }
        display_step_a as display_step: Option<f64> [A = None] "step of the display; not given: the smallest difference in the log" { allowed: above(0.0) }
        display_step_kw as display_step_power: Option<f64> [KW = None] "the same of a power meter" { allowed: above(0.0) }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use log_rules_noun;
log_rules_noun!(noun);

macro_rules! proof_noun { ($declare:ident) => { $declare! {
    /// How sure a verdict is to be, and what is known of the measurement.
    Proof / ProofSi, "proof" {
        confidence_pct as confidence: f64 [PCT = 95.0] "confidence of the intervals" { allowed: between(50.0, 99.9), class: Class::CommonPractice, source: "two-sided 5 %" }
        power_pct as power: f64 [PCT = 80.0] "probability with which a change is to be seen" { allowed: between(50.0, 99.9), class: Class::CommonPractice, source: "usual power of a test" }
        systematic_pct as systematic: f64 [PCT = 0.3] "spread of what stays the same within a period (voltage, gear oil, how the clamp sits); no number of days removes it" { allowed: between(0.0, 50.0), class: Class::CommonPractice, source: "common practice, no source" }
        systematic_independence as systematic_independence: f64 [ONE = 1.0] "how far that differs before and after: 1 for a clamp that was fitted anew, towards 0 for one left in place" { allowed: between(0.0, 1.0), class: Class::Closure, source: "cautious end" }
        expected_saving_pct as expected_saving: Option<f64> [PCT = None] "saving that the log is to show, for the days that it takes; not given: the one found" { allowed: up_to(0.0, 100.0) }
        settle_days as settle: f64 [DAYS = 0.0] "left out after the day of the change, until oil has crept in" { allowed: between(0.0, 1000.0) }
        months_after as months_after: Option<f64> [ONE = None] "months after the change, for the guideline's second factor; not given: those of the log" { allowed: up_to(0.0, 1200.0) }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use proof_noun;
proof_noun!(noun);

macro_rules! log_columns_noun {
    ($declare:ident) => {
        $declare! {
            /// What is logged in one row, under the names that the columns of a log have.
            LogRow / LogRowSi, "row" {
                current_a as current: Option<f64> [A = None] "current where the clamp sits" { symbol: "I" }
                power_kw as power: Option<f64> [KW = None] "electrical power, the better witness" { symbol: "P₁" }
                load_pct as load_share: Option<f64> [PCT = None] "load of the line, of its usual or full one" {}
                load_kg_per_m as load: Option<f64> [KG_PER_M = None] "load of the line" {}
                speed_m_per_min as speed: Option<f64> [M_PER_MIN = None] "chain speed" { symbol: "v" }
                temperature_c as temperature: Option<f64> [C = None] "temperature of the room, or of the gear" {}
            }
        }
    };
}
#[cfg(feature = "python")]
pub(crate) use log_columns_noun;
log_columns_noun!(noun);
