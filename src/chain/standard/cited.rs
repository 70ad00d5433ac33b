//! A number with its source.

use std::borrow::Cow;
use std::fmt;

/// How well a number of the tables is founded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Class {
    /// Read in the source named.
    Read,
    /// Remembered from the standard named; check it before you rely on it.
    FromMemory,
    /// Computed from other values of the standard.
    Derived,
    /// Chosen by the user where the standard leaves the choice.
    Chosen,
}

impl Class {
    /// As it is printed, and as the tables write it.
    pub const fn as_str(self) -> &'static str {
        match self {
            Class::Read => "read",
            Class::FromMemory => "from memory",
            Class::Derived => "derived",
            Class::Chosen => "chosen",
        }
    }

    pub(super) fn parse(text: &str) -> Option<Self> {
        [Class::Read, Class::FromMemory, Class::Derived, Class::Chosen].into_iter().find(|class| class.as_str() == text)
    }
}

impl fmt::Display for Class {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.as_str())
    }
}

/// A value in SI, how it is founded and where it comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct Cited {
    /// The value: m, N or kg/m.
    pub value: f64,
    /// Read, from memory, derived or chosen.
    pub class: Class,
    /// Standard and table, or the work in which it was read.
    pub source: Cow<'static, str>,
}

impl Cited {
    /// Computed from this and others; `how` says in what way.
    pub(super) fn derived(&self, value: f64, how: &str) -> Self {
        Cited { value, class: Class::Derived, source: format!("{how}; {}", self.source).into() }
    }

    /// The same number and class with a remark on what it stands for.
    pub(super) fn remark(self, remark: &str) -> Self {
        Cited { source: format!("{remark}; {}", self.source).into(), ..self }
    }
}
