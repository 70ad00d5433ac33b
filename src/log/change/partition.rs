//! The cheapest division of a log into segments, exactly and fast even where nothing changes.
//!
//! Optimal partitioning compares, for every end t, all starts s of the last segment: F(t) = min F(s) + C(s, t) + β.
//! The usual pruning (Killick, Fearnhead and Eckley 2012) drops a start only once a later change has made it dear, so a
//! log without changes costs the square of its length. Here starts stand in blocks of 16, 32, 64 … and a block is passed
//! over whole whenever the cheapest start it could hold is dearer than one already at hand. The same inequality
//! serves both: with `floor` adding up below the cost, F(s) + C(s, t) ≥ [F(s) + floor(s, b)] + floor(b, t) for any b
//! between, and the least of the bracket over the block is known once. The price β of a change, many times the noise of
//! the costs, is the slack that lets a quiet block go. The answer is that of the full search.

use super::Cost;
use super::cost::Segments;

/// Starts in the smallest blocks: below this the bound costs more than it saves.
const LEAF: usize = 16;
/// Rounding of a difference of costs, as a share of the cost of the whole log; blocks this close are looked into.
const ROUNDING: f64 = 1e-11;

/// First readings of the segments after the first in the cheapest division of `readings` into segments of at least
/// `least_segment`, each change costing `penalty` ≥ 0. The earliest start wins where two are equally cheap.
///
/// Exact: the division that the full dynamic programme finds. Source: Jackson et al. (2005) for the recursion; passing
/// over blocks is our own use of the inequality of Killick, Fearnhead and Eckley (2012).
pub fn partition(readings: &[f64], cost: Cost, least_segment: usize, penalty: f64) -> Vec<usize> {
    let n = readings.len();
    let least_segment = least_segment.max(1);
    if n < 2 * least_segment {
        return Vec::new();
    }
    let segments = Segments::of(readings);
    // one search for each cost, so that the inner loop does not choose
    let starts = match cost {
        Cost::Mean => Search::<true>::new(&segments, n, least_segment, penalty).run(),
        Cost::MeanVariance => Search::<false>::new(&segments, n, least_segment, penalty).run(),
    };
    let mut points = Vec::new();
    let mut at = starts[n];
    while at > 0 {
        points.push(at);
        at = starts[at];
    }
    points.reverse();
    points
}

/// The least that a block of starts can offer.
#[derive(Clone, Copy)]
struct Block {
    /// min F(s) + floor(s, b), b the end of the block plus a least segment, so that no stretch in it is short.
    bracket: f64,
    /// min F(s) − s × (least cost of a reading): the better bound across a stuck clamp.
    flat: f64,
}

/// A start and the cost of ending there.
#[derive(Clone, Copy)]
struct Best {
    cost: f64,
    start: usize,
}

/// ln v ≥ ln v₀ + 1 − v₀/v: a floor under the logarithm by one division, close where v is near v₀.
#[derive(Clone, Copy)]
struct Tangent {
    variance: f64,
    ln_plus_one: f64,
}

struct Search<'a, const MEAN: bool> {
    segments: &'a Segments,
    n: usize,
    least_segment: usize,
    penalty: f64,
    margin: f64,
    per_reading: f64,
    /// F(t), infinite where no division ends.
    cheapest: Vec<f64>,
    /// Blocks of LEAF × 2^level starts.
    levels: Vec<Vec<Block>>,
    /// At the variance of the segment that was last before this end; the others that compete are like it.
    tangent: Tangent,
}

impl<'a, const MEAN: bool> Search<'a, MEAN> {
    const COST: Cost = if MEAN { Cost::Mean } else { Cost::MeanVariance };

    fn new(segments: &'a Segments, n: usize, least_segment: usize, penalty: f64) -> Self {
        let margin = ROUNDING * segments.size(Self::COST);
        let per_reading = segments.least_per_reading(Self::COST);
        Search {
            segments,
            n,
            least_segment,
            penalty,
            margin,
            per_reading,
            cheapest: vec![f64::INFINITY; n + 1],
            levels: Vec::new(),
            tangent: Tangent { variance: 1.0, ln_plus_one: 1.0 },
        }
    }

    /// Start of the last segment for every end.
    fn run(mut self) -> Vec<usize> {
        self.cheapest[0] = -self.penalty;
        let mut starts = vec![0; self.least_segment];
        let mut last = 0;
        for end in self.least_segment..=self.n {
            let eligible = end - self.least_segment + 1;
            if eligible.is_multiple_of(LEAF) {
                self.close_blocks(eligible);
            }
            if !MEAN {
                let variance = (self.segments.squares(last, end) / (end - last) as f64).max(f64::MIN_POSITIVE);
                self.tangent = Tangent { variance, ln_plus_one: variance.ln() + 1.0 };
            }
            // the start that was best for the end before is nearly always best still
            let mut best = self.offer(Best { cost: f64::INFINITY, start: usize::MAX }, last, end);
            let full = eligible / LEAF;
            let mut done = 0;
            for level in (0..self.levels.len()).rev() {
                let size = 1 << level;
                if done + size <= full {
                    best = self.look(best, level, done >> level, end);
                    done += size;
                }
            }
            for start in full * LEAF..eligible {
                best = self.offer(best, start, end);
            }
            self.cheapest[end] = best.cost;
            starts.push(best.start);
            last = best.start;
        }
        starts
    }

    /// Whether `before` and the stretch `from..end` together are certainly dearer than `best`, without a logarithm.
    #[inline(always)]
    fn surely_dearer(&self, before: f64, from: usize, end: usize, best: Best) -> bool {
        if MEAN || from == end {
            return false;
        }
        let (count, Tangent { variance, ln_plus_one }) = ((end - from) as f64, self.tangent);
        let stretch = count * (ln_plus_one - count * variance / self.segments.squares(from, end));
        before + stretch + self.penalty > best.cost + self.margin
    }

    /// The better of what is at hand and `start`; the earlier of equals.
    #[inline(always)]
    fn offer(&self, best: Best, start: usize, end: usize) -> Best {
        if self.surely_dearer(self.cheapest[start], start, end, best) {
            return best;
        }
        let cost = self.cheapest[start] + self.segments.cost(Self::COST, start, end) + self.penalty;
        if cost < best.cost || (cost == best.cost && start < best.start) { Best { cost, start } } else { best }
    }

    /// Looks through a block unless it cannot hold a better start.
    fn look(&self, best: Best, level: usize, index: usize, end: usize) -> Best {
        let block = self.levels[level][index];
        let beyond = (((index + 1) * LEAF) << level) - 1 + self.least_segment;
        if self.surely_dearer(block.bracket, beyond, end, best) {
            return best;
        }
        let floor = (block.bracket + self.segments.floor(Self::COST, beyond, end))
            .max(block.flat + self.per_reading * end as f64);
        if floor + self.penalty > best.cost + self.margin {
            return best;
        }
        if level > 0 {
            let best = self.look(best, level - 1, 2 * index, end);
            return self.look(best, level - 1, 2 * index + 1, end);
        }
        (index * LEAF..(index + 1) * LEAF).fold(best, |best, start| self.offer(best, start, end))
    }

    /// Adds the blocks that are complete once all starts before `to` are known.
    fn close_blocks(&mut self, to: usize) {
        let beyond = to - 1 + self.least_segment;
        let mut level = 0;
        while to.is_multiple_of(LEAF << level) {
            let block = (to - (LEAF << level)..to).fold(
                Block { bracket: f64::INFINITY, flat: f64::INFINITY },
                |block, start| {
                    let cost = self.cheapest[start];
                    Block {
                        bracket: block.bracket.min(cost + self.segments.floor(Self::COST, start, beyond)),
                        flat: block.flat.min(cost - self.per_reading * start as f64),
                    }
                },
            );
            if self.levels.len() == level {
                self.levels.push(Vec::new());
            }
            self.levels[level].push(block);
            level += 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The full dynamic programme, word for word.
    fn full(readings: &[f64], cost: Cost, least: usize, penalty: f64) -> Vec<usize> {
        let n = readings.len();
        let segments = Segments::of(readings);
        let mut cheapest = vec![f64::INFINITY; n + 1];
        let mut starts = vec![0; n + 1];
        cheapest[0] = -penalty;
        for end in least..=n {
            for start in 0..=end - least {
                let c = cheapest[start] + segments.cost(cost, start, end) + penalty;
                if c < cheapest[end] {
                    (cheapest[end], starts[end]) = (c, start);
                }
            }
        }
        let (mut points, mut at) = (Vec::new(), starts[n]);
        while at > 0 {
            points.push(at);
            at = starts[at];
        }
        points.reverse();
        points
    }

    /// Levels that jump, a spread that changes, coarse steps, stuck stretches.
    fn series(max: usize) -> impl Strategy<Value = Vec<f64>> {
        let piece = (1usize..60, -3.0..3.0f64, prop_oneof![Just(0.0), Just(1e-7), 0.01..2.0f64], prop::bool::ANY);
        (prop::collection::vec(piece, 1..8), any::<u64>()).prop_map(move |(pieces, seed)| {
            let mut state = seed;
            let mut noise = move || {
                state = state.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
                (state >> 11) as f64 / (1u64 << 53) as f64 - 0.5
            };
            let mut log = Vec::new();
            for (length, level, spread, coarse) in pieces {
                for _ in 0..length {
                    let y = level + spread * noise();
                    log.push(if coarse { (y * 4.0).round() / 4.0 } else { y });
                }
            }
            log.truncate(max);
            log
        })
    }

    proptest! {
        #[test]
        fn same_as_the_full_search(log in series(260), least in 1usize..15, price in 0.0..30.0f64) {
            for cost in [Cost::Mean, Cost::MeanVariance] {
                let expected = if log.len() < 2 * least { Vec::new() } else { full(&log, cost, least, price) };
                prop_assert_eq!(partition(&log, cost, least, price), expected);
            }
        }

        #[test]
        fn segments_are_long_enough_and_a_dearer_change_finds_fewer(log in series(200), least in 2usize..12) {
            for cost in [Cost::Mean, Cost::MeanVariance] {
                let cheap = partition(&log, cost, least, 2.0);
                let dear = partition(&log, cost, least, 8.0);
                prop_assert!(dear.len() <= cheap.len());
                let bounds: Vec<usize> = [0].into_iter().chain(cheap).chain([log.len()]).collect();
                prop_assert!(log.len() < 2 * least || bounds.windows(2).all(|w| w[1] - w[0] >= least));
            }
        }
    }

    #[test]
    fn long_logs_with_and_without_changes_agree_with_the_full_search() {
        let mut state = 7u64;
        let mut noise = || {
            state = state.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
            (0..4).map(|k| ((state >> (12 * k)) & 4095) as f64 / 4096.0 - 0.5).sum::<f64>()
        };
        for changes in [1, 5, 60] {
            let log: Vec<f64> = (0..3000).map(|t| f64::from(t * changes / 3000 % 3) + noise()).collect();
            let price = |cost| if cost == Cost::Mean { 4.0 / 3.0 * 3000f64.ln() } else { 5.0 * 3000f64.ln() };
            for cost in [Cost::Mean, Cost::MeanVariance] {
                assert_eq!(
                    partition(&log, cost, 10, price(cost)),
                    full(&log, cost, 10, price(cost)),
                    "{changes} {cost:?}"
                );
            }
        }
    }

    #[test]
    fn the_earliest_of_equals() {
        assert_eq!(partition(&[1.0; 40], Cost::Mean, 5, 0.0), Vec::<usize>::new());
        assert_eq!(partition(&[1.0; 40], Cost::MeanVariance, 5, 1.0), Vec::<usize>::new());
        assert_eq!(partition(&[0.0, 1.0], Cost::Mean, 1, 0.1), [1]);
        assert_eq!(partition(&[], Cost::Mean, 1, 0.1), Vec::<usize>::new());
    }
}
