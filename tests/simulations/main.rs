//! What the log's verdicts are worth, on thousands of logs with a known truth.
//!
//! Long, so not run by default: `cargo test --release --test simulations -- --ignored --nocapture`. The bands are wider
//! than three standard errors of the counts; the seeds are counted up, none was chosen.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

use pinfilm::log::change::{Cost, change_points, partition, penalty, robust_noise};
use pinfilm::log::proof::{avoided, before_after, newey_west_se, placebo};
use pinfilm::log::watch::{Baseline, Log, Settings, Watch};
use rayon::prelude::*;
use std::time::Instant;
use synthetic::{Synthetic, normal};

#[path = "../support/synthetic.rs"]
mod synthetic;

/// First-order autoregressive noise of unit spread.
fn noise(n: usize, rho: f64, seed: u32) -> Vec<f64> {
    let mut x = normal(0, 9, seed);
    (0..n)
        .map(|t| {
            if t > 0 {
                x = rho * x + (1.0 - rho * rho).sqrt() * normal(t as u32, 9, seed);
            }
            x
        })
        .collect()
}

/// Per cent of seeds for which something holds.
fn per_cent(seeds: u32, holds: impl Fn(u32) -> bool + Sync) -> f64 {
    100.0 * (0..seeds).into_par_iter().filter(|seed| holds(*seed)).count() as f64 / f64::from(seeds)
}

fn log(n: usize, split: usize, rho: f64, seed: u32) -> (Vec<f64>, Vec<f64>) {
    // the innovations' spread that gives 0.092 for the noise itself, whatever its autocorrelation
    Synthetic { seed, n, split, rho, cut: 0.08, sd: 0.092 * (1.0 - rho * rho).sqrt() }.log()
}

#[test]
#[ignore = "simulation"]
fn change_points_seldom_see_what_is_not_there() {
    let false_alarms = |n: usize, rho: f64, factor: Option<f64>| {
        per_cent(1000, |seed| {
            let log = noise(n, rho, seed);
            let noise = robust_noise(&log);
            let independent = |factor: f64| factor * noise.deviation.powi(2) * (n as f64).ln();
            let price = factor.map_or_else(|| penalty(Cost::Mean, noise, n), independent);
            !partition(&log, Cost::Mean, 10, price).is_empty()
        })
    };
    for (rho, most) in [(0.0, 2.0), (0.5, 3.0), (0.7, 4.0), (0.8, 8.0), (0.9, 15.0)] {
        let (long, short) = (false_alarms(200, rho, None), false_alarms(60, rho, None));
        let unaware = false_alarms(200, rho, Some(3.0));
        println!(
            "rho {rho}: false alarms {long:.1} % of 200, {short:.1} % of 60 readings; unaware penalty {unaware:.1} %"
        );
        assert!(long <= most && short <= 18.0);
    }
}

#[test]
#[ignore = "simulation"]
fn intervals_cover_the_truth() {
    for (n, rho, least) in [(120, 0.0, 93.0), (120, 0.5, 92.5), (120, 0.8, 89.0), (60, 0.8, 86.0)] {
        let wide = per_cent(2000, |seed| {
            let (y, load) = log(n, n / 2, rho, seed);
            let (low, high) = before_after(&y, n / 2, &[&load], 0.95).unwrap().interval;
            low <= 0.08 && 0.08 <= high
        });
        let plain = per_cent(2000, |seed| {
            let (y, load) = log(n, n / 2, rho, seed);
            let found = before_after(&y, n / 2, &[&load], 0.95).unwrap();
            (found.saving - 0.08).abs() <= 1.96 * found.error_newey_west
        });
        let use_avoided = per_cent(2000, |seed| {
            let (y, load) = log(n, n / 2, rho, seed);
            let found = avoided(&y, n / 2, &[&load], 0.95).unwrap();
            let truth: f64 = load[n / 2..].iter().map(|x| 0.08 * (4.0 + 0.06 * x)).sum();
            found.interval.0 <= truth && truth <= found.interval.1
        });
        println!(
            "n {n}, rho {rho}: 95 % interval covers {wide:.1} %, textbook {plain:.1} %; use avoided {use_avoided:.1} %"
        );
        assert!(wide >= least && wide <= 99.0 && use_avoided >= 90.0);
    }
}

#[test]
#[ignore = "simulation"]
fn known_saving_comes_back() {
    // a year of daily means with a change in the middle: 200 seeds, 90 % interval, binomial 0.05 .. 99.95 %
    let covered = (0..200u32).into_par_iter().filter(|seed| {
        let (y, load) = log(365, 180, 0.5, *seed);
        let (low, high) = before_after(&y, 180, &[&load], 0.90).unwrap().interval;
        low <= 0.08 && 0.08 <= high
    });
    let covered = covered.count();
    println!("{covered} of 200 logs give the saving back in the 90 % interval");
    assert!((165..=192).contains(&covered));
}

#[test]
#[ignore = "simulation"]
fn placebo_without_effect() {
    let fooled = per_cent(500, |seed| {
        let noise = noise(120, 0.5, seed);
        let y: Vec<f64> = noise.iter().map(|e| 10.0 + 0.1 * e).collect();
        placebo(&y, 60, &[]).unwrap().agrees == Some(true)
    });
    println!("the placebo agrees with nothing in {fooled:.1} % of logs");
    assert!((8.0..=26.0).contains(&fooled));
}

#[test]
#[ignore = "simulation"]
fn watch_keeps_its_false_alarms() {
    for rho in [0.0, 0.5, 0.8] {
        for days in [30, 60, 120, 200] {
            let alarms = |threshold: Option<f64>| {
                per_cent(1000, |seed| {
                    let y: Vec<f64> = noise(days + 100, rho, seed).iter().map(|e| 10.0 + 0.1 * e).collect();
                    let baseline = Baseline::learn(&y[..days], &[]).unwrap();
                    let usual =
                        Settings::daily(&Baseline { lag1: baseline.lag1.min(0.8), ..baseline.clone() }).unwrap();
                    let settings = Settings { threshold: threshold.unwrap_or(usual.threshold), ..usual };
                    let times: Vec<f64> = (0..100).map(|t| 86_400.0 * f64::from(t)).collect();
                    let rest = Log { times: &times, values: &y[days..], covariates: &[], starts: &[] };
                    let steps = Watch::new(settings, baseline).follow(&rest).unwrap();
                    steps.iter().any(|step| step.alarm.is_some())
                })
            };
            let (widened, known) = (alarms(None), alarms(Some(4.760_445_432)));
            println!("rho {rho}, baseline {days} days: alarm within 100 days {widened:.1} %, with 4.76 {known:.1} %");
            assert!(widened <= 36.0);
        }
    }
}

#[test]
#[ignore = "simulation"]
fn newey_west_without_lags_is_ordinary() {
    let one = vec![1.0; 300];
    let y = noise(300, 0.5, 1);
    let spread = pinfilm::log::statistics::standard_deviation(&y) / 300f64.sqrt();
    assert!((newey_west_se(&[&one], &y, 0, true).unwrap()[0] - spread).abs() < 1e-14);
}

/// Seconds for both costs on logs of rising length: nothing changing, a change now and then, many changes, drift, a coarse
/// clamp, a stuck one.
#[test]
#[ignore = "speed"]
fn speed_of_change_points() {
    type Level = fn(usize, usize) -> f64;
    let stories: [(&str, Level); 6] = [
        ("no change", |_, _| 0.0),
        ("10 changes", |t, n| (t * 11 / n % 2) as f64),
        ("1 change in 1000", |t, _| 2.0 * (t / 1000 % 3) as f64),
        ("drift", |t, n| 10.0 * t as f64 / n as f64),
        ("0.5 steps", |t, n| (t * 11 / n % 2) as f64),
        ("half stuck", |t, n| (t * 11 / n % 2) as f64),
    ];
    for n in [100_000, 1_000_000] {
        let noise: Vec<f64> = (0..n).into_par_iter().map(|t| normal(t as u32, 9, 1)).collect();
        for (name, level) in stories {
            let log: Vec<f64> = (0..n)
                .map(|t| match name {
                    "0.5 steps" => (2.0 * (level(t, n) + noise[t])).round() / 2.0,
                    "half stuck" if t > n / 2 => 7.0,
                    _ => level(t, n) + noise[t],
                })
                .collect();
            for cost in [Cost::Mean, Cost::MeanVariance] {
                let start = Instant::now();
                let found = change_points(&log, &[], cost, 10).unwrap();
                let seconds = start.elapsed().as_secs_f64();
                println!("{n:>8} {name:<18} {cost:?}: {seconds:.3} s, {} changes", found.points.len());
            }
        }
    }
}
