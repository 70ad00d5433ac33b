//! Wear: how much of pin and bush a joint loses, and when the chain is long enough to be replaced.
//!
//! Every articulation under load rubs the pin in its bush and takes a little metal off both; the pitch grows by what
//! the two have lost, and a chain that has grown too long climbs its sprockets. Takes the events of one joint in one
//! circuit (tension, angle, temperature, film), the classes of joints by how long they wait for oil, and the measures
//! and hardness of the joint; gives elongation against running time, the lives, and which of them governs.
//!
//! The way through: [`WearCoefficients`] and [`Event`]s of a [`Class`] give its wear coefficient, averaged over the age
//! of its oil; with [`CircuitWork`] that is a rate of wear work; [`WornJoint`] turns work into depth through case and
//! core; [`WearingChain`] puts the classes together.
//!
//! Knows nothing of oil grades, methods, prices or calendars: fill, loss rate, waits and film ratio come in as numbers,
//! and times are running seconds. Archard's law has no threshold of pressure: seizure, galling and corrosion are not in
//! it, and an uncalibrated life is an order of magnitude.

mod archard;
mod class;
mod coefficient;
mod contact_arc;
mod hardened_case;
mod life;
mod limit;
mod result;
mod running_in;
mod survey;
mod unlubricated;
mod waiting;

pub use archard::{
    FLANK_ARC, FLANK_SLIP, archard_volume, roller_bush_depth, roller_sliding, sprocket_flank_depth, sprocket_sliding,
};
pub use class::{CircuitWork, Class, Event, check_shares, class_coefficient, event_coefficients};
pub use coefficient::{
    CoefficientLaw, GREATEST_COEFFICIENT, OiledJoint, TEMPERING_TEMPERATURE, WearCoefficients, boundary_layer_survival,
    fill_effect, hardness_factor,
};
pub use contact_arc::{tangent_of_half_arc, worn_area, worn_depth};
pub use hardened_case::{Body, Depths, JointGeometry, WornJoint};
pub use life::{Lives, NO_LIMIT_YEARS, WearingChain, WearingClass, service_life, wear_does_not_limit};
pub use limit::{
    ADJUSTABLE_LIMIT, BUSH_WEAR_SHARE, FIXED_CENTRES_LIMIT, JUMP_WARNING_SHARE, PIN_WEAR_SHARE, WearLimits, elongation,
    replacement_limit, tip_elongation, tooth_ride_out, tooth_rule_limit, worn_pitch_diameter,
};
pub use result::*;
pub use running_in::RunningIn;
pub use survey::*;
pub use unlubricated::{DryPair, unlubricated_coefficient};
pub use waiting::OilAge;
