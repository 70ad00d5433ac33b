//! The film of a short bearing as an arc about the direction in which the pin moves, and its force in closed form.

use super::film_force::Film;

/// A direction of motion and the force of the film against it, both in scaled coordinates.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Arc {
    pub sine: f64,
    pub cosine: f64,
    /// Half width of the film, its sine and its cosine.
    pub half_width: f64,
    sine_h: f64,
    cosine_h: f64,
    pub force_along: f64,
    pub force_across: f64,
    /// Change of the force across the direction when the direction turns.
    pub stiffness: f64,
}

impl Arc {
    pub fn new(film: &Film, sine: f64, cosine: f64) -> Arc {
        let (sine_h, cosine_h) = ends(film, sine, cosine);
        Arc::of_half_width(film, (sine, cosine), (sine_h, cosine_h), sine_h.atan2(cosine_h))
    }

    /// The arc at the same place for a direction turned by a small `angle`.
    pub fn onwards(&self, film: &Film, angle: f64) -> Arc {
        let (sine, cosine) = self.turned(angle);
        let (sine_h, cosine_h) = ends(film, sine, cosine);
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
    pub fn meets(&self, load: (f64, f64)) -> (f64, f64) {
        let (along, across) = (
            self.cosine * self.force_along - self.sine * self.force_across,
            self.sine * self.force_along + self.cosine * self.force_across,
        );
        (along * load.0 + across * load.1, across * load.0 - along * load.1)
    }

    /// Newton's turn of the direction that brings the force to `load`, from the tangent of the angle between them.
    ///
    /// NaN where the angle is not acute.
    pub fn turn_to(&self, load: (f64, f64)) -> f64 {
        let (along, across) = self.meets(load);
        let squared = self.force_along * self.force_along + self.force_across * self.force_across;
        let rising = self.force_along * self.stiffness - self.force_across * self.force_across;
        if along > 0.0 { -across * squared / (along * rising) } else { f64::NAN }
    }

    /// Sine and cosine of the direction turned by a small `angle`, to its third power.
    pub fn turned(&self, angle: f64) -> (f64, f64) {
        let half = 0.5 * angle;
        let share = 1.0 / (1.0 + half * half);
        let (sine, cosine) = (2.0 * half * share, (1.0 - half * half) * share);
        (self.sine * cosine + self.cosine * sine, self.cosine * cosine - self.sine * sine)
    }

    /// The arc of a direction turned by an `angle` so small that its square does not count.
    ///
    /// The force is a gradient: what turning adds to its part along is twice its part across.
    pub fn nudged(self, angle: f64) -> Arc {
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

/// Sine and cosine of the half width of the film that a direction makes.
fn ends(film: &Film, sine: f64, cosine: f64) -> (f64, f64) {
    let opened = film.root_open * cosine;
    ((sine * sine + opened * opened).sqrt(), -film.e * cosine)
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

    #[test]
    fn series_of_a_thin_arc_meets_the_closed_form() {
        let h: f64 = 0.3;
        let (push, slip, shear) = thin_arc(h);
        assert!((push / ((1.0 + 2.0 * h.cos().powi(2)) * h - 3.0 * h.cos() * h.sin()) - 1.0).abs() < 1e-11);
        assert!((slip / (h.sin() - h * h.cos()) - 1.0).abs() < 1e-13);
        assert!((shear / (h - h.sin() * h.cos()) - 1.0).abs() < 1e-13);
    }

    #[test]
    fn an_arc_found_from_another_is_the_one_found_afresh() {
        for e in [0.1_f64, 0.9, 0.99999] {
            let root_open = ((1.0 - e) * (1.0 + e)).sqrt();
            let film = Film { e, root_open, load: (1.0, 0.0) };
            for direction in [-3.0_f64, -1.6, -0.2, 0.0, 1.0, 2.9] {
                let from = Arc::new(&film, direction.sin(), direction.cos());
                let (sine, cosine) = from.turned(0.02);
                let (onwards, afresh) = (from.onwards(&film, 0.02), Arc::new(&film, sine, cosine));
                assert!((onwards.half_width / afresh.half_width - 1.0).abs() < 1e-14);
                assert!((onwards.force_along / afresh.force_along - 1.0).abs() < 1e-11);
                let nudged = from.nudged(1e-7);
                let there = from.onwards(&film, 1e-7);
                assert!((nudged.force_along / there.force_along - 1.0).abs() < 1e-10);
                assert!(
                    (nudged.force_across - there.force_across).abs()
                        < 1e-10 * there.force_along.hypot(there.force_across)
                );
            }
        }
    }
}
