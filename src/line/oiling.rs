//! What oil does in a joint of this line: how much it holds and loses, where it is applied and how much gets in.

use super::application::{Application, apply};
use super::checked::Checked;
use super::course::Course;
use crate::circuit::GRAVITY;
use crate::error::{Code, Error, Result};
use crate::lubrication::entry::{JointEntry, film_viscosity, most_viscous, pumping_viscosity, retained_width};
use crate::lubrication::loss::{
    Articulation, Capacity, Evaporation, JointSpace, Losses, NOACK_TEMPERATURE, Oxidation, articulation_rate,
    check_flash_point, standing_rate, vapour_ratio, wall_time_rate, wash_rate,
};
use crate::lubrication::{FillSi, LubricationSi};
use crate::oil::Liquid;
use crate::quantity::show::brief;

/// Air factor of evaporation in still air, for the time that the line stands (closure of our own).
const STILL_AIR: f64 = 0.3;

/// The oil in the joints, before anything is said of who gets it.
pub(super) struct Oiling {
    pub liquid: Liquid,
    /// Viscosity of each event of the circuit (Pa s).
    pub event_viscosity: Vec<f64>,
    pub retained_width: f64,
    pub capacity: Capacity,
    pub losses: Losses,
    /// Sum of the losses (1/s of running time).
    pub loss_rate: f64,
    pub application: Application,
    /// Whether oil comes within 20 K of its flash point and somebody has confirmed it.
    pub near_flash_point: bool,
}

impl Oiling {
    pub fn of(survey: &Checked, course: &Course) -> Result<Oiling> {
        let (line, chain, oil) = (&survey.si, &survey.si.chain, &survey.si.oil);
        let liquid = oil.liquid()?;
        let hottest = course.temperatures.sections.iter().map(|s| s.inlet.max(s.outlet)).fold(f64::MIN, f64::max);
        let near_flash_point = match oil.flash_point {
            Some(flash_point) => check_flash_point(hottest, flash_point, line.fill.hot_oil_confirmed)?,
            None => false,
        };
        let event_viscosity = event_viscosities(&liquid, course)?;
        let density = liquid.density(course.temperatures.mean);
        let clearance = (chain.bush_bore - chain.pin_diameter) / 2.0;
        let plate_path = (chain.plate_depth - chain.bush_diameter) / 2.0;
        let sharpest = course.layout.places.iter().filter_map(|place| place.turn()).map(|turn| turn.radius);
        let radius = sharpest.fold(f64::INFINITY, f64::min);
        let width = |acceleration: f64| {
            let (gap, angle) = (chain.plate_gap, line.joint.contact_angle);
            retained_width(gap, plate_path, oil.surface_tension, angle, density, acceleration)
        };
        let throw = |radius: f64| GRAVITY + line.duty.speed.powi(2) / radius;
        let retained_width = width(throw(radius));
        let capacity = JointSpace {
            pin_diameter: chain.pin_diameter,
            clearance,
            joint_length: chain.joint_length,
            bush_diameter: chain.bush_diameter,
            plate_gap: chain.plate_gap,
            retained_width,
            ring_share: line.fill.ring_share,
        }
        .capacity();
        let losses = losses(survey, course, &event_viscosity, density, &capacity);
        let entry = |depth: f64, density: f64| JointEntry {
            plate_gap: chain.plate_gap,
            plate_path,
            pin_diameter: chain.pin_diameter,
            clearance,
            eccentricity: line.joint.eccentricity_ratio,
            depth,
            surface_tension: oil.surface_tension,
            contact_angle: line.joint.contact_angle,
            density,
        };
        let sheds = |radius: f64| width(throw(radius)) < plate_path;
        let application = apply(survey, course, &liquid, &entry, &sheds)?;
        check_pour_point(survey, application.temperature)?;
        let loss_rate = losses.total();
        Ok(Oiling {
            liquid,
            event_viscosity,
            retained_width,
            capacity,
            losses,
            loss_rate,
            application,
            near_flash_point,
        })
    }

    /// Viscosities that get in at the application point, and that stay over the longest wait (Pa s).
    pub fn window(&self, survey: &Checked, course: &Course, longest_wait: f64) -> (f64, f64) {
        let fill: &FillSi = &survey.si.fill;
        let eccentricity = survey.si.joint.eccentricity_ratio;
        let entry = &self.application.entry;
        let most = most_viscous(self.application.time_available, entry.time(1.0));
        let (count, turned) = course
            .events
            .iter()
            .fold((0.0, 0.0), |(n, angle), event| (n + event.count, angle + event.count * event.angle.abs()));
        let articulations = count * longest_wait / course.layout.circuit_time;
        let pumped = pumping_viscosity(
            fill.keep,
            articulations,
            if count > 0.0 { turned / count } else { 0.0 },
            eccentricity,
            fill.articulation_loss,
            fill.articulation_loss_exponent,
            fill.articulation_loss_reference,
        );
        let density = self.liquid.density(course.temperatures.mean);
        let drained = film_viscosity(fill.film_min, longest_wait, entry.plate_path, density);
        (most, pumped.max(drained))
    }
}

/// Refuses an oil that does not flow where it is applied, at `temperature` °C.
fn check_pour_point(survey: &Checked, temperature: f64) -> Result<()> {
    match survey.si.oil.pour_point.filter(|pour| temperature < *pour) {
        None => Ok(()),
        Some(pour) => {
            let at = brief(temperature);
            let message = format!(
                "oil.pour_point_c = {pour} °C: at the application point the chain has {at} °C, and this oil does not flow there. \
                 Take an oil with a lower pour point"
            );
            Err(Error::new(Code::BeyondModel, "oil.pour_point_c", message)
                .number(pour)
                .unit("°C")
                .limit(format!("at most {at} °C")))
        }
    }
}

/// Viscosity at the temperature of each event; joints of one temperature share it.
fn event_viscosities(liquid: &Liquid, course: &Course) -> Result<Vec<f64>> {
    let mut known: Vec<f64> = Vec::with_capacity(course.events.len());
    for event in &course.events {
        let before = course.events.iter().zip(&known).find(|(other, _)| other.temperature == event.temperature);
        let viscosity = match before {
            Some((_, viscosity)) => *viscosity,
            None => liquid.dynamic_viscosity(event.temperature)?,
        };
        known.push(viscosity);
    }
    Ok(known)
}

/// What a joint loses, by cause, per second of running time.
fn losses(survey: &Checked, course: &Course, viscosity: &[f64], density: f64, capacity: &Capacity) -> Losses {
    let (oil, fill, duty) = (&survey.si.oil, &survey.si.fill, &survey.si.duty);
    let evaporation = |air: f64| Evaporation {
        noack_loss: oil.noack,
        heat: oil.vaporisation,
        air,
        noack_mass_per_area: fill.noack_mass_per_area,
        mass_per_area: density * capacity.total / capacity.exposed_area,
    };
    let oxidation = Oxidation { half_life: oil.oxidation_half_life, reference: oil.oxidation_reference };
    let moving = evaporation(fill.air_factor);
    let at_test = moving.rate(NOACK_TEMPERATURE);
    let [evaporated, oxidised] = course.temperatures.time_mean(&course.layout, |temperature| {
        [at_test * vapour_ratio(temperature, NOACK_TEMPERATURE, oil.vaporisation), oxidation.rate(temperature)]
    });
    let mut articulation = 0.0;
    for (event, viscosity) in course.events.iter().zip(viscosity) {
        articulation += articulation_rate(
            &[Articulation { count: event.count, angle: event.angle.abs(), viscosity: *viscosity }],
            course.layout.circuit_time,
            survey.si.joint.eccentricity_ratio,
            fill.articulation_loss,
            fill.articulation_loss_exponent,
            fill.articulation_loss_reference,
        );
    }
    let share = survey.running_share;
    Losses {
        evaporation: evaporated,
        oxidation: oxidised,
        articulation,
        wash: duty.wash_interval.map_or(0.0, |every| wall_time_rate(wash_rate(duty.wash_removed_share, every), share)),
        dust: wall_time_rate(duty.dust_loss, share),
        standing: standing_rate(evaporation(STILL_AIR).rate(duty.ambient), oxidation.rate(duty.ambient), share),
    }
}

/// Gaps of one joint that are served, per strand.
pub(super) fn points(method: &LubricationSi) -> f64 {
    (match method {
        LubricationSi::Manual(m) => m.points,
        LubricationSi::Drip(m) => m.points,
        LubricationSi::Spray(m) => m.points,
        LubricationSi::Synchronised(m) => m.points,
    }) as f64
}
