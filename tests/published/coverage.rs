//! Timing of lubricators: the three-gap theorem, counters, random shots, oil per circuit.

#![allow(clippy::unwrap_used)] // a test that cannot read its data has failed

use crate::{Answer, Check, number, numbers, relative, within};
use pinfilm::lubrication::coverage::{
    every_nth, expected_covered, joints_hit, joints_per_second, oil_per_circuit, shots_to_cover_all, shots_until,
    three_gaps,
};

pub fn check(check: &Check) -> Answer {
    let (inputs, expected) = (check.inputs, check.expected);
    let count = |key: &str| inputs[key].as_i64().unwrap();
    Some(match check.id {
        "TIM-001" | "TIM-004" | "TIM-006" | "TIM-007" => {
            let gaps = three_gaps(number(inputs, "alpha_value"), count("n") as u64);
            let listed = expected.as_array()?;
            let mut compared = vec![within("number of lengths", listed.len() as f64, gaps.len() as f64, 0.0)];
            for (gap, printed) in gaps.iter().zip(listed) {
                let printed = numbers(printed);
                compared.push(within("gap length", printed[0], gap.length, 1e-6));
                compared.push(within("gaps of it", printed[1], gap.count as f64, 0.0));
            }
            compared
        }
        "TIM-009" | "TIM-011" | "TIM-012" | "TIM-014" => {
            let nth = every_nth(count("N"), count("k")).unwrap();
            vec![
                within("joints hit", number(expected, "distinct"), nth.reached as f64, 0.0),
                within("never hit", number(expected, "never_hit"), nth.never as f64, 0.0),
                within("spacing", number(expected, "spacing"), nth.spacing as f64, 0.0),
            ]
        }
        "TIM-015" => {
            let hit = joints_hit(count("N"), count("step"), count("shots"));
            let printed = numbers(expected);
            let mut compared = vec![within("joints hit", printed.len() as f64, hit.len() as f64, 0.0)];
            compared.extend(printed.iter().zip(&hit).map(|(p, &o)| within("joint", *p, o as f64, 0.0)));
            compared
        }
        "TIM-017" => {
            let shots = shots_until(count("N"), count("step"), 1)?;
            vec![within("shots until joint 1", expected.as_f64()?, shots as f64, 0.0)]
        }
        "TIM-018" => {
            let joints = count("N");
            let covered = numbers(&expected["mean_covered"]);
            let mut compared: Vec<_> = numbers(&inputs["shots"])
                .iter()
                .zip(&covered)
                .map(|(&shots, &mean)| relative("mean covered", mean, expected_covered(joints as f64, shots), 1e-6))
                .collect();
            let all = shots_to_cover_all(joints as u32);
            compared.push(relative("shots to cover all", number(expected, "shots_to_cover_all"), all, 1e-6));
            compared
        }
        "TIM-019" => {
            let (speed, pitch) = (number(inputs, "v_mps"), number(inputs, "p_mm") * 1e-3);
            let (length, points) = (number(inputs, "loop_m"), number(inputs, "points"));
            let (per_hour, joints) = (joints_per_second(speed, pitch) * 3600.0, length / pitch);
            let oil = oil_per_circuit(joints, 1.0, points, number(inputs, "shot_mm3") * 1e-9) * 1e6;
            vec![
                relative("joints per hour", number(expected, "joints_per_h"), per_hour, 1e-9),
                relative("circuit s", number(expected, "loop_time_s"), joints / joints_per_second(speed, pitch), 1e-9),
                relative("joints", number(expected, "joints"), joints, 1e-9),
                relative("oil per circuit ml", number(expected, "oil_per_loop_ml"), oil, 1e-9),
            ]
        }
        _ => return None,
    })
}
