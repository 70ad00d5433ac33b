//! `pinfilm.economics`: present value, rate of return, payback.

use super::flows::{for_each_project, of_one_project, words_of_projects};
use super::outcomes::list;
use super::prelude::*;
use crate::economics::{self, Costs, IrrStatus, Payback};
use crate::error::{Code, Error, Result};
use pyo3::types::PyTuple;

/// The time of a payback; an error that says what happens instead where there is none.
fn time_of(payback: Payback, name: &'static str) -> Result<f64> {
    payback.value().ok_or_else(|| {
        let status = payback.status();
        let message = format!("these flows have no {name}: the outcome is {status}");
        Error::new(Code::NoAnswer, "cash_flows", message).text_value(status).limit("flows that pay back")
    })
}

formulas! { "economics"
    /// Present value of one unit of money paid once.
    ///
    /// Parameters
    /// ----------
    /// rate : array_like
    ///     Discount rate of a year; above -1.
    /// years : array_like
    ///     Years from now; at least 0 years.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Factor.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// SPV = (1 + r)^−n.
    ///
    /// References
    /// ----------
    /// Fuller and Petersen 1996, NIST Handbook 135.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import economics
    /// >>> round(economics.single_present_value_factor(0.03, 10), 4)
    /// 0.7441
    fn single_present_value_factor(rate: Own, years: Own) -> Floats = economics::single_present_value;

    /// Present value of one unit of money at every year end.
    ///
    /// Parameters
    /// ----------
    /// rate : array_like
    ///     Discount rate of a year; above -1.
    /// years : array_like
    ///     Years for which it is paid; at least 0 years.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Factor; the number of years at rate 0.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// UPV = (1 − (1 + r)^−n)/r, exact down to tiny rates.
    ///
    /// References
    /// ----------
    /// Fuller and Petersen 1996, NIST Handbook 135.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import economics
    /// >>> round(economics.uniform_present_value_factor(0.03, 10), 3)
    /// 8.53
    fn uniform_present_value_factor(rate: Own, years: Own) -> Floats = economics::uniform_present_value;

    /// Simple payback in days of an investment by yearly savings.
    ///
    /// Parameters
    /// ----------
    /// invest : array_like
    ///     Capital needed now; any number money.
    /// saving_per_year : array_like
    ///     Money saved in a year, evenly; any number money.
    /// year_days : array_like, optional
    ///     Days that make a year, of the calendar or of work; 1 to 366; 365 if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Days; 0 where there is nothing to pay back.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     saving that never pays back is an error for numbers (`no_answer`), NaN in arrays.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// I/S times the days of a year. Neither interest nor what comes after.
    ///
    /// References
    /// ----------
    /// Definition.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import economics
    /// >>> economics.payback_days(1000, 500)
    /// 730.0
    fn payback_days(invest: Costs, saving_per_year: Own; year_days: Costs) -> Floats =
        |invest, saving, days| time_of(economics::payback_days(invest, saving, days), "payback_days");
}

/// Net present value of cash flows.
///
/// Parameters
/// ----------
/// rate : array_like
///     Discount rate of a year; above -1.
/// cash_flows : array_like
///     Money now, then at the end of each year, along the last axis; any number money.
///
/// Returns
/// -------
/// float or ndarray
///     Net present value; one for each project where `cash_flows` has more axes, broadcast with `rate`.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// Σ F_k (1 + r)^−k from k = 0: the first flow is not discounted.
///
/// References
/// ----------
/// Definition; Fuller and Petersen 1996, NIST Handbook 135.
///
/// Examples
/// --------
/// >>> from pinfilm import economics
/// >>> round(economics.npv(0.08, [-40000, 5000, 8000, 12000, 30000]), 3)
/// 3065.223
#[pyfunction]
#[pyo3(signature = (rate, cash_flows))]
pub fn npv<'py>(py: Python<'py>, rate: Given<'py>, cash_flows: Given<'py>) -> PyResult<Floats> {
    for_each_project(py, Some(&rate), &cash_flows, |rate, flows| Ok(economics::npv(rate, flows)))
}

/// Internal rate of return of cash flows; of several the one nearest zero.
///
/// Parameters
/// ----------
/// cash_flows : array_like
///     Money now, then at the end of each year, along the last axis; any number money.
///
/// Returns
/// -------
/// float or ndarray
///     Rate of a year; one for each project where `cash_flows` has more axes.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. Flows
///     without such a rate are an error for one project (`no_answer`), NaN in arrays; `irr_status` says why.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// The rate at which the net present value is nothing. Flows that change sign more than once may have several:
/// `irr_roots` gives all of them, and then none of them means much.
///
/// References
/// ----------
/// Definition; uniqueness by Descartes' rule of signs.
///
/// Examples
/// --------
/// >>> from pinfilm import economics
/// >>> round(economics.irr([-3, 1, 1, 1, 1]), 6)
/// 0.125898
#[pyfunction]
#[pyo3(signature = (cash_flows))]
pub fn irr<'py>(py: Python<'py>, cash_flows: Given<'py>) -> PyResult<Floats> {
    for_each_project(py, None, &cash_flows, |_, flows| {
        let found = economics::irr(flows);
        found.value.ok_or_else(|| {
            let status = found.status.as_str();
            let message = format!("these flows have no internal rate of return: the outcome is {status}");
            Error::new(Code::NoAnswer, "cash_flows", message).text_value(status).limit("flows with a change of sign")
        })
    })
}

/// What the internal rate of return of cash flows is worth.
///
/// Parameters
/// ----------
/// cash_flows : array_like
///     Money now, then at the end of each year, along the last axis; any number money.
///
/// Returns
/// -------
/// str or list of str
///     `unique`, `several`, `none` or `out_of_range`; a list of them for several projects in two axes, `nan` where a
///     flow is not known.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// The word that goes with each number of `irr`.
///
/// References
/// ----------
/// Descartes' rule of signs.
///
/// Examples
/// --------
/// >>> from pinfilm import economics
/// >>> economics.irr_status([-100, 230, -132])
/// 'several'
#[pyfunction]
#[pyo3(signature = (cash_flows))]
pub fn irr_status(cash_flows: Given<'_>) -> PyResult<Words> {
    words_of_projects(&cash_flows, |flows| IrrStatus::as_str(economics::irr(flows).status)).map(Words::from)
}

/// All rates at which the net present value of cash flows is nothing.
///
/// Parameters
/// ----------
/// cash_flows : array_like
///     Money now, then at the end of each year; any number money. One project.
///
/// Returns
/// -------
/// tuple of float
///     Rates of a year above −1, rising; empty where there are none.
///
/// Raises
/// ------
/// InputError
///     A flow that is not finite.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// Roots of the polynomial in the discount factor, each found between the turning points on both sides.
///
/// References
/// ----------
/// Definition.
///
/// Examples
/// --------
/// >>> from pinfilm import economics
/// >>> [round(rate, 9) for rate in economics.irr_roots([-100, 230, -132])]
/// [0.1, 0.2]
#[pyfunction]
#[pyo3(signature = (cash_flows))]
pub fn irr_roots<'py>(py: Python<'py>, cash_flows: Given<'py>) -> PyResult<Roots<'py>> {
    let roots = economics::irr(&of_one_project(&cash_flows)?).roots;
    Ok(Roots(list(py, roots.into_iter())?.cast_into()?))
}

/// Time until cash flows have paid back what was invested.
///
/// Parameters
/// ----------
/// cash_flows : array_like
///     Money now, then at the end of each year, along the last axis; any number money.
///
/// Returns
/// -------
/// float or ndarray
///     Years; 0 where there is nothing to pay back; one for each project where `cash_flows` has more axes.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. Flows
///     that do not pay back are an error for one project (`no_answer`), NaN in arrays; `payback_status` says why.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// The first time the running sum is no longer negative, linear inside the year, without interest.
///
/// References
/// ----------
/// Definition.
///
/// Examples
/// --------
/// >>> from pinfilm import economics
/// >>> round(economics.payback_years([-100, 60, 60]), 4)
/// 1.6667
#[pyfunction]
#[pyo3(signature = (cash_flows))]
pub fn payback_years<'py>(py: Python<'py>, cash_flows: Given<'py>) -> PyResult<Floats> {
    for_each_project(py, None, &cash_flows, |_, flows| time_of(economics::payback_years(flows), "payback"))
}

/// Time until discounted cash flows have paid back what was invested.
///
/// Parameters
/// ----------
/// rate : array_like
///     Discount rate of a year; above -1.
/// cash_flows : array_like
///     Money now, then at the end of each year, along the last axis; any number money.
///
/// Returns
/// -------
/// float or ndarray
///     Years; one for each project where `cash_flows` has more axes, broadcast with `rate`.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. Flows
///     that do not pay back are an error for one project (`no_answer`), NaN in arrays; `payback_status` says why.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// As `payback_years`, with each flow discounted to now.
///
/// References
/// ----------
/// Definition; linear inside the year as in Ross, Westerfield and Jaffe, Corporate Finance.
///
/// Examples
/// --------
/// >>> from pinfilm import economics
/// >>> round(economics.discounted_payback_years(0.10, [-100, 60, 60]), 4)
/// 1.9167
#[pyfunction]
#[pyo3(signature = (rate, cash_flows))]
pub fn discounted_payback_years<'py>(py: Python<'py>, rate: Given<'py>, cash_flows: Given<'py>) -> PyResult<Floats> {
    for_each_project(py, Some(&rate), &cash_flows, |rate, flows| {
        time_of(economics::discounted_payback_years(rate, flows), "discounted payback")
    })
}

/// Whether and how cash flows pay back.
///
/// Parameters
/// ----------
/// cash_flows : array_like
///     Money now, then at the end of each year, along the last axis; any number money.
///
/// Returns
/// -------
/// str or list of str
///     `pays_back`, `pays_back_then_loses`, `immediate`, `never`, `loses_after` or `beyond_horizon`; a list of them for
///     several projects in two axes, `nan` where a flow is not known.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// The word that goes with each number of `payback_years`.
///
/// References
/// ----------
/// Definition.
///
/// Examples
/// --------
/// >>> from pinfilm import economics
/// >>> economics.payback_status([[-100, 60, 60], [-100, 10, 10], [-100, -10, -10]])
/// ['pays_back', 'beyond_horizon', 'never']
#[pyfunction]
#[pyo3(signature = (cash_flows))]
pub fn payback_status(cash_flows: Given<'_>) -> PyResult<Words> {
    words_of_projects(&cash_flows, |flows| economics::payback_years(flows).status()).map(Words::from)
}

/// A word, or one for each project.
#[derive(IntoPyObject)]
pub enum Words {
    /// For one project.
    One(&'static str),
    /// For several.
    Many(Vec<&'static str>),
}

impl From<(Vec<&'static str>, bool)> for Words {
    fn from((words, single): (Vec<&'static str>, bool)) -> Self {
        match (single, words.first()) {
            (true, Some(word)) => Words::One(word),
            _ => Words::Many(words),
        }
    }
}

/// Rates as a tuple.
pub struct Roots<'py>(Bound<'py, PyTuple>);

impl<'py> IntoPyObject<'py> for Roots<'py> {
    type Target = PyTuple;
    type Output = Bound<'py, PyTuple>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = super::outcomes::hint::NUMBERS;
    fn into_pyobject(self, _: Python<'py>) -> PyResult<Self::Output> {
        Ok(self.0)
    }
}

by_hand! { "economics"
    npv(rate: Own, cash_flows: Own) -> Floats;
    irr(cash_flows: Own) -> Floats;
    irr_status(cash_flows: Own) -> Words;
    irr_roots(cash_flows: Own) -> Roots;
    payback_years(cash_flows: Own) -> Floats;
    discounted_payback_years(rate: Own, cash_flows: Own) -> Floats;
    payback_status(cash_flows: Own) -> Words;
}
