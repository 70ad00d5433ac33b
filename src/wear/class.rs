//! Joints by how they are oiled, and what all of them go through in one circuit.

use super::coefficient::CoefficientLaw;
use super::waiting::OilAge;
use crate::error::{Code, Error, Result};

/// One articulation of a joint under load: entering or leaving a turn, or the idlers of a straight together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Event {
    /// How many such articulations in one circuit.
    pub count: f64,
    /// Tension of one strand (N); a joint that carries none does not wear.
    pub tension: f64,
    /// Angle of articulation (rad), ≥ 0: 2π/z on a sprocket, pitch/radius on a plain curve.
    pub angle: f64,
    /// Temperature of the chain (°C).
    pub temperature: f64,
    /// Film ratio at fill 1.
    pub lambda_at_fill_1: f64,
}

impl Event {
    /// Load times angle over all its articulations (N rad): the weight of the event in every mean of wear.
    pub fn load_angle(&self) -> f64 {
        self.count * self.tension.max(0.0) * self.angle
    }
}

/// What one joint goes through in one circuit, whichever its class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CircuitWork {
    /// Σ count · tension · angle (N rad).
    pub load_angle: f64,
    /// Σ count · angle (rad).
    pub angle: f64,
    /// Mean temperature by load and angle (°C): that of the metal while it wears.
    pub temperature: f64,
}

impl CircuitWork {
    /// Sums over the events of one circuit. Where nothing is loaded the temperature is the plain mean (20 °C for no event).
    pub fn of(events: &[Event]) -> Self {
        let (mut load_angle, mut angle, mut warmth, mut plain) = (0.0, 0.0, 0.0, 0.0);
        for event in events {
            load_angle += event.load_angle();
            angle += event.count * event.angle;
            warmth += event.load_angle() * event.temperature;
            plain += event.temperature;
        }
        let temperature = match events.len() {
            0 => 20.0,
            _ if load_angle > 0.0 => warmth / load_angle,
            count => plain / count as f64,
        };
        CircuitWork { load_angle, angle, temperature }
    }

    /// Sliding of pin in bush for each second of running (m/s): r Σ count θ / τ.
    ///
    /// `pin_radius` m, `circuit_time` s of running. Exact where the pin stands still in its plates.
    pub fn sliding_rate(&self, pin_radius: f64, circuit_time: f64) -> f64 {
        self.angle * pin_radius / circuit_time
    }

    /// Wear work for each second of running and unit of wear coefficient (N m/s): r Σ count T θ / (3 τ).
    ///
    /// Source: Archard (1953), V = K W s / (3 H), with V = Ω/H for each of the two bodies.
    pub fn work_rate(&self, pin_radius: f64, circuit_time: f64) -> f64 {
        self.load_angle * pin_radius / (3.0 * circuit_time)
    }
}

/// Joints that are oiled alike.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Class<'a> {
    /// Share of all joints.
    pub share: f64,
    /// The waits from one oiling to the next that each of these joints meets in turn, (s, weight); weights
    /// add up to 1.
    pub waits: &'a [(f64, f64)],
    /// Fill just after oiling, and how it is lost.
    pub oil: OilAge,
    /// Whether these joints lie together, so that a stretch of the chain has their pitch.
    pub contiguous: bool,
}

impl Class<'_> {
    /// Joints that oil never reaches.
    pub fn never_oiled(share: f64, contiguous: bool) -> Self {
        Class { share, waits: &[(f64::INFINITY, 1.0)], oil: OilAge { fill: 0.0, loss_rate: 0.0 }, contiguous }
    }
}

/// Fails unless the shares of the classes add up to 1 within 1e-9.
pub fn check_shares(classes: &[Class]) -> Result<()> {
    let sum: f64 = classes.iter().map(|class| class.share).sum();
    if (sum - 1.0).abs() <= 1e-9 {
        return Ok(());
    }
    Err(Error::new(
        Code::Inconsistent,
        "share of joints",
        format!("the shares of the classes of joints add up to {sum}, not 1: every joint belongs to exactly one class"),
    )
    .number(sum)
    .limit("1 within 1e-9"))
}

/// Wear coefficient of a joint of `class` at each event, averaged over its waits.
///
/// Closure of our own. Temperature and film ratio alone tell the events apart, and the film ratio only above 0.4: what
/// has been averaged for one event serves all others like it.
pub fn event_coefficients(law: &CoefficientLaw, events: &[Event], class: &Class) -> Vec<f64> {
    let alike = |a: &Event, b: &Event| {
        a.temperature == b.temperature
            && CoefficientLaw::effective_lambda(a.lambda_at_fill_1)
                == CoefficientLaw::effective_lambda(b.lambda_at_fill_1)
    };
    let (mut places, mut place_of) = (Vec::with_capacity(events.len()), Vec::with_capacity(events.len()));
    for event in events {
        let known = events.iter().zip(&place_of).find(|(earlier, _)| alike(earlier, event)).map(|(_, &place)| place);
        place_of.push(known.unwrap_or(places.len()));
        if known.is_none() {
            places.push(law.at(event.lambda_at_fill_1, event.temperature));
        }
    }
    let mut means = vec![0.0; places.len()];
    class.oil.add_means_over_waits(&places, class.waits, &mut means);
    place_of.into_iter().map(|place| means[place]).collect()
}

/// Wear coefficient of a class over the whole circuit: the mean of [`event_coefficients`] by load and angle.
///
/// Where nothing is loaded it is the plain mean, which then wears nothing; 0 for no event.
pub fn class_coefficient(events: &[Event], coefficients: &[f64]) -> f64 {
    let (mut weighted, mut weight, mut plain) = (0.0, 0.0, 0.0);
    for (event, coefficient) in events.iter().zip(coefficients) {
        weighted += event.load_angle() * coefficient;
        weight += event.load_angle();
        plain += coefficient;
    }
    if weight > 0.0 { weighted / weight } else { plain / coefficients.len().max(1) as f64 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wear::WearCoefficients;

    fn event(tension: f64, temperature: f64, lambda: f64) -> Event {
        Event { count: 1.0, tension, angle: 0.5, temperature, lambda_at_fill_1: lambda }
    }

    #[test]
    fn a_slack_joint_slides_but_does_not_wear() {
        let work = CircuitWork::of(&[event(1000.0, 40.0, 0.1), event(-5.0, 90.0, 0.1), event(3000.0, 80.0, 0.1)]);
        assert_eq!((work.load_angle, work.angle, work.temperature), (2000.0, 1.5, 70.0));
        assert_eq!(work.work_rate(0.01, 100.0), 2000.0 * 0.01 / 300.0);
        assert_eq!(work.sliding_rate(0.01, 100.0), 1.5e-4);
        assert_eq!(CircuitWork::of(&[event(0.0, 30.0, 0.1)]).temperature, 30.0);
        assert_eq!(CircuitWork::of(&[]).load_angle, 0.0);
    }

    #[test]
    fn events_alike_share_a_mean_and_others_do_not() {
        let law = WearCoefficients::default().law();
        let waits = [(3600.0, 0.4), (7200.0, 0.6)];
        let class = Class { share: 1.0, waits: &waits, oil: OilAge { fill: 0.6, loss_rate: 1e-4 }, contiguous: true };
        let events = [event(10.0, 20.0, 0.1), event(20.0, 20.0, 0.4), event(30.0, 20.0, 0.5), event(40.0, 160.0, 0.1)];
        let k = event_coefficients(&law, &events, &class);
        assert_eq!(k[0], k[1]);
        assert!(k[2] < k[0] && k[0] < k[3]);
        let mean = class_coefficient(&events, &k);
        assert!((mean - (30.0 * k[0] + 30.0 * k[2] + 40.0 * k[3]) / 100.0).abs() < 1e-18);
        assert_eq!(class_coefficient(&[event(0.0, 20.0, 0.1)], &[2e-5]), 2e-5);
        assert_eq!(class_coefficient(&[], &[]), 0.0);
    }

    #[test]
    fn joints_never_oiled_are_dry_wherever_they_are() {
        let law = WearCoefficients { dust_factor: 2.0, ..Default::default() }.law();
        let k = event_coefficients(&law, &[event(10.0, 20.0, 4.0)], &Class::never_oiled(0.1, true));
        assert_eq!(k, [law.dry_coefficient()]);
        assert_eq!(check_shares(&[Class::never_oiled(0.1, true)]).unwrap_err().code, Code::Inconsistent);
    }
}
