//! What an alarm looks like.

use super::Baseline;
use crate::log::least_squares::least_squares;
use crate::log::statistics::{mean, standard_deviation, sum, variance_inflation};
use serde::{Deserialize, Serialize};

/// Shortest stretch of log that says anything of a cause, s: three days.
const SHORTEST: f64 = 3.0 * 86_400.0;
/// Fewest readings that do.
const FEWEST: usize = 6;
/// Standard errors from which an effect is taken for one.
const SEEN_AT: f64 = 2.0;
/// Standard deviations from which the load is taken to have moved.
const MOVED_AT: f64 = 2.0;
/// Standard errors of a step that is taken for mechanical.
const STEP_AT: f64 = 4.0;

/// What the last days of a log look like.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Cause {
    /// Pull rises in proportion to load, over days: the joints run dry.
    RunningDry,
    /// The load moved and the line follows it as it should: no alarm.
    LoadChange,
    /// Pull rises by the same amount at every load: guide, take-up, gearbox.
    IdleDrag,
    /// A step when the line was started: something mechanical.
    Mechanical,
    /// None of these for certain; always so without a load signal.
    Ambiguous,
}

impl Cause {
    /// The word as it is printed and compared.
    pub const fn as_str(self) -> &'static str {
        match self {
            Cause::RunningDry => "running_dry",
            Cause::LoadChange => "load_change",
            Cause::IdleDrag => "idle_drag",
            Cause::Mechanical => "mechanical",
            Cause::Ambiguous => "ambiguous",
        }
    }
}

/// A reading as the watch remembers it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Seen {
    /// Time, s.
    pub time: f64,
    /// The reading.
    pub reading: f64,
    /// What the baseline expects.
    pub expected: f64,
    /// Share by which it is above that.
    pub residual: f64,
    /// Upper sum of the CUSUM after it.
    pub up: f64,
    /// The first covariate, load; none without covariates.
    pub load: Option<f64>,
    /// Whether the line was started since the reading before.
    pub start: bool,
}

/// What the last window of a log looks like; none if it is quiet and at its usual load.
///
/// `alarm` whether a chart is above its threshold; `seen` in the order of time, three days and six readings or more for
/// anything but ambiguous. A step at a start is mechanical; else y = (1 + m) ŷ + q tells a rise in proportion (running dry,
/// if the CUSUM climbs) from the same amount at every load (idle drag). Errors are widened by the autocorrelation of the
/// baseline. Source: closure of our own.
pub fn cause(seen: &[Seen], alarm: bool, baseline: &Baseline) -> Option<Cause> {
    let load: Option<Vec<f64>> = seen.iter().map(|row| row.load).collect();
    let Some(load) = load.filter(|load| !load.is_empty()) else { return alarm.then_some(Cause::Ambiguous) };
    if !alarm {
        let away = (mean(&load) - baseline.centres[0]).abs();
        return (enough(seen) && away > MOVED_AT * baseline.spreads[0]).then_some(Cause::LoadChange);
    }
    if !enough(seen) {
        return Some(Cause::Ambiguous);
    }
    if step_at_a_start(seen, baseline) {
        return Some(Cause::Mechanical);
    }
    Some(in_proportion(seen, baseline).unwrap_or(Cause::Ambiguous))
}

fn enough(seen: &[Seen]) -> bool {
    let span = seen.last().map_or(0.0, |row| row.time) - seen.first().map_or(0.0, |row| row.time);
    seen.len() >= FEWEST && span >= SHORTEST
}

/// Running dry or idle drag from the regression of readings on what was expected; none if neither stands out.
fn in_proportion(seen: &[Seen], baseline: &Baseline) -> Option<Cause> {
    let expected: Vec<f64> = seen.iter().map(|row| row.expected).collect();
    let readings: Vec<f64> = seen.iter().map(|row| row.reading).collect();
    let constant = vec![1.0; seen.len()];
    // fails where the expectation does not vary: then the two cannot be told apart
    let fit = least_squares(&[&constant, &expected], &readings).ok()?;
    let widened = variance_inflation(baseline.lag1).sqrt();
    let errors = fit.standard_errors();
    let (m, m_error) = (fit.coefficients[1] - 1.0, widened * errors[1]);
    let (q, q_error) = (fit.coefficients[0], widened * errors[0]);
    let half = seen.len() / 2;
    let sums = |rows: &[Seen]| mean(&rows.iter().map(|row| row.up).collect::<Vec<f64>>());
    let climbs = sums(&seen[half..]) > sums(&seen[..half]);
    if m > SEEN_AT * m_error && climbs {
        Some(Cause::RunningDry)
    } else if m.abs() <= SEEN_AT * m_error && q.abs() > SEEN_AT * q_error {
        Some(Cause::IdleDrag)
    } else {
        None
    }
}

/// Whether the residuals rise by one step, better than by a slope, and the line was started there.
fn step_at_a_start(seen: &[Seen], baseline: &Baseline) -> bool {
    let r: Vec<f64> = seen.iter().map(|row| row.residual).collect();
    let squares = |x: &[f64]| {
        let mean = mean(x);
        sum(x.iter().map(|x| (x - mean) * (x - mean)))
    };
    let split = |at: usize| squares(&r[..at]) + squares(&r[at..]);
    let Some(at) = (2..r.len() - 1).min_by(|a, b| split(*a).total_cmp(&split(*b))) else { return false };
    let (constant, time) = (vec![1.0; r.len()], (0..r.len()).map(|t| t as f64).collect::<Vec<f64>>());
    let slope = least_squares(&[&constant, &time], &r).map_or(f64::INFINITY, |fit| squares(&fit.residuals));
    let rise = mean(&r[at..]) - mean(&r[..at]);
    let spread = (split(at) / (r.len() - 2) as f64).sqrt().max(standard_deviation(&[0.0, 0.0]));
    let error = spread * (variance_inflation(baseline.lag1) * (1.0 / at as f64 + 1.0 / (r.len() - at) as f64)).sqrt();
    rise > STEP_AT * error && split(at) < slope && seen[at].start
}

#[cfg(test)]
mod tests {
    use super::*;

    const DAY: f64 = 86_400.0;

    fn baseline() -> Baseline {
        Baseline {
            level: 10.0,
            effects: vec![0.06],
            centres: vec![100.0],
            spreads: vec![10.0],
            residual_mean: 0.0,
            residual_deviation: 0.01,
            lag1: 0.3,
            readings: 100,
        }
    }

    /// Ten days of four readings at swinging load; `draw(day, expected)`.
    fn days(draw: impl Fn(f64, f64) -> f64, started: Option<usize>, offset: f64) -> Vec<Seen> {
        let base = baseline();
        let mut up = 0.0;
        (0..40)
            .map(|t| {
                let load = 100.0 + offset + [-20.0, 5.0, 20.0, -5.0][t % 4];
                let expected = base.expected(&[load]).unwrap();
                let ripple = ((t * t * 31 + 7 * t) % 101) as f64 / 101.0 - 0.5;
                let reading = draw(t as f64 / 4.0, expected) * (1.0 + 0.01 * ripple);
                let residual = base.residual(reading, expected);
                up = f64::max(0.0, up + residual / 0.01 - 0.5);
                Seen {
                    time: t as f64 * DAY / 4.0,
                    reading,
                    expected,
                    residual,
                    up,
                    load: Some(load),
                    start: started == Some(t),
                }
            })
            .collect()
    }

    #[test]
    fn four_stories() {
        let base = baseline();
        let dry = days(|day, expected| expected * (1.04 + 0.004 * day), None, 0.0);
        assert_eq!(cause(&dry, true, &base), Some(Cause::RunningDry));
        let drag = days(|_, expected| expected + 0.8, None, 0.0);
        assert_eq!(cause(&drag, true, &base), Some(Cause::IdleDrag));
        let step = |day: f64, expected: f64| expected * if day < 5.0 { 1.0 } else { 1.06 };
        assert_eq!(cause(&days(step, Some(20), 0.0), true, &base), Some(Cause::Mechanical));
        let heavy = days(|_, expected| expected, None, 40.0);
        assert_eq!(cause(&heavy, false, &base), Some(Cause::LoadChange));
    }

    #[test]
    fn without_load_or_time_it_is_ambiguous() {
        let base = baseline();
        let dry = days(|day, expected| expected * (1.04 + 0.004 * day), None, 0.0);
        let blind: Vec<Seen> = dry.iter().map(|row| Seen { load: None, ..*row }).collect();
        assert_eq!(cause(&blind, true, &base), Some(Cause::Ambiguous));
        assert_eq!(cause(&blind, false, &base), None);
        assert_eq!(cause(&dry[..8], true, &base), Some(Cause::Ambiguous));
        assert_eq!(cause(&[], true, &base), Some(Cause::Ambiguous));
    }

    #[test]
    fn quiet_is_no_news() {
        assert_eq!(cause(&days(|_, expected| expected, None, 0.0), false, &baseline()), None);
        let alike: Vec<Seen> = days(|_, expected| expected * 1.1, None, 0.0)
            .into_iter()
            .map(|row| Seen { expected: 10.0, reading: 11.0, residual: 0.1, ..row })
            .collect();
        assert_eq!(cause(&alike, true, &baseline()), Some(Cause::Ambiguous));
    }
}
