//! Rows in parallel, chunk by chunk, with a word in between to whoever waits.

use crate::error::{Code, Error, Result};
use rayon::prelude::*;
use std::time::{Duration, Instant};

/// Told between chunks how many of how many are done; returns `false` to stop.
pub type Progress<'a> = dyn FnMut(usize, usize) -> bool + 'a;

/// Time between two words that chunks aim at: whoever stops a run waits about this long, whatever a row takes.
const BEAT: Duration = Duration::from_millis(25);

/// Rows of the first chunk.
const FIRST: usize = 64;

/// Most rows of a chunk.
const MOST: usize = 1 << 14;

/// Rows that one thread takes at a time, at least.
const BITE: usize = 8;

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
    by_chunks(rows, progress, scratch, of, |chunk| found.append(chunk))?;
    Ok(found)
}

/// [`in_parallel`] for results that are wanted in another shape: `take` gets them a chunk at a time, in the order of the
/// rows, while they are at hand. How the rows are cut depends on the time that they take, what is computed does not.
pub fn by_chunks<S, T: Send>(
    rows: usize,
    progress: &mut Progress<'_>,
    scratch: impl Fn() -> S + Sync,
    of: impl Fn(&mut S, usize) -> T + Sync,
    mut take: impl FnMut(&mut Vec<T>),
) -> Result<()> {
    let (mut chunk, mut first, mut size) = (Vec::new(), 0, FIRST);
    while first < rows {
        let begun = Instant::now();
        let last = rows.min(first + size);
        chunk.clear();
        chunk.par_extend((first..last).into_par_iter().with_min_len(BITE).map_init(&scratch, &of));
        take(&mut chunk);
        first = last;
        report(progress, first, rows)?;
        let took = begun.elapsed();
        if took < BEAT / 2 {
            size = MOST.min(2 * size);
        } else if took > 2 * BEAT {
            size = (size / 2).max(BITE * rayon::current_num_threads());
        }
    }
    Ok(())
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
