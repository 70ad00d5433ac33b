//! Long calls: others may use Python meanwhile, progress is told, and Ctrl-C stops them.

use crate::error::{Code, Error, Result};
use crate::study::{Progress, workers};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc::{RecvTimeoutError, sync_channel};
use std::sync::{Condvar, Mutex};
use std::time::Duration;

/// Time between two looks at signals and words to the watcher.
const BEAT: Duration = Duration::from_millis(50);

/// Who is told how far a calculation is.
pub struct Watcher<'py>(pub Option<Bound<'py, PyAny>>);

impl<'a, 'py> FromPyObject<'a, 'py> for Watcher<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "Progress");
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        if object.is_none() {
            return Ok(Watcher(None));
        }
        if !object.is_callable() {
            return Err(PyTypeError::new_err(
                "progress is called with the steps done and all steps: give a function of two",
            ));
        }
        Ok(Watcher(Some(object.to_owned())))
    }
}

/// What worker and caller tell each other.
#[derive(Default)]
struct Between {
    done: AtomicUsize,
    all: AtomicUsize,
    stop: AtomicBool,
    finished: Mutex<bool>,
    bell: Condvar,
}

impl Between {
    /// Waits for the end, at most a beat; whether it has come.
    fn wait(&self) -> bool {
        let Ok(finished) = self.finished.lock() else { return true };
        self.bell.wait_timeout_while(finished, BEAT, |finished| !*finished).map_or(true, |(finished, _)| *finished)
    }

    fn ring(&self) {
        if let Ok(mut finished) = self.finished.lock() {
            *finished = true;
        }
        self.bell.notify_all();
    }

    fn tell(&self, watcher: &Watcher<'_>) -> PyResult<()> {
        let (done, all) = (self.done.load(Ordering::Relaxed), self.all.load(Ordering::Relaxed));
        if let (Watcher(Some(watcher)), true) = (watcher, all > 0) {
            watcher.call1((done, all))?;
        }
        Ok(())
    }
}

/// Runs `work` on `threads` threads of its own (all of the machine if none are named) without holding Python.
///
/// The calling thread looks at signals and tells the watcher some twenty times a second; an exception there, Ctrl-C
/// among them, stops the work at its next word and is raised.
pub fn long<T: Send>(
    py: Python<'_>,
    threads: Option<i64>,
    watcher: &Watcher<'_>,
    work: impl FnOnce(&mut Progress<'_>) -> Result<T> + Send,
) -> PyResult<T> {
    let pool = workers(threads)?;
    let between = Between::default();
    let run = || {
        let mut word = |done, all| {
            between.done.store(done, Ordering::Relaxed);
            between.all.store(all, Ordering::Relaxed);
            !between.stop.load(Ordering::Relaxed)
        };
        let found = match pool {
            Some(pool) => pool.install(|| work(&mut word)),
            None => work(&mut word),
        };
        between.ring();
        found
    };
    let (found, raised) = std::thread::scope(|scope| {
        let worker = scope.spawn(run);
        let mut raised = None;
        while !py.detach(|| between.wait() || worker.is_finished()) {
            let looked =
                if raised.is_none() { py.check_signals().and_then(|()| between.tell(watcher)) } else { Ok(()) };
            if let Err(exception) = looked {
                between.stop.store(true, Ordering::Relaxed);
                raised = Some(exception);
            }
        }
        (py.detach(|| worker.join()), raised)
    });
    if let Some(exception) = raised {
        return Err(exception);
    }
    py.check_signals()?;
    let found = found.map_err(|_| lost())??;
    between.tell(watcher)?;
    Ok(found)
}

/// Runs `work`, which has no place to be stopped at, on a thread of its own without holding Python.
///
/// Ctrl-C is raised at once. The work is then left to end by itself, and what it gives is dropped: it owns what it reads.
pub fn aside<T: Send + 'static>(py: Python<'_>, work: impl FnOnce() -> Result<T> + Send + 'static) -> PyResult<T> {
    let (give, mut take) = sync_channel(1);
    std::thread::Builder::new().spawn(move || drop(give.send(work()))).map_err(|_| lost())?;
    loop {
        let waited = py.detach(move || {
            let waited = take.recv_timeout(BEAT);
            (take, waited)
        });
        take = waited.0;
        py.check_signals()?;
        match waited.1 {
            Ok(found) => return Ok(found?),
            Err(RecvTimeoutError::Timeout) => {}
            Err(RecvTimeoutError::Disconnected) => return Err(lost().into()),
        }
    }
}

fn lost() -> Error {
    Error::new(Code::NotConverged, "threads", "a thread of this calculation was lost: please report the line")
}
