//! A run of equal waits crossed in closed form: fill, sums, overflow and lowest fill of many shots at once.
//!
//! Between shots V falls to e V - c, a shot adds the dose and the capacity caps it, so V_i = V e^i + b (1 - e^i)/(1 - e)
//! until the cap is met, with b = dose - c.

use super::{JointOil, at_shot, between_shots, mean_between_shots};

/// Up to so many waits are crossed one by one where the cap is met: cheaper than logarithms.
const FEW: f64 = 8.0;
/// Below this k W m the second sum is taken from its series, as its difference loses digits.
const SMALL: f64 = 1e-5;

/// `waits` equal waits between shots, prepared for one joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Block {
    oil: JointOil,
    wait: f64,
    waits: f64,
    /// k W.
    decay: f64,
    /// e = exp(-k W) and 1 - e.
    left: f64,
    lost: f64,
    /// (1 - e)/k: the time for which a full joint's oil counts in the integral of one wait.
    life: f64,
    /// Constant loss of a wait, and dose less that.
    drained: f64,
    gain: f64,
    /// e^m and e^(m-1).
    left_all: f64,
    left_last: f64,
    /// Sums over i < m of e^i, over i < m - 1 of e^i, and over i < m of (1 - e^i)/(1 - e).
    sum: f64,
    sum_last: f64,
    sum_gain: f64,
}

/// What a walk over blocks adds up. Volumes as in [`JointOil`], times s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Totals {
    /// Shots.
    pub shots: f64,
    /// Time.
    pub time: f64,
    /// Sum of the fills right after each shot.
    pub after: f64,
    /// Integral of the fill over time.
    pub integral: f64,
    /// Oil that overflowed.
    pub overflow: f64,
    /// Lowest fill right before a shot.
    pub lowest: f64,
}

impl Totals {
    /// Nothing yet.
    pub const NONE: Totals =
        Totals { shots: 0.0, time: 0.0, after: 0.0, integral: 0.0, overflow: 0.0, lowest: f64::INFINITY };

    /// Adds another walk's.
    pub(super) fn join(&mut self, other: &Totals) {
        self.shots += other.shots;
        self.time += other.time;
        self.after += other.after;
        self.integral += other.integral;
        self.overflow += other.overflow;
        self.lowest = self.lowest.min(other.lowest);
    }
}

impl Block {
    /// Prepares `waits` (>= 1) waits of `wait` s each.
    pub fn new(wait: f64, waits: i64, oil: &JointOil) -> Self {
        let decay = oil.loss_rate * wait;
        let m = waits as f64;
        let (left, lost) = ((-decay).exp(), -(-decay).exp_m1());
        let life = if oil.loss_rate > 0.0 { lost / oil.loss_rate } else { wait };
        let drained = if oil.uptake > 0.0 { oil.uptake * life } else { 0.0 };
        let one = Block {
            oil: *oil,
            wait,
            waits: m,
            decay,
            left,
            lost,
            life,
            drained,
            gain: oil.dose - drained,
            left_all: left,
            left_last: 1.0,
            sum: 1.0,
            sum_last: 0.0,
            sum_gain: 0.0,
        };
        if waits == 1 {
            return one;
        }
        let geometric = |n: f64| if lost > 0.0 { -(-n * decay).exp_m1() / lost } else { n };
        let sum = geometric(m);
        let sum_gain =
            if m * decay < SMALL { 0.5 * m * (m - 1.0) * (1.0 - decay * (m - 2.0) / 3.0) } else { (m - sum) / lost };
        Block {
            left_all: (-m * decay).exp(),
            left_last: (-(m - 1.0) * decay).exp(),
            sum,
            sum_last: geometric(m - 1.0),
            sum_gain,
            ..one
        }
    }

    /// k times the time the block takes.
    pub(super) fn decay_of_all(&self) -> f64 {
        self.waits * self.decay
    }

    /// The block as V → min(capacity, A V + B), with (A, B); exact if nothing is drained at a constant rate.
    pub(super) fn map(&self) -> (f64, f64) {
        (self.left_all, self.gain * self.sum)
    }

    /// Time the block takes.
    pub(super) fn time(&self) -> f64 {
        self.waits * self.wait
    }

    /// The sum of the fills after each shot as A V + B, if the cap is not met, with (A, B).
    pub(super) fn after(&self) -> (f64, f64) {
        (self.sum, self.gain * self.sum_gain)
    }

    /// The time for which the fill after a shot counts in the integral, if nothing is drained at a constant rate.
    pub(super) fn life(&self) -> f64 {
        self.life
    }

    /// Lowest fill right before a shot, if neither cap nor bottom is met before the last.
    pub(super) fn lowest_free(&self, start: f64) -> f64 {
        self.left * start.min(start * self.left_last + self.gain * self.sum_last) - self.drained
    }

    /// Crosses the block from `start`, the fill after the shot that opens it; adds to `totals` and returns the fill after
    /// the shot that ends it.
    #[inline]
    pub fn cross(&self, start: f64, totals: &mut Totals) -> f64 {
        self.cross_free(start, totals).unwrap_or_else(|| self.cross_capped_or_dry(start, totals))
    }

    /// [`Self::cross`] where neither cap nor bottom is met before the last shot; else `None` and nothing is added.
    #[inline]
    pub(super) fn cross_free(&self, start: f64, totals: &mut Totals) -> Option<f64> {
        let last = start * self.left_last + self.gain * self.sum_last;
        let lowest = self.left * start.min(last) - self.drained;
        if last > self.oil.capacity || lowest < 0.0 {
            return None;
        }
        let offered = self.left * last + self.gain;
        self.add(start * self.sum + self.gain * self.sum_gain, lowest, totals);
        totals.overflow += (offered - self.oil.capacity).max(0.0);
        Some(offered.min(self.oil.capacity))
    }

    /// Adds the block's shots with `after`, the sum of the fills after each.
    #[inline]
    fn add(&self, after: f64, lowest: f64, totals: &mut Totals) {
        totals.shots += self.waits;
        totals.time += self.waits * self.wait;
        totals.after += after;
        totals.integral += after * self.life;
        if self.drained > 0.0 {
            totals.integral -= self.waits * self.oil.uptake * self.missing();
        }
        totals.lowest = totals.lowest.min(lowest);
    }

    /// (W - (1 - e)/k)/k: what a unit of constant loss takes from the integral of one wait.
    fn missing(&self) -> f64 {
        if self.decay < SMALL {
            self.wait * self.wait * (0.5 - self.decay / 6.0)
        } else {
            (self.wait - self.life) / self.oil.loss_rate
        }
    }

    /// [`Self::cross`] where the joint is full, or dry, before the block ends.
    #[cold]
    pub(super) fn cross_capped_or_dry(&self, start: f64, totals: &mut Totals) -> f64 {
        let JointOil { dose, capacity, .. } = self.oil;
        let last_uncapped = start * self.left_last + self.gain * self.sum_last;
        let lowest = self.left * start.min(last_uncapped) - self.drained;
        if lowest < 0.0 {
            return self.cross_dry(start, totals);
        }
        if self.waits <= FEW {
            return self.cross_singly(start, lowest, totals);
        }
        // j shots until the cap holds for good: V e^j + (b/a)(1 - e^j) >= capacity
        let short = capacity - start;
        let steps = if short <= 0.0 {
            0.0
        } else if self.decay > 0.0 {
            ((self.lost * short / (self.gain - self.lost * capacity)).ln_1p() / self.decay).ceil()
        } else {
            (short / self.gain).ceil()
        };
        let j = steps.clamp(0.0, self.waits);
        let held = self.waits - j;
        let mut after = held * capacity;
        totals.overflow += held * (dose - capacity * self.lost - self.drained).max(0.0);
        let mut last = capacity;
        if j > 0.0 {
            // e^(j-1) and the sums up to there and up to j
            let left = (-(j - 1.0) * self.decay).exp();
            let before = if self.lost > 0.0 { -(-(j - 1.0) * self.decay).exp_m1() / self.lost } else { j - 1.0 };
            let sum = before + left;
            let sum_gain = if j * self.decay < SMALL {
                0.5 * j * (j - 1.0) * (1.0 - self.decay * (j - 2.0) / 3.0)
            } else {
                (j - sum) / self.lost
            };
            after += start * sum + self.gain * sum_gain;
            let below = start * left + self.gain * before;
            totals.overflow += (self.left * below + self.gain - capacity).max(0.0);
            if held == 0.0 {
                last = below;
            }
        }
        self.add(after, lowest, totals);
        (self.left * last + self.gain).min(capacity)
    }

    /// One wait at a time, where a short block meets the cap and does not run dry.
    fn cross_singly(&self, start: f64, lowest: f64, totals: &mut Totals) -> f64 {
        let (mut fill, mut after) = (start, 0.0);
        for _ in 0..self.waits as usize {
            after += fill;
            let (next, overflow) = at_shot(self.left * fill - self.drained, self.oil.dose, self.oil.capacity);
            totals.overflow += overflow;
            fill = next;
        }
        self.add(after, lowest, totals);
        fill
    }

    /// One wait at a time, where the joint runs dry; stops as soon as the fill repeats.
    fn cross_dry(&self, start: f64, totals: &mut Totals) -> f64 {
        let JointOil { dose, capacity, loss_rate, uptake } = self.oil;
        let mut fill = start;
        let mut to_go = self.waits;
        while to_go > 0.0 {
            let before = between_shots(fill, loss_rate, uptake, self.wait);
            let (after, overflow) = at_shot(before, dose, capacity);
            let times = if after == fill { to_go } else { 1.0 };
            totals.shots += times;
            totals.time += times * self.wait;
            totals.after += times * fill;
            totals.integral += times * self.wait * mean_between_shots(fill, loss_rate, uptake, self.wait);
            totals.overflow += times * overflow;
            totals.lowest = totals.lowest.min(before);
            to_go -= times;
            fill = after;
        }
        fill
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_block_is_its_single_waits(
            start in 0.0..1.0f64, wait in 1.0..1e5f64, waits in 1..400i64, dose in 0.0..0.5f64,
            rate in prop_oneof![Just(0.0), 1e-9..1e-4f64], uptake in prop_oneof![Just(0.0), 1e-9..1e-5f64],
        ) {
            let oil = JointOil { dose, capacity: 1.0, loss_rate: rate, uptake };
            let (mut at_once, mut singly) = (Totals::NONE, Totals::NONE);
            let end = Block::new(wait, waits, &oil).cross(start, &mut at_once);
            let single = Block::new(wait, 1, &oil);
            let mut fill = start;
            for _ in 0..waits {
                fill = single.cross(fill, &mut singly);
            }
            prop_assert!((end - fill).abs() < 1e-10, "{end} {fill}");
            prop_assert!((at_once.after - singly.after).abs() < 1e-9 * (1.0 + singly.after));
            prop_assert!((at_once.integral - singly.integral).abs() < 1e-9 * (1.0 + singly.integral));
            prop_assert!((at_once.overflow - singly.overflow).abs() < 1e-9 * (1.0 + singly.overflow));
            prop_assert!((at_once.lowest - singly.lowest).abs() < 1e-10);
            prop_assert!((at_once.time / singly.time - 1.0).abs() < 1e-12);
        }
    }
}
