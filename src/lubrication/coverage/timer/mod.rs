//! A timer's run and dwell against the circuit of the chain: who is reached, who never, after how long.
//!
//! Seconds become whole ticks here, and stay so until a share or a mean is asked for.

mod joints; // whole joints instead of shares; several points on one timer
mod slater; // first returns of a rotation in logarithmic time
mod ticks; // seconds to whole ticks
mod waits; // what follows for the joints: waits, shares, ages

pub use joints::{
    PointsCoverage, coverage_of_points, never_reached_of_points, reached_joints, reached_joints_of_points,
};
pub use slater::Slater;
pub use ticks::{LONGEST_TICKS, TICKS_PER_SECOND, gcd, ticks};
pub use waits::{Pattern, TimerCoverage, Wait};

use super::counter::every_nth;
use crate::error::{Code, Error, Result};
use ticks::too_long;

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
        TimerCoverage::of(*self)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

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
    fn a_zone_lengthens_the_run_up_to_the_period() {
        let timer = Timer::new(180.0, 60.0, 3540.0).unwrap();
        assert_eq!(timer.with_zone(1.0).unwrap().run, 61_000);
        assert_eq!(timer.with_zone(1e5).unwrap().coverage().worst_wait(), 1);
    }
}
