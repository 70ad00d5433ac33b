//! Calibration of a whole line: how often its intervals hold a truth that readings were made from.

use pinfilm::line::{Growth, Line};
use pinfilm::quantity::{Datum, put_at};
use pinfilm::study::*;

/// Running hours of the elongation readings; those after the fourth thousand under the proposed oiling.
const HOURS: [(f64, bool); 6] =
    [(1500.0, false), (3000.0, false), (4000.0, false), (6000.0, true), (8000.0, true), (10_000.0, true)];
const CHANGED: f64 = 4000.0;
const ERROR_PCT: f64 = 0.05;
const ERROR_A: f64 = 0.02;

fn oven() -> (Line, Line) {
    let line = |text: &str| Line::from_toml(text).unwrap();
    let now = line(include_str!("../../python/pinfilm/data/oven_now.toml"));
    (now, line(include_str!("../../python/pinfilm/data/oven_proposed.toml")))
}

fn score(draw: u32, i: u32) -> f64 {
    normal_quantile(unit(philox4x32([draw, i, 0, 0], [2025, 0])[0]))
}

/// Readings of a pair of lines, with their errors drawn.
fn readings(now: &Line, proposed: &Line, draw: u32) -> Vec<Reading> {
    let (before, after) = (Growth::of(now).unwrap(), Growth::of(proposed).unwrap());
    let age = after.running_h(before.elongation_pct(CHANGED));
    let zero = ERROR_PCT * score(draw, 200);
    let mut list = Vec::new();
    for ((hours, changed), i) in HOURS.into_iter().zip(100..) {
        let true_pct = if changed { after.elongation_pct(age + hours - CHANGED) } else { before.elongation_pct(hours) };
        list.push(Reading::Elongation {
            pct: true_pct + zero + ERROR_PCT * score(draw, i),
            error_pct: ERROR_PCT,
            running_h: hours,
            changed_at_h: changed.then_some(CHANGED),
        });
    }
    let both = compare(now, proposed).unwrap();
    let currents = [("now", both.now.drive.current_a), ("proposed", both.proposed.drive.current_a)];
    for ((side, current), i) in currents.into_iter().zip(150..) {
        let path = format!("{side}.drive.current_a");
        list.push(Reading::Number { path, value: current.unwrap() + ERROR_A * score(draw, i), error: ERROR_A });
    }
    list
}

/// How many of the 90 % intervals of each guess hold the truth, of `draws` lines drawn from the guesses.
fn held(draws: u32) -> (Vec<String>, Vec<usize>, usize) {
    let (now, proposed) = oven();
    let guesses = learnable((now.clone(), proposed.clone()).into()).unwrap();
    let names = guesses.names().to_vec();
    let (mut held, mut walked) = (vec![0; names.len()], 0);
    for draw in 0..draws {
        let (mut a, mut b) = (now.clone(), proposed.clone());
        let mut truth = Vec::new();
        for (i, name) in names.iter().enumerate() {
            let of = |side| guesses.distribution_of(i, side).at_normal(score(draw, i as u32));
            truth.push(of(guesses.side_of(i)));
            let path = name.trim_start_matches("now.").trim_start_matches("proposed.");
            if !name.starts_with("proposed.") {
                put_at(&mut a, path, Datum::Number(of(Side::Now))).unwrap();
            }
            if !name.starts_with("now.") {
                put_at(&mut b, path, Datum::Number(of(Side::Proposed))).unwrap();
            }
        }
        let settings = TeachSettings { zero_error_pct: ERROR_PCT, n: 8, seed: u64::from(draw) };
        let outputs = ["payback_days".to_string()];
        let found =
            calibrate_line(guesses.clone(), readings(&a, &b, draw), &outputs, settings, &mut unwatched).unwrap();
        walked += usize::from(!found.bell_shaped);
        for ((held, [low, _, high]), truth) in held.iter_mut().zip(&found.after).zip(&truth) {
            *held += usize::from((low..=high).contains(&truth));
        }
        // a run that is cut off has said something
        if (draw + 1) % 20 == 0 {
            println!("{held:?} of {}, {walked} by walkers", draw + 1);
        }
    }
    (names, held, walked)
}

/// A look at a few lines in every run: nearly all intervals hold the truth.
#[test]
fn a_few_lines_are_recovered() {
    let (names, held, walked) = held(2);
    println!("{names:?}: {held:?} of 2, {walked} by walkers");
    assert!(held.iter().sum::<usize>() * 10 >= 2 * names.len() * 7, "{held:?}");
}

/// The full count; see docs/calibration.md. `PINFILM_DRAWS` for another number of lines than 200.
#[test]
#[ignore = "two hundred calibrations of a pair of lines, most of them by walkers: `nox -s slow` runs it"]
fn lines_are_recovered() {
    let draws = std::env::var("PINFILM_DRAWS").map_or(200, |text| text.parse().unwrap());
    let (names, held, walked) = held(draws);
    println!("90 % intervals that hold the truth, of {draws}, {walked} of them by walkers:");
    names.iter().zip(&held).for_each(|(name, held)| println!("  {held} {name}"));
    // what 0.05 % to 99.95 % of as many intervals at 90 % would hold: 165 to 192 of 200
    let Ranks { low, high } = enclosing_ranks(draws as usize, 0.9, 0.999);
    let allowed = low.unwrap_or(0)..high.unwrap_or(usize::MAX);
    assert!(held.iter().all(|held| allowed.contains(held)), "{held:?} not all in {allowed:?}");
}
