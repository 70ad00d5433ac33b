//! The film of a joint that turns, rests, turns and rests: closed form of the periodic orbit of the pin in its bush.
//!
//! At rest the load squeezes the film out; in a turn the wedge rebuilds it towards its steady thickness, along one
//! curve that all heavily loaded joints share. Closure of our own, fitted to integrated orbits (length/diameter 1 and 3,
//! turns of 10 to 45°, rests of 5 to 500 turns); within 6 % of them where the turn is longer than about four times the
//! square root of the steady film ratio.

use super::finite_bearing::{
    log_closeness, squeeze_number, squeezed_at_least, steady_at_least, steady_load, steady_load_bound,
};
use super::growth::{Growth, mean_growth, reduced_angle, towards_steady};
use super::newton::{ANYWHERE, rising_root};
use super::{Eccentricity, finite_squeeze_eccentricity};
use crate::error::Result;
use crate::joint::{Pair, Turn};

/// The rigid film of one turn, smallest gap, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnFilm {
    /// When the turn begins: what the rest has left.
    pub start: f64,
    /// Mean over the turn.
    pub mean: f64,
    /// When the turn ends.
    pub end: f64,
    /// What a turn without end would reach.
    pub steady: f64,
}

/// Rigid film of a joint that repeats `turn` for ever.
///
/// `viscosity` Pa s, `load` N > 0 during the turn, angular speed > 0. Source: closure of our own (head of this file).
pub fn turn_film(pair: &Pair, viscosity: f64, load: f64, turn: &Turn) -> Result<TurnFilm> {
    let joint = RigidJoint::new(pair, viscosity, load, turn);
    let steady = joint.steady(&mut Roots::default())?;
    let growth = Growth::new(turn.angle, steady.film_ratio());
    let start = joint.start(steady.closeness(), &growth, &mut Roots::default())?;
    let full = pair.fitted_clearance() * steady.film_ratio();
    Ok(TurnFilm {
        start: full * start,
        mean: full * towards_steady(start, growth.mean),
        end: full * towards_steady(start, growth.end),
        steady: full,
    })
}

/// Reduced angle from which a thicker steady film always means a thicker mean film: a² (1/mean growth) rises with a.
const THICKER_IS_THICKER: f64 = 3.2;

/// Least reduced angle, and least load number, for which the closed form was checked (docs/film-error-map.md).
const BRIEF_ANGLE: f64 = 3.0;
const BRIEF_LOAD: f64 = 100.0;

/// A joint in the dimensionless numbers of its film.
pub(in super::super) struct RigidJoint {
    length_to_diameter: f64,
    clearance: f64,
    /// W c²/(η ω R³ L).
    load: f64,
    /// The same with time in place of 1/ω, for the rest and its own load.
    rest: f64,
    angle: f64,
}

/// Logarithms of closeness that were found for a joint: a joint much like it starts its search there.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(in super::super) struct Roots {
    /// Of the steady film.
    steady: Option<f64>,
    /// Of the film when the turn begins.
    start: Option<f64>,
}

/// The rigid film, as far as somebody needs to know it.
pub(in super::super) enum Rigid {
    /// The steady film is thinner than the film it competes with: so is every other.
    SteadyLoses,
    /// The mean film of the turn was proven thinner, without being computed.
    MeanLoses {
        /// See [`RigidJoint::is_brief`].
        brief: bool,
    },
    /// The mean film of the turn, m.
    Mean {
        /// The film, m.
        film: f64,
        /// See [`RigidJoint::is_brief`].
        brief: bool,
    },
}

impl RigidJoint {
    pub(in super::super) fn new(pair: &Pair, viscosity: f64, load: f64, turn: &Turn) -> RigidJoint {
        let clearance = pair.fitted_clearance();
        // 1/η of the two time scales: load × this × time is a squeeze number
        let rate = clearance * clearance / (viscosity * pair.radius.powi(3) * pair.length);
        RigidJoint {
            length_to_diameter: pair.length_to_diameter(),
            clearance,
            load: load * rate / turn.angular_speed,
            rest: turn.rest_load.max(0.0) * rate * turn.rest_time,
            angle: turn.angle,
        }
    }

    /// Where a turn without end would settle.
    fn steady(&self, roots: &mut Roots) -> Result<Eccentricity> {
        let root = log_closeness(self.load, self.length_to_diameter, roots.steady)?;
        roots.steady = Some(root);
        Ok(Eccentricity::from_closeness(root.exp()))
    }

    /// Whether the turn is too short, or the joint too lightly loaded, for the closed form (it then says too little).
    fn is_brief(&self, steady_film_ratio: f64) -> bool {
        reduced_angle(self.angle, steady_film_ratio) < BRIEF_ANGLE || self.load < BRIEF_LOAD
    }

    /// Whether even the steady film is not thicker than `film` (m).
    pub(in super::super) fn steady_loses(&self, film: f64) -> bool {
        let closeness = self.clearance / film - 1.0;
        closeness <= 0.0
            || steady_load_bound(closeness) <= self.load
            || steady_load(closeness, self.length_to_diameter * self.length_to_diameter).0 <= self.load.ln()
    }

    /// Whether bounds of the mean film of the turn, had without logarithms, are already below `film` (m).
    ///
    /// The wedge builds at most what the thickest possible steady film would, the rest leaves at most what a rest alone
    /// would; only turns that are not brief are judged.
    fn mean_surely_loses(&self, film: f64) -> bool {
        let closeness = steady_at_least(self.load);
        if closeness <= 0.0 {
            return false;
        }
        let steady = 1.0 / (1.0 + closeness);
        let angle = reduced_angle(self.angle, steady);
        if angle < THICKER_IS_THICKER {
            return false;
        }
        let wedge = steady * mean_growth(angle);
        let left = 1.0 / (1.0 + squeezed_at_least(self.rest));
        self.clearance * (wedge * wedge + left * left).sqrt() <= film
    }

    /// The steady film, m: that of a pair that turns for ever.
    pub(in super::super) fn steady_film(&self) -> Result<f64> {
        Ok(self.clearance * self.steady(&mut Roots::default())?.film_ratio())
    }

    /// The mean film of the turn where it counts against `other` (m), with as little work as that takes; searched from
    /// `roots`, which become those of this joint.
    pub(in super::super) fn mean_film_against(&self, other: f64, roots: &mut Roots) -> Result<Rigid> {
        if self.steady_loses(other) {
            return Ok(Rigid::SteadyLoses);
        }
        if self.mean_surely_loses(other) {
            return Ok(Rigid::MeanLoses { brief: self.load < BRIEF_LOAD });
        }
        let steady = self.steady(roots)?;
        let growth = Growth::new(self.angle, steady.film_ratio());
        let full = self.clearance * steady.film_ratio();
        let brief = self.is_brief(steady.film_ratio());
        // the start that makes the mean as thick as the other film; the rest must leave less than that
        let share = other / full;
        if share > growth.mean {
            let start = ((share * share - growth.mean * growth.mean) / (1.0 - growth.mean * growth.mean)).sqrt();
            let closeness = (1.0 + steady.closeness()) / start - 1.0;
            if self.squeezed_too_far(closeness.ln(), steady.closeness(), &growth).0 <= 0.0 {
                return Ok(Rigid::MeanLoses { brief });
            }
        }
        let start = self.start(steady.closeness(), &growth, roots)?;
        Ok(Rigid::Mean { film: full * towards_steady(start, growth.mean), brief })
    }

    /// The mean film of the turn, m, whatever it competes with.
    pub(in super::super) fn mean_film(&self) -> Result<(f64, bool)> {
        let mut roots = Roots::default();
        let steady = self.steady(&mut roots)?;
        let growth = Growth::new(self.angle, steady.film_ratio());
        let start = self.start(steady.closeness(), &growth, &mut roots)?;
        let film = self.clearance * steady.film_ratio() * towards_steady(start, growth.mean);
        Ok((film, self.is_brief(steady.film_ratio())))
    }

    /// What a start film has too much of having been squeezed: ln of its squeeze number over that of the end film plus
    /// the rest, and the slope. Positive where the rest leaves more than that start. The start is given by ln q of its
    /// closeness, `steady` is the closeness of the steady film.
    fn squeezed_too_far(&self, log_closeness: f64, steady: f64, growth: &Growth) -> (f64, f64) {
        let ld2 = self.length_to_diameter * self.length_to_diameter;
        let at_start = log_closeness.exp();
        let start = (1.0 + steady) / (1.0 + at_start);
        let end = towards_steady(start, growth.end);
        // closeness of a film y times the steady one is (q + 1 − y)/y; 1 − y in steps, so that thick films stay exact
        let start_missing = (at_start - steady) / (1.0 + at_start);
        let end_missing = start_missing * (1.0 + start) * growth.end_gap / (1.0 + end);
        let at_end = (steady + end_missing) / end;
        let (ln_start, start_slope) = squeeze_number(at_start, ld2);
        let (ln_end, end_slope) = squeeze_number(at_end, ld2);
        let number_end = ln_end.exp();
        let total = number_end + self.rest;
        let end_follows =
            (1.0 + at_end) / at_end * start * start * growth.end_gap / (end * end) * at_start / (1.0 + at_start);
        (ln_start - total.ln(), start_slope - end_slope * end_follows * number_end / total)
    }

    /// The film when the turn begins as a share of the steady one: where squeezing at rest takes away what the turn
    /// builds up.
    ///
    /// The map from start to start is a rest after a turn; its fixed point is found as a root, which needs no inverse
    /// of the squeeze number and no patience where rests are short.
    fn start(&self, steady: f64, growth: &Growth, roots: &mut Roots) -> Result<f64> {
        if self.rest <= 0.0 {
            return Ok(1.0);
        }
        let (bounds, from) = match roots.start {
            Some(root) => ((steady.ln(), ANYWHERE.1), root),
            None => self.start_bounds(steady, growth)?,
        };
        let log_closeness = rising_root("film after rest", bounds, from, |log_closeness| {
            self.squeezed_too_far(log_closeness, steady, growth)
        })?;
        roots.start = Some(log_closeness);
        Ok((1.0 + steady) / (1.0 + log_closeness.exp()))
    }

    /// Bounds of the logarithm of the closeness when the turn begins, and where to start looking.
    fn start_bounds(&self, steady: f64, growth: &Growth) -> Result<((f64, f64), f64)> {
        // a first rest after a turn from bare contact leaves less than the start we look for, the steady film is more
        let from_bare = (steady + growth.end_gap / (1.0 + growth.end)) / growth.end;
        let bare = squeeze_number(from_bare, self.length_to_diameter * self.length_to_diameter).0.exp();
        let first = finite_squeeze_eccentricity(bare + self.rest, self.length_to_diameter)?.closeness().ln();
        Ok(((steady.ln(), first + 1e-9), first))
    }
}

#[cfg(test)]
mod tests {
    use super::super::Eccentricity;
    use super::*;
    use proptest::prelude::*;

    /// The fixed point as it is defined: turn, rest, turn, rest … from bare contact.
    fn start_by_patience(joint: &RigidJoint, steady: f64, growth: &Growth) -> Option<f64> {
        let mut start = 0.0_f64;
        let full = 1.0 / (1.0 + steady);
        for _ in 0..20_000 {
            let end = full * towards_steady(start, growth.end);
            let number = finite_squeeze_number(Eccentricity::from_film_ratio(end), joint) + joint.rest;
            let rested = finite_squeeze_eccentricity(number, joint.length_to_diameter).unwrap();
            let next = (rested.film_ratio() / full).min(1.0);
            if (next - start).abs() <= 1e-13 * next {
                return Some(next);
            }
            start = next;
        }
        None
    }

    fn finite_squeeze_number(at: Eccentricity, joint: &RigidJoint) -> f64 {
        super::super::finite_squeeze_time(at, joint.length_to_diameter)
    }

    #[test]
    fn small_and_large_joint() {
        let joint = |radius, clearance, length| Pair {
            radius,
            radial_clearance: clearance,
            length,
            conformity: 1.0,
            elasticity: super::super::super::STEEL,
        };
        let turn = |angular_speed, angle, rest_time, rest_load| Turn { angular_speed, angle, rest_time, rest_load };
        let cases = [
            (
                turn_film(&joint(2.225e-3, 25e-6, 11.3e-3), 0.05, 500.0, &turn(39.0, 0.3307, 2.0, 500.0)).unwrap(),
                [2.370_168e-12, 1.400_465_635e-8, 3.186_961e-8, 4.545_599e-8],
            ),
            (
                turn_film(&joint(4.25e-3, 50e-6, 28e-3), 0.3, 300.0, &turn(5.0, 0.7, 5.0, 300.0)).unwrap(),
                [1.265_670_213e-9, 1.349_732e-7, 3.210_951e-7, 5.076_205e-7],
            ),
        ];
        for (film, printed) in cases {
            for (ours, printed) in [film.start, film.mean, film.end, film.steady].iter().zip(printed) {
                assert!((ours / printed - 1.0).abs() < 4e-7, "{film:?}");
            }
        }
    }

    #[test]
    fn without_load_at_rest_the_steady_film_stays() {
        let pair = Pair::new(0.01, 0.0101, 0.02, 1.0).unwrap();
        let film =
            turn_film(&pair, 0.1, 500.0, &Turn { angular_speed: 2.0, angle: 0.5, rest_time: 9.0, rest_load: 0.0 });
        let film = film.unwrap();
        assert_eq!((film.start, film.mean, film.end), (film.steady, film.steady, film.steady));
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(200))]
        #[test]
        fn the_root_is_the_first_fixed_point(
            log_load in -4.0..18.0_f64, angle in 0.02..2.1_f64, log_rest in -2.0..20.0_f64, ld in 0.2..10.0_f64,
            shift in -1.0..1.0_f64,
        ) {
            let joint = RigidJoint {
                length_to_diameter: ld, clearance: 1.0, load: log_load.exp(), rest: log_rest.exp(), angle,
            };
            let mut roots = Roots::default();
            let steady = joint.steady(&mut roots).unwrap();
            let growth = Growth::new(angle, steady.film_ratio());
            let root = joint.start(steady.closeness(), &growth, &mut roots).unwrap();
            prop_assert!(root > 0.0 && root <= 1.0);
            // a joint somewhat like it starts there and finds the same as from nowhere
            let like = RigidJoint { load: joint.load * (0.2 * shift).exp(), rest: joint.rest * (0.3 * shift).exp(), ..joint };
            let again = (like.steady(&mut roots).unwrap(), like.steady(&mut Roots::default()).unwrap());
            prop_assert!((again.0.film_ratio() / again.1.film_ratio() - 1.0).abs() < 1e-11);
            let growth_there = Growth::new(angle, again.1.film_ratio());
            let there = |roots: &mut Roots| like.start(again.1.closeness(), &growth_there, roots).unwrap();
            prop_assert!((there(&mut roots) / there(&mut Roots::default()) - 1.0).abs() < 1e-11);
            if let Some(patient) = start_by_patience(&joint, steady.closeness(), &growth) {
                prop_assert!((root / patient - 1.0).abs() < 1e-9, "{root} {patient}");
            }
        }
    }
}
