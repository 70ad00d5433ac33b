//! The sum of all losses, and those that go by the clock on the wall: water, dust, standing still.

/// Loss rates of a joint, each 1/s of running time.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Losses {
    /// Evaporation, mean over the circuit.
    pub evaporation: f64,
    /// Oxidation, mean over the circuit.
    pub oxidation: f64,
    /// Pumping by articulation.
    pub articulation: f64,
    /// Washing.
    pub wash: f64,
    /// Dust that soaks oil up.
    pub dust: f64,
    /// Evaporation and oxidation while the line stands.
    pub standing: f64,
}

impl Losses {
    /// All together, 1/s of running time.
    pub fn total(&self) -> f64 {
        self.evaporation + self.oxidation + self.articulation + self.wash + self.dust + self.standing
    }

    /// Running time (s) in which half of the oil is lost.
    pub fn half_life(&self) -> f64 {
        std::f64::consts::LN_2 / self.total()
    }
}

/// A rate by wall time (1/s) as a rate by running time: divided by the share of time that the line runs (0 to 1).
pub fn wall_time_rate(rate: f64, running_share: f64) -> f64 {
    rate / running_share
}

/// Loss rate (1/s of wall time) of washes `interval` s apart that each remove the share `removed` (0 to below 1).
///
/// Exact for the product over many washes; blind to the dip right after one ([`after_wash_fill`]).
pub fn wash_rate(removed: f64, interval: f64) -> f64 {
    -(-removed).ln_1p() / interval
}

/// Fill right after a wash that removes the share `removed`, from the `fill` before it.
pub fn after_wash_fill(fill: f64, removed: f64) -> f64 {
    (1.0 - removed) * fill
}

/// What is lost in stops, as a rate by running time (1/s).
///
/// `evaporation` (in still air) and `oxidation` are the rates at the temperature of the standing chain, 1/s;
/// `running_share` 0 to 1, above 0. Joints that do not move pump nothing.
pub fn standing_rate(evaporation: f64, oxidation: f64, running_share: f64) -> f64 {
    (evaporation + oxidation) * (1.0 - running_share) / running_share
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn washes_multiply() {
        let kept = (-wash_rate(0.6, 100.0) * 300.0).exp();
        assert!((kept - 0.4f64.powi(3)).abs() < 1e-15);
        assert!((after_wash_fill(after_wash_fill(1.0, 0.6), 0.6) - 0.16).abs() < 1e-15);
    }

    #[test]
    fn a_line_that_never_stops_loses_nothing_standing() {
        assert_eq!(standing_rate(1e-6, 1e-7, 1.0), 0.0);
        assert_eq!(wall_time_rate(2e-6, 0.5), 4e-6);
    }
}
