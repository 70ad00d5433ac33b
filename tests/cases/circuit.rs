//! Loops: geometry, pull and its causes, temperatures, events.

// A case that cannot be read fails its test.
#![allow(clippy::unwrap_used, clippy::panic)]

use crate::{Answer, compare, number};
use pinfilm::circuit::*;
use serde_json::{Map, Value, json};

pub mod survey;
use survey::{Line, five_lines, from_whole_line};

pub fn ours(case: &Value) -> Answer {
    let inputs = &case["inputs"];
    Some(match case["id"].as_str()? {
        "A-005" => smooth_turn(inputs),
        "A-009" => json!(corner_one_surface(
            number(inputs, "S_in"),
            number(inputs, "mu"),
            number(inputs, "wrap_deg").to_radians(),
            number(inputs, "w_kg_m"),
            number(inputs, "radius_m"),
        )),
        "A-011" | "A-013" | "A-029" | "A-031" => pull(&Line::of(inputs)),
        "A-015" | "A-017" | "A-019" => causes(&Line::named(inputs["line"].as_str()?)),
        "A-025" => inlets(&Line::named(inputs["line"].as_str()?)),
        "A-027" => event_rows(&Line::named(inputs["line"].as_str()?)),
        "A-033" => json!(thermal_time_constant(number(inputs, "m_kg_m"), number(inputs, "h"), 3.0)),
        _ => return None,
    })
}

/// One smooth turn in a loop of its own.
fn smooth_turn(inputs: &Value) -> Value {
    let mut case = five_lines()["slat"].clone();
    case["chain"]["p"] = inputs["pitch_m"].clone();
    let turn = json!({ "type": "turn", "kind": "curve", "radius": inputs["radius_m"], "wrap_deg": inputs["wrap_deg"] });
    case["sections"].as_array_mut().unwrap().push(turn);
    let line = Line::of(&case);
    let place = &line.layout.places[0];
    json!({ "angle": place.turn().unwrap().articulation_angle.to_degrees(), "length": place.length })
}

fn pull(line: &Line) -> Value {
    let march = line.march();
    json!({
        "pull": march.pull,
        "tight": march.tight,
        "min": march.least,
        "required_take_up": march.required_take_up,
        "joints": line.layout.joints,
        "circuit_time": line.layout.circuit_time,
    })
}

fn causes(line: &Line) -> Value {
    let march = line.march();
    let pulls: Map<String, Value> =
        march.shares().map(|(cause, _)| (cause.as_str().to_string(), json!(march.cause(cause)))).collect();
    Value::Object(pulls)
}

fn inlets(line: &Line) -> Value {
    let temperatures = temperatures(&line.layout);
    line.layout.places.iter().map(|place| temperatures.sections[place.section].inlet).collect()
}

fn all_events(line: &Line) -> Vec<Event> {
    let mut list = Vec::new();
    events(&line.layout, &line.march(), &temperatures(&line.layout), &mut list);
    list
}

fn event_rows(line: &Line) -> Value {
    let row = |event: &Event| {
        json!([event.time, event.tension, event.sense as f64 * event.angle.to_degrees(), event.temperature])
    };
    all_events(line).iter().map(row).collect()
}

/// The circuit of whole lines, with the friction that their joint group came to.
#[test]
fn whole_lines() {
    let cases: Vec<Value> = serde_json::from_str(include_str!("../data/cases-line.json")).unwrap();
    let mut wrong = Vec::new();
    for case in cases.iter().filter(|case| case["quantity"] == "evaluate") {
        let line = from_whole_line(case);
        let (layout, march, temperatures) = (&line.layout, line.march(), temperatures(&line.layout));
        let shares: Map<String, Value> =
            march.shares().map(|(cause, share)| (cause.as_str().to_string(), json!(share))).collect();
        let ours = json!({
            "kinematics": {
                "joints": layout.joints,
                "length_m": layout.length,
                "circuit_time_s": layout.circuit_time,
                "joint_time_s": layout.joint_time,
                "section_c": temperatures.sections.iter().map(|t| [t.inlet, t.outlet, t.mean]).collect::<Vec<_>>(),
                "mean_c": temperatures.mean,
            },
            "tension": {
                "pull_n": march.pull,
                "tight_n": march.tight,
                "slack_n": march.slack,
                "least_n": march.least,
                "required_take_up_n": march.required_take_up,
                "take_up_sensitivity": march.take_up_sensitivity,
                "shares": shares,
                "profile_n": march.profile,
            },
            "events": all_events(&line).iter().map(|event| json!({
                "section": event.section,
                "kind": event.kind.as_str(),
                "count": event.count,
                "time_s": event.time,
                "tension_n": event.tension,
                "angle_deg": event.angle.to_degrees(),
                "temperature_c": event.temperature,
                "rest_s": event.rest,
                "rest_tension_n": event.rest_tension,
            })).collect::<Vec<_>>(),
        });
        let expected = circuit_part(&case["expected"], &ours);
        compare(case["id"].as_str().unwrap(), &expected, &ours, (1e-6, 0.0), &mut wrong);
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Those names of an expected result that the circuit answers, with the number of shares and events kept.
fn circuit_part(expected: &Value, ours: &Value) -> Value {
    let keep = |theirs: &Value, ours: &Value| -> Value {
        let names = ours.as_object().unwrap().keys();
        Value::Object(names.map(|name| (name.clone(), theirs[name].clone())).collect())
    };
    let events = expected["joint"]["events"].as_array().unwrap();
    json!({
        "kinematics": keep(&expected["kinematics"], &ours["kinematics"]),
        "tension": keep(&expected["tension"], &ours["tension"]),
        "events": events.iter().map(|event| keep(event, &ours["events"][0])).collect::<Vec<_>>(),
    })
}

/// The five invented lines against results of an independent implementation, to the digits that were recorded.
#[test]
fn five_invented_lines() {
    let lines = five_lines();
    for (name, case) in lines.as_object().unwrap() {
        let line = Line::of(case);
        let expected = &case["expected"];
        let march = line.march();
        let close = |what: &str, ours: f64, share: f64| {
            let recorded = number(expected, what);
            assert!((ours / recorded - 1.0).abs() <= share, "{name} {what}: recorded {recorded}, ours {ours}");
        };
        assert_eq!(u64::from(line.layout.joints), expected["joints"].as_u64().unwrap(), "{name}");
        close("circuit_time", line.layout.circuit_time, 1e-9);
        close("tight", march.tight, 1e-6);
        close("pull", march.pull, 1e-6);
        close("required_take_up", march.required_take_up, 1e-6);
        close("sensitivity", march.take_up_sensitivity, 1e-5);
        close("breakaway", breakaway(&line.layout, &line.coefficients, 1.5, 2.0).unwrap().pull, 1e-5);
        for (cause, share) in march.shares() {
            if let Some(recorded) = expected[cause.as_str()].as_f64() {
                assert!((100.0 * share - recorded).abs() <= 0.051, "{name} {}: {share}", cause.as_str());
            }
        }
        let halved = |pairs: &dyn Fn(&mut Coefficients)| {
            let mut coefficients = line.coefficients.clone();
            pairs(&mut coefficients);
            100.0 * (pinfilm::circuit::march(&line.layout, &coefficients).unwrap().pull / march.pull - 1.0)
        };
        let half = |list: &mut Vec<f64>| list.iter_mut().for_each(|friction| *friction /= 2.0);
        let joint = halved(&|c| half(&mut c.joint));
        assert!((joint - number(expected, "halved_joint")).abs() <= 0.051, "{name}: {joint}");
        let three = halved(&|c| {
            half(&mut c.joint);
            half(&mut c.bush_roller);
            c.plate_track /= 2.0;
        });
        assert!((three - number(expected, "halved_three")).abs() <= 0.51, "{name}: {three}");
    }
}

/// Recorded by an independent implementation: 6000 N on the tail wheel of the oven line; friction heat 0.394 K.
#[test]
fn oven_with_a_weight_take_up() {
    let mut line = Line::named("oven");
    let heating = friction_heating(&line.layout, line.march().friction());
    assert!((heating - 0.394).abs() < 5e-4, "{heating}");
    line.layout.take_up = TakeUp::FrameForce { section: 1, force: 6000.0 };
    let march = line.march();
    assert!((march.slack - 1_796.296_020).abs() < 1e-6);
    assert!((march.profile[1][0] + march.profile[1][1] - 6000.0).abs() < 1e-9);
}

fn findings(line: &Line) -> Vec<Finding> {
    let mut list = Vec::new();
    inspect_layout(&line.layout, &mut list);
    inspect_march(&line.layout, &line.march(), &mut list);
    list
}

/// What these lines are known for.
#[test]
fn findings_of_known_lines() {
    let has = |list: &[Finding], wanted: fn(&Finding) -> bool| list.iter().any(wanted);

    let paint = findings(&Line::named("paint"));
    assert!(has(
        &paint,
        |f| matches!(f, Finding::PlanNotClosed { turned } if (turned.to_degrees() - 540.0).abs() < 1e-9)
    ));
    assert_eq!(paint.iter().filter(|f| matches!(f, Finding::CurveWeight { .. })).count(), 4);

    let packing = findings(&Line::named("packing"));
    assert!(has(&packing, |f| matches!(f, Finding::JointsNotCounted { joints: 868 })));
    assert!(!has(&packing, |f| matches!(f, Finding::PlanNotClosed { .. } | Finding::SlackChain { .. })));

    let slat = findings(&Line::named("slat"));
    assert!(has(&slat, |f| matches!(f, Finding::LargeSag { section: 0, sag_share } if *sag_share < 0.07)));

    let cases: Vec<Value> = serde_json::from_str(include_str!("../data/cases-circuit_drive.json")).unwrap();
    let case = |id: &str| Line::of(&cases.iter().find(|case| case["id"] == id).unwrap()["inputs"]);
    let downhill = findings(&case("A-029"));
    assert!(has(&downhill, |f| matches!(f, Finding::SlackChain { least, .. } if *least < 0.0)));
    assert!(has(&downhill, |f| matches!(f, Finding::Overhauling { .. })));
    let elevator = findings(&case("A-031"));
    assert!(has(&elevator, |f| matches!(f, Finding::RunBack { .. })));
    assert!(has(&elevator, |f| matches!(f, Finding::SlackChain { .. })));
}
