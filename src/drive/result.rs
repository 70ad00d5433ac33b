//! What a result says of the drive.

use crate::noun;
use crate::quantity::Class;

const CIRCUIT: &str =
    "equivalent circuit of the induction motor, fitted to its nameplate (fit is a closure of our own)";

macro_rules! drive_state_noun { ($declare:ident) => { $declare! {
    /// Power, current and energy.
    DriveState / DriveStateSi, "drive" {
        chain_power_w as chain_power: f64 [W] "power at the drive sprocket" { formula: "{tension.pull_n} × {duty.speed_m_per_min}", source: "definition", class: Class::Derived }
        shaft_power_w as shaft_power: f64 [W] "power at the motor's shaft" { symbol: "P_m", formula: "P (1 + k) + P₀, k and P₀ from {drive.gear_efficiency} and {drive.gear_fixed_share}; P = {drive.chain_power_w}", source: "constant and load losses of a gear (split is a closure)", class: Class::Closure }
        load as load: f64 [ONE] "shaft power over rated power" { formula: "{drive.shaft_power_w} / {drive.rated_power_kw}", source: "definition", class: Class::Derived }
        current_a as current: Option<f64> [A] "current where the clamp sits" { symbol: "I", formula: "circuit at slip {drive.slip}; before a converter P₁/(η √3 U λ)", source: CIRCUIT, class: Class::Closure }
        input_power_w as input_power: Option<f64> [W] "electrical power" { symbol: "P₁", formula: "3 U Re(I) at slip {drive.slip}", source: CIRCUIT, class: Class::Closure }
        power_factor as power_factor: Option<f64> [ONE] "power factor" { formula: "Re(I)/|I|", source: CIRCUIT, class: Class::Closure }
        slip as slip: Option<f64> [ONE] "slip" { symbol: "s", formula: "shaft power of the circuit = {drive.shaft_power_w}", source: CIRCUIT, class: Class::Closure }
        no_load_current_a as no_load_current: f64 [A] "current of the uncoupled motor" { symbol: "I₀", formula: "circuit at no shaft power, or {drive.no_load_current_a}", source: CIRCUIT, class: Class::Closure }
        current_per_pull_a_per_n as current_per_pull: Option<f64> [A_PER_N] "change of current with pull" { symbol: "dI/dF", formula: "dI/dP × {duty.speed_m_per_min} × (1 + k)", source: CIRCUIT, class: Class::Closure }
        energy_kwh_per_year as energy: f64 [KWH_PER_YEAR] "electrical energy of a year" { formula: "{drive.input_power_w} × {kinematics.running_h_per_year}", source: "definition", class: Class::Derived }
        pull_detectable_n as pull_detectable: Option<f64> [N] "least change of pull that a month of logged current could show on each side" { formula: "z √(σ² (1/n₁ + 1/n₂) + 2 σ_sys²) / (dI/dF); σ 1 % and σ_sys 0.3 % of {drive.rated_current_a}, 2000 readings each, autocorrelation 0.9", source: "two-sample test, 5 % two-sided, power 80 %", class: Class::CommonPractice }
        current_drop_joint_a as current_drop_joint: Option<f64> [A] "fall of current if pin/bush friction alone were halved" { formula: "march, gear and motor again with half of {joint.mu_joint}", source: CIRCUIT, class: Class::Closure }
        current_drop_all_a as current_drop_all: Option<f64> [A] "fall of current if pin/bush, bush/roller and plate/track friction were all halved" { formula: "march, gear and motor again with half of each", source: CIRCUIT, class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use drive_state_noun;
drive_state_noun!(noun);
