//! What a survey says of how the joints are oiled, and of what oil does in them.

use crate::quantity::Side;
use crate::quantity::{Class, Spread, at_least, between, up_to};
use crate::{choice, noun, tagged};

choice! {
    /// Which clock a timer runs on.
    Clock {
        /// The time of day: it also runs while the line stands.
        Wall = "wall",
        /// Running time of the line.
        Machine = "machine",
    }
}

macro_rules! timer_noun { ($declare:ident) => { $declare! {
    /// A timer: run, dwell, run, dwell.
    Timer / TimerSi, "timer" {
        run_min as run: f64 [MIN] "time for which oil is given" { symbol: "R", allowed: up_to(0.0, 1e6) }
        dwell_min as dwell: f64 [MIN = 0.0] "pause until the next run" { symbol: "D", allowed: between(0.0, 1e7) }
        clock as clock: Clock [WORD = Clock::Machine] "clock of the timer: wall or machine" {}
        interlocked as interlocked: bool [WORD = true] "whether oil stops while the line stands" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use timer_noun;
timer_noun!(noun);

/// What handbooks say of the place; our score adds temperature, gravity, access and washing.
const APPLICATION_POINT: &str = "inside of the slack strand, upper edges of the side plates, shortly before a sprocket: \
     Analysis and Design of Machine Elements; Handbook of Lubrication and Tribology, chapter 15";
const UNPUBLISHED: &str = "share of what leaves the nozzle that lands in the gaps; unpublished";

/// Declares a method: its own rows, then those that every method has.
macro_rules! method_noun {
    ($declare:ident $(#[doc = $doc:literal])+ $name:ident / $si:ident { $($own:tt)+ }) => {
        $declare! {
            $(#[doc = $doc])+
            $name / $si, "lubrication" {
                $($own)+
                points as points: i64 [ONE = 2] "gaps of one joint served, per strand: 1 or 2" { allowed: between(1.0, 2.0) }
                application_section as application_section: Option<i64> [ONE = None] "number of the section where oil is applied, from 0; not given: the best point" { allowed: at_least(0.0), source: APPLICATION_POINT }
                application_position as application_position: f64 [ONE = 0.5] "place in that section, as a share of its length" { allowed: between(0.0, 1.0) }
                application_side as application_side: Side [WORD = Side::Top] "side from which oil is applied: top, side or bottom" {}
                time_available_s as time_available: Option<f64> [S = None] "time the oil has to enter; not given: from the circuit" { allowed: up_to(0.0, 1e9) }
            }
        }
    };
}
pub(crate) use method_noun;

macro_rules! manual_noun { ($declare:ident) => { $crate::lubrication::method_noun! { $declare
    /// A person with a brush or can.
    Manual / ManualSi {
        interval_h as interval: f64 [H] "calendar time between rounds" { allowed: up_to(0.0, 1e6) }
        dose_ul as dose: f64 [UL] "oil given to one joint in a round" { allowed: up_to(0.0, 1e7) }
        interval_cv as interval_cv: f64 [ONE = 0.3] "scatter of the interval: standard deviation over mean"
            { allowed: between(0.01, 3.0), usual: between(0.1, 1.0), spread: Spread::Uniform(0.1, 1.0), class: Class::CommonPractice }
        miss_share as miss_share: f64 [ONE = 0.05] "share of joints that a round misses by chance"
            { allowed: between(0.0, 0.99), usual: between(0.0, 0.4), spread: Spread::Beta(0.0, 0.4), class: Class::CommonPractice }
        unreached_share as unreached_share: f64 [ONE = 0.0] "share of joints that no round reaches: guards, tunnels" { allowed: between(0.0, 1.0) }
        capture as capture: f64 [ONE = 0.3] "share of the oil that lands in the gaps"
            { allowed: up_to(0.0, 1.0), usual: between(0.1, 0.5), spread: Spread::Beta(0.1, 0.5), class: Class::CommonPractice, source: UNPUBLISHED }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use manual_noun;
manual_noun!(noun);

macro_rules! drip_noun { ($declare:ident) => { $crate::lubrication::method_noun! { $declare
    /// A dripper that never stops.
    Drip / DripSi {
        flow_ml_per_min as flow: f64 [ML_PER_MIN] "flow at each point" { allowed: up_to(0.0, 1e5) }
        drop_ul as drop: f64 [UL = 40.0] "volume of one drop"
            { allowed: up_to(0.0, 1e4), usual: between(20.0, 60.0), spread: Spread::Uniform(20.0, 60.0), class: Class::FromMemory, source: "drops of oil from a tube" }
        capture as capture: f64 [ONE = 0.12] "share of the oil that lands in the gaps"
            { allowed: up_to(0.0, 1.0), usual: between(0.05, 0.3), spread: Spread::Beta(0.05, 0.3), class: Class::CommonPractice, source: UNPUBLISHED }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use drip_noun;
drip_noun!(noun);

macro_rules! spray_noun { ($declare:ident) => { $crate::lubrication::method_noun! { $declare
    /// A nozzle that sprays all joints that pass while a timer runs.
    Spray / SpraySi {
        flow_ml_per_min as flow: f64 [ML_PER_MIN] "flow at each point while it sprays" { allowed: up_to(0.0, 1e5) }
        timer as timer: Timer [WORD] "run and dwell of the spray" {}
        zone_length_mm as zone_length: f64 [MM = 0.0] "length of chain that the spray covers" { allowed: between(0.0, 1e4) }
        speed_tolerance_pct as speed_tolerance: f64 [PCT = 0.5] "how far circuit time and timer may drift apart"
            { allowed: between(0.0, 50.0), usual: between(0.05, 3.0), spread: Spread::Uniform(0.05, 3.0), class: Class::CommonPractice, source: "slip and timer" }
        capture as capture: f64 [ONE = 0.25] "share of the oil that lands in the gaps"
            { allowed: up_to(0.0, 1.0), usual: between(0.1, 0.4), spread: Spread::Beta(0.1, 0.4), class: Class::CommonPractice, source: UNPUBLISHED }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use spray_noun;
spray_noun!(noun);

macro_rules! synchronised_noun { ($declare:ident) => { $crate::lubrication::method_noun! { $declare
    /// An applicator driven by the chain: each shot lands in the plate gap of a joint.
    Synchronised / SynchronisedSi {
        shot_ul as shot: f64 [UL] "oil of one shot at one point" { allowed: up_to(0.0, 1e5) }
        every_nth as every_nth: i64 [ONE = 1] "one joint in how many gets the shot while the timer runs" { symbol: "n", allowed: between(1.0, 1e6) }
        timer as timer: Option<Timer> [WORD = None] "run and dwell of the applicator; not given: it never pauses" {}
        speed_tolerance_pct as speed_tolerance: f64 [PCT = 0.5] "how far circuit time and timer may drift apart"
            { allowed: between(0.0, 50.0), usual: between(0.05, 3.0), spread: Spread::Uniform(0.05, 3.0), class: Class::CommonPractice, source: "slip and timer" }
        capture as capture: f64 [ONE = 0.9] "share of the oil that lands in the gaps"
            { allowed: up_to(0.0, 1.0), usual: between(0.7, 0.98), spread: Spread::Beta(0.7, 0.98), class: Class::CommonPractice, source: UNPUBLISHED }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use synchronised_noun;
synchronised_noun!(noun);

tagged! {
    /// How the joints get their oil.
    Lubrication / LubricationSi by "method" {
        "manual" => Manual / ManualSi,
        "drip" => Drip / DripSi,
        "timed_spray" => Spray / SpraySi,
        "synchronised" => Synchronised / SynchronisedSi,
    }
}

macro_rules! fill_noun { ($declare:ident) => { $declare! {
    /// What oil does once it is in a joint: the closures of loss and capacity, and the floors that a set-up must keep.
    Fill / FillSi, "fill", defaults: all {
        articulation_loss as articulation_loss: f64 [ONE = 5e-4] "share of the pumped oil that an articulation loses"
            { symbol: "λ₀", allowed: between(0.0, 1.0), usual: between(5e-5, 5e-3), spread: Spread::WidestFactor(10.0), class: Class::Closure,
              source: "level fits 5 to 10 drops a minute on a fast drive chain" }
        articulation_loss_exponent as articulation_loss_exponent: f64 [ONE = 0.5] "exponent with which thicker oil is lost less"
            { allowed: between(0.0, 3.0), usual: between(0.2, 1.0), spread: Spread::Uniform(0.2, 1.0), class: Class::Closure,
              source: "share lost ∝ (η_ref/η)^p: thicker oil moves less in a stroke" }
        articulation_loss_reference_pa_s as articulation_loss_reference: f64 [PA_S = 0.1] "viscosity at which the articulation loss holds"
            { allowed: between(1e-4, 1e3), spread: Spread::Told("none of its own: that of the articulation loss"), class: Class::Closure,
              source: "fixes the scale of the articulation loss" }
        air_factor as air_factor: f64 [ONE = 0.3] "evaporation over that of the test cup: 0.3 in still air, 1 in moving hot air"
            { allowed: between(0.0, 100.0), usual: between(0.05, 2.0), spread: Spread::Factor(3.0), class: Class::Closure,
              source: "vapour pressure drives evaporation, moving air carries it off; level by judgement" }
        noack_mass_per_area_kg_per_m2 as noack_mass_per_area: f64 [KG_PER_M2 = 23.0] "oil per open area in the cup of the evaporation test"
            { allowed: up_to(0.0, 1000.0), usual: between(15.0, 30.0), spread: Spread::Uniform(15.0, 30.0), class: Class::FromMemory, source: "ASTM D5800: 65 g in a cup about 60 mm wide" }
        floor as floor: f64 [ONE = 0.4] "lowest fill that a set-up may let a joint fall to"
            { allowed: up_to(0.0, 0.999), usual: between(0.2, 0.7), class: Class::CommonPractice }
        ring_share as ring_share: f64 [ONE = 0.5] "share of the plate-gap ring that stays wet"
            { symbol: "b", allowed: up_to(0.0, 1.0), usual: between(0.2, 0.8), spread: Spread::Uniform(0.2, 0.8), class: Class::Closure,
              source: "oil that the ring between the plates holds against gravity and turns; level by judgement" }
        film_min_um as film_min: f64 [UM = 0.3] "thickness of the film that must stay on the plates" { allowed: up_to(0.0, 100.0), usual: between(0.1, 1.0), class: Class::CommonPractice }
        keep as keep: f64 [ONE = 0.5] "share of its oil that a joint must keep between shots" { allowed: between(0.01, 0.99), usual: between(0.3, 0.8), class: Class::CommonPractice }
        hot_oil_confirmed as hot_oil_confirmed: bool [WORD = false] "whether a competent person has confirmed oil within 20 K of its flash point" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use fill_noun;
fill_noun!(noun);
