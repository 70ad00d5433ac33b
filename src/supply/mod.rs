//! Room: supply.
