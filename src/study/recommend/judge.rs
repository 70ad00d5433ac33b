//! One candidate: the sieve, then `evaluate`, then what only an evaluation can tell.

use super::choices::Limits;
use super::rank::Standing;
use super::reason::{Reason, Refusal};
use super::sieve::{QUICKER, Shots, Sieved};
use super::station::{Setting, Station, at_fault, set};
use crate::error::Result;
use crate::line::{Evaluation, Line, evaluate_in_brief};
use crate::lubrication::Lubrication;
use crate::quantity::unit::{H, MIN, MPA_S, UL};

/// What became of a candidate.
pub(super) enum Verdict {
    /// It keeps every limit.
    Keeps(Box<Figures>),
    /// It failed, first by this.
    Refused(Refusal),
}

/// The figures of a candidate that keeps every limit.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Figures {
    pub standing: Standing,
    pub applied_l_per_year: f64,
    pub dripped_share: f64,
    pub mean_fill: f64,
    pub never_reached: f64,
    pub lock_risk: f64,
}

/// The line of the station that a thread worked on last, so that a survey is copied once a station and not once a candidate.
pub(super) type Scratch = Option<(usize, Line)>;

/// Judges one candidate. `number` of the station; an error is one of the survey itself.
pub(super) fn judge(
    number: usize,
    at: &Station,
    setting: &Setting,
    limits: &Limits,
    scratch: &mut Scratch,
) -> Result<Verdict> {
    if let Some((refusal, _)) = at.refusal {
        return Ok(Verdict::Refused(refusal));
    }
    let shots = Shots {
        shot: UL.to_si(setting.shot_ul),
        every: setting.every_nth,
        run: MIN.to_si(setting.run_min),
        dwell: MIN.to_si(setting.dwell_min),
    };
    let sifted = match at.sieve.as_ref().map(|sieve| sieve.sift(&shots)).transpose()? {
        Some(Sieved::Refused(refusal)) => return Ok(Verdict::Refused(refusal)),
        Some(Sieved::Passed(sifted)) => Some(sifted),
        None => None,
    };
    if !matches!(scratch, Some((last, _)) if *last == number) {
        *scratch = Some((number, at.line.clone()));
    }
    let Some((_, line)) = scratch else { return Ok(Verdict::Refused(CANNOT)) };
    set(line, setting, at.joint_time()?);
    let found = match evaluate_in_brief(line) {
        Ok(found) => found,
        Err(error) => return Ok(Verdict::Refused(Refusal { reason: at_fault(&error)?, ..CANNOT })),
    };
    let overflow = match &sifted {
        Some(sifted) => sifted.overflow,
        // what a joint takes up over what gets into its gaps; the rest spilled over
        None => (1.0 - (1.0 - found.supply.dripped_share) / at.landed).max(0.0),
    };
    if let Some(refusal) = beyond(&found, at, overflow, limits) {
        return Ok(Verdict::Refused(refusal));
    }
    let timed = sifted.is_some() && setting.dwell_min > 0.0;
    // without a timer the fill of a joint falls at most as the loss rises
    let margin = || found.fill.lowest_fill_reached >= QUICKER * at.line.fill.floor;
    let running = if timed { shots.run / (shots.run + shots.dwell) } else { 1.0 };
    let shoots = matches!(at.line.lubrication, Lubrication::Synchronised(_));
    Ok(Verdict::Keeps(Box::new(Figures {
        standing: Standing {
            cost: found.cost.total_per_year,
            has_margin: sifted.map_or_else(margin, |sifted| sifted.has_margin),
            overflow,
            starts: if timed { (shots.run + shots.dwell).recip() } else { 0.0 },
            strokes: if shoots { running / (setting.every_nth as f64 * at.joint_time()?) } else { 0.0 },
            every: setting.every_nth,
            worst_wait_h: found.fill.worst_wait_h,
            shot: setting.shot_ul,
            run: setting.run_min,
            dwell: setting.dwell_min,
            enters_soon: at.enters_soon,
            lowest_fill: found.fill.lowest_fill_reached,
            score: at.score,
        },
        applied_l_per_year: found.supply.applied_l_per_year,
        dripped_share: found.supply.dripped_share,
        mean_fill: found.fill.mean_fill,
        never_reached: found.fill.never_reached,
        lock_risk: found.fill.lock_risk.unwrap_or(0.0),
    })))
}

const CANNOT: Refusal = Refusal { reason: Reason::CannotBeComputed, value: f64::NAN, limit: f64::NAN };

/// The limits on what only an evaluation can tell; the earlier ones again, for methods without a timer.
fn beyond(found: &Evaluation, at: &Station, overflow: f64, limits: &Limits) -> Option<Refusal> {
    let over = |reason, value: f64, limit: f64| (value > limit).then_some(Refusal { reason, value, limit });
    let under = |reason, value: f64, limit: f64| (value < limit).then_some(Refusal { reason, value, limit });
    let (fill, supply, floor) = (&found.fill, &found.supply, at.line.fill.floor);
    over(Reason::JointsUnreached, fill.never_reached, limits.most_unreached)
        .or_else(|| over(Reason::WaitTooLong, H.to_si(fill.worst_wait_h), at.patience))
        .or_else(|| under(Reason::BelowFloor, fill.lowest_fill_reached, floor))
        .or_else(|| over(Reason::Overflow, overflow, limits.most_overflow))
        .or_else(|| under(Reason::NoGradeFits, at.running_viscosity, MPA_S.to_si(fill.viscosity_least_mpa_s)))
        .or_else(|| over(Reason::LinePressure, supply.outlet_use?, limits.most_outlet_use))
        .or_else(|| {
            let needs = at.line.supply.as_ref()?.least_voltage_v;
            let volts = [supply.cable_v, supply.cable_inrush_v].into_iter().flatten().fold(f64::INFINITY, f64::min);
            under(Reason::Cable, volts, needs)
        })
}
