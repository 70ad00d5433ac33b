//! Evaluates one of the whole-line cases so many times, for instruction counts: `count oven_now 200`.
//!
//! Two runs of different length differ by the evaluations alone. DEVELOPERS.md has the command.
#![allow(missing_docs, clippy::unwrap_used)]

use pinfilm::line::{Line, evaluate};
use pinfilm::quantity::{Noun, Tree};
use std::hint::black_box;

fn main() {
    let given: Vec<String> = std::env::args().collect();
    let times: usize = given[2].parse().unwrap();
    let cases: Vec<serde_json::Value> = serde_json::from_str(include_str!("../tests/data/cases-line.json")).unwrap();
    let case = cases.iter().find(|case| case["id"].as_str() == Some(&given[1])).unwrap();
    let tree: Tree = serde_json::from_value(case["inputs"].clone()).unwrap();
    let line = Line::from_tree(&tree).unwrap();
    for _ in 0..times {
        black_box(evaluate(black_box(&line)).unwrap());
    }
}
