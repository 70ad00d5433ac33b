//! Room: circuit.
