//! The joint: contact, film, asperities, friction of pin in bush and bush in roller.

pub mod orbit;
mod result;
pub mod reynolds;
mod survey;

pub use result::*;
pub use survey::*;
