//! The part of a motor's current that does work.

/// Active current (A) of a line-fed motor from its current and its no-load current (A), both ≥ 0.
///
/// Takes the magnetising current to be at right angles to the rest and the same at every load; nothing below it. Only for
/// a clamp on the mains side of a motor without a converter: before a converter there is hardly any magnetising current
/// to take off. Below about 40 % load it is a weak witness; the motor's circuit says more, a power meter most.
/// Source: phasor diagram of the induction motor with the stator's resistance left out; common practice.
///
/// ```
/// use pinfilm::log::active_current;
/// let (before, after) = (active_current(3.0, 1.8), active_current(2.8, 1.8));
/// assert!((1.0 - after / before - 0.106_349_56).abs() < 1e-8); // 6.7 % of the current is 10.6 % of its active part
/// ```
pub fn active_current(current: f64, no_load_current: f64) -> f64 {
    ((current - no_load_current) * (current + no_load_current)).max(0.0).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn right_angled_triangle() {
        assert_eq!(active_current(5.0, 3.0), 4.0);
        assert_eq!(active_current(2.9, 3.0), 0.0);
        assert_eq!(active_current(2.9, 0.0), 2.9);
        assert!((active_current(2.8, 1.8) - 2.144_761_1).abs() < 1e-7);
    }
}
