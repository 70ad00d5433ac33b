//! Power of a three-phase line, the way of the power through a motor, and energy over a year's operating states.

/// Active, apparent and reactive power of a balanced three-phase load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThreePhase {
    /// Active power (W).
    pub active: f64,
    /// Apparent power (VA).
    pub apparent: f64,
    /// Reactive power (var).
    pub reactive: f64,
}

/// Powers of a balanced three-phase load from line-to-line `voltage` (V), line `current` (A) and `power_factor` (0 to 1).
///
/// Source: definition, P = √3 U I cos φ.
pub fn three_phase(voltage: f64, current: f64, power_factor: f64) -> ThreePhase {
    let apparent = 3f64.sqrt() * voltage * current;
    ThreePhase {
        active: apparent * power_factor,
        apparent,
        reactive: apparent * ((1.0 - power_factor) * (1.0 + power_factor)).sqrt(),
    }
}

/// What is left of the input power of a motor after each loss (W).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PowerFlow {
    /// Through the air gap.
    pub air_gap: f64,
    /// Converted to mechanical power.
    pub converted: f64,
    /// At the shaft.
    pub shaft: f64,
    /// Shaft power over input power.
    pub efficiency: f64,
}

impl PowerFlow {
    /// From the input power and the five losses, all in W and ≥ 0.
    ///
    /// Source: power flow of an induction motor, e.g. Chapman, Electric Machinery Fundamentals (from memory).
    pub fn new(
        input: f64,
        stator_copper: f64,
        core: f64,
        rotor_copper: f64,
        friction_windage: f64,
        stray: f64,
    ) -> Self {
        let air_gap = input - stator_copper - core;
        let converted = air_gap - rotor_copper;
        let shaft = converted - friction_windage - stray;
        PowerFlow { air_gap, converted, shaft, efficiency: shaft / input }
    }
}

/// Energy (J) of operating states, each an input power (W) and its time (s): loaded, empty, standing.
///
/// A saving is the difference of two such sums with the input power taken through gear and motor; pull times speed over
/// a nominal efficiency is not one, because both lose more of a small load.
pub fn energy(states: impl IntoIterator<Item = (f64, f64)>) -> f64 {
    states.into_iter().map(|(power, time)| power * time).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn powers_are_the_sides_of_a_triangle() {
        let load = three_phase(400.0, 10.0, 0.8);
        assert!((load.active.hypot(load.reactive) / load.apparent - 1.0).abs() < 1e-14);
        assert_eq!(three_phase(400.0, 10.0, 1.0).reactive, 0.0);
    }

    #[test]
    fn energy_adds_up() {
        assert_eq!(energy([(1000.0, 60.0), (200.0, 30.0), (0.0, 1e6)]), 66_000.0);
        assert_eq!(energy([]), 0.0);
    }
}
