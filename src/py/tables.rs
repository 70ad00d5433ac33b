//! Many lines from Python: `evaluate_table`, `compare_table`, and the table that comes out.

use super::arrow;
use super::columns::{ByColumn, Columns, Defaults, TableLike, Units};
use super::errors::PinfilmTableWarning;
use super::nouns::{changes, classes};
use super::study::Gathered;
use crate::error::{Code, Error};
use crate::line::Line;
use crate::quantity::{Datum, Field as _, Tree, Value};
use crate::study::{COMPARED, Comparison, compare_in_brief};
use crate::table::{Asked, Evaluate, Job, Plan, run};
use arrow_array::{Array, ArrayRef, RecordBatch, cast::AsArray, types};
use arrow_cast::display::{ArrayFormatter, FormatOptions};
use arrow_schema::{DataType, Field, Schema, SchemaRef};
use numpy::PyArray1;
use pyo3::exceptions::{PyIndexError, PyKeyError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList, PyMapping};
use std::sync::Arc;

/// Rows, and columns of results, of the HTML form.
const SHOWN_ROWS: usize = 10;
const SHOWN_COLUMNS: usize = 6;

/// Compares the two lines of each row.
struct Compare;

impl Job for Compare {
    type Out = Comparison;
    type Found = Comparison;
    const SIDES: &'static [&'static str] = &["now", "proposed"];
    const OUTPUTS: &'static [&'static str] = COMPARED;
    fn compute(&self, lines: &[Line]) -> crate::Result<Comparison> {
        let [now, proposed] = lines else { return Err(Error::new(Code::NotATable, "", "a row holds two lines")) };
        compare_in_brief(now, proposed)
    }
    fn value<'a>(&self, _: &'a [Line], found: &'a Comparison, path: &[&str]) -> Option<Datum<'a>> {
        found.get(path)
    }
    fn codes<'a>(&self, found: &'a Comparison, codes: &mut Vec<&'a str>) {
        codes.extend(found.now.warnings.iter().chain(&found.proposed.warnings).map(|warning| &*warning.code));
    }
}

/// A table of results: the columns that came in, then results, then `status`, `code` and `message` of each row.
///
/// It hands its columns over by the Arrow C stream interface without a copy: `pandas.DataFrame.from_arrow(table)`,
/// `polars.DataFrame(table)`, `pyarrow.table(table)`, and duckdb reads it by name. Unit and meaning stand in the
/// metadata of each field.
#[pyclass(frozen, module = "pinfilm")]
pub struct Table {
    plan: Plan,
    batches: Vec<RecordBatch>,
}

#[pymethods]
impl Table {
    /// Names of the columns.
    #[getter]
    fn column_names(&self) -> Vec<String> {
        self.plan.schema.fields().iter().map(|field| field.name().clone()).collect()
    }

    /// Unit of each column that has one.
    #[getter]
    fn units(&self) -> std::collections::BTreeMap<String, String> {
        let fields = self.plan.schema.fields().iter();
        let unit = |field: &Arc<Field>| Some((field.name().clone(), field.metadata().get("unit")?.clone()));
        fields.filter_map(unit).filter(|(_, unit)| !unit.is_empty()).collect()
    }

    /// Meaning of each column that was read or computed.
    #[getter]
    fn meanings(&self) -> std::collections::BTreeMap<String, String> {
        let fields = self.plan.schema.fields().iter();
        fields.filter_map(|field| Some((field.name().clone(), field.metadata().get("meaning")?.clone()))).collect()
    }

    /// What became of the columns: `read`, `kept` (the caller's own), `misspelt` (column and the name it was probably meant
    /// to have), `defaults` (value by path that held for every row), `numbers_from_text`, `outputs`.
    #[getter]
    fn metadata<'py>(&self, py: Python<'py>) -> PyResult<ByColumn<'py>> {
        let report = &self.plan.report;
        let dict = PyDict::new(py);
        dict.set_item("read", &report.read)?;
        dict.set_item("kept", &report.kept)?;
        let misspelt: Vec<_> = report.meant.iter().map(|meant| (&meant.column, &meant.name)).collect();
        dict.set_item("misspelt", by_name(py, misspelt)?)?;
        let defaults: Vec<_> = report.defaults.iter().map(|default| (&default.name, &default.value)).collect();
        dict.set_item("defaults", by_name(py, defaults)?)?;
        dict.set_item("numbers_from_text", &report.spelled)?;
        dict.set_item("outputs", &report.outputs)?;
        Ok(ByColumn(dict))
    }

    /// How many rows are `ok`, `warning` and `error`.
    #[getter]
    fn status_counts(&self) -> std::collections::BTreeMap<String, usize> {
        let mut counts = std::collections::BTreeMap::new();
        for batch in &self.batches {
            let Some(status) = batch.column_by_name("status") else { continue };
            for word in status.as_string::<i32>().iter().flatten() {
                *counts.entry(word.to_string()).or_insert(0) += 1;
            }
        }
        counts
    }

    /// The line that a row was evaluated as, to look at it by itself: `evaluate(table.line(17)).explain("tension.pull_n")`.
    ///
    /// `side` is 1 for the proposed line of a comparison. Raises what the row's error says where it made no line.
    #[pyo3(signature = (row, side = 0))]
    fn line(&self, row: usize, side: usize) -> PyResult<classes::Line> {
        let mut rest = row;
        for batch in &self.batches {
            if rest < batch.num_rows() {
                return Ok(classes::Line(self.plan.line(batch, rest, side)?));
            }
            rest -= batch.num_rows();
        }
        Err(PyIndexError::new_err(format!("there is no row {row}: the table has {}", self.__len__())))
    }

    /// The columns by name: numbers as NumPy arrays (null is NaN; whole numbers without nulls stay whole), the rest as lists.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<ByColumn<'py>> {
        let dict = PyDict::new(py);
        for name in self.column_names() {
            dict.set_item(&name, self.__getitem__(py, &name)?)?;
        }
        Ok(ByColumn(dict))
    }

    fn __getitem__<'py>(&self, py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyAny>> {
        let field = self.plan.schema.field_with_name(name).map_err(|_| PyKeyError::new_err(name.to_string()))?;
        let columns: Vec<&ArrayRef> = self.batches.iter().filter_map(|batch| batch.column_by_name(name)).collect();
        to_python(py, &columns, field.data_type())
    }

    fn __len__(&self) -> usize {
        self.batches.iter().map(RecordBatch::num_rows).sum()
    }

    #[pyo3(signature = (requested_schema = None))]
    fn __arrow_c_stream__<'py>(
        &self,
        py: Python<'py>,
        requested_schema: Option<Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let _ = requested_schema; // a wish that a producer may leave unanswered
        Ok(arrow::stream(py, &self.plan.schema, &self.batches)?.into_any())
    }

    fn __arrow_c_schema__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        Ok(arrow::schema(py, &self.plan.schema)?.into_any())
    }

    fn __repr__(&self) -> String {
        let counts = self.status_counts().into_iter().map(|(word, count)| format!("{count} {word}"));
        let report = &self.plan.report;
        let mut text = format!(
            "<Table of {} rows ({}), {} columns: {} read, {} kept, {} results",
            self.__len__(),
            counts.collect::<Vec<_>>().join(", "),
            self.plan.schema.fields().len(),
            report.read.len(),
            report.kept.len(),
            report.outputs.len(),
        );
        for meant in &report.meant {
            text += &format!("; {:?} was not read, did you mean {:?}?", meant.column, meant.name);
        }
        text + ">"
    }
    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        let report = &self.plan.report;
        let names = report.kept.iter().take(2).map(String::as_str).chain(["status"]);
        let names: Vec<&str> = names.chain(report.outputs.iter().take(SHOWN_COLUMNS).map(String::as_str)).collect();
        let text = crate::quantity::show::html_text(&self.__repr__());
        let Some(batch) = self.batches.first() else { return Ok(text) };
        let first = batch.slice(0, batch.num_rows().min(SHOWN_ROWS));
        let mut shown = Gathered::default();
        for name in names {
            let (Some(column), Ok(field)) = (first.column_by_name(name), first.schema_ref().field_with_name(name))
            else {
                continue;
            };
            let values = to_python(py, &[column], field.data_type())?.unbind();
            let unit = self.plan.schema.field_with_name(name).ok().and_then(|field| field.metadata().get("unit"));
            shown.array(
                &unit.filter(|unit| !unit.is_empty()).map_or_else(|| name.into(), |unit| format!("{name} [{unit}]")),
                "",
                "",
                values,
            );
        }
        Ok(shown.table().html(py, "", self.__len__())? + &text)
    }
}

fn by_name<'py>(py: Python<'py>, pairs: Vec<(&String, &String)>) -> PyResult<Bound<'py, PyDict>> {
    let dict = PyDict::new(py);
    for (name, value) in pairs {
        dict.set_item(name, value)?;
    }
    Ok(dict)
}

/// A column as Python knows it.
fn to_python<'py>(py: Python<'py>, columns: &[&ArrayRef], data: &DataType) -> PyResult<Bound<'py, PyAny>> {
    let nulls: usize = columns.iter().map(|column| column.null_count()).sum();
    Ok(match data {
        DataType::Float64 => {
            let each = columns.iter().flat_map(|column| column.as_primitive::<types::Float64Type>().iter());
            PyArray1::from_vec(py, each.map(|number| number.unwrap_or(f64::NAN)).collect()).into_any()
        }
        DataType::Int64 if nulls == 0 => {
            let each = columns.iter().flat_map(|column| column.as_primitive::<types::Int64Type>().values().iter());
            PyArray1::from_vec(py, each.copied().collect()).into_any()
        }
        DataType::Int64 => {
            let each = columns.iter().flat_map(|column| column.as_primitive::<types::Int64Type>().iter());
            PyList::new(py, each.collect::<Vec<_>>())?.into_any()
        }
        DataType::Boolean => {
            PyList::new(py, columns.iter().flat_map(|column| column.as_boolean().iter()).collect::<Vec<_>>())?
                .into_any()
        }
        _ => {
            let mut words: Vec<Option<String>> = Vec::new();
            for column in columns {
                let format = ArrayFormatter::try_new(column.as_ref(), &FormatOptions::default());
                let format = format.map_err(|error| arrow::broken(&error))?;
                words.extend((0..column.len()).map(|at| column.is_valid(at).then(|| format.value(at).to_string())));
            }
            PyList::new(py, words)?.into_any()
        }
    })
}

/// Values for all rows, as they were given.
fn asked(outputs: Option<Vec<String>>, defaults: Option<&Bound<'_, PyAny>>, separate: bool) -> PyResult<Asked> {
    let mut asked = Asked { outputs, separate, ..Asked::default() };
    let Some(defaults) = defaults else { return Ok(asked) };
    if let Ok(line) = defaults.cast::<classes::Line>() {
        asked.base = Some(line.get().0.clone());
        return Ok(asked);
    }
    let dict = PyDict::new(defaults.py());
    dict.update(defaults.cast::<PyMapping>()?)?;
    let mut rest: Vec<(String, Tree)> = changes::<Line>(Some(dict.into_any()), None)?;
    while let Some((path, tree)) = rest.pop() {
        match tree.value {
            Value::Table(entries) => {
                rest.extend(entries.into_iter().map(|(key, tree)| (format!("{path}.{key}"), tree)))
            }
            _ => asked.given.push((path, tree)),
        }
    }
    asked.given.sort_by(|a, b| a.0.cmp(&b.0));
    Ok(asked)
}

/// Computes a table, with the interpreter free in between.
fn computed<J: Job>(
    py: Python<'_>,
    job: &J,
    columns: &Columns,
    asked: &Asked,
    threads: Option<usize>,
    progress: Option<&Bound<'_, PyAny>>,
) -> PyResult<Table> {
    let plan = Plan::new::<J>(&columns.schema, asked)?;
    for meant in &plan.report.meant {
        let text = format!(
            "the column {:?} is kept but not read: no survey has such a value; did you mean {:?}?",
            meant.column, meant.name
        );
        let text = std::ffi::CString::new(text).unwrap_or_default();
        PyErr::warn(py, &py.get_type::<PinfilmTableWarning>(), &text, 1)?;
    }
    let progress = progress.map(|callback| callback.clone().unbind());
    let (mut stopped, mut batches) = (None, Vec::new());
    let mut watch = |done: usize, all: usize| {
        let told = Python::attach(|py| {
            py.check_signals()?;
            progress.as_ref().map_or(Ok(()), |callback| callback.call1(py, (done, all)).map(drop))
        });
        stopped = told.err();
        stopped.is_none()
    };
    let mut take = |batch| {
        batches.push(batch);
        Ok(())
    };
    let ended = py.detach(|| run(job, &plan, &columns.batches, threads, &mut watch, &mut take));
    if let Some(error) = stopped {
        return Err(error); // an interrupt, or what the callback raised
    }
    ended?;
    Ok(Table { plan, batches })
}

fn check_threads(threads: Option<usize>) -> PyResult<()> {
    if threads == Some(0) {
        let message = "threads = 0: give 1 or more, or leave it out for as many as there are processors";
        return Err(Error::new(Code::OutOfRange, "threads", message).number(0.0).limit("1 or more").into());
    }
    Ok(())
}

/// Evaluate many lines: columns in, columns out, each row as `evaluate` gives it.
///
/// Parameters
/// ----------
/// table : table or mapping of arrays
///     Anything with ``__arrow_c_stream__`` (pandas, polars, pyarrow, duckdb) or a dict of arrays. A column is named as the
///     survey names the value (``"duty.speed_m_per_min"``); a loop of two sprockets by the names of `TwoSprocket`
///     (``"circuit.centre_distance_m"``); a standard chain by ``"chain.standard"`` and ``"chain.designation"``; the column
///     ``"survey"`` holds whole surveys as JSON or structs, over which other columns are put. All other columns are kept.
/// outputs : list of str, optional
///     Paths of results, such as ``"drive.current_a"``; without it the usual ones.
/// threads : int, optional
///     Threads; without it as many as there are processors. The numbers do not depend on it.
/// progress : callable, optional
///     Called with rows done and rows in all, some times a second; what it raises stops the run.
/// defaults : Line or mapping, optional
///     What holds where no cell says otherwise: a whole line, or values by path.
/// units : mapping, optional
///     Units of columns that are not in the unit of their name, such as ``{"duty.ambient_c": "degF"}`` (needs pint).
///
/// Returns
/// -------
/// Table
///     The columns that came in, results, and ``status`` (ok, warning, error), ``code`` and ``message`` of each row. A row
///     that cannot be computed has nulls for results and says why; an empty cell takes the default of its value, and the row
///     says so.
///
/// Raises
/// ------
/// TableError
///     Before any row is computed: columns that every line needs are missing, have the wrong type, or stand there twice.
/// UnitError
///     If a unit cannot be converted.
///
/// Warns
/// -----
/// PinfilmTableWarning
///     For a column that looks misspelt; also in `Table.metadata`.
///
/// Notes
/// -----
/// Text in a column of numbers is read as a number where it spells one; where not, the row is an error. NaN is no number:
/// the row is an error. Warnings of a row come as codes; their sentences are those of ``evaluate(table.line(row))``.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> oven = pinfilm.examples.load("oven_now")
/// >>> speeds = {"asset": ["A1", "A2"], "duty.speed_m_per_min": [3.0, 6.0]}
/// >>> table = pinfilm.evaluate_table(speeds, outputs=["kinematics.circuit_time_s"], defaults=oven)
/// >>> times = table["kinematics.circuit_time_s"]
/// >>> bool(abs(times[0] / times[1] - 2) < 1e-12)
/// True
#[pyfunction]
#[pyo3(signature = (table, outputs = None, *, threads = None, progress = None, defaults = None, units = None))]
pub fn evaluate_table(
    py: Python<'_>,
    table: TableLike<'_>,
    outputs: Option<Vec<String>>,
    threads: Option<usize>,
    progress: Option<Bound<'_, PyAny>>,
    defaults: Option<Defaults<'_>>,
    units: Option<Units<'_>>,
) -> PyResult<Table> {
    check_threads(threads)?;
    let columns = Columns::read(&table, units.as_ref(), Evaluate::SIDES)?;
    let asked = asked(outputs, defaults.as_ref().map(|given| &given.0), false)?;
    computed(py, &Evaluate, &columns, &asked, threads, progress.as_ref())
}

/// Compare many lines as they are with the same lines as proposed: `compare` for every row.
///
/// Parameters
/// ----------
/// table : table or mapping of arrays
///     One table: columns with the prefix ``now.`` or ``proposed.`` say something of one of the two lines, columns without
///     it of both; so a proposal needs only what changes. Values of a method of oiling that a line does not have are passed
///     by. With `proposed`: the lines as they are.
/// proposed : table or mapping of arrays, optional
///     The lines as proposed, row by row, each complete in itself. Its columns come out with the prefix ``proposed.``.
/// outputs, threads, progress, defaults, units
///     As in `evaluate_table`; outputs are paths of a `Comparison` (``"npv"``, ``"now.fill.never_reached"``), and defaults
///     and units may have the prefixes too.
///
/// Returns
/// -------
/// Table
///     As `evaluate_table` gives it.
///
/// Raises
/// ------
/// TableError
///     As `evaluate_table`; also where the two tables have different numbers of rows.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> now, proposed = pinfilm.examples.pair("oven")
/// >>> table = pinfilm.compare_table({"survey": [now]}, {"survey": [proposed]})
/// >>> bool(table["payback_days"][0] == pinfilm.compare(now, proposed).payback_days)
/// True
#[pyfunction]
#[pyo3(signature = (table, proposed = None, outputs = None, *, threads = None, progress = None, defaults = None, units = None))]
#[allow(clippy::too_many_arguments)]
pub fn compare_table(
    py: Python<'_>,
    table: TableLike<'_>,
    proposed: Option<TableLike<'_>>,
    outputs: Option<Vec<String>>,
    threads: Option<usize>,
    progress: Option<Bound<'_, PyAny>>,
    defaults: Option<Defaults<'_>>,
    units: Option<Units<'_>>,
) -> PyResult<Table> {
    check_threads(threads)?;
    let mut columns = Columns::read(&table, units.as_ref(), Compare::SIDES)?;
    let asked = asked(outputs, defaults.as_ref().map(|given| &given.0), proposed.is_some())?;
    if let Some(proposed) = proposed {
        columns = beside(&columns, &Columns::read(&proposed, None, Compare::SIDES)?)?;
    }
    computed(py, &Compare, &columns, &asked, threads, progress.as_ref())
}

/// Two tables as one; columns of the second with the prefix `proposed.`.
fn beside(now: &Columns, proposed: &Columns) -> PyResult<Columns> {
    let count = |columns: &Columns| columns.batches.iter().map(RecordBatch::num_rows).sum::<usize>();
    let (rows, others) = (count(now), count(proposed));
    if rows != others {
        let message =
            format!("{rows} lines as they are and {others} as proposed: give the same lines in the same order");
        return Err(Error::new(Code::NotATable, "proposed", message)
            .number(others as f64)
            .limit(format!("{rows} rows"))
            .into());
    }
    let named = |field: &Arc<Field>| field.as_ref().clone().with_name(format!("proposed.{}", field.name()));
    let fields: Vec<Field> = now.schema.fields().iter().map(|field| field.as_ref().clone()).collect();
    let fields: Vec<Field> = fields.into_iter().chain(proposed.schema.fields().iter().map(named)).collect();
    let schema: SchemaRef = Arc::new(Schema::new_with_metadata(fields, now.schema.metadata().clone()));
    let joined = |batches: &[RecordBatch], schema: &SchemaRef| {
        arrow_select::concat::concat_batches(schema, batches).map_err(|error| arrow::broken(&error))
    };
    let (left, right) = (joined(&now.batches, &now.schema)?, joined(&proposed.batches, &proposed.schema)?);
    let columns = left.columns().iter().chain(right.columns()).cloned().collect();
    let options = arrow_array::RecordBatchOptions::new().with_row_count(Some(rows));
    let batch = RecordBatch::try_new_with_options(schema.clone(), columns, &options);
    Ok(Columns { schema, batches: vec![batch.map_err(|error| arrow::broken(&error))?] })
}
