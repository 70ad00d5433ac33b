//! Friction of a pair between dry and flooded: boundary layer, asperities, sheared film.

use super::Regime;

/// Film ratio below which lubrication is boundary, and from which it is full film.
pub const REGIME_BOUNDS: (f64, f64) = (1.0, 3.0);

impl Regime {
    /// The regime at a ratio of film to combined roughness.
    ///
    /// Source: Hamrock, Fundamentals of Fluid Film Lubrication (1994): below 1 boundary, from 3 full film.
    pub fn of(lambda: f64) -> Regime {
        if lambda < REGIME_BOUNDS.0 {
            Regime::Boundary
        } else if lambda < REGIME_BOUNDS.1 {
            Regime::Mixed
        } else {
            Regime::Full
        }
    }
}

/// Friction coefficient of touching asperities, from dry at fill 0 to boundary-lubricated at fill 1.
///
/// `fill` 0..1 of the joint with oil; `dry`, `boundary` coefficients; `boundary_fill` f₀ > 0 the fill at which most of
/// the layer is there. μ = dry + (boundary − dry)(1 − e^(−fill/f₀))/(1 − e^(−1/f₀)).
/// Source: closure of our own: little oil already makes a boundary layer.
pub fn boundary_friction(fill: f64, dry: f64, boundary: f64, boundary_fill: f64) -> f64 {
    dry + (boundary - dry) * (-fill / boundary_fill).exp_m1() / (-1.0 / boundary_fill).exp_m1()
}

/// Friction coefficient of a roller on its bush: rollers skew, so a share runs on edges and faces without film.
///
/// `film` the coefficient of the aligned contact, `boundary` that of touching asperities at the same fill,
/// `edge_share` 0.3..1. Source: closure of our own.
pub fn roller_friction(film: f64, boundary: f64, edge_share: f64) -> f64 {
    edge_share * boundary + (1.0 - edge_share) * film
}

/// Factor of shear drag all round a gap: force = viscosity × speed × length × radius × this, film `gap` ≤ clearance.
///
/// `gap` smallest gap m, `clearance` radial m. Source: ∫dθ/h round the gap, 2π/√(h(2c − h)); Petroff for h = c.
pub fn ring_drag(gap: f64, clearance: f64) -> f64 {
    2.0 * std::f64::consts::PI / (gap * (2.0 * clearance - gap.min(clearance))).sqrt()
}

/// Thermal properties of bearing steel: conductivity W/(m K), density kg/m³, specific heat J/(kg K). Handbook values.
const CONDUCTIVITY: f64 = 45.0;
const DENSITY: f64 = 7850.0;
const SPECIFIC_HEAT: f64 = 470.0;

/// Flash temperature of the loaded strip above its surroundings (K), an upper estimate.
///
/// `load_per_length` N/m, `sliding_speed` m/s, `half_width` m > 0. The lesser of the slow (steady) and the fast (Blok
/// 1937) source: μ w u/(2k) and 1.11 μ w √u/(√(kρc) √a).
pub fn flash_temperature(friction: f64, load_per_length: f64, sliding_speed: f64, half_width: f64) -> f64 {
    let slow = sliding_speed / (2.0 * CONDUCTIVITY);
    let fast = 1.11 * (sliding_speed / (CONDUCTIVITY * DENSITY * SPECIFIC_HEAT * half_width)).sqrt();
    friction * load_per_length * slow.min(fast)
}

/// Work of friction in one turn (J): `friction` coefficient, `load` N, `radius` m, `angle` rad.
///
/// Source: force times way.
pub fn friction_work(friction: f64, load: f64, radius: f64, angle: f64) -> f64 {
    friction * load * radius * angle
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn boundary_layer_goes_from_dry_to_boundary(
            fill in 0.0..1.0_f64, dry in 0.2..0.5_f64, boundary in 0.08..0.2_f64, f0 in 0.03..0.3_f64,
        ) {
            prop_assert_eq!(boundary_friction(0.0, dry, boundary, f0), dry);
            prop_assert!((boundary_friction(1.0, dry, boundary, f0) - boundary).abs() < 1e-15);
            let mu = boundary_friction(fill, dry, boundary, f0);
            prop_assert!(mu <= dry && mu >= boundary - 1e-15);
        }
    }

    #[test]
    fn ring_is_petroff_when_concentric() {
        assert!((ring_drag(25e-6, 25e-6) - 2.0 * std::f64::consts::PI / 25e-6).abs() < 1e-9);
    }

    #[test]
    fn work_of_a_heavy_floor_joint() {
        let work = friction_work(0.118_922_43, 25e3, 7.5e-3, 2.0 * std::f64::consts::PI / 8.0);
        assert!((work - 17.5).abs() < 0.05);
    }

    #[test]
    fn regimes_meet_at_their_bounds() {
        assert_eq!(Regime::of(0.999), Regime::Boundary);
        assert_eq!(Regime::of(1.0), Regime::Mixed);
        assert_eq!(Regime::of(3.0), Regime::Full);
    }
}
