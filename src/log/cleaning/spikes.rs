//! Readings far from their neighbours.

use super::clock::Table;
use super::state::State;
use super::{Caution, CleaningReport, Rules};
use crate::log::statistics::median;

/// Rows of the running median.
const ROWS: usize = 11;
/// Limit in standard deviations, these from the median absolute deviation of a normal spread.
const LIMIT: f64 = 6.0 * 1.4826;
/// Limit in steps of the display, where the spread by the median is less: a coarse clamp has none.
const STEPS: f64 = 3.0;
/// Share of spikes from which they may be the line's own.
const MANY: f64 = 0.02;
/// Differences below this share of the largest reading are rounding, not a display.
const ROUNDING: f64 = 1e-9;

/// Marks spikes: |x − running median of 11| > max(6 × 1.4826 MAD, 3 display steps).
///
/// The median runs over the rows still in, whatever the time between them, and is shorter at both ends of a piece. MAD is
/// the median size of all such differences. Source: Hampel (1974); the steps are a closure of our own.
pub(super) fn drop(table: &mut Table, rules: &Rules, report: &mut CleaningReport) {
    let rows: Vec<usize> = (0..table.rows.len()).filter(|i| table.rows[*i].state == State::Running).collect();
    report.display_step =
        rules.display_step.unwrap_or_else(|| smallest_step(rows.iter().map(|i| table.rows[*i].reading).collect()));
    if rows.is_empty() {
        return;
    }
    let mut away = Vec::with_capacity(rows.len());
    for piece in rows.chunk_by(|a, b| table.rows[*a].piece == table.rows[*b].piece) {
        let readings: Vec<f64> = piece.iter().map(|i| table.rows[*i].reading).collect();
        let mut window = Vec::with_capacity(ROWS);
        for (at, reading) in readings.iter().enumerate() {
            window.clear();
            window.extend_from_slice(&readings[at.saturating_sub(ROWS / 2)..(at + ROWS / 2 + 1).min(readings.len())]);
            away.push((reading - median(&mut window)).abs());
        }
    }
    let limit = (LIMIT * median(&mut away.clone())).max(STEPS * report.display_step);
    for (i, away) in rows.iter().zip(&away) {
        if *away > limit {
            table.rows[*i].state = State::Spike;
            report.spikes += 1;
        }
    }
    if report.spikes as f64 > MANY * rows.len() as f64 {
        report.cautions.push(Caution::ManySpikes);
    }
}

/// Smallest difference between two unlike readings; 0 if all are alike.
fn smallest_step(mut readings: Vec<f64>) -> f64 {
    readings.sort_unstable_by(f64::total_cmp);
    let least = ROUNDING * readings.last().map_or(0.0, |x| x.abs());
    let steps = readings.windows(2).map(|w| w[1] - w[0]).filter(|step| *step > least);
    let smallest = steps.fold(f64::INFINITY, f64::min);
    if smallest.is_finite() { smallest } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::super::{Caution, RawLog, Rules, clean};

    fn spikes(readings: &[f64]) -> (usize, f64, bool) {
        let times: Vec<i64> = (0..readings.len() as i64).map(|row| row * 60_000_000_000).collect();
        let raw = RawLog { times: &times, readings, covariates: &[], running: None, may_be_negative: false };
        let report = clean(&raw, &Rules { window: None, ..Rules::default() }).unwrap().report;
        (report.spikes, report.display_step, report.cautions.contains(&Caution::ManySpikes))
    }

    #[test]
    fn a_coarse_clamp_keeps_its_steps() {
        let mut log: Vec<f64> = (0..400).map(|t| if t % 9 == 0 { 2.9 } else { 2.8 }).collect();
        log[100] = 3.0;
        log[200] = 9.9;
        let (found, step, many) = spikes(&log);
        assert!((step - 0.1).abs() < 1e-12);
        assert_eq!((found, many), (1, false));
    }

    #[test]
    fn a_lasting_change_is_no_spike() {
        let log: Vec<f64> =
            (0..400).map(|t| if t < 200 { 3.0 } else { 2.0 } + f64::from(t * 37 % 23) / 1000.0).collect();
        assert_eq!(spikes(&log).0, 0);
    }

    #[test]
    fn many_spikes_are_said() {
        let log: Vec<f64> =
            (0..400).map(|t| if t % 20 == 0 { 6.0 } else { 3.0 } + f64::from(t * 37 % 23) / 1000.0).collect();
        let (found, _, many) = spikes(&log);
        assert_eq!((found, many), (20, true));
        assert_eq!(spikes(&[3.0; 30]), (0, 0.0, false));
    }
}
