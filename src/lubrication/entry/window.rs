//! The window of viscosities: thin enough to get in at the application point, thick enough to stay while running.

use super::GRAVITY;
use std::f64::consts::PI;

/// Greatest viscosity (Pa s) that fills the joint within `available` s.
///
/// `time_per_viscosity` is the entry time at 1 Pa s ([`super::JointEntry::time`]), to which times are proportional.
pub fn most_viscous(available: f64, time_per_viscosity: f64) -> f64 {
    available / time_per_viscosity
}

/// Least running viscosity (Pa s) that keeps the share `keep` of the oil over `articulations` between two shots.
///
/// `angle` rad per articulation, `eccentricity` 0 to 1, `loss`, `exponent` and `reference` (Pa s) as in
/// [`crate::lubrication::loss::articulation_loss`], of which this is the inverse. Closure of our own.
pub fn pumping_viscosity(
    keep: f64,
    articulations: f64,
    angle: f64,
    eccentricity: f64,
    loss: f64,
    exponent: f64,
    reference: f64,
) -> f64 {
    reference * (loss * angle * eccentricity * articulations / (2.0 * PI * -keep.ln())).powf(exponent.recip())
}

/// Least running viscosity (Pa s) that leaves a mean film of `film` m on an upright plate after `time` s.
///
/// `plate_path` m is the height that drains, `density` kg/m³. Source: Jeffreys 1930, Proc. Camb. Phil. Soc. 26, 204:
/// mean thickness (2/3) sqrt(η L/(ρ g t)), solved for η.
pub fn film_viscosity(film: f64, time: f64, plate_path: f64, density: f64) -> f64 {
    density * GRAVITY * time * (1.5 * film).powi(2) / plate_path
}

/// Which side of the window an oil missed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bound {
    /// Too thick to get in at the application point: a warmer or earlier point, a larger gap.
    Upper,
    /// Too thin to stay while running: a shorter interval, a higher viscosity index, a cooler run.
    Lower,
}

/// The viscosities that work: at most `most` at the application point, at least `least` while running.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// Greatest viscosity at the temperature of the application point, Pa s.
    pub most: f64,
    /// Least viscosity at the running temperature, Pa s: the largest of the pumping, draining and film criteria.
    pub least: f64,
}

/// One of the oils to choose from, by its viscosities (Pa s).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grade {
    /// At the temperature of the application point.
    pub applied: f64,
    /// At the running temperature.
    pub running: f64,
}

/// What [`Window::choose`] found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Choice {
    /// Place in the list of the oil to take.
    Take(usize),
    /// No oil fits; the one that came nearest, the bound it missed and by which factor.
    NoneFits {
        /// Place of the nearest miss.
        nearest: usize,
        /// The bound it missed by more.
        bound: Bound,
        /// Viscosity over bound, or bound over viscosity: above 1.
        factor: f64,
    },
    /// There was nothing to choose from.
    NoOils,
}

impl Window {
    /// Whether an oil lies in the window.
    pub fn fits(&self, oil: Grade) -> bool {
        oil.applied <= self.most && oil.running >= self.least
    }

    /// Of the oils in the window the thickest that enters within half the time available, else the thickest.
    ///
    /// Thickest is meant at the running temperature, where the oil has to stay.
    pub fn choose(&self, oils: &[Grade]) -> Choice {
        let fitting = || oils.iter().enumerate().filter(|(_, oil)| self.fits(**oil));
        let thickest = |a: &(usize, &Grade), b: &(usize, &Grade)| a.1.running.total_cmp(&b.1.running);
        // half the time is half the viscosity, as entry times are proportional to it
        let easy = fitting().filter(|(_, oil)| oil.applied <= 0.5 * self.most).max_by(thickest);
        if let Some((place, _)) = easy.or_else(|| fitting().max_by(thickest)) {
            return Choice::Take(place);
        }
        let miss = |oil: &Grade| (oil.applied / self.most, self.least / oil.running);
        let nearest = oils.iter().map(miss).enumerate().min_by(|a, b| a.1.0.max(a.1.1).total_cmp(&b.1.0.max(b.1.1)));
        match nearest {
            None => Choice::NoOils,
            Some((nearest, (over, under))) => {
                let bound = if over >= under { Bound::Upper } else { Bound::Lower };
                Choice::NoneFits { nearest, bound, factor: over.max(under) }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lubrication::loss::articulation_loss;

    #[test]
    fn pumping_is_the_inverse_of_the_loss() {
        let (keep, n, angle): (f64, f64, f64) = (0.5, 5000.0, 0.39);
        let viscosity = pumping_viscosity(keep, n, angle, 0.9, 5e-4, 0.5, 0.1);
        let lost = articulation_loss(viscosity, angle, 0.9, 5e-4, 0.5, 0.1);
        assert!(((-n * lost).exp() - keep).abs() < 1e-12);
    }

    #[test]
    fn the_thickest_that_enters_easily_is_taken() {
        let window = Window { most: 1.0, least: 0.1 };
        let oils =
            [(0.2, 0.1), (0.45, 0.2), (0.9, 0.4), (2.0, 0.8)].map(|(applied, running)| Grade { applied, running });
        assert_eq!(window.choose(&oils), Choice::Take(1));
        assert_eq!(window.choose(&oils[2..]), Choice::Take(0));
        assert_eq!(window.choose(&oils[3..]), Choice::NoneFits { nearest: 0, bound: Bound::Upper, factor: 2.0 });
        assert_eq!(window.choose(&[]), Choice::NoOils);
    }
}
