//! What is uncertain about a line if nobody says: the spreads of the register, where they matter to this line.

use super::super::draws::{Distribution, Generator};
use super::doubt::{about, about_unnamed};
use super::outputs::Outputs;
use super::subject::{Outcome, Side, Subject};
use super::uncertain::{Doubt, Uncertain};
use crate::circuit::Circuit;
use crate::error::Result;
use crate::line::Line;
use crate::quantity::{Datum, Field, Noun, Row, default_of, rows_of, steps};

/// Friction and wear of a surface go together. Closure of our own.
const TOGETHER: [(&str, &str, f64); 2] = [
    ("surface.dry_friction", "wear.wear_coefficient_dry", 0.5),
    ("oil.boundary_friction", "wear.wear_coefficient_boundary", 0.5),
];

/// The uncertain inputs of a line or a pair with what is thought of them, in the order of the register.
///
/// An input is among them if its row states a spread and any number of the result moves when the input goes to the values
/// that 5 % and 95 % lie below. In a pair, one draw serves both sides, about the value of each; but different methods of
/// oiling have draws of their own, and of costs that the proposal changes only the promise is uncertain.
pub fn default_uncertainty(subject: &Subject) -> Result<Vec<(String, Doubt)>> {
    let base = subject.outcome()?;
    let outputs = Outputs::of(subject, None, Some(&base))?;
    let before = bits(&outputs, &base);
    let mut all = match subject {
        Subject::Line(line) => of_line(line).into_iter().map(|(path, d)| (path, Doubt::Same(d))).collect(),
        Subject::Pair(now, proposed) => of_pair(now, proposed),
    };
    all.retain(|doubt| enters(subject, &outputs, &before, doubt));
    Ok(all)
}

fn of_pair(a: &Line, b: &Line) -> Vec<(String, Doubt)> {
    let (now, proposed) = (of_line(a), of_line(b));
    let of = |list: &[(String, Distribution)], path: &str| list.iter().find(|(p, _)| p == path).map(|(_, d)| *d);
    let own_method = a.lubrication.as_str() != b.lubrication.as_str();
    let differs = |path: &str| a.get(&steps(path)) != b.get(&steps(path));
    let sided = |side: Side, path: &str| format!("{}.{path}", side.as_str());
    let mut all = Vec::new();
    for (path, d) in &now {
        match of(&proposed, path) {
            _ if path.starts_with("costs.") && differs(path) => {}
            Some(other) if own_method && path.starts_with("lubrication.") => {
                all.push((sided(Side::Now, path), Doubt::Same(*d)));
                all.push((sided(Side::Proposed, path), Doubt::Same(other)));
            }
            Some(other) if differs(path) => all.push((path.clone(), Doubt::Each(*d, other))),
            Some(_) => all.push((path.clone(), Doubt::Same(*d))),
            None => all.push((sided(Side::Now, path), Doubt::Same(*d))),
        }
    }
    for (path, d) in &proposed {
        if of(&now, path).is_none() || (path.starts_with("costs.") && differs(path)) {
            all.push((sided(Side::Proposed, path), Doubt::Same(*d)));
        }
    }
    all
}

/// Correlations that hold if nobody says otherwise, among the inputs named.
pub fn default_correlation(names: &[&str]) -> Vec<(usize, usize, f64)> {
    let place = |path: &str| names.iter().position(|name| *name == path);
    TOGETHER.iter().filter_map(|(a, b, r)| Some((place(a)?, place(b)?, *r))).collect()
}

/// What the register thinks of the inputs of one line, whether they enter or not.
fn of_line(line: &Line) -> Vec<(String, Distribution)> {
    let mut found: Vec<(String, Distribution)> = Vec::new();
    for (path, row) in rows_of::<Line>() {
        for path in places(&line.circuit, path) {
            // a path that several methods or sections share is listed once for each
            if found.iter().any(|(known, _)| *known == path) {
                continue;
            }
            found.extend(thought_of(line, &path, row).map(|d| (path, d)));
        }
    }
    found
}

/// A path of the register as paths of this line: one for each section.
fn places(circuit: &Circuit, path: &str) -> Vec<String> {
    match path.strip_prefix("circuit.sections.") {
        Some(key) => (0..circuit.sections.len()).map(|i| format!("circuit.sections.{i}.{key}")).collect(),
        None => vec![path.to_string()],
    }
}

/// What the register thinks of the input at `path` of this line.
pub(super) fn thought_of(line: &Line, path: &str, row: &Row) -> Option<Distribution> {
    let other = |path: &str| line.get(&steps(path)).and_then(Datum::number);
    match line.get(&steps(path))? {
        Datum::Number(value) => about(&method_row(line, path, row), value, default_at(line, path, row), &other),
        Datum::Nothing => about_unnamed(row, &other),
        _ => None,
    }
}

/// The row of this line's own method, where several methods have the same key with other spreads.
fn method_row(line: &Line, path: &str, row: &Row) -> Row {
    use crate::lubrication::{Drip, Lubrication, Manual, Spray, Synchronised};
    let Some(key) = path.strip_prefix("lubrication.") else { return *row };
    let rows = match line.lubrication {
        Lubrication::Manual(_) => Manual::ROWS,
        Lubrication::Drip(_) => Drip::ROWS,
        Lubrication::Spray(_) => Spray::ROWS,
        Lubrication::Synchronised(_) => Synchronised::ROWS,
    };
    rows.iter().find(|own| own.name == key).copied().unwrap_or(*row)
}

fn default_at(line: &Line, path: &str, row: &Row) -> Option<f64> {
    default_of(&method_row(line, path, row))
}

/// Whether any number of the result moves with the input.
fn enters(subject: &Subject, outputs: &Outputs, before: &[u64], doubt: &(String, Doubt)) -> bool {
    let alone = Uncertain::new(subject.clone(), std::slice::from_ref(doubt));
    let Ok((alone, plans)) = alone.and_then(|alone| alone.plans(Generator::Random, 0).map(|plans| (alone, plans)))
    else {
        return false;
    };
    let mut scratch = alone.scratch();
    // one that cannot be computed there matters more than any
    [0.05, 0.95]
        .into_iter()
        .any(|u| alone.at(&plans, &[u], &mut scratch).map_or(true, |moved| bits(outputs, &moved) != before))
}

fn bits(outputs: &Outputs, outcome: &Outcome) -> Vec<u64> {
    outputs.read(&outputs.readers(), outcome).iter().map(|x| x.to_bits()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(text: &str) -> Line {
        Line::from_toml(text).unwrap()
    }

    fn oven() -> (Line, Line) {
        let (now, then) = (
            include_str!("../../../python/pinfilm/data/oven_now.toml"),
            include_str!("../../../python/pinfilm/data/oven_proposed.toml"),
        );
        (line(now), line(then))
    }

    #[test]
    fn what_does_not_enter_is_left_out() {
        let found = default_uncertainty(&oven().0.into()).unwrap();
        let has = |path: &str| found.iter().any(|(p, _)| p == path);
        assert!(has("wear.wear_coefficient_dry") && has("lubrication.capture") && has("duty.dust_factor"));
        // no washing, no converter, friction of pin and bush computed
        assert!(!has("duty.wash_removed_share") && !has("drive.converter_efficiency") && !has("friction.joint"));
        // the surveyor read the index off the data sheet
        assert!(!has("oil.viscosity_index"));
        assert!(has("circuit.sections.4.heat_transfer_w_per_m2_k"), "{found:?}");
    }

    #[test]
    fn a_pair_shares_what_is_the_same() {
        let (now, then) = oven();
        let found = default_uncertainty(&(now, then).into()).unwrap();
        let doubt = |path: &str| found.iter().find(|(p, _)| p == path).map(|(_, d)| *d);
        assert!(matches!(doubt("wear.wear_coefficient_dry"), Some(Doubt::Same(_))));
        assert!(doubt("lubrication.capture").is_none());
        assert!(doubt("now.lubrication.capture").is_some() && doubt("proposed.lubrication.capture").is_some());
        // counted now, promised then
        assert!(
            doubt("proposed.costs.cleanings_per_year").is_some() && doubt("now.costs.cleanings_per_year").is_none()
        );
        assert!(doubt("proposed.costs.invest").is_some());
    }
}
