//! How fast the oil lets a loaded pin move in its bush: the half film of a short bearing in closed form.

use crate::joint::{Eccentricity, finite_bearing_load, short_bearing_load};
use std::f64::consts::PI;

/// Velocity of the pin for a unit load, with time counted in squeeze times η R L³/(W c²).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Velocity {
    /// Rate of the eccentricity ratio, de/dt.
    pub outward: f64,
    /// Rate across the line of centres, e (dφ/dt − ω/2).
    pub across: f64,
}

/// The pin's place as the film sees it: `radius` = e/(1−e) (never e itself near 1) and the angle φ from the load line
/// to the line of centres, by its sine and cosine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Place {
    pub radius: f64,
    pub sine: f64,
    pub cosine: f64,
}

/// Velocity that the load gives a pin at `place`, from the exact integrals of the half film.
///
/// The film force is the gradient of a strictly convex dissipation, so one direction of motion meets the load.
/// Sommerfeld's substitution and counting the outward rate in units of sqrt(1−e²) make the film an arc of half
/// width arccos(−ε) about the direction b of motion, ε = e cos b. Its force then has two parts,
/// along b: (1+2ε²) h + 3 ε sin h, and across: −2 e sin b (sin h + ε h), with cos h = −ε; they hold as e → 1.
///
/// Source: half film (Gümbel) of the short bearing, Ocvirk 1952; mobility method, Booker 1965; closed form derived here.
/// `last` is the direction found last (rad), a start for the next search.
pub(super) fn velocity(place: Place, last: &mut f64) -> Velocity {
    let Place { radius, sine, cosine } = place;
    let closeness = 1.0 / (1.0 + radius);
    let e = radius * closeness;
    let root_open = (1.0 + 2.0 * radius).sqrt() * closeness; // sqrt(1 − e²)
    let (along, across) = (root_open * cosine, -sine); // the load in scaled coordinates
    let target = across.atan2(along);
    let arc = direction(e, root_open, target, *last);
    *last = arc.direction;
    let meets = (arc.cosine * along + arc.sine * across) * arc.force_along
        + (arc.cosine * across - arc.sine * along) * arc.force_across;
    let size = root_open.powi(3) * (along * along + across * across) / meets;
    Velocity { outward: root_open * size * arc.cosine, across: size * arc.sine }
}

/// A direction of motion and the force of the film against it, both in scaled coordinates.
struct Arc {
    direction: f64,
    sine: f64,
    cosine: f64,
    force_along: f64,
    force_across: f64,
    /// Change of the force across the direction when the direction turns.
    stiffness: f64,
}

impl Arc {
    fn new(e: f64, root_open: f64, direction: f64) -> Arc {
        let (sine, cosine) = direction.sin_cos();
        let reach = e * cosine;
        let sine_h = (sine * sine + (root_open * cosine).powi(2)).sqrt();
        let h = sine_h.atan2(-reach);
        let (push, slip, shear) = if h < 0.3 {
            thin_arc(h)
        } else {
            ((1.0 + 2.0 * reach * reach) * h + 3.0 * reach * sine_h, sine_h + reach * h, h + reach * sine_h)
        };
        Arc {
            direction,
            sine,
            cosine,
            force_along: push,
            force_across: -2.0 * e * sine * slip,
            stiffness: shear + 2.0 * h * (e * sine).powi(2),
        }
    }
}

/// (1+2ε²) h + 3 ε sin h, sin h + ε h and h + ε sin h for a small half width h, by their power series.
///
/// A pin that leaves the wall has oil only in such an arc, and the closed forms cancel there to the fifth power of h.
fn thin_arc(h: f64) -> (f64, f64, f64) {
    let (mut push, mut slip, mut shear) = (0.0, 0.0, 0.0);
    // Terms h^(2n+1)/(2n+1)! and (2h)^(2n+1)/(2n+1)!, signs alternating.
    let (mut small, mut large) = (h, 2.0 * h);
    for n in 1..=9 {
        let order = f64::from(n);
        let next = 2.0 * order * (2.0 * order + 1.0);
        small *= -h * h / next;
        large *= -4.0 * h * h / next;
        push += (order - 1.0) * large;
        slip -= 2.0 * order * small;
        shear -= 0.5 * large;
    }
    (push, slip, shear)
}

/// Direction whose film force points to `target`: Newton on the angle of the force, which rises with the direction.
///
/// The force is within a right angle of the direction; that brackets the root, and bisection guards the steps.
fn direction(e: f64, root_open: f64, target: f64, start: f64) -> Arc {
    let (mut low, mut high) = (target - 0.5 * PI, target + 0.5 * PI);
    let mut guess = if start > low && start < high { start } else { target };
    let mut arc = Arc::new(e, root_open, guess);
    for _ in 0..60 {
        let miss = guess + arc.force_across.atan2(arc.force_along) - target;
        if miss > 0.0 {
            high = guess
        } else {
            low = guess
        }
        let slope = (arc.force_along * arc.stiffness - arc.force_across.powi(2))
            / (arc.force_along.powi(2) + arc.force_across.powi(2));
        let mut step = -miss / slope;
        if !(low..=high).contains(&(guess + step)) {
            step = 0.5 * (low + high) - guess;
        }
        guess += step;
        arc = Arc::new(e, root_open, guess);
        // The steps converge quadratically: the next one would be about the square of this one.
        if step.abs() < 1e-7 {
            break;
        }
    }
    arc
}

/// How much stiffer the film of a bearing of finite length is than the short one, 0 to 1: χ = Wf/Ws'.
///
/// The closure of [`finite_bearing_load`], fitted to the wedge. In pure squeeze it comes out 10 to 39 % too stiff.
pub(super) fn length_factor(radius: f64, length_to_diameter: f64) -> f64 {
    let at = Eccentricity::from_closeness(radius);
    finite_bearing_load(at, length_to_diameter)
        / (4.0 * length_to_diameter * length_to_diameter * short_bearing_load(at))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn place(e: f64, angle: f64) -> Place {
        Place { radius: e / (1.0 - e), sine: angle.sin(), cosine: angle.cos() }
    }

    /// Film force by summing the pressure of the short bearing, −cos(θ − direction) / H³ where it is positive.
    fn summed_force(e: f64, moving: Velocity) -> (f64, f64) {
        let direction = moving.across.atan2(moving.outward);
        let speed = moving.across.hypot(moving.outward);
        let steps = 200_000;
        let width = PI / f64::from(steps);
        (0..steps).fold((0.0, 0.0), |(along, across), i| {
            let angle = direction + 0.5 * PI + (f64::from(i) + 0.5) * width;
            let pressure = -speed * (angle - direction).cos() / (1.0 + e * angle.cos()).powi(3) * width;
            (along - pressure * angle.cos(), across - pressure * angle.sin())
        })
    }

    #[test]
    fn a_pin_moved_straight_at_its_load_meets_the_squeeze_integral() {
        for e in [0.0, 0.2, 0.5, 0.8, 0.9, 0.9999] {
            let o: f64 = 1.0 - e * e;
            let integral = (1.0 + 2.0 * e * e) * (-e).acos() / o.powf(2.5) + 3.0 * e / (o * o);
            let moving = velocity(place(e, 0.0), &mut 0.3);
            assert!((moving.outward * integral - 1.0).abs() < 1e-12, "{e}");
            assert!(moving.across.abs() < 1e-12, "{e}: {}", moving.across);
        }
    }

    #[test]
    fn length_factor_tends_to_the_short_and_the_long_bearing() {
        assert!((length_factor(1.0, 1e-3) - 1.0).abs() < 1e-4);
        let (e, o): (f64, f64) = (0.5, 0.75);
        let long = 6.0 * e * (PI * PI * o + 4.0 * e * e).sqrt() / ((2.0 + e * e) * o);
        let short = 4.0 * 50.0 * 50.0 * e / (4.0 * o * o) * (PI * PI * o + 16.0 * e * e).sqrt();
        assert!((length_factor(1.0, 50.0) / (1.17 * long / short) - 1.0).abs() < 0.005);
    }

    #[test]
    fn series_of_a_thin_arc_meets_the_closed_form() {
        let h: f64 = 0.3;
        let (push, slip, shear) = thin_arc(h);
        assert!((push / ((1.0 + 2.0 * h.cos().powi(2)) * h - 3.0 * h.cos() * h.sin()) - 1.0).abs() < 1e-11);
        assert!((slip / (h.sin() - h * h.cos()) - 1.0).abs() < 1e-13);
        assert!((shear / (h - h.sin() * h.cos()) - 1.0).abs() < 1e-13);
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(40))]
        #[test]
        fn the_summed_pressure_carries_the_load(e in 0.0..0.97f64, angle in -3.0..3.0f64, start in -3.0..3.0f64) {
            let moving = velocity(place(e, angle), &mut start.clone());
            let (along, across) = summed_force(e, moving);
            prop_assert!((along - angle.cos()).abs() < 1e-6 && (across + angle.sin()).abs() < 1e-6, "{along} {across}");
        }

        #[test]
        fn motion_yields_to_the_load_up_to_contact(exponent in -3.0..10.0f64, angle in -3.1..3.1f64) {
            let place = Place { radius: 10f64.powf(exponent), sine: angle.sin(), cosine: angle.cos() };
            let moving = velocity(place, &mut 0.0);
            let work = moving.outward * angle.cos() - moving.across * angle.sin();
            prop_assert!(work > 0.0 && work.is_finite());
        }
    }
}
