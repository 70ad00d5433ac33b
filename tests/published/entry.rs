//! Oil entering gaps, and evaporation.

use crate::{Answer, Check, number, numbers, relative, within};
use pinfilm::lubrication::entry::{
    GRAVITY, Slot, annulus_resistance, capillary_pressure, capillary_rise, eccentric_annulus_factor, tube_entry_depth,
};
use pinfilm::lubrication::loss;

/// Molar gas constant, J/(mol K).
const GAS_CONSTANT: f64 = 8.314462618;

pub fn check(check: &Check) -> Answer {
    let (i, e) = (check.inputs, check.expected);
    Some(match check.id {
        "PEN-001" => {
            let slot = Slot {
                gap: number(i, "h"),
                viscosity: number(i, "eta"),
                surface_tension: number(i, "gamma"),
                contact_angle: number(i, "theta_deg").to_radians(),
                drive: 0.0,
                eccentricity: 0.0,
            };
            vec![relative("time s", e.as_f64()?, slot.entry_time(number(i, "x")), 1e-9)]
        }
        "PEN-003" => {
            let angle = number(i, "theta_deg").to_radians();
            let depth = tube_entry_depth(number(i, "t"), number(i, "r"), number(i, "eta"), number(i, "gamma"), angle);
            vec![relative("depth m", e.as_f64()?, depth, 1e-6)]
        }
        "PEN-004" => {
            let pressure = capillary_pressure(number(i, "h"), number(i, "gamma"), 0.0);
            vec![
                relative("capillary pressure Pa", number(e, "p_Pa"), pressure, 1e-5),
                relative("height m", number(e, "height_m"), capillary_rise(pressure, number(i, "rho"), GRAVITY), 1e-5),
            ]
        }
        "PEN-006" => numbers(&i["ecc_ratio"])
            .into_iter()
            .zip(numbers(e))
            .map(|(ecc, printed)| relative(format!("e = {ecc}"), printed, eccentric_annulus_factor(ecc), 1e-9))
            .collect(),
        "PEN-007" => {
            let (ro, ri) = (number(i, "ro"), number(i, "ri"));
            let flow = number(i, "dpdx") / annulus_resistance(ro + ri, ro - ri, 0.0, number(i, "mu"));
            vec![
                relative("thin film m³/s", number(e, "Q_thin"), flow, 1e-6),
                relative("exact m³/s", number(e, "Q_exact"), flow, 2e-3),
            ]
        }
        "OIL-052" => vec![
            within("temperature °C", number(e, "temperature_C"), loss::NOACK_TEMPERATURE, 0.0),
            within("duration min", number(e, "duration_min"), loss::NOACK_DURATION / 60.0, 0.0),
        ],
        "OIL-053" => {
            let per_second = loss::noack_rate(number(i, "noack_pct") / 100.0);
            let losses = loss::Losses { evaporation: per_second, ..Default::default() };
            vec![
                relative("rate 1/h", number(e, "k_per_h"), 3600.0 * per_second, 1e-6),
                relative("half life h", number(e, "half_life_h"), losses.half_life() / 3600.0, 1e-6),
            ]
        }
        "OIL-054" => {
            let celsius = number(i, "T_K") - 273.15;
            let flux = loss::free_evaporation_flux(number(i, "p_vap_Pa"), number(i, "M_kg_per_mol"), celsius);
            vec![relative("flux kg/(m² s)", e.as_f64()?, number(i, "alpha_evap") * flux, 1e-6)]
        }
        "OIL-057" => {
            // two-point Clausius-Clapeyron through the outer values must come within 8 % of the middle one
            let (t, p) = (numbers(&i["T_K"]), numbers(e));
            let heat = GAS_CONSTANT * (p[2] / p[0]).ln() / (1.0 / t[0] - 1.0 / t[2]);
            let middle = p[0] * loss::vapour_ratio(t[1] - 273.15, t[0] - 273.15, heat);
            vec![
                relative("vapour pressure at the middle, Pa", p[1], middle, 0.08),
                relative("two-point prediction, Pa", 6051.0, middle, 1e-3),
            ]
        }
        _ => return None,
    })
}
