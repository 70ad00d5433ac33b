//! Room: economics.
