//! The short journal bearing of the textbooks: load and squeeze in closed form.
//!
//! Right for bearings much shorter than wide. A chain joint is not one; see [`super::finite_bearing_load`].

use super::newton::{ANYWHERE, rising_root};
use crate::error::Result;
use crate::joint::Pair;
use std::f64::consts::PI;

/// How far a cylinder sits off the middle of its bore, kept so that the film stays exact where they all but touch.
///
/// Holds q = e/(1 − e) of the eccentricity ratio e: from 0 (concentric) to infinity (touching). The smallest film is
/// clearance/(1 + q), a number that 1 − e would lose to rounding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Eccentricity {
    closeness: f64,
}

impl Eccentricity {
    /// From the eccentricity ratio e in 0..1.
    pub fn from_ratio(ratio: f64) -> Self {
        Eccentricity { closeness: ratio / (1.0 - ratio) }
    }

    /// From the smallest film over the clearance, 1 − e, in (0, 1].
    pub fn from_film_ratio(film_ratio: f64) -> Self {
        Eccentricity { closeness: (1.0 - film_ratio) / film_ratio }
    }

    /// From e/(1 − e).
    pub fn from_closeness(closeness: f64) -> Self {
        Eccentricity { closeness }
    }

    /// e/(1 − e).
    pub fn closeness(self) -> f64 {
        self.closeness
    }

    /// The eccentricity ratio e.
    pub fn ratio(self) -> f64 {
        self.closeness / (1.0 + self.closeness)
    }

    /// The smallest film over the clearance, 1 − e.
    pub fn film_ratio(self) -> f64 {
        1.0 / (1.0 + self.closeness)
    }
}

/// Load of the short bearing, W c²/(η ω R L³), half film.
///
/// Source: DuBois and Ocvirk (1953), NACA TN 2809 and Report 1157: e/(4(1−e²)²) √(π²(1−e²) + 16e²).
pub fn short_bearing_load(eccentricity: Eccentricity) -> f64 {
    let q = eccentricity.closeness;
    let r2 = 1.0 + 2.0 * q; // 1 − e² = (1 + 2q)/(1 + q)²
    q * (1.0 + q) * (1.0 + q) * (PI * PI * r2 + 16.0 * q * q).sqrt() / (4.0 * r2 * r2)
}

/// Slope of ln load against ln q of the short bearing: 1 when concentric, 2 near contact.
pub(super) fn short_bearing_slope(q: f64) -> f64 {
    let r2 = 1.0 + 2.0 * q;
    let root = PI * PI * r2 + 16.0 * q * q;
    1.0 + q * (2.0 / (1.0 + q) + (PI * PI + 16.0 * q) / root - 4.0 / r2)
}

/// Sommerfeld number (η N 2RL/W)(R/c)², N in revolutions per second, of a short bearing.
///
/// `eccentricity_ratio` in 0..1, `length_to_diameter` > 0. Source: as [`short_bearing_load`].
///
/// ```
/// use pinfilm::joint::{Eccentricity, sommerfeld_short};
/// let s = sommerfeld_short(Eccentricity::from_ratio(0.6), 0.5);
/// assert!((s * 0.25 - 0.06252986).abs() < 1e-7);
/// ```
pub fn sommerfeld_short(eccentricity: Eccentricity, length_to_diameter: f64) -> f64 {
    1.0 / (4.0 * PI * short_bearing_load(eccentricity) * length_to_diameter * length_to_diameter)
}

/// Eccentricity of a short bearing from its Sommerfeld number, the inverse of [`sommerfeld_short`].
pub fn eccentricity_short(sommerfeld: f64, length_to_diameter: f64) -> Result<Eccentricity> {
    let load = 1.0 / (4.0 * PI * sommerfeld * length_to_diameter * length_to_diameter);
    let target = load.ln();
    let start = (4.0 * load / PI).max(2.0 * load.sqrt()).ln();
    let log_q = rising_root("eccentricity of a short bearing", ANYWHERE, start, |log_q| {
        let q = log_q.exp();
        (short_bearing_load(Eccentricity::from_closeness(q)).ln() - target, short_bearing_slope(q))
    })?;
    Ok(Eccentricity::from_closeness(log_q.exp()))
}

/// Angle (rad) of the narrowest gap behind the load line in a short bearing, half film.
///
/// Source: DuBois and Ocvirk (1953): tan φ = π √(1−e²)/(4e).
pub fn attitude_short(eccentricity: Eccentricity) -> f64 {
    let q = eccentricity.closeness;
    (PI * (1.0 + 2.0 * q).sqrt()).atan2(4.0 * q)
}

/// Speed (rad/s) that drags oil into the gap when both cylinders and the load turn: |journal + bush − 2 load|.
///
/// Source: Reynolds' equation in the frame of the load; at half the speed of the journal there is no wedge.
pub fn entraining_speed(journal: f64, bush: f64, load: f64) -> f64 {
    (journal + bush - 2.0 * load).abs()
}

/// Which part of the oil carries when it is squeezed out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SqueezeFilm {
    /// Only the closing half; the opening half takes no tension.
    Half,
    /// All round, as in a fully flooded bearing under pressure.
    Full,
}

/// arccos(−e) of a closeness: π/2 when concentric, π when touching.
fn half_film_angle(r: f64) -> f64 {
    2.0 * r.atan()
}

/// Squeeze number of the half film counted from the middle, J(e) − 1 = e arccos(−e)/(1−e²)^1.5 + e²/(1−e²).
pub(super) fn squeeze_number_half(q: f64) -> f64 {
    let r2 = 1.0 + 2.0 * q;
    let r = r2.sqrt();
    q * (1.0 + q) * (1.0 + q) * half_film_angle(r) / (r2 * r) + q * q / r2
}

/// Derivative of [`squeeze_number_half`] with respect to q.
pub(super) fn squeeze_number_half_slope(q: f64) -> f64 {
    let film = 1.0 / ((1.0 + q) * (1.0 + q));
    squeeze_resistance_short(Eccentricity::from_closeness(q)) * film
}

/// Resistance of the short half film to being squeezed: W = η R L³ (de/dt)/c² · I(e),
/// I = (1 + 2e²) arccos(−e)/(1−e²)^2.5 + 3e/(1−e²)².
///
/// Source: Reynolds' equation of the short bearing (Ocvirk), closed form. Booker's mobility is its inverse,
/// M (L/D)² = 1/(2 I).
pub fn squeeze_resistance_short(eccentricity: Eccentricity) -> f64 {
    let q = eccentricity.closeness;
    let p = 1.0 + q;
    let r2 = 1.0 + 2.0 * q;
    let r = r2.sqrt();
    let p3 = p * p * p;
    (p * p + 2.0 * q * q) * p3 * half_film_angle(r) / (r2 * r2 * r) + 3.0 * q * p3 / (r2 * r2)
}

/// Time (s) in which a `load` (N, > 0) squeezes a short joint from one eccentricity to a greater one.
///
/// `viscosity` Pa s. Source: Pinkus and Sternlicht (1961), short journal squeeze: t = (η R L³/(W c²)) [J(e₂) − J(e₁)],
/// J = e arccos(−e)/(1−e²)^1.5 + 1/(1−e²) for the half film and π e/(1−e²)^1.5 for the full one.
pub fn squeeze_time_short(
    pair: &Pair,
    viscosity: f64,
    load: f64,
    from: Eccentricity,
    to: Eccentricity,
    film: SqueezeFilm,
) -> f64 {
    let number = |eccentricity: Eccentricity| {
        let q = eccentricity.closeness;
        match film {
            SqueezeFilm::Half => squeeze_number_half(q),
            SqueezeFilm::Full => PI * q * (1.0 + q) * (1.0 + q) / (1.0 + 2.0 * q).powf(1.5),
        }
    };
    viscosity * pair.radius * pair.length.powi(3) / (load * pair.fitted_clearance().powi(2))
        * (number(to) - number(from))
}

/// Time (s) in which a load squeezes the film between two flat discs from one thickness to a smaller one.
///
/// `viscosity` Pa s, `radius` m, `load` N, films m. It is the film between the face of a roller and a plate.
/// Source: Stefan (1874): t = (3π η R⁴/(4W)) (1/h₂² − 1/h₁²).
pub fn squeeze_time_disc(viscosity: f64, radius: f64, load: f64, from: f64, to: f64) -> f64 {
    0.75 * PI * viscosity * radius.powi(4) / load * (1.0 / (to * to) - 1.0 / (from * from))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn close(a: f64, b: f64, relative: f64) -> bool {
        (a - b).abs() <= relative * b.abs()
    }

    proptest! {
        #[test]
        fn sommerfeld_number_and_eccentricity_are_inverse(log_q in -25.0..40.0_f64, ld in 0.1..10.0_f64) {
            let q = log_q.exp();
            let back = eccentricity_short(sommerfeld_short(Eccentricity::from_closeness(q), ld), ld).unwrap();
            prop_assert!(close(back.closeness(), q, 1e-12));
        }

        #[test]
        fn closeness_form_is_the_textbook_form(e in 0.001..0.999_f64) {
            let o = 1.0 - e * e;
            let load = e / (4.0 * o * o) * (PI * PI * o + 16.0 * e * e).sqrt();
            prop_assert!(close(short_bearing_load(Eccentricity::from_ratio(e)), load, 1e-11));
            let number = e * (-e).acos() / o.powf(1.5) + 1.0 / o - 1.0;
            prop_assert!((squeeze_number_half(e / (1.0 - e)) - number).abs() < 1e-9 * (1.0 + number));
            let resistance = (1.0 + 2.0 * e * e) * (-e).acos() / o.powf(2.5) + 3.0 * e / (o * o);
            prop_assert!(close(squeeze_resistance_short(Eccentricity::from_ratio(e)), resistance, 1e-9));
        }

        #[test]
        fn slopes_are_derivatives(log_q in -10.0..10.0_f64) {
            let (q, d) = (log_q.exp(), 1e-5);
            let ln_load = |l: f64| short_bearing_load(Eccentricity::from_closeness(l.exp())).ln();
            let slope = (ln_load(log_q + d) - ln_load(log_q - d)) / (2.0 * d);
            prop_assert!((short_bearing_slope(q) - slope).abs() < 1e-8);
            let rise = (squeeze_number_half(q * (1.0 + d)) - squeeze_number_half(q * (1.0 - d))) / (2.0 * d * q);
            prop_assert!(close(squeeze_number_half_slope(q), rise, 1e-8));
        }
    }

    #[test]
    fn nearly_touching_keeps_its_digits() {
        let e = eccentricity_short(1e-6, 0.5).unwrap();
        assert!(close(e.film_ratio(), 8.860_764_298e-4, 1e-9));
    }

    #[test]
    fn squeezing_takes_the_times_of_the_closed_form() {
        let time = |film| {
            let (from, to) = (Eccentricity::from_ratio(0.1), Eccentricity::from_ratio(0.999));
            squeeze_time_short(&Pair::new(0.015, 0.0151, 0.03, 1.0).unwrap(), 0.2, 5000.0, from, to, film)
        };
        assert!(close(time(SqueezeFilm::Half), 113.770_774_6, 1e-9));
        assert!(close(time(SqueezeFilm::Full), 113.772_482_8, 1e-9));
    }
}
