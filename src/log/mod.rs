//! Current logs: from months of messy readings to what they prove, and a watch over what comes next.
//!
//! Takes time stamps, readings (current or, better, power) and covariates that the plant has: load, speed,
//! temperature. Gives a cleaned series with a count of every row left out, the days on which the level changed, the
//! saving between two periods with its interval, the use avoided, and a chart that calls when the line drifts.
//!
//! Two facts rule here. Successive readings resemble each other, so a thousand of them are worth a few dozen: every
//! error and limit is widened by the lag-one autocorrelation. And current is not load: at half load most of it
//! magnetises the motor, so [`active_current`] or the motor's circuit stands between the log and any statement of pull.
//!
//! The numerics know nothing of chains, oil or money: shares and not per cent, seconds and not days, whatever unit the
//! readings have. [`evidence`] puts them before people: public units, dates, a line beside the log, verdicts in words.

mod active_current; // the part of the current that does work
pub mod change; // on which days the level changed
pub mod cleaning; // seven steps, each with its count
pub mod evidence; // logs in public units, and verdicts that a plant manager can check
mod least_squares; // regression by orthogonal triangles
pub mod proof; // before and after, avoided use, how long to log
pub mod statistics; // mean, spread, autocorrelation, Welch's test
pub mod watch; // charts with a known rate of false alarms, and what an alarm means

pub use active_current::active_current;
pub use evidence::{CurrentLog, LogWatch};
pub use least_squares::{Fit, least_squares};
