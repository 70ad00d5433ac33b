//! Timers with few cells: the phases of a joint repeat after a cycle short enough to be walked whole.

use super::JointOil;
use super::block::Totals;
use super::walk::{Walk, settled};
use crate::lubrication::rotation::Rotation;

/// Shots a cycle up to which whole cycles are walked.
pub(super) const LONGEST: i64 = 8192;
/// Shots to forget the start, where no fixed point is at hand: at least, at most.
const BURN: (f64, f64) = (1024.0, 50_000.0);
/// k t after which the start is forgotten.
const FORGOTTEN: f64 = 30.0;

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
    let more = rest as f64 / rotation.cell as f64;
    let classes = [(more, 0, shots + 1), (1.0 - more, rest, shots)];
    let mut all = Cycle { mean: 0.0, lowest: f64::INFINITY, overflow: 0.0, after: 0.0 };
    let mut shots_per_time = 0.0;
    let time = rotation.circuits_to_repeat() as f64 * circuit;
    for (share, start, shots) in classes.into_iter().filter(|class| class.0 > 0.0) {
        let first = if oil.uptake > 0.0 {
            let decay = oil.loss_rate * time / shots as f64;
            let burn = (FORGOTTEN / decay).clamp(BURN.0, BURN.1);
            let cycles = (burn / shots as f64).ceil() as i64;
            (0..cycles).fold(guess, |fill, _| walk.cross(start, shots, fill, &mut { Totals::NONE }))
        } else {
            let (top, added) = walk.map(start, shots);
            settled(top, added, oil.loss_rate * time)
        };
        let mut totals = Totals::NONE;
        walk.cross(start, shots, first, &mut totals);
        all.mean += share * totals.integral / totals.time;
        all.lowest = all.lowest.min(totals.lowest);
        all.overflow += share * totals.overflow;
        all.after += share * totals.after;
        shots_per_time += share * totals.shots;
    }
    Cycle { overflow: all.overflow / shots_per_time, after: all.after / shots_per_time, ..all }
}
