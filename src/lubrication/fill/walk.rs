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
/// Difference, as a share of the capacity, below which two fills are the same.
const SAME: f64 = 1e-13;

/// A kind of block as far as the walk needs it between sums: where it leads and what it makes of the fill.
#[derive(Clone, Copy)]
struct Step {
    /// Ticks by which the phase moves.
    by: i64,
    /// The block as V → min(capacity, A V + B).
    factor: f64,
    added: f64,
    /// k times the time it takes.
    decay: f64,
}

/// The five kinds of block and where each begins. Built once for a rotation and a joint.
pub(super) struct Walk {
    /// A block that starts at x is of the kind numbered by how many of these are not above x.
    limits: [i64; 4],
    /// Kinds 0 to 4; 5 to 7 repeat 4, so that three bits always find one.
    blocks: [Block; 8],
    steps: [Step; 8],
    shots: [i64; 8],
    /// The intervals in which blocks begin, as (start, length).
    begins: [(i64, i64); 3],
    capacity: f64,
}

/// A block that met the cap, as it was crossed last: near a lock the same start comes again and again.
#[derive(Clone, Copy)]
struct Crossed {
    start: f64,
    end: f64,
    totals: Totals,
}

/// The blocks crossed last, by kind.
type Memory = [Crossed; 8];
const NOTHING_YET: Memory = [Crossed { start: f64::NAN, end: 0.0, totals: Totals::NONE }; 8];

impl Walk {
    /// For an unlocked timer that stops; `circuit` s.
    pub(super) fn new(rotation: &Rotation, circuit: f64, oil: &JointOil) -> Self {
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
        let kind = |i: usize| kinds[i.min(4)];
        let blocks: [Block; 8] = std::array::from_fn(|i| Block::new(kind(i).0 as f64 * circuit, kind(i).1, oil));
        Walk {
            limits: [run - d1 - (forth - 1) * d1, run - d1, d2, back * d2],
            steps: std::array::from_fn(|i| {
                let (factor, added) = blocks[i].map();
                Step { by: kind(i).1 * kind(i).2, factor, added, decay: blocks[i].decay_of_all() }
            }),
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

    /// Fill after a block, without sums; holds if nothing is drained at a constant rate.
    #[inline]
    fn quick(&self, step: &Step, fill: f64) -> f64 {
        (step.factor * fill + step.added).min(self.capacity)
    }

    /// Crosses the block of kind `i` from `fill`, adding to `totals`.
    #[inline]
    fn summed(&self, i: usize, fill: f64, memory: &mut Memory, totals: &mut Totals) -> f64 {
        let block = &self.blocks[i];
        if let Some(end) = block.cross_free(fill, totals) {
            return end;
        }
        let known = &mut memory[i];
        if known.start != fill {
            let mut new = Crossed { start: fill, end: 0.0, totals: Totals::NONE };
            new.end = block.cross_capped_or_dry(fill, &mut new.totals);
            *known = new;
        }
        totals.join(&known.totals);
        known.end
    }

    /// Crosses blocks from each of the phases `x` until each has fired its `shots`; returns the fills and the totals.
    pub(super) fn cross<const N: usize>(
        &self,
        mut x: [i64; N],
        mut shots: [i64; N],
        mut fill: [f64; N],
    ) -> ([f64; N], [Totals; N]) {
        let mut totals = [Totals::NONE; N];
        let mut memory = NOTHING_YET;
        while shots.iter().any(|&left| left > 0) {
            for lane in 0..N {
                if shots[lane] > 0 {
                    let i = self.kind(x[lane]);
                    fill[lane] = self.summed(i, fill[lane], &mut memory, &mut totals[lane]);
                    shots[lane] -= self.shots[i];
                    x[lane] += self.steps[i].by;
                }
            }
        }
        (fill, totals)
    }

    /// Phases of the classes of joints and the settled fills there, of a walk that repeats after `shots` shots (`decay`/k).
    ///
    /// Starts from the phases `x` and stops where an empty and a full joint have become the same, at the cap or by
    /// forgetting; else the whole cycle gives the map whose fixed point it is.
    pub(super) fn settled<const N: usize>(
        &self,
        mut x: [i64; N],
        mut shots: [i64; N],
        decay: f64,
    ) -> ([i64; N], [f64; N]) {
        let (mut full, mut empty) = ([self.capacity; N], [0.0; N]);
        let mut same = [false; N];
        while (0..N).any(|lane| shots[lane] > 0 && !same[lane]) {
            for lane in 0..N {
                if shots[lane] > 0 && !same[lane] {
                    let i = self.kind(x[lane]);
                    let step = &self.steps[i];
                    full[lane] = self.quick(step, full[lane]);
                    empty[lane] = step.factor * empty[lane] + step.added;
                    shots[lane] -= self.shots[i];
                    x[lane] += step.by;
                    same[lane] = full[lane] - empty[lane] <= SAME * self.capacity;
                }
            }
        }
        let fill = |lane| if same[lane] { full[lane] } else { fixed_point(full[lane], empty[lane], decay) };
        (x, std::array::from_fn(fill))
    }

    /// The settled walk from evenly spread starts.
    ///
    /// `guess` is the fill after a shot to begin with if oil is also drained at a constant rate (`drained`), when blocks
    /// are not maps V → min(capacity, A V + B).
    pub(super) fn many_starts(&self, drained: bool, guess: f64) -> Totals {
        let mut x = self.starts();
        let mut fill = if drained { [guess; STARTS] } else { self.first_fill(x) };
        let mut decay = [0.0; STARTS];
        let mut ignored = Totals::NONE;
        for _ in 0..BURNT {
            let mut busy = false;
            for lane in 0..STARTS {
                if decay[lane] < FORGOTTEN {
                    busy = true;
                    let i = self.kind(x[lane]);
                    let step = &self.steps[i];
                    fill[lane] = if drained {
                        self.blocks[i].cross(fill[lane], &mut ignored)
                    } else {
                        self.quick(step, fill[lane])
                    };
                    decay[lane] += step.decay;
                    x[lane] += step.by;
                }
            }
            if !busy {
                break;
            }
        }
        let mut totals = Totals::NONE;
        let mut memory = NOTHING_YET;
        for _ in 0..COUNTED {
            for lane in 0..STARTS {
                let i = self.kind(x[lane]);
                fill[lane] = self.summed(i, fill[lane], &mut memory, &mut totals);
                x[lane] += self.steps[i].by;
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
                let step = &self.steps[self.kind(x[lane])];
                top[lane] = self.quick(step, top[lane]);
                added[lane] = step.factor * added[lane] + step.added;
                decay[lane] += step.decay;
                x[lane] += step.by;
            }
        }
        std::array::from_fn(|lane| fixed_point(top[lane], added[lane], decay[lane]))
    }
}

/// Fixed point of V → min(top, A V + B), where A = exp(-`decay`) and B = `added`.
fn fixed_point(top: f64, added: f64, decay: f64) -> f64 {
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
                        x += walk.steps[i].by;
                        prop_assert_eq!(x, phase);
                    }
                }
            }
        }
    }
}
