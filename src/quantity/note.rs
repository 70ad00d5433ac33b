//! What a result says besides its numbers: warnings about validity, cautions for people.

use super::{Row, show};

/// A warning: the number stands, but outside what the model was made for, or it means trouble on the line.
#[derive(Debug, Clone, PartialEq)]
pub struct Note {
    /// Stable code.
    pub code: &'static str,
    /// Dotted path of the quantity it is about.
    pub field: String,
    /// Its value in the unit of the name; NaN where the warning is not about one number.
    pub value: f64,
    /// Its unit.
    pub unit: &'static str,
    /// What would have been usual.
    pub limit: String,
    /// The whole sentence.
    pub message: String,
}

impl PartialEq<str> for Note {
    fn eq(&self, code: &str) -> bool {
        self.code == code
    }
}

/// A caution for people who will stand at the machine.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Caution {
    /// Stable code of the hazard.
    pub code: &'static str,
    /// What to mind, and whose rules decide.
    pub message: String,
}

/// Warnings gathered while a survey is checked and computed.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Notes {
    /// In the order in which they were found.
    pub warnings: Vec<Note>,
}

impl Notes {
    /// Adds a warning about a number.
    pub fn warn(
        &mut self,
        code: &'static str,
        field: impl Into<String>,
        value: f64,
        unit: &'static str,
        limit: impl Into<String>,
        message: impl Into<String>,
    ) {
        self.warnings.push(Note {
            code,
            field: field.into(),
            value,
            unit,
            limit: limit.into(),
            message: message.into(),
        });
    }

    /// Adds the warning that a number is outside its usual range.
    pub fn unusual(&mut self, field: String, value: f64, row: &Row) {
        let limit = row.usual.words(row.unit);
        let message = format!(
            "{field} = {} is outside the usual range ({limit}): check the survey, and read results that depend on it with care",
            show::quantity(value, row.unit)
        );
        self.warn("unusual", field, value, row.unit.label, limit, message);
    }
}
