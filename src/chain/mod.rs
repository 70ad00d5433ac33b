//! Chain: the standards' chains, pitch geometry, and what a sprocket's being a polygon does.
//!
//! Takes a designation (`ISO 606`, `16B`) and gives the dimensions that the standard fixes, each with its source;
//! takes pitch, teeth and radius and gives pitch circle, articulation angle, length of chain on a turn, speed and its
//! swing. A standard fixes what makes chains interchangeable: what it leaves to the maker (bush thickness, roller bore,
//! hardness) is empty here and must be measured or asked for. Knows nothing of loads, friction and oil.

mod from_standard; // a surveyed chain filled in from a standard
mod length; // two sprockets: length, centre distance
mod pitch_circle; // pitch diameter, articulation, chain on a turn, ride-out
mod polygon; // position error and polygon force
mod power_rating; // what the standard lets a transmission chain carry, for orientation
mod speed; // mean speed and its swing
mod standard; // the tables of the standards
mod survey; // what a survey says of the chain

pub use length::{centre_distance, chain_length, loop_length};
pub use pitch_circle::{
    articulation_angle, articulation_angle_smooth, chain_on_turn, measurement_over_pins, pitch_diameter,
    ride_out_elongation, root_diameter,
};
pub use polygon::{PolygonForce, Resonance, loop_stiffness, polygon_force, position_error};
pub use power_rating::roller_chain_power;
pub use speed::{chain_speed, chain_speed_limits, speed_drop, speed_ripple};
pub use standard::{Cited, NEW_CHAIN_LENGTH_TOLERANCE, Roller, Standard, StandardChain, standard, standards};
pub use survey::*;
