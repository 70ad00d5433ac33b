//! The table of all checks for readers, `docs/published-checks.md`: written by a command, compared by the ordinary test.

use crate::Compared;
use serde_json::Value;
use std::fmt::Write;

/// One entry of the data file with what became of it.
pub struct Row {
    pub entry: Value,
    /// None where no function answers.
    pub compared: Option<Vec<Compared>>,
    pub passed: bool,
}

/// Six figures, as a person would write them.
pub fn figures(value: f64) -> String {
    if value == 0.0 || !value.is_finite() {
        return format!("{value}");
    }
    let size = value.abs().log10().floor() as i32;
    if (-4..7).contains(&size) {
        let places = (5 - size).max(0) as usize;
        let text = format!("{value:.places$}");
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_string() } else { text }
    } else {
        let text = format!("{value:.5e}");
        let (mantissa, power) = text.split_once('e').unwrap_or((&text, "0"));
        format!("{}e{power}", mantissa.trim_end_matches('0').trim_end_matches('.'))
    }
}

/// Difference in two figures; what is rounding of the last bits is 0 on every machine.
fn difference(c: &Compared) -> String {
    let difference = c.ours - c.printed;
    if difference.abs() <= 1e-9 * c.printed.abs().max(1e-12) || difference.abs() < 1e-13 {
        return "0".into();
    }
    format!("{difference:+.1e}")
}

fn cells(c: &Compared) -> [String; 4] {
    match &c.words {
        Some((printed, ours)) => [printed.clone(), ours.clone(), "".into(), "the words".into()],
        None => {
            let allowed = if c.allowed == 0.0 { "exact".into() } else { format!("±{:.1e}", c.allowed) };
            [figures(c.printed), figures(c.ours), difference(c), allowed]
        }
    }
}

/// Text that stays inside its cell.
fn cell(text: &str) -> String {
    text.replace('|', "\\|").replace('\n', " ")
}

/// The page.
pub fn page(rows: &[Row]) -> String {
    let mut text = String::from(
        "# Published checks\n\n\
         Written by `nox -s tables`; the ordinary tests fail when this page is stale. Each line is one number of an outside \
         source against ours, with the greatest difference that the source supports (rounding of the print, spread of the \
         quantity, known errors of the source). Words are compared as words. An entry that fails stays here with its reason; \
         no model was tuned to pass.\n\n",
    );
    let mut areas: Vec<&str> = rows.iter().filter_map(|row| row.entry["area"].as_str()).collect();
    areas.sort_by_key(|area| area.split(' ').next().and_then(|n| n.parse::<u32>().ok()));
    areas.dedup();
    let counted = |keep: &dyn Fn(&Row) -> bool| rows.iter().filter(|row| keep(row)).count();
    text += "| area | checks | met | numbers compared |\n|---|---|---|---|\n";
    for area in &areas {
        let here: Vec<&Row> = rows.iter().filter(|row| row.entry["area"] == **area).collect();
        let met = here.iter().filter(|row| row.passed).count();
        let numbers: usize = here.iter().filter_map(|row| row.compared.as_ref().map(Vec::len)).sum();
        let _ = writeln!(text, "| {area} | {} | {met} | {numbers} |", here.len());
    }
    let numbers: usize = rows.iter().filter_map(|row| row.compared.as_ref().map(Vec::len)).sum();
    let _ = writeln!(text, "| **all** | **{}** | **{}** | **{numbers}** |\n", rows.len(), counted(&|row| row.passed));
    for area in &areas {
        let _ = writeln!(text, "## {}\n", area.split_once(' ').map_or(*area, |(_, name)| name));
        for row in rows.iter().filter(|row| row.entry["area"] == **area) {
            let get = |key: &str| row.entry[key].as_str().unwrap_or_default();
            let _ = writeln!(text, "### {} {}\n", get("id"), get("quantity"));
            let confidence = if get("provenance").contains("from memory") && !get("source").contains("from memory") {
                " Partly or wholly from memory."
            } else {
                ""
            };
            let _ = writeln!(text, "{}.{confidence}\n", get("source").trim_end_matches('.'));
            for (word, key) in [("**Fails**", "fails_because"), ("**Outside the models**", "outside")] {
                if !get(key).is_empty() {
                    let _ = writeln!(text, "{word}: {}.\n", get(key));
                }
            }
            let Some(compared) = &row.compared else { continue };
            text += "| what | printed | ours | difference | tolerance | pass |\n|---|---|---|---|---|---|\n";
            for c in compared {
                let [printed, ours, difference, allowed] = cells(c).map(|text| cell(&text));
                let pass = if c.holds() { "yes" } else { "**no**" };
                let _ =
                    writeln!(text, "| {} | {printed} | {ours} | {difference} | {allowed} | {pass} |", cell(&c.what));
            }
            text.push('\n');
        }
    }
    text.trim_end().to_string() + "\n"
}
