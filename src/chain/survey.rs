//! What a survey says of the chain.

use crate::error::{Code, Error, Result};
use crate::noun;
use crate::quantity::{Class, Place, Spread, Word, at_least, between, up_to};

const ISO: &str = "dimension of the chain; standard chains: ISO 606, ISO 1977, ISO 1275";

macro_rules! chain_noun { ($declare:ident) => { $declare! {
    /// One strand of chain: the dimensions and materials of its joints.
    Chain / ChainSi, "chain", consistent: crate::chain::consistent {
        designation as designation: Option<Word> [WORD = None] "standard and number of the chain, where it is a standard one" {}
        pitch_mm as pitch: f64 [MM] "pitch, joint to joint"
            { symbol: "p", allowed: between(4.0, 1000.0), source: ISO }
        pin_diameter_mm as pin_diameter: f64 [MM] "diameter of the pin"
            { symbol: "d", allowed: between(0.5, 200.0), source: ISO }
        bush_bore_mm as bush_bore: f64 [MM] "bore of the bush"
            { symbol: "d₃", allowed: between(0.5, 205.0), source: ISO }
        bush_diameter_mm as bush_diameter: f64 [MM] "outside diameter of the bush"
            { symbol: "d_b", allowed: between(0.5, 300.0), source: ISO }
        joint_length_mm as joint_length: f64 [MM] "length of the bush, which carries the pin"
            { symbol: "L", allowed: between(0.5, 1000.0), source: ISO }
        roller_diameter_mm as roller_diameter: Option<f64> [MM = None] "diameter of the roller; none for a bush chain"
            { symbol: "D_r", allowed: between(1.0, 500.0), source: ISO }
        roller_bore_mm as roller_bore: Option<f64> [MM = None] "bore of the roller"
            { symbol: "", allowed: between(0.5, 310.0), source: ISO }
        inner_width_mm as inner_width: Option<f64> [MM = None] "width between the inner plates, which the roller fills"
            { symbol: "b₁", allowed: between(0.5, 1000.0), source: ISO }
        rollers_per_pitch as rollers_per_pitch: f64 [ONE = 1.0] "rollers of one strand in one pitch"
            { allowed: between(0.1, 4.0) }
        plate_gap_mm as plate_gap: f64 [MM] "gap between inner and outer plate, through which oil enters the joint"
            { symbol: "h_g", allowed: between(0.001, 5.0), usual: between(0.03, 2.0) }
        plate_depth_mm as plate_depth: f64 [MM] "depth of the side plates"
            { symbol: "h₂", allowed: between(1.0, 1000.0), source: ISO }
        mass_kg_per_m as mass: f64 [KG_PER_M] "mass of one strand with its attachments"
            { symbol: "m", allowed: up_to(0.0, 500.0) }
        tensile_strength_kn as tensile_strength: Option<f64> [KN = None] "least tensile strength of one strand"
            { symbol: "F_u", allowed: up_to(0.0, 1e5), source: ISO }
        elongation_limit_pct as elongation_limit: f64 [PCT = 3.0] "elongation at which the chain is replaced"
            { symbol: "e_max", allowed: between(0.05, 10.0), usual: between(0.5, 3.0), class: Class::Read,
              source: "3 % adjustable drives, 1.5 % fixed centres: encyclopaedia article on roller chain, wear" }
        pin_wear_limit_pct as pin_wear_limit: f64 [PCT = 15.0] "wear of the pin, in shares of its diameter, at which the chain is replaced"
            { allowed: between(1.0, 50.0), class: Class::FromMemory, source: "practice of inspection" }
        case_hardness_mpa as case_hardness: f64 [MPA = 7000.0] "hardness of the case of pin and bush at 20 °C"
            { symbol: "H", allowed: between(100.0, 15000.0), usual: between(1500.0, 9000.0), spread: Spread::Triangular(6000.0, 8000.0),
              class: Class::FromMemory, source: "about 700 HV" }
        core_hardness_mpa as core_hardness: f64 [MPA = 3000.0] "hardness below the case at 20 °C"
            { allowed: between(100.0, 15000.0), usual: between(1500.0, 9000.0), spread: Spread::Triangular(2200.0, 4000.0),
              class: Class::FromMemory, source: "about 300 HV" }
        case_depth_mm as case_depth: Option<f64> [MM = None] "depth of the hardened case; 0 for through-hardened or stainless; not given: 0.06 of the pin diameter"
            { allowed: at_least(0.0), spread: Spread::ShareOf(0.03, 0.06, 0.1, "chain.pin_diameter_mm"), class: Class::FromMemory,
              source: "practice of case hardening" }
        core_factor as core_factor: f64 [ONE = 3.0] "wear coefficient below the case over that of the case"
            { allowed: between(0.1, 100.0), spread: Spread::Lognormal(1.0, 10.0), class: Class::Closure, source: "level from memory" }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use chain_noun;
chain_noun!(noun);

/// Pin inside bush, bush inside roller, plates deeper than the bush.
pub(crate) fn consistent(chain: &Chain, place: &Place) -> Result<()> {
    let smaller = |small: &str, a: f64, large: &str, b: f64, why: &str| {
        if a < b {
            return Ok(());
        }
        let (small, large) = (place.then(small).path(), place.then(large).path());
        let message = format!("{small} = {a} mm is not smaller than {large} = {b} mm: {why}");
        Err(Error::new(Code::Clearance, small, message).number(a).unit("mm").limit(format!("below {b} mm")))
    };
    let needs = "a pin needs clearance in its bush (usually 0.05 to 0.6 mm)";
    smaller("pin_diameter_mm", chain.pin_diameter_mm, "bush_bore_mm", chain.bush_bore_mm, needs)?;
    smaller("bush_bore_mm", chain.bush_bore_mm, "bush_diameter_mm", chain.bush_diameter_mm, "a bush has a wall")?;
    if let Some(bore) = chain.roller_bore_mm {
        smaller(
            "bush_diameter_mm",
            chain.bush_diameter_mm,
            "roller_bore_mm",
            bore,
            "a roller needs clearance on its bush",
        )?;
        if let Some(roller) = chain.roller_diameter_mm {
            smaller("roller_bore_mm", bore, "roller_diameter_mm", roller, "a roller has a wall")?;
        }
    }
    smaller(
        "pin_diameter_mm",
        chain.pin_diameter_mm,
        "pitch_mm",
        chain.pitch_mm,
        "two joints cannot stand in one place",
    )?;
    smaller(
        "bush_diameter_mm",
        chain.bush_diameter_mm,
        "plate_depth_mm",
        chain.plate_depth_mm,
        "the plates hold the bush",
    )
}
