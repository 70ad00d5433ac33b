//! A log of a drive: columns in, from arrays, data frames and files.

use super::given::{Anything, numbers, reading};
use crate::error::{Code, Error};
use crate::log::evidence::{COVARIATES, Covariate, CurrentLog as Core, LogRules, LoggedAs};
use crate::py::nouns::classes;
use crate::quantity::{Noun, Tree};
use numpy::PyReadonlyArray1;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyType};

/// A log of a drive's current or power, as a plant has it: columns of equal length in the order of the file.
///
/// Parameters
/// ----------
/// time : array_like
///     Time stamps: NumPy or pandas dates, `datetime` objects, ISO text. With offsets, or without: then by a clock on
///     the wall, whose zone `time_zone` names.
/// current_a, power_kw : array_like
///     One of the two; power is the better witness and is used where both are given. NaN is counted as unreadable.
/// load_pct, load_kg_per_m, speed_m_per_min, temperature_c : array_like, optional
///     What the reading follows, where it was logged.
/// running : array_like of bool, optional
///     Whether the line ran.
/// time_zone : str, optional
///     IANA name such as ``"Europe/Vienna"``: the zone of the clock, whose days and hours the means follow. Not given: that
///     of a pandas or polars column with a zone, else UTC. Without it, and without offsets, jumps of an hour are found and
///     mended.
/// rules : LogRules, optional
///     How to clean.
/// name : str
///     What to call it.
///
/// Raises
/// ------
/// InputError
///     For columns of unlike length, an unknown time zone, stamps of which only some have an offset.
/// TableError
///     For a column that cannot be read as numbers or dates.
///
/// Examples
/// --------
/// >>> import numpy as np, pinfilm
/// >>> time = np.datetime64("2025-01-01") + np.arange(60) * np.timedelta64(1, "D")
/// >>> current = np.where(np.arange(60) < 30, 3.0, 2.8) + 0.01 * (np.arange(60) * 7 % 10)
/// >>> log = pinfilm.CurrentLog(time=time, current_a=current, rules=pinfilm.LogRules(window_h=0))
/// >>> round(log.before_after("2025-01-31").saving_pct, 1)
/// 6.5
#[pyclass(frozen, module = "pinfilm")]
pub struct CurrentLog(pub Core);

#[pymethods]
impl CurrentLog {
    #[new]
    #[pyo3(signature = (
        *, time, current_a = None, power_kw = None, load_pct = None, load_kg_per_m = None, speed_m_per_min = None,
        temperature_c = None, running = None, time_zone = None, rules = None, name = None
    ))]
    #[allow(clippy::too_many_arguments)]
    fn new(
        py: Python<'_>,
        time: Anything<'_>,
        current_a: Option<Anything<'_>>,
        power_kw: Option<Anything<'_>>,
        load_pct: Option<Anything<'_>>,
        load_kg_per_m: Option<Anything<'_>>,
        speed_m_per_min: Option<Anything<'_>>,
        temperature_c: Option<Anything<'_>>,
        running: Option<Anything<'_>>,
        time_zone: Option<String>,
        rules: Option<&classes::LogRules>,
        name: Option<String>,
    ) -> PyResult<Self> {
        let time_zone = match time_zone {
            Some(zone) => Some(zone),
            None => reading(py)?.call_method1("zone_of", (&time.0,))?.extract()?,
        };
        let stamps = reading(py)?.call_method1("time_stamps", (&time.0,))?;
        let (stamps, aware): (PyReadonlyArray1<'_, i64>, bool) = stamps.extract()?;
        let (logged, readings) = match (power_kw, current_a) {
            (Some(power), _) => (LoggedAs::Power, numbers(py, "power_kw", &power)?),
            (None, Some(current)) => (LoggedAs::Current, numbers(py, "current_a", &current)?),
            (None, None) => {
                let message = "neither current_a nor power_kw is given: a log needs one of them, power where you can";
                return Err(Error::new(Code::Missing, "current_a", message).into());
            }
        };
        let given = COVARIATES.into_iter().zip([load_pct, load_kg_per_m, speed_m_per_min, temperature_c]);
        let covariates = given
            .filter_map(|(name, column)| {
                let column = column?;
                Some(numbers(py, name, &column).map(|values| Covariate { name, values }))
            })
            .collect::<PyResult<Vec<Covariate>>>()?;
        let running = match running {
            Some(column) => {
                let flags = reading(py)?.call_method1("flags", (&column.0, "running"))?;
                Some(flags.extract::<PyReadonlyArray1<'_, bool>>()?.as_array().to_vec())
            }
            None => None,
        };
        let rules = match rules {
            Some(rules) => rules.0.clone(),
            None => LogRules::from_tree(&Tree::EMPTY)?,
        };
        let log = Core {
            name: name.unwrap_or_default(),
            stamps: stamps.as_array().to_vec(),
            aware,
            time_zone,
            logged,
            readings,
            covariates,
            running,
            rules,
        };
        Ok(CurrentLog(log.checked()?))
    }

    /// Read a log from a table or a file.
    ///
    /// Parameters
    /// ----------
    /// source : mapping of arrays, pandas or polars frame, object with `__arrow_c_stream__`, or path of a CSV or Parquet file
    ///     Files and Arrow need polars: ``pip install pinfilm[log]``.
    /// columns : mapping of str to str, optional
    ///     The name that a column has in the source, by the name that it has here: ``{"time": "Zeit", "current_a": "I1"}``.
    ///     Others are read where the source has them under the names of `CurrentLog`.
    /// time_format : str, optional
    ///     How stamps of a CSV file are written, such as ``"%m/%d/%Y %H:%M"``, where that is not plain.
    /// time_zone, rules, name
    ///     As `CurrentLog` takes them.
    ///
    /// Raises
    /// ------
    /// TableError
    ///     For a source without the columns, or one that cannot be read; it names what the source has.
    ///
    /// Examples
    /// --------
    /// >>> import pinfilm
    /// >>> log = pinfilm.CurrentLog.read({"when": ["2025-01-01", "2025-01-02"], "current_a": [2.9, 3.0]}, columns={"time": "when"})
    /// >>> len(log)
    /// 2
    #[classmethod]
    #[pyo3(signature = (source, *, columns = None, time_format = None, time_zone = None, rules = None, name = None))]
    #[allow(clippy::too_many_arguments)]
    fn read<'py>(
        class: &Bound<'py, PyType>,
        source: Anything<'py>,
        columns: Option<Anything<'py>>,
        time_format: Option<String>,
        time_zone: Option<String>,
        rules: Option<Bound<'py, classes::LogRules>>,
        name: Option<String>,
    ) -> PyResult<Py<CurrentLog>> {
        let py = class.py();
        let columns = columns.map(|columns| columns.0);
        let found = reading(py)?.call_method1("columns", (source.0, columns, time_format))?.cast_into::<PyDict>()?;
        if let Some(zone) = time_zone {
            found.set_item("time_zone", zone)?;
        }
        found.set_item("rules", rules)?;
        if let Some(name) = name {
            found.set_item("name", name)?;
        }
        Ok(class.call((), Some(&found))?.cast_into::<CurrentLog>()?.unbind())
    }

    /// What it is called.
    #[getter]
    fn name(&self) -> &str {
        &self.0.name
    }
    /// What was logged: ``"current_a"`` or ``"power_kw"``.
    #[getter]
    fn logged(&self) -> &'static str {
        self.0.logged.as_str()
    }
    /// IANA name of the zone of its clock.
    #[getter]
    fn time_zone(&self) -> Option<&str> {
        self.0.time_zone.as_deref()
    }
    /// Names of what is logged beside the reading.
    #[getter]
    fn covariates(&self) -> Vec<&'static str> {
        self.0.covariates.iter().map(|x| x.name).collect()
    }
    /// How it is cleaned.
    #[getter]
    fn rules(&self) -> classes::LogRules {
        classes::LogRules(self.0.rules.clone())
    }

    /// The same log cleaned by other rules, in another zone, or under another name.
    #[pyo3(signature = (*, rules = None, time_zone = None, name = None))]
    fn replace(
        &self,
        rules: Option<&classes::LogRules>,
        time_zone: Option<String>,
        name: Option<String>,
    ) -> PyResult<Self> {
        let mut log = self.0.clone();
        if let Some(rules) = rules {
            log.rules = rules.0.clone();
        }
        log.time_zone = time_zone.or(log.time_zone);
        log.name = name.unwrap_or(log.name);
        Ok(CurrentLog(log.checked()?))
    }
}
