//! Room: joint.

pub mod reynolds;
