//! Formulas by name, for students and scripts: the core functions that `evaluate` calls, over numbers or arrays.
//!
//! | file | what it does |
//! |---|---|
//! | `given` | arguments: numbers and arrays of any origin, checked and converted to SI by their row of the register |
//! | `spread` | one formula over numbers, or over arrays that broadcast |
//! | `flows` | the same over projects of cash flows |
//! | `series` | the same over readings in the order of time |
//! | `declare` | how a formula is declared |
//! | `outcomes` | a small class for each formula with several results |
//! | the others | one Python module each, named alike |

pub mod coverage;
mod declare;
pub mod economics;
pub mod electrics;
pub mod fill;
pub mod film;
mod flows;
mod given;
pub mod hydraulics;
pub mod kinematics;
pub mod motor;
pub mod oil;
pub mod outcomes;
mod series;
mod spread;
pub mod statistics;
pub mod tension;
pub mod wear;

/// What every module of formulas needs for its declarations.
mod prelude {
    pub use super::declare::{Choice, Floats, Formula, Outcome, Own, answered, chosen, results_of};
    pub(super) use super::declare::{by_hand, formulas, row};
    pub use super::given::{Argument, Given};
    pub use super::spread::spread;
    pub use crate::quantity::{ARGUMENTS, Noun, find};
    pub use pyo3::prelude::*;
}

use declare::Formula;
use pyo3::prelude::*;
use pyo3::types::PyDict;

const ALL: &[&[Formula]] = &[
    kinematics::FORMULAS,
    tension::FORMULAS,
    oil::FORMULAS,
    film::FORMULAS,
    coverage::FORMULAS,
    coverage::BY_HAND,
    hydraulics::FORMULAS,
    fill::FORMULAS,
    electrics::FORMULAS,
    motor::FORMULAS,
    wear::FORMULAS,
    wear::BY_HAND,
    economics::FORMULAS,
    economics::BY_HAND,
    statistics::FORMULAS,
    statistics::BY_HAND,
];

/// Every formula: module, name, and the register rows of its arguments and results (name, unit, meaning, range,
/// default).
#[pyfunction]
pub fn formulas(py: Python<'_>) -> PyResult<Vec<Table<'_>>> {
    let row = |row: &crate::quantity::Row| -> PyResult<Bound<'_, PyDict>> {
        let dict = PyDict::new(py);
        dict.set_item("name", row.name)?;
        dict.set_item("unit", row.unit.label)?;
        dict.set_item("means", row.means)?;
        dict.set_item("allowed", row.allowed.words(row.unit))?;
        dict.set_item("default", row.default)?;
        Ok(dict)
    };
    ALL.iter()
        .flat_map(|formulas| formulas.iter())
        .map(|formula| {
            let dict = PyDict::new(py);
            dict.set_item("module", formula.module)?;
            dict.set_item("name", formula.name)?;
            dict.set_item("arguments", formula.arguments.iter().map(|r| row(r)).collect::<PyResult<Vec<_>>>()?)?;
            dict.set_item("results", formula.results.iter().map(row).collect::<PyResult<Vec<_>>>()?)?;
            Ok(Table(dict))
        })
        .collect()
}

/// A dictionary of names and anything.
pub struct Table<'py>(Bound<'py, PyDict>);

impl<'py> IntoPyObject<'py> for Table<'py> {
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
