//! A log is a value: equal, hashable, copied and pickled bit by bit.

use super::current_log::CurrentLog;
use super::given::{Recipe, reading};
use crate::py::nouns::classes;
use numpy::PyArray1;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};
use std::hash::{DefaultHasher, Hash, Hasher};

#[pymethods]
impl CurrentLog {
    fn __len__(&self) -> usize {
        self.0.stamps.len()
    }
    fn __repr__(&self) -> String {
        let beside: Vec<&str> = self.0.covariates.iter().map(|x| x.name).collect();
        let beside = if beside.is_empty() { String::new() } else { format!(" with {}", beside.join(", ")) };
        format!("<CurrentLog {:?}: {} rows of {}{beside}>", self.0.name, self.0.stamps.len(), self.0.logged.as_str())
    }
    fn _repr_html_(&self) -> String {
        crate::quantity::show::html_text(&self.__repr__())
    }
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        // NaN for NaN, so bit by bit
        let same =
            |a: &[f64], b: &[f64]| a.len() == b.len() && a.iter().zip(b).all(|(a, b)| a.to_bits() == b.to_bits());
        other.cast::<Self>().is_ok_and(|other| {
            let (a, b) = (&self.0, &other.get().0);
            let columns = || a.covariates.iter().zip(&b.covariates);
            (&a.name, &a.stamps, a.aware, &a.time_zone, a.logged, &a.running, &a.rules)
                == (&b.name, &b.stamps, b.aware, &b.time_zone, b.logged, &b.running, &b.rules)
                && same(&a.readings, &b.readings)
                && a.covariates.len() == b.covariates.len()
                && columns().all(|(a, b)| a.name == b.name && same(&a.values, &b.values))
        })
    }
    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        (&self.0.name, &self.0.stamps, self.0.logged.as_str()).hash(&mut hasher);
        self.0.readings.iter().for_each(|reading| reading.to_bits().hash(&mut hasher));
        hasher.finish()
    }
    fn __copy__(&self) -> Self {
        CurrentLog(self.0.clone())
    }
    fn __deepcopy__(&self, _memo: &Bound<'_, PyAny>) -> Self {
        CurrentLog(self.0.clone())
    }
    fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<Recipe<'py>> {
        let (py, log) = (slf.py(), &slf.get().0);
        let columns = PyDict::new(py);
        let time = PyArray1::from_slice(py, &log.stamps).call_method1("view", ("datetime64[ns]",))?;
        columns.set_item("time", (time, log.aware))?;
        columns.set_item(log.logged.as_str(), PyArray1::from_slice(py, &log.readings))?;
        for column in &log.covariates {
            columns.set_item(column.name, PyArray1::from_slice(py, &column.values))?;
        }
        if let Some(running) = &log.running {
            columns.set_item("running", PyArray1::from_slice(py, running))?;
        }
        columns.set_item("time_zone", log.time_zone.as_deref())?;
        columns.set_item("rules", Py::new(py, classes::LogRules(log.rules.clone()))?)?;
        columns.set_item("name", &log.name)?;
        let parts = [reading(py)?.getattr("remade")?, PyTuple::new(py, [columns])?.into_any()];
        Ok(Recipe(PyTuple::new(py, parts)?.into_any()))
    }
}
