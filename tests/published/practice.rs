//! What handbooks say people should do and buy. Facts that the library states in words are checked as users read them.

use crate::{Answer, Check, Compared, number, numbers, relative, said, within};
use pinfilm::chain::{roller_chain_power, standard};
use pinfilm::joint::bearing_pressure;
use pinfilm::lubrication::Manual;
use pinfilm::lubrication::entry::JointEntry;
use pinfilm::lubrication::method::handbook_methods;
use pinfilm::lubrication::point::{Loop, Point, Surroundings};
use pinfilm::oil::{Oil, USUAL_GRADE, handbook_grade, handbook_sae_grade};
use pinfilm::quantity::{Access, Noun, Row, Side, default_of, named};
use pinfilm::wear::{DryPair, unlubricated_coefficient};

const HORSEPOWER: f64 = 745.7;

pub fn check(check: &Check) -> Answer {
    let (given, printed) = (check.inputs, check.expected);
    Some(match check.id {
        "KIN-019" => {
            let power = |rpm: f64| {
                let pitch = 0.0254 * number(given, "p_in");
                roller_chain_power(pitch, number(given, "N"), rpm / 60.0).unwrap() / HORSEPOWER
            };
            let speeds = numbers(&given["rpm"]).into_iter().zip(numbers(printed));
            speeds.map(|(rpm, hp)| within(format!("hp at {rpm} 1/min"), hp, power(rpm), 0.01)).collect()
        }
        "KIN-024" => {
            let (load, area) = (number(given, "F_N"), 1e-6 * number(given, "A_mm2"));
            let chain = standard("ISO 606", given["chain"].as_str()?).unwrap();
            let pin = chain.pin_diameter.as_ref().map_or(f64::NAN, |pin| pin.value);
            let length = chain.joint_length.as_ref().map_or(f64::NAN, |length| length.value);
            vec![
                relative(
                    "pressure on the printed area, MPa",
                    printed.as_f64()?,
                    1e-6 * bearing_pressure(load, pin, area / pin),
                    1e-5,
                ),
                relative(
                    "on the area of our table, MPa",
                    printed.as_f64()?,
                    1e-6 * bearing_pressure(load, pin, length),
                    0.015,
                ),
            ]
        }
        "PEN-009" => {
            let row = named(Oil::ROWS, "surface_tension_mn_per_m");
            let (range, ours) = (numbers(&printed["gamma_mN_per_m"]), default_of(row).unwrap_or(f64::NAN));
            let (middle, half) = (0.5 * (range[0] + range[1]), 0.5 * (range[1] - range[0]));
            vec![within("surface tension taken where none is given, mN/m", middle, ours, half)]
        }
        "WEA-002" => [
            ("mild steel", DryPair::MildSteel),
            ("alpha/beta brass", DryPair::Brass),
            ("hard tool steel", DryPair::HardToolSteel),
            ("ferritic stainless", DryPair::FerriticStainless),
            ("polythene", DryPair::Polythene),
        ]
        .into_iter()
        .map(|(name, pair)| relative(name, number(printed, name), unlubricated_coefficient(pair), 1e-12))
        .collect(),
        "LUB-001" => {
            let names = |speed: f64| handbook_methods(speed).collect::<Vec<_>>().join(" ");
            [
                (0.0, "slow_drip dip"),
                (3.0, "slow_drip fast_drip dip"),
                (7.5, "fast_drip dip spray"),
                (10.0, "dip spray"),
                (10.1, "spray"),
            ]
            .into_iter()
            .map(|(speed, expected)| said(format!("at {speed} m/s"), expected, &names(speed)))
            .collect()
        }
        "LUB-002" => {
            let text = source_of(Oil::ROWS, "iso_vg");
            vec![
                within("grade", number(printed, "ISO_VG"), USUAL_GRADE, 0.0),
                stated("said at oil.iso_vg", "VG 150 for roller chains", text),
            ]
        }
        "LUB-003" => {
            let text = source_of(Oil::ROWS, "iso_vg");
            vec![
                stated(
                    "said at oil.iso_vg",
                    "advises against heavy oil and grease: too stiff to enter the joints",
                    text,
                ),
                said("the model of entry, VG 100 and VG 3200 cold", "enters; does not", &entry_of_two_oils()),
            ]
        }
        "LUB-004" => [(0.0, "-5<t<=5"), (20.0, "5<t<=25"), (40.0, "25<t<=45"), (60.0, "45<t<=70")]
            .into_iter()
            .map(|(room, key)| {
                within(format!("VG at {room} °C"), number(printed, key), handbook_grade(room).unwrap(), 0.0)
            })
            .collect(),
        "LUB-006" => given["F"]
            .as_array()?
            .iter()
            .map(numbers)
            .zip(printed.as_array()?)
            .flat_map(|(range, name)| {
                // just inside both ends
                [range[0] + 0.1, range[1] - 0.1].map(|fahrenheit| {
                    let ours = handbook_sae_grade((fahrenheit - 32.0) / 1.8).unwrap();
                    said(format!("at {fahrenheit} °F"), name.as_str().unwrap_or_default(), &format!("SAE {ours}"))
                })
            })
            .collect(),
        "LUB-009" => {
            let words = "inside of the slack strand, upper edges of the side plates, shortly before a sprocket";
            vec![
                stated(
                    "said at lubrication.application_section",
                    words,
                    source_of(Manual::ROWS, "application_section"),
                ),
                said("where the score of points is best", "slack strand, from above", &best_place()),
            ]
        }
        _ => return None,
    })
}

fn source_of(rows: &'static [Row], name: &str) -> &'static str {
    named(rows, name).source
}

/// Whether a text that users read holds the words.
fn stated(what: &str, words: &str, text: &str) -> Compared {
    said(what, words, if text.contains(words) { words } else { text })
}

/// A joint of medium size with ten seconds to take its oil: VG 100 warm, and VG 3200 in a cold room (20 Pa s).
fn entry_of_two_oils() -> String {
    let joint = JointEntry {
        plate_gap: 0.4e-3,
        plate_path: 5e-3,
        pin_diameter: 8.28e-3,
        clearance: 50e-6,
        eccentricity: 1.0,
        depth: 12e-3,
        surface_tension: 0.03,
        contact_angle: 20f64.to_radians(),
        density: 900.0,
    };
    let word = |viscosity| if joint.time(viscosity) < 60.0 { "enters" } else { "does not" };
    format!("{}; {}", word(0.1), word(20.0))
}

/// Slack against tight, and above against below, all else equal.
fn best_place() -> String {
    let around = Loop { tension: (1000.0, 6000.0), temperature: (20.0, 20.0), flash_point: 240.0, entry_time: 10.0 };
    let point = |tension, side| Point {
        tension,
        temperature: 20.0,
        time_available: 60.0,
        side,
        open_share: 1.0,
        time_to_wash: None,
        access: Access::Open,
        surroundings: Surroundings::default(),
    };
    let score = |tension, side| point(tension, side).score(&around).score;
    let strand = if score(1000.0, Side::Top) > score(6000.0, Side::Top) { "slack" } else { "tight" };
    let side = if score(1000.0, Side::Top) > score(1000.0, Side::Bottom) { "above" } else { "below" };
    format!("{strand} strand, from {side}")
}
