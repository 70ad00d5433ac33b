//! A number with its source.

use crate::quantity::Class;
use std::borrow::Cow;

/// The class that a table's word stands for.
pub(super) fn class(text: &str) -> Option<Class> {
    match text {
        "read" => Some(Class::Read),
        "from memory" => Some(Class::FromMemory),
        "derived" => Some(Class::Derived),
        _ => None,
    }
}

/// A value in SI, how it is founded and where it comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct Cited {
    /// The value: m, N or kg/m.
    pub value: f64,
    /// How well it is founded.
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
