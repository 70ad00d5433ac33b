//! Three-phase power, power flow, equivalent circuits of textbooks, energy.

use crate::{Answer, Check, number, relative};
use pinfilm::drive::{EquivalentCircuit, OperatingPoint, PowerFlow, Supply, energy, three_phase};
use serde_json::Value;
use std::f64::consts::TAU;

const HOUR: f64 = 3600.0;
const KWH: f64 = 3.6e6;

fn circuit_at_slip(inputs: &Value, magnetising: &str, core_resistance: f64) -> OperatingPoint {
    let n = |key| number(inputs, key);
    let circuit = EquivalentCircuit {
        stator_resistance: n("R1"),
        stator_reactance: n("X1"),
        rotor_resistance: n("R2"),
        rotor_reactance: n("X2"),
        magnetising_reactance: n(magnetising),
        core_resistance,
        friction_windage: n("P_rot"),
        stray_loss: 0.0,
        stray_current: 1.0,
    };
    circuit.on(&Supply { voltage: n("V_line"), frequency_ratio: 1.0 }).at_slip(n("s"))
}

pub fn check(check: &Check) -> Answer {
    let (i, e) = (check.inputs, check.expected);
    let input = |key| number(i, key);
    let compare = |share: f64, pairs: &[(&str, f64)]| {
        Some(pairs.iter().map(|(key, ours)| relative(*key, number(e, key), *ours, share)).collect())
    };
    match check.id {
        "PUL-010" => {
            let year = energy([(input("P_elec_W"), input("h_per_year") * HOUR)]) / KWH;
            Some(vec![relative("kWh", e.as_f64()?, year, 1e-6)])
        }
        "ELE-007" => {
            let load = three_phase(input("U"), input("I"), input("pf"));
            let year = energy([(load.active, input("h") * HOUR)]) / KWH;
            compare(
                1e-6,
                &[
                    ("P_kW", load.active / 1e3),
                    ("kWh", year),
                    ("S_kVA", load.apparent / 1e3),
                    ("Q_kvar", load.reactive / 1e3),
                ],
            )
        }
        "ELE-008" => {
            let active = three_phase(input("U"), input("I"), input("pf")).active;
            let flow = PowerFlow::new(active, input("scl"), input("core"), input("rcl"), input("fw"), input("stray"));
            compare(
                0.005,
                &[
                    ("Pin_kW", active / 1e3),
                    ("Pag_kW", flow.air_gap / 1e3),
                    ("Pconv_kW", flow.converted / 1e3),
                    ("Pout_kW", flow.shaft / 1e3),
                    ("hp", flow.shaft / 745.7),
                    ("eff_pct", flow.efficiency * 100.0),
                ],
            )
        }
        "ELE-010" => {
            let point = circuit_at_slip(i, "XM", f64::INFINITY);
            let synchronous = TAU * 60.0 / 2.0;
            let speed = synchronous * (1.0 - point.slip);
            compare(
                1e-5,
                &[
                    ("I1_A", point.current),
                    ("angle_deg", -point.power_factor.acos().to_degrees()),
                    ("pf", point.power_factor),
                    ("Pin_W", point.input_power),
                    ("Pscl_W", point.stator_copper_loss),
                    ("Pag_W", point.air_gap_power),
                    ("Pconv_W", point.converted_power),
                    ("Pout_W", point.shaft_power),
                    ("T_ind_Nm", point.air_gap_power / synchronous),
                    ("T_load_Nm", point.shaft_power / speed),
                    ("eff", point.efficiency()),
                    ("n_rpm", speed * 60.0 / TAU),
                ],
            )
        }
        "ELE-012" => {
            let point = circuit_at_slip(i, "XM", f64::INFINITY);
            let speed = TAU * input("f") / (input("poles") / 2.0) * (1.0 - point.slip);
            compare(
                0.003,
                &[
                    ("n_rpm", speed * 60.0 / TAU),
                    ("I1_A", point.current),
                    ("pf", point.power_factor),
                    ("T_shaft_Nm", point.shaft_power / speed),
                    ("P_shaft_W", point.shaft_power),
                    ("eff_pct", point.efficiency() * 100.0),
                ],
            )
        }
        "ELE-014" => {
            let point = circuit_at_slip(i, "Xm", input("Rc"));
            compare(1e-4, &[("eff", point.efficiency()), ("I1_A", point.current), ("pf", point.power_factor)])
        }
        _ => None,
    }
}
