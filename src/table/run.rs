//! Batches of rows, in parallel, in the order in which they came.

use super::outputs::{Filled, OUTPUTS, no_rows};
use super::plan::Plan;
use super::side::{Chains, SideCells};
use crate::error::{Code, Error, Result};
use crate::line::{Evaluation, Line, Warning, evaluate, evaluate_in_brief};
use crate::quantity::{Noun, blank};
use arrow_array::{ArrayRef, RecordBatch, RecordBatchOptions};
use arrow_select::concat::concat;
use rayon::prelude::*;

/// Told between strides how many of how many rows are done; returns `false` to stop.
pub type Progress<'a> = dyn FnMut(usize, usize) -> bool + 'a;

/// What is computed for the lines of a row.
pub trait Job: Sync {
    /// What it gives.
    type Out: Noun + Send;
    /// Names of the lines of a row: none for one line, or the prefixes of columns for two.
    const SIDES: &'static [&'static str];
    /// Results that are shown where nothing else was asked for.
    const OUTPUTS: &'static [&'static str];
    /// Computes a row.
    fn compute(&self, lines: &[Line]) -> Result<Self::Out>;
    /// Hands each list of warnings of a result to `each`.
    fn warnings(&self, out: &Self::Out, each: &mut dyn FnMut(&[Warning]));
}

/// Evaluates the one line of each row.
#[derive(Debug, Clone, Copy, Default)]
pub struct Evaluate;

impl Job for Evaluate {
    type Out = Evaluation;
    const SIDES: &'static [&'static str] = &[""];
    const OUTPUTS: &'static [&'static str] = OUTPUTS;
    fn compute(&self, lines: &[Line]) -> Result<Evaluation> {
        let [line] = lines else { return Err(Error::new(Code::NotATable, "", "a row holds one line")) };
        evaluate_in_brief(line)
    }
    fn warnings(&self, out: &Evaluation, each: &mut dyn FnMut(&[Warning])) {
        each(&out.warnings);
    }
}

/// Rows between two words to whoever waits: some hundredths of a second.
const STRIDE: usize = 1024;
/// Rows that one thread takes at a time.
const BITE: usize = 64;
/// Rows of a batch that comes out.
const BATCH: usize = 1 << 16;

/// Computes all rows and hands the finished batches, in order, to `take`.
///
/// The numbers do not depend on how the table is cut into batches, nor on `threads` (`None`: as many as there are
/// processors). Error `stopped` where `progress` says so.
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
    let all = batches.iter().map(RecordBatch::num_rows).sum();
    let mut done = 0;
    for batch in batches {
        for first in (0..batch.num_rows()).step_by(BATCH) {
            let slice = batch.slice(first, BATCH.min(batch.num_rows() - first));
            let cells = plan.cells(&slice)?;
            let mut parts: Vec<Vec<ArrayRef>> = Vec::new();
            for from in (0..slice.num_rows()).step_by(STRIDE) {
                let to = slice.num_rows().min(from + STRIDE);
                let bites: Vec<usize> = (from..to).step_by(BITE).collect();
                let bite = |from: &usize| rows(job, plan, &cells, *from..to.min(from + BITE));
                parts.extend(pool.install(|| bites.par_iter().map(bite).collect::<Vec<_>>()));
                done += to - from;
                if !progress(done, all) {
                    let message = format!("the table was stopped after {done} of {all} rows; nothing of it was kept");
                    return Err(Error::new(Code::Stopped, "progress", message));
                }
            }
            take(joined(plan, &slice, &parts)?)?;
        }
    }
    Ok(())
}

/// Computes some rows of a batch.
fn rows<J: Job>(job: &J, plan: &Plan, cells: &[SideCells], rows: std::ops::Range<usize>) -> Vec<ArrayRef> {
    let mut filled = Filled::new(&plan.outputs, rows.len());
    let (mut chains, mut lines) = (Chains::new(), Vec::with_capacity(plan.sides.len()));
    for row in rows {
        let mut empty = Vec::new();
        match one::<J>(job, plan, cells, row, &mut chains, &mut lines, &mut empty) {
            Ok(out) => {
                let mut codes: Vec<String> = Vec::new();
                job.warnings(&out, &mut |warnings| codes.extend(warnings.iter().map(|w| w.code.to_string())));
                let message = (!empty.is_empty()).then(|| format!("default taken for the empty {}", empty.join(", ")));
                if message.is_some() {
                    codes.push("default_used".into());
                }
                codes.sort_unstable();
                codes.dedup();
                let status = if codes.is_empty() { "ok" } else { "warning" };
                let code = (!codes.is_empty()).then(|| codes.join(";"));
                filled.add(&plan.outputs, Some(&out), [Some(status), code.as_deref(), message.as_deref()]);
            }
            Err(error) => {
                let message = error.to_string();
                filled.add::<J::Out>(&plan.outputs, None, [Some("error"), Some(error.code.as_str()), Some(&message)]);
            }
        }
    }
    filled.finish()
}

/// Computes one row.
fn one<J: Job>(
    job: &J,
    plan: &Plan,
    cells: &[SideCells],
    row: usize,
    chains: &mut Chains,
    lines: &mut Vec<Line>,
    empty: &mut Vec<String>,
) -> Result<J::Out> {
    lines.clear();
    let of_side = |side: usize, error: Error| named(blank::missing::<Line>(error), J::SIDES.get(side).copied());
    for (at, (side, cells)) in plan.sides.iter().zip(cells).enumerate() {
        let first = empty.len();
        lines.push(side.line(cells, row, chains, empty).map_err(|error| of_side(at, error))?);
        if let Some(prefix) = J::SIDES.get(at).filter(|name| !name.is_empty()) {
            empty[first..].iter_mut().for_each(|name| *name = format!("{prefix}.{name}"));
        }
    }
    job.compute(lines).map_err(|error| {
        // which of two lines was it? Errors are few enough to ask again
        let at = if lines.len() > 1 && evaluate(&lines[0]).is_ok() { lines.len() - 1 } else { 0 };
        of_side(at, error)
    })
}

/// An error that says which line of the row it is about.
fn named(mut error: Error, side: Option<&str>) -> Error {
    if let Some(side) = side.filter(|side| !side.is_empty()) {
        error.message = format!("{side}: {}", error.message);
        error.field = format!("{side}.{}", error.field);
    }
    error
}

/// The columns of the batch with those of the results after them.
fn joined(plan: &Plan, batch: &RecordBatch, parts: &[Vec<ArrayRef>]) -> Result<RecordBatch> {
    let wrong = |error| Error::new(Code::NotATable, "", format!("the columns do not make a table: {error}"));
    let fields: Vec<_> =
        plan.schema.fields()[batch.num_columns()..].iter().map(|field| field.as_ref().clone()).collect();
    let mut columns = batch.columns().to_vec();
    let found = if parts.is_empty() { no_rows(&fields) } else { Vec::new() };
    columns.extend(found);
    for at in 0..parts.first().map_or(0, Vec::len) {
        let each: Vec<&dyn arrow_array::Array> = parts.iter().map(|part| part[at].as_ref()).collect();
        columns.push(concat(&each).map_err(wrong)?);
    }
    let rows = RecordBatchOptions::new().with_row_count(Some(batch.num_rows()));
    RecordBatch::try_new_with_options(plan.schema.clone(), columns, &rows).map_err(wrong)
}
