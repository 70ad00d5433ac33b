//! Change points: on which readings the level of a log changed.
//!
//! A level that wanders by itself looks like many changes, so the price of a change is set by the autocorrelation, and
//! that is estimated from differences, which a change of level touches only once. Even so it is known to about ±0.12
//! from 200 readings: a change point proposes a date, [`before_after`](super::proof::before_after) proves it.

mod cost; // what a segment costs: sums of squares in two words
mod noise; // spread and autocorrelation that changes of level do not pollute
mod partition; // the cheapest division into segments, exactly

pub use cost::Cost;
pub use noise::{Noise, penalty, robust_noise};
pub use partition::partition;

use super::least_squares::least_squares;
use super::statistics::mean;
use crate::error::{Code, Error, Result};

/// Change points of a log and what they rest on.
#[derive(Debug, Clone, PartialEq)]
pub struct ChangePoints {
    /// First reading of each new segment, counted from 0, rising; empty if the level never changed.
    pub points: Vec<usize>,
    /// Mean of each segment, covariates taken out: one more than there are points.
    pub levels: Vec<f64>,
    /// Price of a change in the cost used.
    pub penalty: f64,
    /// Spread and autocorrelation that set it.
    pub noise: Noise,
}

/// Readings with the effect of covariates taken out: y − B (x − x̄), B from one regression over all rows.
///
/// Source: analysis of covariance; that B is fitted across the changes is a closure of our own, fair while load and
/// changes do not move together.
pub fn adjusted(readings: &[f64], covariates: &[&[f64]]) -> Result<Vec<f64>> {
    let one = vec![1.0; readings.len()];
    let mut columns: Vec<&[f64]> = vec![&one];
    columns.extend(covariates);
    let fit = least_squares(&columns, readings)?;
    let centre = mean(readings);
    Ok(fit.residuals.iter().map(|e| centre + e).collect())
}

/// Finds the changes of level (or of level and spread) of a log, in the order of time.
///
/// `covariates` one slice for each, as long as the readings, may be empty; `least_segment` readings, 10 for daily means.
/// Fails where the log is shorter than two segments or never changes.
///
/// Source: optimal partitioning, Jackson et al. (2005); penalty after Yao (1988) with a factor for autocorrelation,
/// closure of our own (see [`penalty`]). With 200 readings of noise it finds a change in 0, 1, 2, 5 and 10 % of logs at
/// lag-one autocorrelations of 0, 0.5, 0.7, 0.8 and 0.9, by simulation; with 60, in 0, 3, 6, 9 and 13 %.
///
/// ```
/// use pinfilm::log::change::{Cost, change_points};
/// let wave = |t: u32| f64::from(t * 7 % 10) / 10.0 + if t < 40 { 0.0 } else { 2.0 };
/// let log: Vec<f64> = (0..80).map(wave).collect();
/// assert_eq!(change_points(&log, &[], Cost::Mean, 10)?.points, [40]);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn change_points(
    readings: &[f64],
    covariates: &[&[f64]],
    cost: Cost,
    least_segment: usize,
) -> Result<ChangePoints> {
    let adjusted = if covariates.is_empty() { readings.to_vec() } else { adjusted(readings, covariates)? };
    let n = adjusted.len();
    if n < 2 * least_segment.max(2) {
        return Err(Error::new(
            Code::Inconsistent,
            "readings",
            format!(
                "{n} readings are too few for two segments of {least_segment}: log longer or allow shorter segments"
            ),
        )
        .number(n as f64));
    }
    let noise = robust_noise(&adjusted);
    if noise.deviation <= 0.0 {
        return Err(Error::new(
            Code::Inconsistent,
            "readings",
            "the log never changes, so its noise is unknown: check the clamp, or log with finer steps",
        ));
    }
    let penalty = penalty(cost, noise, n);
    let points = partition(&adjusted, cost, least_segment, penalty);
    let bounds: Vec<usize> = [0].into_iter().chain(points.iter().copied()).chain([n]).collect();
    let levels = bounds.windows(2).map(|w| mean(&adjusted[w[0]..w[1]])).collect();
    Ok(ChangePoints { points, levels, penalty, noise })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_cannot_be_judged_is_refused() {
        let never = change_points(&[5.0; 60], &[], Cost::Mean, 10).unwrap_err();
        assert!(never.message.contains("never changes"));
        assert!(change_points(&[1.0, 2.0], &[], Cost::Mean, 10).is_err());
    }

    #[test]
    fn load_taken_out_hides_no_change_and_makes_none() {
        let load: Vec<f64> = (0..200).map(|t| f64::from(t / 10 % 2) + f64::from(t * 13 % 7) / 7.0).collect();
        let noise = |t: usize| ((t * t * 31 + 7 * t) % 101) as f64 / 101.0 * 0.1;
        let level = |t: usize| if t < 120 { 5.0 } else { 4.8 };
        let log: Vec<f64> = (0..200).map(|t| level(t) + 3.0 * load[t] + noise(t)).collect();
        let found = change_points(&log, &[&load], Cost::Mean, 10).unwrap();
        assert_eq!(found.points, [120]);
        assert!((found.levels[0] - found.levels[1] - 0.2).abs() < 0.03);
    }

    #[test]
    fn coarse_clamp() {
        // most neighbours are alike: the spread of the differences by their median is nothing
        let log: Vec<f64> =
            (0..200).map(|t| if t < 100 { 3.0 } else { 2.0 } + if t % 9 == 0 { 0.1 } else { 0.0 }).collect();
        assert_eq!(change_points(&log, &[], Cost::Mean, 10).unwrap().points, [100]);
    }
}
