//! Room: joint.

pub mod orbit;
pub mod reynolds;
