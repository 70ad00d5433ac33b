//! What is computed for the lines of a row.

use super::outputs::OUTPUTS;
use crate::error::{Code, Error, Result};
use crate::line::{Evaluation, Line, Numbers, computed};
use crate::quantity::{Datum, Field, Note, Noun};

/// What is computed for the lines of a row.
pub trait Job: Sync {
    /// The result whose values are columns.
    type Out: Noun;
    /// What holds those values for a row; it need not have the sentences and surveys of the whole result.
    type Found;
    /// Names of the lines of a row: none for one line, or the prefixes of columns for two.
    const SIDES: &'static [&'static str];
    /// Results that are shown where nothing else was asked for.
    const OUTPUTS: &'static [&'static str];
    /// Computes a row.
    fn compute(&self, lines: &[Line]) -> Result<Self::Found>;
    /// The single value at a path of the result.
    fn value<'a>(&self, lines: &'a [Line], found: &'a Self::Found, path: &[&str]) -> Option<Datum<'a>>;
    /// Adds the codes of all warnings.
    fn codes<'a>(&self, found: &'a Self::Found, codes: &mut Vec<&'a str>);
}

/// Evaluates the one line of each row.
#[derive(Debug, Clone, Copy, Default)]
pub struct Evaluate;

impl Job for Evaluate {
    type Out = Evaluation;
    type Found = (Numbers, Vec<Note>);
    const SIDES: &'static [&'static str] = &[""];
    const OUTPUTS: &'static [&'static str] = OUTPUTS;
    fn compute(&self, lines: &[Line]) -> Result<Self::Found> {
        let [line] = lines else { return Err(Error::new(Code::NotATable, "", "a row holds one line")) };
        let computed = computed(line)?;
        let numbers = computed.numbers()?;
        let warnings = computed.warning_codes(&numbers);
        Ok((numbers, warnings))
    }
    fn value<'a>(&self, lines: &'a [Line], (numbers, warnings): &'a Self::Found, path: &[&str]) -> Option<Datum<'a>> {
        let (first, rest) = path.split_first()?;
        match *first {
            "kinematics" => numbers.kinematics.get(rest),
            "tension" => numbers.tension.get(rest),
            "joint" => numbers.joint.get(rest),
            "fill" => numbers.fill.get(rest),
            "wear" => numbers.wear.get(rest),
            "drive" => numbers.drive.get(rest),
            "supply" => numbers.supply.get(rest),
            "cost" => numbers.cost.get(rest),
            "line" => lines.first()?.get(rest),
            "warnings" => of_warning(warnings, rest),
            _ => None,
        }
    }
    fn codes<'a>(&self, (_, warnings): &'a Self::Found, codes: &mut Vec<&'a str>) {
        codes.extend(warnings.iter().map(|warning| warning.code));
    }
}

/// A value of one warning; sentences are not written for a table.
fn of_warning<'a>(warnings: &'a [Note], path: &[&str]) -> Option<Datum<'a>> {
    let [at, name] = path else { return None };
    let warning = warnings.get(at.parse::<usize>().ok()?)?;
    Some(match *name {
        "code" => Datum::Text(warning.code),
        "field" => Datum::Text(&warning.field),
        "value" => Some(warning.value).filter(|value| value.is_finite()).map_or(Datum::Nothing, Datum::Number),
        "unit" => Datum::Text(warning.unit),
        "limit" => Datum::Text(&warning.limit),
        "message" => Datum::Text(&warning.message),
        _ => return None,
    })
}
