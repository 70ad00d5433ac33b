//! What a survey says of the drive.

use crate::quantity::{Class, Spread, between, up_to};
use crate::{choice, noun};

choice! {
    /// Where the current is measured.
    MeasuredAt {
        /// Between supply (or converter) and motor.
        Motor = "motor",
        /// Before the converter.
        BeforeConverter = "before_converter",
    }
}

macro_rules! drive_noun { ($declare:ident) => { $declare! {
    /// A three-phase cage induction motor by its nameplate, its gear, and how the current is measured.
    Drive / DriveSi, "drive" {
        rated_power_kw as rated_power: f64 [KW] "rated shaft power" { symbol: "P_r", allowed: up_to(0.0, 1000.0) }
        rated_voltage_v as rated_voltage: f64 [V] "rated line voltage of the connection in use" { symbol: "U_r", allowed: between(50.0, 1000.0) }
        rated_current_a as rated_current: f64 [A] "rated line current of the connection in use" { symbol: "I_r", allowed: up_to(0.0, 5000.0) }
        rated_speed_rpm as rated_speed: f64 [RPM] "rated speed" { symbol: "n_r", allowed: between(100.0, 3600.0) }
        rated_efficiency as rated_efficiency: f64 [ONE] "rated efficiency of the motor" { symbol: "η_r", allowed: between(0.05, 0.999), spread: Spread::Loss(1.0, 1.15), class: Class::FromMemory, source: "IEC 60034-1 tolerances" }
        rated_power_factor as rated_power_factor: f64 [ONE] "rated power factor" { symbol: "cos φ", allowed: between(0.05, 0.999), source: "IEC 60034-1 tolerances", class: Class::FromMemory }
        rated_frequency_hz as rated_frequency: f64 [HZ = 50.0] "rated frequency" { allowed: between(10.0, 100.0), class: Class::CommonPractice, source: "50 Hz mains" }
        gear_efficiency as gear_efficiency: f64 [ONE] "efficiency of the gear at its rated load"
            { symbol: "η_g", allowed: between(0.05, 1.0), spread: Spread::Loss(0.5, 2.0), class: Class::FromMemory }
        gear_fixed_share as gear_fixed_share: f64 [ONE = 0.5] "share of the gear's loss that does not depend on load"
            { symbol: "φ", allowed: between(0.0, 1.0), spread: Spread::Uniform(0.3, 0.7), class: Class::Closure,
              source: "churning, seals and bearings against friction of the teeth; level by judgement" }
        gear_rated_power_kw as gear_rated_power: Option<f64> [KW = None] "rated power of the gear; not given: that of the motor" { allowed: up_to(0.0, 5000.0) }
        gear_extra_efficiency as gear_extra_efficiency: f64 [ONE = 1.0] "efficiency of a further belt or chain between gear and sprocket" { allowed: between(0.05, 1.0) }
        no_load_current_a as no_load_current: Option<f64> [A = None] "measured current of the uncoupled motor" { symbol: "I₀", allowed: up_to(0.0, 5000.0) }
        empty_current_a as empty_current: Option<f64> [A = None] "measured current of the running line without product" { allowed: up_to(0.0, 5000.0) }
        locked_rotor_torque_ratio as locked_rotor_torque_ratio: Option<f64> [ONE = None] "starting torque over rated torque, from the motor's data" { allowed: up_to(0.0, 10.0) }
        supply_voltage_v as supply_voltage: Option<f64> [V = None] "actual line voltage; not given: rated" { allowed: between(20.0, 1200.0) }
        frequency_hz as frequency: Option<f64> [HZ = None] "actual frequency; not given: rated" { allowed: between(1.0, 120.0) }
        converter as converter: bool [WORD = false] "whether a frequency converter feeds the motor" {}
        current_measured_at as current_measured_at: MeasuredAt [WORD = MeasuredAt::Motor] "where the clamp sits: motor or before_converter" {}
        converter_efficiency as converter_efficiency: f64 [ONE = 0.97] "efficiency of the converter" { allowed: between(0.5, 1.0), spread: Spread::Uniform(0.94, 0.98), class: Class::FromMemory }
        line_power_factor as line_power_factor: f64 [ONE = 0.90] "true power factor before the converter: 0.90 with a choke, 0.60 to 0.70 without"
            { allowed: between(0.3, 1.0), spread: Spread::Uniform(0.55, 0.95), class: Class::FromMemory }
        leakage_pu as leakage: f64 [ONE = 0.20] "leakage reactance over base impedance, where no no-load current was measured"
            { allowed: between(0.02, 0.40), spread: Spread::Uniform(0.10, 0.28), class: Class::Closure,
              source: "stator and rotor leakage of small cage motors; level by judgement; a measured no-load current replaces it" }
        core_share as core_share: f64 [ONE = 0.40] "share of core loss in the constant losses" { allowed: between(0.0, 1.0), spread: Spread::Uniform(0.2, 0.6), class: Class::Closure,
              source: "splits the loss that is left into core and stator winding; level by judgement" }
        friction_windage_share as friction_windage_share: f64 [ONE = 0.10] "share of friction and windage in the losses" { allowed: between(0.0, 1.0), spread: Spread::Uniform(0.05, 0.2), class: Class::Closure,
              source: "share of the nameplate's whole loss; level by judgement" }
        stray_factor as stray_factor: f64 [ONE = 1.0] "stray load loss over its assigned value" { allowed: between(0.0, 3.0), spread: Spread::Uniform(0.3, 1.0), class: Class::FromMemory, source: "IEC 60034-2-1 assigned values" }
        measured_current_a as measured_current: Option<f64> [A = None] "current read on the running line, if known" { allowed: up_to(0.0, 5000.0) }
        measured_power_kw as measured_power: Option<f64> [KW = None] "electrical power read on the running line, if known" { allowed: up_to(0.0, 5000.0) }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use drive_noun;
drive_noun!(noun);
