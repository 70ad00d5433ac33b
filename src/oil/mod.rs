//! Room: oil.
