//! Lubrication: which joints are reached and when, which oil gets into them, how much of it stays, how full they are.
//!
//! Takes numbers of the chain, the oil and the circuit (gaps, viscosities, temperatures with their share of time,
//! articulations, the rotation of a timer) and gives entry times, loss rates, the fill of a joint from shot to shot,
//! and what each method of application puts in and spills. Knows nothing of pull, wear or money.
//!
//! Oil enters by capillarity through the plate gap, leaves by evaporation, oxidation, articulation and water, and is
//! put back by shots whose waits repeat. All times are seconds of running time unless a function says otherwise.

pub mod coverage;
pub mod entry;
pub mod fill;
pub mod loss;
pub mod method;
pub mod point;
mod result;
pub mod rotation;
mod survey;

pub use result::*;
pub use survey::*;
