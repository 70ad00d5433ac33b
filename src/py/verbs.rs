//! What Python can ask for: `evaluate`, `compare`, and questions about their results.

use pyo3::prelude::*;

/// The version of the compiled core.
#[pyfunction]
pub fn version() -> &'static str {
    env!("CARGO_PKG_VERSION")
}
