//! What Python can ask for: `evaluate`, `compare`, standard chains.

use super::border::{Given, to_tree};
use super::errors::PinfilmRangeWarning;
use super::nouns::{self, classes};
use super::study::Foreign;
use crate::error::{Code, Error};
use crate::line::{Evaluation, Line, Warning};
use crate::quantity::{Datum, Field, Noun, Row, row_of, value_at};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// The version of the compiled core.
#[pyfunction]
pub fn version() -> &'static str {
    env!("CARGO_PKG_VERSION")
}

/// Codes of warnings that say a number lies outside a range; the others are findings about the line.
const RANGE_CODES: [&str; 4] = ["unusual", "bearing_pressure", "tempering", "supply_voltage"];

/// Also raises the warnings about ranges as Python warnings, so that they are seen where nobody reads the list.
fn warn(py: Python<'_>, warnings: &[Warning]) -> PyResult<()> {
    for warning in warnings.iter().filter(|warning| RANGE_CODES.contains(&warning.code.as_ref())) {
        let category = py.get_type::<PinfilmRangeWarning>();
        let message = std::ffi::CString::new(warning.message.as_ref()).unwrap_or_default();
        PyErr::warn(py, &category, &message, 1)?;
    }
    Ok(())
}

/// Evaluate a line: kinematics, tension, joints, fill, wear, drive, supply and cost of a year.
///
/// Parameters
/// ----------
/// line : Line
///     The survey.
///
/// Returns
/// -------
/// Evaluation
///     Groups of results, with `warnings` and `cautions`.
///
/// Raises
/// ------
/// InputError
///     For a survey that cannot be computed; it names field, value, unit and limit.
/// ConvergenceError
///     If friction and pull do not settle.
///
/// Warns
/// -----
/// PinfilmRangeWarning
///     For every value outside its usual range; also listed in `warnings`.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> result = pinfilm.evaluate(pinfilm.examples.load("oven_now"))
/// >>> result.fill.never_reached > 0
/// True
#[pyfunction]
pub fn evaluate(py: Python<'_>, line: &classes::Line) -> PyResult<classes::Evaluation> {
    let result = py.detach(|| crate::line::evaluate(&line.0))?;
    warn(py, &result.warnings)?;
    Ok(classes::Evaluation(result))
}

/// Compare a line as it is with the same line as proposed: savings item by item, payback, net present value.
///
/// Parameters
/// ----------
/// now, proposed : Line
///     The two surveys. Capital, discount rate, horizon and days of a year are those of the proposed one.
///
/// Returns
/// -------
/// Comparison
///     Savings, payback in days with its status word, discounted payback, NPV and IRR with all roots.
///
/// Raises
/// ------
/// InputError
///     If one of the two cannot be evaluated, or their currencies differ.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> change = pinfilm.compare(*pinfilm.examples.pair("oven"))
/// >>> change.payback_status
/// 'pays_back'
#[pyfunction]
pub fn compare(py: Python<'_>, now: &classes::Line, proposed: &classes::Line) -> PyResult<classes::Comparison> {
    let result = py.detach(|| crate::study::compare(&now.0, &proposed.0))?;
    warn(py, &result.now.warnings)?;
    warn(py, &result.proposed.warnings)?;
    Ok(classes::Comparison(result))
}

/// Follow the pin of a joint in its bush round the loop, in time, and set the closed form of `evaluate` beside it.
///
/// The joint is flooded and rigid; its loads are the settled tensions of `evaluate`. A reference: a thousand times
/// slower than the closed form, and free of its fit.
///
/// Parameters
/// ----------
/// line : Line
///     The survey.
///
/// Returns
/// -------
/// JointOrbit
///     For each articulation the smallest gap at its start, on average and at its end (µm), by orbit and by closed form.
///
/// Raises
/// ------
/// InputError
///     If the line cannot be evaluated, or the chain hangs slack at an articulation.
/// ConvergenceError
///     If the path of the pin does not repeat itself.
///
/// Notes
/// -----
/// Mobility method (Booker 1965) with the exact half film; the finite length by a closure of our own. Each time step is
/// within 1e-9 of its film, and the path repeats within 1e-7.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> orbit = pinfilm.joint_orbit(pinfilm.examples.load("floor_now"))
/// >>> all(event.film_start_um < event.film_end_um for event in orbit.events)
/// True
#[pyfunction]
pub fn joint_orbit(py: Python<'_>, line: &classes::Line) -> PyResult<classes::JointOrbit> {
    Ok(classes::JointOrbit(py.detach(|| crate::line::joint_orbit(&line.0))?))
}

#[pymethods]
impl classes::Chain {
    /// A chain of a standard's table; what the standard leaves open, or what differs, is given by name.
    ///
    /// Parameters
    /// ----------
    /// standard, designation : str
    ///     Such as ``"ISO 606", "16B-2"`` or ``"ISO 1977", "M112"``; see `pinfilm.standards`.
    /// **given
    ///     Public names of `Chain`. Tensile strength and mass are per strand.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     For an unknown standard or designation (naming the nearest), or a value that is still missing.
    ///
    /// Examples
    /// --------
    /// >>> import pinfilm
    /// >>> pinfilm.Chain.standard("ISO 606", "16B", bush_diameter_mm=11.0, mass_kg_per_m=2.7).pin_diameter_mm
    /// 8.28
    #[staticmethod]
    #[pyo3(signature = (standard, designation, /, **given: "object"))]
    fn standard(standard: &str, designation: &str, given: Option<&Bound<'_, PyDict>>) -> PyResult<Self> {
        let given = nouns::changes::<crate::chain::Chain>(None, given)?;
        Ok(Self(crate::chain::Chain::standard(standard, designation, given)?))
    }
}

#[pymethods]
impl classes::Circuit {
    /// The everyday loop of two sprockets, from the keywords of `TwoSprocket`.
    ///
    /// Examples
    /// --------
    /// >>> import pinfilm
    /// >>> loop = pinfilm.Circuit.two_sprocket(
    /// ...     pitch_mm=100, centre_distance_m=20, teeth_drive=12, teeth_tail=12, carried_kg_per_m=60, take_up_n=1500
    /// ... )
    /// >>> len(loop.sections)
    /// 4
    #[staticmethod]
    #[pyo3(signature = (**given: "object"))]
    fn two_sprocket(given: Option<&Bound<'_, PyDict>>) -> PyResult<Self> {
        let given = nouns::changes::<crate::circuit::TwoSprocket>(None, given)?;
        let tree = crate::quantity::Value::Table(given).into();
        let short: crate::circuit::TwoSprocket = crate::quantity::Noun::from_tree(&tree)?;
        Ok(Self(short.circuit()?))
    }
}

#[pymethods]
impl classes::Oil {
    /// An oil by its ISO viscosity grade and viscosity index; everything else by name.
    ///
    /// Examples
    /// --------
    /// >>> import pinfilm
    /// >>> pinfilm.Oil.from_grade(220, 95, price_per_l=9.0).iso_vg
    /// 220
    #[staticmethod]
    #[pyo3(signature = (iso_vg, viscosity_index = None, /, **given: "object"))]
    fn from_grade(
        iso_vg: Given<'_, i64>,
        viscosity_index: Option<Given<'_, f64>>,
        given: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<Self> {
        let mut fields = nouns::changes::<crate::oil::Oil>(None, given)?;
        fields.push(("iso_vg".into(), to_tree(&iso_vg.0, "oil.iso_vg", None)?));
        if let Some(index) = viscosity_index {
            fields.push(("viscosity_index".into(), to_tree(&index.0, "oil.viscosity_index", None)?));
        }
        Ok(Self(crate::quantity::Noun::from_tree(&crate::quantity::Value::Table(fields).into())?))
    }
}

/// One number, explained: formula, numbers put in, where each came from, source and its class.
#[pyclass(frozen, module = "pinfilm")]
pub struct Explanation(crate::quantity::Explanation);

#[pymethods]
impl Explanation {
    /// Path of the quantity, with the number of the list item.
    #[getter]
    fn path(&self) -> &str {
        &self.0.path
    }
    /// Value with its unit, as people read it.
    #[getter]
    fn value(&self) -> &str {
        &self.0.value
    }
    /// What it means.
    #[getter]
    fn means(&self) -> &str {
        self.0.means
    }
    /// Formula with names; empty for an input.
    #[getter]
    fn formula(&self) -> &str {
        &self.0.formula
    }
    /// Formula with numbers.
    #[getter]
    fn filled(&self) -> &str {
        &self.0.filled
    }
    /// The numbers put in: path, value with unit, where it came from.
    #[getter]
    fn inputs(&self) -> Vec<(String, String, String)> {
        let each = self.0.ingredients.iter();
        each.map(|input| (input.path.clone(), input.value.clone(), input.origin.clone())).collect()
    }
    /// Where the number itself came from.
    #[getter]
    fn origin(&self) -> &str {
        &self.0.origin
    }
    /// Source of the relation or default.
    #[getter]
    fn source(&self) -> &str {
        self.0.source
    }
    /// How well the source is founded.
    #[getter]
    fn source_class(&self) -> &str {
        self.0.class
    }
    /// Low and high of a default or closure; empty where none is stated.
    #[getter]
    fn spread(&self) -> &str {
        &self.0.spread
    }
    fn __repr__(&self) -> String {
        self.0.text()
    }
    fn _repr_html_(&self) -> String {
        self.0.html()
    }
}

#[pymethods]
impl classes::Evaluation {
    /// Explain a number: formula, numbers put in with their units, where each came from, source and its class.
    ///
    /// `path` is dotted: a result (`"joint.events.2.friction"`; `"joint.pressure_mpa"` for the event with the greatest), or
    /// an input by its survey key (`"chain.pitch_mm"`). Raises InputError for a path that is none, naming the nearest.
    fn explain(&self, path: &str) -> PyResult<Explanation> {
        Ok(Explanation(self.0.explain(path)?))
    }

    /// A number with its unit, as a quantity of the pint library: `result.quantity("tension.pull_n").to("force_pound")`.
    ///
    /// `path` is dotted, survey keys among them; `registry` is a `pint.UnitRegistry`, pint's own where none is given. None
    /// where there is no value. Raises InputError for a path that is none and UnitError for words and money.
    #[pyo3(signature = (path, registry = None))]
    fn quantity(&self, path: &str, registry: Option<&Bound<'_, PyAny>>, py: Python<'_>) -> PyResult<Foreign> {
        let key = row_of::<Evaluation>(path).is_none() && row_of::<Line>(path).is_some();
        if key { with_unit(py, &self.0.line, path, registry) } else { with_unit(py, &self.0, path, registry) }
    }
}

#[pymethods]
impl classes::Comparison {
    /// Explain a number as `Evaluation.explain` does; the two lines stand under `now.` and `proposed.`.
    fn explain(&self, path: &str) -> PyResult<Explanation> {
        Ok(Explanation(self.0.explain(path)?))
    }

    /// A number with its unit as `Evaluation.quantity` gives it; the two lines stand under `now.` and `proposed.`.
    #[pyo3(signature = (path, registry = None))]
    fn quantity(&self, path: &str, registry: Option<&Bound<'_, PyAny>>, py: Python<'_>) -> PyResult<Foreign> {
        with_unit(py, &self.0, path, registry)
    }
}

/// The number at a path as a quantity of the units library; None where there is none.
fn with_unit<T: Noun>(py: Python<'_>, noun: &T, path: &str, registry: Option<&Bound<'_, PyAny>>) -> PyResult<Foreign> {
    let number = match value_at(noun, path)? {
        Datum::Nothing => return Ok(Foreign(py.None())),
        datum => datum.number(),
    };
    let unit = row_of::<T>(path).unwrap_or(&Row::BLANK).unit;
    let (Some(number), false) = (number, unit.spelled.is_empty()) else {
        let message = format!("{path} has no unit that a units library knows: take the plain value");
        return Err(Error::new(Code::Dimension, path, message).limit(unit.label).into());
    };
    let made = match registry {
        Some(registry) => registry.call_method1("Quantity", (number, unit.spelled))?,
        None => py.import("pint")?.call_method1("Quantity", (number, unit.spelled))?,
    };
    Ok(Foreign(made.unbind()))
}

/// Where every public quantity is described: path, symbol, unit, meaning, ranges, default, formula, source, class.
#[pyfunction]
pub fn register() -> Vec<std::collections::BTreeMap<&'static str, String>> {
    let mut rows = Vec::new();
    crate::study::Comparison::register(String::new(), &crate::quantity::Row::BLANK, &mut rows);
    rows.retain(|(path, _)| !path.starts_with("proposed."));
    crate::line::JointOrbit::register("joint_orbit".into(), &crate::quantity::Row::BLANK, &mut rows);
    super::curves::register(&mut rows);
    let mut found = Vec::new();
    crate::study::Recommendation::register("recommendation".into(), &crate::quantity::Row::BLANK, &mut found);
    crate::study::Shift::register("shift".into(), &crate::quantity::Row::BLANK, &mut found);
    crate::study::SimulatedLine::register("simulation".into(), &crate::quantity::Row::BLANK, &mut found);
    let repeated = ["recommendation.line.", "recommendation.evaluation."];
    rows.extend(found.into_iter().filter(|(path, _)| !repeated.iter().any(|start| path.starts_with(start))));
    rows.into_iter()
        .chain(crate::log::evidence::register())
        .map(|(path, row)| {
            std::collections::BTreeMap::from([
                ("path", path.trim_start_matches("now.").trim_start_matches("line.").to_string()),
                ("name", row.name.to_string()),
                ("symbol", row.symbol.to_string()),
                ("unit", row.unit.label.to_string()),
                ("means", row.means.to_string()),
                ("allowed", row.allowed.words(row.unit)),
                ("usual", row.usual.words(row.unit)),
                ("default", row.default.to_string()),
                ("formula", row.formula.to_string()),
                ("source", row.source.to_string()),
                ("source_class", row.class.as_str().to_string()),
                ("spread", row.spread.words()),
            ])
        })
        .collect()
}

/// Standards in the tables, with the designations of each.
#[pyfunction]
pub fn standards() -> std::collections::BTreeMap<&'static str, Vec<&'static str>> {
    crate::chain::standards().into_iter().collect()
}
