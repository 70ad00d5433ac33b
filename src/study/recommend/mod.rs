//! Recommend: of all set-ups that somebody is ready to use, the one to use, and why not the others.
//!
//! The choices are the user's: shots, oils, run and dwell, every n-th joint, gaps, places, methods. Each set-up goes through
//! exact cheap tests first (does the counter meet every joint, is the injector quick enough, is the timer locked, does
//! a joint wait too long, does its fill keep the floor, does oil spill over), and what passes them through `evaluate`.
//! A set-up that fails keeps its first reason and how far it missed; those that keep every limit are ranked by the cost
//! of a year, and among the cheapest by what a fitter would rather set up. Nothing here is a formula: the tests call the rooms that `evaluate` calls.

mod choices; // what the user offers, checked
mod grid; // all combinations, without writing them down
mod judge; // one candidate: sieve, then evaluate, then the last limits
mod offers; // run, dwell and n where the user names none
mod page; // the recommendation as people read it
mod rank; // which of those that keep every limit comes first
mod reason; // why a set-up is refused, in words
mod result; // the recommendation, under public names
mod search; // the whole search
mod sheet; // the set-up sheet
mod sieve; // cheap exact tests, cheapest first
mod station; // an oil at a place by a method: what does not depend on shot and timer
mod stations; // all of them
mod words; // set-ups and reasons in sentences

pub use choices::{Choices, Limits, OFFERS, offered};
pub use rank::{Standing, ranking};
pub use reason::{Reason, Refusal};
pub use result::*;
pub use search::recommend;
pub use sieve::{QUICKER, Shots, Sieve, Sieved, Sifted};
