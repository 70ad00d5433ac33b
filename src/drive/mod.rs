//! The drive: gear, motor, current, and what a current log could see.

mod result;
mod survey;

pub use result::*;
pub use survey::*;
