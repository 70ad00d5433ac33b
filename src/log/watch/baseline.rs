//! What the line should draw, and how far a reading is from it.

use crate::error::{Code, Error, Result};
use crate::log::least_squares::least_squares;
use crate::log::statistics::{lag1, mean, standard_deviation, unbiased_lag1};
use serde::{Deserialize, Serialize};

/// Autocorrelations above this are not believed.
const MOST: f64 = 0.97;

/// A line in good order, learnt from a quiet period: what it draws at a load, and how readings scatter about that.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Baseline {
    /// Reading at the mean covariates.
    pub level: f64,
    /// Effect of one unit of each covariate.
    pub effects: Vec<f64>,
    /// Mean of each covariate; load first.
    pub centres: Vec<f64>,
    /// Standard deviation of each covariate.
    pub spreads: Vec<f64>,
    /// Mean of the residuals, a share.
    pub residual_mean: f64,
    /// Standard deviation of the residuals, a share.
    pub residual_deviation: f64,
    /// Lag-one autocorrelation of the residuals, raised by the bias of a short baseline; not below 0.
    pub lag1: f64,
    /// Readings it was learnt from.
    pub readings: usize,
}

impl Baseline {
    /// Learns from `readings` in the order of time (daily means, 30 or more for a chart) and `covariates`, one slice for
    /// each, load first; may be empty.
    ///
    /// Residuals are shares, (y − ŷ)/ŷ, so that one spread serves all loads. Fails where the model cannot be fitted, or
    /// would have the line draw nothing.
    pub fn learn(readings: &[f64], covariates: &[&[f64]]) -> Result<Self> {
        let n = readings.len();
        let constant = vec![1.0; n];
        let (centres, spreads): (Vec<f64>, Vec<f64>) =
            covariates.iter().map(|x| (mean(x), standard_deviation(x))).unzip();
        let centred: Vec<Vec<f64>> =
            covariates.iter().zip(&centres).map(|(x, c)| x.iter().map(|x| x - c).collect()).collect();
        let columns: Vec<&[f64]> = [constant.as_slice()].into_iter().chain(centred.iter().map(Vec::as_slice)).collect();
        let fit = least_squares(&columns, readings)?;
        let mut baseline = Baseline {
            level: fit.coefficients[0],
            effects: fit.coefficients[1..].to_vec(),
            centres,
            spreads,
            residual_mean: 0.0,
            residual_deviation: 0.0,
            lag1: 0.0,
            readings: n,
        };
        let shares =
            readings.iter().zip(&fit.residuals).map(|(y, e)| above_nothing(y - e).map(|expected| e / expected));
        let shares = shares.collect::<Result<Vec<f64>>>()?;
        baseline.residual_mean = mean(&shares);
        baseline.residual_deviation = standard_deviation(&shares);
        baseline.lag1 = unbiased_lag1(lag1(&shares), n, MOST);
        if baseline.residual_deviation <= 0.0 {
            return Err(Error::new(
                Code::Inconsistent,
                "baseline",
                "the baseline never changes, so its scatter is unknown: check the clamp, or log with finer steps",
            ));
        }
        Ok(baseline)
    }

    /// What the line should draw at these covariates.
    ///
    /// Fails where that is nothing or less, and where there are more or fewer covariates than were learnt.
    pub fn expected(&self, covariates: &[f64]) -> Result<f64> {
        if covariates.len() != self.centres.len() {
            return Err(Error::new(
                Code::Inconsistent,
                "covariates",
                format!(
                    "{} covariates were given and the baseline was learnt with {}: give the same, in the same order",
                    covariates.len(),
                    self.centres.len()
                ),
            )
            .number(covariates.len() as f64));
        }
        let rows = covariates.iter().zip(&self.centres).zip(&self.effects);
        above_nothing(self.level + rows.map(|((x, centre), b)| b * (x - centre)).sum::<f64>())
    }

    /// Share by which a reading is above what is expected, less the mean of the baseline.
    pub fn residual(&self, reading: f64, expected: f64) -> f64 {
        (reading - expected) / expected - self.residual_mean
    }

    /// The new in a residual, in standard deviations: (r − ρ r′)/(σ √(1 − ρ²)), r′ the one before.
    ///
    /// r/σ where there is none, at the start or after a gap. A lasting shift of D standard deviations of r is one of
    /// only D √((1 − ρ)/(1 + ρ)) here, see [`visible_shift`](Baseline::visible_shift). Source: first-order autoregressive
    /// residuals, Alwan and Roberts (1988).
    pub fn innovation(&self, residual: f64, before: Option<f64>) -> f64 {
        match before {
            Some(before) => {
                (residual - self.lag1 * before) / (self.residual_deviation * (1.0 - self.lag1 * self.lag1).sqrt())
            }
            None => residual / self.residual_deviation,
        }
    }

    /// What is left of a lasting shift of `deviations` of the residual in the innovations.
    pub fn visible_shift(&self, deviations: f64) -> f64 {
        deviations * ((1.0 - self.lag1) / (1.0 + self.lag1)).sqrt()
    }
}

fn above_nothing(expected: f64) -> Result<f64> {
    if expected > 0.0 {
        return Ok(expected);
    }
    Err(Error::new(
        Code::BeyondModel,
        "expected",
        "the baseline says that the line draws nothing at this load: learn it from loads like this one",
    )
    .number(expected))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn quiet() -> (Vec<f64>, Vec<f64>) {
        let load: Vec<f64> = (0..80).map(|t| 100.0 + f64::from(t * 37 % 23)).collect();
        let ripple = |t: usize| ((t * t * 31 + 7 * t) % 101) as f64 / 101.0 - 0.5;
        let draw = load.iter().enumerate().map(|(t, x)| (4.0 + 0.06 * x) * (1.0 + 0.02 * ripple(t))).collect();
        (draw, load)
    }

    #[test]
    fn learns_the_line() {
        let (draw, load) = quiet();
        let baseline = Baseline::learn(&draw, &[&load]).unwrap();
        assert!((baseline.effects[0] - 0.06).abs() < 0.005);
        assert!((baseline.expected(&[100.0]).unwrap() - 10.0).abs() < 0.1);
        let shares: Vec<f64> =
            draw.iter().zip(&load).map(|(y, x)| baseline.residual(*y, baseline.expected(&[*x]).unwrap())).collect();
        assert!(mean(&shares).abs() < 1e-15);
        assert!((standard_deviation(&shares) - baseline.residual_deviation).abs() < 1e-15);
        assert!(baseline.expected(&[]).is_err() && baseline.expected(&[-1000.0]).is_err());
    }

    #[test]
    fn shift_in_the_innovations() {
        let baseline = Baseline { lag1: 0.5, ..Baseline::learn(&quiet().0, &[]).unwrap() };
        assert!((baseline.visible_shift(2.0) - 1.154_700_5).abs() < 1e-7);
        let shift = 2.0 * baseline.residual_deviation;
        assert!((baseline.innovation(shift, Some(shift)) - baseline.visible_shift(2.0)).abs() < 1e-12);
        assert!((baseline.innovation(shift, None) - 2.0).abs() < 1e-12);
    }

    #[test]
    fn refuses_what_it_cannot_learn() {
        assert!(Baseline::learn(&[2.0; 40], &[]).is_err());
        assert!(Baseline::learn(&[-2.0, -1.0, -3.0], &[]).is_err());
        assert!(Baseline::learn(&[1.0], &[]).is_err());
    }
}
