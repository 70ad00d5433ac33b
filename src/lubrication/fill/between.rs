//! One wait: oil falls exponentially between shots; a shot adds its dose and spills what the joint cannot hold.

use super::JointOil;

/// Below this k t the mean is taken from its limit for k → 0.
const SMALL: f64 = 1e-8;

/// Oil left (m³) after `time` s from `start` m³ at `loss_rate` k (1/s) and constant `uptake` s (m³/s): dV/dt = -k V - s.
pub fn between_shots(start: f64, loss_rate: f64, uptake: f64, time: f64) -> f64 {
    if loss_rate == 0.0 {
        return (start - uptake * time).max(0.0);
    }
    let x = -loss_rate * time;
    let taken = if uptake == 0.0 { 0.0 } else { uptake / loss_rate * x.exp_m1() };
    (start * x.exp() + taken).max(0.0)
}

/// Time mean (m³) of [`between_shots`] over `time` s.
pub fn mean_between_shots(start: f64, loss_rate: f64, uptake: f64, time: f64) -> f64 {
    if time <= 0.0 {
        return start;
    }
    let dry = match (uptake > 0.0, loss_rate > 0.0) {
        (false, _) => f64::INFINITY,
        (true, true) => (loss_rate * start / uptake).ln_1p() / loss_rate,
        (true, false) => start / uptake,
    };
    let wet = time.min(dry);
    let x = loss_rate * wet;
    if x < SMALL {
        return (start * wet - 0.5 * uptake * wet * wet) / time;
    }
    ((start + uptake / loss_rate) * -(-x).exp_m1() / loss_rate - uptake * wet / loss_rate) / time
}

/// A shot on a joint that holds `before` (m³): what it holds afterwards and what overflows.
pub fn at_shot(before: f64, dose: f64, capacity: f64) -> (f64, f64) {
    let offered = before + dose;
    (offered.min(capacity), (offered - capacity).max(0.0))
}

/// A joint that is shot at equal intervals, settled; all m³.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SingleWait {
    /// Oil right after a shot.
    pub after: f64,
    /// Oil right before a shot.
    pub before: f64,
    /// Mean over time.
    pub mean: f64,
    /// Oil that overflows at a shot.
    pub overflow: f64,
}

/// The settled state of a joint that is shot every `wait` s (> 0).
///
/// ```
/// use pinfilm::lubrication::fill::{JointOil, single_wait};
/// let oil = JointOil { dose: 0.2, capacity: 1.0, loss_rate: 2e-6, uptake: 1e-6 };
/// let daily = single_wait(86_400.0, &oil);
/// assert!((daily.after - 0.760286).abs() < 1e-6 && (daily.before - 0.560286).abs() < 1e-6);
/// ```
pub fn single_wait(wait: f64, oil: &JointOil) -> SingleWait {
    let JointOil { dose, capacity, loss_rate, uptake } = *oil;
    let lost = -(-loss_rate * wait).exp_m1();
    let settled = if loss_rate == 0.0 {
        if dose >= uptake * wait && dose > 0.0 { capacity } else { dose.min(capacity) }
    } else {
        (dose / lost - uptake / loss_rate).min(capacity)
    };
    // a joint that runs dry before the next shot starts from the dose alone
    let dry = uptake > 0.0 && between_shots(settled.max(0.0), loss_rate, uptake, wait) == 0.0;
    let after = if dry { dose.min(capacity) } else { settled };
    let before = between_shots(after, loss_rate, uptake, wait);
    let (_, overflow) = at_shot(before, dose, capacity);
    SingleWait { after, before, mean: mean_between_shots(after, loss_rate, uptake, wait), overflow }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn oil_is_conserved(wait in 1e2..1e6f64, dose in 1e-3..2.0f64, rate in 1e-8..1e-4f64, uptake in 0.0..1e-6f64) {
            let oil = JointOil { dose, capacity: 1.0, loss_rate: rate, uptake };
            let s = single_wait(wait, &oil);
            prop_assert!(s.before >= 0.0 && s.after <= 1.0 && s.before <= s.mean && s.mean <= s.after);
            prop_assert!((s.before + dose - s.overflow - s.after).abs() < 1e-12);
            if uptake == 0.0 {
                let lost = rate * s.mean * wait;
                prop_assert!((dose - s.overflow - lost).abs() < 1e-12 + 1e-9 * dose);
            }
        }

        #[test]
        fn mean_is_that_of_many_pieces(start in 0.1..1.0f64, rate in 1e-9..1e-4f64, uptake in 0.0..1e-5f64) {
            let (time, pieces) = (2e4, 4000);
            let dt = time / f64::from(pieces);
            let sum: f64 = (0..pieces).map(|i| between_shots(start, rate, uptake, (f64::from(i) + 0.5) * dt)).sum();
            let ours = mean_between_shots(start, rate, uptake, time);
            prop_assert!((sum / f64::from(pieces) - ours).abs() < 1e-6);
        }
    }

    #[test]
    fn no_loss_means_full() {
        let oil = JointOil { dose: 0.1, capacity: 1.0, loss_rate: 0.0, uptake: 0.0 };
        assert_eq!(
            single_wait(3600.0, &oil),
            SingleWait { after: 1.0, before: 1.0, mean: 1.0, overflow: 0.10000000000000009 }
        );
        assert_eq!(single_wait(3600.0, &JointOil { dose: 0.0, ..oil }).after, 0.0);
    }
}
