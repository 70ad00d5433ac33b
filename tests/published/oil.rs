//! Viscosity standards, handbook oils, density, pressure, blends.
#![allow(clippy::unwrap_used)]

use crate::{Answer, Check, Compared, number, numbers, relative, within};
use pinfilm::oil::{
    GRADES, ViscosityLine, barus, blend_by_mass, blend_viscosity, blending_number, density, grade_limits, index_limits,
    pressure_viscosity, roelands, roelands_exponent, thermal_expansion, viscosity_at_100, viscosity_index,
};

const MM2_PER_S: f64 = 1e-6;
const MPA_S: f64 = 1e-3;

/// Kinematic viscosity in mm2/s on the line through two points.
fn on_line(t1: f64, v1: f64, t2: f64, v2: f64, t: f64) -> f64 {
    ViscosityLine::through(t1, v1 * MM2_PER_S, t2, v2 * MM2_PER_S).unwrap().viscosity(t).unwrap() / MM2_PER_S
}

pub fn check(check: &Check) -> Answer {
    let (given, printed) = (check.inputs, check.expected);
    let get = |key: &str| number(given, key);
    let kinematic = |key: &str| get(key) * MM2_PER_S;
    Some(match check.id {
        "OIL-013" => {
            let (least, greatest) = grade_limits(number(printed, "VG")).unwrap();
            let highest = GRADES.iter().map(|(grade, _)| *grade).filter(|grade| *grade < 2200).max().unwrap();
            vec![
                within("highest grade before 2200 and 3200", number(printed, "VG"), f64::from(highest), 0.0),
                within("least", number(printed, "min"), least / MM2_PER_S, 1e-9),
                within("greatest", number(printed, "max"), greatest / MM2_PER_S, 1e-9),
            ]
        }
        "OIL-014" => {
            // The sheet takes 0 °C as 273 K: the same kelvins are reached by shifting the temperatures.
            let shift = get("kelvin_offset") - pinfilm::quantity::unit::ICE_POINT;
            let line = ViscosityLine::through(get("t1") + shift, kinematic("nu1"), get("t2") + shift, kinematic("nu2"))
                .unwrap();
            let (a, b) = line.astm_constants();
            let v = line.viscosity(get("t3") + shift).unwrap() / MM2_PER_S;
            vec![
                within("A", number(printed, "A"), a, 2e-4),
                within("B", number(printed, "B"), b, 2e-4),
                relative("viscosity", number(printed, "nu3"), v, 1e-3),
            ]
        }
        "OIL-015" => vec![relative(
            "viscosity at 80 °C",
            printed.as_f64()?,
            on_line(get("t1"), get("nu1"), get("t2"), get("nu2"), get("t3")),
            1e-4,
        )],
        "OIL-023" => {
            let oils = given["oils_nu40_nu100"].as_array()?;
            let ours = |oil: &serde_json::Value| {
                let v = numbers(oil);
                on_line(40.0, v[0], 100.0, v[1], get("t_C"))
            };
            oils.iter().zip(numbers(printed)).map(|(oil, p)| relative(oil.to_string(), p, ours(oil), 0.015)).collect()
        }
        "OIL-024" | "OIL-025" => viscosity_index_example(check),
        "OIL-044" => {
            let v: Vec<f64> = numbers(&given["nu"]).iter().map(|v| v * MM2_PER_S).collect();
            let mut compared: Vec<Compared> = numbers(&printed["VBN"])
                .into_iter()
                .zip(&v)
                .map(|(p, v)| relative("blending number", p, blending_number(*v).unwrap(), 1e-4))
                .collect();
            let blend = blend_by_mass(v[0], v[1], 0.5).unwrap() / MM2_PER_S;
            compared.push(relative("half and half", number(printed, "nu_blend"), blend, 1e-4));
            compared
        }
        "OIL-048" => {
            let exponent = roelands_exponent(get("eta0"), get("alpha")).unwrap();
            let mut compared = vec![relative("exponent", number(printed, "Z"), exponent, 1e-4)];
            for (pressure, p) in numbers(&given["p_Pa"]).into_iter().zip(numbers(&printed["eta"])) {
                let ours = roelands(get("eta0"), get("alpha"), pressure).unwrap();
                compared.push(relative(format!("at {pressure:e} Pa"), p, ours, 1e-4));
            }
            compared
        }
        "OIL-050" => {
            let mut compared = Vec::new();
            for (name, oil) in printed.as_object()? {
                for (eta, alpha) in numbers(&oil["eta"]).into_iter().zip(numbers(&oil["alpha"])) {
                    let ours = pressure_viscosity(eta * MPA_S) / 1e-9;
                    compared.push(relative(format!("{name}, {eta} mPa s"), alpha, ours, 0.25));
                }
            }
            compared
        }
        _ => match check.quantity {
            "ISO VG limits at 40 C, mm2/s" => {
                let (least, greatest) = grade_limits(get("VG")).unwrap();
                let p = numbers(printed);
                vec![
                    within("least", p[0], least / MM2_PER_S, 1e-9),
                    within("greatest", p[1], greatest / MM2_PER_S, 1e-9),
                ]
            }
            quantity if quantity.starts_with("ASTM D341") => vec![relative(
                format!("viscosity at {} °C", get("t_C")),
                printed.as_f64()?,
                on_line(40.0, get("nu40"), 100.0, get("nu100"), get("t_C")),
                1e-4,
            )],
            quantity if quantity.starts_with("ASTM D2270 table") => reference_oils(check, 5e-4),
            quantity if quantity.starts_with("ASTM D2270 L,H") => reference_oils(check, 1e-6),
            quantity if quantity.starts_with("Inverse VI") => vec![relative(
                "viscosity at 100 °C",
                printed.as_f64()?,
                viscosity_at_100(kinematic("nu40"), get("VI")).unwrap() / MM2_PER_S,
                2e-4,
            )],
            quantity if quantity.starts_with("Blend viscosity, ASTM D7152") => {
                let (v, share) = (numbers(&given["nu"]), numbers(&given["fraction"]));
                let blend = blend_viscosity(v[0] * MM2_PER_S, v[1] * MM2_PER_S, share[0]).unwrap() / MM2_PER_S;
                vec![relative("blend", printed.as_f64()?, blend, 1e-4)]
            }
            quantity if quantity.starts_with("Density of lubricating oil") => {
                let (expansion, rho) = (thermal_expansion(get("rho15")), density(get("rho15"), get("t_C")));
                vec![
                    relative("expansion", number(printed, "alpha_per_C"), expansion, 2e-4),
                    relative("volume correction", number(printed, "VCF"), rho / get("rho15"), 2e-4),
                    relative("density", number(printed, "rho"), rho, 2e-4),
                ]
            }
            "Barus viscosity" => {
                let ours = barus(get("eta0"), get("alpha"), get("p_Pa"));
                vec![relative("viscosity", printed.as_f64()?, ours, 1e-6)]
            }
            _ => return None,
        },
    })
}

fn viscosity_index_example(check: &Check) -> Vec<Compared> {
    let get = |key: &str| number(check.inputs, key);
    let index = viscosity_index(get("nu40") * MM2_PER_S, get("nu100") * MM2_PER_S).unwrap();
    let (l, h) = index_limits(get("nu100") * MM2_PER_S).unwrap();
    let mut compared = vec![
        within("H", number(check.expected, "H"), h / MM2_PER_S, 0.01),
        within("rounded", number(check.expected, "VI"), index.round(), 0.0),
    ];
    if check.expected.get("L").is_some() {
        compared.push(within("L", number(check.expected, "L"), l / MM2_PER_S, 0.01));
        compared.push(within("index", number(check.expected, "VI_unrounded"), index, 0.01));
    } else {
        let power = (1.0 + 0.00715 * (index - 100.0)).log10();
        compared.push(within("N", number(check.expected, "N"), power, 5e-4));
        compared.push(within("index", number(check.expected, "VI_printed_unrounded"), index, 0.1));
    }
    compared
}

/// L and H for one viscosity at 100 °C or for a list.
fn reference_oils(check: &Check, share: f64) -> Vec<Compared> {
    let list = |value: &serde_json::Value| value.as_f64().map_or_else(|| numbers(value), |one| vec![one]);
    let (v100, l, h) = (list(&check.inputs["nu100"]), list(&check.expected["L"]), list(&check.expected["H"]));
    let mut compared = Vec::new();
    for ((v100, l), h) in v100.into_iter().zip(l).zip(h) {
        let ours = index_limits(v100 * MM2_PER_S).unwrap();
        compared.push(relative(format!("L at {v100}"), l, ours.0 / MM2_PER_S, share));
        compared.push(relative(format!("H at {v100}"), h, ours.1 / MM2_PER_S, share));
    }
    compared
}
