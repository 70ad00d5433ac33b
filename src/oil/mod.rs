//! The oil: viscosity, density, pressure, blends, what a survey says of it.

mod survey;

pub use survey::{Oil, OilSi};
pub(crate) use survey::{consistent, oil_noun};
