//! Studies of a line: each calls the same `evaluate`.
//!
//! `compare` sets a line as it is against the same line as proposed: savings item by item, payback, net present value.

mod compare;

pub use compare::*;
