//! Whether the reservoir agrees with the shots.

/// What the reservoir says of the supply.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OilUse {
    /// As dispensed.
    Consistent,
    /// More than dispensed: a leak, or a valve stuck open.
    High,
    /// Less than dispensed: a blockage, or an empty reservoir; the line runs dry after its waiting time.
    Low,
}

impl OilUse {
    /// The word as it is printed and compared.
    pub const fn as_str(self) -> &'static str {
        match self {
            OilUse::Consistent => "consistent",
            OilUse::High => "high",
            OilUse::Low => "low",
        }
    }
}

/// Deviations of the `measured` fall of the reservoir from `shots` of `shot_volume`, in standard deviations.
///
/// Volumes in one unit (m³); `reading_error` standard deviation of the fall as read, `shot_error` standard deviation of the
/// shot volume as a share. Source: propagation of independent errors.
pub fn oil_use_z(measured: f64, shots: f64, shot_volume: f64, reading_error: f64, shot_error: f64) -> f64 {
    let dispensed = shots * shot_volume;
    (measured - dispensed) / reading_error.hypot(shot_error * dispensed)
}

/// Verdict on [`oil_use_z`]: consistent within three standard deviations (common practice, no source).
///
/// ```
/// use pinfilm::log::watch::{OilUse, oil_use, oil_use_z};
/// let litre = 1e-3;
/// let z = oil_use_z(3.1 * litre, 120_000.0, 18e-9, 0.1 * litre, 0.1);
/// assert!((z - 3.949).abs() < 1e-3);
/// assert_eq!(oil_use(z), OilUse::High);
/// ```
pub fn oil_use(z: f64) -> OilUse {
    match z {
        z if z >= 3.0 => OilUse::High,
        z if z <= -3.0 => OilUse::Low,
        _ => OilUse::Consistent,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn three_reservoirs() {
        let z = |litres: f64| oil_use_z(1e-3 * litres, 120_000.0, 18e-9, 1e-4, 0.1);
        assert!((z(2.0) + 0.672).abs() < 1e-3 && (z(0.4) + 7.394).abs() < 1e-3);
        assert_eq!([z(2.0), z(3.1), z(0.4)].map(oil_use), [OilUse::Consistent, OilUse::High, OilUse::Low]);
        assert!(z(2.16).abs() < 1e-12);
    }
}
