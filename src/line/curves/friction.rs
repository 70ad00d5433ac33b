//! Friction of one articulation against viscosity.

use super::{FrictionCurve, FrictionCurveSi, POINTS, Worked, points_within};
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::line::settle::Bearing;
use crate::quantity::{Field, unit::ONE};

/// Factors on the viscosity of the oil between which a curve is drawn: thinner than any oil, thicker than any grease.
const FACTORS: (f64, f64) = (1e-3, 1e5);

/// Film and friction of the articulation `event` (its place in the result's events) with the same oil thinned and
/// thickened, at the load, speed and fill of the result.
///
/// Viscosities at which the contact model has no answer are left out. Fails for an event that is not there.
pub fn friction_curve(line: &Line, event: i64, points: Option<i64>) -> Result<FrictionCurve> {
    let points = points_within(points, POINTS)?;
    let worked = Worked::of(line)?;
    let events = &worked.settled.events;
    let Some(joint) = usize::try_from(event).ok().and_then(|event| events.get(event)) else {
        let message =
            format!("event = {event} is not there: the result has the events 0 to {}", events.len().saturating_sub(1));
        return Err(Error::new(Code::OutOfRange, "event", message)
            .number(event as f64)
            .limit(format!("0 to {}", events.len().saturating_sub(1))));
    };
    let bearing = Bearing::new(&worked.survey, &worked.reach)?;
    let mut curve = FrictionCurveSi { event, viscosity: Vec::new(), lambda: Vec::new(), friction_reached: Vec::new() };
    let span = (FACTORS.1 / FACTORS.0).ln();
    for point in 0..points {
        let factor = FACTORS.0 * (span * point as f64 / (points - 1) as f64).exp();
        let viscosity = factor * joint.viscosity;
        let Ok(other) = bearing.at(&joint.event, &bearing.lubricant(viscosity), None) else { continue };
        curve.viscosity.push(viscosity);
        curve.lambda.push(other.reached.lambda);
        curve.friction_reached.push(other.reached.coefficient);
    }
    Ok(FrictionCurve::public(curve, &ONE))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::evaluate;

    #[test]
    fn the_result_lies_on_its_curve() {
        let line = Line::from_toml(include_str!("../../../python/pinfilm/data/packing_now.toml")).unwrap();
        let result = evaluate(&line).unwrap();
        let event = &result.joint.events[0];
        let curve = friction_curve(&line, 0, Some(201)).unwrap();
        let at = curve.viscosity_mpa_s.iter().position(|&viscosity| viscosity >= event.viscosity_mpa_s).unwrap();
        let (below, above) = (&curve.lambda_ratio[at - 1], &curve.lambda_ratio[at]);
        assert!(*below <= event.lambda_ratio && event.lambda_ratio <= *above * (1.0 + 1e-9));
        assert!(curve.lambda_ratio.windows(2).all(|pair| pair[0] <= pair[1]));
        assert!(friction_curve(&line, 99, None).is_err());
    }
}
