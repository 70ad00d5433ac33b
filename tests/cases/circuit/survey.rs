//! Loops read from the cases: short keys in SI as in `cases-circuit_drive.json` and `lines-circuit.json`.

// A case that cannot be read fails its test.
#![allow(clippy::unwrap_used, clippy::panic)]

use crate::number;
use pinfilm::circuit::*;
use serde_json::{Value, json};

/// A loop with all that a march needs.
pub struct Line {
    pub layout: Layout,
    pub coefficients: Coefficients,
}

impl Line {
    /// Lays out a case.
    pub fn of(case: &Value) -> Line {
        let sections: Vec<SectionSi> = case["sections"].as_array().unwrap().iter().map(section).collect();
        let chain = &case["chain"];
        let whole = |value: &Value| value.as_u64().map(|count| count as u32);
        let layout = lay_out(&LoopData {
            pitch: number(chain, "p"),
            pin_diameter: number(chain, "d_p"),
            bush_diameter: number(chain, "d_b"),
            roller_diameter: chain["D_r"].as_f64(),
            mass: number(chain, "m"),
            tensile_strength: chain["strength"].as_f64(),
            strands: whole(&chain["strands"]).unwrap(),
            joints: whole(&case["joints"]),
            speed: number(case, "v"),
            ambient: number(case, "ambient"),
            take_up: TakeUp::Tension(number(case, "take_up")),
            least_tension: case["S_min"].as_f64(),
            strand_share_factor: None,
            surface_factor: 3.0,
            sections: &sections,
        })
        .unwrap();
        let friction = friction(&case["friction"]);
        let coefficients = Coefficients::new(sections.len(), &friction, f64::NAN, f64::NAN);
        Line { layout, coefficients }
    }

    /// One of the five lines.
    pub fn named(name: &str) -> Line {
        Line::of(&five_lines()[name])
    }

    pub fn march(&self) -> March {
        march(&self.layout, &self.coefficients).unwrap()
    }
}

/// The five invented lines.
pub fn five_lines() -> Value {
    serde_json::from_str(include_str!("../../data/lines-circuit.json")).unwrap()
}

fn friction(f: &Value) -> FrictionSi {
    FrictionSi {
        plate_track_oiled: 0.12,
        track_oiled: false,
        joint: f["joint"].as_f64(),
        bush_roller: f["bush_roller"].as_f64(),
        plate_track: number(f, "plate_track"),
        rolling_arm: number(f, "rolling_arm"),
        track_factor: number(f, "track_factor"),
        trolley_coefficient: number(f, "trolley"),
        idler_coefficient: number(f, "idler"),
        turn_roller_coefficient: number(f, "turn_roller"),
        load_bed: number(f, "load_bed"),
        wheel_bearing: number(f, "wheel_bearing"),
        breakaway_factor: 1.5,
    }
}

fn section(s: &Value) -> SectionSi {
    let or = |key: &str, default: f64| s[key].as_f64().unwrap_or(default);
    let word = |key: &str, default: &'static str| s[key].as_str().unwrap_or(default).to_string();
    let yes = |key: &str| s[key].as_bool().unwrap_or(false);
    if s["type"] == "straight" {
        return SectionSi::Straight(StraightSi {
            length: number(s, "length"),
            rise: or("rise", 0.0),
            load: or("load", 0.0),
            temperature: s["temperature"].as_f64(),
            heat_transfer: or("heat_transfer", 12.0),
            support: match word("support", "slide").as_str() {
                "rollers" => Support::Rollers,
                "slide" => Support::Slide,
                "trolleys" => Support::Trolleys,
                "idlers" => Support::Idlers,
                "free" => Support::Free,
                other => panic!("no support {other}"),
            },
            load_on: LoadOn::Chain,
            loads: yes("loads"),
            feed_speed: 0.0,
            idler_spacing: s["spacing"].as_f64(),
            extra_pull: 0.0,
            wash: false,
            ..StraightSi::plain(Support::Free, 1.0)
        });
    }
    SectionSi::Turn(TurnSi {
        kind: match word("kind", "wheel").as_str() {
            "wheel" => TurnKind::Wheel,
            "roller_turn" => TurnKind::RollerTurn,
            "curve" => TurnKind::Curve,
            "corner" => TurnKind::Corner,
            other => panic!("no turn {other}"),
        },
        contact: if word("contact", "slide") == "trolleys" { Contact::Trolleys } else { Contact::Slide },
        support: Support::Slide,
        side: s["side"].as_i64().unwrap_or(1),
        plane: if word("plane", "main") == "cross" { Plane::Cross } else { Plane::Main },
        teeth: s["teeth"].as_i64(),
        radius: s["radius"].as_f64(),
        wrap: or("wrap_deg", 180.0).to_radians(),
        rise: or("rise", 0.0),
        load: or("load", 0.0),
        shaft_diameter: None,
        temperature: s["temperature"].as_f64(),
        heat_transfer: or("heat_transfer", 12.0),
        extra_pull: 0.0,
        drive: yes("drive"),
    })
}

/// A whole line of `cases-line.json` in short keys, its friction taken from the joint group of the expected result.
pub fn from_whole_line(case: &Value) -> Line {
    let (inputs, joint) = (&case["inputs"], &case["expected"]["joint"]);
    let (chain, circuit, f) = (&inputs["chain"], &inputs["circuit"], &inputs["friction"]);
    let milli = |value: &Value| value.as_f64().map(|value| value * 1e-3);
    let sections: Vec<Value> = circuit["sections"]
        .as_array()
        .unwrap()
        .iter()
        .map(|s| {
            let mut short = s.clone();
            short["length"] = s["length_m"].clone();
            short["rise"] = s["rise_m"].clone();
            short["load"] = s["load_kg_per_m"].clone();
            short["temperature"] = s["temperature_c"].clone();
            short["heat_transfer"] = s["heat_transfer_w_per_m2_k"].clone();
            short["spacing"] = s["idler_spacing_m"].clone();
            short["radius"] = json!(milli(&s["radius_mm"]));
            short
        })
        .collect();
    let mut line = Line::of(&json!({
        "chain": {
            "p": milli(&chain["pitch_mm"]), "d_p": milli(&chain["pin_diameter_mm"]),
            "d_b": milli(&chain["bush_diameter_mm"]), "D_r": milli(&chain["roller_diameter_mm"]),
            "m": chain["mass_kg_per_m"], "strands": circuit["strands"],
        },
        "v": number(&inputs["duty"], "speed_m_per_min") / 60.0,
        "take_up": circuit["take_up_n"], "ambient": inputs["duty"]["ambient_c"], "joints": circuit["joints"],
        "friction": {
            "plate_track": joint["plate_track"], "rolling_arm": milli(&f["rolling_arm_mm"]),
            "track_factor": f["track_factor"], "trolley": f["trolley_coefficient"], "idler": f["idler_coefficient"],
            "turn_roller": f["turn_roller_coefficient"], "load_bed": f["load_bed"],
            "wheel_bearing": f["wheel_bearing"],
        },
        "sections": sections,
    }));
    for entry in joint["mu_joint"].as_array().unwrap() {
        line.coefficients.joint[entry[0].as_u64().unwrap() as usize] = entry[1].as_f64().unwrap();
    }
    for entry in joint["roller"].as_array().into_iter().flatten() {
        line.coefficients.bush_roller[entry["section"].as_u64().unwrap() as usize] = number(entry, "friction");
    }
    line
}
