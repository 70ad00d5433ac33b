//! Drive: from the power that the chain takes to the current that a clamp reads.
//!
//! Takes the power at the sprocket, the gear's efficiency and the motor's nameplate; gives shaft power, slip, current,
//! input power, power factor, what one newton of pull does to the current, and whether a log could see it. A gear
//! loses power even when idle, and the current of a lightly loaded motor is nearly all magnetising current, so neither
//! constant efficiency nor "current is load" holds on the half-empty drives of most conveyors.
//!
//! Knows nothing of chains, friction or money. Three-phase cage induction motors only.

mod clamp; // which current the clamp sees: the motor's, or the line's before a converter
mod detect; // least change that two samples of a noisy log can prove
mod energy; // three-phase powers, power flow through a motor, energy over operating states
mod gear; // part-load loss, driving and overhauling
mod load; // chain power → gear → motor: all that the drive reports
mod motor; // nameplate → circuit → slip, current, power
mod result; // what a result says of the drive
mod survey; // what a survey says of it

pub use clamp::{Clamp, current_before_converter};
pub use detect::{TWO_SIDED_5_POWER_80, effective_count, least_detectable_change};
pub use energy::{PowerFlow, ThreePhase, energy, three_phase};
pub use gear::Gear;
pub use load::{BREAKAWAY_CAUTION, Load, Running, breakaway_share, load};
pub use motor::{
    Energised, EquivalentCircuit, Leakage, LossSplit, Measured, Motor, Nameplate, OperatingPoint, Quadrature, Reading,
    Sensitivity, ShaftState, Supply, angular_speed, synchronous_speed,
};
pub use result::*;
pub use survey::*;
