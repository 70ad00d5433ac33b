//! How fast the oil lets a loaded pin move in its bush: the half film of a short bearing in closed form.

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

/// A direction of motion and the force of the film against it, both in scaled coordinates.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Arc {
    sine: f64,
    cosine: f64,
    /// Half width of the film, its sine and its cosine.
    half_width: f64,
    sine_h: f64,
    cosine_h: f64,
    force_along: f64,
    force_across: f64,
    /// Change of the force across the direction when the direction turns.
    stiffness: f64,
}

impl Arc {
    fn new(film: &Film, sine: f64, cosine: f64) -> Arc {
        let (sine_h, cosine_h) = film.ends(sine, cosine);
        Arc::of_half_width(film, (sine, cosine), (sine_h, cosine_h), sine_h.atan2(cosine_h))
    }

    /// The arc at the same place for a direction turned by a small `angle`.
    fn onwards(&self, film: &Film, angle: f64) -> Arc {
        let (sine, cosine) = self.turned(angle);
        let (sine_h, cosine_h) = film.ends(sine, cosine);
        // How much the half width grows, from its sine: cheaper than finding the half width afresh.
        let grows = sine_h * self.cosine_h - cosine_h * self.sine_h;
        let h = if grows.abs() < 0.03 { self.half_width + arcsine(grows) } else { sine_h.atan2(cosine_h) };
        Arc::of_half_width(film, (sine, cosine), (sine_h, cosine_h), h)
    }

    fn of_half_width(film: &Film, (sine, cosine): (f64, f64), (sine_h, cosine_h): (f64, f64), h: f64) -> Arc {
        let (reach, side) = (-cosine_h, film.e * sine);
        let (push, slip, shear) = if h < 0.3 {
            thin_arc(h)
        } else {
            ((1.0 + 2.0 * reach * reach) * h + 3.0 * reach * sine_h, sine_h + reach * h, h + reach * sine_h)
        };
        Arc {
            sine,
            cosine,
            half_width: h,
            sine_h,
            cosine_h,
            force_along: push,
            force_across: -2.0 * side * slip,
            stiffness: shear + 2.0 * h * side * side,
        }
    }

    /// Parts of the force along and across `load` (times the size of `load`).
    fn meets(&self, load: (f64, f64)) -> (f64, f64) {
        let (along, across) = (
            self.cosine * self.force_along - self.sine * self.force_across,
            self.sine * self.force_along + self.cosine * self.force_across,
        );
        (along * load.0 + across * load.1, across * load.0 - along * load.1)
    }

    /// Newton's turn of the direction that brings the force to `load`, from the tangent of the angle between them.
    ///
    /// NaN where the angle is not acute.
    fn turn_to(&self, load: (f64, f64)) -> f64 {
        let (along, across) = self.meets(load);
        let squared = self.force_along * self.force_along + self.force_across * self.force_across;
        let rising = self.force_along * self.stiffness - self.force_across * self.force_across;
        if along > 0.0 { -across * squared / (along * rising) } else { f64::NAN }
    }

    /// Sine and cosine of the direction turned by a small `angle`, to its third power.
    fn turned(&self, angle: f64) -> (f64, f64) {
        let half = 0.5 * angle;
        let share = 1.0 / (1.0 + half * half);
        let (sine, cosine) = (2.0 * half * share, (1.0 - half * half) * share);
        (self.sine * cosine + self.cosine * sine, self.cosine * cosine - self.sine * sine)
    }

    /// The arc of a direction turned by an `angle` so small that its square does not count.
    ///
    /// The force is a gradient: what turning adds to its part along is twice its part across.
    fn nudged(self, angle: f64) -> Arc {
        let less = 1.0 - 0.5 * angle * angle;
        let (sine, cosine) = (self.sine * less + self.cosine * angle, self.cosine * less - self.sine * angle);
        let yielding = (self.stiffness - self.force_along) * angle;
        Arc {
            sine,
            cosine,
            force_along: self.force_along + (2.0 * self.force_across + yielding) * angle,
            force_across: self.force_across + yielding,
            ..self
        }
    }
}

/// What the film of one place makes of directions of motion.
struct Film {
    e: f64,
    /// sqrt(1 − e²).
    root_open: f64,
    /// The load in scaled coordinates, along and across the line of centres.
    load: (f64, f64),
}

impl Film {
    /// Sine and cosine of the half width of the film that a direction makes.
    fn ends(&self, sine: f64, cosine: f64) -> (f64, f64) {
        let opened = self.root_open * cosine;
        ((sine * sine + opened * opened).sqrt(), -self.e * cosine)
    }

    /// The direction that meets the load, by Newton steps from the arc of a place nearby; `None` if it is not near.
    ///
    /// The first step still takes the force of that other place, which is as good a start as any. The steps converge
    /// quadratically: the error left by the last one is about its square, in units of the half width.
    fn follow(&self, from: Arc) -> Option<Arc> {
        let far = |angle: f64, arc: &Arc| !(angle.abs() < 0.5 * arc.half_width); // NaN is far
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

/// Arc sine of a number below 0.03, by its power series: exact to rounding.
fn arcsine(sine: f64) -> f64 {
    let s = sine * sine;
    sine * (1.0 + s * (1.0 / 6.0 + s * (3.0 / 40.0 + s * (5.0 / 112.0 + s * (35.0 / 1152.0)))))
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
        let next = -h * h * (1.0 / (2.0 * order * (2.0 * order + 1.0)));
        small *= next;
        large *= 4.0 * next;
        push += (order - 1.0) * large;
        slip -= 2.0 * order * small;
        shear -= 0.5 * large;
    }
    (push, slip, shear)
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
