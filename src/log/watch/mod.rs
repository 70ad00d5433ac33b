//! Watch: a chart of how far the line is from what it should draw, with a known rate of false alarms.
//!
//! A baseline says what the line draws at a given load; the share by which a reading is above it, freed from its
//! likeness to the one before, goes into two charts: a CUSUM, which gives the alarm, and an EWMA, for the eye. A limit
//! from a table holds for a baseline that is known; one learnt from 60 days needs a wider one, which [`widened_threshold`]
//! gives. An alarm comes with what it looks like: running dry, more load, drag at idle, something mechanical; without
//! a load signal it is always ambiguous, and said to be.

mod baseline; // what the line should draw; residual and innovation
mod cause; // what an alarm looks like
mod charts; // CUSUM and EWMA
mod oil_use; // oil drawn against oil dispensed
mod run_length; // readings until an alarm, by integral equation
mod settings; // allowance, thresholds, window
mod stream; // one reading at a time, saved and resumed
mod threshold; // limits for a baseline learnt from few days

pub use baseline::Baseline;
pub use cause::{Cause, Seen, cause};
pub use charts::{Cusum, CusumPath, Ewma, cusum_path};
pub use oil_use::{OilUse, oil_use, oil_use_z};
pub use run_length::{
    cusum_run_length, cusum_run_length_two_sided, cusum_threshold, ewma_run_length, siegmund_run_length,
};
pub use settings::Settings;
pub use stream::{Alarm, Log, Reading, Step, Watch, follow_all};
pub use threshold::widened_threshold;
