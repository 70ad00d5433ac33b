//! Films between surfaces that the load flattens: elastohydrodynamic line contact.

/// Which film of a line contact.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LineContactFormula {
    /// Smallest film, soft or hard oil, whichever is thicker: Hamrock (1994).
    Smallest,
    /// Film in the middle: Pan and Hamrock (1989).
    Central,
    /// Smallest film, the older formula: Dowson and Higginson (1968).
    DowsonHigginson,
}

/// Radius (m) of the cylinder on a plane that touches like a cylinder of `radius` in a bore wider by `clearance` (m).
pub fn conformal_radius(radius: f64, clearance: f64) -> f64 {
    radius * (radius + clearance) / clearance
}

/// Film thickness (m) of an elastohydrodynamic line contact.
///
/// `viscosity` Pa s, `speed` of entrainment (mean of both surfaces) m/s, `load_per_length` N/m, `radius` (reduced) m,
/// `pressure_viscosity` 1/Pa, `modulus` E′ Pa: 2 / [(1−ν₁²)/E₁ + (1−ν₂²)/E₂]. All > 0; speed or pressure-viscosity may
/// be 0. With U = ηu/(E′R), W = w/(E′R), G = αE′, over R:
/// smallest film max(3.10 U^0.6 W^−0.2, 1.714 U^0.694 G^0.568 W^−0.128), central 2.922 U^0.692 G^0.470 W^−0.166,
/// older smallest 2.65 U^0.7 G^0.54 W^−0.13.
/// Source: Hamrock, Fundamentals of Fluid Film Lubrication (1994); Pan and Hamrock (1989);
/// Dowson and Higginson (1968). Taking the larger of soft and hard film is a closure of our own: it is continuous.
pub fn line_contact_film(
    viscosity: f64,
    speed: f64,
    load_per_length: f64,
    radius: f64,
    pressure_viscosity: f64,
    modulus: f64,
    formula: LineContactFormula,
) -> f64 {
    let stiffness = modulus * radius;
    let u = (viscosity * speed / stiffness).ln();
    let w = (load_per_length / stiffness).ln();
    let g = (pressure_viscosity * modulus).ln();
    let log_film = match formula {
        LineContactFormula::Smallest => {
            let soft = SOFT + 0.6 * u - 0.2 * w;
            let hard = HARD + 0.694 * u + 0.568 * g - 0.128 * w;
            soft.max(hard)
        }
        LineContactFormula::Central => CENTRAL + 0.692 * u + 0.470 * g - 0.166 * w,
        LineContactFormula::DowsonHigginson => OLDER + 0.7 * u + 0.54 * g - 0.13 * w,
    };
    radius * log_film.exp()
}

/// ln 3.10, ln 1.714, ln 2.922 and ln 2.65: the factors of the formulas.
const SOFT: f64 = 1.131_402_111_491_100_6;
const HARD: f64 = 0.538_829_820_175_588;
const CENTRAL: f64 = 1.072_268_313_328_507_8;
const OLDER: f64 = 0.974_559_639_998_131;

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn factors_are_those_of_the_formulas() {
        for (log, factor) in [(SOFT, 3.10_f64), (HARD, 1.714), (CENTRAL, 2.922), (OLDER, 2.65)] {
            assert!((log - factor.ln()).abs() < 1e-15, "{factor} {:.17}", factor.ln());
        }
    }

    proptest! {
        #[test]
        fn smallest_film_rises_with_viscosity_and_speed(
            viscosity in 1e-4..100.0_f64, speed in 1e-4..10.0_f64, load in 10.0..1e6_f64, alpha in 0.0..5e-8_f64,
        ) {
            let film = |viscosity, speed| {
                line_contact_film(viscosity, speed, load, 1.0, alpha, 226e9, LineContactFormula::Smallest)
            };
            prop_assert!(film(viscosity * 1.1, speed) > film(viscosity, speed));
            prop_assert!(film(viscosity, speed * 1.1) > film(viscosity, speed));
        }
    }

    #[test]
    fn nothing_moves_nothing_carries() {
        assert_eq!(line_contact_film(0.1, 0.0, 1e4, 1.0, 2e-8, 226e9, LineContactFormula::Smallest), 0.0);
    }
}
