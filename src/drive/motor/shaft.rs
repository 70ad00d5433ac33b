//! Speed and torque of the shaft.

use super::energised::OperatingPoint;
use std::f64::consts::TAU;

/// Angular speed (rad/s) of a shaft that turns `revolutions` a second.
pub fn angular_speed(revolutions: f64) -> f64 {
    TAU * revolutions
}

/// Speed (rad/s) of the rotating field of a motor with so many `poles` at `frequency` (Hz). Source: definition.
pub fn synchronous_speed(frequency: f64, poles: f64) -> f64 {
    2.0 * TAU * frequency / poles
}

/// How a motor turns at one operating point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShaftState {
    /// Revolutions a second.
    pub revolutions: f64,
    /// Torque that the air gap makes (N m).
    pub induced_torque: f64,
    /// Torque left at the shaft (N m); at standstill that of the air gap.
    pub shaft_torque: f64,
}

impl ShaftState {
    /// The shaft of a motor at `point` whose field turns at `synchronous` rad/s.
    ///
    /// Source: torque is power over angular speed; the air-gap power turns with the field, the shaft power with the rotor.
    pub fn of(point: &OperatingPoint, synchronous: f64) -> ShaftState {
        let speed = (1.0 - point.slip) * synchronous;
        let induced_torque = point.air_gap_power / synchronous;
        let shaft_torque = if speed > 0.0 { point.shaft_power / speed } else { induced_torque };
        ShaftState { revolutions: speed / TAU, induced_torque, shaft_torque }
    }
}

#[cfg(test)]
mod tests {
    use super::super::energised::tests::{RATED, four_kilowatt};
    use super::*;

    #[test]
    fn torque_times_speed_is_power() {
        let synchronous = synchronous_speed(50.0, 4.0);
        assert!((synchronous - 157.079_632_679).abs() < 1e-8);
        let point = four_kilowatt().on(&RATED).at_power(4000.0).unwrap();
        let shaft = ShaftState::of(&point, synchronous);
        assert!((shaft.shaft_torque * angular_speed(shaft.revolutions) - 4000.0).abs() < 1e-6);
        assert!(shaft.induced_torque > shaft.shaft_torque);
    }
}
