//! Surveys can be written and read without loss, and what is wrong in one is told with key, line, value and range.

use pinfilm::line::Line;
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
