//! The wear coefficient averaged over the age of the oil.
//!
//! A joint that has just been oiled hardly wears; one that waits too long runs dry and wears a hundred times faster. The
//! mean over the wait is ruled by that dry tail: it is the mean of K, never K at the mean fill.

use super::coefficient::OiledJoint;
use crate::numeric::GAUSS_LEGENDRE_16;

/// Fill below which a joint counts as dry.
const DRY_FILL: f64 = 1e-5;

/// How the fill of a joint falls between two oilings: φ₀ e^(−k t), t in running seconds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OilAge {
    /// Fill just after oiling, 0..1.
    pub fill: f64,
    /// Loss rate k (1/s), ≥ 0.
    pub loss_rate: f64,
}

impl OilAge {
    /// Mean wear coefficient over a `wait` from one oiling to the next (s): (1/w) ∫ K(φ₀ e^(−k t)) dt.
    ///
    /// A wait of 0 gives K at the fresh fill, an infinite one the dry coefficient. 16-point Gauss-Legendre on equal panels
    /// of at most 2/k, dry below a fill of 1e-5: within 1e-9 of the converged value. Where dust and water push a drying
    /// joint to the greatest coefficient halfway, the kink costs up to 1e-4 (1e-3 in the worst surroundings), far below
    /// what any coefficient is known to.
    pub fn mean_coefficient(&self, joint: &OiledJoint, wait: f64) -> f64 {
        self.mean_over_waits(joint, &[(wait, 1.0)])
    }

    /// Mean over several waits, each (wait in s, its weight); weights add up to 1.
    pub fn mean_over_waits(&self, joint: &OiledJoint, waits: &[(f64, f64)]) -> f64 {
        let mut mean = [0.0];
        self.add_means_over_waits(std::slice::from_ref(joint), waits, &mut mean);
        mean[0]
    }

    /// The same at several places at once, added to `means`: the fill at the nodes is that of all of them.
    pub(super) fn add_means_over_waits(&self, places: &[OiledJoint], waits: &[(f64, f64)], means: &mut [f64]) {
        let until_dry = (self.fill / DRY_FILL).ln();
        let mut until_dry_weight = 0.0;
        for &(wait, weight) in waits {
            let wait = if wait.is_finite() { self.loss_rate * wait } else { f64::INFINITY };
            if wait <= 0.0 {
                add(places, means, |place| weight * place.coefficient(self.fill));
            } else if wait.is_infinite() || until_dry <= 0.0 {
                add(places, means, |place| weight * place.dry_coefficient());
            } else if wait < until_dry {
                self.add_integrals(places, wait, weight / wait, means);
            } else {
                // all waits that outlast the oil share one integral, below
                until_dry_weight += weight / wait;
                add(places, means, |place| weight / wait * (wait - until_dry) * place.dry_coefficient());
            }
        }
        if until_dry_weight > 0.0 {
            self.add_integrals(places, until_dry, until_dry_weight, means);
        }
    }

    /// Adds `factor` ∫ K dx over x = k t from 0 to `end` > 0.
    fn add_integrals(&self, places: &[OiledJoint], end: f64, factor: f64, means: &mut [f64]) {
        let panels = (0.5 * end).ceil();
        let width = end / panels;
        // the fill at a node is that at the start of its panel times the same decay in every panel
        let decay = GAUSS_LEGENDRE_16.map(|(node, weight)| {
            let (early, late) = ((-0.5 * width * (1.0 - node)).exp(), (-0.5 * width * (1.0 + node)).exp());
            (early, late, 0.5 * width * factor * weight)
        });
        let next = (-width).exp();
        let mut fill = self.fill;
        for _ in 0..panels as usize {
            for (early, late, weight) in decay {
                for (place, mean) in places.iter().zip(means.iter_mut()) {
                    *mean += weight * (place.coefficient(fill * early) + place.coefficient(fill * late));
                }
            }
            fill *= next;
        }
    }
}

/// Adds to the mean of each place.
fn add(places: &[OiledJoint], means: &mut [f64], what: impl Fn(&OiledJoint) -> f64) {
    for (place, mean) in places.iter().zip(means) {
        *mean += what(place);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wear::WearCoefficients;
    use proptest::prelude::*;

    const DAY: f64 = 86400.0;

    fn place() -> OiledJoint {
        WearCoefficients::default().law().at(0.2, 20.0)
    }

    /// The same mean by Simpson's rule in many small steps.
    fn in_small_steps(age: OilAge, joint: &OiledJoint, wait: f64) -> f64 {
        let steps = 20_000;
        let at = |i: i32| joint.coefficient(age.fill * (-age.loss_rate * wait * f64::from(i) / f64::from(steps)).exp());
        let inner: f64 = (1..steps).map(|i| if i % 2 == 1 { 4.0 * at(i) } else { 2.0 * at(i) }).sum();
        (at(0) + inner + at(steps)) / (3.0 * f64::from(steps))
    }

    proptest! {
        #[test]
        fn the_mean_is_converged(fill in 0.05..1.0_f64, wait in -3.0..2.0_f64) {
            let (age, wait) = (OilAge { fill, loss_rate: 1.0 / DAY }, DAY * 10f64.powf(wait));
            let joint = place();
            let exact = in_small_steps(age, &joint, wait);
            prop_assert!((age.mean_coefficient(&joint, wait) / exact - 1.0).abs() < 2e-9);
        }

        #[test]
        fn a_longer_wait_wears_more(fill in 0.05..1.0_f64, wait in 0.0..100.0, more in 0.0..100.0) {
            let (age, joint) = (OilAge { fill, loss_rate: 1.0 / DAY }, place());
            let (short, long) = (age.mean_coefficient(&joint, wait * DAY), age.mean_coefficient(&joint, (wait + more) * DAY));
            prop_assert!(long >= short * (1.0 - 1e-9));
        }
    }

    #[test]
    fn no_wait_and_an_endless_one() {
        let (age, joint) = (OilAge { fill: 0.6, loss_rate: 1.0 / DAY }, place());
        let (fresh, dry) = (joint.coefficient(0.6), joint.dry_coefficient());
        assert_eq!(age.mean_coefficient(&joint, 0.0), fresh);
        assert!((age.mean_coefficient(&joint, 1e-9) / fresh - 1.0).abs() < 1e-12);
        assert_eq!(age.mean_coefficient(&joint, f64::INFINITY), dry);
        assert!((age.mean_coefficient(&joint, 1e15 * DAY) / dry - 1.0).abs() < 1e-12);
    }

    #[test]
    fn oil_that_stays_keeps_its_coefficient_and_no_oil_is_dry() {
        let joint = place();
        let (stays, none) = (OilAge { fill: 0.6, loss_rate: 0.0 }, OilAge { fill: 0.0, loss_rate: 1e-5 });
        assert_eq!(stays.mean_coefficient(&joint, 1e9), joint.coefficient(0.6));
        assert_eq!(stays.mean_coefficient(&joint, f64::INFINITY), joint.dry_coefficient());
        assert_eq!(none.mean_coefficient(&joint, DAY), joint.dry_coefficient());
    }

    #[test]
    fn several_waits_are_the_weighted_mean_of_each() {
        let (age, joint) = (OilAge { fill: 0.5, loss_rate: 1.0 / DAY }, place());
        let waits = [(30.0 * DAY, 0.3), (DAY, 0.5), (40.0 * DAY, 0.2)];
        let apart: f64 = waits.iter().map(|&(wait, weight)| weight * age.mean_coefficient(&joint, wait)).sum();
        assert!((age.mean_over_waits(&joint, &waits) / apart - 1.0).abs() < 1e-15);
    }
}
