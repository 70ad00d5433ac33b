//! How far a guess may be out: the spread of a row of the register, as people read it and as studies draw it.

use super::show::number;

/// The spread of an input about the value that a line has for it, in the unit of the name.
///
/// Ends of bell-shaped spreads are the values that 5 % and 95 % lie below, if nothing else is said.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spread {
    /// Nothing is stated.
    Unstated,
    /// Said in words only: a study does not draw it by itself.
    Told(&'static str),
    /// Any value between two as likely as any other.
    Uniform(f64, f64),
    /// Any factor between two as likely as any other.
    LogUniform(f64, f64),
    /// Between two ends, with the peak at the line's value.
    Triangular(f64, f64),
    /// The same with a rounded peak: for shares.
    Beta(f64, f64),
    /// A factor: 5 % lie below the first, 95 % below the second.
    Lognormal(f64, f64),
    /// A factor up or down from the line's value.
    Factor(f64),
    /// The same, and 95 % of the values lie within it.
    WidestFactor(f64),
    /// A difference with this standard deviation.
    Normal(f64),
    /// A difference of this much, up or down.
    PlusMinus(f64),
    /// A difference of so many per cent of the line's value, up or down.
    Percent(f64),
    /// Between two multiples of the line's value, with the peak at the value.
    Times(f64, f64),
    /// A standard deviation as a share of the line's value, cut off at two multiples of it.
    NormalTimes(f64, f64, f64),
    /// For efficiencies: what they lack of 1 lies between two multiples, with the peak at the line's value.
    Loss(f64, f64),
    /// Least, most likely and greatest share of another input.
    ShareOf(f64, f64, f64, &'static str),
    /// Moves with another input, between two multiples of its usual share of that.
    Follows(f64, f64, &'static str),
}

impl Spread {
    /// In words; empty where nothing is stated.
    ///
    /// ```
    /// use pinfilm::quantity::Spread;
    /// assert_eq!(Spread::Lognormal(1e-4, 3e-3).words(), "0.0001 to 0.003 (5 % to 95 %), lognormal");
    /// ```
    pub fn words(&self) -> String {
        let to = |low: f64, high: f64| format!("{} to {}", number(low), number(high));
        match *self {
            Spread::Unstated => String::new(),
            Spread::Told(words) => words.to_string(),
            Spread::Uniform(low, high) => format!("{}, uniform", to(low, high)),
            Spread::LogUniform(low, high) => format!("{}, log-uniform", to(low, high)),
            Spread::Triangular(low, high) => format!("{}, triangular", to(low, high)),
            Spread::Beta(low, high) => format!("{}, beta", to(low, high)),
            Spread::Lognormal(low, high) => format!("{} (5 % to 95 %), lognormal", to(low, high)),
            Spread::Factor(factor) => format!("factor {} (5 % to 95 %), lognormal", number(factor)),
            Spread::WidestFactor(factor) => format!("factor {} (95 % within), lognormal", number(factor)),
            Spread::Normal(sd) => format!("standard deviation {}, normal", number(sd)),
            Spread::PlusMinus(most) => format!("± {} (5 % to 95 %), normal", number(most)),
            Spread::Percent(most) => format!("± {} % of the value (5 % to 95 %), normal", number(most)),
            Spread::Times(low, high) => format!("{} times the value, triangular", to(low, high)),
            Spread::NormalTimes(sd, low, high) => {
                format!(
                    "standard deviation {} % of the value, normal, cut at {} times it",
                    number(100.0 * sd),
                    to(low, high)
                )
            }
            Spread::Loss(low, high) => format!("loss {} times that of the value, triangular", to(low, high)),
            Spread::ShareOf(low, mode, high, path) => {
                format!("{} of {path}, most likely {}, triangular", to(low, high), number(mode))
            }
            Spread::Follows(low, high, path) => {
                format!("moves with {path}; its share of that {} times the usual, triangular", to(low, high))
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_say_ends_and_kind() {
        assert_eq!(Spread::Unstated.words(), "");
        assert_eq!(Spread::Beta(0.1, 0.5).words(), "0.1 to 0.5, beta");
        assert_eq!(Spread::Factor(3.0).words(), "factor 3 (5 % to 95 %), lognormal");
        assert_eq!(Spread::Loss(1.0, 1.15).words(), "loss 1 to 1.15 times that of the value, triangular");
        let depth = Spread::ShareOf(0.03, 0.06, 0.1, "chain.pin_diameter_mm");
        assert_eq!(depth.words(), "0.03 to 0.1 of chain.pin_diameter_mm, most likely 0.06, triangular");
    }
}
