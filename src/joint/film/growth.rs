//! What one turn does: oil drawn into the strip, and the film that the wedge builds from bare contact.
//!
//! Closures of our own; near contact all joints follow one curve in the reduced angle of the turn.

/// Mean share of the loaded strip that oil covers in a turn.
///
/// After a rest the strip is bare; the turn draws oil in at half the sliding speed, `angle` rad × `radius` / 2 in all,
/// over a strip of twice `half_width`. Closure of our own.
pub fn coverage(angle: f64, radius: f64, half_width: f64) -> f64 {
    let widths = angle * radius / (4.0 * half_width);
    if widths <= 1.0 { 0.5 * widths } else { 1.0 - 0.5 / widths }
}

/// How far a turn from bare contact brings the film, as a share of the steady film. Fitted to integrated orbits.
pub(super) struct Growth {
    pub(super) end: f64,
    pub(super) mean: f64,
    /// 1 − end², kept apart because it is small after a long turn.
    pub(super) end_gap: f64,
}

impl Growth {
    pub(super) fn new(angle: f64, steady_film_ratio: f64) -> Growth {
        let a = reduced_angle(angle, steady_film_ratio);
        let exponent = (a / 5.873) * (a / 5.873) / (1.0 + a / 17.47);
        let end = -(-exponent).exp_m1();
        Growth { end, mean: mean_growth(a), end_gap: (-exponent).exp() * (1.0 + end) }
    }
}

/// Mean film of a turn from bare contact as a share of the steady film, against its reduced angle. Fitted to integrated orbits.
pub(super) fn mean_growth(reduced_angle: f64) -> f64 {
    1.0 / (1.0 + 6.4 / reduced_angle + 175.0 / reduced_angle.powf(2.35))
}

/// Angle of the turn in units of the angle over which the gap of a joint near contact opens.
pub(super) fn reduced_angle(angle: f64, steady_film_ratio: f64) -> f64 {
    angle / steady_film_ratio.sqrt()
}

/// Film as a share of the steady one: what the start has left and what the turn adds.
pub(super) fn towards_steady(start: f64, growth: f64) -> f64 {
    (start * start + growth * growth * (1.0 - start * start)).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_longer_turn_builds_more_up_to_the_steady_film(angle in 1e-4..3.0_f64, log_film in -14.0..0.0_f64) {
            let (shorter, longer) = (Growth::new(angle, log_film.exp()), Growth::new(1.1 * angle, log_film.exp()));
            prop_assert!(shorter.end <= longer.end && longer.end <= 1.0);
            prop_assert!(shorter.mean <= longer.mean && longer.mean <= 1.0);
            prop_assert!((1.0 - shorter.end * shorter.end - shorter.end_gap).abs() < 1e-15);
            prop_assert_eq!(towards_steady(1.0, shorter.end), 1.0);
        }

        #[test]
        fn coverage_is_continuous_and_below_one(widths in 0.0..50.0_f64) {
            let share = coverage(widths, 4.0, 1.0);
            prop_assert!(share < 1.0 && share <= 0.5 * widths);
            prop_assert!((coverage(widths + 1e-9, 4.0, 1.0) - share).abs() < 1e-9);
        }
    }
}
