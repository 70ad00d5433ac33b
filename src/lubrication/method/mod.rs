//! The four methods: what each brings into a joint at a pass, how long joints wait, what it spills.
//!
//! Synchronised: one metered shot into the gap of every n-th joint. Timed spray: a flow while the timer runs. Drip: drops
//! that a passing joint may or may not catch. Manual: a round with brush or can at irregular intervals.
//! All doses are m³ into one joint; `applied` is m³/s of running time for the whole line.

mod drip;
mod handbook;
mod manual;
mod timed;

pub use drip::Drip;
pub use handbook::handbook_methods;
pub use manual::Manual;
pub use timed::{Spray, Synchronised, never_reached, synchronised_wait, timed_waits};

/// Where the applied oil goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OilUse {
    /// Applied to the line, m³/s of running time.
    pub applied: f64,
    /// Kept by the joints, m³/s of running time.
    pub in_joints: f64,
    /// Share that drips or flies off.
    pub dripped: f64,
}

/// Oil that `joints` joints (all strands) keep: what they lose at their mean fill.
///
/// `mean_fill` of the loop, share of `capacity` (m³); `loss_rate` 1/s; `applied` m³/s. Exact once settled.
pub fn oil_use(applied: f64, loss_rate: f64, mean_fill: f64, capacity: f64, joints: f64) -> OilUse {
    let in_joints = loss_rate * mean_fill * capacity * joints;
    let dripped = if applied > 0.0 { 1.0 - in_joints / applied } else { 0.0 };
    OilUse { applied, in_joints, dripped }
}

/// Applied oil of a timer on wall time that is not stopped with the line: it runs on in stops.
pub fn applied_in_stops(applied: f64, running_share: f64) -> f64 {
    applied / running_share
}
