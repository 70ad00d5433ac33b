//! One row of the register.

use super::Spread;
use super::unit::{self, Unit};

/// How well a value or relation is founded, as people should see it beside every number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Class {
    /// Read in the named source.
    Read,
    /// Derived in closed form, or a definition.
    Derived,
    /// A standard or book, remembered and not read.
    FromMemory,
    /// What the trade does; nobody published it.
    CommonPractice,
    /// A relation of our own where none is published; wide spread.
    Closure,
    /// What the user measured or chose.
    Survey,
}

impl Class {
    /// As it is printed.
    pub const fn as_str(self) -> &'static str {
        match self {
            Class::Read => "read",
            Class::Derived => "derived",
            Class::FromMemory => "from memory",
            Class::CommonPractice => "common practice, no source",
            Class::Closure => "closure of our own",
            Class::Survey => "from the survey",
        }
    }
}

/// A range of numbers in the unit of the name.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range {
    /// Least value.
    pub low: f64,
    /// Greatest value.
    pub high: f64,
    /// Whether the least value itself is outside.
    pub open_low: bool,
}

impl Range {
    /// Whether a finite number lies inside.
    #[inline]
    pub fn holds(&self, value: f64) -> bool {
        value <= self.high && if self.open_low { value > self.low } else { value >= self.low }
    }

    /// In words, with the unit: `above 0 mm`, `4 to 1000 mm`.
    pub fn words(&self, unit: &Unit) -> String {
        let unit = if unit.label.is_empty() { String::new() } else { format!(" {}", unit.label) };
        match (self.low > f64::NEG_INFINITY, self.high < f64::INFINITY, self.open_low) {
            (false, false, _) => format!("any number{unit}"),
            (false, true, _) => format!("at most {}{unit}", self.high),
            (true, false, true) => format!("above {}{unit}", self.low),
            (true, false, false) => format!("at least {}{unit}", self.low),
            (true, true, true) => format!("above {} and at most {}{unit}", self.low, self.high),
            (true, true, false) => format!("{} to {}{unit}", self.low, self.high),
        }
    }
}

/// Any finite number.
pub const fn any() -> Range {
    Range { low: f64::NEG_INFINITY, high: f64::INFINITY, open_low: false }
}
/// More than `low`.
pub const fn above(low: f64) -> Range {
    Range { low, high: f64::INFINITY, open_low: true }
}
/// `low` or more.
pub const fn at_least(low: f64) -> Range {
    Range { low, high: f64::INFINITY, open_low: false }
}
/// From `low` to `high`, both allowed.
pub const fn between(low: f64, high: f64) -> Range {
    Range { low, high, open_low: false }
}
/// More than `low`, up to `high`.
pub const fn up_to(low: f64, high: f64) -> Range {
    Range { low, high, open_low: true }
}

/// One public quantity: everything that is said of it anywhere is said here.
#[derive(Debug, Clone, Copy)]
pub struct Row {
    /// The public name, carrying its unit.
    pub name: &'static str,
    /// The trade's plain name of the same quantity in SI.
    pub plain: &'static str,
    /// The symbol of formulas and plots; empty where the name says enough.
    pub symbol: &'static str,
    /// Its unit.
    pub unit: &'static Unit,
    /// What it means, in one line.
    pub means: &'static str,
    /// Outside: an error.
    pub allowed: Range,
    /// Outside: a warning.
    pub usual: Range,
    /// How a result is computed. Names in braces are paths of the register; `explain` puts the numbers in their place.
    pub formula: &'static str,
    /// Where the relation, or the default of an input, comes from.
    pub source: &'static str,
    /// How well that is founded.
    pub class: Class,
    /// How far the value of a line may be out, as a practitioner would spread it.
    pub spread: Spread,
    /// Above this the number says nothing more than that it is above: people are shown `over 50`.
    pub ceiling: f64,
    /// Whether tables leave it out, because it is kept for reference only.
    pub aside: bool,
    /// The default as it is written in code; empty for inputs that must be given, and for results.
    pub default: &'static str,
}

impl Row {
    /// What a row says where the declaration is silent.
    pub const BLANK: Row = Row {
        name: "",
        plain: "",
        symbol: "",
        unit: &unit::ONE,
        means: "",
        allowed: any(),
        usual: any(),
        formula: "",
        source: "",
        class: Class::Survey,
        spread: Spread::Unstated,
        ceiling: f64::INFINITY,
        aside: false,
        default: "",
    };
}
