//! How many readings pass until a chart gives an alarm, on average: false ones, and the one that was wanted.
//!
//! The mean run length L(z) from a chart at z satisfies an integral equation; it is put at Gauss points on panels about as
//! wide as the kernel and solved there (Nyström), which is exact to rounding since the kernel is smooth.

use crate::error::Result;
use crate::log::least_squares::Triangle;
use crate::numeric::{GAUSS_LEGENDRE_16, root};
use statrs::distribution::{Continuous, ContinuousCDF, Normal};

/// Gauss points and weights on `low..high` in panels not wider than `panel`.
fn points(low: f64, high: f64, panel: f64) -> Vec<(f64, f64)> {
    let panels = ((high - low) / panel).ceil().max(1.0);
    let half = 0.5 * (high - low) / panels;
    (0..panels as usize)
        .flat_map(|i| {
            let middle = low + (2 * i + 1) as f64 * half;
            let both = move |(x, w): (f64, f64)| [(middle - half * x, half * w), (middle + half * x, half * w)];
            GAUSS_LEGENDRE_16.into_iter().flat_map(both)
        })
        .collect()
}

/// L at the first of `states`, where `kernel(z, i)` is the chance, weight included, to go from z to state i.
///
/// Infinite where the chance of an alarm is beyond rounding.
fn run_length(states: &[f64], kernel: impl Fn(f64, usize) -> f64) -> f64 {
    let columns = (0..states.len()).map(|i| {
        let stay = |(row, z): (usize, &f64)| f64::from(u8::from(row == i)) - kernel(*z, i);
        states.iter().enumerate().map(stay).collect()
    });
    let Ok(triangle) = Triangle::new(columns.collect()) else { return f64::INFINITY };
    let length = triangle.solve(&vec![1.0; states.len()])[0];
    if length >= 1.0 { length } else { f64::INFINITY }
}

/// Mean readings until a one-sided CUSUM with `allowance` k ≥ 0 and `threshold` h > 0 gives an alarm, from a fresh chart.
///
/// `shift` of the mean of the innovations in standard deviations, up positive; innovations normal and independent.
/// L(z) = 1 + L(0) Φ(k − δ − z) + ∫₀ʰ L(x) φ(x − z + k − δ) dx. Source: Page (1954); Nyström's method.
///
/// ```
/// let found = pinfilm::log::watch::cusum_run_length(0.5, 5.0, 1.0);
/// assert!((found - 10.375_975).abs() < 1e-6);
/// ```
pub fn cusum_run_length(allowance: f64, threshold: f64, shift: f64) -> f64 {
    let normal = Normal::standard();
    let drift = allowance - shift;
    let points = points(0.0, threshold, 1.0);
    // the chart rests at nothing with a chance of its own, the first state
    let states: Vec<f64> = [0.0].into_iter().chain(points.iter().map(|(x, _)| *x)).collect();
    run_length(&states, |z, i| match i.checked_sub(1).map(|i| points[i]) {
        None => normal.cdf(drift - z),
        Some((x, weight)) => weight * normal.pdf(x - z + drift),
    })
}

/// Mean readings until a two-sided CUSUM gives an alarm: 1/(1/L⁺ + 1/L⁻); half of the one-sided without a shift.
///
/// Source: Kemp (1971).
pub fn cusum_run_length_two_sided(allowance: f64, threshold: f64, shift: f64) -> f64 {
    let up = cusum_run_length(allowance, threshold, shift);
    let down = if shift == 0.0 { up } else { cusum_run_length(allowance, threshold, -shift) };
    1.0 / (1.0 / up + 1.0 / down)
}

/// Threshold of a two-sided CUSUM with mean readings `run_length` (1.5 to 1e7) between false alarms.
///
/// For a baseline that is known; see [`widened_threshold`](super::widened_threshold) for one that was learnt.
///
/// ```
/// let h = pinfilm::log::watch::cusum_threshold(0.5, 365.0)?;
/// assert!((h - 4.760_445).abs() < 1e-6);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn cusum_threshold(allowance: f64, run_length: f64) -> Result<f64> {
    // run length about e^(2 k h) beyond k: ample on both sides for k of 0.1 to 2
    let over = |h: f64| (cusum_run_length_two_sided(allowance, h, 0.0) / run_length).ln();
    root("threshold", 1e-3, (run_length.ln() + 3.0) / (2.0 * allowance).max(0.2), 1e-13, 1e-13, over)
}

/// Siegmund's approximation of [`cusum_run_length_two_sided`] without a shift: b = h + 1.166.
///
/// Source: Siegmund (1985). Within 1 % for k = 0.5 and h of 4 to 5; for hand calculation.
pub fn siegmund_run_length(allowance: f64, threshold: f64) -> f64 {
    let exponent = 2.0 * allowance * (threshold + 1.166);
    0.5 * (exponent.exp_m1() - exponent) / (2.0 * allowance * allowance)
}

/// Mean readings until a two-sided EWMA with `weight` λ (0.02 to 1) and limits of `width` L gives an alarm.
///
/// `shift` as in [`cusum_run_length`]; lasting limits ±L √(λ/(2 − λ)) from the first reading on. Source: Crowder (1987).
///
/// ```
/// let found = pinfilm::log::watch::ewma_run_length(0.1, 2.7, 0.0);
/// assert!((found - 368.993_734).abs() < 1e-6);
/// ```
pub fn ewma_run_length(weight: f64, width: f64, shift: f64) -> f64 {
    let normal = Normal::standard();
    let limit = super::Ewma::new(weight, width).limit();
    let points = points(-limit, limit, weight);
    // the start, which no step leads back to
    let states: Vec<f64> = [0.0].into_iter().chain(points.iter().map(|(x, _)| *x)).collect();
    run_length(&states, |z, i| match i.checked_sub(1).map(|i| points[i]) {
        None => 0.0,
        Some((x, share)) => share * normal.pdf((x - (1.0 - weight) * z) / weight - shift) / weight,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weight_of_one_is_a_shewhart_chart() {
        let normal = Normal::standard();
        for (width, shift) in [(3.0, 0.0), (2.5, 1.0)] {
            let alarm = normal.cdf(-width - shift) + normal.cdf(shift - width);
            assert!((ewma_run_length(1.0, width, shift) * alarm - 1.0).abs() < 1e-10);
        }
    }

    #[test]
    fn known_run_lengths() {
        for (h, two_sided, siegmund) in [(4.0, 167.683_789, 169.05), (5.0, 465.443_506, 469.11)] {
            assert!((cusum_run_length_two_sided(0.5, h, 0.0) - two_sided).abs() < 1e-6 * two_sided);
            assert!((siegmund_run_length(0.5, h) - siegmund).abs() < 0.01);
        }
        assert!((cusum_threshold(0.5, 1000.0).unwrap() - 5.757_350_316).abs() < 1e-8);
        assert!((ewma_run_length(0.1, 2.814, 1.0) - 10.330_665).abs() < 1e-6);
    }

    #[test]
    fn far_shift_alarms_at_once_and_away_from_it_never() {
        assert!((cusum_run_length(0.5, 4.0, 30.0) - 1.0).abs() < 1e-9);
        assert!(cusum_run_length_two_sided(0.5, 4.0, 6.0) < 1.5);
        for k in [0.25, 0.5, 1.0] {
            for target in [20.0, 365.0, 1e5] {
                let h = cusum_threshold(k, target).unwrap();
                assert!((cusum_run_length_two_sided(k, h, 0.0) / target - 1.0).abs() < 1e-6);
            }
        }
    }
}
