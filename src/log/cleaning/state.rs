//! Stopped, starting, warming up: what is not a line at work.

use super::clock::Table;
use super::{Caution, CleaningReport, Rules, SECOND};

/// A reading below this share of the no-load reading is a line that stands.
const STANDS_BELOW: f64 = 0.5;

/// What a row is, at the step where that was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum State {
    Running,
    Stopped,
    StartUp,
    WarmUp,
    Gap,
    Spike,
}

/// Marks rows of a line that stood, was just started, or was warming up.
///
/// The start is the first running row after a stop; the length of the stop counts from its first row. A line found
/// running at the beginning of a log, or of a piece, is taken for warm.
pub(super) fn mark(table: &mut Table, rules: &Rules, report: &mut CleaningReport) {
    if !table.signalled && rules.no_load.is_none() {
        report.cautions.push(Caution::NoStopRule);
    }
    let nanoseconds = |seconds: f64| (seconds * SECOND) as i64;
    let (start_up, warm_up, long_stop) =
        (nanoseconds(rules.start_up), nanoseconds(rules.warm_up), nanoseconds(rules.long_stop));
    let mut stopped_since: Option<i64> = None;
    let (mut starting_until, mut cold_until) = (i64::MIN, i64::MIN);
    let mut last: Option<(i64, u32)> = None;
    for row in &mut table.rows {
        if last.is_some_and(|(_, piece)| piece != row.piece) {
            (last, stopped_since, starting_until, cold_until) = (None, None, i64::MIN, i64::MIN);
        }
        if let Some((time, _)) = last.filter(|_| rules.gaps_are_stops)
            && row.time - time > 2 * table.sample
        {
            stopped_since.get_or_insert(time);
        }
        last = Some((row.time, row.piece));
        let stands =
            if table.signalled { !row.signal } else { rules.no_load.is_some_and(|i0| row.reading < STANDS_BELOW * i0) };
        if stands {
            stopped_since.get_or_insert(row.time);
            row.state = State::Stopped;
            report.stopped += 1;
            continue;
        }
        if let Some(since) = stopped_since.take() {
            row.start = true;
            report.starts += 1;
            starting_until = row.time.saturating_add(start_up);
            if row.time - since > long_stop {
                cold_until = row.time.saturating_add(warm_up);
            }
        }
        if row.time < starting_until {
            row.state = State::StartUp;
            report.start_up += 1;
        } else if row.time < cold_until {
            row.state = State::WarmUp;
            report.warm_up += 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::{CleanLog, RawLog, Rules, clean};

    const MINUTE: i64 = 60_000_000_000;
    const RULES: Rules<'_> = Rules {
        no_load: Some(1.0),
        rated: None,
        start_up: 90.0,
        warm_up: 1800.0,
        long_stop: 14_400.0,
        gaps_are_stops: false,
        window: None,
        zone: None,
        coverage: 0.7,
        display_step: Some(1.0),
    };

    /// One row a minute; `stops` are minutes from and to.
    fn log(stops: &[(i64, i64)], rules: Rules, leave_out: bool) -> CleanLog {
        let stands = |minute: &i64| stops.iter().any(|stop| (stop.0..stop.1).contains(minute));
        let times: Vec<i64> = (0..1000).filter(|m| !leave_out || !stands(m)).map(|m| m * MINUTE).collect();
        let readings: Vec<f64> = times.iter().map(|t| if stands(&(t / MINUTE)) { 0.1 } else { 3.0 }).collect();
        clean(
            &RawLog { times: &times, readings: &readings, covariates: &[], running: None, may_be_negative: false },
            &rules,
        )
        .unwrap()
    }

    #[test]
    fn short_and_long_stops() {
        let found = log(&[(100, 130), (300, 600)], RULES, false).report;
        // two rows lie within 90 s of each start, 28 more within half an hour of the second
        assert_eq!((found.stopped, found.starts, found.start_up, found.warm_up), (330, 2, 4, 28));
    }

    #[test]
    fn a_short_stop_does_not_end_the_warm_up() {
        let found = log(&[(300, 600), (610, 615)], RULES, false).report;
        assert_eq!((found.starts, found.start_up, found.warm_up), (2, 4, 30 - 5 - 4));
    }

    #[test]
    fn a_logger_that_is_off_with_the_line() {
        let kept = log(&[(300, 600)], RULES, true).report;
        assert_eq!((kept.starts, kept.kept), (0, 700));
        let found = log(&[(300, 600)], Rules { gaps_are_stops: true, ..RULES }, true);
        assert_eq!((found.report.starts, found.report.start_up, found.report.warm_up), (1, 2, 28));
        assert_eq!(found.starts.iter().position(|start| *start), Some(300)); // the first row kept after the start
    }

    #[test]
    fn a_run_signal_rules() {
        let times: Vec<i64> = (0..10).map(|m| m * MINUTE).collect();
        let running: Vec<bool> = (0..10).map(|m| !(3..6).contains(&m)).collect();
        let raw = RawLog {
            times: &times,
            readings: &[0.2; 10],
            covariates: &[],
            running: Some(&running),
            may_be_negative: false,
        };
        assert_eq!(clean(&raw, &RULES).unwrap().report.stopped, 3);
    }
}
