//! Why a set-up is refused, in words, and how far it missed.

use crate::choice;
use crate::quantity::Unit;
use crate::quantity::show::brief;
use crate::quantity::unit::{H, ML_PER_MIN, MPA_S, ONE, S, V};

choice! {
    /// Why a set-up is refused.
    Reason {
        /// Open food near the chain and an oil that is not food grade.
        NotFoodGrade = "not_food_grade",
        /// Oil within 20 K of its flash point, not confirmed.
        HotOil = "hot_oil",
        /// Oil below its pour point.
        OilDoesNotFlow = "oil_does_not_flow",
        /// No place on the circuit may be oiled.
        NoPoint = "no_point",
        /// This place may not be oiled.
        PointExcluded = "point_excluded",
        /// The oil is too thick to enter in time, or too thin to stay.
        NoGradeFits = "no_grade_fits",
        /// The counter never comes to some joints.
        JointsNeverDosed = "joints_never_dosed",
        /// The injector needs longer than the time between two shots.
        InjectorTooSlow = "injector_too_slow",
        /// The pump does not give so much.
        PumpFlow = "pump_flow",
        /// The timer is in step with the chain and meets the same joints for ever.
        TimerLocked = "timer_locked",
        /// Some joints wait longer than their oil lasts.
        WaitTooLong = "wait_too_long",
        /// The timer is too near to a step with the chain.
        LockRisk = "lock_risk",
        /// Joints that are reached fall below the floor of fill.
        BelowFloor = "below_floor",
        /// Too much of the oil that enters spills over.
        Overflow = "overflow",
        /// Attachments or guards keep joints from ever getting oil.
        JointsUnreached = "joints_unreached",
        /// Line and injector need too much of the pump's pressure.
        LinePressure = "line_pressure",
        /// The device gets too little voltage.
        Cable = "cable",
        /// This set-up cannot be computed.
        CannotBeComputed = "cannot_be_computed",
    }
}

/// A refusal: the first test that a set-up failed, with what it reached and what it should have. SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Refusal {
    /// Which test.
    pub reason: Reason,
    /// What the set-up reached; NaN where the test is not about a number.
    pub value: f64,
    /// The limit of the test.
    pub limit: f64,
}

impl Refusal {
    /// How far the set-up missed: a share of the limit, or the difference of shares. 0 where there is no number.
    ///
    /// Comparable among refusals of one reason only.
    pub fn missed_by(&self) -> f64 {
        let by = match self.reason {
            Reason::JointsNeverDosed
            | Reason::TimerLocked
            | Reason::LockRisk
            | Reason::BelowFloor
            | Reason::Overflow
            | Reason::JointsUnreached => self.value - self.limit,
            _ => self.value / self.limit - 1.0,
        };
        if by.is_nan() { 0.0 } else { by.abs() }
    }

    /// Value and limit in the unit that people use for this test.
    pub fn public(&self) -> (f64, f64, &'static Unit) {
        let unit = self.reason.unit();
        (unit.from_si(self.value), unit.from_si(self.limit), unit)
    }

    /// What happened, with numbers.
    pub fn sentence(&self) -> String {
        let (value, limit, _) = self.public();
        let (v, l) = (brief(value), brief(limit));
        let (pv, pl) = (brief(100.0 * value), brief(100.0 * limit));
        match self.reason {
            Reason::JointsNeverDosed => {
                format!("the counter never comes to {pv} % of the joints; at most {pl} % may stay without")
            }
            Reason::InjectorTooSlow => format!("the injector needs {v} s for a shot but gets {l} s"),
            Reason::PumpFlow => format!("the shots take {v} mL/min from the pump, which gives {l} mL/min"),
            Reason::TimerLocked => format!("the timer is in step with the chain: {pv} % of the joints never get oil"),
            Reason::WaitTooLong => {
                format!("a joint waits up to {v} running hours; its oil lasts {l} h down to the floor")
            }
            Reason::LockRisk => {
                format!("at {pv} % of the possible speed errors a stretch of chain waits too long; at most {pl} % may")
            }
            Reason::BelowFloor => format!("joints fall to a fill of {v}; the floor is {l}"),
            Reason::Overflow => format!("{pv} % of the oil in the gaps spills over; at most {pl} % may"),
            Reason::JointsUnreached => format!("{pv} % of the joints never get oil; at most {pl} % may stay without"),
            Reason::LinePressure if value.is_nan() => "the flow in the line is not laminar".into(),
            Reason::LinePressure => {
                format!("line and injector need {pv} % of the pump's pressure; at most {pl} % leaves a margin")
            }
            Reason::Cable if value.is_nan() => "the cable cannot carry the device at any voltage".into(),
            Reason::Cable => format!("the device gets {v} V; it needs {l} V"),
            Reason::NoGradeFits if value > limit => format!(
                "the oil is too thick to enter in time: {v} mPa s where it is applied, at most {l} mPa s gets in"
            ),
            Reason::NoGradeFits => format!(
                "the oil is too thin to stay until the next shot: {v} mPa s on the chain, at least {l} mPa s stays"
            ),
            _ => self.reason.meaning().into(),
        }
    }
}

impl Reason {
    /// The unit of its value and limit.
    pub fn unit(self) -> &'static Unit {
        match self {
            Reason::InjectorTooSlow => &S,
            Reason::PumpFlow => &ML_PER_MIN,
            Reason::WaitTooLong => &H,
            Reason::NoGradeFits => &MPA_S,
            Reason::Cable => &V,
            _ => &ONE,
        }
    }

    /// What it says, without numbers.
    pub const fn meaning(self) -> &'static str {
        match self {
            Reason::NotFoodGrade => "open food is near the chain and the oil is not food grade",
            Reason::HotOil => {
                "the chain comes within 20 K of the flash point of the oil, and nobody has confirmed that"
            }
            Reason::OilDoesNotFlow => "the oil is below its pour point where it is applied or in its line",
            Reason::NoPoint => "no place on the circuit may be oiled with this oil and method",
            Reason::PointExcluded => "oil must not be applied at this place",
            Reason::NoGradeFits => "the oil is too thick to enter in time, or too thin to stay",
            Reason::JointsNeverDosed => "the counter never comes to some joints",
            Reason::InjectorTooSlow => "the injector needs longer than the time between two shots",
            Reason::PumpFlow => "the pump does not give so much",
            Reason::TimerLocked => "the timer is in step with the chain and meets the same joints for ever",
            Reason::WaitTooLong => "some joints wait longer than their oil lasts",
            Reason::LockRisk => "the timer is too near to a step with the chain",
            Reason::BelowFloor => "joints fall below the floor of fill",
            Reason::Overflow => "too much oil spills over",
            Reason::JointsUnreached => "attachments or guards keep joints from ever getting oil",
            Reason::LinePressure => "line and injector need too much of the pump's pressure",
            Reason::Cable => "the device gets too little voltage",
            Reason::CannotBeComputed => "this set-up cannot be computed",
        }
    }

    /// What would have to change.
    pub const fn cure(self) -> &'static str {
        match self {
            Reason::NotFoodGrade => "offer a food-grade oil",
            Reason::HotOil => {
                "offer an oil with a higher flash point; a competent person may confirm the survey (fill.hot_oil_confirmed)"
            }
            Reason::OilDoesNotFlow => "offer an oil with a lower pour point, or apply it where it is warmer",
            Reason::NoPoint | Reason::PointExcluded => {
                "offer other places, sides or methods, or change what is in the way"
            }
            Reason::NoGradeFits => {
                "a warmer or earlier point, a thinner oil or a higher viscosity index if it is too thick; a shorter \
                 interval or a thicker oil if it is too thin"
            }
            Reason::JointsNeverDosed => {
                "an n that has no factor in common with the number of joints: on an even loop an odd one"
            }
            Reason::InjectorTooSlow => "a larger n, a quicker injector or a shorter line",
            Reason::PumpFlow => "a larger n, a smaller shot or a larger pump",
            Reason::TimerLocked => {
                "a run of at least one turn of the chain (n turns with a counter), or another period"
            }
            Reason::WaitTooLong => "a shorter dwell or a longer run; a smaller n",
            Reason::LockRisk => "a run of at least one turn of the chain (n turns with a counter), or a shorter period",
            Reason::BelowFloor => "a larger shot or a shorter dwell",
            Reason::Overflow => "a smaller shot or a longer dwell",
            Reason::JointsUnreached => {
                "another side or place, or an n that is coprime to the pattern of the attachments"
            }
            Reason::LinePressure => "a wider or shorter line, a thinner oil, a smaller shot",
            Reason::Cable => "a thicker or shorter cable",
            Reason::CannotBeComputed => "read the message of the nearest one",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_refusal_says_what_happened_and_how_far_it_missed() {
        let floor = Refusal { reason: Reason::BelowFloor, value: 0.35, limit: 0.4 };
        assert!((floor.missed_by() - 0.05).abs() < 1e-15);
        assert_eq!(floor.sentence(), "joints fall to a fill of 0.35; the floor is 0.4");
        let wait = Refusal { reason: Reason::WaitTooLong, value: 36_000.0, limit: 18_000.0 };
        assert_eq!(wait.missed_by(), 1.0);
        assert!(wait.sentence().contains("10 running hours"));
    }
}
