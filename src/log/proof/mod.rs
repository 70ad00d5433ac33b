//! Proof: what changed between two periods, how sure that is, and how long to log to see it.
//!
//! The saving is a difference of levels with load, speed and temperature taken out, named for what was measured: a
//! covariate that was not logged may be the whole of it. Two errors are computed, one from the autocovariances of the
//! residuals and one from their lag-one autocorrelation, and the larger is reported with the degrees of freedom that
//! the readings are worth. A placebo says how often the log shows such a saving where nothing was done.

mod avoided; // use avoided against the line as it was
mod before_after; // covariate-adjusted difference and its interval
mod covariance; // Newey and West; the wider of two errors
mod detectable; // least change that so many days can show
mod goodness; // CV(RMSE), NMBE and their limits
mod placebo; // the same fit where nothing was done

pub use avoided::{Avoided, SavingsFactor, avoided, fractional_savings_uncertainty};
pub use before_after::{BeforeAfter, before_after};
pub use covariance::{andrews_lags, newey_west, newey_west_se};
pub use detectable::LoggingPlan;
pub use goodness::{Goodness, Interval, cv_rmse, nmbe};
pub use placebo::{Placebo, placebo};
