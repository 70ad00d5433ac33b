//! A station: one oil, at one place, by one method. What it is good for does not depend on shot and timer.

use super::choices::Choices;
use super::reason::{Reason, Refusal};
use super::sieve::Sieve;
use crate::error::{Code, Error, Result};
use crate::line::{Evaluation, Line, evaluate};
use crate::lubrication::fill::longest_wait;
use crate::lubrication::{Lubrication, LubricationSi, Timer};
use crate::oil::{Liquid, Oil};
use crate::quantity::unit::{ML_PER_MIN, ONE};
use crate::quantity::{Field, Side};

/// A place on the loop: section, share of its length, side.
pub(super) type Spot = (i64, f64, Side);

/// An oil at a place by a method.
pub(super) struct Station {
    /// The survey with this oil, method and place; its shot and timer are still to be set.
    pub line: Line,
    /// Number of the oil among the offered.
    pub oil: usize,
    /// Why nothing works here; with the sentence of the error or warning that says so.
    pub refusal: Option<(Refusal, String)>,
    /// Score of the place.
    pub score: f64,
    /// The tests of a timer; none for methods without one.
    pub sieve: Option<Sieve>,
    /// Time that a full joint takes to fall to the floor, s.
    pub patience: f64,
    /// Share of what is aimed at a gap that gets into the joint if nothing spills over.
    pub landed: f64,
    /// Whether the joints were counted.
    pub counted: bool,
    /// Whether the oil enters in half of the time that it has.
    pub enters_soon: bool,
    /// Viscosity of the oil at the mean temperature of the chain, Pa s.
    pub running_viscosity: f64,
}

impl Station {
    /// Looks at one oil, method and place. An error is one of the survey itself; what the station cannot do is a refusal.
    pub fn look(
        line: &Line,
        choices: &Choices,
        oil: (usize, &Oil),
        method: &Lubrication,
        points: i64,
        spot: Option<Spot>,
    ) -> Result<Station> {
        let mut station = Station {
            line: Line { oil: oil.1.clone(), lubrication: method.clone(), ..line.clone() },
            oil: oil.0,
            refusal: None,
            score: 0.0,
            sieve: None,
            patience: f64::INFINITY,
            landed: 0.0,
            counted: false,
            enters_soon: false,
            running_viscosity: f64::NAN,
        };
        *station.points() = points;
        if let Some(spot) = spot {
            station.place(spot);
        }
        let none = Refusal { reason: Reason::NotFoodGrade, value: f64::NAN, limit: f64::NAN };
        if line.duty.food_contact && !oil.1.food_grade {
            return Ok(station.refused(none, Reason::NotFoodGrade.meaning().into()));
        }
        let supply = line.supply.as_ref();
        if let (Some(coldest), Some(pour)) = (supply.and_then(|supply| supply.coldest_c), oil.1.pour_point_c)
            && coldest < pour
        {
            let message =
                format!("the oil line gets as cold as {coldest} °C and the pour point of the oil is {pour} °C");
            return Ok(station.refused(Refusal { reason: Reason::OilDoesNotFlow, ..none }, message));
        }
        // The largest shot and no pause: joints are full, so that nothing but oil and place can be in the way.
        let largest = choices.shots_ul.iter().copied().fold(0.0, f64::max);
        let full = match evaluate(&Line { supply: None, ..station.always(largest)? }) {
            Ok(full) => full,
            Err(error) => {
                let reason = at_fault(&error)?;
                return Ok(station.refused(Refusal { reason, ..none }, error.message));
            }
        };
        station.learn(&full, choices, supply.is_some())?;
        if let Some(warning) = full.warnings.iter().find(|warning| warning.code == "application_point") {
            return Ok(station.refused(Refusal { reason: Reason::PointExcluded, ..none }, warning.message.to_string()));
        }
        let fill = full.fill.si(&ONE);
        if fill.viscosity_application > fill.viscosity_most {
            let thick =
                Refusal { reason: Reason::NoGradeFits, value: fill.viscosity_application, limit: fill.viscosity_most };
            return Ok(station.refused(thick, thick.sentence()));
        }
        Ok(station)
    }

    fn refused(mut self, refusal: Refusal, message: String) -> Station {
        self.refusal = Some((refusal, message));
        self
    }

    /// Takes from an evaluation what all set-ups of this station share.
    fn learn(&mut self, full: &Evaluation, choices: &Choices, supplied: bool) -> Result<()> {
        let (si, fill, kinematics) = (self.line.si(&ONE), full.fill.si(&ONE), full.kinematics.si(&ONE));
        if let (Some(section), Some(position), Some(side)) =
            (fill.application_section, fill.application_position, fill.application_side)
        {
            self.place((section, position, side));
        }
        self.score = fill.application_score.unwrap_or(0.0);
        self.patience = longest_wait(si.fill.floor, fill.loss_rate);
        self.counted = full.kinematics.joints_counted;
        self.enters_soon = fill.viscosity_application <= 0.5 * fill.viscosity_most;
        let liquid: Liquid = si.oil.liquid()?;
        self.running_viscosity = liquid.dynamic_viscosity(full.kinematics.mean_c)?;
        let (capture, points, tolerance, zone) = match &si.lubrication {
            LubricationSi::Synchronised(m) => (m.capture, m.points, Some(m.speed_tolerance), 0.0),
            LubricationSi::Spray(m) => (m.capture, m.points, Some(m.speed_tolerance), m.zone_length / si.duty.speed),
            LubricationSi::Drip(m) => (m.capture, m.points, None, 0.0),
            LubricationSi::Manual(m) => (m.capture, m.points, None, 0.0),
        };
        self.landed = capture * fill.entered_share;
        let injector = match choices.injector_s {
            Some(seconds) => Some(seconds),
            None if supplied && matches!(self.line.lubrication, Lubrication::Synchronised(_)) => {
                self.injector(choices)?
            }
            None => None,
        };
        self.sieve = tolerance.map(|tolerance| Sieve {
            joints: kinematics.joints,
            joint_time: kinematics.joint_time,
            circuit: kinematics.circuit_time,
            injector,
            pump: choices.pump_ml_per_min.map(|flow| ML_PER_MIN.to_si(flow)),
            nozzles: points as f64 * si.circuit.strands as f64,
            landing: points as f64 * self.landed,
            zone_time: zone,
            tolerance,
            capacity: fill.capacity,
            loss_rate: fill.loss_rate,
            patience: self.patience,
            floor: si.fill.floor,
            most_overflow: choices.limits.most_overflow,
            most_lock_risk: choices.limits.most_lock_risk,
            most_unreached: choices.limits.most_unreached,
        });
        Ok(())
    }

    /// Time (s) that an injector of the surveyed supply needs for a shot; none where the survey does not say.
    fn injector(&self, choices: &Choices) -> Result<Option<f64>> {
        let smallest = choices.shots_ul.iter().copied().fold(f64::INFINITY, f64::min);
        let mut line = self.always(smallest)?;
        if let Some(supply) = &mut line.supply {
            supply.cable_length_m = None;
        }
        Ok(evaluate(&line).ok().and_then(|found| found.supply.injector_s))
    }

    /// This station with one shot and a timer that never stops.
    fn always(&self, shot_ul: f64) -> Result<Line> {
        let mut line = self.line.clone();
        set(&mut line, &Setting { shot_ul, every_nth: 1, run_min: 60.0, dwell_min: 0.0 }, self.joint_time()?);
        Ok(line)
    }

    /// Time from joint to joint, s.
    pub fn joint_time(&self) -> Result<f64> {
        let si = self.line.si(&ONE);
        Ok(si.chain.pitch / si.duty.speed)
    }

    fn points(&mut self) -> &mut i64 {
        match &mut self.line.lubrication {
            Lubrication::Manual(m) => &mut m.points,
            Lubrication::Drip(m) => &mut m.points,
            Lubrication::Spray(m) => &mut m.points,
            Lubrication::Synchronised(m) => &mut m.points,
        }
    }

    fn place(&mut self, (section, position, side): Spot) {
        let (at, share, from) = match &mut self.line.lubrication {
            Lubrication::Manual(m) => {
                (&mut m.application_section, &mut m.application_position, &mut m.application_side)
            }
            Lubrication::Drip(m) => (&mut m.application_section, &mut m.application_position, &mut m.application_side),
            Lubrication::Spray(m) => (&mut m.application_section, &mut m.application_position, &mut m.application_side),
            Lubrication::Synchronised(m) => {
                (&mut m.application_section, &mut m.application_position, &mut m.application_side)
            }
        };
        (*at, *share, *from) = (Some(section), position, side);
    }
}

/// Shot and timer of a candidate, in the units of the offers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Setting {
    pub shot_ul: f64,
    pub every_nth: i64,
    pub run_min: f64,
    pub dwell_min: f64,
}

/// Puts shot and timer into a line. `joint_time` s: a spray's flow is the shot that a gap gets as its joint passes.
pub(super) fn set(line: &mut Line, setting: &Setting, joint_time: f64) {
    let flow = ML_PER_MIN.from_si(crate::quantity::unit::UL.to_si(setting.shot_ul) / joint_time);
    let timed = |timer: &mut Timer| (timer.run_min, timer.dwell_min) = (setting.run_min, setting.dwell_min);
    match &mut line.lubrication {
        Lubrication::Manual(m) => m.dose_ul = setting.shot_ul,
        Lubrication::Drip(m) => m.flow_ml_per_min = flow,
        Lubrication::Spray(m) => {
            m.flow_ml_per_min = flow;
            timed(&mut m.timer);
        }
        Lubrication::Synchronised(m) => {
            (m.shot_ul, m.every_nth) = (setting.shot_ul, setting.every_nth);
            if setting.dwell_min == 0.0 {
                m.timer = None;
            } else {
                timed(m.timer.get_or_insert_with(Timer::of_a_machine));
            }
        }
    }
}

impl Timer {
    /// A timer on running time that stops with the line.
    fn of_a_machine() -> Timer {
        let clock = crate::lubrication::Clock::Machine;
        Timer { run_min: 1.0, dwell_min: 0.0, clock, interlocked: true }
    }
}

/// The reason that an error of `evaluate` stands for; an error of the survey itself is passed on.
pub(super) fn at_fault(error: &Error) -> Result<Reason> {
    match (error.code, error.field.as_str()) {
        (Code::Hot, _) => Ok(Reason::HotOil),
        (_, "oil.pour_point_c") => Ok(Reason::OilDoesNotFlow),
        (Code::Inconsistent, "lubrication.application_section") => Ok(Reason::NoPoint),
        (Code::NoOperatingPoint, _) => Ok(Reason::Cable),
        (Code::Turbulent, _) => Ok(Reason::LinePressure),
        (Code::NotConverged | Code::MotorPullOut | Code::Strength | Code::BeyondModel, _) => {
            Ok(Reason::CannotBeComputed)
        }
        _ => Err(error.clone()),
    }
}
