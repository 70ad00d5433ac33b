//! The chain: standard tables, pitch geometry, what a survey says of it.

mod survey;

pub use survey::*;
