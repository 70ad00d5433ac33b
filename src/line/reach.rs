//! Which joints each method reaches and when, and how full that keeps them.

use super::checked::Checked;
use super::course::Course;
use super::oiling::{Oiling, points};
use crate::error::Result;
use crate::lubrication::coverage::{
    ManualRounds, Timer, drip_wait, every_nth, every_nth_with_attachments, every_nth_worst_over, lock_risk,
};
use crate::lubrication::fill::{AgeLaw, JointOil, Waiting, longest_wait, periodic_fill};
use crate::lubrication::method::{self, oil_use};
use crate::lubrication::rotation::Rotation;
use crate::lubrication::{Clock, DripSi, LubricationSi, ManualSi, SpraySi, SynchronisedSi, TimerSi};

/// Doubt about a number of joints that was computed and not counted.
const COUNT_DOUBT: i64 = 4;
/// Share of the waits up to which a wait counts as the longest, where waits are random.
const UPPER: f64 = 0.95;
/// Shares at which three waits stand for a distribution: the middles of its thirds.
const THIRDS: [f64; 3] = [1.0 / 6.0, 0.5, 5.0 / 6.0];

/// Who is reached, when, and what that leaves in the joints. Times are running seconds.
pub(super) struct Reach {
    pub never: f64,
    /// The worst of the same over the doubt about the number of joints.
    pub never_if_miscounted: Option<f64>,
    /// Whether the joints that are never reached lie together.
    pub contiguous: bool,
    pub waits: Vec<Waiting>,
    pub wait_circuits: Option<Vec<i64>>,
    pub share_of_joints: Option<Vec<f64>>,
    pub worst_wait: f64,
    pub mean_interval: Option<f64>,
    pub visits: Option<f64>,
    pub pass_chance: Option<f64>,
    pub always_full: Option<bool>,
    pub lock_risk: Option<f64>,
    /// Oil that one visit brings into a joint (m³).
    pub dose: f64,
    pub mean_reached: f64,
    pub lowest_reached: f64,
    /// Oil that leaves the applicator (m³ per second of running time).
    pub applied: f64,
    /// Fill right after a visit in the law of ageing, and the fill that has the mean boundary friction.
    pub after_shot: f64,
    pub effective: f64,
}

impl Reach {
    /// Mean fill of all joints.
    pub fn mean(&self) -> f64 {
        self.mean_reached * (1.0 - self.never)
    }

    /// The waits as the rooms of wear take them.
    pub fn wait_pairs(&self) -> Vec<(f64, f64)> {
        self.waits.iter().map(|wait| (wait.wait, wait.weight)).collect()
    }
}

/// Follows the method of the survey round the loop.
pub(super) fn reach(survey: &Checked, course: &Course, oiling: &Oiling) -> Result<Reach> {
    let mut reach = match &survey.si.lubrication {
        LubricationSi::Manual(manual) => by_hand(survey, course, oiling, manual)?,
        LubricationSi::Drip(drip) => dripping(survey, course, oiling, drip),
        LubricationSi::Spray(spray) => spraying(survey, course, oiling, spray)?,
        LubricationSi::Synchronised(applicator) => synchronised(survey, course, oiling, applicator)?,
    };
    let law = AgeLaw::with_mean(reach.mean_reached, oiling.loss_rate, &reach.waits);
    let (oil, surface) = (&survey.si.oil, &survey.si.surface);
    let after_shot = law.start;
    let effective = if reach.dose == 0.0 {
        0.0
    } else if oil.boundary_friction == surface.dry_friction {
        reach.mean_reached
    } else {
        law.effective_fill(surface.boundary_fill)
    };
    if let LubricationSi::Drip(_) = survey.si.lubrication {
        reach.lowest_reached = law.fill(reach.worst_wait);
    }
    reach.after_shot = after_shot;
    reach.effective = effective;
    Ok(reach)
}

/// What the methods have in common before they differ.
fn blank() -> Reach {
    Reach {
        never: 0.0,
        never_if_miscounted: None,
        contiguous: true,
        waits: Vec::new(),
        wait_circuits: None,
        share_of_joints: None,
        worst_wait: 0.0,
        mean_interval: None,
        visits: None,
        pass_chance: None,
        always_full: None,
        lock_risk: None,
        dose: 0.0,
        mean_reached: 0.0,
        lowest_reached: 0.0,
        applied: 0.0,
        after_shot: 0.0,
        effective: 0.0,
    }
}

fn by_hand(survey: &Checked, course: &Course, oiling: &Oiling, manual: &ManualSi) -> Result<Reach> {
    let rounds = ManualRounds {
        interval: manual.interval * survey.running_share,
        spread: manual.interval_cv,
        miss: manual.miss_share,
    };
    let three = rounds.three_waits()?;
    let capacity = oiling.capacity.total;
    let dose = manual.dose * manual.capture * oiling.application.entered;
    let as_seen = method::Manual {
        interval: rounds.interval,
        missed: manual.miss_share,
        dose,
        kept: rounds.laplace(oiling.loss_rate),
    };
    let joints = f64::from(course.layout.joints) * course.layout.strands;
    let within_reach = joints * (1.0 - manual.unreached_share);
    Ok(Reach {
        never: manual.unreached_share,
        waits: three.wait.iter().zip(three.weight).map(|(&wait, weight)| Waiting { wait, weight }).collect(),
        worst_wait: three.worst,
        mean_interval: Some(rounds.mean()),
        visits: Some(1.0 / manual.interval),
        dose,
        mean_reached: as_seen.mean_fill(oiling.loss_rate, capacity),
        lowest_reached: as_seen.fill_before(oiling.loss_rate, capacity, three.worst),
        applied: method::Manual::applied(manual.dose, within_reach, rounds.interval),
        ..blank()
    })
}

fn dripping(survey: &Checked, course: &Course, oiling: &Oiling, drip: &DripSi) -> Reach {
    let circuit = course.layout.circuit_time;
    let points = points(&survey.si.lubrication);
    let offered = drip.flow * points * course.layout.joint_time * drip.capture;
    let passing = method::Drip::new(offered, drip.drop, oiling.application.entered, circuit);
    let circuits = THIRDS.map(|share| if passing.chance < 1.0 { drip_wait(passing.chance, share) } else { 1.0 });
    let sum: f64 = circuits.iter().sum();
    let worst = if passing.chance < 1.0 { drip_wait(passing.chance, UPPER) } else { 1.0 };
    Reach {
        waits: circuits.iter().map(|n| Waiting { wait: n * circuit, weight: n / sum }).collect(),
        wait_circuits: Some(circuits.iter().map(|n| *n as i64).collect()),
        worst_wait: worst * circuit,
        pass_chance: Some(passing.chance),
        dose: passing.dose,
        mean_reached: passing.mean_fill(oiling.loss_rate, oiling.capacity.total),
        applied: drip.flow * points * course.layout.strands,
        ..blank()
    }
}

fn spraying(survey: &Checked, course: &Course, oiling: &Oiling, spray: &SpraySi) -> Result<Reach> {
    let (circuit, timer) = (course.layout.circuit_time, &spray.timer);
    let sprayed = method::Spray {
        flow: spray.flow,
        points: points(&survey.si.lubrication),
        capture: spray.capture,
        run: timer.run,
        period: timer.run + timer.dwell,
        zone_time: spray.zone_length / course.layout.speed,
    };
    let dose = sprayed.dose(course.layout.joint_time, oiling.application.entered);
    let against = Timer::new(circuit, timer.run, timer.dwell)?.with_zone(sprayed.zone_time)?;
    let applied = in_stops(sprayed.applied(course.layout.strands), Some(timer), survey);
    let mut reach = timed(survey, oiling, &against, circuit, 1, dose, spray.speed_tolerance, sprayed.reaching_run())?;
    reach.applied = applied;
    Ok(reach)
}

fn synchronised(survey: &Checked, course: &Course, oiling: &Oiling, applicator: &SynchronisedSi) -> Result<Reach> {
    let circuit = course.layout.circuit_time;
    let (joints, every) = (i64::from(course.layout.joints), applicator.every_nth);
    let counted = every_nth(joints, every)?;
    let turns = counted.wait as f64 * circuit; // the time in which the counter comes round to the same joints
    let (run, period) = match &applicator.timer {
        Some(timer) => (timer.run, timer.run + timer.dwell),
        None => (turns, turns),
    };
    let shots = method::Synchronised {
        shot: applicator.shot,
        points: points(&survey.si.lubrication),
        capture: applicator.capture,
        every_nth: every as f64,
        running: run / period,
    };
    let dose = shots.dose(oiling.application.entered);
    let against = Timer::new(circuit, run, period - run)?.counting(every, joints)?;
    let mut reach = timed(survey, oiling, &against, turns, counted.wait, dose, applicator.speed_tolerance, run)?;
    let never_by_timer = reach.never;
    let surveyed = &survey.si.circuit;
    let reached = match surveyed.attachment_every {
        Some(pattern) => every_nth_with_attachments(joints, every, pattern, &surveyed.attachment_blocks)?,
        None => counted.reached,
    };
    reach.never = method::never_reached(reached as f64, joints as f64, never_by_timer);
    if !course.layout.counted {
        let worst = every_nth_worst_over(joints, every, COUNT_DOUBT)?;
        let share = method::never_reached(worst.reached as f64, worst.joints as f64, never_by_timer);
        reach.never_if_miscounted = Some(share.max(reach.never));
    }
    // Joints that a counter or an attachment leaves out stand singly between others; a timer leaves out a stretch.
    reach.contiguous = never_by_timer > 0.0;
    reach.applied =
        in_stops(shots.applied(course.layout.joint_time, course.layout.strands), applicator.timer.as_ref(), survey);
    Ok(reach)
}

/// What a timer does, whichever method it drives. `circuit` is the time (s) between two chances of one joint, `circuits`
/// how many circuits of the chain that is.
#[allow(clippy::too_many_arguments)]
fn timed(
    survey: &Checked,
    oiling: &Oiling,
    against: &Timer,
    circuit: f64,
    circuits: i64,
    dose: f64,
    tolerance: f64,
    reaching_run: f64,
) -> Result<Reach> {
    let coverage = against.coverage();
    let rotation = Rotation::from(against);
    let capacity = oiling.capacity.total;
    let oil = JointOil { dose, capacity, loss_rate: oiling.loss_rate, uptake: 0.0 };
    let fill = periodic_fill(&rotation, circuit, &oil);
    let reached = 1.0 - coverage.never_reached;
    let waits: Vec<Waiting> = coverage
        .waits()
        .iter()
        .map(|wait| Waiting { wait: wait.circuits as f64 * circuit, weight: wait.share_of_joints / reached })
        .collect();
    let patience = longest_wait(survey.si.fill.floor, oiling.loss_rate);
    let period = against.period as f64 / crate::lubrication::coverage::TICKS_PER_SECOND;
    Ok(Reach {
        never: coverage.never_reached,
        waits,
        wait_circuits: Some(coverage.waits().iter().map(|wait| wait.circuits * circuits).collect()),
        share_of_joints: Some(coverage.waits().iter().map(|wait| wait.share_of_joints).collect()),
        worst_wait: coverage.worst_wait() as f64 * circuit,
        always_full: Some(fill.always_full),
        lock_risk: Some(if against.run == against.period {
            0.0
        } else if tolerance == 0.0 {
            let waits_too_long = coverage.worst_wait() as f64 * circuit > patience;
            f64::from(u8::from(waits_too_long || coverage.never_reached > 0.0))
        } else {
            lock_risk(circuit, period, reaching_run, tolerance, patience)
        }),
        dose,
        mean_reached: fill.mean_reached,
        lowest_reached: fill.lowest,
        ..blank()
    })
}

/// A timer on wall time that is not stopped with the line also gives oil while it stands.
fn in_stops(applied: f64, timer: Option<&TimerSi>, survey: &Checked) -> f64 {
    match timer {
        Some(timer) if timer.clock == Clock::Wall && !timer.interlocked => {
            method::applied_in_stops(applied, survey.running_share)
        }
        _ => applied,
    }
}

/// Oil that the joints take up (m³ per second of running time), and the share of the applied oil that drips.
pub(super) fn use_of_oil(course: &Course, oiling: &Oiling, reach: &Reach) -> method::OilUse {
    let joints = f64::from(course.layout.joints) * course.layout.strands;
    oil_use(reach.applied, oiling.loss_rate, reach.mean(), oiling.capacity.total, joints)
}
