//! What one joint goes through in one revolution: where it stays how long, and where it bends.

use super::{Layout, March, Plane, SectionTemperature, Support, Temperatures, Way};

/// A joint's stay in one section; tension runs linearly between its ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stay {
    /// Section of the survey.
    pub section: usize,
    /// Entry, s after leaving the drive.
    pub start: f64,
    /// Exit, s.
    pub end: f64,
    /// Tension of the heaviest strand at entry and exit, N.
    pub tension: [f64; 2],
    /// Chain temperature.
    pub temperature: SectionTemperature,
}

/// The stays of a joint in one revolution, from the exit of the drive.
pub fn timeline<'a>(
    layout: &'a Layout,
    march: &'a March,
    temperatures: &'a Temperatures,
) -> impl Iterator<Item = Stay> + 'a {
    layout.places.iter().map(move |place| Stay {
        section: place.section,
        start: place.start,
        end: place.start + place.duration,
        tension: march.profile[place.section].map(|effective| layout.strand_tension(effective, place.centrifugal)),
        temperature: temperatures.sections[place.section],
    })
}

/// How a joint bends.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum EventKind {
    /// Onto a turn.
    Entry,
    /// Off a turn.
    Exit,
    /// Over the idlers of a straight, taken together.
    Idler,
}

impl EventKind {
    /// Its name in results.
    pub const fn as_str(self) -> &'static str {
        match self {
            EventKind::Entry => "entry",
            EventKind::Exit => "exit",
            EventKind::Idler => "idler",
        }
    }
}

/// A joint bends under load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Event {
    /// Section of the survey.
    pub section: usize,
    /// Onto a turn, off it, or over idlers.
    pub kind: EventKind,
    /// How often in one revolution: 1, or twice the number of idlers.
    pub count: f64,
    /// When, s after leaving the drive; halfway for idlers.
    pub time: f64,
    /// Tension of the heaviest strand, N; zero or less where the chain hangs slack, and then the event does not wear.
    pub tension: f64,
    /// Articulation, rad, without sign.
    pub angle: f64,
    /// Sense of the articulation: bends of one sign wear one arc of the pin; 0 over idlers, which bend both ways.
    pub sense: i64,
    /// Plane of the bend.
    pub plane: Plane,
    /// Chain temperature, °C.
    pub temperature: f64,
    /// Time without articulation before it, s; at least the time from joint to joint.
    pub rest: f64,
    /// Mean tension of the heaviest strand over that time, N.
    pub rest_tension: f64,
}

/// Writes the events of one revolution into `events`, from the exit of the drive; its old content goes.
///
/// Every turn gives two, every idler straight one for all its idlers (count 2 × length/spacing, angle q g a/S). The
/// last is the exit of the drive.
pub fn events(layout: &Layout, march: &March, temperatures: &Temperatures, events: &mut Vec<Event>) {
    events.clear();
    let mut rest = Rest::default();
    for place in &layout.places {
        let [entry, exit] = march.profile[place.section];
        let temperature = &temperatures.sections[place.section];
        match &place.way {
            Way::Straight(straight) if straight.support == Support::Idlers => {
                let middle = (entry + exit) / 2.0;
                let count = 2.0 * place.length / straight.span;
                let tension = layout.strand_tension(middle, 0.0);
                let bend = straight.carried * super::GRAVITY * straight.span;
                rest.pass(place.duration / 2.0, entry, middle, place.centrifugal);
                events.push(Event {
                    section: place.section,
                    kind: EventKind::Idler,
                    count,
                    time: place.start + place.duration / 2.0,
                    tension,
                    angle: if middle > 0.0 { bend / middle } else { 0.0 },
                    sense: 0,
                    plane: Plane::Main,
                    temperature: temperature.middle,
                    rest: place.duration / count,
                    rest_tension: tension,
                });
                rest = Rest::default();
                rest.pass(place.duration / 2.0, middle, exit, place.centrifugal);
            }
            Way::Straight(_) => rest.pass(place.duration, entry, exit, place.centrifugal),
            Way::Turn(turn) => {
                let mut bend = |kind, effective, time, sense, temperature, rest: &Rest| {
                    let tension = layout.strand_tension(effective, place.centrifugal);
                    events.push(Event {
                        section: place.section,
                        kind,
                        count: 1.0,
                        time,
                        tension,
                        angle: turn.articulation_angle,
                        sense,
                        plane: turn.plane,
                        temperature,
                        rest: rest.time.max(layout.joint_time),
                        rest_tension: rest.mean().map_or(tension, |mean| mean * layout.strand_share),
                    });
                };
                bend(EventKind::Entry, entry, place.start, turn.side, temperature.inlet, &rest);
                rest = Rest::default();
                rest.pass(place.duration, entry, exit, place.centrifugal);
                bend(EventKind::Exit, exit, place.start + place.duration, -turn.side, temperature.outlet, &rest);
                rest = Rest::default();
            }
        }
    }
}

/// Time since the last event, and tension of all strands over it.
#[derive(Default)]
struct Rest {
    time: f64,
    impulse: f64,
}

impl Rest {
    fn pass(&mut self, time: f64, entry: f64, exit: f64, centrifugal: f64) {
        self.time += time;
        self.impulse += time * ((entry + exit) / 2.0 + centrifugal);
    }

    /// Mean tension; none where no time passed.
    fn mean(&self) -> Option<f64> {
        (self.time > 0.0).then(|| self.impulse / self.time)
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::*;
    use super::super::*;
    use proptest::prelude::*;

    fn all(sections: &[SectionSi]) -> (Layout, March, Vec<Event>) {
        let (layout, coefficients) = laid_out(sections);
        let march = march(&layout, &coefficients).unwrap();
        let mut list = Vec::new();
        events(&layout, &march, &temperatures(&layout), &mut list);
        (layout, march, list)
    }

    #[test]
    fn turns_that_touch_leave_a_joint_no_rest_but_the_next_joint() {
        let mut sections = simple_loop();
        sections.insert(2, SectionSi::Turn(turn(TurnKind::Wheel)));
        let (layout, _, list) = all(&sections);
        let entry = list.iter().find(|event| event.section == 2 && event.kind == EventKind::Entry).unwrap();
        assert_eq!(entry.rest, layout.joint_time);
        assert_eq!(entry.rest_tension, entry.tension);
    }

    #[test]
    fn a_reverse_bend_turns_the_other_way() {
        let mut sections = simple_loop();
        sections[1] = SectionSi::Turn(TurnSi { side: -1, ..turn(TurnKind::Wheel) });
        let senses: Vec<i64> = all(&sections).2.iter().map(|event| event.sense).collect();
        assert_eq!(senses, [-1, 1, 1, -1]);
    }

    proptest! {
        /// Without idlers and touching turns, rests add up to the circuit time, and their tensions to its mean.
        #[test]
        fn rests_fill_the_revolution(sections in any_loop()) {
            let (layout, march, list) = all(&sections);
            prop_assert!((list[list.len() - 1].time / layout.circuit_time - 1.0).abs() < 1e-12);
            prop_assert!(list.windows(2).all(|pair| pair[0].time <= pair[1].time));
            prop_assert!(list.iter().all(|event| event.rest_tension.is_finite() && event.angle >= 0.0));
            let idlers = list.iter().any(|event| event.kind == EventKind::Idler);
            let touching = list.windows(2).any(|pair| pair[0].time == pair[1].time) || list[0].time == 0.0;
            let short = list.iter().any(|event| event.rest <= layout.joint_time);
            if !idlers && !touching && !short {
                let time: f64 = list.iter().map(|event| event.rest).sum();
                prop_assert!((time / layout.circuit_time - 1.0).abs() < 1e-12);
                let impulse: f64 = list.iter().map(|event| event.rest * event.rest_tension).sum();
                let stays = timeline(&layout, &march, &temperatures(&layout))
                    .map(|stay| (stay.end - stay.start) * (stay.tension[0] + stay.tension[1]) / 2.0)
                    .sum::<f64>();
                prop_assert!((impulse - stays).abs() <= 1e-9 * layout.circuit_time * march.greatest.abs());
            }
        }
    }
}
