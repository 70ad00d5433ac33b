//! Standard errors of a regression whose residuals resemble their neighbours.

use crate::error::{Code, Error, Result};
use crate::log::least_squares::{Fit, least_squares};
use crate::log::statistics::{lag1, unbiased_lag1, variance_inflation};

/// Autocorrelations above this are not believed.
pub(super) const MOST: f64 = 0.97;
/// Least degrees of freedom of an interval.
const LEAST_DEGREES: f64 = 2.0;

/// Covariance of the coefficients of `fit` that allows for autocorrelation up to `lags` and for unequal spread.
///
/// Bartlett weights 1 − l/(lags + 1); `small_sample` multiplies by n/(n − p). With no lags it is White's covariance.
/// `columns` are those of the fit. Source: Newey and West (1987).
pub fn newey_west(columns: &[&[f64]], fit: &Fit, lags: usize, small_sample: bool) -> Vec<Vec<f64>> {
    let (n, p) = (fit.residuals.len(), columns.len());
    let scores: Vec<Vec<f64>> =
        columns.iter().map(|column| column.iter().zip(&fit.residuals).map(|(x, e)| x * e).collect()).collect();
    let scale = if small_sample { n as f64 / fit.degrees() } else { 1.0 };
    let mut middle = vec![vec![0.0; p]; p];
    for lag in 0..=lags.min(n - 1) {
        let weight = scale * (1.0 - lag as f64 / (lags as f64 + 1.0));
        for a in 0..p {
            for b in 0..p {
                let product: f64 = scores[a][lag..].iter().zip(&scores[b]).map(|(now, then)| now * then).sum();
                middle[a][b] += weight * product;
                if lag > 0 {
                    middle[b][a] += weight * product;
                }
            }
        }
    }
    let product = |a: &[Vec<f64>], b: &[Vec<f64>]| -> Vec<Vec<f64>> {
        (0..p).map(|i| (0..p).map(|j| (0..p).map(|k| a[i][k] * b[k][j]).sum()).collect()).collect()
    };
    product(&product(&fit.inverse, &middle), &fit.inverse)
}

/// Newey and West's standard errors of the coefficients of `readings` on `columns`, as in the textbook.
///
/// ```
/// use pinfilm::log::{least_squares, proof::newey_west_se};
/// let (one, y) = ([1.0; 4], [2.0, 4.0, 3.0, 5.0]);
/// let robust = newey_west_se(&[&one], &y, 0, true)?;
/// assert!((robust[0] - least_squares(&[&one], &y)?.standard_errors()[0]).abs() < 1e-14);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn newey_west_se(columns: &[&[f64]], readings: &[f64], lags: usize, small_sample: bool) -> Result<Vec<f64>> {
    let covariance = newey_west(columns, &least_squares(columns, readings)?, lags, small_sample);
    Ok(covariance.iter().enumerate().map(|(i, row)| row[i].sqrt()).collect())
}

/// Number of lags for `count` residuals with lag-one autocorrelation `lag1` (below 1).
///
/// The larger of ⌊4 (n/100)^(2/9)⌋ (Newey and West 1994, common practice) and ⌈1.1447 (α n)^(1/3)⌉ with
/// α = 4 ρ²/((1 − ρ)² (1 + ρ)²) (Andrews 1991, first-order autoregressive plug-in, from memory); at most n − 1.
pub fn andrews_lags(count: usize, lag1: f64) -> usize {
    let n = count as f64;
    let usual = (4.0 * (n / 100.0).powf(2.0 / 9.0)).floor();
    let alpha = 4.0 * lag1 * lag1 / (1.0 - lag1 * lag1).powi(2);
    let plugged_in = (1.1447 * (alpha * n).cbrt()).ceil();
    (usual.max(plugged_in) as usize).min(count.saturating_sub(1))
}

/// Two errors of one combination of coefficients, and what the residuals say of each other.
#[derive(Debug, Clone, Copy)]
pub(super) struct Errors {
    pub newey_west: f64,
    pub autoregressive: f64,
    pub lag1: f64,
    pub unbiased_lag1: f64,
    pub lags: usize,
    pub degrees: f64,
}

impl Errors {
    /// Of `weights` · coefficients.
    pub fn of(columns: &[&[f64]], fit: &Fit, weights: &[f64]) -> Self {
        let n = fit.residuals.len();
        let lag1 = lag1(&fit.residuals);
        let unbiased_lag1 = unbiased_lag1(lag1, n, MOST);
        let lags = andrews_lags(n, lag1);
        let along = |covariance: &[Vec<f64>]| {
            let rows = covariance.iter().zip(weights);
            rows.map(|(row, w)| w * row.iter().zip(weights).map(|(c, v)| c * v).sum::<f64>()).sum::<f64>().max(0.0)
        };
        Errors {
            newey_west: along(&newey_west(columns, fit, lags, true)).sqrt(),
            autoregressive: (along(&fit.covariance()) * variance_inflation(unbiased_lag1)).sqrt(),
            lag1,
            unbiased_lag1,
            lags,
            degrees: worth(n, columns.len(), unbiased_lag1),
        }
    }

    /// The error that is reported: the wider.
    pub fn wider(&self) -> f64 {
        self.newey_west.max(self.autoregressive)
    }
}

/// Degrees of freedom that `count` readings are worth beyond `parameters`: n (1 − ρ)/(1 + ρ) − p, not below 2.
pub(super) fn worth(count: usize, parameters: usize, lag1: f64) -> f64 {
    (count as f64 / variance_inflation(lag1) - parameters as f64).max(LEAST_DEGREES)
}

/// Refuses readings that leave less than two degrees of freedom for their error: it would be a guess.
pub(super) fn enough_for_an_error(readings: usize, parameters: usize) -> Result<()> {
    if readings >= parameters + 2 {
        return Ok(());
    }
    let message = format!(
        "{readings} readings settle {parameters} parameters (a level, one for each covariate, a change) with nothing left to \
         say how sure that is: log longer, or leave covariates out"
    );
    Err(Error::new(Code::Inconsistent, "readings", message)
        .number(readings as f64)
        .limit(format!("{} or more", parameters + 2)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn no_lags_and_a_constant_is_ordinary(y in prop::collection::vec(-3.0..3.0f64, 3..40)) {
            // with a constant only, White's covariance with n/(n − 1) is the ordinary one
            let one = vec![1.0; y.len()];
            let fit = least_squares(&[&one], &y).unwrap();
            let robust = newey_west(&[&one], &fit, 0, true)[0][0];
            prop_assert!((robust - fit.covariance()[0][0]).abs() < 1e-12 * (1.0 + robust));
        }

        #[test]
        fn no_lags_and_equal_squares_is_ordinary(x in prop::collection::vec(-3.0..3.0f64, 4..30)) {
            // residuals of one size, whatever the covariate: the sandwich collapses to e² (XᵀX)⁻¹
            let (one, e) = (vec![1.0; x.len()], 0.7);
            prop_assume!(x.windows(2).any(|w| (w[0] - w[1]).abs() > 0.1));
            let mut fit = least_squares(&[&one, &x], &x).unwrap();
            fit.residuals = (0..x.len()).map(|i| if i % 3 == 0 { e } else { -e }).collect();
            let robust = newey_west(&[&one, &x], &fit, 0, false);
            for (robust, inverse) in robust.iter().flatten().zip(fit.inverse.iter().flatten()) {
                prop_assert!((robust - e * e * inverse).abs() < 1e-9 * (1.0 + inverse.abs()));
            }
        }

        #[test]
        fn symmetric_and_not_negative(rows in prop::collection::vec((-3.0..3.0f64, -1.0..1.0f64), 8..40), lags in 0usize..12) {
            let (x, y): (Vec<f64>, Vec<f64>) = rows.iter().copied().unzip();
            let one = vec![1.0; x.len()];
            let fit = least_squares(&[&one, &x], &y).unwrap();
            let c = newey_west(&[&one, &x], &fit, lags, true);
            prop_assert!((c[0][1] - c[1][0]).abs() < 1e-12);
            prop_assert!(c[0][0] >= -1e-15 && c[0][0] * c[1][1] - c[0][1] * c[1][0] >= -1e-12);
        }
    }

    #[test]
    fn lags() {
        assert_eq!(andrews_lags(100, 0.0), 4);
        assert_eq!(andrews_lags(120, 0.443_998), 7);
        assert_eq!(andrews_lags(3, 0.9), 2);
        assert_eq!(worth(10, 3, 0.9), 2.0);
        assert_eq!(worth(90, 3, 0.5), 27.0);
    }
}
