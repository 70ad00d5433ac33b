//! Batches of rows, in parallel, in the order in which they came.

use super::common::Common;
use super::job::Job;
use super::outputs::{Filled, no_rows};
use super::plan::Plan;
use super::side::{Chains, SideCells};
use crate::error::{Code, Error, Result};
use crate::line::{Line, evaluate};
use crate::quantity::{Field, blank};
use arrow_array::{ArrayRef, RecordBatch, RecordBatchOptions};
use arrow_select::concat::concat;
use rayon::prelude::*;
use std::ops::Range;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc::{RecvTimeoutError, sync_channel};
use std::time::Duration;

/// Told some twenty times a second how many of how many rows are done; returns `false` to stop.
pub type Progress<'a> = dyn FnMut(usize, usize) -> bool + 'a;

/// Rows that one thread takes at a time, at least and at most: some thousandths of a second, so that a stop is soon heard.
const BITE: Range<usize> = 16..256;
/// Rows of a batch that comes out.
const BATCH: usize = 1 << 16;
/// Finished batches that may wait for `take`: memory is held by those in work alone.
const WAITING: usize = 1;
/// Time between two words to whoever waits.
const BEAT: Duration = Duration::from_millis(50);

/// What the threads and the caller tell each other.
#[derive(Default)]
struct Told {
    done: AtomicUsize,
    stop: AtomicBool,
}

/// Computes all rows and hands the finished batches, in order, to `take`.
///
/// The numbers do not depend on how the table is cut into batches, nor on `threads` (`None`: as many as there are
/// processors). Error `stopped` where `progress` says so; it and `take` are called by the calling thread, which only waits.
pub fn run<J: Job>(
    job: &J,
    plan: &Plan,
    batches: &[RecordBatch],
    threads: Option<usize>,
    progress: &mut Progress<'_>,
    take: &mut dyn FnMut(RecordBatch) -> Result<()>,
) -> Result<()> {
    let pool = rayon::ThreadPoolBuilder::new().num_threads(threads.unwrap_or(0)).build();
    let pool = pool.map_err(|e| Error::new(Code::Stopped, "threads", format!("no threads could be started: {e}")))?;
    let (all, told) = (batches.iter().map(RecordBatch::num_rows).sum(), Told::default());
    let slices = batches.iter().flat_map(|batch| {
        let first = (0..batch.num_rows()).step_by(BATCH);
        first.map(|first| batch.slice(first, BATCH.min(batch.num_rows() - first)))
    });
    std::thread::scope(|scope| {
        let (sender, finished) = sync_channel(WAITING);
        let (pool, told) = (&pool, &told);
        let worker = scope.spawn(move || {
            for slice in slices {
                let found = pool.install(|| computed(job, plan, &slice, told));
                // nobody listens any more where the run was stopped
                if sender.send(found).is_err() || told.stop.load(Ordering::Relaxed) {
                    break;
                }
            }
        });
        let mut ended = Ok(());
        while ended.is_ok() {
            match finished.recv_timeout(BEAT) {
                Ok(batch) => ended = batch.and_then(&mut *take),
                Err(RecvTimeoutError::Timeout) => ended = heard(progress, told, all),
                Err(RecvTimeoutError::Disconnected) => break,
            }
        }
        if ended.is_err() {
            told.stop.store(true, Ordering::Relaxed);
        }
        drop(finished);
        if worker.join().is_err() {
            let message = "a thread of this table was lost: please report the table";
            return ended.and(Err(Error::new(Code::NotConverged, "threads", message)));
        }
        ended.and_then(|()| heard(progress, told, all))
    })
}

/// Passes on how many rows are done; error `stopped` if the answer is to stop.
fn heard(progress: &mut Progress<'_>, told: &Told, all: usize) -> Result<()> {
    let done = told.done.load(Ordering::Relaxed);
    if progress(done, all) {
        return Ok(());
    }
    let message = format!("the table was stopped after {done} of {all} rows; nothing of it was kept");
    Err(Error::new(Code::Stopped, "progress", message))
}

/// Computes a batch, bite by bite, by the threads of the pool that this is called in.
fn computed<J: Job>(job: &J, plan: &Plan, batch: &RecordBatch, told: &Told) -> Result<RecordBatch> {
    let rows = batch.num_rows();
    let cells = plan.cells(batch)?;
    let sides = plan.sides.iter().zip(&cells);
    let sides: Vec<OfBatch> = sides.map(|(side, cells)| (cells, Common::of(side, cells, rows))).collect();
    let paths = plan.outputs.iter().map(|output| output.path.split('.').collect());
    let paths: Vec<Vec<&str>> = paths.collect();
    let bite = (rows / (16 * rayon::current_num_threads())).clamp(BITE.start, BITE.end);
    let starts: Vec<usize> = (0..rows).step_by(bite).collect();
    let parts: Vec<Vec<ArrayRef>> = starts
        .into_par_iter()
        .map(|from| {
            if told.stop.load(Ordering::Relaxed) {
                return Vec::new();
            }
            let of_bite = from..rows.min(from + bite);
            let found = Bite { job, plan, sides: &sides, paths: &paths }.rows(of_bite.clone());
            told.done.fetch_add(of_bite.len(), Ordering::Relaxed);
            found
        })
        .collect();
    if told.stop.load(Ordering::Relaxed) {
        return Err(Error::new(Code::Stopped, "progress", "the table was stopped"));
    }
    joined(plan, batch, &parts)
}

/// The cells of one side of a batch, and what its rows have in common.
type OfBatch<'a> = (&'a SideCells, Option<Common<'a>>);

/// Some rows of a batch, computed one after the other.
struct Bite<'a, J> {
    job: &'a J,
    plan: &'a Plan,
    sides: &'a [OfBatch<'a>],
    paths: &'a [Vec<&'a str>],
}

impl<J: Job> Bite<'_, J> {
    fn rows(&self, rows: Range<usize>) -> Vec<ArrayRef> {
        let mut filled = Filled::new(&self.plan.outputs, rows.len());
        let mut scratch = Scratch {
            lines: vec![Line::blank(); self.sides.len()],
            common: vec![false; self.sides.len()],
            chains: Chains::new(),
            empty: Vec::new(),
        };
        let mut codes = String::new();
        for row in rows {
            let found = self.row(row, &mut scratch);
            let Scratch { lines, empty, .. } = &scratch;
            match found {
                Ok(found) => {
                    let mut each: Vec<&str> = Vec::with_capacity(16);
                    self.job.codes(&found, &mut each);
                    let message =
                        (!empty.is_empty()).then(|| format!("default taken for the empty {}", empty.join(", ")));
                    if message.is_some() {
                        each.push("default_used");
                    }
                    each.sort_unstable();
                    each.dedup();
                    codes.clear();
                    each.iter().enumerate().for_each(|(at, code)| {
                        codes.push_str(if at > 0 { ";" } else { "" });
                        codes.push_str(code);
                    });
                    let (status, code) = if each.is_empty() { ("ok", None) } else { ("warning", Some(&*codes)) };
                    filled.add(
                        self.paths.iter().map(|path| self.job.value(lines, &found, path)),
                        [Some(status), code, message.as_deref()],
                    );
                }
                Err(error) => {
                    let message = error.to_string();
                    filled.add(
                        self.paths.iter().map(|_| None),
                        [Some("error"), Some(error.code.as_str()), Some(&message)],
                    );
                }
            }
        }
        filled.finish()
    }

    /// Computes one row.
    fn row(&self, row: usize, scratch: &mut Scratch) -> Result<J::Found> {
        let Scratch { lines, common: is_common, chains, empty } = scratch;
        empty.clear();
        let of_side = |side: usize, error: Error| named(blank::missing::<Line>(error), J::SIDES.get(side).copied());
        for (at, ((cells, common), line)) in self.sides.iter().zip(lines.iter_mut()).enumerate() {
            let first = empty.len();
            if common.as_ref().is_some_and(|common| common.put(line, &mut is_common[at], cells, row)) {
                empty.extend(common.iter().flat_map(Common::empty).cloned());
            } else {
                is_common[at] = false;
                let made = self.plan.sides[at].line(cells, row, chains, empty);
                *line = made.map_err(|error| of_side(at, error))?;
            }
            if let Some(prefix) = J::SIDES.get(at).filter(|name| !name.is_empty()) {
                empty[first..].iter_mut().for_each(|name| *name = format!("{prefix}.{name}"));
            }
        }
        self.job.compute(lines).map_err(|error| {
            // which of two lines was it? Errors are few enough to ask again
            let at = if lines.len() > 1 && evaluate(&lines[0]).is_ok() { lines.len() - 1 } else { 0 };
            of_side(at, error)
        })
    }
}

/// What one row leaves to the next, so that nothing is made anew.
struct Scratch {
    /// The lines of the row.
    lines: Vec<Line>,
    /// Whether a line has what all rows have in common, so that it takes the cells of the next row.
    common: Vec<bool>,
    chains: Chains,
    /// Names of empty cells for which a default stood in.
    empty: Vec<String>,
}

/// An error that says which line of the row it is about.
fn named(mut error: Error, side: Option<&str>) -> Error {
    if let Some(side) = side.filter(|side| !side.is_empty()) {
        error.message = format!("{side}: {}", error.message);
        error.field = format!("{side}.{}", error.field);
    }
    error
}

/// The columns of the batch with those of the results after them, joined by the threads of the pool.
fn joined(plan: &Plan, batch: &RecordBatch, parts: &[Vec<ArrayRef>]) -> Result<RecordBatch> {
    let wrong = |error| Error::new(Code::NotATable, "", format!("the columns do not make a table: {error}"));
    let fields: Vec<_> =
        plan.schema.fields()[batch.num_columns()..].iter().map(|field| field.as_ref().clone()).collect();
    let mut columns = batch.columns().to_vec();
    let found = if parts.is_empty() { no_rows(&fields) } else { Vec::new() };
    columns.extend(found);
    let whole = (0..parts.first().map_or(0, Vec::len)).into_par_iter().map(|at| {
        let each: Vec<&dyn arrow_array::Array> = parts.iter().map(|part| part[at].as_ref()).collect();
        concat(&each).map_err(wrong)
    });
    columns.extend(whole.collect::<Result<Vec<_>>>()?);
    let rows = RecordBatchOptions::new().with_row_count(Some(batch.num_rows()));
    RecordBatch::try_new_with_options(plan.schema.clone(), columns, &rows).map_err(wrong)
}
