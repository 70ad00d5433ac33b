//! Oil films between a pin and its bush: how thick, from speed, load, viscosity and time.
//!
//! Rigid films (short bearing, bearing of finite length, a turn and the rest before it) and the film between elastically
//! flattened surfaces (line contact). The short bearing is the textbook one: for chain joints, which are longer than
//! wide and loaded on a narrow strip, it overstates the film many times, so it is here to be compared with.

mod articulation;
mod finite_bearing;
mod growth;
mod line_contact;
mod long_bearing;
mod newton;
mod short_bearing;

pub(super) use articulation::{Rigid, RigidJoint, Roots};
pub use articulation::{TurnFilm, turn_film};
pub(super) use finite_bearing::short_over_finite;
pub use finite_bearing::{
    finite_bearing_eccentricity, finite_bearing_load, finite_squeeze_eccentricity, finite_squeeze_time,
};
pub use growth::coverage;
pub use line_contact::{LineContactFormula, conformal_radius, line_contact_film};
pub use long_bearing::{
    long_bearing_attitude, long_bearing_friction_full, long_bearing_load, long_bearing_load_full,
    long_bearing_sommerfeld,
};
pub use short_bearing::{
    Eccentricity, SqueezeFilm, attitude_short, eccentricity_short, entraining_speed, short_bearing_load,
    sommerfeld_short, squeeze_resistance_short, squeeze_time_disc, squeeze_time_short,
};
