//! Fill: how much oil a joint holds from shot to shot, once the line has settled.
//!
//! Takes what a shot puts in, what the joint holds, the loss rate and the waits between shots; gives the mean and the
//! lowest fill, what overflows, the smallest shot that keeps a floor, and the fill that friction should be taken at.
//! Volumes are m³ (or shares of the capacity, if the capacity is given as 1), times s of running time.

mod age;
mod between;
mod block;
mod cycle;
mod demand;
mod periodic;
mod sample;
mod walk;
mod word;
mod words;

pub use crate::numeric::exponential_integral::exponential_integral;
pub use age::{AgeLaw, Waiting};
pub use between::{SingleWait, at_shot, between_shots, mean_between_shots, single_wait};
pub use block::{Block, Totals};
pub use demand::{demand, longest_wait, smallest_shot};
pub use periodic::{PeriodicFill, periodic_fill};

/// What a joint gets and loses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointOil {
    /// Oil that a shot brings into the joint, m³, >= 0.
    pub dose: f64,
    /// Oil that the joint can hold, m³, > 0.
    pub capacity: f64,
    /// Loss rate, 1/s of running time, >= 0.
    pub loss_rate: f64,
    /// Constant loss, m³/s of running time, >= 0; usually 0.
    pub uptake: f64,
}
