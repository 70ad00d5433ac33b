//! Entry: how oil gets from the side plate through the plate gap into the bush, which viscosity can, and what is held.
//!
//! Takes gaps, surface tension, viscosity and the time there is; gives the time needed, the share that has entered,
//! the window of viscosities that get in and stay, and the width of oil the plate gap holds against gravity.
//! Assumes a Newtonian oil that waits at the gap and air that can leave. The spread of an entry time is about a
//! factor of 2.

mod joint;
mod retention;
mod slot;
mod window;

pub use joint::{JointEntry, annulus_resistance};
pub use retention::retained_width;
pub use slot::{
    Slot, capillary_pressure, capillary_rise, disc_entry_time, eccentric_annulus_factor, gravity_along,
    tube_entry_depth,
};
pub use window::{Bound, Choice, Grade, Window, film_viscosity, most_viscous, pumping_viscosity};

/// Standard gravity, m/s² (ISO 80000-3; defined by the 3rd CGPM, 1901).
pub const GRAVITY: f64 = 9.80665;
