//! What a room calls its quantities, in the names of the survey: errors of rooms become errors of this line.
//!
//! Rooms take numbers and name them in plain words. Here, and only here, stands which survey key or result that is.

use super::{Evaluation, Line};
use crate::error::{Error, Given};
use crate::quantity::{Datum, Field, Noun, registered, row_of, rows_of, show, steps};

/// What a room calls a quantity, and its path; of several paths the first that the survey gives.
const NAMES: &[(&str, &[&str])] = &[
    // circuit and chain
    ("sections", &["circuit.sections"]),
    ("joints", &["circuit.joints"]),
    ("take_up_at", &["circuit.take_up_at"]),
    ("speed", &["duty.speed_m_per_min"]),
    ("roller_diameter", &["chain.roller_diameter_mm"]),
    ("tensile_strength", &["chain.tensile_strength_kn"]),
    // oil
    ("iso_vg", &["oil.iso_vg"]),
    ("viscosity", &["oil.v1_mm2_s", "oil.iso_vg"]),
    ("viscosity_2", &["oil.v2_mm2_s"]),
    ("viscosity_40", &["oil.iso_vg"]),
    ("viscosity_100", &["oil.viscosity_index"]),
    ("temperature_2", &["oil.t2_c"]),
    ("temperature", &["kinematics.section_c"]),
    ("dynamic_viscosity", &["joint.events.viscosity_mpa_s"]),
    ("flash_point", &["oil.flash_point_c"]),
    // joints: pins in bushes, and bushes in rollers
    ("bore", &["chain.bush_bore_mm"]),
    ("length", &["chain.joint_length_mm"]),
    ("bore of the roller", &["chain.roller_bore_mm"]),
    ("length of the roller", &["chain.inner_width_mm"]),
    ("bearing pressure", &["joint.events.pressure_mpa"]),
    ("contact pressure", &["joint.events.contact_pressure_mpa"]),
    ("dry_friction", &["surface.dry_friction"]),
    ("height of the asperities", &["joint.events.lambda_ratio"]),
    ("film after rest", &["joint.events.film_um"]),
    ("squeezed film", &["joint.events.film_um"]),
    ("eccentricity of a bearing", &["joint.events.film_um"]),
    // lubrication
    ("circuit time", &["kinematics.circuit_time_s"]),
    ("run", &["lubrication.timer.run_min", "kinematics.circuit_time_s"]),
    ("dwell", &["lubrication.timer.dwell_min", "kinematics.circuit_time_s"]),
    ("time in the spray zone", &["kinematics.circuit_time_s"]),
    ("time between two doses of a joint", &["fill.worst_wait_h"]),
    ("every_nth", &["lubrication.every_nth"]),
    ("attachment_every", &["circuit.attachment_every"]),
    ("miss_share", &["lubrication.miss_share"]),
    ("depth of oil in the slot", &["fill.entered_share"]),
    // wear
    ("share of joints", &["fill.share_of_joints"]),
    ("mean wear life", &["wear.life_mean_years"]),
    ("roller diameter", &["chain.roller_diameter_mm", "chain.bush_diameter_mm"]),
    // drive
    ("rated_current", &["drive.rated_current_a"]),
    ("rated_speed", &["drive.rated_speed_rpm"]),
    ("rated_efficiency", &["drive.rated_efficiency"]),
    ("rated_power_factor", &["drive.rated_power_factor"]),
    ("measured_current", &["drive.no_load_current_a", "drive.empty_current_a"]),
    ("leakage", &["drive.leakage_pu"]),
    ("shaft_power", &["drive.shaft_power_w"]),
    // supply
    ("reynolds", &["supply.reynolds"]),
    ("power", &["supply.device_power_w"]),
    ("area", &["supply.cable_mm2"]),
    ("conductor_class", &["supply.conductor_class"]),
];

/// The units in which rooms give the value that they refuse.
const SI: &[&str] = &["m", "m²", "m/s", "s", "N", "Pa", "Pa s", "W"];

/// An error of a room as one of this line: the full path, the value in the unit of its name, and the line of the file
/// that the survey was read from.
pub(super) fn blame(mut error: Error, line: &Line) -> Error {
    if let Some(path) = path_of(&error.field, line) {
        error.field = path;
    }
    let surveyed = holds::<Line>(&error.field);
    let row = if surveyed { row_of::<Line>(&error.field) } else { row_of::<Evaluation>(&error.field) };
    error.is_result = !surveyed && row.is_some();
    if let (Given::Number(value), Some(row)) = (&*error.value, row)
        && SI.contains(&error.unit)
        && row.unit.is_of_numbers()
    {
        error.value = Box::new(Given::Number(row.unit.from_si(*value)));
        error.unit = row.unit.label;
    }
    if let (Given::Number(value), Some(_)) = (&*error.value, row)
        && !error.message.contains(&error.field)
    {
        let unit = if error.unit.is_empty() { String::new() } else { format!(" {}", error.unit) };
        error.message = format!("{} = {}{unit}: {}", error.field, show::number(*value), error.message);
    }
    if !error.is_result {
        let at = line.lines.line_of(&error.field);
        error = error.at_line(at);
    }
    error
}

/// The path of what a room names; nothing for a name that is a path already.
fn path_of(name: &str, line: &Line) -> Option<String> {
    // a value of one section: `sections[3].rise`
    if let Some((section, plain)) = name.strip_prefix("sections[").and_then(|rest| rest.split_once(']')) {
        let place = format!("circuit.sections.{section}");
        let Some(plain) = plain.strip_prefix('.') else { return Some(place) };
        let row =
            rows_of::<Line>().iter().find(|(path, row)| path.starts_with("circuit.sections.") && row.plain == plain);
        return row.map(|(_, row)| format!("{place}.{}", row.name));
    }
    let (_, paths) = NAMES.iter().find(|(plain, _)| *plain == name)?;
    let given = |path: &&&str| line.get(&steps(path)).is_some_and(|datum| datum != Datum::Nothing);
    paths.iter().find(given).or(paths.last()).map(|path| (*path).to_string())
}

/// Whether a path is that of a quantity, or of a group of them.
fn holds<T: Noun>(path: &str) -> bool {
    let plain = registered(path);
    rows_of::<T>()
        .iter()
        .any(|(known, _)| known.strip_prefix(&plain).is_some_and(|rest| rest.is_empty() || rest.starts_with('.')))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::{Path, PathBuf};

    /// Names in errors that no evaluation of a line raises, and who does.
    const ELSEWHERE: &[(&str, &str)] = &[
        ("length of a chain", "formula: centre distance of a loop"),
        ("centre", "formula: length of a loop"),
        ("radius", "formula; of a turn it is named with its section"),
        ("pitch", "Chain.standard"),
        ("pitch_mm", "formula: power rating of a roller chain"),
        ("ambient_c", "formula: grade that a handbook gives"),
        ("progress", "a simulation that its caller stopped"),
        ("input_power", "logs: shaft power of a logged power"),
        ("shaft power", "logs: shaft power of a logged power"),
        ("designation", "Chain.standard"),
        ("standard", "Chain.standard"),
        ("current", "formula: power from current"),
        ("no_load_current", "formula: power from current"),
        ("load ratio", "formula: power from current"),
        ("eccentricity ratio", "formula: Reynolds bearing"),
        ("film pressure", "formula: Reynolds bearing"),
        ("eccentricity of a short bearing", "formula: short bearing"),
        ("pin motion", "the orbit that checks the closed forms"),
        ("segments", "the simulator that checks coverage"),
        ("rate of return", "a rate that is not found has a status instead"),
        ("discount factor", "a rate that is not found has a status instead"),
    ];

    fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                sources(&path, found);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                found.push(path);
            }
        }
    }

    /// The text of a source file without its tests.
    fn code(path: &Path) -> String {
        let text = std::fs::read_to_string(path).unwrap();
        let end = text.find("mod tests {").unwrap_or(text.len());
        text[..end].to_string()
    }

    /// The words in quotes that stand where a room names what it refuses.
    fn names_in(text: &str) -> Vec<String> {
        let quoted = |rest: &str| {
            let rest = rest.trim_start().strip_prefix('"')?;
            Some(rest[..rest.find('"')?].to_string())
        };
        let after = |start: &'static str| text.match_indices(start).map(move |(at, _)| &text[at + start.len()..]);
        let mut names: Vec<String> = Vec::new();
        names.extend(after("Error::new(").filter_map(|rest| quoted(rest.split_once(',')?.1)));
        for start in [" root(", "rising_root(", "infeasible(", " ticks(", "(ticks(", "too_long(", "outside("] {
            names.extend(after(start).filter_map(quoted));
        }
        for start in ["for (what, least, count) in [(", "for (what, count) in [(", "let what = "] {
            names.extend(after(start).filter_map(quoted));
        }
        names
    }

    #[test]
    fn every_name_that_a_room_gives_its_errors_has_a_path() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
        let rooms = ["chain", "circuit", "oil", "joint", "lubrication", "wear", "drive", "supply", "economics"];
        let mut files = Vec::new();
        rooms.iter().for_each(|room| sources(&root.join(room), &mut files));
        let names: Vec<(PathBuf, String)> = files
            .iter()
            .flat_map(|path| names_in(&code(path)).into_iter().map(move |name| (path.clone(), name)))
            .collect();
        assert!(names.len() > 40, "the search for names of errors finds only {}", names.len());
        let known = |name: &String| {
            name.contains('.')
                || NAMES.iter().any(|(plain, _)| plain == name)
                || ELSEWHERE.iter().any(|(plain, _)| plain == name)
        };
        let strangers: Vec<_> = names.iter().filter(|(_, name)| !known(name)).collect();
        assert!(strangers.is_empty(), "these stand in no table of names: {strangers:?}");
        for (plain, _) in NAMES {
            let by_line = plain.ends_with(" of the roller");
            assert!(by_line || *plain == "every_nth" || names.iter().any(|(_, name)| name == plain), "{plain}");
        }
    }

    #[test]
    fn every_path_is_one_of_the_survey_or_of_the_result() {
        for path in NAMES.iter().flat_map(|(_, paths)| *paths) {
            assert!(holds::<Line>(path) || row_of::<Evaluation>(path).is_some(), "{path}");
        }
    }

    #[test]
    fn sections_are_named_by_their_number() {
        let text = include_str!("../../python/pinfilm/data/floor_now.toml");
        let line = Line::from_toml(text).unwrap();
        let of = |name: &str| path_of(name, &line).unwrap();
        assert_eq!(of("sections[3].rise"), "circuit.sections.3.rise_m");
        assert_eq!(of("sections[0].idler_spacing"), "circuit.sections.0.idler_spacing_m");
        assert_eq!(of("sections[2]"), "circuit.sections.2");
        assert_eq!(path_of("chain.pitch_mm", &line), None);
    }
}
