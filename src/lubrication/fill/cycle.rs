//! Timers with few cells: the phases of a joint repeat after a cycle short enough to be walked whole.

use super::JointOil;
use super::block::Totals;
use super::sample::fixed_point;
use super::walk::Walk;
use super::words::{Lane, Words};
use crate::lubrication::rotation::Rotation;

/// Shots a cycle up to which whole cycles are walked.
pub(super) const LONGEST: i64 = 8192;
/// Shots to forget the start, where no fixed point is at hand: at least, at most.
const BURN: (f64, f64) = (1024.0, 50_000.0);
/// k t after which the start is forgotten.
const FORGOTTEN: f64 = 30.0;
/// Difference, as a share of the capacity, below which two fills are the same.
const SAME: f64 = 1e-13;

/// Whether the cycle of an unlocked timer is short enough.
pub(super) fn short(rotation: &Rotation) -> bool {
    (rotation.run + rotation.cell - 1) / rotation.cell <= LONGEST
}

/// Averages of one cycle over the two classes of joints, each m³ or m³ a shot.
pub(super) struct Cycle {
    pub mean: f64,
    pub lowest: f64,
    pub overflow: f64,
    pub after: f64,
}

/// Walks one settled cycle of both classes; `circuit` s, `guess` the fill after a shot to begin with if `oil` drains.
///
/// Joints whose phase in the cell lies below `run` mod `cell` are shot once more a cycle than the others.
pub(super) fn whole(rotation: &Rotation, circuit: f64, oil: &JointOil, guess: f64) -> Cycle {
    let walk = Walk::new(rotation, circuit, oil);
    let (shots, rest) = (rotation.run / rotation.cell, rotation.run % rotation.cell);
    let time = rotation.circuits_to_repeat() as f64 * circuit;
    if rest == 0 {
        return one_cycle(&walk, oil, [1.0], [0], [shots], time, guess);
    }
    let more = rest as f64 / rotation.cell as f64;
    one_cycle(&walk, oil, [more, 1.0 - more], [0, rest], [shots + 1, shots], time, guess)
}

/// Averages over classes with shares of the joints, first phases and shots a cycle of `time` s.
fn one_cycle<const N: usize>(
    walk: &Walk,
    oil: &JointOil,
    share: [f64; N],
    start: [i64; N],
    shots: [i64; N],
    time: f64,
    guess: f64,
) -> Cycle {
    let mut words = Words::of(walk);
    let decay = oil.loss_rate * time;
    let mut all = Cycle { mean: 0.0, lowest: f64::INFINITY, overflow: 0.0, after: 0.0 };
    let mut shots_per_time = 0.0;
    for class in 0..N {
        let (phase, fill) = if walk.drained {
            let burn = (FORGOTTEN * shots[N - 1] as f64 / decay).clamp(BURN.0, BURN.1);
            let cycles = (burn / shots[N - 1] as f64).ceil() as i64;
            let once = |fill, _| counted(&mut words, start[class], shots[class], fill).0;
            (start[class], (0..cycles).fold(guess, once))
        } else {
            settled(&mut words, start[class], shots[class], decay)
        };
        let totals = counted(&mut words, phase, shots[class], fill).1;
        all.mean += share[class] * totals.integral / totals.time;
        all.lowest = all.lowest.min(totals.lowest);
        all.overflow += share[class] * totals.overflow;
        all.after += share[class] * totals.after;
        shots_per_time += share[class] * totals.shots;
    }
    Cycle { overflow: all.overflow / shots_per_time, after: all.after / shots_per_time, ..all }
}

/// Walks a cycle of so many shots; returns the fill and the totals.
fn counted(words: &mut Words, phase: i64, shots: i64, fill: f64) -> (f64, Totals) {
    let mut lane = Lane { shots, ..Lane::new(phase, fill) };
    let mut totals = Totals::NONE;
    while lane.going() {
        words.step(&mut lane, &mut totals);
    }
    (lane.fill, totals)
}

/// A phase of a class of joints and the settled fill there, of a walk that repeats after `shots` shots (`decay`/k).
///
/// Starts from `phase` and stops where an empty and a full joint have become the same, at the cap or by forgetting;
/// else the whole cycle gives the map whose fixed point it is.
fn settled(words: &mut Words, phase: i64, shots: i64, decay: f64) -> (i64, f64) {
    let capacity = words.walk().capacity;
    let mut full = Lane { shots, ..Lane::new(phase, capacity) };
    let mut empty = 0.0;
    while full.going() {
        words.hurry(&mut full, &mut empty);
        if full.fill - empty <= SAME * capacity {
            return (full.phase, full.fill);
        }
    }
    (full.phase, fixed_point(full.fill, empty, decay))
}
