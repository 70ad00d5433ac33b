//! What a room calls its quantities, in the names of the survey: errors of rooms become errors of this line.
//!
//! Rooms take numbers and name them in plain words. Here, and only here, stands which survey key or result that is.

use super::{Evaluation, Line};
use crate::error::{Error, Given};
use crate::quantity::{Field, Row, Value};

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
    ("leakage", &["drive.leakage"]),
    ("shaft_power", &["drive.shaft_power_w"]),
    // supply
    ("reynolds", &["supply.reynolds"]),
    ("power", &["supply.device_power_w"]),
    ("area", &["supply.cable_area_mm2"]),
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
    let (row, is_result) = match row_of::<Line>(&error.field) {
        Some(row) => (Some(row), false),
        None => (row_of::<Evaluation>(&error.field), true),
    };
    error.is_result = is_result && row.is_some();
    if let (Given::Number(value), Some(row)) = (&*error.value, row)
        && SI.contains(&error.unit)
        && row.unit.is_of_numbers()
    {
        error.value = Box::new(Given::Number(row.unit.from_si(*value)));
        error.unit = row.unit.label;
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
        let rows = rows::<Line>();
        let row = rows.iter().find(|(path, row)| path.starts_with("circuit.sections.") && row.plain == plain);
        return row.map(|(_, row)| format!("{place}.{}", row.name));
    }
    let (_, paths) = NAMES.iter().find(|(plain, _)| *plain == name)?;
    let tree = line.write();
    let given = |path: &&&str| {
        let steps: Vec<&str> = path.split('.').collect();
        tree.at(&steps).is_some_and(|value| value.value != Value::Nothing)
    };
    paths.iter().find(given).or(paths.last()).map(|path| (*path).to_string())
}

fn rows<T: Field>() -> Vec<(String, &'static Row)> {
    let mut rows = Vec::new();
    T::register(String::new(), &Row::BLANK, &mut rows);
    rows
}

/// The row of a dotted path, whatever the numbers of list items in it.
fn row_of<T: Field>(path: &str) -> Option<&'static Row> {
    let plain: Vec<&str> = path.split('.').filter(|step| step.parse::<usize>().is_err()).collect();
    let plain = plain.join(".");
    rows::<T>().into_iter().find(|(known, _)| *known == plain).map(|(_, row)| row)
}
