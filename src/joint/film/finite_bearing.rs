//! Bearings of the length that chain joints have: between the short and the infinitely long one.
//!
//! Closures of our own: the two limits are known in closed form, and a power mean joins them. Constants were fitted to
//! solutions of Reynolds' equation with film rupture (length/diameter 0.5 to 5, eccentricity 0.1 to 0.999), which the
//! steady closure meets within −9 and +11 %.

use super::Eccentricity;
use super::long_bearing::{long_bearing_load, long_bearing_slope};
use super::newton::{ANYWHERE, rising_root};
use super::short_bearing::{short_bearing_load, short_bearing_slope, squeeze_number_half, squeeze_number_half_slope};
use crate::error::Result;
use std::f64::consts::PI;

/// Exponent of the power mean. Fitted, see the head of this file.
const EXPONENT: f64 = 0.84;
/// Share of a half Sommerfeld film that a film which ruptures by itself carries. Fitted, see the head of this file.
const LONG: f64 = 1.17;

/// Two limits joined: [short^−m + long^−m]^(−1/m).
struct Joined {
    /// Logarithm of the result.
    ln: f64,
    /// Weight of the short limit in its slope.
    short_share: f64,
}

impl Joined {
    fn new(short: f64, long: f64) -> Joined {
        let power = (-EXPONENT * (short / long).ln()).exp();
        Joined { ln: long.ln() - power.ln_1p() / EXPONENT, short_share: power / (1.0 + power) }
    }

    fn slope(&self, short: f64, long: f64) -> f64 {
        self.short_share * short + (1.0 - self.short_share) * long
    }
}

/// Logarithm of the steady load number and its slope against ln q.
pub(super) fn steady_load(q: f64, length_to_diameter_squared: f64) -> (f64, f64) {
    let eccentricity = Eccentricity::from_closeness(q);
    let short = 4.0 * length_to_diameter_squared * short_bearing_load(eccentricity);
    let joined = Joined::new(short, LONG * long_bearing_load(eccentricity));
    (joined.ln, joined.slope(short_bearing_slope(q), long_bearing_slope(q)))
}

/// A bound of the steady load number from above, without logarithms: the long bearing alone.
pub(super) fn steady_load_bound(q: f64) -> f64 {
    LONG * long_bearing_load(Eccentricity::from_closeness(q))
}

/// A closeness e/(1 − e) that a steadily loaded bearing has at least, without solving for it.
///
/// The long bearing carries more than the finite one, and less than 2q + 5.3.
pub(super) fn steady_at_least(load: f64) -> f64 {
    0.5 * (load / LONG - 5.3)
}

/// A closeness that a joint squeezed for a time number has at least, whatever it began with: the long limit alone.
pub(super) fn squeezed_at_least(number: f64) -> f64 {
    let s = number / (12.0 * PI * LONG);
    s * (s + (s * s + 1.0).sqrt())
}

/// Load of a steadily turning bearing of finite length, W c²/(η ω R³ L).
///
/// `length_to_diameter` 0.2 to 10. Source: closure of our own (head of this file) between DuBois and Ocvirk (1953) and
/// Sommerfeld (1904).
pub fn finite_bearing_load(eccentricity: Eccentricity, length_to_diameter: f64) -> f64 {
    steady_load(eccentricity.closeness(), length_to_diameter * length_to_diameter).0.exp()
}

/// How many times more a short bearing carries than one of finite length at its eccentricity, 1 or more.
///
/// The short limit over the closure of [`finite_bearing_load`], written without logarithms of loads.
pub(in crate::joint) fn short_over_finite(eccentricity: Eccentricity, length_to_diameter_squared: f64) -> f64 {
    let short = 4.0 * length_to_diameter_squared * short_bearing_load(eccentricity);
    let ratio = short / (LONG * long_bearing_load(eccentricity));
    let (rest, root) = ((-EXPONENT * ratio.ln()).exp(), 1.0 / EXPONENT);
    if rest > 1e-3 {
        return ratio * (1.0 + rest).powf(root);
    }
    // Near contact the long limit all but decides; four terms of the binomial series of (1 + rest)^root are exact.
    let series = (root - 2.0) / 3.0 * rest * (1.0 + (root - 3.0) / 4.0 * rest);
    ratio * (1.0 + root * rest * (1.0 + (root - 1.0) / 2.0 * rest * (1.0 + series)))
}

/// Eccentricity of a steadily turning bearing of finite length under the load number W c²/(η ω R³ L), > 0.
///
/// Inverse of [`finite_bearing_load`].
pub fn finite_bearing_eccentricity(load: f64, length_to_diameter: f64) -> Result<Eccentricity> {
    Ok(Eccentricity::from_closeness(log_closeness(load, length_to_diameter, None)?.exp()))
}

/// Logarithm of the closeness of [`finite_bearing_eccentricity`], from that of a bearing much like it where one is known.
pub(super) fn log_closeness(load: f64, length_to_diameter: f64, near: Option<f64>) -> Result<f64> {
    let squared = length_to_diameter * length_to_diameter;
    let target = load.ln();
    // heavily loaded bearings carry about what long ones do
    let start = near.unwrap_or_else(|| steady_at_least(load).max(load / 5.0).max(1e-3).ln());
    rising_root("eccentricity of a bearing", ANYWHERE, start, |log_q| {
        let (ln, slope) = steady_load(log_q.exp(), squared);
        (ln - target, slope)
    })
}

/// Logarithm of the squeeze number and its slope against ln q.
pub(super) fn squeeze_number(q: f64, length_to_diameter_squared: f64) -> (f64, f64) {
    let r2 = 1.0 + 2.0 * q;
    let r = r2.sqrt();
    let short = squeeze_number_half(q);
    // 12π k e/√(1 − e²); its slope d ln/d ln q = 1 − q/(1 + 2q)
    let joined = Joined::new(4.0 * length_to_diameter_squared * short, 12.0 * PI * LONG * q / r);
    (joined.ln, joined.slope(q * squeeze_number_half_slope(q) / short, 1.0 - q / r2))
}

/// Time that a resting joint of finite length takes to be squeezed from the middle to an eccentricity, as a number:
/// t W c²/(η R³ L).
///
/// Source: closure of our own between the short half film (Pinkus and Sternlicht 1961) and the long bearing,
/// 12π e/√(1 − e²). Against solutions of Reynolds' equation it is 10 to 39 % too stiff.
pub fn finite_squeeze_time(eccentricity: Eccentricity, length_to_diameter: f64) -> f64 {
    squeeze_number(eccentricity.closeness(), length_to_diameter * length_to_diameter).0.exp()
}

/// Eccentricity of a joint that rested for the squeeze number t W c²/(η R³ L), from the middle.
///
/// Inverse of [`finite_squeeze_time`].
pub fn finite_squeeze_eccentricity(number: f64, length_to_diameter: f64) -> Result<Eccentricity> {
    let squared = length_to_diameter * length_to_diameter;
    let target = number.ln();
    // near contact only the long limit counts
    let scale = 12.0 * PI * LONG;
    let start = (number * number / (2.0 * scale * scale)).max(1e-6).ln();
    let log_q = rising_root("squeezed film", ANYWHERE, start, |log_q| {
        let (ln, slope) = squeeze_number(log_q.exp(), squared);
        (ln - target, slope)
    })?;
    Ok(Eccentricity::from_closeness(log_q.exp()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn close(a: f64, b: f64, relative: f64) -> bool {
        (a - b).abs() <= relative * b.abs()
    }

    proptest! {
        #[test]
        fn load_and_eccentricity_are_inverse(log_q in -20.0..40.0_f64, ld in 0.2..10.0_f64) {
            let q = log_q.exp();
            let load = finite_bearing_load(Eccentricity::from_closeness(q), ld);
            prop_assert!(close(finite_bearing_eccentricity(load, ld).unwrap().closeness(), q, 1e-11));
        }

        #[test]
        fn squeeze_number_and_eccentricity_are_inverse(log_q in -20.0..40.0_f64, ld in 0.2..10.0_f64) {
            let q = log_q.exp();
            let number = finite_squeeze_time(Eccentricity::from_closeness(q), ld);
            prop_assert!(close(finite_squeeze_eccentricity(number, ld).unwrap().closeness(), q, 1e-11));
        }

        #[test]
        fn slopes_are_derivatives(log_q in -10.0..12.0_f64, ld in 0.2..10.0_f64) {
            let (d, ld2) = (1e-5, ld * ld);
            for f in [steady_load, squeeze_number] {
                let slope = (f((log_q + d).exp(), ld2).0 - f((log_q - d).exp(), ld2).0) / (2.0 * d);
                prop_assert!((f(log_q.exp(), ld2).1 - slope).abs() < 1e-8, "{} {slope}", f(log_q.exp(), ld2).1);
            }
        }

        #[test]
        fn short_and_long_bearings_are_the_limits(e in 0.05..0.95_f64) {
            let at = Eccentricity::from_ratio(e);
            prop_assert!(close(finite_bearing_load(at, 1e-6), 4e-12 * short_bearing_load(at), 1e-7));
            prop_assert!(close(finite_bearing_load(at, 1e6), LONG * long_bearing_load(at), 1e-7));
        }

        #[test]
        fn share_of_the_short_bearing_is_that_of_the_loads(log_q in -20.0..40.0_f64, ld in 0.2..10.0_f64) {
            let at = Eccentricity::from_closeness(log_q.exp());
            let share = finite_bearing_load(at, ld) / (4.0 * ld * ld * short_bearing_load(at));
            prop_assert!(close(1.0 / short_over_finite(at, ld * ld), share, 1e-12));
        }

        #[test]
        fn bounds_bound(log_q in -12.0..30.0_f64, ld in 0.2..10.0_f64) {
            let at = Eccentricity::from_closeness(log_q.exp());
            let load = finite_bearing_load(at, ld);
            prop_assert!(load <= steady_load_bound(at.closeness()));
            prop_assert!(steady_at_least(load) <= at.closeness());
            prop_assert!(squeezed_at_least(finite_squeeze_time(at, ld)) <= at.closeness() * (1.0 + 1e-12));
        }
    }

    #[test]
    fn share_of_the_short_bearing_tends_to_one_and_to_the_long_bearing() {
        let at = Eccentricity::from_closeness(1.0);
        assert!((short_over_finite(at, 1e-6) - 1.0).abs() < 1e-4);
        let (e, o): (f64, f64) = (0.5, 0.75);
        let long = 6.0 * e * (PI * PI * o + 4.0 * e * e).sqrt() / ((2.0 + e * e) * o);
        let short = 4.0 * 50.0 * 50.0 * e / (4.0 * o * o) * (PI * PI * o + 16.0 * e * e).sqrt();
        assert!((short_over_finite(at, 2500.0) * (1.17 * long / short) - 1.0).abs() < 0.005);
    }

    #[test]
    fn bearing_of_a_heavily_loaded_joint() {
        let e = finite_bearing_eccentricity(500.0, 3.0).unwrap();
        assert!(close(e.film_ratio(), 4.695_572_119e-3, 1e-9));
        let e = finite_bearing_eccentricity(1e5, 3.0).unwrap();
        assert!(close(e.film_ratio(), 2.339_973_683e-5, 1e-9));
    }
}
