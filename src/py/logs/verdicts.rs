//! What a log says: cleaning, means, changes, before and after, savings, a watch; and whether the reservoir agrees.

use super::current_log::CurrentLog;
use super::given::{Anything, Arrays, date, number, read, settings as settings_of};
use crate::log::evidence::{ChangeOf, Means, OilCheck, Proof, oil_use as core_oil_use};
use crate::py::border::Given;
use crate::py::nouns::classes;
use crate::quantity::{Field, Place, Row, Value};
use numpy::PyArray1;
use pyo3::prelude::*;
use pyo3::types::PyDict;

#[pymethods]
impl CurrentLog {
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
        let (changed, proof) = (date(slf.py(), &changed, "changed")?, settings_of::<Proof>(settings)?);
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
        let (changed, proof) = (date(slf.py(), &changed, "changed")?, settings_of::<Proof>(settings)?);
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
    Ok(classes::OilUse(core_oil_use(&settings_of::<OilCheck>(check)?)?))
}
