//! Cleaning: seven steps from what a logger wrote to readings of a line at work, with a count for every step.
//!
//! In this order: clock, stops, starts, warm-up, gaps, spikes, means. Nothing is interpolated, and no row goes unsaid: the
//! report's counts add up to the rows read. Daily means are the usual unit, since they resemble each other less than
//! minutes do.
//!
//! Times are whole nanoseconds, as time stamps come; durations are seconds.

mod calendar; // where a window begins and ends
mod clock; // clock changes, order, duplicated stamps
mod report; // counts and cautions
mod spikes; // readings far from their neighbours
mod state; // stopped, starting, warming up
mod windows; // coverage and means

pub use calendar::can_be_window;
pub use report::{Caution, CleaningReport};

use crate::error::{Code, Error, Result};
use crate::log::statistics::median;
use calendar::Calendar;
use clock::Row;
use jiff::tz::TimeZone;
use state::State;

/// Nanoseconds in a second.
const SECOND: f64 = 1e9;
/// Stamps farther than this from 1970, ns, are no dates but marks for a missing one; differences of all others fit.
const FARTHEST: i64 = i64::MAX / 2;

/// A log as it was read, rows in the order of the file.
#[derive(Debug, Clone, Copy)]
pub struct RawLog<'a> {
    /// Time stamps, ns from 1970; beyond 146 years a missing stamp.
    pub times: &'a [i64],
    /// Readings: current, or power, which is better.
    pub readings: &'a [f64],
    /// Covariates such as load, one slice for each; NaN where one is missing. May be empty.
    pub covariates: &'a [&'a [f64]],
    /// Whether the line ran, where that was logged.
    pub running: Option<&'a [bool]>,
    /// Whether readings below zero are possible, as with power on a line that runs downhill; else they are left out.
    pub may_be_negative: bool,
}

/// How to clean; durations in s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rules<'a> {
    /// Reading of the drive without load, in the unit of the readings: below half of it the line stands.
    pub no_load: Option<f64>,
    /// Rated reading, against logs in the wrong unit.
    pub rated: Option<f64>,
    /// Left out after each start, 60.
    pub start_up: f64,
    /// Left out after a long stop: 3600; 10800 for ovens and cold rooms.
    pub warm_up: f64,
    /// A stop longer than this is long, 14400.
    pub long_stop: f64,
    /// Whether a gap in the log is a stop, as with a logger that is off when the line is.
    pub gaps_are_stops: bool,
    /// Window of a mean, 86400 for the days of the calendar, see [`can_be_window`]; none to keep single readings, and then
    /// no rule for gaps.
    pub window: Option<f64>,
    /// Zone whose clock the windows follow; none for a bare clock, whose times are what it showed.
    pub zone: Option<&'a TimeZone>,
    /// Least share of a window that the log covers, stops counted as covered; 0.7.
    pub coverage: f64,
    /// Step of the display, in the unit of the readings; none to take the smallest difference in the log.
    pub display_step: Option<f64>,
}

impl Default for Rules<'_> {
    fn default() -> Self {
        Rules {
            no_load: None,
            rated: None,
            start_up: 60.0,
            warm_up: 3600.0,
            long_stop: 14_400.0,
            gaps_are_stops: false,
            window: Some(86_400.0),
            zone: None,
            coverage: 0.7,
            display_step: None,
        }
    }
}

/// A clean log: means of windows, or single readings, in the order of time.
#[derive(Debug, Clone, PartialEq)]
pub struct CleanLog {
    /// Start of the window, or time of the reading, ns.
    pub times: Vec<i64>,
    /// End of the window, or time of the reading, ns.
    pub ends: Vec<i64>,
    /// Mean readings.
    pub readings: Vec<f64>,
    /// Mean covariates.
    pub covariates: Vec<Vec<f64>>,
    /// Rows in each mean.
    pub rows: Vec<usize>,
    /// Whether the line was started since the reading before, or in the window.
    pub starts: Vec<bool>,
    /// Which piece of a log that a clock change split, from 0. Times of two pieces cannot be compared.
    pub pieces: Vec<u32>,
    /// What was done.
    pub report: CleaningReport,
}

/// Cleans a log.
///
/// Fails for an empty log, columns of unlike length, windows that do not fit a clock, readings mostly below zero, and
/// readings whose unit cannot be that of the rated one. Everything else is a counted repair or a caution. Source: closure of our own from common practice of
/// data loggers; the running median and its limit after Hampel (1974).
///
/// ```
/// use pinfilm::log::cleaning::{RawLog, Rules, clean};
/// let minute = 60_000_000_000;
/// let times: Vec<i64> = (0..3 * 1440).map(|row| row * minute).collect();
/// let current: Vec<f64> = times.iter().map(|t| if t / minute % 1440 < 480 { 0.1 } else { 3.0 }).collect();
/// let raw = RawLog { times: &times, readings: &current, covariates: &[], running: None, may_be_negative: false };
/// let log = clean(&raw, &Rules { no_load: Some(1.8), ..Rules::default() })?;
/// assert_eq!((log.readings, log.report.stopped, log.report.warm_up), (vec![3.0; 3], 3 * 480, 3 * 59));
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn clean(raw: &RawLog, rules: &Rules) -> Result<CleanLog> {
    let calendar =
        rules.window.map(|seconds| Calendar::new(seconds, rules.zone.unwrap_or(&TimeZone::UTC))).transpose()?;
    let mut report = CleaningReport { read: raw.times.len(), ..CleaningReport::default() };
    let readable = readable(raw, &mut report)?;
    let mut table = clock::in_order(raw, readable, &mut report);
    state::mark(&mut table, rules, &mut report);
    check_unit(&table.rows, rules)?;
    let Some(calendar) = calendar else {
        spikes::drop(&mut table, rules, &mut report);
        return Ok(windows::means(&table, None, report));
    };
    let windows = windows::of_rows(&table, &calendar)?;
    windows::drop_gaps(&mut table, &windows, &calendar, rules, &mut report);
    spikes::drop(&mut table, rules, &mut report);
    Ok(windows::means(&table, Some(&windows), report))
}

/// File positions of the rows that hold a usable reading.
fn readable(raw: &RawLog, report: &mut CleaningReport) -> Result<Vec<usize>> {
    let n = raw.times.len();
    let lengths =
        raw.covariates.iter().map(|x| x.len()).chain(raw.running.map(<[bool]>::len)).chain([raw.readings.len()]);
    if let Some(odd) = lengths.into_iter().find(|length| *length != n) {
        return Err(Error::new(
            Code::Inconsistent,
            "log",
            format!("a column of the log has {odd} rows and the time stamps {n}: give one value for each stamp"),
        )
        .number(odd as f64));
    }
    let finite: Vec<usize> = (0..n)
        .filter(|row| raw.readings[*row].is_finite() && (-FARTHEST..=FARTHEST).contains(&raw.times[*row]))
        .collect();
    report.unreadable = n - finite.len();
    if finite.is_empty() {
        return Err(Error::new(Code::Missing, "log", "the log holds no reading: check the column that was read"));
    }
    if raw.may_be_negative {
        return Ok(finite);
    }
    let (good, negative): (Vec<usize>, Vec<usize>) = finite.iter().partition(|row| raw.readings[**row] >= 0.0);
    report.negative = negative.len();
    // a clamp the wrong way round shows zero while the line stands
    let above = good.iter().filter(|row| raw.readings[**row] > 0.0).count();
    if negative.len() > above {
        return Err(Error::new(
            Code::OutOfRange,
            "log",
            format!(
                "{} readings are below zero and {above} above: turn the clamp round, check the column, or say that readings \
                 may be negative, as power of a line that runs downhill",
                negative.len()
            ),
        )
        .limit("0 or more"));
    }
    Ok(good)
}

/// Refuses readings of a running line that are far from rated: milliamperes, or per cent of rated.
fn check_unit(rows: &[Row], rules: &Rules) -> Result<()> {
    let Some(rated) = rules.rated else { return Ok(()) };
    let running = rows.iter().filter(|row| row.state == State::Running);
    // without a rule for stops these are among the rows, so the readings above zero are looked at
    let mut above: Vec<f64> = running.map(|row| row.reading.abs()).filter(|reading| *reading > 0.0).collect();
    if above.is_empty() {
        return Ok(());
    }
    let usual = median(&mut above);
    let times = usual / rated;
    if (0.01..=3.0).contains(&times) {
        return Ok(());
    }
    let message =
        format!("the usual reading is {usual:.3}, {times:.3} times rated: give it in the unit of the rated one");
    Err(Error::new(Code::Dimension, "log", message).number(usual).limit(format!("0.01 to 3 times {rated}")))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const MINUTE: i64 = 60_000_000_000;

    fn log(times: &[i64], readings: &[f64], rules: Rules) -> Result<CleanLog> {
        clean(&RawLog { times, readings, covariates: &[], running: None, may_be_negative: false }, &rules)
    }

    const SINGLE: Rules<'_> = Rules {
        no_load: Some(1.0),
        rated: None,
        start_up: 60.0,
        warm_up: 3600.0,
        long_stop: 14_400.0,
        gaps_are_stops: false,
        window: None,
        zone: None,
        coverage: 0.7,
        display_step: Some(0.01),
    };

    proptest! {
        #[test]
        fn no_row_is_dropped_unsaid(
            rows in prop::collection::vec(
                (prop_oneof![8 => Just(1i64), 1 => -200i64..200, 1 => Just(0), 1 => Just(-60)],
                 prop_oneof![6 => 2.0..3.0f64, 1 => Just(0.0), 1 => Just(f64::NAN), 1 => Just(-0.5), 1 => Just(30.0)],
                 prop_oneof![9 => 50.0..90.0f64, 1 => Just(f64::NAN)]),
                1..400,
            ),
            window in prop_oneof![Just(None), Just(Some(600.0)), Just(Some(86_400.0))],
            gaps_are_stops in any::<bool>(),
        ) {
            let mut now = 1_000_000i64;
            let times: Vec<i64> = rows.iter().map(|row| { now += row.0; now * MINUTE }).collect();
            let readings: Vec<f64> = rows.iter().map(|row| row.1).collect();
            let load: Vec<f64> = rows.iter().map(|row| row.2).collect();
            let raw = RawLog { times: &times, readings: &readings, covariates: &[&load], running: None, may_be_negative: false };
            if let Ok(found) = clean(&raw, &Rules { window, gaps_are_stops, ..SINGLE }) {
                prop_assert_eq!(found.report.accounted(), rows.len());
                prop_assert_eq!(found.rows.iter().sum::<usize>(), found.report.kept);
                let n = found.times.len();
                prop_assert_eq!([found.readings.len(), found.covariates[0].len(), found.starts.len(), found.pieces.len()], [n; 4]);
                prop_assert!(found.readings.iter().chain(&found.covariates[0]).all(|x| x.is_finite()));
                let keys: Vec<(u32, i64)> = found.pieces.iter().copied().zip(found.times.iter().copied()).collect();
                prop_assert!(keys.windows(2).all(|w| w[0] < w[1]));
            }
        }

        #[test]
        fn the_order_of_a_shuffled_file_does_not_matter(swaps in prop::collection::vec((0usize..300, 0usize..300), 200..300)) {
            let mut order: Vec<usize> = (0..300).collect();
            swaps.iter().for_each(|(a, b)| order.swap(*a, *b));
            let reading = |row: usize| if row % 90 < 20 { 0.1 } else { 2.0 + (row * 37 % 23) as f64 / 50.0 };
            let times: Vec<i64> = (0..300).map(|row| row as i64 * MINUTE).collect();
            let readings: Vec<f64> = (0..300).map(reading).collect();
            let sorted = log(&times, &readings, SINGLE).unwrap();
            let times: Vec<i64> = order.iter().map(|row| times[*row]).collect();
            let shuffled: Vec<f64> = order.iter().map(|row| readings[*row]).collect();
            let found = log(&times, &shuffled, SINGLE).unwrap();
            prop_assert_eq!((&found.times, &found.readings, &found.starts), (&sorted.times, &sorted.readings, &sorted.starts));
            prop_assert!(found.report.cautions.contains(&Caution::Unsorted) && found.report.out_of_order > 0);
        }
    }

    #[test]
    fn bad_logs_are_refused() {
        let code = |times: &[i64], readings: &[f64], rules| log(times, readings, rules).unwrap_err().code;
        let times: Vec<i64> = (0..50).map(|row| row * MINUTE).collect();
        assert_eq!(code(&[], &[], SINGLE), Code::Missing);
        assert_eq!(code(&times, &[f64::NAN; 50], SINGLE), Code::Missing);
        assert_eq!(code(&times, &[1.0; 49], SINGLE), Code::Inconsistent);
        assert_eq!(code(&times, &[-3.0; 50], SINGLE), Code::OutOfRange);
        let rated = Rules { rated: Some(3.5), ..SINGLE };
        for wrong in [2600.0, 74.0, 0.026] {
            assert_eq!(code(&times, &[wrong; 50], Rules { no_load: None, ..rated }), Code::Dimension);
        }
        assert!(log(&times, &[2.6; 50], rated).is_ok());
        // stops do not hide the unit
        let stops: Vec<f64> = (0..50).map(|row| if row % 3 == 0 { 2600.0 } else { 0.0 }).collect();
        assert_eq!(code(&times, &stops, Rules { no_load: None, ..rated }), Code::Dimension);
        let turned: Vec<f64> = (0..50).map(|row| if row % 3 == 0 { -2.6 } else { -0.0 }).collect();
        assert_eq!(code(&times, &turned, SINGLE), Code::OutOfRange);
    }

    #[test]
    fn missing_stamps_are_counted() {
        let mut times: Vec<i64> = (0..50).map(|row| row * MINUTE).collect();
        (times[7], times[8]) = (i64::MIN, i64::MAX);
        assert_eq!(log(&times, &[2.0; 50], SINGLE).unwrap().report.unreadable, 2);
    }

    #[test]
    fn a_stuck_log_is_a_caution() {
        let times: Vec<i64> = (0..50).map(|row| row * MINUTE).collect();
        let found = log(&times, &[2.0; 50], SINGLE).unwrap();
        assert!(found.report.cautions.contains(&Caution::Constant));
        let found = log(&times, &[2.0; 50], Rules { no_load: None, ..SINGLE }).unwrap();
        assert!(found.report.cautions.contains(&Caution::NoStopRule));
    }
}
