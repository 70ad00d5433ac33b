//! A timer's run and dwell against the circuit of the chain: who is reached, who never, after how long.

use super::counter::every_nth;
use super::slater::Slater;
use super::ticks::{LONGEST_TICKS, TICKS_PER_SECOND, gcd, ticks, too_long};
use crate::error::{Code, Error, Result};

/// A timer and the chain that passes it, in ticks of a millisecond.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Timer {
    /// Time between two passages of the same joint that could be oiled, ticks; > 0.
    pub circuit: i64,
    /// Time the timer oils in each period, ticks; 0 < run <= period.
    pub run: i64,
    /// Run and dwell, ticks.
    pub period: i64,
}

impl Timer {
    /// A timer that oils for `run` and rests for `dwell` on a chain with circuit time `circuit`, all in s.
    ///
    /// Times are rounded to ticks. An error if circuit or run rounds to nothing, dwell is negative, or any is too long.
    pub fn new(circuit: f64, run: f64, dwell: f64) -> Result<Timer> {
        Timer::from_ticks(ticks("circuit time", circuit)?, ticks("run", run)?, ticks("dwell", dwell)?)
    }

    /// The same in ticks.
    pub fn from_ticks(circuit: i64, run: i64, dwell: i64) -> Result<Timer> {
        for (what, least, count) in [("circuit time", 1, circuit), ("run", 1, run), ("dwell", 0, dwell)] {
            let seconds = count as f64 / TICKS_PER_SECOND;
            if count < least {
                let limit = format!("at least {} s", least as f64 / TICKS_PER_SECOND);
                let message = format!("{what} = {seconds} s, but it must be {limit}");
                return Err(Error::new(Code::OutOfRange, what, message).number(seconds).unit("s").limit(limit));
            }
            if count > LONGEST_TICKS {
                return Err(too_long(what, seconds));
            }
        }
        Ok(Timer { circuit, run, period: run + dwell })
    }

    /// The timer of a spray that reaches every joint inside a zone: a joint is oiled if any part of its passage falls
    /// in the run. `passage` s: time a joint spends in the zone, zone length over chain speed.
    pub fn with_zone(self, passage: f64) -> Result<Timer> {
        let run = self.run + ticks("time in the spray zone", passage)?;
        Ok(Timer { run: run.min(self.period), ..self })
    }

    /// The timer of an applicator that counts and is released for every `every`-th of `joints` joints only.
    ///
    /// The counter is never reset, so the reached joints are due every `every/gcd` circuits and meet the timer as a
    /// chain with that longer circuit would. Which joints are reached at all says [`every_nth`].
    pub fn counting(self, every: i64, joints: i64) -> Result<Timer> {
        let turns = every_nth(joints, every)?.wait;
        let circuit = i128::from(self.circuit) * i128::from(turns);
        match i64::try_from(circuit) {
            Ok(circuit) if circuit <= LONGEST_TICKS => Ok(Timer { circuit, ..self }),
            _ => Err(too_long("time between two doses of a joint", circuit as f64 / TICKS_PER_SECOND)),
        }
    }

    /// Phase of the timer that a joint gains in a circuit, ticks.
    pub fn step(&self) -> i64 {
        self.circuit % self.period
    }

    /// Grain of the phases that one joint can meet, ticks: greatest common divisor of circuit and period.
    pub fn cell(&self) -> i64 {
        gcd(self.circuit, self.period)
    }

    /// Waits of the joints, the share that is never reached, and what follows from them. Exact.
    ///
    /// Assumes joints uniform on the loop, constant speed, a steady clock that starts anywhere; else [`simulate`].
    /// Source: Slater 1967, gap theorem, see [`Slater`]; the locked case is divisibility.
    ///
    /// [`simulate`]: super::simulate
    pub fn coverage(&self) -> TimerCoverage {
        let cell = self.cell();
        let lock_den = self.period / cell;
        let pattern = if self.run == self.period {
            Pattern::EveryPassage
        } else {
            Slater::first_returns(self.step(), self.run, self.period).map_or(Pattern::Locked, Pattern::Walk)
        };
        TimerCoverage::assemble(*self, cell, lock_den, pattern)
    }
}

/// How the shots of one joint follow one another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pattern {
    /// No dwell: a shot at every passage.
    EveryPassage,
    /// The run is not longer than the cell: a joint that is reached is so once in `lock_den` circuits, the others never.
    Locked,
    /// Every joint is reached, after two or three different waits in turn.
    Walk(Slater),
}

/// One of the waits between two shots at the same joint.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Wait {
    /// Length of the wait, circuits.
    pub circuits: i64,
    /// Phases of the run after which it follows, ticks.
    pub length: i64,
    /// Share of all shots that are followed by this wait.
    pub share_of_shots: f64,
    /// Share of all joints that stand in such a wait at a random moment; with the never-reached they add up to 1.
    pub share_of_joints: f64,
}

/// Which joints a timer reaches and how long they wait.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimerCoverage {
    /// What was computed.
    pub timer: Timer,
    /// Grain of the phases that one joint meets, ticks.
    pub cell: i64,
    /// Circuits after which every phase repeats.
    pub lock_den: i64,
    /// How the shots of a joint follow one another.
    pub pattern: Pattern,
    /// Share of the joints that no shot ever reaches.
    pub never_reached: f64,
    waits: [Wait; 3],
    distinct: usize,
}

impl TimerCoverage {
    fn assemble(timer: Timer, cell: i64, lock_den: i64, pattern: Pattern) -> TimerCoverage {
        let Timer { run, period, .. } = timer;
        let raw = match pattern {
            Pattern::EveryPassage => [(1, run), (0, 0), (0, 0)],
            Pattern::Locked => [(lock_den, run), (0, 0), (0, 0)],
            Pattern::Walk(slater) => slater.waits(),
        };
        // A joint that is never reached has its own phase outside the run for ever: u in [run, cell) of [0, cell).
        let never = if pattern == Pattern::Locked { cell - run } else { 0 };
        let locked_period = i128::from(lock_den) * i128::from(run);
        let whole = if pattern == Pattern::Locked { locked_period } else { i128::from(period) };
        debug_assert_eq!(raw.iter().map(|&(n, length)| i128::from(n) * i128::from(length)).sum::<i128>(), whole);

        let mut waits = [Wait::default(); 3];
        let mut distinct = 0;
        for (circuits, length) in raw.into_iter().filter(|&(_, length)| length > 0) {
            match waits[..distinct].iter_mut().find(|wait| wait.circuits == circuits) {
                Some(same) => same.length += length,
                None => {
                    waits[distinct] = Wait { circuits, length, ..Wait::default() };
                    distinct += 1;
                }
            }
        }
        waits[..distinct].sort_unstable_by_key(|wait| wait.circuits);
        for wait in &mut waits[..distinct] {
            wait.share_of_shots = wait.length as f64 / run as f64;
            wait.share_of_joints = wait.circuits as f64 * wait.length as f64 / period as f64;
        }
        let never_reached = never as f64 / cell as f64;
        TimerCoverage { timer, cell, lock_den, pattern, never_reached, waits, distinct }
    }

    /// The waits that occur, shortest first: one, two or three.
    pub fn waits(&self) -> &[Wait] {
        &self.waits[..self.distinct]
    }

    /// Mean wait between two shots at a joint that is reached, circuits.
    pub fn mean_wait(&self) -> f64 {
        if self.pattern == Pattern::Locked {
            self.lock_den as f64
        } else {
            self.timer.period as f64 / self.timer.run as f64
        }
    }

    /// The longest wait of a joint that is reached, circuits.
    pub fn worst_wait(&self) -> i64 {
        self.waits().last().map_or(0, |wait| wait.circuits)
    }

    /// Share of all joints that had no shot in the last `circuits` circuits, the never-reached among them.
    ///
    /// `circuits` >= 0. Exact: a joint is at a random moment anywhere in its wait with equal chance.
    pub fn older_than(&self, circuits: f64) -> f64 {
        let late = |wait: &Wait| wait.length as f64 * (wait.circuits as f64 - circuits).max(0.0);
        self.never_reached + self.waits().iter().map(late).sum::<f64>() / self.timer.period as f64
    }

    /// Mean time since the last shot of the joints that are reached, circuits. Exact.
    pub fn mean_age(&self) -> f64 {
        let squares: f64 = self.waits().iter().map(|w| (w.circuits as f64).powi(2) * w.length as f64).sum();
        let reached = if self.pattern == Pattern::Locked { self.timer.run as f64 / self.cell as f64 } else { 1.0 };
        squares / (2.0 * self.timer.period as f64 * reached)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use std::collections::BTreeMap;

    /// Walks the orbit of every phase and collects waits with their number of phases; the share never reached.
    fn walked(circuit: i64, run: i64, period: i64) -> (BTreeMap<i64, i64>, f64) {
        let step = circuit % period;
        let mut waits = BTreeMap::new();
        for start in 0..run {
            let mut phase = (start + step) % period;
            let mut circuits = 1;
            while phase >= run {
                phase = (phase + step) % period;
                circuits += 1;
            }
            *waits.entry(circuits).or_insert(0) += 1;
        }
        let mut reached = vec![false; period as usize];
        let mut count = 0;
        for start in 0..run {
            let mut phase = start;
            while !std::mem::replace(&mut reached[phase as usize], true) {
                count += 1;
                phase = (phase + step) % period;
            }
        }
        (waits, 1.0 - count as f64 / period as f64)
    }

    fn agrees(circuit: i64, run: i64, period: i64) {
        let ours = Timer::from_ticks(circuit, run, period - run).unwrap().coverage();
        let (waits, never) = walked(circuit, run, period);
        let listed: BTreeMap<i64, i64> = ours.waits().iter().map(|w| (w.circuits, w.length)).collect();
        assert_eq!(listed, waits, "C {circuit} R {run} P {period}");
        assert!((ours.never_reached - never).abs() < 1e-12, "C {circuit} R {run} P {period}");
        let shots: f64 = ours.waits().iter().map(|w| w.share_of_shots).sum();
        let joints: f64 = ours.waits().iter().map(|w| w.share_of_joints).sum();
        assert!((shots - 1.0).abs() < 1e-12 && (joints + never - 1.0).abs() < 1e-12);
        let mean: f64 = ours.waits().iter().map(|w| w.circuits as f64 * w.share_of_shots).sum();
        assert!((ours.mean_wait() - mean).abs() < 1e-9 * mean);
    }

    #[test]
    fn every_short_timer_walks_as_computed() {
        for period in 1..=25 {
            for circuit in 1..=2 * period {
                for run in 1..=period {
                    agrees(circuit, run, period);
                }
            }
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 4000, failure_persistence: None, ..Default::default() })]
        #[test]
        fn any_timer_walks_as_computed(period in 1..=400_i64, share in 0.0..1.0, circuit in 1..=3000_i64) {
            agrees(circuit, 1 + (share * period as f64) as i64, period);
        }

        #[test]
        fn ages_are_those_of_uniform_waits(period in 2..=1_000_000_i64, share in 0.0..1.0, circuit in 1..=3_000_000_i64) {
            let run = 1 + (share * period as f64) as i64;
            let timer = Timer::from_ticks(circuit, run, period - run).unwrap().coverage();
            prop_assert!((timer.older_than(0.0) - 1.0).abs() < 1e-12);
            let worst = timer.worst_wait();
            prop_assert!((timer.older_than(worst as f64) - timer.never_reached).abs() < 1e-12);
            // The mean age is the area under the share of the reached that is older; waits are its corners.
            let mut corners = vec![0.0];
            corners.extend(timer.waits().iter().map(|w| w.circuits as f64));
            let older = |k: f64| timer.older_than(k) - timer.never_reached;
            let area: f64 = corners.windows(2).map(|k| (k[1] - k[0]) * (older(k[0]) + older(k[1])) / 2.0).sum();
            prop_assert!((timer.mean_age() * (1.0 - timer.never_reached) - area).abs() < 1e-9 * area);
        }
    }

    #[test]
    fn impossible_timers_are_refused() {
        let code = |circuit, run, dwell| Timer::new(circuit, run, dwell).unwrap_err().code;
        assert_eq!(code(1200.0, 0.0, 10.0), Code::OutOfRange);
        assert_eq!(code(1200.0, 0.0004, 10.0), Code::OutOfRange);
        assert_eq!(code(1200.0, 1.0, -1.0), Code::OutOfRange);
        assert_eq!(code(0.0, 1.0, 1.0), Code::OutOfRange);
        assert_eq!(code(1e11, 1.0, 1.0), Code::OutOfRange);
        let counted = Timer::new(1e9, 1.0, 1.0).unwrap().counting(101, 900);
        assert_eq!(counted.unwrap_err().code, Code::OutOfRange);
    }

    #[test]
    fn the_largest_times_do_not_overflow() {
        let timer = Timer::from_ticks(LONGEST_TICKS - 1, 1, LONGEST_TICKS).unwrap().coverage();
        assert!(timer.worst_wait() > 0 && timer.never_reached >= 0.0);
        let timer = Timer::from_ticks(LONGEST_TICKS, LONGEST_TICKS, 1).unwrap().coverage();
        assert_eq!(timer.never_reached, 0.0);
    }

    #[test]
    fn a_near_lock_shows_in_the_worst_wait_only() {
        let near = Timer::new(1000.003, 0.25, 999.75).unwrap().coverage();
        assert_eq!((near.never_reached, near.worst_wait()), (0.0, 333_251));
    }

    #[test]
    fn a_zone_lengthens_the_run_up_to_the_period() {
        let timer = Timer::new(180.0, 60.0, 3540.0).unwrap();
        assert_eq!(timer.with_zone(1.0).unwrap().run, 61_000);
        assert_eq!(timer.with_zone(1e5).unwrap().coverage().worst_wait(), 1);
    }
}
