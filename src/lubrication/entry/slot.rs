//! Oil drawn into a narrow slot by capillarity, helped or hindered by gravity.

use super::GRAVITY;
use crate::error::Result;
use crate::numeric::root;

/// Capillary pressure of a slot (Pa): 2 γ cos θ / gap.
///
/// `gap` m (full gap), `surface_tension` N/m, `contact_angle` rad. Source: Young-Laplace for parallel plates.
pub fn capillary_pressure(gap: f64, surface_tension: f64, contact_angle: f64) -> f64 {
    2.0 * surface_tension * contact_angle.cos() / gap
}

/// Height (m) to which a `pressure` (Pa) lifts oil of `density` (kg/m³) under `acceleration` (m/s²): Jurin's height.
pub fn capillary_rise(pressure: f64, density: f64, acceleration: f64) -> f64 {
    pressure / (density * acceleration)
}

/// Gravity along a slot (Pa/m): positive downwards, into the slot.
///
/// `density` kg/m³, `angle` rad between the way of the oil and the vertical: 0 straight down, π straight up. Exact.
pub fn gravity_along(density: f64, angle: f64) -> f64 {
    density * GRAVITY * angle.cos()
}

/// How much more flows through a narrow annulus when the pin lies off centre: 1 + 1.5 e².
///
/// `eccentricity` 0 (centred) to 1 (touching). Source: narrow-annulus limit of Piercy, Hooper & Winny 1933.
pub fn eccentric_annulus_factor(eccentricity: f64) -> f64 {
    1.0 + 1.5 * eccentricity * eccentricity
}

/// Depth (m) reached in a capillary tube of `radius` (m) after `time` (s), without gravity.
///
/// `viscosity` Pa s, `surface_tension` N/m, `contact_angle` rad below a right angle.
/// Source: Washburn 1921, Phys. Rev. 17, 273: x² = γ r cos θ t/(2 η).
pub fn tube_entry_depth(time: f64, radius: f64, viscosity: f64, surface_tension: f64, contact_angle: f64) -> f64 {
    (surface_tension * radius * contact_angle.cos() * time / (2.0 * viscosity)).sqrt()
}

/// Time (s) for oil to run inwards between two discs from radius `outer` to radius `inner` (m), without gravity.
///
/// `gap` m, `viscosity` Pa s, `surface_tension` N/m, `contact_angle` rad. Infinite if the oil does not wet.
/// Source: radial Lucas-Washburn, derived from the parallel-plate flow ∂p/∂r = -12 η q/(2 π r gap³).
pub fn disc_entry_time(
    inner: f64,
    outer: f64,
    gap: f64,
    viscosity: f64,
    surface_tension: f64,
    contact_angle: f64,
) -> f64 {
    let pressure = capillary_pressure(gap, surface_tension, contact_angle);
    if pressure <= 0.0 {
        return f64::INFINITY;
    }
    let (i2, o2) = (inner * inner, outer * outer);
    12.0 * viscosity / (gap * gap * pressure) * ((o2 - i2) / 4.0 - 0.5 * i2 * (outer / inner).ln())
}

/// A slot that oil enters from one edge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slot {
    /// Full gap, m.
    pub gap: f64,
    /// Viscosity of the oil, Pa s.
    pub viscosity: f64,
    /// Surface tension of the oil, N/m.
    pub surface_tension: f64,
    /// Contact angle, rad.
    pub contact_angle: f64,
    /// Gravity along the slot, Pa/m: density · g · cos(angle to the vertical); positive downwards, into the slot.
    pub drive: f64,
    /// Eccentricity ratio if the slot is an annulus (0 to 1); 0 for parallel plates.
    pub eccentricity: f64,
}

impl Slot {
    /// Speed laws of the front, dx/dt = a/x + b: (a in m²/s, b in m/s).
    fn speeds(&self) -> (f64, f64) {
        let conductance = self.gap * self.gap * eccentric_annulus_factor(self.eccentricity) / (12.0 * self.viscosity);
        let pressure = capillary_pressure(self.gap, self.surface_tension, self.contact_angle);
        (conductance * pressure, conductance * self.drive)
    }

    /// Time (s) until the oil stands `depth` (m) deep; infinite if it never gets there.
    ///
    /// Source: Washburn 1921 with gravity, integrated: t = (a/b²)(u - ln(1 + u)), u = b x/a.
    pub fn entry_time(&self, depth: f64) -> f64 {
        let (a, b) = self.speeds();
        entry_time(a, b, depth)
    }

    /// Depth (m) reached after `time` (s).
    pub fn depth(&self, time: f64) -> Result<f64> {
        let (a, b) = self.speeds();
        if a <= 0.0 || time <= 0.0 {
            return Ok(0.0);
        }
        let free = (2.0 * a * time).sqrt();
        if b == 0.0 {
            return Ok(free);
        }
        // Against gravity the front stops at a/|b|; a hair below it is as far as the time law can be evaluated.
        let deepest = if b > 0.0 { free + b * time } else { free.min(a / -b * (1.0 - 1e-14)) };
        if entry_time(a, b, deepest) <= time {
            return Ok(deepest);
        }
        root("depth of oil in the slot", 0.0, deepest, 1e-13, 0.0, |x| entry_time(a, b, x) - time)
    }
}

/// The time law of [`Slot::entry_time`] from the two speed constants.
fn entry_time(a: f64, b: f64, depth: f64) -> f64 {
    if depth <= 0.0 {
        return 0.0;
    }
    if a <= 0.0 {
        return f64::INFINITY; // the meniscus holds the oil back and nothing starts it
    }
    let u = b * depth / a;
    if u <= -1.0 {
        f64::INFINITY
    } else if u.abs() < 0.01 {
        // u - ln(1 + u) by its series: the difference loses its digits near u = 0
        let mut sum = 0.0;
        for k in (2..=11).rev() {
            sum = 1.0 / f64::from(k) - u * sum;
        }
        depth * depth / a * sum
    } else {
        a / (b * b) * (u - u.ln_1p())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn slot(drive: f64) -> Slot {
        Slot {
            gap: 1e-4,
            viscosity: 0.5,
            surface_tension: 0.03,
            contact_angle: 20f64.to_radians(),
            drive,
            eccentricity: 0.0,
        }
    }

    #[test]
    fn depth_is_the_inverse_of_time() {
        for drive in [-8630.0, -10.0, 0.0, 1.0, 9000.0] {
            for depth in [1e-4, 5e-3, 2e-2] {
                let time = slot(drive).entry_time(depth);
                let back = slot(drive).depth(time).unwrap();
                assert!((back / depth - 1.0).abs() < 1e-9, "{drive} {depth} {back}");
            }
        }
    }

    #[test]
    fn the_series_joins_the_closed_form() {
        // u = b x/a is 0.01 at this drive
        let a = 2.0 * 0.03 * 20f64.to_radians().cos() / 1e-4;
        let below = slot(0.009_999_999 * a / 0.01).entry_time(0.01);
        let above = slot(0.010_000_001 * a / 0.01).entry_time(0.01);
        assert!((below / above - 1.0).abs() < 1e-8 && below > above);
    }

    #[test]
    fn oil_that_does_not_wet_stays_out() {
        let dry = Slot { contact_angle: 120f64.to_radians(), ..slot(0.0) };
        assert_eq!(dry.entry_time(0.01), f64::INFINITY);
        assert_eq!(dry.depth(100.0).unwrap(), 0.0);
        assert_eq!(slot(-8630.0).entry_time(0.2), f64::INFINITY);
    }

    #[test]
    fn a_thin_disc_ring_is_a_slot() {
        let ring = disc_entry_time(0.99, 1.0, 1e-4, 0.5, 0.03, 0.35);
        let flat = Slot { contact_angle: 0.35, ..slot(0.0) }.entry_time(0.01);
        assert!((ring / flat - 1.0).abs() < 0.01, "{ring} {flat}");
    }
}
