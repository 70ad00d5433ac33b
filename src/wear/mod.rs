//! Room: wear.
