//! Where to apply: each candidate point gets a score, or the reasons why it is out of the question.
//!
//! The weights are a closure of our own; that the slack strand and the upper edges of the link plates are the place is
//! handbook practice (Analysis and Design of Machine Elements, chain drives; Handbook of Lubrication and Tribology,
//! chapter 15.4). Local fire code and the safety data sheet of the oil decide about heat, not this score.

use crate::quantity::{Access, Side};

/// A place where oil could be applied.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Chain tension at the point, N.
    pub tension: f64,
    /// Temperature of the chain there, °C.
    pub temperature: f64,
    /// Time to the first of oven, wash, wiper or shedding turn, s.
    pub time_available: f64,
    /// Side from which the oil comes.
    pub side: Side,
    /// Share of the plate gap that the nozzle sees, 0 to 1.
    pub open_share: f64,
    /// Time to the next wash zone, s; `None` = no wash.
    pub time_to_wash: Option<f64>,
    /// How a person gets there.
    pub access: Access,
    /// What is known about its surroundings.
    pub surroundings: Surroundings,
}

/// What can forbid a point.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Surroundings {
    /// Above open product.
    pub above_product: bool,
    /// Food-grade oil and a tray under the chain.
    pub food_oil_and_tray: bool,
    /// The side cannot be reached with a nozzle or brush.
    pub side_unreachable: bool,
    /// Inside a wash zone.
    pub in_wash: bool,
    /// The method sprays.
    pub sprayed: bool,
    /// Hot surfaces or ignition sources near by.
    pub ignition_near: bool,
}

/// What the score of a point is measured against.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loop {
    /// Least and greatest tension round the loop, N.
    pub tension: (f64, f64),
    /// Least and greatest chain temperature round the loop, °C.
    pub temperature: (f64, f64),
    /// Flash point of the oil, °C.
    pub flash_point: f64,
    /// Time the oil needs to enter the joint, s.
    pub entry_time: f64,
}

/// Why a point is out of the question.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Exclusion {
    /// Oil could drip on open product.
    AboveProduct,
    /// Chain within 30 K of the flash point (common practice, no source).
    NearFlashPoint,
    /// The side cannot be reached.
    SideUnreachable,
    /// A wash zone takes the oil at once.
    InWash,
    /// Mist ignites well below the flash point.
    SprayNearIgnition,
}

impl Exclusion {
    /// The reason in words.
    pub const fn reason(self) -> &'static str {
        match self {
            Exclusion::AboveProduct => "above open product without food-grade oil and a tray",
            Exclusion::NearFlashPoint => "chain within 30 K of the flash point of the oil",
            Exclusion::SideUnreachable => "the side cannot be reached",
            Exclusion::InWash => "inside a wash zone",
            Exclusion::SprayNearIgnition => {
                "spray near hot surfaces or ignition sources: mist ignites below the flash point"
            }
        }
    }
}

/// Distance that the chain keeps below the flash point, K (common practice, no source).
const FLASH_MARGIN: f64 = 30.0;

/// N or K round the loop below which all places are alike: what is left is rounding.
const NO_DIFFERENCE: f64 = 1e-6;

/// The parts of a score, each 0 to 1, and their weighted mean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Score {
    /// 1 on the slack strand, 0 at the greatest tension.
    pub slack: f64,
    /// Time available against entry time.
    pub time: f64,
    /// 1 at the coolest place.
    pub cool: f64,
    /// Whether gravity helps.
    pub gravity: f64,
    /// Open share of the plate gap.
    pub gap: f64,
    /// Time to the wash against entry time.
    pub wash: f64,
    /// How well a person gets there.
    pub access: f64,
    /// Weighted mean of the parts.
    pub score: f64,
}

impl Point {
    /// Why the point is out of the question; empty if it is not. Kept in a fixed array: `None`s are not reasons.
    pub fn exclusions(&self, of: &Loop) -> [Option<Exclusion>; 5] {
        let s = self.surroundings;
        let when = |is: bool, why| is.then_some(why);
        [
            when(s.above_product && !s.food_oil_and_tray, Exclusion::AboveProduct),
            when(self.temperature > of.flash_point - FLASH_MARGIN, Exclusion::NearFlashPoint),
            when(s.side_unreachable, Exclusion::SideUnreachable),
            when(s.in_wash, Exclusion::InWash),
            when(s.sprayed && s.ignition_near, Exclusion::SprayNearIgnition),
        ]
    }

    /// How good the point is, 0 to 1. Closure of our own: the weights 3, 3, 2, 2, 2, 1, 2 have no source.
    ///
    /// Of two equal scores take the greater time available, then the point nearest before a turn.
    pub fn score(&self, of: &Loop) -> Score {
        let low_is_good = |value: f64, (low, high): (f64, f64)| {
            if high - low > NO_DIFFERENCE { 1.0 - (value - low) / (high - low) } else { 1.0 }
        };
        let enough = |time: f64| time / (time + of.entry_time);
        let slack = low_is_good(self.tension, of.tension);
        let time = enough(self.time_available);
        let cool = low_is_good(self.temperature, of.temperature);
        let gravity = match self.side {
            Side::Top => 1.0,
            Side::Beside => 0.5,
            Side::Bottom => 0.1,
        };
        let gap = self.open_share;
        let wash = self.time_to_wash.map_or(1.0, enough);
        let access = match self.access {
            Access::Open => 1.0,
            Access::Guarded => 0.6,
            Access::Climb => 0.2,
        };
        let score = (3.0 * (slack + time) + 2.0 * (cool + gravity + gap + access) + wash) / 15.0;
        Score { slack, time, cool, gravity, gap, wash, access, score }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn point() -> Point {
        Point {
            tension: 1000.0,
            temperature: 40.0,
            time_available: 240.0,
            side: Side::Top,
            open_share: 1.0,
            time_to_wash: None,
            access: Access::Open,
            surroundings: Surroundings::default(),
        }
    }

    const LOOP: Loop =
        Loop { tension: (1000.0, 6000.0), temperature: (40.0, 200.0), flash_point: 260.0, entry_time: 0.0 };

    #[test]
    fn the_best_place_scores_one_and_has_no_exclusion() {
        assert_eq!(point().score(&LOOP).score, 1.0);
        assert_eq!(point().exclusions(&LOOP), [None; 5]);
        let level = Loop { tension: (1000.0, 1000.0), temperature: (40.0, 40.0), ..LOOP };
        assert_eq!(point().score(&level).score, 1.0);
        // a loop at one temperature, but for rounding
        let even = Loop { temperature: (40.0 - 1e-14, 40.0), ..level };
        assert_eq!(point().score(&even).score, 1.0);
    }

    #[test]
    fn reasons_are_named() {
        let surroundings =
            Surroundings { above_product: true, sprayed: true, ignition_near: true, ..Default::default() };
        let hot = Point { temperature: 231.0, surroundings, ..point() };
        let found: Vec<_> = hot.exclusions(&LOOP).into_iter().flatten().collect();
        assert_eq!(found, [Exclusion::AboveProduct, Exclusion::NearFlashPoint, Exclusion::SprayNearIgnition]);
        let tray = Surroundings { food_oil_and_tray: true, ..surroundings };
        assert_eq!(Point { surroundings: tray, ..point() }.exclusions(&LOOP)[0], None);
    }
}
