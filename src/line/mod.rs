//! The line: its survey, and `evaluate`, which passes what one room gives to the next.
//!
//! `evaluate.rs` is the page to read first. Each step stands in a file of its own, which turns the survey into the
//! numbers that a room takes and calls it; the formulas are in the rooms. The only fixed point is in `settle.rs`.

mod application;
mod blame;
mod blank;
mod cautions;
mod checked;
mod computed;
mod costing;
mod course;
pub mod curves;
mod driving;
mod evaluate;
mod explain;
mod growth;
mod joint_orbit;
mod oiling;
mod reach;
mod report;
mod result;
mod settle;
mod starting;
mod supplying;
mod survey;
mod warnings;
mod wearing;

pub use blank::blank_survey;
pub use computed::{Computed, Numbers};
pub use driving::DriveTrain;
pub use evaluate::{computed, evaluate, evaluate_in_brief};
pub use explain::origin;
pub use growth::Growth;
pub use joint_orbit::*;
pub use result::*;
pub use survey::*;
