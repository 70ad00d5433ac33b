//! What is not known is said: every closure of our own is marked with its text and spread, and a page lists them.
#![allow(missing_docs, clippy::unwrap_used)]

use pinfilm::line::{Evaluation, Line};
use pinfilm::quantity::{Class, Noun, Row};
use std::collections::BTreeSet;
use std::fmt::Write;

#[path = "../support/pages.rs"]
mod pages;

fn rows_of<T: Noun>() -> Vec<(String, &'static Row)> {
    let mut rows = Vec::new();
    T::register(String::new(), &Row::BLANK, &mut rows);
    rows
}

fn results() -> Vec<(String, &'static Row)> {
    rows_of::<Evaluation>().into_iter().filter(|(path, _)| !path.starts_with("line.")).collect()
}

#[test]
fn every_closure_that_a_survey_may_change_has_its_spread() {
    // They only say at which place another closure holds; the spread stands there.
    const PLACES: &[&str] = &["articulation_loss_reference_pa_s", "oxidation_reference_c"];
    let bare: Vec<String> = rows_of::<Line>()
        .into_iter()
        .filter(|(_, row)| row.class == Class::Closure && row.spread.words().is_empty() && !PLACES.contains(&row.name))
        .map(|(path, _)| path)
        .collect();
    assert!(bare.is_empty(), "closures without a spread: {bare:?}");
}

#[test]
fn every_row_that_speaks_of_a_closure_is_marked_as_one_or_names_its_part() {
    let silent: Vec<String> = rows_of::<Line>()
        .into_iter()
        .chain(results())
        .filter(|(_, row)| row.source.contains("closure of our own") && row.class != Class::Closure)
        .map(|(path, row)| format!("{path} ({})", row.class.as_str()))
        .collect();
    assert!(silent.is_empty(), "sources that name a closure under another class: {silent:?}");
}

#[test]
fn every_closure_says_what_it_is() {
    for (path, row) in rows_of::<Line>().into_iter().chain(results()) {
        if row.class == Class::Closure {
            let computed = row.default.is_empty();
            assert!(row.means.len() >= 4, "{path}");
            assert!(
                !computed || !row.formula.is_empty() || !row.source.is_empty(),
                "{path}: neither formula nor source"
            );
        }
    }
}

/// The rows that carry uncertainty, one for each meaning: the same input of several methods once.
fn uncertain() -> Vec<(String, &'static Row)> {
    let mut seen = BTreeSet::new();
    rows_of::<Line>()
        .into_iter()
        .filter(|(_, row)| !row.spread.words().is_empty() || row.class == Class::Closure)
        .filter(|(path, row)| {
            let group = path.rsplit_once('.').map_or("", |(group, _)| group);
            seen.insert((group.to_string(), row.name, row.spread.words(), row.default))
        })
        .collect()
}

fn cell(text: &str) -> String {
    let text = text.replace('|', "\\|");
    if text.is_empty() { "–".into() } else { text }
}

#[test]
fn the_page_of_uncertainty_is_what_the_register_says() {
    let mut text = String::from(
        "# What is not known\n\n\
         Written by `nox -s tables` from the register of quantities; the ordinary tests fail when this page is stale.\n\n\
         ## What a survey may give, and what is taken where it is silent\n\n\
         The spread is that of the default, as a practitioner would draw it; `sample` and `sensitivity` take distributions \
         from here if asked. A closure of our own stands where nobody has published a relation: measure, or calibrate it.\n\n\
         | input | meaning | default | spread | founded on | source |\n|---|---|---|---|---|---|\n",
    );
    for (path, row) in uncertain() {
        let default = match row.default {
            "None" | "" => "computed or none".to_string(),
            default => {
                let number = default.replace('_', "").parse::<f64>();
                format!("{} {}", number.map_or(default.to_string(), |n| format!("{n}")), row.unit.label)
                    .trim()
                    .to_string()
            }
        };
        let _ = writeln!(
            text,
            "| `{path}` | {} | {} | {} | {} | {} |",
            cell(row.means),
            cell(&default),
            cell(&row.spread.words()),
            row.class.as_str(),
            cell(row.source)
        );
    }
    text += "\n## Results that rest on a closure of our own\n\n\
             | result | meaning | relation | source |\n|---|---|---|---|\n";
    for (path, row) in results().into_iter().filter(|(_, row)| row.class == Class::Closure) {
        let formula =
            if row.formula.is_empty() { String::new() } else { format!("`{}`", row.formula.replace('|', "\\|")) };
        let _ = writeln!(
            text,
            "| `{path}` | {} | {} | {} |",
            cell(row.means),
            if formula.is_empty() { "–".into() } else { formula },
            cell(row.source)
        );
    }
    assert!(text.matches("closure of our own").count() > 10);
    pages::compare_or_write("uncertainty.md", &text);
}
