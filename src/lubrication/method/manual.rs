//! Manual: someone goes round with brush or can, not quite regularly, and misses a joint now and then.
//!
//! How long a joint waits says [`crate::lubrication::coverage::ManualRounds`].

/// Manual rounds, as a joint sees them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Manual {
    /// Mean time between rounds, s of running time.
    pub interval: f64,
    /// Chance that a round misses a joint, 0 to below 1.
    pub missed: f64,
    /// Oil into a joint at a round that does not miss it, m³.
    pub dose: f64,
    /// Mean of exp(-k t) over the intervals t between visits of a joint.
    pub kept: f64,
}

impl Manual {
    /// Mean time between visits of a joint, s of running time.
    pub fn mean_interval(&self) -> f64 {
        self.interval / (1.0 - self.missed)
    }

    /// Mean fill right after a visit (share of `capacity`, m³), at most 1. Exact without overflow.
    pub fn fill_after(&self, capacity: f64) -> f64 {
        (self.dose / (capacity * (1.0 - self.kept))).min(1.0)
    }

    /// Mean fill of the joints that are reached. Closure of our own where some visits overflow.
    pub fn mean_fill(&self, loss_rate: f64, capacity: f64) -> f64 {
        self.fill_after(capacity) * self.mean_if_filled(loss_rate)
    }

    /// Mean fill if every visit filled the joint. Exact.
    pub fn mean_if_filled(&self, loss_rate: f64) -> f64 {
        (1.0 - self.kept) / (loss_rate * self.mean_interval())
    }

    /// Fill before a visit that comes after `interval` s (usually the 95 % quantile).
    pub fn fill_before(&self, loss_rate: f64, capacity: f64, interval: f64) -> f64 {
        self.fill_after(capacity) * (-loss_rate * interval).exp()
    }

    /// Oil applied (m³/s of running time): `given` m³ a joint and round on `joints` joints (all strands) within reach.
    pub fn applied(given: f64, joints: f64, interval: f64) -> f64 {
        given * joints / interval
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn regular_visits_are_a_single_wait() {
        let (k, wait): (f64, f64) = (2e-6, 86400.0);
        let manual = Manual { interval: wait, missed: 0.0, dose: 0.05, kept: (-k * wait).exp() };
        let oil = crate::lubrication::fill::JointOil { dose: 0.05, capacity: 1.0, loss_rate: k, uptake: 0.0 };
        let single = crate::lubrication::fill::single_wait(wait, &oil);
        assert!((manual.fill_after(1.0) - single.after).abs() < 1e-14);
        assert!((manual.mean_fill(k, 1.0) - single.mean).abs() < 1e-14);
        assert!((manual.fill_before(k, 1.0, wait) - single.before).abs() < 1e-14);
    }
}
