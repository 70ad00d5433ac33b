//! What the joints of a conveyor chain go through, which oil they need, whether they get it, and what that is worth.
//!
//! The map of the house (arrows run one way, left to right):
//!
//! ```text
//! quantity ─► chain, oil ─► circuit ─► line ─► study, log, table ─► py
//!             joint, lubrication, wear, drive, supply, economics ─► line
//! ```
//!
//! | room | what it computes |
//! |---|---|
//! | [`chain`] | standard chains, pitch geometry, polygon action |
//! | [`oil`] | viscosity, density, pressure, blends |
//! | [`circuit`] | straights and turns, tension march, temperature round the loop |
//! | [`joint`] | contact, film, asperities, friction of pin/bush and bush/roller |
//! | [`lubrication`] | which joints are reached and when, what gets in, stays, drips |
//! | [`wear`] | wear coefficient, elongation, life, what governs |
//! | [`drive`] | gear, motor, current, what a current log could see |
//! | [`supply`] | line, pump, reservoir, 24 V cable |
//! | [`economics`] | yearly cost, cash flow, payback |
//! | [`log`] | current logs: cleaning, change points, before and after, watch |
//! | [`study`] | draws, spread, what matters, calibration, choice within a budget |
//! | [`table`] | many lines: columns in, columns out |
//!
//! Model rooms take and give SI `f64` under the trade's plain names; the public names carry their units, and the
//! register of quantities converts between the two at one border.

pub mod chain;
pub mod circuit;
pub mod drive;
pub mod economics;
pub mod error;
pub mod joint;
pub mod line;
pub mod log;
pub mod lubrication;
pub mod numeric;
pub mod oil;
#[cfg(feature = "python")]
mod py;
pub mod quantity;
pub mod study;
pub mod supply;
pub mod table;
pub mod wear;

pub use error::{Code, Error, Kind, Result};
