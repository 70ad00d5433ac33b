//! What a result says of the joints: each event, the rollers, friction.

use crate::quantity::{Class, Spread};
use crate::{choice, noun};

choice! {
    /// How a chain joint comes to move.
    EventKind {
        /// It bends as it enters a turn.
        Entry = "entry",
        /// It straightens as it leaves a turn.
        Exit = "exit",
        /// It bends and straightens over idlers.
        Idler = "idler",
    }
}

choice! {
    /// What keeps the surfaces apart.
    Regime {
        /// The boundary layer and dry spots: film ratio below 1.
        Boundary = "boundary",
        /// Partly the film: 1 to 3.
        Mixed = "mixed",
        /// The film: above 3.
        Full = "full",
    }
}

const FILM: &str = "finite-length film (closure against a 2-D Reynolds solution) or elastic line contact (Dowson and Higginson; Hamrock), whichever is thicker";
const SHARING: &str = "Greenwood and Tripp 1970 asperities share the load with the film (closure in the spirit of Johnson, Greenwood and Poon 1972)";

macro_rules! event_noun { ($declare:ident) => { $declare! {
    /// One articulation of a joint on its way round the loop.
    Event / EventSi, "joint" {
        section as section: i64 [ONE] "section of the survey, from 0" {}
        kind as kind: EventKind [WORD] "entry or exit of a turn, or idler" {}
        count as count: f64 [ONE] "articulations in one circuit" { formula: "1 at each end of a turn; 2 × length / spacing over idlers", source: "definition", class: Class::Derived }
        time_s as time: f64 [S] "time in the circuit, from the drive exit" { formula: "sum of section times before it", source: "definition", class: Class::Derived }
        tension_n as tension: f64 [N] "tension of the heaviest strand"
            { symbol: "T", formula: "(S + m v²) × {circuit.strand_share_factor} / {circuit.strands}, S from {tension.profile_n}", source: "tension march", class: Class::Closure }
        angle_deg as angle: f64 [DEG] "angle of articulation" { symbol: "α", formula: "360°/z on a sprocket, 2 asin(p/(2 R)) on a smooth turn", source: "pitch geometry", class: Class::Derived }
        temperature_c as temperature: f64 [C] "chain temperature" { symbol: "ϑ", formula: "{kinematics.section_c} at the event", source: "lumped heat balance", class: Class::Closure }
        rest_s as rest: f64 [S] "time at rest before it" { formula: "time since the previous event, at least one pitch", source: "definition", class: Class::Derived }
        rest_tension_n as rest_tension: f64 [N] "mean tension during that rest" { formula: "time mean of the tension since the previous event", source: "definition", class: Class::Derived }
        viscosity_mpa_s as viscosity: f64 [MPA_S] "dynamic viscosity at this temperature" { symbol: "η", formula: "ν(ϑ) × ρ(ϑ), ϑ = {joint.events.temperature_c}", source: "ASTM D341; ASTM D1250", class: Class::Derived }
        pressure_mpa as pressure: f64 [MPA] "nominal bearing pressure of the pin in its bush"
            { symbol: "p", formula: "{joint.events.tension_n} / ({chain.pin_diameter_mm} × {chain.joint_length_mm})", source: "projected-area convention of machine design; ISO 10823:2004", class: Class::Derived }
        contact_pressure_mpa as contact_pressure: f64 [MPA] "mean pressure in the strip that carries the load; at the ends of a bush up to four times as much where the pin bends"
            { symbol: "p_c", formula: "w / (2 R sin(θ/2)), w = {joint.events.tension_n} / {chain.joint_length_mm}, θ/2 from conformal contact with clearance ({chain.bush_bore_mm} − {chain.pin_diameter_mm})/2", source: "Persson 1964; Ciavarella and Decuzzi 2001", class: Class::FromMemory }
        film_um as film: f64 [UM] "oil film at the effective fill" { symbol: "h", formula: "{surface.film_factor} × {fill.effective_fill}^{surface.starvation_exponent} × film of the flooded joint", source: FILM, class: Class::Closure }
        lambda_ratio as lambda: f64 [ONE] "film over roughness" { symbol: "Λ", formula: "{joint.events.film_um} / {surface.roughness_um}", source: FILM, class: Class::Closure }
        lambda_fill_1 as lambda_full: f64 [ONE] "film over roughness if the joint were full" { formula: "{joint.events.lambda_ratio} at fill 1", source: FILM, class: Class::Closure }
        regime as regime: Regime [WORD] "boundary, mixed or full film" { formula: "boundary below Λ = 1, full from 3; Λ = {joint.events.lambda_ratio}", source: "Hamrock, Fundamentals of Fluid Film Lubrication", class: Class::FromMemory }
        asperity_share as asperity_share: f64 [ONE] "share of the load on asperities" { symbol: "X", formula: "K F₅/₂(H) / p_c, p_c = {joint.events.contact_pressure_mpa}", source: SHARING, class: Class::Closure }
        friction_reached as friction_reached: f64 [ONE] "friction coefficient of a joint that gets oil" { formula: "X µ_b + (1 − X) µ_v, X = {joint.events.asperity_share}, µ_b from {oil.boundary_friction} and {surface.dry_friction} at fill {fill.effective_fill}", source: SHARING, class: Class::Closure }
        friction as friction: f64 [ONE] "friction coefficient, mean over all joints" { symbol: "µ_j", formula: "(1 − never) × {joint.events.friction_reached} + never × {surface.dry_friction}, never = {fill.never_reached}", source: SHARING, class: Class::Closure }
        flash_temperature_k as flash_temperature: f64 [KELVIN] "greatest flash temperature rise" { formula: "{joint.events.friction} × load × sliding speed over conduction, upper estimate", source: "Blok; Archard 1959", class: Class::FromMemory }
        wear_coefficient_reached as wear_coefficient_reached: f64 [ONE] "wear coefficient of a joint that gets oil, mean over its waits" { symbol: "K", formula: "time mean over {fill.wait_s} of K(fill, Λ, ϑ), Λ = {joint.events.lambda_fill_1}, ϑ = {joint.events.temperature_c}", source: "Archard 1953 with levels of Rabinowicz 1981; interpolation is a closure", class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use event_noun;
event_noun!(noun);

macro_rules! roller_noun { ($declare:ident) => { $declare! {
    /// The rollers of one straight on their bushes.
    RollerContact / RollerContactSi, "joint" {
        section as section: i64 [ONE] "section of the survey, from 0" {}
        load_n as load: f64 [N] "load on one roller" { formula: "(chain + {circuit.sections.load_kg_per_m}) × g × {chain.pitch_mm} / ({circuit.strands} × {chain.rollers_per_pitch})", source: "weight", class: Class::Derived }
        contact_pressure_mpa as contact_pressure: f64 [MPA] "mean pressure in the strip that carries the load" { formula: "as for a joint, over {chain.inner_width_mm}, clearance ({chain.roller_bore_mm} − {chain.bush_diameter_mm})/2", source: "Persson 1964", class: Class::FromMemory }
        lambda_ratio as lambda: f64 [ONE] "film over roughness" { symbol: "Λ", formula: "continuous rolling at 2 × {duty.speed_m_per_min} / {chain.roller_diameter_mm}", source: FILM, class: Class::Closure }
        friction_reached as friction_reached: f64 [ONE] "friction coefficient of a roller that gets oil" { formula: "e_s µ_b + (1 − e_s) µ, e_s = {surface.roller_edge_share}", source: "closure of our own: rollers skew and carry on edges and faces", class: Class::Closure }
        friction as friction: f64 [ONE] "friction coefficient, mean over all rollers" { symbol: "µ_br", formula: "(1 − never) × {joint.roller.friction_reached} + never × {surface.dry_friction}, never = {fill.never_reached}", source: SHARING, class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use roller_noun;
roller_noun!(noun);

macro_rules! joint_state_noun { ($declare:ident) => { $declare! {
    /// What the joints go through, event by event, and the friction that comes of it.
    JointState / JointStateSi, "joint" {
        events as events: Vec<Event> [WORD] "articulations of one joint in one circuit" {}
        mu_joint as mu_joint: Vec<(i64, f64)> [ONE] "friction coefficient of pin in bush by section" { symbol: "µ_j", formula: "mean of entry and exit of {joint.events.friction}, or {friction.joint}", source: SHARING, class: Class::Closure }
        mu_joint_drive as mu_joint_drive: f64 [ONE] "friction coefficient of pin in bush at the drive" { formula: "{joint.mu_joint} of the drive", source: SHARING, class: Class::Closure }
        roller as roller: Vec<RollerContact> [WORD] "rollers of each straight that runs on them" {}
        plate_track as plate_track: f64 [ONE] "friction coefficient of side plates on their track" { symbol: "µ_pt", formula: "{friction.plate_track}, or towards {friction.plate_track_oiled} with fill {fill.effective_fill} where {friction.track_oiled}", source: "oil of the joints creeps to the track and makes the same boundary layer there", spread: Spread::Told("anything between the two coefficients"), class: Class::Closure }
        rounds as rounds: i64 [ONE] "rounds of friction and pull until they agreed" {}
    }
} } }
#[cfg(feature = "python")]
pub(crate) use joint_state_noun;
joint_state_noun!(noun);
