//! Draws: rows of uncertain inputs that depend on their row number and the seed alone.

mod beta; // the beta distribution
mod copula; // correlated inputs
mod distribution; // the kinds and their inverse distribution functions
mod normal; // the standard normal and its inverse
mod philox; // counter-based random numbers
mod plan; // inputs, correlation, generator, seed → rows
mod sobol; // evenly spread points

pub use copula::Correlation;
pub use distribution::Distribution;
pub use normal::{normal_cdf, normal_quantile};
pub(super) use philox::key;
pub use philox::philox4x32;
pub use plan::{Generator, Input, Plan};
pub use sobol::{MOST_DIMENSIONS, Net, unit};
