//! The standard normal distribution.

use libm::erfc;
use statrs::function::erf::erfc_inv;
use std::f64::consts::{FRAC_1_SQRT_2, SQRT_2};

/// Probability that a standard normal number is below `z`; keeps its relative accuracy far into the lower tail.
pub fn normal_cdf(z: f64) -> f64 {
    0.5 * erfc(-z * FRAC_1_SQRT_2)
}

/// The standard normal number that a share `share` (0 to 1) lies below.
///
/// ```
/// let z = pinfilm::study::normal_quantile(0.95);
/// assert!((z - 1.644_853_626_951_472_7).abs() < 1e-14);
/// ```
pub fn normal_quantile(share: f64) -> f64 {
    -SQRT_2 * erfc_inv(2.0 * share)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn round_trip_into_both_tails() {
        for i in 1..2000 {
            let z = -6.0005 + 0.006 * f64::from(i);
            let back = normal_quantile(normal_cdf(z));
            // in the upper tail the share itself is rounded next to 1
            let allowed = 1e-14 * (1.0 + z.abs()) + 2.0 * f64::EPSILON * (0.5 * z * z).exp() * 2.6 * f64::from(z > 0.0);
            assert!((back - z).abs() < allowed, "{z} {back}");
        }
    }
}
