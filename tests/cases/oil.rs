//! Viscosity against temperature, the index, density, pressure, blends.

use crate::{Answer, number};
use pinfilm::oil::{ViscosityLine, blend_viscosity, density, pressure_viscosity, roelands, viscosity_at_100};
use serde_json::{Value, json};

const MM2_PER_S: f64 = 1e-6;

pub fn ours(case: &Value) -> Answer {
    let input = &case["inputs"];
    let get = |key: &str| number(input, key);
    let kinematic = |key: &str| number(input, key) * MM2_PER_S;
    let answer = match case["quantity"].as_str()? {
        "kinematic_viscosity_mm2_s" => {
            ViscosityLine::through(get("t1_c"), kinematic("v1"), get("t2_c"), kinematic("v2"))
                .and_then(|line| line.viscosity(get("temperature_c")))
                .map(|v| v / MM2_PER_S)
        }
        "v100_mm2_s" => viscosity_at_100(kinematic("v40"), get("vi")).map(|v| v / MM2_PER_S),
        "density_kg_m3" => Ok(density(get("rho15"), get("temperature_c"))),
        "roelands_pa_s" => {
            let coefficient = input["alpha"].as_f64().unwrap_or_else(|| pressure_viscosity(get("eta0")));
            roelands(get("eta0"), coefficient, get("p_pa"))
        }
        "blend_viscosity_mm2_s" => {
            blend_viscosity(kinematic("v_a"), kinematic("v_b"), get("fraction_a")).map(|v| v / MM2_PER_S)
        }
        _ => return None,
    };
    Some(match answer {
        Ok(number) => json!(number),
        Err(error) => json!(format!("error: {error}")),
    })
}
