//! What Python gave for an argument of a formula: a number, or an array of any origin, checked and in SI.

use crate::error::{Code, Error};
use crate::py::border::magnitude;
use crate::quantity::{Field, Notes, Place, Row, default_of};
use numpy::{AllowTypeChange, PyArrayLikeDyn, PyUntypedArray};
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyBool, PyFloat, PyInt, PyList, PyString, PyTuple};

/// Anything that may be numbers; read later, when the argument's name and unit are known.
pub struct Given<'py>(pub Bound<'py, PyAny>);

impl<'a, 'py> FromPyObject<'a, 'py> for Given<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "Floats");
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        Ok(Given(object.to_owned()))
    }
}

/// Numbers in SI.
pub enum Values {
    /// An optional argument that was not given and has no default; a formula gets NaN for it.
    Absent,
    /// A single number.
    One(f64),
    /// An array, in C order.
    Many {
        /// Its elements.
        values: Vec<f64>,
        /// Its shape; empty for an array without axes.
        shape: Vec<usize>,
    },
}

/// An argument of a formula.
pub struct Argument<'py> {
    /// Its row of the register.
    pub row: &'static Row,
    /// Its value in SI, inside the allowed range; arrays may hold NaN.
    pub values: Values,
    /// The labelled array it came as, to give the result the same labels.
    pub series: Option<Bound<'py, PyAny>>,
}

impl<'py> Argument<'py> {
    /// A required argument.
    pub fn read(given: &Given<'py>, row: &'static Row) -> PyResult<Self> {
        let mut argument = Argument { row, values: Values::Absent, series: None };
        argument.values = argument.raw(&given.0)?;
        argument.check()?;
        Ok(argument)
    }

    /// An argument that may be left out: then it has the default of its row, if that has one.
    pub fn or_default(given: Option<&Given<'py>>, row: &'static Row) -> PyResult<Self> {
        match given {
            Some(given) => Self::read(given, row),
            None => {
                let values = default_of(row).map_or(Values::Absent, |default| Values::One(row.unit.to_si(default)));
                Ok(Argument { row, values, series: None })
            }
        }
    }

    /// The numbers as they were given, in the unit of the name.
    fn raw(&mut self, object: &Bound<'py, PyAny>) -> PyResult<Values> {
        if let Ok(number) = object.cast::<PyFloat>() {
            return Ok(Values::One(number.value()));
        }
        if object.is_instance_of::<PyBool>() || object.is_instance_of::<PyString>() || object.is_none() {
            return Err(self.wrong_type(object));
        }
        if object.is_instance_of::<PyInt>() {
            return object.extract().map(Values::One).map_err(|_| self.wrong_type(object));
        }
        if let Ok(array) = object.cast::<PyUntypedArray>() {
            return self.of_array(array);
        }
        if object.hasattr("magnitude")? && object.hasattr("to")? {
            let plain = magnitude(object, self.row.name, Some(self.row))?;
            return self.raw(&plain);
        }
        if object.hasattr("item")? && object.getattr_opt("ndim")?.is_some_and(|n| n.eq(0).unwrap_or(false)) {
            return Ok(match self.of_array(&as_array(object)?)? {
                Values::Many { values, .. } if values.len() == 1 => Values::One(values[0]), // a number of NumPy's own
                values => values,
            });
        }
        if is_series(object)? {
            self.series = Some(object.clone());
            return self.of_array(plain_array(object)?.cast()?);
        }
        let is_sequence = object.is_instance_of::<PyList>() || object.is_instance_of::<PyTuple>();
        if is_sequence && holds_quantities(object)? {
            return self.one_by_one(object, vec![object.len()?]);
        }
        if !is_sequence && !object.hasattr("__len__")? && !object.hasattr("__array__")? {
            return self.single(object).map(Values::One);
        }
        let array = as_array(object).map_err(|_| self.wrong_type(object))?;
        self.of_array(&array)
    }

    fn of_array(&mut self, array: &Bound<'py, PyUntypedArray>) -> PyResult<Values> {
        if array.hasattr("filled")? {
            let numbers = array.call_method1("astype", ("float64",))?.call_method1("filled", (f64::NAN,))?;
            return self.of_array(numbers.cast()?);
        }
        let kind: char = array.getattr("dtype")?.getattr("kind")?.extract()?;
        let shape: Vec<usize> = array.getattr("shape")?.extract()?;
        match kind {
            'f' | 'i' | 'u' => {
                let array: PyArrayLikeDyn<'py, f64, AllowTypeChange> = array.extract()?;
                let view = array.as_array();
                let values = view.as_slice().map_or_else(|| view.iter().copied().collect(), <[f64]>::to_vec);
                Ok(Values::Many { values, shape })
            }
            'O' => self.one_by_one(&array.getattr("flat")?, shape),
            _ => Err(self.wrong_type(array.as_any())),
        }
    }

    /// Elements that are objects: quantities with units, decimals.
    fn one_by_one(&self, items: &Bound<'py, PyAny>, shape: Vec<usize>) -> PyResult<Values> {
        let mut values = Vec::with_capacity(shape.iter().product());
        for item in items.try_iter()? {
            values.push(self.single(&item?)?);
        }
        Ok(Values::Many { values, shape })
    }

    /// A single number, in the unit of the name.
    fn single(&self, object: &Bound<'py, PyAny>) -> PyResult<f64> {
        let is_number = object.hasattr("__float__")? || object.hasattr("__index__")?;
        if object.is_instance_of::<PyBool>() || !is_number {
            return Err(self.wrong_type(object));
        }
        if object.hasattr("magnitude")? && object.hasattr("to")? {
            return magnitude(object, self.row.name, Some(self.row))?.extract().map_err(|_| self.wrong_type(object));
        }
        object.extract().map_err(|_| self.wrong_type(object))
    }

    /// Checks the range and converts to SI.
    fn check(&mut self) -> PyResult<()> {
        let row = self.row;
        let wrong = |value: f64| !(value.is_finite() && row.allowed.holds(value));
        match &mut self.values {
            Values::Absent => {}
            Values::One(value) => {
                if wrong(*value) {
                    value.check(&Place::root(row.name), row, &mut Notes::default())?;
                }
                *value = row.unit.to_si(*value);
            }
            Values::Many { values, shape } => {
                if let Some(at) = values.iter().position(|&value| wrong(value) && !value.is_nan()) {
                    let place = format!("{}{}", row.name, index(at, shape));
                    values[at].check(&Place::root(&place), row, &mut Notes::default()).map_err(|mut error| {
                        error.field = row.name.into();
                        error
                    })?;
                }
                values.iter_mut().for_each(|value| *value = row.unit.to_si(*value));
            }
        }
        Ok(())
    }

    fn wrong_type(&self, object: &Bound<'py, PyAny>) -> PyErr {
        let name = self.row.name;
        let kind = object.get_type().name().map_or_else(|_| "something else".into(), |name| name.to_string());
        let limit = self.row.allowed.words(self.row.unit);
        let message =
            format!("{name} is of the type {kind}, but {} must be a number or an array of numbers", self.row.means);
        Error::new(Code::WrongType, name, message).text_value(kind).unit(self.row.unit.label).limit(limit).into()
    }
}

/// The place of an element as Python writes it: `[3]`, `[1, 2]`; nothing for an array without axes.
pub fn index(at: usize, shape: &[usize]) -> String {
    let mut rest = at;
    let mut places: Vec<String> = Vec::with_capacity(shape.len());
    for &length in shape.iter().rev() {
        places.push((rest % length.max(1)).to_string());
        rest /= length.max(1);
    }
    places.reverse();
    if places.is_empty() { String::new() } else { format!("[{}]", places.join(", ")) }
}

/// Whether an object is a labelled array: it has an index that is not a method, as lists have one.
fn is_series(object: &Bound<'_, PyAny>) -> PyResult<bool> {
    Ok(object.hasattr("to_numpy")? && object.getattr_opt("index")?.is_some_and(|index| !index.is_callable()))
}

/// The array of a labelled one; what is missing in one of the types that know missing values is NaN.
fn plain_array<'py>(object: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    if let Some(dtype) = object.getattr_opt("dtype")? {
        let kind = dtype.getattr_opt("kind")?.map(|kind| kind.extract::<char>()).transpose()?;
        if dtype.hasattr("na_value")? && kind.is_some_and(|kind| matches!(kind, 'f' | 'i' | 'u')) {
            return object.call_method1("to_numpy", ("float64", false, f64::NAN));
        }
    }
    object.call_method0("to_numpy")
}

/// Whether a sequence holds quantities with units, which NumPy would strip.
fn holds_quantities(object: &Bound<'_, PyAny>) -> PyResult<bool> {
    for item in object.try_iter()? {
        let item = item?;
        if !item.is_instance_of::<PyFloat>() && item.hasattr("magnitude")? {
            return Ok(true);
        }
    }
    Ok(false)
}

/// `numpy.asarray` of anything.
fn as_array<'py>(object: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyUntypedArray>> {
    static AS_ARRAY: PyOnceLock<Py<PyAny>> = PyOnceLock::new();
    let function = AS_ARRAY.import(object.py(), "numpy", "asarray")?;
    Ok(function.call1((object,))?.cast_into()?)
}
