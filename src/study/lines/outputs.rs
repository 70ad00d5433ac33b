//! Numbers read from a result, path by path.

use super::subject::{Outcome, Subject};
use crate::error::{Code, Error, Result};
use crate::quantity::{Datum, Row, steps, unit};

/// Dotted paths of a result, with their rows of the register.
#[derive(Debug, Clone)]
pub struct Outputs {
    paths: Vec<String>,
    rows: Vec<&'static Row>,
    /// Whether an output without a number never comes, as a payback does.
    endless: Vec<bool>,
}

/// Groups of a result that repeat the survey, or are words for people.
const ASIDE: [&str; 3] = ["line.", "warnings.", "cautions."];

/// What people ask of a line first.
const OF_A_LINE: [&str; 8] = [
    "tension.pull_n",
    "drive.current_a",
    "fill.never_reached",
    "fill.mean_fill",
    "supply.applied_l_per_year",
    "wear.elongation_1_year_pct",
    "wear.life_years",
    "cost.total_per_year",
];
/// And of a change.
const OF_A_PAIR: [&str; 6] = [
    "saving_per_year",
    "payback_days",
    "payback_days_without_chain",
    "npv",
    "now.wear.life_years",
    "proposed.wear.life_years",
];

/// The numbers that people ask for first.
pub fn headlines(subject: &Subject) -> &'static [&'static str] {
    if subject.is_pair() { &OF_A_PAIR } else { &OF_A_LINE }
}

impl Outputs {
    /// The paths asked for; without any, every single number of `outcome`.
    pub fn of(subject: &Subject, paths: Option<&[String]>, outcome: Option<&Outcome>) -> Result<Outputs> {
        if let Some(paths) = paths {
            let rows = paths.iter().map(|path| subject.output_row(path)).collect::<Result<Vec<_>>>()?;
            if let Some(outcome) = outcome {
                paths.iter().try_for_each(|path| is_single(outcome, path))?;
            }
            return Ok(Outputs::with(paths.to_vec(), rows));
        }
        let Some(outcome) = outcome else { return Ok(Outputs::with(Vec::new(), Vec::new())) };
        let is_number = |path: &str, row: &Row| {
            let below = path.strip_prefix("now.").or_else(|| path.strip_prefix("proposed.")).unwrap_or(path);
            *row.unit != unit::WORD
                && !ASIDE.iter().any(|group| below.starts_with(group))
                && matches!(outcome.get(&steps(path)), Some(Datum::Number(_) | Datum::Whole(_) | Datum::Nothing))
        };
        let found = subject.output_rows().iter().filter(|(path, row)| is_number(path, row));
        let (paths, rows) = found.map(|(path, row)| (path.clone(), *row)).unzip();
        Ok(Outputs::with(paths, rows))
    }

    fn with(paths: Vec<String>, rows: Vec<&'static Row>) -> Outputs {
        let endless = rows.iter().map(|row| never_comes(row)).collect();
        Outputs { paths, rows, endless }
    }

    /// Refuses outputs that are words.
    pub fn only_numbers(self) -> Result<Outputs> {
        match self.rows.iter().position(|row| *row.unit == unit::WORD) {
            None => Ok(self),
            Some(i) => {
                let path = &self.paths[i];
                let message =
                    format!("{path} is no number: {} has no percentiles; ask for it in a sweep", self.rows[i].means);
                Err(Error::new(Code::WrongType, path, message).text_value(path))
            }
        }
    }

    /// The paths, in order.
    pub fn paths(&self) -> &[String] {
        &self.paths
    }

    /// Their rows of the register.
    pub fn rows(&self) -> &[&'static Row] {
        &self.rows
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.paths.len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.paths.is_empty()
    }

    /// Place of a path among them; the error names the nearest.
    pub fn place(&self, path: &str) -> Result<usize> {
        self.paths.iter().position(|known| known == path).ok_or_else(|| {
            let near = crate::quantity::nearest(path, self.paths.iter().map(String::as_str));
            let hint = near.map_or_else(|| "name it in outputs".to_string(), |near| format!("did you mean {near}?"));
            let message = format!("{path} is not among the outputs of this study: {hint}");
            Error::new(Code::UnknownKey, path, message).text_value(path).limit(hint)
        })
    }

    /// The paths, taken apart once for [`Outputs::read`].
    pub(super) fn readers(&self) -> Vec<Vec<&str>> {
        self.paths.iter().map(|path| steps(path)).collect()
    }

    /// The numbers of `outcome`: NaN where it has none, +∞ for a payback that never comes.
    pub(super) fn read(&self, readers: &[Vec<&str>], outcome: &Outcome) -> Box<[f64]> {
        let each = readers.iter().zip(&self.endless);
        each.map(|(steps, endless)| number(outcome.get(steps).unwrap_or(Datum::Nothing), || *endless)).collect()
    }
}

/// A value as a number; a payback without a number never comes.
pub(super) fn number_of(datum: Datum<'_>, row: &Row) -> f64 {
    number(datum, || never_comes(row))
}

fn number(datum: Datum<'_>, endless: impl Fn() -> bool) -> f64 {
    match datum {
        Datum::Number(number) => number,
        Datum::Flag(flag) => f64::from(u8::from(flag)),
        Datum::Nothing if endless() => f64::INFINITY,
        other => other.number().unwrap_or(f64::NAN),
    }
}

fn never_comes(row: &Row) -> bool {
    row.name.contains("payback")
}

/// Refuses a list or a group.
fn is_single(outcome: &Outcome, path: &str) -> Result<()> {
    if outcome.get(&steps(path)).is_some() {
        return Ok(());
    }
    let message = format!(
        "{path} is not a single value of this result: name one item of a list by its number, or one value of a group"
    );
    Err(Error::new(Code::WrongType, path, message).text_value(path))
}
