//! The whole job on one page: from a survey to what the line's chain goes through and what that costs.

use super::Line;
use super::blame::blame;
use super::checked::Checked;
use super::computed::Computed;
use super::costing::cost_of;
use super::course::Course;
use super::driving::drive_of;
use super::oiling::Oiling;
use super::reach::reach;
use super::report::report;
use super::result::Evaluation;
use super::settle::settle;
use super::starting::starting_of;
use super::supplying::supply_of;
use super::wearing::wear_of;
use crate::error::Result;

/// Evaluates one line: kinematics, tension, joints, fill, wear, drive, supply and cost of a year.
///
/// Fails with a typed error for a survey that cannot be computed, and with [`Code::NotConverged`](crate::Code) where
/// friction and pull do not settle. Everything that is merely unusual comes with the result as a warning, and what can
/// hurt people as a caution.
///
/// ```
/// let survey = include_str!("../../python/pinfilm/data/floor_now.toml");
/// let line = pinfilm::line::Line::from_toml(survey)?;
/// let result = pinfilm::line::evaluate(&line)?;
/// assert!(result.tension.pull_n > 0.0 && result.cost.total_per_year > 0.0);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn evaluate(line: &Line) -> Result<Evaluation> {
    report(line, &computed(line)?, false)
}

/// [`evaluate`] with the same numbers and codes of warnings, but without their sentences and without cautions: for tables
/// and studies of many lines, where nobody reads them.
///
/// ```
/// let survey = include_str!("../../python/pinfilm/data/floor_now.toml");
/// let line = pinfilm::line::Line::from_toml(survey)?;
/// let (brief, full) = (pinfilm::line::evaluate_in_brief(&line)?, pinfilm::line::evaluate(&line)?);
/// assert_eq!(brief.wear, full.wear);
/// assert!(brief.warnings.iter().map(|w| &w.code).eq(full.warnings.iter().map(|w| &w.code)));
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn evaluate_in_brief(line: &Line) -> Result<Evaluation> {
    report(line, &computed(line)?, true)
}

/// [`evaluate`] without the report: for tables and simulations of many lines, which read numbers and codes only.
///
/// ```
/// let survey = include_str!("../../python/pinfilm/data/floor_now.toml");
/// let line = pinfilm::line::Line::from_toml(survey)?;
/// let numbers = pinfilm::line::computed(&line)?.numbers()?;
/// assert_eq!(numbers.wear.life_years, pinfilm::line::evaluate(&line)?.wear.life_years);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn computed(line: &Line) -> Result<Computed> {
    job(line).map_err(|error| blame(error, line)) //                   in the names and on the lines of this survey
}

fn job(line: &Line) -> Result<Computed> {
    let survey = Checked::new(line)?; //                               ranges, units → SI, once
    let course = Course::lay_out(&survey)?; //                         joints, times, temperature, events
    let oiling = Oiling::of(&survey, &course)?; //                     what a joint holds, loses, lets in
    let reach = reach(&survey, &course, &oiling)?; //                  which joints, when, how full
    let settled = settle(&survey, &course, &oiling, &reach)?; //       joint ⇄ circuit, the only loop
    let starting = starting_of(&survey, &course, &settled)?;
    let wearing = wear_of(&survey, &course, &oiling, &reach, &settled)?;
    let driving = drive_of(&survey, &course, &settled)?;
    let supply = supply_of(&survey, &course, &oiling, &reach)?;
    let cost = cost_of(&survey, &course, &driving, &wearing, &supply);
    Ok(Computed { survey, course, oiling, reach, settled, starting, wearing, driving, supply, cost })
}
