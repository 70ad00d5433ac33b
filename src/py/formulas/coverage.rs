//! `pinfilm.coverage`: which joints a timer, a counter or a round really reaches, and how long they wait.

use super::given::Values;
use super::outcomes::classes::{EveryNth, LockTime, ManualInterval, PointsCoverage, TimerCoverage};
use super::outcomes::{list, whole_number};
use super::prelude::*;
use super::spread::whole;
use crate::error::{Code, Error, Result};
use crate::lubrication::Manual;
use crate::lubrication::coverage::{self, ManualRounds, Timer, Wait};
use crate::quantity::Row;

/// A single number, for formulas whose results are lists.
fn single(given: &Given<'_>, row: &'static Row) -> PyResult<f64> {
    match Argument::read(given, row)?.values {
        Values::One(value) => Ok(value),
        _ => {
            let message = format!("{} is an array, but this formula gives lists and takes single numbers", row.name);
            Err(Error::new(Code::WrongType, row.name, message).limit("a number").into())
        }
    }
}

/// A list of numbers, SI.
fn several(given: Option<&Given<'_>>, row: &'static Row) -> PyResult<Vec<f64>> {
    Ok(match Argument::or_default(given, row)?.values {
        Values::Absent => Vec::new(),
        Values::One(value) => vec![value],
        Values::Many { values, .. } => values,
    })
}

/// A list of delays in ticks; at least one.
fn delays_in_ticks(given: Option<&Given<'_>>) -> PyResult<Vec<i64>> {
    let row = row!(Own, delays_s);
    let delays = several(given, row)?;
    if delays.is_empty() {
        let message = "delays_s is empty, but there is at least one application point: give 0 for a single one";
        return Err(Error::new(Code::Missing, row.name, message).unit(row.unit.label).into());
    }
    Ok(delays.iter().map(|&delay| coverage::ticks(row.name, delay)).collect::<Result<_>>()?)
}

/// Waits as three lists: circuits, share of shots, share of joints.
fn wait_lists<'py>(py: Python<'py>, waits: &[Wait]) -> PyResult<[Bound<'py, PyAny>; 3]> {
    Ok([
        list(py, waits.iter().map(|wait| wait.circuits))?,
        list(py, waits.iter().map(|wait| wait.share_of_shots))?,
        list(py, waits.iter().map(|wait| wait.share_of_joints))?,
    ])
}

/// Gaps between points laid round a circle at equal steps: the three-gap theorem.
///
/// Parameters
/// ----------
/// step : float
///     Step round a circle of length 1, whose whole part does not matter; -1000000000 to 1000000000.
/// count : int
///     Number of points, the first at 0; 1 to 1000000000000000.
///
/// Returns
/// -------
/// list of (float, int)
///     Length of the gaps and how many have it, shortest first: one, two or three pairs.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite. Arrays are not accepted.
/// UnitError
///     A quantity with a unit.
///
/// Notes
/// -----
/// At most three lengths occur, and of three the longest is the sum of the other two. Found from the continued fraction
/// of the step in a few divisions, whatever the count. Points nearer than rounding coincide and leave gaps of length 0.
///
/// References
/// ----------
/// Sós 1958, Ann. Univ. Sci. Budapest 1, 127; Slater 1967.
///
/// Examples
/// --------
/// >>> from pinfilm import coverage
/// >>> [(round(length, 6), count) for length, count in coverage.three_gaps(0.6180339887498949, 5)]
/// [(0.145898, 2), (0.236068, 3)]
#[pyfunction]
#[pyo3(signature = (step, count))]
pub fn three_gaps(step: Given<'_>, count: Given<'_>) -> PyResult<Vec<(f64, u64)>> {
    let (step, count) = (single(&step, row!(Own, step))?, single(&count, row!(Own, count))?);
    let count = whole("count", count)?;
    Ok(coverage::three_gaps(step, count as u64).into_iter().map(|gap| (gap.length, gap.count)).collect())
}

/// Which joints a timer reaches, and how long they wait between two shots.
///
/// Parameters
/// ----------
/// circuit_time_s : float
///     Time of one revolution of the chain; 0.001 to 10000000000 s.
/// run_s : float
///     Time for which oil is given; 0.001 to 10000000000 s.
/// dwell_s : float
///     Pause until the next run; 0 to 10000000000 s.
///
/// Returns
/// -------
/// TimerCoverage
///     Waits in circuits with their shares of shots and joints, share never reached, mean and worst wait.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite. Arrays are not accepted.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// Exact in whole milliseconds: a timer against a chain is a rotation of a circle, and the waits take at most three
/// values. If the run is not longer than the greatest common divisor of circuit and period the pattern is locked: some
/// joints are shot again and again, the others never. Assumes joints all round the loop, constant speed and a steady
/// clock.
///
/// References
/// ----------
/// Slater 1967, Gaps and steps for the sequence nθ mod 1, Proc. Camb. Phil. Soc. 63, 1115.
///
/// Examples
/// --------
/// >>> from pinfilm import coverage
/// >>> oven = coverage.timer_coverage(1200, run_s=600, dwell_s=3000)
/// >>> oven.never_reached, oven.wait_circuits
/// (0.5, (3,))
/// >>> coverage.timer_coverage(1200, run_s=900, dwell_s=2820).wait_circuits
/// (3, 10, 13)
#[pyfunction]
#[pyo3(signature = (circuit_time_s, run_s, dwell_s))]
pub fn timer_coverage(
    py: Python<'_>,
    circuit_time_s: Given<'_>,
    run_s: Given<'_>,
    dwell_s: Given<'_>,
) -> PyResult<TimerCoverage> {
    let timer = Timer::new(
        single(&circuit_time_s, row!(Own, circuit_time_s))?,
        single(&run_s, row!(Own, run_s))?,
        single(&dwell_s, row!(Own, dwell_s))?,
    )?;
    let found = timer.coverage();
    let [circuits, shots, joints] = wait_lists(py, found.waits())?;
    TimerCoverage::made([
        circuits,
        shots,
        joints,
        found.never_reached.into_pyobject(py)?.into_any(),
        found.mean_wait().into_pyobject(py)?.into_any(),
        found.worst_wait().into_pyobject(py)?.into_any(),
        found.mean_age().into_pyobject(py)?.into_any(),
        found.lock_den.into_pyobject(py)?.into_any(),
        (found.pattern == coverage::Pattern::Locked).into_pyobject(py)?.to_owned().into_any(),
    ])
}

/// Waits of the joints that pass several application points on one timer.
///
/// Parameters
/// ----------
/// circuit_time_s : float
///     Time of one revolution of the chain; 0.001 to 10000000000 s.
/// run_s : float
///     Time for which oil is given; 0.001 to 10000000000 s.
/// dwell_s : float
///     Pause until the next run; 0 to 10000000000 s.
/// delays_s : sequence of float
///     Travel time of the chain from a reference point to each application point; -10000000000 to 10000000000 s.
///
/// Returns
/// -------
/// PointsCoverage
///     Waits in circuits with their shares of shots and joints, and the share never reached.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
///     pattern that repeats too late to be walked is an error (`unsupported`); arrays of times are not accepted.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// Exact: walks the phases of circuit and timer over the united runs of all points. A second point helps a locked timer
/// only if its delay falls beside the first one's run.
///
/// References
/// ----------
/// Derived; waits as in `timer_coverage`.
///
/// Examples
/// --------
/// >>> from pinfilm import coverage
/// >>> coverage.points_coverage(1200, 400, 3200, [0, 400, 800]).never_reached
/// 0.0
#[pyfunction]
#[pyo3(signature = (circuit_time_s, run_s, dwell_s, delays_s))]
pub fn points_coverage(
    py: Python<'_>,
    circuit_time_s: Given<'_>,
    run_s: Given<'_>,
    dwell_s: Given<'_>,
    delays_s: Given<'_>,
) -> PyResult<PointsCoverage> {
    let timer = Timer::new(
        single(&circuit_time_s, row!(Own, circuit_time_s))?,
        single(&run_s, row!(Own, run_s))?,
        single(&dwell_s, row!(Own, dwell_s))?,
    )?;
    let delays = delays_in_ticks(Some(&delays_s))?;
    let found = py.detach(|| coverage::coverage_of_points(&timer, &delays))?;
    let [circuits, shots, joints] = wait_lists(py, &found.waits)?;
    PointsCoverage::made([circuits, shots, joints, found.never_reached.into_pyobject(py)?.into_any()])
}

/// Number of joints that a timer ever reaches, by one or several application points.
///
/// Parameters
/// ----------
/// joints : array_like
///     Joints of one strand, counted; 1 to 1000000000.
/// circuit_time_s : array_like
///     Time of one revolution of the chain; 0.001 to 10000000000 s.
/// run_s : array_like
///     Time for which oil is given; 0.001 to 10000000000 s.
/// dwell_s : array_like
///     Pause until the next run; 0 to 10000000000 s.
/// delays_s : sequence of float, optional
///     Travel time of the chain from a reference point to each application point; -10000000000 to 10000000000 s. One
///     point at 0 s if not given.
///
/// Returns
/// -------
/// int or ndarray
///     Joints reached.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// Exact in whole milliseconds, for joint 0 at the reference point at the start of a run; another start changes the
/// number by at most the joints that share a phase. Constant speed.
///
/// References
/// ----------
/// Counting of residues, a derivation of our own.
///
/// Examples
/// --------
/// >>> from pinfilm import coverage
/// >>> coverage.reached_joints(900, 1200, 600, 3000)
/// 450
/// >>> coverage.reached_joints(900, 1200, 600, 3000, delays_s=[0, 600])
/// 900
#[pyfunction]
#[pyo3(signature = (joints, circuit_time_s, run_s, dwell_s, delays_s = None))]
pub fn reached_joints<'py>(
    py: Python<'py>,
    joints: Given<'py>,
    circuit_time_s: Given<'py>,
    run_s: Given<'py>,
    dwell_s: Given<'py>,
    delays_s: Option<Given<'py>>,
) -> PyResult<Floats> {
    let arguments = [
        Argument::read(&joints, row!(Own, joints))?,
        Argument::read(&circuit_time_s, row!(Own, circuit_time_s))?,
        Argument::read(&run_s, row!(Own, run_s))?,
        Argument::read(&dwell_s, row!(Own, dwell_s))?,
    ];
    let delays = delays_in_ticks(delays_s.as_ref())?;
    let [reached] = spread(py, &arguments, [row!(Own, reached_joints)], |[joints, circuit, run, dwell]| {
        let timer = Timer::new(circuit, run, dwell)?;
        Ok([coverage::reached_joints_of_points(&timer, whole("joints", joints)?, &delays) as f64])
    })?;
    Ok(Floats(whole_number(reached)?.unbind()))
}

/// What a counter that doses every n-th joint reaches; the counter is never reset.
///
/// Parameters
/// ----------
/// joints : array_like
///     Joints of one strand, counted; 1 to 1000000000.
/// n : array_like
///     The counter doses every n-th joint; 1 to 1000000000.
/// attachment_every : array_like, optional
///     Joints from one attachment to the next, which must divide the number of joints; 1 to 1000000. Not given: nothing
///     is in the way.
/// blocked : sequence of int, optional
///     Joints of that pattern, counted from 0, whose gap is hidden from the applicator; 0 to 1000000.
///
/// Returns
/// -------
/// EveryNth
///     Joints reached and never reached, spacing of the dosed joints and wait in circuits; whole numbers, or arrays.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
///     Attachments that do not close on the loop are an error.
/// UnitError
///     A quantity with a unit.
///
/// Notes
/// -----
/// Reached are N/gcd(N, n), less those whose shots always meet an attachment (Chinese remainder theorem). A loop
/// without a cranked link has an even number of joints: n must then be odd. Exact, but one joint miscounted changes it
/// all.
///
/// References
/// ----------
/// Modular arithmetic.
///
/// Examples
/// --------
/// >>> from pinfilm import coverage
/// >>> coverage.every_nth(900, 7)
/// EveryNth(reached=900, never=0, spacing=1, wait_circuits=7)
/// >>> coverage.every_nth(2400, 4, attachment_every=6, blocked=[0, 1]).reached
/// 400
#[pyfunction]
#[pyo3(signature = (joints, n, attachment_every = None, blocked = None))]
pub fn every_nth<'py>(
    py: Python<'py>,
    joints: Given<'py>,
    n: Given<'py>,
    attachment_every: Option<Given<'py>>,
    blocked: Option<Given<'py>>,
) -> PyResult<EveryNth> {
    let arguments = [
        Argument::read(&joints, row!(Own, joints))?,
        Argument::read(&n, row!(Own, n))?,
        Argument::or_default(attachment_every.as_ref(), row!(Own, attachment_every))?,
    ];
    let blocked = several(blocked.as_ref(), row!(Own, blocked))?
        .into_iter()
        .map(|place| whole("blocked", place))
        .collect::<Result<Vec<_>>>()?;
    if !blocked.is_empty() && attachment_every.is_none() {
        let message = "blocked was given without attachment_every: say after how many joints the pattern repeats";
        return Err(Error::new(Code::Missing, "attachment_every", message).into());
    }
    let rows = <EveryNth as Outcome<_>>::rows(None);
    let values = spread(py, &arguments, rows, |[joints, n, every]| {
        let (joints, n) = (whole("joints", joints)?, whole("n", n)?);
        let open = coverage::every_nth(joints, n)?;
        let reached = if every.is_nan() {
            open.reached
        } else {
            coverage::every_nth_with_attachments(joints, n, whole("attachment_every", every)?, &blocked)?
        };
        Ok([reached as f64, (joints - reached) as f64, open.spacing as f64, open.wait as f64])
    })?;
    EveryNth::of(values)
}

formulas! { "coverage"
    /// How long the locked pattern of a timer starves a stretch of chain, when circuit and timer drift.
    ///
    /// Parameters
    /// ----------
    /// circuit_time_s : array_like
    ///     Time of one revolution of the chain; 0.001 to 10000000000 s.
    /// run_s : array_like
    ///     Time for which oil is given; 0.001 to 10000000000 s.
    /// dwell_s : array_like
    ///     Pause until the next run; 0 to 10000000000 s.
    /// ratio_error : array_like
    ///     Relative error of circuit over period, for the wandering time its root mean square; above 0 and at most 0.5.
    /// correlation_h : array_like, optional
    ///     Time over which the speed keeps its error; above 0 and at most 10000 h; 8 h if not given.
    /// lock_circuits : array_like, optional
    ///     Circuits after which the pattern repeats; 1 to 10000000000000 circuits. Not given: exactly those of circuit
    ///     and timer, which makes a near
    ///     miss of a simple fraction no lock at all.
    ///
    /// Returns
    /// -------
    /// LockTime
    ///     Width of the starved stretch and how long it starves under a constant and under a wandering error.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     run that leaves nothing starved has no lock: an error for numbers, NaN in arrays.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Constant error: width over error, good to one and a half cycles. Wandering: a random walk with steps of the
    /// correlation time, a closure of our own; typical, no bound.
    ///
    /// References
    /// ----------
    /// Derived from Slater 1967.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import coverage
    /// >>> lock = coverage.lock_time_s(1200, 600, 3000, ratio_error=0.005)
    /// >>> round(lock.starved_s), round(lock.constant_s), round(lock.random_s)
    /// (600, 120000, 500000)
    fn lock_time_s(
        circuit_time_s: Own, run_s: Own, dwell_s: Own, ratio_error: Own; correlation_h: Own, lock_circuits: Own
    ) -> LockTime = |circuit, run, dwell, error, correlation, lock: f64| {
            let found = Timer::new(circuit, run, dwell)?.coverage();
            let lock = if lock.is_nan() { found.lock_den } else { whole("lock_circuits", lock)? };
            let time = coverage::lock_time(circuit, run, run + dwell, lock, error, correlation).ok_or_else(|| {
                let message = format!("a run of {run} s leaves no joint unreached in {lock} circuits: no lock");
                Error::new(Code::NoAnswer, "run_s", message).number(run).unit("s")
            })?;
            Ok([time.starved, time.constant, time.random, f64::from(u8::from(time.contiguous))])
        };

    /// Share of the possible speed errors at which some stretch of chain waits too long for its oil.
    ///
    /// Parameters
    /// ----------
    /// circuit_time_s : array_like
    ///     Time of one revolution of the chain; 0.001 to 10000000000 s.
    /// run_s : array_like
    ///     Time for which oil is given; 0.001 to 10000000000 s.
    /// dwell_s : array_like
    ///     Pause until the next run; 0 to 10000000000 s.
    /// speed_tolerance_pct : array_like
    ///     How far circuit time and timer may drift apart; above 0 and at most 49.9 %.
    /// longest_wait_h : array_like
    ///     Longest wait a joint may have; above 0 and at most 1000000000 h.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Risk, 0 to 1. Reject a setting above 0.05.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Errors are taken as uniform within the tolerance. Where the wait spans many cycles the starved errors near all
    /// simple fractions are united, good to 0.01; else 1001 errors are judged exactly.
    ///
    /// References
    /// ----------
    /// Derivation of our own from Slater's gap theorem, 1967.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import coverage
    /// >>> coverage.lock_risk(5716, 15336, 11540, speed_tolerance_pct=0.5, longest_wait_h=3)
    /// 1.0
    fn lock_risk(circuit_time_s: Own, run_s: Own, dwell_s: Own, speed_tolerance_pct: Own, longest_wait_h: Own)
        -> Floats =
        |circuit, run, dwell, tolerance, wait| coverage::lock_risk(circuit, run + dwell, run, tolerance, wait);

    /// Time between two visits of a manual round at one joint: mean, spread and quantiles.
    ///
    /// Parameters
    /// ----------
    /// interval_h : array_like
    ///     Mean time between two rounds; above 0 and at most 1000000 h.
    /// interval_cv : array_like
    ///     Scatter of that time: standard deviation over mean; 0.01 to 3.
    /// miss_share : array_like
    ///     Share of joints that a round misses by chance; 0 to 0.99.
    ///
    /// Returns
    /// -------
    /// ManualInterval
    ///     Mean, standard deviation and 5, 50 and 95 % quantiles in hours; floats or arrays.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    ///     Rounds that miss so many joints that one in twenty waits for 400 rounds are an error (`not_converged`).
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Intervals are gamma distributed and misses independent: a geometric mixture of gamma laws. Mean T/(1 − m).
    ///
    /// References
    /// ----------
    /// Renewal process; mean and variance by Wald's identity.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import coverage
    /// >>> visits = coverage.manual_interval(8, 0.3, 0.05)
    /// >>> round(visits.mean_h, 4), round(visits.sd_h, 4), round(visits.p95_h, 4)
    /// (8.4211, 3.0998, 14.062)
    fn manual_interval(interval_h: Manual, interval_cv: Manual, miss_share: Manual) -> ManualInterval =
        |interval, spread, miss| {
            let rounds = ManualRounds { interval, spread, miss };
            Ok([
                rounds.mean(),
                rounds.variance().sqrt(),
                rounds.quantile(0.05)?,
                rounds.quantile(0.5)?,
                rounds.quantile(0.95)?,
            ])
        };
}

/// Ways of oiling that a handbook names for a transmission chain of this speed.
///
/// Parameters
/// ----------
/// chain_speed_m_per_s : float
///     Speed of the chain; 0 to 1000 m/s.
///
/// Returns
/// -------
/// tuple of str
///     Of `slow_drip`, `fast_drip`, `dip` and `spray` those that it allows, plainest first.
///
/// Raises
/// ------
/// InputError
///     A number outside its range or not finite.
/// UnitError
///     A quantity of another dimension than the name says.
///
/// Notes
/// -----
/// 5 to 10 drops a minute up to 3 m/s, more than 20 up to 7.5 m/s, dip up to 10 m/s, spray from 7.5 m/s. A conveyor
/// always falls under slow drip, whatever its joints need: for orientation only.
///
/// References
/// ----------
/// Neale, The Tribology Handbook, sheet C9.
///
/// Examples
/// --------
/// >>> from pinfilm import coverage
/// >>> coverage.handbook_methods(0.2)
/// ('slow_drip', 'dip')
#[pyfunction]
#[pyo3(signature = (chain_speed_m_per_s))]
pub fn handbook_methods<'py>(chain_speed_m_per_s: Given<'py>) -> PyResult<Methods> {
    let speed = single(&chain_speed_m_per_s, row!(Own, chain_speed_m_per_s))?;
    Ok(Methods(crate::lubrication::method::handbook_methods(speed).collect()))
}

/// Names of methods as a tuple.
pub struct Methods(Vec<&'static str>);

impl<'py> IntoPyObject<'py> for Methods {
    type Target = pyo3::types::PyTuple;
    type Output = Bound<'py, pyo3::types::PyTuple>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: pyo3::inspect::PyStaticExpr = super::outcomes::hint::WORDS;
    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        pyo3::types::PyTuple::new(py, self.0)
    }
}

by_hand! { "coverage"
    handbook_methods(chain_speed_m_per_s: Own) -> Methods;
    three_gaps(step: Own, count: Own) -> Gaps;
    timer_coverage(circuit_time_s: Own, run_s: Own, dwell_s: Own) -> TimerCoverage;
    points_coverage(circuit_time_s: Own, run_s: Own, dwell_s: Own, delays_s: Own) -> PointsCoverage;
    reached_joints(joints: Own, circuit_time_s: Own, run_s: Own, dwell_s: Own, delays_s: Own) -> Floats;
    every_nth(joints: Own, n: Own, attachment_every: Own, blocked: Own) -> EveryNth;
}
