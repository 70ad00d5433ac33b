//! One value at a dotted path of a noun: what columns, draws and grids write into a survey and read from a result.
//!
//! Going through survey data (`Tree`) would build and read a whole survey for one number; a million rows cannot.

use super::field::nearest;
use super::{Noun, Row};
use crate::error::{Code, Error, Result};
use std::any::TypeId;
use std::sync::{Mutex, PoisonError};

/// One value as a column, a draw or a grid holds it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Datum<'a> {
    /// Not given.
    Nothing,
    /// True or false.
    Flag(bool),
    /// A whole number.
    Whole(i64),
    /// A number.
    Number(f64),
    /// A word.
    Text(&'a str),
}

impl Datum<'_> {
    /// The number, if it is one.
    pub fn number(self) -> Option<f64> {
        match self {
            Datum::Number(number) => Some(number),
            Datum::Whole(number) => Some(number as f64),
            _ => None,
        }
    }

    /// The whole number, if it is one.
    pub fn whole(self) -> Option<i64> {
        match self {
            Datum::Whole(number) => Some(number),
            Datum::Number(number) if number.fract() == 0.0 && number.abs() < 9e15 => Some(number as i64),
            _ => None,
        }
    }

    /// As it would be written, for messages.
    pub fn written(self) -> String {
        match self {
            Datum::Nothing => "nothing".into(),
            Datum::Flag(flag) => flag.to_string(),
            Datum::Whole(number) => number.to_string(),
            Datum::Number(number) => number.to_string(),
            Datum::Text(text) => format!("{text:?}"),
        }
    }
}

/// What a single value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A number.
    Number,
    /// A whole number.
    Whole,
    /// True or false.
    Flag,
    /// A word.
    Text,
}

/// What became of a value that was put at a path.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Put {
    /// It stands there now; its range is checked with the rest of the survey.
    Done,
    /// There is no such path.
    NoSuchPath,
    /// A value of that kind cannot stand there.
    WrongKind,
}

/// The steps of a dotted path.
pub fn steps(path: &str) -> Vec<&str> {
    path.split('.').collect()
}

/// A path without its list numbers, as the register knows it: `circuit.sections.3.length_m` is
/// `circuit.sections.length_m`.
pub fn registered(path: &str) -> String {
    let names = path.split('.').filter(|step| step.parse::<usize>().is_err());
    names.collect::<Vec<_>>().join(".")
}

/// A dotted path without list numbers, and its row.
pub type Registered = (String, &'static Row);

/// All rows below a noun. Gathered once: a line has hundreds, and a study asks for them again and again.
pub fn rows_of<T: Noun>() -> &'static [Registered] {
    static GATHERED: Mutex<Vec<(TypeId, &'static [Registered])>> = Mutex::new(Vec::new());
    let mut gathered = GATHERED.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some((_, rows)) = gathered.iter().find(|(noun, _)| *noun == TypeId::of::<T>()) {
        return rows;
    }
    let mut rows = Vec::new();
    T::register(String::new(), &Row::BLANK, &mut rows);
    let rows: &'static [Registered] = Vec::leak(rows); // kept for the rest of the run, once for each noun
    gathered.push((TypeId::of::<T>(), rows));
    rows
}

/// The row of the register for a dotted path below a noun.
pub fn row_of<T: Noun>(path: &str) -> Option<&'static Row> {
    let wanted = registered(path);
    rows_of::<T>().iter().find(|(known, _)| *known == wanted).map(|(_, row)| *row)
}

/// The error for a path that a noun does not have, with the nearest that it has.
pub fn no_such_path<T: Noun>(path: &str) -> Error {
    let rows = rows_of::<T>();
    let wanted = registered(path);
    let known = rows.iter().any(|(known, _)| *known == wanted);
    let hint = if known {
        format!("this {} has no value there: give the whole group first", T::NAME)
    } else {
        let near = nearest(&wanted, rows.iter().map(|(known, _)| known.as_str()));
        near.map_or_else(|| "see pinfilm.register()".to_string(), |near| format!("did you mean {near}?"))
    };
    Error::new(Code::UnknownKey, path, format!("{path} is not a path of {}: {hint}", T::NAME))
        .text_value(path)
        .limit(hint)
}

/// Puts a value at a dotted path; its range is checked when the noun is.
///
/// ```
/// use pinfilm::line::Line;
/// use pinfilm::quantity::{Datum, put_at, value_at};
/// let mut line = Line::from_toml(include_str!("../../python/pinfilm/data/oven_now.toml"))?;
/// put_at(&mut line, "duty.speed_m_per_min", Datum::Number(4.0))?;
/// assert_eq!(value_at(&line, "duty.speed_m_per_min")?, Datum::Number(4.0));
/// assert!(put_at(&mut line, "duty.speed", Datum::Number(4.0)).is_err());
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn put_at<T: Noun>(noun: &mut T, path: &str, datum: Datum<'_>) -> Result<()> {
    match noun.put(&steps(path), datum) {
        Put::Done => Ok(()),
        Put::NoSuchPath => Err(no_such_path::<T>(path)),
        Put::WrongKind => {
            let row = row_of::<T>(path).unwrap_or(&Row::BLANK);
            let written = datum.written();
            let message = format!("{path} = {written} is of the wrong kind for {}", row.means);
            Err(Error::new(Code::WrongType, path, message).text_value(written).unit(row.unit.label))
        }
    }
}

/// The value at a dotted path.
pub fn value_at<'a, T: Noun>(noun: &'a T, path: &str) -> Result<Datum<'a>> {
    noun.get(&steps(path)).ok_or_else(|| no_such_path::<T>(path))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::Line;
    use crate::quantity::Field;

    const SURVEY: &str = include_str!("../../python/pinfilm/data/packing_proposed.toml");

    #[test]
    fn what_stands_at_a_path_can_be_put_back() {
        let line = Line::from_toml(SURVEY).unwrap();
        let mut rows = Vec::new();
        Line::register(String::new(), &Row::BLANK, &mut rows);
        let mut copy = line.clone();
        let mut found = 0;
        for (path, row) in &rows {
            let path = path.replace("circuit.sections.", "circuit.sections.0.");
            let Ok(datum) = value_at(&line, &path) else { continue };
            // other methods' and sections' paths have no value here
            if let Datum::Number(number) = datum {
                put_at(&mut copy, &path, Datum::Number(number + 1.0)).unwrap();
                assert_ne!(copy, line, "{path}: {}", row.means);
            }
            put_at(&mut copy, &path, datum).unwrap();
            assert_eq!(copy, line, "{path}");
            found += 1;
        }
        assert!(found > 120, "only {found} paths have a value");
    }

    #[test]
    fn a_wrong_path_names_the_nearest() {
        let mut line = Line::from_toml(SURVEY).unwrap();
        let error = put_at(&mut line, "chain.pin_diameter", Datum::Number(8.0)).unwrap_err();
        assert!(error.to_string().contains("chain.pin_diameter_mm"), "{error}");
        let error = put_at(&mut line, "chain.pin_diameter_mm", Datum::Text("eight")).unwrap_err();
        assert_eq!(error.code, Code::WrongType);
        assert_eq!(
            put_at(&mut line, "circuit.sections.999.rise_m", Datum::Number(1.0)).unwrap_err().code,
            Code::UnknownKey
        );
    }

    #[test]
    fn a_whole_number_takes_no_fraction() {
        let mut line = Line::from_toml(SURVEY).unwrap();
        assert_eq!(put_at(&mut line, "costs.horizon_years", Datum::Number(2.5)).unwrap_err().code, Code::WrongType);
        put_at(&mut line, "costs.horizon_years", Datum::Number(3.0)).unwrap();
        assert_eq!(line.costs.horizon_years, 3);
    }
}
