//! `sweep`.

use super::columns::{Columns, Gathered};
use super::given::{Grid, Lines, axes};
use crate::py::long::{Watcher, long};
use crate::quantity::Value;
use crate::study::{self as core, Column, Subject};
use pyo3::prelude::*;
use pyo3::types::PyList;

/// Evaluate a line, or compare a pair, for every combination of the values named.
///
/// Parameters
/// ----------
/// lines : Line or (Line, Line)
///     A line, or (now, proposed); then a path led by `now.` or `proposed.` is one side, any other both.
/// grid : mapping of str to sequence
///     Values by dotted path; the last path changes fastest. A value may be a whole group, such as an Oil or a Spray.
/// outputs : sequence of str, optional
///     Dotted paths of the result, words too; not given: every single number.
/// threads : int, optional
///     Not given: all of the machine.
/// progress : callable, optional
///     Called with (rows done, all rows) some twenty times a second; what it raises stops the calculation.
///
/// Returns
/// -------
/// Columns
///     A column for each path of the grid and each output, then `status` ("ok" or "error"), `code` and `message`: a
///     combination that cannot be computed is told in its row and stops no other.
///
/// Raises
/// ------
/// InputError
///     For a path that is none (naming the nearest), a value of the wrong kind, an empty axis, a grid too large for memory.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> line = pinfilm.examples.load("oven_now")
/// >>> grid = {"lubrication.timer.dwell_min": [45.0, 52.0], "oil.iso_vg": [150, 220]}
/// >>> table = pinfilm.sweep(line, grid, outputs=["fill.never_reached"])
/// >>> table.rows, set(table["status"])
/// (4, {'ok'})
#[pyfunction]
#[pyo3(signature = (lines, grid, *, outputs = None, threads = None, progress = None))]
pub fn sweep<'py>(
    py: Python<'py>,
    lines: Lines<'py>,
    grid: Grid<'py>,
    outputs: Option<Vec<String>>,
    threads: Option<i64>,
    progress: Option<Watcher<'py>>,
) -> PyResult<Columns> {
    let subject = lines.subject()?;
    let (axes, given) = axes(&grid)?;
    let watcher = progress.unwrap_or(Watcher(None));
    let found = long(py, threads, &watcher, |progress| core::sweep(&subject, axes, outputs.as_deref(), progress))?;
    let mut table = Gathered::default();
    for (i, (axis, values)) in found.axes.iter().zip(&given).enumerate() {
        let row = Subject::input_row(axis.path.trim_start_matches("now.").trim_start_matches("proposed.")).ok();
        let (unit, means) = row.map_or(("", "a group of the survey"), |row| (row.unit.label, row.means));
        let places = (0..found.rows()).map(|row| found.place(i, row));
        let number = |at: usize| match axis.values[at].value {
            Value::Number(number) => Some(number),
            _ => None,
        };
        let whole = |at: usize| if let Value::Whole(number) = axis.values[at].value { Some(number) } else { None };
        if let Some(numbers) = places.clone().map(whole).collect::<Option<Vec<i64>>>() {
            table.array(&axis.path, unit, means, numpy::PyArray1::from_vec(py, numbers).into_any().unbind());
        } else if let Some(numbers) =
            places.clone().map(|at| number(at).or_else(|| whole(at).map(|w| w as f64))).collect()
        {
            table.described(py, &axis.path, unit, means, numbers);
        } else {
            table.objects(py, &axis.path, means, PyList::new(py, places.map(|at| &values[at]))?.into_any())?;
        }
    }
    let outputs = found.outputs.paths().iter().zip(found.outputs.rows());
    for ((path, row), column) in outputs.zip(found.columns) {
        match column {
            Column::Numbers(numbers) => table.numbers(py, path, row, numbers),
            Column::Words(words) => table.words(py, path, row.means, &words)?,
        }
    }
    let words = |of: &dyn Fn(&Option<crate::Error>) -> String| found.errors.iter().map(of).collect::<Vec<_>>();
    let status = words(&|error| if error.is_some() { "error" } else { "ok" }.to_string());
    let code = words(&|error| error.as_ref().map_or_else(String::new, |error| error.code.as_str().to_string()));
    let message = words(&|error| error.as_ref().map_or_else(String::new, |error| error.message.clone()));
    table.words(py, "status", "whether this combination could be computed: ok or error", &status)?;
    table.words(py, "code", "stable word for what was wrong", &code)?;
    table.words(py, "message", "what was wrong and what to change", &message)?;
    Ok(table.table())
}
