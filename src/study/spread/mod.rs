//! Spread: what a column of outcomes says, and how sure it is of that itself.
//!
//! An outcome without a number, such as a payback that never comes, is +∞: it sorts last, and a percentile that lands on
//! it is +∞ (`never`).

mod nets; // several shifted nets → value and error
mod quantile; // percentiles and the ranks that enclose them
mod share; // probability of an outcome, with its interval

pub use nets::{Estimate, NETS, mean_of_nets, quantile_over_nets, share_over_nets};
pub use quantile::{Ranks, enclosing_ranks, quantile, sorted};
pub use share::{Share, share_within};
