#![allow(clippy::unwrap_used)] // helpers of the tests below

use crate::{Answer, number};
use pinfilm::wear::*;
use serde_json::{Value, json};
use std::f64::consts::PI;

const HOUR: f64 = 3600.0;

pub fn ours(case: &Value) -> Answer {
    let (id, inputs) = (case["id"].as_str()?, &case["inputs"]);
    let quantity = case["quantity"].as_str()?;
    Some(match id {
        "D-001" => list(&inputs["q"]).map(tangent_of_half_arc).collect(),
        "D-003" => depths(inputs),
        "D-005" => list(&inputs["lam"])
            .map(|lambda| {
                let law = WearCoefficients::default().law();
                law.at(lambda, number(inputs, "temp_c")).coefficient(number(inputs, "fill"))
            })
            .collect(),
        "D-007" => {
            let dust_factor = number(inputs, "dust");
            let surroundings =
                WearCoefficients { dust_factor, water_factor: number(inputs, "water"), ..Default::default() };
            json!(surroundings.law().at(0.3, 20.0).coefficient(number(inputs, "fill")))
        }
        "D-009" => {
            let run_in = RunningIn { factor: number(inputs, "m"), distance: number(inputs, "s0") };
            json!(run_in.running_time(number(inputs, "omega") / number(inputs, "rate"), number(inputs, "s_rate")))
        }
        "D-021" => {
            let (bush, roller) = (1e-3 * number(inputs, "d_bush_mm"), 1e-3 * number(inputs, "d_roller_mm"));
            json!(
                1e6 * roller_bush_depth(
                    number(inputs, "K"),
                    number(inputs, "load_n"),
                    roller_sliding(1e3 * number(inputs, "travel_km"), bush, roller),
                    bush,
                    1e-3 * number(inputs, "length_mm"),
                    1e6 * number(inputs, "H_mpa"),
                )
            )
        }
        _ if quantity.starts_with("life in running years, line") => {
            let line = Line::read(&inputs["line"]);
            let coefficients = |set_up| line.classes(set_up).iter().map(|class| class.coefficient).collect::<Vec<_>>();
            json!({
                "now": line.lives(&line.now, true),
                "new": line.lives(&line.proposed, true),
                "K_now": coefficients(&line.now),
                "K_new": coefficients(&line.proposed),
            })
        }
        "D-053" => {
            let line = Line { limit: 0.0135, temperature: 90.0, lambda: 0.8, ..Line::packing() };
            json!({ "now": line.lives(&line.now, true), "new": line.lives(&line.proposed, true) })
        }
        "D-055" => {
            let line = Line { limit: 0.035, ..Line::overhead() };
            line.lives(&line.now, false)
        }
        _ => return None,
    })
}

fn list(value: &Value) -> impl Iterator<Item = f64> {
    value.as_array().into_iter().flatten().map(|v| v.as_f64().unwrap_or(f64::NAN))
}

/// Number under `key`, or `usual` where the case leaves it out.
fn or(value: &Value, key: &str, usual: f64) -> f64 {
    value[key].as_f64().unwrap_or(usual)
}

fn depths(inputs: &Value) -> Value {
    let body = |of: &str| Body {
        case_hardness: 1e6 * number(inputs, &format!("H_case_{of}_mpa")),
        core_hardness: 1e6 * number(inputs, "H_core_mpa"),
        case_depth: 1e-3 * number(inputs, &format!("case_{of}_mm")),
        core_factor: number(inputs, "core_factor"),
    };
    let joint = JointGeometry {
        pitch: 25.4e-3,
        pin_diameter: 1e-3 * number(inputs, "d_pin_mm"),
        bush_bore: 1e-3 * number(inputs, "bore_mm"),
        joint_length: 1e-3 * number(inputs, "length_mm"),
        pin: body("pin"),
        bush: body("bush"),
        wall: None,
    };
    let worn = WornJoint::new(&joint, 1.0);
    list(&inputs["omega_nm"])
        .map(|work| {
            let depths = worn.depths(work);
            json!([1e6 * depths.total, 1e6 * depths.pin, 1e6 * depths.bush])
        })
        .collect()
}

/// One way of oiling: (share, wait s) of each class, and what the oil is and meets.
struct SetUp {
    classes: Vec<(f64, f64)>,
    fill: f64,
    decay: f64,
    transition: f64,
    dust: f64,
    water: f64,
}

/// An invented line of the cases.
struct Line {
    joint: JointGeometry,
    events: Vec<(f64, f64)>,
    circuit_time: f64,
    hours: f64,
    temperature: f64,
    lambda: f64,
    limit: f64,
    now: SetUp,
    proposed: SetUp,
}

impl Line {
    fn read(line: &Value) -> Line {
        let pairs = |value: &Value| -> Vec<(f64, f64)> {
            value.as_array().into_iter().flatten().map(|pair| (at(pair, 0), at(pair, 1))).collect()
        };
        let set_up = |value: &Value| SetUp {
            classes: pairs(&value["classes"]),
            fill: number(value, "fill0"),
            decay: number(value, "decay_s"),
            transition: number(value, "transition_c"),
            dust: number(value, "dust"),
            water: number(value, "water"),
        };
        let joint = &line["joint"];
        let body = |of: &str| Body {
            case_hardness: or(joint, &format!("H_case_{of}"), 7e9),
            core_hardness: or(joint, &format!("H_core_{of}"), 3e9),
            case_depth: number(joint, &format!("case_{of}")),
            core_factor: or(joint, "core_factor", 3.0),
        };
        Line {
            joint: JointGeometry {
                pitch: number(joint, "pitch"),
                pin_diameter: number(joint, "d_pin"),
                bush_bore: number(joint, "bore"),
                joint_length: number(joint, "length"),
                pin: body("pin"),
                bush: body("bush"),
                wall: None,
            },
            events: pairs(&line["events"]),
            circuit_time: number(line, "circuit_s"),
            hours: number(line, "hours"),
            temperature: number(line, "temp"),
            lambda: number(line, "lam"),
            limit: 0.01 * number(line, "limit"),
            now: set_up(&line["now"]),
            proposed: set_up(&line["new"]),
        }
    }

    /// A fast packing drive.
    fn packing() -> Line {
        let turn = 2.0 * PI / 19.0;
        let oiled = |wait: f64, dust| SetUp {
            classes: vec![(1.0, wait * HOUR)],
            fill: 0.6,
            decay: 150.0 * HOUR,
            transition: 150.0,
            dust,
            water: 1.0,
        };
        Line {
            joint: hardened(12.7e-3, 4.45e-3, 4.5e-3, 11.3e-3, 0.25e-3),
            events: [350.0, 15.0, 15.0, 20.0].map(|tension| (tension, turn)).to_vec(),
            circuit_time: 4.0,
            hours: 5500.0,
            temperature: 30.0,
            lambda: 0.05,
            limit: 0.015,
            now: oiled(250.0, 1.5),
            proposed: oiled(12.0, 1.2),
        }
    }

    /// An overhead paint line.
    fn overhead() -> Line {
        let oiled = |classes: &[(f64, f64)], fill, dust| SetUp {
            classes: classes.iter().map(|&(share, wait)| (share, wait * HOUR)).collect(),
            fill,
            decay: 60.0 * HOUR,
            transition: 150.0,
            dust,
            water: 1.0,
        };
        Line {
            joint: hardened(0.153, 16e-3, 16.6e-3, 30e-3, 0.8e-3),
            events: (0..28).map(|i| (800.0 + 1800.0 * f64::from(i) / 27.0, 0.153 / 0.6)).collect(),
            circuit_time: 3360.0,
            hours: 4500.0,
            temperature: 60.0,
            lambda: 0.2,
            limit: 0.02,
            now: oiled(&[(0.6, 120.0), (0.4, f64::INFINITY)], 0.4, 2.0),
            proposed: oiled(&[(1.0, 24.0)], 0.6, 1.5),
        }
    }

    fn events(&self) -> Vec<Event> {
        let event = |&(tension, angle): &(f64, f64)| Event {
            count: 1.0,
            tension,
            angle,
            temperature: self.temperature,
            lambda_at_fill_1: self.lambda,
        };
        self.events.iter().map(event).collect()
    }

    fn classes(&self, set_up: &SetUp) -> Vec<WearingClass> {
        let surroundings = WearCoefficients {
            transition: set_up.transition,
            dust_factor: set_up.dust,
            water_factor: set_up.water,
            ..Default::default()
        };
        let (law, events) = (surroundings.law(), self.events());
        let oil = OilAge { fill: set_up.fill, loss_rate: 1.0 / set_up.decay };
        let wear = |&(share, wait): &(f64, f64)| {
            let class = Class { share, waits: &[(wait, 1.0)], oil, contiguous: true };
            let coefficient = class_coefficient(&events, &event_coefficients(&law, &events, &class));
            WearingClass { share, coefficient, contiguous: true }
        };
        set_up.classes.iter().map(wear).collect()
    }

    /// All lives in years of so many running hours.
    fn lives(&self, set_up: &SetUp, contiguous: bool) -> Value {
        let classes: Vec<_> = self.classes(set_up).into_iter().map(|c| WearingClass { contiguous, ..c }).collect();
        let work = CircuitWork::of(&self.events());
        let radius = 0.5 * self.joint.pin_diameter;
        let chain = WearingChain {
            joint: &WornJoint::new(&self.joint, hardness_factor(work.temperature)),
            pitch: self.joint.pitch,
            pin_diameter: self.joint.pin_diameter,
            wall: self.joint.wall,
            classes: &classes,
            work_rate: work.work_rate(radius, self.circuit_time),
            sliding_rate: work.sliding_rate(radius, self.circuit_time),
            running_in: RunningIn::USUAL,
        };
        let limits = WearLimits { elongation: self.limit, pin_share: PIN_WEAR_SHARE, bush_share: BUSH_WEAR_SHARE };
        let lives = chain.lives(&limits).unwrap();
        let years = |seconds: f64| seconds / (HOUR * self.hours);
        json!({
            "mean": years(lives.mean),
            "local": years(lives.local),
            "pin": years(lives.pin),
            "case": years(lives.case_through),
            "life": years(lives.life),
            "governs": lives.governs.as_str(),
        })
    }
}

fn at(pair: &Value, index: usize) -> f64 {
    // JSON has no infinity: a wait that never ends is null or text
    pair[index].as_f64().unwrap_or(f64::INFINITY)
}

/// A case-hardened joint, 7000 MPa over 3000 MPa.
fn hardened(pitch: f64, pin_diameter: f64, bush_bore: f64, joint_length: f64, case_depth: f64) -> JointGeometry {
    let body = Body { case_hardness: 7e9, core_hardness: 3e9, case_depth, core_factor: 3.0 };
    JointGeometry { pitch, pin_diameter, bush_bore, joint_length, pin: body, bush: body, wall: None }
}

/// The wear of whole lines, from the events and the fill that their cases give.
#[test]
fn wear_of_whole_lines() {
    let cases: Vec<Value> = serde_json::from_str(include_str!("../data/cases-line.json")).unwrap();
    let mut compared = 0;
    for case in cases.iter().filter(|case| case["expected"]["wear"].is_object()) {
        let (ours, expected) = (line_wear(&case["inputs"], &case["expected"]), &case["expected"]["wear"]);
        for (name, ours) in ours.as_object().unwrap() {
            let expected = &expected[name];
            match (expected.as_f64(), ours.as_f64()) {
                (Some(e), Some(o)) => {
                    assert!((o - e).abs() <= 1e-9 * e.abs(), "{} {name}: expected {e}, ours {o}", case["id"]);
                }
                _ => assert_eq!(ours, expected, "{} {name}", case["id"]),
            }
            compared += 1;
        }
    }
    assert_eq!(compared, 6 * 15);
}

fn line_wear(inputs: &Value, expected: &Value) -> Value {
    let (chain, wear, duty, fill) = (&inputs["chain"], &inputs["wear"], &inputs["duty"], &expected["fill"]);
    let (mm, mpa) = (|key: &str| 1e-3 * number(chain, key), |key: &str| 1e6 * number(chain, key));
    let events: Vec<Event> = expected["joint"]["events"]
        .as_array()
        .into_iter()
        .flatten()
        .map(|event| Event {
            count: number(event, "count"),
            tension: number(event, "tension_n"),
            angle: number(event, "angle_deg").to_radians(),
            temperature: number(event, "temperature_c"),
            lambda_at_fill_1: number(event, "lambda_fill_1"),
        })
        .collect();
    let law = WearCoefficients {
        dry: number(wear, "wear_coefficient_dry"),
        boundary: number(wear, "wear_coefficient_boundary"),
        mixed: number(wear, "wear_coefficient_mixed"),
        full: number(wear, "wear_coefficient_full"),
        fill_half: number(wear, "fill_half"),
        transition: number(&inputs["oil"], "boundary_transition_c"),
        dust_factor: number(duty, "dust_factor"),
        water_factor: number(duty, "water_factor"),
    }
    .law();

    let never = number(fill, "never_reached");
    let waits: Vec<(f64, f64)> = list(&fill["wait_s"]).zip(list(&fill["wait_weight"])).collect();
    let oil = OilAge { fill: number(fill, "fill_after_shot"), loss_rate: number(fill, "loss_rate_per_h") / HOUR };
    let reached = Class { share: 1.0 - never, waits: &waits, oil, contiguous: true };
    let at_events = event_coefficients(&law, &events, &reached);
    let coefficient_reached = class_coefficient(&events, &at_events);
    let mut classes = vec![WearingClass { share: 1.0 - never, coefficient: coefficient_reached, contiguous: true }];
    if never > 0.0 {
        classes.push(WearingClass { share: never, coefficient: law.dry_coefficient(), contiguous: true });
    }

    let body = Body {
        case_hardness: mpa("case_hardness_mpa"),
        core_hardness: mpa("core_hardness_mpa"),
        case_depth: mm("case_depth_mm"),
        core_factor: number(chain, "core_factor"),
    };
    let joint = JointGeometry {
        pitch: mm("pitch_mm"),
        pin_diameter: mm("pin_diameter_mm"),
        bush_bore: mm("bush_bore_mm"),
        joint_length: mm("joint_length_mm"),
        pin: body,
        bush: body,
        wall: Some(0.5 * (mm("bush_diameter_mm") - mm("bush_bore_mm"))),
    };
    let sections = || inputs["circuit"]["sections"].as_array().into_iter().flatten();
    let most_teeth = sections().filter_map(|section| section["teeth"].as_u64()).max().map(|teeth| teeth as u32);
    let elongation = replacement_limit(
        0.01 * number(chain, "elongation_limit_pct"),
        joint.pitch,
        mm("roller_diameter_mm"),
        most_teeth,
    )
    .unwrap();

    let (work, radius) = (CircuitWork::of(&events), 0.5 * joint.pin_diameter);
    let circuit_time = number(&expected["kinematics"], "circuit_time_s");
    let year = HOUR * number(&expected["kinematics"], "running_h_per_year");
    let hardness = hardness_factor(work.temperature);
    let chain = WearingChain {
        joint: &WornJoint::new(&joint, hardness),
        pitch: joint.pitch,
        pin_diameter: joint.pin_diameter,
        wall: joint.wall,
        classes: &classes,
        work_rate: work.work_rate(radius, circuit_time),
        sliding_rate: work.sliding_rate(radius, circuit_time),
        running_in: RunningIn { factor: number(wear, "run_in_factor"), distance: number(wear, "run_in_distance_m") },
    };
    let lives =
        chain.lives(&WearLimits { elongation, pin_share: PIN_WEAR_SHARE, bush_share: BUSH_WEAR_SHARE }).unwrap();

    let drive = sections().position(|section| section["drive"] == true).unwrap();
    let teeth = sections().nth(drive).unwrap()["teeth"].as_u64().unwrap() as u32;
    let entry = expected["joint"]["events"].as_array().unwrap();
    let entry = entry.iter().position(|e| e["section"] == drive && e["kind"] == "entry").unwrap();
    let flank = sprocket_flank_depth(
        at_events[entry],
        events[entry].tension,
        sprocket_sliding(FLANK_SLIP, mm("roller_diameter_mm"), teeth),
        number(&expected["kinematics"], "joints") / f64::from(teeth) * year / circuit_time,
        mm("roller_diameter_mm"),
        mm("inner_width_mm"),
        1e6 * number(wear, "sprocket_hardness_mpa"),
    );
    json!({
        "coefficient_reached": coefficient_reached,
        "coefficient_never": (never > 0.0).then(|| law.dry_coefficient()),
        "temperature_c": work.temperature,
        "hardness_factor": hardness,
        "limit_pct": 100.0 * elongation,
        "sliding_m_per_h": HOUR * chain.sliding_rate,
        "elongation_1_year_pct": 100.0 * chain.elongation(year),
        "life_years": lives.life / year,
        "life_mean_years": lives.mean / year,
        "life_local_years": lives.local / year,
        "life_pin_years": lives.pin / year,
        "life_bush_years": lives.bush.map(|bush| bush / year),
        "case_through_years": lives.case_through / year,
        "governs": lives.governs.as_str(),
        "sprocket_flank_um_per_year": 1e6 * flank,
    })
}
