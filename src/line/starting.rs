//! What it takes to start the line after a stop, and whether the chain stands it.

use super::checked::Checked;
use super::course::Course;
use super::settle::Settled;
use crate::circuit::{Breakaway, Finding, breakaway, strength};
use crate::error::Result;

/// The start after a stop.
pub(super) struct Starting {
    pub breakaway: Breakaway,
    /// What there is to say of the tensile strength.
    pub finding: Option<Finding>,
}

/// Fails where the heaviest strand is pulled beyond its tensile strength.
pub(super) fn starting_of(survey: &Checked, course: &Course, settled: &Settled) -> Result<Starting> {
    let (factor, time) = (survey.si.friction.breakaway_factor, survey.si.circuit.start_time);
    let breakaway = breakaway(&course.layout, &settled.coefficients, factor, time)?;
    let finding = strength(&course.layout, breakaway.strand_tension)?;
    Ok(Starting { breakaway, finding })
}
