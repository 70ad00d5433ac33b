//! The register of quantities says enough of every public input and output, and says the same everywhere.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

use pinfilm::line::{Evaluation, Line};
use pinfilm::log::evidence;
use pinfilm::quantity::{Class, Noun, Row, unit};
use pinfilm::study::{Comparison, OFFERS, Recommendation, Shift, SimulatedLine};
use std::collections::{BTreeMap, BTreeSet};

type Rows = Vec<(String, &'static Row)>;

fn rows_of<T: Noun>() -> Rows {
    let mut rows = Vec::new();
    T::register(String::new(), &Row::BLANK, &mut rows);
    rows
}

/// Rows of results alone: those that are not part of a survey.
fn results() -> Rows {
    let keep = |(path, _): &(String, &Row)| {
        let below = path.strip_prefix("now.").or_else(|| path.strip_prefix("proposed.")).unwrap_or(path);
        !below.starts_with("line.")
    };
    rows_of::<Comparison>().into_iter().filter(keep).collect()
}

/// Rows of what logs are asked with, and of what they give.
fn of_logs(asked: bool) -> Rows {
    const ASKED: [&str; 4] = ["row.", "rules.", "proof.", "oil_check."];
    let is_asked = |path: &str| ASKED.iter().any(|group| path.starts_with(group));
    evidence::register().into_iter().filter(|(path, _)| is_asked(path) == asked).collect()
}

/// Every row of lines and logs.
fn everything() -> Rows {
    [rows_of::<Comparison>(), of_logs(false), of_logs(true)].concat()
}

fn is_number(row: &Row) -> bool {
    *row.unit != unit::WORD
}

/// Fails with every complaint at once.
fn none(complaints: Vec<String>) {
    assert!(complaints.is_empty(), "{} rows:\n{}", complaints.len(), complaints.join("\n"));
}

fn complaints(rows: Rows, wrong: impl Fn(&str, &Row) -> Option<String>) -> Vec<String> {
    rows.iter().filter_map(|(path, row)| wrong(path, row).map(|why| format!("{path}: {why}"))).collect()
}

/// Rows of the recommendation and of the simulation, without the line and evaluation that they hold.
fn studies() -> Rows {
    let mut rows = rows_of::<Recommendation>();
    rows.retain(|(path, _)| !path.starts_with("line.") && !path.starts_with("evaluation."));
    rows.extend(rows_of::<SimulatedLine>());
    rows.extend(rows_of::<Shift>());
    rows
}

#[test]
fn studies_say_as_much_of_their_rows() {
    let wrong = |_: &str, row: &Row| {
        let named = row.unit.is_carried_by(row.name);
        let missing = row.means.trim().is_empty() || !named;
        missing.then(|| format!("{} means {:?}, unit {}", row.name, row.means, row.unit.label))
    };
    none(complaints(studies(), wrong));
    // shifts are inputs; every number of the others is computed or repeated, and says how
    let mut computed = studies();
    computed.truncate(computed.len() - Shift::ROWS.len());
    let silent = |_: &str, row: &Row| {
        (is_number(row) && (row.formula.is_empty() || row.source.is_empty()))
            .then(|| "no formula or source".to_string())
    };
    none(complaints(computed, silent));
    for row in OFFERS {
        assert!(row.unit.is_carried_by(row.name) && !row.means.is_empty(), "{}", row.name);
    }
}

#[test]
fn every_row_has_a_meaning() {
    none(complaints(everything(), |_, row| row.means.trim().is_empty().then(|| "no meaning".into())));
}

#[test]
fn every_name_carries_its_unit() {
    let wrong = |_: &str, row: &Row| {
        (!row.unit.is_carried_by(row.name)).then(|| format!("{} ends in none of {:?}", row.name, row.unit.endings))
    };
    none(complaints(everything(), wrong));
}

#[test]
fn names_without_a_unit_do_not_look_as_if_they_had_one() {
    // Names whose ending is a word of its own here, and not a unit.
    const WORDS: &[(&str, &str)] = &[("year_days", "a count of days that make a year of payback: a pure number")];
    let wrong = |_: &str, row: &Row| {
        if !row.unit.endings.is_empty() || WORDS.iter().any(|(name, _)| *name == row.name) {
            return None;
        }
        let looks = unit::all().iter().find(|u| !u.endings.is_empty() && u.is_carried_by(row.name))?;
        Some(format!("{} is {:?} but looks like {}", row.name, row.unit.label, looks.label))
    };
    none(complaints(everything(), wrong));
}

#[test]
fn every_computed_number_has_formula_and_source() {
    // Numbers that are counts of the survey or of the computation itself, and have no formula.
    const PLAIN: &[(&str, &str)] = &[
        ("section", "the number of a section of the survey"),
        ("rounds", "counted while the computation settles"),
        ("application_section", "the survey's, or the section with the best score"),
        ("application_position", "the survey's, or the place with the best score"),
        ("value", "the number that a warning is about"),
        ("discount_rate", "repeated from the survey"),
        ("horizon_years", "repeated from the survey"),
    ];
    let wrong = |_: &str, row: &Row| {
        if !is_number(row) || PLAIN.iter().any(|(name, _)| *name == row.name) {
            return None;
        }
        match (row.formula.is_empty(), row.source.is_empty(), row.class) {
            (true, _, _) => Some("no formula".into()),
            (_, true, _) => Some("no source".into()),
            (_, _, Class::Survey) if row.source != "survey" => Some("computed, but its class says survey".into()),
            _ => None,
        }
    };
    none(complaints([results(), of_logs(false)].concat(), wrong));
}

#[test]
fn formulas_name_only_quantities_that_exist() {
    let rows = rows_of::<Comparison>();
    let known: BTreeSet<&str> = rows.iter().map(|(path, _)| path.as_str()).collect();
    let wrong = |path: &str, row: &Row| {
        let base = ["now.", "proposed."].into_iter().find(|base| path.starts_with(base)).unwrap_or("");
        let missing: Vec<&str> = names_in(row.formula)
            .into_iter()
            .filter(|name| {
                let places = [format!("{base}{name}"), format!("{base}line.{name}")];
                !places.iter().any(|place| known.contains(place.as_str()))
            })
            .collect();
        (!missing.is_empty()).then(|| format!("{missing:?} in {}", row.formula))
    };
    none(complaints(rows.clone(), wrong));
}

/// The names in braces of a formula.
fn names_in(formula: &str) -> Vec<&str> {
    let pieces = formula.split('{').skip(1);
    pieces.map(|piece| piece.split_once('}').map_or("a brace that is never closed", |(name, _)| name)).collect()
}

#[test]
fn defaults_say_how_well_they_are_founded() {
    // Defaults that are no claim about the world: nothing there, the ordinary case, or a label.
    let neutral = |row: &Row| {
        !is_number(row) || matches!(row.default, "" | "None" | "0.0" | "1.0" | "1" | "Vec :: new()" | "Vec::new()")
    };
    // Other defaults that need no source.
    const CHOICES: &[(&str, &str)] = &[
        ("application_position", "the middle of a section"),
        ("points", "both gaps of a joint"),
        ("year_days", "the calendar"),
        ("t1_c", "one of the two temperatures at which data sheets state viscosity"),
        ("t2_c", "the other of them"),
        ("rated_frequency_hz", "the frequency of most supplies; a nameplate says it"),
        ("supply_voltage_v", "the nominal voltage of such a supply"),
        ("cable_temperature_c", "a warm cabinet; the surveyor's to give"),
    ];
    let wrong = |_: &str, row: &Row| {
        let unfounded = row.class == Class::Survey && row.source.is_empty();
        let chosen = CHOICES.iter().any(|(name, _)| *name == row.name);
        (unfounded && !neutral(row) && !chosen).then(|| format!("default {} has neither class nor source", row.default))
    };
    none(complaints([rows_of::<Line>(), of_logs(true)].concat(), wrong));
}

#[test]
fn closures_say_what_they_are_and_how_wide() {
    let wrong = |_: &str, row: &Row| {
        let bare = row.source.is_empty() || row.source.trim_end_matches('.') == Class::Closure.as_str();
        (row.class == Class::Closure && bare).then(|| format!("source {:?} says no more than its class", row.source))
    };
    none(complaints(rows_of::<Comparison>(), wrong));
    let unspread = |_: &str, row: &Row| {
        (row.class == Class::Closure && row.spread.words().is_empty())
            .then(|| "an input of a closure without spread".into())
    };
    none(complaints(rows_of::<Line>(), unspread));
}

#[test]
fn a_name_has_one_unit_everywhere() {
    // Same word, two meanings, each clear from its group.
    const TWO: &[(&str, &str)] = &[
        ("joint", "friction.joint is a coefficient"),
        ("wash", "whether a section is washed; the loss of a joint by washing, in fill.loss_parts_per_h"),
    ];
    let mut units: BTreeMap<&str, BTreeMap<&str, String>> = BTreeMap::new();
    for (path, row) in everything() {
        units.entry(row.name).or_default().entry(row.unit.label).or_insert(path);
    }
    let differ = units.iter().filter(|(name, units)| units.len() > 1 && TWO.iter().all(|(two, _)| two != *name));
    none(differ.map(|(name, units)| format!("{name}: {units:?}")).collect());
}

#[test]
fn usual_ranges_lie_inside_allowed_ranges_and_hold_the_default() {
    let wrong = |_: &str, row: &Row| {
        if row.usual.low > f64::NEG_INFINITY && !row.allowed.holds(row.usual.low) {
            return Some(format!("usual from {} but allowed {}", row.usual.low, row.allowed.words(row.unit)));
        }
        if row.usual.high < f64::INFINITY && !row.allowed.holds(row.usual.high) {
            return Some(format!("usual to {} but allowed {}", row.usual.high, row.allowed.words(row.unit)));
        }
        let default: f64 = row.default.replace('_', "").parse().ok()?;
        (!row.allowed.holds(default) || !row.usual.holds(default)).then(|| format!("default {default} is unusual"))
    };
    none(complaints(rows_of::<Line>(), wrong));
}

#[test]
fn paths_are_told_apart() {
    let mut seen: BTreeMap<String, &Row> = BTreeMap::new();
    let mut twice = Vec::new();
    for (path, row) in rows_of::<Evaluation>() {
        let other = seen.insert(path.clone(), row);
        if let Some(other) = other.filter(|other| other.unit != row.unit || other.name != row.name) {
            twice.push(format!("{path}: {} and {}", other.unit.label, row.unit.label));
        }
    }
    none(twice);
}
