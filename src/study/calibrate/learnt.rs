//! Which combinations of parameters the readings have taught, and which they leave as they were guessed.

use super::problem::{Parameter, Scale};
use nalgebra::DMatrix;

/// How much the readings say of a combination.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Learnt {
    /// Its spread is less than a third of the guessed one.
    Yes,
    /// Less than seven tenths.
    Partly,
    /// The readings say next to nothing of it.
    No,
}

impl Learnt {
    /// The word for it.
    pub const fn as_str(self) -> &'static str {
        match self {
            Learnt::Yes => "learnt",
            Learnt::Partly => "partly learnt",
            Learnt::No => "not learnt",
        }
    }
}

/// A combination of parameters that the readings judge on its own.
#[derive(Debug, Clone, PartialEq)]
pub struct Direction {
    /// How much sharper the readings are than the guess: its variance shrinks to 1/(1 + `strength`).
    pub strength: f64,
    /// Weight of each parameter, measured in its guessed spread; squares add up to 1.
    pub weights: Vec<f64>,
    /// What that means.
    pub learnt: Learnt,
    /// The combination in words, such as `dry wear coefficient × boundary wear coefficient^0.42`.
    pub combination: String,
}

impl Direction {
    /// Spread that is left, as a share of the guessed one.
    pub fn spread_left(&self) -> f64 {
        (1.0 + self.strength).powf(-0.5)
    }

    /// The whole in a sentence.
    pub fn in_words(&self) -> String {
        self.in_words_of(&self.combination)
    }

    /// The same under another name of the combination.
    pub(in crate::study) fn in_words_of(&self, combination: &str) -> String {
        let left = 100.0 * self.spread_left();
        let alone = !combination.contains(['×', '+', '−']);
        let only = match (self.learnt, alone) {
            (Learnt::No, _) | (_, true) => "",
            _ => " (only together)",
        };
        format!("{combination}: {}{only}; {left:.0} % of the guessed spread is left", self.learnt.as_str())
    }
}

/// A parameter that weighs less than this share of the heaviest is not named in a combination.
const NAMED: f64 = 0.15;

/// Directions by falling strength, from the slopes of the readings (in their errors).
///
/// Eigenvectors of C^½ Jᵀ J C^½, C the guessed variances: the likelihood-informed directions of Cui, Martin, Marzouk,
/// Solonen and Spantini, Inverse Problems 30 (2014) 114015.
pub(super) fn directions(parameters: &[Parameter], slopes: &DMatrix<f64>) -> Vec<Direction> {
    let scaled = DMatrix::from_fn(slopes.nrows(), slopes.ncols(), |row, i| slopes[(row, i)] * parameters[i].sd);
    let eigen = (scaled.transpose() * scaled).symmetric_eigen();
    let mut order: Vec<usize> = (0..parameters.len()).collect();
    order.sort_by(|&a, &b| eigen.eigenvalues[b].total_cmp(&eigen.eigenvalues[a]));
    let direction = |at: usize| {
        let strength = eigen.eigenvalues[at].max(0.0); // squares: below zero by rounding only
        let weights: Vec<f64> = eigen.eigenvectors.column(at).iter().copied().collect();
        let learnt = match strength {
            s if s > 10.0 => Learnt::Yes,
            s if s >= 1.0 => Learnt::Partly,
            _ => Learnt::No,
        };
        let combination = combination(parameters, &weights);
        Direction { strength, weights, learnt, combination }
    };
    order.into_iter().map(direction).collect()
}

/// A product of powers where all parameters are factors or shares, a weighted sum of their scales otherwise.
pub(in crate::study) fn combination(parameters: &[Parameter], weights: &[f64]) -> String {
    let heaviest = weights.iter().fold(0.0, |most: f64, w| most.max(w.abs()));
    let named = |i: &usize| weights[*i].abs() >= NAMED * heaviest;
    let powers: Vec<(usize, f64)> =
        (0..weights.len()).filter(named).map(|i| (i, weights[i] / parameters[i].sd)).collect();
    let Some(&(_, lead)) = powers.iter().max_by(|a, b| a.1.abs().total_cmp(&b.1.abs())) else { return String::new() };
    let product = powers.iter().all(|&(i, _)| parameters[i].scale != Scale::Plain);
    // what rounds to nothing is not said
    let told = |(_, power): &(usize, f64)| power.abs() >= 0.005;
    let mut powers: Vec<(usize, f64)> = powers.into_iter().map(|(i, power)| (i, power / lead)).filter(told).collect();
    powers.sort_by(|a, b| b.1.total_cmp(&a.1));
    let mut text = String::new();
    for (i, power) in powers {
        let (name, size) = (&parameters[i].name, format!("{:.2}", power.abs()));
        let size = size.trim_end_matches('0').trim_end_matches('.');
        if product {
            let name = if parameters[i].scale == Scale::Logit { format!("odds of {name}") } else { name.clone() };
            text += if text.is_empty() { "" } else { " × " };
            text += &match (size, power < 0.0) {
                ("1", false) => name,
                (_, false) => format!("{name}^{size}"),
                (_, true) => format!("{name}^−{size}"),
            };
        } else {
            let name = match parameters[i].scale {
                Scale::Plain => name.clone(),
                Scale::Log => format!("ln {name}"),
                Scale::Logit => format!("log odds of {name}"),
            };
            text += match (text.is_empty(), power < 0.0) {
                (true, false) => "",
                (true, true) => "−",
                (false, false) => " + ",
                (false, true) => " − ",
            };
            text += &if size == "1" { name } else { format!("{size} {name}") };
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two factors of which a reading sees only the product, and a third that it does not see.
    #[test]
    fn only_the_product_is_learnt() {
        let parameters = ["friction", "load", "price"].map(|name| Parameter::log(name, 1.0, 0.5));
        let slopes = DMatrix::from_row_slice(1, 3, &[100.0, 100.0, 0.0]);
        let directions = directions(&parameters, &slopes);
        assert!((directions[0].strength - 5000.0).abs() < 1e-9);
        assert_eq!(directions[0].learnt, Learnt::Yes);
        let words = directions[0].in_words();
        assert!(words == "friction × load: learnt (only together); 1 % of the guessed spread is left", "{words}");
        let rest: Vec<&str> = directions[1..].iter().map(|d| d.combination.as_str()).collect();
        assert!(rest.contains(&"price") || rest.iter().any(|c| c.contains("price")), "{rest:?}");
        assert!(directions[1..].iter().all(|d| d.learnt == Learnt::No));
    }

    #[test]
    fn sums_and_odds_in_words() {
        let parameters = [Parameter::plain("extra pull", 0.0, 2.0), Parameter::logit("capture", 0.5, 1.0)];
        assert_eq!(combination(&parameters, &[0.8, 0.6]), "log odds of capture + 0.67 extra pull");
        assert_eq!(combination(&parameters[1..], &[-1.0]), "odds of capture");
    }
}
