//! Two oils mixed: the viscosity of the blend at one temperature.
//!
//! A blend is computed at 40 °C and at 100 °C separately, then drawn as a viscosity line.

use super::MM2_PER_S;
use crate::error::{Code, Error, Result};

/// Below this viscosity (mm2/s) Wright's double logarithm has no value.
const WRIGHT_LEAST: f64 = 0.3;

/// Below this viscosity (mm2/s) the Refutas number has no value.
const REFUTAS_LEAST: f64 = 0.2;

/// Kinematic viscosity (m2/s) of a blend of two oils with viscosities `viscosity_a` and `viscosity_b` (m2/s, more
/// than 0.3 mm2/s, same temperature); `fraction_a` is the volume fraction of the first, 0 to 1.
///
/// `log log (v + 0.7)` is linear in the volume fraction.
/// Source: Wright's method as in ASTM D7152, procedure from memory; closed form.
///
/// ```
/// let blend = pinfilm::oil::blend_viscosity(32e-6, 1000e-6, 0.3)?;
/// assert!((blend - 277.2690296e-6).abs() < 1e-13);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn blend_viscosity(viscosity_a: f64, viscosity_b: f64, fraction_a: f64) -> Result<f64> {
    let a = (in_reach(viscosity_a, WRIGHT_LEAST)? + 0.7).ln().ln();
    let b = (in_reach(viscosity_b, WRIGHT_LEAST)? + 0.7).ln().ln();
    Ok(((fraction_a * a + (1.0 - fraction_a) * b).exp().exp() - 0.7) * MM2_PER_S)
}

/// Viscosity blending number (-) of an oil of `viscosity` (m2/s, more than 0.2 mm2/s): `14.534 ln ln (v + 0.8) + 10.975`.
///
/// Source: Refutas equation, from memory.
pub fn blending_number(viscosity: f64) -> Result<f64> {
    Ok(14.534 * (in_reach(viscosity, REFUTAS_LEAST)? + 0.8).ln().ln() + 10.975)
}

/// Kinematic viscosity (m2/s) of a blend by mass: the blending numbers are averaged with `mass_fraction_a` of the first.
///
/// Source: Refutas equation, from memory; an alternative to [`blend_viscosity`] where fractions are weighed.
pub fn blend_by_mass(viscosity_a: f64, viscosity_b: f64, mass_fraction_a: f64) -> Result<f64> {
    let (a, b) = (blending_number(viscosity_a)?, blending_number(viscosity_b)?);
    let number = mass_fraction_a * a + (1.0 - mass_fraction_a) * b;
    Ok((((number - 10.975) / 14.534).exp().exp() - 0.8) * MM2_PER_S)
}

fn in_reach(viscosity: f64, least: f64) -> Result<f64> {
    let given = viscosity / MM2_PER_S;
    if given > least && given.is_finite() {
        return Ok(given);
    }
    Err(Error::new(
        Code::OutOfRange,
        "viscosity",
        format!(
            "a viscosity of {given} mm²/s cannot be blended: the rule needs more than {least} mm²/s; check the unit"
        ),
    )
    .number(given)
    .unit("mm²/s")
    .limit(format!("more than {least} mm²/s")))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_blend_lies_between_its_parts_and_does_not_care_for_their_order(
            a in 1.0..3000.0_f64, b in 1.0..3000.0_f64, share in 0.0..=1.0_f64,
        ) {
            let (a, b) = (a * 1e-6, b * 1e-6);
            for rule in [blend_viscosity, blend_by_mass] {
                let blend = rule(a, b, share).unwrap();
                prop_assert!(blend >= a.min(b) * (1.0 - 1e-12) && blend <= a.max(b) * (1.0 + 1e-12));
                prop_assert!((rule(b, a, 1.0 - share).unwrap() / blend - 1.0).abs() < 1e-12);
                prop_assert!((rule(a, b, 1.0).unwrap() / a - 1.0).abs() < 1e-12);
                prop_assert!((rule(a, a, share).unwrap() / a - 1.0).abs() < 1e-12);
            }
        }
    }

    #[test]
    fn what_has_no_double_logarithm_is_refused() {
        assert_eq!(blend_viscosity(0.3e-6, 32e-6, 0.5).unwrap_err().code, Code::OutOfRange);
        assert_eq!(blending_number(0.1e-6).unwrap_err().code, Code::OutOfRange);
    }
}
