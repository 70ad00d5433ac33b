//! One word: what several blocks in a row make of the fill, as far as it is linear in the fill at the start.

use super::block::Totals;
use super::walk::Walk;

/// A linear function of the fill at the start.
#[derive(Clone, Copy)]
pub(super) struct Linear {
    slope: f64,
    value: f64,
}

impl Linear {
    pub fn at(self, start: f64) -> f64 {
        self.slope * start + self.value
    }

    /// This and another whose start is `then` of this one's.
    fn and(self, other: Linear, then: Linear) -> Linear {
        Linear { slope: self.slope + other.slope * then.slope, value: self.value + other.at(then.value) }
    }
}

/// What a crossing that met the cap gave last: near a lock the same start comes again and again.
#[derive(Clone, Copy)]
pub(super) struct Crossed {
    pub start: f64,
    pub end: f64,
    pub totals: Totals,
}

const NOTHING_YET: Crossed = Crossed { start: f64::NAN, end: 0.0, totals: Totals::NONE };
const NOT_LOOKED_FOR: (f64, f64) = (0.0, f64::NEG_INFINITY);

/// Blocks in a row from any phase of a stretch.
#[derive(Clone, Copy)]
pub(super) struct Word {
    /// The phases that it starts from: first, and first beyond.
    pub from: (i64, i64),
    /// Ticks by which the phase moves.
    pub by: i64,
    pub shots: i64,
    pub time: f64,
    /// k times the time.
    pub decay: f64,
    /// The fill at the end if the cap is not met, and at most.
    pub end: Linear,
    pub top: f64,
    /// Greatest start for which the cap is not met.
    pub free: f64,
    /// Sums for such a start.
    pub after: Linear,
    pub integral: Linear,
    /// A start, and a fill that the word does not fall below from there.
    pub floor: (f64, f64),
    pub known: Crossed,
    /// The two words of the level below.
    pub halves: [usize; 2],
}

impl Word {
    /// One block.
    pub fn block(walk: &Walk, kind: usize) -> Word {
        let (block, capacity) = (&walk.blocks[kind], walk.capacity);
        let (slope, value) = block.map();
        let (after_slope, after) = block.after();
        Word {
            from: walk.stretch(kind),
            by: walk.by[kind],
            shots: walk.shots[kind],
            time: block.time(),
            decay: block.decay_of_all(),
            end: Linear { slope, value },
            top: capacity,
            // within a block the fill rises all the way or falls all the way
            free: (capacity - value) / slope,
            after: Linear { slope: after_slope, value: after },
            integral: Linear { slope: after_slope * block.life(), value: after * block.life() },
            floor: NOT_LOOKED_FOR,
            known: NOTHING_YET,
            halves: [0, 0],
        }
    }

    /// This word, which is number `first` of its level, and then the word number `second`.
    pub fn then(&self, next: &Word, [first, second]: [usize; 2]) -> Word {
        Word {
            from: (self.from.0.max(next.from.0 - self.by), self.from.1.min(next.from.1 - self.by)),
            by: self.by + next.by,
            shots: self.shots + next.shots,
            time: self.time + next.time,
            decay: self.decay + next.decay,
            end: Linear { slope: self.end.slope * next.end.slope, value: next.end.at(self.end.value) },
            top: next.end.at(self.top).min(next.top),
            free: self.free.min((next.free - self.end.value) / self.end.slope),
            after: self.after.and(next.after, self.end),
            integral: self.integral.and(next.integral, self.end),
            floor: NOT_LOOKED_FOR,
            known: NOTHING_YET,
            halves: [first, second],
        }
    }
}
