//! From joints to the chain: elongation against running time, the lives, and which of them governs.

use super::hardened_case::WornJoint;
use super::limit::WearLimits;
use super::result::Governs;
use super::running_in::RunningIn;
use crate::error::{Code, Error, Result};

/// Joints that wear alike.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WearingClass {
    /// Share of all joints.
    pub share: f64,
    /// Steady wear coefficient over the whole circuit, > 0, from [`super::class_coefficient`].
    pub coefficient: f64,
    /// Whether these joints lie together, so that a stretch of the chain has their pitch.
    pub contiguous: bool,
}

/// A chain whose joints wear in classes, each at its own steady coefficient.
#[derive(Debug, Clone, Copy)]
pub struct WearingChain<'a> {
    /// The joint at its working temperature.
    pub joint: &'a WornJoint,
    /// Pitch (m).
    pub pitch: f64,
    /// Pin diameter (m).
    pub pin_diameter: f64,
    /// Wall of the bush (m), where it is known.
    pub wall: Option<f64>,
    /// At least one class, shares adding up to 1.
    pub classes: &'a [WearingClass],
    /// Wear work for each second and unit of wear coefficient (N m/s), from [`super::CircuitWork::work_rate`].
    pub work_rate: f64,
    /// Sliding of pin in bush for each second (m/s), from [`super::CircuitWork::sliding_rate`].
    pub sliding_rate: f64,
    /// How a new chain starts.
    pub running_in: RunningIn,
}

/// Lives of a chain, in running seconds; infinite where nothing is loaded.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lives {
    /// Until the chain as a whole reaches its limit of elongation.
    pub mean: f64,
    /// Until a stretch of joints that lie together does; the same as `mean` where the worst joints alternate with others.
    pub local: f64,
    /// Until the pin of the worst class has lost its share of the diameter.
    pub pin: f64,
    /// Until the bush of the worst class has lost its share of the wall; none where the wall is not known.
    pub bush: Option<f64>,
    /// Until the case of that pin is worn through: a caution, not an end. 0 where there is no case.
    pub case_through: f64,
    /// The least of mean, local, pin and bush.
    pub life: f64,
    /// Which of them that is; of equal ones the first in this order.
    pub governs: Governs,
}

impl WearingChain<'_> {
    /// Elongation (1) of the whole chain after `time` seconds of running.
    pub fn elongation(&self, time: f64) -> f64 {
        self.steady_elongation(self.running_in.steady_time(time, self.sliding_rate))
    }

    /// Elongation after so many seconds at steady wear: Σ share · depth / pitch, one joint in each pitch.
    fn steady_elongation(&self, steady: f64) -> f64 {
        let depth = |k: f64| self.joint.depths(k * self.work_rate * steady).total;
        self.classes.iter().map(|class| class.share * depth(class.coefficient)).sum::<f64>() / self.pitch
    }

    /// Running time (s) that a class of `coefficient` takes to do the wear work `work` (N m).
    fn time(&self, work: f64, coefficient: f64) -> f64 {
        self.running_in.running_time(self.steady(work, coefficient), self.sliding_rate)
    }

    /// The same at steady wear; infinite where the joint carries no load.
    fn steady(&self, work: f64, coefficient: f64) -> f64 {
        if work > 0.0 { work / (coefficient * self.work_rate) } else { 0.0 }
    }

    /// All lives and the one that governs. Fails only if no time is found at which classes that wear differently reach
    /// the limit together.
    pub fn lives(&self, limits: &WearLimits) -> Result<Lives> {
        let worst = self.classes.iter().map(|class| class.coefficient).fold(0.0, f64::max);
        let limit_work = self.joint.work_at_depth(limits.elongation * self.pitch);

        let mean = self.mean_life(limits.elongation, limit_work)?;
        let together =
            self.classes.iter().filter(|class| class.contiguous).map(|class| class.coefficient).fold(0.0, f64::max);
        let local = if together > 0.0 { mean.min(self.time(limit_work, together)) } else { mean };
        let pin = self.time(self.joint.work_at_pin_depth(limits.pin_share * self.pin_diameter), worst);
        let bush = self.wall.map(|wall| self.time(self.joint.work_at_bush_depth(limits.bush_share * wall), worst));
        let case_through = self.time(self.joint.work_through_pin_case(), worst);

        let ends = [(local, Governs::Local), (pin, Governs::Pin), (bush.unwrap_or(f64::INFINITY), Governs::Bush)];
        let (life, governs) =
            ends.into_iter().fold((mean, Governs::Mean), |first, next| if next.0 < first.0 { next } else { first });
        Ok(Lives { mean, local, pin, bush, case_through, life, governs })
    }

    /// Running time until the chain as a whole has grown by `limit`, which takes a joint `limit_work`.
    ///
    /// It lies between the lives of the fastest and the slowest class; running-in only stretches time, so it is sought
    /// at steady wear. One class, or equal ones, in closed form.
    fn mean_life(&self, limit: f64, limit_work: f64) -> Result<f64> {
        let coefficients = self.classes.iter().map(|class| class.coefficient);
        let fastest = coefficients.clone().fold(0.0, f64::max);
        let slowest = coefficients.fold(f64::INFINITY, f64::min);
        let (first, last) = (self.steady(limit_work, fastest), self.steady(limit_work, slowest));
        if first.is_nan() || last.is_nan() {
            return Err(Error::new(
                Code::BeyondModel,
                "mean wear life",
                "speed, load or dose are so small that no rate of wear can be computed: check them",
            ));
        }
        let steady = if first >= last { first } else { self.steady_life(limit, limit_work, first, last)? };
        Ok(self.running_in.running_time(steady, self.sliding_rate))
    }

    /// Time at steady wear between `first` and `last` after which the elongation is `limit`, to 1e-13.
    ///
    /// Elongation is close to a power of time: Newton in logarithms needs three to five steps. Where a case wears through
    /// its slope jumps, so every step must stay inside the bracket, or halves it.
    fn steady_life(&self, limit: f64, limit_work: f64, first: f64, last: f64) -> Result<f64> {
        let mean = self.classes.iter().map(|class| class.share * class.coefficient).sum();
        let (mut low, mut high) = (first, last);
        let mut time = self.steady(limit_work, mean).clamp(first, last);
        for _ in 0..100 {
            let (mut depth, mut growth) = (0.0, 0.0);
            for class in self.classes {
                let work = class.coefficient * self.work_rate * time;
                let (total, slope) = self.joint.depth_and_slope(work);
                depth += class.share * total;
                growth += class.share * slope * work;
            }
            let excess = (depth / (limit * self.pitch)).ln();
            if excess < 0.0 {
                low = time
            } else {
                high = time
            }
            let step = -excess * depth / growth;
            let next = time * step.exp();
            if step.abs() <= 1e-13 || high <= low * (1.0 + 1e-13) {
                // round-off, or shares that add up to 1 only nearly, may point just outside
                return Ok(next.clamp(first, last));
            }
            time = if low < next && next < high { next } else { (low * high).sqrt() };
        }
        Err(Error::new(
            Code::NotConverged,
            "mean wear life",
            "no time was found at which classes of joints that wear differently reach the limit of elongation together",
        ))
    }
}

/// Life of a chain that may also end for another reason (corrosion, damage, change of product): L_o (1 − e^(−L_w/L_o)).
///
/// `wear_life` L_w, and mean time to the other cause L_o (`other_life` > 0, usually 6 to 12 years), in the same unit;
/// either may be infinite. Source: derived, the mean of the lesser of L_w and an independent exponential time of mean L_o
/// (age replacement). Adding rates, 1/L = 1/L_w + 1/L_o, would treat a wear life that is known as one that is random.
///
/// ```
/// let years = pinfilm::wear::service_life(2.809156039, 8.0);
/// assert!((years - 2.368943743).abs() < 1e-9);
/// ```
pub fn service_life(wear_life: f64, other_life: f64) -> f64 {
    if other_life.is_infinite() { wear_life } else { -other_life * (-wear_life / other_life).exp_m1() }
}

/// Wear life (years) above which wear does not limit a chain, and no number should be shown for it. Common practice.
pub const NO_LIMIT_YEARS: f64 = 50.0;

/// Whether a wear life (years) is so long that wear does not limit this chain.
pub fn wear_does_not_limit(years: f64) -> bool {
    years > NO_LIMIT_YEARS
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wear::{Body, JointGeometry, PIN_WEAR_SHARE};
    use proptest::prelude::*;

    const HOUR: f64 = 3600.0;

    /// A chain of 12.7 mm pitch and 100 links at 1.5 m/s over two wheels of 19 teeth, 350 N tight and 15 N slack.
    fn geometry() -> JointGeometry {
        let body = Body { case_hardness: 7e9, core_hardness: 3e9, case_depth: 0.25e-3, core_factor: 3.0 };
        JointGeometry {
            pitch: 12.7e-3,
            pin_diameter: 4.45e-3,
            bush_bore: 4.5e-3,
            joint_length: 11.3e-3,
            pin: body,
            bush: body,
            wall: Some(1e-3),
        }
    }

    fn chain<'a>(joint: &'a WornJoint, classes: &'a [WearingClass], running_in: RunningIn) -> WearingChain<'a> {
        let (angle, circuit_time) = (2.0 * std::f64::consts::PI / 19.0, 1.27 / 1.5);
        WearingChain {
            joint,
            pitch: 12.7e-3,
            pin_diameter: 4.45e-3,
            wall: Some(1e-3),
            classes,
            work_rate: angle * 730.0 * 2.225e-3 / (3.0 * circuit_time),
            sliding_rate: angle * 4.0 * 2.225e-3 / circuit_time,
            running_in,
        }
    }

    fn class(share: f64, coefficient: f64, contiguous: bool) -> WearingClass {
        WearingClass { share, coefficient, contiguous }
    }

    fn limits(elongation: f64) -> WearLimits {
        WearLimits { elongation, pin_share: PIN_WEAR_SHARE, bush_share: 0.5 }
    }

    #[test]
    fn fifteen_thousand_hours_to_three_per_cent_lie_within_the_range_of_the_oiled_coefficient() {
        // the life basis of ISO 10823 is 15 000 h; dry drive chains last tens to a few hundred hours
        let joint = WornJoint::new(&geometry(), 1.0);
        for (k, two, three) in [
            (3e-3, 15.4, 25.1),
            (5e-4, 108.2, 166.7),
            (1e-4, 553.6, 846.4),
            (5e-6, 11_133.0, 16_988.9),
            (5e-7, 111_358.8, 169_917.4),
        ] {
            let classes = [class(1.0, k, true)];
            let chain = chain(&joint, &classes, RunningIn::USUAL);
            for (limit, hours) in [(0.02, two), (0.03, three)] {
                let ours = chain.lives(&limits(limit)).unwrap().mean / HOUR;
                assert!((ours - hours).abs() <= 0.051, "{k} {limit}: {ours} for {hours}");
            }
        }
    }

    proptest! {
        #[test]
        fn the_chain_has_grown_by_its_limit_at_its_mean_life(
            share in 0.001..0.999, fast in -5.0..-2.5_f64, slower in 0.0..3.0_f64, limit in 0.002..0.03
        ) {
            let fast = 10f64.powf(fast);
            let classes = [class(share, fast, true), class(1.0 - share, fast / 10f64.powf(slower), false)];
            let joint = WornJoint::new(&geometry(), 1.0);
            let chain = chain(&joint, &classes, RunningIn::USUAL);
            let lives = chain.lives(&limits(limit)).unwrap();
            prop_assert!((chain.elongation(lives.mean) / limit - 1.0).abs() < 1e-11);
            prop_assert!(lives.local <= lives.mean && lives.life <= lives.local);
        }

        #[test]
        fn equal_classes_are_one(k in -6.0..-3.0_f64) {
            let k = 10f64.powf(k);
            let joint = WornJoint::new(&geometry(), 1.0);
            let (apart, one) = ([class(0.3, k, true), class(0.7, k, true)], [class(1.0, k, true)]);
            let life = |classes: &[WearingClass]| chain(&joint, classes, RunningIn::USUAL).lives(&limits(0.02)).unwrap();
            prop_assert_eq!(life(&apart), life(&one));
        }
    }

    #[test]
    fn the_first_of_equal_ends_governs() {
        let joint = WornJoint::new(&geometry(), 1.0);
        let one = [class(1.0, 5e-6, true)];
        let lives = chain(&joint, &one, RunningIn::NONE).lives(&limits(0.02)).unwrap();
        assert_eq!((lives.governs.as_str(), lives.mean == lives.local), ("mean", true));
        // pin and bush are alike, so equal depths fall together and the pin comes first
        let thin = WearLimits { elongation: 0.03, pin_share: 0.01, bush_share: 0.0445 };
        let lives = chain(&joint, &one, RunningIn::NONE).lives(&thin).unwrap();
        assert!((lives.bush.unwrap() / lives.pin - 1.0).abs() < 1e-12 && lives.governs != Governs::Mean);
    }

    #[test]
    fn joints_that_alternate_do_not_end_the_chain_locally() {
        let joint = WornJoint::new(&geometry(), 1.0);
        let lives = |contiguous| {
            let classes = [class(0.9, 5e-6, true), class(0.1, 5e-4, contiguous)];
            chain(&joint, &classes, RunningIn::USUAL).lives(&limits(0.01)).unwrap()
        };
        assert!(lives(true).local < lives(true).mean && lives(true).governs == Governs::Local);
        assert_eq!(lives(false).local, lives(false).mean);
        assert_eq!(lives(false).pin, lives(true).pin);
    }

    #[test]
    fn without_load_nothing_ends() {
        let joint = WornJoint::new(&geometry(), 1.0);
        let classes = [class(0.5, 5e-6, true), class(0.5, 5e-4, true)];
        let idle = WearingChain { work_rate: 0.0, sliding_rate: 0.0, ..chain(&joint, &classes, RunningIn::USUAL) };
        let lives = idle.lives(&limits(0.02)).unwrap();
        assert_eq!((lives.life, lives.governs), (f64::INFINITY, Governs::Mean));
        assert_eq!(idle.elongation(1e9), 0.0);
    }

    #[test]
    fn service_life_lies_below_both_causes() {
        assert_eq!(service_life(3.0, f64::INFINITY), 3.0);
        assert_eq!(service_life(f64::INFINITY, 8.0), 8.0);
        assert!(service_life(1e-6, 8.0) < 1e-6 && service_life(1e-6, 8.0) > 0.999999e-6);
        assert!(wear_does_not_limit(50.1) && !wear_does_not_limit(50.0));
    }
}
