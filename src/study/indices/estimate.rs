//! Outcomes of the rows of a design → first-order and total indices.

use super::super::progress::{Progress, in_parallel};
use super::super::spread::{Estimate, mean_of_nets};
use super::design::Design;
use crate::error::{Code, Error, Result};

/// Sobol indices of one outcome, one pair for each group of inputs.
#[derive(Debug, Clone, PartialEq)]
pub struct Indices {
    /// Mean of the outcome.
    pub mean: f64,
    /// Its variance, all inputs drawn.
    pub variance: f64,
    /// Share of the variance that goes if this input alone were known. Small negative numbers are noise, left as they are.
    pub first: Vec<Estimate>,
    /// Share of the variance that stays if all but this input were known.
    pub total: Vec<Estimate>,
}

/// A spread this small against the outcomes themselves is their rounding.
const ROUNDING: f64 = 1e-13;

impl Indices {
    /// Indices from the outcomes of all rows of `design`, in its order; `None` if the outcome does not vary.
    ///
    /// Outcomes are centred first, so that a large mean costs no digits. Errors here are those of independent rows, which
    /// on a net is on the safe side; [`over_shifts`] measures them.
    /// Source: first order of Saltelli et al. (2010), table 2 (b); total of Jansen, Comput. Phys. Commun. 117 (1999) 35.
    pub fn of(design: &Design, outcomes: &[f64]) -> Result<Option<Indices>> {
        check(design, outcomes)?;
        Ok(Indices::of_blocks(design.block(), outcomes))
    }

    /// The same from blocks of `n` rows without a gap, whatever design they are left of.
    pub(in crate::study) fn of_blocks(n: usize, outcomes: &[f64]) -> Option<Indices> {
        let (both, blocks) = outcomes.split_at(2 * n);
        let (a, b) = both.split_at(n);
        let mean = both.iter().sum::<f64>() / both.len() as f64;
        let variance = both.iter().map(|f| (f - mean).powi(2)).sum::<f64>() / both.len() as f64;
        if variance.sqrt() <= ROUNDING * both.iter().fold(0.0, |most: f64, f| most.max(f.abs())) {
            return None;
        }
        let rows =
            |mixed| a.iter().zip(b).zip(mixed).map(|((a, b), mixed): (_, &f64)| (a - mean, b - mean, mixed - mean));
        let (mut first, mut total) = (Vec::new(), Vec::new());
        for mixed in blocks.chunks(n) {
            first.push(mean_of_rows(n, rows(mixed).map(|(a, b, mixed)| b * (mixed - a) / variance)));
            total.push(mean_of_rows(n, rows(mixed).map(|(a, _, mixed)| 0.5 * (a - mixed).powi(2) / variance)));
        }
        Some(Indices { mean, variance, first, total })
    }
}

/// Mean of the terms of all rows, and its error s/√n (s with n − 1) if they were independent.
fn mean_of_rows(n: usize, terms: impl Iterator<Item = f64> + Clone) -> Estimate {
    let mean = terms.clone().sum::<f64>() / n as f64;
    let squares = terms.map(|term| (term - mean).powi(2)).sum::<f64>();
    Estimate { value: mean, error: Some((squares / (n as f64 - 1.0) / n as f64).sqrt()) }
}

fn check(design: &Design, outcomes: &[f64]) -> Result<()> {
    if outcomes.len() != design.rows() {
        let message = format!("a design of {} rows needs as many outcomes, not {}", design.rows(), outcomes.len());
        return Err(Error::new(Code::Inconsistent, "outcomes", message).number(outcomes.len() as f64));
    }
    let Some((row, &outcome)) = outcomes.iter().enumerate().find(|(_, f)| !f.is_finite()) else { return Ok(()) };
    let without = outcomes.iter().filter(|f| !f.is_finite()).count();
    let message = format!(
        "{without} of {} outcomes have no number (the first in row {row}), and indices need one everywhere: study the \
         saving, or the logarithm of a payback with the saving kept above a small amount, instead of the payback",
        outcomes.len()
    );
    Err(Error::new(Code::NotFinite, "outcomes", message).number(outcome))
}

/// Computes `outcome` for all rows of `design` (uniform numbers, 0 to 1) in parallel, and the indices from them.
pub fn sensitivity(
    design: &Design,
    progress: &mut Progress<'_>,
    outcome: impl Fn(&[f64]) -> f64 + Sync,
) -> Result<Option<Indices>> {
    let of_row = |(words, units): &mut (Vec<u32>, Vec<f64>), place| {
        design.row(design.in_turn(place), words, units);
        outcome(units)
    };
    let outcomes = design.in_order(in_parallel(design.rows(), progress, || design.scratch(), of_row)?);
    Indices::of(design, &outcomes)
}

/// One answer from the indices of several shifted designs: their means, with the errors that their differences show.
pub fn over_shifts(shifts: &[Indices]) -> Option<Indices> {
    let groups = shifts.first()?.first.len();
    let over = |of: &dyn Fn(&Indices) -> f64| mean_of_nets(&shifts.iter().map(of).collect::<Vec<_>>());
    Some(Indices {
        mean: over(&|i| i.mean).value,
        variance: over(&|i| i.variance).value,
        first: (0..groups).map(|group| over(&|i| i.first[group].value)).collect(),
        total: (0..groups).map(|group| over(&|i| i.total[group].value)).collect(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::study::unwatched;
    use std::f64::consts::PI;

    fn values(estimates: &[Estimate]) -> Vec<f64> {
        estimates.iter().map(|e| e.value).collect()
    }

    fn near(ours: &[Estimate], known: &[f64], within: f64) {
        for (ours, known) in values(ours).into_iter().zip(known) {
            assert!((ours - known).abs() < within, "{ours} {known}");
        }
    }

    fn ishigami(u: &[f64]) -> f64 {
        let x = |i: usize| PI * (2.0 * u[i] - 1.0);
        x(0).sin() + 7.0 * x(1).sin().powi(2) + 0.1 * x(2).powi(4) * x(0).sin()
    }

    /// Source: Ishigami and Homma (1990), closed form of the indices; the net's own values from an independent program.
    #[test]
    fn ishigami_function() {
        let design = Design::new(1 << 14, 3, None).unwrap();
        let indices = sensitivity(&design, &mut unwatched, ishigami).unwrap().unwrap();
        near(&indices.first, &[0.3153378, 0.4424184, 0.0014217], 6e-8);
        near(&indices.total, &[0.5583336, 0.4424226, 0.2436529], 6e-8);
        let shifts: Vec<_> = (0..8)
            .map(|seed| {
                let design = Design::new(1 << 10, 3, Some(seed)).unwrap();
                sensitivity(&design, &mut unwatched, ishigami).unwrap().unwrap()
            })
            .collect();
        let together = over_shifts(&shifts).unwrap();
        for (estimate, known) in together.first.iter().zip([0.3139052, 0.4424111, 0.0]) {
            assert!((estimate.value - known).abs() < 5.0 * estimate.error.unwrap(), "{estimate:?} {known}");
        }
    }

    /// Source: Saltelli and Sobol' (1995): V_i = 1/(3 (1 + a_i)²).
    #[test]
    fn g_function() {
        let a = [0.0, 1.0, 4.5, 9.0, 99.0, 99.0];
        let g = |u: &[f64]| u.iter().zip(a).map(|(u, a)| ((4.0 * u - 2.0).abs() + a) / (1.0 + a)).product();
        let design = Design::new(1 << 14, 6, None).unwrap();
        let indices = sensitivity(&design, &mut unwatched, g).unwrap().unwrap();
        near(&indices.first, &[0.7161686, 0.1789478, 0.0236049, 0.0071632], 6e-8);
        near(&indices.total, &[0.7872569, 0.2422329, 0.0343218, 0.0104619], 1e-3);
    }

    /// An outcome that is a sum: the indices add up to 1 and total equals first order; a large constant changes nothing.
    #[test]
    fn sums_have_no_interaction() {
        let design = Design::new(1 << 10, 2, Some(1)).unwrap();
        let of =
            |constant: f64| sensitivity(&design, &mut unwatched, |u| constant + u[0] + 2.0 * u[1]).unwrap().unwrap();
        let (plain, lifted) = (of(0.0), of(1e6));
        near(&plain.first, &[0.2, 0.8], 1e-3);
        near(&plain.total, &[0.2, 0.8], 1e-3);
        near(&lifted.first, &values(&plain.first), 1e-8);
    }

    #[test]
    fn no_spread_and_no_number() {
        let design = Design::new(16, 2, None).unwrap();
        assert_eq!(sensitivity(&design, &mut unwatched, |_| 0.1).unwrap(), None);
        let gaps = sensitivity(&design, &mut unwatched, |u| if u[0] > 0.9 { f64::INFINITY } else { u[0] });
        assert!(gaps.unwrap_err().message.contains("logarithm"));
        assert_eq!(Indices::of(&design, &[0.0; 3]).unwrap_err().code, Code::Inconsistent);
    }

    #[test]
    fn threads_change_nothing() {
        let design = Design::new(1 << 9, 3, Some(4)).unwrap();
        let with = |threads: usize| {
            let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
            pool.install(|| sensitivity(&design, &mut unwatched, ishigami).unwrap())
        };
        assert_eq!(with(1), with(3));
    }
}
