//! The survey of a line: everything that `evaluate` needs to know.

use crate::chain::Chain;
use crate::circuit::{Circuit, Friction};
use crate::drive::Drive;
use crate::economics::Costs;
use crate::joint::{Joint, Surface};
use crate::lubrication::{Fill, Lubrication};
use crate::oil::Oil;
use crate::quantity::{Class, Spread, Word, between, up_to};
use crate::supply::Supply;
use crate::wear::Wear;
use crate::{choice, noun};

choice! {
    /// What the chain works in.
    Surroundings {
        /// Dry and clean.
        Dry = "dry",
        /// Dust falls on the chain.
        Dusty = "dusty",
        /// The line is washed down.
        WashDown = "wash_down",
        /// The chain passes an oven.
        Oven = "oven",
        /// The chain passes a freezer.
        Freezer = "freezer",
    }
}

macro_rules! duty_noun { ($declare:ident) => { $declare! {
    /// What the line does all year, and what it works in.
    Duty / DutySi, "duty" {
        speed_m_per_min as speed: f64 [M_PER_MIN] "chain speed" { symbol: "v", allowed: up_to(0.0, 1200.0), usual: between(0.05, 150.0) }
        hours_per_day as day_share: f64 [HOURS_PER_DAY] "running hours in a working day" { allowed: between(0.01, 24.0) }
        days_per_year as year_share: f64 [DAYS_PER_YEAR] "working days in a year" { allowed: between(0.1, 365.0) }
        ambient_c as ambient: f64 [C] "temperature of the room" { allowed: between(-60.0, 150.0), usual: between(-40.0, 60.0) }
        surroundings as surroundings: Surroundings [WORD = Surroundings::Dry] "what the chain works in: dry, dusty, wash_down, oven or freezer" {}
        food_contact as food_contact: bool [WORD = false] "whether open food is near the chain" {}
        dust_factor as dust_factor: f64 [ONE = 1.0] "wear over that of a clean line: clean 1, light dust 2, dusty 5, abrasive 15"
            { allowed: between(0.1, 1000.0), usual: between(1.0, 50.0), spread: Spread::Factor(2.5), class: Class::Closure,
              source: "multiplies all wear coefficients; level by judgement" }
        water_factor as water_factor: f64 [ONE = 1.0] "wear over that of a dry line: dry 1, damp 1.5, wash-down 3, caustic 5"
            { allowed: between(0.1, 1000.0), usual: between(1.0, 20.0), spread: Spread::Factor(2.0), class: Class::Closure,
              source: "multiplies all wear coefficients; level by judgement" }
        dust_loss_per_s as dust_loss: f64 [PER_S = 0.0] "oil taken up by dust: clean 0, dusty 1e-6, very dusty 5e-6"
            { allowed: between(0.0, 1.0), usual: between(0.0, 1e-5), spread: Spread::Factor(3.0), class: Class::Closure,
              source: "settling dust takes up oil at a constant rate; level by judgement" }
        wash_interval_h as wash_interval: Option<f64> [H = None] "calendar time between washes" { allowed: up_to(0.0, 1e6) }
        wash_removed_share as wash_removed_share: f64 [ONE = 0.6] "share of the oil in a joint that a wash removes"
            { allowed: between(0.0, 0.999), usual: between(0.2, 0.95), spread: Spread::Beta(0.2, 0.95), class: Class::CommonPractice }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use duty_noun;
duty_noun!(noun);

macro_rules! line_noun {
    ($declare:ident) => {
        $declare! {
            /// One conveyor line as it was surveyed: the input of `evaluate`.
            ///
            /// The settings `friction`, `surface`, `joint`, `fill` and `wear` may be left out: they are then those that their
            /// classes give without arguments. So may `supply`, where there is none.
            Line / LineSi, "", keeps: lines {
                name as name: Word [WORD] "name of the line" {}
                chain as chain: Chain [WORD] "the chain" {}
                circuit as circuit: Circuit [WORD] "the loop" {}
                duty as duty: Duty [WORD] "what it does all year" {}
                oil as oil: Oil [WORD] "the oil" {}
                lubrication as lubrication: Lubrication [WORD] "how joints get their oil" {}
                drive as drive: Drive [WORD] "motor and gear" {}
                costs as costs: Costs [WORD] "prices and yearly work" {}
                supply as supply: Option<Supply> [WORD = None] "reservoir, pump, line, cable" {}
                friction as friction: Friction [WORD = Friction::default()] "friction of each pair" {}
                surface as surface: Surface [WORD = Surface::default()] "surfaces of the joints" {}
                joint as joint: Joint [WORD = Joint::default()] "wetting of the joints" {}
                fill as fill: Fill [WORD = Fill::default()] "what oil does in a joint" {}
                wear as wear: Wear [WORD = Wear::default()] "wear coefficients" {}
            }
        }
    };
}
#[cfg(feature = "python")]
pub(crate) use line_noun;
line_noun!(noun);

impl Line {
    /// Reads a survey file's text; errors name key and line.
    pub fn from_toml(text: &str) -> crate::Result<Line> {
        crate::quantity::Noun::from_tree(&crate::quantity::Tree::from_toml(text)?)
    }
}
