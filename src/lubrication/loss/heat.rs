//! What heat takes: light ends evaporate, the rest oxidises. Scalar rates at one temperature, and their mean.

use crate::error::{Code, Error, Result};
use crate::quantity::unit::ICE_POINT;
use std::f64::consts::{LN_2, PI};

/// Molar gas constant, J/(mol K) (CODATA 2018, exact).
const GAS_CONSTANT: f64 = 8.314462618;
/// Temperature of the Noack test, °C (ASTM D5800).
pub const NOACK_TEMPERATURE: f64 = 250.0;
/// Duration of the Noack test, s (ASTM D5800).
pub const NOACK_DURATION: f64 = 3600.0;
/// The surveyor must confirm a chain within so many kelvin of the flash point.
const FLASH_MARGIN: f64 = 20.0;

/// First-order loss rate (1/s) at 250 °C of an oil that loses the share `loss` (0 to below 1) in the Noack test.
///
/// Source: ASTM D5800 (test conditions from memory); m = m0 exp(-k t).
pub fn noack_rate(loss: f64) -> f64 {
    -(-loss).ln_1p() / NOACK_DURATION
}

/// Vapour pressure at `temperature` over that at `reference` (°C), with vaporisation `heat` J/mol taken as constant.
///
/// Source: Clausius-Clapeyron, integrated.
pub fn vapour_ratio(temperature: f64, reference: f64, heat: f64) -> f64 {
    (-heat / GAS_CONSTANT * ((temperature + ICE_POINT).recip() - (reference + ICE_POINT).recip())).exp()
}

/// Greatest flux (kg/(m² s)) at which a liquid can evaporate into a vacuum: an upper bound for any real loss.
///
/// `vapour_pressure` Pa, `molar_mass` kg/mol, `temperature` °C. Source: Hertz 1882, Knudsen 1915, Langmuir 1913.
pub fn free_evaporation_flux(vapour_pressure: f64, molar_mass: f64, temperature: f64) -> f64 {
    vapour_pressure * (molar_mass / (2.0 * PI * GAS_CONSTANT * (temperature + ICE_POINT))).sqrt()
}

/// How an oil in a joint evaporates.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Evaporation {
    /// Loss in the Noack test as a share, 0 to below 1.
    pub noack_loss: f64,
    /// Molar heat of vaporisation, J/mol.
    pub heat: f64,
    /// 1 in moving hot air, 0.3 in still air (closure of our own, 0.05 to 2).
    pub air: f64,
    /// Oil in the Noack cup over its open area, kg/m² (23: 65 g in a cup about 60 mm wide, from memory).
    pub noack_mass_per_area: f64,
    /// Oil in the joint over the area open to the air, kg/m²: density · capacity / exposed area.
    pub mass_per_area: f64,
}

impl Evaporation {
    /// Loss rate (1/s) at `temperature` (°C), reasonable from 40 to 260 °C. Late loss is over-predicted: light ends go first.
    ///
    /// Closure of our own: the Noack rate scaled by vapour pressure and by mass over open area.
    pub fn rate(&self, temperature: f64) -> f64 {
        self.air
            * noack_rate(self.noack_loss)
            * vapour_ratio(temperature, NOACK_TEMPERATURE, self.heat)
            * self.noack_mass_per_area
            / self.mass_per_area
    }
}

/// How an oil oxidises.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Oxidation {
    /// Time in which half is oxidised at `reference`, s.
    pub half_life: f64,
    /// Temperature of that half life, °C.
    pub reference: f64,
}

impl Oxidation {
    /// Loss rate (1/s) at `temperature` (°C); doubtful more than 60 K from the reference.
    ///
    /// Common practice, no source: the rate doubles with every 10 K.
    pub fn rate(&self, temperature: f64) -> f64 {
        LN_2 / self.half_life * ((temperature - self.reference) / 10.0).exp2()
    }
}

/// A temperature (°C) and the share of the circuit time that a joint has it; shares sum to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TemperatureShare {
    /// Temperature of the joint, °C.
    pub temperature: f64,
    /// Share of the circuit time.
    pub share: f64,
}

/// Mean of a rate over the temperatures of a circuit: exact for first-order loss over whole circuits.
///
/// The rate at the mean temperature would be far too low.
pub fn mean_rate(temperatures: &[TemperatureShare], rate: impl Fn(f64) -> f64) -> f64 {
    temperatures.iter().map(|at| at.share * rate(at.temperature)).sum()
}

/// Refuses oil within 20 K of its flash point (°C) unless a survey has been `confirmed`; else says whether a caution stays.
///
/// Source: common practice, no source. The caution stays even when confirmed.
pub fn check_flash_point(temperature: f64, flash_point: f64, confirmed: bool) -> Result<bool> {
    let near = temperature > flash_point - FLASH_MARGIN;
    if near && !confirmed {
        return Err(Error::new(
            Code::Hot,
            "flash_point",
            format!(
                "The chain reaches {temperature:.0} °C, within 20 K of the flash point of the oil ({flash_point:.0} °C): \
                 take an oil with a higher flash point, or confirm that the place has been surveyed for fire."
            ),
        )
        .number(flash_point)
        .unit("°C")
        .limit(format!("at least {:.1} °C unless confirmed", temperature + FLASH_MARGIN)));
    }
    Ok(near)
}

#[cfg(test)]
mod tests {
    use super::*;

    const OIL: Evaporation =
        Evaporation { noack_loss: 0.1, heat: 1e5, air: 1.0, noack_mass_per_area: 23.0, mass_per_area: 23.0 };

    #[test]
    fn a_joint_like_the_cup_loses_like_the_cup() {
        let left = (-OIL.rate(NOACK_TEMPERATURE) * NOACK_DURATION).exp();
        assert!((left - 0.9).abs() < 1e-15);
        assert_eq!(Evaporation { noack_loss: 0.0, ..OIL }.rate(200.0), 0.0);
    }

    #[test]
    fn ten_kelvin_double_oxidation() {
        let oil = Oxidation { half_life: 3.6e6, reference: 100.0 };
        assert!((oil.rate(110.0) / oil.rate(100.0) - 2.0).abs() < 1e-14);
        assert!((oil.rate(100.0) * 3.6e6 - LN_2).abs() < 1e-15);
    }

    #[test]
    fn hot_parts_rule_the_mean() {
        let oven = [(200.0, 0.25), (60.0, 0.75)].map(|(temperature, share)| TemperatureShare { temperature, share });
        let mean = mean_rate(&oven, |t| OIL.rate(t));
        assert!(mean > 20.0 * OIL.rate(95.0));
    }

    #[test]
    fn near_the_flash_point() {
        assert_eq!(check_flash_point(100.0, 200.0, false), Ok(false));
        assert_eq!(check_flash_point(190.0, 200.0, true), Ok(true));
        assert!(check_flash_point(190.0, 200.0, false).is_err_and(|e| e.code == Code::Hot));
    }
}
