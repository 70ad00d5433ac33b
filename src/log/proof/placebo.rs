//! The same fit at dates when nothing was done.

use super::before_after::before_after;
use crate::error::Result;

/// Fewest splits from which "exceeds them all" says anything: a rank of 5 %.
const FEWEST_SPLITS: usize = 19;
/// Readings left on each side of a split.
const MARGIN: usize = 15;

/// How the real change stands among those that the log shows by itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placebo {
    /// Splits tried before the change.
    pub splits: usize,
    /// Largest |t| among them; 0 if there are none.
    pub largest_t: f64,
    /// |t| of the real change.
    pub real_t: f64,
    /// (1 + splits with |t| at least as large) / (1 + splits). Not a p value: overlapping splits are not exchangeable.
    pub rank: f64,
    /// Whether the real |t| exceeds every placebo; none with fewer than 19 splits. Where nothing was done this still
    /// happens in 16 to 20 % of logs of 120 days (by simulation): say so beside it.
    pub agrees: Option<bool>,
}

/// Repeats [`before_after`] inside the period before `split`, at every row that leaves 15 readings on each side.
///
/// Arguments as there. Source: placebo (in-time) test of comparative studies, Abadie, Diamond and Hainmueller (2010);
/// the margin and the rule for agreement are closures of our own.
pub fn placebo(readings: &[f64], split: usize, covariates: &[&[f64]]) -> Result<Placebo> {
    // the level of the interval plays no part in t
    let size = |readings: &[f64], split, covariates: &[&[f64]]| {
        before_after(readings, split, covariates, 0.95).map(|found| found.t.abs())
    };
    let real_t = size(readings, split, covariates)?;
    let quiet: Vec<&[f64]> = covariates.iter().map(|x| &x[..split]).collect();
    let sizes = (MARGIN..(split + 1).saturating_sub(MARGIN))
        .map(|at| size(&readings[..split], at, &quiet))
        .collect::<Result<Vec<f64>>>()?;
    let splits = sizes.len();
    let largest_t = sizes.iter().copied().fold(0.0, f64::max);
    let as_large = sizes.iter().filter(|t| **t >= real_t).count();
    Ok(Placebo {
        splits,
        largest_t,
        real_t,
        rank: (1 + as_large) as f64 / (1 + splits) as f64,
        agrees: (splits >= FEWEST_SPLITS).then_some(real_t > largest_t),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_log_that_wanders_by_itself_proves_nothing() {
        let wander = |t: usize| (t as f64 / 15.0).sin();
        let log: Vec<f64> = (0..120).map(|t| 10.0 + wander(t) - if t < 80 { 0.0 } else { 0.2 }).collect();
        let found = placebo(&log, 80, &[]).unwrap();
        assert_eq!((found.splits, found.agrees), (51, Some(false)));
        assert!(found.rank > 1.0 / 52.0);
    }

    #[test]
    fn short_logs_give_no_verdict() {
        let log: Vec<f64> = (0..60).map(|t| f64::from(t * 7 % 10 + 5) - if t < 29 { 0.0 } else { 3.0 }).collect();
        let found = placebo(&log, 29, &[]).unwrap();
        assert_eq!((found.splits, found.largest_t, found.rank, found.agrees), (0, 0.0, 1.0, None));
        assert_eq!(placebo(&log, 30, &[]).unwrap().splits, 1);
    }
}
