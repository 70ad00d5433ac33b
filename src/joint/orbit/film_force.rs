//! How fast the oil lets a loaded pin move in its bush: the half film of a short bearing in closed form.

use super::film_arc::Arc;
use std::f64::consts::PI;

/// A step of the search for the direction, in half widths of the film, after which the direction is exact to about 1e-12.
const NEAR: f64 = 1e-6;

/// A pin nearer to the middle of the bush than this, as e/(1−e), is taken to be this far off, for there it has no direction.
const MIDDLE: f64 = 1e-14;

/// Velocity of the pin for a unit load, with time counted in squeeze times η R L³/(W c²).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Velocity {
    /// Rate of the eccentricity ratio, de/dt.
    pub outward: f64,
    /// Rate across the line of centres, e (dφ/dt − ω/2).
    pub across: f64,
}

/// The pin's place as the film sees it: `radius` = e/(1−e) (never e itself near 1), the smallest film ratio 1−e, and the
/// angle φ from the load line to the line of centres, by its sine and cosine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Place {
    pub radius: f64,
    pub film_ratio: f64,
    pub sine: f64,
    pub cosine: f64,
}

impl Place {
    /// A pin in the middle has any angle.
    pub fn new(x: f64, y: f64) -> Place {
        let radius = (x * x + y * y).sqrt();
        let (radius, cosine, sine) = if radius > MIDDLE {
            let share = 1.0 / radius;
            (radius, x * share, y * share)
        } else {
            (MIDDLE, 1.0, 0.0)
        };
        Place { radius, film_ratio: 1.0 / (1.0 + radius), sine, cosine }
    }
}

/// Velocity that the load gives a pin at `place`, from the exact integrals of the half film.
///
/// The film force is the gradient of a strictly convex dissipation, so one direction of motion meets the load.
/// Sommerfeld's substitution and counting the outward rate in units of sqrt(1−e²) make the film an arc of half
/// width arccos(−ε) about the direction b of motion, ε = e cos b. Its force then has two parts,
/// along b: (1+2ε²) h + 3 ε sin h, and across: −2 e sin b (sin h + ε h), with cos h = −ε; they hold as e → 1.
///
/// Source: half film (Gümbel) of the short bearing, Ocvirk 1952; mobility method, Booker 1965; closed form derived here.
/// `last` is the arc found last, from which the search sets out where the pin has not moved far.
pub(super) fn velocity(place: Place, last: &mut Option<Arc>) -> Velocity {
    let Place { radius, film_ratio, sine, cosine } = place;
    let e = radius * film_ratio;
    let root_open = (1.0 + 2.0 * radius).sqrt() * film_ratio; // sqrt(1 − e²)
    let film = Film { e, root_open, load: (root_open * cosine, -sine) };
    let arc = last.and_then(|last| film.follow(last)).unwrap_or_else(|| film.search());
    *last = Some(arc);
    let (along, across) = film.load; // in scaled coordinates
    let meets = arc.meets(film.load).0;
    let size = root_open * root_open * root_open * (along * along + across * across) / meets;
    Velocity { outward: root_open * size * arc.cosine, across: size * arc.sine }
}

/// What the film of one place makes of directions of motion.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Film {
    /// Eccentricity ratio.
    pub e: f64,
    /// sqrt(1 − e²).
    pub root_open: f64,
    /// The load in scaled coordinates, along and across the line of centres.
    pub load: (f64, f64),
}

impl Film {
    /// The direction that meets the load, by Newton steps from the arc of a place nearby; `None` if it is not near.
    ///
    /// The first step still takes the force of that other place, which is as good a start as any. The steps converge
    /// quadratically: the error left by the last one is about its square, in units of the half width.
    fn follow(&self, from: Arc) -> Option<Arc> {
        let far = |angle: f64, arc: &Arc| angle.is_nan() || angle.abs() >= 0.5 * arc.half_width;
        let angle = from.turn_to(self.load);
        if far(angle, &from) {
            return None;
        }
        let (sine, cosine) = from.turned(angle);
        let mut arc = Arc::new(self, sine, cosine);
        for _ in 0..6 {
            let angle = arc.turn_to(self.load);
            if far(angle, &arc) {
                return None;
            }
            if angle.abs() < NEAR * arc.half_width {
                return Some(arc.nudged(angle));
            }
            arc = arc.onwards(self, angle);
        }
        None
    }

    /// The direction that meets the load, from anywhere: Newton on the angle of the force, which rises with the direction.
    ///
    /// The force is within a right angle of the direction; that brackets the root, and bisection guards the steps.
    fn search(&self) -> Arc {
        let target = self.load.1.atan2(self.load.0);
        let (mut low, mut high) = (target - 0.5 * PI, target + 0.5 * PI);
        let mut guess = target;
        let mut arc = self.arc(guess);
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
            arc = self.arc(guess);
            if step.abs() < NEAR * arc.half_width {
                break;
            }
        }
        arc
    }

    fn arc(&self, direction: f64) -> Arc {
        let (sine, cosine) = direction.sin_cos();
        Arc::new(self, sine, cosine)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn at(radius: f64, angle: f64) -> Place {
        Place::new(radius * angle.cos(), radius * angle.sin())
    }

    fn place(e: f64, angle: f64) -> Place {
        at(e / (1.0 - e), angle)
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
            let moving = velocity(place(e, 0.0), &mut None);
            assert!((moving.outward * integral - 1.0).abs() < 1e-12, "{e}");
            assert!(moving.across.abs() < 1e-12, "{e}: {}", moving.across);
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(40))]
        #[test]
        fn the_summed_pressure_carries_the_load(e in 0.0..0.97f64, angle in -3.0..3.0f64) {
            let moving = velocity(place(e, angle), &mut None);
            let (along, across) = summed_force(e, moving);
            prop_assert!((along - angle.cos()).abs() < 1e-6 && (across + angle.sin()).abs() < 1e-6, "{along} {across}");
        }

        #[test]
        fn the_way_here_does_not_change_the_motion(
            exponent in -3.0..12.0f64, angle in -3.1..3.1f64, nearer in -1.0..1.0f64, turned in -1.0..1.0f64,
        ) {
            let here = at(10f64.powf(exponent), angle);
            let afresh = velocity(here, &mut None);
            let mut last = None;
            velocity(at(10f64.powf(exponent + nearer), angle + turned), &mut last);
            let moving = velocity(here, &mut last);
            let speed = afresh.outward.hypot(afresh.across);
            let off = (moving.outward - afresh.outward).hypot(moving.across - afresh.across);
            // Near contact, far from the load line, the film is so narrow that rounding of its direction shows.
            let rounding = 1e-14 * here.radius.sqrt();
            prop_assert!(off <= (1e-10 + rounding) * speed, "{afresh:?} {moving:?}");
        }

        #[test]
        fn motion_yields_to_the_load_up_to_contact(exponent in -3.0..10.0f64, angle in -3.1..3.1f64) {
            let place = at(10f64.powf(exponent), angle);
            let moving = velocity(place, &mut None);
            let work = moving.outward * angle.cos() - moving.across * angle.sin();
            prop_assert!(work > 0.0 && work.is_finite());
        }
    }
}
