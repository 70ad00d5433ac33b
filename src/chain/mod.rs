//! Room: chain.
