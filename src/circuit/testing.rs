//! Loops for the tests of this room: made up section by section, closed in height by the drive.

use super::*;
use proptest::prelude::*;

/// A level straight of 10 m that carries 20 kg/m.
pub fn straight(support: Support) -> StraightSi {
    StraightSi {
        length: 10.0,
        rise: 0.0,
        load: 20.0,
        temperature: None,
        heat_transfer: 12.0,
        support,
        load_on: LoadOn::Chain,
        loads: false,
        feed_speed: 0.0,
        idler_spacing: Some(0.5),
        extra_pull: 0.0,
        wash: false,
        ..StraightSi::plain(Support::Free, 1.0)
    }
}

/// Half a revolution round twelve teeth, or along a wall of 0.6 m radius.
pub fn turn(kind: TurnKind) -> TurnSi {
    let wheel = kind == TurnKind::Wheel;
    TurnSi {
        kind,
        contact: Contact::Slide,
        support: Support::Slide,
        side: 1,
        plane: Plane::Main,
        teeth: wheel.then_some(12),
        radius: (!wheel).then_some(0.6),
        wrap: std::f64::consts::PI,
        rise: 0.0,
        load: 20.0,
        shaft_diameter: None,
        temperature: None,
        heat_transfer: 12.0,
        extra_pull: 0.0,
        drive: false,
    }
}

/// The drive wheel.
pub fn drive() -> SectionSi {
    SectionSi::Turn(TurnSi { drive: true, ..turn(TurnKind::Wheel) })
}

/// Two straights round two wheels.
pub fn simple_loop() -> Vec<SectionSi> {
    vec![
        SectionSi::Straight(straight(Support::Slide)),
        SectionSi::Turn(turn(TurnKind::Wheel)),
        SectionSi::Straight(straight(Support::Rollers)),
        drive(),
    ]
}

/// A chain of pitch 100 mm, two strands.
pub fn data(sections: &[SectionSi]) -> LoopData<'_> {
    LoopData {
        pitch: 0.1,
        pin_diameter: 0.014,
        bush_diameter: 0.02,
        roller_diameter: Some(0.05),
        mass: 5.0,
        tensile_strength: Some(100e3),
        strands: 2,
        joints: None,
        speed: 0.3,
        ambient: 20.0,
        take_up: TakeUp::Tension(2000.0),
        least_tension: None,
        strand_share_factor: None,
        surface_factor: 3.0,
        sections,
    }
}

/// Dry friction.
pub fn friction() -> FrictionSi {
    FrictionSi {
        joint: Some(0.2),
        bush_roller: Some(0.2),
        plate_track: 0.25,
        rolling_arm: ROLLING_ARM_STEEL,
        track_factor: 1.1,
        trolley_coefficient: 0.02,
        idler_coefficient: 0.03,
        turn_roller_coefficient: 0.03,
        load_bed: 0.3,
        wheel_bearing: 0.02,
        breakaway_factor: 1.5,
        plate_track_oiled: 0.12,
        track_oiled: false,
    }
}

/// Layout and coefficients of `sections`.
pub fn laid_out(sections: &[SectionSi]) -> (Layout, Coefficients) {
    let layout = lay_out(&data(sections)).unwrap();
    (layout, Coefficients::new(sections.len(), &friction(), 0.2, 0.2))
}

fn any_straight() -> impl Strategy<Value = SectionSi> {
    let support =
        prop::sample::select(vec![Support::Rollers, Support::Slide, Support::Trolleys, Support::Idlers, Support::Free]);
    let load_on = prop::sample::select(vec![LoadOn::Chain, LoadOn::Bed, LoadOn::Accumulating]);
    (support, load_on, 1.0..40.0f64, -0.2..0.2f64, 0.0..100.0f64, -20.0..200.0f64, any::<bool>(), 0.0..50.0f64)
        .prop_map(|(support, load_on, length, slope, load, temperature, loads, extra_pull)| {
            SectionSi::Straight(StraightSi {
                length,
                rise: slope * length,
                load,
                load_on,
                temperature: Some(temperature),
                loads,
                extra_pull,
                ..straight(support)
            })
        })
}

fn any_turn() -> impl Strategy<Value = SectionSi> {
    let kind = prop::sample::select(vec![TurnKind::Wheel, TurnKind::RollerTurn, TurnKind::Curve, TurnKind::Corner]);
    let contact = prop::sample::select(vec![Contact::Slide, Contact::Rollers, Contact::Trolleys]);
    let floor = prop::sample::select(vec![Support::Slide, Support::Rollers, Support::Idlers, Support::Free]);
    (kind, contact, floor, 0.2..2.0f64, 0.2..6.0f64, -0.1..0.1f64, 0.0..100.0f64).prop_map(
        |(kind, contact, support, radius, wrap, slope, load)| {
            let rise = slope * radius * wrap;
            SectionSi::Turn(TurnSi {
                contact,
                support,
                teeth: None,
                radius: Some(radius),
                wrap,
                rise,
                load,
                ..turn(kind)
            })
        },
    )
}

/// Any loop of up to eight sections and its drive; the last straight brings it back to its height.
pub fn any_loop() -> impl Strategy<Value = Vec<SectionSi>> {
    prop::collection::vec(prop_oneof![any_straight(), any_turn()], 1..8).prop_map(|mut sections| {
        let height: f64 = sections
            .iter()
            .map(|section| match section {
                SectionSi::Straight(straight) => straight.rise,
                SectionSi::Turn(turn) => turn.rise,
            })
            .sum();
        let length = 10.0 + 5.0 * height.abs();
        sections.push(SectionSi::Straight(StraightSi { length, rise: -height, ..straight(Support::Slide) }));
        sections.push(drive());
        sections
    })
}
