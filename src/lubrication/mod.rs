//! Lubrication: which joints are reached and when, what gets in, what stays, what drips.

pub mod coverage;
