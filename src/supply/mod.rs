//! Supply: whether the oil gets from the reservoir to the chain, and the 24 V to the injectors.
//!
//! Takes line, pump, reservoir and cable with the viscosity of the coldest oil; gives pressure drop, Reynolds number,
//! the share of the pump's outlet pressure in use, venting time, days between refills, and voltage and current at the
//! load. Knows nothing of the chain.

mod cable;
mod conductor;
mod line;
mod pump;
mod result;
mod survey;

pub use cable::{Load, constant_power_load, loop_resistance, resistive_load, voltage_drop};
pub use conductor::{Conductor, conductor_resistance, temperature_factor};
pub use line::{
    LAMINAR_LIMIT, LineDrop, Segment, entrance_length, least_bore, line_drop, line_resistance, reynolds_number,
    vent_time, wall_shear,
};
pub use pump::{injector_time, outlet_pressure, outlet_use, reservoir_time};
pub use result::*;
pub use survey::*;
