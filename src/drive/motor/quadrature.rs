//! Current of a motor from its power by two components: an active one, and a magnetising one that grows with the load.
//!
//! Within 0.9 % of rated current of the circuit up to rated load, so good for a table; read backwards at 0.4 load it
//! can miss the load by 8 %, so for a single line ask the circuit itself.

use super::fit::Motor;
use crate::error::{Code, Error, Result};
use crate::numeric::root;

/// Greatest load ratio of the model.
const MOST: f64 = 1.5;

/// The two components of a motor's current.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quadrature {
    rated_power: f64,
    rated_input: f64,
    /// √3 times the line-to-line voltage.
    voltage: f64,
    no_load_input: f64,
    reactive_rated: f64,
    reactive_no_load: f64,
}

/// A load read from a current, and how far it may be off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Shaft power (W).
    pub power: f64,
    /// Its standard deviation (W).
    pub spread: f64,
    /// Change of shaft power per change of current (W/A).
    pub power_per_current: f64,
}

impl Quadrature {
    /// From the nameplate of `motor` with a no-load current (A) and no-load input power (W), measured or fitted.
    ///
    /// Fails with `motor.no_load_current` where these do not lie between nothing and the rated values.
    pub fn new(motor: &Motor, no_load_current: f64, no_load_input: f64) -> Result<Quadrature> {
        let plate = &motor.nameplate;
        let voltage = 3f64.sqrt() * plate.voltage;
        let active = no_load_input / voltage;
        let loss = plate.input_power() - plate.power;
        if no_load_current <= active || no_load_current >= plate.current || no_load_input > loss {
            return Err(Error::new(
                Code::MotorNoLoad,
                "no_load_current",
                format!(
                    "{no_load_current:.3} A and {no_load_input:.1} W without load do not fit this motor: the current must lie \
                     between {active:.3} A and the rated {:.3} A, the power below the rated loss of {loss:.1} W",
                    plate.current
                ),
            )
            .number(no_load_current)
            .unit("A"));
        }
        Ok(Quadrature {
            rated_power: plate.power,
            rated_input: plate.input_power(),
            voltage,
            no_load_input,
            reactive_rated: plate.current * ((1.0 - plate.power_factor) * (1.0 + plate.power_factor)).sqrt(),
            reactive_no_load: (no_load_current * no_load_current - active * active).sqrt(),
        })
    }

    /// With the no-load current and input power of the motor's own circuit.
    pub fn of(motor: &Motor) -> Result<Quadrature> {
        let no_load = motor.no_load();
        Quadrature::new(motor, no_load.current, no_load.input_power)
    }

    /// Active and reactive current (A) and their slopes over the load ratio `x`.
    fn components(&self, x: f64) -> [f64; 4] {
        let curved = self.rated_input - self.rated_power - self.no_load_input;
        let reactive_rise = self.reactive_rated - self.reactive_no_load;
        [
            (self.no_load_input + x * (self.rated_power + x * curved)) / self.voltage,
            self.reactive_no_load + reactive_rise * x * x * x,
            (self.rated_power + 2.0 * x * curved) / self.voltage,
            3.0 * reactive_rise * x * x,
        ]
    }

    /// Half the slope of the squared current over the load ratio.
    fn half_slope(&self, x: f64) -> f64 {
        let [active, reactive, active_slope, reactive_slope] = self.components(x);
        active * active_slope + reactive * reactive_slope
    }

    /// Line current (A) at `shaft_power` (W), 0 to 1.5 times rated.
    ///
    /// Active current from a loss with a constant and a square part, so exact at no load and rated load; reactive current
    /// with the cube of the load: a closure of our own, fitted to the circuit.
    pub fn current(&self, shaft_power: f64) -> f64 {
        let [active, reactive, ..] = self.components(shaft_power / self.rated_power);
        active.hypot(reactive)
    }

    /// The load behind `current` (A), known to `current_spread` (A), when the no-load reactive current is known to the
    /// relative standard deviation `reactive_spread`.
    ///
    /// Fails with `not_invertible` below the no-load current, above the current at 1.5 times rated power, and where the
    /// current does not rise with the load. First-order propagation with the model's exact derivatives.
    pub fn power_of_current(&self, current: f64, current_spread: f64, reactive_spread: f64) -> Result<Reading> {
        if (0..50).any(|i| self.half_slope(MOST * f64::from(i) / 49.0) <= 0.0) {
            return Err(not_invertible(current, "the current of this motor does not rise with its load"));
        }
        let (least, most) = (self.current(0.0), self.current(MOST * self.rated_power));
        if current < least || current > most {
            return Err(not_invertible(current, "the current is not that of any load up to 1.5 times rated")
                .limit(format!("{least:.3} to {most:.3} A")));
        }
        let square = current * current;
        let x = root("load ratio", 0.0, MOST, 1e-14, 1e-15, |x| {
            let [active, reactive, ..] = self.components(x);
            active * active + reactive * reactive - square
        })?;
        let slope = self.half_slope(x) / current / self.rated_power;
        let [_, reactive, ..] = self.components(x);
        let by_reactive = reactive * (1.0 - x * x * x) / current; // change of current per change of no-load reactive current
        let power_per_current = 1.0 / slope;
        let from_reactive = power_per_current * by_reactive * reactive_spread * self.reactive_no_load;
        Ok(Reading {
            power: x * self.rated_power,
            spread: (power_per_current * current_spread).hypot(from_reactive),
            power_per_current,
        })
    }
}

fn not_invertible(current: f64, why: &str) -> Error {
    Error::new(
        Code::NotInvertible,
        "current",
        format!("{why} ({current:.3} A): log the input power instead, or check the clamp"),
    )
    .number(current)
    .unit("A")
}

#[cfg(test)]
mod tests {
    use super::super::nameplate::{LossSplit, Nameplate};
    use super::*;
    use proptest::prelude::*;
    use std::f64::consts::TAU;

    fn motor() -> Motor {
        let speed = 1450.0 * TAU / 60.0;
        let plate = Nameplate {
            voltage: 400.0,
            power: 4000.0,
            current: 8.05,
            speed,
            efficiency: 0.886,
            power_factor: 0.81,
            frequency: 50.0,
        };
        Motor::fit(&plate, &LossSplit::default()).unwrap()
    }

    #[test]
    fn exact_at_no_load_and_at_rated_load_and_near_between() {
        let motor = motor();
        let model = Quadrature::of(&motor).unwrap();
        let on = motor.circuit.on(&motor.nameplate.supply());
        assert!((model.current(0.0) / motor.no_load().current - 1.0).abs() < 1e-12);
        assert!((model.current(4000.0) / motor.nameplate.current - 1.0).abs() < 1e-12);
        for i in 0..=20 {
            let power = 200.0 * f64::from(i);
            let miss = model.current(power) - on.at_power(power).unwrap().current;
            assert!(miss.abs() < 0.009 * motor.nameplate.current);
        }
    }

    #[test]
    fn refuses_an_impossible_no_load() {
        for (current, input) in [(0.3, 250.0), (8.2, 250.0), (4.0, 600.0)] {
            assert_eq!(Quadrature::new(&motor(), current, input).unwrap_err().code, Code::MotorNoLoad);
        }
        let model = Quadrature::of(&motor()).unwrap();
        for current in [3.0, 20.0] {
            assert_eq!(model.power_of_current(current, 0.0, 0.0).unwrap_err().code, Code::NotInvertible);
        }
    }

    proptest! {
        #[test]
        fn back_and_forth(power in 50.0..5500.0f64) {
            let model = Quadrature::of(&motor()).unwrap();
            let reading = model.power_of_current(model.current(power), 0.05, 0.0).unwrap();
            prop_assert!((reading.power / power - 1.0).abs() < 1e-9);
            prop_assert!((reading.spread - 0.05 * reading.power_per_current).abs() < 1e-9);
            // the propagation is the slope of a real shift of the no-load reactive current
            let by = model.power_of_current(model.current(power), 0.0, 1.0).unwrap().spread * 1e-5;
            let shifted = Quadrature { reactive_no_load: model.reactive_no_load * (1.0 + 1e-5), ..model };
            let moved = shifted.power_of_current(model.current(power), 0.0, 0.0).unwrap().power;
            prop_assert!(((moved - power).abs() - by).abs() < 1e-3 * by + 1e-8 * power);
        }
    }
}
