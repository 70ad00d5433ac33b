//! A survey's timer, counter and chain, handed to the event simulator.

use super::timetable::{self, Shift, WEEK, usual_week};
use super::{SimulatedLine, SimulatedLineSi};
use crate::error::{Code, Error, Result};
use crate::line::{Line, evaluate};
use crate::lubrication::coverage::{Clock as Hand, Simulation, simulate_while};
use crate::lubrication::{Clock, LubricationSi, TimerSi};
use crate::quantity::unit::{MIN, ONE};
use crate::quantity::{Field, Place, Row};
use crate::study::Progress;

/// Weeks that can be walked through at once: ten years.
const MOST_WEEKS: f64 = 520.0;

/// What a walk needs beyond the survey.
#[derive(Debug, Clone, Default)]
pub struct SimulateOptions {
    /// The timetable of a week; not given: [`usual_week`].
    pub shifts: Option<Vec<Shift>>,
    /// Weeks to walk through.
    pub weeks: Option<f64>,
    /// Where in its period the timer stands at the start, min after the beginning of a run.
    pub phase_min: f64,
    /// Whether the counter of joints starts again at each run of the timer.
    pub counter_reset: bool,
}

/// Weeks that are walked through where nobody says how many.
const USUAL_WEEKS: f64 = 4.0;

/// What leaves the applicator: a shot at every joint that is due, or a flow.
enum Gives {
    Shots(f64),
    Flow(f64),
}

/// Walks a line under a timer through its weeks. The chain starts with joint 0 at the point.
///
/// For methods with a timer, and for those that never pause (a dripper, an applicator without one). A round by hand has
/// no clock: [`Code::Unsupported`]. Attachments in the way of the applicator are counted as never reached.
pub fn simulate(line: &Line, options: &SimulateOptions, progress: &mut Progress<'_>) -> Result<SimulatedLine> {
    let weeks = options.weeks.unwrap_or(USUAL_WEEKS);
    if !(weeks > 0.0 && weeks <= MOST_WEEKS) {
        let (code, limit) = (Code::OutOfRange, format!("above 0 and at most {MOST_WEEKS}"));
        let code = if weeks.is_finite() { code } else { Code::NotFinite };
        let message = format!("weeks = {weeks} cannot be walked through: give a number {limit}");
        return Err(Error::new(code, "weeks", message).number(weeks).limit(limit));
    }
    if !(options.phase_min >= 0.0 && options.phase_min.is_finite()) {
        let message = format!("phase_min = {} is no place in a timer's period: give 0 min or more", options.phase_min);
        return Err(Error::new(Code::OutOfRange, "phase_min", message).number(options.phase_min).unit("min"));
    }
    let evaluated = evaluate(line)?;
    let si = line.si(&ONE);
    let shifts = options.shifts.clone().unwrap_or_else(|| usual_week(&line.duty));
    for (i, shift) in shifts.iter().enumerate() {
        shift.check(&Place::root("shifts").item(i), &Row::BLANK, &mut Default::default())?;
    }
    if shifts.is_empty() {
        let message = "shifts is empty: a line that never runs needs no oil; give at least one shift";
        return Err(Error::new(Code::Missing, "shifts", message));
    }
    let joints = evaluated.kinematics.joints;
    let (speed, strands) = (si.duty.speed, si.circuit.strands as f64);
    let loop_length = joints as f64 * si.chain.pitch;
    let never_pauses = |points: i64, gives: Gives| (TimerSi::never_pausing(), points, 1, gives, 0.0);
    let (timer, points, every, gives, zone) = match &si.lubrication {
        LubricationSi::Synchronised(m) => {
            let timer = m.timer.clone().unwrap_or_else(TimerSi::never_pausing);
            (timer, m.points, m.every_nth, Gives::Shots(m.shot), 0.0)
        }
        LubricationSi::Spray(m) => (m.timer.clone(), m.points, 1, Gives::Flow(m.flow), m.zone_length / speed),
        LubricationSi::Drip(m) => never_pauses(m.points, Gives::Flow(m.flow)),
        LubricationSi::Manual(_) => {
            let message = "lubrication.method = manual has no timer to walk through: rounds by hand are random, see fill \
                           in the result of evaluate, or give a timed method";
            return Err(Error::new(Code::Unsupported, "lubrication.method", message).text_value("manual"));
        }
    };
    let segments = timetable::segments(&shifts, speed, weeks)?;
    let period = timer.run + timer.dwell;
    let run = (timer.run + zone).min(period); // a joint still in the spray as it ends is oiled too
    let ticks = 1000; // of the progress
    let mut walked = simulate_while(
        &Simulation {
            loop_length,
            joints: joints as usize,
            segments: &segments,
            run,
            dwell: period - run,
            clock: if timer.clock == Clock::Wall { Hand::Wall } else { Hand::Machine },
            interlocked: timer.interlocked,
            phase: MIN.to_si(options.phase_min),
            every: every as u64,
            counter_reset: options.counter_reset,
        },
        &mut |share| progress((share * ticks as f64) as usize, ticks),
    )
    .map_err(|error| if error.field == "segments" { Error { field: "weeks".into(), ..error } } else { error })?;
    progress(ticks, ticks);
    let hits = walked.hits;
    if let Some(pattern) = si.circuit.attachment_every
        && matches!(gives, Gives::Shots(_))
    {
        for (joint, shots) in walked.shots.iter_mut().enumerate() {
            if si.circuit.attachment_blocks.contains(&(joint as i64 % pattern)) {
                *shots = 0; // the shot lands on the attachment
            }
        }
    }
    let each = points as f64 * strands;
    let share_of_run = timer.run / run; // the nozzle itself stops at the end of the run
    let (moving, standing) = match gives {
        Gives::Shots(shot) => {
            let passing = si.chain.pitch / speed * every as f64;
            (hits as f64 * shot * each, walked.standing_run / passing * shot * each)
        }
        Gives::Flow(flow) => {
            (walked.moving_run * share_of_run * flow * each, walked.standing_run * share_of_run * flow * each)
        }
    };
    let never = walked.shots.iter().filter(|&&shots| shots == 0).count() as f64;
    let used = moving + standing;
    Ok(SimulatedLine::public(
        SimulatedLineSi {
            name: line.name.clone(),
            weeks,
            joints,
            running: walked.running,
            circuits: walked.circuits,
            shots: walked.shots.iter().map(|&shots| i64::from(shots)).collect(),
            never_reached: never / joints as f64,
            never_reached_closed_form: evaluated.fill.never_reached,
            wait_circuits: walked.waits.iter().map(|&(wait, _)| wait as i64).collect(),
            wait_counts: walked.waits.iter().map(|&(_, count)| count as i64).collect(),
            longest_dry: walked.longest_dry,
            worst_wait: walked.longest_running_wait,
            worst_wait_closed_form: evaluated.fill.si(&ONE).worst_wait,
            worst_wall_wait: walked.longest_wait,
            oil_used: used,
            oil_standing: standing,
            applied: used / (weeks * WEEK),
            lost_run: walked.lost_run,
        },
        &ONE,
    ))
}

impl TimerSi {
    /// The timer of an applicator that has none: it runs whenever the chain does.
    fn never_pausing() -> TimerSi {
        TimerSi { run: 3600.0, dwell: 0.0, clock: Clock::Machine, interlocked: true }
    }
}
