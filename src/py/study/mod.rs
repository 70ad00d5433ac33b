//! Studies across the border: grids, draws, what matters, what readings teach.

mod calibration;
mod columns;
mod distribution;
mod given;
mod grid;
mod hanging;
mod reading;
mod sampling;

pub use calibration::{Calibration, calibrate};
pub use columns::{Columns, Foreign, Gathered};
pub use distribution::Distribution;
pub use grid::sweep;
pub use hanging::{Sensitivity, sensitivity};
pub use reading::Reading;
pub use sampling::{Estimate, Sample, default_uncertainty, sample};
