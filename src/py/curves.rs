//! What lies between the numbers of a result: the points that pictures are drawn from.

use super::border::{Given, to_tree};
use super::nouns::classes;
use crate::line::curves::{self, ElongationCurve, FrictionCurve, RoundLoop, ShotRecord};
use crate::quantity::{Field, Place, Row, named};
use pyo3::prelude::*;

/// The rows of all curves, each under the name of its own.
pub fn register(rows: &mut Vec<(String, &'static Row)>) {
    RoundLoop::register("round_loop".into(), &Row::BLANK, rows);
    ShotRecord::register("shot_record".into(), &Row::BLANK, rows);
    FrictionCurve::register("friction_curve".into(), &Row::BLANK, rows);
    ElongationCurve::register("elongation_curve".into(), &Row::BLANK, rows);
}

/// A blank survey file: every key with its unit, range and meaning as comments; what must be given stands empty.
///
/// Parameters
/// ----------
/// full : bool
///     Every key, or those of an everyday survey.
///
/// Returns
/// -------
/// str
///     TOML, to be filled in.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> "pitch_mm =" in pinfilm.blank_survey()
/// True
#[pyfunction]
#[pyo3(signature = (full = false))]
pub fn blank_survey(full: bool) -> PyResult<String> {
    Ok(crate::line::blank_survey(full)?)
}

#[pymethods]
impl classes::Evaluation {
    /// Tension and temperature along the chain, from the exit of the drive round to its entry.
    ///
    /// `points` in each section, both ends included: 2 to 100000, 25 if not given. Exact at every point on straights;
    /// on turns the tension is computed at the ends alone.
    #[pyo3(signature = (points = None))]
    fn round_loop(&self, py: Python<'_>, points: Option<i64>) -> PyResult<classes::RoundLoop> {
        Ok(classes::RoundLoop(py.detach(|| curves::round_loop(&self.0.line, points))?))
    }

    /// Which joint got oil when over some circuits of the settled line, and how full every joint is at their end.
    ///
    /// `circuits` is 1 or more; twice the longest wait if not given. Where chance decides (by hand, dripper) it is one
    /// possible course, the same at every call, and `by_chance` says so.
    #[pyo3(signature = (circuits = None))]
    fn shot_record(&self, py: Python<'_>, circuits: Option<i64>) -> PyResult<classes::ShotRecord> {
        Ok(classes::ShotRecord(py.detach(|| curves::shot_record(&self.0.line, circuits))?))
    }

    /// Film and friction of one articulation with the same oil thinned and thickened: its Stribeck curve.
    ///
    /// `event` is the place of the articulation in `joint.events`. Viscosities at which the contact model has no answer
    /// are left out.
    #[pyo3(signature = (event, points = None))]
    fn friction_curve(&self, py: Python<'_>, event: i64, points: Option<i64>) -> PyResult<classes::FrictionCurve> {
        Ok(classes::FrictionCurve(py.detach(|| curves::friction_curve(&self.0.line, event, points))?))
    }

    /// Elongation of a new chain over calendar time.
    ///
    /// `until_years` is more than 0; if not given a quarter beyond the wear life, at most 50 years.
    #[pyo3(signature = (until_years = None, points = None))]
    fn elongation_curve(
        &self,
        py: Python<'_>,
        until_years: Option<Given<'_, f64>>,
        points: Option<i64>,
    ) -> PyResult<classes::ElongationCurve> {
        let row = const { named(<ElongationCurve as crate::quantity::Noun>::ROWS, "time_years") };
        let until = match until_years {
            Some(given) => {
                let place = Place::root("until_years");
                Some(<f64 as Field>::read(&to_tree(&given.0, "until_years", Some(row))?, &place, row)?)
            }
            None => None,
        };
        Ok(classes::ElongationCurve(py.detach(|| curves::elongation_curve(&self.0.line, until, points))?))
    }
}
