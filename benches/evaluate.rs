//! Time of one `evaluate` of the whole-line cases, full fixed point included, and of the numbers alone.
#![allow(missing_docs, clippy::unwrap_used)]

use criterion::{Criterion, criterion_group, criterion_main};
use pinfilm::line::{Line, computed, evaluate};
use pinfilm::quantity::{Noun, Tree};
use std::hint::black_box;

#[cfg(not(feature = "python"))] // the module brings it
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc; // as in the Python module

fn lines() -> Vec<(String, Line)> {
    let cases: Vec<serde_json::Value> = serde_json::from_str(include_str!("../tests/data/cases-line.json")).unwrap();
    cases
        .iter()
        .filter(|case| case["quantity"] == "evaluate")
        .map(|case| {
            let tree: Tree = serde_json::from_value(case["inputs"].clone()).unwrap();
            (case["id"].as_str().unwrap().to_string(), Line::from_tree(&tree).unwrap())
        })
        .collect()
}

fn evaluations(criterion: &mut Criterion) {
    for (name, line) in lines() {
        criterion.bench_function(&name, |bench| bench.iter(|| evaluate(black_box(&line)).unwrap()));
        let numbers = format!("{name}, numbers alone");
        criterion.bench_function(&numbers, |bench| bench.iter(|| computed(black_box(&line)).unwrap().numbers()));
    }
}

criterion_group!(benches, evaluations);
criterion_main!(benches);
