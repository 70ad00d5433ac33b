//! What is read on a line: elongation, current, oil used.

use super::super::subject::Subject;
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::quantity::unit::{DAYS, H};
use crate::quantity::{Field, show};
use crate::study::calibrate::Observation;

/// Error (% of length) of an elongation that was read with care; by habit it is three times that. Common practice.
pub const CAREFUL_READING_PCT: f64 = 0.05;

/// Running hours of `days` calendar days of a line's duty.
pub fn running_hours(line: &Line, days: f64) -> f64 {
    let duty = line.duty.si(&crate::quantity::unit::ONE);
    let running = duty.day_share * duty.year_share;
    H.from_si(DAYS.to_si(days) * running)
}

/// A reading farther from what is computed than this many errors is doubted. Common practice.
const FAR: f64 = 3.0;

/// One reading on a line, with the standard deviation of its error in the same unit.
#[derive(Debug, Clone, PartialEq)]
pub enum Reading {
    /// Elongation of a stretch of many links against the new chain.
    Elongation {
        /// Elongation (% of length).
        pct: f64,
        /// Its error (% of length).
        error_pct: f64,
        /// Running hours since the chain was new.
        running_h: f64,
        /// Running hours at which the chain came under the proposed oiling; `None`: it has not.
        changed_at_h: Option<f64>,
    },
    /// A number of the result, such as the drive's current.
    Number {
        /// Its dotted path.
        path: String,
        /// What was read.
        value: f64,
        /// Its error.
        error: f64,
    },
    /// By how much a number of the line as it is falls with the proposal: a change that a log has shown.
    Saving {
        /// Its dotted path below a line's result: `drive.current_a`, or `drive.input_power_w` for a logged power.
        path: &'static str,
        /// Fall (% of the number as it is).
        pct: f64,
        /// Its error (% of the number as it is).
        error_pct: f64,
    },
}

impl Reading {
    pub(super) fn observation(&self) -> Observation {
        match *self {
            Reading::Elongation { pct, error_pct, .. } | Reading::Saving { pct, error_pct, .. } => {
                Observation { value: pct, error: error_pct }
            }
            Reading::Number { value, error, .. } => Observation { value, error },
        }
    }

    /// What was read, and the standard deviation of its error.
    pub fn value_and_error(&self) -> (f64, f64) {
        let observation = self.observation();
        (observation.value, observation.error)
    }

    /// What to think of it where the best that is computed lies more than three errors away.
    pub(super) fn doubtful(&self, computed: f64) -> Option<String> {
        let (value, error) = self.value_and_error();
        let away = (value - computed).abs() / error;
        (away > FAR).then(|| {
            let (value, computed) = (show::brief(value), show::brief(computed));
            format!(
                "{} was read as {value}, and the nearest that the guesses allow is {computed}, {} errors away: look at the \
                 reading, its error, and what else was surveyed",
                self.name(),
                show::brief(away)
            )
        })
    }

    /// What it reads, for tables.
    pub fn name(&self) -> String {
        match self {
            Reading::Elongation { running_h, .. } => {
                format!("elongation after {} running hours", show::number(*running_h))
            }
            Reading::Number { path, .. } => path.clone(),
            Reading::Saving { path, .. } => format!("fall of {path}"),
        }
    }

    pub(super) fn check(&self, subject: &Subject) -> Result<()> {
        if let (Reading::Saving { pct, .. }, false) = (self, subject.is_pair()) {
            let message = "a change that a log has shown needs both lines: give (now, proposed)";
            return Err(Error::new(Code::Inconsistent, "readings", message).number(*pct).unit("%"));
        }
        let Reading::Elongation { running_h, changed_at_h, .. } = self else { return Ok(()) };
        if !(*running_h >= 0.0 && running_h.is_finite()) {
            let message = format!("a reading after {running_h} running hours is none: count them from the new chain");
            return Err(Error::new(Code::OutOfRange, "running_h", message)
                .number(*running_h)
                .unit("h")
                .limit("0 or more"));
        }
        let Some(changed) = changed_at_h else { return Ok(()) };
        if !subject.is_pair() {
            let message = "a reading after a change of oiling needs both lines: give (now, proposed)";
            return Err(Error::new(Code::Inconsistent, "changed_at_h", message).number(*changed).unit("h"));
        }
        if !(*changed >= 0.0 && changed <= running_h) {
            let message = format!(
                "the oiling was changed after {changed} running hours, but the reading was taken after {running_h}"
            );
            let limit = format!("0 to {running_h} h");
            return Err(Error::new(Code::Inconsistent, "changed_at_h", message)
                .number(*changed)
                .unit("h")
                .limit(limit));
        }
        Ok(())
    }
}
