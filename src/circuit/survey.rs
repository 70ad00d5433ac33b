//! What a survey says of the circuit: its sections in travel order, and the friction of each pair.

use crate::error::{Code, Error, Result};
use crate::quantity::{Access, Class, Place, Side, Spread, at_least, between, up_to};
use crate::{choice, noun, tagged};

choice! {
    /// What carries the chain on a straight.
    Support {
        /// The chain's own rollers on a track.
        Rollers = "rollers",
        /// The side plates slide on a track.
        Slide = "slide",
        /// Trolleys on a rail.
        Trolleys = "trolleys",
        /// Fixed idlers under the chain.
        Idlers = "idlers",
        /// Nothing: the chain hangs.
        Free = "free",
    }
}

choice! {
    /// What carries the load on a straight.
    LoadOn {
        /// The chain.
        Chain = "chain",
        /// A bed on which the chain drags it.
        Bed = "bed",
        /// The chain, while the load stands still against a stop.
        Accumulating = "accumulating",
    }
}

choice! {
    /// What turns the chain.
    TurnKind {
        /// A sprocket or smooth wheel on a shaft.
        Wheel = "wheel",
        /// A fixed curve of rollers.
        RollerTurn = "roller_turn",
        /// A fixed curve in a vertical plane.
        Curve = "curve",
        /// A fixed curve in a horizontal plane, with a floor that carries the weight.
        Corner = "corner",
    }
}

choice! {
    /// What touches the wall of a fixed curve.
    Contact {
        /// The side plates slide.
        Slide = "slide",
        /// The chain's own rollers roll.
        Rollers = "rollers",
        /// Trolleys roll.
        Trolleys = "trolleys",
    }
}

choice! {
    /// The plane of a turn.
    Plane {
        /// About the pins.
        Main = "main",
        /// Across the pins (biplanar chain).
        Cross = "cross",
    }
}

macro_rules! straight_noun { ($declare:ident) => { $declare! {
    /// A straight piece of the circuit.
    Straight / StraightSi, "section" {
        length_m as length: f64 [M] "length along the chain" { symbol: "L", allowed: up_to(0.0, 5000.0) }
        rise_m as rise: f64 [M = 0.0] "rise in travel direction; negative downwards" { symbol: "h", allowed: between(-500.0, 500.0) }
        load_kg_per_m as load: f64 [KG_PER_M = 0.0] "all that rides with the chain, all strands together: slats, hangers, product"
            { symbol: "q_l", allowed: between(0.0, 20000.0) }
        support as support: Support [WORD] "what carries the chain: rollers, slide, trolleys, idlers or free" {}
        load_on as load_on: LoadOn [WORD = LoadOn::Chain] "what carries the load: chain, bed or accumulating" {}
        loads as loads: bool [WORD = false] "whether product is placed at the start of this section" {}
        feed_speed_m_per_min as feed_speed: f64 [M_PER_MIN = 0.0] "speed of the product along the line as it is placed"
            { allowed: between(0.0, 1200.0) }
        idler_spacing_m as idler_spacing: Option<f64> [M = None] "distance between idlers, or free span" { allowed: up_to(0.0, 500.0) }
        extra_pull_n as extra_pull: f64 [N = 0.0] "pull of brushes, scrapers and seals" { allowed: at_least(0.0) }
        temperature_c as temperature: Option<f64> [C = None] "temperature around the chain; not given: ambient"
            { allowed: between(-60.0, 350.0), usual: between(-40.0, 260.0) }
        heat_transfer_w_per_m2_k as heat_transfer: f64 [W_PER_M2_K = 12.0] "heat transfer between chain and air"
            { allowed: between(0.5, 500.0), usual: between(5.0, 80.0), spread: Spread::Lognormal(8.0, 25.0),
              class: Class::FromMemory, source: "free convection and radiation in a room" }
        wash as wash: bool [WORD = false] "whether this section is washed" {}
        access as access: Access [WORD = Access::Open] "how a person gets at it: open, guarded or climb" {}
        reachable_sides as reachable_sides: Vec<Side> [WORD = vec![Side::Top, Side::Beside, Side::Bottom]] "sides from which an applicator can reach the chain" {}
        gap_open_share as gap_open_share: f64 [ONE = 1.0] "share of the plate gap that an applicator sees" { allowed: between(0.0, 1.0) }
        above_product as above_product: bool [WORD = false] "whether open product passes below" {}
        ignition_source as ignition_source: bool [WORD = false] "whether flames, glowing or very hot surfaces are near" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use straight_noun;
straight_noun!(noun);

macro_rules! turn_noun { ($declare:ident) => { $declare! {
    /// A turn: a wheel, a roller turn, a curve or a corner.
    Turn / TurnSi, "section", consistent: crate::circuit::turn_consistent {
        kind as kind: TurnKind [WORD] "what turns the chain: wheel, roller_turn, curve or corner" {}
        teeth as teeth: Option<i64> [ONE = None] "teeth of the sprocket" { symbol: "z", allowed: between(3.0, 200.0), usual: between(6.0, 150.0) }
        radius_mm as radius: Option<f64> [MM = None] "radius of the joints' path on a smooth turn" { symbol: "R", allowed: up_to(0.0, 100000.0) }
        wrap_deg as wrap: f64 [DEG] "angle of wrap" { symbol: "θ", allowed: up_to(0.0, 360.0) }
        rise_m as rise: f64 [M = 0.0] "rise in travel direction; negative downwards" { symbol: "h", allowed: between(-50.0, 50.0) }
        load_kg_per_m as load: f64 [KG_PER_M = 0.0] "all that rides with the chain, all strands together"
            { symbol: "q_l", allowed: between(0.0, 20000.0) }
        contact as contact: Contact [WORD = Contact::Slide] "what touches the wall of a curve or corner: slide, rollers or trolleys" {}
        support as support: Support [WORD = Support::Slide] "what carries the weight on the floor of a corner" {}
        side as side: i64 [ONE = 1] "1 where the inside of the loop bends inwards, -1 for a reverse bend" { allowed: between(-1.0, 1.0) }
        plane as plane: Plane [WORD = Plane::Main] "plane of the turn: main (about the pins) or cross" {}
        shaft_diameter_mm as shaft_diameter: Option<f64> [MM = None] "diameter of the wheel's shaft; not given: 0.15 of the wheel"
            { allowed: up_to(0.0, 2000.0), spread: Spread::Told("0.1 to 0.25 of the wheel, uniform"), class: Class::Closure, source: "proportion of usual wheels" }
        extra_pull_n as extra_pull: f64 [N = 0.0] "pull of brushes, scrapers and seals" { allowed: at_least(0.0) }
        temperature_c as temperature: Option<f64> [C = None] "temperature around the chain; not given: ambient"
            { allowed: between(-60.0, 350.0), usual: between(-40.0, 260.0) }
        heat_transfer_w_per_m2_k as heat_transfer: f64 [W_PER_M2_K = 12.0] "heat transfer between chain and air"
            { allowed: between(0.5, 500.0), usual: between(5.0, 80.0), spread: Spread::Lognormal(8.0, 25.0),
              class: Class::FromMemory, source: "free convection and radiation in a room" }
        drive as drive: bool [WORD = false] "whether this is the drive sprocket" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use turn_noun;
turn_noun!(noun);

/// A toothed wheel or a smooth turn, and not both.
pub(crate) fn turn_consistent(turn: &Turn, place: &Place) -> Result<()> {
    let wrong = |key: &str, text: &str| Err(Error::new(Code::Inconsistent, place.then(key).path(), text));
    match (turn.teeth, turn.radius_mm) {
        (Some(_), Some(_)) => {
            return wrong(
                "radius_mm",
                "a turn has either teeth or a radius_mm, not both: give the one that was counted or measured",
            );
        }
        (None, None) => {
            return wrong(
                "teeth",
                "the size of a turn is missing: give teeth for a sprocket or radius_mm for a smooth turn",
            );
        }
        (Some(_), None) if turn.kind != TurnKind::Wheel => {
            return wrong("teeth", "only a wheel has teeth: give radius_mm for a roller_turn, curve or corner");
        }
        _ => {}
    }
    if turn.side == 0 {
        return wrong("side", "side is 1 (the inside of the loop bends inwards) or -1 (reverse bend)");
    }
    if turn.drive && (turn.kind != TurnKind::Wheel || turn.teeth.is_none()) {
        return wrong("drive", "the drive is a toothed wheel: give kind = \"wheel\" and teeth");
    }
    Ok(())
}

tagged! {
    /// One piece of the circuit, in travel order.
    Section / SectionSi by "type" { "straight" => Straight / StraightSi, "turn" => Turn / TurnSi }
}

macro_rules! circuit_noun { ($declare:ident) => { $declare! {
    /// The closed loop of chain, its take-up and its attachments.
    Circuit / CircuitSi, "circuit", consistent: crate::circuit::circuit_consistent {
        sections as sections: Vec<Section> [WORD] "straights and turns in travel order" {}
        strands as strands: i64 [ONE = 1] "parallel strands of chain" { symbol: "n", allowed: between(1.0, 12.0) }
        joints as joints: Option<i64> [ONE = None] "joints of one strand, counted; not given: the even number nearest to length over pitch"
            { symbol: "N", allowed: between(4.0, 1e6) }
        take_up_n as take_up: f64 [N] "running tension of all strands at the drive exit, or the force on the frame of the take-up turn"
            { symbol: "S₀", allowed: up_to(0.0, 1e7) }
        take_up_at as take_up_at: Option<i64> [ONE = None] "section number of the turn that carries a weight or spring take-up"
            { allowed: at_least(0.0) }
        least_tension_n as least_tension: Option<f64> [N = None] "least tension that keeps the chain in line; not given: 2 % sag on one metre"
            { allowed: up_to(0.0, 1e6), spread: Spread::Told("1 to 4 % sag, uniform"), class: Class::Closure, source: "parabola of a hanging chain; that 2 % on one metre are enough is judgement" }
        strand_share_factor as strand_share_factor: Option<f64> [ONE = None] "tension of the heaviest strand over the mean; not given: 1, 1.2, 1.3 for 1, 2, more strands"
            { symbol: "k_s", allowed: between(1.0, 12.0), spread: Spread::Uniform(1.05, 1.5), class: Class::Closure, source: "strands wear and stretch unevenly, so one carries more than its share; level by judgement" }
        surface_factor as surface_factor: f64 [ONE = 3.0] "cooled surface over that of an equal round bar"
            { symbol: "k_A", allowed: between(0.5, 20.0), usual: between(2.0, 5.0), spread: Spread::Uniform(2.0, 5.0), class: Class::Closure, source: "plates, bushes and rollers have more surface than a round bar of the same mass; level by judgement" }
        start_time_s as start_time: f64 [S = 2.0] "time in which the drive runs up"
            { allowed: up_to(0.0, 120.0), usual: between(0.5, 10.0), spread: Spread::Uniform(0.5, 10.0), class: Class::CommonPractice, source: "" }
        attachment_every as attachment_every: Option<i64> [ONE = None] "joints from one attachment to the next" { allowed: between(1.0, 1e6) }
        attachment_blocks as attachment_blocks: Vec<i64> [ONE = Vec::new()] "joints of that pattern, counted from 0, whose gap the attachments hide from the applicator"
            { allowed: at_least(0.0), class: Class::Derived, source: "no attachments" }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use circuit_noun;
circuit_noun!(noun);

/// Exactly one drive, attachments that fit, a take-up on a turn.
pub(crate) fn circuit_consistent(circuit: &Circuit, place: &Place) -> Result<()> {
    let path = |key: &str| place.then(key).path();
    let drives = circuit.sections.iter().filter(|s| matches!(s, Section::Turn(turn) if turn.drive)).count();
    if drives != 1 {
        let (code, what) = if drives == 0 {
            (Code::Missing, "no section is the drive: mark the drive sprocket with drive = true".to_string())
        } else {
            (
                Code::Unsupported,
                format!("{drives} sections are marked as drive: a circuit with more than one drive is not covered"),
            )
        };
        return Err(Error::new(code, path("sections"), what).number(drives as f64).limit("one drive"));
    }
    if let Some(every) = circuit.attachment_every {
        if let Some(block) = circuit.attachment_blocks.iter().find(|block| **block >= every) {
            let text = format!(
                "attachment_blocks holds {block}, but the pattern repeats every {every} joints: count from 0 to {}",
                every - 1
            );
            return Err(Error::new(Code::Inconsistent, path("attachment_blocks"), text).number(*block as f64));
        }
        if let Some(joints) = circuit.joints.filter(|joints| joints % every != 0) {
            let text = format!(
                "attachment_every = {every} does not divide joints = {joints}: the pattern of attachments must close round the loop"
            );
            return Err(Error::new(Code::Inconsistent, path("attachment_every"), text).number(every as f64));
        }
    }
    if let Some(at) = circuit.take_up_at
        && !matches!(circuit.sections.get(at as usize), Some(Section::Turn(turn)) if !turn.drive)
    {
        let text = format!(
            "take_up_at = {at} is not a turn of this circuit (sections count from 0, and the drive cannot be the take-up)"
        );
        return Err(Error::new(Code::Inconsistent, path("take_up_at"), text).number(at as f64));
    }
    Ok(())
}

macro_rules! friction_noun { ($declare:ident) => { $declare! {
    /// Friction of each pair; `joint` and `bush_roller` are computed from the joint model where they are not given.
    Friction / FrictionSi, "friction", defaults: all {
        joint as joint: Option<f64> [ONE = None] "friction coefficient of pin in bush; not given: computed"
            { symbol: "µ_j", allowed: between(0.0, 2.0), usual: between(0.01, 0.6), spread: Spread::Lognormal(0.08, 0.40), class: Class::CommonPractice }
        bush_roller as bush_roller: Option<f64> [ONE = None] "friction coefficient of bush in roller; not given: computed"
            { symbol: "µ_br", allowed: between(0.0, 2.0), usual: between(0.005, 0.6), spread: Spread::Lognormal(0.08, 0.40), class: Class::CommonPractice }
        plate_track as plate_track: f64 [ONE = 0.25] "friction coefficient of side plates on their track"
            { symbol: "µ_pt", allowed: between(0.0, 2.0), usual: between(0.05, 0.6), spread: Spread::Lognormal(0.10, 0.45), class: Class::CommonPractice }
        plate_track_oiled as plate_track_oiled: f64 [ONE = 0.12] "the same where oil reaches the track"
            { allowed: between(0.0, 2.0), usual: between(0.05, 0.3), class: Class::CommonPractice }
        track_oiled as track_oiled: bool [WORD = false] "whether oil from the joints also reaches the track" {}
        rolling_arm_mm as rolling_arm: f64 [MM = 0.5] "lever arm of rolling friction of a roller on its track"
            { symbol: "f", allowed: between(0.0, 10.0), usual: between(0.2, 1.5), spread: Spread::Lognormal(0.3, 1.2), class: Class::FromMemory, source: "steel on steel" }
        track_factor as track_factor: f64 [ONE = 1.0] "factor for flange rub, dirt and rail joints"
            { symbol: "k_t", allowed: between(0.1, 10.0), usual: between(1.0, 2.0), spread: Spread::Uniform(1.0, 2.0), class: Class::Closure,
              source: "multiplies rolling and sliding resistance of a clean, straight track; level by judgement" }
        trolley_coefficient as trolley_coefficient: f64 [ONE = 0.02] "resistance of trolleys over their load"
            { allowed: between(0.0, 2.0), usual: between(0.005, 0.1), spread: Spread::Lognormal(0.010, 0.05), class: Class::CommonPractice }
        idler_coefficient as idler_coefficient: f64 [ONE = 0.03] "resistance of idlers over their load"
            { allowed: between(0.0, 2.0), usual: between(0.01, 0.1), spread: Spread::Lognormal(0.015, 0.06), class: Class::CommonPractice }
        turn_roller_coefficient as turn_roller_coefficient: f64 [ONE = 0.03] "resistance of a roller turn over its load"
            { allowed: between(0.0, 2.0), usual: between(0.01, 0.1), spread: Spread::Lognormal(0.015, 0.06), class: Class::CommonPractice }
        load_bed as load_bed: f64 [ONE = 0.30] "friction coefficient of the load on its bed, or of the chain under a standing load"
            { allowed: between(0.0, 2.0), usual: between(0.1, 0.7), spread: Spread::Uniform(0.15, 0.60), class: Class::CommonPractice }
        wheel_bearing as wheel_bearing: f64 [ONE = 0.02] "friction coefficient of the wheels' bearings at the shaft radius"
            { symbol: "µ_w", allowed: between(0.0, 2.0), usual: between(0.001, 0.2), spread: Spread::Lognormal(0.005, 0.05), class: Class::CommonPractice }
        breakaway_factor as breakaway_factor: f64 [ONE = 1.5] "friction at breakaway over running friction"
            { symbol: "k_b", allowed: between(1.0, 10.0), usual: between(1.0, 3.0), spread: Spread::Uniform(1.2, 2.5), class: Class::CommonPractice }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use friction_noun;
friction_noun!(noun);

impl StraightSi {
    /// A level straight of which nothing else is known.
    pub fn plain(support: Support, length: f64) -> Self {
        StraightSi {
            length,
            support,
            rise: 0.0,
            load: 0.0,
            load_on: LoadOn::Chain,
            loads: false,
            feed_speed: 0.0,
            idler_spacing: None,
            extra_pull: 0.0,
            temperature: None,
            heat_transfer: 12.0,
            wash: false,
            access: Access::Open,
            reachable_sides: Vec::new(),
            gap_open_share: 1.0,
            above_product: false,
            ignition_source: false,
        }
    }
}
