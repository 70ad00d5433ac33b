//! A watch that takes one reading at a time.

use super::current_log::CurrentLog;
use super::given::{Anything, date, read, settings};
use crate::error::{Code, Error};
use crate::log::evidence::{COVARIATES, LogRow, LogWatch as CoreWatch, LoggedAs, Zone};
use crate::py::nouns::classes;
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// A watch that takes one reading at a time, learnt from a quiet log. Saved as JSON and read back, it goes on as it was.
///
/// Examples
/// --------
/// >>> import numpy as np, pinfilm
/// >>> time = np.datetime64("2025-01-01") + np.arange(60) * np.timedelta64(1, "D")
/// >>> quiet = pinfilm.CurrentLog(
/// ...     time=time, current_a=3.0 + 0.01 * (np.arange(60) * 7 % 10), rules=pinfilm.LogRules(window_h=0)
/// ... )
/// >>> watch = pinfilm.LogWatch.learn(quiet)
/// >>> watch = pinfilm.LogWatch.from_json(watch.to_json())
/// >>> watch.take("2025-03-02", current_a=3.04).alarm
/// False
#[pyclass(module = "pinfilm")]
pub struct LogWatch(CoreWatch);

#[pymethods]
impl LogWatch {
    /// Learn what the line should draw from all of a log, a quiet period of 30 means or more.
    #[staticmethod]
    #[pyo3(signature = (quiet, /, *, line = None))]
    fn learn(quiet: &Bound<'_, CurrentLog>, line: Option<Py<classes::Line>>) -> PyResult<Self> {
        Ok(LogWatch(read(quiet, line, CoreWatch::learn)?))
    }

    /// Take one reading, later than the last, in the unit that the watch was learnt in.
    ///
    /// Parameters
    /// ----------
    /// time : date, datetime or str
    ///     When; without an offset by the clock of the log.
    /// started : bool
    ///     Whether the line was started since the reading before.
    /// **row
    ///     Names of `LogRow`: `current_a` or `power_kw`, and every covariate that the watch knows.
    ///
    /// Returns
    /// -------
    /// WatchStep
    ///
    /// Raises
    /// ------
    /// InputError
    ///     For a reading that is no number, not later than the last, or without what the watch knows; the watch stays as it
    ///     was.
    #[pyo3(signature = (time, /, *, started = false, **row: "object"))]
    fn take(
        &mut self,
        py: Python<'_>,
        time: Anything<'_>,
        started: bool,
        row: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<classes::WatchStep> {
        let row: LogRow = settings(row)?;
        let logged = self.0.logged()?;
        let given = match logged {
            LoggedAs::Current => row.current_a,
            LoggedAs::Power => row.power_kw,
        };
        let reading = given.ok_or_else(|| {
            let name = logged.as_str();
            Error::new(Code::Missing, name, format!("{name} is missing: this watch was learnt from it"))
        })?;
        let beside = [row.load_pct, row.load_kg_per_m, row.speed_m_per_min, row.temperature_c];
        let covariates: Vec<(&str, f64)> =
            COVARIATES.into_iter().zip(beside).filter_map(|(name, value)| Some((name, value?))).collect();
        let zone = Zone::named(self.0.time_zone.as_deref())?;
        let time = zone.moment(&date(py, &time, "time")?, "time")?.from;
        Ok(classes::WatchStep(self.0.take(time, reading, &covariates, started)?))
    }

    /// Put the charts back to nothing, after an alarm was dealt with; the baseline stays.
    fn reset(&mut self) {
        self.0.reset();
    }
    /// What it reads: ``"current_a"`` or ``"power_kw"``.
    #[getter]
    fn logged(&self) -> &str {
        &self.0.logged
    }
    /// Names of the covariates that every reading needs.
    #[getter]
    fn covariates(&self) -> Vec<String> {
        self.0.covariates.clone()
    }
    /// Threshold of the CUSUM.
    #[getter]
    fn threshold(&self) -> f64 {
        self.0.watch.settings.threshold
    }
    /// As JSON text, with all that it has seen.
    fn to_json(&self) -> PyResult<String> {
        Ok(self.0.to_json()?)
    }
    /// From JSON text as `to_json` gives it.
    #[staticmethod]
    fn from_json(text: &str) -> PyResult<Self> {
        Ok(LogWatch(CoreWatch::from_json(text)?))
    }
    fn __repr__(&self) -> String {
        let seen = self.0.watch.seen.len();
        format!("<LogWatch {:?}: {} with {seen} readings in sight>", self.0.name, self.0.logged)
    }
    fn _repr_html_(&self) -> String {
        crate::quantity::show::html_text(&self.__repr__())
    }
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.cast::<Self>().is_ok_and(|other| other.try_borrow().is_ok_and(|other| other.0 == self.0))
    }
    fn __copy__(&self) -> Self {
        LogWatch(self.0.clone())
    }
    fn __deepcopy__(&self, _memo: &Bound<'_, PyAny>) -> Self {
        LogWatch(self.0.clone())
    }
    fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<(Bound<'py, PyAny>, (String,))> {
        Ok((slf.get_type().getattr("from_json")?, (slf.try_borrow()?.to_json()?,)))
    }
}
