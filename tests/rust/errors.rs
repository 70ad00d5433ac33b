//! Every code of an error, produced through the public face, with its whole message for people to review.

use pinfilm::chain::Chain;
use pinfilm::line::{Line, evaluate};
use pinfilm::quantity::{Noun, Tree, Value};
use pinfilm::study::compare;
use pinfilm::{Code, Error, Kind};
use std::collections::BTreeSet;

fn oven() -> Line {
    let cases: Vec<serde_json::Value> = serde_json::from_str(include_str!("../data/cases-line.json")).unwrap();
    Line::from_tree(&serde_json::from_value(cases[0]["inputs"].clone()).unwrap()).unwrap()
}

/// The oven line with changed values, as JSON, evaluated.
fn with(changes: &[(&str, &str)]) -> Option<Error> {
    let changes = changes.iter().map(|(path, json)| ((*path).to_string(), Tree::from_json(json).unwrap())).collect();
    oven().replaced(changes).and_then(|line| evaluate(&line)).err()
}

fn examples() -> Vec<(Code, Option<Error>)> {
    let dollars = oven().replaced(vec![("costs.currency".into(), Value::Text("USD".into()).into())]).unwrap();
    vec![
        (Code::OutOfRange, with(&[("duty.speed_m_per_min", "-3")])),
        (Code::NotFinite, oven().replaced(vec![("chain.pitch_mm".into(), Value::Number(f64::NAN).into())]).err()),
        (Code::Missing, with(&[("chain.pitch_mm", "null")])),
        (Code::UnknownKey, with(&[("chain.pich_mm", "100")])),
        (Code::UnknownChoice, with(&[("circuit.sections.1.support", "\"roller\"")])),
        (Code::WrongType, with(&[("chain.pitch_mm", "\"wide\"")])),
        (Code::NotReadable, Line::from_toml("name = \"oven\"\nchain = = 3\n").err()),
        (Code::Inconsistent, compare(&oven(), &dollars).err()),
        (Code::Clearance, with(&[("chain.pin_diameter_mm", "12.5")])),
        (Code::RiseMismatch, with(&[("circuit.sections.1.rise_m", "1")])),
        (Code::Unsupported, with(&[("circuit.sections.2.drive", "true")])),
        (Code::BeyondModel, with(&[("oil.pour_point_c", "55")])),
        (Code::NoSuchChain, Chain::standard("ISO 606", "16X", Vec::new()).err()),
        (Code::NoSuchGrade, with(&[("oil.iso_vg", "200")])),
        (Code::MotorNameplate, with(&[("drive.rated_power_factor", "0.99"), ("drive.rated_efficiency", "0.3")])),
        (Code::MotorNoLoad, with(&[("drive.no_load_current_a", "50")])),
        (
            Code::MotorPullOut,
            with(&[("circuit.sections.3.extra_pull_n", "200000"), ("chain.tensile_strength_kn", "null")]),
        ),
        (Code::Strength, with(&[("chain.tensile_strength_kn", "0.5")])),
        (Code::Hot, with(&[("oil.flash_point_c", "200")])),
    ]
}

#[test]
fn probe() {
    for (code, error) in examples() {
        let got = error.as_ref().map(|e| e.code);
        println!(
            "{} {code:?} {got:?}\n    {}",
            if got == Some(code) { "ok " } else { "BAD" },
            error.map(|e| e.to_string()).unwrap_or_default()
        );
    }
    let _ = (Kind::Input, BTreeSet::from([1]));
}
