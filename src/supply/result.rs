//! What a result says of the oil supply.

use crate::noun;
use crate::quantity::Class;

macro_rules! supply_state_noun { ($declare:ident) => { $declare! {
    /// Oil used, and whether line, pump, reservoir and cable carry it.
    SupplyState / SupplyStateSi, "supply" {
        applied_l_per_year as applied: f64 [L_PER_YEAR] "oil that leaves the applicator" { formula: "shots or flow × points × {circuit.strands} × running share", source: "balance", class: Class::Derived }
        in_joints_l_per_year as in_joints: f64 [L_PER_YEAR] "oil that the joints take up and lose" { formula: "{fill.loss_rate_per_h} × {fill.mean_fill} × {fill.capacity_ul} × {kinematics.joints} × {circuit.strands}", source: "balance", class: Class::Derived }
        dripped_share as dripped_share: f64 [ONE] "share of the applied oil that drips" { formula: "1 − {supply.in_joints_l_per_year} / {supply.applied_l_per_year}", source: "balance", class: Class::Derived }
        reservoir_days as reservoir_time: Option<f64> [DAYS] "days until the reservoir wants oil" { formula: "0.95 × {supply.reservoir_l} × (1 − {supply.refill_share}) / ({supply.applied_l_per_year}/365)", source: "5 % heel from memory", class: Class::FromMemory }
        line_drop_kpa as line_drop: Option<f64> [KPA] "pressure drop of the line while oil flows, at its coldest" { formula: "128 η L Q/(π d⁴), η at {supply.coldest_c}", source: "Hagen-Poiseuille", class: Class::Derived }
        reynolds as reynolds: Option<f64> [ONE] "Reynolds number in the line" { symbol: "Re", formula: "4 ρ Q/(π d η)", source: "definition", class: Class::Derived }
        outlet_use as outlet_use: Option<f64> [ONE] "pressure needed over pump outlet pressure" { formula: "({supply.line_drop_kpa} + {supply.opening_pressure_kpa}) / ({supply.pump_ratio} × {supply.air_pressure_kpa} × {supply.pump_efficiency})", source: "balance", class: Class::Derived }
        vent_s as vent: Option<f64> [S] "time for the line to relax after a shot" { formula: "(4 R C/π²) ln(4 p₀/(π p_reset))", source: "slowest mode of diffusion", class: Class::Derived }
        injector_s as injector: Option<f64> [S] "time that an injector needs for one shot" { formula: "{supply.delivery_s} + {supply.vent_s}", source: "balance", class: Class::Derived }
        time_between_shots_s as time_between_shots: Option<f64> [S] "time from one shot to the next" { formula: "{lubrication.every_nth} × {kinematics.joint_time_s}", source: "definition", class: Class::Derived }
        cable_v as cable: Option<f64> [V] "voltage at the device while it runs" { formula: "(U + √(U² − 4 P R))/2", source: "IEC 60228 resistances; constant-power load", class: Class::Derived }
        cable_inrush_v as cable_inrush: Option<f64> [V] "voltage at the device while it switches on" { formula: "U R_l/(R + R_l)", source: "IEC 60228 resistances", class: Class::Derived }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use supply_state_noun;
supply_state_noun!(noun);
