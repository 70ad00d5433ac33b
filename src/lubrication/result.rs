//! What a result says of the oil in the joints: who is reached, what gets in, what stays.

use crate::noun;
use crate::quantity::{Class, Side, Spread};

macro_rules! loss_noun { ($declare:ident) => { $declare! {
    /// What a joint loses, by cause, per running hour.
    LossParts / LossPartsSi, "fill" {
        evaporation as evaporation: f64 [PER_H_PART] "evaporation" { formula: "air factor × k₂₅₀ × Clausius-Clapeyron, mean round the loop; {oil.noack_pct}, {oil.vaporisation_kj_per_mol}, {fill.air_factor}", source: "ASTM D5800 rate; Clausius-Clapeyron", class: Class::Closure }
        oxidation as oxidation: f64 [PER_H_PART] "oxidation" { formula: "ln 2 / {oil.oxidation_half_life_h} × 2^((ϑ − {oil.oxidation_reference_c})/10), mean round the loop", source: "10 K rule, common practice", class: Class::CommonPractice }
        articulation as articulation: f64 [PER_H_PART] "pumping by articulation" { formula: "{fill.articulation_loss} (η_ref/η)^p α e/(2π) per articulation", source: "short-bearing side flow; share lost is a closure of our own", class: Class::Closure }
        wash as wash: f64 [PER_H_PART] "washing" { formula: "−ln(1 − {duty.wash_removed_share}) / ({duty.wash_interval_h} × running share)", source: "exact for the long-run product", class: Class::Derived }
        dust as dust: f64 [PER_H_PART] "uptake by dust" { formula: "{duty.dust_loss_per_s} / running share", source: "dust takes up oil at a constant rate, here over running time; as wide as its input", spread: Spread::Told("factor 5"), class: Class::Closure }
        standing as standing: f64 [PER_H_PART] "evaporation and oxidation while standing" { formula: "both at {duty.ambient_c} × (1 − running share)/running share", source: "both laws at the temperature of the room, in still air (air factor 0.3)", spread: Spread::Told("factor 3"), class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use loss_noun;
loss_noun!(noun);

const ROTATION: &str = "rotation of a circle: three-gap theorem, Slater 1967";
const FIRST_ORDER: &str = "first-order loss between shots (exact solution)";

macro_rules! fill_state_noun { ($declare:ident) => { $declare! {
    /// Which joints are reached and when; what enters, stays and drips.
    FillState / FillStateSi, "fill" {
        never_reached as never_reached: f64 [ONE] "share of joints that never get oil"
            { formula: "1 − R/gcd(C, P) where the timer is locked; 1 − reached/N for every n-th joint; the unreached share of a manual round", source: ROTATION, class: Class::Derived }
        never_reached_if_miscounted as never_reached_if_miscounted: Option<f64> [ONE] "the worst of the same if the number of joints is up to 4 off, where it was computed"
            { formula: "largest over N − 4 … N + 4, N = {kinematics.joints}", source: ROTATION, class: Class::Derived }
        wait_s as wait: Vec<f64> [S] "waits between shots at one joint, in running time"
            { symbol: "W", formula: "{fill.wait_circuits} × {kinematics.circuit_time_s}; quantiles for manual rounds and drips", source: ROTATION, class: Class::Derived }
        wait_weight as wait_weight: Vec<f64> [ONE] "share of time spent in each of these waits" { formula: "{fill.share_of_joints} over their sum", source: ROTATION, class: Class::Derived }
        wait_circuits as wait_circuits: Option<Vec<i64>> [CIRCUITS] "the same in circuits" { formula: "least n with n C mod P in the run, both ways round", source: ROTATION, class: Class::Derived }
        wait_h as wait_hours: Option<Vec<f64>> [H] "the same in running hours, for manual rounds" { formula: "{fill.wait_s}", source: "renewal process", class: Class::Derived }
        share_of_joints as share_of_joints: Option<Vec<f64>> [ONE] "share of joints standing in each wait" { formula: "n × length / P", source: ROTATION, class: Class::Derived }
        mean_interval_h as mean_interval: Option<f64> [H] "mean running time between two visits of a manual round" { formula: "{lubrication.interval_h} × running share / (1 − {lubrication.miss_share})", source: "renewal process", class: Class::Derived }
        worst_wait_h as worst_wait: f64 [H] "longest wait of the joints that are reached, in running time; for manual rounds that of 95 in 100" { formula: "longest of {fill.wait_s}", source: ROTATION, class: Class::Derived }
        visits_per_year as visits: Option<f64> [PER_YEAR] "manual rounds in a year" { formula: "8760 h / {lubrication.interval_h}", source: "definition", class: Class::Derived }
        pass_chance as pass_chance: Option<f64> [ONE] "chance that a passing joint catches a drop" { formula: "flow × points × {kinematics.joint_time_s} × {lubrication.capture} / {lubrication.drop_ul}", source: "independent passes", class: Class::Closure }
        always_full as always_full: Option<bool> [WORD] "whether every shot fills the joint" { formula: "{fill.dose_in_joint_ul} ≥ {fill.capacity_ul} × (1 − exp(−k W)), longest wait", source: FIRST_ORDER, class: Class::Derived }
        lock_risk as lock_risk: Option<f64> [ONE] "share of possible speed errors at which some stretch waits too long" { formula: "measure of ratio errors within {lubrication.speed_tolerance_pct} whose longest wait exceeds ln(1/{fill.floor})/k", source: ROTATION, class: Class::Closure }
        application_section as application_section: Option<i64> [ONE] "section where oil is applied" {}
        application_position as application_position: Option<f64> [ONE] "place in that section" {}
        application_side as application_side: Option<Side> [WORD] "side from which it is applied" {}
        application_score as application_score: Option<f64> [ONE] "score of that place, 1 at best" { formula: "weighted mean of slack, time, cool, gravity, gap, wash, access", source: "weights are a closure of our own; slack strand and upper plate edges: The Tribology Handbook", class: Class::Closure }
        application_c as application_temperature: f64 [C] "chain temperature where oil is applied" { formula: "{kinematics.section_c} at the point", source: "lumped heat balance", class: Class::Closure }
        viscosity_application_mpa_s as viscosity_application: f64 [MPA_S] "dynamic viscosity there" { formula: "ν × ρ at {fill.application_c}", source: "ASTM D341; ASTM D1250", class: Class::Derived }
        time_available_s as time_available: f64 [S] "time the oil has to enter" { formula: "from the point to the first turn that sheds it, oven or wash; else to the next run; or {lubrication.time_available_s}", source: "oil on the plates is lost at the first turn that throws it off, in an oven or a wash", spread: Spread::Told("factor 3"), class: Class::Closure }
        entry_plate_gap_s as entry_plate_gap: f64 [S] "time to pass the plate gap" { symbol: "t₁", formula: "capillary and gravity flow through {chain.plate_gap_mm}", source: "Washburn 1921", class: Class::Derived }
        entry_joint_s as entry_joint: f64 [S] "further time to fill the annulus" { symbol: "t₂", formula: "capillary flow through the clearance, fed by the plate gap", source: "Washburn 1921; eccentric annulus 1 + 1.5 e²", class: Class::Derived }
        entered_share as entered_share: f64 [ONE] "share of the captured oil that enters in time" { formula: "from {fill.time_available_s}, {fill.entry_plate_gap_s}, {fill.entry_joint_s}", source: "Washburn 1921", class: Class::Derived }
        viscosity_most_mpa_s as viscosity_most: f64 [MPA_S] "viscosity above which oil does not enter in time" { symbol: "η_max", formula: "{fill.time_available_s} / (t₁ + t₂ at unit viscosity)", source: "Washburn 1921", class: Class::Derived }
        viscosity_least_mpa_s as viscosity_least: f64 [MPA_S] "viscosity below which a joint keeps less than its share between shots" { symbol: "η_min", formula: "larger of pumping and drainage bound; {fill.keep}, {fill.film_min_um}", source: "Jeffreys 1930; pumping is a closure of our own", class: Class::Closure }
        capacity_ul as capacity: f64 [UL] "oil that a full joint holds" { symbol: "V_c", formula: "annulus π/4 ((d + 2c)² − d²) L + plate-gap rings × {fill.ring_share}", source: "geometry; share of the ring is a closure", class: Class::Closure }
        retained_width_mm as retained_width: f64 [MM] "width of the oil ring that stays in the plate gap on the sharpest turn" { formula: "least of plate depth and 2 γ cos θ/(ρ h_g a)", source: "capillary hold", class: Class::Derived }
        dose_in_joint_ul as dose_in_joint: f64 [UL] "oil that one visit brings into a joint" { formula: "shot × points × {lubrication.capture} × {fill.entered_share}", source: "balance", class: Class::Derived }
        loss_rate_per_h as loss_rate: f64 [PER_H] "share of its oil that a joint loses in a running hour" { symbol: "k", formula: "{fill.loss_parts_per_h.evaporation} + {fill.loss_parts_per_h.oxidation} + {fill.loss_parts_per_h.articulation} + {fill.loss_parts_per_h.wash} + {fill.loss_parts_per_h.dust} + {fill.loss_parts_per_h.standing}", source: FIRST_ORDER, class: Class::Closure }
        loss_parts_per_h as loss_parts: LossParts [WORD] "the same by cause" {}
        half_life_h as half_life: f64 [H] "running time in which half is lost" { formula: "ln 2 / {fill.loss_rate_per_h}", source: FIRST_ORDER, class: Class::Derived }
        fill_after_shot as after_shot: f64 [ONE] "age-law fill right after a visit" { symbol: "φ₀", formula: "least of 1 and mean / Σ u (1 − exp(−k W))/(k W)", source: "one exponential age law for all waits that gives back the mean fill", spread: Spread::Told("none of its own: that of the mean fill"), class: Class::Closure }
        mean_fill as mean: f64 [ONE] "mean fill of all joints" { formula: "{fill.mean_fill_reached} × (1 − {fill.never_reached})", source: FIRST_ORDER, class: Class::Derived }
        mean_fill_reached as mean_reached: f64 [ONE] "mean fill of the joints that are reached" { formula: "shots in, exponential loss, overflow at {fill.capacity_ul}, over all waits", source: FIRST_ORDER, class: Class::Derived }
        lowest_fill_reached as lowest_reached: f64 [ONE] "lowest fill of the joints that are reached" { formula: "end of the longest wait", source: FIRST_ORDER, class: Class::Derived }
        after_wash_fill as after_wash: Option<f64> [ONE] "mean fill of reached joints right after a wash" { formula: "{fill.mean_fill_reached} × (1 − {duty.wash_removed_share})", source: "balance", class: Class::Derived }
        effective_fill as effective: f64 [ONE] "fill that gives the mean boundary friction" { symbol: "φ_eff", formula: "−f₀ ln Σ u (E₁(X e^(−kW)) − E₁(X))/(k W), X = φ₀/f₀", source: "mean of exp(−fill/f₀) over the age law: exact in the boundary regime", spread: Spread::Told("none of its own: that of the mean fill"), class: Class::Closure }
        demand_ul_per_joint_h as demand: f64 [UL_PER_H] "oil that keeps a joint half full" { formula: "{fill.loss_rate_per_h} × {fill.capacity_ul} / 2", source: FIRST_ORDER, class: Class::Closure }
        residue_years as residue: Option<f64> [YEARS] "time in which residue blocks half the clearance" { formula: "half the annulus over residue of evaporation and oxidation", source: "residue of evaporated and oxidised oil stays in the clearance", spread: Spread::Told("factor 3"), class: Class::Closure }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use fill_state_noun;
fill_state_noun!(noun);
