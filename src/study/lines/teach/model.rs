//! Readings as they would be, for given guesses.

use super::super::outputs::{Outputs, number_of};
use super::super::subject::{Outcome, Side};
use super::super::uncertain::{Scratch, Uncertain};
use super::{Quantiles, Reading, TeachSettings};
use crate::error::{Code, Error, Result};
use crate::line::Growth;
use crate::quantity::unit::PCT;
use crate::quantity::{Datum, Row};
use crate::study::calibrate::Parameter;
use crate::study::draws::{Distribution, normal_quantile};
use crate::study::progress::{Progress, in_parallel};
use crate::study::spread::{quantile, sorted};
use std::sync::Mutex;

/// Readings as a function of the normal scores of the guesses, the last of which may be that of the zero reading.
pub(super) struct Model<'a> {
    uncertain: &'a Uncertain,
    readings: &'a [Reading],
    zero_error: Option<f64>,
    rows: Vec<Option<&'static Row>>,
    /// Scratch that threads take and give back.
    free: Mutex<Vec<Scratch>>,
}

impl<'a> Model<'a> {
    pub(super) fn new(uncertain: &'a Uncertain, readings: &'a [Reading], settings: TeachSettings) -> Result<Model<'a>> {
        let subject = uncertain.subject();
        readings.iter().try_for_each(|reading| reading.check(subject))?;
        let row = |reading: &Reading| match reading {
            Reading::Elongation { .. } => Ok(None),
            Reading::Number { path, .. } => subject.output_row(path).map(Some),
            Reading::Saving { path, .. } => subject.output_row(&of_side(Side::Now, path)).map(Some),
        };
        if !(settings.zero_error_pct >= 0.0 && settings.zero_error_pct.is_finite()) {
            let message = "the error of the zero reading is no error: give 0 or more, in % of length";
            return Err(Error::new(Code::OutOfRange, "zero_error_pct", message).number(settings.zero_error_pct));
        }
        let elongations = readings.iter().any(|reading| matches!(reading, Reading::Elongation { .. }));
        Ok(Model {
            zero_error: Some(settings.zero_error_pct).filter(|sd| elongations && *sd > 0.0),
            rows: readings.iter().map(row).collect::<Result<_>>()?,
            free: Mutex::new(Vec::new()),
            uncertain,
            readings,
        })
    }

    /// Normal scores: bell curves about 0.
    pub(super) fn parameters(&self) -> Vec<Parameter> {
        let names = self.uncertain.names().iter().map(|name| Parameter::plain(name.clone(), 0.0, 1.0));
        names.chain(self.zero_error.map(|_| Parameter::plain("zero reading", 0.0, 1.0))).collect()
    }

    /// The same on the scales on which people multiply or add them, to name combinations.
    pub(super) fn named(&self) -> Vec<Parameter> {
        let z = normal_quantile(0.95);
        let one = |(i, name): (usize, &String)| {
            let d = self.uncertain.distribution_of(i, self.uncertain.side_of(i));
            let (low, high) = (d.at_normal(-z), d.at_normal(z));
            let odds = |p: f64| (p / (1.0 - p)).ln();
            match d {
                Distribution::Beta { .. } if low > 0.0 && high < 1.0 => {
                    Parameter::logit(name.clone(), 0.5, (odds(high) - odds(low)) / (2.0 * z))
                }
                _ if low > 0.0 => Parameter::log(name.clone(), d.at_normal(0.0), (high / low).ln() / (2.0 * z)),
                _ => Parameter::plain(name.clone(), d.at_normal(0.0), (high - low) / (2.0 * z)),
            }
        };
        let zero = self.zero_error.map(|sd| Parameter::plain("zero reading", 0.0, sd));
        self.uncertain.names().iter().enumerate().map(one).chain(zero).collect()
    }

    fn with_scratch<T>(&self, work: impl FnOnce(&mut Scratch) -> T) -> T {
        let taken = self.free.lock().ok().and_then(|mut free| free.pop());
        let mut scratch = taken.unwrap_or_else(|| self.uncertain.scratch());
        let done = work(&mut scratch);
        if let Ok(mut free) = self.free.lock() {
            free.push(scratch);
        }
        done
    }

    pub(super) fn readings(&self, theta: &[f64], y: &mut [f64]) -> Result<()> {
        let count = self.uncertain.names().len();
        let zero = self.zero_error.map_or(0.0, |sd| sd * theta[count]);
        self.with_scratch(|scratch| {
            self.uncertain.write_scores(&theta[..count], scratch);
            let lines = scratch.subject();
            let grows = |changed: bool| {
                let any = self.readings.iter().any(|r| match r {
                    Reading::Elongation { changed_at_h, .. } => !changed || changed_at_h.is_some(),
                    Reading::Number { .. } | Reading::Saving { .. } => false,
                });
                let side = if changed { Side::Proposed } else { Side::Now };
                any.then(|| Growth::of(lines.line(side))).transpose()
            };
            let (now, proposed) = (grows(false)?, grows(true)?);
            let numbers = self.rows.iter().any(Option::is_some);
            let outcome = if numbers { Some(lines.outcome()?) } else { None };
            for ((y, reading), row) in y.iter_mut().zip(self.readings).zip(&self.rows) {
                *y = match (reading, row) {
                    (Reading::Elongation { running_h, changed_at_h, .. }, _) => {
                        zero + grown(now.as_ref(), proposed.as_ref(), *running_h, *changed_at_h)
                    }
                    (Reading::Number { path, .. }, Some(row)) => read(outcome.as_ref(), path, row),
                    (Reading::Saving { path, .. }, Some(row)) => {
                        let [now, proposed] =
                            [Side::Now, Side::Proposed].map(|side| read(outcome.as_ref(), &of_side(side, path), row));
                        PCT.from_si(1.0 - proposed / now)
                    }
                    (Reading::Number { .. } | Reading::Saving { .. }, None) => f64::NAN,
                };
            }
            Ok(())
        })
    }

    /// Quantiles of the outputs over draws of scores before and after.
    pub(super) fn predict(
        &self,
        outputs: &Outputs,
        prior: &[Vec<f64>],
        posterior: &[Vec<f64>],
        progress: &mut Progress<'_>,
    ) -> Result<Vec<[Quantiles; 2]>> {
        let readers = outputs.readers();
        let all = prior.len() + posterior.len();
        let of_row = |scratch: &mut Scratch, row: usize| {
            let theta = if row < prior.len() { &prior[row] } else { &posterior[row - prior.len()] };
            self.uncertain.write_scores(&theta[..self.uncertain.names().len()], scratch);
            scratch.subject().outcome().map(|outcome| outputs.read(&readers, &outcome)).ok()
        };
        let rows = in_parallel(all, progress, || self.uncertain.scratch(), of_row)?;
        let (before, after) = rows.split_at(prior.len());
        let quantiles = |rows: &[Option<Box<[f64]>>], i: usize| -> Quantiles {
            let numbers = rows.iter().flatten().map(|row| row[i]).filter(|x| !x.is_nan()).collect::<Vec<_>>();
            let rising = sorted(&numbers);
            [0.05, 0.5, 0.95].map(|p| if rising.is_empty() { f64::NAN } else { quantile(&rising, p) })
        };
        Ok((0..outputs.len()).map(|i| [quantiles(before, i), quantiles(after, i)]).collect())
    }
}

/// A path below the result of one line of a pair.
fn of_side(side: Side, path: &str) -> String {
    format!("{}.{path}", side.as_str())
}

fn read(outcome: Option<&Outcome>, path: &str, row: &Row) -> f64 {
    let steps = crate::quantity::steps(path);
    outcome.map_or(f64::NAN, |outcome| number_of(outcome.get(&steps).unwrap_or(Datum::Nothing), row))
}

/// Elongation (%) after `running_h` hours, the last of them under the proposed oiling if that came at `changed`.
fn grown(now: Option<&Growth>, proposed: Option<&Growth>, running_h: f64, changed: Option<f64>) -> f64 {
    let Some(now) = now else { return f64::NAN };
    match (changed, proposed) {
        (Some(changed), Some(proposed)) => {
            let age = proposed.running_h(now.elongation_pct(changed));
            proposed.elongation_pct(age + running_h - changed)
        }
        _ => now.elongation_pct(running_h),
    }
}
