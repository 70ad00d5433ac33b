//! The timer's phase, the counter and the joints, passage by passage.

use super::Simulation;
use crate::error::Result;
use crate::lubrication::coverage::{Timer, ticks};
use std::collections::BTreeMap;

/// Phase that a passage may be off by rounding and still count as on time, s; more where the clock itself is coarser.
const PHASE_SLACK: f64 = 1e-9;

/// The timer as a circle.
pub struct Phase {
    run: f64,
    period: f64,
    start: f64,
}

impl Phase {
    pub fn of(line: &Simulation) -> Result<Phase> {
        // Refuses what no timer can be; the walk itself keeps the given seconds.
        Timer::from_ticks(1, ticks("run", line.run)?, ticks("dwell", line.dwell)?)?;
        Ok(Phase { run: line.run, period: line.run + line.dwell, start: line.phase })
    }

    /// Number of the run that the timer is in at a time of its clock; `None` in a dwell.
    pub fn run_at(&self, time: f64) -> Option<i64> {
        let clock = time + self.start;
        // A phase within rounding of a boundary lies on it, and a run holds its beginning but not its end.
        let clock = clock + PHASE_SLACK.max(8.0 * f64::EPSILON * clock);
        let run = (clock / self.period).floor();
        (clock - run * self.period < self.run).then_some(run as i64)
    }

    /// Time in runs up to a time of the clock.
    pub fn run_until(&self, time: f64) -> f64 {
        let clock = time + self.start;
        let run = (clock / self.period).floor();
        run * self.run + (clock - run * self.period).min(self.run)
    }
}

/// The counter of joints that releases a dose.
pub struct Counter {
    every: u64,
    reset: bool,
    run: i64,
    counted: u64,
}

impl Counter {
    pub fn of(line: &Simulation) -> Counter {
        Counter { every: line.every.max(1), reset: line.counter_reset, run: -1, counted: 0 }
    }

    /// Whether the counter releases a dose for the `passage`-th joint, in the given run of the timer.
    pub fn due(&mut self, passage: u64, run: i64) -> bool {
        if !self.reset {
            return passage.is_multiple_of(self.every);
        }
        if run != self.run {
            (self.run, self.counted) = (run, 0);
        }
        self.counted += 1;
        (self.counted - 1).is_multiple_of(self.every)
    }
}

/// Shots and waits joint by joint.
pub struct Joints {
    pub shots: Vec<u32>,
    pub waits: BTreeMap<u64, u64>,
    pub longest_wall: f64,
    pub longest_running: f64,
    /// Longest time without oil of each joint by the wall clock, s.
    pub longest_dry: Vec<f64>,
    last: Vec<Option<(u64, f64, f64)>>,
}

impl Joints {
    pub fn new(joints: usize) -> Joints {
        Joints {
            shots: vec![0; joints],
            last: vec![None; joints],
            waits: BTreeMap::new(),
            longest_wall: 0.0,
            longest_running: 0.0,
            longest_dry: vec![0.0; joints],
        }
    }

    pub fn shoot(&mut self, passage: u64, wall: f64, running: f64) {
        let joints = self.shots.len() as u64;
        let (joint, circuit) = ((passage % joints) as usize, passage / joints);
        self.shots[joint] += 1;
        let dry_since = self.last[joint].map_or(0.0, |(_, wall, _)| wall);
        self.longest_dry[joint] = self.longest_dry[joint].max(wall - dry_since);
        if let Some((before, wall_before, running_before)) = self.last[joint].replace((circuit, wall, running)) {
            *self.waits.entry(circuit - before).or_insert(0) += 1;
            self.longest_wall = self.longest_wall.max(wall - wall_before);
            self.longest_running = self.longest_running.max(running - running_before);
        }
    }

    /// The end of the simulation, at `wall` s: also the time since its last shot counts for each joint.
    pub fn close(&mut self, wall: f64) {
        for (dry, last) in self.longest_dry.iter_mut().zip(&self.last) {
            *dry = dry.max(wall - last.map_or(0.0, |(_, at, _)| at));
        }
    }
}
