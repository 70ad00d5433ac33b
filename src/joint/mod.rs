//! Room: joint.
