//! Friction and pull, settled: friction of each pair gives the pull, the pull loads the joints, their load gives friction.

use super::checked::Checked;
use super::course::{Course, coefficients};
use super::oiling::Oiling;
use super::reach::Reach;
use crate::circuit::{Coefficients, Event, EventKind, GRAVITY, March, SectionSi, Way, events};
use crate::error::{Code, Error, Result};
use crate::joint::{
    Contact, Elasticity, Friction, Lubricant, Pair, RoughSurface, Turn, articulating_near, boundary_friction,
    roller_friction, rolling,
};
use crate::oil::{pressure_viscosity, roelands};

/// The friction has settled when no coefficient changes by more than this, in its logarithm.
const SETTLED: f64 = 1e-9;
/// Below this change the events need not be evaluated once more with the last coefficients.
const EXACT: f64 = 1e-10;
/// Rounds after which it is said not to settle.
const MOST_ROUNDS: i64 = 200;
/// The least step that damping goes down to.
const LEAST_STEP: f64 = 0.25;

/// One event with the contact that it makes.
pub(super) struct JointEvent {
    pub event: Event,
    pub viscosity: f64,
    pub contact: Contact,
    /// At the effective fill of the joints that are reached.
    pub reached: Friction,
    /// Mean over all joints.
    pub friction: f64,
}

/// The rollers of one straight.
pub(super) struct Rollers {
    pub section: usize,
    pub load: f64,
    pub contact: Contact,
    pub reached: Friction,
    /// With the share that runs on edges.
    pub friction_reached: f64,
    pub friction: f64,
}

/// Everything that the fixed point settles.
pub(super) struct Settled {
    pub march: March,
    pub coefficients: Coefficients,
    pub events: Vec<JointEvent>,
    pub rollers: Vec<Rollers>,
    pub rounds: i64,
}

/// The pair, the surfaces and the oil of one joint, at any temperature of the circuit.
pub(super) struct Bearing<'a> {
    survey: &'a Checked,
    pair: Pair,
    surface: RoughSurface,
    never: f64,
    fill: f64,
}

impl<'a> Bearing<'a> {
    pub(super) fn new(survey: &'a Checked, reach: &Reach) -> Result<Bearing<'a>> {
        let (chain, surface) = (&survey.si.chain, &survey.si.surface);
        let pair = Pair::new(chain.pin_diameter, chain.bush_bore, chain.joint_length, surface.conformity)?;
        let elasticity = Elasticity { youngs_modulus: surface.modulus, poisson_ratio: surface.poisson_ratio };
        Ok(Bearing {
            survey,
            pair: Pair { elasticity, ..pair },
            surface: RoughSurface {
                roughness: surface.roughness,
                asperity_stiffness: surface.asperity_stiffness,
                dry_friction: surface.dry_friction,
                boundary_fill: surface.boundary_fill,
                starvation_exponent: surface.starvation_exponent,
                film_factor: surface.film_factor,
            },
            never: reach.never,
            fill: reach.effective,
        })
    }

    pub(super) fn lubricant(&self, viscosity: f64) -> Lubricant {
        let oil = &self.survey.si.oil;
        Lubricant {
            viscosity,
            pressure_viscosity: pressure_viscosity(viscosity) * oil.pressure_viscosity_factor,
            boundary_friction: oil.boundary_friction,
            limiting_friction: oil.limiting_friction,
        }
    }

    /// Mean over the joints that are reached and those that never are, which are dry.
    fn over_all(&self, reached: f64) -> f64 {
        (1.0 - self.never) * reached + self.never * self.surface.dry_friction
    }

    fn boundary(&self) -> f64 {
        let oil = &self.survey.si.oil;
        boundary_friction(self.fill, self.surface.dry_friction, oil.boundary_friction, self.surface.boundary_fill)
    }

    /// What an event is with the oil in its joint; searched from an event much like it where one is known.
    pub(super) fn at(&self, event: &Event, lubricant: &Lubricant, near: Option<&JointEvent>) -> Result<JointEvent> {
        let viscosity = lubricant.viscosity;
        let (speed, pitch) = (self.survey.si.duty.speed, self.survey.si.chain.pitch);
        let angle = event.angle.abs();
        let turn =
            Turn { angular_speed: angle * speed / pitch, angle, rest_time: event.rest, rest_load: event.rest_tension };
        let (pair, surface) = (&self.pair, &self.surface);
        let under_pressure = |pressure| roelands(viscosity, lubricant.pressure_viscosity, pressure);
        let like = near.map(|like| &like.contact);
        let contact = articulating_near(like, pair, surface, lubricant, event.tension, &turn, under_pressure)
            .map_err(|error| at_section(error, event.section))?;
        let reached = contact.friction_near(near.map(|like| &like.reached), self.fill, surface, lubricant)?;
        let friction = self.over_all(reached.coefficient);
        Ok(JointEvent { event: *event, viscosity, contact, reached, friction })
    }

    /// Every event of a circuit into `found`, searched from those of the round `before`, in the first round the exit of a
    /// turn from its entry.
    fn at_all(
        &self,
        events: &[Event],
        lubricants: &[Lubricant],
        before: &[JointEvent],
        found: &mut Vec<JointEvent>,
    ) -> Result<()> {
        found.clear();
        for (i, (event, lubricant)) in events.iter().zip(lubricants).enumerate() {
            let entry = found.last().filter(|entry| entry.event.section == event.section);
            let next = self.at(event, lubricant, before.get(i).or(entry))?;
            found.push(next);
        }
        Ok(())
    }

    fn rollers(&self, course: &Course, oiling: &Oiling) -> Result<Vec<Rollers>> {
        let (line, chain) = (&self.survey.si, &self.survey.si.chain);
        let mut list = Vec::new();
        for place in &course.layout.places {
            let (Way::Straight(_), SectionSi::Straight(straight)) = (&place.way, &line.circuit.sections[place.section])
            else {
                continue;
            };
            if !place.rolls() {
                continue;
            }
            let (Some(width), Some(bore), Some(diameter)) =
                (chain.inner_width, chain.roller_bore, chain.roller_diameter)
            else {
                if line.friction.bush_roller.is_some() {
                    continue; // the survey says what the rollers do; their contact is not asked for
                }
                return Err(Error::new(
                    Code::Missing,
                    "chain.roller_bore_mm",
                    format!(
                        "section {} runs on rollers, so the chain needs roller_diameter_mm, roller_bore_mm and inner_width_mm \
                         (or give friction.bush_roller and use another support)",
                        place.section
                    ),
                ));
            };
            let pair = Pair::new(chain.bush_diameter, bore, width, line.surface.conformity).map_err(of_roller)?;
            let pair = Pair { elasticity: self.pair.elasticity, ..pair };
            let temperature = course.temperatures.sections[place.section].mean;
            let viscosity = oiling.liquid.dynamic_viscosity(temperature)?;
            let lubricant = self.lubricant(viscosity);
            let level = (straight.length.powi(2) - straight.rise.powi(2)).max(0.0).sqrt() / straight.length;
            let strands = course.layout.strands;
            let load = (strands * chain.mass + straight.load) * GRAVITY * chain.pitch * level
                / (strands * chain.rollers_per_pitch);
            let contact =
                rolling(&pair, &self.surface, &lubricant, load, 2.0 * line.duty.speed / diameter, |pressure| {
                    roelands(viscosity, lubricant.pressure_viscosity, pressure)
                })
                .map_err(|error| at_section(error, place.section))?;
            let reached = contact.friction(self.fill, &self.surface, &lubricant)?;
            let friction_reached =
                roller_friction(reached.coefficient, self.boundary(), line.surface.roller_edge_share);
            let friction = self.over_all(friction_reached);
            list.push(Rollers { section: place.section, load, contact, reached, friction_reached, friction });
        }
        Ok(list)
    }
}

/// Says that the pair is that of bush and roller, where rooms speak of any pair.
fn of_roller(mut error: Error) -> Error {
    error.field += " of the roller";
    error
}

/// Says at which section a contact failed.
fn at_section(mut error: Error, section: usize) -> Error {
    error.message = format!("in section {section}: {}", error.message);
    error
}

/// Iterates friction and pull until they agree.
pub(super) fn settle(survey: &Checked, course: &Course, oiling: &Oiling, reach: &Reach) -> Result<Settled> {
    let bearing = Bearing::new(survey, reach)?;
    let friction = &survey.si.friction;
    let guess = bearing.over_all(bearing.boundary());
    let mut coefficients = coefficients(friction, &course.layout, guess, guess);
    coefficients.plate_track = plate_track(survey, reach);
    let rollers = bearing.rollers(course, oiling)?;
    if friction.bush_roller.is_none() {
        for straight in &rollers {
            coefficients.bush_roller[straight.section] = straight.friction;
        }
    }
    let mut march = March::empty(&course.layout);
    let lubricants: Vec<Lubricant> = oiling.event_viscosity.iter().map(|eta| bearing.lubricant(*eta)).collect();
    let mut list = Vec::with_capacity(course.events.len());
    let mut settled: Vec<JointEvent> = Vec::with_capacity(course.events.len());
    let mut before: Vec<JointEvent> = Vec::with_capacity(course.events.len());
    let (mut step, mut changes) = (1.0, [f64::INFINITY; 2]);
    for round in 1..=MOST_ROUNDS {
        march.renew(&course.layout, &coefficients)?;
        list.clear();
        events(&course.layout, &march, &course.temperatures, &mut list);
        std::mem::swap(&mut settled, &mut before);
        bearing.at_all(&list, &lubricants, &before, &mut settled)?;
        if friction.joint.is_some() {
            return Ok(Settled { march, coefficients, events: settled, rollers, rounds: round });
        }
        let mut change: f64 = 0.0;
        for_each_pair(&settled, |section, computed| {
            let current = &mut coefficients.joint[section];
            let difference = (computed / *current).ln();
            change = change.max(difference.abs());
            *current = if step == 1.0 { computed } else { *current * (step * difference).exp() };
        });
        if change < EXACT {
            return Ok(Settled { march, coefficients, events: settled, rollers, rounds: round });
        }
        if change < SETTLED {
            march.renew(&course.layout, &coefficients)?;
            list.clear();
            events(&course.layout, &march, &course.temperatures, &mut list);
            std::mem::swap(&mut settled, &mut before);
            bearing.at_all(&list, &lubricants, &before, &mut settled)?;
            return Ok(Settled { march, coefficients, events: settled, rollers, rounds: round });
        }
        if change > changes[0] / 2.0 && step > LEAST_STEP {
            step /= 2.0;
        }
        changes = [changes[1], change];
    }
    let residual = changes[1];
    let message = format!(
        "friction and pull did not agree after {MOST_ROUNDS} rounds: the largest change of ln µ was still {residual:.1e}. \
         Very thick oil at the edge of a full film does this: give friction.joint, or a thinner oil"
    );
    Err(Error::new(Code::NotConverged, "joint.mu_joint", message).number(residual).limit(format!("below {SETTLED:e}")))
}

/// Friction of each section whose joints bend: the mean of entry and exit, or that of its idlers.
fn for_each_pair(events: &[JointEvent], mut take: impl FnMut(usize, f64)) {
    let mut i = 0;
    while i < events.len() {
        let here = &events[i];
        if here.event.kind == EventKind::Idler {
            take(here.event.section, here.friction);
            i += 1;
        } else {
            let pair = &events[i..(i + 2).min(events.len())];
            let mean = pair.iter().map(|event| event.friction).sum::<f64>() / pair.len() as f64;
            take(here.event.section, mean);
            i += 2;
        }
    }
}

/// Friction of the side plates on their track, which oil from the joints may reach.
fn plate_track(survey: &Checked, reach: &Reach) -> f64 {
    let (friction, surface) = (&survey.si.friction, &survey.si.surface);
    if !friction.track_oiled {
        return friction.plate_track;
    }
    let oiled =
        boundary_friction(reach.effective, friction.plate_track, friction.plate_track_oiled, surface.boundary_fill);
    (1.0 - reach.never) * oiled + reach.never * friction.plate_track
}
