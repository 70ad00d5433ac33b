//! Surveys can be written and read without loss, and what is wrong in one is told with key, line, value and range.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::print_stdout)]

use pinfilm::line::{Line, evaluate};
use pinfilm::quantity::show::{html_table, text_table};
use pinfilm::quantity::{Field, Noun, Tree, Value};
use pinfilm::{Code, Error};

/// Every whole line of the case file.
fn lines() -> Vec<Line> {
    let cases: Vec<serde_json::Value> = serde_json::from_str(include_str!("../data/cases-line.json")).unwrap();
    let whole = cases.into_iter().filter(|case| case["quantity"] == "evaluate");
    whole.map(|case| Line::from_tree(&serde_json::from_value(case["inputs"].clone()).unwrap()).unwrap()).collect()
}

fn oven() -> Line {
    lines().remove(0)
}

fn refused(result: pinfilm::Result<Line>) -> Error {
    result.err().unwrap_or_else(|| panic!("this survey should be refused"))
}

/// The oven line as a file with one change of its text; the error, and the number of the changed line.
fn edited(old: &str, new: &str) -> (Error, usize) {
    let text = oven().write().to_toml().unwrap();
    let at = text.find(old).unwrap_or_else(|| panic!("no {old:?} in\n{text}"));
    (refused(Line::from_toml(&text.replacen(old, new, 1))), 1 + text[..at].matches('\n').count())
}

fn changed(path: &str, value: Value) -> pinfilm::Result<Line> {
    oven().replaced(vec![(path.to_string(), value.into())])
}

#[test]
fn toml_and_json_keep_everything() {
    for line in lines() {
        let tree = line.write();
        assert_eq!(Line::from_toml(&tree.to_toml().unwrap()).unwrap(), line);
        assert_eq!(Line::from_tree(&Tree::from_json(&tree.to_json().unwrap()).unwrap()).unwrap(), line);
        assert_eq!(Line::from_tree(&tree).unwrap().write(), tree);
    }
}

#[test]
fn repr_is_stable() {
    for line in lines() {
        let again = Line::from_tree(&line.write()).unwrap();
        assert_eq!(again.repr(), line.repr());
        assert!(line.repr().starts_with("Line(name="));
    }
}

#[test]
fn an_unknown_key_names_the_nearest_and_the_line() {
    let (error, line) = edited("pitch_mm", "pich_mm");
    assert_eq!((error.code, error.field.as_str(), error.line), (Code::UnknownKey, "chain.pich_mm", Some(line)));
    assert!(error.message.contains("did you mean pitch_mm?"), "{error}");
}

#[test]
fn a_value_of_the_wrong_kind_names_the_line() {
    let (error, line) = edited("pitch_mm = 100.0", "pitch_mm = \"wide\"");
    assert_eq!((error.code, error.field.as_str(), error.line), (Code::WrongType, "chain.pitch_mm", Some(line)));
    let (error, line) = edited("name = \"oven\"", "name = [1,\n 2]");
    assert_eq!((error.code, error.field.as_str(), error.line), (Code::WrongType, "name", Some(line)));
}

#[test]
fn nan_and_infinity_are_refused() {
    for word in ["nan", "inf", "-inf"] {
        let (error, line) = edited("pitch_mm = 100.0", &format!("pitch_mm = {word}"));
        assert_eq!((error.code, error.line), (Code::NotFinite, Some(line)), "{error}");
    }
    assert_eq!(refused(changed("circuit.strands", Value::Number(f64::NAN))).code, Code::NotFinite);
}

#[test]
fn a_missing_key_and_a_missing_group_say_what_to_give() {
    let (error, _) = edited("pitch_mm = 100.0\n", "");
    assert_eq!((error.code, error.field.as_str(), error.unit), (Code::Missing, "chain.pitch_mm", "mm"));
    assert_eq!(error.message, "chain.pitch_mm is missing: give pitch, joint to joint (4 to 1000 mm)");
    let mut tree = oven().write();
    tree.put("duty", Value::Nothing.into()).unwrap();
    assert_eq!(refused(Line::from_tree(&tree)).code, Code::Missing);
}

#[test]
fn an_unknown_choice_names_the_nearest_and_the_line() {
    let (error, line) = edited("\"rollers\"", "\"roller\"");
    assert_eq!((error.code, error.line), (Code::UnknownChoice, Some(line)));
    assert!(error.message.contains("Did you mean \"rollers\"?"), "{error}");
    let (error, line) = edited("type = \"straight\"", "type = \"strait\"");
    assert_eq!((error.code, error.line), (Code::UnknownChoice, Some(line)));
}

#[test]
fn out_of_range_names_value_unit_range_and_line() {
    let (error, line) = edited("pitch_mm = 100.0", "pitch_mm = 2.0");
    assert_eq!((error.code, error.line, error.unit), (Code::OutOfRange, Some(line), "mm"));
    assert_eq!((&*error.value, error.limit.as_str()), (&pinfilm::error::Given::Number(2.0), "4 to 1000 mm"));
    assert!(error.message.contains("chain.pitch_mm = 2 mm"), "{error}");
}

#[test]
fn values_that_contradict_each_other_name_the_line() {
    let (error, line) = edited("pin_diameter_mm = 12.0", "pin_diameter_mm = 12.5");
    assert_eq!((error.code, error.line), (Code::Clearance, Some(line)), "{error}");
}

#[test]
fn text_that_is_no_toml_names_the_line() {
    let error = refused(Line::from_toml("name = \"oven\"\n\npitch = = 3\n"));
    assert_eq!((error.code, error.line), (Code::NotReadable, Some(3)));
    let error = refused(Line::from_toml("name = \"a\"\nname = \"b\"\n"));
    assert_eq!((error.code, error.line), (Code::NotReadable, Some(2)), "{error}");
}

#[test]
fn dotted_paths_reach_everything() {
    let line = changed("circuit.sections.1.length_m", Value::Number(41.0)).unwrap();
    assert_eq!(line.write().at(&["circuit", "sections", "1", "length_m"]).unwrap().value, Value::Number(41.0));
    assert_eq!(changed("duty.dust_factor", Value::Whole(2)).unwrap().duty.dust_factor, 2.0);
    for (path, code) in [
        ("circuit.sections.99.length_m", Code::UnknownKey),
        ("circuit.sections.first.length_m", Code::UnknownKey),
        ("duty.speed_m_per_min.x", Code::UnknownKey),
        ("duty.sped_m_per_min", Code::UnknownKey),
        ("", Code::UnknownKey),
    ] {
        assert_eq!(refused(changed(path, Value::Number(1.0))).code, code, "{path}");
    }
}

#[test]
fn settings_may_be_left_out_and_are_left_out_of_the_repr() {
    let mut tree = oven().write();
    for group in ["friction", "surface", "joint", "fill", "wear", "supply"] {
        tree.put(group, Value::Nothing.into()).unwrap();
    }
    let line = Line::from_tree(&tree).unwrap();
    assert_eq!((&line.friction, &line.wear), (&Default::default(), &Default::default()));
    assert_eq!(
        ["Friction(", "Surface(", "Joint(", "Fill(", "Wear("]
            .iter()
            .filter(|noun| line.repr().contains(**noun))
            .count(),
        0
    );
    for row in Line::ROWS.iter().filter(|row| ["friction", "surface", "joint", "fill", "wear"].contains(&row.name)) {
        assert!(row.default.ends_with("default()"), "{}: {:?}", row.name, row.default);
    }
    let other = changed("wear.fill_half", Value::Number(0.31)).unwrap();
    assert!(other.repr().contains("wear=Wear(wear_coefficient_mixed=1e-6, fill_half=0.31)"), "{}", other.repr());
}

/// The oven line as a file with one change of its text, evaluated; the error, and the number of the changed line.
fn evaluated(old: &str, new: &str) -> (Error, usize) {
    let text = oven().write().to_toml().unwrap();
    let at = text.find(old).unwrap_or_else(|| panic!("no {old:?} in\n{text}"));
    let line = Line::from_toml(&text.replacen(old, new, 1)).unwrap();
    (evaluate(&line).err().unwrap_or_else(|| panic!("{new} should be refused")), 1 + text[..at].matches('\n').count())
}

#[test]
fn what_models_refuse_names_key_value_unit_and_line() {
    for (old, new, field, unit) in [
        ("rated_speed_rpm = 1440.0", "rated_speed_rpm = 1100.0", "drive.rated_speed_rpm", "1/min"),
        ("iso_vg = 220", "flash_point_c = 45.0\niso_vg = 220", "oil.flash_point_c", "°C"),
        ("iso_vg = 220", "iso_vg = 200", "oil.iso_vg", ""),
        ("pitch_mm = 100.0", "tensile_strength_kn = 0.5\npitch_mm = 100.0", "chain.tensile_strength_kn", "kN"),
    ] {
        let (error, line) = evaluated(old, new);
        assert_eq!((error.field.as_str(), error.unit, error.line), (field, unit, Some(line)), "{error}");
        assert!(!error.is_result && !error.limit.is_empty(), "{error}");
        assert!(error.to_string().contains(&format!("survey key {field}, line {line}")), "{error}");
    }
    let text = oven().write().to_toml().unwrap();
    let rise = text.find("rise_m = 0.0").unwrap();
    let line = 1 + text[..rise].matches('\n').count();
    let (error, _) = evaluated("rise_m = 0.0", "rise_m = 400.0");
    assert_eq!(
        (error.field.as_str(), error.unit, error.line),
        ("circuit.sections.1.rise_m", "m", Some(line)),
        "{error}"
    );
    assert_eq!(&*error.value, &pinfilm::error::Given::Number(400.0));
}

#[test]
fn what_is_no_value_of_the_survey_is_named_as_a_result() {
    let error = evaluate(&changed("circuit.sections.3.extra_pull_n", Value::Number(200000.0)).unwrap()).err().unwrap();
    assert_eq!((error.field.as_str(), error.unit), ("joint.events.pressure_mpa", "MPa"));
    assert!(error.is_result && error.to_string().contains("result joint.events.pressure_mpa"), "{error}");
}

#[test]
fn text_that_is_not_utf_8_names_byte_and_line() {
    let error = Tree::text(b"name = 'a'\nplace = 'M\xfcller'\n".to_vec()).err().unwrap();
    assert_eq!((error.code, error.line), (Code::NotReadable, Some(2)));
    assert!(error.message.contains("byte 22 of the file is 0xfc"), "{error}");
}

#[test]
fn money_is_shown_in_the_currency_of_the_survey() {
    let line = changed("costs.currency", Value::Text("CHF".into())).unwrap();
    let result = evaluate(&line).unwrap();
    let shown = [
        text_table(&result),
        html_table(&result),
        text_table(&result.cost),
        text_table(&line),
        html_table(&line),
        result.explain("cost.total_per_year").unwrap().text(),
        result.explain("cost.energy").unwrap().html(),
    ];
    for text in shown {
        assert!(text.contains("CHF/") && !text.contains("money/"), "{text}");
    }
}
