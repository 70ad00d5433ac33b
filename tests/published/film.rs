//! Journal bearings in closed form, squeeze, line contacts, asperities, regimes.

use crate::{Answer, Check, number, numbers, relative, within};
use pinfilm::joint::{
    Eccentricity, LineContactFormula, Pair, REGIME_BOUNDS, Regime, STEEL, SqueezeFilm, asperity_integral,
    attitude_short, conformal_radius, entraining_speed, line_contact_film, long_bearing_attitude,
    long_bearing_friction_full, long_bearing_load, long_bearing_load_full, long_bearing_sommerfeld, ring_drag,
    sommerfeld_short, squeeze_resistance_short, squeeze_time_disc, squeeze_time_short,
};
use std::f64::consts::PI;

pub fn check(check: &Check) -> Answer {
    let (input, printed) = (check.inputs, check.expected);
    let get = |key: &str| number(input, key);
    let eccentricities = || numbers(&input["eps"]).into_iter().map(Eccentricity::from_ratio);
    Some(match check.id {
        "BRG-036" | "BRG-037" | "BRG-039" | "BRG-040" | "BRG-041" | "BRG-043" => {
            let e = Eccentricity::from_ratio(get("eps"));
            vec![
                relative("S (L/D)²", number(printed, "S_LD2"), sommerfeld_short(e, 1.0), 1e-5),
                relative("attitude angle", number(printed, "phi_deg"), attitude_short(e).to_degrees(), 1e-5),
            ]
        }
        "BRG-044" | "BRG-046" => {
            let e = Eccentricity::from_ratio(get("eps"));
            let full = long_bearing_sommerfeld(long_bearing_load_full(e));
            let half = long_bearing_sommerfeld(long_bearing_load(e));
            vec![
                relative("S, film all round", number(printed, "S_full"), full, 1e-5),
                relative("S, half film", number(printed, "S_half"), half, 1e-5),
                relative("(r/c) f", number(printed, "rf_over_c_full"), long_bearing_friction_full(e), 1e-5),
                relative(
                    "attitude angle",
                    number(printed, "phi_half_deg"),
                    long_bearing_attitude(e).to_degrees(),
                    1e-5,
                ),
            ]
        }
        "BRG-047" => {
            // friction force over load of a concentric bearing, in Sommerfeld's number: any bearing will do
            let (viscosity, speed, radius, clearance, length, load) = (0.1, 3.0, 0.02, 3e-5, 0.04, 50.0);
            let force = viscosity * speed * radius * length * radius * ring_drag(clearance, clearance);
            let pressure = load / (2.0 * radius * length);
            let s = viscosity * speed / (2.0 * PI) / pressure * (radius / clearance).powi(2);
            vec![relative("(r/c) f / S", printed.as_f64()?, radius / clearance * force / load / s, 1e-6)]
        }
        "BRG-048" => {
            let speed = 2.0 * PI * get("N_rps");
            let (radius, gap) = (get("r_m"), get("gap_m"));
            let torque = get("mu") * speed * radius * get("L_m") * radius * ring_drag(gap, gap) * radius;
            vec![
                relative("drag torque", number(printed, "T_Nm"), torque, 1e-5),
                relative("power", number(printed, "P_W"), torque * speed, 1e-5),
            ]
        }
        "BRG-049" => pairs("I", &numbers(printed), eccentricities().map(squeeze_resistance_short), 1e-6),
        "BRG-051" => {
            let (from, to) = (Eccentricity::from_ratio(get("e1")), Eccentricity::from_ratio(get("e2")));
            let full = SqueezeFilm::Full;
            let pair = Pair {
                radius: get("R"),
                radial_clearance: get("c"),
                length: get("L"),
                conformity: 1.0,
                elasticity: STEEL,
            };
            let time = squeeze_time_short(&pair, get("mu"), get("W"), from, to, full);
            vec![relative("squeeze time", printed.as_f64()?, time, 1e-6)]
        }
        "BRG-052" => {
            let mobility = eccentricities().map(|e| 0.5 / squeeze_resistance_short(e));
            pairs("M (L/D)²", &numbers(printed), mobility, 1e-5)
        }
        "BRG-054" => {
            let loads = numbers(&input["N_load"]);
            let speeds = loads.iter().map(|load| entraining_speed(get("N_j"), get("N_b"), *load));
            numbers(printed).iter().zip(speeds).map(|(p, ours)| within("entraining speed", *p, ours, 0.0)).collect()
        }
        "BRG-055" => {
            let time = squeeze_time_disc(get("mu"), get("R"), get("W"), get("h1"), get("h2"));
            vec![relative("squeeze time of a disc", printed.as_f64()?, time, 1e-6)]
        }
        "BRG-057" => {
            // U, W and G with a modulus and a radius of one
            let film = |formula| line_contact_film(get("U"), 1.0, get("W"), 1.0, get("G"), 1.0, formula);
            [
                ("H_DH_min", LineContactFormula::DowsonHigginson),
                ("H_min", LineContactFormula::Smallest),
                ("H_c", LineContactFormula::Central),
            ]
            .into_iter()
            .map(|(key, formula)| relative(key, number(printed, key), film(formula), 1e-4))
            .collect()
        }
        "BRG-059" => {
            let clearance = get("r_bush_mm") - get("r_pin_mm");
            vec![relative("reduced radius", printed.as_f64()?, conformal_radius(get("r_pin_mm"), clearance), 1e-5)]
        }
        "BRG-060" | "BRG-061" | "BRG-063" | "BRG-064" | "BRG-066" | "BRG-067" => {
            let h = get("h_over_sigma");
            vec![
                relative("F_5/2", number(printed, "F52"), asperity_integral(h, 2.5), 1e-4),
                relative("F_2", number(printed, "F2"), asperity_integral(h, 2.0), 1e-4),
            ]
        }
        "BRG-068" => {
            // the printed values of the fit and how far the source says they lie from the integral
            let deviations = [-0.11, -0.035, -0.09, -0.74];
            let fit = numbers(printed);
            numbers(&input["lambda"])
                .iter()
                .zip(fit.iter().zip(deviations))
                .map(|(h, (fit, deviation))| {
                    within("deviation of the power fit", deviation, fit / asperity_integral(*h, 2.5) - 1.0, 0.005)
                })
                .collect()
        }
        "BRG-069" => {
            // "<1" boundary, "1-3" mixed at its narrowest
            let bound = |text: &str| text.rsplit(['<', '-']).next().and_then(|t| t.trim_end_matches(')').parse().ok());
            let (below, mixed) = (bound(printed["boundary"].as_str()?)?, bound(printed["mixed"].as_str()?)?);
            let is = |lambda: f64, regime: Regime| f64::from(u8::from(Regime::of(lambda) == regime));
            vec![
                within("boundary below", below, REGIME_BOUNDS.0, 0.0),
                within("mixed up to", mixed, REGIME_BOUNDS.1, 0.0),
                within("boundary at 0.99", 1.0, is(0.99, Regime::Boundary), 0.0),
                within("mixed at 2", 1.0, is(2.0, Regime::Mixed), 0.0),
                within("full film at 10", 1.0, is(10.0, Regime::Full), 0.0),
            ]
        }
        _ => return None,
    })
}

fn pairs(what: &str, printed: &[f64], ours: impl Iterator<Item = f64>, share: f64) -> Vec<crate::Compared> {
    printed.iter().zip(ours).map(|(printed, ours)| relative(what, *printed, ours, share)).collect()
}
