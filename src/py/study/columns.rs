//! Columns by name: what a study gives as a table, with units and meanings.

use crate::quantity::{Row, show};
use numpy::PyArray1;
use pyo3::exceptions::PyKeyError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyIterator, PyList};

/// A NumPy array, typed for stubs.
pub struct Array(pub Py<PyAny>);

impl<'py> IntoPyObject<'py> for Array {
    type Target = PyAny;
    type Output = Bound<'py, PyAny>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "Column");
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        Ok(self.0.into_bound(py))
    }
}

/// An object of another library, typed for stubs as anything.
pub struct Foreign(pub Py<PyAny>);

impl<'py> IntoPyObject<'py> for Foreign {
    type Target = PyAny;
    type Output = Bound<'py, PyAny>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("typing", "Any");
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        Ok(self.0.into_bound(py))
    }
}

/// Arrays by name, typed for stubs.
pub struct ByName(Py<PyDict>);

impl<'py> IntoPyObject<'py> for ByName {
    type Target = PyDict;
    type Output = Bound<'py, PyDict>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_subscript!(
        pyo3::type_hint_identifier!("builtins", "dict"),
        pyo3::type_hint_identifier!("builtins", "str"),
        pyo3::type_hint_identifier!("pinfilm.typing", "Column")
    );
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        Ok(self.0.into_bound(py))
    }
}

/// Names, one after the other, typed for stubs.
pub struct Names(Py<PyIterator>);

impl<'py> IntoPyObject<'py> for Names {
    type Target = PyIterator;
    type Output = Bound<'py, PyIterator>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_subscript!(
        pyo3::type_hint_identifier!("collections.abc", "Iterator"),
        pyo3::type_hint_identifier!("builtins", "str")
    );
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        Ok(self.0.into_bound(py))
    }
}

/// One column.
struct Entry {
    name: String,
    array: Py<PyAny>,
    unit: &'static str,
    means: String,
}

/// A table by columns: NumPy arrays under their names, with the unit and the meaning of each.
///
/// It reads like a dict (`table["oil.iso_vg"]`, `list(table)`, `dict(table)`) and goes into pandas or polars where these
/// are installed.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> table = pinfilm.sweep(pinfilm.examples.load("oven_now"), {"oil.iso_vg": [150, 220]}, outputs=["cost.energy"])
/// >>> table["oil.iso_vg"].tolist()
/// [150, 220]
/// >>> table.units["cost.energy"]
/// 'money/year'
#[pyclass(frozen, module = "pinfilm")]
pub struct Columns(Vec<Entry>);

/// Gathers columns.
#[derive(Default)]
pub struct Gathered(Vec<Entry>);

impl Gathered {
    /// Adds numbers that a row of the register describes.
    pub fn numbers(&mut self, py: Python<'_>, name: &str, row: &Row, values: Vec<f64>) {
        self.described(py, name, row.unit.label, row.means, values);
    }

    /// Adds numbers.
    pub fn described(&mut self, py: Python<'_>, name: &str, unit: &'static str, means: &str, values: Vec<f64>) {
        self.array(name, unit, means, PyArray1::from_vec(py, values).into_any().unbind());
    }

    /// Adds words.
    pub fn words(&mut self, py: Python<'_>, name: &str, means: &str, values: &[String]) -> PyResult<()> {
        self.objects(py, name, means, PyList::new(py, values)?.into_any())
    }

    /// Adds any objects.
    pub fn objects(&mut self, py: Python<'_>, name: &str, means: &str, list: Bound<'_, PyAny>) -> PyResult<()> {
        let numpy = py.import("numpy")?;
        // an array made of a list would take a list of lists for a matrix
        let array = numpy.call_method1("empty", (list.len()?, "object"))?;
        array.set_item(pyo3::types::PySlice::full(py), list)?;
        self.array(name, "", means, array.unbind());
        Ok(())
    }

    /// Adds an array.
    pub fn array(&mut self, name: &str, unit: &'static str, means: &str, array: Py<PyAny>) {
        self.0.push(Entry { name: name.into(), array, unit, means: means.into() });
    }

    /// The table.
    pub fn table(self) -> Columns {
        Columns(self.0)
    }
}

#[pymethods]
impl Columns {
    fn __getitem__(&self, py: Python<'_>, name: &str) -> PyResult<Array> {
        let found = self.0.iter().find(|entry| entry.name == name);
        found.map(|entry| Array(entry.array.clone_ref(py))).ok_or_else(|| {
            let near = crate::quantity::nearest(name, self.0.iter().map(|entry| entry.name.as_str()));
            PyKeyError::new_err(near.map_or_else(|| name.to_string(), |near| format!("{name}: did you mean {near}?")))
        })
    }
    fn __contains__(&self, name: &str) -> bool {
        self.0.iter().any(|entry| entry.name == name)
    }
    fn __iter__(&self, py: Python<'_>) -> PyResult<Names> {
        Ok(Names(PyList::new(py, self.keys())?.try_iter()?.unbind()))
    }
    /// Number of columns.
    fn __len__(&self) -> usize {
        self.0.len()
    }
    /// Names of the columns.
    fn keys(&self) -> Vec<&str> {
        self.0.iter().map(|entry| entry.name.as_str()).collect()
    }
    /// Number of rows.
    #[getter]
    fn rows(&self, py: Python<'_>) -> PyResult<usize> {
        self.0.first().map_or(Ok(0), |entry| entry.array.bind(py).len())
    }
    /// Unit of each column; empty for words and pure numbers.
    #[getter]
    fn units(&self) -> std::collections::HashMap<&str, &str> {
        self.0.iter().map(|entry| (entry.name.as_str(), entry.unit)).collect()
    }
    /// What each column means.
    #[getter]
    fn meanings(&self) -> std::collections::HashMap<&str, &str> {
        self.0.iter().map(|entry| (entry.name.as_str(), entry.means.as_str())).collect()
    }
    /// As a dict of NumPy arrays; they are shared, not copied.
    fn to_dict(&self, py: Python<'_>) -> PyResult<ByName> {
        Ok(ByName(self.dict(py)?.unbind()))
    }
    /// As a pandas DataFrame, with units and meanings in its `attrs`. Needs pandas.
    fn to_pandas(&self, py: Python<'_>) -> PyResult<Foreign> {
        let frame = py.import("pandas")?.call_method1("DataFrame", (self.dict(py)?,))?;
        let notes = frame.getattr("attrs")?;
        notes.set_item("units", self.units())?;
        notes.set_item("meanings", self.meanings())?;
        Ok(Foreign(frame.unbind()))
    }
    /// As a polars DataFrame. Needs polars.
    fn to_polars(&self, py: Python<'_>) -> PyResult<Foreign> {
        let dict = PyDict::new(py);
        for entry in &self.0 {
            let array = entry.array.bind(py);
            let words = array.getattr("dtype")?.getattr("kind")?.eq("O")?;
            dict.set_item(&entry.name, if words { array.call_method0("tolist")? } else { array.clone() })?;
        }
        Ok(Foreign(py.import("polars")?.call_method1("DataFrame", (dict,))?.unbind()))
    }
    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        let rows = self.rows(py)?;
        let mut text = format!("{rows} rows of {} columns\n", self.0.len());
        let shown = self.shown(py, SHOWN)?;
        let width = shown.iter().map(|(heading, _)| heading.chars().count()).max().unwrap_or(0);
        for (heading, cells) in shown {
            text += &format!("  {heading:width$}  {}{}\n", cells.join("  "), if rows > SHOWN { "  …" } else { "" });
        }
        Ok(text.trim_end().to_string())
    }
    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        self.html(py, "", self.rows(py)?)
    }
}

/// Rows of the text and of the HTML form.
const SHOWN: usize = 6;
const SHOWN_HTML: usize = 30;

impl Columns {
    fn dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let dict = PyDict::new(py);
        for entry in &self.0 {
            dict.set_item(&entry.name, entry.array.bind(py))?;
        }
        Ok(dict)
    }

    /// As an HTML table under a caption; `rows` is how many there are of what is shown, if more than here.
    pub fn html(&self, py: Python<'_>, caption: &str, rows: usize) -> PyResult<String> {
        let (here, shown) = (self.rows(py)?.min(SHOWN_HTML), self.shown(py, SHOWN_HTML)?);
        let heads: Vec<&str> = shown.iter().map(|(heading, _)| heading.as_str()).collect();
        let row = |at: usize| shown.iter().map(|(_, cells)| cells[at].as_str()).collect::<Vec<_>>();
        let foot = if rows > here { format!("{here} of {rows} rows") } else { String::new() };
        Ok(show::html_rows(caption, &heads, (0..here).map(row), &foot))
    }

    /// Heading and first cells of each column.
    fn shown(&self, py: Python<'_>, most: usize) -> PyResult<Vec<(String, Vec<String>)>> {
        let cell = |item: Bound<'_, PyAny>| match item.extract::<f64>() {
            Ok(number) if number.is_nan() => "–".to_string(),
            Ok(f64::INFINITY) => "never".to_string(),
            Ok(number) => show::number(number),
            Err(_) => item.to_string(),
        };
        let column = |entry: &Entry| {
            let heading =
                if entry.unit.is_empty() { entry.name.clone() } else { format!("{} [{}]", entry.name, entry.unit) };
            let items = entry.array.bind(py).try_iter()?.take(most);
            Ok((heading, items.map(|item| item.map(cell)).collect::<PyResult<_>>()?))
        };
        self.0.iter().map(column).collect()
    }
}
