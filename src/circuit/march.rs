//! The tension march: from the exit of the drive round the loop to its entry, and the pull by cause.

use super::step::Step;
use super::{Cause, Coefficients, Layout, Place, TakeUp, take_up_from_frame_force};
use crate::error::Result;

/// Effective tensions round the loop and the pull that the drive must give.
///
/// Negative tensions are reported as they come out: a chain cannot push, so they say that the take-up is too slack.
#[derive(Debug, Clone, PartialEq)]
pub struct March {
    /// Effective tension at entry and exit of every section of the survey, N of all strands.
    pub profile: Vec<[f64; 2]>,
    /// Pull of the drive, N; negative where the chain drives it.
    pub pull: f64,
    /// Effective tension at the entry of the drive, N.
    pub tight: f64,
    /// Effective tension at its exit, N.
    pub slack: f64,
    /// Least effective tension at any section end, N.
    pub least: f64,
    /// Greatest tension at any section end, centrifugal part included, N of all strands.
    pub greatest: f64,
    /// Tension at the drive exit that keeps the whole chain above its least tension, N.
    pub required_take_up: f64,
    /// Pull gained for take-up tension gained, N/N.
    pub take_up_sensitivity: f64,
    /// Pull by cause, N, in the order of [`Cause::ALL`]; adds up to the pull.
    pub causes: [f64; Cause::COUNT],
    /// Working store, kept so that marching again does not allocate.
    steps: Vec<Step>,
}

/// Marches once round the loop.
///
/// Errors: a turn that resists with half of the tension around it (`beyond_model`).
pub fn march(layout: &Layout, coefficients: &Coefficients) -> Result<March> {
    let mut march = March::empty(layout);
    march.renew(layout, coefficients)?;
    Ok(march)
}

impl March {
    /// Store for marches over `layout`.
    pub fn empty(layout: &Layout) -> March {
        March {
            profile: vec![[0.0; 2]; layout.places.len()],
            pull: 0.0,
            tight: 0.0,
            slack: 0.0,
            least: 0.0,
            greatest: 0.0,
            required_take_up: 0.0,
            take_up_sensitivity: 0.0,
            causes: [0.0; Cause::COUNT],
            steps: Vec::with_capacity(layout.places.len()),
        }
    }

    /// Marches again with other coefficients, without allocating; `self` must have been made for the same layout.
    pub fn renew(&mut self, layout: &Layout, coefficients: &Coefficients) -> Result<()> {
        let composed = self.compose(layout, coefficients)?;
        self.slack = composed.slack;
        self.required_take_up = composed.required;
        self.causes = [0.0; Cause::COUNT];

        let (drive, before) = match layout.places.split_last() {
            Some(ends) => ends,
            None => return Ok(()),
        };
        let (mut tension, mut least, mut greatest) = (self.slack, self.slack, self.slack + drive.centrifugal);
        for (place, step) in before.iter().zip(&self.steps) {
            let exit = step.gain * tension + step.force;
            step.collect(place, tension, exit, &mut self.causes);
            self.profile[place.section] = [tension, exit];
            least = least.min(exit);
            greatest = greatest.max(tension.max(exit) + place.centrifugal);
            tension = exit;
        }
        self.tight = tension;
        self.least = least;
        self.greatest = greatest.max(self.tight + drive.centrifugal);
        self.profile[drive.section] = [self.tight, self.slack];
        self.turn_the_drive(drive, composed.gain);
        Ok(())
    }

    /// The drive gives what the chain gained on its way, and what its own joints, bearing and rise take.
    fn turn_the_drive(&mut self, drive: &Place, gain: f64) {
        let Some(step) = self.steps.last() else { return };
        step.collect(drive, self.tight, self.slack, &mut self.causes);
        self.pull = (self.tight - self.slack)
            + step.joint * (self.tight + self.slack + 2.0 * drive.centrifugal)
            + step.bearing * (self.tight + self.slack)
            + drive.lift
            + drive.extra;
        self.take_up_sensitivity = (gain - 1.0) + (step.joint + step.bearing) * (gain + 1.0);
        debug_assert!(self.accounts_for_all(1e-9), "pull {} is not the sum of {:?}", self.pull, self.causes);
    }

    /// Composes the sections into S = gain × S0 + force at every end, which gives the take-ups without a search.
    fn compose(&mut self, layout: &Layout, coefficients: &Coefficients) -> Result<Composed> {
        let last = layout.places.len().saturating_sub(1);
        let frame = match layout.take_up {
            TakeUp::Tension(_) => None,
            TakeUp::FrameForce { section, force } => Some((section, force)),
        };
        let (mut gain, mut force, mut required) = (1.0, 0.0, layout.least_tension);
        let mut slack = match layout.take_up {
            TakeUp::Tension(tension) => tension,
            TakeUp::FrameForce { .. } => 0.0,
        };
        self.steps.clear();
        for (position, place) in layout.places.iter().enumerate() {
            let step = Step::of(layout, place, coefficients)?;
            let entry = (gain, force);
            let mut exit = (1.0, 0.0);
            if position < last {
                exit = (step.gain * gain, step.gain * force + step.force);
                (gain, force) = exit;
                required = f64::max(required, (layout.least_tension - force) / gain);
            }
            if let (Some((section, on_frame)), Some(turn)) = (frame, place.turn())
                && section == place.section
            {
                slack = take_up_from_frame_force(on_frame, turn.half_wrap_sine, [entry.0, exit.0], [entry.1, exit.1]);
            }
            self.steps.push(step);
        }
        Ok(Composed { gain, slack, required })
    }

    /// Whether the causes add up to the pull within `share` of the larger of pull and tensions.
    pub fn accounts_for_all(&self, share: f64) -> bool {
        let sum: f64 = self.causes.iter().sum();
        let scale: f64 = self.causes.iter().map(|pull| pull.abs()).sum();
        (sum - self.pull).abs() <= share * scale.max(self.tight.abs()).max(self.slack.abs())
    }

    /// Pull of one cause, N.
    pub fn cause(&self, cause: Cause) -> f64 {
        self.causes[cause as usize]
    }

    /// Causes that take part, with their share of the pull.
    pub fn shares(&self) -> impl Iterator<Item = (Cause, f64)> + '_ {
        Cause::ALL
            .iter()
            .map(|&cause| (cause, self.cause(cause)))
            .filter(|(_, pull)| *pull != 0.0)
            .map(|(cause, pull)| (cause, pull / self.pull))
    }

    /// Pull of all friction, N: what turns into heat, and what holds a stopped chain.
    pub fn friction(&self) -> f64 {
        Cause::ALL.iter().filter(|cause| cause.is_friction()).map(|&cause| self.cause(cause)).sum()
    }
}

/// The whole way composed: gain up to the drive, tension at its exit, required tension there.
struct Composed {
    gain: f64,
    slack: f64,
    required: f64,
}

#[cfg(test)]
mod tests {
    use super::super::testing::*;
    use super::super::*;
    use super::*;
    use proptest::prelude::*;

    /// Power of all joints from their own work: friction × pin radius × angle × tension, at each engagement.
    fn joint_power(layout: &Layout, coefficients: &Coefficients, march: &March) -> f64 {
        let per_place = |place: &Place| {
            let friction = coefficients.joint[place.section];
            let [entry, exit] = march.profile[place.section];
            match &place.way {
                Way::Turn(turn) => {
                    friction * layout.pin_diameter / 2.0
                        * turn.articulation_angle
                        * (entry + exit + 2.0 * place.centrifugal)
                        / layout.joint_time
                }
                Way::Straight(straight) if straight.support == Support::Idlers => {
                    friction * layout.pin_diameter / layout.pitch * straight.weight * layout.speed
                }
                Way::Straight(_) => 0.0,
            }
        };
        layout.places.iter().map(per_place).sum()
    }

    #[test]
    fn a_turn_that_cannot_be_pulled_is_refused() {
        let sections = simple_loop();
        let (layout, mut coefficients) = laid_out(&sections);
        coefficients.wheel_bearing = 4.0;
        let error = march(&layout, &coefficients).unwrap_err();
        assert_eq!(error.code, crate::Code::BeyondModel);
    }

    #[test]
    fn without_friction_only_rises_and_acceleration_pull() {
        let mut sections = simple_loop();
        sections[2] = SectionSi::Straight(StraightSi { loads: true, ..straight(Support::Slide) });
        let (layout, mut coefficients) = laid_out(&sections);
        coefficients = coefficients.scaled(0.0);
        coefficients.rolling_arm = 0.0;
        let march = march(&layout, &coefficients).unwrap();
        assert!((march.pull - 20.0 * 0.3 * 0.3).abs() < 1e-9);
        assert_eq!(march.shares().map(|(cause, _)| cause).collect::<Vec<_>>(), [Cause::Accel]);
    }

    #[test]
    fn a_load_on_a_bed_rubs_there_and_not_on_the_track() {
        let mut sections = simple_loop();
        sections[0] = SectionSi::Straight(StraightSi { load_on: LoadOn::Bed, ..straight(Support::Slide) });
        let (layout, coefficients) = laid_out(&sections);
        let march = march(&layout, &coefficients).unwrap();
        assert!((march.cause(Cause::Bed) - 0.3 * 20.0 * GRAVITY * 10.0).abs() < 1e-9);
        assert!((march.cause(Cause::PlateTrack) - 0.25 * 10.0 * GRAVITY * 10.0).abs() < 1e-9);
    }

    proptest! {
        #[test]
        fn every_newton_has_a_cause_and_joints_do_their_work(sections in any_loop()) {
            let (layout, coefficients) = laid_out(&sections);
            let march = march(&layout, &coefficients).unwrap();
            prop_assert!(march.accounts_for_all(1e-9));
            let scale = layout.speed * march.causes.iter().map(|pull| pull.abs()).sum::<f64>();
            let power = joint_power(&layout, &coefficients, &march);
            prop_assert!((power - march.cause(Cause::Joint) * layout.speed).abs() <= 1e-9 * scale.max(power.abs()));
        }

        #[test]
        fn it_does_not_matter_where_the_survey_starts(sections in any_loop(), by in 0usize..8) {
            let (layout, coefficients) = laid_out(&sections);
            let mut turned = sections.clone();
            turned.rotate_left(by % sections.len());
            let (other, _) = laid_out(&turned);
            prop_assert_eq!(march(&layout, &coefficients).unwrap().pull, march(&other, &coefficients).unwrap().pull);
        }

        #[test]
        fn marching_again_is_marching_afresh(sections in any_loop(), factor in 0.3..1.5f64) {
            let (layout, coefficients) = laid_out(&sections);
            let mut again = march(&layout, &coefficients).unwrap();
            again.renew(&layout, &coefficients.scaled(factor)).unwrap();
            prop_assert_eq!(again, march(&layout, &coefficients.scaled(factor)).unwrap());
        }

        #[test]
        fn the_required_take_up_is_just_enough(sections in any_loop()) {
            let (mut layout, coefficients) = laid_out(&sections);
            let required = march(&layout, &coefficients).unwrap().required_take_up;
            layout.take_up = TakeUp::Tension(required);
            let march = march(&layout, &coefficients).unwrap();
            prop_assert!((march.least - layout.least_tension).abs() <= 1e-9 * march.greatest.abs());
        }

        #[test]
        fn pull_grows_with_take_up_as_said(sections in any_loop(), more in 1.0..1e4f64) {
            let (mut layout, coefficients) = laid_out(&sections);
            let before = march(&layout, &coefficients).unwrap();
            layout.take_up = TakeUp::Tension(before.slack + more);
            let after = march(&layout, &coefficients).unwrap();
            let gained = (after.pull - before.pull) / more;
            prop_assert!((gained - before.take_up_sensitivity).abs() <= 1e-8 * (after.greatest.abs() / more + 1.0));
        }

        #[test]
        fn a_weight_take_up_is_in_balance(force in 100.0..1e5f64, at in 0usize..2) {
            let sections = simple_loop();
            let (mut layout, coefficients) = laid_out(&sections);
            let section = [1, 3][at];
            layout.take_up = TakeUp::FrameForce { section, force };
            let [entry, exit] = march(&layout, &coefficients).unwrap().profile[section];
            prop_assert!(((entry + exit) / force - 1.0).abs() < 1e-12);
        }
    }
}
