//! Studies of lines: draws, grids and readings joined to `evaluate` and `compare`.
//!
//! Everything that is computed here is computed by [`Subject::outcome`], which is `evaluate` for a line and `compare` for a
//! pair. What is uncertain about a line ([`default_uncertainty`]) comes from the register: each row says how far its guess
//! may be out. A pair shares its draws: what is the same on both sides is one number, drawn once.

mod doubt; // spread of a row and the value of a line → distribution
mod matters; // which input the outcome hangs on
mod outputs; // numbers read from a result
mod sample; // draws → percentiles, probability, what could not be computed
mod subject; // a line, or a line now and proposed
mod sweep; // a grid of inputs
mod teach; // readings of a line → what they teach

mod uncertain; // paths, distributions, sides → rows of lines
mod usual; // what is uncertain by default

pub use doubt::about;
pub use matters::{Matters, Swing, what_matters};
pub use outputs::{Outputs, headlines};
pub use sample::{Failure, Sample, SampleSettings, sample};
pub use subject::{Outcome, Side, Subject};
pub use sweep::{Axis, Cell, Column, Sweep, sweep};
pub use teach::{
    CAREFUL_READING_PCT, LEARNABLE, Quantiles, Reading, Taught, TeachSettings, calibrate_line, learnable, running_hours,
};

pub use uncertain::{Doubt, Uncertain};
pub use usual::{default_correlation, default_uncertainty};
