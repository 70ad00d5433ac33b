//! Hardened case, then core: wear work ⇄ depth in at most three exact phases.
//!
//! Pin and bush share the wear work; the softer of the two loses more. While neither changes hardness the shares are
//! fixed, so depth follows from work in closed form; only when a case is worn through does the division change.

use super::contact_arc::{worn_area, worn_depth, worn_width};

/// Hardness of a pin or a bush from its surface inwards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Body {
    /// Hardness of the case (Pa).
    pub case_hardness: f64,
    /// Hardness of the core (Pa).
    pub core_hardness: f64,
    /// Depth of the case (m); 0 for one hardness throughout, which is then the core's.
    pub case_depth: f64,
    /// How many times the wear coefficient of the core exceeds that of the case, ≥ 1.
    pub core_factor: f64,
}

impl Body {
    /// Worn volume for each unit of wear work (1/Pa) in the case.
    fn case_compliance(&self) -> f64 {
        1.0 / self.case_hardness
    }

    /// Worn volume for each unit of wear work (1/Pa) in the core. Without a case the core is the surface that the wear
    /// coefficient was measured on, and no factor applies.
    fn core_compliance(&self) -> f64 {
        if self.case_depth > 0.0 { self.core_factor / self.core_hardness } else { 1.0 / self.core_hardness }
    }
}

/// What wear needs to know of a joint, all in m; hardness as at 20 °C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointGeometry {
    /// Pitch of the chain.
    pub pitch: f64,
    /// Diameter of the pin.
    pub pin_diameter: f64,
    /// Bore of the bush, at least the pin's diameter.
    pub bush_bore: f64,
    /// Length of the bush on its pin.
    pub joint_length: f64,
    /// The pin.
    pub pin: Body,
    /// The bush.
    pub bush: Body,
    /// Wall of the bush, where its outer diameter is known.
    pub wall: Option<f64>,
}

/// How deep a joint has worn (m).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Depths {
    /// Both together: what the pitch has grown.
    pub total: f64,
    /// Of the pin.
    pub pin: f64,
    /// Of the bush.
    pub bush: f64,
}

/// A stretch of wear in which neither body changes hardness, with the state at its start.
#[derive(Debug, Clone, Copy, Default)]
struct Phase {
    work: f64,
    area: f64,
    total: f64,
    pin: f64,
    bush: f64,
    /// Worn volume of both for each unit of wear work (1/Pa).
    compliance: f64,
    /// The pin's share of that volume, and so of the depth.
    pin_share: f64,
}

/// A joint at its working temperature, ready to turn wear work into depth and back.
#[derive(Debug, Clone, Copy)]
pub struct WornJoint {
    pin_radius: f64,
    radial_clearance: f64,
    length: f64,
    case_depth: f64,
    phases: [Phase; 3],
    count: usize,
}

impl WornJoint {
    /// The phases of a joint whose hardness, case and core alike, is `hardness_factor` times that at 20 °C.
    ///
    /// Wear work Ω (N m) is coefficient × load × sliding / 3 summed up; each body loses V = Ω/H. A phase ends when pin or
    /// bush reaches the end of its case; at most three phases. Source: Archard (1953) with a layered hardness, exact.
    pub fn new(joint: &JointGeometry, hardness_factor: f64) -> Self {
        let mut worn = WornJoint {
            pin_radius: 0.5 * joint.pin_diameter,
            radial_clearance: 0.5 * (joint.bush_bore - joint.pin_diameter),
            length: joint.joint_length,
            case_depth: joint.pin.case_depth,
            phases: [Phase::default(); 3],
            count: 0,
        };
        let (mut pin_in_case, mut bush_in_case) = (joint.pin.case_depth > 0.0, joint.bush.case_depth > 0.0);
        let mut start = Phase::default();
        while worn.count < 3 {
            let pin = if pin_in_case { joint.pin.case_compliance() } else { joint.pin.core_compliance() };
            let bush = if bush_in_case { joint.bush.case_compliance() } else { joint.bush.core_compliance() };
            start.compliance = (pin + bush) / hardness_factor;
            start.pin_share = pin / (pin + bush);
            worn.phases[worn.count] = start;
            worn.count += 1;

            let left = |in_case: bool, depth: f64, share: f64| if in_case { depth / share } else { f64::INFINITY };
            let pin_left = left(pin_in_case, joint.pin.case_depth - start.pin, start.pin_share);
            let bush_left = left(bush_in_case, joint.bush.case_depth - start.bush, 1.0 - start.pin_share);
            let step = pin_left.min(bush_left);
            if step.is_infinite() {
                break;
            }
            let total = start.total + step;
            let area = worn_area(total, worn.pin_radius, worn.radial_clearance);
            start.work += worn.length * (area - start.area) / start.compliance;
            start.pin = if pin_left <= step { joint.pin.case_depth } else { start.pin + start.pin_share * step };
            start.bush =
                if bush_left <= step { joint.bush.case_depth } else { start.bush + (1.0 - start.pin_share) * step };
            start.total = total;
            start.area = area;
            pin_in_case &= pin_left > step;
            bush_in_case &= bush_left > step;
        }
        worn
    }

    /// The last phase that has begun by the measure `begun_at` of a phase's start.
    fn phase(&self, begun_at: impl Fn(&Phase) -> f64, value: f64) -> &Phase {
        let mut at = 0;
        while at + 1 < self.count && begun_at(&self.phases[at + 1]) <= value {
            at += 1;
        }
        &self.phases[at]
    }

    /// Wear work (N m) that brings pin and bush together to the depth `total` (m), ≥ 0.
    pub fn work_at_depth(&self, total: f64) -> f64 {
        let phase = self.phase(|p| p.total, total);
        let area = worn_area(total, self.pin_radius, self.radial_clearance);
        phase.work + self.length * (area - phase.area) / phase.compliance
    }

    /// Wear work (N m) that brings the pin to the depth `pin` (m), ≥ 0.
    pub fn work_at_pin_depth(&self, pin: f64) -> f64 {
        let phase = self.phase(|p| p.pin, pin);
        self.work_at_depth(phase.total + (pin - phase.pin) / phase.pin_share)
    }

    /// Wear work (N m) that brings the bush to the depth `bush` (m), ≥ 0.
    pub fn work_at_bush_depth(&self, bush: f64) -> f64 {
        let phase = self.phase(|p| p.bush, bush);
        self.work_at_depth(phase.total + (bush - phase.bush) / (1.0 - phase.pin_share))
    }

    /// Wear work (N m) that wears through the case of the pin; 0 where it has none.
    pub fn work_through_pin_case(&self) -> f64 {
        if self.case_depth > 0.0 { self.work_at_pin_depth(self.case_depth) } else { 0.0 }
    }

    /// Depths after the wear work `work` (N m), ≥ 0; inverse of [`WornJoint::work_at_depth`].
    pub fn depths(&self, work: f64) -> Depths {
        let phase = self.phase(|p| p.work, work);
        let area = phase.area + (work - phase.work) * phase.compliance / self.length;
        let total = worn_depth(area, self.pin_radius, self.radial_clearance);
        let pin = phase.pin + phase.pin_share * (total - phase.total);
        Depths { total, pin, bush: total - pin }
    }

    /// Total depth (m) after the wear work `work` (N m), > 0, and how fast it grows with it (m/(N m)).
    pub(super) fn depth_and_slope(&self, work: f64) -> (f64, f64) {
        let phase = self.phase(|p| p.work, work);
        let total = self.depths(work).total;
        let chord = worn_width(total, self.pin_radius, self.radial_clearance);
        (total, phase.compliance / (self.length * chord))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn body(case: f64, core: f64, depth: f64, factor: f64) -> Body {
        Body { case_hardness: case, core_hardness: core, case_depth: depth, core_factor: factor }
    }

    fn joint(pin: Body, bush: Body) -> JointGeometry {
        JointGeometry {
            pitch: 25.4e-3,
            pin_diameter: 8.28e-3,
            bush_bore: 8.38e-3,
            joint_length: 25.45e-3,
            pin,
            bush,
            wall: None,
        }
    }

    prop_compose! {
        fn any_body()(case in 4e9..8e9, core in 2e9..4e9, depth in prop::sample::select(vec![0.0, 1e-5, 2e-4, 5e-4]),
                      factor in 1.0..10.0) -> Body {
            body(case, core, depth, factor)
        }
    }

    proptest! {
        #[test]
        fn work_and_depth_are_inverse(pin in any_body(), bush in any_body(), depth in -8.0..-2.3_f64, hot in 0.4..1.0) {
            let worn = WornJoint::new(&joint(pin, bush), hot);
            let depth = 10f64.powf(depth);
            let back = worn.depths(worn.work_at_depth(depth));
            prop_assert!((back.total / depth - 1.0).abs() < 1e-12);
            prop_assert!((worn.work_at_pin_depth(back.pin) / worn.work_at_depth(depth) - 1.0).abs() < 1e-11);
            prop_assert!((worn.work_at_bush_depth(back.bush) / worn.work_at_depth(depth) - 1.0).abs() < 1e-11);
        }

        #[test]
        fn depth_is_continuous_where_a_phase_ends(pin in any_body(), bush in any_body()) {
            let worn = WornJoint::new(&joint(pin, bush), 1.0);
            for phase in &worn.phases[1..worn.count] {
                let (before, after) = (worn.depths(phase.work * (1.0 - 1e-13)), worn.depths(phase.work * (1.0 + 1e-13)));
                for (b, a) in [(before.total, after.total), (before.pin, after.pin), (before.bush, after.bush)] {
                    prop_assert!((a / b - 1.0).abs() < 1e-10);
                }
            }
        }

        #[test]
        fn the_slope_is_that_of_the_depth(pin in any_body(), bush in any_body(), work in -3.0..2.0_f64) {
            let (worn, work) = (WornJoint::new(&joint(pin, bush), 1.0), 10f64.powf(work));
            let step = 1e-5 * work;
            let near_an_end = worn.phases[..worn.count].iter().any(|phase| (phase.work - work).abs() <= step);
            let (_, slope) = worn.depth_and_slope(work);
            let chord = (worn.depths(work + step).total - worn.depths(work - step).total) / (2.0 * step);
            prop_assert!(near_an_end || (slope / chord - 1.0).abs() < 1e-7);
        }

        #[test]
        fn hardness_scales_the_work(pin in any_body(), bush in any_body(), depth in 1e-6..4e-3, hot in 0.4..1.0) {
            let joint = joint(pin, bush);
            let (cold, hot_work) = (WornJoint::new(&joint, 1.0).work_at_depth(depth), WornJoint::new(&joint, hot).work_at_depth(depth));
            prop_assert!((hot_work / (hot * cold) - 1.0).abs() < 1e-12);
        }
    }

    #[test]
    fn the_last_half_millimetre_past_the_case_is_cheap() {
        // equal bodies: two phases; depth against an integration of dh/dΩ in small steps
        let worn = WornJoint::new(&joint(body(7e9, 3e9, 5e-4, 3.0), body(7e9, 3e9, 5e-4, 3.0)), 1.0);
        assert_eq!(worn.count, 2);
        let steps = 150_000; // so that the end of the case falls between two
        let (mut work, width) = (0.0, 1.5e-3 / f64::from(steps));
        for i in 0..steps {
            let h = (f64::from(i) + 0.5) * width;
            let compliance = if h < 1e-3 { 2.0 / 7e9 } else { 2.0 * 3.0 / 3e9 };
            let cosine = 50e-6 / (50e-6 + h);
            work += 25.45e-3 * 8.28e-3 * (1.0 - cosine * cosine).sqrt() * width / compliance;
        }
        assert!((worn.work_at_depth(1.5e-3) / work - 1.0).abs() < 1e-6);
        assert!(worn.work_at_depth(1.5e-3) / worn.work_at_depth(1e-3) < 1.08);
    }

    #[test]
    fn without_a_case_there_is_one_phase_of_core() {
        let plain = WornJoint::new(&joint(body(7e9, 2.5e9, 0.0, 3.0), body(7e9, 2.5e9, 0.0, 3.0)), 1.0);
        assert_eq!((plain.count, plain.work_through_pin_case()), (1, 0.0));
        let depths = plain.depths(10.0);
        assert!((depths.pin / depths.bush - 1.0).abs() < 1e-14);
        let area = worn_area(depths.total, 4.14e-3, 5e-5);
        assert!((area * 25.45e-3 / (10.0 * 2.0 / 2.5e9) - 1.0).abs() < 1e-13);
    }
}
