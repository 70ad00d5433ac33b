//! The cheap exact tests of a set-up under a timer, cheapest first; the first that fails is its reason.
//!
//! The same functions as `evaluate` calls, on the same numbers, before friction, wear and money are computed.

use super::reason::{Reason, Refusal};
use crate::error::Result;
use crate::lubrication::coverage::{TICKS_PER_SECOND, Timer, every_nth, lock_risk};
use crate::lubrication::fill::{JointOil, PeriodicFill, periodic_fill};
use crate::lubrication::rotation::Rotation;

/// How much quicker oil may be lost than guessed before a margin is used up. Closure of our own.
pub const QUICKER: f64 = 1.25;

/// What the tests need to know of line, oil and place. SI.
#[derive(Debug, Clone, Copy)]
pub struct Sieve {
    /// Joints on the loop.
    pub joints: i64,
    /// Time from joint to joint, s.
    pub joint_time: f64,
    /// One turn of the chain, s.
    pub circuit: f64,
    /// Time that an injector needs for one shot, s; none: not tested.
    pub injector: Option<f64>,
    /// What the pump gives, m³/s; none: not tested.
    pub pump: Option<f64>,
    /// Nozzles that shoot at the same time: gaps times strands.
    pub nozzles: f64,
    /// Share of the shots of all gaps that gets into a joint: gaps × capture × share entered.
    pub landing: f64,
    /// Time that a joint takes through the spray, s; 0 for shots.
    pub zone_time: f64,
    /// How far circuit and timer may drift apart, as a share.
    pub tolerance: f64,
    /// Oil that a joint holds, m³.
    pub capacity: f64,
    /// Loss rate, 1/s of running time.
    pub loss_rate: f64,
    /// Time in which a full joint falls to the floor, s.
    pub patience: f64,
    /// Lowest fill allowed.
    pub floor: f64,
    /// Greatest share of the oil in the gaps that may spill over.
    pub most_overflow: f64,
    /// Greatest lock risk.
    pub most_lock_risk: f64,
    /// Greatest share of joints that may stay without oil.
    pub most_unreached: f64,
}

/// Shot and timer of a set-up. SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shots {
    /// Oil of one shot in one gap, m³; of a spray, its flow times the time from joint to joint.
    pub shot: f64,
    /// One joint in how many gets it.
    pub every: i64,
    /// Time the timer runs, s.
    pub run: f64,
    /// Pause until the next run, s; 0 = it never stops.
    pub dwell: f64,
}

/// A set-up that passed: its timer against the chain and the oil in its joints.
#[derive(Debug, Clone, Copy)]
pub struct Sifted {
    /// Time (s) of the circuits in which the counter comes round to the same joints.
    pub turns: f64,
    /// The settled fill.
    pub fill: PeriodicFill,
    /// Longest wait, s.
    pub worst_wait: f64,
    /// Share of the oil in the gaps that spills over.
    pub overflow: f64,
    /// Lock risk.
    pub lock_risk: f64,
    /// Whether the floor is kept too where oil is lost [`QUICKER`] than guessed.
    pub has_margin: bool,
}

/// What became of a set-up.
#[derive(Debug, Clone, Copy)]
pub enum Sieved {
    /// It passed.
    Passed(Sifted),
    /// It failed, first by this.
    Refused(Refusal),
}

impl Sieve {
    /// Tests one set-up. Errors are those of a timer that no timer can be.
    pub fn sift(&self, shots: &Shots) -> Result<Sieved> {
        let refused = |reason, value, limit| Ok(Sieved::Refused(Refusal { reason, value, limit }));
        let counted = every_nth(self.joints, shots.every)?;
        let undosed = counted.never as f64 / self.joints as f64;
        if undosed > self.most_unreached {
            return refused(Reason::JointsNeverDosed, undosed, self.most_unreached);
        }
        let between = shots.every as f64 * self.joint_time;
        if let Some(needs) = self.injector.filter(|needs| *needs > between) {
            return refused(Reason::InjectorTooSlow, needs, between);
        }
        let flow = shots.shot * self.nozzles / between;
        if let Some(gives) = self.pump.filter(|gives| flow > *gives) {
            return refused(Reason::PumpFlow, flow, gives);
        }
        let turns = counted.wait as f64 * self.circuit;
        let timer = if shots.dwell == 0.0 {
            Timer::new(self.circuit, turns, 0.0)? // it never stops: which run makes no difference
        } else {
            Timer::new(self.circuit, shots.run, shots.dwell)?
        };
        let timer = timer.with_zone(self.zone_time)?.counting(shots.every, self.joints)?;
        let rotation = Rotation::from(&timer);
        let never = rotation.never_reached();
        if never > self.most_unreached {
            return refused(Reason::TimerLocked, never, self.most_unreached);
        }
        let worst_wait = rotation.worst_wait() as f64 * turns;
        if worst_wait > self.patience {
            return refused(Reason::WaitTooLong, worst_wait, self.patience);
        }
        let seconds = |ticks: i64| ticks as f64 / TICKS_PER_SECOND;
        let reaching = seconds(timer.period).min(shots.run + self.zone_time);
        let risk = if rotation.continuous() || self.tolerance == 0.0 {
            0.0
        } else {
            lock_risk(turns, seconds(timer.period), reaching, self.tolerance, self.patience)
        };
        if risk > self.most_lock_risk {
            return refused(Reason::LockRisk, risk, self.most_lock_risk);
        }
        let spread = if shots.dwell == 0.0 { 1.0 } else { shots.run / reaching }; // oil of a zone is counted once
        let dose = shots.shot * self.landing * spread;
        let oil = JointOil { dose, capacity: self.capacity, loss_rate: self.loss_rate, uptake: 0.0 };
        let fill = periodic_fill(&rotation, turns, &oil);
        if fill.lowest < self.floor {
            return refused(Reason::BelowFloor, fill.lowest, self.floor);
        }
        let overflow = fill.overflow / dose;
        if overflow > self.most_overflow {
            return refused(Reason::Overflow, overflow, self.most_overflow);
        }
        let hungry = JointOil { loss_rate: QUICKER * self.loss_rate, ..oil };
        let has_margin = periodic_fill(&rotation, turns, &hungry).lowest >= self.floor;
        Ok(Sieved::Passed(Sifted { turns, fill, worst_wait, overflow, lock_risk: risk, has_margin }))
    }
}
