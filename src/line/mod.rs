//! The line: its survey, and `evaluate`, which passes what one room gives to the next.
//!
//! `evaluate.rs` is the page to read first. Each step stands in a file of its own, which turns the survey into the
//! numbers that a room takes and calls it; the formulas are in the rooms. The only fixed point is in `settle.rs`.

mod application;
mod cautions;
mod checked;
mod costing;
mod course;
mod driving;
mod evaluate;
mod explain;
mod growth;
mod oiling;
mod reach;
mod report;
mod result;
mod settle;
mod supplying;
mod survey;
mod warnings;
mod wearing;

pub use evaluate::evaluate;
pub use explain::origin;
pub use growth::Growth;
pub use result::*;
pub use survey::*;
