//! The 24 V cable: what arrives at the device, running and at inrush.

use super::conductor::{conductor_resistance, temperature_factor};
use crate::error::{Code, Error, Result};

/// What arrives at the load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    /// Voltage at the load, V.
    pub voltage: f64,
    /// Current in the cable, A.
    pub current: f64,
}

/// Resistance (Ω) of a two-wire cable, there and back.
///
/// `length` m (one way), `area` m², `class` of IEC 60228, `temperature` °C of the conductor.
pub fn loop_resistance(length: f64, area: f64, class: i64, temperature: f64) -> Result<f64> {
    Ok(2.0 * length * conductor_resistance(area, class)? * temperature_factor(temperature))
}

/// Voltage (V) that a `current` (A) loses in a cable of `resistance` (Ω, there and back).
pub fn voltage_drop(current: f64, resistance: f64) -> f64 {
    current * resistance
}

/// A load that draws `power` (W) at any voltage, such as a converter, on `supply` V over `resistance` Ω.
///
/// Closed form of U = supply - R power/U, the stable branch. Fails if no voltage carries the load.
pub fn constant_power_load(supply: f64, power: f64, resistance: f64) -> Result<Load> {
    let square = supply * supply - 4.0 * power * resistance;
    if square < 0.0 {
        return Err(Error::new(
            Code::NoOperatingPoint,
            "power",
            format!(
                "A cable of {resistance:.3} Ω cannot carry {power:.1} W from {supply:.1} V at any voltage: take a thicker or \
                 shorter cable, or a higher supply voltage."
            ),
        )
        .number(power)
        .unit("W")
        .limit(format!("at most {:.1} W", supply * supply / (4.0 * resistance))));
    }
    let sum = supply + square.sqrt();
    Ok(Load { voltage: 0.5 * sum, current: 2.0 * power / sum })
}

/// A load that is a resistance, such as a solenoid, drawing `power` (W) at the full `supply` (V), over `resistance` Ω.
pub fn resistive_load(supply: f64, power: f64, resistance: f64) -> Load {
    let load = supply * supply / power;
    let current = supply / (load + resistance);
    Load { voltage: current * load, current }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn voltages_and_powers_add_up(supply in 12.0..48.0f64, power in 0.1..100.0f64, resistance in 0.0..5.0f64) {
            if let Ok(load) = constant_power_load(supply, power, resistance) {
                prop_assert!((load.voltage + voltage_drop(load.current, resistance) - supply).abs() < 1e-9);
                prop_assert!((load.voltage * load.current / power - 1.0).abs() < 1e-12);
                let passive = resistive_load(supply, power, resistance);
                prop_assert!(passive.voltage >= load.voltage - 1e-9); // a resistance eases off as the voltage falls
            } else {
                prop_assert!(supply * supply < 4.0 * power * resistance);
            }
        }
    }

    #[test]
    fn a_cable_too_long_has_no_operating_point() {
        let long = loop_resistance(260.0, 1.5e-6, 5, 40.0).unwrap();
        assert!(constant_power_load(24.0, 60.0, long).is_err_and(|e| e.code == Code::NoOperatingPoint));
        let bare = resistive_load(24.0, 60.0, 0.0);
        assert_eq!((bare.voltage, bare.current), (24.0, 2.5));
    }
}
