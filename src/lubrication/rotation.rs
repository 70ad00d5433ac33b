//! A timer against a running loop: a joint's phase steps round the timer's circle, in whole ticks.
//!
//! The timer is a circle of `period` ticks; a joint that passes at phase `x < run` is shot. The steps after which a
//! shot joint is shot again are given by Slater's gap theorem: `n1` circuits forward by `d1` ticks, `n2` circuits
//! back by `d2`, or both together. Whoever computes coverage fills this in; the walk over fills reads it.
//! Source: Slater 1967, "Gaps and steps for the sequence nθ mod 1", Proc. Camb. Phil. Soc. 63, 1115.

use super::coverage::{Slater, Timer};

/// The rotation that a timer makes against the circuit, in integer ticks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rotation {
    /// Least number of circuits after which a joint returns less than `run` ticks later in the timer's phase.
    pub n1: i64,
    /// That advance, ticks.
    pub d1: i64,
    /// Least number of circuits after which a joint returns less than `run` ticks earlier.
    pub n2: i64,
    /// That retreat, ticks.
    pub d2: i64,
    /// Ticks of a period in which a passing joint is shot.
    pub run: i64,
    /// Ticks of a whole period (run and dwell).
    pub period: i64,
    /// Greatest common divisor of circuit and period, ticks; phases of one joint lie this far apart.
    pub cell: i64,
}

/// One wait between shots: how many circuits, and for how many ticks of the run.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Wait {
    /// Circuits from one shot to the next.
    pub circuits: i64,
    /// Ticks of the run whose joints wait so long; 0 = this wait does not occur.
    pub ticks: i64,
}

impl Rotation {
    /// A timer that never stops: every joint is shot each circuit.
    pub fn continuous(&self) -> bool {
        self.run == self.period
    }

    /// A timer that meets the same joints for ever: one shot every [`Self::circuits_to_repeat`], the others none.
    pub fn locked(&self) -> bool {
        !self.continuous() && self.run <= self.cell
    }

    /// Circuits after which the phase of a joint repeats.
    pub fn circuits_to_repeat(&self) -> i64 {
        self.period / self.cell
    }

    /// Share of the joints that no shot ever meets: 1 - run/cell if locked, else 0.
    pub fn never_reached(&self) -> f64 {
        if self.locked() { (self.cell - self.run) as f64 / self.cell as f64 } else { 0.0 }
    }

    /// The one to three waits: n1, n2 and both together; `n1`…`d2` are not read if locked or continuous.
    pub fn waits(&self) -> [Wait; 3] {
        let none = Wait::default();
        if self.continuous() {
            return [Wait { circuits: 1, ticks: self.run }, none, none];
        }
        if self.locked() {
            return [Wait { circuits: self.circuits_to_repeat(), ticks: self.run }, none, none];
        }
        [
            Wait { circuits: self.n1, ticks: self.run - self.d1 },
            Wait { circuits: self.n2, ticks: self.run - self.d2 },
            Wait { circuits: self.n1 + self.n2, ticks: self.d1 + self.d2 - self.run },
        ]
    }

    /// Share of the joints that stand in such a wait at a random moment (with [`Self::never_reached`] it sums to 1).
    pub fn share_of_joints(&self, wait: Wait) -> f64 {
        wait.circuits as f64 * wait.ticks as f64 / self.period as f64
    }

    /// Share of the shots that are followed by this wait.
    pub fn share_of_shots(&self, wait: Wait) -> f64 {
        wait.ticks as f64 / self.run as f64
    }

    /// Circuits between shots in the mean over the shots.
    pub fn mean_wait(&self) -> f64 {
        if self.locked() { self.circuits_to_repeat() as f64 } else { self.period as f64 / self.run as f64 }
    }

    /// The longest wait that occurs, circuits.
    pub fn worst_wait(&self) -> i64 {
        self.waits().iter().filter(|wait| wait.ticks > 0).map(|wait| wait.circuits).max().unwrap_or(1)
    }
}

impl From<&Timer> for Rotation {
    fn from(timer: &Timer) -> Self {
        let Timer { run, period, .. } = *timer;
        // without two returns the timer is locked or never stops, and they are not read
        let Slater { n1, d1, n2, d2, .. } = Slater::first_returns(timer.step(), run, period).unwrap_or(Slater {
            n1: 1,
            d1: 0,
            n2: 1,
            d2: 0,
            run,
            period,
        });
        Rotation { n1, d1, n2, d2, run, period, cell: timer.cell() }
    }
}

/// The rotation of a timer in ticks, for tests.
#[cfg(test)]
pub(crate) fn of_timer(circuit: i64, run: i64, dwell: i64) -> Rotation {
    Rotation::from(&Timer::from_ticks(circuit, run, dwell).unwrap())
}

#[cfg(test)]
mod tests {
    use super::of_timer;

    #[test]
    fn joints_and_shots_add_up() {
        for (circuit, run, dwell) in [(1200, 600, 3000), (126, 120, 1680), (1240, 900, 27900), (600, 600, 0), (5, 7, 4)]
        {
            let rotation = of_timer(circuit, run, dwell);
            let joints: f64 = rotation.waits().iter().map(|&w| rotation.share_of_joints(w)).sum();
            let shots: f64 = rotation.waits().iter().map(|&w| rotation.share_of_shots(w)).sum();
            assert!((joints + rotation.never_reached() - 1.0).abs() < 1e-15, "{circuit} {joints}");
            assert!((shots - 1.0).abs() < 1e-15, "{circuit} {shots}");
        }
    }
}
