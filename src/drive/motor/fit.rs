//! The equivalent circuit of a motor from what its nameplate says.
//!
//! A nameplate fixes rated power, input power, current, power factor and slip, and the fit meets all five exactly and
//! without iteration. It leaves one number open, the leakage reactance, and with it the no-load current: a measured
//! current of the uncoupled motor, or of the empty line whose shaft power is known, is worth more than the rest.

use super::energised::OperatingPoint;
use super::equivalent_circuit::EquivalentCircuit;
use super::losses::{Losses, infeasible};
use super::nameplate::{Leakage, LossSplit, Measured, Nameplate};
use crate::error::{Code, Error, Result};
use crate::numeric::root;
use num_complex::Complex64;
use std::f64::consts::TAU;

/// Leakages that a measured current may ask for, in hundredths of the rated impedance.
const LEAKAGE_SCAN: std::ops::RangeInclusive<u32> = 2..=40;

/// A motor whose circuit meets its nameplate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Motor {
    /// The nameplate with current and power factor corrected by half the mismatch each.
    pub nameplate: Nameplate,
    /// Its equivalent circuit.
    pub circuit: EquivalentCircuit,
    /// Pole pairs.
    pub pole_pairs: f64,
    /// Slip at rated power.
    pub rated_slip: f64,
    /// Total leakage reactance over rated phase impedance, as assumed or found.
    pub leakage: f64,
    /// √3 V I η cos φ over rated power, less one, as the nameplate was printed: beyond ±0.03 worth a warning.
    pub mismatch: f64,
}

impl Motor {
    /// Fits the equivalent circuit to `nameplate`, all entries > 0.
    ///
    /// Fails with `inconsistent` where the numbers contradict each other by more than 10 %, `motor.infeasible` where no
    /// induction motor can have them, `motor.no_load_current` where no leakage explains the measured current.
    /// Source: stray loss as assigned by IEC 60034-2-1 (from memory); the task as in Lee, Frank, Sen and others,
    /// Estimation of induction motor equivalent circuit parameters from nameplate data; the closing assumptions of
    /// [`LossSplit`] are our own.
    pub fn fit(nameplate: &Nameplate, split: &LossSplit) -> Result<Motor> {
        let losses = Losses::of(nameplate, split)?;
        match split.leakage {
            Leakage::PerUnit(leakage) => losses.close(leakage),
            Leakage::From(measured) => losses.close_to(&measured),
        }
    }

    /// The running uncoupled motor at rated voltage and frequency.
    pub fn no_load(&self) -> OperatingPoint {
        self.circuit.on(&self.nameplate.supply()).at_no_load()
    }

    /// Pull-out torque over rated torque at rated voltage and frequency: a check of the fit, usually 2 to 3.5.
    pub fn pull_out_ratio(&self) -> f64 {
        let on = self.circuit.on(&self.nameplate.supply());
        on.pull_out_power() / on.at_slip(self.rated_slip).air_gap_power
    }

    /// Synchronous speed (rad/s) at a frequency ratio.
    pub fn synchronous_speed(&self, frequency_ratio: f64) -> f64 {
        TAU * self.nameplate.frequency * frequency_ratio / self.pole_pairs
    }
}

impl Losses {
    /// The circuit for a total leakage reactance of `leakage` times the rated impedance, half in stator and rotor each.
    fn close(&self, leakage: f64) -> Result<Motor> {
        let Nameplate { voltage, current, power_factor, .. } = self.nameplate;
        let phase_voltage = voltage / 3f64.sqrt();
        let reactance = 0.5 * leakage * phase_voltage / current;
        let sine = ((1.0 - power_factor) * (1.0 + power_factor)).sqrt();
        let line = Complex64::new(current * power_factor, -current * sine);
        let gap_square = (phase_voltage - line * Complex64::new(self.stator_resistance, reactance)).norm_sqr();
        let sum = 3.0 * gap_square / self.air_gap;
        let under = sum * sum - 4.0 * reactance * reactance;
        if under < 0.0 {
            return Err(infeasible(
                "leakage",
                leakage,
                "with so much leakage the motor could not carry its rated load",
            )
            .limit("less"));
        }
        let apparent_resistance = 0.5 * (sum + under.sqrt()); // the larger root is the stable side
        let rotor_square = self.air_gap / (3.0 * apparent_resistance);
        let magnetising = 3.0 * phase_voltage * current * sine - 3.0 * reactance * (current * current + rotor_square);
        if magnetising <= 0.0 {
            return Err(infeasible("leakage", leakage, "the leakage takes more reactive power than the motor draws")
                .limit("less"));
        }
        let circuit = EquivalentCircuit {
            stator_resistance: self.stator_resistance,
            stator_reactance: reactance,
            rotor_resistance: apparent_resistance * self.slip,
            rotor_reactance: reactance,
            magnetising_reactance: 3.0 * gap_square / magnetising,
            core_resistance: 3.0 * gap_square / self.core,
            friction_windage: self.friction_windage,
            stray_loss: self.stray,
            stray_current: rotor_square.sqrt(),
        };
        if circuit.on(&self.nameplate.supply()).slip_of_greatest_power() <= self.slip {
            return Err(infeasible("leakage", leakage, "with so much leakage the motor would stall at its rated load")
                .limit("less"));
        }
        Ok(Motor {
            nameplate: self.nameplate,
            circuit,
            pole_pairs: self.pole_pairs,
            rated_slip: self.slip,
            leakage,
            mismatch: self.mismatch,
        })
    }

    /// The circuit whose current at the measured load is the measured one.
    ///
    /// Scans upwards until a leakage is infeasible and takes the first change of sign, then Brent.
    fn close_to(&self, measured: &Measured) -> Result<Motor> {
        let current = |leakage: f64| -> Result<f64> {
            Ok(self.close(leakage)?.circuit.on(&measured.supply).at_power(measured.shaft_power)?.current)
        };
        let mut before: Option<(f64, f64)> = None;
        let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
        for hundredth in LEAKAGE_SCAN {
            let leakage = f64::from(hundredth) / 100.0;
            let Ok(drawn) = current(leakage) else { break };
            (least, most) = (least.min(drawn), most.max(drawn));
            let miss = drawn - measured.current;
            if miss == 0.0 {
                return self.close(leakage);
            }
            if let Some((low, low_miss)) = before
                && (low_miss < 0.0) != (miss < 0.0)
            {
                // every leakage between two feasible ones is feasible: both conditions are monotone in it
                let found = root("leakage", low, leakage, 1e-13, 0.0, |x| {
                    current(x).map_or(f64::NAN, |i| i - measured.current)
                })?;
                return self.close(found);
            }
            before = Some((leakage, miss));
        }
        let range = if before.is_some() {
            format!("{least:.3} to {most:.3} A")
        } else {
            "none: the shaft power is beyond this motor".to_string()
        };
        Err(Error::new(
            Code::MotorNoLoad,
            "measured_current",
            format!(
                "no leakage reactance makes this motor draw {:.3} A at {:.0} W of shaft power (possible: {range}): check \
                 current, nameplate and connection, or leave the measured current out",
                measured.current, measured.shaft_power
            ),
        )
        .number(measured.current)
        .unit("A")
        .limit(range))
    }
}

#[cfg(test)]
mod tests {
    use super::super::equivalent_circuit::Supply;
    use super::*;
    use proptest::prelude::*;

    fn plate(voltage: f64, power: f64, current: f64, rpm: f64, efficiency: f64, power_factor: f64) -> Nameplate {
        Nameplate { voltage, power, current, speed: rpm * TAU / 60.0, efficiency, power_factor, frequency: 50.0 }
    }

    fn four_kilowatt() -> Nameplate {
        plate(400.0, 4000.0, 8.05, 1450.0, 0.886, 0.81)
    }

    fn measured(current: f64, shaft_power: f64) -> LossSplit {
        let supply = Supply { voltage: 400.0, frequency_ratio: 1.0 };
        LossSplit { leakage: Leakage::From(Measured { current, shaft_power, supply }), ..LossSplit::default() }
    }

    proptest! {
        #[test]
        fn meets_the_nameplate(power in 200.0..60e3f64, efficiency in 0.75..0.95f64, power_factor in 0.65..0.90f64,
                               slip_share in 0.1..0.6f64, mismatch in 0.95..1.05f64, leakage in 0.10..0.25f64) {
            let slip = slip_share * (1.0 / efficiency - 1.0);
            let current = mismatch * power / (3f64.sqrt() * 400.0 * efficiency * power_factor);
            let nameplate = plate(400.0, power, current, 1500.0 * (1.0 - slip), efficiency, power_factor);
            let split = LossSplit { leakage: Leakage::PerUnit(leakage), ..LossSplit::default() };
            let Ok(motor) = Motor::fit(&nameplate, &split) else { return Ok(()) };
            let rated = motor.circuit.on(&nameplate.supply()).at_power(power).unwrap();
            prop_assert!((rated.slip / slip - 1.0).abs() < 1e-10);
            prop_assert!((rated.current * mismatch.sqrt() / current - 1.0).abs() < 1e-11);
            prop_assert!((rated.efficiency() / efficiency - 1.0).abs() < 1e-11);
            prop_assert!((rated.power_factor * mismatch.sqrt() / power_factor - 1.0).abs() < 1e-11);
            prop_assert!((motor.mismatch - (mismatch - 1.0)).abs() < 1e-12);
            prop_assert!(motor.pull_out_ratio() > 1.0);
        }

        #[test]
        fn a_measured_current_finds_the_leakage(leakage in 0.05..0.33f64, share in 0.0..0.3f64) {
            let split = LossSplit { leakage: Leakage::PerUnit(leakage), ..LossSplit::default() };
            let truth = Motor::fit(&four_kilowatt(), &split).unwrap();
            let load = share * 4000.0;
            let current = truth.circuit.on(&four_kilowatt().supply()).at_power(load).unwrap().current;
            let found = Motor::fit(&four_kilowatt(), &measured(current, load)).unwrap();
            prop_assert!((found.leakage / leakage - 1.0).abs() < 1e-9);
        }
    }

    #[test]
    fn refuses_what_no_motor_is() {
        let code = |n: Nameplate| Motor::fit(&n, &LossSplit::default()).unwrap_err().code;
        assert_eq!(code(plate(400.0, 1500.0, 3.4, 1300.0, 0.83, 0.77)), Code::MotorNameplate);
        assert_eq!(code(Nameplate { speed: 1500.0 * TAU / 60.0, ..four_kilowatt() }), Code::MotorNameplate);
        assert_eq!(code(Nameplate { current: 8.05 * 3f64.sqrt(), ..four_kilowatt() }), Code::Inconsistent);
        let split = LossSplit { leakage: Leakage::PerUnit(1.5), ..LossSplit::default() };
        assert_eq!(Motor::fit(&four_kilowatt(), &split).unwrap_err().code, Code::MotorNameplate);
        for current in [0.5, 7.9] {
            let error = Motor::fit(&four_kilowatt(), &measured(current, 0.0)).unwrap_err();
            assert_eq!(error.code, Code::MotorNoLoad);
            assert!(error.limit.ends_with('A'));
        }
        assert_eq!(Motor::fit(&four_kilowatt(), &measured(5.0, 1e6)).unwrap_err().code, Code::MotorNoLoad);
    }

    #[test]
    fn speed_of_the_field() {
        let motor = Motor::fit(&four_kilowatt(), &LossSplit::default()).unwrap();
        assert!((motor.synchronous_speed(1.2) - 1800.0 * TAU / 60.0).abs() < 1e-9);
        assert_eq!(motor.pole_pairs, 2.0);
    }
}
