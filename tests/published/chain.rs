//! Dimensions of standard chains, sprocket geometry, chain speed, chain length.
#![allow(clippy::unwrap_used)]

use crate::{Answer, Check, Compared, number, numbers, relative, within};
use pinfilm::chain::{
    Cited, NEW_CHAIN_LENGTH_TOLERANCE, StandardChain, centre_distance, chain_length, chain_speed, chain_speed_limits,
    loop_length, measurement_over_pins, pitch_diameter, root_diameter, speed_drop, speed_ripple, standard,
};

const MM: f64 = 1e-3;
const KN: f64 = 1e3;
const INCH: f64 = 0.0254;
const LBF: f64 = 4.448_221_615_260_5;
const RPM: f64 = 1.0 / 60.0;
const PERCENT: f64 = 0.01;
/// "Exact to printed digits", with room for the last bit of a double.
const EXACT: f64 = 1e-9;

fn value(cited: &Option<Cited>) -> f64 {
    cited.as_ref().map_or(f64::NAN, |cited| cited.value)
}

pub fn check(check: &Check) -> Answer {
    let (given, printed) = (check.inputs, check.expected);
    let get = |key: &str| number(given, key);
    let teeth = |key: &str| number(given, key);
    Some(match check.id {
        "GEO-018" => printed
            .as_object()?
            .iter()
            .map(|(name, area)| {
                let chain = standard("ISO 606", name).unwrap();
                let ours = value(&chain.pin_diameter) * value(&chain.joint_length) / (MM * MM);
                relative(name, area.as_f64().unwrap_or(f64::NAN), ours, 0.015)
            })
            .collect(),
        "GEO-020" => printed.as_object()?.iter().flat_map(|(name, sizes)| inch_chain(name, sizes)).collect(),
        "GEO-032" => [20.0, 28.0, 40.0, 56.0, 80.0, 112.0, 160.0, 224.0, 315.0, 450.0, 630.0, 900.0]
            .into_iter()
            .map(|kn| {
                let chain = standard("ISO 1977", &format!("M{kn}")).unwrap();
                within(format!("M{kn}"), kn, value(&chain.tensile_strength) / KN, EXACT)
            })
            .collect(),
        "GEO-034" => printed
            .as_object()?
            .iter()
            .flat_map(|(name, sizes)| {
                let chain = standard("ASME B29.22", name).unwrap();
                let ours = |what: &str, cited| {
                    within(format!("{name} {what}"), number(sizes, what), value(cited) / INCH, 0.03)
                };
                [ours("pitch_in", &chain.pitch), ours("pin_in", &chain.pin_diameter)]
            })
            .collect(),
        "GEO-047" => {
            let (p, z) = (get("p") * MM, teeth("z"));
            vec![
                within("pitch circle", number(printed, "pitch_dia"), pitch_diameter(p, z) / MM, 0.005),
                within(
                    "over pins",
                    number(printed, "over_pins"),
                    measurement_over_pins(p, z, get("dR") * MM) / MM,
                    0.005,
                ),
                within("root", number(printed, "root_dia"), root_diameter(p, z, get("d1") * MM) / MM, 0.005),
            ]
        }
        "GEO-048" => [("z1", "D1"), ("z2", "D2")]
            .map(|(z, d)| {
                relative(format!("{z} teeth"), number(printed, d), pitch_diameter(get("p") * MM, teeth(z)) / MM, 1e-6)
            })
            .into(),
        "GEO-049" => vec![
            within("least", number(printed, "min_pct"), NEW_CHAIN_LENGTH_TOLERANCE.0 / PERCENT, EXACT),
            within("greatest", number(printed, "max_pct"), NEW_CHAIN_LENGTH_TOLERANCE.1 / PERCENT, EXACT),
        ],
        "KIN-008" => numbers(&given["N"])
            .into_iter()
            .zip(numbers(printed))
            .map(|(z, p)| relative(format!("{z} teeth"), p, speed_drop(z) / PERCENT, 1e-5))
            .collect(),
        "KIN-009" => {
            let (p, z, n) = (get("p_mm") * MM, teeth("z"), get("rpm") * RPM);
            let (least, greatest) = chain_speed_limits(p, z, n);
            vec![
                relative("greatest", number(printed, "vmax"), greatest, 1e-5),
                relative("least", number(printed, "vmin"), least, 1e-5),
                relative("mean", number(printed, "vmean"), chain_speed(p, z, n), 1e-5),
            ]
        }
        "KIN-010" => {
            let (p, z1, z2) = (get("p") * MM, teeth("z1"), teeth("z2"));
            let length = chain_length(get("a_over_p") * p, p, z1, z2);
            let centre = centre_distance(get("links_rounded"), p, z1, z2).unwrap();
            let sagging = centre * (1.0 - get("sag_allowance")) / MM;
            vec![
                relative("pitches", number(printed, "Ln"), length, 1e-6),
                relative("centre less sag", number(printed, "centre_after_sag_mm"), sagging, 1e-6),
            ]
        }
        "KIN-012" => {
            let p = get("p") * MM;
            let length = chain_length(get("a_over_p") * p, p, teeth("z1"), teeth("z2")) * p / MM;
            vec![within("length", printed.as_f64()?, length, 0.02)]
        }
        "KIN-014" => {
            let centre = centre_distance(get("Ln"), get("p") * MM, teeth("z1"), teeth("z2")).unwrap();
            vec![within("centre", printed.as_f64()?, centre / MM, 0.01)]
        }
        "KIN-015" => {
            // The pitch that gives the large sprocket its diameter, then the exact loop.
            let pitch = get("D2_m") / pitch_diameter(1.0, teeth("z2"));
            let length = loop_length(get("centre_m"), pitch, teeth("z1"), teeth("z2")).unwrap();
            vec![
                relative("pitch", number(printed, "pitch_mm"), pitch / MM, 1e-4),
                relative("pitches", number(printed, "K_pitches"), length, 1e-4),
                relative("length", number(printed, "L_m"), length * pitch, 1e-4),
            ]
        }
        "KIN-016" => drive(check, get("kW") * KN, ["v_mps", "tension_N", "fs"], 1e-5),
        "KIN-018" => drive(check, get("P_W"), ["v", "T", "FOS"], 5e-4),
        _ => match check.quantity {
            quantity if quantity.starts_with("ISO 606 chain") => iso_606(given["chain"].as_str()?, printed),
            quantity if quantity.starts_with("ISO 1977 solid-pin") => iso_1977(given["chain"].as_str()?, printed),
            quantity if quantity.starts_with("Unit-pitch pitch-circle") => {
                vec![within("pitch circle", printed.as_f64()?, pitch_diameter(1.0, teeth("z")), 5e-5)]
            }
            quantity if quantity.starts_with("Chordal speed variation") => {
                vec![relative("swing", printed.as_f64()?, speed_ripple(teeth("N")) / PERCENT, 1e-5)]
            }
            _ => return None,
        },
    })
}

/// Compares the printed dimensions of a chain; `what` names key, value, unit and tolerance.
fn dimensions(printed: &serde_json::Value, what: &[(&str, &Option<Cited>, f64, f64)]) -> Vec<Compared> {
    what.iter()
        .map(|(key, cited, unit, allowed)| within(*key, number(printed, key), value(cited) / unit, *allowed))
        .collect()
}

fn iso_606(name: &str, printed: &serde_json::Value) -> Vec<Compared> {
    let c: StandardChain = standard("ISO 606", name).unwrap();
    let (roller, strength) = if name.ends_with('A') { (0.03, 0.01) } else { (EXACT, 0.0) };
    dimensions(
        printed,
        &[
            ("pitch_mm", &c.pitch, MM, EXACT),
            ("roller_dia_max_mm", &c.roller_diameter, MM, roller),
            ("inner_width_min_mm", &c.inner_width, MM, EXACT),
            ("pin_dia_max_mm", &c.pin_diameter, MM, EXACT),
            ("bush_bore_min_mm", &c.bush_bore, MM, 0.05),
            ("width_over_inner_link_max_mm", &c.joint_length, MM, 0.1),
            ("min_tensile_kN", &c.tensile_strength, KN, EXACT + strength * number(printed, "min_tensile_kN")),
        ],
    )
}

fn iso_1977(name: &str, printed: &serde_json::Value) -> Vec<Compared> {
    let c: StandardChain = standard("ISO 1977", name).unwrap();
    let mut compared = dimensions(
        printed,
        &[
            ("pin_dia_max_mm", &c.pin_diameter, MM, EXACT),
            ("bush_bore_min_mm", &c.bush_bore, MM, 0.1),
            ("bush_od_max_mm", &c.bush_diameter, MM, EXACT),
            ("small_roller_mm", &c.small_roller_diameter, MM, EXACT),
            ("large_roller_mm", &c.large_roller_diameter, MM, EXACT),
            ("inner_width_min_mm", &c.inner_width, MM, EXACT),
            ("plate_depth_max_mm", &c.plate_depth, MM, 1.0),
            ("min_tensile_kN", &c.tensile_strength, KN, EXACT),
        ],
    );
    let (first, last) = (c.pitches.first().copied(), c.pitches.last().copied());
    for (key, pitch) in [("pitch_min_mm", first), ("pitch_max_mm", last)] {
        compared.push(within(key, number(printed, key), pitch.unwrap_or(f64::NAN) / MM, EXACT));
    }
    compared
}

fn inch_chain(name: &str, sizes: &serde_json::Value) -> [Compared; 3] {
    let c = standard("ASME B29.1", name).unwrap();
    let compare = |key: &str, cited: &Option<Cited>, unit: f64, share: f64| {
        let printed = number(sizes, key);
        within(format!("{name} {key}"), printed, value(cited) / unit, EXACT + share * printed)
    };
    [
        compare("pitch_in", &c.pitch, INCH, 0.0),
        compare("roller_in", &c.roller_diameter, INCH, 0.0),
        compare("ultimate_lbf", &c.tensile_strength, LBF, 0.005),
    ]
}

/// Speed, tension and factor of safety of a chain that transmits `power` (W).
fn drive(check: &Check, power: f64, [speed, tension, safety]: [&str; 3], share: f64) -> Vec<Compared> {
    let get = |key: &str| check.inputs[key].as_f64();
    let number_of = |key: &str| get(key).unwrap_or(f64::NAN);
    let v = chain_speed(number_of("p") * MM, number_of("z"), number_of("rpm") * RPM);
    let pull = power * get("K1").unwrap_or(1.0) * get("Ks").unwrap_or(1.0) / v;
    vec![
        relative("speed", number(check.expected, speed), v, share),
        relative("tension", number(check.expected, tension), pull, share),
        relative("safety", number(check.expected, safety), number_of("Fu_N") / pull, share),
    ]
}
