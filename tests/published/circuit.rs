//! Conveyor pull and chain tension: closed forms of handbooks.

use crate::{Answer, Check, number, relative, within};
use pinfilm::circuit::*;

pub fn check(check: &Check) -> Answer {
    let (inputs, printed) = (check.inputs, check.expected.as_f64().unwrap_or(f64::NAN));
    let what = check.quantity;
    Some(vec![match check.id {
        "PUL-001" => relative(
            what,
            printed,
            level_pull(number(inputs, "mu"), number(inputs, "m_kg_per_m"), number(inputs, "L_m")),
            1e-6,
        ),
        "PUL-003" => {
            relative(what, printed, capstan_ratio(number(inputs, "mu"), number(inputs, "deg").to_radians()), 1e-6)
        }
        "PUL-005" => relative(
            what,
            printed,
            // All four in millimetres but the friction: the factor has no dimension.
            rolling_resistance(
                number(inputs, "mu"),
                number(inputs, "bush_od_mm"),
                number(inputs, "roller_mm"),
                number(inputs, "f_mm"),
            ),
            1e-6,
        ),
        // Accepted range 0.3 to 0.6 mm about 0.5 mm.
        "PUL-006" => within(what, number(check.expected, "f_mm"), ROLLING_ARM_STEEL * 1e3, 0.1),
        "PUL-007" => relative(
            what,
            printed,
            sag_tension(number(inputs, "m_kg_per_m"), number(inputs, "span_m"), number(inputs, "sag_m")),
            1e-6,
        ),
        "KIN-022" => {
            relative(what, printed, centrifugal_tension(number(inputs, "m_kg_per_m"), number(inputs, "v_mps")), 1e-9)
        }
        _ => return None,
    }])
}

/// Pull gained on a level straight that slides, from a march round a loop that holds it.
fn level_pull(friction: f64, mass_per_length: f64, length: f64) -> f64 {
    let chain_mass = 5.0;
    let straight = |load: f64, support| {
        SectionSi::Straight(StraightSi {
            length,
            rise: 0.0,
            load,
            temperature: None,
            heat_transfer: 12.0,
            support,
            load_on: LoadOn::Chain,
            loads: false,
            feed_speed: 0.0,
            idler_spacing: None,
            extra_pull: 0.0,
            wash: false,
            ..StraightSi::plain(Support::Free, 1.0)
        })
    };
    let wheel = |drive| {
        SectionSi::Turn(TurnSi {
            kind: TurnKind::Wheel,
            contact: Contact::Slide,
            support: Support::Slide,
            side: 1,
            plane: Plane::Main,
            teeth: Some(12),
            radius: None,
            wrap: std::f64::consts::PI,
            rise: 0.0,
            load: 0.0,
            shaft_diameter: None,
            temperature: None,
            heat_transfer: 12.0,
            extra_pull: 0.0,
            drive,
        })
    };
    let sections = [
        straight(0.0, Support::Free),
        wheel(false),
        straight(mass_per_length - chain_mass, Support::Slide),
        wheel(true),
    ];
    let layout = lay_out(&LoopData {
        pitch: 0.1,
        pin_diameter: 0.012,
        bush_diameter: 0.018,
        roller_diameter: None,
        mass: chain_mass,
        tensile_strength: None,
        strands: 1,
        joints: None,
        speed: 0.2,
        ambient: 20.0,
        take_up: TakeUp::Tension(1000.0),
        least_tension: None,
        strand_share_factor: None,
        surface_factor: 3.0,
        sections: &sections,
    });
    let coefficients = Coefficients {
        joint: vec![0.2; 4],
        bush_roller: vec![0.2; 4],
        plate_track: friction,
        rolling_arm: ROLLING_ARM_STEEL,
        track_factor: 1.0,
        trolley: 0.02,
        idler: 0.03,
        turn_roller: 0.03,
        load_bed: 0.3,
        wheel_bearing: 0.02,
    };
    layout
        .and_then(|layout| march(&layout, &coefficients))
        .map_or(f64::NAN, |march| march.profile[2][1] - march.profile[2][0])
}
