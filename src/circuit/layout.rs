//! The loop laid out: march order, chain on every section, joints, circuit time.

use super::{Place, SectionSi, Support, Way, check};
use crate::error::{Code, Error, Result};

/// What sets the tension at the drive exit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TakeUp {
    /// Running slack tension of all strands, N. A screw holds it only at one temperature: steel grows 12e-6 per K, so
    /// a cold setting is not the running tension.
    Tension(f64),
    /// A weight or spring that pulls the wheel of a turn.
    FrameForce {
        /// The turn, by survey.
        section: usize,
        /// Force on its frame, N.
        force: f64,
    },
}

/// The loop as surveyed, SI.
#[derive(Debug, Clone)]
pub struct LoopData<'a> {
    /// Chain pitch, m.
    pub pitch: f64,
    /// Pin diameter, m.
    pub pin_diameter: f64,
    /// Bush outside diameter, m.
    pub bush_diameter: f64,
    /// Roller diameter, m; none: a chain without rollers.
    pub roller_diameter: Option<f64>,
    /// Chain with attachments, kg/m of one strand.
    pub mass: f64,
    /// Tensile strength of one strand, N.
    pub tensile_strength: Option<f64>,
    /// Strands side by side.
    pub strands: u32,
    /// Counted joints of one strand; none: computed from the length.
    pub joints: Option<u32>,
    /// Chain speed, m/s.
    pub speed: f64,
    /// Ambient temperature, °C.
    pub ambient: f64,
    /// What sets the slack tension.
    pub take_up: TakeUp,
    /// Least tension that keeps the chain in order, N of all strands; none: [`default_least_tension`].
    pub least_tension: Option<f64>,
    /// Heaviest strand over the mean of the strands; none: [`default_strand_share`].
    pub strand_share_factor: Option<f64>,
    /// Surface of the chain over that of an equal round bar.
    pub surface_factor: f64,
    /// Sections in travel order.
    pub sections: &'a [SectionSi],
}

impl LoopData<'_> {
    /// Chain of all strands, kg/m.
    pub fn chain_mass(&self) -> f64 {
        f64::from(self.strands) * self.mass
    }
}

/// The loop laid out.
#[derive(Debug, Clone, PartialEq)]
pub struct Layout {
    /// Sections in march order: from the exit of the drive; the drive is last.
    pub places: Vec<Place>,
    /// Chain pitch, m.
    pub pitch: f64,
    /// Pin diameter, m.
    pub pin_diameter: f64,
    /// Bush outside diameter, m.
    pub bush_diameter: f64,
    /// Roller diameter, m; none: a chain without rollers.
    pub roller_diameter: Option<f64>,
    /// Chain, kg/m of one strand.
    pub mass: f64,
    /// Strands.
    pub strands: f64,
    /// Tensile strength of one strand, N.
    pub tensile_strength: Option<f64>,
    /// Heaviest strand's share of the pull of all.
    pub strand_share: f64,
    /// Chain speed, m/s.
    pub speed: f64,
    /// Length of the loop from its sections, m.
    pub length: f64,
    /// Joints of one strand.
    pub joints: u32,
    /// Joints that the length gives, whether counted or not.
    pub computed_joints: u32,
    /// Whether the joints were counted.
    pub counted: bool,
    /// Time of one revolution, s.
    pub circuit_time: f64,
    /// Time from joint to joint, s.
    pub joint_time: f64,
    /// Everything that moves, kg.
    pub moved_mass: f64,
    /// Surface of the chain over that of an equal round bar.
    pub surface_factor: f64,
    /// What sets the slack tension.
    pub take_up: TakeUp,
    /// Least tension that keeps the chain in order, N of all strands.
    pub least_tension: f64,
}

impl Layout {
    /// The drive, last in march order.
    pub fn drive(&self) -> &Place {
        &self.places[self.places.len() - 1]
    }

    /// Tension of the heaviest strand (N): `effective` tension and `centrifugal` part of all strands, N.
    pub fn strand_tension(&self, effective: f64, centrifugal: f64) -> f64 {
        (effective + centrifugal) * self.strand_share
    }

    /// March position of a section of the survey.
    pub fn position(&self, section: usize) -> Option<usize> {
        self.places.iter().position(|place| place.section == section)
    }
}

/// Heaviest strand over the mean of `strands`: 1, 1.2 and 1.3 for one, two and more (closure of our own).
///
/// A length mismatch between keyed shafts adds its own force, which can exceed the pull.
pub fn default_strand_share(strands: u32) -> f64 {
    match strands {
        0 | 1 => 1.0,
        2 => 1.2,
        _ => 1.3,
    }
}

/// Least tension (N, all strands) that keeps sag within 2 % on 1 m; `chain_mass` kg/m of all strands.
///
/// Parabola with sag 0.02 × span, which is 6.25 × weight of the span; span 1 m is a closure of our own.
pub fn default_least_tension(chain_mass: f64) -> f64 {
    super::sag_tension(chain_mass, 1.0, 0.02)
}

/// Lays out a loop.
///
/// Errors: no drive or more than one (`unsupported`), rises that do not close within 10 mm (`rise_mismatch`), a smooth
/// turn of half a pitch or less (`out_of_range`), a rise beyond its section, a loaded chain above 5 m/s, missing idler
/// spacing or roller diameter.
pub fn lay_out(data: &LoopData) -> Result<Layout> {
    let drive = check::drive_of(data.sections)?;
    let count = data.sections.len();
    let mut places = Vec::with_capacity(count);
    for step in 1..=count {
        places.push(Place::of((drive + step) % count, data)?);
    }
    check::speed(&places, data.speed)?;
    check::rises(&places)?;
    check::take_up(&places, data.take_up)?;

    let length: f64 = places.iter().map(|place| place.length).sum();
    let computed_joints = joints_on(length, data.pitch);
    let joints = data.joints.unwrap_or(computed_joints);
    if joints == 0 {
        return Err(Error::new(
            Code::Inconsistent,
            "joints",
            format!(
                "a loop of {length} m with a pitch of {} m has no joints: check joints, lengths and pitch",
                data.pitch
            ),
        ));
    }
    let circuit_time = f64::from(joints) * data.pitch / data.speed;
    // The counted chain goes round in its own time; sections share it by length.
    let time_per_length = circuit_time / length;
    let mut start = 0.0;
    for place in &mut places {
        place.start = start;
        place.duration = place.length * time_per_length;
        start += place.duration;
    }
    find_roller_straights(&mut places);

    let strands = f64::from(data.strands);
    let share = data.strand_share_factor.unwrap_or_else(|| default_strand_share(data.strands));
    Ok(Layout {
        moved_mass: places.iter().map(|place| place.mass * place.length).sum(),
        places,
        pitch: data.pitch,
        pin_diameter: data.pin_diameter,
        bush_diameter: data.bush_diameter,
        roller_diameter: data.roller_diameter,
        mass: data.mass,
        strands,
        tensile_strength: data.tensile_strength,
        strand_share: share / strands,
        speed: data.speed,
        length,
        joints,
        computed_joints,
        counted: data.joints.is_some(),
        circuit_time,
        joint_time: data.pitch / data.speed,
        surface_factor: data.surface_factor,
        take_up: data.take_up,
        least_tension: data.least_tension.unwrap_or_else(|| default_least_tension(data.chain_mass())),
    })
}

/// Joints that a loop of `length` m takes: the nearest even number, since inner and outer links alternate.
fn joints_on(length: f64, pitch: f64) -> u32 {
    // A survey's lengths and pitches keep this far below the largest u32.
    2 * (length / (2.0 * pitch) + 0.5).floor() as u32
}

/// A curve on rollers has the roller friction of the last straight on rollers before it, round the loop.
fn find_roller_straights(places: &mut [Place]) {
    let on_rollers = |place: &Place| match &place.way {
        Way::Straight(straight) => straight.support == Support::Rollers,
        Way::Turn(_) => false,
    };
    let mut last = places.iter().rev().find(|place| on_rollers(place)).map(|place| place.section);
    for place in places {
        if on_rollers(place) {
            last = Some(place.section);
        }
        place.roller_straight = if place.rolls() { last } else { None };
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::*;
    use super::super::*;
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_curve_on_rollers_rubs_like_the_straight_before_it() {
        let mut sections = simple_loop();
        let curve = TurnSi { contact: Contact::Rollers, ..turn(TurnKind::Curve) };
        sections.insert(0, SectionSi::Turn(curve.clone()));
        sections.insert(4, SectionSi::Turn(curve));
        let layout = lay_out(&data(&sections)).unwrap();
        let source = |section: usize| layout.places[layout.position(section).unwrap()].roller_straight;
        assert_eq!(source(0), Some(3)); // round the loop
        assert_eq!(source(4), Some(3));
        assert_eq!(source(3), Some(3));
        assert_eq!(source(1), None);
    }

    proptest! {
        #[test]
        fn the_stays_fill_the_circuit_time(sections in any_loop(), joints in 10u32..2000) {
            let layout = lay_out(&LoopData { joints: Some(joints), ..data(&sections) }).unwrap();
            let sum: f64 = layout.places.iter().map(|place| place.duration).sum();
            prop_assert!((sum / layout.circuit_time - 1.0).abs() < 1e-12);
            prop_assert!((layout.circuit_time - f64::from(joints) * layout.joint_time).abs() < 1e-9);
            prop_assert_eq!(layout.computed_joints % 2, 0);
            prop_assert!((f64::from(layout.computed_joints) * layout.pitch - layout.length).abs() <= layout.pitch * 1.000001);
        }
    }
}
