//! Evaluates one line so many times, for instruction counts: `count E-oven-present 120`, or a survey file for the name.
//!
//! Two runs of different length differ by the evaluations alone. `numbers` as a third word leaves the report out; 0 times
//! prints the evaluation. DEVELOPERS.md has the command.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout)]

use pinfilm::line::{Line, computed, evaluate};
use pinfilm::quantity::{Field, Noun, Tree};
use std::hint::black_box;

#[cfg(not(feature = "python"))] // the module brings it
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc; // as in the Python module

fn line(name: &str) -> Line {
    if name.ends_with(".toml") {
        return Line::from_toml(&std::fs::read_to_string(name).unwrap()).unwrap();
    }
    let cases: Vec<serde_json::Value> = serde_json::from_str(include_str!("../tests/data/cases-line.json")).unwrap();
    let case = cases.iter().find(|case| case["id"].as_str() == Some(name)).unwrap();
    let tree: Tree = serde_json::from_value(case["inputs"].clone()).unwrap();
    Line::from_tree(&tree).unwrap()
}

fn main() {
    let given: Vec<String> = std::env::args().collect();
    let (line, times): (Line, usize) = (line(&given[1]), given[2].parse().unwrap());
    if times == 0 {
        println!("{}", evaluate(&line).unwrap().write().to_json().unwrap());
    }
    for _ in 0..times {
        if given.len() > 3 {
            black_box(computed(black_box(&line)).unwrap().numbers().unwrap());
        } else {
            black_box(evaluate(black_box(&line)).unwrap());
        }
    }
}
