//! The library against an independent implementation of the same equations (`tests/data/cases-*.json`).
//!
//! Each file has a module whose `ours` computes the answer to one case in the shape of its `expected`; the walk
//! compares leaf by leaf at the tolerance of the case. Cases without a function yet are counted and named.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

use serde_json::Value;

mod circuit;
mod circuit_chain_drive;
mod coverage;
mod drive;
mod economics;
mod evidence;
mod fill;
mod film;
mod line;
mod oil;
mod recommend;
mod recovery;
mod reference;
mod simulator;
mod study;
mod supply;
#[path = "../support/walk.rs"]
mod walk;
mod wear;

pub use walk::number;
use walk::walk;

/// The answer to a case in the shape of its expected value; `None` where there is no function for it yet.
/// `"error: …"` strings stand for a typed error.
pub type Answer = Option<Value>;

/// Relative and absolute tolerance of a case, from either way of writing it.
fn tolerance(value: &Value) -> (f64, f64) {
    match value {
        Value::Object(map) => (
            map.get("rel").and_then(Value::as_f64).unwrap_or(0.0),
            map.get("abs").and_then(Value::as_f64).unwrap_or(0.0),
        ),
        Value::String(text) => {
            let after = |word: &str| {
                text.split(word)
                    .nth(1)?
                    .split_whitespace()
                    .next()?
                    .trim_end_matches([';', ',', ')'])
                    .parse::<f64>()
                    .ok()
            };
            (after("rel ").unwrap_or(0.0), after("abs ").unwrap_or(0.0))
        }
        _ => (0.0, 0.0),
    }
}

/// Compares leaf by leaf; every difference is added to `wrong`.
fn compare(path: &str, expected: &Value, ours: &Value, tol: (f64, f64), wrong: &mut Vec<String>) {
    match (expected, ours) {
        (Value::Number(e), Value::Number(o)) => {
            let (e, o) = (e.as_f64().unwrap_or(f64::NAN), o.as_f64().unwrap_or(f64::NAN));
            let allowed = tol.0 * e.abs() + tol.1;
            if (e - o).abs() > allowed.max(1e-14 * e.abs()) || o.is_nan() {
                wrong.push(format!("{path}: expected {e}, ours {o}"));
            }
        }
        (Value::Array(e), Value::Array(o)) if e.len() == o.len() => {
            for (i, (e, o)) in e.iter().zip(o).enumerate() {
                compare(&format!("{path}[{i}]"), e, o, tol, wrong);
            }
        }
        (Value::Object(e), Value::Object(o)) => {
            for (key, value) in e {
                compare(&format!("{path}.{key}"), value, o.get(key).unwrap_or(&Value::Null), tol, wrong);
            }
        }
        (Value::String(e), Value::String(o)) if e.starts_with("error") && o.starts_with("error") => {}
        (e, o) if e == o => {}
        (e, o) => wrong.push(format!("{path}: expected {e}, ours {o}")),
    }
}

/// Compares every case of a file with the first module that answers it.
fn cases(text: &str, modules: &[fn(&Value) -> Answer]) {
    walk("cases", text, |case| {
        let answer = modules.iter().find_map(|ours| ours(case))?;
        let mut wrong = Vec::new();
        compare(case["id"].as_str().unwrap(), &case["expected"], &answer, tolerance(&case["tolerance"]), &mut wrong);
        Some(wrong)
    });
}

#[test]
fn circuit_and_drive() {
    cases(include_str!("../data/cases-circuit_drive.json"), &[circuit::ours, drive::ours, circuit_chain_drive::ours]);
}

#[test]
fn joint_and_film() {
    cases(include_str!("../data/cases-joint_film.json"), &[oil::ours, film::ours, reference::ours]);
}

#[test]
fn lubrication_and_supply() {
    cases(include_str!("../data/cases-lubrication.json"), &[coverage::ours, fill::ours, supply::ours, recommend::ours]);
}

#[test]
fn wear_money_and_evidence() {
    cases(
        include_str!("../data/cases-wear_money_evidence.json"),
        &[wear::ours, economics::ours, evidence::ours, study::ours],
    );
}

#[test]
fn whole_lines() {
    cases(include_str!("../data/cases-line.json"), &[line::ours]);
}
