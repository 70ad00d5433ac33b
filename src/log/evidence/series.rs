//! A cleaned log on its way to a verdict: its rows, its dates, the two sides of a change, what its errors are called.

use super::current_log::{SECOND, is_load};
use super::zone::{Moment, Zone};
use super::{Cleaning, LogNote, LoggedAs};
use crate::error::{Code, Error, Given, Result};
use crate::log::cleaning::CleanLog;
use std::borrow::Cow;

/// A cleaned log with its covariates that say something, readings in SI (A or W).
#[derive(Debug, Clone)]
pub(super) struct Series {
    pub logged: LoggedAs,
    pub zone: Zone,
    pub log: CleanLog,
    /// Names of the covariates in `log`.
    pub names: Vec<&'static str>,
    pub window: Option<f64>,
    pub cleaning: Cleaning,
    pub notes: Vec<LogNote>,
}

impl Series {
    /// Refuses a log whose clock was set, since its pieces cannot be put beside each other, and one that never changes.
    pub fn of_one_piece(&self) -> Result<()> {
        if self.cleaning.pieces > 1 {
            let message = format!(
                "the clock of this log was set by more or less than an hour, which leaves {} pieces whose times cannot \
                 be compared: correct the stamps, or give the pieces one by one",
                self.cleaning.pieces
            );
            return Err(Error::new(Code::Inconsistent, "time", message).number(self.cleaning.pieces as f64).limit("1"));
        }
        let readings = &self.log.readings;
        if readings.is_empty() {
            let message = format!("cleaning left nothing of this log. {}", self.cleaning.sentence);
            return Err(Error::new(Code::Missing, "log", message));
        }
        if readings.len() > 1 && readings.iter().all(|x| (x - readings[0]).abs() <= 1e-12 * readings[0].abs()) {
            let message = format!("all {} means of this log are alike: check the clamp", readings.len());
            return Err(Error::new(Code::Inconsistent, "log", message).number(readings[0]));
        }
        Ok(())
    }

    /// First and last row that may be used on the two sides of a change: rows before, rows from.
    pub fn sides(&self, moment: Moment, settle: f64, field: &'static str) -> Result<(usize, usize)> {
        let times = &self.log.times;
        let settled = self.zone.after(moment.until, settle);
        let before = match self.window {
            None => times.partition_point(|time| *time < moment.from),
            Some(_) => self.log.ends.partition_point(|end| *end <= moment.from),
        };
        let from = times.partition_point(|time| *time < settled);
        if before < 2 || from + 2 > times.len() {
            let (first, last) = (self.day(0), self.day(times.len().saturating_sub(1)));
            let what = if self.window.is_some() { "means" } else { "readings" };
            let message = format!(
                "{field} = {} leaves {before} {what} before it and {} after; the log runs from {first} to {last}: choose a \
                 date inside the log, with two or more on each side",
                self.zone.text(moment.from),
                times.len() - from.min(times.len())
            );
            return Err(Error::new(Code::OutOfRange, field, message)
                .text_value(self.zone.text(moment.from))
                .limit(format!("{first} to {last}, with two {what} or more on each side")));
        }
        Ok((before, from))
    }

    /// An error of a regression with the names of its covariates, as a person reads it.
    pub fn by_name(&self, error: Error) -> Error {
        let ("covariates", Given::Number(column)) = (error.field.as_str(), error.value.as_ref()) else { return error };
        let message = match self.names.get((*column as usize).wrapping_sub(1)) {
            Some(name) if self.names.len() == 1 => format!(
                "{name} does not change where its effect is to be learnt, so nothing can be said of it: leave it out"
            ),
            Some(name) => {
                let beside = self.names.iter().filter(|other| *other != name).copied().collect::<Vec<_>>().join(", ");
                format!(
                    "{name} runs with {beside} throughout, so their effects cannot be told apart: leave one of them out"
                )
            }
            None => format!(
                "{} changed on the day of the change and never else, so the two cannot be told apart: log longer, or leave \
                 it out",
                self.names.join(", ")
            ),
        };
        Error::new(error.code, "covariates", message)
    }

    /// Usual time from one mean or reading to the next, s.
    pub fn step(&self) -> f64 {
        self.window.unwrap_or(self.log.report.sample)
    }

    /// Days that so many means or readings take, at least one.
    pub fn days_of(&self, means: usize) -> i64 {
        (means as f64 * self.step() / 86_400.0).ceil().max(1.0) as i64
    }

    /// Time from the first reading or mean to the end of the last, s.
    pub fn span(&self) -> f64 {
        self.log.ends.last().zip(self.log.times.first()).map_or(0.0, |(last, first)| (last - first) as f64 / SECOND)
    }

    /// The date of a row.
    pub fn day(&self, row: usize) -> String {
        self.log.times.as_slice().get(row).map_or_else(|| "nothing".into(), |time| self.zone.text(*time))
    }

    /// Readings and covariates of some rows.
    pub fn rows(&self, keep: impl Fn(usize) -> bool) -> (Vec<f64>, Vec<Vec<f64>>) {
        let pick = |x: &[f64]| x.iter().enumerate().filter(|(row, _)| keep(*row)).map(|(_, x)| *x).collect();
        (pick(&self.log.readings), self.log.covariates.iter().map(|x| pick(x)).collect())
    }

    /// Names of the covariates in the model.
    pub fn covariate_words(&self) -> Vec<Cow<'static, str>> {
        self.names.iter().map(|name| Cow::Borrowed(*name)).collect()
    }

    /// Whether the load is in the model.
    pub fn has_load(&self) -> bool {
        self.names.iter().any(|name| is_load(name))
    }
}
