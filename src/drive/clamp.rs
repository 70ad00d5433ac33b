//! Where the current clamp sits decides what it can see.

use super::motor::{OperatingPoint, Sensitivity};

/// Place of the current clamp.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Clamp {
    /// Between motor and mains, or between converter and motor: the motor's own current.
    AtMotor,
    /// On the three-phase line before a converter: no magnetising current, only what the converter draws.
    BeforeConverter {
        /// Line-to-line voltage of the mains (V).
        voltage: f64,
        /// Efficiency of the converter, about 0.97.
        efficiency: f64,
        /// Power factor of the line, about 0.90 with a choke, 0.60 to 0.70 without.
        power_factor: f64,
    },
}

impl Clamp {
    /// The current (A) that the clamp reads when the motor runs at `point`.
    pub fn reads(&self, point: &OperatingPoint) -> f64 {
        match *self {
            Clamp::AtMotor => point.current,
            Clamp::BeforeConverter { voltage, efficiency, power_factor } => {
                current_before_converter(point.input_power, voltage, efficiency, power_factor)
            }
        }
    }

    /// Change of what the clamp reads per change of shaft power (A/W).
    pub fn per_power(&self, slope: &Sensitivity) -> f64 {
        match *self {
            Clamp::AtMotor => slope.current_per_power,
            Clamp::BeforeConverter { voltage, efficiency, power_factor } => {
                current_before_converter(slope.input_per_power, voltage, efficiency, power_factor)
            }
        }
    }
}

/// Line current (A) of a three-phase converter whose motor takes `motor_input_power` (W).
///
/// `voltage` V line to line, `efficiency` and `power_factor` of the converter and its line side, 0 to 1.
/// Source: closed form; the magnetising current circulates between converter and motor.
pub fn current_before_converter(motor_input_power: f64, voltage: f64, efficiency: f64, power_factor: f64) -> f64 {
    motor_input_power / (efficiency * 3f64.sqrt() * voltage * power_factor)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sees_only_the_power() {
        assert!((current_before_converter(1092.6, 400.0, 0.97, 0.90) - 1.806451615).abs() < 1e-9);
    }
}
