//! A small frozen class for every formula that gives several results.

use super::declare::Outcome;
use crate::quantity::Row;
use pyo3::basic::CompareOp;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat, PyTuple};

/// One result: a number or an array, a count, a yes or no, or a list of any length.
trait Kind {
    /// As Python gets it.
    fn shown<'py>(value: Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        Ok(value)
    }
}
struct Number;
struct Count;
struct Flag;
struct Numbers;
struct Counts;
impl Kind for Number {}
impl Kind for Numbers {}
impl Kind for Counts {}
impl Kind for Count {
    fn shown<'py>(value: Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        match value.cast::<PyFloat>() {
            Ok(number) => Ok((number.value() as i64).into_pyobject(value.py())?.into_any()),
            Err(_) => Ok(value),
        }
    }
}
impl Kind for Flag {
    fn shown<'py>(value: Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        match value.cast::<PyFloat>() {
            Ok(number) => Ok(pyo3::types::PyBool::new(value.py(), number.value() != 0.0).to_owned().into_any()),
            Err(_) if value.hasattr("astype")? => value.rich_compare(1.0, CompareOp::Eq), // NaN is no
            Err(_) => Ok(value),
        }
    }
}

/// What type checkers are told of a result.
#[cfg(feature = "stubs")]
pub mod hint {
    use pyo3::inspect::{PyStaticConstant, PyStaticExpr};
    use pyo3::{type_hint_identifier, type_hint_subscript};
    pub const NUMBER: PyStaticExpr = type_hint_identifier!("pinfilm.typing", "FloatsOut");
    pub const NUMBERS: PyStaticExpr = type_hint_subscript!(
        type_hint_identifier!("builtins", "tuple"),
        type_hint_identifier!("builtins", "float"),
        PyStaticExpr::Constant { value: PyStaticConstant::Ellipsis }
    );
    pub const WORDS: PyStaticExpr = type_hint_subscript!(
        type_hint_identifier!("builtins", "tuple"),
        type_hint_identifier!("builtins", "str"),
        PyStaticExpr::Constant { value: PyStaticConstant::Ellipsis }
    );
    pub const COUNTS: PyStaticExpr = type_hint_subscript!(
        type_hint_identifier!("builtins", "tuple"),
        type_hint_identifier!("builtins", "int"),
        PyStaticExpr::Constant { value: PyStaticConstant::Ellipsis }
    );
}

/// A result on its way to Python, typed for stubs.
pub struct Shown<K>(Py<PyAny>, std::marker::PhantomData<K>);

macro_rules! typed {
    ($($kind:ident => $hint:ident),+) => { $(
        impl<'py> IntoPyObject<'py> for Shown<$kind> {
            type Target = PyAny;
            type Output = Bound<'py, PyAny>;
            type Error = PyErr;
            #[cfg(feature = "stubs")]
            const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = hint::$hint;
            fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
                Ok(self.0.into_bound(py))
            }
        }
    )+ };
}
typed!(Number => NUMBER, Count => NUMBER, Flag => NUMBER, Numbers => NUMBERS, Counts => COUNTS);

/// Whether two results are the same, element by element for arrays.
fn equal(a: &Bound<'_, PyAny>, b: &Bound<'_, PyAny>) -> PyResult<bool> {
    a.eq(b).or_else(|_| a.py().import("numpy")?.call_method1("array_equal", (a, b))?.is_truthy())
}

const fn rows_of(name: &str) -> &'static [Row] {
    super::declare::results_of("", name)
}

macro_rules! outcome_classes {
    ($( $(#[doc = $doc:literal])+ $name:ident of $module:literal {
        $( $field:ident : $kind:ident [$unit:ident] $means:literal )+
    } )+) => { $(
        // The class attribute writes unsafe functions in the style of an older edition.
        #[allow(non_snake_case, unsafe_op_in_unsafe_fn)]
        mod $name {
            #[allow(unused_imports)] // an outcome names some of the kinds
            use super::{Count, Counts, Flag, Kind, Number, Numbers, Shown, equal};
            use pyo3::prelude::*;
            use pyo3::types::PyDict;
            use std::marker::PhantomData;

            $(#[doc = $doc])+
            #[pyclass(frozen, module = $module)]
            pub struct $name { $($field: Py<PyAny>),+ }

            impl $name {
                /// How many results there are.
                pub const COUNT: usize = [$(stringify!($field)),+].len();

                /// Made of results that are already as Python gets them, in order.
                pub fn made<'py>(values: [Bound<'py, PyAny>; Self::COUNT]) -> PyResult<Self> {
                    let [$($field),+] = values;
                    Ok(Self { $($field: $kind::shown($field)?.unbind()),+ })
                }
            }

            #[pymethods]
            impl $name {
                #[new]
                #[pyo3(signature = (*, $($field),+))]
                #[allow(clippy::too_many_arguments)]
                fn new($($field: Py<PyAny>),+) -> Self { Self { $($field),+ } }
                $(
                    #[doc = $means]
                    #[getter]
                    fn $field(&self, py: Python<'_>) -> Shown<$kind> { Shown(self.$field.clone_ref(py), PhantomData) }
                )+
                /// As a dictionary of names and values.
                fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<super::Named<'py>> {
                    let dict = PyDict::new(py);
                    $(dict.set_item(stringify!($field), &self.$field)?;)+
                    Ok(super::Named(dict))
                }
                fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
                    let fields = [$(format!("{}={}", stringify!($field), self.$field.bind(py).repr()?)),+];
                    Ok(format!("{}({})", stringify!($name), fields.join(", ")))
                }
                fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
                    let values = [$(self.$field.bind(py).str()?.to_string()),+];
                    let rows = super::rows_of(stringify!($name)).iter().zip(&values);
                    let rows = rows.map(|(row, value)| vec![row.name, value.as_str(), row.unit.label, row.means]);
                    let heads = ["name", "value", "unit", "meaning"];
                    Ok(crate::quantity::show::html_rows(stringify!($name), &heads, rows, ""))
                }
                fn __eq__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<bool> {
                    let Ok(other) = other.cast::<Self>() else { return Ok(false) };
                    let other = other.get();
                    Ok($(equal(self.$field.bind(py), other.$field.bind(py))?)&&+)
                }
                fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<super::Rebuilt<'py>> {
                    super::rebuilt(slf.as_any(), slf.get().to_dict(slf.py())?)
                }
            }

            impl super::Outcome<{ $name::COUNT }> for $name {
                fn rows(_: Option<&'static crate::quantity::Row>) -> [&'static crate::quantity::Row; $name::COUNT] {
                    std::array::from_fn(|i| &super::rows_of(stringify!($name))[i])
                }
                fn of(values: [Bound<'_, PyAny>; $name::COUNT]) -> PyResult<Self> { Self::made(values) }
            }
        }
    )+

    /// The classes, under their Python names.
    pub mod classes { $( pub use super::$name::$name; )+ }
    };
}
crate::quantity::outcomes!(outcome_classes);

/// A dictionary of names and values.
pub struct Named<'py>(Bound<'py, PyDict>);

impl<'py> IntoPyObject<'py> for Named<'py> {
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

/// How to make an object again: a callable and its arguments.
type Rebuilt<'py> = (Bound<'py, PyAny>, (Bound<'py, PyAny>, (), Named<'py>));

/// `copyreg.__newobj_ex__`, which makes an object from keywords.
fn rebuilt<'py>(object: &Bound<'py, PyAny>, keywords: Named<'py>) -> PyResult<Rebuilt<'py>> {
    let new = object.py().import("copyreg")?.getattr("__newobj_ex__")?;
    Ok((new, (object.get_type().into_any(), (), keywords)))
}

/// A count as Python gets it: whole for a number, as it is for an array.
pub fn whole_number<'py>(value: Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    Count::shown(value)
}

/// A list as a tuple.
pub fn list<'py, T: IntoPyObject<'py>>(
    py: Python<'py>,
    items: impl ExactSizeIterator<Item = T>,
) -> PyResult<Bound<'py, PyAny>> {
    Ok(PyTuple::new(py, items)?.into_any())
}
