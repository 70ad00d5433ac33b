//! Many lines at once: columns in, the same `evaluate` for every row, columns out.
//!
//! A plant has thousands of chains, and a what-if study millions of rows. Each row of a table is one line: a column is
//! named as the survey names the value (`duty.speed_m_per_min`), a loop of two sprockets by the few numbers of
//! [`TwoSprocket`](crate::circuit::TwoSprocket) (`circuit.centre_distance_m`), a standard chain by `chain.standard` and
//! `chain.designation`, and a whole survey may stand in the column `survey`. All other columns are the caller's own and
//! come back untouched. What a row cannot say is an error of that row, and no row is lost.
//!
//! Knows `line` and nothing of studies: what is computed for the one or two lines of a row comes in as a [`Job`].

mod cells; // one column, cell by cell
mod common; // what all rows of a batch share, done once
mod job; // what is computed for the lines of a row
mod names; // names that columns may have, and those that look like one
mod outputs; // columns of results
mod plan; // what each column is for, before any row is computed
mod run; // batches of rows, in parallel
mod side; // one row → one line
mod sorting; // columns to the lines that they say something of
mod survey; // the column that holds whole surveys

pub use job::{Evaluate, Job};
pub use outputs::OUTPUTS;
pub use plan::{Asked, Default, Meant, Plan, Report};
pub use run::{Progress, run};

#[cfg(test)]
mod tests;

/// The column that holds whole surveys.
pub const SURVEY: &str = "survey";
