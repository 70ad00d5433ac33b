//! Economics: yearly cost, cash flow, payback.

mod result;
mod survey;

pub use result::*;
pub use survey::*;
