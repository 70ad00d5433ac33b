//! Growth of the chain over the years.

use super::{ElongationCurve, ElongationCurveSi, POINTS, Worked, points_within};
use crate::error::{Code, Error, Result};
use crate::line::Line;
use crate::line::wearing::wear_of;
use crate::quantity::{Field, unit::ONE, unit::YEARS};
use crate::wear::NO_LIMIT_YEARS;

/// How much further than the wear life a curve goes where nobody says.
const BEYOND: f64 = 1.25;

/// Elongation of a new chain over calendar time, up to `until` years; not given: a quarter beyond the wear life, but not
/// beyond the years after which wear does not limit a chain.
pub fn elongation_curve(line: &Line, until: Option<f64>, points: Option<i64>) -> Result<ElongationCurve> {
    let points = points_within(points, POINTS)?;
    let worked = Worked::of(line)?;
    let Worked { survey, course, oiling, reach, settled } = &worked;
    let wearing = wear_of(survey, course, oiling, reach, settled)?;
    let until = match until {
        Some(until) if until > 0.0 && until.is_finite() => until,
        Some(until) => {
            let message = format!("until_years = {until} years shows nothing: give more than 0 years");
            return Err(Error::new(Code::OutOfRange, "until_years", message)
                .number(until)
                .unit("years")
                .limit("above 0 years"));
        }
        None => YEARS.from_si(BEYOND * wearing.lives.mean).min(NO_LIMIT_YEARS),
    };
    let time: Vec<f64> = (0..points).map(|point| YEARS.to_si(until) * point as f64 / (points - 1) as f64).collect();
    let chain = wearing.wearer.chain();
    let elongation = time.iter().map(|time| chain.elongation(survey.running_share * time)).collect();
    Ok(ElongationCurve::public(ElongationCurveSi { time, elongation, limit: wearing.limit }, &ONE))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::line::evaluate;

    #[test]
    fn it_passes_through_the_first_year_and_the_limit() {
        let line = Line::from_toml(include_str!("../../../python/pinfilm/data/oven_now.toml")).unwrap();
        let wear = evaluate(&line).unwrap().wear;
        let year = elongation_curve(&line, Some(1.0), Some(3)).unwrap();
        assert_eq!(year.elongation_pct[0], 0.0);
        assert!((year.elongation_pct[2] - wear.elongation_1_year_pct).abs() < 1e-12);
        let life = elongation_curve(&line, Some(wear.life_mean_years), Some(2)).unwrap();
        assert!((life.elongation_pct[1] - life.limit_pct).abs() < 1e-9);
        assert!(elongation_curve(&line, Some(0.0), None).is_err());
        assert!(elongation_curve(&line, None, Some(9)).unwrap().time_years[8] > 0.0);
    }
}
