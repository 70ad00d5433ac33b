//! The walk of a joint's phase through the run of a timer, one block of equal waits at a time.
//!
//! A shot joint at phase x waits n1 circuits while x < run - d1, n2 while x >= d2, else n1 + n2 (Slater 1967). Runs of equal
//! waits form blocks, and blocks start in three short intervals only, so that five kinds of block are all there are:
//! their exponentials are worked out once.

use super::JointOil;
use super::block::{Block, Totals};
use crate::lubrication::rotation::Rotation;

/// Starts spread evenly over the places where blocks begin.
const STARTS: usize = 16;
/// Blocks whose map gives the first guess of the settled fill.
const GUESSED: usize = 64;
/// Blocks after which burning in ends, if it has not forgotten its start before.
const BURNT: usize = 1024;
/// Blocks that are counted.
const COUNTED: usize = 512;
/// k t after which the start is forgotten: exp(-30) = 1e-13.
const FORGOTTEN: f64 = 30.0;

/// The five kinds of block and where each begins. Built once for a rotation and a joint.
pub(super) struct Walk {
    /// A block that starts at x is of kind (number of these not above x).
    limits: [i64; 4],
    /// Kinds 0 to 4; 5 to 7 repeat 4, so that three bits always find one.
    blocks: [Block; 8],
    moves: [i64; 8],
    maps: [(f64, f64); 8],
    decays: [f64; 8],
    shots: [i64; 8],
    /// The intervals in which blocks begin, as (start, length).
    begins: [(i64, i64); 3],
    capacity: f64,
}

impl Walk {
    /// For an unlocked timer that stops; `circuit` s.
    pub(super) fn new(rotation: &Rotation, circuit: f64, oil: &JointOil) -> Self {
        let Rotation { n1, d1, n2, d2, run, .. } = *rotation;
        let forth = (run - d1 + d1 - 1) / d1; // waits n1 from x = 0
        let back = (run - 1) / d2; // waits n2 from x = run - 1
        let kinds = [
            (n1, forth, d1),
            (n1, (forth - 1).max(1), d1),
            (n1 + n2, 1, d1 - d2),
            (n2, (back - 1).max(1), -d2),
            (n2, back, -d2),
        ];
        let kind = |i: usize| kinds[i.min(4)];
        let blocks = std::array::from_fn(|i| Block::new(kind(i).0 as f64 * circuit, kind(i).1, oil));
        Walk {
            limits: [run - d1 - (forth - 1) * d1, run - d1, d2, back * d2],
            moves: std::array::from_fn(|i| kind(i).1 * kind(i).2),
            maps: blocks.map(|block| block.map()),
            decays: blocks.map(|block| block.decay_of_all()),
            shots: std::array::from_fn(|i| kind(i).1),
            begins: [(0, d1.min(run - d1)), (run - d1, d1 + d2 - run), (d2.max(run - d2), run - d2.max(run - d2))],
            blocks,
            capacity: oil.capacity,
        }
    }

    /// Kind of the block that starts at phase `x`.
    #[inline]
    fn kind(&self, x: i64) -> usize {
        let [a, b, c, d] = self.limits;
        (usize::from(x >= a) + usize::from(x >= b) + usize::from(x >= c) + usize::from(x >= d)) & 7
    }

    /// Fill after the block of kind `i`, without sums; nothing drained at a constant rate.
    #[inline]
    fn quick(&self, i: usize, fill: f64) -> f64 {
        let (factor, added) = self.maps[i];
        (factor * fill + added).min(self.capacity)
    }

    /// Crosses blocks from `x` until `shots` shots have been fired.
    pub(super) fn cross(&self, mut x: i64, shots: i64, mut fill: f64, totals: &mut Totals) -> f64 {
        let mut fired = 0;
        while fired < shots {
            let i = self.kind(x);
            fill = self.blocks[i].cross(fill, totals);
            fired += self.shots[i];
            x += self.moves[i];
        }
        fill
    }

    /// What `shots` shots from `x` make of a full joint, and the constant B of the uncapped map A V + B.
    pub(super) fn map(&self, mut x: i64, shots: i64) -> (f64, f64) {
        let (mut top, mut added, mut fired) = (self.capacity, 0.0, 0);
        while fired < shots {
            let i = self.kind(x);
            top = self.quick(i, top);
            added = self.maps[i].0 * added + self.maps[i].1;
            fired += self.shots[i];
            x += self.moves[i];
        }
        (top, added)
    }

    /// The settled walk from evenly spread starts; `guess` is the fill after a shot to begin with if oil is also drained at
    /// a constant rate (`drained`), when the maps do not hold.
    pub(super) fn from_many_starts(&self, drained: bool, guess: f64) -> Totals {
        let mut x = self.starts();
        let mut fill = if drained { [guess; STARTS] } else { self.first_fill(x) };
        let mut totals = Totals::NONE;
        let mut decay = [0.0; STARTS];
        let mut ignored = Totals::NONE;
        for _ in 0..BURNT {
            let mut busy = false;
            for lane in 0..STARTS {
                if decay[lane] < FORGOTTEN {
                    busy = true;
                    let i = self.kind(x[lane]);
                    fill[lane] = if drained {
                        self.blocks[i].cross(fill[lane], &mut ignored)
                    } else {
                        self.quick(i, fill[lane])
                    };
                    decay[lane] += self.decays[i];
                    x[lane] += self.moves[i];
                }
            }
            if !busy {
                break;
            }
        }
        for _ in 0..COUNTED {
            for lane in 0..STARTS {
                let i = self.kind(x[lane]);
                fill[lane] = self.blocks[i].cross(fill[lane], &mut totals);
                x[lane] += self.moves[i];
            }
        }
        totals
    }

    /// Sixteen phases spread evenly over the joined intervals where blocks begin.
    fn starts(&self) -> [i64; STARTS] {
        let all: i64 = self.begins.iter().map(|(_, length)| length).sum();
        std::array::from_fn(|i| {
            let mut tick = (2 * i as i64 + 1) * all / (2 * STARTS as i64);
            for (start, length) in self.begins {
                if tick < length {
                    return start + tick;
                }
                tick -= length;
            }
            0
        })
    }

    /// Fill that the first blocks from each start would settle at if they repeated for ever.
    fn first_fill(&self, mut x: [i64; STARTS]) -> [f64; STARTS] {
        let mut top = [self.capacity; STARTS];
        let mut added = [0.0; STARTS];
        let mut decay = [0.0; STARTS];
        for _ in 0..GUESSED {
            for lane in 0..STARTS {
                let i = self.kind(x[lane]);
                top[lane] = self.quick(i, top[lane]);
                added[lane] = self.maps[i].0 * added[lane] + self.maps[i].1;
                decay[lane] += self.decays[i];
                x[lane] += self.moves[i];
            }
        }
        std::array::from_fn(|lane| settled(top[lane], added[lane], decay[lane]))
    }
}

/// Fixed point of V → min(top, A V + B), where A = exp(-`decay`) and B = `added`.
pub(super) fn settled(top: f64, added: f64, decay: f64) -> f64 {
    if decay > 0.0 { top.min(added / -(-decay).exp_m1()) } else { top }
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
                for start in walk.starts() {
                    let (mut phase, mut x) = (start, start);
                    for _ in 0..40 {
                        let i = walk.kind(x);
                        for _ in 0..walk.shots[i] {
                            loop {
                                phase = (phase + circuit) % rotation.period;
                                if phase < run { break; }
                            }
                        }
                        x += walk.moves[i];
                        prop_assert_eq!(x, phase);
                    }
                }
            }
        }
    }
}
