//! What pressure does to viscosity.

use crate::error::{Code, Error, Result};

/// ln of viscosity over Roelands' reference 6.31e-5 Pa s is `ln(viscosity) + 9.67`.
const ROELANDS_LOG: f64 = 9.67;

/// Roelands' pressure constant, 1/Pa.
const ROELANDS_PRESSURE: f64 = 5.1e-9;

/// Below this viscosity (Pa s) Roelands' form loses its meaning: its reference is 6.31e-5 Pa s.
const ROELANDS_LEAST: f64 = 2e-4;

/// Pressure-viscosity coefficient (1/Pa) of a mineral oil of `viscosity` (Pa s at the temperature in question).
///
/// `(0.6 + 0.965 log10 viscosity in mPa s) 1e-8`, not below 0.5e-8. Within ±25 % of printed mineral oils
/// (+17 % to -26 % against twelve); beyond about 11 Pa s there are no measured oils to compare with.
/// Source: Wooster's relation, from memory.
///
/// ```
/// assert!((pinfilm::oil::pressure_viscosity(0.1) - 2.53e-8).abs() < 1e-20);
/// ```
pub fn pressure_viscosity(viscosity: f64) -> f64 {
    (0.6 + 0.965 * (viscosity.log10() + 3.0)).max(0.5) * 1e-8
}

/// Viscosity (Pa s) under `pressure` (Pa) by the exponential law, from `viscosity` at atmospheric pressure (Pa s)
/// and the pressure-viscosity `coefficient` (1/Pa).
///
/// For teaching and small pressures: above 100 MPa it overstates without bound, use [`roelands`].
/// Source: Barus 1893.
pub fn barus(viscosity: f64, coefficient: f64, pressure: f64) -> f64 {
    viscosity * (coefficient * pressure).exp()
}

/// Roelands' pressure exponent Z (-) of an oil of `viscosity` (Pa s) and pressure-viscosity `coefficient` (1/Pa).
///
/// `coefficient / (5.1e-9 (ln viscosity + 9.67))`: it gives both laws the same slope at atmospheric pressure.
/// Source: Roelands 1966 as given in Stachowiak and Batchelor, Engineering Tribology.
/// Fails below 2e-4 Pa s, where the logarithm goes to zero.
pub fn roelands_exponent(viscosity: f64, coefficient: f64) -> Result<f64> {
    Ok(coefficient / (ROELANDS_PRESSURE * log_ratio(viscosity)?))
}

/// Viscosity (Pa s) under `pressure` (Pa), from `viscosity` at atmospheric pressure (Pa s, 2e-4 and more) and the
/// pressure-viscosity `coefficient` (1/Pa).
///
/// The exponent stops at 200, far above any oil that still is a liquid, so that no number overflows.
/// Source: Roelands 1966 as given in Stachowiak and Batchelor, Engineering Tribology.
///
/// ```
/// use pinfilm::oil::{pressure_viscosity, roelands};
/// assert!((roelands(0.1, pressure_viscosity(0.1), 1e8)? - 1.055076755).abs() < 1e-9);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn roelands(viscosity: f64, coefficient: f64, pressure: f64) -> Result<f64> {
    let log_ratio = log_ratio(viscosity)?;
    let exponent = coefficient / (ROELANDS_PRESSURE * log_ratio);
    let rise = log_ratio * (exponent * (ROELANDS_PRESSURE * pressure).ln_1p()).exp_m1();
    Ok(viscosity * rise.min(200.0).exp())
}

fn log_ratio(viscosity: f64) -> Result<f64> {
    if viscosity >= ROELANDS_LEAST {
        return Ok(viscosity.ln() + ROELANDS_LOG);
    }
    Err(Error::new(
        Code::BeyondModel,
        "dynamic_viscosity",
        format!(
            "a viscosity of {viscosity:e} Pa s is too low for Roelands' law of pressure and viscosity (2e-4 Pa s and \
             more): take a thicker oil or a lower temperature"
        ),
    )
    .number(viscosity)
    .unit("Pa s")
    .limit("2e-4 Pa s and more"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_laws_start_alike_and_roelands_stays_below() {
        for viscosity in [0.002, 0.05, 1.0, 20.0] {
            let coefficient = pressure_viscosity(viscosity);
            let (slow, fast) = (roelands(viscosity, coefficient, 1e4).unwrap(), barus(viscosity, coefficient, 1e4));
            assert!((slow / fast - 1.0).abs() < 1e-7);
            assert_eq!(roelands(viscosity, coefficient, 0.0).unwrap(), viscosity);
            assert!(roelands(viscosity, coefficient, 1e9).unwrap() < barus(viscosity, coefficient, 1e9));
            assert!(roelands(viscosity, coefficient, 1e12).unwrap().is_finite());
        }
    }

    #[test]
    fn thin_liquids_are_refused_and_the_coefficient_has_a_floor() {
        assert_eq!(roelands(1e-4, 1e-8, 1e8).unwrap_err().code, Code::BeyondModel);
        assert_eq!(roelands_exponent(f64::NAN, 1e-8).unwrap_err().code, Code::BeyondModel);
        assert_eq!(pressure_viscosity(2e-4), 0.5e-8);
    }
}
