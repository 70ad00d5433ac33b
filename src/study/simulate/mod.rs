//! A line walked through its weeks, joint by joint: shifts, stops, changes of speed, a timer on either clock.
//!
//! Takes a survey and a timetable, gives the shots and the longest dry time of every joint, the waits, the oil used and
//! what the closed form says of the same line. The closed form assumes one speed and a clock that stops with the chain;
//! here nothing is assumed but the timetable.

mod result; // what became of the joints, under public names
mod timetable; // shifts of a week → stretches of time at one speed
mod walk; // a survey's timer, counter and chain → the event simulator

pub use result::*;
#[cfg(feature = "python")]
pub(crate) use timetable::shift_noun;
pub use timetable::{Shift, ShiftSi, usual_week};
pub use walk::{SimulateOptions, simulate};
