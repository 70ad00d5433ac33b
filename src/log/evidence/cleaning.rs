//! What cleaning did to a log, as people read it.

use super::{LoggedAs, zone::ClockRows};
use crate::log::cleaning::CleaningReport;
use crate::noun;
use crate::quantity::unit::{KW, S};
use crate::quantity::{Class, Word, show};
use std::borrow::Cow;

const COUNT: &str = "rows counted at this step";
const STEPS: &str = "closure of our own from common practice of data loggers";

macro_rules! cleaning_noun { ($declare:ident) => { $declare! {
    /// Seven steps of cleaning with a count for each. Rows left out and rows kept add up to the rows read.
    Cleaning / CleaningSi, "cleaning" {
        rows_read as rows_read: i64 [ONE] "rows of the log" { formula: "rows counted", source: STEPS, class: Class::Closure }
        unreadable as unreadable: i64 [ONE] "left out: no number, or no time stamp" { formula: COUNT, source: STEPS, class: Class::Closure }
        negative as negative: i64 [ONE] "left out: below zero" { formula: COUNT, source: STEPS, class: Class::Closure }
        repeated_hour as repeated_hour: i64 [ONE] "rows in the hour that the clock shows twice in autumn, told apart by their order" { formula: COUNT, source: "time zone database", class: Class::Read }
        skipped_hour as skipped_hour: i64 [ONE] "rows in the hour that the clock should have skipped in spring" { formula: COUNT, source: "time zone database", class: Class::Read }
        clock_shifts as clock_shifts: i64 [ONE] "step 1: times that the clock was found an hour out and put right" { formula: "jumps counted", source: STEPS, class: Class::Closure }
        clock_shifted as clock_shifted: i64 [ONE] "rows moved by that" { formula: COUNT, source: STEPS, class: Class::Closure }
        pieces as pieces: i64 [ONE] "pieces that other changes of the clock split the log into; 1 for a whole log" { formula: "jumps counted, and one", source: STEPS, class: Class::Closure }
        out_of_order as out_of_order: i64 [ONE] "rows that were out of order, and sorted" { formula: COUNT, source: STEPS, class: Class::Closure }
        duplicates_equal as duplicates_equal: i64 [ONE] "left out: same stamp and reading as another row" { formula: COUNT, source: STEPS, class: Class::Closure }
        duplicates_averaged as duplicates_averaged: i64 [ONE] "left out: same stamp as another row, into whose mean they went" { formula: COUNT, source: STEPS, class: Class::Closure }
        stopped as stopped: i64 [ONE] "step 2, left out: the line stood" { formula: COUNT, source: STEPS, class: Class::Closure }
        starts as starts: i64 [ONE] "starts of the line" { formula: "starts counted", source: STEPS, class: Class::Closure }
        start_up as start_up: i64 [ONE] "step 3, left out: just started" { formula: COUNT, source: STEPS, class: Class::Closure }
        warm_up as warm_up: i64 [ONE] "step 4, left out: warming up after a long stop" { formula: COUNT, source: STEPS, class: Class::Closure }
        gaps as gaps: i64 [ONE] "step 5, left out: in a window that the log covers too little of" { formula: COUNT, source: STEPS, class: Class::Closure }
        windows_with_gaps as windows_with_gaps: i64 [ONE] "such windows" { formula: "windows counted", source: STEPS, class: Class::Closure }
        windows_missing as windows_missing: i64 [ONE] "windows without any row, between the first and the last" { formula: "windows counted", source: STEPS, class: Class::Closure }
        spikes as spikes: i64 [ONE] "step 6, left out: far from their neighbours" { formula: COUNT, source: "running median, Hampel (1974)", class: Class::FromMemory }
        without_covariates as without_covariates: i64 [ONE] "left out: no load, speed or temperature to go with them" { formula: COUNT, source: STEPS, class: Class::Closure }
        kept as kept: i64 [ONE] "step 7: rows that went into the means" { formula: "{cleaning.rows_read} less all that was left out", source: STEPS, class: Class::Closure }
        means as means: i64 [ONE] "means (or single readings) that are left" { formula: "windows counted", source: STEPS, class: Class::Closure }
        sample_s as sample: f64 [S] "usual time between rows" { formula: "median of the steps of the stamps", source: STEPS, class: Class::Closure }
        display_step_a as display_step: Option<f64> [A = None] "step of the clamp's display" { formula: "smallest difference between two readings, unless given", source: STEPS, class: Class::Closure }
        display_step_kw as display_step_power: Option<f64> [KW = None] "step of the power meter's display" { formula: "smallest difference between two readings, unless given", source: STEPS, class: Class::Closure }
        cautions as cautions: Vec<Word> [WORD] "what a reader of the log should know" {}
        sentence as sentence: Word [WORD] "the same in one sentence" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use cleaning_noun;
cleaning_noun!(noun);

impl Cleaning {
    /// From the counts of the cleaning, of the clock and of the means that are left.
    pub(super) fn of(
        report: &CleaningReport,
        clock: ClockRows,
        means: usize,
        logged: LoggedAs,
        single: bool,
    ) -> Cleaning {
        let count = |rows: usize| rows as i64;
        let mut cautions: Vec<Word> = report.cautions.iter().map(|caution| Cow::Borrowed(caution.as_str())).collect();
        if clock.skipped_hour > 0 {
            cautions.push(Cow::Borrowed("clock_not_put_forward"));
        }
        let step = |is: LoggedAs, value: f64| (logged == is && value > 0.0).then_some(value);
        Cleaning {
            rows_read: count(report.read),
            unreadable: count(report.unreadable),
            negative: count(report.negative),
            repeated_hour: count(clock.repeated_hour),
            skipped_hour: count(clock.skipped_hour),
            clock_shifts: count(report.clock_shifts),
            clock_shifted: count(report.clock_shifted_rows),
            pieces: count(report.pieces),
            out_of_order: count(report.out_of_order),
            duplicates_equal: count(report.duplicates_equal),
            duplicates_averaged: count(report.duplicates_averaged),
            stopped: count(report.stopped),
            starts: count(report.starts),
            start_up: count(report.start_up),
            warm_up: count(report.warm_up),
            gaps: count(report.gaps),
            windows_with_gaps: count(report.windows_with_gaps),
            windows_missing: count(report.windows_missing),
            spikes: count(report.spikes),
            without_covariates: count(report.without_covariates),
            kept: count(report.kept),
            means: count(means),
            sample_s: S.from_si(report.sample),
            display_step_a: step(LoggedAs::Current, report.display_step),
            display_step_kw: step(LoggedAs::Power, KW.from_si(report.display_step)),
            cautions,
            sentence: Cow::Owned(sentence(report, clock, means, single)),
        }
    }
}

/// The counts that are not nothing, in the order of the steps, and what a reader should know.
fn sentence(report: &CleaningReport, clock: ClockRows, means: usize, single: bool) -> String {
    let steps = [
        (report.unreadable, "unreadable"),
        (report.negative, "below zero"),
        (report.duplicates_equal + report.duplicates_averaged, "with the stamp of another"),
        (report.stopped, "of a standing line"),
        (report.start_up, "just started"),
        (report.warm_up, "warming up"),
        (report.gaps, "in windows with gaps"),
        (report.spikes, "spikes"),
        (report.without_covariates, "without load, speed or temperature"),
    ];
    let out: Vec<String> =
        steps.iter().filter(|(rows, _)| *rows > 0).map(|(rows, what)| format!("{rows} {what}")).collect();
    let out = if out.is_empty() { "none left out".into() } else { format!("left out: {}", out.join(", ")) };
    let share = show::brief(100.0 * report.kept as f64 / (report.read as f64).max(1.0));
    let kept = if single { "were kept as they are".into() } else { format!("went into {means} means") };
    let mut said = format!("Of {} rows {} ({share} %) {kept}; {out}.", report.read, report.kept);
    let cautions = report.cautions.iter().map(|caution| caution.said());
    let clock = (clock.skipped_hour > 0).then_some(
        "Some stamps lie in the hour that the clock skips in spring: this logger stays on winter time, or is of another \
         time zone.",
    );
    for caution in cautions.chain(clock) {
        said.push(' ');
        said.push_str(caution);
    }
    said
}
