//! Viscosity against temperature: the double-logarithm line of ASTM D341, fitted once and evaluated cheaply.

use super::{MM2_PER_S, viscosity_at_100};
use crate::error::{Code, Error, Result};
use crate::quantity::unit::ICE_POINT;
use std::f64::consts::LN_10;

/// Kinematic viscosities that ASTM D341 covers, mm2/s.
const COVERED: std::ops::RangeInclusive<f64> = 0.21..=2e7;

/// Above this viscosity (mm2/s) the exponential term of Z is below the last digit of a double.
const EXPONENTIAL_GONE: f64 = 7.0;

/// A straight line in ln ln Z against ln T, T in kelvin, where Z is viscosity with the low-viscosity terms of ASTM D341.
///
/// `Z = v + 0.7 + exp(-1.47 - 1.84 v - 0.51 v²)`, v in mm2/s, natural exponential.
/// Source: ASTM D341, general form. Usual from -20 to 150 °C; above about 200 °C it is an extrapolation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ViscosityLine {
    log_temperature: f64,
    log_log_z: f64,
    slope: f64,
}

impl ViscosityLine {
    /// The line through two measured points: `viscosity_1` at `temperature_1`, `viscosity_2` at `temperature_2`
    /// (°C, m2/s), in any order.
    ///
    /// Fails if a viscosity is outside 0.21 to 2e7 mm2/s, if the temperatures are equal, or if the oil is not
    /// thinner where it is hotter.
    ///
    /// ```
    /// use pinfilm::oil::ViscosityLine;
    /// let line = ViscosityLine::through(40.0, 220e-6, 100.0, 18.9e-6)?;
    /// assert!((line.viscosity(150.0)? - 6.267506e-6).abs() < 1e-12);
    /// # Ok::<(), pinfilm::Error>(())
    /// ```
    pub fn through(temperature_1: f64, viscosity_1: f64, temperature_2: f64, viscosity_2: f64) -> Result<Self> {
        let (first, second) = (covered(viscosity_1)?, covered(viscosity_2)?);
        if temperature_1 == temperature_2 {
            return Err(Error::new(
                Code::Inconsistent,
                "temperature_2",
                format!(
                    "both viscosities are given at {temperature_1} °C: a viscosity line needs two different \
                     temperatures, usually 40 and 100 °C"
                ),
            )
            .number(temperature_2)
            .unit("°C")
            .limit("two different temperatures"));
        }
        let (log_1, log_2) = (log_kelvin(temperature_1), log_kelvin(temperature_2));
        let (y_1, y_2) = (z_of(first).ln().ln(), z_of(second).ln().ln());
        let slope = (y_1 - y_2) / (log_2 - log_1);
        if slope.is_nan() || slope <= 0.0 {
            return Err(Error::new(
                Code::Inconsistent,
                "viscosity_2",
                format!(
                    "{first} mm²/s at {temperature_1} °C and {second} mm²/s at {temperature_2} °C: an oil is thinner \
                     where it is hotter; check which viscosity belongs to which temperature"
                ),
            )
            .number(second)
            .unit("mm²/s")
            .limit("the lower viscosity at the higher temperature"));
        }
        Ok(ViscosityLine { log_temperature: log_1, log_log_z: y_1, slope })
    }

    /// The line of an oil with `viscosity_40` (m2/s at 40 °C) and a viscosity index.
    ///
    /// Source: viscosity at 100 °C by ASTM D2270 inverted, see [`viscosity_at_100`](super::viscosity_at_100).
    pub fn from_index(viscosity_40: f64, viscosity_index: f64) -> Result<Self> {
        Self::through(40.0, viscosity_40, 100.0, viscosity_at_100(viscosity_40, viscosity_index)?)
    }

    /// Kinematic viscosity (m2/s) at `temperature` (°C).
    ///
    /// Fails below 0.21 mm2/s, where the standard ends, and where the line no longer gives a number.
    pub fn viscosity(&self, temperature: f64) -> Result<f64> {
        let y = self.log_log_z - self.slope * (log_kelvin(temperature) - self.log_temperature);
        let z = y.exp().exp();
        let viscosity = if z > 1.0 { viscosity_of(z) } else { 0.0 };
        if viscosity < *COVERED.start() || !viscosity.is_finite() {
            return Err(Error::new(
                Code::BeyondModel,
                "temperature",
                format!(
                    "at {temperature} °C the viscosity line gives {viscosity:.3} mm²/s, outside what ASTM D341 covers \
                     (0.21 mm²/s and more): take a temperature nearer to the two given points, or a thicker oil"
                ),
            )
            .number(temperature)
            .unit("°C")
            .limit("temperatures at which the oil has at least 0.21 mm²/s"));
        }
        Ok(viscosity * MM2_PER_S)
    }

    /// The temperature (°C) at which the oil has this `viscosity` (m2/s, 0.21 mm2/s and more).
    pub fn temperature(&self, viscosity: f64) -> Result<f64> {
        let y = z_of(covered(viscosity)?).ln().ln();
        Ok((self.log_temperature + (self.log_log_z - y) / self.slope).exp() - ICE_POINT)
    }

    /// The constants A and B of `log10 log10 Z = A - B log10 T` as ASTM D341 prints them.
    pub fn astm_constants(&self) -> (f64, f64) {
        ((self.log_log_z + self.slope * self.log_temperature - LN_10.ln()) / LN_10, self.slope)
    }
}

/// Dynamic viscosity (Pa s): kinematic viscosity (m2/s) times density (kg/m3). By definition.
pub fn dynamic_viscosity(kinematic_viscosity: f64, density: f64) -> f64 {
    kinematic_viscosity * density
}

fn log_kelvin(temperature: f64) -> f64 {
    (temperature + ICE_POINT).ln()
}

/// The viscosity in mm2/s, if the standard covers it.
fn covered(viscosity: f64) -> Result<f64> {
    let given = viscosity / MM2_PER_S;
    if COVERED.contains(&given) {
        return Ok(given);
    }
    Err(Error::new(
        Code::OutOfRange,
        "viscosity",
        format!("a viscosity of {given} mm²/s is outside what ASTM D341 covers (0.21 to 2e7 mm²/s); check the unit"),
    )
    .number(given)
    .unit("mm²/s")
    .limit("0.21 to 2e7 mm²/s"))
}

/// The exponential term that bends the line at low viscosity (mm2/s).
fn exponential(v: f64) -> f64 {
    (-1.47 - v * (1.84 + 0.51 * v)).exp()
}

/// Z of ASTM D341 for a viscosity in mm2/s.
fn z_of(v: f64) -> f64 {
    v + 0.7 + exponential(v)
}

/// The viscosity (mm2/s) that has this Z, by Newton's method.
///
/// The closed inverse printed in the standard misses the round trip by up to 2.8e-4, so it is not used.
fn viscosity_of(z: f64) -> f64 {
    let thick = z - 0.7;
    if thick > EXPONENTIAL_GONE {
        return thick;
    }
    let mut v = thick.max(0.15);
    for _ in 0..60 {
        let term = exponential(v);
        let step = (v + 0.7 + term - z) / (1.0 - (1.84 + 1.02 * v) * term);
        v = (v - step).max(0.05); // Z rises from 0.93 at zero: a wider step has left the oils
        if step.abs() < 1e-15 * z {
            break;
        }
    }
    v
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn newton_undoes_z(log in (0.06_f64).ln()..(2e7_f64).ln()) {
            let v = log.exp();
            let back = viscosity_of(z_of(v));
            // The slope of Z falls to a third at the thin end: digits are lost there, not more than that.
            prop_assert!((back - v).abs() <= 4e-15 * v.max(1.0), "{v} came back as {back}");
        }

        #[test]
        fn line_passes_through_its_points_in_either_order(
            t in -20.0..90.0_f64, dt in 5.0..100.0_f64, log in (2.0_f64).ln()..(5e4_f64).ln(), thinner in 0.05..0.95_f64,
        ) {
            let (v1, v2) = (log.exp() * 1e-6, (log * thinner).exp() * 1e-6);
            let line = ViscosityLine::through(t, v1, t + dt, v2).unwrap();
            let turned = ViscosityLine::through(t + dt, v2, t, v1).unwrap();
            prop_assert!((line.viscosity(t).unwrap() / v1 - 1.0).abs() < 1e-11);
            prop_assert!((line.viscosity(t + dt).unwrap() / v2 - 1.0).abs() < 1e-11);
            let between = line.viscosity(t + 0.4 * dt).unwrap();
            prop_assert!((turned.viscosity(t + 0.4 * dt).unwrap() / between - 1.0).abs() < 1e-11);
            prop_assert!(v2 < between && between < v1);
            prop_assert!((line.temperature(between).unwrap() - (t + 0.4 * dt)).abs() < 1e-8);
        }
    }

    #[test]
    fn refuses_what_is_not_an_oil() {
        let code = |line: Result<ViscosityLine>| line.unwrap_err().code;
        assert_eq!(code(ViscosityLine::through(40.0, 220e-6, 40.0, 18e-6)), Code::Inconsistent);
        assert_eq!(code(ViscosityLine::through(40.0, 18e-6, 100.0, 220e-6)), Code::Inconsistent);
        assert_eq!(code(ViscosityLine::through(40.0, 18e-6, 100.0, 18e-6)), Code::Inconsistent);
        assert_eq!(code(ViscosityLine::through(40.0, 0.2e-6, 100.0, 0.1e-6)), Code::OutOfRange);
        assert_eq!(code(ViscosityLine::through(40.0, 220.0, 100.0, 18.9)), Code::OutOfRange);
        assert_eq!(code(ViscosityLine::through(40.0, f64::NAN, 100.0, 18.9e-6)), Code::OutOfRange);
        let thin = ViscosityLine::through(40.0, 1.0e-6, 100.0, 0.5e-6).unwrap();
        assert_eq!(thin.viscosity(300.0).unwrap_err().code, Code::BeyondModel);
        assert_eq!(thin.viscosity(5000.0).unwrap_err().code, Code::BeyondModel);
        let thick = ViscosityLine::from_index(3200e-6, -50.0).unwrap();
        assert!(thick.viscosity(-60.0).unwrap().is_finite());
        assert_eq!(thick.viscosity(-200.0).unwrap_err().code, Code::BeyondModel);
    }
}
