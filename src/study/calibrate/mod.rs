//! Calibration: what readings of elongation, current and oil teach about the guesses that a line was computed with.
//!
//! Each uncertain parameter has a guess and a spread ([`Parameter`]); each reading has an error ([`Observation`]); a
//! function computes the readings from the parameters. [`calibrate`] finds the most probable parameters, how sure they
//! are now, and which combinations of them the readings have taught at all ([`Direction`]). Where a bell curve describes
//! that badly ([`Fit::is_bell_shaped`]), [`Ensemble::run`] draws from it as it is.

mod bell; // is the answer shaped like a bell curve?
mod diagnostics; // have the walkers forgotten where they began?
mod ensemble; // walkers
mod fit; // the answer: values, errors, directions
mod learnt; // which combinations the readings taught
mod problem; // parameters, readings, model
mod search; // damped least squares

pub use diagnostics::{effective_draws, split_r_hat};
pub use ensemble::{Ensemble, EnsembleSettings};
pub use fit::{Fit, calibrate};
pub(super) use learnt::combination;
pub use learnt::{Direction, Learnt};
pub use problem::{Model, Observation, Parameter, Problem, Scale};
