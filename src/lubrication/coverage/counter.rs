//! Applicators that count joints: every n-th joint, attachments in the way, which joint comes when.

use super::timer::gcd;
use crate::error::{Code, Error, Result};

/// What a counter that doses every n-th joint reaches; the counter is never reset.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct EveryNth {
    /// Joints on the loop.
    pub joints: i64,
    /// Joints that are ever dosed.
    pub reached: i64,
    /// Joints that are never dosed.
    pub never: i64,
    /// Joints from one dosed joint to the next along the chain.
    pub spacing: i64,
    /// Circuits between two doses at the same joint.
    pub wait: i64,
}

/// Doses every `every`-th of `joints` joints without ever resetting the counter.
///
/// Reached are `joints`/gcd(`joints`, `every`). A loop without a cranked link has an even number of joints: `every`
/// must then be odd. Exact, by modular arithmetic; an error unless both are at least 1.
pub fn every_nth(joints: i64, every: i64) -> Result<EveryNth> {
    for (what, count) in [("joints", joints), ("every_nth", every)] {
        if count < 1 {
            let message = format!("{what} = {count}, but a counter needs at least one joint to count");
            return Err(Error::new(Code::OutOfRange, what, message).number(count as f64).limit("at least 1"));
        }
    }
    let spacing = gcd(every, joints);
    let reached = joints / spacing;
    Ok(EveryNth { joints, reached, never: joints - reached, spacing, wait: every / spacing })
}

/// The least favourable of [`every_nth`] over loops of `joints` ± `doubt` joints.
///
/// For joint numbers that were computed from a chain length instead of counted: one joint more or less turns full
/// coverage into half. Gives the loop with the lowest share of joints reached, the number nearest `joints` first.
pub fn every_nth_worst_over(joints: i64, every: i64, doubt: i64) -> Result<EveryNth> {
    let mut worst = every_nth(joints, every)?;
    for off in 1..=doubt {
        for count in [joints - off, joints + off] {
            // A share of 1/spacing is reached: the widest spacing is the worst.
            if count >= 1 && gcd(every, count) > worst.spacing {
                worst = every_nth(count, every)?;
            }
        }
    }
    Ok(worst)
}

/// Joints that a counter doses where attachments stand in the way of some of its shots.
///
/// `attachment_every`: pitches after which the attachments repeat, a divisor of `joints`; `blocked`: places in that
/// pattern (0 up to `attachment_every`) whose gap is covered on the side of the applicator; the counter starts on joint
/// 0. Exact, by the Chinese remainder theorem.
pub fn every_nth_with_attachments(joints: i64, every: i64, attachment_every: i64, blocked: &[i64]) -> Result<i64> {
    let open = every_nth(joints, every)?;
    if attachment_every < 1 || joints % attachment_every != 0 {
        let what = "attachment_every";
        let message = format!(
            "attachments every {attachment_every} pitches do not close on a loop of {joints} joints: the number of \
             joints must be a multiple of their spacing"
        );
        return Err(Error::new(Code::Inconsistent, what, message).number(attachment_every as f64));
    }
    let mut places: Vec<i64> = blocked.iter().map(|place| place.rem_euclid(attachment_every)).collect();
    places.sort_unstable();
    places.dedup();
    let common = gcd(open.spacing, attachment_every);
    let meeting = places.iter().filter(|place| *place % common == 0).count() as i64;
    let together = open.spacing / common * attachment_every; // least common multiple
    Ok(open.reached - meeting * (joints / together))
}

/// The least number of joints per dose, at least `least`, that reaches every joint of the loop.
///
/// `joints` >= 1. `least` is what the injector can follow: its time for a shot over the passing time of a joint.
pub fn least_coprime(joints: i64, least: i64) -> i64 {
    let mut every = least.max(1);
    while gcd(every, joints) != 1 {
        every += 1;
    }
    every
}

/// Joints that pass an application point in a second: `speed` m/s over `pitch` m. Exact at constant speed.
pub fn joints_per_second(speed: f64, pitch: f64) -> f64 {
    speed / pitch
}

/// Oil fired in one circuit, m³: a `shot` m³ from each of `points` nozzles at every `every`-th of `joints` joints.
///
/// The mean over many circuits where `every` does not divide the joints. Exact.
pub fn oil_per_circuit(joints: f64, every: f64, points: f64, shot: f64) -> f64 {
    joints / every * points * shot
}

/// Joints hit by the first `shots` shots, in the order of the chain; shot 0 hits joint 0, each next one `step` on.
///
/// `joints` >= 1, `step` >= 0. Exact.
pub fn joints_hit(joints: i64, step: i64, shots: i64) -> Vec<i64> {
    let mut hit: Vec<i64> =
        (0..shots.min(joints)).map(|shot| (i128::from(shot) * i128::from(step) % i128::from(joints)) as i64).collect();
    hit.sort_unstable();
    hit.dedup();
    hit
}

/// Shots after the one at joint 0 until `joint` is hit, each `step` joints on; `None` if it never is.
///
/// `joints` >= 1, `step` and `joint` >= 0. Exact: the modular inverse by the extended Euclidean algorithm.
pub fn shots_until(joints: i64, step: i64, joint: i64) -> Option<i64> {
    let (mut rest, mut next) = (joints, step % joints);
    let (mut factor, mut next_factor) = (0_i64, 1_i64);
    while next != 0 {
        let times = rest / next;
        (rest, next) = (next, rest - times * next);
        (factor, next_factor) = (next_factor, factor - times * next_factor);
    }
    // Now factor · step = rest modulo joints, and rest is their greatest common divisor.
    let joint = joint % joints;
    (joint % rest == 0).then(|| {
        let alike = i128::from(joints / rest);
        (i128::from(joint / rest) * i128::from(factor)).rem_euclid(alike) as i64
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn even_loops_need_odd_counts() {
        assert_eq!(every_nth(620, 40).unwrap().reached, 31);
        assert_eq!(every_nth(900, 7).unwrap().never, 0);
        assert_eq!(least_coprime(900, 2), 7);
        assert_eq!(least_coprime(2400, 11), 11);
        assert_eq!(every_nth(0, 3).unwrap_err().code, Code::OutOfRange);
    }

    #[test]
    fn a_computed_number_of_joints_is_judged_by_its_neighbours() {
        let worst = every_nth_worst_over(899, 30, 4).unwrap();
        assert_eq!((worst.joints, worst.spacing), (900, 30));
        assert_eq!(every_nth_worst_over(900, 19, 4).unwrap().never, 0);
        assert_eq!(every_nth_worst_over(2, 3, 4).unwrap().spacing, 3);
    }

    #[test]
    fn attachments_must_close_on_the_loop() {
        assert_eq!(every_nth_with_attachments(2400, 4, 6, &[0, 1]).unwrap(), 400);
        assert_eq!(every_nth_with_attachments(2400, 4, 7, &[0]).unwrap_err().code, Code::Inconsistent);
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..Default::default() })]
        #[test]
        fn counted_as_the_chain_goes_round(
            pattern in 1..=12_i64, repeats in 1..=20_i64, every in 1..=60_i64,
            blocked in proptest::collection::vec(0..12_i64, 0..4),
        ) {
            let joints = pattern * repeats;
            let dosed: std::collections::BTreeSet<i64> = (0..joints).map(|shot| shot * every % joints).collect();
            prop_assert_eq!(every_nth(joints, every).unwrap().reached, dosed.len() as i64);
            let blocked: Vec<i64> = blocked.into_iter().map(|b| b % pattern).collect();
            let open = dosed.iter().filter(|&&joint| !blocked.contains(&(joint % pattern))).count() as i64;
            prop_assert_eq!(every_nth_with_attachments(joints, every, pattern, &blocked).unwrap(), open);
            for joint in 0..joints {
                let found = (0..joints).find(|shot| shot * every % joints == joint);
                prop_assert_eq!(shots_until(joints, every, joint), found);
            }
        }
    }
}
