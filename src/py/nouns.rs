//! A Python class for every noun, made from the same declaration as the Rust struct.

use super::border::{Data, Given, Plain, Shown, to_tree};
use crate::quantity::{Field, Noun, Tree, Value};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::hash::{DefaultHasher, Hash, Hasher};

/// The core types that the declarations name.
mod core {
    pub use crate::chain::Chain;
    pub use crate::circuit::{
        Circuit, Contact, Friction, Kinematics, LoadOn, Plane, Section, Straight, Support, Tension, Turn, TurnKind,
        TwoSprocket,
    };
    pub use crate::drive::{Drive, DriveState, MeasuredAt};
    pub use crate::economics::{Cost, Costs};
    pub use crate::joint::{Event, EventKind, Joint, JointState, Regime, RollerContact, Surface};
    pub use crate::line::curves::{ElongationCurve, FrictionCurve, RoundLoop, ShotRecord};
    pub use crate::line::{Caution, Duty, Evaluation, JointOrbit, Line, OrbitEvent, Surroundings, Warning};
    pub use crate::log::evidence::{
        AvoidedUse, BeforeAfter, Change, ChangeOf, ChangePoints, Cleaning, LogNote, LogRow, LogRules, LoggedAs,
        OilCheck, OilUse, Proof, PullChange, Verdict, WatchAlarm, WatchReport, WatchStep,
    };
    pub use crate::lubrication::{
        Clock, Drip, Fill, FillState, LossParts, Lubrication, Manual, Spray, Synchronised, Timer,
    };
    pub use crate::oil::Oil;
    pub use crate::quantity::{Access, Named, Side, Word};
    pub use crate::study::{
        Alternative, Comparison, LineSetUp, Reason, Recommendation, Refused, Rejection, Savings, SetUpSheet, Shift,
        SimulatedLine,
    };
    pub use crate::supply::{Inrush, Supply, SupplyState};
    pub use crate::wear::{Governs, Wear, WearState};
}

macro_rules! shown_as_word {
    ($($name:ident),+ $(,)?) => { $(
        impl Shown for core::$name {
            type Out = &'static str;
            #[cfg(feature = "stubs")]
            const HINT: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("builtins", "str");
            fn shown(self) -> &'static str { self.as_str() }
        }
    )+ };
}
shown_as_word!(
    Access,
    ChangeOf,
    Clock,
    Contact,
    EventKind,
    Governs,
    Inrush,
    LoadOn,
    LoggedAs,
    MeasuredAt,
    Plane,
    Reason,
    Regime,
    Side,
    Support,
    Surroundings,
    TurnKind,
    Verdict
);

/// A noun of the given fields.
fn built<T: Noun>(fields: Vec<(&'static str, Option<Bound<'_, PyAny>>)>) -> PyResult<T> {
    let group = T::GROUP;
    let mut entries = Vec::with_capacity(fields.len());
    for ((name, object), row) in fields.into_iter().zip(T::ROWS) {
        if let Some(object) = object {
            let path = if group.is_empty() { name.to_string() } else { format!("{group}.{name}") };
            entries.push((name.to_string(), to_tree(&object, &path, Some(row))?));
        }
    }
    Ok(T::from_tree(&Value::Table(entries).into())?)
}

/// The changes of a `replace` call: keywords, and a mapping of dotted paths.
pub fn changes<T: Noun>(
    paths: Option<Bound<'_, PyAny>>,
    keywords: Option<&Bound<'_, PyDict>>,
) -> PyResult<Vec<(String, Tree)>> {
    let mut changes = Vec::new();
    let paths = match &paths {
        Some(mapping) => {
            Some(mapping.cast::<PyDict>().map_err(|_| PyTypeError::new_err("the changes are a dict of paths"))?)
        }
        None => None,
    };
    for dict in [paths, keywords].into_iter().flatten() {
        for (path, value) in dict.iter() {
            let path: String = path.extract().map_err(|_| PyTypeError::new_err("the paths of a change are text"))?;
            let tree = to_tree(&value, &path, crate::quantity::row_of::<T>(&path))?;
            changes.push((path, tree));
        }
    }
    Ok(changes)
}

fn hash_of<T: Noun>(noun: &T) -> u64 {
    let mut hasher = DefaultHasher::new();
    noun.repr().hash(&mut hasher);
    hasher.finish()
}

macro_rules! python_class {
    (
        $(#[doc = $doc:literal])+
        $name:ident / $si:ident, $group:literal
        $(, consistent: $consistent:path)? $(, defaults: $defaults:ident)? $(, keeps: $lines:ident)? {
            $( $field:ident as $plain:ident : $ty:ty [$unit:ident $($eq:tt $default:expr)?] $means:literal
               { $($key:ident : $value:expr),* $(,)? } )+
        }
    ) => {
        // The class attribute writes unsafe functions in the style of an older edition.
        #[allow(non_snake_case, unsafe_op_in_unsafe_fn)]
        mod $name {
            #[allow(unused_imports)] // a noun of plain numbers names none of them
            use super::core::*;
            use super::{Data, Given, Plain, Shown, built, changes, hash_of};
            use crate::quantity::{Field, Noun, Tree};
            use pyo3::prelude::*;
            use pyo3::types::{PyDict, PyType};

            $(#[doc = $doc])+
            #[pyclass(frozen, module = "pinfilm")]
            pub struct $name(pub super::core::$name);

            #[pymethods]
            impl $name {
                #[new]
                #[pyo3(signature = (*, $($field $($eq None)?),+))]
                #[allow(clippy::too_many_arguments)]
                fn new($($field: Option<Given<'_, $ty>>),+) -> PyResult<Self> {
                    built(vec![$((stringify!($field), $field.map(|given| given.0))),+]).map(Self)
                }
                $(
                    #[doc = $means]
                    #[getter]
                    fn $field(&self) -> <$ty as Shown>::Out { self.0.$field.clone().shown() }
                )+
                /// The same with some values changed: keywords, or a dict of dotted paths (`{"timer.dwell_min": 60}`).
                #[pyo3(signature = (paths = None, /, **changes: "object"))]
                fn replace(
                    &self,
                    paths: Option<Data<'_>>,
                    changes: Option<&Bound<'_, PyDict>>,
                ) -> PyResult<Self> {
                    let changes = self::changes::<super::core::$name>(paths.map(|paths| paths.0), changes)?;
                    Ok(Self(self.0.replaced(changes)?))
                }
                /// As a dictionary of plain values.
                fn to_dict(&self) -> Plain { Plain(self.0.write()) }
                /// From a dictionary as `to_dict` gives it.
                #[classmethod]
                fn from_dict(_cls: &Bound<'_, PyType>, data: Data<'_>) -> PyResult<Self> {
                    let tree = super::to_tree(&data.0, super::core::$name::GROUP, None)?;
                    Ok(Self(super::core::$name::from_tree(&tree)?))
                }
                /// As TOML text.
                fn to_toml(&self) -> PyResult<String> { Ok(self.0.write().to_toml()?) }
                /// From TOML text, or from a file given as a path object or a name that ends in `.toml`.
                #[classmethod]
                fn from_toml(_cls: &Bound<'_, PyType>, source: super::Source) -> PyResult<Self> {
                    let tree = Tree::from_toml(&source.read()?)?;
                    Ok(Self(super::core::$name::from_tree(&tree)?))
                }
                /// As JSON text.
                fn to_json(&self) -> PyResult<String> { Ok(self.0.write().to_json()?) }
                /// From JSON text, or from a file given as a path object or a name that ends in `.json`.
                #[classmethod]
                fn from_json(_cls: &Bound<'_, PyType>, source: super::Source) -> PyResult<Self> {
                    let tree = Tree::from_json(&source.read()?)?;
                    Ok(Self(super::core::$name::from_tree(&tree)?))
                }
                fn __repr__(&self) -> String { self.0.repr() }
                fn __str__(&self) -> String { self.0.as_text() }
                fn _repr_html_(&self) -> String { self.0.as_html() }
                fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
                    other.cast::<Self>().is_ok_and(|other| other.get().0 == self.0)
                }
                fn __hash__(&self) -> u64 { hash_of(&self.0) }
                fn __copy__(&self) -> Self { Self(self.0.clone()) }
                fn __deepcopy__(&self, _memo: &Bound<'_, PyAny>) -> Self { Self(self.0.clone()) }
                fn __reduce__<'py>(slf: &Bound<'py, Self>) -> PyResult<(Bound<'py, PyAny>, (Plain,))> {
                    Ok((slf.get_type().getattr("from_dict")?, (slf.get().to_dict(),)))
                }
            }

            impl Shown for super::core::$name {
                type Out = $name;
                #[cfg(feature = "stubs")]
                const HINT: pyo3::inspect::PyStaticExpr = <$name as pyo3::PyTypeInfo>::TYPE_HINT;
                fn shown(self) -> $name { $name(self) }
            }
        }
    };
}

#[cfg(feature = "stubs")]
use pyo3::type_hint_union;

/// Text, or the file that holds it.
pub struct Source(String);

impl<'a, 'py> FromPyObject<'a, 'py> for Source {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = type_hint_union!(
        pyo3::type_hint_identifier!("builtins", "str"),
        pyo3::type_hint_subscript!(
            pyo3::type_hint_identifier!("os", "PathLike"),
            pyo3::type_hint_identifier!("builtins", "str")
        )
    );
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        if let Ok(text) = object.extract::<String>() {
            let is_name = !text.contains('\n') && [".toml", ".json"].iter().any(|ending| text.ends_with(ending));
            return if is_name { Source::of_file(text.as_ref()) } else { Ok(Source(text)) };
        }
        Source::of_file(&object.extract::<std::path::PathBuf>()?)
    }
}

impl Source {
    fn of_file(path: &std::path::Path) -> PyResult<Self> {
        Ok(Source(Tree::text(std::fs::read(path)?)?))
    }

    fn read(self) -> PyResult<String> {
        Ok(self.0)
    }
}

macro_rules! python_classes {
    ($($module:ident :: $name:ident),+ $(,)?) => {
        /// The classes, under their Python names.
        pub mod classes { $( pub use super::$name::$name; )+ }

        /// The survey data of an object of one of these classes; with its tag, where it is one of several.
        pub fn tree_of(object: &Bound<'_, PyAny>) -> Option<Tree> {
            if let Some(tree) = tagged_tree_of(object) {
                return Some(tree);
            }
            $( if let Ok(noun) = object.cast::<classes::$name>() {
                return Some(noun.get().0.write());
            } )+
            None
        }
    };
}

crate::chain::chain_noun!(python_class);
crate::oil::oil_noun!(python_class);
crate::circuit::straight_noun!(python_class);
crate::circuit::turn_noun!(python_class);
crate::circuit::circuit_noun!(python_class);
crate::circuit::friction_noun!(python_class);
crate::circuit::two_sprocket_noun!(python_class);
crate::circuit::kinematics_noun!(python_class);
crate::circuit::tension_noun!(python_class);
crate::joint::surface_noun!(python_class);
crate::joint::joint_noun!(python_class);
crate::joint::event_noun!(python_class);
crate::joint::roller_noun!(python_class);
crate::joint::joint_state_noun!(python_class);
crate::lubrication::timer_noun!(python_class);
crate::lubrication::manual_noun!(python_class);
crate::lubrication::drip_noun!(python_class);
crate::lubrication::spray_noun!(python_class);
crate::lubrication::synchronised_noun!(python_class);
crate::lubrication::fill_noun!(python_class);
crate::lubrication::loss_noun!(python_class);
crate::lubrication::fill_state_noun!(python_class);
crate::wear::wear_noun!(python_class);
crate::wear::wear_state_noun!(python_class);
crate::drive::drive_noun!(python_class);
crate::drive::drive_state_noun!(python_class);
crate::supply::supply_noun!(python_class);
crate::supply::supply_state_noun!(python_class);
crate::economics::costs_noun!(python_class);
crate::economics::cost_noun!(python_class);
crate::line::duty_noun!(python_class);
crate::line::line_noun!(python_class);
crate::line::warning_noun!(python_class);
crate::line::caution_noun!(python_class);
crate::line::evaluation_noun!(python_class);
crate::line::orbit_event_noun!(python_class);
crate::line::joint_orbit_noun!(python_class);
crate::line::curves::round_loop_noun!(python_class);
crate::line::curves::shot_record_noun!(python_class);
crate::line::curves::friction_curve_noun!(python_class);
crate::line::curves::elongation_curve_noun!(python_class);
crate::study::savings_noun!(python_class);
crate::study::comparison_noun!(python_class);
crate::log::evidence::log_note_noun!(python_class);
crate::log::evidence::log_rules_noun!(python_class);
crate::log::evidence::log_columns_noun!(python_class);
crate::log::evidence::proof_noun!(python_class);
crate::log::evidence::cleaning_noun!(python_class);
crate::log::evidence::change_noun!(python_class);
crate::log::evidence::change_points_noun!(python_class);
crate::log::evidence::pull_change_noun!(python_class);
crate::log::evidence::before_after_noun!(python_class);
crate::log::evidence::avoided_use_noun!(python_class);
crate::log::evidence::watch_step_noun!(python_class);
crate::log::evidence::watch_alarm_noun!(python_class);
crate::log::evidence::watch_report_noun!(python_class);
crate::log::evidence::oil_check_noun!(python_class);
crate::log::evidence::oil_use_noun!(python_class);
crate::study::set_up_noun!(python_class);
crate::study::alternative_noun!(python_class);
crate::study::rejection_noun!(python_class);
crate::study::refused_noun!(python_class);
crate::study::sheet_noun!(python_class);
crate::study::recommendation_noun!(python_class);
crate::study::shift_noun!(python_class);
crate::study::simulated_noun!(python_class);

python_classes! {
    AvoidedUse::AvoidedUse, BeforeAfter::BeforeAfter, Change::Change, ChangePoints::ChangePoints, Cleaning::Cleaning,
    LogNote::LogNote, LogRow::LogRow, LogRules::LogRules, OilCheck::OilCheck, OilUse::OilUse, Proof::Proof,
    PullChange::PullChange, WatchAlarm::WatchAlarm, WatchReport::WatchReport, WatchStep::WatchStep,
    Caution::Caution, Comparison::Comparison, Evaluation::Evaluation, Savings::Savings, TwoSprocket::TwoSprocket,
    Warning::Warning, Chain::Chain, Circuit::Circuit, Cost::Cost, Costs::Costs, Drip::Drip, Drive::Drive, DriveState::DriveState,
    Duty::Duty, Event::Event, Fill::Fill, FillState::FillState, Friction::Friction, Joint::Joint,
    JointOrbit::JointOrbit, JointState::JointState, Kinematics::Kinematics, Line::Line, LossParts::LossParts, Manual::Manual, Oil::Oil,
    OrbitEvent::OrbitEvent,
    RollerContact::RollerContact, Spray::Spray, Straight::Straight, Supply::Supply, SupplyState::SupplyState,
    Surface::Surface, Synchronised::Synchronised, Tension::Tension, Timer::Timer, Turn::Turn, Wear::Wear,
    WearState::WearState, RoundLoop::RoundLoop, ShotRecord::ShotRecord, FrictionCurve::FrictionCurve,
    ElongationCurve::ElongationCurve,
    Alternative::Alternative, LineSetUp::LineSetUp, Recommendation::Recommendation,
    Refused::Refused, Rejection::Rejection, SetUpSheet::SetUpSheet, Shift::Shift, SimulatedLine::SimulatedLine,
}

/// A straight or a turn.
#[derive(IntoPyObject)]
pub enum SectionOut {
    Straight(classes::Straight),
    Turn(classes::Turn),
}

/// One of the four methods.
#[derive(IntoPyObject)]
pub enum LubricationOut {
    Manual(classes::Manual),
    Drip(classes::Drip),
    Spray(classes::Spray),
    Synchronised(classes::Synchronised),
}

macro_rules! shown_as_one_of {
    ($($name:ident => $out:ident { $($noun:ident),+ }),+ $(,)?) => { $(
        impl Shown for core::$name {
            type Out = $out;
            #[cfg(feature = "stubs")]
            const HINT: pyo3::inspect::PyStaticExpr = <$out as IntoPyObject<'static>>::OUTPUT_TYPE;
            fn shown(self) -> $out {
                match self { $(core::$name::$noun(noun) => $out::$noun(classes::$noun(noun))),+ }
            }
        }
    )+

    /// The survey data of a noun that is one of several, with the word that tells which.
    fn tagged_tree_of(object: &Bound<'_, PyAny>) -> Option<Tree> {
        $( $( if let Ok(noun) = object.cast::<classes::$noun>() {
            return Some(core::$name::from(noun.get().0.clone()).write());
        } )+ )+
        None
    } };
}
shown_as_one_of! {
    Section => SectionOut { Straight, Turn },
    Lubrication => LubricationOut { Manual, Drip, Spray, Synchronised },
}
