//! Waits that luck decides: drops that fall between joints, shots that fall on any joint.

use super::manual::ManualRounds;
use crate::error::Result;

/// Three waits that stand for a distribution, each for a third of the visits, and how many joints stand in each.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThreeWaits {
    /// Quantiles 1/6, 1/2 and 5/6 of the time between two visits, s.
    pub wait: [f64; 3],
    /// Share of the reached joints that stand in such a wait at a random moment: in proportion to its length.
    pub weight: [f64; 3],
    /// The wait that one visit in twenty exceeds, s.
    pub worst: f64,
}

impl ThreeWaits {
    /// From the quantiles of a wait. Three equal slices of the visits: closure of our own.
    fn of([early, middle, late, worst]: [f64; 4]) -> ThreeWaits {
        let wait = [early, middle, late];
        let sum: f64 = wait.iter().sum();
        ThreeWaits { wait, weight: wait.map(|one| one / sum), worst }
    }
}

/// The chances that [`ThreeWaits`] stands for.
const CHANCES: [f64; 4] = [1.0 / 6.0, 0.5, 5.0 / 6.0, 0.95];

impl ManualRounds {
    /// Three waits that stand for the distribution of the time between visits, s.
    pub fn three_waits(&self) -> Result<ThreeWaits> {
        Ok(ThreeWaits::of(self.quantiles(CHANCES)?))
    }
}

/// Circuits within which a joint has caught a drop with chance `chance`, when each passage catches one with
/// `pass_chance`.
///
/// 0 < `pass_chance` <= 1, 0 < `chance` < 1; at least 1. Exact for independent passages (geometric distribution); a
/// steady dripper against evenly spaced joints is itself a rotation and can lock.
pub fn drip_wait(pass_chance: f64, chance: f64) -> f64 {
    if pass_chance >= 1.0 {
        return 1.0;
    }
    ((-chance).ln_1p() / (-pass_chance).ln_1p()).ceil().max(1.0)
}

/// Three waits that stand for a dripper on a chain of circuit time `circuit` s; `pass_chance` as in [`drip_wait`].
pub fn drip_waits(circuit: f64, pass_chance: f64) -> Result<ThreeWaits> {
    Ok(ThreeWaits::of(CHANCES.map(|chance| circuit * drip_wait(pass_chance, chance))))
}

/// Expected number of the `joints` that at least one of `shots` random shots has hit.
///
/// Both >= 0, as numbers that may be large. Exact: N (1 − (1 − 1/N)^n), the classical occupancy problem.
pub fn expected_covered(joints: f64, shots: f64) -> f64 {
    if shots == 0.0 || joints == 0.0 {
        return 0.0;
    }
    -joints * (shots * (-1.0 / joints).ln_1p()).exp_m1()
}

/// Expected number of random shots until every one of `joints` joints has had one.
///
/// Exact: N (1 + 1/2 + … + 1/N), the coupon collector's problem (de Moivre).
pub fn shots_to_cover_all(joints: u32) -> f64 {
    f64::from(joints) * (1..=joints).rev().map(|k| 1.0 / f64::from(k)).sum::<f64>()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn drops_on_a_packing_chain() {
        let waits = drip_waits(11.0236, 3.175e-5).unwrap();
        assert!((waits.wait[0] - 5743.0 * 11.0236).abs() < 1e-6);
        assert!((waits.wait[2] - 56_433.0 * 11.0236).abs() < 1e-6);
        assert!((waits.worst - 1_040_109.73).abs() < 0.01);
        assert!((waits.weight.iter().sum::<f64>() - 1.0).abs() < 1e-15);
    }

    #[test]
    fn a_drop_at_every_passage_leaves_one_circuit() {
        assert_eq!((drip_wait(1.0, 0.95), drip_wait(0.99, 0.5)), (1.0, 1.0));
        assert_eq!(drip_waits(60.0, 1.0).unwrap().wait, [60.0; 3]);
    }

    #[test]
    fn geometric_waits_reach_their_chance_just_in_time() {
        for (pass, chance) in [(0.02, 0.5), (0.3, 0.95), (1e-4, 1.0 / 6.0)] {
            let circuits = drip_wait(pass, chance);
            let within = |n: f64| 1.0 - (1.0 - pass).powf(n);
            assert!(within(circuits) >= chance - 1e-12 && within(circuits - 1.0) < chance);
        }
    }

    #[test]
    fn random_shots_on_small_loops() {
        assert_eq!((expected_covered(1.0, 1.0), expected_covered(7.0, 0.0)), (1.0, 0.0));
        assert!((expected_covered(2.0, 2.0) - 1.5).abs() < 1e-15);
        assert_eq!((shots_to_cover_all(1), shots_to_cover_all(2)), (1.0, 3.0));
    }
}
