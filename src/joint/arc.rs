//! Where a pin touches its bush: the arc of contact of two cylinders of almost the same radius.

use super::Pair;
use crate::error::{Code, Error, Result};
use crate::quantity::show::in_unit;
use crate::quantity::unit::MPA;
use std::f64::consts::PI;

/// Peak over mean pressure of a Hertzian line contact.
const LINE_PEAK: f64 = 4.0 / PI;

/// Greatest pressure that steel joints are computed for, Pa. Above it the surfaces flow.
pub const HARDEST_CONTACT: f64 = 1.5e9;

/// The arc of contact of a loaded pair.
///
/// Identical materials, plane strain, infinite plate round the bore, no friction: the wall of a thin bush, misalignment
/// and the bending of the pin are not in it.
/// Source: Persson (1964); Ciavarella and Decuzzi (2001).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ContactArc {
    /// tan²(half angle / 2): 0 for a line, at most 0.8346 (half angle 84.8°).
    tangent_squared: f64,
    /// Half the width of the strip that touches, m.
    pub half_width: f64,
    /// Load over the width of the strip, Pa.
    pub mean_pressure: f64,
}

impl ContactArc {
    /// The arc of `pair` under `load` (N, > 0).
    pub fn new(pair: &Pair, load: f64) -> ContactArc {
        let load_per_length = load / pair.length;
        let stiffness = pair.elasticity.plane_strain_modulus() * pair.fitted_clearance() / load_per_length;
        let x = tangent_squared(stiffness);
        let half_width = pair.radius * 2.0 * x.sqrt() / (1.0 + x);
        ContactArc { tangent_squared: x, half_width, mean_pressure: load_per_length / (2.0 * half_width) }
    }

    /// Nothing touches.
    pub(super) const NONE: ContactArc = ContactArc { tangent_squared: 0.0, half_width: 0.0, mean_pressure: 0.0 };

    /// Half the angle over which the two touch, rad.
    pub fn half_angle(&self) -> f64 {
        2.0 * self.tangent_squared.sqrt().atan()
    }

    /// Pressure in the middle of the arc, Pa; zero where nothing touches.
    pub fn peak_pressure(&self) -> f64 {
        if self.half_width == 0.0 {
            return 0.0;
        }
        // mean pressure × 2 sin θ is load per length over radius, the unit of the closed form
        let x = self.tangent_squared;
        self.mean_pressure * (4.0 * x.sqrt() / (1.0 + x)) * peak_number(x)
    }

    /// How far the pin sinks into its bush (m), taking the overlap of the undeformed circles over the arc.
    ///
    /// Closure of our own (elastic foundation); a lower bound, good enough to compare with the sag of the pin.
    pub fn approach(&self, pair: &Pair) -> f64 {
        let x = self.tangent_squared;
        pair.fitted_clearance() * 2.0 * x / (1.0 - x)
    }

    /// Refuses a contact harder than steel joints stand.
    pub(super) fn checked(self) -> Result<ContactArc> {
        // the peak is at most 4/π times the mean (that of a line contact), so most contacts need no logarithm
        if self.mean_pressure * LINE_PEAK > HARDEST_CONTACT && self.peak_pressure() > HARDEST_CONTACT {
            return Err(Error::new(
                Code::BeyondModel,
                "contact pressure",
                format!(
                    "the joint is pressed to {} in the middle of its contact, more than steel stands: check the load, the \
                     diameters and the length",
                    in_unit(self.peak_pressure(), &MPA)
                ),
            )
            .number(self.peak_pressure())
            .unit("Pa")
            .limit(format!("at most {}", in_unit(HARDEST_CONTACT, &MPA))));
        }
        Ok(self)
    }
}

/// tan²(half angle/2) from the stiffness number k = E′ c L / load, > 0.
///
/// Root of k π x (1 + x) = 2 − ln(1 + x) − 2x². The difference falls and is concave, and the start solves it with
/// ln(1 + x) replaced by the smaller x − x²/2, so Newton comes from above and never leaves the bracket.
fn tangent_squared(stiffness: f64) -> f64 {
    let k = PI * stiffness;
    let mut x = 4.0 / (1.0 + k + ((1.0 + k) * (1.0 + k) + 8.0 * (1.5 + k)).sqrt());
    for _ in 0..30 {
        let value = 2.0 - x.ln_1p() - 2.0 * x * x - k * x * (1.0 + x);
        let slope = -1.0 / (1.0 + x) - 4.0 * x - k * (1.0 + 2.0 * x);
        let step = value / slope;
        x -= step;
        // the step squares from round to round: after 1e-6 nothing is left that could be seen
        if step.abs() < 1e-6 * x {
            break;
        }
    }
    x
}

/// Peak pressure × radius / load per length, from tan²(half angle/2).
fn peak_number(x: f64) -> f64 {
    let (b, s) = (x.sqrt(), (1.0 + x).sqrt());
    2.0 * b / (PI * s) + (2.0 * b / (s - b)).ln_1p() / (2.0 * PI * x * s * s)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn pair(diameter: f64, clearance: f64, length: f64) -> Pair {
        Pair::new(diameter, diameter + 2.0 * clearance, length, 1.0).unwrap()
    }

    #[test]
    fn solves_the_equation_of_persson_from_line_contact_to_interference_fit() {
        for exponent in -40..=130 {
            let k = 10f64.powf(f64::from(exponent) / 10.0);
            let x = tangent_squared(k);
            let right = (2.0 - x.ln_1p() - 2.0 * x * x) / (PI * x * (1.0 + x));
            assert!(x > 0.0 && x < 0.834_615_246, "{k} {x}");
            // for a stiff load x barely moves with k, so compare x, through the slope
            assert!((right - k).abs() < 1e-12 * (k + 1.0 / x), "{k} {right}");
        }
    }

    #[test]
    fn hertz_is_the_limit_of_a_wide_clearance() {
        let loose = pair(0.01, 1e-3, 0.03);
        let load = 100.0;
        let arc = ContactArc::new(&loose, load);
        let reduced = loose.radius * (loose.radius + loose.radial_clearance) / loose.radial_clearance;
        let modulus = loose.elasticity.plane_strain_modulus() / 2.0;
        let line = load / loose.length;
        // the closed form takes bore and pin radius as one, which costs half of c/R = 0.2
        let scale = (loose.radius / (loose.radius + loose.radial_clearance)).sqrt();
        let half_width = (4.0 * line * reduced / (PI * modulus)).sqrt() * scale;
        assert!((arc.half_width / half_width - 1.0).abs() < 1e-4);
        assert!((arc.peak_pressure() / (arc.mean_pressure * LINE_PEAK) - 1.0).abs() < 1e-4);
    }

    #[test]
    fn hertz_falls_behind_as_the_arc_widens() {
        // Hertz angle over Persson angle: +1 % at 9.1°, +6.5 % at 27°, +50 % at 61°
        for (degrees, excess, tolerance) in [(9.1_f64, 0.01, 0.005), (27.0, 0.065, 0.005), (61.0, 0.50, 0.02)] {
            let x = (degrees.to_radians() / 2.0).tan().powi(2);
            let k = (2.0 - x.ln_1p() - 2.0 * x * x) / (PI * x * (1.0 + x));
            let hertz = (8.0 / (PI * k)).sqrt();
            assert!((hertz / degrees.to_radians() - 1.0 - excess).abs() < tolerance, "{degrees} {hertz}");
        }
    }

    proptest! {
        #[test]
        fn pressure_over_the_arc_carries_the_load(log_k in -3.0..6.0_f64) {
            // p(φ) of the closed form, integrated over its arc (φ = θ sin t takes out the root at the edge)
            let x = tangent_squared(10f64.powf(log_k));
            let (b, s) = (x.sqrt(), (1.0 + x).sqrt());
            let pressure = |y: f64| {
                let root = (b * b - y * y).max(0.0).sqrt();
                2.0 * root / (PI * s * (1.0 + y * y))
                    + ((s + root) * (s + root) / (1.0 + y * y)).ln() / (2.0 * PI * x * s * s)
            };
            let n = 400;
            let sum: f64 = (0..n).map(|i| {
                let t = -PI / 2.0 + PI * (f64::from(i) + 0.5) / f64::from(n);
                let y = b * t.sin();
                let angle = 2.0 * y.atan();
                pressure(y) * angle.cos() * 2.0 / (1.0 + y * y) * b * t.cos() * PI / f64::from(n)
            }).sum();
            prop_assert!((sum - 1.0).abs() < 1e-4, "{sum}");
        }

        #[test]
        fn peak_is_below_that_of_a_line_contact(log_k in -6.0..12.0_f64) {
            let x = tangent_squared(10f64.powf(log_k));
            prop_assert!(peak_number(x) * 4.0 * x.sqrt() / (1.0 + x) <= LINE_PEAK * (1.0 + 1e-6));
        }
    }
}
