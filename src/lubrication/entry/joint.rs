//! Oil on its way into a joint: through the plate gap beside the bush, then along the annulus round the pin.

use super::GRAVITY;
use super::slot::{Slot, capillary_pressure, eccentric_annulus_factor};
use std::f64::consts::PI;

/// Pressure gradient per flow (Pa s/m⁴) along the annulus of radial `clearance` (m) and mean `diameter` (m).
///
/// `viscosity` Pa s; `eccentricity` 0 to 1. Source: thin-annulus flow, 12 η/(π d c³ (1 + 1.5 e²)).
pub fn annulus_resistance(diameter: f64, clearance: f64, eccentricity: f64, viscosity: f64) -> f64 {
    12.0 * viscosity / (PI * diameter * clearance.powi(3) * eccentric_annulus_factor(eccentricity))
}

/// What oil meets on its way from the edge of the side plate into the bush.
///
/// ```
/// use pinfilm::lubrication::entry::JointEntry;
/// let oven = JointEntry {
///     plate_gap: 6e-4, plate_path: 0.01, pin_diameter: 0.014, clearance: 1.5e-4, eccentricity: 1.0, depth: 0.02,
///     surface_tension: 0.03, contact_angle: 20f64.to_radians(), density: 900.0,
/// };
/// let time = oven.time(0.0812); // Pa s
/// assert!((time - 10.84).abs() < 0.01); // s
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointEntry {
    /// Gap between inner and outer plate, m.
    pub plate_gap: f64,
    /// Way from the plate edge to the bush, m: (plate depth - bush diameter)/2.
    pub plate_path: f64,
    /// Pin diameter, m.
    pub pin_diameter: f64,
    /// Radial clearance of pin and bush, m; grows with wear.
    pub clearance: f64,
    /// Eccentricity ratio of the pin, 0 to 1.
    pub eccentricity: f64,
    /// Length of joint to fill from one gap, m: half the joint if oiled from both sides, else all of it.
    pub depth: f64,
    /// Surface tension of the oil, N/m.
    pub surface_tension: f64,
    /// Contact angle, rad.
    pub contact_angle: f64,
    /// Density of the oil, kg/m³.
    pub density: f64,
}

impl JointEntry {
    /// Time (s) through the plate gap, the oil running down from the upper edge of the plate; `viscosity` Pa s.
    pub fn plate_time(&self, viscosity: f64) -> f64 {
        Slot {
            gap: self.plate_gap,
            viscosity,
            surface_tension: self.surface_tension,
            contact_angle: self.contact_angle,
            drive: self.density * GRAVITY,
            eccentricity: 0.0,
        }
        .entry_time(self.plate_path)
    }

    /// Flow resistances behind one another: of the filled plate gap (Pa s/m³), half its circumference open, and of the
    /// annulus per length (Pa s/m⁴).
    fn resistances(&self, viscosity: f64) -> (f64, f64) {
        let plate = 12.0 * viscosity * self.plate_path / (0.5 * PI * self.pin_diameter * self.plate_gap.powi(3));
        (plate, annulus_resistance(self.pin_diameter, self.clearance, self.eccentricity, viscosity))
    }

    /// Time (s) along the annulus, fed through the plate gap; infinite if the oil does not wet. `viscosity` Pa s.
    ///
    /// Source: Lucas-Washburn in series with a fixed resistance, derived.
    pub fn annulus_time(&self, viscosity: f64) -> f64 {
        let pressure = capillary_pressure(self.clearance, self.surface_tension, self.contact_angle);
        if pressure <= 0.0 {
            return f64::INFINITY;
        }
        let (plate, annulus) = self.resistances(viscosity);
        let section = PI * self.pin_diameter * self.clearance;
        section / pressure * (plate * self.depth + 0.5 * annulus * self.depth * self.depth)
    }

    /// Time (s) until the joint is full: plate gap, then annulus. Proportional to `viscosity` (Pa s).
    pub fn time(&self, viscosity: f64) -> f64 {
        self.plate_time(viscosity) + self.annulus_time(viscosity)
    }

    /// Share (0 to 1) of the joint filled within `available` s.
    pub fn entered_share(&self, viscosity: f64, available: f64) -> f64 {
        let pressure = capillary_pressure(self.clearance, self.surface_tension, self.contact_angle);
        let after_plate = available - self.plate_time(viscosity);
        if after_plate <= 0.0 || pressure <= 0.0 {
            return 0.0;
        }
        let (plate, annulus) = self.resistances(viscosity);
        let y = pressure * after_plate / (PI * self.pin_diameter * self.clearance);
        let depth = 2.0 * y / (plate + (plate * plate + 2.0 * annulus * y).sqrt());
        (depth / self.depth).min(1.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn joint() -> JointEntry {
        JointEntry {
            plate_gap: 5e-4,
            plate_path: 8e-3,
            pin_diameter: 0.01,
            clearance: 1e-4,
            eccentricity: 1.0,
            depth: 0.013,
            surface_tension: 0.03,
            contact_angle: 0.35,
            density: 880.0,
        }
    }

    proptest! {
        #[test]
        fn share_meets_time(viscosity in 1e-3..10.0f64, share in 0.01..1.0f64) {
            let part = JointEntry { depth: share * joint().depth, ..joint() };
            let time = part.time(viscosity);
            prop_assert!((joint().entered_share(viscosity, time) - share).abs() < 1e-9);
        }

        #[test]
        fn time_is_proportional_to_viscosity(viscosity in 1e-3..10.0f64) {
            prop_assert!((joint().time(viscosity) / (viscosity * joint().time(1.0)) - 1.0).abs() < 1e-12);
        }
    }

    #[test]
    fn nothing_enters_before_the_plate_gap_is_passed() {
        let t1 = joint().plate_time(0.5);
        assert_eq!(joint().entered_share(0.5, t1), 0.0);
        assert!(joint().entered_share(0.5, 1.01 * t1) > 0.0);
        assert_eq!(joint().entered_share(0.5, 1e9), 1.0);
    }
}
