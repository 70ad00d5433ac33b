//! The joint: contact, film, asperities, friction of pin in bush and bush in roller.

mod result;
mod survey;

pub use result::*;
pub use survey::*;
