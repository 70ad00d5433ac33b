//! What a survey says of the oil supply.

use crate::quantity::{Class, between, up_to};
use crate::{choice, noun};

choice! {
    /// What an electrical device looks like while it switches on.
    Inrush {
        /// Valves and solenoids.
        Resistive = "resistive",
        /// Electronic converters.
        ConstantPower = "constant_power",
    }
}

macro_rules! supply_noun { ($declare:ident) => { $declare! {
    /// Reservoir, pump, line and 24 V cable. What is not given is not computed.
    Supply / SupplySi, "supply" {
        line_length_m as line_length: Option<f64> [M = None] "length of the oil line" { allowed: up_to(0.0, 1000.0) }
        line_bore_mm as line_bore: Option<f64> [MM = None] "bore of the oil line" { allowed: between(0.5, 100.0) }
        delivery_s as delivery: Option<f64> [S = None] "time in which a shot is delivered" { allowed: up_to(0.0, 600.0) }
        coldest_c as coldest: Option<f64> [C = None] "lowest temperature of the line" { allowed: between(-60.0, 150.0) }
        pump_ratio as pump_ratio: Option<f64> [ONE = None] "oil pressure over air pressure of the pump" { allowed: up_to(0.0, 200.0) }
        air_pressure_kpa as air_pressure: Option<f64> [KPA = None] "air pressure at the pump" { allowed: up_to(0.0, 2000.0), usual: between(200.0, 1000.0) }
        pump_efficiency as pump_efficiency: f64 [ONE = 0.85] "share of the ratio that the pump reaches" { allowed: between(0.05, 1.0), class: Class::FromMemory }
        opening_pressure_kpa as opening_pressure: f64 [KPA = 0.0] "pressure that opens the injector or nozzle" { allowed: between(0.0, 50000.0) }
        reset_pressure_kpa as reset_pressure: Option<f64> [KPA = None] "pressure to which the line must fall before the next shot" { allowed: up_to(0.0, 50000.0) }
        bulk_modulus_gpa as bulk_modulus: f64 [GPA = 1.4] "bulk modulus of the oil" { symbol: "K", allowed: between(0.1, 5.0), class: Class::FromMemory }
        hose_compliance_per_gpa as hose_compliance: f64 [PER_GPA = 0.2] "relative swelling of the line" { allowed: between(0.0, 100.0), class: Class::FromMemory }
        reservoir_l as reservoir: Option<f64> [L = None] "volume of the reservoir" { allowed: up_to(0.0, 10000.0) }
        refill_share as refill_share: f64 [ONE = 0.2] "share of the volume at which it is refilled" { allowed: between(0.0, 0.95), class: Class::CommonPractice }
        cable_length_m as cable_length: Option<f64> [M = None] "length of the 24 V cable, one way" { allowed: up_to(0.0, 2000.0) }
        cable_mm2 as cable_area: Option<f64> [MM2 = None] "cross-section of one conductor" { allowed: between(0.5, 16.0) }
        conductor_class as conductor_class: i64 [ONE = 5] "conductor class: 1 or 2 solid and stranded, 5 or 6 flexible" { allowed: between(1.0, 6.0), source: "IEC 60228", class: Class::Read }
        cable_temperature_c as cable_temperature: f64 [C = 40.0] "temperature of the cable" { allowed: between(-60.0, 150.0) }
        device_power_w as device_power: Option<f64> [W = None] "power of the 24 V device while it runs" { allowed: up_to(0.0, 5000.0) }
        inrush_factor as inrush_factor: f64 [ONE = 3.0] "power while it switches on over running power" { allowed: between(1.0, 20.0), class: Class::FromMemory }
        inrush as inrush: Inrush [WORD = Inrush::Resistive] "what it looks like while it switches on: resistive or constant_power" {}
        supply_voltage_v as supply_voltage: f64 [V = 24.0] "voltage at the feeding end" { allowed: between(5.0, 60.0) }
        least_voltage_v as least_voltage: f64 [V = 20.4] "least voltage at the device" { allowed: between(1.0, 60.0), class: Class::FromMemory, source: "24 V less 15 %" }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use supply_noun;
supply_noun!(noun);
