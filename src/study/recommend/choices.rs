//! What somebody is ready to use, and the limits that a set-up must keep.

use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::lubrication::Lubrication;
use crate::oil::Oil;
use crate::quantity::unit::{MIN, ML_PER_MIN, ONE, S, UL, Unit, WORD};
use crate::quantity::{Class, Field, Place, Range, Row, Side, any, at_least, between, up_to};

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

/// What is said of each offer and limit: unit, meaning, allowed range. The border reads by these rows, the search checks
/// by them.
pub const OFFERS: &[Row] = &[
    offer("shots_ul", "oil of one shot in one gap", &UL, up_to(0.0, 1e5)),
    offer("oils", "an oil", &WORD, any()),
    offer("run_min", "run of the timer", &MIN, up_to(0.0, 1e6)),
    offer("dwell_min", "pause of the timer", &MIN, between(0.0, 1e7)),
    offer("every_nth", "one joint in how many", &ONE, between(1.0, 1e6)),
    offer("points", "gaps of a joint served, per strand", &ONE, between(1.0, 2.0)),
    offer("application_sections", "number of a section of the survey", &ONE, at_least(0.0)),
    offer("application_positions", "place in a section, as a share of its length", &ONE, between(0.0, 1.0)),
    offer("sides", "side to oil from", &WORD, any()),
    offer("methods", "a method", &WORD, any()),
    offer("pump_ml_per_min", "what the pump gives", &ML_PER_MIN, up_to(0.0, 1e6)),
    offer("injector_s", "time of one shot", &S, up_to(0.0, 1e4)),
    offer("most_overflow", "share of the oil in the gaps that may spill over", &ONE, between(0.0, 1.0)),
    offer("most_lock_risk", "lock risk that is accepted", &ONE, between(0.0, 1.0)),
    offer("most_unreached", "share of joints that may stay without oil", &ONE, between(0.0, 1.0)),
    offer("most_outlet_use", "share of the pump's outlet pressure that may be needed", &ONE, between(0.0, 1.0)),
];

const fn offer(name: &'static str, means: &'static str, unit: &'static Unit, allowed: Range) -> Row {
    Row { name, means, unit, allowed, class: Class::Survey, ..Row::BLANK }
}

/// The row of an offer; blank for a name that is none.
pub fn offered(name: &str) -> &'static Row {
    OFFERS.iter().find(|row| row.name == name).unwrap_or(&Row::BLANK)
}

impl Choices {
    /// Refuses lists that are empty, and values that no set-up can have; the message says what to change.
    pub fn checked(&self, line: &Line) -> Result<()> {
        check("shots_ul", Some(&self.shots_ul))?;
        check("oils", self.oils.as_ref())?;
        check("run_min", self.run_min.as_ref())?;
        check("dwell_min", self.dwell_min.as_ref())?;
        check("every_nth", self.every_nth.as_ref())?;
        check("points", self.points.as_ref())?;
        check("application_sections", self.application_sections.as_ref())?;
        check("application_positions", self.application_positions.as_ref())?;
        check("sides", self.sides.as_ref())?;
        check("methods", self.methods.as_ref())?;
        let limits = &self.limits;
        for (name, given) in [
            ("pump_ml_per_min", self.pump_ml_per_min),
            ("injector_s", self.injector_s),
            ("most_overflow", Some(limits.most_overflow)),
            ("most_lock_risk", Some(limits.most_lock_risk)),
            ("most_unreached", Some(limits.most_unreached)),
            ("most_outlet_use", Some(limits.most_outlet_use)),
        ] {
            given.check(&Place::root(name), offered(name), &mut Default::default())?;
        }
        let last = line.circuit.sections.len() as i64 - 1;
        if let Some(beyond) = self.application_sections.iter().flatten().find(|section| **section > last) {
            let name = "application_sections";
            let message = format!("{name} = {beyond} is no section of this circuit, which has 0 to {last}");
            return Err(Error::new(Code::OutOfRange, name, message)
                .number(*beyond as f64)
                .limit(format!("0 to {last}")));
        }
        Ok(())
    }
}

/// A list that is given holds something, and each item lies in the range of its row.
fn check<T: Field>(name: &str, given: Option<&Vec<T>>) -> Result<()> {
    if given.is_some_and(Vec::is_empty) {
        let message = format!("{name} is empty: give at least one value, or leave it out where it may be left out");
        return Err(Error::new(Code::Missing, name, message).limit("at least one"));
    }
    given.map_or(Ok(()), |list| list.check(&Place::root(name), offered(name), &mut Default::default()))
}
