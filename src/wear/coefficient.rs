//! The wear coefficient of a joint: film, fill, heat, dust and water; and how hardness falls with temperature.
//!
//! Between the coefficient of a dry joint and that of an oiled one lies a factor of a hundred, so the mean is taken of
//! logarithms: what share of the way a joint has come depends on how much oil it holds and whether the boundary layer
//! survives the heat. The shape is a closure of our own; the levels come from tables of wear coefficients.

/// No joint wears faster than this: about the coefficient of three-body abrasion by hard grit. From memory.
pub const GREATEST_COEFFICIENT: f64 = 5e-3;
/// Its logarithm.
const LN_GREATEST: f64 = -5.298_317_366_548_036;

/// Above about this temperature (°C) hardened steel tempers for good, which [`hardness_factor`] does not know.
pub const TEMPERING_TEMPERATURE: f64 = 200.0;

/// Film ratio below which the boundary coefficient holds, and above which the full-film one does.
const BOUNDARY_UP_TO: f64 = 0.4;
const FULL_FROM: f64 = 3.0;

/// Width of the transition of [`boundary_layer_survival`] (K); 8 to 30 K would fit as well. Closure of our own.
const TRANSITION_WIDTH: f64 = 15.0;

/// Coefficients of V = K W s / (3 H) and what moves a joint between them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WearCoefficients {
    /// Without oil.
    pub dry: f64,
    /// Oiled, film ratio up to 0.4.
    pub boundary: f64,
    /// Oiled, film ratio 1.
    pub mixed: f64,
    /// Oiled, film ratio from 3: what starts and stops still wear.
    pub full: f64,
    /// Fill at which about half the effect of oil is there (see [`fill_effect`]).
    pub fill_half: f64,
    /// Temperature at which half the boundary layer is lost (°C): about 150 for mineral, 230 for ester and synthetic oil.
    pub transition: f64,
    /// How many times dust raises the wear: clean 1, light 2, dusty 5, abrasive 15. Invented levels.
    pub dust_factor: f64,
    /// How many times water raises the wear: dry 1, damp 1.5, wash-down 3, caustic 5. Invented levels.
    pub water_factor: f64,
}

impl Default for WearCoefficients {
    /// Clean and dry surroundings, mineral oil. Levels after Rabinowicz (1981), J. Lubr. Technol. 103, 188, like and
    /// compatible metals, from memory; each is uncertain by a factor of 5 to 30 until elongation has been measured.
    fn default() -> Self {
        WearCoefficients {
            dry: 5e-4,
            boundary: 5e-6,
            mixed: 1e-6,
            full: 3e-8,
            fill_half: 0.25,
            transition: 150.0,
            dust_factor: 1.0,
            water_factor: 1.0,
        }
    }
}

impl WearCoefficients {
    /// The same in logarithms, to be evaluated many times.
    pub fn law(&self) -> CoefficientLaw {
        let surroundings = (self.dust_factor * self.water_factor).ln();
        CoefficientLaw {
            dry: self.dry.ln() + surroundings,
            boundary: self.boundary.ln() + surroundings,
            mixed: self.mixed.ln() + surroundings,
            full: self.full.ln() + surroundings,
            half_square: self.fill_half * self.fill_half,
            transition: self.transition,
            dry_uncapped: self.dry * self.dust_factor * self.water_factor,
        }
    }
}

/// Share 0..1 of the effect of oil that a joint filled to `fill` (0..1) has: g = (1 + a²) φ² / (φ² + a²), a = `half`.
///
/// g(0) = 0, g(1) = 1. Closure of our own.
pub fn fill_effect(fill: f64, half: f64) -> f64 {
    effect(fill * fill, half * half)
}

fn effect(fill_square: f64, half_square: f64) -> f64 {
    (1.0 + half_square) * fill_square / (fill_square + half_square)
}

/// Share 0..1 of the boundary layer that survives `temperature` (°C): 1 / (1 + e^((ϑ − ϑ_tr)/15 K)).
///
/// `transition` ϑ_tr in °C. Closure of our own.
pub fn boundary_layer_survival(temperature: f64, transition: f64) -> f64 {
    1.0 / (1.0 + ((temperature - transition) / TRANSITION_WIDTH).exp())
}

/// Hardness at `temperature` (°C) over that at 20 °C, case and core alike: 1 − 4·10⁻⁴ (ϑ − 20), at least 0.4.
///
/// Permanent tempering above about [`TEMPERING_TEMPERATURE`] is not in it. Closure of our own.
pub fn hardness_factor(temperature: f64) -> f64 {
    (1.0 - 4e-4 * (temperature - 20.0)).max(0.4)
}

/// [`WearCoefficients`] in logarithms, dust and water multiplied in.
#[derive(Debug, Clone, Copy)]
pub struct CoefficientLaw {
    dry: f64,
    boundary: f64,
    mixed: f64,
    full: f64,
    half_square: f64,
    transition: f64,
    dry_uncapped: f64,
}

impl CoefficientLaw {
    /// Wear coefficient of a dry joint, dust and water in it, at most [`GREATEST_COEFFICIENT`].
    pub fn dry_coefficient(&self) -> f64 {
        self.dry_uncapped.min(GREATEST_COEFFICIENT)
    }

    /// The part of a film ratio that matters here: outside 0.4 to 3 the coefficient no longer changes with it.
    pub(super) fn effective_lambda(lambda: f64) -> f64 {
        lambda.clamp(BOUNDARY_UP_TO, FULL_FROM)
    }

    /// Logarithm of the coefficient of an oiled joint: piecewise linear in ln Λ through the three anchors.
    fn oiled(&self, lambda: f64) -> f64 {
        if lambda <= BOUNDARY_UP_TO {
            self.boundary
        } else if lambda >= FULL_FROM {
            self.full
        } else if lambda < 1.0 {
            self.mixed + (self.boundary - self.mixed) * lambda.ln() / BOUNDARY_UP_TO.ln()
        } else {
            self.mixed + (self.full - self.mixed) * lambda.ln() / FULL_FROM.ln()
        }
    }

    /// The law for one place: film ratio `lambda` ≥ 0 **at fill 1** (how much oil there is comes in by the fill, and must
    /// not count twice) and `temperature` (°C).
    pub fn at(&self, lambda: f64, temperature: f64) -> OiledJoint {
        OiledJoint {
            dry: self.dry,
            relief: boundary_layer_survival(temperature, self.transition) * (self.dry - self.oiled(lambda)),
            half_square: self.half_square,
            dry_uncapped: self.dry_uncapped,
        }
    }
}

/// The wear coefficient of a joint at one place of the line against its fill.
#[derive(Debug, Clone, Copy)]
pub struct OiledJoint {
    /// ln K without oil.
    dry: f64,
    /// By how much ln K falls when the joint is full.
    relief: f64,
    half_square: f64,
    dry_uncapped: f64,
}

impl OiledJoint {
    /// Wear coefficient at `fill` (0..1): K = min(K_dry^(1 − gS) K_lub^(gS) · dust · water, 5e-3).
    ///
    /// g from [`fill_effect`], S from [`boundary_layer_survival`]. Closure of our own.
    ///
    /// ```
    /// let law = pinfilm::wear::WearCoefficients::default().law();
    /// let half_dry = law.at(0.3, 40.0).coefficient(0.3);
    /// assert!((half_dry - 2.790555e-5).abs() < 1e-11);
    /// ```
    pub fn coefficient(&self, fill: f64) -> f64 {
        (self.dry - self.relief * effect(fill * fill, self.half_square)).exp().min(GREATEST_COEFFICIENT)
    }

    /// Wear coefficient without oil.
    pub fn dry_coefficient(&self) -> f64 {
        self.dry_uncapped.min(GREATEST_COEFFICIENT)
    }

    /// s = φ²/(φ² + a²) at `fill` φ: ln K is linear in it.
    pub(super) fn share(&self, fill: f64) -> f64 {
        fill * fill / (fill * fill + self.half_square)
    }

    /// K dry without a cap, and by how much ln K falls from s = 0 to s = 1.
    pub(super) fn line(&self) -> (f64, f64) {
        (self.dry_uncapped, self.relief * (1.0 + self.half_square))
    }

    /// Whether the greatest coefficient stands in place of that at `fill`.
    pub(super) fn is_capped(&self, fill: f64) -> bool {
        self.dry - self.relief * effect(fill * fill, self.half_square) >= LN_GREATEST
    }

    /// Where between s = 0 and s = 1 the greatest coefficient is met, if it is.
    pub(super) fn share_at_cap(&self) -> Option<f64> {
        let (_, fall) = self.line();
        let share = (self.dry - LN_GREATEST) / fall;
        (share > 0.0 && share < 1.0).then_some(share)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn more_oil_wears_less(fill in 0.0..1.0_f64, more in 0.0..1.0_f64, lambda in 0.0..5.0, temperature in -40.0..300.0) {
            let place = WearCoefficients::default().law().at(lambda, temperature);
            let (least, most) = (fill.min(more), fill.max(more));
            prop_assert!(place.coefficient(most) <= place.coefficient(least));
        }

        #[test]
        fn heat_and_thin_film_wear_more(fill in 0.01..1.0, lambda in 0.0..5.0, temperature in -40.0..300.0, by in 0.0..50.0) {
            let law = WearCoefficients::default().law();
            let here = law.at(lambda, temperature).coefficient(fill);
            prop_assert!(law.at(lambda, temperature + by).coefficient(fill) >= here);
            prop_assert!(law.at(lambda + by, temperature).coefficient(fill) <= here);
        }
    }

    #[test]
    fn the_greatest_coefficient_has_its_logarithm() {
        assert_eq!(GREATEST_COEFFICIENT.ln(), LN_GREATEST);
    }

    #[test]
    fn anchors_of_the_film() {
        let cold = WearCoefficients { transition: 1000.0, ..Default::default() };
        for (lambda, level) in
            [(0.0, cold.boundary), (0.4, cold.boundary), (1.0, cold.mixed), (3.0, cold.full), (99.0, cold.full)]
        {
            assert!((cold.law().at(lambda, 20.0).coefficient(1.0) / level - 1.0).abs() < 1e-13);
        }
    }

    #[test]
    fn a_dry_joint_knows_no_oil_and_dust_has_a_cap() {
        let dusty = WearCoefficients { dust_factor: 5.0, water_factor: 3.0, ..Default::default() };
        assert_eq!(dusty.law().at(2.0, 20.0).coefficient(0.0), GREATEST_COEFFICIENT);
        assert_eq!(dusty.law().dry_coefficient(), GREATEST_COEFFICIENT);
        let damp = WearCoefficients { water_factor: 1.5, ..Default::default() }.law();
        assert!((damp.at(2.0, 20.0).coefficient(0.0) / damp.dry_coefficient() - 1.0).abs() < 1e-14);
    }

    #[test]
    fn ends_of_fill_heat_and_hardness() {
        assert_eq!((fill_effect(0.0, 0.25), fill_effect(1.0, 0.25)), (0.0, 1.0));
        assert_eq!(boundary_layer_survival(150.0, 150.0), 0.5);
        assert_eq!((hardness_factor(20.0), hardness_factor(5000.0)), (1.0, 0.4));
    }
}
