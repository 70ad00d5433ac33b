//! `calibrate`.

use super::columns::{Columns, Foreign, Gathered};
use super::given::{Doubts, Lines, uncertain};
use super::reading::Reading;
use crate::py::long::{Watcher, long};
use crate::quantity::show;
use crate::study::{self as core, Quantiles, TeachSettings, headlines, learnable};
use numpy::PyArray1;
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// What readings teach about the guesses of a line, and what that changes.
///
/// Parameters
/// ----------
/// lines : Line or (Line, Line)
///     The line as the readings found it, or (now, proposed).
/// readings : sequence of Reading
///     Elongations, currents, oil used.
/// uncertain : mapping of str to Distribution, optional
///     The guesses, as in `sample`; independent of each other. Not given: dry and boundary friction, dry and boundary
///     wear coefficient, capture, as the register thinks of them, where they enter.
/// outputs : sequence of str, optional
///     What to predict before and after; not given: what people ask for first.
/// zero_error_pct : float, default 0.05
///     Error (% of length) of the reading on the new chain that all elongations are taken against; 0: none.
/// n : int, default 1024
///     Draws for the predictions, a power of two.
/// seed, threads, progress
///     As in `sample`.
///
/// Returns
/// -------
/// Calibration
///     Each guess before and after, what is learnt and what is not in words, predictions before and after.
///
/// Raises
/// ------
/// InputError
///     For no readings, an error of a reading that is none, a path that is none.
/// ConvergenceError
///     If the search or the walkers do not settle.
///
/// Notes
/// -----
/// Most probable values by damped least squares from five starts; errors from the curvature there, or, where that is no
/// bell curve, from an ensemble of walkers (Goodman and Weare 2010). What is not among the guesses is taken as surveyed:
/// an error in it goes into the guesses, tension times wear coefficient above all.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> line = pinfilm.examples.load("oven_now")
/// >>> readings = [pinfilm.Reading.elongation(pct, running_h=h) for pct, h in [(0.5, 2000), (0.75, 3000)]]
/// >>> found = pinfilm.calibrate(line, readings, {"wear.wear_coefficient_dry": None}, n=64)
/// >>> found.guesses()["input"].tolist()
/// ['wear.wear_coefficient_dry']
#[pyfunction]
#[pyo3(signature = (lines, readings, uncertain = None, *, outputs = None, zero_error_pct = None, n = None, seed = None, threads = None, progress = None))]
#[allow(clippy::too_many_arguments)]
pub fn calibrate<'py>(
    py: Python<'py>,
    lines: Lines<'py>,
    readings: Vec<Bound<'py, Reading>>,
    uncertain: Option<Doubts<'py>>,
    outputs: Option<Vec<String>>,
    zero_error_pct: Option<f64>,
    n: Option<usize>,
    seed: Option<u64>,
    threads: Option<i64>,
    progress: Option<Watcher<'py>>,
) -> PyResult<Calibration> {
    let usual = TeachSettings::default();
    let settings = TeachSettings {
        zero_error_pct: zero_error_pct.unwrap_or(usual.zero_error_pct),
        n: n.unwrap_or(usual.n),
        seed: seed.unwrap_or(usual.seed),
    };
    let subject = lines.subject()?;
    let readings: Vec<core::Reading> = readings.iter().map(|reading| reading.get().on(&subject)).collect();
    let outputs = outputs.unwrap_or_else(|| headlines(&subject).iter().map(|path| (*path).to_string()).collect());
    let doubts = self::uncertain(subject, uncertain.as_ref(), None, learnable)?;
    let watcher = progress.unwrap_or(Watcher(None));
    let work = |progress: &mut core::Progress<'_>| core::calibrate_line(doubts, readings, &outputs, settings, progress);
    Ok(Calibration(long(py, threads, &watcher, work)?))
}

/// What readings taught.
#[pyclass(frozen, module = "pinfilm")]
pub struct Calibration(core::Taught);

#[pymethods]
impl Calibration {
    /// Combinations of guesses with how well they are learnt, in sentences, best learnt first.
    #[getter]
    fn learnt(&self) -> Vec<String> {
        self.0.learnt.clone()
    }
    /// Share of its guessed spread that is left of each of these.
    #[getter]
    fn spread_left(&self) -> Vec<f64> {
        self.0.spread_left.clone()
    }
    /// Readings that the most probable values leave unexplained, in sentences.
    #[getter]
    fn doubtful(&self) -> Vec<String> {
        self.0.doubtful.clone()
    }
    /// Each guess before and after: the values that 5, 50 and 95 % lie below.
    fn guesses(&self, py: Python<'_>) -> PyResult<Columns> {
        let mut table = Gathered::default();
        let names = self.0.uncertain.names();
        table.words(py, "input", "path of the guess", names)?;
        let units: Vec<String> = self.0.uncertain.rows().iter().map(|row| row.unit.label.to_string()).collect();
        table.words(py, "unit", "its unit", &units)?;
        quantiles(py, &mut table, &self.0.before, "before");
        quantiles(py, &mut table, &self.0.after, "after");
        Ok(table.table())
    }
    /// Predictions before and after: the values that 5, 50 and 95 % lie below; infinite is never.
    ///
    /// Only the guesses that were calibrated are uncertain here.
    fn predictions(&self, py: Python<'_>) -> PyResult<Columns> {
        let mut table = Gathered::default();
        table.words(py, "output", "path of the prediction", self.0.outputs.paths())?;
        let units: Vec<String> = self.0.outputs.rows().iter().map(|row| row.unit.label.to_string()).collect();
        table.words(py, "unit", "its unit", &units)?;
        let side = |i: usize| self.0.predicted.iter().map(|both| both[i]).collect::<Vec<_>>();
        quantiles(py, &mut table, &side(0), "before");
        quantiles(py, &mut table, &side(1), "after");
        Ok(table.table())
    }
    /// Each reading with what is computed for it, with the guesses in their middle and with the most probable values.
    fn readings(&self, py: Python<'_>) -> PyResult<Columns> {
        let mut table = Gathered::default();
        let names: Vec<String> = self.0.readings.iter().map(core::Reading::name).collect();
        table.words(py, "reading", "what was read", &names)?;
        let read = |of: &dyn Fn((f64, f64)) -> f64| self.0.readings.iter().map(|r| of(r.value_and_error())).collect();
        table.described(py, "value", "", "what was read", read(&|(value, _)| value));
        table.described(py, "error", "", "standard deviation of its error", read(&|(_, error)| error));
        let computed = |i: usize| self.0.computed.iter().map(|both| both[i]).collect();
        table.described(py, "guessed", "", "computed with the guesses in their middle", computed(0));
        table.described(py, "fitted", "", "computed with the most probable values", computed(1));
        Ok(table.table())
    }
    /// Draws of the guesses after the readings, a column each.
    #[getter]
    fn draws(&self, py: Python<'_>) -> Columns {
        let mut table = Gathered::default();
        let each = self.0.uncertain.names().iter().zip(self.0.uncertain.rows()).zip(&self.0.draws);
        each.for_each(|((name, row), column)| table.numbers(py, name, row, column.clone()));
        table.table()
    }
    /// Whether a bell curve described the answer; if not, walkers drew it.
    #[getter]
    fn bell_shaped(&self) -> bool {
        self.0.bell_shaped
    }
    /// Split R̂ of each guess, and of the zero reading, where walkers ran.
    #[getter]
    fn r_hat(&self) -> Option<Vec<f64>> {
        self.0.walkers.as_ref().map(|(r_hat, _)| r_hat.clone())
    }
    /// Effective draws of each guess, and of the zero reading, where walkers ran.
    #[getter]
    fn effective_draws(&self) -> Option<Vec<f64>> {
        self.0.walkers.as_ref().map(|(_, draws)| draws.clone())
    }
    /// Starts of the search that agree, of how many.
    #[getter]
    fn agreeing_starts(&self) -> (usize, usize) {
        self.0.agreeing_starts
    }
    /// Half the squared distance from readings and guesses, in their errors and spreads.
    #[getter]
    fn misfit(&self) -> f64 {
        self.0.misfit
    }
    /// The error of the zero reading (%): most probable value and standard deviation; None without elongations.
    #[getter]
    fn zero_pct(&self) -> Option<(f64, f64)> {
        self.0.zero_pct.map(Into::into)
    }
    /// As ArviZ InferenceData: posterior draws, readings as observed data. Needs ArviZ.
    fn to_arviz(&self, py: Python<'_>) -> PyResult<Foreign> {
        let group = |entries: Vec<(String, Vec<f64>)>, axes: (i32, i32)| -> PyResult<Bound<'_, PyDict>> {
            let dict = PyDict::new(py);
            for (name, values) in entries {
                let array = PyArray1::from_vec(py, values).into_any();
                dict.set_item(name, if axes == (0, 0) { array } else { array.call_method1("reshape", axes)? })?;
            }
            Ok(dict)
        };
        let draws = self.0.uncertain.names().iter().cloned().zip(self.0.draws.iter().cloned());
        let posterior = group(draws.collect(), (1, -1))?;
        let values: Vec<f64> = self.0.readings.iter().map(|reading| reading.value_and_error().0).collect();
        let observed = group(vec![("readings".into(), values)], (0, 0))?;
        let arviz = py.import("arviz")?;
        let version: String = arviz.getattr("__version__")?.extract()?;
        let made = if version.starts_with("0.") {
            let named = PyDict::new(py);
            named.set_item("posterior", posterior)?;
            named.set_item("observed_data", observed)?;
            arviz.call_method("from_dict", (), Some(&named))?
        } else {
            let groups = PyDict::new(py);
            groups.set_item("posterior", posterior)?;
            groups.set_item("observed_data", observed)?;
            arviz.call_method1("from_dict", (groups,))?
        };
        Ok(Foreign(made.unbind()))
    }
    fn __repr__(&self) -> String {
        let to = |q: Quantiles| {
            let word = |x: f64| if x == f64::INFINITY { "never".into() } else { show::brief(x).to_string() };
            format!("{} ({} to {})", word(q[1]), word(q[0]), word(q[2]))
        };
        let mut text = format!("{} readings\n", self.0.readings.len());
        for sentence in self.0.doubtful.iter().chain(&self.0.learnt) {
            text += &format!("  {sentence}\n");
        }
        for (i, name) in self.0.uncertain.names().iter().enumerate() {
            text += &format!("  {name}: {} → {}\n", to(self.0.before[i]), to(self.0.after[i]));
        }
        for (path, [before, after]) in self.0.outputs.paths().iter().zip(&self.0.predicted) {
            text += &format!("  {path}: {} → {}\n", to(*before), to(*after));
        }
        text.trim_end().to_string()
    }
    fn _repr_html_(&self) -> String {
        show::html_text(&self.__repr__())
    }
}

/// Three columns of quantiles.
fn quantiles(py: Python<'_>, table: &mut Gathered, of: &[Quantiles], when: &str) {
    for (i, p) in ["p5", "p50", "p95"].into_iter().enumerate() {
        let means = format!("value that {} % lie below, {when} the readings", &p[1..]);
        table.described(py, &format!("{when}_{p}"), "", &means, of.iter().map(|q| q[i]).collect());
    }
}
