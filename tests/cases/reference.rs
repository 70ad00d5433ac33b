//! The reference side of the film: pressure field of the steady bearing, path of the pin in time.

use crate::{Answer, number};
use pinfilm::joint::orbit::{PinPlace, Segment, travel};
use pinfilm::joint::reynolds::{Cavitation, reynolds_bearing};
use serde_json::{Value, json};

pub fn ours(case: &Value) -> Answer {
    let inputs = &case["inputs"];
    match case["quantity"].as_str()? {
        "reynolds_bearing (Reynolds cavitation)" => {
            let bearing = reynolds_bearing(
                number(inputs, "eccentricity_ratio"),
                number(inputs, "length_to_diameter"),
                Cavitation::Reynolds,
            )
            .ok()?;
            Some(json!({
                "S": bearing.sommerfeld,
                "phi_deg": bearing.attitude.to_degrees(),
                "friction": bearing.friction,
                "friction_striated": bearing.friction_striated,
                "Q": bearing.flow,
                "Qs_over_Q": bearing.side_flow_share,
                "P_over_pmax": bearing.pressure_ratio,
            }))
        }
        "orbit end: 1-eps, phi rad" => {
            let at = |list: &Value, i: usize| list[i].as_f64().unwrap();
            let start = PinPlace { x: at(&inputs["q0"], 0), y: at(&inputs["q0"], 1) };
            let segments: Vec<Segment> = inputs["segments_K_omega_dt"]
                .as_array()?
                .iter()
                .map(|s| Segment { squeeze_time: at(s, 0), angular_speed: at(s, 1), duration: at(s, 2) })
                .collect();
            let end = travel(start, &segments, inputs["length_to_diameter"].as_f64()).unwrap().last()?.end;
            Some(json!([end.film_ratio(), end.angle()]))
        }
        _ => None,
    }
}
