//! Wear: how much of pin and bush a joint loses, and when the chain is long enough to be replaced.

mod result;
mod survey;

pub use result::*;
pub use survey::*;
