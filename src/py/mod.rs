//! The border to Python: the only place that names pyo3 or numpy. No formula, default or limit stands here.
//!
//! | file | what it does |
//! |---|---|
//! | `border` | values across: Python objects to survey data and back |
//! | `errors` | the one error type as Python's exceptions |
//! | `nouns` | a Python class for every noun, made from its declaration |
//! | `verbs` | `evaluate`, `compare` and what can be asked of their results |

mod border;
mod errors;
mod nouns;
mod verbs;

use pyo3::prelude::*;

/// The compiled core of pinfilm. Import from `pinfilm`, not from here.
#[pymodule]
mod _core {
    #[pymodule_export]
    use super::nouns::classes::{
        Caution, Chain, Circuit, Comparison, Cost, Costs, Drip, Drive, DriveState, Duty, Evaluation, Event, Fill,
        FillState, Friction, Joint, JointState, Kinematics, Line, LossParts, Manual, Oil, RollerContact, Savings,
        Spray, Straight, Supply, SupplyState, Surface, Synchronised, Tension, Timer, Turn, TwoSprocket, Warning, Wear,
        WearState,
    };
    #[pymodule_export]
    use super::verbs::{Explanation, compare, evaluate, register, standards, version};

    /// The exceptions are ready before anything can be raised. It takes no module, so that the stub stays complete.
    #[pymodule_init]
    fn init() -> pyo3::PyResult<()> {
        pyo3::Python::attach(super::errors::import)
    }
}
