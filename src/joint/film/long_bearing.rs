//! The infinitely long journal bearing in closed form: the other limit of a bearing of finite length.

use super::Eccentricity;
use std::f64::consts::PI;

/// Load of the infinitely long bearing, W c²/(η ω R³ L), half film.
///
/// Source: Sommerfeld (1904), half-Sommerfeld condition: 6e √(π²(1−e²) + 4e²)/((2 + e²)(1 − e²)).
pub fn long_bearing_load(eccentricity: Eccentricity) -> f64 {
    let q = eccentricity.closeness();
    let p2 = (1.0 + q) * (1.0 + q);
    let r2 = 1.0 + 2.0 * q;
    6.0 * q * p2 * (PI * PI * r2 + 4.0 * q * q).sqrt() / ((2.0 * p2 + q * q) * r2)
}

/// Load of the infinitely long bearing, W c²/(η ω R³ L), with film all round (which takes tension: no real oil does).
///
/// Source: Sommerfeld (1904): 12π e/((2 + e²) √(1 − e²)).
pub fn long_bearing_load_full(eccentricity: Eccentricity) -> f64 {
    let e = eccentricity.ratio();
    12.0 * PI * e / ((2.0 + e * e) * (1.0 - e * e).sqrt())
}

/// Sommerfeld number (η N 2RL/W)(R/c)² of a load W c²/(η ω R³ L).
pub fn long_bearing_sommerfeld(load: f64) -> f64 {
    1.0 / (PI * load)
}

/// Slope of ln load against ln q of the long bearing.
pub(super) fn long_bearing_slope(q: f64) -> f64 {
    let p = 1.0 + q;
    let r2 = 1.0 + 2.0 * q;
    1.0 + q
        * (2.0 / p + (PI * PI + 4.0 * q) / (PI * PI * r2 + 4.0 * q * q)
            - (4.0 * p + 2.0 * q) / (2.0 * p * p + q * q)
            - 2.0 / r2)
}

/// Angle (rad) of the narrowest gap behind the load line in a long bearing, half film; with film all round it is π/2.
///
/// Source: Sommerfeld (1904), half-Sommerfeld condition: tan φ = π √(1−e²)/(2e).
pub fn long_bearing_attitude(eccentricity: Eccentricity) -> f64 {
    let q = eccentricity.closeness();
    (PI * (1.0 + 2.0 * q).sqrt()).atan2(2.0 * q)
}

/// Friction of a long bearing with film all round, coefficient × radius / clearance.
///
/// Source: Sommerfeld (1904): (1 + 2e²)/(3e).
pub fn long_bearing_friction_full(eccentricity: Eccentricity) -> f64 {
    let e = eccentricity.ratio();
    (1.0 + 2.0 * e * e) / (3.0 * e)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn closeness_form_is_the_textbook_form(e in 0.001..0.999_f64) {
            let o = 1.0 - e * e;
            let load = 6.0 * e * (PI * PI * o + 4.0 * e * e).sqrt() / ((2.0 + e * e) * o);
            let ours = long_bearing_load(Eccentricity::from_ratio(e));
            prop_assert!((ours / load - 1.0).abs() < 1e-11);
        }

        #[test]
        fn half_film_carries_less(e in 0.001..0.9_f64) {
            let at = Eccentricity::from_ratio(e);
            prop_assert!(long_bearing_load(at) < long_bearing_load_full(at));
        }
    }
}
