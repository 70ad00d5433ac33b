//! Many logs watched at once.

use super::current_log::CurrentLog;
use super::given::{Anything, date};
use crate::error::{Code, Error};
use crate::log::evidence::{AT_ONCE, CurrentLog as Core, watch_many as core_watch_many};
use crate::py::long::aside;
use crate::py::nouns::classes;
use pyo3::prelude::*;
use std::sync::Arc;

/// Watch many logs in parallel; one that fails stops no other.
///
/// Parameters
/// ----------
/// logs : sequence of CurrentLog
/// quiet_until, quiet_from : date, datetime or str
///     The quiet period of all of them.
/// lines : sequence of Line or None, optional
///     A line for each log.
/// threads : int, optional
///     Not given: as many as the machine has. The result does not depend on it.
/// progress : callable, optional
///     Called with the number done and the number of all, between groups of logs.
///
/// Returns
/// -------
/// list
///     For each log, in order, its `WatchReport`, or the error (a `PinfilmError`) that it met.
///
/// Examples
/// --------
/// >>> import pinfilm
/// >>> pinfilm.watch_many([], "2025-01-01")
/// []
#[pyfunction]
#[pyo3(signature = (logs, quiet_until, *, quiet_from = None, lines = None, threads = None, progress = None))]
pub fn watch_many<'py>(
    py: Python<'py>,
    logs: Vec<Py<CurrentLog>>,
    quiet_until: Anything<'py>,
    quiet_from: Option<Anything<'py>>,
    lines: Option<Vec<Option<Py<classes::Line>>>>,
    threads: Option<usize>,
    progress: Option<Anything<'py>>,
) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let until = date(py, &quiet_until, "quiet_until")?;
    let from = quiet_from.map(|from| date(py, &from, "quiet_from")).transpose()?;
    let lines = lines.unwrap_or_default();
    if !lines.is_empty() && lines.len() != logs.len() {
        let message =
            format!("lines has {} and logs {}: give one line (or None) for each log", lines.len(), logs.len());
        return Err(Error::new(Code::Inconsistent, "lines", message).number(lines.len() as f64).into());
    }
    let pool = rayon::ThreadPoolBuilder::new()
        .num_threads(threads.unwrap_or(0))
        .build()
        .map_err(|error| Error::new(Code::OutOfRange, "threads", format!("threads cannot be started: {error}")))?;
    let pool = Arc::new(pool);
    let mut found = Vec::with_capacity(logs.len());
    let at_once = AT_ONCE * pool.current_num_threads();
    for first in (0..logs.len()).step_by(at_once) {
        let chunk = first..logs.len().min(first + at_once);
        let group: Vec<Py<CurrentLog>> = logs[chunk.clone()].iter().map(|log| log.clone_ref(py)).collect();
        let beside: Vec<Option<Py<classes::Line>>> =
            chunk.map(|at| lines.get(at).and_then(|line| line.as_ref()).map(|line| line.clone_ref(py))).collect();
        let (pool, until, from) = (Arc::clone(&pool), until.clone(), from.clone());
        let reports = aside(py, move || {
            let views: Vec<&Core> = group.iter().map(|log| &log.get().0).collect();
            let beside: Vec<_> = beside.iter().map(|line| line.as_ref().map(|line| &line.get().0)).collect();
            Ok(pool.install(|| core_watch_many(&views, &until, from.as_deref(), &beside)))
        });
        for report in reports? {
            found.push(match report {
                Ok(report) => Py::new(py, classes::WatchReport(report))?.into_bound(py).into_any(),
                Err(error) => PyErr::from(error).into_value(py).into_bound(py).into_any(),
            });
        }
        py.check_signals()?;
        if let Some(progress) = &progress {
            progress.0.call1((found.len(), logs.len()))?;
        }
    }
    Ok(found)
}
