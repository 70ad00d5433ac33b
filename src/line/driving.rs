//! From pull to shaft power, current and energy, and what a current log could see of this line.

use super::Line;
use super::checked::Checked;
use super::course::Course;
use super::oiling::Oiling;
use super::reach::reach;
use super::settle::{Settled, settle};
use crate::circuit::{Coefficients, march};
use crate::drive::{
    Clamp, Gear, Leakage, Load, LossSplit, Measured, MeasuredAt, Motor, Nameplate, Supply, least_detectable_change,
    load,
};
use crate::error::Result;

/// Scatter of a logged current, over rated current. Common practice, no source.
const NOISE: f64 = 0.01;
/// What does not average away (voltage, gear oil, clamp re-fitted), over rated current. Common practice, no source.
const SYSTEMATIC: f64 = 0.003;
/// Readings on each side of a change, and their autocorrelation. Common practice, no source.
const READINGS: f64 = 2000.0;
const AUTOCORRELATION: f64 = 0.9;
/// By how much friction is cut to ask what the current would show.
const HALF: f64 = 0.5;

pub(super) struct Driving {
    pub gear: Gear,
    pub motor: Motor,
    pub load: Load,
    /// Electrical input power, before a converter where there is one (W).
    pub input_power: Option<f64>,
    pub power_factor: Option<f64>,
    pub pull_detectable: Option<f64>,
    pub current_drop_joint: Option<f64>,
    pub current_drop_all: Option<f64>,
    /// Gear power at half of all friction: below zero the load would drive the motor after a good oiling.
    pub shaft_power_at_half_friction: f64,
}

/// Gear, motor data, supply and clamp of a line, before the motor's circuit is fitted.
///
/// Whoever reads a log backwards, from current to pull, starts here, and may spread what a nameplate leaves open.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DriveTrain {
    /// The gear.
    pub gear: Gear,
    /// What the nameplate says.
    pub nameplate: Nameplate,
    /// How its losses and leakage are told apart.
    pub split: LossSplit,
    /// What feeds the motor.
    pub supply: Supply,
    /// Where the current is measured.
    pub clamp: Clamp,
    /// Efficiency of the converter; 1 without one.
    pub converter_efficiency: f64,
    /// Motor speed over rated speed.
    pub relative_speed: f64,
    /// Chain speed (m/s).
    pub speed: f64,
}

impl DriveTrain {
    /// Of a surveyed line. Fails where `evaluate` would before it comes to the drive.
    pub fn of(line: &Line) -> Result<DriveTrain> {
        let survey = Checked::new(line)?;
        let course = Course::lay_out(&survey)?;
        let oiling = Oiling::of(&survey, &course)?;
        let reach = reach(&survey, &course, &oiling)?;
        let settled = settle(&survey, &course, &oiling, &reach)?;
        train_of(&survey, &settled)
    }
}

fn train_of(survey: &Checked, settled: &Settled) -> Result<DriveTrain> {
    let drive = &survey.si.drive;
    let nameplate = Nameplate {
        voltage: drive.rated_voltage,
        power: drive.rated_power,
        current: drive.rated_current,
        speed: drive.rated_speed * std::f64::consts::TAU,
        efficiency: drive.rated_efficiency,
        power_factor: drive.rated_power_factor,
        frequency: drive.rated_frequency,
    };
    let ratio = drive.frequency.unwrap_or(drive.rated_frequency) / drive.rated_frequency;
    let supply = if drive.converter {
        Supply::from_converter(drive.rated_voltage, ratio)
    } else {
        Supply { voltage: drive.supply_voltage.unwrap_or(drive.rated_voltage), frequency_ratio: ratio }
    };
    let gear = Gear {
        rated_power: drive.gear_rated_power.unwrap_or(drive.rated_power),
        efficiency: drive.gear_efficiency,
        fixed_share: drive.gear_fixed_share,
        extra_efficiency: drive.gear_extra_efficiency,
    };
    let clamp = match (drive.converter, drive.current_measured_at) {
        (true, MeasuredAt::BeforeConverter) => Clamp::BeforeConverter {
            voltage: drive.supply_voltage.unwrap_or(drive.rated_voltage),
            efficiency: drive.converter_efficiency,
            power_factor: drive.line_power_factor,
        },
        _ => Clamp::AtMotor,
    };
    let speed = survey.si.duty.speed;
    let leakage = match (drive.no_load_current, drive.empty_current) {
        (Some(current), _) => Leakage::From(Measured { current, shaft_power: 0.0, supply }),
        (None, Some(current)) => {
            let pull = empty_pull(survey, settled)?;
            Leakage::From(Measured { current, shaft_power: gear.shaft_power(pull * speed, ratio).max(0.0), supply })
        }
        _ => Leakage::PerUnit(drive.leakage),
    };
    let split = LossSplit {
        leakage,
        core_share: drive.core_share,
        friction_windage_share: drive.friction_windage_share,
        stray_factor: drive.stray_factor,
    };
    let converter_efficiency = if drive.converter { drive.converter_efficiency } else { 1.0 };
    Ok(DriveTrain { gear, nameplate, split, supply, clamp, converter_efficiency, relative_speed: ratio, speed })
}

pub(super) fn drive_of(survey: &Checked, course: &Course, settled: &Settled) -> Result<Driving> {
    let train = train_of(survey, settled)?;
    let DriveTrain { gear, supply, clamp, converter_efficiency, relative_speed: ratio, speed, .. } = train;
    let drive = &survey.si.drive;
    let motor = Motor::fit(&train.nameplate, &train.split)?;
    let of = |pull: f64| load(pull, speed, ratio, &gear, &motor, &supply, &clamp);
    let now = of(settled.march.pull)?;
    let pull_with = |coefficients: &Coefficients| march(&course.layout, coefficients).map(|march| march.pull);
    let mut less = settled.coefficients.clone();
    less.joint.iter_mut().for_each(|friction| *friction *= HALF);
    let joint_halved = of(pull_with(&less)?)?;
    less.bush_roller.iter_mut().for_each(|friction| *friction *= HALF);
    less.plate_track *= HALF;
    let all_halved = of(pull_with(&less)?)?;
    let half_pull = pull_with(&settled.coefficients.scaled(HALF))?;
    let drop = |other: &Load| Some(now.running?.clamp_current - other.running?.clamp_current);
    let noise = drive.rated_current * NOISE;
    let seen = least_detectable_change(noise, drive.rated_current * SYSTEMATIC, READINGS, READINGS, AUTOCORRELATION);
    Ok(Driving {
        input_power: now.running.map(|running| running.input_power / converter_efficiency),
        power_factor: now.running.map(|running| match clamp {
            Clamp::BeforeConverter { power_factor, .. } => power_factor,
            Clamp::AtMotor => running.power_factor,
        }),
        pull_detectable: now.running.map(|running| seen / running.current_per_pull),
        current_drop_joint: drop(&joint_halved),
        current_drop_all: drop(&all_halved),
        shaft_power_at_half_friction: gear.shaft_power(half_pull * speed, ratio),
        gear,
        motor,
        load: now,
    })
}

/// Pull (N) of the line without product: what rides on the straights where product is placed, and after, is taken as
/// what rides on the empty side.
fn empty_pull(survey: &Checked, settled: &Settled) -> Result<f64> {
    let mut empty = survey.si.clone();
    let least = empty
        .circuit
        .sections
        .iter()
        .map(|section| match section {
            crate::circuit::SectionSi::Straight(straight) => straight.load,
            crate::circuit::SectionSi::Turn(turn) => turn.load,
        })
        .fold(f64::INFINITY, f64::min);
    for section in &mut empty.circuit.sections {
        match section {
            crate::circuit::SectionSi::Straight(straight) => {
                straight.load = least;
                straight.loads = false;
            }
            crate::circuit::SectionSi::Turn(turn) => turn.load = least,
        }
    }
    let checked = Checked { si: empty, notes: Default::default(), running_share: survey.running_share };
    let course = Course::lay_out(&checked)?;
    Ok(march(&course.layout, &settled.coefficients)?.pull)
}
