//! `Reading`: what was read on a line.

use crate::error::{Code, Error};
use crate::log::evidence::LoggedAs;
use crate::py::nouns::classes;
use crate::study::{self as core, CAREFUL_READING_PCT, Side, Subject, running_hours};
use pyo3::prelude::*;

/// When an elongation was read.
#[derive(Clone, Copy, PartialEq)]
enum Since {
    RunningHours(f64),
    Days(f64),
}

#[derive(Clone, PartialEq)]
enum Kind {
    Elongation { pct: f64, error_pct: f64, since: Since, changed: Option<Since> },
    Number { path: &'static str, proposed: bool, value: f64, error: f64 },
    Any { path: String, value: f64, error: f64 },
    Saving { path: &'static str, pct: f64, error_pct: f64 },
}

/// A reading on a line, for `calibrate`, with the standard deviation of its error.
///
/// Examples
/// --------
/// >>> import datetime, pinfilm
/// >>> pinfilm.Reading.elongation(0.42, running_h=3000)
/// Reading.elongation(0.42, running_h=3000.0, error_pct=0.05)
/// >>> new, today = datetime.date(2024, 3, 1), datetime.date(2025, 3, 1)
/// >>> pinfilm.Reading.elongation(0.42, new_on=new, read_on=today)
/// Reading.elongation(0.42, days=365.0, error_pct=0.05)
#[pyclass(frozen, module = "pinfilm")]
pub struct Reading(Kind);

#[pymethods]
impl Reading {
    /// Elongation of a stretch of many links, in % of the new length.
    ///
    /// Give the running hours since the chain was new, or the calendar days, or two dates; days run as the duty of the
    /// line says. `error_pct` is 0.05 % of length if read with care, three times that by habit. Once the oiling has been
    /// changed on the same chain, say when: `changed_running_h` or `changed_on`, counted from the new chain.
    #[staticmethod]
    #[pyo3(signature = (elongation_pct, *, running_h = None, days = None, new_on = None, read_on = None, changed_running_h = None, changed_on = None, error_pct = None))]
    #[allow(clippy::too_many_arguments)]
    fn elongation<'py>(
        elongation_pct: f64,
        running_h: Option<f64>,
        days: Option<f64>,
        new_on: Option<Date<'py>>,
        read_on: Option<Date<'py>>,
        changed_running_h: Option<f64>,
        changed_on: Option<Date<'py>>,
        error_pct: Option<f64>,
    ) -> PyResult<Self> {
        let between = |later: &Date<'py>| -> PyResult<Option<f64>> {
            let Some(new) = &new_on else { return Ok(None) };
            Ok(Some(later.0.sub(&new.0)?.call_method0("total_seconds")?.extract::<f64>()? / 86_400.0))
        };
        let dated = read_on.as_ref().map(between).transpose()?.flatten();
        let since = match (running_h, days, dated) {
            (Some(hours), None, None) => Since::RunningHours(hours),
            (None, Some(days), None) | (None, None, Some(days)) => Since::Days(days),
            _ => {
                let message = "when was it read? give either running_h, or days, or new_on with read_on";
                return Err(Error::new(Code::Missing, "running_h", message).into());
            }
        };
        let changed = match (changed_running_h, changed_on.as_ref().map(between).transpose()?) {
            (None, None) => None,
            (Some(hours), None) => Some(Since::RunningHours(hours)),
            (None, Some(Some(days))) => Some(Since::Days(days)),
            _ => {
                let message = "when was the oiling changed? give either changed_running_h, or changed_on with new_on";
                return Err(Error::new(Code::Missing, "changed_running_h", message).into());
            }
        };
        let error_pct = error_pct.unwrap_or(CAREFUL_READING_PCT);
        Ok(Reading(Kind::Elongation { pct: elongation_pct, error_pct, since, changed }))
    }
    /// Current of the drive where the survey says it is measured (A); of a pair, now or as proposed.
    #[staticmethod]
    #[pyo3(signature = (current_a, *, error_a, proposed = false))]
    fn current(current_a: f64, error_a: f64, proposed: bool) -> Self {
        Reading(Kind::Number { path: "drive.current_a", proposed, value: current_a, error: error_a })
    }
    /// Oil that left the applicator in a year (L); of a pair, now or as proposed.
    #[staticmethod]
    #[pyo3(signature = (l_per_year, *, error_l, proposed = false))]
    fn oil_used(l_per_year: f64, error_l: f64, proposed: bool) -> Self {
        Reading(Kind::Number { path: "supply.applied_l_per_year", proposed, value: l_per_year, error: error_l })
    }
    /// What a log has shown of a change of oiling: the fall of current or power, with the error that `before_after` found.
    ///
    /// For a pair of lines. The error holds for the log alone: where the load, the speed or something else of the line
    /// changed with the oiling and was not logged, the reading is wrong by more.
    ///
    /// Examples
    /// --------
    /// >>> import pinfilm
    /// >>> demo = pinfilm.examples.current_log("oven")
    /// >>> reading = pinfilm.Reading.saving(demo.log().before_after(demo.changed, line=demo.line))
    /// >>> pair, guesses = pinfilm.examples.pair("oven"), {"surface.dry_friction": None}
    /// >>> pinfilm.calibrate(pair, [reading], guesses, n=64).spread_left[0] < 0.5
    /// True
    #[staticmethod]
    #[pyo3(signature = (found))]
    fn saving(found: &classes::BeforeAfter) -> Self {
        let path = match found.0.logged {
            LoggedAs::Current => "drive.current_a",
            LoggedAs::Power => "drive.input_power_w",
        };
        Reading(Kind::Saving { path, pct: found.0.saving_pct, error_pct: found.0.error_pct })
    }
    /// Any number of the result, by its dotted path.
    #[staticmethod]
    #[pyo3(signature = (path, value, *, error))]
    fn number(path: String, value: f64, error: f64) -> Self {
        Reading(Kind::Any { path, value, error })
    }
    fn __repr__(&self) -> String {
        let when = |name: &str, since: &Since| match since {
            Since::RunningHours(hours) => format!("{name}running_h={hours:?}"),
            Since::Days(days) => format!("{name}days={days:?}"),
        };
        match &self.0 {
            Kind::Elongation { pct, error_pct, since, changed } => {
                let changed =
                    changed.as_ref().map_or_else(String::new, |changed| format!(", {}", when("changed_", changed)));
                format!("Reading.elongation({pct:?}, {}{changed}, error_pct={error_pct:?})", when("", since))
            }
            Kind::Number { path, proposed, value, error } => {
                let (name, end) =
                    if path.starts_with("drive") { ("current", "error_a") } else { ("oil_used", "error_l") };
                let proposed = if *proposed { ", proposed=True" } else { "" };
                format!("Reading.{name}({value:?}, {end}={error:?}{proposed})")
            }
            Kind::Saving { path, pct, error_pct } => {
                format!("<Reading of a log: {path} falls by {pct:?} %, error {error_pct:?} %>")
            }
            Kind::Any { path, value, error } => format!("Reading.number({path:?}, {value:?}, error={error:?})"),
        }
    }
    fn _repr_html_(&self) -> String {
        crate::quantity::show::html_text(&self.__repr__())
    }
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.cast::<Self>().is_ok_and(|other| other.get().0 == self.0)
    }
}

impl Reading {
    /// As a reading on these lines.
    pub fn on(&self, subject: &Subject) -> core::Reading {
        let hours = |since: Since| match since {
            Since::RunningHours(hours) => hours,
            Since::Days(days) => running_hours(subject.line(Side::Now), days),
        };
        match &self.0 {
            Kind::Elongation { pct, error_pct, since, changed } => core::Reading::Elongation {
                pct: *pct,
                error_pct: *error_pct,
                running_h: hours(*since),
                changed_at_h: changed.map(hours),
            },
            Kind::Number { path, proposed, value, error } => {
                let side = if *proposed { Side::Proposed } else { Side::Now };
                let path = if subject.is_pair() { format!("{}.{path}", side.as_str()) } else { (*path).to_string() };
                core::Reading::Number { path, value: *value, error: *error }
            }
            Kind::Saving { path, pct, error_pct } => core::Reading::Saving { path, pct: *pct, error_pct: *error_pct },
            Kind::Any { path, value, error } => {
                core::Reading::Number { path: path.clone(), value: *value, error: *error }
            }
        }
    }
}

/// A date.
pub struct Date<'py>(Bound<'py, PyAny>);

impl<'a, 'py> FromPyObject<'a, 'py> for Date<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("datetime", "date");
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        let date = object.py().import("datetime")?.getattr("date")?;
        if object.is_instance(&date)? {
            return Ok(Date(object.to_owned()));
        }
        Err(pyo3::exceptions::PyTypeError::new_err(format!("a datetime.date is wanted, not {}", object.get_type())))
    }
}
