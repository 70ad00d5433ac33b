//! Long calls: computed beside Python, which stays free to show progress, to run other threads and to be interrupted.

use crate::error::{Code, Error, Result};
use crate::study::Progress;
use pyo3::exceptions::PyRuntimeError;
use pyo3::prelude::*;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::time::Duration;

/// How often Python is asked whether to go on, and told how far it is.
const ASK_EVERY: Duration = Duration::from_millis(50);

/// The progress callback, as Python gives it; its type is written by hand.
pub struct Callback<'py>(Bound<'py, PyAny>);

impl<'a, 'py> FromPyObject<'a, 'py> for Callback<'py> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: pyo3::inspect::PyStaticExpr = pyo3::type_hint_identifier!("pinfilm.typing", "Progress");
    fn extract(object: Borrowed<'a, 'py, PyAny>) -> PyResult<Self> {
        Ok(Callback(object.to_owned()))
    }
}

/// Runs `compute` in a thread of its own, on a pool of `threads`, while this one listens to signals and calls `progress`
/// with how many of how many are done. An exception in either, or Ctrl-C, stops the computation and is raised.
pub fn long<T: Send>(
    py: Python<'_>,
    threads: Option<usize>,
    progress: Option<Callback<'_>>,
    compute: impl FnOnce(&mut Progress<'_>) -> Result<T> + Send,
) -> PyResult<T> {
    if threads == Some(0) {
        let message = "threads = 0 computes nothing: give 1 or more, or leave it out for all cores";
        return Err(Error::new(Code::OutOfRange, "threads", message).number(0.0).limit("at least 1").into());
    }
    let pool = rayon::ThreadPoolBuilder::new()
        .num_threads(threads.unwrap_or(0))
        .build()
        .map_err(|error| PyRuntimeError::new_err(error.to_string()))?;
    let progress = progress.map(|callback| callback.0.unbind());
    let (done, all, stop) = (AtomicUsize::new(0), AtomicUsize::new(0), AtomicBool::new(false));
    let tell = |progress: &Option<Py<PyAny>>| -> PyResult<()> {
        Python::attach(|py| {
            py.check_signals()?;
            if let (Some(callback), 1..) = (progress, all.load(Ordering::Relaxed)) {
                callback.call1(py, (done.load(Ordering::Relaxed), all.load(Ordering::Relaxed)))?;
            }
            Ok(())
        })
    };
    let listener = std::thread::current();
    py.detach(|| {
        std::thread::scope(|scope| {
            let worker = scope.spawn(|| {
                let found = pool.install(|| {
                    compute(&mut |so_far, of| {
                        done.store(so_far, Ordering::Relaxed);
                        all.store(of, Ordering::Relaxed);
                        !stop.load(Ordering::Relaxed)
                    })
                });
                listener.unpark();
                found
            });
            let mut heard: PyResult<()> = Ok(());
            while !worker.is_finished() {
                std::thread::park_timeout(ASK_EVERY);
                if heard.is_ok() && !worker.is_finished() {
                    heard = tell(&progress);
                    stop.store(heard.is_err(), Ordering::Relaxed);
                }
            }
            let found = worker.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic));
            heard?;
            let found = found?;
            tell(&progress)?;
            Ok(found)
        })
    })
}
