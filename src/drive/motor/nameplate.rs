//! What a motor's nameplate says, and what must be added to make a circuit of it.

use super::equivalent_circuit::Supply;

/// The nameplate of a three-phase cage induction motor, voltage and current of the connection in use.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nameplate {
    /// Line-to-line voltage (V).
    pub voltage: f64,
    /// Shaft power (W).
    pub power: f64,
    /// Line current (A).
    pub current: f64,
    /// Speed at rated power (rad/s).
    pub speed: f64,
    /// Efficiency, 0 to 1.
    pub efficiency: f64,
    /// Power factor, 0 to 1.
    pub power_factor: f64,
    /// Frequency (Hz).
    pub frequency: f64,
}

/// A current measured at a known shaft power.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    /// Line current of the motor (A).
    pub current: f64,
    /// Shaft power at the time (W): 0 for the uncoupled motor, that of the empty line's own pull otherwise.
    pub shaft_power: f64,
    /// Voltage and frequency at the time.
    pub supply: Supply,
}

/// Where the leakage reactance comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Leakage {
    /// Total leakage reactance over rated phase impedance; 0.20 unless something is known (0.10 to 0.28).
    PerUnit(f64),
    /// So that the circuit draws a measured current.
    From(Measured),
}

/// How the nameplate's loss is split, and the leakage: what a nameplate does not say.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LossSplit {
    /// Leakage reactance, or the measured current that gives it.
    pub leakage: Leakage,
    /// Share of stator and core loss that is core loss; 0.40 (0.2 to 0.6), closure of our own.
    pub core_share: f64,
    /// Share of all loss that is friction and windage; 0.10 (0.05 to 0.2), closure of our own.
    pub friction_windage_share: f64,
    /// Factor on the assigned stray load loss; 1 (0.3 to 1).
    pub stray_factor: f64,
}

impl Default for LossSplit {
    fn default() -> Self {
        LossSplit { leakage: Leakage::PerUnit(0.20), core_share: 0.40, friction_windage_share: 0.10, stray_factor: 1.0 }
    }
}

impl Nameplate {
    /// Voltage and frequency of the nameplate.
    pub fn supply(&self) -> Supply {
        Supply { voltage: self.voltage, frequency_ratio: 1.0 }
    }

    /// Electrical input power at rated load (W).
    pub fn input_power(&self) -> f64 {
        self.power / self.efficiency
    }
}
