//! Equivalent circuit of a three-phase cage induction motor, per phase of the star connection.

use super::energised::Energised;

/// What the motor is fed with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Supply {
    /// Line-to-line voltage (V), > 0.
    pub voltage: f64,
    /// Frequency over rated frequency, > 0.
    pub frequency_ratio: f64,
}

impl Supply {
    /// A converter without voltage boost: voltage in proportion to frequency up to the rated voltage.
    ///
    /// `rated_voltage` V line to line; `frequency_ratio` frequency over rated. Source: common practice, no source.
    pub fn from_converter(rated_voltage: f64, frequency_ratio: f64) -> Self {
        Supply { voltage: rated_voltage * frequency_ratio.min(1.0), frequency_ratio }
    }
}

/// Resistances and reactances at rated frequency (Ω per phase, star), and the losses that the circuit does not carry.
///
/// The line current of a delta-connected motor is the same; its own phase impedances are three times these.
/// Source: the usual T circuit, e.g. Fitzgerald, Kingsley and Umans, Electric Machinery (from memory).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EquivalentCircuit {
    /// Stator resistance, ≥ 0.
    pub stator_resistance: f64,
    /// Stator leakage reactance, ≥ 0.
    pub stator_reactance: f64,
    /// Rotor resistance referred to the stator, > 0.
    pub rotor_resistance: f64,
    /// Rotor leakage reactance referred to the stator, ≥ 0.
    pub rotor_reactance: f64,
    /// Magnetising reactance, > 0.
    pub magnetising_reactance: f64,
    /// Resistance that stands for the core loss, > 0; infinite where it is neglected.
    pub core_resistance: f64,
    /// Friction and windage at rated speed (W), ≥ 0; with the core loss neglected, all rotational loss.
    pub friction_windage: f64,
    /// Stray load loss at `stray_current` (W), ≥ 0.
    pub stray_loss: f64,
    /// Rotor current (A) at which `stray_loss` was stated, > 0.
    pub stray_current: f64,
}

impl EquivalentCircuit {
    /// The circuit at a voltage and frequency, ready to answer slip, power and current.
    ///
    /// Reactances follow the frequency, the core resistance its square root, windage its square, stray loss its
    /// power 1.5 (closures of our own); saturation does not follow the voltage, so that the magnetising current at
    /// over-voltage is underestimated: within ±10 % of the rated ratio of voltage to frequency.
    pub fn on(&self, supply: &Supply) -> Energised {
        Energised::new(self, supply)
    }
}
