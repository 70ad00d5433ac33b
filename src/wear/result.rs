//! What a result says of wear and life.

use super::life::NO_LIMIT_YEARS;
use crate::quantity::{Class, Spread};
use crate::{choice, noun};

choice! {
    /// What ends the wear life of the chain.
    Governs {
        /// The mean elongation.
        Mean = "mean",
        /// The elongation of the stretch that never gets oil.
        Local = "local",
        /// The pin.
        Pin = "pin",
        /// The wall of the bush.
        Bush = "bush",
    }
}

const ARCHARD: &str = "Archard 1953, V = K W s/(3 H); wear arc of a pin in its bush; hardened case, then core";

macro_rules! wear_state_noun { ($declare:ident) => { $declare! {
    /// Wear, elongation and life.
    WearState / WearStateSi, "wear" {
        coefficient_reached as coefficient_reached: f64 [ONE] "wear coefficient of joints that get oil, mean over events" { symbol: "K", formula: "Σ w K / Σ w over {joint.events.wear_coefficient_reached}, w = tension × angle", source: ARCHARD, class: Class::Closure }
        coefficient_never as coefficient_never: Option<f64> [ONE] "wear coefficient of joints that never get oil" { formula: "{wear.wear_coefficient_dry} × {duty.dust_factor} × {duty.water_factor}, at most 5e-3", source: ARCHARD, class: Class::Closure }
        temperature_c as temperature: f64 [C] "mean temperature of the wear" { formula: "mean of {joint.events.temperature_c}, weighted by tension × angle", source: "definition", class: Class::Derived }
        hardness_factor as hardness_factor: f64 [ONE] "hardness there over that at 20 °C" { formula: "1 − 4e-4 ({wear.temperature_c} − 20), at least 0.4", source: "hardness falls in proportion to temperature, case and core alike", spread: Spread::Told("3e-4 to 6e-4 per K"), class: Class::Closure }
        limit_pct as limit: f64 [PCT] "elongation at which the chain is replaced" { formula: "least of {chain.elongation_limit_pct}, 200/z and the tooth limit of the largest sprocket", source: "200/z remembered; tooth limit derived", class: Class::Derived }
        sliding_m_per_h as sliding: f64 [M_PER_H] "sliding distance of pin in bush" { formula: "Σ (d/2) α / {kinematics.circuit_time_s}", source: "definition", class: Class::Derived }
        elongation_1_year_pct as elongation_1_year: f64 [PCT] "elongation after one year of this duty" { formula: "(pin wear + bush wear) / {chain.pitch_mm}, mean over the joints", source: ARCHARD, class: Class::Closure }
        life_years as life: f64 [YEARS] "wear life: time to the first limit" { ceiling: NO_LIMIT_YEARS, formula: "least of {wear.life_mean_years}, {wear.life_local_years}, {wear.life_pin_years}, {wear.life_bush_years}", source: ARCHARD, class: Class::Closure }
        life_mean_years as life_mean: f64 [YEARS] "time until the mean elongation meets its limit" { ceiling: NO_LIMIT_YEARS, formula: "elongation of all joints = {wear.limit_pct}", source: ARCHARD, class: Class::Closure }
        life_local_years as life_local: f64 [YEARS] "time until the worst stretch meets that limit" { ceiling: NO_LIMIT_YEARS, formula: "elongation of the worst joints = {wear.limit_pct}", source: ARCHARD, class: Class::Closure }
        life_pin_years as life_pin: f64 [YEARS] "time until the worst pin is worn by its limit" { ceiling: NO_LIMIT_YEARS, formula: "pin wear = {chain.pin_wear_limit_pct} of {chain.pin_diameter_mm}", source: ARCHARD, class: Class::Closure }
        life_bush_years as life_bush: Option<f64> [YEARS] "time until the worst bush is worn by half its wall" { ceiling: NO_LIMIT_YEARS, formula: "bush wear = ({chain.bush_diameter_mm} − {chain.bush_bore_mm})/4", source: ARCHARD, class: Class::Closure }
        case_through_years as case_through: f64 [YEARS] "time until the worst pin is worn through its case" { ceiling: NO_LIMIT_YEARS, formula: "pin wear = {chain.case_depth_mm}", source: ARCHARD, class: Class::Closure }
        governs as governs: Governs [WORD] "what ends the wear life: mean, local, pin or bush" {}
        service_life_years as service_life: f64 [YEARS] "mean life with wear and other causes" { formula: "L (1 − exp(−{wear.life_years}/L)), L = {costs.other_life_years}", source: "age replacement with an independent exponential cause", class: Class::Derived }
        sprocket_flank_um_per_year as sprocket_flank: Option<f64> [UM_PER_YEAR] "wear of the drive sprocket's flanks, indicative" { formula: "K × tension × sliding on the tooth / (3 H × area)", source: "Archard 1953 over an arc of 0.5 rad; 0.2 of the articulation slides on the tooth", spread: Spread::Told("slip 0.05 with turning rollers to 1 with plain bushes"), class: Class::Closure }
        roller_bush_um_per_year as roller_bush: Option<f64> [UM_PER_YEAR] "wear of the bush under its roller, indicative" { formula: "K × load × sliding / (3 H × {chain.bush_diameter_mm} × {chain.inner_width_mm})", source: "Archard 1953", class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use wear_state_noun;
wear_state_noun!(noun);
