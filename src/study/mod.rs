//! Study: how sure an answer is, which input it hangs on, what readings teach, and which lines come first.
//!
//! A line is known by guesses: wear coefficients within a factor of thirty, prices, habits. This room draws the guesses
//! ([`Plan`]), says how far the outcomes spread and with what error of its own ([`quantile_over_nets`], [`Share`]), which
//! guess is worth measuring ([`Design`], [`Indices`]), what elongation readings and currents teach about them
//! ([`calibrate`], [`Ensemble`]), and which lines to do within a budget ([`select`], [`select_set_ups`]).
//!
//! `compare` sets a line as it is against the same line as proposed, and `lines` joins the two: [`sample`], [`sweep`],
//! [`what_matters`], [`calibrate_line`]. The rest knows nothing of chains: what is computed for one draw comes in as a
//! function or as a column of outcomes. Every draw depends on its row number and the seed alone, and every sum runs in the
//! order of the rows, so that a result is the same for any number of threads. Long runs report their [`Progress`] and can
//! be stopped.

mod calibrate; // readings → posterior, what is learnt and what is not
mod compare; // now against proposed
mod draws; // random numbers, distributions, correlation → rows of inputs
mod indices; // Sobol indices: which input matters
mod knapsack; // lines within a budget
mod lines; // draws, grids and readings joined to `evaluate` and `compare`
mod progress; // rows in parallel, chunk by chunk
mod recommend; // which set-up to use, and why not the others
mod simulate; // a line walked through its weeks, joint by joint
mod spread; // outcomes → percentiles, probabilities, their errors

pub use calibrate::*;
pub use compare::*;
pub use draws::*;
pub use indices::*;
pub use knapsack::*;
pub use lines::*;
pub use progress::{Progress, by_chunks, in_parallel, unwatched, workers};
pub use recommend::*;
pub use simulate::*;
pub use spread::*;
