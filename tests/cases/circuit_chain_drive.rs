//! Cases that join rooms: pitch geometry of the chain, and whole drives of the five lines.

use crate::circuit::survey::{Line, five_lines};
use crate::{Answer, number};
use pinfilm::chain;
use pinfilm::drive::{Clamp, Gear, Load, LossSplit, Motor, Nameplate, Supply, load};
use serde_json::{Value, json};

pub fn ours(case: &Value) -> Answer {
    let inputs = &case["inputs"];
    Some(match case["id"].as_str()? {
        "A-001" | "A-003" => {
            let (pitch, teeth) = (number(inputs, "pitch_m"), number(inputs, "teeth"));
            json!({
                "D": chain::pitch_diameter(pitch, teeth),
                "angle": chain::articulation_angle(teeth).to_degrees(),
                "ripple": chain::speed_ripple(teeth),
                "X": chain::position_error(pitch, teeth),
            })
        }
        "A-007" => {
            let of = |key: &str| number(inputs, key);
            json!(chain::loop_length(of("centre_m"), of("pitch_m"), of("teeth_1"), of("teeth_2")).unwrap())
        }
        "A-035" => {
            let of = |key: &str| number(inputs, key);
            let force = chain::polygon_force(of("p"), of("z"), of("v"), of("M"), of("k"));
            json!({
                "a": force.acceleration,
                "X": force.position_error,
                "rigid": force.rigid,
                "elastic": force.elastic,
                "ratio": force.frequency_ratio,
            })
        }
        "A-021" | "A-023" => halved(inputs["line"].as_str()?),
        "A-055" => {
            let name = inputs["line"].as_str()?;
            let now = driven(name, Line::named(name).march().pull);
            json!(now.running.unwrap().input_power * number(inputs, "hours") / 1000.0)
        }
        _ => return None,
    })
}

/// The drive of one of the five lines under a pull.
fn driven(name: &str, pull: f64) -> Load {
    let line = &five_lines()[name];
    let (motor, gear) = (&line["motor"], &line["gear"]);
    let plate = Nameplate {
        voltage: number(motor, "V"),
        power: number(motor, "P"),
        current: number(motor, "I"),
        speed: number(motor, "n") * std::f64::consts::TAU / 60.0,
        efficiency: number(motor, "eta"),
        power_factor: number(motor, "pf"),
        frequency: number(motor, "f"),
    };
    let gear = Gear {
        rated_power: number(gear, "P"),
        efficiency: number(gear, "eta"),
        fixed_share: number(gear, "fixed"),
        extra_efficiency: 1.0,
    };
    let motor = Motor::fit(&plate, &LossSplit::default()).unwrap();
    load(pull, number(line, "v"), 1.0, &gear, &motor, &plate_supply(&plate), &Clamp::AtMotor).unwrap()
}

fn plate_supply(plate: &Nameplate) -> Supply {
    Supply { voltage: plate.voltage, frequency_ratio: 1.0 }
}

/// A line now, and with joint, bush/roller and plate/track friction halved.
fn halved(name: &str) -> Value {
    let mut line = Line::named(name);
    let pull = line.march().pull;
    let now = driven(name, pull);
    line.coefficients.joint.iter_mut().for_each(|friction| *friction /= 2.0);
    line.coefficients.bush_roller.iter_mut().for_each(|friction| *friction /= 2.0);
    line.coefficients.plate_track /= 2.0;
    let less = line.march().pull;
    let running = now.running.unwrap();
    json!({
        "Pm": now.shaft_power,
        "I": running.current,
        "P1": running.input_power,
        "dIdF": running.current_per_pull,
        "half_all": less / pull,
        "I_half": driven(name, less).running.unwrap().current,
    })
}
