//! `sensitivity`.

use super::columns::{Columns, Gathered};
use super::given::{Correlations, Doubts, Lines, uncertain};
use super::sampling::doubts_table;
use crate::py::long::{Watcher, long};
use crate::quantity::show;
use crate::study::{self as core, Estimate, NETS, SampleSettings, Uncertain, headlines};
use pyo3::prelude::*;

/// Which uncertain input a result hangs on: Sobol indices of first order and in total, with their confidence.
///
/// Parameters
/// ----------
/// lines : Line or (Line, Line)
///     A line, or (now, proposed).
/// uncertain, correlation
///     As in `sample`. Correlated inputs have an index together.
/// output : str, optional
///     Dotted path of one number of the result; not given: the first that people ask for (the saving of a pair).
/// log : bool, default False
///     Study its natural logarithm.
/// n : int, default 4096
///     Base rows in all, a power of two; n × (inputs + 2) draws are computed, in eight shifted designs.
/// seed, threads, progress
///     As in `sample`.
///
/// Returns
/// -------
/// Sensitivity
///     Its `table()` has the inputs, most important first: share of the variance that goes if this input alone were known
///     (`first`), share that stays if all others were known (`total`), and the result at its 5 % and 95 % values.
///
/// Raises
/// ------
/// InputError
///     As in `sample`, and for an output that has no number in some draw: study the saving, not a payback that may never
///     come.
///
/// Notes
/// -----
/// First order of Saltelli et al. (2010), total of Jansen (1999), on Sobol points; confidence from the differences of the
/// eight designs. A base row with a draw that cannot be computed is left out whole, and shares hold among the rest; fewer than
/// half are refused.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> line = pinfilm.examples.load("oven_now")
/// >>> inputs = {"costs.energy_price_per_kwh": None, "wear.wear_coefficient_dry": None}
/// >>> found = pinfilm.sensitivity(line, inputs, output="cost.energy", n=64)
/// >>> found.table()["input"][0]
/// 'costs.energy_price_per_kwh'
#[pyfunction]
#[pyo3(signature = (lines, uncertain = None, *, output = None, log = false, correlation = None, n = None, seed = None, threads = None, progress = None))]
#[allow(clippy::too_many_arguments)]
pub fn sensitivity<'py>(
    py: Python<'py>,
    lines: Lines<'py>,
    uncertain: Option<Doubts<'py>>,
    output: Option<&str>,
    log: bool,
    correlation: Option<Correlations<'py>>,
    n: Option<usize>,
    seed: Option<u64>,
    threads: Option<i64>,
    progress: Option<Watcher<'py>>,
) -> PyResult<Sensitivity> {
    let usual = SampleSettings::default();
    let subject = lines.subject()?;
    let output = output.unwrap_or(headlines(&subject)[0]).to_string();
    let doubts = self::uncertain(subject, uncertain.as_ref(), correlation.as_ref(), Uncertain::usual)?;
    let (n, seed) = (n.unwrap_or(usual.n), seed.unwrap_or(usual.seed));
    let watcher = progress.unwrap_or(Watcher(None));
    let found = long(py, threads, &watcher, |progress| core::what_matters(doubts, &output, log, n, seed, progress))?;
    Ok(Sensitivity { found, n })
}

/// What a result hangs on.
#[pyclass(frozen, module = "pinfilm")]
pub struct Sensitivity {
    found: core::Matters,
    n: usize,
}

#[pymethods]
impl Sensitivity {
    /// Path of the result.
    #[getter]
    fn output(&self) -> &str {
        &self.found.outputs.paths()[0]
    }
    /// Its unit.
    #[getter]
    fn unit(&self) -> &str {
        self.found.outputs.rows()[0].unit.label
    }
    /// Whether its logarithm was studied.
    #[getter]
    fn log(&self) -> bool {
        self.found.log
    }
    /// Base rows in all.
    #[getter]
    fn n(&self) -> usize {
        self.n
    }
    /// Draws that were computed for the indices.
    #[getter]
    fn rows(&self) -> usize {
        self.found.rows
    }
    /// Share of the base rows that was left out, because a draw of theirs could not be computed.
    #[getter]
    fn left_out(&self) -> f64 {
        self.found.left_out
    }
    /// The result with all inputs in their middle.
    #[getter]
    fn middle(&self) -> f64 {
        self.found.middle
    }
    /// Mean of the result; None where it does not vary.
    #[getter]
    fn mean(&self) -> Option<f64> {
        self.found.indices.as_ref().map(|indices| indices.mean)
    }
    /// Its variance; None where it does not vary.
    #[getter]
    fn variance(&self) -> Option<f64> {
        self.found.indices.as_ref().map(|indices| indices.variance)
    }
    /// What was uncertain, in the order of the dimensions.
    #[getter]
    fn uncertain(&self, py: Python<'_>) -> PyResult<Columns> {
        doubts_table(py, &self.found.uncertain)
    }
    /// Indices of every input or group of correlated inputs, most important first, with half widths of 95 % confidence.
    ///
    /// Empty where the result does not vary. Small negative indices are noise, left as they are.
    fn table(&self, py: Python<'_>) -> PyResult<Columns> {
        let mut table = Gathered::default();
        let order = self.order();
        let names: Vec<String> = order.iter().map(|&group| self.found.name(group)).collect();
        table.words(py, "input", "path of the input, or paths of correlated ones", &names)?;
        let column = |of: &dyn Fn(&core::Indices, usize) -> Estimate, width: bool| -> Vec<f64> {
            let number = |e: Estimate| if width { e.half_width(NETS, CONFIDENCE).unwrap_or(f64::NAN) } else { e.value };
            self.found.indices.iter().flat_map(|indices| order.iter().map(|&g| number(of(indices, g)))).collect()
        };
        let first = |indices: &core::Indices, group: usize| indices.first[group];
        let total = |indices: &core::Indices, group: usize| indices.total[group];
        table.described(
            py,
            "first",
            "",
            "share of the variance that goes if this alone were known",
            column(&first, false),
        );
        table.described(py, "first_confidence", "", "half of its 95 % interval", column(&first, true));
        table.described(
            py,
            "total",
            "",
            "share of the variance that stays if all others were known",
            column(&total, false),
        );
        table.described(py, "total_confidence", "", "half of its 95 % interval", column(&total, true));
        Ok(table.table())
    }
    /// The result at the 5 % and 95 % value of each input, all others in their middle: the bars of a tornado, longest first.
    fn swings(&self, py: Python<'_>) -> PyResult<Columns> {
        let mut table = Gathered::default();
        let swings = &self.found.swings;
        let mut order: Vec<usize> = (0..swings.len()).collect();
        let length = |i: usize| (swings[i].high - swings[i].low).abs();
        order.sort_by(|&a, &b| length(b).total_cmp(&length(a)));
        let names: Vec<String> = order.iter().map(|&i| self.found.uncertain.names()[i].clone()).collect();
        table.words(py, "input", "path of the input", &names)?;
        let units: Vec<String> = order.iter().map(|&i| self.found.uncertain.rows()[i].unit.label.to_string()).collect();
        table.words(py, "input_unit", "its unit", &units)?;
        let column = |of: &dyn Fn(core::Swing) -> f64| order.iter().map(|&i| of(swings[i])).collect::<Vec<_>>();
        table.described(py, "input_p5", "", "value of the input that 5 % lie below", column(&|s| s.input_low));
        table.described(py, "input_p95", "", "value of the input that 95 % lie below", column(&|s| s.input_high));
        let unit = self.found.outputs.rows()[0].unit.label;
        table.described(py, "low", unit, "the result at the first", column(&|s| s.low));
        table.described(py, "high", unit, "the result at the second", column(&|s| s.high));
        Ok(table.table())
    }
    fn __repr__(&self) -> String {
        let mut text = format!("what {} hangs on, from {} draws\n", self.output(), self.found.rows);
        let Some(indices) = &self.found.indices else { return text + "  it does not vary with any of the inputs" };
        let order = self.order();
        let width = order.iter().take(10).map(|&group| self.found.name(group).len()).max().unwrap_or(0);
        for &group in order.iter().take(10) {
            let of = |e: Estimate| {
                let half =
                    e.half_width(NETS, CONFIDENCE).map_or_else(String::new, |h| format!(" ± {}", show::brief(h)));
                format!("{:.3}{half}", e.value)
            };
            let name = self.found.name(group);
            text +=
                &format!("  {name:width$}  first {}, total {}\n", of(indices.first[group]), of(indices.total[group]));
        }
        if order.len() > 10 {
            text += &format!("  … {} in all\n", order.len());
        }
        if self.found.left_out > 0.0 {
            let percent = show::brief(crate::quantity::unit::PCT.from_si(self.found.left_out));
            text += &format!("  {percent} % of the base rows left out: a draw of theirs could not be computed\n");
        }
        text.trim_end().to_string()
    }
    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        let text = self.__repr__();
        let caption = text.lines().next().unwrap_or_default();
        let table = self.table(py)?.html(py, caption, self.found.groups.len())?;
        let foot = text.lines().last().filter(|line| line.contains("left out") || line.contains("does not vary"));
        Ok(foot.map_or_else(String::new, show::html_text)).map(|foot| table + &foot)
    }
}

/// Confidence of the intervals that are shown.
const CONFIDENCE: f64 = 0.95;

impl Sensitivity {
    /// Groups by falling total index.
    fn order(&self) -> Vec<usize> {
        let Some(indices) = &self.found.indices else { return Vec::new() };
        let mut order: Vec<usize> = (0..self.found.groups.len()).collect();
        order.sort_by(|&a, &b| indices.total[b].value.total_cmp(&indices.total[a].value));
        order
    }
}
