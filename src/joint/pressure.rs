//! Nominal bearing pressure, what is permissible in practice, and the bending that nominal pressure leaves out.

use super::Pair;
use std::f64::consts::PI;

/// Nominal bearing pressure of a pin in its bush (Pa): load over projected area.
///
/// `load` N, `pin_diameter` m, `joint_length` m, all > 0. Exact by definition; it says nothing about the true contact,
/// which is narrower (see [`ContactArc`](super::ContactArc)).
/// Source: projected-area convention of machine design, e.g. ISO 10823:2004.
pub fn bearing_pressure(load: f64, pin_diameter: f64, joint_length: f64) -> f64 {
    load / (pin_diameter * joint_length)
}

/// Sliding speed (m/s) and permissible nominal pressure (Pa) of case-hardened pin and bush.
/// Common practice, no source; ±30 %.
const PERMISSIBLE: [(f64, f64); 6] = [(0.02, 32e6), (0.1, 31e6), (0.5, 27e6), (1.0, 24e6), (2.0, 19e6), (5.0, 12e6)];

/// Permissible nominal bearing pressure (Pa) of a case-hardened pin in its bush at a sliding speed (m/s, ≥ 0).
///
/// Linear in the logarithm of speed between the knots, constant beyond them.
/// Source: common practice, no source; ±30 %. It says what is usual for wear, not what a film carries.
pub fn permissible_pressure(sliding_speed: f64) -> f64 {
    let mut slower = PERMISSIBLE[0];
    for faster in PERMISSIBLE {
        if sliding_speed <= faster.0 {
            if faster.0 == slower.0 {
                return faster.1;
            }
            let share = (sliding_speed / slower.0).ln() / (faster.0 / slower.0).ln();
            return slower.1 + share * (faster.1 - slower.1);
        }
        slower = faster;
    }
    slower.1
}

/// The least permissible pressure at any speed (Pa): below it there is nothing to look up.
pub(super) const ALWAYS_PERMISSIBLE: f64 = 12e6;

/// Sag of the pin (m) in the middle of its bush under an even load (N), as a beam supported at both plates.
///
/// Source: beam theory, 5 w L⁴/(384 E I) with I = π d⁴/64.
pub fn pin_sag(pair: &Pair, load: f64) -> f64 {
    let inertia = PI * (2.0 * pair.radius).powi(4) / 64.0;
    5.0 * load * pair.length.powi(3) / (384.0 * pair.elasticity.youngs_modulus * inertia)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn permissible_pressure_meets_its_knots_and_holds_the_ends() {
        for (speed, pressure) in PERMISSIBLE {
            assert!((permissible_pressure(speed) - pressure).abs() < 1e-6 * pressure);
        }
        assert_eq!(permissible_pressure(0.0), 32e6);
        assert_eq!(permissible_pressure(50.0), ALWAYS_PERMISSIBLE);
    }

    proptest! {
        #[test]
        fn faster_joints_carry_less(speed in 0.0..6.0_f64) {
            prop_assert!(permissible_pressure(speed * 1.01) <= permissible_pressure(speed));
        }
    }

    #[test]
    fn pin_of_a_heavy_floor_chain_sags_sixty_micrometres() {
        let pair = Pair::new(0.015, 0.0151, 0.046, 1.0).unwrap();
        assert!((pin_sag(&pair, 25e3) - 62e-6).abs() < 0.5e-6);
    }
}
