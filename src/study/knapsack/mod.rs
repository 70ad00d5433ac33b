//! Which lines first: the choice of lines, or of one set-up for each, that is worth most within a budget.
//!
//! Choosing line by line in the order of payback is close but not best: two cheap lines can be worth more than a dear
//! one that leaves money over. [`select`] and [`select_set_ups`] search exactly, and where there are too many lines to
//! finish they say how much better a choice could be at most. [`greedy`] is the reference of common practice.

mod choice; // the answer
mod greedy; // in the order of value for money
mod offers; // what is worth looking at, and its order
mod search; // branch and bound
mod worth; // expected value, value for money

pub use choice::{Selection, SetUp, chosen_shares, select, select_set_ups};
pub use greedy::greedy;
pub use worth::{by_worth, expected_values};
