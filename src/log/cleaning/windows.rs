//! Windows: which of them the log covers, and their means.

use super::clock::Table;
use super::state::State;
use super::{Caution, CleanLog, CleaningReport, Rules, SECOND};
use crate::log::statistics::mean;

/// The window of a row: its piece and its number.
fn window_of(table: &Table, row: usize, length: i64, start: i64) -> (u32, i64) {
    (table.rows[row].piece, (table.rows[row].time - start).div_euclid(length))
}

/// Length and start of the windows, ns; none for single readings.
fn windows(rules: &Rules) -> Option<(i64, i64)> {
    rules.window.map(|length| (((length * SECOND) as i64).max(1), (rules.window_start * SECOND) as i64))
}

/// Marks rows in windows that the log covers too little of; stops count as covered, they are known.
pub(super) fn drop_gaps(table: &mut Table, rules: &Rules, report: &mut CleaningReport) {
    let Some((length, start)) = windows(rules) else { return };
    let numbers: Vec<(u32, i64)> = (0..table.rows.len()).map(|row| window_of(table, row, length, start)).collect();
    let mut rows = table.rows.iter_mut();
    let mut last: Option<(u32, i64)> = None;
    for window in numbers.chunk_by(PartialEq::eq) {
        let now = window[0];
        if let Some(last) = last.filter(|last| last.0 == now.0) {
            report.windows_missing += (now.1 - last.1 - 1) as usize;
        }
        last = Some(now);
        let poor = (window.len() as f64 * table.sample as f64) < rules.coverage * length as f64;
        report.windows_with_gaps += usize::from(poor);
        for row in rows.by_ref().take(window.len()).filter(|row| poor && row.state == State::Running) {
            row.state = State::Gap;
            report.gaps += 1;
        }
    }
}

/// Means of the rows that are left, or these rows.
pub(super) fn means(table: &Table, rules: &Rules, mut report: CleaningReport) -> CleanLog {
    let left: Vec<usize> = (0..table.rows.len()).filter(|row| table.rows[*row].state == State::Running).collect();
    let lengths = windows(rules);
    let same = |a: &usize, b: &usize| {
        lengths
            .is_some_and(|(length, start)| window_of(table, *a, length, start) == window_of(table, *b, length, start))
    };
    let columns = table.covariates.len();
    let mut log = CleanLog {
        times: Vec::new(),
        readings: Vec::new(),
        covariates: vec![Vec::new(); columns],
        rows: Vec::new(),
        starts: Vec::new(),
        pieces: Vec::new(),
        report: CleaningReport::default(),
    };
    // rows before this one whose starts are not told yet
    let mut told = 0;
    for window in left.chunk_by(same) {
        let first = &table.rows[window[0]];
        let known = |column: &Vec<f64>| {
            let known: Vec<f64> = window.iter().map(|row| column[*row]).filter(|x| x.is_finite()).collect();
            (!known.is_empty()).then(|| mean(&known))
        };
        let Some(covariates) = table.covariates.iter().map(known).collect::<Option<Vec<f64>>>() else {
            report.without_covariates += window.len();
            continue;
        };
        let until = window[window.len() - 1] + 1;
        let started = table.rows[told..until].iter().any(|row| row.start && row.piece == first.piece);
        told = until;
        let readings: Vec<f64> = window.iter().map(|row| table.rows[*row].reading).collect();
        log.times.push(match lengths {
            Some((length, start)) => window_of(table, window[0], length, start).1 * length + start,
            None => first.time,
        });
        log.readings.push(mean(&readings));
        for (column, value) in log.covariates.iter_mut().zip(covariates) {
            column.push(value);
        }
        log.rows.push(window.len());
        log.starts.push(started);
        log.pieces.push(first.piece);
        report.kept += window.len();
    }
    match log.readings.first() {
        None => report.cautions.push(Caution::NothingLeft),
        Some(first) if log.readings.len() > 1 && log.readings.iter().all(|x| x == first) => {
            report.cautions.push(Caution::Constant);
        }
        Some(_) => {}
    }
    log.report = report;
    log
}

#[cfg(test)]
mod tests {
    use super::super::{Caution, CleanLog, RawLog, Rules, clean};

    const MINUTE: i64 = 60_000_000_000;

    fn log(minutes: impl Iterator<Item = i64>, rules: Rules) -> CleanLog {
        let times: Vec<i64> = minutes.map(|m| m * MINUTE).collect();
        let readings: Vec<f64> = times.iter().map(|t| 3.0 + (t / MINUTE % 7) as f64 / 100.0).collect();
        let load: Vec<f64> = times.iter().map(|t| (t / MINUTE / 1440) as f64).collect();
        clean(
            &RawLog { times: &times, readings: &readings, covariates: &[&load], running: None, may_be_negative: false },
            &rules,
        )
        .unwrap()
    }

    #[test]
    fn a_day_with_too_little_is_left_out() {
        // 40 % of the second day and all of the fourth are missing
        let found = log((0..5 * 1440).filter(|m| !(2000..2576).contains(m) && m / 1440 != 3), Rules::default());
        assert_eq!(found.times, [0, 2, 4].map(|day| day * 1440 * MINUTE));
        assert_eq!(found.covariates[0], [0.0, 2.0, 4.0]);
        assert_eq!((found.report.windows_with_gaps, found.report.gaps, found.report.windows_missing), (1, 864, 1));
        assert_eq!(found.rows, [1440; 3]);
        // a quarter missing is enough to go by
        let found = log((0..3 * 1440).filter(|m| !(2000..2360).contains(m)), Rules::default());
        assert_eq!(found.rows, [1440, 1080, 1440]);
    }

    #[test]
    fn windows_begin_where_they_are_told() {
        let six_hours = Rules { window_start: 6.0 * 3600.0, ..Rules::default() };
        let found = log(-1440..1440, six_hours);
        assert_eq!(found.times, [-1080 * MINUTE, 360 * MINUTE]);
        assert_eq!(found.report.gaps, 360); // before the first six o'clock; the last window is covered to three quarters
    }

    #[test]
    fn rows_without_covariates_are_counted() {
        let times: Vec<i64> = (0..4).map(|m| m * MINUTE).collect();
        let load = [1.0, f64::NAN, 3.0, 4.0];
        let raw = RawLog {
            times: &times,
            readings: &[3.0, 3.1, 3.2, 3.3],
            covariates: &[&load],
            running: None,
            may_be_negative: false,
        };
        let found = clean(&raw, &Rules { window: None, ..Rules::default() }).unwrap();
        assert_eq!((found.report.without_covariates, found.report.kept), (1, 3));
        assert_eq!(found.readings, [3.0, 3.2, 3.3]);
        let nothing = clean(&raw, &Rules::default()).unwrap();
        assert_eq!((nothing.report.gaps, nothing.report.cautions.last()), (4, Some(&Caution::NothingLeft)));
    }
}
