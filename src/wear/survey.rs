//! What a survey says of wear.

use crate::noun;
use crate::quantity::{Class, Spread, at_least, between, up_to};

macro_rules! wear_noun { ($declare:ident) => { $declare! {
    /// Wear coefficients (volume = K load distance / (3 hardness)) and running-in.
    Wear / WearSi, "wear", defaults: all {
        wear_coefficient_dry as coefficient_dry: f64 [ONE = 5e-4] "wear coefficient of the dry joint"
            { symbol: "K_dry", allowed: up_to(0.0, 0.1), usual: between(1e-5, 7e-3), spread: Spread::Lognormal(1e-4, 3e-3), class: Class::FromMemory,
              source: "Rabinowicz 1981, unlubricated compatible metals" }
        wear_coefficient_boundary as coefficient_boundary: f64 [ONE = 5e-6] "wear coefficient in boundary lubrication"
            { symbol: "K_b", allowed: up_to(0.0, 0.1), usual: between(1e-7, 1e-4), spread: Spread::Lognormal(5e-7, 3e-5), class: Class::FromMemory,
              source: "Rabinowicz 1981, good to excellent lubrication; brackets the 15 000 h life basis of ISO 10823" }
        wear_coefficient_mixed as coefficient_mixed: Option<f64> [ONE = None] "wear coefficient in mixed lubrication; not given: a fifth of boundary"
            { symbol: "K_m", allowed: up_to(0.0, 0.1), spread: Spread::Follows(1.0 / 3.0, 2.5, "wear.wear_coefficient_boundary"), class: Class::Closure,
              source: "lies between boundary and full film; level by judgement" }
        wear_coefficient_full as coefficient_full: f64 [ONE = 3e-8] "wear coefficient under a full film (starts and stops)"
            { symbol: "K_f", allowed: up_to(0.0, 0.1), usual: between(1e-9, 1e-5), spread: Spread::Lognormal(1e-9, 3e-7), class: Class::FromMemory }
        fill_half as fill_half: f64 [ONE = 0.25] "fill at which oil does half of its work against wear"
            { allowed: up_to(0.0, 10.0), usual: between(0.1, 0.5), spread: Spread::Triangular(0.1, 0.5), class: Class::Closure,
              source: "effect of oil (1 + a²) fill²/(fill² + a²), a this fill: little oil does most of the work" }
        sprocket_hardness_mpa as sprocket_hardness: f64 [MPA = 5500.0] "hardness of the sprocket's flanks"
            { allowed: between(100.0, 15000.0), usual: between(1500.0, 9000.0), class: Class::FromMemory }
        run_in_factor as run_in_factor: f64 [ONE = 3.0] "wear of new joints over steady wear"
            { allowed: between(1.0, 100.0), usual: between(1.5, 10.0), spread: Spread::Lognormal(1.5, 10.0), class: Class::CommonPractice }
        run_in_distance_m as run_in_distance: f64 [M = 20.0] "sliding distance over which joints run in"
            { allowed: at_least(0.0), usual: between(5.0, 100.0), spread: Spread::Lognormal(5.0, 100.0), class: Class::CommonPractice }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use wear_noun;
wear_noun!(noun);
