//! What a timer means for the joints: how long they wait, how many in vain, how old their oil is.

use super::{Slater, Timer};

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
    /// The coverage of a timer.
    pub(super) fn of(timer: Timer) -> TimerCoverage {
        let Timer { run, period, .. } = timer;
        let cell = timer.cell();
        let lock_den = period / cell;
        let pattern = if run == period {
            Pattern::EveryPassage
        } else {
            Slater::first_returns(timer.step(), run, period).map_or(Pattern::Locked, Pattern::Walk)
        };
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
    fn a_near_lock_shows_in_the_worst_wait_only() {
        let near = Timer::new(1000.003, 0.25, 999.75).unwrap().coverage();
        assert_eq!((near.never_reached, near.worst_wait()), (0.0, 333_251));
    }

    #[test]
    fn lines_of_the_independent_cases() {
        // tests/data/cases-line.json: a counter of 11 with a timer, a spray with a zone.
        let oven = Timer::new(812.0, 9000.0, 27_000.0).unwrap().counting(11, 812).unwrap().coverage();
        let slat = Timer::new(183.0, 60.0, 3540.0).unwrap().with_zone(1.0).unwrap().coverage();
        let packing = Timer::new(11.0236, 30.0, 1770.0).unwrap().with_zone(0.05).unwrap().coverage();
        let near = |coverage: TimerCoverage, circuits: [i64; 3], shares: [f64; 3]| {
            assert_eq!(coverage.never_reached, 0.0);
            assert_eq!(coverage.waits().iter().map(|w| w.circuits).collect::<Vec<_>>(), circuits);
            assert!(coverage.waits().iter().zip(shares).all(|(w, share)| (w.share_of_joints - share).abs() < 1e-12));
        };
        near(oven, [1, 4, 5], [0.001888888888888889, 0.9697777777777777, 0.028333333333333332]);
        near(slat, [20, 59, 79], [0.005555555555555556, 0.9505555555555556, 0.04388888888888889]);
        near(packing, [1, 161, 162], [0.01057, 0.43953, 0.5499]);
    }
}
