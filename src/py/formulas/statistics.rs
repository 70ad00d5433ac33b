//! `pinfilm.statistics`: what a log of readings is worth, when its level changed, what a saving is sure of.

use super::super::long::aside;
use super::outcomes::classes::{CusumPath, LevelChanges};
use super::outcomes::list;
use super::prelude::*;
use super::series::{Series, count, float, number};
use crate::drive::effective_count;
use crate::error::{Code, Error, Result};
use crate::log::change::Cost;
use crate::log::proof::{self, SavingsFactor, fractional_savings_uncertainty};
use crate::log::{self, watch};

impl Choice for Cost {
    const WORDS: &'static [(&'static str, Self)] = &[("mean", Cost::Mean), ("mean_variance", Cost::MeanVariance)];
}

/// Whether a standard error is raised for a short series.
#[derive(Clone, Copy, PartialEq)]
pub enum Correction {
    /// As in the textbook.
    None,
    /// By n/(n − p).
    SmallSample,
}

impl Choice for Correction {
    const WORDS: &'static [(&'static str, Self)] =
        &[("none", Correction::None), ("small_sample", Correction::SmallSample)];
}

/// The factor of the guideline by name; two of them need the months.
#[derive(Clone, Copy)]
pub enum Factor {
    /// 1.26.
    Original,
    /// For daily readings.
    Daily,
    /// For monthly readings.
    Monthly,
}

impl Choice for Factor {
    const WORDS: &'static [(&'static str, Self)] =
        &[("original", Factor::Original), ("daily", Factor::Daily), ("monthly", Factor::Monthly)];
}

fn factor(named: Factor, months: f64) -> Result<SavingsFactor> {
    match named {
        Factor::Original => Ok(SavingsFactor::Original),
        _ if months.is_nan() => {
            let message =
                "months is missing: the factors for daily and monthly readings follow the months logged after";
            Err(Error::new(Code::Missing, "months", message).limit("a number of months"))
        }
        Factor::Daily => Ok(SavingsFactor::Daily { months }),
        Factor::Monthly => Ok(SavingsFactor::Monthly { months }),
    }
}

formulas! { "statistics"
    /// Number of independent readings that a series of readings is worth.
    ///
    /// Parameters
    /// ----------
    /// count : array_like
    ///     Number of readings; 1 to 1000000000000000.
    /// lag1 : array_like
    ///     Lag-one autocorrelation; -0.999999 to 0.999999.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Number of independent readings whose mean is as sure.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity with a unit.
    ///
    /// Notes
    /// -----
    /// n (1 − ρ)/(1 + ρ), for first-order autoregressive noise and many readings.
    ///
    /// References
    /// ----------
    /// First-order autoregressive noise, from memory.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import statistics
    /// >>> round(statistics.effective_sample_size(8760, 0.9), 1)
    /// 461.1
    fn effective_sample_size(count: Own, lag1: Own) -> Floats = effective_count;

    /// Uncertainty of a saving, as a share of the saving.
    ///
    /// Parameters
    /// ----------
    /// quantile : array_like
    ///     Quantile of the confidence, such as 1.645 for 90 %; above 0 and at most 100.
    /// cv_rmse_pct : array_like
    ///     Coefficient of variation of the model before the change; above 0 and at most 1000 %.
    /// saved_share : array_like
    ///     Share of the use that was saved; above 0 and at most 1.
    /// count_before, count_after : array_like
    ///     Readings before and after the change; 1 to 1000000000000000.
    /// lag1 : array_like
    ///     Lag-one autocorrelation of the model's residuals; -0.999999 to 0.999999.
    /// months : array_like, optional
    ///     Months logged after the change; 1 to 120; needed by the factors for daily and monthly readings.
    /// savings_factor : {'original', 'daily', 'monthly'}, optional
    ///     Factor that stands for the covariates: 1.26 (original, as if not given), or a polynomial in the months.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Uncertainty over saving; a saving is usually claimed below 0.5 at 68 %.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     factor that needs the months without them.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// t f (CV/F) √((n/n′)(1 + 2/n′)/m) with n′ = n (1 − ρ)/(1 + ρ). For the audit trail; `CurrentLog` widens intervals for
    /// short logs too.
    ///
    /// References
    /// ----------
    /// ASHRAE Guideline 14-2014, annex B; Reddy and Claridge 2000; Sun and Baltazar 2013.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import statistics
    /// >>> round(statistics.savings_uncertainty(1.645, 8, 0.1, 365, 365, 0.6), 4)
    /// 0.1755
    fn savings_uncertainty(
        quantile: Own, cv_rmse_pct: Own, saved_share: Own, count_before: Own, count_after: Own, lag1: Own; months: Own
        | savings_factor: Factor
    ) -> Floats = |quantile, cv, share, before, after, lag1, months, named| {
        let worth = effective_count(before, lag1);
        Ok(fractional_savings_uncertainty(quantile, factor(named, months)?, cv, share, before, worth, after))
    };
}

/// Changes of level of a series, and what they rest on.
///
/// Parameters
/// ----------
/// values : array_like
///     Readings in the order of time; any number. A drive's power or current, a day's means.
/// least_segment : int, optional
///     Fewest readings between two changes; 2 to 1000000; 10 if not given.
/// cost : {'mean', 'mean_variance'}, optional
///     What changes: the mean (as if not given), or mean and spread.
///
/// Returns
/// -------
/// LevelChanges
///     First reading of each new level, the levels, the price of a change, spread and autocorrelation of the noise.
///
/// Raises
/// ------
/// InputError
///     A reading that is not finite, too few readings for two segments, or a series that never changes.
/// UnitError
///     Readings that carry a unit.
///
/// Notes
/// -----
/// The cheapest division of the whole series, exactly; the price of a change grows with the autocorrelation, since a
/// level that wanders by itself looks like many changes. A change point proposes a date, and proves nothing.
///
/// References
/// ----------
/// Jackson et al. 2005; penalty after Yao 1988, its factor for autocorrelation a closure of our own.
///
/// Examples
/// --------
/// >>> from pinfilm import statistics
/// >>> power = [5.0, 5.2, 4.9, 5.1, 5.0, 4.9, 3.1, 3.0, 3.3, 3.1, 2.9, 3.2]
/// >>> statistics.change_points(power, least_segment=5).points
/// (6,)
#[pyfunction]
#[pyo3(signature = (values, least_segment = None, cost = None))]
pub fn change_points<'py>(
    py: Python<'py>,
    values: Given<'py>,
    least_segment: Option<Given<'py>>,
    cost: Option<String>,
) -> PyResult<LevelChanges> {
    let cost: Cost = chosen(cost.as_deref(), row!(Own, cost))?;
    let least = match least_segment {
        Some(given) => count(&given, row!(Own, least_segment))?,
        None => crate::quantity::default_of(row!(Own, least_segment)).map_or(0, |default| default as usize),
    };
    let readings = Series::read(&values, row!(Own, values), 3)?.values;
    let found = aside(py, move || log::change::change_points(&readings, &[], cost, least))?;
    LevelChanges::made([
        list(py, found.points.into_iter())?,
        list(py, found.levels.into_iter())?,
        found.penalty.into_pyobject(py)?.into_any(),
        found.noise.lag1.into_pyobject(py)?.into_any(),
        found.noise.deviation.into_pyobject(py)?.into_any(),
    ])
}

/// Lag-one autocorrelation of a series.
///
/// Parameters
/// ----------
/// values : array_like
///     Readings in the order of time; any number.
///
/// Returns
/// -------
/// float
///     Autocorrelation, -1 to 1; 0 for a series that never changes.
///
/// Raises
/// ------
/// InputError
///     A reading that is not finite, or fewer than two.
/// UnitError
///     Readings that carry a unit.
///
/// Notes
/// -----
/// Σ d(t) d(t+1)/Σ d², d from the mean. Estimated from n readings it is on average (1 + 4ρ)/n too low.
///
/// References
/// ----------
/// Box and Jenkins 1970.
///
/// Examples
/// --------
/// >>> from pinfilm import statistics
/// >>> statistics.lag1([1.0, 3.0, 2.0])
/// -0.5
#[pyfunction]
#[pyo3(signature = (values))]
pub fn lag1(values: Given<'_>) -> PyResult<f64> {
    Ok(log::statistics::lag1(&Series::read(&values, row!(Own, values), 2)?.values))
}

/// Standard error of the mean of a series whose readings resemble their neighbours.
///
/// Parameters
/// ----------
/// values : array_like
///     Readings in the order of time; any number.
/// lags : int
///     Neighbours that are allowed for; 0 to 1000000.
/// correction : {'none', 'small_sample'}, optional
///     Nothing (as if not given), or the factor n/(n − 1) of a short series on the variance.
///
/// Returns
/// -------
/// float
///     Standard error in the unit of the readings.
///
/// Raises
/// ------
/// InputError
///     A reading that is not finite, fewer than two, or as many lags as readings.
/// UnitError
///     Readings that carry a unit.
///
/// Notes
/// -----
/// Autocovariances up to `lags` with Bartlett's weights. With short series it is too small: the proofs of a current log
/// take the wider of two errors.
///
/// References
/// ----------
/// Newey and West 1987.
///
/// Examples
/// --------
/// >>> from pinfilm import statistics
/// >>> round(statistics.newey_west_se([2.0, 4.0, 3.0, 5.0], 0, correction="small_sample"), 6)
/// 0.645497
#[pyfunction]
#[pyo3(signature = (values, lags, correction = None))]
pub fn newey_west_se(values: Given<'_>, lags: Given<'_>, correction: Option<String>) -> PyResult<f64> {
    let correction: Correction = chosen(correction.as_deref(), row!(Own, correction))?;
    let readings = Series::read(&values, row!(Own, values), 2)?.values;
    let lags = count(&lags, row!(Own, lags))?;
    if lags >= readings.len() {
        let n = readings.len();
        let message = format!("lags = {lags}, but {n} readings have fewer neighbours than that");
        return Err(Error::new(Code::OutOfRange, "lags", message)
            .number(lags as f64)
            .limit(format!("below {n}"))
            .into());
    }
    let one = vec![1.0; readings.len()];
    let errors = proof::newey_west_se(&[&one], &readings, lags, correction == Correction::SmallSample)?;
    Ok(errors.first().copied().unwrap_or(f64::NAN))
}

/// Which statistic of a model's errors is asked for.
type Judged = fn(&[f64], &[f64], usize) -> f64;

fn judged<'py>(
    py: Python<'py>,
    [measured, modelled, parameters]: [&Given<'py>; 3],
    row: &'static crate::quantity::Row,
    statistic: Judged,
) -> PyResult<Floats> {
    let parameters = count(parameters, row!(Own, parameters))?;
    // one reading more than parameters
    let measured = Series::read(measured, row!(Own, measured), parameters.saturating_add(1))?;
    let modelled = Series::read(modelled, row!(Own, modelled), 1)?;
    measured.fits(&modelled)?;
    if log::statistics::mean(&measured.values) == 0.0 {
        let message =
            "the mean of measured is 0, and this is a share of the mean: shift nothing, choose another measure";
        return Err(Error::new(Code::NoAnswer, "measured", message).number(0.0).limit("a mean other than 0").into());
    }
    Ok(Floats(float(py, row, statistic(&measured.values, &modelled.values, parameters)).unbind()))
}

/// Coefficient of variation of the root-mean-square error of a model.
///
/// Parameters
/// ----------
/// measured, modelled : array_like
///     Readings and what the model says for them; any number.
/// parameters : int
///     Parameters that were fitted; 0 to 1000.
///
/// Returns
/// -------
/// float
///     Coefficient in percent; at most 15 for a model of monthly, 30 of hourly readings.
///
/// Raises
/// ------
/// InputError
///     A reading that is not finite, unequal lengths, not more readings than parameters, or a mean of 0.
/// UnitError
///     Readings that carry a unit.
///
/// Notes
/// -----
/// √(Σ(y − ŷ)²/(n − p)) over the mean reading.
///
/// References
/// ----------
/// ASHRAE Guideline 14-2014.
///
/// Examples
/// --------
/// >>> from pinfilm import statistics
/// >>> round(statistics.cv_rmse_pct([10, 12, 14, 12], [10.5, 11.5, 14.5, 11.5], 1), 3)
/// 4.811
#[pyfunction]
#[pyo3(signature = (measured, modelled, parameters))]
pub fn cv_rmse_pct<'py>(
    py: Python<'py>,
    measured: Given<'py>,
    modelled: Given<'py>,
    parameters: Given<'py>,
) -> PyResult<Floats> {
    judged(py, [&measured, &modelled, &parameters], row!(Own, cv_rmse_pct), proof::cv_rmse)
}

/// Normalised mean bias error of a model.
///
/// Parameters
/// ----------
/// measured, modelled : array_like
///     Readings and what the model says for them; any number.
/// parameters : int
///     Parameters that were fitted; 0 to 1000.
///
/// Returns
/// -------
/// float
///     Bias in percent, positive where the model is too low; at most 5 for monthly, 10 for hourly readings.
///
/// Raises
/// ------
/// InputError
///     A reading that is not finite, unequal lengths, not more readings than parameters, or a mean of 0.
/// UnitError
///     Readings that carry a unit.
///
/// Notes
/// -----
/// Σ(y − ŷ)/((n − p) mean reading).
///
/// References
/// ----------
/// ASHRAE Guideline 14-2014.
///
/// Examples
/// --------
/// >>> from pinfilm import statistics
/// >>> round(statistics.nmbe_pct([10, 12, 14, 12], [9, 11, 13, 11], 0), 3)
/// 8.333
#[pyfunction]
#[pyo3(signature = (measured, modelled, parameters))]
pub fn nmbe_pct<'py>(
    py: Python<'py>,
    measured: Given<'py>,
    modelled: Given<'py>,
    parameters: Given<'py>,
) -> PyResult<Floats> {
    judged(py, [&measured, &modelled, &parameters], row!(Own, nmbe_pct), proof::nmbe)
}

/// Chart of the summed excess of readings over a target, both ways.
///
/// Parameters
/// ----------
/// values : array_like
///     Readings in the order of time; any number.
/// target : float
///     Level that they should keep; any number.
/// k : float
///     Allowance: half of the shift that is to be found, in the unit of the readings; at least 0.
/// h : float
///     Threshold of an alarm, in the unit of the readings; above 0.
///
/// Returns
/// -------
/// CusumPath
///     Both sums after each reading, labelled as the readings were, and the readings in alarm.
///
/// Raises
/// ------
/// InputError
///     A number outside its range, or a reading that is not finite.
/// UnitError
///     Readings that carry a unit.
///
/// Notes
/// -----
/// C⁺ = max(0, C⁺ + x − target − k), C⁻ = max(0, C⁻ − x + target − k); an alarm above h. With k of half and h of 4.76
/// standard deviations of independent readings, a false alarm comes once in about 370 readings on average; readings that resemble
/// their neighbours need a higher h.
///
/// References
/// ----------
/// Page 1954.
///
/// Examples
/// --------
/// >>> from pinfilm import statistics
/// >>> statistics.cusum([0.0, 3.0, 3.0], 0.0, 0.5, 4.0).alarms
/// (2,)
#[pyfunction]
#[pyo3(signature = (values, target, k, h))]
pub fn cusum<'py>(
    py: Python<'py>,
    values: Given<'py>,
    target: Given<'py>,
    k: Given<'py>,
    h: Given<'py>,
) -> PyResult<CusumPath> {
    let readings = Series::read(&values, row!(Own, values), 1)?;
    let [target, k, h] = [number(&target, row!(Own, target))?, number(&k, row!(Own, k))?, number(&h, row!(Own, h))?];
    let path = watch::cusum_path(&readings.values, target, k, h);
    CusumPath::made([readings.like(py, path.up)?, readings.like(py, path.down)?, list(py, path.alarms.into_iter())?])
}

by_hand! { "statistics"
    change_points(values: Own, least_segment: Own, cost: Own) -> LevelChanges;
    lag1(values: Own) -> Floats;
    newey_west_se(values: Own, lags: Own, correction: Own) -> Floats;
    cv_rmse_pct(measured: Own, modelled: Own, parameters: Own) -> Floats;
    nmbe_pct(measured: Own, modelled: Own, parameters: Own) -> Floats;
    cusum(values: Own, target: Own, k: Own, h: Own) -> CusumPath;
}
