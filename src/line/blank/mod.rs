//! A blank survey file: every key with its unit, its usual range and what it means, read off the register.
//!
//! What must be given stands empty after its `=`, with a usual figure beside it; what may be left out is commented out,
//! with the value that holds then. The short form has what an everyday survey names, the full form every key.

mod key; // one line of the file

use super::{Duty, Line};
use crate::chain::Chain;
use crate::circuit::{Circuit, Friction, Straight, Turn};
use crate::drive::Drive;
use crate::economics::Costs;
use crate::error::Result;
use crate::joint::{Joint, Surface};
use crate::lubrication::{Drip, Fill, Manual, Spray, Synchronised, Timer};
use crate::oil::Oil;
use crate::quantity::{Field, Noun, Tree};
use crate::supply::Supply;
use crate::wear::Wear;
use key::{Key, Stands};

/// Usual figures of a small line.
const TYPICAL: &str = include_str!("typical.toml");

/// Keys that a survey may leave out, but an everyday one does not: they stand in the short form too.
const EVERYDAY: &[&str] = &[
    "chain.roller_diameter_mm",
    "chain.roller_bore_mm",
    "chain.inner_width_mm",
    "chain.tensile_strength_kn",
    "chain.elongation_limit_pct",
    "circuit.strands",
    "circuit.joints",
    "section.temperature_c",
    "section.extra_pull_n",
    "duty.surroundings",
    "duty.food_contact",
    "duty.dust_factor",
    "duty.wash_interval_h",
    "oil.viscosity_index",
    "oil.noack_pct",
    "oil.flash_point_c",
    "lubrication.points",
    "lubrication.capture",
    "lubrication.zone_length_mm",
    "lubrication.application_section",
    "lubrication.every_nth",
    "timer.clock",
    "supply.line_length_m",
    "supply.line_bore_mm",
    "supply.coldest_c",
    "supply.reservoir_l",
    "drive.no_load_current_a",
    "drive.measured_current_a",
    "costs.currency",
    "costs.downtime_cost_per_h",
    "costs.applications_per_year",
    "costs.hours_per_application",
    "costs.cleanings_per_year",
    "costs.cleaning_h",
    "costs.breakdowns_per_year",
    "costs.breakdown_h",
    "costs.chain_price_per_m",
    "costs.other_life_years",
    "costs.invest",
];

/// Keys that the register lets a survey leave out, but that hardly any line can do without; they stand empty.
const ASKED: &[&str] = &["section.teeth", "section.rise_m", "section.load_kg_per_m", "oil.iso_vg", "timer.dwell_min"];

const HEAD: &str = "\
# Survey of a conveyor chain line.
#
# Fill in what stands empty after its \"=\". A line that begins with \"#\" may stay as it is: what it shows is used then,
# or nothing. To change it, take the \"#\" away. After each key: unit or range, what it means, a usual figure (e.g.).
# Text stands in \"quotes\"; numbers have a point, no comma. Sections are listed in the direction of travel.
# Measure with the drive locked out, guards in place where they can stay, by people who are allowed to.
";

/// A blank survey file (TOML), with every key or with those of an everyday survey.
///
/// Fails only if the usual figures that stand in it are no survey, which a test of this file shows.
pub fn blank_survey(full: bool) -> Result<String> {
    let typical = Line::from_toml(TYPICAL)?.write();
    Ok(Form { full, filled: false, typical }.written())
}

/// A form on its way to paper.
struct Form {
    full: bool,
    /// Whether the blanks are filled with the usual figures.
    filled: bool,
    typical: Tree,
}

impl Form {
    fn written(&self) -> String {
        let mut text = String::from(HEAD);
        text += &format!("\nname = {:<30} # what the plant calls it\n", if self.filled { "\"line 1\"" } else { "" });
        text += &self.group::<Chain>("chain", &["chain"]);
        text += &self.group::<Circuit>("circuit", &["circuit"]);
        text += &self.sections();
        text += &self.group::<Duty>("duty", &["duty"]);
        text += &self.group::<Oil>("oil", &["oil"]);
        text += &self.lubrication();
        text += &self.group::<Supply>("supply", &["supply"]);
        text += &self.group::<Drive>("drive", &["drive"]);
        text += &self.group::<Costs>("costs", &["costs"]);
        if self.full {
            text += &self.group::<Friction>("friction", &["friction"]);
            text += &self.group::<Surface>("surface", &["surface"]);
            text += &self.group::<Joint>("joint", &["joint"]);
            text += &self.group::<Fill>("fill", &["fill"]);
            text += &self.group::<Wear>("wear", &["wear"]);
        }
        text
    }

    /// A group under its own heading, with usual figures at a path of the typical survey.
    fn group<T: Noun>(&self, heading: &str, at: &[&str]) -> String {
        format!("\n[{heading}] # {}\n{}", sentence::<T>(), self.keys::<T>(at, ""))
    }

    /// The lines of a noun. Nouns inside it have their own headings and are left out here.
    fn keys<T: Noun>(&self, at: &[&str], before: &str) -> String {
        let typical = self.typical.at(at);
        let mut text = String::new();
        for row in T::ROWS {
            let path = format!("{}.{}", T::GROUP, row.name);
            let value = typical.and_then(|tree| tree.get(row.name));
            let stands = if row.default.is_empty() || ASKED.contains(&path.as_str()) {
                Stands::Asked
            } else if self.full || EVERYDAY.contains(&path.as_str()) {
                Stands::Offered
            } else {
                continue;
            };
            if let Some(line) = (Key { row, value, stands, filled: self.filled }).line() {
                text += before;
                text += &line;
            }
        }
        text
    }

    /// The everyday loop: drive, return, tail, carry.
    fn sections(&self) -> String {
        let pieces = [
            ("0", true, "the drive sprocket; rise is negative where the chain goes down"),
            ("1", false, "the return strand"),
            ("2", true, "the tail sprocket"),
            ("3", false, "the carrying strand"),
        ];
        let mut text = String::from(
            "\n# Straights and turns in travel order, one [[circuit.sections]] each; exactly one turn is the drive. Four make \
             the\n# everyday loop; copy a piece for every further straight or turn. Rises must add up to nothing.\n",
        );
        for (number, turn, what) in pieces {
            text += &format!("\n[[circuit.sections]] # {number}: {what}\n");
            let at = ["circuit", "sections", number];
            if turn {
                text += "type = \"turn\"\n";
                text += &self.keys::<Turn>(&at, "").replace("# drive = true", "drive = true");
                if number == "0" && !self.full {
                    text += "drive = true\n";
                }
            } else {
                text += "type = \"straight\"\n";
                text += &self.keys::<Straight>(&at, "");
            }
        }
        text
    }

    /// Timed spray, and the other three methods to take its place.
    fn lubrication(&self) -> String {
        let method =
            "\n[lubrication] # How the joints get their oil; three other methods stand below, commented out.\n";
        let mut text = format!("{method}method = \"timed_spray\"\n{}", self.keys::<Spray>(&["lubrication"], ""));
        text += "[lubrication.timer]\n";
        text += &self.keys::<Timer>(&["lubrication", "timer"], "");
        text += &self.other::<Manual>("manual");
        text += &self.other::<Drip>("drip");
        text += &self.other::<Synchronised>("synchronised");
        text += "# [lubrication.timer] # as above; without it the applicator never pauses\n";
        text
    }

    /// Another method, commented out as a whole.
    fn other<T: Noun>(&self, word: &str) -> String {
        let blank = Form { filled: false, typical: Tree::EMPTY, ..*self };
        let keys = blank.keys::<T>(&[], "");
        let lines: Vec<String> = keys.lines().map(|line| format!("# {}\n", line.trim_start_matches("# "))).collect();
        format!("\n# Instead: {}\n# [lubrication]\n# method = \"{word}\"\n{}", sentence::<T>(), lines.concat())
    }
}

fn sentence<T: Noun>() -> &'static str {
    T::MEANS.trim()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::evaluate;

    fn form(full: bool, filled: bool) -> String {
        Form { full, filled, typical: Line::from_toml(TYPICAL).unwrap().write() }.written()
    }

    #[test]
    fn filled_with_usual_figures_both_forms_are_the_typical_survey() {
        let typical = Line::from_toml(TYPICAL).unwrap();
        for full in [false, true] {
            let line = Line::from_toml(&form(full, true)).unwrap();
            let result = evaluate(&line).unwrap();
            assert!(result.tension.pull_n > 0.0);
            // what is left commented out is what holds anyway, so nothing that it shows may differ from that
            assert_eq!(line.circuit, typical.circuit);
            assert_eq!(line.duty, typical.duty);
            assert_eq!(line.oil, typical.oil);
            assert_eq!(line.lubrication, typical.lubrication);
            let unusual: Vec<_> = result.warnings.iter().filter(|warning| warning.code == "unusual").collect();
            assert!(unusual.is_empty(), "{unusual:?}");
        }
    }

    #[test]
    fn the_full_form_has_every_key() {
        let mut rows = Vec::new();
        Line::register(String::new(), &crate::quantity::Row::BLANK, &mut rows);
        let text = blank_survey(true).unwrap();
        for (path, row) in rows {
            let found = text.lines().any(|line| line.trim_start_matches("# ").starts_with(&format!("{} =", row.name)));
            assert!(found, "{path} is missing");
        }
    }

    #[test]
    fn a_blank_form_asks_for_what_is_empty() {
        let error = Line::from_toml(&blank_survey(false).unwrap()).unwrap_err();
        assert!(error.line.is_some() && error.message.contains("name"), "{error}");
    }
}
