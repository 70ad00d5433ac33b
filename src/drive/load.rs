//! What the drive reports: from the power of the chain through gear and motor to the clamp.

use super::clamp::Clamp;
use super::gear::Gear;
use super::motor::{Motor, Supply};
use crate::error::Result;

/// Share of the locked-rotor torque at low voltage above which a start is in doubt: caution.
pub const BREAKAWAY_CAUTION: f64 = 0.8;
/// Torque left at 10 % low voltage.
const LOW_VOLTAGE_TORQUE: f64 = 0.81;

/// The loaded drive.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    /// Power at the sprocket (W).
    pub chain_power: f64,
    /// Power at the motor's shaft (W); negative where the load drives the motor.
    pub shaft_power: f64,
    /// Shaft power over rated power.
    pub load_ratio: f64,
    /// Current of the uncoupled motor (A) at the actual supply.
    pub no_load_current: f64,
    /// Pull-out torque over rated torque, at rated supply.
    pub pull_out_ratio: f64,
    /// The motor at work; none where the load overhauls it, and the current says nothing.
    pub running: Option<Running>,
}

/// A motor that drives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Running {
    /// Slip.
    pub slip: f64,
    /// Line current of the motor (A).
    pub current: f64,
    /// What the clamp reads (A): the motor's current unless it sits before a converter.
    pub clamp_current: f64,
    /// Electrical input power of the motor (W).
    pub input_power: f64,
    /// Power factor of the motor.
    pub power_factor: f64,
    /// Change of what the clamp reads per newton of pull (A/N).
    pub current_per_pull: f64,
    /// Change of input power per newton of pull (W/N): what to log where it can be logged.
    pub input_per_pull: f64,
}

/// Loads the drive with `pull` (N, sum over the strands) at the chain speed `speed` (m/s, > 0).
///
/// `relative_speed` is motor speed over rated speed, 1 on the mains. A negative pull that overcomes the gear's loss
/// leaves `running` empty. Fails with `motor.pull_out` where the motor cannot turn the load.
pub fn load(
    pull: f64,
    speed: f64,
    relative_speed: f64,
    gear: &Gear,
    motor: &Motor,
    supply: &Supply,
    clamp: &Clamp,
) -> Result<Load> {
    let chain_power = pull * speed;
    let shaft_power = gear.shaft_power(chain_power, relative_speed);
    let on = motor.circuit.on(supply);
    let running = if shaft_power < 0.0 {
        None
    } else {
        let point = on.at_power(shaft_power)?;
        let slope = on.sensitivity(point.slip);
        let shaft_per_pull = speed * gear.shaft_per_chain_power();
        Some(Running {
            slip: point.slip,
            current: point.current,
            clamp_current: clamp.reads(&point),
            input_power: point.input_power,
            power_factor: point.power_factor,
            current_per_pull: clamp.per_power(&slope) * shaft_per_pull,
            input_per_pull: slope.input_per_power * shaft_per_pull,
        })
    };
    Ok(Load {
        chain_power,
        shaft_power,
        load_ratio: shaft_power / motor.nameplate.power,
        no_load_current: on.at_no_load().current,
        pull_out_ratio: motor.pull_out_ratio(),
        running,
    })
}

/// Torque that a start asks for, over the locked-rotor torque that is left at 10 % low voltage.
///
/// `pull` N at breakaway, `speed` m/s of the chain at rated motor speed, `rated_power` W of the motor,
/// `locked_rotor_torque_ratio` locked-rotor over rated torque from the maker's data. Above [`BREAKAWAY_CAUTION`] the
/// start is in doubt. Without the ratio there is no verdict: a circuit fitted to a nameplate cannot give it, and its
/// pull-out torque is not what a standing motor has. The gear is taken to lose at standstill what it loses at speed.
/// Source: common practice, no source.
pub fn breakaway_share(
    pull: f64,
    speed: f64,
    gear: &Gear,
    rated_power: f64,
    locked_rotor_torque_ratio: Option<f64>,
) -> Option<f64> {
    let asked = gear.shaft_power(pull * speed, 1.0) / rated_power; // at equal speed torques go as powers
    locked_rotor_torque_ratio.map(|ratio| asked / (LOW_VOLTAGE_TORQUE * ratio))
}

#[cfg(test)]
mod tests {
    use super::super::motor::{LossSplit, Nameplate};
    use super::*;
    use crate::error::Code;
    use std::f64::consts::TAU;

    const SUPPLY: Supply = Supply { voltage: 400.0, frequency_ratio: 1.0 };

    fn slat() -> (Gear, Motor) {
        let plate = Nameplate {
            voltage: 400.0,
            power: 750.0,
            current: 1.75,
            speed: 1435.0 * TAU / 60.0,
            efficiency: 0.825,
            power_factor: 0.75,
            frequency: 50.0,
        };
        let gear = Gear { rated_power: 750.0, efficiency: 0.78, fixed_share: 0.4, extra_efficiency: 1.0 };
        (gear, Motor::fit(&plate, &LossSplit::default()).unwrap())
    }

    #[test]
    fn slope_is_what_one_more_newton_does() {
        let (gear, motor) = slat();
        let at = |pull, clamp| load(pull, 0.2, 1.0, &gear, &motor, &SUPPLY, &clamp).unwrap().running.unwrap();
        let line = Clamp::BeforeConverter { voltage: 400.0, efficiency: 0.97, power_factor: 0.9 };
        for clamp in [Clamp::AtMotor, line] {
            let (low, mid, high) = (at(2111.0, clamp), at(2112.0, clamp), at(2113.0, clamp));
            let slope = (high.clamp_current - low.clamp_current) / 2.0;
            assert!((slope / mid.current_per_pull - 1.0).abs() < 1e-6);
            assert!(((high.input_power - low.input_power) / 2.0 / mid.input_per_pull - 1.0).abs() < 1e-6);
        }
        // before the converter the current is nearly proportional to the load: no magnetising current is seen
        assert!(at(2000.0, line).clamp_current < 0.8 * at(2000.0, Clamp::AtMotor).clamp_current);
    }

    #[test]
    fn an_overhauled_motor_has_no_current_to_read() {
        let (gear, motor) = slat();
        let downhill = load(-5000.0, 0.2, 1.0, &gear, &motor, &SUPPLY, &Clamp::AtMotor).unwrap();
        assert!(downhill.shaft_power < 0.0 && downhill.running.is_none());
        let stalled = load(20_000.0, 0.2, 1.0, &gear, &motor, &SUPPLY, &Clamp::AtMotor);
        assert_eq!(stalled.unwrap_err().code, Code::MotorPullOut);
    }

    #[test]
    fn no_verdict_on_a_start_without_the_makers_torque() {
        let (gear, _) = slat();
        assert_eq!(breakaway_share(3286.86, 0.2, &gear, 750.0, None), None);
        let share = breakaway_share(3286.86, 0.2, &gear, 750.0, Some(2.0)).unwrap();
        assert!((share * 0.81 * 2.0 * 750.0 - gear.shaft_power(657.372, 1.0)).abs() < 1e-9);
    }
}
