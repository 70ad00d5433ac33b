//! Fill by age: a reached joint holds φ0 exp(-k t) at time t after its shot, and what friction makes of that.
//!
//! Boundary friction rises steeply as the last oil goes, so that friction averaged over the ages of the joints is not
//! friction at the mean fill. The effective fill is the one fill that has the average friction.

use crate::numeric::exponential_integral::{entire_part, from_logarithm};

/// Below this, age integrals are taken by quadrature instead of a difference that loses digits.
const SMALL: f64 = 0.1;

/// A wait (s) between shots and the share of the reached joints that stand in it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Waiting {
    /// Time between shots, s.
    pub wait: f64,
    /// Share of the reached joints, 0 to 1; shares sum to 1.
    pub weight: f64,
}

/// Fill (share of the capacity) against time since the shot, and how the joints are spread over their waits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AgeLaw<'a> {
    /// Fill at age 0, at most 1.
    pub start: f64,
    /// Loss rate, 1/s.
    pub loss_rate: f64,
    /// The waits of the reached joints.
    pub waits: &'a [Waiting],
}

/// Mean of exp(-x) over x from 0 to `decay`.
fn mean_kept(decay: f64) -> f64 {
    if decay > 0.0 { -(-decay).exp_m1() / decay } else { 1.0 }
}

impl<'a> AgeLaw<'a> {
    /// The law that has the mean fill `mean` of the reached joints (closure of our own: one start for all waits).
    pub fn with_mean(mean: f64, loss_rate: f64, waits: &'a [Waiting]) -> Self {
        let kept: f64 = waits.iter().map(|w| w.weight * mean_kept(loss_rate * w.wait)).sum();
        let start = if kept > 0.0 { (mean / kept).min(1.0) } else { 0.0 };
        AgeLaw { start, loss_rate, waits }
    }

    /// Fill at age `time` s.
    pub fn fill(&self, time: f64) -> f64 {
        self.start * (-self.loss_rate * time).exp()
    }

    /// The fill that has the boundary friction averaged over ages and waits.
    ///
    /// `boundary_fill` f0 is the fill at which a boundary layer has formed by 1 - 1/e: friction goes as exp(-fill/f0).
    /// Closed form of -f0 ln ⟨exp(-fill/f0)⟩ in exponential integrals: exact in the boundary regime. Closure of our own.
    /// Where dry and boundary friction are equal any fill has that friction: take the mean fill instead.
    pub fn effective_fill(&self, boundary_fill: f64) -> f64 {
        let x = self.start / boundary_fill;
        if x <= 0.0 {
            return 0.0;
        }
        // For a thin fill nearly all is dry: sum what is not, to keep its digits.
        let sum = |part: fn(f64, f64) -> f64| -> f64 {
            self.waits.iter().filter(|w| w.weight > 0.0).map(|w| w.weight * part(x, self.loss_rate * w.wait)).sum()
        };
        let ln = if x <= 1.0 { (-sum(not_dry)).ln_1p() } else { sum(dry).ln() };
        -boundary_fill * ln
    }
}

/// Mean over t from 0 to 1 of g(x exp(-a t)), 3-point Gauss-Legendre: for a slow decay a.
fn mean_slow(x: f64, a: f64, g: fn(f64) -> f64) -> f64 {
    let at = |t: f64| g(x * (-a * t).exp());
    let off = 0.5 * 0.6f64.sqrt();
    (5.0 * (at(0.5 - off) + at(0.5 + off)) + 8.0 * at(0.5)) / 18.0
}

/// Mean over a wait of exp(-x exp(-a t)), t from 0 to 1: [E1(x exp(-a)) - E1(x)]/a.
fn dry(x: f64, a: f64) -> f64 {
    if a * (1.0 + x) < SMALL {
        return mean_slow(x, a, |y| (-y).exp());
    }
    let ln_x = x.ln();
    (from_logarithm(x * (-a).exp(), ln_x - a) - from_logarithm(x, ln_x)) / a
}

/// 1 - [`dry`], for x <= 1: [Ein(x) - Ein(x exp(-a))]/a.
fn not_dry(x: f64, a: f64) -> f64 {
    if a * (1.0 + x) < SMALL {
        return mean_slow(x, a, |y| -(-y).exp_m1());
    }
    (entire_part(x) - entire_part(x * (-a).exp())) / a
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn one(wait: f64) -> [Waiting; 1] {
        [Waiting { wait, weight: 1.0 }]
    }

    proptest! {
        #[test]
        fn effective_fill_by_brute_force(mean in 1e-4..0.9f64, decay in 1e-3..60.0f64, f0 in 0.03..0.3f64) {
            let waits = one(decay);
            let law = AgeLaw::with_mean(mean, 1.0, &waits);
            let pieces = 40_000;
            let friction: f64 = (0..pieces)
                .map(|i| (-law.fill((f64::from(i) + 0.5) * decay / f64::from(pieces)) / f0).exp())
                .sum();
            let brute = -f0 * (friction / f64::from(pieces)).ln();
            let ours = law.effective_fill(f0);
            prop_assert!((ours - brute).abs() < 1e-6 * brute + 1e-9, "{ours} {brute}");
        }

        #[test]
        fn effective_fill_lies_between_lowest_and_mean(mean in 1e-6..1.0f64, wait in 0.0..2000.0f64, f0 in 0.03..0.3f64) {
            let waits = [Waiting { wait, weight: 0.3 }, Waiting { wait: 2.0 * wait, weight: 0.7 }];
            let law = AgeLaw::with_mean(mean, 1.0, &waits);
            let kept: f64 = waits.iter().map(|w| w.weight * mean_kept(w.wait)).sum();
            let effective = law.effective_fill(f0);
            prop_assert!(effective <= law.start * kept * (1.0 + 1e-12));
            prop_assert!(effective >= law.fill(2.0 * wait) * (1.0 - 1e-9) && effective >= 0.0);
        }
    }

    #[test]
    fn both_forms_meet() {
        for a in [1e-4, 0.049, 0.0501, 0.7, 30.0, 900.0] {
            assert!((dry(1.0, a) + not_dry(1.0, a) - 1.0).abs() < 1e-13, "{a}");
        }
        for (x, a) in [(1.0, 0.05), (0.2, 0.1 / 1.2), (9.0, 0.01)] {
            let (below, above) = (dry(x, a * (1.0 - 1e-9)), dry(x, a * (1.0 + 1e-9)));
            assert!((below / above - 1.0).abs() < 1e-9, "{x}: {below} {above}");
        }
    }

    #[test]
    fn thin_fills_and_no_decay() {
        let waits = one(5.0);
        let law = AgeLaw::with_mean(1e-12, 1.0, &waits);
        assert!((law.effective_fill(0.1) / 1e-12 - 1.0).abs() < 1e-9);
        let still = AgeLaw::with_mean(0.4, 0.0, &waits);
        assert!((still.effective_fill(0.1) - 0.4).abs() < 1e-14);
        assert_eq!(AgeLaw::with_mean(0.0, 1.0, &waits).effective_fill(0.1), 0.0);
    }
}
