//! One section as the march meets it: lengths, masses and lever arms, worked out once.

use super::{Contact, GRAVITY, LoadOn, LoopData, Plane, SectionSi, StraightSi, Support, TurnKind, TurnSi};
use crate::chain::{articulation_angle, articulation_angle_smooth, chain_on_turn, pitch_diameter};
use crate::error::{Code, Error, Result};

/// Shaft diameter over wheel diameter where no shaft was surveyed (closure of our own).
const SHAFT_SHARE: f64 = 0.15;

/// Centrifugal tension (N) of a running chain: `mass_per_length` kg/m, `speed` m/s.
///
/// Exact for any curve; it presses no wheel and no track, but joints feel it. Source: closed form (momentum).
pub fn centrifugal_tension(mass_per_length: f64, speed: f64) -> f64 {
    mass_per_length * speed * speed
}

/// A section in march order.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// Its index in the survey.
    pub section: usize,
    /// Chain on it, m.
    pub length: f64,
    /// Rise in travel direction, m.
    pub rise: f64,
    /// Chain and load of all strands, kg/m.
    pub mass: f64,
    /// Load of all strands, kg/m.
    pub load: f64,
    /// Centrifugal tension of all strands, N; on a straight of the chain only.
    pub centrifugal: f64,
    /// Weight component along the travel, N.
    pub lift: f64,
    /// Pull of brushes, scrapers and seals, N.
    pub extra: f64,
    /// When a joint enters, s after it left the drive.
    pub start: f64,
    /// How long a joint stays, s.
    pub duration: f64,
    /// Surroundings, °C.
    pub environment: f64,
    /// Heat transfer, W/(m² K).
    pub heat_transfer: f64,
    /// Straight or turn.
    pub way: Way,
    /// The straight (by survey) whose bush/roller friction holds here: itself if on rollers, else the last one before.
    pub roller_straight: Option<usize>,
}

/// What is particular to straights and to turns.
#[derive(Debug, Clone, PartialEq)]
pub enum Way {
    /// A straight.
    Straight(StraightWay),
    /// A turn.
    Turn(TurnWay),
}

/// A straight.
#[derive(Debug, Clone, PartialEq)]
pub struct StraightWay {
    /// What carries the chain.
    pub support: Support,
    /// Level part of its length, m.
    pub level: f64,
    /// Mass that the support carries, kg/m.
    pub carried: f64,
    /// Force on the support, N.
    pub weight: f64,
    /// Force of a load on its bed, or under a held-back load, N.
    pub bed_weight: f64,
    /// Pull that brings placed load to speed, N.
    pub acceleration: f64,
    /// Unsupported span, m: idler spacing or, where nothing carries, the level part; 0 where carried throughout.
    pub span: f64,
}

/// A turn.
#[derive(Debug, Clone, PartialEq)]
pub struct TurnWay {
    /// What turns the chain.
    pub kind: TurnKind,
    /// How a curve or corner touches.
    pub contact: Contact,
    /// Floor of a corner.
    pub floor: Support,
    /// +1 towards the inside of the loop, −1 for a reverse bend.
    pub side: i64,
    /// Plane of the bend.
    pub plane: Plane,
    /// Teeth of a sprocket.
    pub teeth: Option<u32>,
    /// Radius of the joint path, m.
    pub radius: f64,
    /// Angle of wrap, rad.
    pub wrap: f64,
    /// sin(wrap/2): bearing load over the sum of both tensions.
    pub half_wrap_sine: f64,
    /// Articulation of one joint, rad.
    pub articulation_angle: f64,
    /// Joint resistance over joint friction and tension: pin radius × articulation angle / pitch.
    pub joint_arm: f64,
    /// Bearing resistance of a wheel over bearing friction and the sum of both tensions; 0 where nothing turns.
    pub bearing_arm: f64,
    /// Weight of the chain on one radian of a corner's floor, N; 0 elsewhere.
    pub floor_weight: f64,
}

impl Place {
    /// Whether joints bend here: on every turn, and over idlers.
    pub fn bends(&self) -> bool {
        match &self.way {
            Way::Turn(_) => true,
            Way::Straight(straight) => straight.support == Support::Idlers,
        }
    }

    /// Whether chain rollers roll here.
    pub fn rolls(&self) -> bool {
        match &self.way {
            Way::Straight(straight) => straight.support == Support::Rollers,
            Way::Turn(turn) => {
                let wall = matches!(turn.kind, TurnKind::Curve | TurnKind::Corner);
                wall && turn.contact == Contact::Rollers
                    || turn.kind == TurnKind::Corner && turn.floor == Support::Rollers
            }
        }
    }

    /// The turn, if it is one.
    pub fn turn(&self) -> Option<&TurnWay> {
        match &self.way {
            Way::Turn(turn) => Some(turn),
            Way::Straight(_) => None,
        }
    }

    /// Works out section `index` of the survey; times and the roller straight are set when the loop is known.
    pub(super) fn of(index: usize, data: &LoopData) -> Result<Place> {
        let place = match &data.sections[index] {
            SectionSi::Straight(straight) => Place::straight(index, straight, data)?,
            SectionSi::Turn(turn) => Place::turning(index, turn, data)?,
        };
        if place.rise.abs() > place.length {
            return Err(Error::new(
                Code::Inconsistent,
                format!("sections[{index}].rise"),
                format!(
                    "section {index} rises {} m over only {} m of chain: check rise and length",
                    place.rise, place.length
                ),
            )
            .number(place.rise)
            .unit("m")
            .limit(format!("at most {} m either way", place.length)));
        }
        if place.rolls() && data.roller_diameter.is_none() {
            return Err(Error::new(
                Code::Missing,
                "roller_diameter",
                format!("section {index} runs on chain rollers, but the chain has no roller diameter: give one"),
            ));
        }
        Ok(place)
    }

    fn straight(index: usize, s: &StraightSi, data: &LoopData) -> Result<Place> {
        let chain = data.chain_mass();
        let mass = chain + s.load;
        let level = ((s.length - s.rise) * (s.length + s.rise)).max(0.0).sqrt();
        let carried = if s.load_on == LoadOn::Bed { chain } else { mass };
        let on_bed = if s.load_on == LoadOn::Chain { 0.0 } else { s.load };
        let span = match s.support {
            Support::Idlers => s.idler_spacing.ok_or_else(|| {
                Error::new(
                    Code::Missing,
                    format!("sections[{index}].idler_spacing"),
                    format!("section {index} runs over idlers: give the distance between them"),
                )
            })?,
            Support::Free => level,
            Support::Rollers | Support::Slide | Support::Trolleys => 0.0,
        };
        let acceleration = if s.loads { s.load * data.speed * (data.speed - s.feed_speed) } else { 0.0 };
        Ok(Place {
            section: index,
            length: s.length,
            rise: s.rise,
            mass,
            load: s.load,
            centrifugal: centrifugal_tension(chain, data.speed),
            lift: mass * GRAVITY * s.rise,
            extra: s.extra_pull,
            start: 0.0,
            duration: 0.0,
            environment: s.temperature.unwrap_or(data.ambient),
            heat_transfer: s.heat_transfer,
            way: Way::Straight(StraightWay {
                support: s.support,
                level,
                carried,
                weight: carried * GRAVITY * level,
                bed_weight: on_bed * GRAVITY * level,
                acceleration,
                span,
            }),
            roller_straight: None,
        })
    }

    fn turning(index: usize, t: &TurnSi, data: &LoopData) -> Result<Place> {
        let (articulation_angle, radius) = match (t.teeth, t.radius) {
            (Some(teeth), None) => {
                let teeth = teeth as f64;
                (articulation_angle(teeth), pitch_diameter(data.pitch, teeth) / 2.0)
            }
            (None, Some(radius)) => {
                let angle = articulation_angle_smooth(data.pitch, radius).map_err(|mut error| {
                    error.field = format!("sections[{index}].radius");
                    error
                })?;
                (angle, radius)
            }
            (None, None) | (Some(_), Some(_)) => {
                let code = if t.teeth.is_some() { Code::Inconsistent } else { Code::Missing };
                return Err(Error::new(
                    code,
                    format!("sections[{index}].teeth"),
                    format!("turn {index} needs either teeth or a radius, and not both"),
                ));
            }
        };
        let mass = data.chain_mass() + t.load;
        let half_wrap_sine = (t.wrap / 2.0).sin();
        let bearing_arm = match t.kind {
            TurnKind::Wheel => t.shaft_diameter.map_or(SHAFT_SHARE, |shaft| shaft / (2.0 * radius)) * half_wrap_sine,
            TurnKind::RollerTurn | TurnKind::Curve | TurnKind::Corner => 0.0,
        };
        Ok(Place {
            section: index,
            length: chain_on_turn(data.pitch, t.wrap, articulation_angle),
            rise: t.rise,
            mass,
            load: t.load,
            centrifugal: centrifugal_tension(mass, data.speed),
            lift: mass * GRAVITY * t.rise,
            extra: t.extra_pull,
            start: 0.0,
            duration: 0.0,
            environment: t.temperature.unwrap_or(data.ambient),
            heat_transfer: t.heat_transfer,
            way: Way::Turn(TurnWay {
                kind: t.kind,
                contact: t.contact,
                floor: t.support,
                side: t.side,
                plane: t.plane,
                teeth: t.teeth.map(|teeth| teeth as u32),
                radius,
                wrap: t.wrap,
                half_wrap_sine,
                articulation_angle,
                joint_arm: data.pin_diameter / 2.0 * articulation_angle / data.pitch,
                bearing_arm,
                floor_weight: if t.kind == TurnKind::Corner { mass * GRAVITY * radius } else { 0.0 },
            }),
            roller_straight: None,
        })
    }
}
