//! Rows in parallel, chunk by chunk, with a word in between to whoever waits.

use crate::error::{Code, Error, Result};
use rayon::prelude::*;

/// Told between chunks how many of how many are done; returns `false` to stop.
pub type Progress<'a> = dyn FnMut(usize, usize) -> bool + 'a;

/// Rows between two words: a fraction of a tenth of a second for rows of some ten microseconds.
pub const CHUNK: usize = 1024;

/// For a run that nobody watches.
pub fn unwatched(_done: usize, _all: usize) -> bool {
    true
}

/// Threads that one calculation may ask for.
const MOST_THREADS: i64 = 1024;

/// A pool of so many threads; without a number, those of the machine.
pub fn workers(threads: Option<i64>) -> Result<Option<rayon::ThreadPool>> {
    let Some(threads) = threads else { return Ok(None) };
    if !(1..=MOST_THREADS).contains(&threads) {
        let message =
            format!("threads = {threads}: give a number from 1 to {MOST_THREADS}, or none for all of the machine");
        let limit = format!("1 to {MOST_THREADS}");
        return Err(Error::new(Code::OutOfRange, "threads", message).number(threads as f64).limit(limit));
    }
    let pool = rayon::ThreadPoolBuilder::new().num_threads(threads as usize).build();
    pool.map(Some).map_err(|why| {
        let message = format!("{threads} threads could not be started ({why}): ask for fewer");
        Error::new(Code::OutOfRange, "threads", message).number(threads as f64)
    })
}

/// `of(row)` for every row from 0, in the order of the rows, computed by as many threads as the pool has.
///
/// Each thread makes its own scratch by `scratch`. Error `stopped` where `progress` says so.
pub fn in_parallel<S, T: Send>(
    rows: usize,
    progress: &mut Progress<'_>,
    scratch: impl Fn() -> S + Sync,
    of: impl Fn(&mut S, usize) -> T + Sync,
) -> Result<Vec<T>> {
    let mut found = Vec::with_capacity(rows);
    for first in (0..rows).step_by(CHUNK) {
        let chunk = first..rows.min(first + CHUNK);
        found.par_extend(chunk.into_par_iter().with_min_len(8).map_init(&scratch, &of));
        report(progress, found.len(), rows)?;
    }
    Ok(found)
}

/// Passes the word on; error `stopped` if the answer is to stop.
pub(super) fn report(progress: &mut Progress<'_>, done: usize, all: usize) -> Result<()> {
    if progress(done, all) {
        return Ok(());
    }
    let message = format!("the calculation was stopped after {done} of {all} steps; nothing of it was kept");
    Err(Error::new(Code::Stopped, "progress", message))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_keep_their_order() {
        let found = in_parallel(3000, &mut unwatched, || (), |(), row| row).unwrap();
        assert!(found.into_iter().eq(0..3000));
    }

    #[test]
    fn a_stop_is_an_error_with_its_own_code() {
        let mut calls = 0;
        let mut stop_at_second = |_, _| {
            calls += 1;
            calls < 2
        };
        let stopped = in_parallel(5000, &mut stop_at_second, || (), |(), row| row);
        assert_eq!(stopped.unwrap_err().code, Code::Stopped);
        assert_eq!(calls, 2);
    }
}
