//! What is no loop: drives, rises, speeds and take-ups that the march cannot have.

use super::{Place, SectionSi, TakeUp, TurnKind};
use crate::error::{Code, Error, Result};
use crate::quantity::show::in_unit;
use crate::quantity::unit::M_PER_MIN;

/// How far the rises of a closed loop may miss zero, m (survey accuracy; closure of our own).
const RISE_TOLERANCE: f64 = 0.010;

/// Speed (m/s) above which a loaded chain is outside of what the march describes: tension jumps where load meets turns.
const LOADED_SPEED_LIMIT: f64 = 5.0;

/// The single wheel that drives the loop.
pub(super) fn drive_of(sections: &[SectionSi]) -> Result<usize> {
    let mut drives = sections.iter().enumerate().filter_map(|(index, section)| match section {
        SectionSi::Turn(turn) if turn.drive => Some((index, turn)),
        _ => None,
    });
    let refused = |why: &str| Err(Error::new(Code::Unsupported, "sections", why.to_string()));
    match (drives.next(), drives.next()) {
        (None, _) => refused("no turn of the loop drives it: mark one wheel with drive = true"),
        (Some(_), Some(_)) => {
            refused("more than one turn drives the loop: only a single drive is modelled, split the line or merge them")
        }
        (Some((_, turn)), None) if turn.kind != TurnKind::Wheel => {
            refused("the drive must be a wheel or sprocket: change its kind")
        }
        (Some((index, _)), None) => Ok(index),
    }
}

/// Load makes joint tension jump where it meets a turn, which a fast chain would feel.
pub(super) fn speed(places: &[Place], speed: f64) -> Result<()> {
    match places.iter().find(|place| place.load > 0.0) {
        Some(place) if speed > LOADED_SPEED_LIMIT => Err(Error::new(
            Code::BeyondModel,
            "speed",
            format!(
                "a loaded chain at {} is not modelled: section {} carries load, lower the speed",
                in_unit(speed, &M_PER_MIN),
                place.section
            ),
        )
        .number(speed)
        .unit("m/s")
        .limit(format!("at most {} with load", in_unit(LOADED_SPEED_LIMIT, &M_PER_MIN)))),
        _ => Ok(()),
    }
}

/// A loop comes back to its height.
pub(super) fn rises(places: &[Place]) -> Result<()> {
    let sum: f64 = places.iter().map(|place| place.rise).sum();
    if sum.abs() > RISE_TOLERANCE {
        return Err(Error::new(
            Code::RiseMismatch,
            "sections",
            format!("the rises of the loop add up to {sum} m instead of zero: a turn rises by its own height too"),
        )
        .number(sum)
        .unit("m")
        .limit(format!("within {RISE_TOLERANCE} m of zero")));
    }
    Ok(())
}

/// A weight pulls the wheel of a turn.
pub(super) fn take_up(places: &[Place], take_up: TakeUp) -> Result<()> {
    let TakeUp::FrameForce { section, .. } = take_up else { return Ok(()) };
    let turn = places.iter().find(|place| place.section == section).and_then(Place::turn);
    // A wheel wrapped by next to nothing (or all round) is not pulled by its chain.
    match turn {
        Some(turn) if turn.half_wrap_sine > 1e-6 => Ok(()),
        _ => Err(Error::new(
            Code::Inconsistent,
            "take_up_at",
            format!("section {section} is no turn that a take-up could pull: name a turn of the loop"),
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::*;
    use super::super::*;
    use crate::error::Code;

    fn code(sections: &[SectionSi]) -> Code {
        lay_out(&data(sections)).unwrap_err().code
    }

    #[test]
    fn loops_that_are_none_are_refused() {
        let good = simple_loop();
        assert!(lay_out(&data(&good)).is_ok());
        assert_eq!(code(&good[..3]), Code::Unsupported);
        assert_eq!(code(&[drive(), drive()]), Code::Unsupported);
        let with = |index: usize, section| {
            let mut sections = simple_loop();
            sections[index] = section;
            code(&sections)
        };
        let s = straight(Support::Slide);
        assert_eq!(with(0, SectionSi::Straight(StraightSi { rise: 0.02, ..s.clone() })), Code::RiseMismatch);
        assert_eq!(with(0, SectionSi::Straight(StraightSi { rise: 11.0, ..s })), Code::Inconsistent);
        let idlers = StraightSi { idler_spacing: None, ..straight(Support::Idlers) };
        assert_eq!(with(0, SectionSi::Straight(idlers)), Code::Missing);
        let curve = turn(TurnKind::Curve);
        assert_eq!(with(1, SectionSi::Turn(TurnSi { radius: Some(0.05), ..curve.clone() })), Code::OutOfRange);
        assert_eq!(with(1, SectionSi::Turn(TurnSi { radius: None, ..curve.clone() })), Code::Missing);
        assert_eq!(with(1, SectionSi::Turn(TurnSi { teeth: Some(9), ..curve.clone() })), Code::Inconsistent);
        assert_eq!(with(3, SectionSi::Turn(TurnSi { drive: true, ..curve })), Code::Unsupported);
    }

    #[test]
    fn chains_that_do_not_fit_the_loop_are_refused() {
        let sections = simple_loop();
        let refused = |data: LoopData| lay_out(&data).unwrap_err().code;
        assert_eq!(refused(LoopData { roller_diameter: None, ..data(&sections) }), Code::Missing);
        assert_eq!(refused(LoopData { speed: 5.1, ..data(&sections) }), Code::BeyondModel);
        assert_eq!(refused(LoopData { joints: Some(0), ..data(&sections) }), Code::Inconsistent);
        let on_a_straight = TakeUp::FrameForce { section: 0, force: 100.0 };
        assert_eq!(refused(LoopData { take_up: on_a_straight, ..data(&sections) }), Code::Inconsistent);
    }
}
