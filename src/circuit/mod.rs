//! The circuit: straights and turns, tension march, joint timeline, temperature round the loop.

mod result;
mod survey;

pub use result::*;
pub use survey::*;
