//! What a result says besides its numbers: warnings about validity, cautions for people.

use super::field::Word;
use super::{Row, show};
use std::borrow::Cow;
use std::fmt;

/// A warning: the number stands, but outside what the model was made for, or it means trouble on the line.
#[derive(Debug, Clone, PartialEq)]
pub struct Note {
    /// Stable code.
    pub code: &'static str,
    /// Dotted path of the quantity it is about.
    pub field: Word,
    /// Its value in the unit of the name; NaN where the warning is not about one number.
    pub value: f64,
    /// Its unit.
    pub unit: &'static str,
    /// What would have been usual; empty where no sentences are asked for.
    pub limit: Word,
    /// The whole sentence; empty where none is asked for.
    pub message: Word,
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

/// Text of a warning, which is put together only where somebody will read it.
pub trait Wording {
    /// The text.
    fn text(self) -> Word;
}

impl Wording for &'static str {
    fn text(self) -> Word {
        Cow::Borrowed(self)
    }
}

impl Wording for fmt::Arguments<'_> {
    fn text(self) -> Word {
        self.as_str().map_or_else(|| Cow::Owned(fmt::format(self)), Cow::Borrowed)
    }
}

/// A number of a survey outside its usual range.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Unusual {
    value: f64,
    limits: super::Range,
    unit: &'static super::Unit,
}

/// Warnings gathered while a survey is checked and computed.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Notes {
    /// In the order in which they were found.
    pub warnings: Vec<Note>,
    unusual: Vec<(String, Unusual)>,
    /// Whether limits and sentences are left out: many lines are computed and nobody reads the text.
    codes_only: bool,
}

impl Notes {
    /// Begins the warnings about a line with what was unusual in its survey.
    pub fn about(survey: &Notes, codes_only: bool) -> Notes {
        let mut notes = Notes { codes_only, ..Notes::default() };
        for (field, unusual) in &survey.unusual {
            let limit = unusual.limits.words(unusual.unit);
            notes.warn(
                "unusual",
                Cow::Owned(field.clone()),
                unusual.value,
                unusual.unit.label,
                format_args!("{limit}"),
                format_args!(
                    "{field} = {} is outside the usual range ({limit}): check the survey, and read results that depend on it with care",
                    show::quantity(unusual.value, unusual.unit)
                ),
            );
        }
        notes
    }

    /// Adds a warning about a number.
    pub fn warn(
        &mut self,
        code: &'static str,
        field: impl Into<Word>,
        value: f64,
        unit: &'static str,
        limit: impl Wording,
        message: impl Wording,
    ) {
        let (limit, message) =
            if self.codes_only { (Word::default(), Word::default()) } else { (limit.text(), message.text()) };
        self.warnings.push(Note { code, field: field.into(), value, unit, limit, message });
    }

    /// Remembers that a number of the survey is outside its usual range.
    pub fn unusual(&mut self, field: String, value: f64, row: &Row) {
        self.unusual.push((field, Unusual { value, limits: row.usual, unit: row.unit }));
    }
}
