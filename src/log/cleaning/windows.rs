//! Windows: which of them the log covers, and their means.

use super::calendar::{Calendar, Window};
use super::clock::Table;
use super::state::State;
use super::{Caution, CleanLog, CleaningReport, Rules};
use crate::error::Result;
use crate::log::statistics::mean;

/// The window of each row of a table, in its order.
pub(super) fn of_rows(table: &Table, calendar: &Calendar) -> Result<Vec<Window>> {
    let mut windows: Vec<Window> = Vec::with_capacity(table.rows.len());
    for row in &table.rows {
        let last = windows.last().filter(|last| (last.from..last.until).contains(&row.time));
        windows.push(match last {
            Some(last) => *last,
            None => calendar.around(row.time)?,
        });
    }
    Ok(windows)
}

/// Marks rows in windows that the log covers too little of; stops count as covered, they are known.
pub(super) fn drop_gaps(
    table: &mut Table,
    windows: &[Window],
    calendar: &Calendar,
    rules: &Rules,
    report: &mut CleaningReport,
) {
    let numbers: Vec<(u32, Window)> =
        table.rows.iter().zip(windows).map(|(row, window)| (row.piece, *window)).collect();
    let mut rows = table.rows.iter_mut();
    let mut last: Option<(u32, Window)> = None;
    for same in numbers.chunk_by(PartialEq::eq) {
        let (piece, window) = same[0];
        if let Some((_, last)) = last.filter(|last| last.0 == piece) {
            report.windows_missing += ((window.from - last.until) as f64 / calendar.usual as f64).round() as usize;
        }
        last = Some((piece, window));
        let poor = (same.len() as f64 * table.sample as f64) < rules.coverage * (window.until - window.from) as f64;
        report.windows_with_gaps += usize::from(poor);
        for row in rows.by_ref().take(same.len()).filter(|row| poor && row.state == State::Running) {
            row.state = State::Gap;
            report.gaps += 1;
        }
    }
}

/// Means of the rows that are left over the window of each, or without windows these rows.
pub(super) fn means(table: &Table, windows: Option<&[Window]>, mut report: CleaningReport) -> CleanLog {
    let left: Vec<usize> = (0..table.rows.len()).filter(|row| table.rows[*row].state == State::Running).collect();
    let same = |a: &usize, b: &usize| {
        windows.is_some_and(|windows| table.rows[*a].piece == table.rows[*b].piece && windows[*a] == windows[*b])
    };
    let columns = table.covariates.len();
    let mut log = CleanLog {
        times: Vec::new(),
        ends: Vec::new(),
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
        let span = windows.map_or(Window { from: first.time, until: first.time }, |windows| windows[window[0]]);
        log.times.push(span.from);
        log.ends.push(span.until);
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
        Some(first)
            if log.readings.len() > 1 && log.readings.iter().all(|x| (x - first).abs() <= 1e-12 * first.abs()) =>
        {
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
    use jiff::tz::{Offset, TimeZone};

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
    fn days_begin_at_midnight_of_the_zone() {
        let zone = TimeZone::fixed(Offset::from_hours(-6).unwrap());
        let found = log(-1440..1440, Rules { zone: Some(&zone), ..Rules::default() });
        assert_eq!(found.times, [-1080 * MINUTE, 360 * MINUTE]);
        assert_eq!(found.ends, [360 * MINUTE, 1800 * MINUTE]);
        assert_eq!(found.report.gaps, 360); // before the first midnight; the last window is covered to three quarters
    }

    #[test]
    fn days_on_which_the_clock_is_changed_are_whole_days() {
        let zone = TimeZone::get("Europe/Vienna").unwrap();
        // 28 March to 1 April and 24 to 28 October 2025, by the minute, UTC
        for (midnight, lengths) in [(20_175 * 1440 - 60, [24, 24, 23, 24]), (20_385 * 1440 - 120, [24, 24, 25, 24])] {
            let length = 60 * lengths.iter().sum::<i64>();
            let found =
                log(midnight..midnight + length, Rules { zone: Some(&zone), coverage: 1.0, ..Rules::default() });
            assert_eq!(found.rows, lengths.map(|hours| 60 * hours as usize));
            assert_eq!((found.report.windows_with_gaps, found.report.windows_missing), (0, 0));
            // 20 hours of the day of the change are 87 % of the short day, and 80 % of the long one
            let off = midnight + 68 * 60..midnight + (48 + lengths[2]) * 60;
            let logged = (midnight..midnight + length).filter(|m| !off.contains(m));
            let found = log(logged, Rules { zone: Some(&zone), coverage: 0.82, ..Rules::default() });
            assert_eq!(found.rows.len(), if lengths[2] == 23 { 4 } else { 3 });
        }
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
