//! A survey whose ranges have been checked, in SI.

use super::{Line, LineSi};
use crate::error::Result;
use crate::quantity::unit::ONE;
use crate::quantity::{Field, Notes, checked};

/// The survey in SI, what is unusual about it, and how much of the time the line runs.
pub(super) struct Checked {
    pub si: LineSi,
    pub notes: Notes,
    /// Share of all time that the line runs.
    pub running_share: f64,
}

impl Checked {
    pub fn new(line: &Line) -> Result<Checked> {
        let notes = checked(line, "")?;
        let si = line.si(&ONE);
        let running_share = si.duty.day_share * si.duty.year_share;
        Ok(Checked { si, notes, running_share })
    }
}
