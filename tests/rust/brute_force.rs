//! Coverage of a timer against a walk over every joint and every passage, for thousands of random timers.
//!
//! The walk knows nothing of continued fractions or common divisors: it lets each joint pass and asks the clock.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout)]

use pinfilm::lubrication::coverage::{Pattern, Timer, reached_joints};
use rayon::prelude::*;
use std::collections::BTreeMap;

/// Random whole number of 0..below for a place in a counted sequence (SplitMix64, Steele et al. 2014).
fn random(place: u64, below: i64) -> i64 {
    let mut z = place.wrapping_mul(0x9e37_79b9_7f4a_7c15);
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    ((z ^ (z >> 31)) % below as u64) as i64
}

/// Shots by wait, and passages without any: over all joints of the circuit and as many passages as the period has ticks,
/// after which everything repeats.
fn walk(circuit: i64, run: i64, period: i64) -> (BTreeMap<i64, i64>, i64) {
    let (mut shots, mut never) = (BTreeMap::new(), 0);
    for joint in 0..circuit {
        let hit = |passage: i64| (joint + passage * circuit) % period < run;
        let Some(first) = (0..period).find(|&passage| hit(passage)) else {
            never += 1;
            continue;
        };
        let mut last = first;
        for passage in first + 1..=first + period {
            if hit(passage) {
                *shots.entry(passage - last).or_insert(0) += 1;
                last = passage;
            }
        }
    }
    (shots, never)
}

#[test]
fn random_timers() {
    const TIMERS: u64 = 12_000;
    let locked = (0..TIMERS)
        .into_par_iter()
        .filter(|&seed| {
            let draw = |k: u64, below: i64| random(4 * seed + k, below);
            let (circuit, period) = (1 + draw(0, 160), 1 + draw(1, 160));
            let run = 1 + draw(2, period);
            let timer = Timer::from_ticks(circuit, run, period - run).unwrap();
            let found = timer.coverage();
            let (shots, never) = walk(circuit, run, period);
            let what = format!("circuit {circuit}, run {run}, period {period}");

            assert!((found.never_reached - never as f64 / circuit as f64).abs() < 1e-12, "{what}");
            let waits: Vec<i64> = found.waits().iter().map(|wait| wait.circuits).collect();
            assert_eq!(waits, shots.keys().copied().collect::<Vec<_>>(), "{what}");
            let all: i64 = shots.values().sum();
            for (wait, (circuits, count)) in found.waits().iter().zip(&shots) {
                assert!((wait.share_of_shots - *count as f64 / all as f64).abs() < 1e-12, "{what}");
                let standing = (circuits * count) as f64 / (circuit * period) as f64;
                assert!((wait.share_of_joints - standing).abs() < 1e-12, "{what}");
            }
            let total: i64 = shots.iter().map(|(circuits, count)| circuits * count).sum();
            assert!((found.mean_wait() - total as f64 / all as f64).abs() < 1e-9, "{what}");
            assert_eq!(found.worst_wait(), *shots.keys().last().unwrap(), "{what}");

            // whole joints, the first at the point when a run starts
            let joints = 1 + draw(3, 60);
            let reached = (0..joints)
                .filter(|&joint| {
                    (0..period).any(|passage| {
                        // joint · circuit/joints, kept whole by counting in parts of a tick
                        (joint * circuit + passage * circuit * joints) % (period * joints) < run * joints
                    })
                })
                .count() as i64;
            assert_eq!(reached_joints(&timer, joints), reached, "{what}, {joints} joints");
            found.pattern == Pattern::Locked
        })
        .count();
    println!("{TIMERS} random timers agree with the walk over every joint; {locked} of them are locked");
    assert!(locked > 100);
}
