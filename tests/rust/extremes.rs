//! Any survey from the ranges of the register gives finite numbers or a typed error, and never a panic.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

use pinfilm::Code;
use pinfilm::line::{Evaluation, Line, evaluate};
use pinfilm::quantity::{Field, Noun, Row, Tree, Value};
use pinfilm::study::compare;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use std::sync::LazyLock;

/// Every whole line of the case file, and of the demo plant.
static LINES: LazyLock<Vec<Line>> = LazyLock::new(|| {
    let cases: Vec<serde_json::Value> = serde_json::from_str(include_str!("../data/cases-line.json")).unwrap();
    let whole = cases.into_iter().filter(|case| case["quantity"] == "evaluate");
    let of_cases = whole.map(|case| Line::from_tree(&serde_json::from_value(case["inputs"].clone()).unwrap()).unwrap());
    let data = concat!(env!("CARGO_MANIFEST_DIR"), "/python/pinfilm/data");
    let files = std::fs::read_dir(data).unwrap().map(|entry| entry.unwrap().path());
    let surveys = files.filter(|path| path.extension().is_some_and(|ending| ending == "toml"));
    let of_plant = surveys.map(|path| Line::from_toml(&std::fs::read_to_string(path).unwrap()).unwrap());
    of_cases.chain(of_plant).collect()
});

/// A number of a survey: its path, what it is, and whether it is whole.
type Place = (String, &'static Row, bool);

/// Every number of a line that the survey gives, with its row of the register.
fn numbers(line: &Line) -> Vec<Place> {
    let mut rows = Vec::new();
    Line::register(String::new(), &Row::BLANK, &mut rows);
    let mut found = Vec::new();
    walk(&line.write(), "", &mut |path, value| {
        let plain: Vec<&str> = path.split('.').filter(|step| step.parse::<usize>().is_err()).collect();
        let plain = plain.join(".");
        let whole = matches!(value, Value::Whole(_));
        if let (Value::Whole(_) | Value::Number(_), Some((_, row))) =
            (value, rows.iter().find(|(known, _)| *known == plain))
        {
            found.push((path.to_string(), *row, whole));
        }
    });
    found
}

fn walk(tree: &Tree, path: &str, see: &mut dyn FnMut(&str, &Value)) {
    let below = |step: &str| if path.is_empty() { step.to_string() } else { format!("{path}.{step}") };
    match &tree.value {
        Value::Table(entries) => entries.iter().for_each(|(key, tree)| walk(tree, &below(key), see)),
        Value::List(items) => items.iter().enumerate().for_each(|(i, tree)| walk(tree, &below(&i.to_string()), see)),
        value => see(path, value),
    }
}

/// The number at `share` of a range: evenly, or by powers of ten where the range is wide; open ends are far away.
fn inside(low: f64, high: f64, open: bool, share: f64) -> f64 {
    let (far, near) = (1e15, 1e-12);
    let high = if high.is_finite() { high } else { far };
    let low = if low.is_finite() { low } else { -far };
    let least = if low > 0.0 { low } else { near };
    let value = if low >= 0.0 && high / least > 100.0 {
        if share == 0.0 && !open { low } else { least * (high / least).powf(share) }
    } else {
        low + (high - low) * if open { share.max(1e-9) } else { share }
    };
    value.clamp(low, high)
}

/// Changed values of a line: `(number of the place, share of its range)`; of the usual range where it has one and
/// `usual` is asked for.
fn changed(line: &Line, picks: &[(prop::sample::Index, f64)], usual: bool) -> pinfilm::Result<Line> {
    let places = numbers(line);
    let changes = picks.iter().map(|(pick, share)| {
        let (path, row, whole) = pick.get(&places);
        let range =
            if usual && row.usual.low.is_finite() && row.usual.high.is_finite() { row.usual } else { row.allowed };
        let value = inside(range.low, range.high, range.open_low, *share);
        let value = if *whole { Value::Whole(value.round().clamp(-1e6, 1e6) as i64) } else { Value::Number(value) };
        (path.clone(), value.into())
    });
    line.replaced(changes.collect())
}

/// The whole promise: numbers that are numbers, or an error that says which field.
fn holds(line: pinfilm::Result<Line>) -> Result<(), TestCaseError> {
    let mut rows = Vec::new();
    Evaluation::register(String::new(), &Row::BLANK, &mut rows);
    match line.and_then(|line| evaluate(&line).map(|result| (line, result))) {
        Ok((line, result)) => {
            let mut odd = Vec::new();
            walk(&result.write(), "", &mut |path, value| {
                if matches!(value, Value::Number(number) if !number.is_finite()) {
                    odd.push(path.to_string());
                }
            });
            prop_assert!(odd.is_empty(), "{odd:?}");
            if let Ok(comparison) = compare(&line, &line) {
                prop_assert!(comparison.npv.is_finite());
            }
        }
        Err(error) => {
            let plain: Vec<&str> = error.field.split('.').filter(|step| step.parse::<usize>().is_err()).collect();
            let plain = plain.join(".");
            let is_there =
                |known: &str| known.strip_prefix(&plain).is_some_and(|rest| rest.is_empty() || rest.starts_with('.'));
            let known = rows.iter().any(|(path, _)| is_there(path) || path.strip_prefix("line.").is_some_and(is_there));
            prop_assert!(known, "{:?} is no path: {error}", error.field);
            prop_assert!(!error.message.is_empty() && error.code != Code::Stopped);
        }
    }
    Ok(())
}

fn shares(extreme: bool) -> BoxedStrategy<f64> {
    if extreme { prop_oneof![Just(0.0), Just(1.0), 0.0..=1.0f64].boxed() } else { (0.0..=1.0f64).boxed() }
}

#[test]
fn most_modest_surveys_are_computed() {
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let picks = prop::collection::vec((any::<prop::sample::Index>(), shares(false)), 1..12);
    let mut computed = 0;
    for round in 0..200 {
        let picks = picks.new_tree(&mut runner).unwrap().current();
        computed +=
            usize::from(changed(&LINES[round % LINES.len()], &picks, true).and_then(|line| evaluate(&line)).is_ok());
    }
    assert!(computed > 60, "only {computed} of 200: the other tests try little");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: ProptestConfig::default().cases.max(1500), failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn modest_surveys(which in any::<prop::sample::Index>(), picks in prop::collection::vec((any::<prop::sample::Index>(), shares(false)), 1..12)) {
        let line = which.get(&LINES);
        holds(changed(line, &picks, true))?;
    }

    #[test]
    fn extreme_surveys(which in any::<prop::sample::Index>(), picks in prop::collection::vec((any::<prop::sample::Index>(), shares(true)), 1..6)) {
        let line = which.get(&LINES);
        holds(changed(line, &picks, false))?;
    }

    #[test]
    fn one_value_at_an_end_of_its_range(which in any::<prop::sample::Index>(), pick in any::<prop::sample::Index>(), high in any::<bool>()) {
        let line = which.get(&LINES);
        holds(changed(line, &[(pick, f64::from(u8::from(high)))], false))?;
    }
}
