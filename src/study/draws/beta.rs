//! The beta distribution: its inverse, and its shapes from two percentiles.

use crate::error::{Code, Error, Result};
use crate::numeric::root;
use statrs::function::beta::{beta_reg, ln_beta};

/// The share of 0..1 that a share `u` (0 to 1, both excluded) of a beta distribution with shapes `a`, `b` > 0 lies below.
///
/// Newton's method on logarithms, kept inside a bracket: ln F is nearly straight in ln x down the lower tail, where a
/// draw may be as small as 1e-30. Accurate to about 1e-13 relative.
pub(super) fn beta_quantile(a: f64, b: f64, u: f64) -> f64 {
    if u > beta_reg(a, b, 0.5) { 1.0 - lower_half(b, a, 1.0 - u) } else { lower_half(a, b, u) }
}

/// [`beta_quantile`] where it is at most 1/2.
fn lower_half(a: f64, b: f64, u: f64) -> f64 {
    let ln_beta = ln_beta(a, b);
    let (mut low, mut high) = (f64::MIN_POSITIVE.ln(), 0.5_f64.ln());
    // the first term of the series of F, exact far down
    let mut ln_x = (((u * a).ln() + ln_beta) / a).clamp(low, high);
    for _ in 0..100 {
        let x = ln_x.exp();
        let share = beta_reg(a, b, x);
        if share < u {
            low = ln_x;
        } else {
            high = ln_x;
        }
        let slope = (a * ln_x + (b - 1.0) * (-x).ln_1p() - ln_beta).exp() / share;
        let mut next = ln_x - (share / u).ln() / slope;
        if !(next >= low && next <= high) {
            next = 0.5 * (low + high);
        }
        // the next step would be its square
        if (next - ln_x).abs() < 1e-8 {
            return next.exp();
        }
        ln_x = next;
    }
    ln_x.exp()
}

/// Shapes of the beta distribution on 0..1 of which 5 % lie below `p5` and 5 % above `p95`.
///
/// For every sum a + b one mean puts 5 % below `p5`; the sum is then found from the upper end.
pub(super) fn beta_by_range(p5: f64, p95: f64) -> Result<(f64, f64)> {
    if !(0.0 < p5 && p5 < p95 && p95 < 1.0) {
        let message =
            format!("no share has {p5} and {p95} as its 5 % and 95 % values: give two rising numbers between 0 and 1");
        return Err(Error::new(Code::Inconsistent, "beta", message).number(p5).limit("0 < P5 < P95 < 1"));
    }
    let shapes = |ln_sum: f64| -> Result<(f64, f64)> {
        let sum = ln_sum.exp();
        let below = |mean: f64| beta_reg(mean * sum, (1.0 - mean) * sum, p5) - 0.05;
        let mean = root("mean of a beta distribution", 1e-9, 1.0 - 1e-9, 1e-15, 0.0, below)?;
        Ok((mean * sum, (1.0 - mean) * sum))
    };
    let mut failed = None;
    let above = |ln_sum: f64| match shapes(ln_sum) {
        Ok((a, b)) => beta_reg(a, b, p95) - 0.95,
        Err(why) => {
            failed = Some(why);
            0.0
        }
    };
    let ln_sum = root("beta distribution", (1e-2_f64).ln(), (1e6_f64).ln(), 1e-14, 1e-14, above)?;
    failed.map_or_else(|| shapes(ln_sum), Err)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn round_trip(ln_a in -2.0..6.0_f64, ln_b in -2.0..6.0_f64, u in 1e-9..1.0_f64) {
            let (a, b) = (ln_a.exp(), ln_b.exp());
            let x = beta_quantile(a, b, u);
            prop_assert!((0.0..=1.0).contains(&x));
            if x < 1.0 - 1e-6 && x > 0.0 {
                prop_assert!((beta_reg(a, b, x) / u - 1.0).abs() < 1e-9, "{} {}", x, beta_reg(a, b, x));
            }
        }
    }

    /// a = b = 1 is uniform; a = 2, b = 1 has F = x².
    #[test]
    fn closed_forms() {
        for u in [1e-10, 0.01, 0.3, 0.5, 0.7, 0.999] {
            assert!((beta_quantile(1.0, 1.0, u) / u - 1.0).abs() < 1e-13);
            assert!((beta_quantile(2.0, 1.0, u) / u.sqrt() - 1.0).abs() < 1e-13);
            assert!((beta_quantile(1.0, 3.0, u) / (1.0 - (1.0 - u).cbrt()) - 1.0).abs() < 1e-6);
        }
    }

    #[test]
    fn impossible_ranges_are_refused() {
        for (p5, p95) in [(0.0, 0.5), (0.5, 0.5), (0.5, 1.0), (f64::NAN, 0.5)] {
            assert_eq!(beta_by_range(p5, p95).unwrap_err().code, Code::Inconsistent);
        }
    }
}
