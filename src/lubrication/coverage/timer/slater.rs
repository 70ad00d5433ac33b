//! First returns of a rotation: after how many circuits a joint shot at a given phase is shot again.

/// The two shortest returns into the run of a timer, from which all waits follow.
///
/// A joint moves on by a fixed phase each circuit. `n1` is the least number of circuits after which it has moved
/// forward by less than the run (by `d1` ticks), `n2` the least after which it has moved back by less than the run
/// (by `d2`). A joint shot at phase x of a run R is shot again
///
/// - after `n1` circuits, at x + d1, if x < R − d1;
/// - after `n2` circuits, at x − d2, if x >= d2;
/// - after `n1 + n2` circuits, at x + d1 − d2, otherwise.
///
/// Source: N. B. Slater, Proc. Camb. Phil. Soc. 63 (1967) 1115, gap theorem. d1 + d2 >= R, or |n1 − n2| would be an
/// earlier return.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Slater {
    /// Circuits of the shortest forward return.
    pub n1: i64,
    /// Forward step of it, ticks.
    pub d1: i64,
    /// Circuits of the shortest backward return.
    pub n2: i64,
    /// Backward step of it, ticks.
    pub d2: i64,
    /// The run that is returned into, ticks.
    pub run: i64,
    /// The period of the timer, ticks.
    pub period: i64,
}

impl Slater {
    /// The two shortest returns into `run`, all in ticks; `None` if the chain is locked, that is if `run` is not longer
    /// than the greatest common divisor of `step` and `period`.
    ///
    /// `step`: phase gained in a circuit, 0 <= step < period; 0 < run < period. Takes about as many divisions as
    /// Euclid's algorithm on the two: the records of a rotation are its convergents and the fractions between them, and
    /// a full step of Euclid is cut short at the first record inside the run.
    pub fn first_returns(step: i64, run: i64, period: i64) -> Option<Slater> {
        let (mut n1, mut d1, mut n2, mut d2) = (1, step, 0, period);
        while d1 >= run || d2 >= run {
            if d1 == 0 || d2 == 0 {
                return None; // a record of nothing: the phase has come full circle before it came inside the run
            }
            if d2 >= d1 {
                let mut times = d2 / d1;
                if d2 >= run {
                    times = times.min((d2 - run) / d1 + 1);
                }
                d2 -= times * d1;
                n2 += times * n1;
            } else {
                let mut times = d1 / d2;
                if d1 >= run {
                    times = times.min((d1 - run) / d2 + 1);
                }
                d1 -= times * d2;
                n1 += times * n2;
            }
        }
        (d1 > 0 && d2 > 0).then_some(Slater { n1, d1, n2, d2, run, period })
    }

    /// The next wait in circuits of a joint shot at phase `x` (ticks, 0 <= x < run), and the phase of the next shot.
    pub fn next(&self, x: i64) -> (i64, i64) {
        if x < self.run - self.d1 {
            (self.n1, x + self.d1)
        } else if x >= self.d2 {
            (self.n2, x - self.d2)
        } else {
            (self.n1 + self.n2, x + self.d1 - self.d2)
        }
    }

    /// Waits in circuits and the length in ticks of the phases from which each follows; a length may be zero.
    pub fn waits(&self) -> [(i64, i64); 3] {
        [
            (self.n1, self.run - self.d1),
            (self.n2, self.run - self.d2),
            (self.n1 + self.n2, self.d1 + self.d2 - self.run),
        ]
    }

    /// The longest wait, circuits.
    pub fn worst(&self) -> i64 {
        if self.d1 + self.d2 > self.run { self.n1 + self.n2 } else { self.n1.max(self.n2) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lubrication::coverage::gcd;

    #[test]
    fn the_interval_exchange_walks_like_the_chain() {
        for period in 2..60_i64 {
            for step in 0..period {
                for run in gcd(step, period) + 1..period {
                    let slater = Slater::first_returns(step, run, period).unwrap();
                    for x in 0..run {
                        let mut phase = x;
                        let mut circuits = 0;
                        loop {
                            phase = (phase + step) % period;
                            circuits += 1;
                            if phase < run {
                                break;
                            }
                        }
                        assert_eq!(slater.next(x), (circuits, phase), "{slater:?} from {x}");
                    }
                }
            }
        }
    }

    #[test]
    fn a_locked_chain_has_no_three_waits() {
        for (step, run, period) in [(0, 1, 10), (5, 5, 10), (5, 1, 10), (4, 2, 6), (3, 1, 7)] {
            assert_eq!(Slater::first_returns(step, run, period), None, "{step} {run} {period}");
        }
    }
}
