//! Words of a walk: 2, 4, 8 or 16 blocks in a row, crossed at once.
//!
//! Which blocks follow a start depends only on where it lies, and few words occur: a word of m blocks belongs to one of
//! about 4m stretches of the run, found as the walk comes by. Two halves make a word, so that blocks are composed by
//! doubling: up to a start below the cap every sum is linear in the start, the end always is min(top, A V + B). Where the
//! cap is met on the way the word falls back on its halves, and in the end on the block.

use super::block::Totals;
use super::walk::Walk;
use super::word::{Crossed, Word};

/// Words have up to 2⁴ blocks.
const LEVELS: usize = 5;

/// Where a walk stands: phase, fill, k times the time so far, and what ends it.
#[derive(Clone, Copy)]
pub(super) struct Lane {
    pub phase: i64,
    pub fill: f64,
    pub decay: f64,
    /// Blocks and shots to go, and k t at which it ends: whichever comes first.
    pub blocks: i64,
    pub shots: i64,
    pub decay_limit: f64,
}

impl Lane {
    /// A walk without an end.
    pub fn new(phase: i64, fill: f64) -> Lane {
        Lane { phase, fill, decay: 0.0, blocks: i64::MAX, shots: i64::MAX, decay_limit: f64::INFINITY }
    }

    pub fn going(&self) -> bool {
        self.blocks > 0 && self.shots > 0 && self.decay < self.decay_limit
    }

    fn pass(&mut self, level: usize, word: &Word) {
        self.phase += word.by;
        self.decay += word.decay;
        self.blocks -= 1 << level;
        self.shots -= word.shots;
    }
}

/// The words found so far.
pub(super) struct Words<'a> {
    walk: &'a Walk,
    words: [Vec<Word>; LEVELS],
    /// Where each word starts and which it is, in order.
    places: [Vec<(i64, usize)>; LEVELS],
    /// The longest words that may be used: blocks alone where oil is drained at a constant rate.
    highest: usize,
}

impl<'a> Words<'a> {
    pub(super) fn of(walk: &'a Walk) -> Self {
        // so many stretches there are at most: five kinds of block have four limits
        let mut words: [Vec<Word>; LEVELS] = std::array::from_fn(|level| Vec::with_capacity((4 << level) + 1));
        words[0].extend((0..Walk::KINDS).map(|kind| Word::block(walk, kind)));
        let places = std::array::from_fn(|level| Vec::with_capacity((4 << level) + 1));
        Words { walk, words, places, highest: if walk.drained { 0 } else { LEVELS - 1 } }
    }

    /// The walk whose words these are.
    pub(super) fn walk(&self) -> &'a Walk {
        self.walk
    }

    /// The word of a level that starts at a phase.
    fn find(&mut self, level: usize, phase: i64) -> usize {
        if level == 0 {
            return self.walk.kind(phase);
        }
        let place = self.places[level].partition_point(|(from, _)| *from <= phase);
        if place > 0 {
            let word = self.places[level][place - 1].1;
            if phase < self.words[level][word].from.1 {
                return word;
            }
        }
        let first = self.find(level - 1, phase);
        let second = self.find(level - 1, phase + self.words[level - 1][first].by);
        let below = &self.words[level - 1];
        let word = below[first].then(&below[second], [first, second]);
        self.words[level].push(word);
        let new = self.words[level].len() - 1;
        self.places[level].insert(place, (word.from.0, new));
        new
    }

    /// The longest word that a walk can still take whole (a block at least).
    fn next(&mut self, lane: &Lane) -> (usize, usize) {
        for level in (1..=self.highest).rev() {
            if lane.blocks >> level == 0 {
                continue;
            }
            let word = self.find(level, lane.phase);
            let taken = &self.words[level][word];
            if taken.shots <= lane.shots && lane.decay + taken.decay < lane.decay_limit {
                return (level, word);
            }
        }
        (0, self.walk.kind(lane.phase))
    }

    /// Takes the next word without sums; the fills `below` it go the same way, but meet no cap.
    pub(super) fn hurry(&mut self, lane: &mut Lane, below: &mut f64) {
        let (level, word) = self.next(lane);
        let word = &self.words[level][word];
        lane.fill = word.end.at(lane.fill).min(word.top);
        *below = word.end.at(*below);
        lane.pass(level, word);
    }

    /// Takes the next word and adds to `totals`.
    pub(super) fn step(&mut self, lane: &mut Lane, totals: &mut Totals) {
        let (level, word) = self.next(lane);
        lane.fill = self.cross(level, word, lane.fill, totals);
        lane.pass(level, &self.words[level][word]);
    }

    /// Crosses a word from a fill, adding to `totals`.
    fn cross(&mut self, level: usize, word: usize, start: f64, totals: &mut Totals) -> f64 {
        let here = &self.words[level][word];
        if level > 0 && start <= here.free {
            totals.shots += here.shots as f64;
            totals.time += here.time;
            totals.after += here.after.at(start);
            totals.integral += here.integral.at(start);
            let end = here.end.at(start);
            self.look_for_lowest(level, word, start, &mut totals.lowest);
            return end;
        }
        if level == 0
            && let Some(end) = self.walk.blocks[word].cross_free(start, totals)
        {
            return end;
        }
        if here.known.start != start {
            let [first, second] = here.halves;
            let mut new = Crossed { start, end: 0.0, totals: Totals::NONE };
            new.end = if level == 0 {
                self.walk.blocks[word].cross_capped_or_dry(start, &mut new.totals)
            } else {
                let between = self.cross(level - 1, first, start, &mut new.totals);
                self.cross(level - 1, second, between, &mut new.totals)
            };
            self.words[level][word].known = new;
        }
        let known = &self.words[level][word].known;
        totals.join(&known.totals);
        known.end
    }

    /// Lowers `lowest` to the lowest fill of a word whose cap is not met; returns what the word does not fall below.
    ///
    /// A lower start lowers no fill by more than itself, so that most words need no look.
    fn look_for_lowest(&mut self, level: usize, word: usize, start: f64, lowest: &mut f64) -> f64 {
        if level == 0 {
            let fill = self.walk.blocks[word].lowest_free(start);
            *lowest = lowest.min(fill);
            return fill;
        }
        let Word { floor: (known_start, known), halves: [first, second], .. } = self.words[level][word];
        let floor = known - (known_start - start).max(0.0);
        if floor >= *lowest {
            return floor;
        }
        let between = self.words[level - 1][first].end.at(start);
        let floor = self.look_for_lowest(level - 1, first, start, lowest).min(self.look_for_lowest(
            level - 1,
            second,
            between,
            lowest,
        ));
        self.words[level][word].floor = (start, floor);
        floor
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lubrication::fill::JointOil;
    use crate::lubrication::rotation::of_timer;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn words_are_their_blocks(
            circuit in 1..4000i64, run in 2..300i64, dwell in 1..900i64, dose in 0.001..0.4f64, rate in 1e-6..1e-2f64, fill in 0.0..1.0f64,
        ) {
            let rotation = of_timer(circuit, run, dwell);
            if !rotation.locked() && !rotation.continuous() {
                let oil = JointOil { dose, capacity: 1.0, loss_rate: rate, uptake: 0.0 };
                let walk = Walk::new(&rotation, 1.0, &oil);
                let mut words = Words::of(&walk);
                for phase in walk.starts::<4>() {
                    let mut lane = Lane { blocks: 200, ..Lane::new(phase, fill) };
                    let (mut totals, mut singly, mut x, mut after) = (Totals::NONE, Totals::NONE, phase, fill);
                    while lane.going() {
                        words.step(&mut lane, &mut totals);
                    }
                    for _ in 0..200 {
                        let kind = walk.kind(x);
                        after = walk.blocks[kind].cross(after, &mut singly);
                        x += walk.by[kind];
                    }
                    prop_assert_eq!((lane.phase, lane.blocks), (x, 0));
                    prop_assert!((lane.fill - after).abs() < 1e-11);
                    prop_assert!((totals.lowest - singly.lowest).abs() < 1e-11);
                    for (ours, theirs) in [
                        (totals.shots, singly.shots), (totals.time, singly.time), (totals.after, singly.after),
                        (totals.integral, singly.integral), (totals.overflow + 1.0, singly.overflow + 1.0),
                    ] {
                        prop_assert!((ours / theirs - 1.0).abs() < 1e-11, "{ours} {theirs}");
                    }
                }
            }
        }
    }
}
