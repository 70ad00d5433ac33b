//! What somebody is ready to use, and the limits that a set-up must keep.

use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::lubrication::Lubrication;
use crate::oil::Oil;
use crate::quantity::unit::{MIN, UL, Unit};
use crate::quantity::{Field, Place, Row, Side};

/// The choices. What is not given is taken from the survey or worked out from the circuit (`offers.rs`).
#[derive(Debug, Clone, Default)]
pub struct Choices {
    /// Shots of one gap (µL); for a spray what a gap gets as a joint passes, for a round by hand the dose of a joint.
    pub shots_ul: Vec<f64>,
    /// Oils; not given: that of the survey.
    pub oils: Option<Vec<Oil>>,
    /// Run times (min).
    pub run_min: Option<Vec<f64>>,
    /// Pauses (min); 0 = the timer never stops.
    pub dwell_min: Option<Vec<f64>>,
    /// One joint in how many.
    pub every_nth: Option<Vec<i64>>,
    /// Gaps of a joint served, per strand.
    pub points: Option<Vec<i64>>,
    /// Sections of the survey where oil may be applied; not given: that of the survey, or the best point.
    pub application_sections: Option<Vec<i64>>,
    /// Places in those sections, as shares of their length; not given: start, middle and end.
    pub application_positions: Option<Vec<f64>>,
    /// Sides; not given: those that can be reached.
    pub sides: Option<Vec<Side>>,
    /// Methods, with capture, zone and the rest; their shot, n, timer and place are replaced. Not given: that of the
    /// survey if it has a timer, else synchronised.
    pub methods: Option<Vec<Lubrication>>,
    /// What the pump gives (mL/min); not given: not tested.
    pub pump_ml_per_min: Option<f64>,
    /// Time that an injector needs for a shot (s); not given: from the survey's supply, else not tested.
    pub injector_s: Option<f64>,
    /// The limits.
    pub limits: Limits,
    /// How many alternatives, and refused set-ups of each reason, are listed.
    pub keep: Option<usize>,
    /// Whether every refused set-up is listed.
    pub all_rejections: bool,
}

/// The limits beside the floor of fill, which stands in the survey.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// Greatest share of the oil in the gaps that may spill over.
    pub most_overflow: f64,
    /// Greatest lock risk.
    pub most_lock_risk: f64,
    /// Greatest share of joints that may stay without oil.
    pub most_unreached: f64,
    /// Greatest share of the pump's outlet pressure that line and injector may need.
    pub most_outlet_use: f64,
}

impl Default for Limits {
    /// A tenth may spill over and a twentieth of the speed errors may lock (closures of our own); no joint may stay dry;
    /// a fifth of the pump's pressure is kept as a margin (common practice, no source).
    fn default() -> Self {
        Limits { most_overflow: 0.1, most_lock_risk: 0.05, most_unreached: 0.0, most_outlet_use: 0.8 }
    }
}

/// Alternatives, and refusals of each reason, that are listed where nobody says how many.
pub(super) const KEEP: usize = 20;

impl Choices {
    /// Refuses lists that are empty, and numbers that no set-up can have; the message says what to change.
    pub fn checked(&self, line: &Line) -> Result<()> {
        list("shots_ul", Some(&self.shots_ul), &UL, 0.0, true)?;
        list("run_min", self.run_min.as_ref(), &MIN, 0.0, true)?;
        list("dwell_min", self.dwell_min.as_ref(), &MIN, 0.0, false)?;
        list("application_positions", self.application_positions.as_ref(), &crate::quantity::unit::ONE, 0.0, false)?;
        some("oils", self.oils.as_deref())?;
        some("methods", self.methods.as_deref())?;
        some("sides", self.sides.as_deref())?;
        whole("every_nth", self.every_nth.as_deref(), 1, 1_000_000)?;
        whole("points", self.points.as_deref(), 1, 2)?;
        let sections = line.circuit.sections.len() as i64;
        whole("application_sections", self.application_sections.as_deref(), 0, sections - 1)?;
        if let Some(beyond) = self.application_positions.iter().flatten().find(|share| **share > 1.0) {
            let message = format!("application_positions = {beyond} is no share of a section: give 0 to 1");
            return Err(Error::new(Code::OutOfRange, "application_positions", message).number(*beyond).limit("0 to 1"));
        }
        for (name, given, unit) in
            [("pump_ml_per_min", self.pump_ml_per_min, "mL/min"), ("injector_s", self.injector_s, "s")]
        {
            if let Some(value) = given.filter(|value| !(*value > 0.0 && value.is_finite())) {
                let message = format!("{name} = {value} {unit} cannot be: give a number above 0, or leave it out");
                return Err(Error::new(Code::OutOfRange, name, message)
                    .number(value)
                    .unit(unit)
                    .limit(format!("above 0 {unit}")));
            }
        }
        let limits = [
            ("most_overflow", self.limits.most_overflow),
            ("most_lock_risk", self.limits.most_lock_risk),
            ("most_unreached", self.limits.most_unreached),
            ("most_outlet_use", self.limits.most_outlet_use),
        ];
        for (name, value) in limits {
            if !(0.0..=1.0).contains(&value) {
                let message = format!("{name} = {value} is no share: give 0 to 1");
                return Err(Error::new(Code::OutOfRange, name, message).number(value).limit("0 to 1"));
            }
        }
        for (i, oil) in self.oils.iter().flatten().enumerate() {
            oil.check(&Place::root("oils").item(i), &Row::BLANK, &mut Default::default())?;
        }
        for (i, method) in self.methods.iter().flatten().enumerate() {
            method.check(&Place::root("methods").item(i), &Row::BLANK, &mut Default::default())?;
        }
        Ok(())
    }
}

fn some<T>(name: &str, given: Option<&[T]>) -> Result<()> {
    if given.is_some_and(<[T]>::is_empty) {
        let message = format!("{name} is empty: name at least one, or leave it out where it may be left out");
        return Err(Error::new(Code::Missing, name, message).limit("at least one"));
    }
    Ok(())
}

fn list(name: &str, given: Option<&Vec<f64>>, unit: &Unit, low: f64, open: bool) -> Result<()> {
    some(name, given.map(Vec::as_slice))?;
    let label = if unit.label.is_empty() { String::new() } else { format!(" {}", unit.label) };
    let limit = format!("{} {low}{label}", if open { "above" } else { "at least" });
    for (i, &value) in given.into_iter().flatten().enumerate() {
        if !value.is_finite() {
            let message = format!("{name}[{i}] = {value} is not a finite number: take it out of the list ({limit})");
            return Err(Error::new(Code::NotFinite, name, message).number(value).unit(unit.label).limit(limit));
        }
        if value < low || (open && value == low) || value > 1e7 {
            let message = format!("{name}[{i}] = {value}{label} cannot be: give {limit} and at most 1e7{label}");
            return Err(Error::new(Code::OutOfRange, name, message).number(value).unit(unit.label).limit(limit));
        }
    }
    Ok(())
}

fn whole(name: &str, given: Option<&[i64]>, low: i64, high: i64) -> Result<()> {
    some(name, given)?;
    if let Some(value) = given.into_iter().flatten().find(|value| !(low..=high).contains(*value)) {
        let message = format!("{name} = {value} cannot be: give whole numbers from {low} to {high}");
        return Err(Error::new(Code::OutOfRange, name, message)
            .number(*value as f64)
            .limit(format!("{low} to {high}")));
    }
    Ok(())
}
