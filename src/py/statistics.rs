//! Statistics of logs as functions over plain arrays: what the verdicts of a log are made of.

use super::logs::{Anything, reading};
use crate::drive;
use crate::error::{Code, Error, Result};
use crate::log::change::{Cost, partition, penalty as price, robust_noise};
use crate::log::evidence::ChangeOf;
use crate::log::proof::{self, SavingsFactor, fractional_savings_uncertainty};
use crate::log::watch::cusum_path;
use crate::quantity::unit::PCT;
use crate::quantity::{Field, Place, Row, Value};
use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::prelude::*;

/// A column of numbers for Python.
type Column<'py> = Bound<'py, PyArray1<f64>>;

/// A column of finite numbers, `least` or more.
fn finite(py: Python<'_>, name: &'static str, given: &Anything<'_>, least: usize) -> PyResult<Vec<f64>> {
    let array = reading(py)?.call_method1("numbers", (&given.0, name, ""))?;
    let values = array.extract::<PyReadonlyArray1<'_, f64>>()?.as_array().to_vec();
    if let Some(at) = values.iter().position(|value| !value.is_finite()) {
        let message = format!("{name} {at} is not a finite number: leave such rows out");
        return Err(Error::new(Code::NotFinite, name, message).number(values[at]).into());
    }
    if values.len() < least {
        let message = format!("{name} has {} numbers: give {least} or more", values.len());
        return Err(Error::new(Code::Inconsistent, name, message)
            .number(values.len() as f64)
            .limit(format!("{least} or more"))
            .into());
    }
    Ok(values)
}

/// Refuses a number that is not inside a range.
fn inside(name: &'static str, value: f64, good: bool, limit: &str) -> Result<f64> {
    if good && value.is_finite() {
        return Ok(value);
    }
    let message = format!("{name} = {value} is outside what can be computed: it must be {limit}");
    Err(Error::new(Code::OutOfRange, name, message).number(value).limit(limit))
}

/// First numbers of the segments after the first, in the cheapest division of `values`: exact optimal partitioning.
///
/// Parameters
/// ----------
/// values : array_like
///     Numbers in order, two segments or more of them.
/// change_of : {"mean", "mean_variance"}
///     Whether the spread may change with the mean.
/// least_segment : int
///     Least numbers in a segment, 10 if not given.
/// penalty : float, optional
///     Price of a change, in the cost: the sum of squares about the mean, or m ln(variance). Not given: the one that allows
///     for autocorrelation.
///
/// Returns
/// -------
/// list of int
///
/// Raises
/// ------
/// InputError
///     For too few numbers, numbers that never change, or a penalty below zero.
///
/// Notes
/// -----
/// Jackson et al. (2005), pruned after Killick, Fearnhead and Eckley (2012). The default penalty is
/// 4 σ² ln n (1 + ρ)/(1 − ρ), or 5 ln n (1 + ρ)/(1 − ρ), with σ and ρ from trimmed differences (closure of our own).
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> wave = [(7 * t % 10) / 10 + (2 if t >= 40 else 0) for t in range(80)]
/// >>> pinfilm.statistics.change_points(wave)
/// [40]
#[pyfunction]
#[pyo3(signature = (values, *, change_of = None, least_segment = None, penalty = None))]
pub fn change_points(
    py: Python<'_>,
    values: Anything<'_>,
    change_of: Option<&str>,
    least_segment: Option<usize>,
    penalty: Option<f64>,
) -> PyResult<Vec<usize>> {
    let place = Place::root("change_of");
    let of = change_of.map(|word| ChangeOf::read(&Value::Text(word.into()).into(), &place, &Row::BLANK)).transpose()?;
    let cost = match of.unwrap_or(ChangeOf::Mean) {
        ChangeOf::Mean => Cost::Mean,
        ChangeOf::MeanVariance => Cost::MeanVariance,
    };
    let least = least_segment.unwrap_or(crate::log::evidence::LEAST_SEGMENT).max(1);
    let values = finite(py, "values", &values, 2 * least.max(2))?;
    let penalty = penalty.map(|penalty| inside("penalty", penalty, penalty >= 0.0, "0 or more")).transpose()?;
    Ok(py.detach(|| {
        let penalty = penalty.unwrap_or_else(|| price(cost, robust_noise(&values), values.len()));
        partition(&values, cost, least, penalty)
    }))
}

/// Newey and West's standard error of the mean of `values`, or of the coefficients on `columns`, with n/(n − p).
///
/// Parameters
/// ----------
/// values : array_like
///     Numbers in order.
/// lags : int
///     Lags of the autocovariances, Bartlett weights.
/// columns : sequence of array_like, optional
///     Columns of a regression; a constant is put before them.
///
/// Returns
/// -------
/// list of float
///     Standard error of the constant, then of each column.
///
/// Raises
/// ------
/// InputError
///     For fewer numbers than the regression needs, or columns that follow from each other.
///
/// Notes
/// -----
/// Newey and West (1987).
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> round(pinfilm.statistics.newey_west_se([2.0, 4.0, 3.0, 5.0], 0)[0], 4)
/// 0.6455
#[pyfunction]
#[pyo3(signature = (values, lags, *, columns = None))]
pub fn newey_west_se(
    py: Python<'_>,
    values: Anything<'_>,
    lags: usize,
    columns: Option<Vec<Anything<'_>>>,
) -> PyResult<Vec<f64>> {
    let values = finite(py, "values", &values, 2)?;
    let given =
        columns.unwrap_or_default().iter().map(|x| finite(py, "columns", x, 2)).collect::<PyResult<Vec<_>>>()?;
    let all: Vec<Vec<f64>> = [vec![1.0; values.len()]].into_iter().chain(given).collect();
    let views: Vec<&[f64]> = all.iter().map(Vec::as_slice).collect();
    Ok(py.detach(|| proof::newey_west_se(&views, &values, lags, true))?)
}

/// Independent numbers that `count` numbers with lag-one autocorrelation `lag1` are worth: n (1 − ρ)/(1 + ρ).
///
/// Parameters
/// ----------
/// count : float
///     Numbers in order, n, above 0.
/// lag1 : float
///     Their lag-one autocorrelation ρ, above -1 and below 1.
///
/// Raises
/// ------
/// InputError
///     Outside these ranges.
///
/// Notes
/// -----
/// First-order autoregressive noise, large count (from memory).
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> round(pinfilm.statistics.effective_sample_size(365, 0.5), 2)
/// 121.67
#[pyfunction]
pub fn effective_sample_size(count: f64, lag1: f64) -> PyResult<f64> {
    let count = inside("count", count, count > 0.0, "above 0")?;
    let lag1 = inside("lag1", lag1, lag1 > -1.0 && lag1 < 1.0, "above -1 and below 1")?;
    Ok(drive::effective_count(count, lag1))
}

fn both(py: Python<'_>, a: &Anything<'_>, b: &Anything<'_>, parameters: usize) -> PyResult<(Vec<f64>, Vec<f64>)> {
    let measured = finite(py, "measured", a, parameters + 1)?;
    let modelled = finite(py, "modelled", b, parameters + 1)?;
    if measured.len() != modelled.len() {
        let message = format!("modelled has {} numbers and measured {}: give as many", modelled.len(), measured.len());
        return Err(Error::new(Code::Inconsistent, "modelled", message).number(modelled.len() as f64).into());
    }
    Ok((measured, modelled))
}

/// Coefficient of variation of the root-mean-square error (%): √(Σ(y − ŷ)²/(n − p)) over the mean.
///
/// Parameters
/// ----------
/// measured, modelled : array_like
///     Readings and what a model says of them, in one unit.
/// parameters : int
///     Parameters of the model, p.
///
/// Raises
/// ------
/// InputError
///     For arrays of unlike length, no longer than there are parameters, or with numbers that are not finite.
///
/// Notes
/// -----
/// ASHRAE Guideline 14-2014, definitions.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> round(pinfilm.statistics.cv_rmse_pct([10.0, 12.0, 11.0], [10.5, 11.5, 11.0], 1), 3)
/// 4.545
#[pyfunction]
pub fn cv_rmse_pct(py: Python<'_>, measured: Anything<'_>, modelled: Anything<'_>, parameters: usize) -> PyResult<f64> {
    let (measured, modelled) = both(py, &measured, &modelled, parameters)?;
    Ok(PCT.from_si(proof::cv_rmse(&measured, &modelled, parameters)))
}

/// Normalised mean bias error (%): Σ(y − ŷ)/((n − p) × mean); positive where the model is too low.
///
/// Parameters
/// ----------
/// measured, modelled : array_like
///     Readings and what a model says of them, in one unit.
/// parameters : int
///     Parameters of the model, p.
///
/// Raises
/// ------
/// InputError
///     For arrays of unlike length, no longer than there are parameters, or with numbers that are not finite.
///
/// Notes
/// -----
/// ASHRAE Guideline 14-2014, definitions.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> round(pinfilm.statistics.nmbe_pct([10.0, 12.0, 11.0], [10.5, 11.0, 11.0], 1), 3)
/// 2.273
#[pyfunction]
pub fn nmbe_pct(py: Python<'_>, measured: Anything<'_>, modelled: Anything<'_>, parameters: usize) -> PyResult<f64> {
    let (measured, modelled) = both(py, &measured, &modelled, parameters)?;
    Ok(PCT.from_si(proof::nmbe(&measured, &modelled, parameters)))
}

/// Uncertainty of a saving over that saving: t × factor × CV/F × √((n/n′)(1 + 2/n′)/m).
///
/// Parameters
/// ----------
/// t : float
///     Quantile of the confidence, such as 1.645 for 90 %.
/// cv : float
///     Coefficient of variation of the model before.
/// share : float
///     Share that was saved, F.
/// before, worth, after : float
///     Readings before, the independent ones they are worth, readings after.
/// months : float, optional
///     Months after the change, for the factor by months of daily readings; not given: 1.26.
///
/// Notes
/// -----
/// Reddy and Claridge (2000), ASHRAE Guideline 14-2014; factor by months after Sun and Baltazar (2013).
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> round(pinfilm.statistics.savings_uncertainty(1.645, 0.08, 0.1, 365, 91.25, 365), 6)
/// 0.175476
#[pyfunction]
#[pyo3(signature = (t, cv, share, before, worth, after, *, months = None))]
pub fn savings_uncertainty(
    t: f64,
    cv: f64,
    share: f64,
    before: f64,
    worth: f64,
    after: f64,
    months: Option<f64>,
) -> PyResult<f64> {
    let above = [("t", t), ("cv", cv), ("share", share), ("before", before), ("worth", worth), ("after", after)];
    for (name, value) in above {
        inside(name, value, value > 0.0, "above 0")?;
    }
    let factor = match months {
        Some(months) => SavingsFactor::Daily { months: inside("months", months, months >= 0.0, "0 or more")? },
        None => SavingsFactor::Original,
    };
    Ok(fractional_savings_uncertainty(t, factor, cv, share, before, worth, after))
}

/// Two-sided CUSUM of `values` about `target`.
///
/// Parameters
/// ----------
/// values : array_like
///     Numbers in order.
/// target, k, h : float
///     Target, allowance (0 or more) and threshold (above 0), in the unit of the values.
///
/// Returns
/// -------
/// tuple of two ndarrays and a list of int
///     C⁺, C⁻, and the rows in alarm.
///
/// Notes
/// -----
/// Page (1954).
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> up, down, alarms = pinfilm.statistics.cusum([0.0, 3.0, 3.0], 0.0, 0.5, 4.0)
/// >>> up.tolist(), alarms
/// ([0.0, 2.5, 5.0], [2])
#[pyfunction]
pub fn cusum<'py>(
    py: Python<'py>,
    values: Anything<'py>,
    target: f64,
    k: f64,
    h: f64,
) -> PyResult<(Column<'py>, Column<'py>, Vec<usize>)> {
    let values = finite(py, "values", &values, 1)?;
    let k = inside("k", k, k >= 0.0, "0 or more")?;
    let h = inside("h", h, h > 0.0, "above 0")?;
    let path = cusum_path(&values, inside("target", target, true, "a number")?, k, h);
    Ok((PyArray1::from_vec(py, path.up), PyArray1::from_vec(py, path.down), path.alarms))
}
