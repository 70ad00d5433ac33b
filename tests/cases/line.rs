//! Whole lines: every number that the independent implementation gives for them.

use crate::Answer;
use pinfilm::line::{Evaluation, Line, evaluate};
use pinfilm::quantity::{Field, Noun, Tree};
use pinfilm::study::compared;
use serde_json::{Value, json};

/// A survey of the case file, evaluated.
pub fn evaluated(case: &Value) -> Evaluation {
    let tree: Tree = serde_json::from_value(case["inputs"].clone()).unwrap();
    let line = Line::from_tree(&tree).unwrap_or_else(|error| panic!("{}: {error}", case["id"]));
    evaluate(&line).unwrap_or_else(|error| panic!("{}: {error}", case["id"]))
}

pub fn ours(case: &Value) -> Answer {
    if case["quantity"] == "compare" {
        return Some(compared_case(case));
    }
    let mut answer = serde_json::to_value(evaluated(case).write()).unwrap();
    // The cases print 1/(1/L_wear + 1/L_other) here, while their own cost of the chain divides by the age-replacement life
    // L_other (1 − exp(−L_wear/L_other)), which is also what the equations behind them ask for and what we report.
    let costs = &case["inputs"]["costs"];
    let life = answer["wear"]["life_years"].as_f64().unwrap();
    let other = costs["other_life_years"].as_f64().unwrap();
    let by_age = -other * (-life / other).exp_m1();
    assert!((answer["wear"]["service_life_years"].as_f64().unwrap() / by_age - 1.0).abs() < 1e-12);
    answer["wear"]["service_life_years"] = json!(1.0 / (1.0 / life + 1.0 / other));
    Some(answer)
}

/// A pair of lines of the same file, compared.
fn compared_case(case: &Value) -> Value {
    let all: Vec<Value> = serde_json::from_str(include_str!("../data/cases-line.json")).unwrap();
    let side = |key: &str| evaluated(all.iter().find(|other| other["id"] == case["inputs"][key]).unwrap());
    serde_json::to_value(compared(side("now"), side("proposed")).write()).unwrap()
}
