//! `recommend` and `simulate`: lists from Python to the choices of the core.

use super::border::{Given, magnitude, to_tree};
use super::long::{Watcher, long};
use super::nouns::classes;
use crate::error::{Code, Error};
use crate::lubrication::Lubrication;
use crate::oil::Oil;
use crate::quantity::{Field, Place, Row, Side, Tree, Value, unit};
use crate::study::{Choices, Limits, Shift, SimulateOptions, offered};
use pyo3::prelude::*;

/// A list of `T` given for an argument; `row` carries its unit.
fn listed<T: Field>(given: Option<Given<'_, Vec<T>>>, row: &Row) -> PyResult<Option<Vec<T>>> {
    given.map(|given| list(&given.0, row)).transpose()
}

fn list<T: Field>(object: &Bound<'_, PyAny>, row: &Row) -> PyResult<Vec<T>> {
    // a quantity may hold a whole list
    let inside = if object.hasattr("magnitude")? { Some(magnitude(object, row.name, Some(row))?) } else { None };
    let tree = to_tree(inside.as_ref().unwrap_or(object), row.name, Some(row))?;
    // one value is a list of one
    let tree = if matches!(tree.value, Value::List(_)) { tree } else { Value::List(vec![tree]).into() };
    Ok(Vec::read(&tree, &Place::root(row.name), row)?)
}

/// One number given for an argument.
fn number(given: Option<Given<'_, f64>>, row: &Row) -> PyResult<Option<f64>> {
    given.map(|given| Ok(f64::read(&to_tree(&given.0, row.name, Some(row))?, &Place::root(row.name), row)?)).transpose()
}

/// An argument's row: its name and what it means; ranges are those of the core.
const fn argument(name: &'static str, means: &'static str, unit: &'static unit::Unit) -> Row {
    Row { name, means, unit, ..Row::BLANK }
}

/// Methods by name (with the survey's own settings where it has that method, else the register's), or as objects.
fn methods(object: &Bound<'_, PyAny>, line: &crate::line::Line) -> PyResult<Vec<Lubrication>> {
    let row = offered("methods");
    let tree = to_tree(object, row.name, None)?;
    let items = match tree.value {
        Value::List(items) => items,
        value => vec![value.into()],
    };
    let own = line.lubrication.as_str();
    let read = |item: Tree| -> PyResult<Lubrication> {
        let Value::Text(word) = &item.value else {
            return Ok(Lubrication::read(&item, &Place::root(row.name), row)?);
        };
        if word == own {
            return Ok(line.lubrication.clone());
        }
        let blank = Lubrication::blank(word).ok_or_else(|| {
            let words = Lubrication::WORDS.join(", ");
            let message = format!("methods = {word:?} is no method: name one of {words}, or give a method's object");
            Error::new(Code::UnknownChoice, "methods", message).text_value(word.clone()).limit(words)
        })?;
        Ok(blank)
    };
    items.into_iter().map(read).collect()
}

/// Find the set-up to use among all that the lists make, and say why the others were refused.
///
/// Every set-up goes through exact tests (counter, injector, pump, timer, longest wait, lock risk, floor of fill,
/// overflow) and then through `evaluate` (joints unreached, viscosity window, line pressure, cable, cost of a year). Of
/// those that keep every limit the cheapest is recommended; within 2 % of the least cost the one that a fitter would rather
/// set up and leave alone: the floor kept even if oil is lost a quarter quicker than guessed, then least overflow (in whole
/// per cent), at most one start an hour, few large shots rather than many small ones (within a factor of about two), the
/// smallest n, the shortest longest wait, fewest starts, smallest shot, run, dwell, and the better point.
///
/// Parameters
/// ----------
/// line : Line
///     The survey. Its oil, method, shot, timer and place are replaced by the offers; `fill.floor` is the lowest fill.
///     The yearly work in its costs is taken as it stands, whatever the method.
/// shots_ul : sequence of float
///     Oil of one shot in one gap (µL, > 0); of a spray, what a gap gets as its joint passes; by hand, a joint's dose.
/// oils : sequence of Oil, optional
///     Not given: the survey's.
/// run_min, dwell_min : sequence of float, optional
///     Run (> 0) and pause (0 = never stops), min. Not given: a run in which the counter meets every joint, one that meets
///     nearly all of them equally often, and pauses of 1 to 1/32 of the time in which a full joint falls to the floor, in
///     steps that a timer can be set to; and those of the survey.
/// every_nth : sequence of int, optional
///     One joint in how many. Not given: the least that reaches every joint and lets the injector follow, a larger one,
///     and that of the survey.
/// points : sequence of int, optional
///     Gaps of a joint served, per strand: 1 or 2.
/// application_sections, application_positions, sides : sequences, optional
///     Sections of the survey, places in them (0 to 1) and sides ("top", "side", "bottom"). Not given: the place of the
///     survey, and the best point.
/// methods : sequence of str or of Manual, Drip, Spray, Synchronised, optional
///     Not given: the survey's if it has a timer, else "synchronised". An object brings capture, zone, clock and the rest.
/// pump_ml_per_min, injector_s : float, optional
///     What the pump gives, and the time of one shot. Not given: not tested; from the survey's supply.
/// most_overflow, most_lock_risk, most_unreached, most_outlet_use : float, optional
///     Limits, as shares 0 to 1: overflow of what lands in the gaps (0.1), lock risk (0.05), joints that may stay without
///     oil (0), pump outlet pressure in use (0.8).
/// keep : int, optional
///     How many alternatives, and refused set-ups of each reason, are listed (20).
/// all_rejections : bool
///     List every refused set-up.
/// threads : int, optional
///     Threads to use; all cores if not given. The result is the same for any number.
/// progress : callable, optional
///     Called with (done, all) some twenty times a second.
///
/// Returns
/// -------
/// Recommendation
///     `feasible`, `set_up`, `why`, `line` and its `evaluation`, `sheet`, ranked `alternatives`, `refused` by reason and
///     `rejections` one by one. Where nothing keeps every limit, `feasible` is false and the nearest misses are listed.
///
/// Raises
/// ------
/// InputError
///     For a survey that cannot be computed; for a list that is empty, or holds a number that is negative or not finite;
///     for more set-ups than one search takes.
/// KeyboardInterrupt
///     Ctrl-C stops the search.
///
/// Notes
/// -----
/// Limits and ranks are closures of our own; the tests are the functions that `evaluate` calls.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> line = pinfilm.examples.load("oven_proposed")
/// >>> found = pinfilm.recommend(line, shots_ul=[4, 8, 16], run_min=[180], dwell_min=[540, 1620], every_nth=[8, 9])
/// >>> found.feasible, found.set_up.every_nth, found.line.lubrication.every_nth
/// (True, 9, 9)
/// >>> # an even loop and n = 8: refused at the surveyed place and at the best one
/// >>> [(group.reason, group.count) for group in found.refused if group.reason == "joints_never_dosed"]
/// [('joints_never_dosed', 12)]
#[pyfunction]
#[pyo3(signature = (
    line, shots_ul, oils = None, *, run_min = None, dwell_min = None, every_nth = None, points = None,
    application_sections = None, application_positions = None, sides = None, methods = None, pump_ml_per_min = None,
    injector_s = None, most_overflow = None, most_lock_risk = None, most_unreached = None, most_outlet_use = None,
    keep = None, all_rejections = false, threads = None, progress = None
))]
#[allow(clippy::too_many_arguments)]
pub fn recommend(
    py: Python<'_>,
    line: &classes::Line,
    shots_ul: Given<'_, Vec<f64>>,
    oils: Option<Given<'_, Vec<Oil>>>,
    run_min: Option<Given<'_, Vec<f64>>>,
    dwell_min: Option<Given<'_, Vec<f64>>>,
    every_nth: Option<Given<'_, Vec<i64>>>,
    points: Option<Given<'_, Vec<i64>>>,
    application_sections: Option<Given<'_, Vec<i64>>>,
    application_positions: Option<Given<'_, Vec<f64>>>,
    sides: Option<Given<'_, Vec<Side>>>,
    methods: Option<Bound<'_, PyAny>>,
    pump_ml_per_min: Option<Given<'_, f64>>,
    injector_s: Option<Given<'_, f64>>,
    most_overflow: Option<f64>,
    most_lock_risk: Option<f64>,
    most_unreached: Option<f64>,
    most_outlet_use: Option<f64>,
    keep: Option<usize>,
    all_rejections: bool,
    threads: Option<i64>,
    progress: Option<Watcher<'_>>,
) -> PyResult<classes::Recommendation> {
    let usual = Limits::default();
    let choices = Choices {
        shots_ul: list(&shots_ul.0, offered("shots_ul"))?,
        oils: listed(oils, offered("oils"))?,
        run_min: listed(run_min, offered("run_min"))?,
        dwell_min: listed(dwell_min, offered("dwell_min"))?,
        every_nth: listed(every_nth, offered("every_nth"))?,
        points: listed(points, offered("points"))?,
        application_sections: listed(application_sections, offered("application_sections"))?,
        application_positions: listed(application_positions, offered("application_positions"))?,
        sides: listed(sides, offered("sides"))?,
        methods: methods.map(|given| self::methods(&given, &line.0)).transpose()?,
        pump_ml_per_min: number(pump_ml_per_min, offered("pump_ml_per_min"))?,
        injector_s: number(injector_s, offered("injector_s"))?,
        limits: Limits {
            most_overflow: most_overflow.unwrap_or(usual.most_overflow),
            most_lock_risk: most_lock_risk.unwrap_or(usual.most_lock_risk),
            most_unreached: most_unreached.unwrap_or(usual.most_unreached),
            most_outlet_use: most_outlet_use.unwrap_or(usual.most_outlet_use),
        },
        keep,
        all_rejections,
    };
    let found = long(py, threads, &progress.unwrap_or(Watcher(None)), |report| {
        crate::study::recommend(&line.0, &choices, report)
    })?;
    Ok(classes::Recommendation(found))
}

/// Walk a line through its weeks, joint by joint, with shifts, stops and changes of speed.
///
/// Parameters
/// ----------
/// line : Line
///     A survey whose method has a timer or never pauses; a round by hand has no clock.
/// shifts : sequence of Shift, optional
///     The timetable of a week. Not given: the survey's hours a day from 6:00 on (from midnight if they are more than 18),
///     on as many days from Monday on as its days a year make a week (common practice, no source).
/// weeks : float, optional
///     Weeks to walk through, up to 520; 4 if not given.
/// phase_min : float, optional
///     Where in its period the timer stands at the start, min after the beginning of a run; 0 if not given.
/// counter_reset : bool
///     Whether the counter of joints starts again at each run of the timer.
/// threads, progress
///     As in `recommend`; the walk itself takes one thread.
///
/// Returns
/// -------
/// SimulatedLine
///     Shots and longest dry time of every joint, waits, share never reached, oil used, and what `evaluate` says of the
///     same line. With one speed and a timer on running time the two agree.
///
/// Raises
/// ------
/// InputError
///     Shifts that overlap or leave the week, weeks outside the range, a method without a clock, more than some hundred
///     million passages.
///
/// Notes
/// -----
/// The applicator meets every passage of every joint; a passage at the instant of a stop belongs to the next start.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> oven = pinfilm.examples.load("oven_now")
/// >>> walked = pinfilm.simulate(oven, weeks=2)
/// >>> round(walked.never_reached, 2), round(walked.never_reached_closed_form, 2)
/// (0.6, 0.6)
#[pyfunction]
#[pyo3(signature = (
    line, *, shifts = None, weeks = None, phase_min = None, counter_reset = false, threads = None, progress = None
))]
#[allow(clippy::too_many_arguments)]
pub fn simulate(
    py: Python<'_>,
    line: &classes::Line,
    shifts: Option<Given<'_, Vec<Shift>>>,
    weeks: Option<f64>,
    phase_min: Option<Given<'_, f64>>,
    counter_reset: bool,
    threads: Option<i64>,
    progress: Option<Watcher<'_>>,
) -> PyResult<classes::SimulatedLine> {
    let options = SimulateOptions {
        shifts: listed(shifts, &argument("shifts", "a shift", &unit::WORD))?,
        weeks,
        phase_min: number(phase_min, &argument("phase_min", "place in the timer's period", &unit::MIN))?
            .unwrap_or_default(),
        counter_reset,
    };
    let found = long(py, threads, &progress.unwrap_or(Watcher(None)), |report| {
        crate::study::simulate(&line.0, &options, report)
    })?;
    Ok(classes::SimulatedLine(found))
}

#[pymethods]
impl classes::Rejection {
    /// What happened, with numbers, in a sentence.
    #[getter]
    fn message(&self) -> String {
        self.0.message()
    }
}
