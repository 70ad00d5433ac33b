//! Wear coefficients of dry pairs as they were measured: what the default of the dry joint stands between.

/// A pair of materials that slides on itself without oil.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum DryPair {
    /// Mild steel.
    MildSteel,
    /// Brass with two phases.
    Brass,
    /// Hardened tool steel.
    HardToolSteel,
    /// Stainless steel, ferritic.
    FerriticStainless,
    /// Polyethylene on steel.
    Polythene,
}

/// Wear coefficient K of V = K W s/(3 H) of a dry pair; an order of magnitude.
///
/// Source: measured by Archard and Hirst (1956), read in an encyclopaedia's table of wear coefficients.
pub const fn unlubricated_coefficient(pair: DryPair) -> f64 {
    match pair {
        DryPair::MildSteel => 7e-3,
        DryPair::Brass => 6e-4,
        DryPair::HardToolSteel => 1.3e-4,
        DryPair::FerriticStainless => 1.7e-5,
        DryPair::Polythene => 1.3e-7,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wear::WearCoefficients;

    #[test]
    fn the_dry_joint_stands_between_hardened_and_soft_steel() {
        let dry = WearCoefficients::default().dry;
        assert!(dry > unlubricated_coefficient(DryPair::HardToolSteel));
        assert!(dry < unlubricated_coefficient(DryPair::MildSteel));
    }
}
