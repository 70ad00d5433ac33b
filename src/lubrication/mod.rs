//! Lubrication: which joints are reached and when, what gets in, stays, drips.

pub mod coverage;
mod result;
mod survey;

pub use result::*;
pub use survey::*;
