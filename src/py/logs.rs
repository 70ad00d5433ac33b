//! Current logs across the border: columns in, verdicts out, a watch that takes one reading at a time.

use super::border::{Given, to_tree};
use super::long::aside;
use super::nouns::{self, classes};
use crate::error::{Code, Error, Result};
use crate::log::evidence::{
    AT_ONCE, COVARIATES, ChangeOf, Covariate, CurrentLog as Core, LogRow, LogRules, LogWatch as CoreWatch, LoggedAs,
    Means, OilCheck, Proof, oil_use as core_oil_use, watch_many as core_watch_many,
};
use crate::quantity::{Field, Noun, Place, Row, Tree, Value};
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple, PyType};
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::Arc;

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
fn read<T: Send + 'static>(
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
        pub struct $name<'py>(Bound<'py, PyAny>);

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
fn date(py: Python<'_>, given: &Anything<'_>, field: &str) -> PyResult<String> {
    reading(py)?.call_method1("date", (&given.0, field))?.extract()
}

/// A column of numbers; NaN where there is none.
fn numbers(py: Python<'_>, name: &str, given: &Anything<'_>) -> PyResult<Vec<f64>> {
    let unit = LogRow::ROWS.iter().find(|row| row.name == name).map_or("", |row| row.unit.spelled);
    let array = reading(py)?.call_method1("numbers", (&given.0, name, unit))?;
    Ok(array.extract::<PyReadonlyArray1<'_, f64>>()?.as_array().to_vec())
}

/// Settings by name, as a noun.
fn settings<T: Noun>(given: Option<&Bound<'_, PyDict>>) -> PyResult<T> {
    Ok(T::from_tree(&Value::Table(nouns::changes::<T>(None, given)?).into())?)
}

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
///     IANA name such as ``"Europe/Vienna"``. Without it, and without offsets, jumps of an hour are found and mended.
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
pub struct CurrentLog(Core);

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
        found.set_item("time_zone", time_zone)?;
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

    /// What cleaning does to the log: seven steps, a count for each, no row left out unsaid.
    ///
    /// Parameters
    /// ----------
    /// line : Line, optional
    ///     Gives the rules what they leave open: reading without load, rated reading, warm-up of ovens and freezers.
    ///
    /// Returns
    /// -------
    /// Cleaning
    ///
    /// Raises
    /// ------
    /// InputError
    ///     For a log without readings, mostly below zero, or far from rated (milliamperes, per cent of rated: `UnitError`).
    #[pyo3(signature = (*, line = None))]
    fn cleaning(slf: &Bound<'_, Self>, line: Option<Py<classes::Line>>) -> PyResult<classes::Cleaning> {
        Ok(classes::Cleaning(read(slf, line, |log, line| log.cleaning(line))?))
    }

    /// The clean means as a dict of NumPy arrays: time (UTC), the reading, covariates, rows in each mean.
    #[pyo3(signature = (*, line = None))]
    fn means<'py>(slf: &Bound<'py, Self>, line: Option<Py<classes::Line>>) -> PyResult<Arrays<'py>> {
        let py = slf.py();
        let Means { times, readings, covariates, rows } = read(slf, line, |log, line| log.means(line))?;
        let found = PyDict::new(py);
        let times = PyArray1::from_vec(py, times);
        found.set_item("time", times.call_method1("view", ("datetime64[ns]",))?)?;
        found.set_item(slf.get().0.logged.as_str(), PyArray1::from_vec(py, readings))?;
        for (name, values) in covariates {
            found.set_item(name, PyArray1::from_vec(py, values))?;
        }
        let rows: Vec<i64> = rows.into_iter().map(|rows| rows as i64).collect();
        found.set_item("rows", PyArray1::from_vec(py, rows))?;
        Ok(Arrays(found.into_any()))
    }

    /// The days on which the level changed. A change point proposes a date; `before_after` proves it.
    ///
    /// Parameters
    /// ----------
    /// line : Line, optional
    ///     For the cleaning.
    /// change_of : {"mean", "mean_variance"}
    ///     Whether the scatter may change with the level.
    /// least_segment : int
    ///     Least means between two changes; 10 if not given.
    ///
    /// Returns
    /// -------
    /// ChangePoints
    ///     `sentence`, `changes` with their dates and steps, the price of a change and the noise that set it.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     For a log shorter than two segments, in pieces, or that never changes.
    #[pyo3(signature = (*, line = None, change_of = None, least_segment = None))]
    fn change_points(
        slf: &Bound<'_, Self>,
        line: Option<Py<classes::Line>>,
        change_of: Option<&str>,
        least_segment: Option<i64>,
    ) -> PyResult<classes::ChangePoints> {
        let place = Place::root("change_of");
        let of =
            change_of.map(|word| ChangeOf::read(&Value::Text(word.into()).into(), &place, &Row::BLANK)).transpose()?;
        let found = read(slf, line, move |log, line| log.change_points(line, of, least_segment))?;
        Ok(classes::ChangePoints(found))
    }

    /// Compare the periods before and after a change: the saving at equal load, how sure it is, what hides it.
    ///
    /// Parameters
    /// ----------
    /// changed : date, datetime or str
    ///     Day of the change, by the clock of the log; the day itself is left out.
    /// line : Line, optional
    ///     Turns current into pull and says what this current can see.
    /// **settings
    ///     Names of `Proof`: `confidence_pct`, `power_pct`, `systematic_pct`, `systematic_independence`,
    ///     `expected_saving_pct`, `settle_days`.
    ///
    /// Returns
    /// -------
    /// BeforeAfter
    ///     `sentence` is the verdict; the numbers behind it and the notes to read it with follow.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     For a date outside the log, fewer means than the model needs, a log in pieces or that never changes.
    #[pyo3(signature = (changed, /, *, line = None, **settings: "object"))]
    fn before_after(
        slf: &Bound<'_, Self>,
        changed: Anything<'_>,
        line: Option<Py<classes::Line>>,
        settings: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<classes::BeforeAfter> {
        let (changed, proof) = (date(slf.py(), &changed, "changed")?, self::settings::<Proof>(settings)?);
        let found = read(slf, line, move |log, line| log.before_after(&changed, line, &proof))?;
        Ok(classes::BeforeAfter(found))
    }

    /// Energy and money avoided since a change, with the uncertainty of measurement and verification.
    ///
    /// Parameters
    /// ----------
    /// changed : date, datetime or str
    ///     Day of the change, by the clock of the log; the day itself is left out.
    /// line : Line
    ///     Turns current into power, gives price and hours of a year. Not needed for a log of power.
    /// energy_price_per_kwh : float, optional
    ///     In place of the line's.
    /// **settings
    ///     Names of `Proof`.
    ///
    /// Returns
    /// -------
    /// AvoidedUse
    ///
    /// Raises
    /// ------
    /// InputError
    ///     As `before_after`; also for a log of current without a line.
    #[pyo3(signature = (changed, /, *, line = None, energy_price_per_kwh = None, **settings: "object"))]
    fn savings(
        slf: &Bound<'_, Self>,
        changed: Anything<'_>,
        line: Option<Py<classes::Line>>,
        energy_price_per_kwh: Option<Given<'_, f64>>,
        settings: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<classes::AvoidedUse> {
        let (changed, proof) = (date(slf.py(), &changed, "changed")?, self::settings::<Proof>(settings)?);
        let price = energy_price_per_kwh
            .map(|given| number::<crate::economics::Costs>("energy_price_per_kwh", &given.0))
            .transpose()?;
        let found = read(slf, line, move |log, line| log.savings(&changed, line, price, &proof))?;
        Ok(classes::AvoidedUse(found))
    }

    /// Watch the log from a day on, against what the line drew until then.
    ///
    /// Parameters
    /// ----------
    /// quiet_until, quiet_from : date, datetime or str
    ///     The period from which the baseline is learnt; it needs 30 means or more. `quiet_from` not given: from the
    ///     beginning of the log.
    /// line : Line, optional
    ///     For the cleaning.
    ///
    /// Returns
    /// -------
    /// WatchReport
    ///     `sentence`, `alarms` with their causes, `steps` reading by reading, and how often it would alarm falsely.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     For a quiet period that is too short, or whose means resemble each other too much to watch by.
    #[pyo3(signature = (quiet_until, /, *, quiet_from = None, line = None))]
    fn watch(
        slf: &Bound<'_, Self>,
        quiet_until: Anything<'_>,
        quiet_from: Option<Anything<'_>>,
        line: Option<Py<classes::Line>>,
    ) -> PyResult<classes::WatchReport> {
        let py = slf.py();
        let until = date(py, &quiet_until, "quiet_until")?;
        let from = quiet_from.map(|from| date(py, &from, "quiet_from")).transpose()?;
        let found = read(slf, line, move |log, line| log.watch(&until, from.as_deref(), line))?;
        Ok(classes::WatchReport(found))
    }

    fn __len__(&self) -> usize {
        self.0.stamps.len()
    }
    fn __repr__(&self) -> String {
        let beside: Vec<&str> = self.0.covariates.iter().map(|x| x.name).collect();
        let beside = if beside.is_empty() { String::new() } else { format!(" with {}", beside.join(", ")) };
        format!("<CurrentLog {:?}: {} rows of {}{beside}>", self.0.name, self.0.stamps.len(), self.0.logged.as_str())
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

/// A number by the row that it has in a noun.
fn number<T: Noun>(name: &str, given: &Bound<'_, PyAny>) -> PyResult<f64> {
    let row = T::ROWS.iter().find(|row| row.name == name).unwrap_or(&Row::BLANK);
    Ok(f64::read(&to_tree(given, name, Some(row))?, &Place::root(name), row)?)
}

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
        let zone = crate::log::evidence::Zone::named(self.0.time_zone.as_deref())?;
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

/// Watch many logs in parallel; one that fails stops no other.
///
/// Parameters
/// ----------
/// logs : sequence of CurrentLog
/// quiet_until, quiet_from : date, datetime or str
///     The quiet period of all of them.
/// lines : sequence of Line or None, optional
///     A line for each log.
/// threads : int, optional
///     Not given: as many as the machine has. The result does not depend on it.
/// progress : callable, optional
///     Called with the number done and the number of all, between groups of logs.
///
/// Returns
/// -------
/// list
///     For each log, in order, its `WatchReport`, or the error (a `PinfilmError`) that it met.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> pinfilm.watch_many([], "2025-01-01")
/// []
#[pyfunction]
#[pyo3(signature = (logs, quiet_until, *, quiet_from = None, lines = None, threads = None, progress = None))]
pub fn watch_many<'py>(
    py: Python<'py>,
    logs: Vec<Py<CurrentLog>>,
    quiet_until: Anything<'py>,
    quiet_from: Option<Anything<'py>>,
    lines: Option<Vec<Option<Py<classes::Line>>>>,
    threads: Option<usize>,
    progress: Option<Anything<'py>>,
) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let until = date(py, &quiet_until, "quiet_until")?;
    let from = quiet_from.map(|from| date(py, &from, "quiet_from")).transpose()?;
    let lines = lines.unwrap_or_default();
    if !lines.is_empty() && lines.len() != logs.len() {
        let message =
            format!("lines has {} and logs {}: give one line (or None) for each log", lines.len(), logs.len());
        return Err(Error::new(Code::Inconsistent, "lines", message).number(lines.len() as f64).into());
    }
    let pool = rayon::ThreadPoolBuilder::new()
        .num_threads(threads.unwrap_or(0))
        .build()
        .map_err(|error| Error::new(Code::OutOfRange, "threads", format!("threads cannot be started: {error}")))?;
    let pool = Arc::new(pool);
    let mut found = Vec::with_capacity(logs.len());
    let at_once = AT_ONCE * pool.current_num_threads();
    for first in (0..logs.len()).step_by(at_once) {
        let chunk = first..logs.len().min(first + at_once);
        let group: Vec<Py<CurrentLog>> = logs[chunk.clone()].iter().map(|log| log.clone_ref(py)).collect();
        let beside: Vec<Option<Py<classes::Line>>> =
            chunk.map(|at| lines.get(at).and_then(|line| line.as_ref()).map(|line| line.clone_ref(py))).collect();
        let (pool, until, from) = (Arc::clone(&pool), until.clone(), from.clone());
        let reports = aside(py, move || {
            let views: Vec<&Core> = group.iter().map(|log| &log.get().0).collect();
            let beside: Vec<_> = beside.iter().map(|line| line.as_ref().map(|line| &line.get().0)).collect();
            Ok(pool.install(|| core_watch_many(&views, &until, from.as_deref(), &beside)))
        });
        for report in reports? {
            found.push(match report {
                Ok(report) => Py::new(py, classes::WatchReport(report))?.into_bound(py).into_any(),
                Err(error) => PyErr::from(error).into_value(py).into_bound(py).into_any(),
            });
        }
        py.check_signals()?;
        if let Some(progress) = &progress {
            progress.0.call1((found.len(), logs.len()))?;
        }
    }
    Ok(found)
}

/// Whether the fall of the reservoir agrees with the shots, within three standard deviations.
///
/// Parameters
/// ----------
/// **check
///     Names of `OilCheck`: `used_l`, `shots`, `shot_ul`; `reading_error_l` and `shot_error_pct` where they are known.
///
/// Returns
/// -------
/// OilUse
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> pinfilm.oil_use(used_l=3.1, shots=120_000, shot_ul=18).verdict
/// 'high'
#[pyfunction]
#[pyo3(signature = (**check: "object"))]
pub fn oil_use(check: Option<&Bound<'_, PyDict>>) -> PyResult<classes::OilUse> {
    Ok(classes::OilUse(core_oil_use(&settings::<OilCheck>(check)?)?))
}
