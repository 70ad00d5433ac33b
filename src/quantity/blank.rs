//! What stands where nothing was given yet, so that columns can fill a noun value by value.
//!
//! No range allows a blank, so that it is refused when the noun is checked; [`missing`] then says what is missing.

use super::{Noun, Row, row_of};
use crate::error::{Code, Error, Given};

/// The number that was not given: not a number, with a payload of its own.
pub const NUMBER: f64 = f64::from_bits(0x7ff8_0000_626c_6e6b);

/// The whole number that was not given.
pub const WHOLE: i64 = i64::MIN;

/// Whether a refused number is a blank.
pub fn is_blank(number: f64) -> bool {
    number.to_bits() == NUMBER.to_bits() || number == WHOLE as f64
}

/// The refusal of a blank as the error that it is: a required value of `T` that was not given. Other errors stay.
pub fn missing<T: Noun>(error: Error) -> Error {
    if !matches!(*error.value, Given::Number(number) if is_blank(number)) {
        return error;
    }
    let row = row_of::<T>(error.field.trim_start_matches(T::GROUP).trim_start_matches('.')).unwrap_or(&Row::BLANK);
    let limit = row.allowed.words(row.unit);
    let message = format!("{} is missing: give {} ({limit})", error.field, row.means);
    Error::new(Code::Missing, error.field, message).unit(row.unit.label).limit(limit)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::Line;
    use crate::quantity::{Field, checked};

    #[test]
    fn a_blank_line_misses_its_first_number() {
        let error = missing::<Line>(checked(&Line::blank(), "").unwrap_err());
        assert_eq!((error.code, error.field.as_str()), (Code::Missing, "chain.pitch_mm"));
        assert!(error.to_string().contains("4 to 1000 mm"), "{error}");
    }

    #[test]
    fn a_not_a_number_of_the_user_is_no_blank() {
        assert!(is_blank(NUMBER) && is_blank(i64::MIN as f64) && !is_blank(f64::NAN) && !is_blank(-1.0));
    }
}
