//! Instructions of a draw, on one thread: `count_draws oven_now sample 512`, or `sensitivity`, `one` (one input, one output)
//! or `evaluate` (as often, no draws) for `sample`.
//!
//! Two runs of different length differ by the draws alone; what `computed` takes of them is `evaluate`, the rest is the
//! study. DEVELOPERS.md has the command.
#![allow(missing_docs, clippy::unwrap_used)]

use pinfilm::line::{Line, evaluate_in_brief};
use pinfilm::study::{Doubt, SampleSettings, Uncertain, sample, unwatched, what_matters};
use std::hint::black_box;

fn main() {
    let given: Vec<String> = std::env::args().collect();
    let (name, verb, n) = (&given[1], given[2].as_str(), given[3].parse::<usize>().unwrap());
    let survey = format!("{}/python/pinfilm/data/{name}.toml", env!("CARGO_MANIFEST_DIR"));
    let line = Line::from_toml(&std::fs::read_to_string(survey).unwrap()).unwrap();
    let uncertain = match verb {
        "one" => Uncertain::new(line.clone().into(), &[("wear.wear_coefficient_dry".into(), Doubt::Register)]),
        _ => Uncertain::usual(line.clone().into()),
    };
    let (uncertain, outputs) = (uncertain.unwrap(), ["wear.life_years".to_string()]);
    let settings = SampleSettings { n, ..Default::default() };
    let pool = rayon::ThreadPoolBuilder::new().num_threads(1).build().unwrap();
    pool.install(|| match verb {
        "evaluate" => (0..n).for_each(|_| drop(black_box(evaluate_in_brief(black_box(&line)).unwrap()))),
        "one" => drop(black_box(sample(uncertain, Some(&outputs), settings, &mut unwatched).unwrap())),
        "sensitivity" => drop(black_box(what_matters(uncertain, &outputs[0], true, n, 1, &mut unwatched).unwrap())),
        _ => drop(black_box(sample(uncertain, None, settings, &mut unwatched).unwrap())),
    });
}
