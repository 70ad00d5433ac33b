//! Pump, injectors and reservoir: whether the pressure suffices, whether there is time, when to refill.

/// Oil that stays below the outlet of a reservoir, share of its volume (from memory).
const HEEL: f64 = 0.05;

/// Outlet pressure (Pa) of a pump with pressure `ratio` on `air_pressure` (Pa).
///
/// `efficiency` is the share of the ratio that it reaches, 0.85 usually (common practice, no source).
pub fn outlet_pressure(ratio: f64, air_pressure: f64, efficiency: f64) -> f64 {
    ratio * air_pressure * efficiency
}

/// Share of the outlet pressure that line and injectors take; should stay at or below 0.8. All Pa.
pub fn outlet_use(line_drop: f64, opening_pressure: f64, outlet_pressure: f64) -> f64 {
    (line_drop + opening_pressure) / outlet_pressure
}

/// Time (s) an injector needs for one shot: delivery and venting; must fit between two shots.
pub fn injector_time(delivery: f64, venting: f64) -> f64 {
    delivery + venting
}

/// Time (s) until a reservoir of `volume` (m³) has to be refilled, at `use_rate` m³/s.
///
/// `refill_share` is the share still in it when it is refilled; the heel cannot be used. Less than 7 days is short.
pub fn reservoir_time(volume: f64, refill_share: f64, use_rate: f64) -> f64 {
    (1.0 - HEEL) * volume * (1.0 - refill_share) / use_rate
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_used_up() {
        assert!((outlet_pressure(10.0, 6e5, 0.85) - 5.1e6).abs() < 1e-6);
        assert_eq!(outlet_use(1e6, 1.5e6, 5e6), 0.5);
        assert!((reservoir_time(0.01, 0.2, 0.0076) - 1.0).abs() < 1e-12);
        assert_eq!(reservoir_time(0.01, 0.2, 0.0), f64::INFINITY);
    }
}
