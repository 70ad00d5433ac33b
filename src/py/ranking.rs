//! Which lines to do first within a budget.

use super::arrow;
use super::columns::{Columns, Draws, TableLike};
use crate::error::{Code, Error};
use crate::study::{by_worth, chosen_shares, expected_values, select};
use arrow_array::{Array, RecordBatch, cast::AsArray, types};
use arrow_cast::cast;
use arrow_schema::DataType;
use numpy::{AllowTypeChange, PyArrayLike2};
use pyo3::prelude::*;

/// The lines to do within a budget.
#[pyclass(frozen, module = "pinfilm", get_all)]
pub struct Ranking {
    /// Numbers of the chosen rows, the best value for money first.
    rows: Vec<usize>,
    /// Whether each row is chosen.
    chosen: Vec<bool>,
    /// Net present value of all that is chosen.
    value: f64,
    /// Money that it needs.
    cost: f64,
    /// No choice within the budget is worth more.
    bound: f64,
    /// Whether no choice is worth more than this one; if not, `bound` says how much is missing at most.
    exact: bool,
    /// Rows that were left out because they have no value or no cost: rows with an error.
    left_out: Vec<usize>,
    /// For each row the share of draws in which it is chosen; None without draws.
    shares: Option<Vec<f64>>,
}

#[pymethods]
impl Ranking {
    fn __repr__(&self) -> String {
        let end = if self.exact {
            "no choice is worth more".into()
        } else {
            format!("none is worth more than {:.2}", self.bound)
        };
        format!(
            "<Ranking: {} of {} lines, worth {:.2} for {:.2}; {end}; {} left out>",
            self.rows.len(),
            self.chosen.len(),
            self.value,
            self.cost,
            self.left_out.len()
        )
    }
    fn _repr_html_(&self) -> String {
        crate::quantity::show::html_text(&self.__repr__())
    }
}

/// Choose the lines that are worth most together within a budget.
///
/// Parameters
/// ----------
/// results : table or mapping of arrays
///     A table with the columns `value` and `cost`: what `compare_table` gives, or joined data.
/// budget : float
///     Money there is, in the currency of the table.
/// value, cost : str
///     Columns of the net present value and of the capital needed now.
/// draws : array of shape (draws, rows), or table with the columns ``draw``, ``row`` and `value`, optional
///     Values under uncertainty. Prices of the whole plant must be drawn once for all lines of a draw.
///
/// Returns
/// -------
/// Ranking
///     The rows to do; with draws the choice on expected value, and for each row the share of draws in which it is chosen.
///
/// Raises
/// ------
/// TableError
///     If a column is missing or holds no numbers, or the draws have another number of rows.
/// InputError
///     If the budget is negative or no number.
///
/// Notes
/// -----
/// Exact by branch and bound for moderate numbers of lines; beyond a million steps the best choice found, with a bound on
/// what any other could be worth. Lines that cost nothing and lose nothing are always in.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> found = pinfilm.rank({"npv": [6.0, 5.0, 5.0], "invest": [6.0, 5.0, 5.0]}, budget=10.0)
/// >>> found.rows, found.value, found.exact
/// ([1, 2], 10.0, True)
#[pyfunction]
#[pyo3(signature = (results, *, budget, value = "npv", cost = "invest", draws = None))]
pub fn rank(
    py: Python<'_>,
    results: TableLike<'_>,
    budget: f64,
    value: &str,
    cost: &str,
    draws: Option<Draws<'_>>,
) -> PyResult<Ranking> {
    let columns = Columns::read(&results, None, &[])?;
    let costs = numbers(&columns, cost)?;
    let mut values = numbers(&columns, value)?;
    let draws = draws.map(|draws| drawn(&draws, value, costs.len())).transpose()?;
    if let Some(draws) = &draws {
        // the choice is on expected value; a draw without a value leaves the line out
        values = expected_values(draws);
    }
    let usable =
        |row: &usize| matches!((values[*row], costs[*row]), (Some(v), Some(c)) if v.is_finite() && c.is_finite());
    let (inside, left_out): (Vec<usize>, Vec<usize>) = (0..costs.len()).partition(usable);
    let of = |from: &[Option<f64>]| inside.iter().filter_map(|row| from[*row]).collect::<Vec<f64>>();
    let (value_in, cost_in) = (of(&values), of(&costs));
    let mut stopped = None;
    let mut watch = |_: usize, _: usize| {
        stopped = Python::attach(|py| py.check_signals()).err();
        stopped.is_none()
    };
    let found = py.detach(|| {
        let selection = select(&value_in, &cost_in, budget, &mut watch)?;
        let shares = draws.map(|draws| {
            let of_draw = |draw: Vec<Option<f64>>| inside.iter().map(|row| draw[*row].unwrap_or(f64::NAN)).collect();
            let draws: Vec<Vec<f64>> = draws.into_iter().map(of_draw).collect();
            chosen_shares(&draws, &cost_in, budget, &mut watch)
        });
        Ok((selection, shares.transpose()?))
    });
    if let Some(error) = stopped {
        return Err(error);
    }
    let (selection, shares) = found.map_err(|error: Error| PyErr::from(error))?;
    let mut order = selection.lines();
    by_worth(&mut order, &value_in, &cost_in);
    let mut chosen = vec![false; costs.len()];
    order.iter().for_each(|at| chosen[inside[*at]] = true);
    let shares = shares.map(|shares| {
        let mut all = vec![0.0; costs.len()];
        inside.iter().zip(shares).for_each(|(row, share)| all[*row] = share);
        all
    });
    Ok(Ranking {
        rows: order.into_iter().map(|at| inside[at]).collect(),
        chosen,
        value: selection.value,
        cost: selection.cost,
        bound: selection.bound,
        exact: selection.exact,
        left_out,
        shares,
    })
}

/// A column of numbers; what is null or no number is nothing.
fn numbers(columns: &Columns, name: &str) -> PyResult<Vec<Option<f64>>> {
    let at = columns.schema.index_of(name).map_err(|_| {
        let has: Vec<&str> = columns.schema.fields().iter().map(|field| field.name().as_str()).collect();
        let near = crate::quantity::nearest(name, has).map_or_else(String::new, |near| format!("; there is {near:?}"));
        PyErr::from(Error::new(Code::MissingColumns, name, format!("the table has no column {name:?}{near}")))
    })?;
    let data = columns.schema.field(at).data_type();
    if !(data.is_numeric() || *data == DataType::Null) {
        let message = format!("the column {name} is of type {data}, but a choice needs numbers");
        return Err(Error::new(Code::ColumnType, name, message).text_value(data.to_string()).limit("numbers").into());
    }
    let mut found = Vec::new();
    for batch in &columns.batches {
        let column = cast(RecordBatch::column(batch, at), &DataType::Float64).map_err(|error| arrow::broken(&error))?;
        let plain = column.as_primitive::<types::Float64Type>();
        found.extend((0..plain.len()).map(|row| plain.is_valid(row).then(|| plain.value(row)).filter(|n| !n.is_nan())));
    }
    Ok(found)
}

/// Values by draw and row.
fn drawn(draws: &Draws<'_>, value: &str, rows: usize) -> PyResult<Vec<Vec<Option<f64>>>> {
    let wrong = |message: String| PyErr::from(Error::new(Code::NotATable, "draws", message));
    let is_table = draws.0.hasattr("__arrow_c_stream__")? || draws.0.hasattr("keys")?;
    if !is_table {
        let array: PyArrayLike2<'_, f64, AllowTypeChange> = draws.0.extract()?;
        let array = array.as_array();
        if array.ncols() != rows {
            return Err(wrong(format!("each draw has {} values, but there are {rows} lines", array.ncols())));
        }
        let of_draw = |draw: ndarray::ArrayView1<'_, f64>| draw.iter().map(|v| (!v.is_nan()).then_some(*v)).collect();
        return Ok(array.rows().into_iter().map(of_draw).collect());
    }
    let columns = Columns::read(&TableLike(draws.0.clone()), None, &[])?;
    let (draw, row, values) = (numbers(&columns, "draw")?, numbers(&columns, "row")?, numbers(&columns, value)?);
    let mut numbers: Vec<f64> = draw.iter().flatten().copied().collect();
    numbers.sort_by(f64::total_cmp);
    numbers.dedup();
    let mut found = vec![vec![None; rows]; numbers.len()];
    for ((draw, row), value) in draw.iter().zip(&row).zip(values) {
        let place = draw.and_then(|draw| numbers.binary_search_by(|known| known.total_cmp(&draw)).ok());
        let at = row.filter(|row| *row >= 0.0 && *row < rows as f64 && row.fract() == 0.0).map(|row| row as usize);
        let (Some(place), Some(at)) = (place, at) else {
            return Err(wrong(format!(
                "draw {draw:?} of row {row:?}: a row is a number from 0 to {}",
                rows.saturating_sub(1)
            )));
        };
        found[place][at] = value;
    }
    Ok(found)
}
