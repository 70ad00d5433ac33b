//! Spread and autocorrelation of a log whose level may jump.

use super::Cost;
use crate::log::statistics::{median, unbiased_lag1, variance_inflation};

/// Median absolute deviation to standard deviation of a normal spread: 1/Φ⁻¹(3/4).
const MAD_TO_DEVIATION: f64 = 1.482_602_218_5;
/// Differences farther than this many standard deviations from their median are trimmed.
const TRIM: f64 = 3.5;
/// Autocorrelations above this are not believed.
const MOST: f64 = 0.95;
/// Differences that differ by less than this share of the largest are equal: the rest is rounding.
const ROUNDING: f64 = 1e-9;

/// Spread and autocorrelation of the noise of a log.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Noise {
    /// Lag-one autocorrelation, 0 to 0.95.
    pub lag1: f64,
    /// Standard deviation of a reading about its level, in the unit of the readings.
    pub deviation: f64,
}

/// Noise of `readings` (three or more) from their first and second differences.
///
/// A change of level is one outlier among the first differences and two among the second; outliers are trimmed, never
/// drawn in, since a drawn-in jump would count twice in the second. Where a third or more of the differences are equal,
/// as with a coarse clamp, the others say what an outlier is. Takes the noise for first-order autoregressive. Source:
/// differences after von Neumann (1941), trimming by the median absolute deviation after Hampel (1974); their union is
/// a closure of our own.
pub fn robust_noise(readings: &[f64]) -> Noise {
    let by = |lag: usize| trimmed_square(readings.iter().zip(&readings[lag..]).map(|(a, b)| b - a).collect());
    let (first, second) = (by(1), by(2));
    if first <= 0.0 {
        return Noise { lag1: 0.0, deviation: 0.0 };
    }
    let lag1 = (second / first - 1.0).clamp(0.0, MOST);
    Noise { lag1, deviation: (first / (2.0 * (1.0 - lag1))).sqrt() }
}

/// Mean square about the median of the differences that are not outliers.
fn trimmed_square(mut differences: Vec<f64>) -> f64 {
    let centre = median(&mut differences);
    let mut away: Vec<f64> = differences.iter().map(|d| (d - centre).abs()).collect();
    let rounding = ROUNDING * away.iter().copied().fold(0.0, f64::max);
    let mut moved: Vec<f64> = away.iter().copied().filter(|d| *d > rounding).collect();
    // a coarse or stuck clamp repeats itself, and the median of what it repeats is nothing
    let repeats = away.len() - moved.len() > away.len() / 3 && !moved.is_empty();
    let spread = MAD_TO_DEVIATION * median(if repeats { &mut moved } else { &mut away });
    let limit = if spread > 0.0 { TRIM * spread } else { f64::INFINITY };
    let (sum, count) =
        away.iter().filter(|d| **d <= limit).fold((0.0, 0usize), |(sum, count), d| (sum + d * d, count + 1));
    sum / count as f64
}

/// Price of one change among `count` readings: 4 σ² ln n (1 + ρ)/(1 − ρ), or 5 ln n (1 + ρ)/(1 − ρ) for mean and variance.
///
/// ρ is the autocorrelation of `noise`, raised by the bias of a short log. Source: ln n after Schwarz (1978) and Yao
/// (1988); the constants and the factor for autocorrelation are closures of our own, set by simulated false alarms.
pub fn penalty(cost: Cost, noise: Noise, count: usize) -> f64 {
    let inflated = (count as f64).ln() * variance_inflation(unbiased_lag1(noise.lag1, count, MOST));
    match cost {
        Cost::Mean => 4.0 * noise.deviation * noise.deviation * inflated,
        Cost::MeanVariance => 5.0 * inflated,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A first-order autoregressive series from a small linear congruential generator.
    fn wander(n: usize, rho: f64) -> Vec<f64> {
        let mut state = 12345u64;
        let mut uniform = || {
            state = state.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
            (state >> 11) as f64 / (1u64 << 53) as f64
        };
        let mut x = 0.0;
        (0..n)
            .map(|_| {
                let z: f64 = (0..12).map(|_| uniform()).sum::<f64>() - 6.0;
                x = rho * x + (1.0 - rho * rho).sqrt() * z;
                x
            })
            .collect()
    }

    #[test]
    fn jumps_do_not_pollute() {
        for rho in [0.0, 0.5, 0.8] {
            let mut log = wander(20_000, rho);
            let clean = robust_noise(&log);
            assert!((clean.lag1 - rho).abs() < 0.04 && (clean.deviation - 1.0).abs() < 0.05, "{rho} {clean:?}");
            log.iter_mut().enumerate().for_each(|(t, y)| *y += 40.0 * (t / 500) as f64);
            let jumped = robust_noise(&log);
            assert!((jumped.lag1 - clean.lag1).abs() < 0.02 && (jumped.deviation - clean.deviation).abs() < 0.02);
        }
    }

    #[test]
    fn steps_of_a_display_are_equal_whatever_their_rounding() {
        let log: Vec<f64> = wander(5000, 0.0).iter().map(|x| 2.8 + 0.1 * (0.6 * x).round()).collect();
        let mut jumped = log.clone();
        jumped.iter_mut().enumerate().for_each(|(t, y)| *y += 3.0 * (t / 500) as f64);
        let (clean, found) = (robust_noise(&log), robust_noise(&jumped));
        assert!(
            (clean.deviation - 0.066).abs() < 0.006 && (found.deviation - clean.deviation).abs() < 0.002,
            "{found:?}"
        );
    }

    #[test]
    fn constant_log_has_no_noise() {
        assert_eq!(robust_noise(&[3.0; 9]), Noise { lag1: 0.0, deviation: 0.0 });
    }
}
