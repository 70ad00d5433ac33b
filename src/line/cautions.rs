//! Cautions for people, as the data of the line call for them. They defer to local codes and licensed practice.

use super::result::Caution;
use super::{Line, Surroundings};
use crate::circuit::{Kinematics, Section};
use crate::lubrication::Lubrication;
use std::borrow::Cow;

/// Air above which a surface or a place is called hot (°C): touch burns within seconds. Common practice, no source.
const HOT: f64 = 60.0;
/// Air above which a place is an oven (°C).
const OVEN: f64 = 100.0;

/// The cautions that this line calls for.
pub fn cautions(line: &Line, kinematics: &Kinematics) -> Vec<Caution> {
    let mut list = Vec::new();
    let mut add = |code: &'static str, message: &'static str| {
        list.push(Caution { code: Cow::Borrowed(code), message: Cow::Borrowed(message) });
    };
    let airs = line.circuit.sections.iter().map(|section| match section {
        Section::Straight(straight) => straight.temperature_c,
        Section::Turn(turn) => turn.temperature_c,
    });
    let hottest_air = airs.flatten().fold(line.duty.ambient_c, f64::max);
    let hottest_chain = kinematics.section_c.iter().flatten().copied().fold(f64::NEG_INFINITY, f64::max);
    let manual = matches!(line.lubrication, Lubrication::Manual(_));

    add(
        "moving_chain",
        "A running chain and its nip points at sprockets, wheels and idlers catch hands, hair and clothes. Fit applicators, \
         inspect and measure with the drive locked out; keep guards in place. Local machinery safety rules and the plant's \
         lock-out procedure decide.",
    );
    if manual {
        add(
            "oiling_by_hand",
            "Oiling by hand brings people to the chain: never reach into a moving chain with brush or can. Where it must run, \
             the machine's own safe access and the plant's procedure decide.",
        );
    }
    if hottest_chain > HOT || hottest_air > HOT {
        add(
            "hot_surface",
            "Chain, tracks and oil are hot enough to burn. Let them cool or wear protection; oil on hot metal can smoke.",
        );
    }
    if hottest_air >= OVEN || line.duty.surroundings == Surroundings::Oven {
        add(
            "oven",
            "Oil vapour and mist in an oven can burn or explode, and mist catches fire well below the flash point. Flash point, \
             ventilation and application point are a matter for the oven's maker, the oil's safety data sheet and the local fire code.",
        );
    }
    if matches!(line.lubrication, Lubrication::Spray(_)) {
        add(
            "oil_mist",
            "Sprayed oil makes a mist: keep it away from flames, hot surfaces and lungs; limits of the workplace air apply.",
        );
    }
    if line.supply.as_ref().is_some_and(|supply| supply.pump_ratio.is_some()) {
        add(
            "pressurised_oil",
            "Pressurised oil penetrates skin and injures deeply. Relieve the pressure before opening a line; never feel for leaks by hand.",
        );
    }
    add(
        "electricity",
        "Clamp meters, cabinets, drives and supplies belong to qualified electricians; local codes apply. A converter stays \
         charged after it is switched off.",
    );
    add("slippery_floor", "Dripping oil makes floors and steps slippery: use trays, wipe up, and tell people.");
    if line.duty.food_contact {
        add(
            "food_contact",
            if line.oil.food_grade {
                "Food is near the chain: the oil is said to be fit for incidental contact; its registration, the amount that may \
                 reach food and the cleaning plan are for the plant's food safety officer and the local law."
            } else {
                "Food is near the chain and this oil is not said to be fit for incidental contact: do not use it above or beside \
                 open food; the plant's food safety officer and the local law decide."
            },
        );
    }
    if line.duty.surroundings == Surroundings::WashDown || line.duty.wash_interval_h.is_some() {
        add(
            "wash_down",
            "Washing carries oil into the drain and water into electrical parts: waste-water rules and ingress protection apply.",
        );
    }
    list
}
