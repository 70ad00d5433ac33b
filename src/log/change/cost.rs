//! What it costs to call a stretch of a log one segment.

/// What a segment is taken to have of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cost {
    /// Its mean; the spread is the same all along. The cost is the sum of squares about the mean.
    Mean,
    /// Its mean and its variance v. The cost is m ln v, m readings, v not below 1e-12 of the variance of the whole log.
    MeanVariance,
}

/// Smallest variance that a segment is credited with, as a share of that of the log: a stuck clamp is not infinitely good.
const LEAST_VARIANCE: f64 = 1e-12;

/// Running sums of a log, each in two words: the sum and what rounding left out of it.
///
/// The sums of a million readings would otherwise swamp the spread of a short quiet segment.
#[derive(Clone, Copy, Default)]
struct Sums {
    first: (f64, f64),
    square: (f64, f64),
}

/// Adds with the rounding error carried along. Source: Knuth, two-sum.
fn add(sum: (f64, f64), value: f64) -> (f64, f64) {
    let whole = sum.0 + value;
    let part = whole - sum.0;
    let error = (sum.0 - (whole - part)) + (value - part);
    (whole, sum.1 + error)
}

/// Costs of all segments of a log.
pub(super) struct Segments {
    sums: Vec<Sums>,
    /// Smallest variance, and its logarithm.
    least: f64,
    ln_least: f64,
}

impl Segments {
    /// Of `readings`, whose mean is taken off first so that squares do not cancel.
    pub fn of(readings: &[f64]) -> Self {
        let mean = crate::log::statistics::mean(readings);
        let mut running = Sums::default();
        let mut sums = Vec::with_capacity(readings.len() + 1);
        sums.push(running);
        for reading in readings {
            let d = reading - mean;
            running = Sums { first: add(running.first, d), square: add(running.square, d * d) };
            sums.push(running);
        }
        let variance = (running.square.0 + running.square.1) / readings.len() as f64;
        let least = (LEAST_VARIANCE * variance).max(f64::MIN_POSITIVE);
        Segments { sums, least, ln_least: least.ln() }
    }

    /// Sum of squares of readings `from..to` about their mean; `from` < `to`.
    #[inline(always)]
    pub fn squares(&self, from: usize, to: usize) -> f64 {
        let (a, b) = (&self.sums[from], &self.sums[to]);
        let first = (b.first.0 - a.first.0) + (b.first.1 - a.first.1);
        let square = (b.square.0 - a.square.0) + (b.square.1 - a.square.1);
        (square - first * first / (to - from) as f64).max(0.0)
    }

    /// Cost of the segment `from..to`; `from` < `to`.
    #[inline(always)]
    pub fn cost(&self, cost: Cost, from: usize, to: usize) -> f64 {
        let squares = self.squares(from, to);
        match cost {
            Cost::Mean => squares,
            Cost::MeanVariance => {
                let count = (to - from) as f64;
                count * (squares / count).max(self.least).ln()
            }
        }
    }

    /// A floor under the cost that adds up: floor(a, b) + floor(b, c) ≤ cost(a, c). Nothing for an empty stretch.
    ///
    /// It is the least of a sum over readings, of squares about one level, or of ln v + squares/v − 1 with one v not
    /// below the least variance; so it cannot fall when two stretches must share level and variance. It is the cost
    /// itself except where the variance is below the least.
    #[inline(always)]
    pub fn floor(&self, cost: Cost, from: usize, to: usize) -> f64 {
        if from == to {
            return 0.0;
        }
        let squares = self.squares(from, to);
        match cost {
            Cost::Mean => squares,
            Cost::MeanVariance => {
                let count = (to - from) as f64;
                let variance = squares / count;
                if variance >= self.least {
                    count * variance.ln()
                } else {
                    count * (self.ln_least - 1.0 + variance / self.least)
                }
            }
        }
    }

    /// Cost per reading below which no segment goes.
    pub fn least_per_reading(&self, cost: Cost) -> f64 {
        match cost {
            Cost::Mean => 0.0,
            Cost::MeanVariance => self.ln_least,
        }
    }

    /// A bound on the size of any cost, for judging rounding.
    pub fn size(&self, cost: Cost) -> f64 {
        let n = self.sums.len() - 1;
        match cost {
            Cost::Mean => self.squares(0, n),
            Cost::MeanVariance => {
                n as f64 * (self.ln_least.abs() + (self.squares(0, n) / n as f64).max(self.least).ln().abs())
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn floor_adds_up_below_the_cost(
            log in prop::collection::vec(prop_oneof![Just(1.0), Just(1.0 + 1e-7), -3.0..3.0f64], 3..30),
            at in (0usize..30, 0usize..30, 0usize..30),
        ) {
            let segments = Segments::of(&log);
            let mut at = [at.0 % (log.len() + 1), at.1 % (log.len() + 1), at.2 % (log.len() + 1)];
            at.sort_unstable();
            prop_assume!(at[0] < at[2]);
            for cost in [Cost::Mean, Cost::MeanVariance] {
                let parts = segments.floor(cost, at[0], at[1]) + segments.floor(cost, at[1], at[2]);
                let whole = segments.cost(cost, at[0], at[2]);
                prop_assert!(parts <= whole + 1e-9 * (1.0 + whole.abs()), "{} {}", parts, whole);
                let least = segments.least_per_reading(cost) * (at[2] - at[0]) as f64;
                prop_assert!(least <= whole + 1e-9 * whole.abs());
            }
        }
    }

    #[test]
    fn a_quiet_stretch_keeps_its_spread_beside_a_loud_one() {
        let mut log: Vec<f64> = (0..100_000).map(|t| if t % 2 == 0 { 1000.0 } else { -1000.0 }).collect();
        log.extend([5.0 + 1e-4, 5.0 - 1e-4].repeat(5));
        let squares = Segments::of(&log).squares(100_000, 100_010);
        assert!((squares - 10.0 * 1e-8).abs() < 1e-10, "{squares}");
    }
}
