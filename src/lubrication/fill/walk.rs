//! The walk of a joint's phase through the run of a timer, one block of equal waits at a time.
//!
//! A shot joint at phase x waits n1 circuits while x < run - d1, n2 while x >= d2, else n1 + n2 (Slater 1967). Runs of equal
//! waits form blocks, and blocks start in three short intervals only, so that five kinds of block are all there are:
//! their exponentials are worked out once.

use super::JointOil;
use super::block::Block;
use crate::lubrication::rotation::Rotation;

/// The five kinds of block and where each begins. Built once for a rotation and a joint.
pub(super) struct Walk {
    /// A block that starts at x is of the kind numbered by how many of these are not above x.
    limits: [i64; 4],
    pub blocks: [Block; Walk::KINDS],
    /// Ticks by which each moves the phase, and its shots.
    pub by: [i64; Walk::KINDS],
    pub shots: [i64; Walk::KINDS],
    /// The intervals in which blocks begin, as (start, length).
    begins: [(i64, i64); 3],
    pub capacity: f64,
    /// Whether oil is also drained at a constant rate, so that a block is no map V → min(capacity, A V + B).
    pub drained: bool,
}

impl Walk {
    pub const KINDS: usize = 5;

    /// For an unlocked timer that stops; `circuit` s.
    pub fn new(rotation: &Rotation, circuit: f64, oil: &JointOil) -> Self {
        let Rotation { n1, d1, n2, d2, run, .. } = *rotation;
        let forth = (run - 1) / d1; // waits n1 from x = 0
        let back = (run - 1) / d2; // waits n2 from x = run - 1
        let kinds = [
            (n1, forth, d1),
            (n1, (forth - 1).max(1), d1),
            (n1 + n2, 1, d1 - d2),
            (n2, (back - 1).max(1), -d2),
            (n2, back, -d2),
        ];
        Walk {
            limits: [run - d1 - (forth - 1) * d1, run - d1, d2, back * d2],
            blocks: kinds.map(|(circuits, waits, _)| Block::new(circuits as f64 * circuit, waits, oil)),
            by: kinds.map(|(_, waits, ticks)| waits * ticks),
            shots: kinds.map(|(_, waits, _)| waits),
            begins: [(0, d1.min(run - d1)), (run - d1, d1 + d2 - run), (d2.max(run - d2), run - d2.max(run - d2))],
            capacity: oil.capacity,
            drained: oil.uptake > 0.0,
        }
    }

    /// Kind of the block that starts at phase `x`.
    #[inline]
    pub fn kind(&self, x: i64) -> usize {
        let [a, b, c, d] = self.limits;
        usize::from(x >= a) + usize::from(x >= b) + usize::from(x >= c) + usize::from(x >= d)
    }

    /// The phases at which blocks of a kind start: first, and first beyond.
    pub fn stretch(&self, kind: usize) -> (i64, i64) {
        let limit = |i: usize| self.limits.get(i).copied();
        let from = kind.checked_sub(1).and_then(limit).unwrap_or(i64::MIN / 4);
        (from, limit(kind).unwrap_or(i64::MAX / 4))
    }

    /// So many phases spread evenly over the joined intervals where blocks begin.
    pub fn starts<const N: usize>(&self) -> [i64; N] {
        let all: i64 = self.begins.iter().map(|(_, length)| length).sum();
        std::array::from_fn(|i| {
            let mut tick = (2 * i as i64 + 1) * all / (2 * N as i64);
            for (start, length) in self.begins {
                if tick < length {
                    return start + tick;
                }
                tick -= length;
            }
            0
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lubrication::rotation::of_timer;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn blocks_follow_the_shots_of_the_timer(circuit in 1..4000i64, run in 2..300i64, dwell in 1..900i64) {
            let rotation = of_timer(circuit, run, dwell);
            if !rotation.locked() {
                let oil = JointOil { dose: 0.1, capacity: 1.0, loss_rate: 1e-4, uptake: 0.0 };
                let walk = Walk::new(&rotation, 1.0, &oil);
                for start in walk.starts::<16>() {
                    let (mut phase, mut x) = (start, start);
                    for _ in 0..40 {
                        let i = walk.kind(x);
                        for _ in 0..walk.shots[i] {
                            loop {
                                phase = (phase + circuit) % rotation.period;
                                if phase < run { break; }
                            }
                        }
                        x += walk.by[i];
                        prop_assert_eq!(x, phase);
                    }
                }
            }
        }
    }
}
