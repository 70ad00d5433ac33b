//! Clock changes, order and duplicated stamps: first of the steps, since all others go by time.

use super::state::State;
use super::{Caution, CleaningReport, RawLog, SECOND};
use crate::log::statistics::{mean, median};

/// An hour, ns: what daylight saving moves a clock by.
const HOUR: i64 = 3_600_000_000_000;
/// How far from an hour a change is still taken for daylight saving, ns; a sample if that is longer.
const ABOUT: i64 = 300_000_000_000;
/// Backward jumps from which a file is in no order: this many, and this share of its rows.
const NO_ORDER: (usize, f64) = (10, 0.01);
/// A jump back over fewer rows than this share of what a running clock would have written there is a late row.
const OVERLAP: f64 = 0.75;

/// Rows after which a file that went on from where it was before a jump back only had late rows in between.
const LATE: usize = 12;

/// A row on its way through the steps.
#[derive(Debug, Clone, Copy)]
pub(super) struct Row {
    /// Time, ns, clock put right.
    pub time: i64,
    pub piece: u32,
    pub reading: f64,
    /// Whether the run signal said so; true where there is none.
    pub signal: bool,
    pub state: State,
    /// Whether the line was started between the running row before and this one.
    pub start: bool,
}

/// Rows in the order of time, with their covariates in columns.
pub(super) struct Table {
    pub rows: Vec<Row>,
    pub covariates: Vec<Vec<f64>>,
    /// Usual time between rows, ns; at least 1.
    pub sample: i64,
    /// Whether there was a run signal.
    pub signalled: bool,
}

/// Puts `file` positions in order: clock, sort, duplicates.
pub(super) fn in_order(raw: &RawLog, mut file: Vec<usize>, report: &mut CleaningReport) -> Table {
    let steps = |file: &[usize], sign: i64| {
        file.windows(2).filter(|w| (raw.times[w[1]].saturating_sub(raw.times[w[0]])).signum() == sign).count()
    };
    if steps(&file, -1) > 4 * steps(&file, 1) {
        file.reverse();
        report.cautions.push(Caution::Reversed);
    }
    let stamps: Vec<i64> = file.iter().map(|row| raw.times[*row]).collect();
    let sample = usual_step(&stamps);
    let (times, pieces) = put_right(&stamps, sample, report);

    let mut order: Vec<usize> = (0..file.len()).collect();
    order.sort_by_key(|i| (pieces[*i], times[*i]));
    report.out_of_order = out_of_order(&times, &pieces);
    report.pieces = pieces.last().map_or(0, |last| *last as usize + 1);
    // what the file's jumps hid, the sorted stamps show
    let sorted: Vec<i64> = order.iter().map(|i| times[*i]).collect();
    let sample = usual_step(&sorted);
    report.sample = sample as f64 / SECOND;

    let mut table = Table {
        rows: Vec::with_capacity(order.len()),
        covariates: vec![Vec::with_capacity(order.len()); raw.covariates.len()],
        sample,
        signalled: raw.running.is_some(),
    };
    for same in order.chunk_by(|a, b| (pieces[*a], times[*a]) == (pieces[*b], times[*b])) {
        join(raw, &file, same, (times[same[0]], pieces[same[0]]), &mut table, report);
    }
    if report.duplicates_averaged > 0 {
        report.cautions.push(Caution::DuplicatesDiffer);
    }
    table
}

/// Adds rows with one stamp as one row.
fn join(raw: &RawLog, file: &[usize], same: &[usize], at: (i64, u32), table: &mut Table, report: &mut CleaningReport) {
    let readings: Vec<f64> = same.iter().map(|i| raw.readings[file[*i]]).collect();
    let alike = readings.iter().all(|reading| *reading == readings[0]);
    if alike {
        report.duplicates_equal += same.len() - 1;
    } else {
        report.duplicates_averaged += same.len() - 1;
    }
    let signal = raw.running.is_none_or(|running| same.iter().any(|i| running[file[*i]]));
    table.rows.push(Row {
        time: at.0,
        piece: at.1,
        reading: if alike { readings[0] } else { mean(&readings) },
        signal,
        state: State::Running,
        start: false,
    });
    for (column, raw) in table.covariates.iter_mut().zip(raw.covariates) {
        let known: Vec<f64> = same.iter().map(|i| raw[file[*i]]).filter(|x| x.is_finite()).collect();
        column.push(if known.is_empty() { f64::NAN } else { mean(&known) });
    }
}

/// Median time from a row to a later one; 1 if no row is later than the one before.
fn usual_step(stamps: &[i64]) -> i64 {
    let steps = stamps.windows(2).map(|w| w[1].saturating_sub(w[0]));
    let mut forward: Vec<f64> = steps.filter(|step| *step > 0).map(|step| step as f64).collect();
    if forward.is_empty() { 1 } else { (median(&mut forward) as i64).max(1) }
}

/// Rows that come after a later one of their piece.
fn out_of_order(times: &[i64], pieces: &[u32]) -> usize {
    let mut latest = (0, i64::MIN);
    let mut count = 0;
    for (time, piece) in times.iter().zip(pieces) {
        if *piece != latest.0 {
            latest = (*piece, i64::MIN);
        }
        count += usize::from(*time < latest.1);
        latest.1 = latest.1.max(*time);
    }
    count
}

/// Times with clock changes of an hour put right, and the piece of each row where the clock was set back otherwise.
///
/// A change of the clock writes over stamps that are there already; a late row does not, and is only sorted. The hour put
/// in at the end of summer is taken out again where the clock jumps forward by one.
fn put_right(stamps: &[i64], sample: i64, report: &mut CleaningReport) -> (Vec<i64>, Vec<u32>) {
    let back = stamps.windows(2).filter(|w| w[1].saturating_sub(w[0]) < -sample).count();
    if back > NO_ORDER.0 && back as f64 > NO_ORDER.1 * stamps.len() as f64 {
        report.cautions.push(Caution::Unsorted);
        return (stamps.to_vec(), vec![0; stamps.len()]);
    }
    let mut times: Vec<i64> = Vec::with_capacity(stamps.len());
    let mut pieces = Vec::with_capacity(stamps.len());
    let (mut offset, mut piece, mut piece_start) = (0i64, 0u32, 0usize);
    let an_hour = |jump: i64| (jump - HOUR).abs() <= sample.max(ABOUT);
    for (row, stamp) in stamps.iter().enumerate() {
        let mut time = stamp.saturating_add(offset);
        if row > piece_start {
            let step = time.saturating_sub(times[row - 1]);
            if step < -sample && overlap(&times[piece_start..], time, step, sample) {
                if an_hour(sample.saturating_sub(step)) {
                    offset += HOUR;
                    time = stamp.saturating_add(offset);
                    report.clock_shifts += 1;
                } else if !late(&stamps[row..], times[row - 1] - offset) {
                    (piece, piece_start, offset, time) = (piece + 1, row, 0, *stamp);
                }
            } else if offset > 0 && (step - sample - HOUR).abs() <= sample / 2 {
                offset -= HOUR;
                time = stamp.saturating_add(offset);
                report.clock_shifts += 1;
            }
        }
        report.clock_shifted_rows += usize::from(offset != 0);
        times.push(time);
        pieces.push(piece);
    }
    if piece > 0 {
        report.cautions.push(Caution::ClockSplit);
    }
    (times, pieces)
}

/// Whether a jump back is one of a few rows sent late or twice: the file soon goes on from where it was, at `stamp`.
fn late(rest: &[i64], stamp: i64) -> bool {
    rest.iter().take(LATE).any(|later| *later >= stamp)
}

/// Whether a jump back to `time` goes over rows that a running clock wrote.
fn overlap(times: &[i64], time: i64, step: i64, sample: i64) -> bool {
    let over = times.iter().rev().take_while(|earlier| **earlier > time).count();
    let running = step.unsigned_abs() as f64 / sample as f64;
    over as f64 >= OVERLAP * running
}

#[cfg(test)]
mod tests {
    use super::*;

    const MINUTE: i64 = 60_000_000_000;

    fn order(minutes: &[i64]) -> (Table, CleaningReport) {
        let times: Vec<i64> = minutes.iter().map(|m| m * MINUTE).collect();
        let readings: Vec<f64> = (0..times.len()).map(|row| row as f64).collect();
        let raw = RawLog { times: &times, readings: &readings, covariates: &[], running: None, may_be_negative: false };
        let mut report = CleaningReport::default();
        (in_order(&raw, (0..times.len()).collect(), &mut report), report)
    }

    fn minutes(table: &Table) -> Vec<i64> {
        table.rows.iter().map(|row| row.time / MINUTE).collect()
    }

    #[test]
    fn end_of_summer_time_goes_on() {
        // 02:59 is followed by 02:00 again
        let (table, report) = order(&(0..180).chain(120..300).collect::<Vec<i64>>());
        assert_eq!(minutes(&table), (0..360).collect::<Vec<i64>>());
        assert_eq!((report.clock_shifts, report.clock_shifted_rows, report.pieces), (1, 180, 1));
        assert_eq!((report.out_of_order, report.duplicates_averaged), (0, 0));
        // and back in spring
        let year: Vec<i64> = (0..180).chain(120..300).chain(360..500).collect();
        let (table, report) = order(&year);
        assert_eq!(minutes(&table), (0..500).collect::<Vec<i64>>());
        assert_eq!(report.clock_shifts, 2);
    }

    #[test]
    fn another_change_of_the_clock_splits() {
        let (table, report) = order(&(0..300).chain(100..200).collect::<Vec<i64>>());
        assert_eq!((report.pieces, report.cautions.as_slice()), (2, &[Caution::ClockSplit][..]));
        assert_eq!(table.rows.iter().filter(|row| row.piece == 1).count(), 100);
        assert_eq!(minutes(&table)[300], 100);
    }

    #[test]
    fn late_rows_are_only_sorted() {
        let late: Vec<i64> = (0..50).chain(60..70).chain(50..60).chain(70..100).collect();
        let (table, report) = order(&late);
        assert_eq!(minutes(&table), (0..100).collect::<Vec<i64>>());
        assert_eq!((report.pieces, report.out_of_order, report.clock_shifts), (1, 10, 0));
    }

    #[test]
    fn a_row_sent_twice_long_after_is_no_change_of_the_clock() {
        let (table, report) = order(&(0..300).chain([20, 150]).chain(300..500).collect::<Vec<i64>>());
        assert_eq!(minutes(&table), (0..500).collect::<Vec<i64>>());
        assert_eq!((report.pieces, report.out_of_order, report.duplicates_averaged), (1, 2, 2));
    }

    #[test]
    fn newest_first() {
        let (table, report) = order(&(0..100).rev().collect::<Vec<i64>>());
        assert_eq!(minutes(&table), (0..100).collect::<Vec<i64>>());
        assert_eq!((report.cautions.as_slice(), report.out_of_order), (&[Caution::Reversed][..], 0));
    }

    #[test]
    fn duplicated_stamps() {
        let times = [0, 1, 1, 2, 2, 2].map(|m| m * MINUTE);
        let readings = [5.0, 6.0, 6.0, 1.0, 2.0, 6.0];
        let load = [1.0, 2.0, f64::NAN, 3.0, f64::NAN, 5.0];
        let raw =
            RawLog { times: &times, readings: &readings, covariates: &[&load], running: None, may_be_negative: false };
        let mut report = CleaningReport::default();
        let table = in_order(&raw, (0..6).collect(), &mut report);
        assert_eq!(table.rows.iter().map(|row| row.reading).collect::<Vec<f64>>(), [5.0, 6.0, 3.0]);
        assert_eq!(table.covariates[0], [1.0, 2.0, 4.0]);
        assert_eq!((report.duplicates_equal, report.duplicates_averaged), (1, 2));
        assert_eq!(report.cautions, [Caution::DuplicatesDiffer]);
    }
}
