//! How long a chain really serves when wear is not the only thing that ends it.

/// Mean service life (years) of a chain that is replaced when worn out, or before by another cause.
///
/// `wear_life` years > 0; `other_life` mean years to the other cause (corrosion, damage, change of product), > 0, infinite
/// where there is none. The other cause strikes at random (exponential), independent of wear; the life is the mean cycle of
/// age replacement, E min(T, wear life). Source: Barlow and Proschan 1965, Mathematical Theory of Reliability (from memory).
///
/// Adding rates instead (1/L = 1/wear + 1/other) would cancel the other life out of every saving.
pub fn service_life(wear_life: f64, other_life: f64) -> f64 {
    if other_life.is_infinite() {
        return wear_life;
    }
    other_life * -(-wear_life / other_life).exp_m1()
}

/// The lesser of the two lives (years): what would be booked if the other cause struck on schedule.
pub fn lesser_life(wear_life: f64, other_life: f64) -> f64 {
    wear_life.min(other_life)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn below_both_lives(wear in 1e-3..1e4f64, other in 0.1..100.0f64) {
            let life = service_life(wear, other);
            prop_assert!(life > 0.0 && life <= lesser_life(wear, other) * (1.0 + 1e-15));
        }
    }

    #[test]
    fn limits() {
        assert_eq!(service_life(3.0, f64::INFINITY), 3.0);
        assert_eq!(service_life(f64::INFINITY, 8.0), 8.0);
        assert!((service_life(1e-9, 8.0) / 1e-9 - 1.0).abs() < 1e-9);
        assert!((service_life(2.809156039, 8.0) - 2.368943743).abs() < 1e-9);
        assert!((service_life(143.122424, 8.0) - 7.999999864).abs() < 1e-9);
    }
}
