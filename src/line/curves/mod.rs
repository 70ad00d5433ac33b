//! What lies between the numbers of a result: along the loop, from shot to shot, against viscosity, over the years.
//!
//! Takes a survey, goes the same way as [`evaluate`](super::evaluate) through the same functions, and gives the points
//! of a curve instead of its ends and means. Nothing here is computed differently from there; pictures are drawn from it.

mod elongation; // growth of the chain over the years
mod friction; // friction of one articulation against viscosity
mod result; // the curves, as people get them
mod round_loop; // tension and temperature along the chain
mod shots; // which joint got oil when, and how full all are in the end

pub use elongation::elongation_curve;
pub use friction::friction_curve;
pub use result::*;
pub use round_loop::round_loop;
pub use shots::shot_record;

use super::Line;
use super::checked::Checked;
use super::course::Course;
use super::oiling::Oiling;
use super::reach::{Reach, reach};
use super::settle::{Settled, settle};
use crate::error::{Code, Error, Result};

/// The steps of an evaluation that curves are read from.
struct Worked {
    survey: Checked,
    course: Course,
    oiling: Oiling,
    reach: Reach,
    settled: Settled,
}

impl Worked {
    fn of(line: &Line) -> Result<Worked> {
        let survey = Checked::new(line)?;
        let course = Course::lay_out(&survey)?;
        let oiling = Oiling::of(&survey, &course)?;
        let reach = reach(&survey, &course, &oiling)?;
        let settled = settle(&survey, &course, &oiling, &reach)?;
        Ok(Worked { survey, course, oiling, reach, settled })
    }
}

/// Points of a curve where nobody says: smooth on paper.
const POINTS: i64 = 121;

/// Refuses a number of points that makes no curve, or more than anybody can see; not given: `usual`.
fn points_within(points: Option<i64>, usual: i64) -> Result<usize> {
    let points = points.unwrap_or(usual);
    if (2..=100_000).contains(&points) {
        return Ok(points as usize);
    }
    let message = format!("points = {points} makes no curve: 2 to 100000 can be drawn");
    Err(Error::new(Code::OutOfRange, "points", message).number(points as f64).limit("2 to 100000"))
}
