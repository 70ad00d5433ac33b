//! Circuit: the closed loop of a conveyor chain, what pulls on it, what one joint goes through in one revolution.
//!
//! Takes the straights and turns of a loop in travel order, the chain, its speed and the friction of every rubbing pair;
//! gives joints and circuit time, the tension at both ends of every section, the pull of the drive by cause, the chain
//! temperature round the loop, and the events of one joint (where it bends, under which tension, how warm, how long it
//! rested before). Knows nothing of oil, wear, motors or money: whoever computes friction hands it in and marches again.
//!
//! Three things to know before reading on:
//!
//! * The march starts at the exit of the drive (slack side) and ends at its entry (tight side). Every section maps its
//!   entry tension to its exit tension by `S_out = A S_in + B`, so required take-up and weight take-ups are exact.
//! * `S` is the effective tension, the pull of all strands less the centrifugal part `C = q v²`: tracks and wheels feel
//!   `S`, joints feel `S + C`.
//! * What the caller sees by section is indexed as in the survey; only [`Layout::places`] stands in march order.
//!
//! Angles are rad, temperatures °C, everything else SI.
//!
//! The order of work, with friction from elsewhere:
//!
//! ```
//! use pinfilm::circuit::*;
//! # fn main() -> pinfilm::Result<()> {
//! # let straight = |support| SectionSi::Straight(StraightSi { load: 20.0, ..StraightSi::plain(support, 10.0) });
//! # let wheel = |drive| SectionSi::Turn(TurnSi {
//! #     kind: TurnKind::Wheel, contact: Contact::Slide, support: Support::Slide, side: 1, plane: Plane::Main,
//! #     teeth: Some(12), radius: None, wrap: std::f64::consts::PI, rise: 0.0, load: 20.0, shaft_diameter: None,
//! #     temperature: None, heat_transfer: 12.0, extra_pull: 0.0, drive,
//! # });
//! # let sections = [straight(Support::Slide), wheel(false), straight(Support::Slide), wheel(true)];
//! # let surveyed = LoopData {
//! #     pitch: 0.1, pin_diameter: 0.014, bush_diameter: 0.02, roller_diameter: None, mass: 5.0, tensile_strength: None,
//! #     strands: 2, joints: None, speed: 0.2, ambient: 20.0, take_up: TakeUp::Tension(2000.0), least_tension: None,
//! #     strand_share_factor: None, surface_factor: 3.0, sections: &sections,
//! # };
//! # let mut coefficients = Coefficients {
//! #     joint: vec![0.2; 4], bush_roller: vec![0.2; 4], plate_track: 0.25, rolling_arm: ROLLING_ARM_STEEL,
//! #     track_factor: 1.0, trolley: 0.02, idler: 0.03, turn_roller: 0.03, load_bed: 0.3, wheel_bearing: 0.02,
//! # };
//! let layout = lay_out(&surveyed)?;
//! let temperatures = temperatures(&layout);
//! let mut march = march(&layout, &coefficients)?;
//! let mut list = Vec::new();
//! for _round in 0..3 {
//!     events(&layout, &march, &temperatures, &mut list); // friction of each event is computed from these
//!     coefficients.joint[1] = 0.12;
//!     march.renew(&layout, &coefficients)?; // again, without allocating
//! }
//! assert!(march.pull > 0.0 && list.len() == 4);
//! # Ok(())
//! # }
//! ```

mod check;
mod event;
mod finding;
mod friction;
mod layout;
mod march;
mod place;
mod result;
mod start;
mod step;
mod survey;
mod temperature;
#[cfg(test)]
mod testing;
mod turn;
mod two_sprocket;

pub use event::{Event, EventKind, Stay, events, timeline};
pub use finding::{Finding, inspect_layout, inspect_march};
pub use friction::{Cause, Coefficients, ROLLING_ARM_STEEL, rolling_resistance, sag, sag_tension};
pub use layout::{Layout, LoopData, TakeUp, default_least_tension, default_strand_share, lay_out};
pub use march::{March, march};
pub use place::{Place, StraightWay, TurnWay, Way, centrifugal_tension};
pub use result::*;
pub use start::{Breakaway, breakaway, strength};
pub use survey::*;
pub use temperature::{SectionTemperature, Temperatures, friction_heating, temperatures, thermal_time_constant};
pub use turn::{capstan_ratio, corner_one_surface, shaft_torque, take_up_from_frame_force};
pub use two_sprocket::*;

/// Standard acceleration of free fall, m/s² (CGPM 1901).
pub const GRAVITY: f64 = 9.80665;
