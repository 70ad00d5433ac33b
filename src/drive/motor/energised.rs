//! A motor's circuit at one voltage and frequency.
//!
//! With t = slip/rotor resistance, the stator sees a Möbius function of t (the circle diagram of Heyland and Ossanna)
//! and the rotor a Thévenin source. Shaft power and the square of the current are then quotients of quadratics in t,
//! so that slip for a power, the greatest power and the load for a current are roots of quadratic equations: exact,
//! and always on the stable side. No iteration can stray to the wrong side of pull-out.

use super::equivalent_circuit::{EquivalentCircuit, Supply};
use crate::error::{Code, Error, Result};
use num_complex::Complex64;

/// All powers and currents of the motor at one slip.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OperatingPoint {
    /// Slip, 0 at synchronous speed.
    pub slip: f64,
    /// Line current (A).
    pub current: f64,
    /// Power factor, current lagging.
    pub power_factor: f64,
    /// Electrical input power (W).
    pub input_power: f64,
    /// Stator copper loss (W).
    pub stator_copper_loss: f64,
    /// Core loss (W).
    pub core_loss: f64,
    /// Power through the air gap (W); over the synchronous speed in rad/s it is the induced torque.
    pub air_gap_power: f64,
    /// Rotor copper loss (W).
    pub rotor_copper_loss: f64,
    /// Power converted to mechanical power (W), friction and stray loss not yet taken off.
    pub converted_power: f64,
    /// Power at the shaft (W).
    pub shaft_power: f64,
    /// Rotor current referred to the stator (A).
    pub rotor_current: f64,
}

impl OperatingPoint {
    /// Shaft power over input power.
    pub fn efficiency(&self) -> f64 {
        self.shaft_power / self.input_power
    }
}

/// What a small change of shaft power does to what can be logged.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sensitivity {
    /// Change of line current per change of shaft power (A/W).
    pub current_per_power: f64,
    /// Change of input power per change of shaft power (W/W).
    pub input_per_power: f64,
}

/// An equivalent circuit at one supply. Made by [`EquivalentCircuit::on`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Energised {
    phase_voltage: f64,
    stator: Complex64,
    core_conductance: f64,
    rotor_resistance: f64,
    /// Current at synchronous speed, U/(stator + magnetising impedance).
    pub(super) synchronous_current: Complex64,
    /// I1 = synchronous_current (1 + open t)/(1 + short t).
    pub(super) open: Complex64,
    /// Thévenin impedance with the rotor reactance added; see `open`.
    pub(super) short: Complex64,
    /// Square of the Thévenin voltage.
    source: f64,
    windage: f64,
    /// Rotor resistance that would turn stray loss into rotor copper loss, added to the real one.
    lossy_resistance: f64,
}

impl Energised {
    pub(super) fn new(circuit: &EquivalentCircuit, supply: &Supply) -> Self {
        let f = supply.frequency_ratio;
        let phase_voltage = supply.voltage / 3f64.sqrt();
        let stator = Complex64::new(circuit.stator_resistance, circuit.stator_reactance * f);
        let core_conductance = 1.0 / (circuit.core_resistance * f.sqrt());
        let magnetising = Complex64::new(core_conductance, -1.0 / (circuit.magnetising_reactance * f)).inv();
        let rotor_reactance = Complex64::new(0.0, circuit.rotor_reactance * f);
        let total = stator + magnetising;
        let seen = magnetising / total;
        let stray = circuit.stray_loss * f * f.sqrt() / (circuit.stray_current * circuit.stray_current);
        Energised {
            phase_voltage,
            stator,
            core_conductance,
            rotor_resistance: circuit.rotor_resistance,
            synchronous_current: total.inv() * phase_voltage,
            open: magnetising + rotor_reactance,
            short: stator * seen + rotor_reactance,
            source: seen.norm_sqr() * phase_voltage * phase_voltage,
            windage: circuit.friction_windage * f * f,
            lossy_resistance: circuit.rotor_resistance + stray / 3.0,
        }
    }

    /// |1 + short t|²: what divides rotor current and power.
    fn divisor(&self, t: f64) -> f64 {
        (1.0 + self.short * t).norm_sqr()
    }

    pub(super) fn line_current(&self, t: f64) -> Complex64 {
        self.synchronous_current * (1.0 + self.open * t) / (1.0 + self.short * t)
    }

    pub(super) fn shaft_power_at(&self, t: f64) -> f64 {
        3.0 * self.source * t * (1.0 - self.lossy_resistance * t) / self.divisor(t) - self.windage
    }

    /// Slip over rotor resistance where the shaft power is greatest.
    pub(super) fn t_greatest(&self) -> f64 {
        let lossy = self.lossy_resistance;
        1.0 / (lossy + (self.short + lossy).norm())
    }

    /// Slip over rotor resistance for a shaft power on the stable side; the power must not exceed the greatest.
    pub(super) fn t_of_power(&self, shaft_power: f64) -> f64 {
        let drawn = shaft_power + self.windage;
        let half = 1.5 * self.source - drawn * self.short.re;
        let end = drawn * self.short.norm_sqr() + 3.0 * self.source * self.lossy_resistance;
        drawn / (half + (half * half - drawn * end).max(0.0).sqrt()) // at the greatest power rounding can make it < 0
    }

    /// Everything at the slip `slip` (0 at synchronous speed, 1 at standstill).
    pub fn at_slip(&self, slip: f64) -> OperatingPoint {
        let t = slip / self.rotor_resistance;
        let line = self.line_current(t);
        let current = line.norm();
        let per_t = self.source / self.divisor(t);
        let rotor_square = per_t * t * t;
        let air_gap_power = 3.0 * per_t * t;
        let rotor_copper_loss = 3.0 * rotor_square * self.rotor_resistance;
        let input_power = 3.0 * self.phase_voltage * line.re;
        OperatingPoint {
            slip,
            current,
            power_factor: line.re / current,
            input_power,
            stator_copper_loss: 3.0 * current * current * self.stator.re,
            core_loss: 3.0 * (self.phase_voltage - self.stator * line).norm_sqr() * self.core_conductance,
            air_gap_power,
            rotor_copper_loss,
            converted_power: air_gap_power - rotor_copper_loss,
            shaft_power: self.shaft_power_at(t),
            rotor_current: rotor_square.sqrt(),
        }
    }

    /// The greatest steady shaft power (W), which lies at a little less slip than the greatest torque.
    pub fn greatest_shaft_power(&self) -> f64 {
        self.shaft_power_at(self.t_greatest())
    }

    /// The greatest steady air-gap power (W); over synchronous speed it is the pull-out torque.
    pub fn pull_out_power(&self) -> f64 {
        1.5 * self.source / (self.short.re + self.short.norm())
    }

    /// Slip at which the greatest shaft power is reached; the stable side lies below.
    pub fn slip_of_greatest_power(&self) -> f64 {
        self.t_greatest() * self.rotor_resistance
    }

    /// The motor at the shaft power `shaft_power` (W), 0 or more, on the stable side.
    ///
    /// Fails with `motor.pull_out` above the greatest shaft power.
    pub fn at_power(&self, shaft_power: f64) -> Result<OperatingPoint> {
        let greatest = self.greatest_shaft_power();
        if shaft_power > greatest {
            return Err(Error::new(
                Code::MotorPullOut,
                "shaft_power",
                format!(
                    "the load of {shaft_power:.0} W is more than the {greatest:.0} W that this motor can turn at this \
                     voltage and frequency: check pull, speed and gear, or choose a larger motor"
                ),
            )
            .number(shaft_power)
            .unit("W")
            .limit(format!("at most {greatest:.0} W")));
        }
        Ok(self.at_slip(self.t_of_power(shaft_power) * self.rotor_resistance))
    }

    /// The running uncoupled motor: shaft power 0.
    pub fn at_no_load(&self) -> OperatingPoint {
        self.at_slip(self.t_of_power(0.0) * self.rotor_resistance)
    }

    /// Slopes of current and input power over shaft power at `slip` (0 to below [`Self::slip_of_greatest_power`]).
    ///
    /// Exact derivatives of the circuit.
    pub fn sensitivity(&self, slip: f64) -> Sensitivity {
        let t = slip / self.rotor_resistance;
        let below = 1.0 + self.short * t;
        let divisor = below.norm_sqr();
        let lossy = self.lossy_resistance;
        let slope_of_divisor = 2.0 * (self.short.re + self.short.norm_sqr() * t);
        let power_slope =
            3.0 * self.source * ((1.0 - 2.0 * lossy * t) * divisor - t * (1.0 - lossy * t) * slope_of_divisor)
                / (divisor * divisor);
        let line = self.line_current(t);
        let line_slope = self.synchronous_current * (self.open - self.short) / (below * below);
        Sensitivity {
            current_per_power: (line.conj() * line_slope).re / line.norm() / power_slope,
            input_per_power: 3.0 * self.phase_voltage * line_slope.re / power_slope,
        }
    }
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use crate::numeric::root;
    use proptest::prelude::*;

    pub(in super::super) fn four_kilowatt() -> EquivalentCircuit {
        EquivalentCircuit {
            stator_resistance: 0.6818873199,
            stator_reactance: 2.869730463,
            rotor_resistance: 1.052948479,
            rotor_reactance: 2.869730463,
            magnetising_reactance: 58.84654230,
            core_resistance: 1548.417424,
            friction_windage: 51.46726862,
            stray_loss: 99.27629816,
            stray_current: 7.0,
        }
    }

    pub(in super::super) const RATED: Supply = Supply { voltage: 400.0, frequency_ratio: 1.0 };

    /// The textbook chain of impedances, without the closed form.
    fn by_impedance(c: &EquivalentCircuit, supply: &Supply, slip: f64) -> (Complex64, f64) {
        let f = supply.frequency_ratio;
        let u = supply.voltage / 3f64.sqrt();
        let z1 = Complex64::new(c.stator_resistance, c.stator_reactance * f);
        let shunt = Complex64::new(1.0 / (c.core_resistance * f.sqrt()), -1.0 / (c.magnetising_reactance * f));
        let z2 = Complex64::new(c.rotor_resistance / slip, c.rotor_reactance * f);
        let i1 = u / (z1 + (shunt + z2.inv()).inv());
        let i2 = (u - i1 * z1) / z2;
        let converted = 3.0 * i2.norm_sqr() * c.rotor_resistance / slip * (1.0 - slip);
        let stray = c.stray_loss * (i2.norm() / c.stray_current).powi(2) * f.powf(1.5);
        (i1, converted - c.friction_windage * f * f - stray)
    }

    pub(in super::super) fn supplies() -> impl Strategy<Value = Supply> {
        (150.0..500.0f64, 0.3..1.3f64).prop_map(|(voltage, frequency_ratio)| Supply { voltage, frequency_ratio })
    }

    proptest! {
        #[test]
        fn circle_diagram_is_the_impedance_chain(supply in supplies(), slip in 1e-4..1.0f64) {
            let circuit = four_kilowatt();
            let ours = circuit.on(&supply).at_slip(slip);
            let (i1, shaft) = by_impedance(&circuit, &supply, slip);
            prop_assert!((ours.current - i1.norm()).abs() <= 1e-12 * ours.current);
            prop_assert!((ours.shaft_power - shaft).abs() <= 1e-11 * ours.input_power);
            let lost = ours.stator_copper_loss + ours.core_loss + ours.air_gap_power;
            prop_assert!((ours.input_power - lost).abs() <= 1e-11 * ours.input_power);
        }

        #[test]
        fn slip_is_that_of_a_bracketed_search(supply in supplies(), share in 0.0..0.98f64) {
            let circuit = four_kilowatt();
            let on = circuit.on(&supply);
            let power = share * on.greatest_shaft_power();
            let slip = on.at_power(power).unwrap().slip;
            let brent = root("slip", 1e-10, on.slip_of_greatest_power(), 1e-14, 0.0,
                |s| by_impedance(&circuit, &supply, s).1 - power).unwrap();
            prop_assert!((slip / brent - 1.0).abs() < 1e-12, "{slip} {brent}");
        }

        #[test]
        fn slopes_are_those_of_differences(share in 0.02..0.95f64) {
            let on = four_kilowatt().on(&RATED);
            let slip = on.at_power(share * on.greatest_shaft_power()).unwrap().slip;
            let (low, high) = (on.at_slip(slip * (1.0 - 1e-4)), on.at_slip(slip * (1.0 + 1e-4)));
            let slope = on.sensitivity(slip);
            let run = high.shaft_power - low.shaft_power;
            prop_assert!(((high.current - low.current) / run / slope.current_per_power - 1.0).abs() < 2e-6);
            prop_assert!(((high.input_power - low.input_power) / run / slope.input_per_power - 1.0).abs() < 2e-6);
        }
    }

    #[test]
    fn greatest_power_is_a_maximum_and_the_limit() {
        let on = four_kilowatt().on(&RATED);
        let (slip, greatest) = (on.slip_of_greatest_power(), on.greatest_shaft_power());
        for step in [-1e-3, 1e-3] {
            assert!(on.at_slip(slip * (1.0 + step)).shaft_power < greatest);
        }
        assert!((on.at_power(greatest).unwrap().slip / slip - 1.0).abs() < 1e-6);
        assert_eq!(on.at_power(greatest * 1.0001).unwrap_err().code, Code::MotorPullOut);
        let steps = (1..2000).map(|i| on.at_slip(f64::from(i) * 5e-4).air_gap_power);
        let pull_out = steps.fold(0.0, f64::max);
        assert!((pull_out / on.pull_out_power() - 1.0).abs() < 1e-5 && pull_out <= on.pull_out_power());
    }
}
