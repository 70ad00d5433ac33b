//! Which way of oiling a handbook names for a transmission chain of a given speed. For orientation only.

/// Method, least and greatest chain speed in m/s.
///
/// Source: read in The Tribology Handbook (Neale), sheet C9: 5 to 10 drops a minute up to 3 m/s, more than 20 up to
/// 7.5 m/s, dip up to 10 m/s, spray from 7.5 m/s.
const METHODS: [(&str, f64, f64); 4] =
    [("slow_drip", 0.0, 3.0), ("fast_drip", 3.0, 7.5), ("dip", 0.0, 10.0), ("spray", 7.5, f64::INFINITY)];

/// The methods that the handbook allows at a chain speed of `speed` (m/s), plainest first; both limits belong to each.
///
/// It knows transmission chains, oiled while they run fast: a conveyor at a few m/min always falls under slow drip,
/// whatever its joints need.
///
/// ```
/// use pinfilm::lubrication::method::handbook_methods;
/// assert_eq!(handbook_methods(0.2).collect::<Vec<_>>(), ["slow_drip", "dip"]);
/// ```
pub fn handbook_methods(speed: f64) -> impl Iterator<Item = &'static str> {
    METHODS.iter().filter(move |(_, least, most)| speed >= *least && speed <= *most).map(|(name, _, _)| *name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_speed_has_a_method() {
        for step in 0..200 {
            assert!(handbook_methods(0.1 * f64::from(step)).next().is_some());
        }
        assert_eq!(handbook_methods(12.0).collect::<Vec<_>>(), ["spray"]);
        assert_eq!(handbook_methods(-1.0).count(), 0);
    }
}
