//! What a user touches: a log in public units, a line beside it, and verdicts that a plant manager can check.
//!
//! Takes the columns that a logger wrote and the day on which something was done; gives the cleaning report, the days on
//! which the level changed, the saving with its interval, the energy avoided, a watch. Each verdict is one sentence with
//! the numbers behind it and notes on what hides the answer: magnetising current, a converter, a load that nobody
//! logged, a pair that the oil reaches and the current does not see.
//!
//! This is the one part of the log room that knows lines; the numerics beside it know readings only.

mod before_after; // what changed on a day, and how sure that is
mod changes; // on which days the level changed
mod cleaning; // what cleaning did, as people read it
mod current_log; // the log that a plant has, and what is left of it
mod note; // what to read a verdict with
mod oil_use; // whether the reservoir agrees with the shots
mod pull; // from current to pull, with what a nameplate leaves open
mod rules; // how to clean, how sure to be
mod savings; // energy and money avoided
mod series; // the cleaned log: rows, dates, sides of a change
mod watching; // a watch over a log, and one reading at a time
mod zone; // a logger's clock to UTC and back

pub use before_after::*;
pub use changes::*;
pub use cleaning::*;
pub use current_log::{COVARIATES, Covariate, CurrentLog, Known, Means};
pub use note::*;
pub use oil_use::*;
pub use pull::*;
pub use rules::*;
pub use savings::*;
pub use watching::*;
pub use zone::{ClockRows, Moment, Zone};

use crate::quantity::unit::{A, KW, Unit};
use crate::quantity::{Noun, Row};

/// Rows of everything that logs are asked with and answer, under the names of their groups.
pub fn register() -> Vec<(String, &'static Row)> {
    fn of<T: Noun>() -> Vec<(String, &'static Row)> {
        let mut rows = Vec::new();
        T::register(T::GROUP.into(), &Row::BLANK, &mut rows);
        rows
    }
    let groups = [
        of::<LogRow>(),
        of::<LogRules>(),
        of::<Proof>(),
        of::<OilCheck>(),
        of::<BeforeAfter>(),
        of::<ChangePoints>(),
        of::<AvoidedUse>(),
        of::<WatchReport>(),
        of::<OilUse>(),
    ];
    groups.concat()
}

impl LoggedAs {
    /// The unit of the readings.
    pub const fn unit(self) -> &'static Unit {
        match self {
            LoggedAs::Current => &A,
            LoggedAs::Power => &KW,
        }
    }

    /// As it is said in a sentence.
    pub(crate) const fn said(self) -> &'static str {
        match self {
            LoggedAs::Current => "current",
            LoggedAs::Power => "power",
        }
    }

    /// An SI reading in the unit of the name, under the one of two names that is this one's.
    pub(crate) fn shared(self, reading: f64) -> (Option<f64>, Option<f64>) {
        match self {
            LoggedAs::Current => (Some(A.from_si(reading)), None),
            LoggedAs::Power => (None, Some(KW.from_si(reading))),
        }
    }
}
