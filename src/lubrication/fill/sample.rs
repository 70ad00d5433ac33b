//! Timers with many cells: a long walk from several starts stands for all phases.

use super::block::Totals;
use super::walk::Walk;
use super::words::{Lane, Words};

/// Starts spread evenly over the places where blocks begin.
const STARTS: usize = 16;
/// Blocks whose map gives the first guess of the settled fill.
const GUESSED: i64 = 64;
/// Blocks after which burning in ends, if it has not forgotten its start before.
const BURNT: i64 = 1024;
/// Blocks that are counted.
const COUNTED: i64 = 512;
/// k t after which the start is forgotten: exp(-30) = 1e-13.
const FORGOTTEN: f64 = 30.0;

/// The settled walk from evenly spread starts.
///
/// `guess` is the fill after a shot to begin with where oil is also drained at a constant rate.
pub(super) fn many_starts(walk: &Walk, guess: f64) -> Totals {
    let mut words = Words::of(walk);
    let (mut totals, mut ignored) = (Totals::NONE, Totals::NONE);
    for phase in walk.starts::<STARTS>() {
        let first = if walk.drained { guess } else { first_fill(&mut words, phase) };
        let mut lane = Lane { blocks: BURNT, decay_limit: FORGOTTEN, ..Lane::new(phase, first) };
        while lane.going() {
            if walk.drained {
                words.step(&mut lane, &mut ignored);
            } else {
                words.hurry(&mut lane, &mut 0.0);
            }
        }
        let mut lane = Lane { blocks: COUNTED, ..Lane::new(lane.phase, lane.fill) };
        while lane.going() {
            words.step(&mut lane, &mut totals);
        }
    }
    totals
}

/// Fill that the first blocks from a phase would settle at if they repeated for ever.
fn first_fill(words: &mut Words, phase: i64) -> f64 {
    let mut lane = Lane { blocks: GUESSED, ..Lane::new(phase, words.walk().capacity) };
    let mut added = 0.0;
    while lane.going() {
        words.hurry(&mut lane, &mut added);
    }
    fixed_point(lane.fill, added, lane.decay)
}

/// Fixed point of V → min(top, A V + B), where A = exp(-`decay`) and B = `added`.
pub(super) fn fixed_point(top: f64, added: f64, decay: f64) -> f64 {
    if decay > 0.0 { top.min(added / -(-decay).exp_m1()) } else { top }
}
