//! Synchronised and timed spray: metered oil under a timer.

use crate::lubrication::fill::Waiting;
use crate::lubrication::rotation::Rotation;

/// An applicator driven by the chain, so that each shot lands in the plate gap of every n-th joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Synchronised {
    /// One shot, m³.
    pub shot: f64,
    /// Gaps of a joint served.
    pub points: f64,
    /// Share of a shot that lands in the gap, 0 to 1.
    pub capture: f64,
    /// Every how many joints a shot.
    pub every_nth: f64,
    /// Share of the time in which the timer runs: run/period; 1 without a timer.
    pub running: f64,
}

impl Synchronised {
    /// Oil (m³) into a joint at a shot of which the share `entered` gets in.
    pub fn dose(&self, entered: f64) -> f64 {
        self.shot * self.points * self.capture * entered
    }

    /// Oil applied (m³/s of running time) on `strands` strands; `joint_time` s from joint to joint.
    pub fn applied(&self, joint_time: f64, strands: f64) -> f64 {
        self.running / self.time_between_shots(joint_time) * self.shot * self.points * strands
    }

    /// Time from shot to shot (s), in which delivery and venting must be done.
    pub fn time_between_shots(&self, joint_time: f64) -> f64 {
        self.every_nth * joint_time
    }
}

/// Spray on whatever passes while the timer runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spray {
    /// Flow of one nozzle while it sprays, m³/s.
    pub flow: f64,
    /// Nozzles a strand, each on one gap.
    pub points: f64,
    /// Share that lands in a gap, 0 to 1: about the open fraction.
    pub capture: f64,
    /// Time the timer runs, s.
    pub run: f64,
    /// Run and dwell, s.
    pub period: f64,
    /// Time a joint takes through the spray, s: zone length over chain speed.
    pub zone_time: f64,
}

impl Spray {
    /// The run that decides which joints are reached (s): a joint that is still in the zone counts.
    pub fn reaching_run(&self) -> f64 {
        self.period.min(self.run + self.zone_time)
    }

    /// Oil (m³) into a joint at a pass; `joint_time` s from joint to joint. Spread so that all sprayed oil is counted once.
    pub fn dose(&self, joint_time: f64, entered: f64) -> f64 {
        self.flow * self.points * joint_time * (self.run / self.reaching_run()) * self.capture * entered
    }

    /// Oil applied (m³/s of running time) on `strands` strands.
    pub fn applied(&self, strands: f64) -> f64 {
        self.run / self.period * self.flow * self.points * strands
    }
}

/// The waits of the joints that a timer reaches; those that do not occur have no weight. `circuit` s.
pub fn timed_waits(rotation: &Rotation, circuit: f64) -> [Waiting; 3] {
    let reached = 1.0 - rotation.never_reached();
    rotation
        .waits()
        .map(|wait| Waiting { wait: wait.circuits as f64 * circuit, weight: rotation.share_of_joints(wait) / reached })
}

/// Share of joints never reached by a counter under a timer.
///
/// `reached` of `joints` by the counter, `never_by_timer` the share that the timer leaves out.
pub fn never_reached(reached: f64, joints: f64, never_by_timer: f64) -> f64 {
    1.0 - reached / joints * (1.0 - never_by_timer)
}

/// Whole circuits (as a time, s) between shots that keep a joint within a `kept` share of its oil a third of the way.
///
/// Convention of our own for comparing methods: C · max(1, round(ln(1/kept)/(3 k C))), `kept` 0.6.
pub fn synchronised_wait(circuit: f64, loss_rate: f64, kept: f64) -> f64 {
    circuit * (-kept.ln() / (3.0 * loss_rate * circuit)).round_ties_even().max(1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_applied_is_what_joints_are_offered() {
        let s = Synchronised { shot: 1e-8, points: 2.0, capture: 1.0, every_nth: 11.0, running: 0.25 };
        let joints_a_second = 1.0 / s.time_between_shots(0.5);
        assert!((s.applied(0.5, 1.0) - 0.25 * joints_a_second * s.dose(1.0)).abs() < 1e-22);
        let spray = Spray { flow: 3e-8, points: 2.0, capture: 1.0, run: 60.0, period: 600.0, zone_time: 2.0 };
        let offered = spray.reaching_run() / spray.period / 0.5 * spray.dose(0.5, 1.0);
        assert!((spray.applied(1.0) / offered - 1.0).abs() < 1e-14);
        assert_eq!(Spray { run: 600.0, ..spray }.reaching_run(), 600.0);
    }

    #[test]
    fn reached_joints_share_the_waits() {
        for (circuit, run, dwell) in [(1200, 600, 3000), (126, 120, 1680), (1240, 900, 27900)] {
            let waits = timed_waits(&crate::lubrication::rotation::of_timer(circuit, run, dwell), 1.0);
            assert!((waits.iter().map(|w| w.weight).sum::<f64>() - 1.0).abs() < 1e-14);
        }
    }

    #[test]
    fn counters_and_timers_multiply() {
        assert_eq!(never_reached(900.0, 900.0, 0.5), 0.5);
        assert_eq!(never_reached(450.0, 900.0, 0.5), 0.75);
    }
}
