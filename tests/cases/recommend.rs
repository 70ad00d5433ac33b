//! The set-up search against an independent one: same grid, same limits, with the money of the case.
//!
//! The other search breaks ties by the shortest wait, so its best is looked for in that order here. The order of
//! preference of `recommend` is checked against full enumeration in tests/python/test_recommend.py.

use crate::fill::{GAPS, build, named};
use crate::{Answer, number};
use pinfilm::lubrication::fill;
use pinfilm::study::{Shots, Sieve, Sieved, Sifted};
use serde_json::{Value, json};
use std::cmp::Ordering;

pub fn ours(case: &Value) -> Answer {
    (case["quantity"] == "recommend").then(|| searched(&case["inputs"]))
}

/// The grid that the cases of the set-up search offer: shots m³, n, run and dwell min, dwell 0 once, with the first run.
fn offers(name: &str) -> Vec<Shots> {
    let every: &[i64] = match name {
        "slat" => &[1, 11, 13, 17],
        "packing" => &[1, 31, 37, 41],
        _ => &[1, 7, 11, 13],
    };
    let (shots, runs, dwells): (&[f64], &[f64], &[f64]) = if name == "packing" {
        let runs = &[1.0 / 60.0, 3.0 / 60.0, 5.0 / 60.0, 10.0 / 60.0];
        (&[0.2, 0.5, 1.0, 2.0], runs, &[0.0, 1.0, 5.0, 10.0, 20.0, 30.0])
    } else {
        let runs = &[5.0, 10.0, 20.0, 30.0, 60.0, 120.0];
        (&[2.0, 5.0, 10.0, 20.0, 50.0, 100.0], runs, &[0.0, 30.0, 60.0, 120.0, 240.0, 480.0, 960.0, 1440.0])
    };
    let mut offers = Vec::new();
    for shot in shots {
        for &every in every {
            for (i, run) in runs.iter().enumerate() {
                for dwell in dwells.iter().filter(|dwell| i == 0 || **dwell > 0.0) {
                    offers.push(Shots { shot: shot * 1e-9, every, run: run * 60.0, dwell: dwell * 60.0 });
                }
            }
        }
    }
    offers
}

/// A set-up that keeps every limit.
struct Kept {
    cost: f64,
    starts: f64,
    shots: Shots,
    found: Sifted,
    litres: f64,
}

fn compare(a: &[f64], b: &[f64]) -> Ordering {
    a.iter().zip(b).map(|(a, b)| a.total_cmp(b)).find(|order| order.is_ne()).unwrap_or(Ordering::Equal)
}

impl Kept {
    /// The other search's order among equals: longest wait, overflow, starts, n, shot, run, dwell.
    fn key(&self) -> [f64; 7] {
        let six = |value: f64| (value * 1e6).round();
        let Shots { shot, every, run, dwell } = self.shots;
        [six(self.found.worst_wait / 3600.0), six(self.found.overflow), self.starts, every as f64, shot, run, dwell]
    }
}

/// The set-up search on one of the five lines, with the oil and money of the case instead of a whole evaluation.
fn searched(inputs: &Value) -> Value {
    let name = inputs["line"].as_str().unwrap();
    let d = named(name);
    let l = build(&d);
    let floor = number(inputs, "floor");
    let (capture, k) = (number(&d, "capt"), l.losses.total());
    let sieve = Sieve {
        joints: l.joints as i64,
        joint_time: l.circuit / l.joints,
        circuit: l.circuit,
        injector: Some(0.4),
        pump: Some(20e-6 / 60.0),
        nozzles: GAPS,
        landing: GAPS * capture,
        zone_time: 0.0,
        tolerance: 0.005,
        capacity: l.capacity.total,
        loss_rate: k,
        patience: fill::longest_wait(floor, k),
        floor,
        most_overflow: number(inputs, "over_max"),
        most_lock_risk: 0.05,
        most_unreached: 0.0,
    };
    let (mut kept, mut refused) = (Vec::new(), std::collections::BTreeMap::new());
    for shots in offers(name) {
        match sieve.sift(&shots).unwrap() {
            Sieved::Refused(refusal) => *refused.entry(refusal.reason.as_str()).or_insert(0) += 1,
            Sieved::Passed(found) => {
                let running = if shots.dwell > 0.0 { shots.run / (shots.run + shots.dwell) } else { 1.0 };
                let litres = running / (shots.every as f64 * l.circuit) * shots.shot * GAPS * l.joints * l.years * 1e3;
                kept.push(Kept {
                    cost: litres * 15.0 + 500.0 * (1.0 - found.fill.mean),
                    starts: if shots.dwell > 0.0 { 1.0 / (shots.run + shots.dwell) } else { 0.0 },
                    shots,
                    found,
                    litres,
                });
            }
        }
    }
    let least = kept.iter().map(|one| one.cost).fold(f64::INFINITY, f64::min);
    let near = kept.iter().filter(|one| one.cost <= 1.01 * least);
    let Kept { cost, starts, shots: best, found, litres } = near.min_by(|a, b| compare(&a.key(), &b.key())).unwrap();
    json!({
        "best": {
            "shot": best.shot, "n": best.every, "R": best.run * 1e3, "D": best.dwell * 1e3, "cost": cost,
            "litres": litres, "min_fill": found.fill.lowest, "mean_fill": found.fill.mean,
            "worst_h": found.worst_wait / 3600.0, "over": found.overflow,
            "drip": 1.0 - capture * (1.0 - found.overflow), "starts": starts,
        },
        "feasible": kept.len(),
        "rejected": refused,
    })
}

/// The other two searches, whose outcome was computed with the same independent implementation.
#[test]
fn searches_find_what_an_independent_search_found() {
    let found = |line| searched(&json!({"line": line, "floor": 0.4, "over_max": 0.1}));
    let oven = found("oven");
    let near = |value: &Value, expected: f64| (value.as_f64().unwrap() / expected - 1.0).abs() < 1e-5;
    let best = &oven["best"];
    assert!(
        near(&best["shot"], 10e-9) && best["n"] == 11 && near(&best["R"], 3.6e6) && near(&best["D"], 1.8e6),
        "{oven}"
    );
    assert!(near(&best["cost"], 322.0727) && near(&best["litres"], 19.63636), "{oven}");
    assert!(near(&best["min_fill"], 0.923449) && (best["worst_h"].as_f64().unwrap() - 7.333).abs() < 1e-3, "{oven}");
    assert_eq!(oven["feasible"], 115);
    let refused =
        json!({"overflow": 312, "below_floor": 245, "lock_risk": 144, "timer_locked": 96, "wait_too_long": 120});
    assert_eq!(oven["rejected"], refused);

    let packing = found("packing");
    let best = &packing["best"];
    assert!(near(&best["shot"], 0.5e-9) && best["n"] == 41 && best["D"] == 0.0, "{packing}");
    assert!((best["litres"].as_f64().unwrap() - 41.483).abs() < 1e-3 && near(&best["min_fill"], 0.614444), "{packing}");
    assert_eq!(packing["feasible"], 2);
}
