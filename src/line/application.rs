//! Where oil meets the chain, how long it has there, and how much gets in.

use super::checked::Checked;
use super::course::Course;
use super::oiling::points;
use crate::circuit::{SectionSi, SectionTemperature, Way};
use crate::error::{Code, Error, Result};
use crate::lubrication::LubricationSi;
use crate::lubrication::coverage::every_nth;
use crate::lubrication::entry::JointEntry;
use crate::lubrication::method;
use crate::lubrication::point::{Exclusion, Loop, Point, Surroundings};
use crate::oil::Liquid;
use crate::quantity::{Access, Side};

/// Air from which a section is an oven for the oil on the plates (°C). Closure of our own.
const OVEN: f64 = 100.0;

/// A place on the loop: section of the survey, share of its length, side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Spot {
    pub section: usize,
    pub position: f64,
    pub side: Side,
}

/// The place where oil is applied, and what happens to it there.
pub(super) struct Application {
    pub spot: Spot,
    /// None where the place cannot be scored: it is not on a straight.
    pub score: Option<f64>,
    /// Why the surveyed place should not be used; empty if it may.
    pub exclusions: Vec<Exclusion>,
    pub temperature: f64,
    pub viscosity: f64,
    pub time_available: f64,
    pub entry: JointEntry,
    pub plate_time: f64,
    pub annulus_time: f64,
    pub entered: f64,
}

/// Finds the place (that of the survey, or the best) and lets the oil in.
pub(super) fn apply(
    survey: &Checked,
    course: &Course,
    liquid: &Liquid,
    entry: &impl Fn(f64, f64) -> JointEntry,
    sheds: &impl Fn(f64) -> bool,
) -> Result<Application> {
    let (section, position, side, given) = match &survey.si.lubrication {
        LubricationSi::Manual(m) => {
            (m.application_section, m.application_position, m.application_side, m.time_available)
        }
        LubricationSi::Drip(m) => (m.application_section, m.application_position, m.application_side, m.time_available),
        LubricationSi::Spray(m) => {
            (m.application_section, m.application_position, m.application_side, m.time_available)
        }
        LubricationSi::Synchronised(m) => {
            (m.application_section, m.application_position, m.application_side, m.time_available)
        }
    };
    let length = survey.si.chain.joint_length;
    let depth = if points(&survey.si.lubrication) >= 2.0 { length / 2.0 } else { length };
    let next_run = next_run(survey, course)?;
    let round = Round::of(course);
    let let_in = |spot: Spot| -> Result<Application> {
        let temperature = temperature_at(course, spot);
        let viscosity = liquid.dynamic_viscosity(temperature)?;
        let time_available = given.unwrap_or_else(|| time_to_loss(survey, course, spot, sheds).unwrap_or(next_run));
        let entry = entry(depth, liquid.density(temperature));
        let entered = entry.entered_share(viscosity, time_available);
        let (plate_time, annulus_time) = (entry.plate_time(viscosity), entry.annulus_time(viscosity));
        let mut application = Application {
            spot,
            score: None,
            exclusions: Vec::new(),
            temperature,
            viscosity,
            time_available,
            entry,
            plate_time,
            annulus_time,
            entered,
        };
        if let SectionSi::Straight(_) = &survey.si.circuit.sections[spot.section] {
            let (point, round) = judged(survey, course, &round, &application);
            application.score = Some(point.score(&round).score);
            application.exclusions = point.exclusions(&round).into_iter().flatten().collect();
        }
        Ok(application)
    };
    match section {
        Some(section) if (section as usize) < survey.si.circuit.sections.len() => {
            let_in(Spot { section: section as usize, position, side })
        }
        Some(section) => {
            let count = survey.si.circuit.sections.len();
            let message = format!(
                "lubrication.application_section = {section} is not a section of this circuit, which has 0 to {}",
                count - 1
            );
            Err(Error::new(Code::Inconsistent, "lubrication.application_section", message)
                .number(section as f64)
                .limit(format!("0 to {}", count - 1)))
        }
        None => best(survey, course, &round, let_in),
    }
}

/// The best of start, middle and end of every straight, from every side that can be reached.
///
/// What the oil does there is the same from every side, so that each place is worked out once.
fn best(
    survey: &Checked,
    course: &Course,
    round: &Round,
    let_in: impl Fn(Spot) -> Result<Application>,
) -> Result<Application> {
    let mut found: Option<(Spot, (f64, f64))> = None;
    for (section, surveyed) in survey.si.circuit.sections.iter().enumerate() {
        let SectionSi::Straight(straight) = surveyed else { continue };
        let Some(&any) = straight.reachable_sides.first() else { continue };
        let places = [0.0, 0.5, 1.0].map(|position| {
            let place =
                let_in(Spot { section, position, side: any }).ok().filter(|place| place.exclusions.is_empty())?;
            let (point, against) = judged(survey, course, round, &place);
            Some((place.spot, point, against))
        });
        for &side in &straight.reachable_sides {
            for (spot, point, against) in places.iter().flatten() {
                let rank = (Point { side, ..*point }.score(against).score, point.time_available);
                if found.is_none_or(|(_, best)| rank > best) {
                    found = Some((Spot { side, ..*spot }, rank));
                }
            }
        }
    }
    let nowhere = || {
        Error::new(
            Code::Inconsistent,
            "lubrication.application_section",
            "no place on this circuit may be oiled: every straight is washed, above open product, too near the flash point, \
             beside an ignition source for spray, or out of reach. Give application_section, or change what is in the way",
        )
    };
    let_in(found.ok_or_else(nowhere)?.0)
}

/// The chain temperature at a place (°C).
fn temperature_at(course: &Course, spot: Spot) -> f64 {
    let duration = course.layout.position(spot.section).map_or(0.0, |place| course.layout.places[place].duration);
    course.temperatures.sections[spot.section].after(spot.position * duration)
}

/// Least and greatest tension (N) and temperature (°C) round the loop.
struct Round {
    tension: (f64, f64),
    temperature: (f64, f64),
}

impl Round {
    fn of(course: &Course) -> Round {
        let nothing = (f64::INFINITY, f64::NEG_INFINITY);
        let span = |(low, high): (f64, f64), [a, b]: [f64; 2]| (low.min(a.min(b)), high.max(a.max(b)));
        let warmth = |section: &SectionTemperature| [section.inlet, section.outlet];
        Round {
            tension: course.reference.profile.iter().copied().fold(nothing, span),
            temperature: course.temperatures.sections.iter().map(warmth).fold(nothing, span),
        }
    }
}

/// The point as the score sees it, and what it is measured against.
fn judged(survey: &Checked, course: &Course, round: &Round, at: &Application) -> (Point, Loop) {
    let spot = at.spot;
    let [entry, exit] = course.reference.profile[spot.section];
    let (mut open_share, mut access, mut surroundings) = (1.0, Access::Open, Surroundings::default());
    if let SectionSi::Straight(straight) = &survey.si.circuit.sections[spot.section] {
        open_share = straight.gap_open_share;
        access = straight.access;
        surroundings = Surroundings {
            above_product: straight.above_product,
            food_oil_and_tray: survey.si.oil.food_grade,
            side_unreachable: !straight.reachable_sides.contains(&spot.side),
            in_wash: straight.wash,
            sprayed: matches!(survey.si.lubrication, LubricationSi::Spray(_)),
            ignition_near: straight.ignition_source,
        };
    }
    let point = Point {
        tension: entry + (exit - entry) * spot.position,
        temperature: at.temperature,
        time_available: at.time_available,
        side: spot.side,
        open_share,
        time_to_wash: time_to(
            survey,
            course,
            spot,
            |section, _| matches!(section, SectionSi::Straight(straight) if straight.wash),
        ),
        access,
        surroundings,
    };
    let against = Loop {
        tension: round.tension,
        temperature: round.temperature,
        flash_point: survey.si.oil.flash_point.unwrap_or(f64::INFINITY),
        entry_time: at.plate_time + at.annulus_time,
    };
    (point, against)
}

/// Time (s) from a place to the entry of the first section ahead for which `is` holds, if there is one.
fn time_to(survey: &Checked, course: &Course, spot: Spot, is: impl Fn(&SectionSi, &Way) -> bool) -> Option<f64> {
    let places = &course.layout.places;
    let start = course.layout.position(spot.section)?;
    let mut time = places[start].duration * (1.0 - spot.position);
    for step in 1..=places.len() {
        let place = &places[(start + step) % places.len()];
        if is(&survey.si.circuit.sections[place.section], &place.way) {
            return Some(time);
        }
        time += place.duration;
    }
    None
}

/// Time (s) until a turn sheds the oil, an oven takes it, or a wash does.
fn time_to_loss(survey: &Checked, course: &Course, spot: Spot, sheds: &impl Fn(f64) -> bool) -> Option<f64> {
    let here = course.temperatures.sections[spot.section].environment;
    time_to(survey, course, spot, |section, way| match (section, way) {
        (SectionSi::Straight(straight), _) => {
            let air = straight.temperature.unwrap_or(survey.si.duty.ambient);
            straight.wash || (air >= OVEN && here < OVEN)
        }
        (SectionSi::Turn(_), Way::Turn(turn)) => sheds(turn.radius),
        _ => false,
    })
}

/// Time (s of running) until the next oil comes, where nothing takes it before.
fn next_run(survey: &Checked, course: &Course) -> Result<f64> {
    let circuit = course.layout.circuit_time;
    Ok(match &survey.si.lubrication {
        LubricationSi::Manual(manual) => manual.interval * survey.running_share,
        LubricationSi::Drip(drip) => {
            let offered = drip.flow * drip.points as f64 * course.layout.joint_time * drip.capture;
            circuit / method::Drip::new(offered, drip.drop, 1.0, circuit).chance
        }
        LubricationSi::Spray(spray) => circuit.max(spray.timer.run + spray.timer.dwell),
        LubricationSi::Synchronised(synchronised) => match &synchronised.timer {
            Some(timer) => circuit.max(timer.run + timer.dwell),
            None => circuit * every_nth(i64::from(course.layout.joints), synchronised.every_nth)?.wait as f64,
        },
    })
}
