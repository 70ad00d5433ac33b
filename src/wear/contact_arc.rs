//! The arc a pin wears into its bush: worn cross-section ⇄ depth.
//!
//! Pin and bush touch along a line when new. As the pin sinks in, the worn arc widens, so the same volume buys less and
//! less depth, until the whole diameter wears.

use std::f64::consts::FRAC_PI_2;

/// t − atan t without cancellation, t ≥ 0.
fn excess_over_angle(t: f64) -> f64 {
    // below 1/8 the series to t^19 is exact to round-off; above it the difference loses less than two digits
    if t > 0.125 {
        return t - t.atan();
    }
    let x = t * t;
    let mut sum = 0.0;
    for order in (1..=9).rev() {
        sum = 1.0 / f64::from(2 * order + 1) - x * sum;
    }
    t * x * sum
}

/// Tangent t of the half angle of the worn arc for a given reduced area q = A/(2 r c): solves t − atan t = q, q ≥ 0.
///
/// Newton from the lesser of the expansions for small and for large q; the function is convex, so after one step the
/// iterates can only fall to the root. Source: elementary geometry, see [`worn_area`].
pub fn tangent_of_half_arc(q: f64) -> f64 {
    if q <= 0.0 || !q.is_finite() {
        return q;
    }
    let small = (3.0 * q).cbrt();
    let mut t = (small * (1.0 + 0.2 * small * small)).min(q + FRAC_PI_2);
    // three or four steps in practice; the bound only keeps round-off from circling
    for round in 0..40 {
        let square = t * t;
        let step = (excess_over_angle(t) - q) * (1.0 + square) / square;
        // after the first step the iterates can only fall: a rise is round-off
        if round > 0 && step <= 0.0 {
            break;
        }
        t -= step;
        if step.abs() <= 1e-14 * t {
            break;
        }
    }
    t
}

/// Cross-section worn off pin and bush together (m²) when they have sunk `depth` into each other (m).
///
/// `pin_radius` r and `radial_clearance` c = (bore − pin)/2 in m, c ≥ 0. With the pin centre moved `depth` h beyond first
/// touch, what is removed at angle φ from the load is (c + h) cos φ − c, out to cos α = c/(c + h); the integral over the
/// arc is 2 r c (tan α − α). For h ≪ c it is (4/3) r h √(2h/c); for h ≫ c, 2 r h. Assumes that the pin sinks straight in
/// and that only the touching arc wears: the swing of the arc and the bending of the pin are left out, so wear at the
/// ends of the joint may be 1.5 to 2 times the mean. Source: elementary geometry; closure of our own.
pub fn worn_area(depth: f64, pin_radius: f64, radial_clearance: f64) -> f64 {
    if radial_clearance <= 0.0 {
        return 2.0 * pin_radius * depth;
    }
    let u = depth / radial_clearance;
    2.0 * pin_radius * radial_clearance * excess_over_angle((u * (2.0 + u)).sqrt())
}

/// Width of the worn arc across the load (m), 2 r sin α: how fast [`worn_area`] grows with depth.
pub(super) fn worn_width(depth: f64, pin_radius: f64, radial_clearance: f64) -> f64 {
    // sin α from cos α = c/(c + h), without cancellation for a shallow arc
    2.0 * pin_radius * (depth * (2.0 * radial_clearance + depth)).sqrt() / (radial_clearance + depth)
}

/// Depth pin and bush have sunk into each other (m) when `area` (m²) has been worn off the two; inverse of [`worn_area`].
///
/// ```
/// use pinfilm::wear::{worn_area, worn_depth};
/// let area = worn_area(100e-6, 4.14e-3, 50e-6);
/// assert!((worn_depth(area, 4.14e-3, 50e-6) - 100e-6).abs() < 1e-16);
/// ```
pub fn worn_depth(area: f64, pin_radius: f64, radial_clearance: f64) -> f64 {
    if radial_clearance <= 0.0 {
        return area / (2.0 * pin_radius);
    }
    let t = tangent_of_half_arc(area / (2.0 * pin_radius * radial_clearance));
    // c (√(1 + t²) − 1) without cancellation; for a t whose square is beyond f64 the root is t itself
    let square = t * t;
    if square.is_finite() { radial_clearance * square / (1.0 + (1.0 + square).sqrt()) } else { radial_clearance * t }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const RADIUS: f64 = 4e-3;

    proptest! {
        #[test]
        fn depth_and_area_are_inverse(depth in -9.0..-2.0_f64, clearance in -6.0..-3.0_f64) {
            let (depth, clearance) = (10f64.powf(depth), 10f64.powf(clearance));
            let back = worn_depth(worn_area(depth, RADIUS, clearance), RADIUS, clearance);
            prop_assert!((back / depth - 1.0).abs() < 1e-13, "{depth:e} {clearance:e} {back:e}");
        }

        #[test]
        fn the_solved_tangent_satisfies_its_equation(q in -18.0..6.0_f64) {
            let q = 10f64.powf(q);
            prop_assert!((excess_over_angle(tangent_of_half_arc(q)) / q - 1.0).abs() < 1e-13);
        }

        #[test]
        fn area_grows_at_the_chord_of_the_arc(u in -3.0..2.0_f64) {
            let (clearance, u) = (5e-5, 10f64.powf(u));
            let (h, step) = (u * clearance, 1e-4 * u * clearance);
            let slope = (worn_area(h + step, RADIUS, clearance) - worn_area(h - step, RADIUS, clearance)) / (2.0 * step);
            prop_assert!((slope / worn_width(h, RADIUS, clearance) - 1.0).abs() < 1e-7);
        }
    }

    #[test]
    fn shallow_and_deep_wear_have_their_limits() {
        let c = 5e-5;
        let h = 1e-7 * c;
        let shallow = 4.0 / 3.0 * RADIUS * h * (2.0 * h / c).sqrt();
        assert!((worn_area(h, RADIUS, c) / shallow - 1.0).abs() < 1e-6);
        assert!((worn_area(1e-2, RADIUS, 1e-9) / (2.0 * RADIUS * 1e-2) - 1.0).abs() < 1e-6);
        assert_eq!(worn_area(1e-3, RADIUS, 0.0), 2.0 * RADIUS * 1e-3);
        assert_eq!(worn_depth(0.0, RADIUS, c), 0.0);
    }

    #[test]
    fn series_and_difference_meet() {
        let (below, above) = (excess_over_angle(0.125), excess_over_angle(0.125 * (1.0 + 1e-15)));
        assert!((above / below - 1.0).abs() < 2e-14);
    }
}
