//! The line: its survey and `evaluate`.

mod survey;

pub use survey::*;
