//! Three-phase cage induction motor: from its nameplate to slip, current and power at any voltage and frequency, and from
//! a current back to the load as far as a current can tell.

mod energised; // the circuit at one voltage and frequency: slip ⇄ power → current, in closed form
mod equivalent_circuit; // resistances, reactances and fixed losses
mod fit; // equivalent circuit from the nameplate
mod inverse; // current → power
mod losses; // what the plate fixes before the leakage is known
mod nameplate; // what the plate says, and what it leaves open
mod quadrature;
mod shaft; // speed and torque of the shaft // a table's shortcut: active and magnetising current, and back

pub use energised::{Energised, OperatingPoint, Sensitivity};
pub use equivalent_circuit::{EquivalentCircuit, Supply};
pub use fit::Motor;
pub use nameplate::{Leakage, LossSplit, Measured, Nameplate};
pub use quadrature::{Quadrature, Reading};
pub use shaft::{ShaftState, angular_speed, synchronous_speed};
