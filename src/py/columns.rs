//! What Python gives for a table: an Arrow stream, or a dictionary of arrays of any origin.

use super::arrow;
use super::border::{magnitude, to_tree};
use crate::error::{Code, Error};
use crate::line::Line;
use crate::quantity::{Row, row_of};
use arrow_array::{
    Array, ArrayRef, BooleanArray, Float64Array, Int64Array, NullArray, RecordBatch, StringArray, UInt64Array,
    cast::AsArray, types,
};
use arrow_cast::cast;
use arrow_schema::{DataType, Field, Schema, SchemaRef};
use numpy::{AllowTypeChange, PyArray1, PyArrayLike1, PyUntypedArray, PyUntypedArrayMethods};
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDict, PyFloat, PyInt, PyList, PyMapping, PyString};
use std::sync::Arc;

/// A table as it was given.
pub struct TableLike<'py>(pub Bound<'py, PyAny>);

impl<'a, 'py> FromPyObject<'a, 'py> for TableLike<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "Columns");
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        Ok(TableLike(object.to_owned()))
    }
}

/// What holds where no cell says otherwise: a line, or values by path.
pub struct Defaults<'py>(pub Bound<'py, PyAny>);

impl<'a, 'py> FromPyObject<'a, 'py> for Defaults<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "Defaults");
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        Ok(Defaults(object.to_owned()))
    }
}

/// Units of columns, by column.
pub struct Units<'py>(pub Bound<'py, PyDict>);

impl<'a, 'py> FromPyObject<'a, 'py> for Units<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_subscript!(
        pyo3::type_hint_identifier!("collections.abc", "Mapping"),
        pyo3::type_hint_identifier!("builtins", "str"),
        pyo3::type_hint_identifier!("builtins", "str")
    );
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        let dict = PyDict::new(object.py());
        dict.update(&*object.cast::<PyMapping>()?)?;
        Ok(Units(dict))
    }
}

/// Columns by name, as Python gets them.
pub struct ByColumn<'py>(pub Bound<'py, PyDict>);

impl<'py> IntoPyObject<'py> for ByColumn<'py> {
    type Target = PyDict;
    type Output = Bound<'py, PyDict>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_subscript!(
        pyo3::type_hint_identifier!("builtins", "dict"),
        pyo3::type_hint_identifier!("builtins", "str"),
        pyo3::type_hint_identifier!("typing", "Any")
    );
    fn into_pyobject(self, _: Python<'py>) -> PyResult<Self::Output> {
        Ok(self.0)
    }
}

/// Values by draw and row: an array, or a table.
pub struct Draws<'py>(pub Bound<'py, PyAny>);

impl<'a, 'py> FromPyObject<'a, 'py> for Draws<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "Draws");
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        Ok(Draws(object.to_owned()))
    }
}

/// Schema and batches of a table, in the units of the names.
pub struct Columns {
    pub schema: SchemaRef,
    pub batches: Vec<RecordBatch>,
}

impl Columns {
    /// Reads a table; `units` are units that columns come in, by column.
    pub fn read(table: &TableLike<'_>, units: Option<&Units<'_>>, sides: &[&str]) -> PyResult<Self> {
        let object = &table.0;
        let (schema, batches) = if object.hasattr("__arrow_c_stream__")? {
            arrow::batches(object)?
        } else if let Ok(mapping) = object.cast::<PyMapping>() {
            of_mapping(mapping, sides)?
        } else {
            let kind = object.get_type().name()?.to_string();
            let message = format!(
                "a {kind} is no table: give one with __arrow_c_stream__ (pandas, polars, pyarrow, duckdb), or a dict of arrays"
            );
            return Err(Error::new(Code::NotATable, "table", message).text_value(kind).into());
        };
        let columns = Columns { schema, batches };
        match units {
            Some(units) => columns.converted(&units.0, sides),
            None => Ok(columns),
        }
    }

    /// Columns of other units, in the units of their names.
    fn converted(mut self, units: &Bound<'_, PyDict>, sides: &[&str]) -> PyResult<Self> {
        for (name, unit) in units.iter() {
            let (name, unit): (String, String) = (name.extract()?, unit.extract()?);
            let at = self.schema.index_of(&name).map_err(|_| {
                let message = format!("units names the column {name:?}, which the table does not have");
                PyErr::from(Error::new(Code::Dimension, &name, message))
            })?;
            let mut fields: Vec<Field> = self.schema.fields().iter().map(|f| f.as_ref().clone()).collect();
            let mut cells: Vec<Vec<ArrayRef>> = self.batches.iter().map(|batch| batch.columns().to_vec()).collect();
            let mut found: Vec<ArrayRef> = Vec::new();
            for columns in &cells {
                found.push(in_unit_of_name(units.py(), &columns[at], &name, &unit, sides)?);
            }
            // one batch with a word in it makes all of them text
            if found.iter().any(|column| *column.data_type() == DataType::Utf8) {
                for column in &mut found {
                    *column = cast(column, &DataType::Utf8).map_err(|error| arrow::broken(&error))?;
                }
            }
            let data = found.first().map_or(DataType::Float64, |column| column.data_type().clone());
            fields[at] = Field::new(&name, data, true);
            cells.iter_mut().zip(found).for_each(|(columns, column)| columns[at] = column);
            self.schema = Arc::new(Schema::new_with_metadata(fields, self.schema.metadata().clone()));
            let batches = cells.into_iter().map(|columns| RecordBatch::try_new(self.schema.clone(), columns));
            self.batches = batches.collect::<Result<_, _>>().map_err(|error| arrow::broken(&error))?;
        }
        Ok(self)
    }
}

/// The row of the register of a column, whichever line of the row it belongs to.
fn row_of_column(name: &str, sides: &[&str]) -> Option<&'static Row> {
    let bare = name.split_once('.').filter(|(prefix, _)| sides.contains(prefix)).map_or(name, |(_, bare)| bare);
    row_of::<Line>(bare).or_else(|| row_of::<crate::circuit::TwoSprocket>(bare.strip_prefix("circuit.")?))
}

/// A column converted from its unit to the one that its name carries; words that are no numbers stay words.
fn in_unit_of_name(py: Python<'_>, column: &ArrayRef, name: &str, unit: &str, sides: &[&str]) -> PyResult<ArrayRef> {
    let text = match column.data_type() {
        DataType::Utf8 | DataType::LargeUtf8 | DataType::Utf8View => Some(cast(column, &DataType::Utf8)),
        _ => None,
    };
    let text = text.transpose().map_err(|error| arrow::broken(&error))?;
    let words = text.as_ref().map(|text| text.as_string::<i32>());
    let numbers: Vec<Option<f64>> = match words {
        Some(words) => words.iter().map(|word| word?.trim().parse().ok()).collect(),
        None => {
            let column = cast(column, &DataType::Float64).map_err(|error| arrow::broken(&error))?;
            column.as_primitive::<types::Float64Type>().iter().collect()
        }
    };
    let plain = PyArray1::from_iter(py, numbers.iter().map(|number| number.unwrap_or(f64::NAN)));
    let wrong = |why: &PyErr| {
        let message = format!("the column {name} cannot be read in the unit {unit:?}: {why}");
        PyErr::from(Error::new(Code::Dimension, name, message).text_value(unit))
    };
    let pint = py.import("pint").map_err(|why| wrong(&why))?;
    let given = pint.call_method1("Quantity", (plain, unit)).map_err(|why| wrong(&why))?;
    let found = magnitude(&given, name, row_of_column(name, sides))?;
    let found: PyArrayLike1<'_, f64, AllowTypeChange> = found.extract()?;
    let found = found.as_array();
    let number = |at: usize| numbers[at].map(|_| found[at]);
    let is_word = |at: usize, words: &StringArray| {
        numbers[at].is_none() && words.is_valid(at) && !words.value(at).trim().is_empty()
    };
    match words {
        Some(words) if (0..words.len()).any(|at| is_word(at, words)) => {
            let each = (0..words.len()).map(|at| {
                number(at).map(|n| n.to_string()).or_else(|| is_word(at, words).then(|| words.value(at).to_string()))
            });
            Ok(Arc::new(each.collect::<StringArray>()))
        }
        _ => Ok(Arc::new((0..numbers.len()).map(number).collect::<Float64Array>())),
    }
}

/// A dictionary of arrays as one batch; a single value stands for every row.
fn of_mapping(mapping: &Bound<'_, PyMapping>, sides: &[&str]) -> PyResult<(SchemaRef, Vec<RecordBatch>)> {
    let mut columns: Vec<(String, Option<ArrayRef>, Bound<'_, PyAny>)> = Vec::new();
    let mut rows: Option<(usize, String)> = None;
    for item in mapping.items()?.iter() {
        let (name, object): (Bound<'_, PyAny>, Bound<'_, PyAny>) = item.extract()?;
        let name: String = name.cast::<PyString>().map_err(|_| not_text(&name))?.extract()?;
        let column = column(&object, &name, sides)?;
        if let Some(column) = &column {
            match &rows {
                Some((count, first)) if *count != column.len() => {
                    let message = format!(
                        "the column {name:?} has {} rows, but {first:?} has {count}: all columns have the same",
                        column.len()
                    );
                    return Err(Error::new(Code::NotATable, name, message).number(column.len() as f64).into());
                }
                Some(_) => {}
                None => rows = Some((column.len(), name.clone())),
            }
        }
        columns.push((name, column, object));
    }
    let count = rows.map_or(1, |(count, _)| count);
    let mut fields = Vec::new();
    let mut arrays = Vec::new();
    for (name, column, object) in columns {
        let column = match column {
            Some(column) => column,
            None => elements(&vec![object; count], &name, sides)?,
        };
        fields.push(Field::new(name, column.data_type().clone(), true));
        arrays.push(column);
    }
    let schema = Arc::new(Schema::new(fields));
    if arrays.is_empty() {
        return Ok((schema, Vec::new()));
    }
    let batch = RecordBatch::try_new(schema.clone(), arrays).map_err(|error| arrow::broken(&error))?;
    Ok((schema, vec![batch]))
}

fn not_text(name: &Bound<'_, PyAny>) -> PyErr {
    let shown = name.to_string();
    Error::new(Code::NotATable, &shown, format!("the name of a column is text, not {shown}")).text_value(shown).into()
}

/// A column of any origin; nothing for a single value.
fn column(object: &Bound<'_, PyAny>, name: &str, sides: &[&str]) -> PyResult<Option<ArrayRef>> {
    if object.hasattr("__arrow_c_stream__")? || object.hasattr("__arrow_c_array__")? {
        return arrow::column(object).map(Some);
    }
    let is_one = object.is_none()
        || object.is_instance_of::<PyString>()
        || object.is_instance_of::<PyDict>()
        || super::nouns::tree_of(object).is_some();
    if is_one {
        return Ok(None);
    }
    if let Ok(array) = object.cast::<PyUntypedArray>() {
        return of_array(array, name, sides);
    }
    if object.hasattr("magnitude")? && object.hasattr("to")? {
        return column(&magnitude(object, name, row_of_column(name, sides))?, name, sides);
    }
    if !object.is_instance_of::<PyList>() && object.hasattr("to_numpy")? {
        return column(&object.call_method0("to_numpy")?, name, sides);
    }
    if object.hasattr("__len__")? {
        let items = object.try_iter()?.collect::<PyResult<Vec<_>>>()?;
        return elements(&items, name, sides).map(Some);
    }
    Ok(None)
}

fn of_array(array: &Bound<'_, PyUntypedArray>, name: &str, sides: &[&str]) -> PyResult<Option<ArrayRef>> {
    let object = array.as_any();
    if array.ndim() == 0 {
        return column(&object.call_method0("item")?, name, sides);
    }
    if array.ndim() > 1 {
        let message = format!("the column {name:?} is an array of {} axes: a column has one", array.ndim());
        return Err(Error::new(Code::NotATable, name, message).number(array.ndim() as f64).into());
    }
    let kind: char = array.getattr("dtype")?.getattr("kind")?.extract()?;
    if !object.hasattr("filled")? {
        // NumPy converts what lies in another byte order, cannot be written to or is not contiguous
        match kind {
            'f' => {
                let cells: PyArrayLike1<'_, f64, AllowTypeChange> = object.extract()?;
                return Ok(Some(Arc::new(Float64Array::from_iter_values(cells.as_array().iter().copied()))));
            }
            'i' => {
                let cells: PyArrayLike1<'_, i64, AllowTypeChange> = object.extract()?;
                return Ok(Some(Arc::new(Int64Array::from_iter_values(cells.as_array().iter().copied()))));
            }
            'u' => {
                let cells: PyArrayLike1<'_, u64, AllowTypeChange> = object.extract()?;
                return Ok(Some(Arc::new(UInt64Array::from_iter_values(cells.as_array().iter().copied()))));
            }
            'b' => {
                let cells: PyArrayLike1<'_, bool> = object.extract()?;
                return Ok(Some(Arc::new(BooleanArray::from(cells.as_array().to_vec()))));
            }
            _ => {}
        }
    }
    // times count nanoseconds as numbers: their text says more
    let object = if matches!(kind, 'M' | 'm') { object.call_method1("astype", ("str",))? } else { object.clone() };
    let items = object.call_method0("tolist")?.try_iter()?.collect::<PyResult<Vec<_>>>()?;
    elements(&items, name, sides).map(Some)
}

/// What an element of a list is.
enum Element {
    Nothing,
    Flag(bool),
    Whole(i64),
    Number(f64),
    Text(String),
}

fn element(item: &Bound<'_, PyAny>, name: &str, sides: &[&str]) -> PyResult<Element> {
    if item.is_none() || matches!(item.get_type().name()?.to_str()?, "NAType" | "NaTType") {
        return Ok(Element::Nothing);
    }
    if let Ok(flag) = item.cast::<PyBool>() {
        return Ok(Element::Flag(flag.is_true()));
    }
    if let Ok(number) = item.cast::<PyFloat>() {
        return Ok(Element::Number(number.value()));
    }
    if item.is_instance_of::<PyInt>() {
        return Ok(item.extract().map_or_else(|_| Element::Text(item.to_string()), Element::Whole));
    }
    if let Ok(text) = item.cast::<PyString>() {
        return Ok(Element::Text(text.to_str().map_or_else(|_| text.to_string_lossy().into_owned(), str::to_string)));
    }
    if item.hasattr("magnitude")? && item.hasattr("to")? {
        return magnitude(item, name, row_of_column(name, sides))?.extract().map(Element::Number);
    }
    if item.hasattr("dtype")? && item.hasattr("item")? {
        return element(&item.call_method0("item")?, name, sides);
    }
    if item.is_instance_of::<PyDict>() || super::nouns::tree_of(item).is_some() {
        return Ok(Element::Text(to_tree(item, name, None)?.to_json()?));
    }
    if item.hasattr("__float__")? {
        return item.extract().map(Element::Number);
    }
    Ok(Element::Text(item.str()?.to_string_lossy().into_owned()))
}

/// A list as the narrowest column that holds all of it: numbers among words become the words that spell them.
fn elements(items: &[Bound<'_, PyAny>], name: &str, sides: &[&str]) -> PyResult<ArrayRef> {
    let items = items.iter().map(|item| element(item, name, sides)).collect::<PyResult<Vec<_>>>()?;
    let all = |is: fn(&Element) -> bool| items.iter().all(|item| matches!(item, Element::Nothing) || is(item));
    Ok(if all(|_| false) {
        Arc::new(NullArray::new(items.len()))
    } else if all(|item| matches!(item, Element::Flag(_))) {
        let flag = |item: &Element| if let Element::Flag(flag) = item { Some(*flag) } else { None };
        Arc::new(items.iter().map(flag).collect::<BooleanArray>())
    } else if all(|item| matches!(item, Element::Whole(_))) {
        let whole = |item: &Element| if let Element::Whole(whole) = item { Some(*whole) } else { None };
        Arc::new(items.iter().map(whole).collect::<Int64Array>())
    } else if all(|item| matches!(item, Element::Whole(_) | Element::Number(_))) {
        let number = |item: &Element| match item {
            Element::Whole(whole) => Some(*whole as f64),
            Element::Number(number) => Some(*number),
            _ => None,
        };
        Arc::new(items.iter().map(number).collect::<Float64Array>())
    } else {
        let word = |item: Element| match item {
            Element::Nothing => None,
            Element::Flag(flag) => Some(flag.to_string()),
            Element::Whole(whole) => Some(whole.to_string()),
            Element::Number(number) => Some(number.to_string()),
            Element::Text(text) => Some(text),
        };
        Arc::new(items.into_iter().map(word).collect::<StringArray>())
    })
}
