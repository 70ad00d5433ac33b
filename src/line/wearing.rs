//! Wear of the joints, classes of joints to elongation and life.

use super::checked::Checked;
use super::course::Course;
use super::oiling::Oiling;
use super::reach::Reach;
use super::settle::Settled;
use crate::circuit::EventKind;
use crate::error::Result;
use crate::quantity::unit::HOURS_OF_YEAR;
use crate::wear::{
    Body, CircuitWork, Class, Event, FLANK_SLIP, JointGeometry, Lives, OilAge, RunningIn, WearCoefficients, WearLimits,
    WearingChain, WearingClass, WornJoint, class_coefficient, event_coefficients, hardness_factor, replacement_limit,
    roller_bush_depth, service_life, sprocket_flank_depth, sprocket_sliding,
};

const YEAR: f64 = HOURS_OF_YEAR * 3600.0;
/// A mixed wear coefficient that was not given is this share of the boundary one. Closure of our own.
const MIXED_SHARE: f64 = 0.2;
/// A case depth that was not given is this share of the pin. From memory of case hardening practice.
const CASE_SHARE: f64 = 0.06;
/// Wear of the wall of a bush at which the chain is replaced, as a share of the wall. From memory.
const BUSH_SHARE: f64 = 0.5;

/// What wear does to this chain. Times are calendar seconds where not said otherwise.
pub(super) struct Wearing {
    pub event_coefficients: Vec<f64>,
    pub coefficient_reached: f64,
    pub coefficient_never: Option<f64>,
    pub temperature: f64,
    pub hardness_factor: f64,
    pub limit: f64,
    /// Sliding of pin in bush for each second of running (m/s).
    pub sliding_rate: f64,
    pub elongation_1_year: f64,
    pub lives: Lives,
    pub service_life: f64,
    /// Depth a calendar second (m/s).
    pub sprocket_flank: Option<f64>,
    pub roller_bush: Option<f64>,
    /// The chain that wears so, for its elongation at any time.
    pub wearer: Wearer,
}

/// A chain that wears, with all that its elongation against time needs; running seconds.
pub(super) struct Wearer {
    joint: WornJoint,
    classes: Vec<WearingClass>,
    pitch: f64,
    pin_diameter: f64,
    wall: Option<f64>,
    work_rate: f64,
    sliding_rate: f64,
    running_in: RunningIn,
}

impl Wearer {
    pub fn chain(&self) -> WearingChain<'_> {
        WearingChain {
            joint: &self.joint,
            pitch: self.pitch,
            pin_diameter: self.pin_diameter,
            wall: self.wall,
            classes: &self.classes,
            work_rate: self.work_rate,
            sliding_rate: self.sliding_rate,
            running_in: self.running_in,
        }
    }
}

pub(super) fn wear_of(
    survey: &Checked,
    course: &Course,
    oiling: &Oiling,
    reach: &Reach,
    settled: &Settled,
) -> Result<Wearing> {
    let (line, chain, wear) = (&survey.si, &survey.si.chain, &survey.si.wear);
    let circuit_time = course.layout.circuit_time;
    let events: Vec<Event> = settled
        .events
        .iter()
        .map(|joint| Event {
            count: joint.event.count,
            tension: joint.event.tension.max(0.0),
            angle: joint.event.angle.abs(),
            temperature: joint.event.temperature,
            lambda_at_fill_1: joint.contact.lambda_at_fill_1,
        })
        .collect();
    let law = WearCoefficients {
        dry: wear.coefficient_dry,
        boundary: wear.coefficient_boundary,
        mixed: wear.coefficient_mixed.unwrap_or(MIXED_SHARE * wear.coefficient_boundary),
        full: wear.coefficient_full,
        fill_half: wear.fill_half,
        transition: line.oil.boundary_transition,
        dust_factor: line.duty.dust_factor,
        water_factor: line.duty.water_factor,
    }
    .law();
    let waits = reach.wait_pairs();
    let age = OilAge { fill: reach.after_shot, loss_rate: oiling.loss_rate };
    let reached = Class { share: 1.0 - reach.never, waits: &waits, oil: age, contiguous: reach.contiguous };
    let of_events = event_coefficients(&law, &events, &reached);
    let coefficient_reached = class_coefficient(&events, &of_events);
    let coefficient_never = (reach.never > 0.0).then(|| law.dry_coefficient());

    let work = CircuitWork::of(&events);
    let hardness_factor = hardness_factor(work.temperature);
    let body = Body {
        case_hardness: chain.case_hardness,
        core_hardness: chain.core_hardness,
        case_depth: chain.case_depth.unwrap_or(CASE_SHARE * chain.pin_diameter),
        core_factor: chain.core_factor,
    };
    let wall = Some((chain.bush_diameter - chain.bush_bore) / 2.0);
    let joint = WornJoint::new(
        &JointGeometry {
            pitch: chain.pitch,
            pin_diameter: chain.pin_diameter,
            bush_bore: chain.bush_bore,
            joint_length: chain.joint_length,
            pin: body,
            bush: body,
            wall,
        },
        hardness_factor,
    );
    let mut classes = Vec::with_capacity(2);
    if reach.never < 1.0 {
        classes.push(WearingClass {
            share: 1.0 - reach.never,
            coefficient: coefficient_reached,
            contiguous: reach.contiguous,
        });
    }
    if let Some(coefficient) = coefficient_never {
        classes.push(WearingClass { share: reach.never, coefficient, contiguous: reach.contiguous });
    }
    let pin_radius = chain.pin_diameter / 2.0;
    let sliding_rate = work.sliding_rate(pin_radius, circuit_time);
    let wearer = Wearer {
        joint,
        classes,
        pitch: chain.pitch,
        pin_diameter: chain.pin_diameter,
        wall,
        work_rate: work.work_rate(pin_radius, circuit_time),
        sliding_rate,
        running_in: RunningIn { factor: wear.run_in_factor, distance: wear.run_in_distance },
    };
    let wearing = wearer.chain();
    let teeth = course.layout.places.iter().filter_map(|place| place.turn()?.teeth).max();
    let limit = replacement_limit(
        chain.elongation_limit,
        chain.pitch,
        chain.roller_diameter.unwrap_or(chain.bush_diameter),
        teeth,
    )?;
    let limits = WearLimits { elongation: limit, pin_share: chain.pin_wear_limit, bush_share: BUSH_SHARE };
    let running = wearing.lives(&limits)?;
    let share = survey.running_share;
    let elongation_1_year = wearing.elongation(share * YEAR);
    let lives = Lives {
        mean: running.mean / share,
        local: running.local / share,
        pin: running.pin / share,
        bush: running.bush.map(|life| life / share),
        case_through: running.case_through / share,
        life: running.life / share,
        governs: running.governs,
    };
    Ok(Wearing {
        sprocket_flank: sprocket_flank(survey, course, settled, &of_events),
        roller_bush: roller_bush(survey, course, &law, &reached, settled),
        event_coefficients: of_events,
        coefficient_reached,
        coefficient_never,
        temperature: work.temperature,
        hardness_factor,
        limit,
        sliding_rate,
        elongation_1_year,
        service_life: service_life(lives.life, line.costs.other_life),
        lives,
        wearer,
    })
}

/// Wear of the drive sprocket's flanks (m a calendar second), from the event at which joints come onto it.
fn sprocket_flank(survey: &Checked, course: &Course, settled: &Settled, coefficients: &[f64]) -> Option<f64> {
    let chain = &survey.si.chain;
    let drive = course.layout.drive();
    let teeth = drive.turn()?.teeth?;
    let at = settled
        .events
        .iter()
        .position(|joint| joint.event.section == drive.section && joint.event.kind == EventKind::Entry)?;
    let (diameter, width) = (chain.roller_diameter?, chain.inner_width?);
    let sliding = sprocket_sliding(FLANK_SLIP, diameter, teeth);
    let seatings =
        f64::from(course.layout.joints) / f64::from(teeth) * survey.running_share / course.layout.circuit_time;
    let tension = settled.events[at].event.tension.max(0.0);
    let hardness = survey.si.wear.sprocket_hardness;
    Some(sprocket_flank_depth(coefficients[at], tension, sliding, seatings, diameter, width, hardness))
}

/// Wear of the bush under its rollers (m a calendar second), summed over the straights that run on rollers.
fn roller_bush(
    survey: &Checked,
    course: &Course,
    law: &crate::wear::CoefficientLaw,
    reached: &Class,
    settled: &Settled,
) -> Option<f64> {
    let chain = &survey.si.chain;
    let (diameter, width) = (chain.roller_diameter?, chain.inner_width?);
    let mut depth = 0.0;
    for rollers in &settled.rollers {
        let place = &course.layout.places[course.layout.position(rollers.section)?];
        let temperature = course.temperatures.sections[rollers.section].mean;
        let coefficient = reached.oil.mean_over_waits(&law.at(0.0, temperature), reached.waits);
        let sliding = crate::wear::roller_sliding(place.length, chain.bush_diameter, diameter);
        depth += roller_bush_depth(coefficient, rollers.load, sliding, chain.bush_diameter, width, chain.case_hardness);
    }
    let circuits = survey.running_share / course.layout.circuit_time;
    (!settled.rollers.is_empty()).then_some(depth * circuits)
}
