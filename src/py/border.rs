//! Values across the border: Python objects to survey data, and core values to Python objects.

use super::nouns;
use crate::error::{Code, Error};
use crate::quantity::{Field, Named, Row, Tree, Unit, Value, Word};
use pyo3::BoundObject;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDict, PyFloat, PyInt, PyList, PyMapping, PyString, PyTuple};
use std::marker::PhantomData;

#[cfg(feature = "stubs")]
use pyo3::inspect::PyStaticExpr;
#[cfg(feature = "stubs")]
use pyo3::{type_hint_identifier, type_hint_subscript};

/// What a core value becomes in Python, and what Python may give for it.
pub trait Shown: Field {
    /// The Python side.
    type Out: for<'py> IntoPyObject<'py>;
    /// What type checkers accept as input.
    #[cfg(feature = "stubs")]
    const HINT: PyStaticExpr;
    /// Hands the value over.
    fn shown(self) -> Self::Out;
}

macro_rules! shown_as_itself {
    ($($ty:ty => $hint:expr),+ $(,)?) => { $(
        impl Shown for $ty {
            type Out = $ty;
            #[cfg(feature = "stubs")]
            const HINT: PyStaticExpr = $hint;
            fn shown(self) -> Self { self }
        }
    )+ };
}

shown_as_itself! {
    f64 => type_hint_identifier!("pinfilm.typing", "Scalar"),
    i64 => type_hint_identifier!("builtins", "int"),
    bool => type_hint_identifier!("builtins", "bool"),
}

impl Shown for Word {
    type Out = String;
    #[cfg(feature = "stubs")]
    const HINT: PyStaticExpr = type_hint_identifier!("builtins", "str");
    fn shown(self) -> String {
        self.into_owned()
    }
}

impl<T: Shown> Shown for Option<T> {
    type Out = Option<T::Out>;
    #[cfg(feature = "stubs")]
    const HINT: PyStaticExpr = T::HINT;
    fn shown(self) -> Self::Out {
        self.map(T::shown)
    }
}

/// A list that Python gets as a tuple: results and surveys are frozen.
pub struct Many<T>(Vec<T>);

impl<'py, T: IntoPyObject<'py>> IntoPyObject<'py> for Many<T> {
    type Target = PyTuple;
    type Output = Bound<'py, PyTuple>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: PyStaticExpr = type_hint_subscript!(
        type_hint_identifier!("builtins", "tuple"),
        T::OUTPUT_TYPE,
        PyStaticExpr::Constant { value: pyo3::inspect::PyStaticConstant::Ellipsis }
    );
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        let items: Vec<Bound<'py, PyAny>> = self
            .0
            .into_iter()
            .map(|item| item.into_pyobject(py).map(|item| item.into_any().into_bound()).map_err(Into::into))
            .collect::<PyResult<_>>()?;
        PyTuple::new(py, items)
    }
}

impl<T: Shown> Shown for Vec<T> {
    type Out = Many<T::Out>;
    #[cfg(feature = "stubs")]
    const HINT: PyStaticExpr = type_hint_subscript!(type_hint_identifier!("collections.abc", "Sequence"), T::HINT);
    fn shown(self) -> Self::Out {
        Many(self.into_iter().map(T::shown).collect())
    }
}

impl Shown for [f64; 2] {
    type Out = (f64, f64);
    #[cfg(feature = "stubs")]
    const HINT: PyStaticExpr =
        type_hint_subscript!(type_hint_identifier!("collections.abc", "Sequence"), <f64 as Shown>::HINT);
    fn shown(self) -> Self::Out {
        self.into()
    }
}

impl Shown for [f64; 3] {
    type Out = (f64, f64, f64);
    #[cfg(feature = "stubs")]
    const HINT: PyStaticExpr =
        type_hint_subscript!(type_hint_identifier!("collections.abc", "Sequence"), <f64 as Shown>::HINT);
    fn shown(self) -> Self::Out {
        self.into()
    }
}

impl Shown for (i64, f64) {
    type Out = (i64, f64);
    #[cfg(feature = "stubs")]
    const HINT: PyStaticExpr =
        type_hint_subscript!(type_hint_identifier!("collections.abc", "Sequence"), <f64 as Shown>::HINT);
    fn shown(self) -> Self::Out {
        self
    }
}

/// Numbers by name, as a dictionary.
pub struct ByName(Vec<(Word, f64)>);

impl<'py> IntoPyObject<'py> for ByName {
    type Target = PyDict;
    type Output = Bound<'py, PyDict>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: PyStaticExpr = type_hint_subscript!(
        type_hint_identifier!("builtins", "dict"),
        type_hint_identifier!("builtins", "str"),
        type_hint_identifier!("builtins", "float")
    );
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        let dict = PyDict::new(py);
        for (name, value) in self.0 {
            dict.set_item(name.as_ref(), value)?;
        }
        Ok(dict)
    }
}

impl Shown for Named {
    type Out = ByName;
    #[cfg(feature = "stubs")]
    const HINT: PyStaticExpr = type_hint_subscript!(
        type_hint_identifier!("collections.abc", "Mapping"),
        type_hint_identifier!("builtins", "str"),
        type_hint_identifier!("builtins", "float")
    );
    fn shown(self) -> ByName {
        ByName(self.0)
    }
}

/// What Python gave for a field of type `T`; read later, when the field's name and unit are known.
pub struct Given<'py, T>(pub Bound<'py, PyAny>, PhantomData<T>);

impl<'a, 'py, T: Shown> FromPyObject<'a, 'py> for Given<'py, T> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = T::HINT;
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        Ok(Given(object.to_owned(), PhantomData))
    }
}

/// A dictionary, or anything else that survey data is made of.
pub struct Data<'py>(pub Bound<'py, PyAny>);

impl<'a, 'py> FromPyObject<'a, 'py> for Data<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_subscript!(
        type_hint_identifier!("collections.abc", "Mapping"),
        type_hint_identifier!("builtins", "str"),
        type_hint_identifier!("typing", "Any")
    );
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        Ok(Data(object.to_owned()))
    }
}

/// Survey data that Python gets as dictionaries, lists and plain values.
pub struct Plain(pub Tree);

impl<'py> IntoPyObject<'py> for Plain {
    type Target = PyAny;
    type Output = Bound<'py, PyAny>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: PyStaticExpr = type_hint_subscript!(
        type_hint_identifier!("builtins", "dict"),
        type_hint_identifier!("builtins", "str"),
        type_hint_identifier!("typing", "Any")
    );
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        to_python(py, &self.0)
    }
}

/// Survey data as Python objects.
pub fn to_python<'py>(py: Python<'py>, tree: &Tree) -> PyResult<Bound<'py, PyAny>> {
    Ok(match &tree.value {
        Value::Nothing => py.None().into_bound(py),
        Value::Flag(flag) => PyBool::new(py, *flag).to_owned().into_any(),
        Value::Whole(number) => number.into_pyobject(py)?.into_any(),
        Value::Number(number) => PyFloat::new(py, *number).into_any(),
        Value::Text(text) => PyString::new(py, text).into_any(),
        Value::List(items) => {
            let items = items.iter().map(|item| to_python(py, item)).collect::<PyResult<Vec<_>>>()?;
            PyList::new(py, items)?.into_any()
        }
        Value::Table(entries) => {
            let dict = PyDict::new(py);
            for (key, tree) in entries {
                dict.set_item(key, to_python(py, tree)?)?;
            }
            dict.into_any()
        }
    })
}

/// Python objects as survey data. `row` is the quantity that the object is given for, so that one with a unit of its
/// own can be converted to the unit of the name.
pub fn to_tree(object: &Bound<'_, PyAny>, path: &str, row: Option<&Row>) -> PyResult<Tree> {
    tree_at_depth(object, path, row, 0)
}

/// Levels of lists and dictionaries that data may have; more is a list that holds itself.
const DEEPEST: usize = 40;

fn tree_at_depth(object: &Bound<'_, PyAny>, path: &str, row: Option<&Row>, depth: usize) -> PyResult<Tree> {
    if depth > DEEPEST {
        let root = path.split('.').next().unwrap_or_default();
        let message = format!("{root} is nested more than {DEEPEST} levels deep, or holds itself: no survey does");
        return Err(Error::new(Code::WrongType, root, message).into());
    }
    let inner = |item: &Bound<'_, PyAny>, path: &str| tree_at_depth(item, path, row, depth + 1);
    let items = || object.try_iter()?.map(|item| inner(&item?, path)).collect::<PyResult<Vec<_>>>();
    let value = if object.is_none() {
        Value::Nothing
    } else if let Ok(float) = object.cast::<PyFloat>() {
        Value::Number(float.value())
    } else if let Ok(flag) = object.cast::<PyBool>() {
        Value::Flag(flag.is_true())
    } else if let Ok(whole) = object.cast::<PyInt>() {
        // A number beyond every float is as good as infinite, and is refused as that.
        let beyond = if whole.lt(0)? { f64::NEG_INFINITY } else { f64::INFINITY };
        whole
            .extract::<i64>()
            .map(Value::Whole)
            .unwrap_or_else(|_| Value::Number(whole.extract::<f64>().unwrap_or(beyond)))
    } else if let Ok(text) = object.cast::<PyString>() {
        Value::Text(text.to_string())
    } else if let Some(tree) = nouns::tree_of(object) {
        return Ok(tree);
    } else if let Ok(dict) = object.cast::<PyDict>() {
        let mut entries = Vec::with_capacity(dict.len());
        for (key, item) in dict.iter() {
            let key = key
                .cast::<PyString>()
                .map_err(|_| PyTypeError::new_err(format!("the keys of a survey are text, not {}", key.get_type())))?;
            let key = key.to_string();
            let tree = inner(&item, &format!("{path}.{key}"))?;
            entries.push((key, tree));
        }
        Value::Table(entries)
    } else if object.is_instance_of::<PyList>() || object.is_instance_of::<PyTuple>() {
        Value::List(items()?) // before Python is asked for a mapping, which takes long and would swallow a Ctrl-C
    } else if let Ok(mapping) = object.cast::<PyMapping>() {
        let dict = PyDict::new(object.py());
        dict.update(mapping)?;
        return inner(&dict.into_any(), path);
    } else if object.hasattr("magnitude")? && object.hasattr("to")? {
        Value::Number(in_unit_of(object, path, row)?)
    } else if object.hasattr("ndim")? && object.getattr("ndim")?.extract::<usize>().is_ok_and(|n| n == 0) {
        return inner(&object.call_method0("item")?, path);
    } else if !object.is_instance_of::<pyo3::types::PyBytes>() && object.hasattr("__len__")? {
        Value::List(items()?)
    } else if let Ok(number) = object.extract::<f64>() {
        Value::Number(number)
    } else {
        let kind = object.get_type().name()?.to_string();
        let error = Error::new(Code::WrongType, path, format!("{path} is a {kind}, which is no value of a survey"));
        return Err(error.text_value(kind).into());
    };
    Ok(value.into())
}

/// The magnitude of a quantity in the unit that the name carries.
fn in_unit_of(object: &Bound<'_, PyAny>, path: &str, row: Option<&Row>) -> PyResult<f64> {
    magnitude(object, path, row)?.extract()
}

/// The same before it is known to be one number: a quantity may hold an array.
pub fn magnitude<'py>(object: &Bound<'py, PyAny>, path: &str, row: Option<&Row>) -> PyResult<Bound<'py, PyAny>> {
    let unit: Option<&Unit> = row.map(|row| row.unit).filter(|unit| !unit.spelled.is_empty());
    let Some(unit) = unit else {
        let given = object.getattr("units")?.to_string();
        let message =
            format!("{path} = {object} carries the unit {given}, but this name has none: give a plain number");
        return Err(Error::new(Code::Dimension, path, message).text_value(given).into());
    };
    let converted = object.call_method1("to", (unit.spelled,)).map_err(|_| {
        let given = object.getattr("units").map_or_else(|_| "?".into(), |units| units.to_string());
        let message = format!("{path} = {object} cannot be converted to {}: it is given in {given}", unit.label);
        PyErr::from(Error::new(Code::Dimension, path, message).text_value(given).unit(unit.label).limit(unit.label))
    })?;
    converted.getattr("magnitude")
}
