//! The oil: viscosity, density, pressure, blends, what a survey says of it.

mod survey;

pub use survey::*;
