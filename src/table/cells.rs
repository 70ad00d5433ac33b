//! One column, cell by cell, whatever type it came in.

use crate::error::{Code, Error, Result};
use crate::quantity::{Datum, Kind};
use arrow_array::{Array, ArrayRef, BooleanArray, Float64Array, Int64Array, LargeStringArray};
use arrow_cast::{CastOptions, can_cast_types, cast_with_options};
use arrow_schema::DataType;

/// How a column of some type is read for a value of some kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Reading {
    /// It has no values at all.
    Empty,
    /// As numbers.
    Numbers,
    /// As whole numbers.
    Wholes,
    /// As true or false.
    Flags,
    /// As words.
    Words,
    /// As text that spells numbers, or true and false.
    Spelled,
}

impl Reading {
    /// How a column of this type is read, if it can be.
    pub fn of(data: &DataType, kind: Kind) -> Option<Reading> {
        use DataType as T;
        let value = match data {
            T::Dictionary(_, value) => value,
            T::RunEndEncoded(_, value) => value.data_type(),
            other => other,
        };
        let reading = match (value, kind) {
            (T::Null, _) => Reading::Empty,
            (T::Utf8 | T::LargeUtf8 | T::Utf8View, Kind::Text) => Reading::Words,
            (T::Utf8 | T::LargeUtf8 | T::Utf8View, _) => Reading::Spelled,
            (T::Boolean, Kind::Flag) => Reading::Flags,
            (
                T::Int8 | T::Int16 | T::Int32 | T::Int64 | T::UInt8 | T::UInt16 | T::UInt32,
                Kind::Number | Kind::Whole,
            ) => Reading::Wholes,
            (number, Kind::Number | Kind::Whole) if number.is_numeric() => Reading::Numbers,
            (number, Kind::Text) if number.is_numeric() => Reading::Words,
            _ => return None,
        };
        (reading == Reading::Empty || can_cast_types(data, &reading.data_type())).then_some(reading)
    }

    fn data_type(self) -> DataType {
        match self {
            Reading::Empty => DataType::Null,
            Reading::Numbers => DataType::Float64,
            Reading::Wholes => DataType::Int64,
            Reading::Flags => DataType::Boolean,
            Reading::Words | Reading::Spelled => DataType::LargeUtf8,
        }
    }
}

/// A column, or a value that holds for all rows.
#[derive(Debug, Clone)]
pub(super) enum Cells {
    Empty,
    Numbers(Float64Array),
    Wholes(Int64Array),
    Flags(BooleanArray),
    Words(LargeStringArray),
    Spelled(LargeStringArray, Kind),
    Same(Same),
}

/// A value that holds for all rows.
#[derive(Debug, Clone)]
pub(super) enum Same {
    Flag(bool),
    Whole(i64),
    Number(f64),
    Word(String),
}

impl Cells {
    /// The cells of a column that is read in this way.
    pub fn of(array: &ArrayRef, reading: Reading, kind: Kind, name: &str) -> Result<Cells> {
        // without `safe` a value that does not fit is an error; with it the value would be lost
        let options = CastOptions { safe: false, ..CastOptions::default() };
        let array = match reading {
            Reading::Empty => return Ok(Cells::Empty),
            _ if *array.data_type() == reading.data_type() => array.clone(),
            _ => cast_with_options(array, &reading.data_type(), &options).map_err(|error| wrong(name, &error))?,
        };
        let array = array.as_any();
        let cells = match reading {
            Reading::Empty => None,
            Reading::Numbers => array.downcast_ref().cloned().map(Cells::Numbers),
            Reading::Wholes => array.downcast_ref().cloned().map(Cells::Wholes),
            Reading::Flags => array.downcast_ref().cloned().map(Cells::Flags),
            Reading::Words => array.downcast_ref().cloned().map(Cells::Words),
            Reading::Spelled => array.downcast_ref().cloned().map(|text| Cells::Spelled(text, kind)),
        };
        cells.ok_or_else(|| wrong(name, &"it is of another type than it says"))
    }

    /// Whether its cells differ: in value, or as some are empty.
    pub fn varies(&self) -> bool {
        match self {
            Cells::Empty | Cells::Same(_) => false,
            Cells::Numbers(cells) => {
                let first = cells.values().first().map(|number| number.to_bits());
                is_patchy(cells) || differ(cells, || cells.values().iter().any(|n| Some(n.to_bits()) != first))
            }
            Cells::Wholes(cells) => {
                is_patchy(cells) || differ(cells, || cells.values().iter().any(|n| Some(n) != cells.values().first()))
            }
            Cells::Flags(cells) => {
                let set = cells.values().count_set_bits();
                is_patchy(cells) || differ(cells, || set > 0 && set < cells.len())
            }
            Cells::Words(cells) | Cells::Spelled(cells, _) => {
                is_patchy(cells) || differ(cells, || (1..cells.len()).any(|row| cells.value(row) != cells.value(0)))
            }
        }
    }

    /// The value in a row; text that should spell a number and does not comes as text.
    pub fn at(&self, row: usize) -> Datum<'_> {
        match self {
            Cells::Empty => Datum::Nothing,
            Cells::Numbers(cells) if cells.is_valid(row) => Datum::Number(plain(cells.value(row))),
            Cells::Wholes(cells) if cells.is_valid(row) => Datum::Whole(cells.value(row)),
            Cells::Flags(cells) if cells.is_valid(row) => Datum::Flag(cells.value(row)),
            Cells::Words(cells) if cells.is_valid(row) => Datum::Text(cells.value(row)),
            Cells::Spelled(cells, kind) if cells.is_valid(row) => spelled(cells.value(row), *kind),
            Cells::Same(Same::Flag(flag)) => Datum::Flag(*flag),
            Cells::Same(Same::Whole(number)) => Datum::Whole(*number),
            Cells::Same(Same::Number(number)) => Datum::Number(plain(*number)),
            Cells::Same(Same::Word(text)) => Datum::Text(text),
            _ => Datum::Nothing,
        }
    }
}

fn is_patchy(cells: &dyn Array) -> bool {
    cells.null_count() > 0 && cells.null_count() < cells.len()
}

/// What cells without a value hold is nothing to look at.
fn differ(cells: &dyn Array, differ: impl FnOnce() -> bool) -> bool {
    cells.null_count() == 0 && !cells.is_empty() && differ()
}

/// Not a number is not a number, whatever its payload: one payload is that of a blank.
fn plain(number: f64) -> f64 {
    if number.is_nan() { f64::NAN } else { number }
}

/// What a text spells; an empty one is nothing.
fn spelled(text: &str, kind: Kind) -> Datum<'_> {
    let trimmed = text.trim();
    if trimmed.is_empty() {
        return Datum::Nothing;
    }
    let is_true = trimmed.eq_ignore_ascii_case("true");
    match kind {
        Kind::Flag if is_true || trimmed.eq_ignore_ascii_case("false") => Datum::Flag(is_true),
        Kind::Number | Kind::Whole => match (trimmed.parse::<i64>(), trimmed.parse::<f64>()) {
            (Ok(whole), _) => Datum::Whole(whole),
            (_, Ok(number)) => Datum::Number(plain(number)),
            _ => Datum::Text(text),
        },
        _ => Datum::Text(text),
    }
}

fn wrong(name: &str, why: &dyn std::fmt::Display) -> Error {
    Error::new(Code::ColumnType, name, format!("the column {name} cannot be read: {why}"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::sync::Arc;

    #[test]
    fn text_spells_numbers_or_stays_text() {
        assert_eq!(spelled(" 12.50 ", Kind::Number), Datum::Number(12.5));
        assert_eq!(spelled("12", Kind::Whole), Datum::Whole(12));
        assert_eq!(spelled("", Kind::Number), Datum::Nothing);
        assert_eq!(spelled("n/a", Kind::Number), Datum::Text("n/a"));
        assert_eq!(spelled("TRUE", Kind::Flag), Datum::Flag(true));
    }

    #[test]
    fn a_payload_is_no_blank() {
        let array: ArrayRef = Arc::new(Float64Array::from(vec![crate::quantity::blank::NUMBER, -0.0, 5e-324]));
        let cells = Cells::of(&array, Reading::Numbers, Kind::Number, "x").unwrap();
        let Datum::Number(first) = cells.at(0) else { panic!() };
        assert!(first.is_nan() && !crate::quantity::blank::is_blank(first));
        assert_eq!((cells.at(1), cells.at(2)), (Datum::Number(0.0), Datum::Number(5e-324)));
    }
}
