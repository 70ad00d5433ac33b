//! Loss: how much oil a joint holds and how fast it leaves.
//!
//! Oil is lost in proportion to what is there: dV/dt = -k V, with k the sum of evaporation, oxidation, pumping by the
//! articulations, washing and dust. Rates are 1/s of running time; what goes by the clock on the wall is divided by
//! the running share. An uncalibrated k is good to a factor of 5 to 10: show its spread.

mod articulation;
mod capacity;
mod heat;
mod residue;
mod sum;

pub use articulation::{Articulation, articulation_loss, articulation_rate};
pub use capacity::{Capacity, JointSpace};
pub use heat::{
    Evaporation, NOACK_DURATION, NOACK_TEMPERATURE, Oxidation, TemperatureShare, check_flash_point,
    free_evaporation_flux, mean_rate, noack_rate, vapour_ratio,
};
pub use residue::{solids_rate, time_to_block};
pub use sum::{Losses, after_wash_fill, standing_rate, wall_time_rate, wash_rate};
