//! The film of a joint followed in time round the loop, beside the closed form that `evaluate` uses.

use super::Line;
use super::checked::Checked;
use super::course::Course;
use super::oiling::Oiling;
use super::reach::reach;
use super::settle::{JointEvent, settle};
use crate::circuit::EventKind as Bend;
use crate::error::{Code, Error, Result};
use crate::joint::orbit::{Segment, SegmentFilm, periodic_orbit, squeeze_time};
use crate::joint::{EventKind, Pair, Turn, turn_film};
use crate::noun;
use crate::quantity::Class;
use crate::quantity::{Field, unit};

const ORBIT: &str = "mobility method, Booker 1965, half film, over the events of the circuit until it repeats; closure of our own for the finite length";
const FAST: &str = "closed form of the periodic orbit: closure of our own, fitted to integrated orbits";

macro_rules! orbit_event_noun { ($declare:ident) => { $declare! {
    /// One articulation of a joint: the load and time it gets, and the smallest gap that a rigid flooded pin keeps.
    OrbitEvent / OrbitEventSi, "events" {
        section as section: i64 [ONE] "section of the survey, from 0" {}
        kind as kind: EventKind [WORD] "entry or exit of a turn, or the last of the idlers of a straight" {}
        count as count: f64 [ONE] "articulations in one circuit" {}
        angular_speed_rad_per_s as angular_speed: f64 [RAD_PER_S] "speed of pin against bush, with its sense" { symbol: "ω", formula: "angle of articulation × {duty.speed_m_per_min} / {chain.pitch_mm}", source: "definition", class: Class::Derived }
        turn_s as turn: f64 [S] "duration of the turn" { formula: "{chain.pitch_mm} / {duty.speed_m_per_min}", source: "definition", class: Class::Derived }
        squeeze_time_s as squeeze_time: f64 [S] "time scale on which the load of the turn squeezes a film out" { symbol: "K", formula: "η R L³ / (W c²)", source: "Ocvirk 1952", class: Class::FromMemory }
        rest_s as rest: f64 [S] "time at rest before it" { formula: "time since the previous event, at least one pitch", source: "definition", class: Class::Derived }
        rest_squeeze_time_s as rest_squeeze_time: f64 [S] "the same time scale for the mean load at rest" { formula: "η R L³ / (W c²)", source: "Ocvirk 1952", class: Class::FromMemory }
        film_start_um as film_start: f64 [UM] "smallest gap when the turn begins, orbit" { formula: "followed in time", source: ORBIT, class: Class::Closure }
        film_mean_um as film_mean: f64 [UM] "mean smallest gap over the turn, orbit" { formula: "followed in time", source: ORBIT, class: Class::Closure }
        film_end_um as film_end: f64 [UM] "smallest gap when the turn ends, orbit" { formula: "followed in time", source: ORBIT, class: Class::Closure }
        fast_film_start_um as fast_film_start: f64 [UM] "smallest gap when the turn begins, closed form" { formula: "start of the periodic closed form", source: FAST, class: Class::Closure }
        fast_film_mean_um as fast_film_mean: f64 [UM] "mean smallest gap over the turn, closed form" { formula: "mean of the periodic closed form", source: FAST, class: Class::Closure }
        fast_film_end_um as fast_film_end: f64 [UM] "smallest gap when the turn ends, closed form" { formula: "end of the periodic closed form", source: FAST, class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use orbit_event_noun;
orbit_event_noun!(noun);

macro_rules! joint_orbit_noun { ($declare:ident) => { $declare! {
    /// The path of a pin in its bush through all events of the circuit, periodic, with the closed form beside it.
    JointOrbit / JointOrbitSi, "" {
        circuits as circuits: i64 [ONE] "circuits until the path repeats itself" {}
        length_to_diameter as length_to_diameter: f64 [ONE] "joint length over pin diameter" { symbol: "L/D", formula: "{chain.joint_length_mm} / {chain.pin_diameter_mm}", source: "definition", class: Class::Derived }
        radial_clearance_um as radial_clearance: f64 [UM] "radial clearance of the run-in joint" { symbol: "c", formula: "({chain.bush_bore_mm} − {chain.pin_diameter_mm}) / 2 / {surface.conformity}", source: "closure of our own for the conformity", class: Class::Closure }
        events as events: Vec<OrbitEvent> [WORD] "each articulation, in the order of travel from the drive" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use joint_orbit_noun;
joint_orbit_noun!(noun);

/// Follows the pin of a joint through every rest and turn of the circuit until its path repeats.
///
/// The joint is flooded and rigid, and its loads are the settled tensions of [`evaluate`](super::evaluate). A reference for
/// the closed form, whose values for the same events stand beside it. Fails where the line cannot be evaluated, where the
/// chain hangs slack at an event (no load, no film to follow), or where the path does not repeat.
///
/// ```
/// let survey = include_str!("../../python/pinfilm/data/floor_now.toml");
/// let line = pinfilm::line::Line::from_toml(survey)?;
/// let orbit = pinfilm::line::joint_orbit(&line)?;
/// assert!(orbit.events.iter().all(|event| event.film_start_um < event.film_end_um));
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn joint_orbit(line: &Line) -> Result<JointOrbit> {
    let survey = Checked::new(line)?;
    let course = Course::lay_out(&survey)?;
    let oiling = Oiling::of(&survey, &course)?;
    let reach = reach(&survey, &course, &oiling)?;
    let settled = settle(&survey, &course, &oiling, &reach)?;
    let (chain, speed) = (&survey.si.chain, survey.si.duty.speed);
    let pair = Pair::new(chain.pin_diameter, chain.bush_bore, chain.joint_length, survey.si.surface.conformity)?;
    let joint = Joint { pair, turn: chain.pitch / speed };
    let mut segments = Vec::new();
    let mut last_turn = Vec::with_capacity(settled.events.len());
    for event in &settled.events {
        joint.bends(event, &mut segments)?;
        last_turn.push(segments.len() - 1);
    }
    let orbit = periodic_orbit(&segments, Some(pair.length_to_diameter()))?;
    let events = settled
        .events
        .iter()
        .zip(last_turn)
        .map(|(event, at)| joint.shown(event, &segments[at - 1], &segments[at], &orbit.segments[at]))
        .collect::<Result<_>>()?;
    let si = JointOrbitSi {
        circuits: orbit.circuits as i64,
        length_to_diameter: pair.length_to_diameter(),
        radial_clearance: pair.fitted_clearance(),
        events,
    };
    Ok(JointOrbit::public(si, &unit::WORD))
}

/// The joint that goes round.
struct Joint {
    pair: Pair,
    /// Duration of a turn, s.
    turn: f64,
}

impl Joint {
    fn squeeze_time(&self, viscosity: f64, load: f64) -> f64 {
        let pair = &self.pair;
        squeeze_time(viscosity, pair.radius, pair.length, load, pair.fitted_clearance())
    }

    /// Adds the rests and turns of an event; idlers bend the joint to and fro.
    fn bends(&self, event: &JointEvent, segments: &mut Vec<Segment>) -> Result<()> {
        let at = &event.event;
        if at.tension <= 0.0 || at.rest_tension <= 0.0 {
            let message = format!(
                "the chain hangs slack at section {} ({}), so there is no load that squeezes a film out: raise circuit.take_up_n",
                at.section,
                at.kind.as_str()
            );
            return Err(Error::new(Code::BeyondModel, "joint.events.tension_n", message)
                .number(at.tension)
                .unit("N")
                .limit("more than 0 N"));
        }
        let times = if at.kind == Bend::Idler { at.count.round().max(1.0) as usize } else { 1 };
        let (rest, turn) =
            (self.squeeze_time(event.viscosity, at.rest_tension), self.squeeze_time(event.viscosity, at.tension));
        for bend in 0..times {
            let sense = if at.sense == 0 { 1.0 - 2.0 * (bend % 2) as f64 } else { at.sense as f64 };
            segments.push(Segment { squeeze_time: rest, angular_speed: 0.0, duration: at.rest });
            let angular_speed = sense * at.angle.abs() / self.turn;
            segments.push(Segment { squeeze_time: turn, angular_speed, duration: self.turn });
        }
        Ok(())
    }

    fn shown(&self, event: &JointEvent, rest: &Segment, turn: &Segment, film: &SegmentFilm) -> Result<OrbitEventSi> {
        let at = &event.event;
        let clearance = self.pair.fitted_clearance();
        let angular_speed = turn.angular_speed.abs();
        let bend = Turn { angular_speed, angle: at.angle.abs(), rest_time: at.rest, rest_load: at.rest_tension };
        let fast = turn_film(&self.pair, event.viscosity, at.tension, &bend)?;
        Ok(OrbitEventSi {
            section: at.section as i64,
            kind: match at.kind {
                Bend::Entry => EventKind::Entry,
                Bend::Exit => EventKind::Exit,
                Bend::Idler => EventKind::Idler,
            },
            count: at.count,
            angular_speed: turn.angular_speed,
            turn: self.turn,
            squeeze_time: turn.squeeze_time,
            rest: at.rest,
            rest_squeeze_time: rest.squeeze_time,
            film_start: clearance * film.start.film_ratio(),
            film_mean: clearance * film.mean_film_ratio,
            film_end: clearance * film.end.film_ratio(),
            fast_film_start: fast.start,
            fast_film_mean: fast.mean,
            fast_film_end: fast.end,
        })
    }
}
