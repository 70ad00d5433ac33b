//! What Python gives a log: columns, dates, settings by name; and how stubs name what it gets back.

use super::current_log::CurrentLog;
use crate::error::Result;
use crate::log::evidence::{CurrentLog as Core, LogRow};
use crate::py::border::to_tree;
use crate::py::long::aside;
use crate::py::nouns::{self, classes};
use crate::quantity::{Field, Noun, Place, Row, Value};
use numpy::PyReadonlyArray1;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyModule};

/// An object that Python code looks into first: a table, a column, a date.
pub struct Anything<'py>(pub Bound<'py, PyAny>);

impl<'a, 'py> FromPyObject<'a, 'py> for Anything<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("typing", "Any");
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        Ok(Anything(object.to_owned()))
    }
}

/// What `of` reads in a log beside its line; a log of years takes seconds, so others have Python and Ctrl-C ends the wait.
pub fn read<T: Send + 'static>(
    log: &Bound<'_, CurrentLog>,
    line: Option<Py<classes::Line>>,
    of: impl FnOnce(&Core, Option<&crate::line::Line>) -> Result<T> + Send + 'static,
) -> PyResult<T> {
    let (py, log) = (log.py(), log.clone().unbind());
    aside(py, move || of(&log.get().0, line.as_ref().map(|line| &line.get().0)))
}

/// An object whose Python type says less than this hint.
macro_rules! hinted {
    ($($(#[doc = $doc:literal])+ $name:ident => $hint:expr;)+) => { $(
        $(#[doc = $doc])+
        pub struct $name<'py>(pub Bound<'py, PyAny>);

        impl<'py> IntoPyObject<'py> for $name<'py> {
            type Target = PyAny;
            type Output = Bound<'py, PyAny>;
            type Error = PyErr;
            #[cfg(feature = "stubs")]
            const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = $hint;
            fn into_pyobject(self, _: Python<'py>) -> PyResult<Self::Output> {
                Ok(self.0)
            }
        }
    )+ };
}
hinted! {
    /// Arrays by name.
    Arrays => pyo3::type_hint_subscript!(
        pyo3::type_hint_identifier!("builtins", "dict"),
        pyo3::type_hint_identifier!("builtins", "str"),
        pyo3::type_hint_identifier!("typing", "Any")
    );
    /// What pickle asks for: a function and its arguments.
    Recipe => pyo3::type_hint_subscript!(
        pyo3::type_hint_identifier!("builtins", "tuple"),
        pyo3::type_hint_identifier!("typing", "Any"),
        pyo3::type_hint_identifier!("typing", "Any")
    );
}

/// The Python module that knows data frames, files and dates.
pub fn reading(py: Python<'_>) -> PyResult<Bound<'_, PyModule>> {
    py.import("pinfilm._reading")
}

/// A date as the core reads it.
pub fn date(py: Python<'_>, given: &Anything<'_>, field: &str) -> PyResult<String> {
    reading(py)?.call_method1("date", (&given.0, field))?.extract()
}

/// A column of numbers; NaN where there is none.
pub fn numbers(py: Python<'_>, name: &str, given: &Anything<'_>) -> PyResult<Vec<f64>> {
    let unit = LogRow::ROWS.iter().find(|row| row.name == name).map_or("", |row| row.unit.spelled);
    let array = reading(py)?.call_method1("numbers", (&given.0, name, unit))?;
    Ok(array.extract::<PyReadonlyArray1<'_, f64>>()?.as_array().to_vec())
}

/// Settings by name, as a noun.
pub fn settings<T: Noun>(given: Option<&Bound<'_, PyDict>>) -> PyResult<T> {
    Ok(T::from_tree(&Value::Table(nouns::changes::<T>(None, given)?).into())?)
}

/// A number by the row that it has in a noun.
pub fn number<T: Noun>(name: &str, given: &Bound<'_, PyAny>) -> PyResult<f64> {
    let row = T::ROWS.iter().find(|row| row.name == name).unwrap_or(&Row::BLANK);
    Ok(f64::read(&to_tree(given, name, Some(row))?, &Place::root(name), row)?)
}
