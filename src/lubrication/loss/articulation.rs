//! What articulation takes: every turn of pin against bush pumps a little oil sideways out of the joint.

use std::f64::consts::PI;

/// Joint movements of one kind during a circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Articulation {
    /// How many in a circuit.
    pub count: f64,
    /// Angle of each, rad, >= 0.
    pub angle: f64,
    /// Viscosity of the oil there, Pa s.
    pub viscosity: f64,
}

/// Share of its oil that a joint loses in one articulation.
///
/// `viscosity` Pa s, `angle` rad, `eccentricity` 0 to 1. Closure of our own on the side flow of a short bearing
/// (r α c e L moves out; a part is lost): `loss` (5e-4, 5e-5 to 5e-3) at the `reference` viscosity (0.1 Pa s), falling with
/// viscosity to the power `exponent` (0.5). Calibrate `loss` first.
pub fn articulation_loss(
    viscosity: f64,
    angle: f64,
    eccentricity: f64,
    loss: f64,
    exponent: f64,
    reference: f64,
) -> f64 {
    let thin = reference / viscosity;
    let power = if exponent == 0.5 { thin.sqrt() } else { thin.powf(exponent) };
    loss * power * angle * eccentricity / (2.0 * PI)
}

/// Loss rate (1/s) from all articulations of a circuit of `circuit` s; the rest as in [`articulation_loss`].
pub fn articulation_rate(
    articulations: &[Articulation],
    circuit: f64,
    eccentricity: f64,
    loss: f64,
    exponent: f64,
    reference: f64,
) -> f64 {
    let a_circuit: f64 = articulations
        .iter()
        .map(|a| a.count * articulation_loss(a.viscosity, a.angle, eccentricity, loss, exponent, reference))
        .sum();
    a_circuit / circuit
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_centred_pin_pumps_nothing_and_halves_add_up() {
        assert_eq!(articulation_loss(0.1, 0.5, 0.0, 5e-4, 0.5, 0.1), 0.0);
        let rate = |list: &[Articulation]| articulation_rate(list, 100.0, 1.0, 5e-4, 0.5, 0.1);
        let whole = Articulation { count: 2.0, angle: 0.5, viscosity: 0.1 };
        let half = Articulation { count: 1.0, ..whole };
        assert_eq!(rate(&[whole]), rate(&[half, half]));
        let general = articulation_loss(0.2, 0.5, 1.0, 5e-4, 0.5 + 1e-15, 0.1);
        assert!((general / articulation_loss(0.2, 0.5, 1.0, 5e-4, 0.5, 0.1) - 1.0).abs() < 1e-14);
    }
}
