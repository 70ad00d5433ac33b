//! `sample` and `default_uncertainty`.

use super::columns::{Array, Columns, Foreign, Gathered};
use super::distribution::Distribution;
use super::given::{Correlations, Doubts, Lines, uncertain};
use crate::py::long::{Watcher, long};
use crate::quantity::show;
use crate::study::{self as core, Doubt, Generator, NETS, SampleSettings, Side, Uncertain, headlines};
use numpy::PyArray1;
use pyo3::exceptions::PyKeyError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

/// A number with the error of its drawing.
#[pyclass(frozen, module = "pinfilm")]
pub struct Estimate(pub core::Estimate);

#[pymethods]
impl Estimate {
    /// The number; infinite where it is `never`, NaN where no draw has one.
    #[getter]
    fn value(&self) -> f64 {
        self.0.value
    }
    /// Its standard error over eight nets; None where it is not known.
    #[getter]
    fn error(&self) -> Option<f64> {
        self.0.error
    }
    fn __float__(&self) -> f64 {
        self.0.value
    }
    fn __repr__(&self) -> String {
        estimate(self.0)
    }
    fn _repr_html_(&self) -> String {
        show::html_text(&self.__repr__())
    }
}

fn estimate(of: core::Estimate) -> String {
    match (of.value, of.error) {
        (f64::INFINITY, _) => "never".into(),
        (value, Some(error)) => format!("{} ± {}", show::brief(value), show::brief(error)),
        (value, None) => show::brief(value).to_string(),
    }
}

/// What is uncertain about a line or a pair if nobody says, from the register.
///
/// Parameters
/// ----------
/// lines : Line or (Line, Line)
///     A line, or (now, proposed).
///
/// Returns
/// -------
/// dict
///     Distribution by dotted path, of those inputs that move a number of the result: closures of our own, values from
///     memory, common practice. Of a pair, two distributions (now, proposed) share their draw; a path led by `now.` or
///     `proposed.` is one side alone. Change it as you like and give it to `sample`.
///
/// Raises
/// ------
/// InputError
///     If the line cannot be evaluated.
///
/// Notes
/// -----
/// A spread is taken about the value of the line. What the survey names of an oil or a motor is taken as read, and prices
/// of labour, standstill and chain are not drawn unless you name them.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> pinfilm.default_uncertainty(pinfilm.examples.load("oven_now"))["wear.wear_coefficient_dry"].kind
/// 'lognormal'
#[pyfunction]
pub fn default_uncertainty<'py>(py: Python<'py>, lines: Lines<'py>) -> PyResult<Usual> {
    let subject = lines.subject()?;
    let doubts = py.detach(|| core::default_uncertainty(&subject))?;
    let dict = PyDict::new(py);
    for (path, doubt) in doubts {
        match doubt {
            Doubt::Same(one) => dict.set_item(path, Distribution(one).into_pyobject(py)?)?,
            Doubt::Each(now, proposed) => {
                let pair = [Distribution(now).into_pyobject(py)?, Distribution(proposed).into_pyobject(py)?];
                dict.set_item(path, PyTuple::new(py, pair)?)?;
            }
            Doubt::Register => dict.set_item(path, py.None())?,
        }
    }
    Ok(Usual(dict.unbind()))
}

/// Distributions by path, typed for stubs.
pub struct Usual(Py<PyDict>);

impl<'py> IntoPyObject<'py> for Usual {
    type Target = PyDict;
    type Output = Bound<'py, PyDict>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "DoubtsOut");
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        Ok(self.0.into_bound(py))
    }
}

/// Draw what is uncertain about a line or a change, evaluate every draw, and say how far the results spread.
///
/// Parameters
/// ----------
/// lines : Line or (Line, Line)
///     A line, or (now, proposed): a pair is compared, and shares its draws.
/// uncertain : mapping of str to Distribution, optional
///     By dotted path; None as a value stands for what the register thinks. Not given: `default_uncertainty(lines)`, with
///     friction and wear of a surface correlated by 0.5.
/// correlation : mapping of (str, str) to float, or matrix, optional
///     Correlations of the normal scores of the uncertain inputs.
/// n : int, default 4096
///     Draws in all, in eight shifted nets: a power of two for "sobol".
/// seed : int, default 1
///     Same seed, same draws, for any number of threads.
/// outputs : sequence of str, optional
///     Dotted paths of the result; not given: every single number.
/// generator : {"sobol", "random"}
///     Evenly spread points, or independent random numbers.
/// threads : int, optional
///     Not given: all of the machine.
/// progress : callable, optional
///     Called with (draws done, all draws) some twenty times a second; what it raises stops the calculation.
///
/// Returns
/// -------
/// Sample
///     Percentiles and probabilities with the error of their drawing, the draws, and why some could not be computed.
///
/// Raises
/// ------
/// InputError
///     For a path that is none (naming the nearest), a distribution outside what its path allows, a correlation matrix
///     that is none, a number of draws that makes no nets or does not fit into memory.
///
/// Notes
/// -----
/// Sobol points under eight digital shifts; Gaussian copula (Nelsen 2006); the error is that between the nets.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> price = {"costs.energy_price_per_kwh": pinfilm.Distribution.uniform(0.1, 0.3)}
/// >>> found = pinfilm.sample(pinfilm.examples.load("oven_now"), price, n=64, outputs=["cost.energy"])
/// >>> low, high = (found.percentile("cost.energy", p).value for p in (0.05, 0.95))
/// >>> low < high
/// True
#[pyfunction]
#[pyo3(signature = (lines, uncertain = None, *, correlation = None, n = None, seed = None, outputs = None, generator = None, threads = None, progress = None))]
#[allow(clippy::too_many_arguments)]
pub fn sample<'py>(
    py: Python<'py>,
    lines: Lines<'py>,
    uncertain: Option<Doubts<'py>>,
    correlation: Option<Correlations<'py>>,
    n: Option<usize>,
    seed: Option<u64>,
    outputs: Option<Vec<String>>,
    generator: Option<&str>,
    threads: Option<i64>,
    progress: Option<Watcher<'py>>,
) -> PyResult<Sample> {
    let usual = SampleSettings::default();
    let settings = SampleSettings {
        n: n.unwrap_or(usual.n),
        seed: seed.unwrap_or(usual.seed),
        generator: generator.map_or(Ok(usual.generator), Generator::from_word)?,
    };
    let subject = lines.subject()?;
    let doubts = self::uncertain(subject, uncertain.as_ref(), correlation.as_ref(), Uncertain::usual)?;
    let watcher = progress.unwrap_or(Watcher(None));
    let found = long(py, threads, &watcher, |progress| core::sample(doubts, outputs.as_deref(), settings, progress))?;
    Ok(Sample(found))
}

/// Draws of a line or a pair, and what came out.
///
/// `found["payback_days"]` is the column of an output, or of a drawn input; NaN where a draw has no number, infinite where
/// a payback never comes.
#[pyclass(frozen, module = "pinfilm")]
pub struct Sample(core::Sample);

#[pymethods]
impl Sample {
    /// Draws in all.
    #[getter]
    fn n(&self) -> usize {
        self.0.settings.n
    }
    /// Seed of the draws.
    #[getter]
    fn seed(&self) -> u64 {
        self.0.settings.seed
    }
    /// Paths of the outputs.
    #[getter]
    fn outputs(&self) -> Vec<String> {
        self.0.outputs.paths().to_vec()
    }
    /// What was uncertain, in the order of the dimensions.
    #[getter]
    fn uncertain(&self, py: Python<'_>) -> PyResult<Columns> {
        doubts_table(py, &self.0.uncertain)
    }
    fn __getitem__(&self, py: Python<'_>, path: &str) -> PyResult<Array> {
        let column = match self.0.outputs.paths().iter().position(|known| known == path) {
            Some(i) => &self.0.columns[i],
            None => match self.0.uncertain.names().iter().position(|known| known == path) {
                Some(i) => &self.0.inputs[i],
                None => return Err(PyKeyError::new_err(format!("{path} is neither an output nor a drawn input"))),
            },
        };
        Ok(Array(PyArray1::from_slice(py, column).into_any().unbind()))
    }
    /// Drawn inputs, a column each; of a pair, on the side that has them.
    #[getter]
    fn inputs(&self, py: Python<'_>) -> Columns {
        let mut table = Gathered::default();
        let each = self.0.uncertain.names().iter().zip(self.0.uncertain.rows()).zip(&self.0.inputs);
        each.for_each(|((name, row), column)| table.numbers(py, name, row, column.clone()));
        table.table()
    }
    /// Outputs, a column each.
    #[getter]
    fn columns(&self, py: Python<'_>) -> Columns {
        let mut table = Gathered::default();
        let each = self.0.outputs.paths().iter().zip(self.0.outputs.rows()).zip(&self.0.columns);
        each.for_each(|((name, row), column)| table.numbers(py, name, row, column.clone()));
        table.table()
    }
    /// The value of an output that a share `p` of the computed draws lies below, with the error of its drawing.
    fn percentile(&self, path: &str, p: f64) -> PyResult<Estimate> {
        Ok(Estimate(self.0.percentile(path, p)?))
    }
    /// Probability that an output is at most a limit, over the computed draws, with the error of its drawing.
    ///
    /// Examples
    /// --------
    /// >>> import pinfilm
    /// >>> change = pinfilm.sample(pinfilm.examples.pair("oven"), n=64, outputs=["payback_days"])
    /// >>> 0 <= change.probability("payback_days", at_most=365).value <= 1
    /// True
    fn probability(&self, path: &str, at_most: f64) -> PyResult<Estimate> {
        Ok(Estimate(self.0.probability(path, at_most)?))
    }
    /// Percentiles of every output with their errors, and draws without a number.
    fn summary(&self, py: Python<'_>) -> PyResult<Columns> {
        let paths = self.0.outputs.paths();
        let mut table = Gathered::default();
        table.words(py, "output", "path of the output", paths)?;
        let units: Vec<String> = self.0.outputs.rows().iter().map(|row| row.unit.label.to_string()).collect();
        table.words(py, "unit", "its unit", &units)?;
        for (name, p) in [("p5", 0.05), ("p50", 0.5), ("p95", 0.95)] {
            let found = paths.iter().map(|path| self.0.percentile(path, p)).collect::<crate::Result<Vec<_>>>()?;
            let percent = crate::quantity::unit::PCT.from_si(p);
            let means = format!("value that {percent} % of the draws lie below");
            table.described(py, name, "", &means, found.iter().map(|e| e.value).collect());
            let errors = found.iter().map(|e| e.error.unwrap_or(f64::NAN)).collect();
            table.described(py, &format!("{name}_error"), "", "standard error of its drawing", errors);
        }
        let without = paths.iter().map(|path| self.0.without_number(path).map(|count| count as f64));
        let without = without.collect::<crate::Result<_>>()?;
        table.described(py, "without_number", "", "computed draws that have no number here", without);
        Ok(table.table())
    }
    /// Share of the draws that could not be computed.
    #[getter]
    fn share_failed(&self) -> f64 {
        self.0.share_failed()
    }
    /// Why some could not: code, count, number of the first such draw, and what was wrong with it.
    #[getter]
    fn failures(&self, py: Python<'_>) -> PyResult<Foreign> {
        let list = pyo3::types::PyList::empty(py);
        for failure in &self.0.failures {
            let dict = PyDict::new(py);
            dict.set_item("code", failure.code)?;
            dict.set_item("count", failure.count)?;
            dict.set_item("first", failure.row)?;
            dict.set_item("message", &failure.message)?;
            list.append(dict)?;
        }
        Ok(Foreign(list.into_any().unbind()))
    }
    fn __repr__(&self) -> PyResult<String> {
        let n = self.0.settings.n;
        let mut text = format!("{n} draws of {} uncertain inputs in {NETS} nets\n", self.0.uncertain.names().len());
        let known = |path: &&str| self.0.outputs.paths().iter().any(|p| p == path);
        let first: Vec<&str> = headlines(self.0.uncertain.subject()).iter().copied().filter(known).collect();
        let all = || self.0.outputs.paths().iter().map(String::as_str).take(8).collect();
        let shown: Vec<&str> = if first.is_empty() { all() } else { first };
        let width = shown.iter().map(|path| path.len()).max().unwrap_or(0);
        for path in &shown {
            let each = [0.05, 0.5, 0.95].map(|p| self.0.percentile(path, p).map(estimate));
            let [p5, p50, p95] = each;
            let unit = self.0.outputs.rows()[self.0.outputs.place(path)?].unit.label;
            text += &format!("  {path:width$}  P5 {}, P50 {}, P95 {} {unit}\n", p5?, p50?, p95?);
        }
        if shown.len() < self.0.outputs.len() {
            text += &format!("  … {} outputs in all\n", self.0.outputs.len());
        }
        for failure in &self.0.failures {
            text +=
                &format!("  {} draws could not be computed ({}): {}\n", failure.count, failure.code, failure.message);
        }
        Ok(text.trim_end().to_string())
    }
    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        let (text, summary) = (self.__repr__()?, self.summary(py)?);
        let failed: Vec<&str> = text.lines().filter(|line| line.contains("could not be computed")).collect();
        let table = summary.html(py, text.lines().next().unwrap_or_default(), self.0.outputs.len())?;
        Ok(if failed.is_empty() { table } else { table + &show::html_text(&failed.join("\n")) })
    }
}

/// What is thought of each uncertain input, as a table.
pub fn doubts_table(py: Python<'_>, uncertain: &Uncertain) -> PyResult<Columns> {
    let mut table = Gathered::default();
    let rows = uncertain.rows();
    let words = |of: &dyn Fn(usize) -> String| (0..rows.len()).map(of).collect::<Vec<_>>();
    table.words(py, "input", "path of the input", uncertain.names())?;
    table.words(py, "unit", "its unit", &words(&|i| rows[i].unit.label.to_string()))?;
    table.words(py, "means", "what it means", &words(&|i| rows[i].means.to_string()))?;
    for side in uncertain.subject().sides() {
        let kinds = (0..rows.len()).map(|i| Distribution(uncertain.distribution_of(i, *side)).into_pyobject(py));
        let list = pyo3::types::PyList::new(py, kinds.collect::<PyResult<Vec<_>>>()?)?;
        let name = match (uncertain.subject().is_pair(), side) {
            (false, _) => "distribution",
            (true, Side::Now) => "now",
            (true, Side::Proposed) => "proposed",
        };
        table.objects(py, name, "what is thought of it", list.into_any())?;
    }
    Ok(table.table())
}
