//! Use avoided: what the line would have drawn as it was, less what it drew.

use super::covariance::{MOST, enough_for_an_error, worth};
use crate::drive::effective_count;
use crate::error::{Code, Error, Result};
use crate::log::least_squares::least_squares;
use crate::log::statistics::{lag1, mean, student_quantile, sum, unbiased_lag1, variance_inflation};

/// Use avoided over the after period, in the unit of the readings times their interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Avoided {
    /// Σ (predicted − measured) over the after period.
    pub avoided: f64,
    /// Error with the bias of a short log in the autocorrelation allowed for: the one that the interval uses.
    pub error: f64,
    /// Error with the autocorrelation as it was found.
    pub error_plain: f64,
    /// Degrees of freedom that the readings before are worth, at least 2.
    pub degrees: f64,
    /// Interval at the level asked for.
    pub interval: (f64, f64),
    /// Lag-one autocorrelation of the residuals before.
    pub lag1: f64,
    /// Coefficient of variation of the model before, a share.
    pub cv_rmse: f64,
    /// Avoided over predicted use.
    pub share: f64,
    /// Readings before and after.
    pub readings: (usize, usize),
}

/// Use avoided from row `split` on against a model of the readings before it.
///
/// `covariates` one slice for each, as long as the readings, may be empty; `level` of the interval. The prediction is
/// safe only where the loads after lie among those before.
///
/// Variance s² (1 + ρ)/(1 − ρ) (m + 1ᵀ Xₐ (X_bᵀ X_b)⁻¹ Xₐᵀ 1). Source: avoided use of ASHRAE Guideline 14-2014 and
/// prediction variance of regression; the factor for autocorrelation and Student's t at the worth of the readings are
/// closures of our own, which cover 96, 94 and 93 % of a nominal 95 at ρ = 0, 0.5 and 0.8 with 60 days on each side, by
/// simulation.
pub fn avoided(readings: &[f64], split: usize, covariates: &[&[f64]], level: f64) -> Result<Avoided> {
    let n = readings.len();
    if split == 0 || split >= n {
        return Err(Error::new(
            Code::OutOfRange,
            "split",
            format!("the change is at row {split} and the log has {n}: choose a date inside the log"),
        )
        .number(split as f64));
    }
    if let Some(odd) = covariates.iter().find(|x| x.len() != n) {
        return Err(Error::new(
            Code::Inconsistent,
            "covariates",
            format!("a covariate has {} rows and the readings {n}: give one value for each reading", odd.len()),
        ));
    }
    // about the means before, which changes nothing but the rounding
    let constant = vec![1.0; n];
    let centre = |x: &&[f64]| {
        let centre = mean(&x[..split]);
        x.iter().map(|x| x - centre).collect::<Vec<f64>>()
    };
    let centred: Vec<Vec<f64>> = covariates.iter().map(centre).collect();
    let columns: Vec<&[f64]> = [constant.as_slice()].into_iter().chain(centred.iter().map(Vec::as_slice)).collect();
    let before: Vec<&[f64]> = columns.iter().map(|x| &x[..split]).collect();
    enough_for_an_error(split, before.len())?;
    let fit = least_squares(&before, &readings[..split])?;

    let sums: Vec<f64> = columns.iter().map(|x| sum(x[split..].iter().copied())).collect();
    let predicted: f64 = sums.iter().zip(&fit.coefficients).map(|(x, b)| x * b).sum();
    let avoided = predicted - sum(readings[split..].iter().copied());
    let reach: f64 = (0..sums.len())
        .flat_map(|i| (0..sums.len()).map(move |j| (i, j)))
        .map(|(i, j)| sums[i] * fit.inverse[i][j] * sums[j])
        .sum();
    let (before_count, after_count) = (split, n - split);
    let lag1 = lag1(&fit.residuals);
    let unbiased = unbiased_lag1(lag1, before_count, MOST);
    let variance = fit.residual_variance() * (after_count as f64 + reach);
    let error = |lag1: f64| (variance * variance_inflation(lag1)).sqrt();
    let degrees = worth(before_count, columns.len(), unbiased);
    let half = student_quantile(0.5 + 0.5 * level, degrees) * error(unbiased);
    Ok(Avoided {
        avoided,
        error: error(unbiased),
        error_plain: error(lag1.clamp(0.0, MOST)),
        degrees,
        interval: (avoided - half, avoided + half),
        lag1,
        cv_rmse: fit.residual_variance().sqrt() / mean(&readings[..split]),
        share: avoided / predicted,
        readings: (before_count, after_count),
    })
}

impl Avoided {
    /// Error at a two-sided confidence `level` over what was avoided.
    pub fn relative_uncertainty(&self, level: f64) -> f64 {
        student_quantile(0.5 + 0.5 * level, self.degrees) * self.error / self.avoided.abs()
    }

    /// Uncertainty of the guideline, for the audit trail: [`fractional_savings_uncertainty`] with the autocorrelation as
    /// found and the normal quantile `t` of the confidence, such as 1.645 for 90 %.
    pub fn guideline_uncertainty(&self, t: f64, factor: SavingsFactor) -> f64 {
        let (before, after) = (self.readings.0 as f64, self.readings.1 as f64);
        let worth = effective_count(before, self.lag1.max(0.0));
        fractional_savings_uncertainty(t, factor, self.cv_rmse, self.share, before, worth, after)
    }

    /// Whether a saving may be claimed: something was avoided and its uncertainty at 68 % is below one half.
    ///
    /// Source: ASHRAE Guideline 14 as quoted in public. Claim only if the placebo agrees too.
    pub fn may_be_claimed(&self) -> bool {
        self.avoided > 0.0 && self.relative_uncertainty(0.68) < 0.5
    }
}

/// The factor of the guideline's uncertainty that stands for the covariates.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SavingsFactor {
    /// 1.26 throughout. Source: Reddy and Claridge (2000), ASHRAE Guideline 14-2002.
    Original,
    /// Polynomial in the months after the change, for daily readings. Source: Sun and Baltazar (2013).
    Daily {
        /// Months after the change.
        months: f64,
    },
    /// Polynomial in the months after the change, for monthly readings. Source: Sun and Baltazar (2013).
    Monthly {
        /// Months after the change.
        months: f64,
    },
}

impl SavingsFactor {
    /// The factor.
    pub fn value(self) -> f64 {
        match self {
            SavingsFactor::Original => 1.26,
            SavingsFactor::Daily { months } => (-0.00024 * months + 0.03535) * months + 1.00286,
            SavingsFactor::Monthly { months } => (-0.00022 * months + 0.03306) * months + 0.94054,
        }
    }
}

/// Uncertainty of a saving as a share of it: t × factor × CV/F × √((n/n′)(1 + 2/n′)/m).
///
/// `t` quantile of the confidence; `cv` of the model before and `share` saved F; `before` readings n, worth n′
/// independent ones, and `after` readings m. Source: ASHRAE Guideline 14-2014, annex B.
///
/// ```
/// use pinfilm::log::proof::{SavingsFactor, fractional_savings_uncertainty};
/// let year = fractional_savings_uncertainty(1.645, SavingsFactor::Original, 0.08, 0.1, 365.0, 91.25, 365.0);
/// assert!((year - 0.175_476_1).abs() < 1e-7);
/// ```
pub fn fractional_savings_uncertainty(
    t: f64,
    factor: SavingsFactor,
    cv: f64,
    share: f64,
    before: f64,
    worth: f64,
    after: f64,
) -> f64 {
    t * factor.value() * cv / share * (before / worth * (1.0 + 2.0 / worth) / after).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_covariates_it_is_the_difference_of_means() {
        let log: Vec<f64> = (0..60).map(|t| f64::from(t * 7 % 10) + if t < 40 { 5.0 } else { 4.0 }).collect();
        let found = avoided(&log, 40, &[], 0.95).unwrap();
        assert!((found.avoided - 20.0).abs() < 1e-10 && (found.share - 1.0 / 9.5).abs() < 1e-12);
        // and the textbook's prediction error of a sum where neighbours do not resemble each other
        assert!(found.lag1 < 0.0);
        let s2 = 40.0 / 39.0 * 8.25;
        assert!((found.error - (s2 * (20.0 + 400.0 / 40.0f64)).sqrt()).abs() < 1e-10);
    }

    #[test]
    fn claims() {
        let log = |cut: f64| {
            (0..60).map(|t| f64::from(t * 7 % 10) + if t < 40 { 5.0 } else { 5.0 - cut }).collect::<Vec<f64>>()
        };
        assert!(avoided(&log(3.0), 40, &[], 0.95).unwrap().may_be_claimed());
        assert!(!avoided(&log(0.5), 40, &[], 0.95).unwrap().may_be_claimed());
        assert!(!avoided(&log(-3.0), 40, &[], 0.95).unwrap().may_be_claimed());
        assert!(avoided(&log(1.0), 60, &[], 0.95).is_err());
    }

    #[test]
    fn factors_meet_near_a_year() {
        assert!((SavingsFactor::Daily { months: 12.0 }.value() - 1.3925).abs() < 1e-4);
        assert!((SavingsFactor::Monthly { months: 12.0 }.value() - 1.3056).abs() < 1e-4);
        assert!(SavingsFactor::Daily { months: 1.0 }.value() < SavingsFactor::Original.value());
    }
}
