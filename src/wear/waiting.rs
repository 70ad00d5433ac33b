//! The wear coefficient averaged over the age of the oil.
//!
//! A joint that has just been oiled hardly wears; one that waits too long runs dry and wears a hundred times faster. The
//! mean over the wait is ruled by that dry tail: it is the mean of K, never K at the mean fill.

use super::coefficient::{GREATEST_COEFFICIENT, OiledJoint};
use crate::numeric::exponential_integral::{exponential_integral, scaled_ei};
use crate::numeric::{GAUSS_LEGENDRE_4, GAUSS_LEGENDRE_6, GAUSS_LEGENDRE_8};

/// k times the time up to which quadrature is quicker than the closed form, and keeps more digits.
const LITTLE: f64 = 0.5;
/// The same up to which four nodes, and six, do instead of eight.
const FOUR_NODES: f64 = 0.08;
const SIX_NODES: f64 = 0.3;
/// The same below which the closed form has fewer digits left than a kink takes from quadrature.
const TOO_SHORT: f64 = 1e-6;
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
    /// A wait of 0 gives K at the fresh fill, an infinite one the dry coefficient. Closed form in exponential integrals,
    /// dry below a fill of 1e-5; over what loses little, Gauss-Legendre.
    pub fn mean_coefficient(&self, joint: &OiledJoint, wait: f64) -> f64 {
        self.mean_over_waits(joint, &[(wait, 1.0)])
    }

    /// Mean over several waits, each (wait in s, its weight); weights add up to 1.
    pub fn mean_over_waits(&self, joint: &OiledJoint, waits: &[(f64, f64)]) -> f64 {
        let mut mean = [0.0];
        self.add_means_over_waits(std::slice::from_ref(joint), waits, &mut mean);
        mean[0]
    }

    /// The same at several places at once, added to `means`: the fill at a moment is that of all of them.
    pub(super) fn add_means_over_waits(&self, places: &[OiledJoint], waits: &[(f64, f64)], means: &mut [f64]) {
        let until_dry = (self.fill / DRY_FILL).ln().max(0.0);
        // x = k t up to which each wait has oil, and its weight for each unit of x
        let mut oiled: Vec<(f64, f64)> = Vec::with_capacity(waits.len());
        for &(wait, weight) in waits {
            let wait = if wait.is_finite() { self.loss_rate * wait } else { f64::INFINITY };
            if wait <= 0.0 {
                add(places, means, |place| weight * place.coefficient(self.fill));
            } else if wait.is_infinite() {
                add(places, means, |place| weight * place.dry_coefficient());
            } else {
                let dry = (wait - until_dry).max(0.0);
                add(places, means, |place| weight / wait * dry * place.dry_coefficient());
                oiled.push((wait.min(until_dry), weight / wait));
            }
        }
        // every wait begins alike, so that each stretch is integrated once for all that last through it
        oiled.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut stretches: Vec<Stretch> = Vec::with_capacity(oiled.len());
        let (mut start, mut first) = (0.0, self.fill);
        for (i, &(end, _)) in oiled.iter().enumerate() {
            if end > start {
                let last = self.fill * (-end).exp();
                let weight: f64 = oiled[i..].iter().map(|(_, weight)| weight).sum();
                stretches.push(Stretch { first, last, length: end - start, weight });
                (start, first) = (end, last);
            }
        }
        let closed = |stretch: &&Stretch| stretch.length > LITTLE || stretch.meets_the_cap(places);
        let (long, short): (Vec<Stretch>, Vec<Stretch>) = stretches.iter().partition(closed);
        short.iter().for_each(|stretch| stretch.add_by_quadrature(places, means));
        if !long.is_empty() {
            for (place, mean) in places.iter().zip(means) {
                let mut primitive = Primitive::of(place);
                *mean += long.iter().map(|stretch| stretch.weight * primitive.integral(stretch)).sum::<f64>();
            }
        }
    }
}

/// A stretch of x = k t, in which the fill falls as e^(−x).
#[derive(Clone, Copy)]
struct Stretch {
    first: f64,
    last: f64,
    length: f64,
    /// Weight of the means for each unit of x.
    weight: f64,
}

impl Stretch {
    /// Whether the greatest coefficient is met on the way: no quadrature sees that kink, but that in a stretch too short
    /// for the closed form it is nothing.
    fn meets_the_cap(&self, places: &[OiledJoint]) -> bool {
        let kinked = |place: &OiledJoint| place.is_capped(self.first) != place.is_capped(self.last);
        self.length > TOO_SHORT && places.iter().any(kinked)
    }

    /// Adds the weighted ∫ K dx of each place, by 8-, 6- or 4-point Gauss-Legendre.
    ///
    /// ln K has its nearest singularity π/2 beside the axis: such short stretches are exact to 1e-12.
    fn add_by_quadrature(&self, places: &[OiledJoint], means: &mut [f64]) {
        let middle = self.first * (-0.5 * self.length).exp();
        let rule: &[(f64, f64)] = match self.length {
            ..=FOUR_NODES => &GAUSS_LEGENDRE_4,
            ..=SIX_NODES => &GAUSS_LEGENDRE_6,
            _ => &GAUSS_LEGENDRE_8,
        };
        for &(node, weight) in rule {
            let weight = 0.5 * self.length * self.weight * weight;
            let later = (-0.5 * self.length * node).exp();
            add(places, means, |place| {
                weight * (place.coefficient(middle * later) + place.coefficient(middle / later))
            });
        }
    }
}

/// ∫ K dx of one place in closed form.
///
/// With s = φ²/(φ² + a²) the coefficient is K₀ e^(−B s), and dx = −ds/(2 s (1 − s)): two exponential integrals, by
/// partial fractions. The cap of the coefficient cuts off one end. Where one stretch ends the next begins, so that the
/// value there is kept.
struct Primitive<'a> {
    place: &'a OiledJoint,
    /// K₀ without a cap, and B.
    dry: f64,
    fall: f64,
    /// e^(−|B|).
    faded: f64,
    known: (f64, f64),
}

impl<'a> Primitive<'a> {
    fn of(place: &'a OiledJoint) -> Self {
        let (dry, fall) = place.line();
        Primitive { place, dry, fall, faded: (-fall.abs()).exp(), known: (f64::NAN, 0.0) }
    }

    fn integral(&mut self, stretch: &Stretch) -> f64 {
        let place = self.place;
        let (fuller, emptier) = (place.share(stretch.first), place.share(stretch.last));
        let time = |high: f64, low: f64| 0.5 * (high / low * ((1.0 - low) / (1.0 - high))).ln();
        match place.share_at_cap() {
            Some(cap) if cap > emptier && cap < fuller && self.fall > 0.0 => {
                GREATEST_COEFFICIENT * time(cap, emptier) + self.free(fuller, cap)
            }
            Some(cap) if cap > emptier && cap < fuller => {
                GREATEST_COEFFICIENT * time(fuller, cap) + self.free(cap, emptier)
            }
            _ if place.is_capped(0.5 * (stretch.first + stretch.last)) => GREATEST_COEFFICIENT * stretch.length,
            _ => self.free(fuller, emptier),
        }
    }

    /// ½ K₀ ∫ e^(−B s)/(s (1 − s)) ds from low to high share.
    fn free(&mut self, high: f64, low: f64) -> f64 {
        if self.fall.abs() < 1e-12 {
            return 0.5 * self.dry * (high / low * ((1.0 - low) / (1.0 - high))).ln();
        }
        let at_high = if self.known.0 == high { self.known.1 } else { self.at(high) };
        let at_low = self.at(low);
        self.known = (low, at_low);
        0.5 * self.dry * (at_low - at_high)
    }

    /// Minus the primitive at a share.
    fn at(&self, share: f64) -> f64 {
        let fall = self.fall.abs();
        let falling = |s: f64| exponential_integral(fall * s) + scaled_ei(fall * (1.0 - s), fall, self.faded);
        // oil that wears more than none: the same seen from the other end
        if self.fall > 0.0 { falling(share) } else { -falling(1.0 - share) / self.faded }
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
    fn quadrature_over_short_stretches_is_the_closed_form() {
        for temperature in [20.0, 90.0] {
            let joint = WearCoefficients { transition: 1000.0, ..Default::default() }.law().at(5.0, temperature);
            for (length, fill) in [FOUR_NODES, SIX_NODES, LITTLE].map(|to| [(to, 0.9), (to, 0.4), (to, 0.25)]).concat()
            {
                let stretch = Stretch { first: fill, last: fill * (-length).exp(), length, weight: 1.0 };
                let mut by_nodes = [0.0];
                stretch.add_by_quadrature(&[joint], &mut by_nodes);
                let exact = Primitive::of(&joint).integral(&stretch);
                assert!((by_nodes[0] / exact - 1.0).abs() < 1e-11, "{length} {fill} {}", by_nodes[0] / exact - 1.0);
            }
        }
    }

    #[test]
    fn the_cap_is_met_exactly_on_the_way() {
        let law = WearCoefficients { dust_factor: 15.0, water_factor: 5.0, ..Default::default() }.law();
        let worse_oiled = WearCoefficients { dry: 1e-4, boundary: 2e-2, mixed: 2e-2, ..Default::default() }.law();
        let at_kink = (1..900).map(|i| f64::from(i) / 100.0).find(|x| law.at(0.2, 20.0).is_capped(0.9 * (-x).exp()));
        let early = at_kink.unwrap() + 0.1;
        // a stretch of 0.3 that has the kink in it, after one that has not
        let (age, joint) = (OilAge { fill: 0.9, loss_rate: 1.0 }, law.at(0.2, 20.0));
        let both = age.mean_over_waits(&joint, &[(early - 0.3, 0.5), (early, 0.5)]);
        let apart = 0.5 * (in_small_steps(age, &joint, early - 0.3) + in_small_steps(age, &joint, early));
        assert!((both / apart - 1.0).abs() < 1e-6, "{both} {apart}");
        for (joint, wait) in [(law.at(0.2, 20.0), 2.5), (law.at(0.2, 20.0), 9.0), (worse_oiled.at(0.2, 20.0), 4.0)] {
            let exact = in_small_steps(age, &joint, wait);
            assert!((age.mean_coefficient(&joint, wait) / exact - 1.0).abs() < 1e-6, "{wait}");
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
        assert!((age.mean_over_waits(&joint, &waits) / apart - 1.0).abs() < 1e-11);
    }
}
