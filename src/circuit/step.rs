//! One section of the march: exit tension as an affine function of entry tension, and which cause took what.

use super::friction::{NO_PART, Parts};
use super::turn::wall_growth;
use super::{Cause, Coefficients, Contact, Layout, Place, StraightWay, TurnKind, TurnWay, Way};
use crate::error::{Code, Error, Result};

/// Resistance of a turn over the sum of its tensions from which on the chain can hardly be pulled round it.
const LOCKED: f64 = 0.5;

/// S_out = `gain` S_in + `force`, with what is needed to tell causes apart afterwards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Step {
    pub gain: f64,
    pub force: f64,
    /// Joint resistance a and bearing resistance b of a turn, over tension.
    pub joint: f64,
    pub bearing: f64,
    /// Straight: pulls in N. Wall of a turn: parts of its friction.
    parts: Parts,
    /// Wall friction, growth exp(mu θ) − 1, spread K, floor pull W per rad.
    wall: f64,
    growth: f64,
    spread: f64,
    floor: f64,
}

impl Step {
    pub fn of(layout: &Layout, place: &Place, coefficients: &Coefficients) -> Result<Step> {
        match &place.way {
            Way::Straight(straight) => Ok(Step::straight(layout, place, straight, coefficients)),
            Way::Turn(turn) if turn.kind == TurnKind::Wheel => Step::wheel(place, turn, coefficients),
            Way::Turn(turn) => Step::wall(layout, place, turn, coefficients),
        }
    }

    fn straight(layout: &Layout, place: &Place, straight: &StraightWay, coefficients: &Coefficients) -> Step {
        let parts = coefficients
            .support(straight.support, layout, place)
            .map(|(cause, friction)| (cause, friction * straight.weight));
        let bed = coefficients.load_bed * straight.bed_weight;
        let force = place.lift + parts[0].1 + parts[1].1 + bed + straight.acceleration + place.extra;
        Step { gain: 1.0, force, parts, floor: bed, ..Step::NONE }
    }

    /// Each joint does the work friction × pin radius × T × angle entering and again leaving; the bearing carries both
    /// tensions. Source: work of meshing as in Lodge and Burgess 2002.
    fn wheel(place: &Place, turn: &TurnWay, coefficients: &Coefficients) -> Result<Step> {
        let joint = coefficients.joint[place.section] * turn.joint_arm;
        let bearing = coefficients.wheel_bearing * turn.bearing_arm;
        let both = passable(joint + bearing, place)?;
        Ok(Step {
            gain: (1.0 + both) / (1.0 - both),
            force: (2.0 * joint * place.centrifugal + place.lift + place.extra) / (1.0 - both),
            joint,
            bearing,
            ..Step::NONE
        })
    }

    /// The chain bends, is pulled along wall and floor, and bends back.
    fn wall(layout: &Layout, place: &Place, turn: &TurnWay, coefficients: &Coefficients) -> Result<Step> {
        let joint = passable(coefficients.joint[place.section] * turn.joint_arm, place)?;
        let parts = match (turn.kind, turn.contact) {
            (TurnKind::RollerTurn, _) => [(Cause::TurnRoller, coefficients.turn_roller), NO_PART],
            (_, Contact::Slide) => [(Cause::PlateTrack, coefficients.plate_track), NO_PART],
            (_, Contact::Trolleys) => [(Cause::Trolley, coefficients.trolley), NO_PART],
            (_, Contact::Rollers) => coefficients.rollers(layout, place),
        };
        let wall = parts[0].1 + parts[1].1;
        let (growth, spread) = wall_growth(wall, turn.wrap);
        let floor = if turn.kind == TurnKind::Corner {
            let carried = coefficients.support(turn.floor, layout, place);
            // The bends of an idler floor are those of the turn itself.
            let friction: f64 = carried.iter().filter(|(cause, _)| *cause != Cause::Joint).map(|(_, part)| part).sum();
            friction * turn.floor_weight
        } else {
            0.0
        };
        let bent = joint * place.centrifugal;
        Ok(Step {
            gain: (1.0 + joint) * (1.0 + growth) / (1.0 - joint),
            force: (bent * (1.0 + growth) + floor * spread + bent + place.lift + place.extra) / (1.0 - joint),
            joint,
            bearing: 0.0,
            parts,
            wall,
            growth,
            spread,
            floor,
        })
    }

    const NONE: Step = Step {
        gain: 1.0,
        force: 0.0,
        joint: 0.0,
        bearing: 0.0,
        parts: [NO_PART; 2],
        wall: 0.0,
        growth: 0.0,
        spread: 0.0,
        floor: 0.0,
    };

    /// Adds to `causes` what pulled between `entry` and `exit` (effective tension, N).
    pub fn collect(&self, place: &Place, entry: f64, exit: f64, causes: &mut [f64; Cause::COUNT]) {
        let mut add = |cause: Cause, pull: f64| causes[cause as usize] += pull;
        add(Cause::Rise, place.lift);
        add(Cause::Extra, place.extra);
        match &place.way {
            Way::Straight(straight) => {
                self.parts.iter().for_each(|(cause, pull)| add(*cause, *pull));
                add(Cause::Bed, self.floor);
                add(Cause::Accel, straight.acceleration);
            }
            Way::Turn(turn) => {
                add(Cause::Joint, self.joint * (entry + exit + 2.0 * place.centrifugal));
                if turn.kind == TurnKind::Wheel {
                    add(Cause::WheelBearing, self.bearing * (entry + exit));
                    return;
                }
                let bent = entry + self.joint * (entry + place.centrifugal);
                add(Cause::Floor, self.floor * turn.wrap);
                if self.wall > 0.0 {
                    let along_wall = bent * self.growth + self.floor * (self.spread - turn.wrap);
                    self.parts.iter().for_each(|(cause, part)| add(*cause, along_wall * part / self.wall));
                }
            }
        }
    }
}

/// Refuses a turn that takes as much as it leaves.
fn passable(resistance: f64, place: &Place) -> Result<f64> {
    if resistance < LOCKED {
        return Ok(resistance);
    }
    Err(Error::new(
        Code::BeyondModel,
        format!("sections[{}]", place.section),
        format!(
            "turn {} resists with {resistance:.3} of the tension around it: lower its joint or bearing friction, or \
             enlarge the turn",
            place.section
        ),
    )
    .number(resistance)
    .limit(format!("below {LOCKED}")))
}
