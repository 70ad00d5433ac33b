//! The register of quantities: one row for each public quantity, and everything that is read off that row.
//!
//! A *noun* (a chain, an oil, a result group) is declared once, with [`noun!`](crate::noun): each field names its
//! unit, what it means, its allowed and usual range, its default, its formula and its source. From that one
//! declaration come the struct in public units, its SI twin, reading and writing of surveys, the range errors and
//! warnings, the glossary, the tables that people see, and `explain`.
//!
//! | file | what it holds |
//! |---|---|
//! | `unit` | the units of the border and their conversion to SI: the only place with a factor of 1000 or 273.15 |
//! | `row` | one row of the register, ranges, classes of sources |
//! | `tree` | survey data before it is typed: TOML, JSON, dictionaries, with the line each value stood on |
//! | `field` | how one value is read, checked, written and converted |
//! | `noun` | the declaration macros |
//! | `datum` | one value at a dotted path, in and out, without a whole survey around it |
//! | `blank` | what stands where nothing was given yet |
//! | `explain` | a number that explains itself |
//! | `note` | warnings and cautions |
//! | `argument` | what formulas take and give beyond the surveys and results of lines |
//! | `outcome` | formulas with several results: their names, units and meanings |
//! | `words` | choices that several rooms share |
//! | `spread` | how far a guess may be out |
//! | `show` | values as people read them: numbers, text tables, HTML tables |

mod argument;
pub mod blank;
mod datum;
mod explain;
mod field;
mod note;
mod noun;
mod outcome;
mod row;
pub mod show;
mod spread;
mod tree;
pub mod unit;
mod words;

pub use argument::{ARGUMENTS, default_of, find, named, same};
pub use datum::{Datum, Kind, Put, no_such_path, put_at, registered, row_of, rows_of, steps, value_at};
pub use explain::{Explanation, Ingredient, explain};
pub use field::{Field, Named, Place, Word, nearest};
pub use note::{Caution, Note, Notes, Wording};
pub use noun::{Noun, checked, infinite, missing_word, only_known, only_numbers, unknown_word, word};
pub use outcome::OUTCOMES;
#[cfg(feature = "python")]
pub(crate) use outcome::outcomes;
pub use row::{Class, Range, Row, above, any, at_least, between, up_to};
pub use spread::Spread;
pub use tree::{Lines, Tree, Value};
pub use unit::Unit;
pub use words::{Access, Side};
