//! The one error type as Python's exceptions, which are defined in `pinfilm.errors`.

use crate::error::{Error, Given, Kind};
use pyo3::prelude::*;

pyo3::import_exception!(pinfilm.errors, InputError);
pyo3::import_exception!(pinfilm.errors, UnitError);
pyo3::import_exception!(pinfilm.errors, TableError);
pyo3::import_exception!(pinfilm.errors, ConvergenceError);
pyo3::import_exception!(pinfilm.errors, PinfilmRangeWarning);
pyo3::import_exception!(pinfilm.errors, PinfilmTableWarning);

/// Imports the exceptions once, so that raising one later cannot fail, whatever surrounds the caller.
pub fn import(py: Python<'_>) -> PyResult<()> {
    py.import("pinfilm.errors")?;
    let _ = (py.get_type::<InputError>(), py.get_type::<UnitError>(), py.get_type::<TableError>());
    let _ = (py.get_type::<ConvergenceError>(), py.get_type::<PinfilmRangeWarning>());
    let _ = py.get_type::<PinfilmTableWarning>();
    Ok(())
}

impl From<Error> for PyErr {
    fn from(error: Error) -> PyErr {
        let message = error.to_string();
        let (text, number) = match *error.value {
            Given::Nothing => (None, None),
            Given::Number(number) => (None, Some(number)),
            Given::Text(ref text) => (Some(text.clone()), None),
        };
        let arguments = (
            message,
            error.code.as_str(),
            error.field.clone(),
            number,
            text,
            error.unit,
            error.limit.clone(),
            error.line,
        );
        match error.kind() {
            Kind::Input => InputError::new_err(arguments),
            Kind::Unit => UnitError::new_err(arguments),
            Kind::Table => TableError::new_err(arguments),
            Kind::Convergence => ConvergenceError::new_err(arguments),
        }
    }
}
