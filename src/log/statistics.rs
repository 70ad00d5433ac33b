//! Mean, spread, autocorrelation and Welch's test of a series of readings.

use crate::drive::effective_count;
use statrs::distribution::{ContinuousCDF, StudentsT};

/// Sum with Neumaier's correction, so that a million readings lose no digits.
pub(super) fn sum(values: impl IntoIterator<Item = f64>) -> f64 {
    let (mut sum, mut lost) = (0.0f64, 0.0f64);
    for value in values {
        let next = sum + value;
        lost += if sum.abs() >= value.abs() { (sum - next) + value } else { (value - next) + sum };
        sum = next;
    }
    sum + lost
}

/// Arithmetic mean of one reading or more.
pub fn mean(values: &[f64]) -> f64 {
    sum(values.iter().copied()) / values.len() as f64
}

/// Sample standard deviation (n − 1) of two readings or more, in two passes.
///
/// The second pass takes off what rounding left in the mean. Source: Chan, Golub and LeVeque (1983), corrected two-pass.
pub fn standard_deviation(values: &[f64]) -> f64 {
    let (mean, n) = (mean(values), values.len() as f64);
    let squares = sum(values.iter().map(|x| (x - mean) * (x - mean)));
    let rest = sum(values.iter().map(|x| x - mean));
    ((squares - rest * rest / n) / (n - 1.0)).max(0.0).sqrt()
}

/// Lag-one autocorrelation Σ d(t) d(t+1) / Σ d², d from the mean; 0 for a series that never changes.
///
/// Rows count as neighbours if they follow each other, whatever the gap between them. Source: Box and Jenkins (1970).
///
/// ```
/// use pinfilm::log::statistics::lag1;
/// assert_eq!(lag1(&[1.0, 3.0, 2.0]), -0.5);
/// ```
pub fn lag1(values: &[f64]) -> f64 {
    let mean = mean(values);
    let squares = sum(values.iter().map(|x| (x - mean) * (x - mean)));
    if squares > 0.0 { sum(values.windows(2).map(|w| (w[0] - mean) * (w[1] - mean))) / squares } else { 0.0 }
}

/// Lag-one autocorrelation for use in errors: raised by the bias of short series, held to `most`; 0 if not positive.
///
/// An autocorrelation estimated from `count` readings is on average (1 + 4ρ)/n too low. Source: Kendall (1954), Marriott
/// and Pope (1954); that negative values count as nothing is a cautious closure of our own.
pub fn unbiased_lag1(lag1: f64, count: usize, most: f64) -> f64 {
    if lag1 > 0.0 { (lag1 + (1.0 + 4.0 * lag1) / count as f64).min(most) } else { 0.0 }
}

/// Factor on the variance of a mean because successive readings resemble each other: (1 + ρ)/(1 − ρ), ρ below 1.
pub fn variance_inflation(lag1: f64) -> f64 {
    1.0 / effective_count(1.0, lag1)
}

/// Durbin and Watson's statistic of residuals: 2 without autocorrelation, 0 with full. Source: Durbin and Watson (1950).
pub fn durbin_watson(residuals: &[f64]) -> f64 {
    sum(residuals.windows(2).map(|w| (w[1] - w[0]).powi(2))) / sum(residuals.iter().map(|e| e * e))
}

/// Median of one reading or more; sorts them.
pub fn median(values: &mut [f64]) -> f64 {
    let n = values.len();
    let (below, &mut upper, _) = values.select_nth_unstable_by(n / 2, f64::total_cmp);
    if n % 2 == 1 {
        return upper;
    }
    let lower = below.iter().copied().max_by(f64::total_cmp).unwrap_or(upper);
    lower + 0.5 * (upper - lower)
}

/// Welch's test of two means with unequal spread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Welch {
    /// Difference of the means over its standard error.
    pub t: f64,
    /// Degrees of freedom.
    pub degrees: f64,
    /// Two-sided probability of a greater |t| without a difference.
    pub p: f64,
}

/// Welch's test; two readings or more on each side, not all alike.
///
/// Takes readings for independent: for those of a log use [`before_after`](super::proof::before_after).
/// Source: Welch (1947), Satterthwaite (1946).
pub fn welch(before: &[f64], after: &[f64]) -> Welch {
    let share = |x: &[f64]| standard_deviation(x).powi(2) / x.len() as f64;
    let (a, b) = (share(before), share(after));
    let t = (mean(before) - mean(after)) / (a + b).sqrt();
    let degrees = (a + b).powi(2) / (a * a / (before.len() as f64 - 1.0) + b * b / (after.len() as f64 - 1.0));
    Welch { t, degrees, p: two_sided(t, degrees) }
}

/// Two-sided probability of a greater |t| by chance; 1 where there are no degrees of freedom.
pub(super) fn two_sided(t: f64, degrees: f64) -> f64 {
    StudentsT::new(0.0, 1.0, degrees).map_or(1.0, |student| 2.0 * student.sf(t.abs()))
}

/// Quantile of Student's t at `probability` (0 to 1) and `degrees` > 0; NaN without degrees of freedom.
pub(super) fn student_quantile(probability: f64, degrees: f64) -> f64 {
    StudentsT::new(0.0, 1.0, degrees).map_or(f64::NAN, |student| student.inverse_cdf(probability))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn shift_and_scale(x in prop::collection::vec(-10.0..10.0f64, 3..50), by in -1e6..1e6f64, scale in 0.1..9.0f64) {
            let moved: Vec<f64> = x.iter().map(|x| by + scale * x).collect();
            prop_assert!((standard_deviation(&moved) - scale * standard_deviation(&x)).abs() < 1e-8);
            prop_assert!((lag1(&moved) - lag1(&x)).abs() < 1e-5);
            let (a, b) = (&moved[..moved.len() / 2 + 1], &moved[moved.len() / 2 - 1..]);
            prop_assert!((welch(a, b).t + welch(b, a).t).abs() < 1e-12);
        }

        #[test]
        fn half_below_half_above(mut x in prop::collection::vec(-10.0..10.0f64, 1..30)) {
            let m = median(&mut x);
            let (below, above) = (x.iter().filter(|x| **x < m).count(), x.iter().filter(|x| **x > m).count());
            prop_assert_eq!(below, above);
        }
    }

    #[test]
    fn sum_keeps_small_terms() {
        assert_eq!(sum([1e16, 1.0, -1e16]), 1.0);
        assert_eq!(sum((0..1000).map(|_| 0.1)), 100.0);
    }

    #[test]
    fn constant_series() {
        assert_eq!((lag1(&[2.0; 5]), standard_deviation(&[0.1; 7])), (0.0, 0.0));
    }

    #[test]
    fn bias_of_short_series() {
        assert_eq!(unbiased_lag1(-0.3, 50, 0.97), 0.0);
        assert_eq!(unbiased_lag1(0.5, 100, 0.97), 0.53);
        assert_eq!(unbiased_lag1(0.96, 20, 0.97), 0.97);
        assert_eq!(variance_inflation(0.5), 3.0);
    }

    #[test]
    fn student() {
        assert!((student_quantile(0.975, 10.0) - 2.228_138_851_964_939).abs() < 1e-9);
        let p = two_sided(2.228_138_851_964_939, 10.0);
        assert!((p - 0.05).abs() < 1e-10, "{p}");
    }
}
