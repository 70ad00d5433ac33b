//! Joint: what goes on between a pin and its bush, and between a bush and its roller.
//!
//! Takes a pair of steel cylinders, their surfaces, the oil at the temperature of the joint, a load and a motion; gives
//! contact, film, how film and asperities share the load, and friction at any fill. It knows nothing of circuits and of
//! grades of oil: viscosities come in as numbers. What it finds for nearly every loaded chain joint is boundary
//! lubrication: there the presence of oil and its additives decide friction and wear, and viscosity decides whether the
//! oil gets in and stays.
//!
//! [`articulating`] and [`rolling`] make a [`Contact`] of an oil-filled pair; [`Contact::friction`] asks it at a fill.
//! The `…_in_full` forms also compute what turned out not to count. The rest are the formulas that these are made of.
//!
//! ```
//! use pinfilm::joint::{Lubricant, Pair, RoughSurface, Turn, articulating};
//! let pair = Pair::new(0.0100, 0.0101, 0.034, 1.0)?;
//! let surface = RoughSurface {
//!     roughness: 0.8e-6,
//!     asperity_stiffness: 134.1e6,
//!     dry_friction: 0.30,
//!     boundary_fill: 0.10,
//!     starvation_exponent: 1.0,
//!     film_factor: 1.0,
//! };
//! let oil =
//!     Lubricant { viscosity: 0.2, pressure_viscosity: 2.8e-8, boundary_friction: 0.12, limiting_friction: 0.06 };
//! let turn = Turn { angular_speed: 1.26, angle: 0.63, rest_time: 75.0, rest_load: 4000.0 };
//! let contact = articulating(&pair, &surface, &oil, 5000.0, &turn, |pressure| Ok(0.2 * (2e-8 * pressure).exp()))?;
//! let friction = contact.friction(0.3, &surface, &oil)?;
//! assert!(friction.lambda < 0.1 && friction.coefficient > 0.12);
//! # Ok::<(), pinfilm::Error>(())
//! ```

mod arc;
mod asperity;
mod contact;
mod film;
mod friction;
mod mixed;
pub mod orbit;
mod pair;
mod pressure;
mod result;
pub mod reynolds;
mod sharing;
mod survey;

pub use arc::{ContactArc, HARDEST_CONTACT};
pub use asperity::{asperity_integral, asperity_stiffness, combined_roughness};
pub use contact::{Cautions, Contact, articulating, articulating_in_full, articulating_near, rolling, rolling_in_full};
pub use film::*;
pub use friction::{REGIME_BOUNDS, boundary_friction, flash_temperature, friction_work, ring_drag, roller_friction};
pub use mixed::{Friction, LEAST_FRICTION};
pub use pair::{Elasticity, Lubricant, Pair, RoughSurface, STEEL, Turn};
pub use pressure::{bearing_pressure, permissible_pressure, pin_sag};
pub use result::*;
pub use sharing::{Sharing, height_ratio, share_load};
pub use survey::*;

#[cfg(test)]
mod tests;
