//! The log that a plant has, and what is left of it after cleaning.

use super::series::Series;
use super::zone::{ClockRows, Zone};
use super::{Cleaning, LogNote, LogRules, LogRulesSi, LoggedAs};
use crate::drive::{Clamp, Motor};
use crate::error::{Code, Error, Given, Result};
use crate::line::{DriveTrain, Evaluation, Line, Surroundings, evaluate};
use crate::log::cleaning::{self, CleanLog, RawLog, Rules, can_be_window};
use crate::quantity::Field;
use crate::quantity::show::brief;
use crate::quantity::unit::ONE;

/// Warm-up, s: of ordinary lines, and of ovens and cold rooms. Common practice, no source.
const WARM_UP: (f64, f64) = (3600.0, 10_800.0);
/// A covariate that varies by less than this share of itself says nothing.
const STILL: f64 = 1e-9;
/// Nanoseconds in a second.
pub(super) const SECOND: f64 = 1e9;

/// Something that is logged beside the reading, in the unit of its name.
#[derive(Debug, Clone, PartialEq)]
pub struct Covariate {
    /// Public name: `load_pct`, `load_kg_per_m`, `speed_m_per_min` or `temperature_c`.
    pub name: &'static str,
    /// One value for each row; NaN where one is missing.
    pub values: Vec<f64>,
}

/// Names that a covariate may have; load first, since a watch takes the first for the load.
pub const COVARIATES: [&str; 4] = ["load_pct", "load_kg_per_m", "speed_m_per_min", "temperature_c"];

/// The load among them.
pub(super) fn is_load(name: &str) -> bool {
    name.starts_with("load_")
}

/// A log as it was read: columns of equal length in the order of the file.
#[derive(Debug, Clone, PartialEq)]
pub struct CurrentLog {
    /// What to call it.
    pub name: String,
    /// Time stamps, ns from 1970: UTC, or by a clock on the wall.
    pub stamps: Vec<i64>,
    /// Whether the stamps are UTC already.
    pub aware: bool,
    /// IANA name of the zone of the clock.
    pub time_zone: Option<String>,
    /// What was logged.
    pub logged: LoggedAs,
    /// Readings: A or kW, as the name of `logged` says.
    pub readings: Vec<f64>,
    /// Load, speed, temperature, where logged.
    pub covariates: Vec<Covariate>,
    /// Whether the line ran, where logged.
    pub running: Option<Vec<bool>>,
    /// How to clean it.
    pub rules: LogRules,
}

/// A line as a log needs it: evaluated, and its drive ready to be read backwards.
#[derive(Debug, Clone)]
pub struct Known {
    /// The survey.
    pub line: Line,
    /// What it gives.
    pub result: Evaluation,
    /// Its drive.
    pub train: DriveTrain,
}

impl Known {
    /// Evaluates the line.
    pub fn of(line: &Line) -> Result<Known> {
        Ok(Known { line: line.clone(), result: evaluate(line)?, train: DriveTrain::of(line)? })
    }

    /// Reading without load and at rated power (A or W); none where the supply does not reach rated power.
    fn readings(&self, logged: LoggedAs) -> Result<(f64, Option<f64>)> {
        let motor = Motor::fit(&self.train.nameplate, &self.train.split)?;
        let on = motor.circuit.on(&self.train.supply);
        let read = |point: &crate::drive::OperatingPoint| match logged {
            LoggedAs::Current => self.train.clamp.reads(point),
            LoggedAs::Power => point.input_power / self.train.converter_efficiency,
        };
        Ok((read(&on.at_no_load()), on.at_power(motor.nameplate.power).ok().map(|point| read(&point))))
    }

    /// Whether the clamp sees the motor's magnetising current.
    pub(super) fn sees_magnetising(&self) -> bool {
        self.train.clamp == Clamp::AtMotor
    }
}

impl CurrentLog {
    /// Checks that columns are of equal length, names known, rules consistent.
    pub fn checked(self) -> Result<CurrentLog> {
        let n = self.stamps.len();
        let mut columns = vec![(self.logged.as_str(), self.readings.len())];
        columns.extend(self.covariates.iter().map(|x| (x.name, x.values.len())));
        columns.extend(self.running.as_ref().map(|x| ("running", x.len())));
        if let Some((name, odd)) = columns.into_iter().find(|(_, length)| *length != n) {
            let message = format!("{name} has {odd} rows and time {n}: give one value for each time stamp");
            return Err(Error::new(Code::Inconsistent, name, message).number(odd as f64).limit(format!("{n} rows")));
        }
        Zone::named(self.time_zone.as_deref())?;
        let window = self.rules.window_h;
        if window != 0.0 && !can_be_window(self.rules.si(&ONE).window) {
            let message = format!(
                "rules.window_h = {window} h does not begin with the days and hours of a clock: take whole days (24, 48, \
                 168), 1, 2, 3, 4, 6, 8 or 12 hours, or minutes that go into an hour (0.5, 0.25); 0 keeps single readings"
            );
            let limit = "0, hours that go into a day, or whole days";
            return Err(Error::new(Code::OutOfRange, "rules.window_h", message).number(window).limit(limit));
        }
        Ok(self)
    }

    /// What cleaning does to the log; a `line` gives the rules what they leave open.
    pub fn cleaning(&self, line: Option<&Line>) -> Result<Cleaning> {
        let known = line.map(Known::of).transpose()?;
        Ok(self.series(known.as_ref())?.cleaning)
    }

    /// The clean means, in the unit of the log: times as text, ns, readings, covariates by name.
    pub fn means(&self, line: Option<&Line>) -> Result<Means> {
        let known = line.map(Known::of).transpose()?;
        let series = self.series(known.as_ref())?;
        let factor = self.logged.unit().factor;
        let readings = series.log.readings.iter().map(|x| x / factor).collect();
        let covariates = series.names.iter().copied().zip(series.log.covariates.clone()).collect();
        Ok(Means { times: series.log.times, readings, covariates, rows: series.log.rows })
    }

    /// Cleans.
    pub(super) fn series(&self, known: Option<&Known>) -> Result<Series> {
        let zone = Zone::named(self.time_zone.as_deref())?;
        let (times, clock) =
            if self.aware { (self.stamps.clone(), ClockRows::default()) } else { zone.utc(&self.stamps) };
        let given = self.rules.si(&ONE);
        let rules = self.filled(&given, known, &zone)?;
        let unit = self.logged.unit();
        let readings: Vec<f64> = self.readings.iter().map(|x| unit.to_si(*x)).collect();
        let columns: Vec<&[f64]> = self.covariates.iter().map(|x| x.values.as_slice()).collect();
        let raw = RawLog {
            times: &times,
            readings: &readings,
            covariates: &columns,
            running: self.running.as_deref(),
            may_be_negative: given.may_be_negative,
        };
        let mut log = cleaning::clean(&raw, &rules).map_err(|error| self.in_words(error, rules.rated))?;
        let cleaning = Cleaning::of(&log.report, clock, log.readings.len(), self.logged, rules.window.is_none());
        let mut notes = Vec::new();
        let mut names: Vec<&'static str> = self.covariates.iter().map(|x| x.name).collect();
        drop_still(&mut log, &mut names, &mut notes);
        let window = rules.window;
        Ok(Series { logged: self.logged, zone, log, names, window, cleaning, notes })
    }

    /// An error of the cleaning as a person reads it: the reading in its unit, and which unit it may be in.
    fn in_words(&self, error: Error, rated: Option<f64>) -> Error {
        let (Code::Dimension, Given::Number(usual), Some(rated)) = (error.code, error.value.as_ref(), rated) else {
            return error;
        };
        let (name, unit, times) = (self.logged.as_str(), self.logged.unit(), usual / rated);
        let thousandth = if self.logged == LoggedAs::Current { "milliamperes" } else { "watts" };
        let whole = if self.logged == LoggedAs::Current { "amperes" } else { "kilowatts" };
        let why = match times {
            t if t > 300.0 => format!("they look like {thousandth}: give {whole}"),
            t if t > 3.0 => {
                format!("they may be in per cent of rated, or of another motor: give {whole} of this drive")
            }
            _ => format!("they look like thousands of {whole}, or the line never ran: give {whole}"),
        };
        let shown = |si: f64| brief(unit.from_si(si));
        let message = format!(
            "the usual reading of the running line is {} {}, {} times the rated {} {}, so readings are in another unit; {why}",
            shown(*usual),
            unit.label,
            brief(times),
            shown(rated),
            unit.label
        );
        let limit = format!("0.01 to 3 times {} {}", shown(rated), unit.label);
        Error::new(Code::Dimension, name, message).number(unit.from_si(*usual)).unit(unit.label).limit(limit)
    }

    /// The rules with what the line knows put where they are silent.
    fn filled<'a>(&self, given: &LogRulesSi, known: Option<&Known>, zone: &'a Zone) -> Result<Rules<'a>> {
        let (mut no_load, mut rated, display_step) = match self.logged {
            LoggedAs::Current => (given.no_load_current, given.rated_current, given.display_step),
            LoggedAs::Power => (given.no_load_power, given.rated_power, given.display_step_power),
        };
        let mut warm_up = given.warm_up;
        if let Some(known) = known {
            let (of_motor, at_rated) = known.readings(self.logged)?;
            no_load = no_load.or(Some(of_motor));
            rated = rated.or(at_rated);
            let slow = matches!(known.line.duty.surroundings, Surroundings::Oven | Surroundings::Freezer);
            warm_up = warm_up.or(slow.then_some(WARM_UP.1));
        }
        Ok(Rules {
            no_load,
            rated,
            start_up: given.start_up,
            warm_up: warm_up.unwrap_or(WARM_UP.0),
            long_stop: given.long_stop,
            gaps_are_stops: given.gaps_are_stops,
            window: (given.window > 0.0).then_some(given.window),
            zone: zone.clock(),
            coverage: given.coverage,
            display_step,
        })
    }
}

/// What is left of a log, in the unit of its name.
#[derive(Debug, Clone, PartialEq)]
pub struct Means {
    /// Start of each window, or time of the reading, ns UTC.
    pub times: Vec<i64>,
    /// Mean readings, A or kW.
    pub readings: Vec<f64>,
    /// Mean covariates that vary, by name.
    pub covariates: Vec<(&'static str, Vec<f64>)>,
    /// Rows in each mean.
    pub rows: Vec<usize>,
}

/// Leaves out covariates that never move: they cannot explain anything, and a regression refuses them.
fn drop_still(log: &mut CleanLog, names: &mut Vec<&'static str>, notes: &mut Vec<LogNote>) {
    let still = |x: &[f64]| {
        let (least, most) = x.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), x| (a.min(*x), b.max(*x)));
        x.is_empty() || most - least <= STILL * most.abs().max(least.abs())
    };
    for at in (0..names.len()).rev().filter(|at| still(&log.covariates[*at])).collect::<Vec<_>>() {
        let message = format!("{} never changes in this log, so it was left out of the model.", names[at]);
        notes.push(LogNote::new("covariate_constant", message));
        names.remove(at);
        log.covariates.remove(at);
    }
}
