//! Oil line and 24 V cable.

use crate::{Answer, Check, Compared, number, numbers, relative, within};
use pinfilm::supply::{self, Segment};

/// Printed values of a conductor class by cross-section.
fn conductors(check: &Check, classes: [i64; 2]) -> Vec<Compared> {
    let mut all = Vec::new();
    for (area, printed) in numbers(&check.inputs["mm2"]).into_iter().zip(numbers(check.expected)) {
        for class in classes {
            let ours = supply::conductor_resistance(area * 1e-6, class).map_or(f64::NAN, |r| 1e3 * r);
            all.push(within(format!("{area} mm² class {class}, ohm/km"), printed, ours, 1e-12 * printed));
        }
    }
    all
}

pub fn check(check: &Check) -> Answer {
    let (i, e) = (check.inputs, check.expected);
    Some(match check.id {
        "LIN-001" => {
            let (bore, mu) = (number(i, "d_m"), number(i, "mu"));
            let flow = number(i, "dp_Pa") / supply::line_resistance(number(i, "L_m"), bore, mu);
            vec![
                relative("flow m³/s", number(e, "Q_m3s"), flow, 1e-4),
                relative("Re", number(e, "Re"), supply::reynolds_number(flow, bore, number(i, "rho"), mu), 1e-4),
            ]
        }
        "LIN-002" => {
            // the mean speed is half the greatest
            let bore = number(i, "d_m");
            let flow = 0.5 * number(i, "vmax") * std::f64::consts::PI * bore * bore / 4.0;
            let gradient = supply::line_resistance(1.0, bore, number(i, "mu")) * flow;
            vec![
                within("gradient Pa/m", number(e, "dpdx"), gradient, 1e-9),
                within("wall shear Pa", number(e, "tau_w"), supply::wall_shear(gradient, bore), 1e-9),
            ]
        }
        "LIN-003" => {
            let segment = Segment { length: number(i, "L_m"), bore: number(i, "D_m"), flow: number(i, "Q_m3s") };
            let rho = number(i, "rho");
            let drop = supply::line_drop(&[segment], number(i, "nu_m2s") * rho, rho).ok()?;
            vec![
                relative("Re", number(e, "Re"), drop.reynolds, 1e-6),
                relative("friction factor", number(e, "darcy_f"), 64.0 / drop.reynolds, 1e-6),
                relative("drop Pa", number(e, "dp_Pa"), drop.pressure, 1e-6),
            ]
        }
        "LIN-005" => {
            let book = numbers(&e["textbook"]);
            vec![
                within("laminar limit", number(e, "fluids"), supply::LAMINAR_LIMIT, 0.0),
                within("within the textbooks' range", 0.5 * (book[0] + book[1]), supply::LAMINAR_LIMIT, 150.0),
            ]
        }
        "LIN-007" => {
            let length = supply::entrance_length(number(i, "Re"), number(i, "d_m"));
            vec![relative("entrance length m", e.as_f64()?, length, 1e-6)]
        }
        "ELE-001" => conductors(check, [1, 2]),
        "ELE-002" => conductors(check, [5, 6]),
        "ELE-004" => {
            let class = i["class"].as_i64()?;
            let ohm = supply::loop_resistance(number(i, "L_m"), number(i, "mm2") * 1e-6, class, number(i, "t_C"));
            let drop = supply::voltage_drop(number(i, "I_A"), ohm.ok()?);
            vec![
                relative("drop V", number(e, "drop_V"), drop, 1e-5),
                relative("drop %", number(e, "percent"), 100.0 * drop / 24.0, 1e-5),
            ]
        }
        "ELE-005" => numbers(&i["t_C"])
            .into_iter()
            .zip(numbers(e))
            .map(|(t, printed)| relative(format!("{t} °C"), printed, supply::temperature_factor(t), 1e-6))
            .collect(),
        _ => return None,
    })
}
