//! What evaporated and oxidised oil leaves behind: solids that block the annulus in years.

/// Solids (m³/s of running time) that form in a joint.
///
/// `oil` is the mean volume in the joint, m³; `evaporation` and `oxidation` loss rates, 1/s; the shares are the solids left
/// of each (0.002 and 0.05, no source, spread a factor of 3).
pub fn solids_rate(oil: f64, evaporation: f64, oxidation: f64, evaporation_share: f64, oxidation_share: f64) -> f64 {
    oil * (evaporation * evaporation_share + oxidation * oxidation_share)
}

/// Running time (s) until solids forming at `solids_rate` (m³/s) fill half of the `annulus` (m³).
pub fn time_to_block(annulus: f64, solids_rate: f64) -> f64 {
    0.5 * annulus / solids_rate
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_the_annulus() {
        let rate = solids_rate(1e-6, 1e-6, 2e-6, 0.002, 0.05);
        assert!((time_to_block(2e-7, rate) * rate / 1e-7 - 1.0).abs() < 1e-15);
        assert_eq!(time_to_block(2e-7, 0.0), f64::INFINITY);
    }
}
