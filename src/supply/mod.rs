//! The supply: line, pump, reservoir, 24 V cable.

mod result;
mod survey;

pub use result::*;
pub use survey::*;
