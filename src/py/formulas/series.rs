//! Formulas over a series of readings in the order of time.

use super::given::{Argument, Given, Values};
use super::spread::{labelled, whole};
use crate::error::{Code, Error};
use crate::quantity::Row;
use numpy::PyArray1;
use pyo3::prelude::*;
use pyo3::types::PyFloat;

/// Readings along one axis, all known.
pub struct Series<'py> {
    /// The readings in SI.
    pub values: Vec<f64>,
    argument: Argument<'py>,
}

impl<'py> Series<'py> {
    /// Reads at least `least` readings.
    pub fn read(given: &Given<'py>, row: &'static Row, least: usize) -> PyResult<Self> {
        let mut argument = Argument::read(given, row)?;
        let name = row.name;
        let (values, axes) = match std::mem::replace(&mut argument.values, Values::Absent) {
            Values::Many { values, shape } => (values, shape.len()),
            _ => (Vec::new(), 0),
        };
        if axes != 1 {
            let message = format!("{name} must be readings along one axis, in the order of time, but has {axes} axes");
            return Err(Error::new(Code::WrongType, name, message).limit("a list of numbers").into());
        }
        if let Some(at) = values.iter().position(|value| value.is_nan()) {
            let message = format!("{name}[{at}] is not a finite number: leave such rows out, with their covariates");
            return Err(Error::new(Code::NotFinite, name, message).number(f64::NAN).into());
        }
        if values.len() < least {
            let limit = format!("at least {least} readings");
            let message = format!("{name} has {} readings, but this needs {limit}", values.len());
            return Err(Error::new(Code::Missing, name, message).limit(limit).into());
        }
        Ok(Series { values, argument })
    }

    /// Refuses a partner of another length.
    pub fn fits(&self, other: &Series<'_>) -> PyResult<()> {
        let ([mine, theirs], [a, b]) =
            ([self, other].map(|series| series.values.len()), [self, other].map(|series| series.argument.row.name));
        if mine == theirs {
            return Ok(());
        }
        let message = format!("{a} has {mine} readings and {b} has {theirs}: give one of each for every row");
        Err(Error::new(Code::Inconsistent, b, message).limit(format!("{mine} readings")).into())
    }

    /// A result for every reading, labelled as the readings were.
    pub fn like(&self, py: Python<'py>, values: Vec<f64>) -> PyResult<Bound<'py, PyAny>> {
        let shape = [values.len()];
        labelled(PyArray1::from_vec(py, values).into_any(), &shape, std::slice::from_ref(&self.argument))
    }
}

/// A single number in SI.
pub fn number(given: &Given<'_>, row: &'static Row) -> PyResult<f64> {
    match Argument::read(given, row)?.values {
        Values::One(value) => Ok(value),
        _ => {
            let message = format!("{} must be a single number here", row.name);
            Err(Error::new(Code::WrongType, row.name, message).limit("a number").into())
        }
    }
}

/// A count.
pub fn count(given: &Given<'_>, row: &'static Row) -> PyResult<usize> {
    Ok(whole(row.name, number(given, row)?)? as usize)
}

/// A number in the unit of its row.
pub fn float<'py>(py: Python<'py>, row: &Row, value: f64) -> Bound<'py, PyAny> {
    PyFloat::new(py, row.unit.from_si(value)).into_any()
}
