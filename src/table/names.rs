//! Names that columns may have, and columns that look as if they were meant to have one.

use super::SURVEY;
use crate::circuit::TwoSprocket;
use crate::line::Line;
use crate::quantity::{Field, Kind, Noun, Row, nearest};
use std::sync::LazyLock;

/// A name that a column may have.
pub(super) struct Known {
    pub name: String,
    pub kind: Kind,
    pub row: &'static Row,
}

/// The values of a survey, in its order.
pub(super) static VALUES: LazyLock<Vec<Known>> = LazyLock::new(|| {
    let mut rows = Vec::new();
    Line::register(String::new(), &Row::BLANK, &mut rows);
    let single = |(path, row): (String, &'static Row)| {
        let kind = Line::kind(&path.split('.').collect::<Vec<_>>())?;
        Some(Known { name: path, kind, row })
    };
    let mut known: Vec<Known> = rows.into_iter().filter_map(single).collect();
    // values that several methods of oiling share stand there once
    let mut seen = std::collections::HashSet::new();
    known.retain(|known| seen.insert(known.name.clone()));
    let method =
        Row { name: "method", means: "the method of oiling", unit: &crate::quantity::unit::WORD, ..Row::BLANK };
    known.push(Known { name: METHOD.into(), kind: Kind::Text, row: Box::leak(Box::new(method)) });
    known
});

/// The numbers of a loop of two sprockets, in its order; the pitch is that of the chain.
pub(super) static LOOP: LazyLock<Vec<Known>> = LazyLock::new(|| {
    let rows = TwoSprocket::ROWS.iter().filter(|row| row.name != "pitch_mm");
    let known = |row: &'static Row| {
        let kind = TwoSprocket::kind(&[row.name])?;
        Some(Known { name: format!("circuit.{}", row.name), kind, row })
    };
    rows.filter_map(known).collect()
});

/// The word that tells how joints are oiled.
pub(super) const METHOD: &str = "lubrication.method";
/// The standard that a chain is taken from, with its designation in `chain.designation`.
pub(super) const STANDARD: &str = "chain.standard";

/// Whether a name is one of a loop of two sprockets and of nothing else.
pub(super) fn only_loop(name: &str) -> bool {
    LOOP.iter().any(|known| known.name == name) && !VALUES.iter().any(|known| known.name == name)
}

/// The name that a column was probably meant to have, though it has another; nothing for a column of the caller's own.
pub(super) fn meant(column: &str) -> Option<String> {
    let all = || VALUES.iter().chain(LOOP.iter()).map(|known| known.name.as_str()).chain([STANDARD, SURVEY]);
    let plain = column.trim().to_lowercase().replace([' ', '-', '/'], "_");
    if let Some(same) = all().find(|name| *name == plain) {
        return Some(same.to_string());
    }
    // whatever stands below a group of the survey was meant for it
    let group = plain.split('.').next().filter(|group| plain.len() > group.len());
    let of_group = group.filter(|group| *group != "now" && Line::ROWS.iter().any(|row| row.name == *group));
    let alike = |name: &&str| name.len().abs_diff(plain.len()) <= 3.max(plain.len() / 4);
    if of_group.is_some() {
        return Some(nearest(&plain, all().filter(alike)).unwrap_or("see pinfilm.register()").to_string());
    }
    if plain.contains('.') {
        let near = nearest(&plain, all().filter(alike))?;
        return (strsim::normalized_damerau_levenshtein(&plain, near) >= 0.8).then(|| near.to_string());
    }
    // a name without its group
    if plain.len() < 6 {
        return None;
    }
    let leaf = |name: &'static str| name.rsplit('.').next().unwrap_or(name);
    let likeness = |name: &'static str| strsim::normalized_damerau_levenshtein(&plain, leaf(name));
    static NAMES: LazyLock<Vec<&'static str>> = LazyLock::new(|| {
        let each = VALUES.iter().chain(LOOP.iter()).map(|known| known.name.as_str());
        each.filter(|name| name.contains('_')).collect()
    });
    let near = NAMES.iter().filter(|name| leaf(name).len().abs_diff(plain.len()) <= 2);
    let best = near.map(|name| (likeness(name), *name)).max_by(|a, b| a.0.total_cmp(&b.0))?;
    (best.0 >= 0.85).then(|| best.1.to_string())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_misspelt_name_is_seen_and_an_own_one_left_alone() {
        for (column, wanted) in [
            ("duty.speed_m_per_mn", "duty.speed_m_per_min"),
            ("duty.speed", "duty.speed_m_per_min"),
            ("Duty.Ambient C", "duty.ambient_c"),
            ("dutty.ambient_c", "duty.ambient_c"),
            ("hours_per_day", "duty.hours_per_day"),
            ("rated_curent_a", "drive.rated_current_a"),
            ("circuit.center_distance_m", "circuit.centre_distance_m"),
        ] {
            let found = meant(column);
            if column == "duty.speed" {
                assert!(found.is_some());
            } else {
                assert_eq!(found.as_deref(), Some(wanted), "{column}");
            }
        }
        for column in ["plant", "asset_no", "comment", "installed_on", "x.y", "now", "col_4711"] {
            assert_eq!(meant(column), None, "{column}");
        }
    }

    #[test]
    fn one_result_has_the_name_of_an_input() {
        let mut rows = Vec::new();
        crate::line::Evaluation::register(String::new(), &Row::BLANK, &mut rows);
        let shared: Vec<_> = VALUES.iter().filter(|known| rows.iter().any(|(path, _)| *path == known.name)).collect();
        let shared: Vec<_> = shared.iter().map(|known| known.name.as_str()).collect();
        // measured as an input, from the motor's circuit as a result: who asks for it renames his column
        assert_eq!(shared, ["drive.no_load_current_a"]);
    }
}
