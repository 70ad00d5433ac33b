//! Small spreads: the slope of the outcome at the middle says enough.

/// Shares of the variance of an outcome by its inputs, from its slope by each input and their standard deviations.
///
/// Exact for an outcome that is linear in independent inputs, the first look otherwise (the bars of a tornado).
/// All zero where nothing varies. Source: law of propagation of uncertainty, JCGM 100:2008, equation 10.
///
/// ```
/// let shares = pinfilm::study::variance_shares(&[1.0, 2.0], &[1.0, 1.0]);
/// assert_eq!(shares, [0.2, 0.8]);
/// ```
pub fn variance_shares(slopes: &[f64], sd: &[f64]) -> Vec<f64> {
    let parts: Vec<f64> = slopes.iter().zip(sd).map(|(slope, sd)| (slope * sd).powi(2)).collect();
    let whole: f64 = parts.iter().sum();
    parts.into_iter().map(|part| if whole > 0.0 { part / whole } else { 0.0 }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shares_add_up() {
        let shares = variance_shares(&[3.0, -2.0, 0.0], &[0.1, 0.5, 2.0]);
        assert!((shares.iter().sum::<f64>() - 1.0).abs() < 1e-15);
        assert_eq!(variance_shares(&[0.0], &[1.0]), [0.0]);
    }
}
