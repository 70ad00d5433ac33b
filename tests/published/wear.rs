use crate::{Answer, Check, number, relative, within};
use pinfilm::wear::*;

pub fn check(check: &Check) -> Answer {
    let (inputs, expected) = (check.inputs, check.expected);
    let printed = expected.as_f64().unwrap_or(f64::NAN);
    let mm = |key: &str| 1e-3 * number(inputs, key);
    Some(match check.id {
        "WEA-001" => {
            let ours = archard_volume(
                number(inputs, "K"),
                number(inputs, "W_N"),
                number(inputs, "s_m"),
                number(inputs, "H_Pa"),
            );
            vec![relative("Archard volume, m3", printed, ours, 1e-6)]
        }
        // our levels against the table, compatible metals; an order of magnitude is a factor of three either way
        "WEA-003" => {
            let usual = WearCoefficients::default();
            let table = |column: usize| 1e-6 * expected["compatible"][column].as_f64().unwrap_or(f64::NAN);
            let factor_of_three = |what, printed: f64, ours: f64| within(what, printed.ln(), ours.ln(), 3.0_f64.ln());
            vec![
                factor_of_three("ln K, unlubricated", table(0), usual.dry),
                factor_of_three("ln K, good lubrication", table(2), usual.boundary),
                factor_of_three("ln of unlubricated over good", table(0) / table(2), usual.dry / usual.boundary),
            ]
        }
        "WEA-004" => {
            let half = 0.5 * mm("total_depth_mm");
            vec![relative("elongation, %", printed, 100.0 * elongation(half, half, mm("p_mm")), 1e-6)]
        }
        "WEA-005" => vec![
            relative("adjustable, %", number(expected, "adjustable_pct"), 100.0 * ADJUSTABLE_LIMIT, 1e-15),
            relative("fixed centres, %", number(expected, "fixed_centre_pct"), 100.0 * FIXED_CENTRES_LIMIT, 1e-15),
        ],
        "WEA-007" => {
            let (pitch, teeth, e) = (mm("p_mm"), inputs["z"].as_u64()? as u32, number(inputs, "elong"));
            vec![
                relative(
                    "worn pitch diameter, mm",
                    number(expected, "D_mm"),
                    1e3 * worn_pitch_diameter(pitch, e, teeth),
                    1e-6,
                ),
                relative("rise, mm", number(expected, "rise_mm"), 1e3 * tooth_ride_out(pitch, e, teeth), 1e-6),
            ]
        }
        _ => return None,
    })
}
