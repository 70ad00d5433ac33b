//! Laminar flow of oil in a line: pressure drop while delivering, and how fast a closed line vents.

use crate::error::{Code, Error, Result};
use std::f64::consts::PI;

/// Greatest Reynolds number that is taken as laminar (Avila et al. 2011, Science 333, 192: 2040 ± 10).
pub const LAMINAR_LIMIT: f64 = 2040.0;

/// A piece of line of one bore.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    /// Length, m.
    pub length: f64,
    /// Bore, m.
    pub bore: f64,
    /// Flow in it during delivery, m³/s.
    pub flow: f64,
}

/// Pressure drop of a line and the greatest Reynolds number in it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineDrop {
    /// Pressure drop, Pa.
    pub pressure: f64,
    /// Greatest Reynolds number of the segments.
    pub reynolds: f64,
}

/// Pressure drop per flow (Pa s/m³) of a round line. Source: Hagen-Poiseuille, 128 η L/(π d⁴).
///
/// `length`, `bore` m, `viscosity` Pa s.
pub fn line_resistance(length: f64, bore: f64, viscosity: f64) -> f64 {
    128.0 * viscosity * length / (PI * bore.powi(4))
}

/// Reynolds number of `flow` (m³/s) in a round `bore` (m): 4 ρ Q/(π d η). `density` kg/m³, `viscosity` Pa s.
pub fn reynolds_number(flow: f64, bore: f64, density: f64, viscosity: f64) -> f64 {
    4.0 * density * flow / (PI * bore * viscosity)
}

/// Shear stress (Pa) on the wall of a line with the pressure `gradient` (Pa/m). Source: balance of forces, g d/4.
pub fn wall_shear(gradient: f64, bore: f64) -> f64 {
    0.25 * gradient * bore
}

/// Length (m) after which laminar flow in a `bore` (m) is developed: 0.058 Re d. Source: Langhaar 1942.
pub fn entrance_length(reynolds: f64, bore: f64) -> f64 {
    0.058 * reynolds * bore
}

/// Pressure drop of segments behind one another, at the `viscosity` (Pa s) of the coldest stretch and `density` kg/m³.
///
/// Laminar only: fails above [`LAMINAR_LIMIT`]. Fittings and height are not in it.
pub fn line_drop(segments: &[Segment], viscosity: f64, density: f64) -> Result<LineDrop> {
    let mut drop = LineDrop { pressure: 0.0, reynolds: 0.0 };
    for segment in segments {
        drop.pressure += line_resistance(segment.length, segment.bore, viscosity) * segment.flow;
        drop.reynolds = drop.reynolds.max(reynolds_number(segment.flow, segment.bore, density, viscosity));
    }
    if drop.reynolds > LAMINAR_LIMIT {
        return Err(Error::new(
            Code::Turbulent,
            "reynolds",
            format!(
                "The Reynolds number in the oil line is {:.0}, above {LAMINAR_LIMIT}: the flow is not laminar. \
                 Take a wider bore or deliver more slowly.",
                drop.reynolds
            ),
        )
        .number(drop.reynolds)
        .limit(format!("at most {LAMINAR_LIMIT}")));
    }
    Ok(drop)
}

/// Least bore (m) of a line of `length` (m) that loses at most `pressure` (Pa) at `flow` (m³/s) and stays laminar.
///
/// `viscosity` Pa s, `density` kg/m³. The inverse of [`line_resistance`] and [`reynolds_number`]: Hagen-Poiseuille.
pub fn least_bore(length: f64, flow: f64, viscosity: f64, density: f64, pressure: f64) -> f64 {
    let by_pressure = (line_resistance(length, 1.0, viscosity) * flow / pressure).sqrt().sqrt();
    let by_flow = reynolds_number(flow, 1.0, density, viscosity) / LAMINAR_LIMIT;
    by_pressure.max(by_flow)
}

/// Time (s) for a line, closed at one end, to fall from `pressure` to `reset_pressure` (Pa) at the other.
///
/// `length`, `bore` m, `viscosity` Pa s; `bulk_modulus` of the oil Pa, `hose_compliance` of the wall 1/Pa (relative volume
/// per pressure). Slowest mode only: good for `reset_pressure` below 0.4 `pressure`; 0 if nothing has to vent.
/// Source: diffusion equation of a compressible line, first term of its series.
pub fn vent_time(
    length: f64,
    bore: f64,
    viscosity: f64,
    bulk_modulus: f64,
    hose_compliance: f64,
    pressure: f64,
    reset_pressure: f64,
) -> f64 {
    let compliance = 0.25 * PI * bore * bore * length * (bulk_modulus.recip() + hose_compliance);
    let time = 4.0 * line_resistance(length, bore, viscosity) * compliance / (PI * PI);
    time * (4.0 * pressure / (PI * reset_pressure)).ln().max(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_in_two_pieces_is_the_line() {
        let whole = Segment { length: 10.0, bore: 0.004, flow: 1e-7 };
        let half = Segment { length: 5.0, ..whole };
        let (one, two) = (line_drop(&[whole], 1.0, 900.0).unwrap(), line_drop(&[half, half], 1.0, 900.0).unwrap());
        assert!((one.pressure / two.pressure - 1.0).abs() < 1e-15);
        assert_eq!(one.reynolds, two.reynolds);
        assert_eq!(line_drop(&[], 1.0, 900.0).unwrap().pressure, 0.0);
    }

    #[test]
    fn the_least_bore_just_keeps_pressure_and_laminar_flow() {
        let bore = least_bore(20.0, 1e-7, 1.66, 900.0, 5e5);
        let drop = line_drop(&[Segment { length: 20.0, bore, flow: 1e-7 }], 1.66, 900.0).unwrap();
        assert!((drop.pressure / 5e5 - 1.0).abs() < 1e-12);
        let thin = least_bore(0.1, 1e-4, 1e-3, 1000.0, 5e5);
        let at = |bore| line_drop(&[Segment { length: 0.1, bore, flow: 1e-4 }], 1e-3, 1000.0);
        assert!(at(1.000001 * thin).is_ok() && at(0.999 * thin).is_err());
    }

    #[test]
    fn turbulent_flow_is_refused() {
        let fast = Segment { length: 10.0, bore: 0.004, flow: 1e-3 };
        assert!(line_drop(&[fast], 1e-3, 1000.0).is_err_and(|e| e.code == Code::Turbulent));
    }

    #[test]
    fn the_slowest_mode_is_the_series_when_late() {
        // closed line at pressure 1, other end at 0: p at the closed end = Σ (4/π)(-1)^n/(2n+1) exp(-(2n+1)² x)
        let time = vent_time(30.0, 0.006, 1.66, 1.4e9, 2e-10, 1.0, 0.3);
        let rc = line_resistance(30.0, 0.006, 1.66) * 0.25 * PI * 0.006f64.powi(2) * 30.0 * (1.0 / 1.4e9 + 2e-10);
        let series: f64 = (0..50)
            .map(|n| {
                let odd = f64::from(2 * n + 1);
                let sign = if n % 2 == 0 { 1.0 } else { -1.0 };
                sign * 4.0 / (PI * odd) * (-odd * odd * PI * PI / 4.0 * time / rc).exp()
            })
            .sum();
        assert!((series - 0.3).abs() < 1e-5, "{series}");
    }
}
