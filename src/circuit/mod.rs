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

mod event;
mod finding;
mod friction;
mod layout;
mod march;
mod pitch_geometry_stub;
mod place;
mod start;
mod step;
mod survey;
mod temperature;
mod turn;

pub use event::{Event, EventKind, Stay, events, timeline};
pub use finding::{Finding, inspect_layout, inspect_march};
pub use friction::{Cause, Coefficients, ROLLING_ARM_STEEL, rolling_resistance, sag, sag_tension};
pub use layout::{Layout, LoopData, TakeUp, default_least_tension, default_strand_share, lay_out};
pub use march::{March, march};
pub use place::{Place, StraightWay, TurnWay, Way, centrifugal_tension};
pub use start::{Breakaway, breakaway, strength};
pub use survey::{Contact, FrictionSi, LoadOn, Plane, SectionSi, StraightSi, Support, TurnKind, TurnSi};
pub use temperature::{SectionTemperature, Temperatures, friction_heating, temperatures, thermal_time_constant};
pub use turn::{capstan_ratio, corner_one_surface, shaft_torque, take_up_from_frame_force};

/// Standard acceleration of free fall, m/s² (CGPM 1901).
pub const GRAVITY: f64 = 9.80665;
