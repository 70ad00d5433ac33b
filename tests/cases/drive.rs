//! Motor, gear, what a current can see, energy.

#![allow(clippy::unwrap_used, clippy::panic)]

use crate::{Answer, number};
use pinfilm::drive::{Leakage, LossSplit, Measured, Motor, Nameplate, Quadrature, Supply, least_detectable_change};
use serde_json::{Value, json};
use std::f64::consts::TAU;

fn nameplate(v: &Value) -> Nameplate {
    Nameplate {
        voltage: number(v, "V"),
        power: number(v, "P"),
        current: number(v, "I"),
        speed: number(v, "n") * TAU / 60.0,
        efficiency: number(v, "eta"),
        power_factor: number(v, "pf"),
        frequency: number(v, "f"),
    }
}

/// The motor of the floor line.
fn floor() -> Motor {
    let plate = json!({"V": 400, "P": 4000, "I": 8.05, "n": 1450, "eta": 0.886, "pf": 0.81, "f": 50});
    Motor::fit(&nameplate(&plate), &LossSplit::default()).unwrap()
}

fn fit(inputs: &Value) -> Value {
    let plate = nameplate(inputs);
    let mut split = LossSplit::default();
    if let Some(current) = inputs["I0"].as_f64() {
        split.leakage = Leakage::From(Measured { current, shaft_power: 0.0, supply: plate.supply() });
    }
    match Motor::fit(&plate, &split) {
        Err(error) => json!(format!("error: {error}")),
        Ok(motor) => {
            let c = &motor.circuit;
            json!({
                "s_r": motor.rated_slip, "r1": c.stator_resistance, "x1": c.stator_reactance, "r2": c.rotor_resistance,
                "x2": c.rotor_reactance, "xm": c.magnetising_reactance, "rc": c.core_resistance,
                "p_fw": c.friction_windage, "p_st": c.stray_loss, "I0": motor.no_load().current,
                "pull_out": motor.pull_out_ratio(), "leakage": motor.leakage,
            })
        }
    }
}

pub fn ours(case: &Value) -> Answer {
    let inputs = &case["inputs"];
    let quantity = case["quantity"].as_str()?;
    if quantity.starts_with("motor fit") || quantity.starts_with("nameplate whose slip") {
        Some(fit(inputs))
    } else if quantity.starts_with("floor motor at other supply") {
        let supply = Supply { voltage: number(inputs, "V"), frequency_ratio: number(inputs, "f_ratio") };
        let point = floor().circuit.on(&supply).at_power(number(inputs, "P_shaft")).unwrap();
        Some(json!({"I": point.current, "P1": point.input_power, "slip": point.slip}))
    } else if quantity.starts_with("dI/dP") {
        let motor = floor();
        let on = motor.circuit.on(&motor.nameplate.supply());
        let slope = |load: f64| on.sensitivity(on.at_power(load * 4000.0).unwrap().slip).current_per_power;
        Some(json!([slope(0.1), slope(0.4), slope(1.0)]))
    } else if quantity.starts_with("inverse of the quadrature model") {
        let model = Quadrature::of(&floor()).unwrap();
        let reading = model
            .power_of_current(number(inputs, "I"), number(inputs, "sigma_I"), number(inputs, "rel_sigma_Iq0"))
            .unwrap();
        Some(json!([reading.power, reading.spread, reading.power_per_current]))
    } else if quantity.starts_with("least detectable") {
        let n = |key| number(inputs, key);
        Some(json!(least_detectable_change(n("sigma"), n("sys"), n("n1"), n("n2"), n("rho"))))
    } else {
        None
    }
}

/// Lines whose power at the sprocket is known: shaft power, current, input power, current per newton.
#[test]
fn five_lines_from_the_sprocket_on() {
    use pinfilm::drive::{Clamp, Gear, energy, load};
    // name; V P I n eta pf; gear eta, fixed share; pull N, speed m/min; shaft W; A; input W; A/N; I0/Ir; h; kWh
    let lines = [
        (
            "oven",
            [370.0, 1.05, 1410.0, 0.728, 0.70, 0.85, 0.5],
            4323.950,
            3.0,
            267.9208,
            0.9003742,
            374.2827,
            6.702902e-5,
        ),
        (
            "slat",
            [750.0, 1.75, 1435.0, 0.825, 0.75, 0.78, 0.4],
            2111.7943,
            12.0,
            578.4504,
            1.481466,
            698.4585,
            3.302805e-4,
        ),
        (
            "paint",
            [1100.0, 2.48, 1440.0, 0.841, 0.76, 0.75, 0.4],
            2008.960,
            2.5,
            247.1146,
            1.471068,
            339.6414,
            2.750266e-5,
        ),
        (
            "floor",
            [4000.0, 8.05, 1450.0, 0.886, 0.81, 0.92, 0.5],
            53161.25,
            4.0,
            3872.087,
            7.827922,
            4363.017,
            1.183042e-4,
        ),
        (
            "packing",
            [550.0, 1.33, 1420.0, 0.808, 0.74, 0.95, 0.5],
            194.5785,
            60.0,
            214.1727,
            0.8958784,
            281.3065,
            8.315841e-4,
        ),
    ];
    let hours_and_energy =
        [(4000.0, 1497.13), (6000.0, 4190.75), (3840.0, 1304.22), (1760.0, 7678.91), (4800.0, 1350.27)];
    for ((name, m, pull, speed, shaft, current, input, per_pull), (hours, kwh)) in
        lines.into_iter().zip(hours_and_energy)
    {
        let [power, rated_current, rpm, eta, pf, gear_eta, fixed_share] = m;
        let plate = json!({"V": 400, "P": power, "I": rated_current, "n": rpm, "eta": eta, "pf": pf, "f": 50});
        let motor = Motor::fit(&nameplate(&plate), &LossSplit::default()).unwrap();
        let gear = Gear { rated_power: power, efficiency: gear_eta, fixed_share, extra_efficiency: 1.0 };
        let supply = motor.nameplate.supply();
        let drive = load(pull, speed / 60.0, 1.0, &gear, &motor, &supply, &Clamp::AtMotor).unwrap();
        let running = drive.running.unwrap();
        let year = energy([(running.input_power, hours * 3600.0)]) / 3.6e6;
        for (what, printed, ours, share) in [
            ("shaft", shaft, drive.shaft_power, 3e-7),
            ("current", current, running.current, 3e-7),
            ("input", input, running.input_power, 3e-7),
            ("slope", per_pull, running.current_per_pull, 1e-5),
            ("energy", kwh, year, 4e-6),
        ] {
            assert!((ours / printed - 1.0).abs() < share, "{name} {what}: {printed} ours {ours}");
        }
    }
}

/// The motor whose circuit is known, fitted from what would stand on its plate.
#[test]
fn a_known_motor_from_its_nameplate() {
    use pinfilm::drive::EquivalentCircuit;
    let truth = EquivalentCircuit {
        stator_resistance: 0.641,
        stator_reactance: 1.106,
        rotor_resistance: 0.332,
        rotor_reactance: 0.464,
        magnetising_reactance: 26.3,
        core_resistance: f64::INFINITY,
        friction_windage: 1100.0,
        stray_loss: 0.0,
        stray_current: 1.0,
    };
    let supply = Supply { voltage: 460.0, frequency_ratio: 1.0 };
    let on = truth.on(&supply);
    let rated = on.at_slip(0.022);
    let plate = Nameplate {
        voltage: 460.0,
        power: rated.shaft_power,
        current: rated.current,
        speed: 1760.4 * TAU / 60.0,
        efficiency: rated.efficiency(),
        power_factor: rated.power_factor,
        frequency: 60.0,
    };
    assert!((on.at_no_load().current - 9.767).abs() < 5e-4);
    assert!((on.at_power(0.5 * rated.shaft_power).unwrap().current - 12.884).abs() < 5e-4);
    let fitted =
        |leakage| Motor::fit(&plate, &LossSplit { leakage: Leakage::PerUnit(leakage), ..Default::default() }).unwrap();
    assert!((fitted(0.20).no_load().current - 8.609).abs() < 5e-4);
    assert!((fitted(0.11168).no_load().current - 9.947).abs() < 5e-4);
    let half = fitted(0.20).circuit.on(&supply).at_power(0.5 * rated.shaft_power).unwrap();
    assert!((half.current - 11.985).abs() < 5e-4);
}

/// Current of the 4 kW motor on a converter, by the quadrature model, and what a watt does to it.
#[test]
fn four_kilowatt_motor_elsewhere() {
    let motor = floor();
    let slow = motor.circuit.on(&Supply::from_converter(400.0, 0.3)).at_power(480.0).unwrap();
    assert!((slow.current - 4.616940622).abs() < 1e-9);

    let model = Quadrature::of(&motor).unwrap();
    for (load, printed) in [(0.0, 3.745952346), (0.4, 4.627062642), (1.0, 8.047449427), (1.25, 9.993941260)] {
        assert!((model.current(load * 4000.0) - printed).abs() < 1e-8);
    }

    let small = json!({"V": 400, "P": 370, "I": 1.05, "n": 1410, "eta": 0.728, "pf": 0.7, "f": 50});
    let small = Motor::fit(&nameplate(&small), &LossSplit::default()).unwrap();
    let loads = [0.02, 0.1, 0.2, 0.4, 0.5, 0.75, 1.0];
    let printed = [
        (motor, [0.064, 0.170, 0.295, 0.501, 0.582, 0.736, 0.861]),
        (small, [0.049, 0.091, 0.145, 0.255, 0.310, 0.449, 0.596]),
    ];
    for (motor, slopes) in printed {
        let (plate, on) = (motor.nameplate, motor.circuit.on(&motor.nameplate.supply()));
        for (load, printed) in loads.into_iter().zip(slopes) {
            let slope = on.sensitivity(on.at_power(load * plate.power).unwrap().slip).current_per_power;
            assert!((slope * plate.power / plate.current - printed).abs() < 6e-4, "{load} {printed}");
        }
    }
}

/// The drives of whole lines, from the power at the sprocket that the case expects.
#[test]
fn drives_of_whole_lines() {
    use pinfilm::drive::{Clamp, Gear, energy, load};
    let cases: Vec<Value> = serde_json::from_str(include_str!("../data/cases-line.json")).unwrap();
    for case in cases.iter().filter(|case| case["quantity"] == "evaluate") {
        let (given, duty, expected) = (&case["inputs"]["drive"], &case["inputs"]["duty"], &case["expected"]["drive"]);
        let n = |key| number(given, key);
        let plate = Nameplate {
            voltage: n("rated_voltage_v"),
            power: n("rated_power_kw") * 1e3,
            current: n("rated_current_a"),
            speed: n("rated_speed_rpm") * TAU / 60.0,
            efficiency: n("rated_efficiency"),
            power_factor: n("rated_power_factor"),
            frequency: n("rated_frequency_hz"),
        };
        let gear = Gear {
            rated_power: n("gear_rated_power_kw") * 1e3,
            efficiency: n("gear_efficiency"),
            fixed_share: n("gear_fixed_share"),
            extra_efficiency: 1.0,
        };
        let motor = Motor::fit(&plate, &LossSplit::default()).unwrap();
        let speed = number(duty, "speed_m_per_min") / 60.0;
        let pull = number(expected, "chain_power_w") / speed;
        let drive = load(pull, speed, 1.0, &gear, &motor, &plate.supply(), &Clamp::AtMotor).unwrap();
        let running = drive.running.unwrap();
        let hours = number(duty, "hours_per_day") * number(duty, "days_per_year");
        for (key, ours) in [
            ("shaft_power_w", drive.shaft_power),
            ("load", drive.load_ratio),
            ("current_a", running.current),
            ("input_power_w", running.input_power),
            ("power_factor", running.power_factor),
            ("slip", running.slip),
            ("no_load_current_a", drive.no_load_current),
            ("current_per_pull_a_per_n", running.current_per_pull),
            ("energy_kwh_per_year", energy([(running.input_power, hours * 3600.0)]) / 3.6e6),
        ] {
            let expected = number(expected, key);
            assert!((ours / expected - 1.0).abs() < 1e-6, "{} {key}: {expected} ours {ours}", case["id"]);
        }
    }
}
