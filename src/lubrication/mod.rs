//! Room: lubrication.
