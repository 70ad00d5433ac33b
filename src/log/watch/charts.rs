//! Two charts for small lasting shifts, one reading at a time.

use serde::{Deserialize, Serialize};

/// Two-sided CUSUM of innovations in standard deviations.
///
/// C⁺ = max(0, C⁺ + a − k), C⁻ = max(0, C⁻ − a − k); an alarm above h. Source: Page (1954).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Cusum {
    /// Allowance k: half of the shift that is to be found.
    pub allowance: f64,
    /// Threshold h.
    pub threshold: f64,
    /// Sum of what was too high.
    pub up: f64,
    /// Sum of what was too low.
    pub down: f64,
}

impl Cusum {
    /// A chart that has seen nothing.
    pub const fn new(allowance: f64, threshold: f64) -> Self {
        Cusum { allowance, threshold, up: 0.0, down: 0.0 }
    }

    /// Takes one innovation; whether a sum now stands above the threshold.
    pub fn take(&mut self, innovation: f64) -> bool {
        self.up = (self.up + innovation - self.allowance).max(0.0);
        self.down = (self.down - innovation - self.allowance).max(0.0);
        self.up > self.threshold || self.down > self.threshold
    }
}

/// Both sums after each value, and which values stood above the threshold.
#[derive(Debug, Clone, PartialEq)]
pub struct CusumPath {
    /// C⁺.
    pub up: Vec<f64>,
    /// C⁻.
    pub down: Vec<f64>,
    /// Rows in alarm, from 0.
    pub alarms: Vec<usize>,
}

/// CUSUM of `values` about `target` with `allowance` and `threshold` in the unit of the values.
///
/// ```
/// let path = pinfilm::log::watch::cusum_path(&[0.0, 3.0, 3.0], 0.0, 0.5, 4.0);
/// assert_eq!((path.up, path.alarms), (vec![0.0, 2.5, 5.0], vec![2]));
/// ```
pub fn cusum_path(values: &[f64], target: f64, allowance: f64, threshold: f64) -> CusumPath {
    let mut chart = Cusum::new(allowance, threshold);
    let mut path = CusumPath { up: Vec::new(), down: Vec::new(), alarms: Vec::new() };
    for (row, value) in values.iter().enumerate() {
        if chart.take(value - target) {
            path.alarms.push(row);
        }
        path.up.push(chart.up);
        path.down.push(chart.down);
    }
    path
}

/// Exponentially weighted moving average of innovations in standard deviations, with its lasting limits.
///
/// z = (1 − λ) z + λ a; out beyond ±L √(λ/(2 − λ)). Source: Roberts (1959), Lucas and Saccucci (1990).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Ewma {
    /// Weight λ of the newest, 0 to 1.
    pub weight: f64,
    /// Width L of the limits in standard deviations of the average.
    pub width: f64,
    /// The average.
    pub value: f64,
}

impl Ewma {
    /// A chart that has seen nothing.
    pub const fn new(weight: f64, width: f64) -> Self {
        Ewma { weight, width, value: 0.0 }
    }

    /// Limit on either side of nothing.
    pub fn limit(&self) -> f64 {
        self.width * (self.weight / (2.0 - self.weight)).sqrt()
    }

    /// Takes one innovation; whether the average is now beyond a limit.
    pub fn take(&mut self, innovation: f64) -> bool {
        self.value += self.weight * (innovation - self.value);
        self.value.abs() > self.limit()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn mirrored_values_mirror_the_sums(values in prop::collection::vec(-4.0..4.0f64, 0..60)) {
            let path = cusum_path(&values, 0.3, 0.5, 4.0);
            let mirrored: Vec<f64> = values.iter().map(|x| 0.6 - x).collect();
            let other = cusum_path(&mirrored, 0.3, 0.5, 4.0);
            for (a, b) in path.up.iter().zip(&other.down) {
                prop_assert!((a - b).abs() < 1e-12);
            }
            prop_assert!(path.up.iter().chain(&path.down).all(|c| *c >= 0.0));
        }

        #[test]
        fn ewma_weighs_by_age(values in prop::collection::vec(-4.0..4.0f64, 1..30)) {
            let mut chart = Ewma::new(0.2, 2.7);
            values.iter().for_each(|a| { chart.take(*a); });
            let sum: f64 = values.iter().rev().enumerate().map(|(age, a)| 0.2 * 0.8f64.powi(age as i32) * a).sum();
            prop_assert!((chart.value - sum).abs() < 1e-12);
        }
    }
}
