//! Line, venting, reservoir and 24 V cable against the independent cases.

#![allow(clippy::unwrap_used)]

use crate::{Answer, number};
use pinfilm::supply::{self, Segment};
use serde_json::{Value, json};

pub fn ours(case: &Value) -> Answer {
    let i = &case["inputs"];
    match case["quantity"].as_str()? {
        "line_drop" => Some(line_drop(i)),
        "vent_time_s" | "vent_time" => Some(json!(supply::vent_time(
            number(i, "length_m"),
            number(i, "bore_m"),
            number(i, "viscosity_pa_s"),
            number(i, "bulk_modulus_pa"),
            number(i, "hose_per_pa"),
            number(i, "p0_pa"),
            number(i, "p_reset_pa"),
        ))),
        "load_voltage" => Some(load(i, number(i, "load_w"), true)),
        "load_voltage_inrush" => {
            Some(load(i, number(i, "load_w") * number(i, "inrush_factor"), i["inrush"] == "constant_power"))
        }
        _ => None,
    }
}

fn line_drop(i: &Value) -> Value {
    let segments: Vec<Segment> = i["segments_m_m_m3s"]
        .as_array()
        .unwrap()
        .iter()
        .map(|s| Segment { length: s[0].as_f64().unwrap(), bore: s[1].as_f64().unwrap(), flow: s[2].as_f64().unwrap() })
        .collect();
    match supply::line_drop(&segments, number(i, "viscosity_pa_s"), number(i, "density")) {
        Ok(drop) => json!({"dp_pa": drop.pressure, "reynolds": drop.reynolds}),
        Err(error) => json!(format!("error: {error}")),
    }
}

fn load(i: &Value, power: f64, constant_power: bool) -> Value {
    let supply = number(i, "supply_v");
    let resistance = supply::loop_resistance(
        number(i, "length_m"),
        number(i, "area_mm2") * 1e-6,
        i["conductor_class"].as_i64().unwrap(),
        number(i, "temperature_c"),
    );
    let answer = resistance.and_then(|ohm| {
        let load = if constant_power {
            supply::constant_power_load(supply, power, ohm)?
        } else {
            supply::resistive_load(supply, power, ohm)
        };
        Ok(json!({"volt": load.voltage, "amp": load.current, "ohm": ohm}))
    });
    answer.unwrap_or_else(|error| json!(format!("error: {error}")))
}

/// Single numbers of an independent implementation.
#[test]
fn venting_and_inrush() {
    let vent = supply::vent_time(30.0, 0.006, 1.663195311920747, 1.4e9, 2e-10, 4e6, 5e5);
    assert!((vent / 1.1443311 - 1.0).abs() < 1e-7, "{vent}");
    let ohm = supply::loop_resistance(50.0, 1.5e-6, 5, 40.0).unwrap();
    let valve = supply::resistive_load(24.0, 60.0, ohm);
    assert!((valve.voltage / 20.879895 - 1.0).abs() < 1e-7 && (valve.current / 2.1749891 - 1.0).abs() < 1e-7);
    assert!(valve.voltage > 20.4);
    let converter = supply::constant_power_load(24.0, 60.0, ohm).unwrap();
    assert!((converter.voltage / 19.611026 - 1.0).abs() < 1e-7 && converter.voltage < 20.4);
}
