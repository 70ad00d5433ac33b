//! From a change of current to a change of pull, through motor and gear, with what a nameplate leaves open.
//!
//! A current names a load only through the motor's circuit, and a nameplate does not fix that circuit: leakage (and with it
//! the magnetising current), the split of the losses, the voltage, the gear's idle loss are drawn over the ranges that
//! practitioners give them. Each draw reads the level before and the level after; draws in which no load of the motor
//! draws such a current are counted, not mended.

use super::LoggedAs;
use super::current_log::Known;
use crate::drive::{Clamp, Leakage, Motor};
use crate::error::Result;
use crate::line::DriveTrain;
use crate::log::statistics::{mean, standard_deviation};
use crate::noun;
use crate::quantity::{Class, unit};

/// Draws of what a nameplate leaves open.
const DRAWS: usize = 128;
/// Step of a slope, as a share of the saving's scale.
const STEP: f64 = 1e-4;
/// Ranges, uniform: those of the register's rows of the drive.
const LEAKAGE: (f64, f64) = (0.10, 0.28);
const CORE_SHARE: (f64, f64) = (0.2, 0.6);
const FRICTION_WINDAGE: (f64, f64) = (0.05, 0.2);
const STRAY: (f64, f64) = (0.3, 1.0);
const GEAR_FIXED: (f64, f64) = (0.3, 0.7);
const CONVERTER: (f64, f64) = (0.94, 0.98);
/// Half widths, as shares: of a measured no-load current (the clamp), of a voltage that was not measured, of the power
/// factor before a converter. Common practice, no source.
const NO_LOAD_READING: f64 = 0.03;
const VOLTAGE: f64 = 0.03;
const LINE_POWER_FACTOR: f64 = 0.1;
/// Multipliers of the draws: square roots of primes. Source: Richtmyer (1951).
const PRIMES: [f64; 8] = [2.0, 3.0, 5.0, 7.0, 11.0, 13.0, 17.0, 19.0];

const MOTOR: &str =
    "equivalent circuit of the induction motor read backwards, then the gear; spread by draws (closure of our own)";

macro_rules! pull_change_noun { ($declare:ident) => { $declare! {
    /// What the log says of the pull of the chain, read through motor and gear.
    PullChange / PullChangeSi, "pull" {
        pull_before_n as before: f64 [N] "pull before, at the load of the after period" { formula: "chain power of the level before over {duty.speed_m_per_min}", source: MOTOR, class: Class::Closure }
        pull_after_n as after: f64 [N] "pull after, at the same load" { formula: "the same of the level after", source: MOTOR, class: Class::Closure }
        pull_saving_pct as saving: f64 [PCT] "pull saved" { symbol: "s_F", formula: "1 − {pull.pull_after_n} / {pull.pull_before_n}", source: MOTOR, class: Class::Closure }
        pull_saving_low_pct as low: f64 [PCT] "its interval, low end" { formula: "{pull.pull_saving_pct} − t × both errors", source: MOTOR, class: Class::Closure }
        pull_saving_high_pct as high: f64 [PCT] "its interval, high end" { formula: "{pull.pull_saving_pct} + t × both errors", source: MOTOR, class: Class::Closure }
        error_log_pct as error_log: f64 [PCT] "standard error from the scatter of the log" { formula: "error of the saving × slope of pull saved over reading saved", source: MOTOR, class: Class::Closure }
        error_motor_pct as error_motor: f64 [PCT] "standard deviation from what nameplate and gear leave open" { formula: "spread of the draws", source: MOTOR, class: Class::Closure }
        motor_load as motor_load: f64 [ONE] "shaft power before over rated power" { formula: "shaft power of the level before / {drive.rated_power_kw}", source: MOTOR, class: Class::Closure }
        draws as draws: i64 [ONE] "draws of what nameplate and gear leave open" { formula: "fixed number", source: MOTOR, class: Class::Closure }
        draws_without_load as draws_without_load: i64 [ONE] "of these, draws in which no load of the motor gives both readings" { formula: "counted", source: MOTOR, class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use pull_change_noun;
pull_change_noun!(noun);

/// A change of readings, as a regression found it: level before (A or W), share saved, its error, quantile of its interval.
#[derive(Debug, Clone, Copy)]
pub(super) struct Levels {
    pub level: f64,
    pub saving: f64,
    pub error: f64,
    pub quantile: f64,
}

/// A drive whose circuit is fitted.
struct Fitted {
    train: DriveTrain,
    motor: Motor,
}

impl Fitted {
    fn of(train: DriveTrain) -> Result<Fitted> {
        Ok(Fitted { motor: Motor::fit(&train.nameplate, &train.split)?, train })
    }

    /// Shaft power (W) behind a reading (A or W).
    fn shaft(&self, logged: LoggedAs, reading: f64) -> Result<f64> {
        let on = self.motor.circuit.on(&self.train.supply);
        let converter = self.train.converter_efficiency;
        match (logged, self.train.clamp) {
            (LoggedAs::Power, _) => on.power_of_input(reading * converter),
            (LoggedAs::Current, Clamp::AtMotor) => on.power_of_current(reading),
            (LoggedAs::Current, Clamp::BeforeConverter { voltage, efficiency, power_factor }) => {
                on.power_of_input(reading * 3f64.sqrt() * voltage * efficiency * power_factor)
            }
        }
    }

    /// Electrical power (W), before a converter where there is one, behind a reading.
    fn input(&self, logged: LoggedAs, reading: f64) -> Result<f64> {
        if logged == LoggedAs::Power {
            return Ok(reading);
        }
        let on = self.motor.circuit.on(&self.train.supply);
        Ok(on.at_power(self.shaft(logged, reading)?)?.input_power / self.train.converter_efficiency)
    }

    /// Pull (N) behind a reading; none where it would not turn the empty gear.
    fn pull(&self, logged: LoggedAs, reading: f64) -> Option<f64> {
        let shaft = self.shaft(logged, reading).ok()?;
        let power = self.train.gear.chain_power(shaft, self.train.relative_speed);
        (power > 0.0).then_some(power / self.train.speed)
    }

    /// Pull saved, a share.
    fn saved(&self, logged: LoggedAs, level: f64, saving: f64) -> Option<f64> {
        Some(1.0 - self.pull(logged, level * (1.0 - saving))? / self.pull(logged, level)?)
    }
}

/// Reads a change as one of pull.
///
/// Fails where no load of the motor gives the readings, even as the nameplate stands.
pub(super) fn pull_change(known: &Known, logged: LoggedAs, change: Levels) -> Result<Option<PullChange>> {
    let fitted = Fitted::of(known.train)?;
    let shaft = fitted.shaft(logged, change.level)?;
    fitted.shaft(logged, change.level * (1.0 - change.saving))?;
    let pulls = fitted.pull(logged, change.level).zip(fitted.pull(logged, change.level * (1.0 - change.saving)));
    let Some((before, after)) = pulls else { return Ok(None) };
    let saving = 1.0 - after / before;
    let near = |saving: f64| fitted.saved(logged, change.level, saving);
    let slope = match (near(change.saving - STEP), near(change.saving + STEP)) {
        (Some(low), Some(high)) => (high - low) / (2.0 * STEP),
        _ => return Ok(None),
    };
    let drawn: Vec<f64> =
        trains(known).filter_map(|train| Fitted::of(train).ok()?.saved(logged, change.level, change.saving)).collect();
    let error_motor = if drawn.len() > 1 { standard_deviation(&drawn).hypot(mean(&drawn) - saving) } else { 0.0 };
    let error_log = (slope * change.error).abs();
    let half = change.quantile * error_log.hypot(error_motor);
    let pct = |share: f64| unit::PCT.from_si(share);
    Ok(Some(PullChange {
        pull_before_n: before,
        pull_after_n: after,
        pull_saving_pct: pct(saving),
        pull_saving_low_pct: pct(saving - half),
        pull_saving_high_pct: pct(saving + half),
        error_log_pct: pct(error_log),
        error_motor_pct: pct(error_motor),
        motor_load: shaft / fitted.motor.nameplate.power,
        draws: DRAWS as i64,
        draws_without_load: (DRAWS - drawn.len()) as i64,
    }))
}

/// Electrical power (W) behind each reading, as the nameplate stands, and its relative spread over the draws at the mean.
pub(super) fn input_powers(known: &Known, logged: LoggedAs, readings: &[f64]) -> Result<(Vec<f64>, f64)> {
    let fitted = Fitted::of(known.train)?;
    let powers = readings.iter().map(|reading| fitted.input(logged, *reading)).collect::<Result<Vec<f64>>>()?;
    if logged == LoggedAs::Power {
        return Ok((powers, 0.0));
    }
    // a saving is a difference of powers, so its spread is that of the slope of power over current
    let level = mean(readings);
    let slope = |fitted: &Fitted| {
        let (low, high) = (fitted.input(logged, level * 0.99).ok()?, fitted.input(logged, level * 1.01).ok()?);
        Some(high - low)
    };
    let drawn: Vec<f64> = trains(known).filter_map(|train| slope(&Fitted::of(train).ok()?)).collect();
    let spread = match slope(&fitted) {
        Some(own) if drawn.len() > 1 && own > 0.0 => standard_deviation(&drawn).hypot(mean(&drawn) - own) / own,
        _ => f64::INFINITY,
    };
    Ok((powers, spread))
}

/// The drive in every draw; the same draws on every machine.
fn trains(known: &Known) -> impl Iterator<Item = DriveTrain> + '_ {
    let drive = &known.line.drive;
    (1..=DRAWS).map(move |draw| {
        let share = |axis: usize| (draw as f64 * PRIMES[axis].sqrt()).fract();
        let within = |axis: usize, (low, high): (f64, f64)| low + (high - low) * share(axis);
        let about = |axis: usize, half: f64| 1.0 + half * (2.0 * share(axis) - 1.0);
        let mut train = known.train;
        train.split.leakage = match train.split.leakage {
            Leakage::PerUnit(_) => Leakage::PerUnit(within(0, LEAKAGE)),
            Leakage::From(mut measured) => {
                measured.current *= about(0, NO_LOAD_READING);
                Leakage::From(measured)
            }
        };
        train.split.core_share = within(1, CORE_SHARE);
        train.split.friction_windage_share = within(2, FRICTION_WINDAGE);
        train.split.stray_factor = within(3, STRAY);
        train.gear.fixed_share = within(4, GEAR_FIXED);
        if drive.supply_voltage_v.is_none() && !drive.converter {
            train.supply.voltage *= about(5, VOLTAGE);
        }
        if drive.converter {
            train.converter_efficiency = within(6, CONVERTER);
        }
        if let Clamp::BeforeConverter { efficiency, power_factor, .. } = &mut train.clamp {
            *efficiency = train.converter_efficiency;
            *power_factor *= about(7, LINE_POWER_FACTOR);
        }
        train
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::Line;

    fn oven(changes: &str) -> Known {
        let survey = include_str!("../../../python/pinfilm/data/oven_now.toml");
        Known::of(&Line::from_toml(&survey.replace("[drive]\n", &format!("[drive]\n{changes}\n"))).unwrap()).unwrap()
    }

    /// Current (A) or power (W) of the drive at a pull.
    fn reading(known: &Known, logged: LoggedAs, pull: f64) -> f64 {
        let train = &known.train;
        let motor = Motor::fit(&train.nameplate, &train.split).unwrap();
        let shaft = train.gear.shaft_power(pull * train.speed, train.relative_speed);
        let point = motor.circuit.on(&train.supply).at_power(shaft).unwrap();
        match logged {
            LoggedAs::Current => train.clamp.reads(&point),
            LoggedAs::Power => point.input_power / train.converter_efficiency,
        }
    }

    #[test]
    fn the_pull_behind_a_reading_is_the_one_that_made_it() {
        let before_converter = "converter = true\ncurrent_measured_at = \"before_converter\"";
        let cases = [("", LoggedAs::Current), ("", LoggedAs::Power), (before_converter, LoggedAs::Current)];
        for (changes, logged) in cases {
            let known = oven(changes);
            let pull = known.result.tension.pull_n;
            let (before, after) = (reading(&known, logged, pull), reading(&known, logged, 0.9 * pull));
            let saving = 1.0 - after / before;
            let levels = Levels { level: before, saving, error: 0.002, quantile: 2.0 };
            let found = pull_change(&known, logged, levels).unwrap().unwrap();
            assert!((found.pull_before_n / pull - 1.0).abs() < 1e-6, "{changes} {found:?}");
            assert!((found.pull_saving_pct - 10.0).abs() < 1e-5);
            assert!(found.pull_saving_low_pct < 10.0 && found.pull_saving_high_pct > 10.0);
            assert!((found.motor_load - known.result.drive.load).abs() < 1e-6);
        }
    }

    #[test]
    fn what_is_measured_narrows_what_the_motor_leaves_open() {
        let spread = |changes: &str, logged| {
            let known = oven(changes);
            let pull = known.result.tension.pull_n;
            let (before, after) = (reading(&known, logged, pull), reading(&known, logged, 0.9 * pull));
            let levels = Levels { level: before, saving: 1.0 - after / before, error: 0.0, quantile: 2.0 };
            pull_change(&known, logged, levels).unwrap().unwrap().error_motor_pct
        };
        let plate = spread("", LoggedAs::Current);
        let no_load = format!("no_load_current_a = {}", oven("").result.drive.no_load_current_a);
        let (measured, power) = (spread(&no_load, LoggedAs::Current), spread("", LoggedAs::Power));
        assert!(plate > measured && measured > power && power > 0.0, "{plate} {measured} {power}");
    }

    #[test]
    fn a_reading_that_no_load_gives_is_refused() {
        let known = oven("");
        let levels = Levels { level: 0.3, saving: 0.1, error: 0.01, quantile: 2.0 };
        assert!(pull_change(&known, LoggedAs::Current, levels).is_err());
    }
}
