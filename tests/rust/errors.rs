//! Every code of an error, produced through the public face, with its whole message for people to review.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

use pinfilm::chain::Chain;
use pinfilm::line::{Line, evaluate};
use pinfilm::quantity::{Noun, Tree, Value};
use pinfilm::study::compare;
use pinfilm::{Code, Error, drive, numeric, supply};
use std::collections::BTreeSet;

/// The whole messages, as people see them.
const MESSAGES: &str = include_str!("errors.txt");

/// Codes without an example here, and why.
const ELSEWHERE: &[(Code, &str)] = &[
    (Code::Dimension, "only a quantity of a units library in Python has one: tests/python/test_boundary.py"),
    (Code::Stopped, "a long study that its caller stopped: the tests of src/study"),
    (Code::NoAnswer, "formulas and logs, where no number is the answer: tests/python/formulas and src/log/proof"),
    (Code::MissingColumns, "a table: the tests of src/table"),
    (Code::DuplicateColumn, "a table: the tests of src/table"),
    (Code::UnknownOutput, "a table: the tests of src/table"),
    (Code::ColumnType, "a table: tests/python/tables/test_hostile_tables.py"),
    (Code::NotATable, "an object of Python: tests/python/tables/test_table.py"),
    (Code::File, "raised in Python, which reads and stores: tests/python/tables/test_files.py"),
];

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
        (Code::BeyondModel, with(&[("circuit.sections.3.extra_pull_n", "200000")])),
        (Code::NoSuchChain, Chain::standard("ISO 606", "16X", Vec::new()).err()),
        (Code::NoSuchGrade, with(&[("oil.iso_vg", "200")])),
        (Code::MotorNameplate, with(&[("drive.rated_speed_rpm", "1100")])),
        (Code::MotorNoLoad, with(&[("drive.no_load_current_a", "50")])),
        (Code::MotorPullOut, with(&[("drive.rated_power_kw", "0.011"), ("drive.rated_current_a", "0.0248")])),
        (Code::NotInvertible, motor().power_of_current(500.0).err()),
        (Code::NoOperatingPoint, supply::constant_power_load(24.0, 240.0, 2.0).err()),
        (
            Code::Turbulent,
            supply::line_drop(&[supply::Segment { length: 1.0, bore: 0.004, flow: 1e-3 }], 0.02, 870.0).err(),
        ),
        (Code::Strength, with(&[("chain.tensile_strength_kn", "0.5")])),
        (Code::Hot, with(&[("oil.flash_point_c", "40")])),
        (Code::NotConverged, numeric::root("gap", 1.0, 2.0, 1e-9, 0.0, |gap| gap).err()),
    ]
}

fn motor() -> drive::Energised {
    let plate = drive::Nameplate {
        voltage: 400.0,
        power: 4000.0,
        current: 8.05,
        speed: 1450.0 / 60.0,
        efficiency: 0.886,
        power_factor: 0.81,
        frequency: 50.0,
    };
    let motor = drive::Motor::fit(&plate, &drive::LossSplit::default()).unwrap();
    motor.circuit.on(&drive::Supply { voltage: 400.0, frequency_ratio: 1.0 })
}

#[test]
fn every_code_has_an_example() {
    let shown: BTreeSet<Code> = examples().into_iter().map(|(code, _)| code).collect();
    for code in Code::ALL {
        let elsewhere = ELSEWHERE.iter().any(|(other, _)| other == code);
        assert!(shown.contains(code) != elsewhere, "{} needs an example, here or elsewhere", code.as_str());
    }
}

#[test]
fn every_example_gives_its_code() {
    for (code, error) in examples() {
        let error = error.unwrap_or_else(|| panic!("nothing raised {}", code.as_str()));
        assert_eq!(error.code, code, "{error}");
    }
}

#[test]
fn the_messages_are_those_that_were_reviewed() {
    let mut now = String::new();
    for (code, error) in examples() {
        let message = error.map_or_else(|| "nothing".to_string(), |error| error.to_string());
        now += &format!("{}\n    {message}\n", code.as_str());
    }
    assert!(
        now == MESSAGES,
        "the messages changed; if that was meant, this belongs into tests/rust/errors.txt:\n{now}"
    );
}
