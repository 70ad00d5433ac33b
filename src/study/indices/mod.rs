//! Indices of sensitivity: how much of the spread of an outcome comes from which input, and which is worth measuring.
//!
//! [`Design`] says which rows to compute, [`Indices::of`] what their outcomes mean; [`sensitivity`] does both for one
//! function. Between the two any engine may compute the rows, and many outcomes can share them.

mod design; // rows to compute
mod estimate; // outcomes → indices
mod linear; // small spreads: slopes are enough

pub use design::Design;
pub use estimate::{Indices, over_shifts, sensitivity};
pub use linear::variance_shares;
