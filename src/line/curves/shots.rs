//! Which joint got oil when, and how full all joints are in the end.

use super::{ShotRecord, ShotRecordSi, Worked};
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::line::oiling::Oiling;
use crate::lubrication::LubricationSi;
use crate::lubrication::coverage::{Clock, Segment, Simulation, drip_wait, observe};
use crate::lubrication::fill::{at_shot, between_shots};
use crate::lubrication::method::Spray;
use crate::quantity::{Field, unit::ONE};

/// Passages that are followed at most, a fraction of a second; where chance decides, shots.
const MOST_PASSAGES: f64 = 2e6;
/// Circuits that are followed at most, however seldom chance gives a shot.
const MOST_CIRCUITS: f64 = 1e9;
/// Circuits that are followed at least where nobody says; else twice the longest wait.
const LEAST_CIRCUITS: f64 = 6.0;

/// Follows every joint for `circuits` revolutions of a line that has settled; not given: twice the longest wait.
///
/// Timers and counters are followed passage by passage, in running time. Rounds by hand come at their mean interval and
/// miss by chance, drops fall by chance: there the record is one possible course, the same at every call.
pub fn shot_record(line: &Line, circuits: Option<i64>) -> Result<ShotRecord> {
    let worked = Worked::of(line)?;
    let layout = &worked.course.layout;
    let joints = layout.joints as usize;
    let (by_chance, met_in_a_circuit) = match &worked.survey.si.lubrication {
        LubricationSi::Manual(manual) => (true, layout.circuit_time / (manual.interval * worked.survey.running_share)),
        LubricationSi::Drip(_) => (true, worked.reach.pass_chance.unwrap_or(1.0)),
        LubricationSi::Spray(_) | LubricationSi::Synchronised(_) => (false, 1.0),
    };
    let most = (MOST_PASSAGES / 2.0 / (joints as f64 * met_in_a_circuit)).floor().clamp(1.0, MOST_CIRCUITS);
    let circuits = match circuits {
        Some(circuits) if circuits >= 1 && circuits as f64 <= most => circuits as f64,
        Some(circuits) => {
            let message = format!("circuits = {circuits} cannot be followed for {joints} joints: give 1 to {most}");
            return Err(Error::new(Code::OutOfRange, "circuits", message)
                .number(circuits as f64)
                .limit(format!("1 to {most}")));
        }
        None => (2.0 * worked.reach.worst_wait / layout.circuit_time).ceil().max(LEAST_CIRCUITS).min(most),
    };
    let horizon = circuits * layout.circuit_time;
    // where chance decides, a joint that is not met by chance is none that is never reached
    let reachable = if by_chance { ((1.0 - worked.reach.never) * joints as f64).round() as usize } else { 0 };
    let mut joint_oil = Filling::new(&worked.oiling, worked.reach.dose, worked.reach.mean_reached, joints, reachable);
    let (mut time, mut joint) = (Vec::new(), Vec::new());
    // the first half lets the fills settle; what people see is the second
    shots_of(&worked, 2.0 * horizon, &mut |which, when| {
        joint_oil.shoot(which, when);
        if when >= horizon {
            time.push(when - horizon);
            joint.push(which as i64);
        }
    })?;
    let spot = worked.oiling.application.spot;
    let point = layout.position(spot.section).map_or(0.0, |at| {
        let before: f64 = layout.places[..at].iter().map(|place| place.length).sum();
        before + spot.position * layout.places[at].length
    });
    // the counted chain goes round in its own time: its joints share the length of the sections
    let spacing = layout.length / joints as f64;
    let record = ShotRecordSi {
        joints: joints as i64,
        horizon,
        by_chance,
        time,
        joint,
        // after whole circuits the first joint stands at the point again
        position: (0..joints).map(|j| (point - j as f64 * spacing).rem_euclid(layout.length)).collect(),
        fill: joint_oil.at(2.0 * horizon),
    };
    Ok(ShotRecord::public(record, &ONE))
}

/// Calls `on_shot` with joint and running time (s) of every shot up to `until`.
fn shots_of(worked: &Worked, until: f64, on_shot: &mut dyn FnMut(usize, f64)) -> Result<()> {
    let layout = &worked.course.layout;
    let joints = layout.joints as usize;
    let circuit = &worked.survey.si.circuit;
    let segments = [Segment { duration: until, speed: layout.speed }];
    let walk = Simulation {
        loop_length: layout.speed * layout.circuit_time,
        joints,
        segments: &segments,
        run: until,
        dwell: 0.0,
        clock: Clock::Machine,
        interlocked: true,
        phase: 0.0,
        every: 1,
        counter_reset: false,
    };
    match &worked.survey.si.lubrication {
        LubricationSi::Manual(manual) => {
            let interval = manual.interval * worked.survey.running_share;
            let within_reach = ((1.0 - manual.unreached_share) * joints as f64).round() as usize;
            let mut round = 0;
            while (round as f64 + 0.5) * interval < until {
                for joint in 0..within_reach {
                    if chance(round * joints as u64 + joint as u64) >= manual.miss_share {
                        on_shot(joint, (round as f64 + 0.5) * interval);
                    }
                }
                round += 1;
            }
            Ok(())
        }
        LubricationSi::Drip(_) => {
            let hit = worked.reach.pass_chance.unwrap_or(1.0);
            for joint in 0..joints {
                // the joint passes first after its share of a circuit; then chance says how many circuits it waits
                let (mut passage, mut shot) = (0.0, 0);
                loop {
                    let share = chance(shot * joints as u64 + joint as u64);
                    passage += if hit < 1.0 { drip_wait(hit, share) } else { 1.0 };
                    let when = (passage - 1.0 + joint as f64 / joints as f64) * layout.circuit_time;
                    if when >= until {
                        break;
                    }
                    on_shot(joint, when);
                    shot += 1;
                }
            }
            Ok(())
        }
        LubricationSi::Spray(spray) => {
            let period = spray.timer.run + spray.timer.dwell;
            let zone_time = spray.zone_length / layout.speed;
            let run =
                Spray { flow: 0.0, points: 1.0, capture: 1.0, run: spray.timer.run, period, zone_time }.reaching_run();
            observe(&Simulation { run, dwell: period - run, ..walk }, on_shot).map(|_| ())
        }
        LubricationSi::Synchronised(applicator) => {
            let timed = match &applicator.timer {
                Some(timer) => Simulation { run: timer.run, dwell: timer.dwell, ..walk },
                None => walk,
            };
            let counted = Simulation { every: applicator.every_nth as u64, ..timed };
            observe(&counted, &mut |joint, when| {
                let hidden = circuit
                    .attachment_every
                    .is_some_and(|pattern| circuit.attachment_blocks.contains(&(joint as i64 % pattern)));
                if !hidden {
                    on_shot(joint, when);
                }
            })
            .map(|_| ())
        }
    }
}

/// A number from 0 to 1 that looks random, the same for the same `index` (SplitMix64: Steele, Lea and Flood 2014).
fn chance(index: u64) -> f64 {
    let mut z = index.wrapping_add(1).wrapping_mul(0x9E37_79B9_7F4A_7C15);
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
}

/// Oil in every joint, as a share of what it holds.
struct Filling {
    dose: f64,
    loss_rate: f64,
    start: f64,
    /// Fill after the last shot, and when that was; none: never shot.
    last: Vec<Option<(f64, f64)>>,
}

impl Filling {
    /// Joints below `reachable` get oil sooner or later, whether a shot falls in the time that is followed or not.
    fn new(oiling: &Oiling, dose: f64, start: f64, joints: usize, reachable: usize) -> Filling {
        let last = (0..joints).map(|joint| (joint < reachable).then_some((start, 0.0))).collect();
        Filling { dose: dose / oiling.capacity.total, loss_rate: oiling.loss_rate, start, last }
    }

    fn shoot(&mut self, joint: usize, when: f64) {
        let before = self.last[joint].map_or(self.start, |(fill, shot)| self.left(fill, when - shot));
        self.last[joint] = Some((at_shot(before, self.dose, 1.0).0, when));
    }

    fn left(&self, fill: f64, time: f64) -> f64 {
        between_shots(fill, self.loss_rate, 0.0, time)
    }

    /// Fill of every joint at a time; 0 for one that never got oil.
    fn at(&self, time: f64) -> Vec<f64> {
        self.last.iter().map(|last| last.map_or(0.0, |(fill, shot)| self.left(fill, time - shot))).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::evaluate;

    fn demo(text: &str) -> Line {
        Line::from_toml(text).unwrap()
    }

    #[test]
    fn the_joints_without_a_shot_are_those_never_reached() {
        for text in [
            include_str!("../../../python/pinfilm/data/oven_now.toml"),
            include_str!("../../../python/pinfilm/data/oven_proposed.toml"),
            include_str!("../../../python/pinfilm/data/paint_proposed.toml"),
        ] {
            let line = demo(text);
            let (result, record) = (evaluate(&line).unwrap(), shot_record(&line, None).unwrap());
            let shot: std::collections::BTreeSet<i64> = record.joint.iter().copied().collect();
            let never = 1.0 - shot.len() as f64 / record.joints as f64;
            // the closed form counts lengths of chain, this counts joints
            assert!((never - result.fill.never_reached).abs() <= 2.0 / record.joints as f64, "{never}");
            let mean: f64 = record.fill.iter().sum::<f64>() / record.joints as f64;
            assert!((mean - result.fill.mean_fill).abs() < 0.1, "{mean} {}", result.fill.mean_fill);
            assert!(record.time_h.iter().all(|time| (0.0..=record.horizon_h).contains(time)));
        }
    }

    #[test]
    fn chance_is_said_and_repeats() {
        for text in [
            include_str!("../../../python/pinfilm/data/floor_now.toml"),
            include_str!("../../../python/pinfilm/data/packing_now.toml"),
        ] {
            let line = demo(text);
            let (result, record) = (evaluate(&line).unwrap(), shot_record(&line, None).unwrap());
            assert_eq!(record, shot_record(&line, None).unwrap());
            assert!(record.by_chance);
            let empty = record.fill.iter().filter(|&&fill| fill == 0.0).count() as f64 / record.joints as f64;
            assert!((empty - result.fill.never_reached).abs() <= 1.0 / record.joints as f64, "{empty}");
            let shots = record.time_h.len() as f64 / record.joints as f64;
            assert!(shots > 1.0, "{shots} shots a joint");
        }
        assert!(shot_record(&demo(include_str!("../../../python/pinfilm/data/oven_now.toml")), Some(0)).is_err());
    }

    #[test]
    fn chance_is_even() {
        let mean = (0..10_000).map(chance).sum::<f64>() / 10_000.0;
        assert!((mean - 0.5).abs() < 0.01, "{mean}");
    }
}
