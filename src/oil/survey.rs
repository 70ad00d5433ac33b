//! What a survey says of the oil.

use crate::error::{Code, Error, Result};
use crate::noun;
use crate::quantity::{Class, Place, Spread, Word, between, up_to};

macro_rules! oil_noun { ($declare:ident) => { $declare! {
    /// An oil: its viscosity by grade and index or by two measurements, and what heat, water and time do to it.
    Oil / OilSi, "oil", consistent: crate::oil::consistent {
        name as name: Option<Word> [WORD = None] "name of the oil, as the plant calls it" {}
        iso_vg as iso_vg: Option<i64> [ONE = None] "viscosity grade of ISO 3448"
            { allowed: between(2.0, 3200.0), source: "ISO 3448. The Tribology Handbook (Neale) takes VG 150 for roller chains and advises against \
                heavy oil and grease: too stiff to enter the joints" }
        viscosity_index as viscosity_index: f64 [ONE = 95.0] "viscosity index"
            { symbol: "VI", allowed: between(-50.0, 400.0), usual: between(60.0, 220.0), spread: Spread::Uniform(80.0, 160.0),
              class: Class::FromMemory, source: "ASTM D2270; default of a plain mineral oil" }
        t1_c as t1: f64 [C = 40.0] "temperature of the first measured viscosity"
            { allowed: between(-60.0, 350.0), source: "ASTM D341" }
        v1_mm2_s as v1: Option<f64> [MM2_PER_S = None] "first measured kinematic viscosity"
            { symbol: "ν₁", allowed: between(0.21, 2e7), source: "ASTM D341" }
        t2_c as t2: f64 [C = 100.0] "temperature of the second measured viscosity"
            { allowed: between(-60.0, 350.0), source: "ASTM D341" }
        v2_mm2_s as v2: Option<f64> [MM2_PER_S = None] "second measured kinematic viscosity"
            { symbol: "ν₂", allowed: between(0.21, 2e7), source: "ASTM D341" }
        density_15_kg_per_m3 as density_15: f64 [KG_PER_M3 = 890.0] "density at 15 °C"
            { symbol: "ρ₁₅", allowed: between(700.0, 1200.0), usual: between(830.0, 1000.0), spread: Spread::Uniform(850.0, 960.0),
              class: Class::FromMemory, source: "mineral oils" }
        pressure_viscosity_factor as pressure_viscosity_factor: f64 [ONE = 1.0] "factor on the pressure-viscosity coefficient"
            { allowed: between(0.2, 5.0), usual: between(0.5, 2.0), spread: Spread::Lognormal(0.75, 1.3), class: Class::Closure,
              source: "spread of Wooster's relation against twelve tabulated oils" }
        surface_tension_mn_per_m as surface_tension: f64 [MN_PER_M = 30.0] "surface tension"
            { symbol: "γ", allowed: between(5.0, 80.0), usual: between(20.0, 35.0), spread: Spread::Normal(2.0), class: Class::FromMemory,
              source: "mineral lubricating oils" }
        noack_pct as noack: f64 [PCT = 8.0] "share lost in the one-hour evaporation test at 250 °C"
            { allowed: between(0.0, 99.0), usual: between(0.5, 30.0), spread: Spread::Percent(10.0), class: Class::FromMemory,
              source: "ASTM D5800; level of a plain mineral oil" }
        vaporisation_kj_per_mol as vaporisation: f64 [KJ_PER_MOL = 100.0] "heat of vaporisation"
            { symbol: "ΔH", allowed: between(20.0, 300.0), usual: between(80.0, 140.0), spread: Spread::Normal(12.0), class: Class::FromMemory,
              source: "heavy hydrocarbons" }
        oxidation_half_life_h as oxidation_half_life: f64 [H = 1000.0] "time in which half of the oil is oxidised at the reference temperature"
            { allowed: up_to(0.0, 1e7), spread: Spread::Factor(3.0), class: Class::Closure, source: "level of a plain mineral oil" }
        oxidation_reference_c as oxidation_reference: f64 [C = 100.0] "temperature at which half of the oil is oxidised in that time"
            { allowed: between(-20.0, 300.0), spread: Spread::Told("none of its own: that of the half life"), class: Class::Closure, source: "fixes the scale of the half life; the rate doubles every 10 K, common practice" }
        boundary_friction as boundary_friction: f64 [ONE = 0.12] "friction coefficient of oiled steel in boundary lubrication"
            { symbol: "µ_b", allowed: between(0.002, 1.0), usual: between(0.05, 0.2), spread: Spread::Triangular(0.08, 0.16),
              class: Class::FromMemory, source: "steel on steel, mineral oil with additive" }
        limiting_friction as limiting_friction: f64 [ONE = 0.06] "greatest friction coefficient of a sheared oil film"
            { allowed: between(0.001, 0.5), usual: between(0.03, 0.12), spread: Spread::Uniform(0.04, 0.10), class: Class::FromMemory,
              source: "traction of oil films" }
        boundary_transition_c as boundary_transition: f64 [C = 150.0] "temperature above which the boundary layer fails"
            { allowed: between(-20.0, 400.0), spread: Spread::PlusMinus(30.0), class: Class::FromMemory, source: "additive practice" }
        residue_evaporation_share as residue_evaporation_share: f64 [ONE = 0.002] "share of the evaporated oil that stays as residue"
            { allowed: between(0.0, 1.0), usual: between(0.0, 0.1), spread: Spread::Factor(3.0), class: Class::Closure, source: "varnish that the vapour leaves behind; level by judgement" }
        residue_oxidation_share as residue_oxidation_share: f64 [ONE = 0.05] "share of the oxidised oil that stays as residue"
            { allowed: between(0.0, 1.0), usual: between(0.005, 0.3), spread: Spread::Factor(3.0), class: Class::Closure, source: "varnish and sludge of the oxidised oil; level by judgement" }
        flash_point_c as flash_point: Option<f64> [C = None] "flash point"
            { allowed: between(40.0, 400.0), source: "ISO 2592" }
        pour_point_c as pour_point: Option<f64> [C = None] "pour point"
            { allowed: between(-90.0, 60.0), source: "ISO 3016" }
        food_grade as food_grade: bool [WORD = false] "whether the oil may touch food by accident" {}
        price_per_l as price: f64 [MONEY_PER_L] "price of the oil" { allowed: between(0.0, 1e4) }
    }
} } }
#[cfg(feature = "python")]
pub(crate) use oil_noun;
oil_noun!(noun);

/// A grade, or two measured viscosities.
pub(crate) fn consistent(oil: &Oil, place: &Place) -> Result<()> {
    let path = |key: &str| place.then(key).path();
    match (oil.iso_vg, oil.v1_mm2_s, oil.v2_mm2_s) {
        (Some(_), None, None) | (None, Some(_), Some(_)) => Ok(()),
        (Some(_), _, _) => Err(Error::new(
            Code::Inconsistent,
            path("iso_vg"),
            "an oil has either a grade (iso_vg with viscosity_index) or two measured viscosities (v1_mm2_s and v2_mm2_s), not both",
        )),
        _ => Err(Error::new(
            Code::Missing,
            path("iso_vg"),
            "the viscosity of the oil is missing: give iso_vg (and viscosity_index), or v1_mm2_s and v2_mm2_s with their temperatures",
        )),
    }
}

impl OilSi {
    /// The viscosity line and density that this oil is surveyed with.
    ///
    /// By grade and index: the mid-point of the grade at 40 °C, and the viscosity at 100 °C that the index asks for.
    pub fn liquid(&self) -> Result<super::Liquid> {
        let line = match (self.v1, self.v2) {
            (Some(v1), Some(v2)) => super::ViscosityLine::through(self.t1, v1, self.t2, v2)?,
            _ => {
                let grade = self.iso_vg.unwrap_or_default() as f64;
                super::ViscosityLine::from_index(super::grade_midpoint(grade)?, self.viscosity_index)?
            }
        };
        Ok(super::Liquid { line, density_15: self.density_15 })
    }
}
