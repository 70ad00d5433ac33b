//! The library against the outside world: standards, handbook tables, textbook examples.
//!
//! One data file, `checks.json`, holds id, source, printed value and tolerance. Each area has a module whose `check`
//! turns one entry into compared numbers. The walk prints a line for every number and fails on any that is outside
//! the tolerance the source supports. Entries that no function answers yet are counted and named, never passed.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

use serde_json::Value;

mod chain;
mod circuit;
mod coverage;
mod drive;
mod economics;
mod entry;
mod film;
mod oil;
#[path = "../support/pages.rs"]
mod pages;
mod practice;
mod reference;
mod statistics;
mod study;
mod supply;
mod table;
#[path = "../support/walk.rs"]
mod walk;
mod wear;

pub use walk::number;
use walk::walk;

/// One entry of the data file.
pub struct Check<'a> {
    pub id: &'a str,
    pub quantity: &'a str,
    pub inputs: &'a Value,
    pub expected: &'a Value,
}

/// One compared number: what, printed, ours, the greatest difference the source supports.
pub struct Compared {
    pub what: String,
    pub printed: f64,
    pub ours: f64,
    pub allowed: f64,
    /// Printed words and ours, where words are compared.
    pub words: Option<(String, String)>,
}

impl Compared {
    /// Whether it lies within the tolerance.
    pub fn holds(&self) -> bool {
        match &self.words {
            Some((printed, ours)) => printed == ours,
            None => (self.ours - self.printed).abs() <= self.allowed,
        }
    }
}

/// Compares words.
pub fn said(what: impl Into<String>, printed: &str, ours: &str) -> Compared {
    Compared { words: Some((printed.into(), ours.into())), ..within(what, 0.0, 0.0, 0.0) }
}

/// Compares within an absolute tolerance.
pub fn within(what: impl Into<String>, printed: f64, ours: f64, allowed: f64) -> Compared {
    Compared { what: what.into(), printed, ours, allowed, words: None }
}

/// Compares within a relative tolerance of the printed value.
pub fn relative(what: impl Into<String>, printed: f64, ours: f64, share: f64) -> Compared {
    within(what, printed, ours, share * printed.abs())
}

/// A list of numbers.
pub fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().into_iter().flatten().map(|v| v.as_f64().unwrap_or(f64::NAN)).collect()
}

/// Answers of one module: the compared numbers, or none where it has no function for the entry.
type Answer = Option<Vec<Compared>>;

const AREAS: &[fn(&Check) -> Answer] = &[
    chain::check,
    circuit::check,
    coverage::check,
    drive::check,
    economics::check,
    entry::check,
    film::check,
    oil::check,
    practice::check,
    reference::check,
    statistics::check,
    study::check,
    supply::check,
    wear::check,
];

#[test]
fn published_values() {
    let mut rows = Vec::new();
    walk("published checks", include_str!("checks.json"), |entry| {
        let (row, complaints) = judged(entry);
        rows.push(row);
        complaints
    });
    pages::compare_or_write("published-checks.md", &table::page(&rows));
}

/// Compares one entry, and prints those of its numbers that are off; the complaint names its source.
fn judged(entry: &Value) -> (table::Row, Option<Vec<String>>) {
    let check = Check {
        id: entry["id"].as_str().unwrap(),
        quantity: entry["quantity"].as_str().unwrap(),
        inputs: &entry["inputs"],
        expected: &entry["expected"],
    };
    let Some(compared) = AREAS.iter().find_map(|area| area(&check)) else {
        // what the models do not cover says so, with the reason
        let told = entry["outside"].is_string();
        let complaint = format!("{}: no function answers, and the entry does not say why", check.id);
        let row = table::Row { entry: entry.clone(), compared: None, passed: false };
        return (row, if told { None } else { Some(vec![complaint]) });
    };
    assert!(!compared.is_empty(), "{}: nothing compared", check.id);
    let passed = compared.iter().all(Compared::holds);
    for c in compared.iter().filter(|c| !c.holds()) {
        println!("{:<8} {}: printed {} ours {} allowed {}", check.id, c.what, c.printed, c.ours, c.allowed);
    }
    let complaint = format!("{} ({}): {}", check.id, check.quantity, entry["source"]);
    let row = table::Row { entry: entry.clone(), compared: Some(compared), passed };
    (row, Some(if passed { Vec::new() } else { vec![complaint] }))
}

#[test]
fn sources_are_citable() {
    let entries: Vec<Value> = serde_json::from_str(include_str!("checks.json")).unwrap();
    for entry in &entries {
        let (id, source) = (entry["id"].as_str().unwrap(), entry["source"].as_str().unwrap());
        let coded = |word: &str| word.len() == 3 && word.starts_with('S') && word[1..].parse::<u8>().is_ok();
        let mut words = source.split(|c: char| !c.is_alphanumeric());
        assert!(!words.any(|word| coded(word) || ["READ", "remembered", "id"].contains(&word)), "{id}: {source}");
        if entry["provenance"] == "from memory" {
            assert!(source.contains("from memory"), "{id}: {source}");
        }
    }
}
