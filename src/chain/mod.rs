//! The chain: standard tables, pitch geometry, what a survey says of it.

mod survey;

pub use survey::{Chain, ChainSi, Standard};
pub(crate) use survey::{chain_noun, consistent};
