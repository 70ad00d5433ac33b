//! From the spread of a row and the value of a line to a distribution.

use super::super::draws::{Distribution, normal_quantile};
use crate::quantity::{Class, Range, Row, Spread};

/// 95 % of a standard normal lie below this many standard deviations.
fn z_95() -> f64 {
    normal_quantile(0.95)
}

/// What is thought of an input that has the value `value` in a survey and `default` in the register; `other` gives the
/// value of another input. `None`: it is not drawn.
///
/// A spread about the default is moved to the value of the line: bells by their middle, the others by their peak, and if
/// the value lies outside the ends these move with it as a factor. A uniform spread from memory tells how oils, motors and
/// meters differ; a survey that names a value of its own has looked, and it is not drawn.
pub fn about(row: &Row, value: f64, default: Option<f64>, other: &dyn Fn(&str) -> Option<f64>) -> Option<Distribution> {
    let is_default = default == Some(value);
    let named = row.class == Class::FromMemory && !is_default;
    let d = match row.spread {
        Spread::Unstated | Spread::Told(_) => return None,
        Spread::Uniform(..) | Spread::LogUniform(..) if named => return None,
        Spread::Uniform(low, high) if is_default => Distribution::Uniform { low, high },
        Spread::LogUniform(low, high) if is_default => Distribution::LogUniform { low, high },
        Spread::LogUniform(low, high) => factor_about(value, (high / low).sqrt()),
        Spread::Lognormal(low, high) if is_default => Distribution::lognormal_90(low, high),
        Spread::Lognormal(low, high) => factor_about(value, (high / low).sqrt()),
        Spread::Factor(factor) => factor_about(value, factor),
        Spread::WidestFactor(factor) => Distribution::lognormal_within(value, factor, 0.95),
        Spread::Uniform(low, high) | Spread::Triangular(low, high) => {
            let (low, high) = holding(value, default, low, high);
            peaked(value, low, high, row.allowed)
        }
        Spread::Beta(low, high) => {
            let (low, high) = holding(value, default, low, high);
            let (low, high) = inside(row.allowed, low, high);
            Distribution::pert(low, value, high)
        }
        Spread::Normal(sd) => bell(value, sd, row.allowed),
        Spread::PlusMinus(most) => bell(value, most / z_95(), row.allowed),
        Spread::Percent(most) => bell(value, 0.01 * most * value.abs() / z_95(), row.allowed),
        Spread::Times(low, high) => peaked(value, low * value, high * value, row.allowed),
        Spread::NormalTimes(sd, low, high) => {
            Distribution::TruncatedNormal { mean: value, sd: sd * value, low: low * value, high: high * value }
        }
        Spread::Loss(low, high) => {
            let loss = 1.0 - value;
            peaked(value, 1.0 - high * loss, 1.0 - low * loss, row.allowed)
        }
        Spread::ShareOf(low, _, high, path) => {
            let whole = other(path)?;
            peaked(value, (low * whole).min(value), (high * whole).max(value), row.allowed)
        }
        Spread::Follows(low, high, _) => peaked(value, low * value, high * value, row.allowed),
    };
    // of a zero, a factor makes nothing else; what has no width is certain
    d.check(row.name).ok()?;
    let fits = |d: &Distribution| d.check_within(row.name, "", row.allowed.low, row.allowed.high).is_ok();
    if fits(&d) {
        return Some(d);
    }
    // a bell that reaches beyond what is allowed keeps its body and loses its tails
    let (low, high) = inside(row.allowed, d.quantile(0.05), d.quantile(0.95));
    let body = match d {
        Distribution::Lognormal { .. } => Distribution::LogUniform { low, high },
        _ => Distribution::Uniform { low, high },
    };
    (body.check(row.name).is_ok() && fits(&body)).then_some(body)
}

/// What is thought of an input that a survey left open; only for those that are a share of another one.
pub(super) fn about_unnamed(row: &Row, other: &dyn Fn(&str) -> Option<f64>) -> Option<Distribution> {
    let Spread::ShareOf(low, mode, high, path) = row.spread else { return None };
    let whole = other(path)?;
    Some(Distribution::Triangular { low: low * whole, mode: mode * whole, high: high * whole })
}

/// A lognormal about `value` that 5 % lie below by `factor` and 5 % above.
fn factor_about(value: f64, factor: f64) -> Distribution {
    Distribution::Lognormal { median: value, ln_sd: factor.ln() / z_95() }
}

/// Ends that hold the value: as they are, or moved with it.
fn holding(value: f64, default: Option<f64>, low: f64, high: f64) -> (f64, f64) {
    if (low..=high).contains(&value) {
        return (low, high);
    }
    let middle = default.filter(|d| *d != 0.0).unwrap_or(0.5 * (low + high));
    let factor = value / middle;
    (low * factor, high * factor)
}

/// The part of `low` to `high` that is allowed.
fn inside(allowed: Range, low: f64, high: f64) -> (f64, f64) {
    (low.max(allowed.low), high.min(allowed.high))
}

fn peaked(mode: f64, low: f64, high: f64, allowed: Range) -> Distribution {
    let (low, high) = inside(allowed, low.min(high), low.max(high));
    Distribution::Triangular { low, mode, high }
}

/// A bell curve, cut where values are not allowed.
fn bell(mean: f64, sd: f64, allowed: Range) -> Distribution {
    let free = mean - 4.0 * sd >= allowed.low && mean + 4.0 * sd <= allowed.high;
    if free {
        return Distribution::Normal { mean, sd };
    }
    let (low, high) = inside(allowed, mean - 6.0 * sd, mean + 6.0 * sd);
    Distribution::TruncatedNormal { mean, sd, low, high }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{between, up_to};

    fn row(spread: Spread, class: Class) -> Row {
        Row { name: "x", spread, class, allowed: between(0.0, 1.0), ..Row::BLANK }
    }

    fn of(row: &Row, value: f64, default: f64) -> Option<Distribution> {
        about(row, value, Some(default), &|_| Some(10.0))
    }

    #[test]
    fn a_default_has_the_spread_as_it_stands_and_a_named_value_has_it_about_itself() {
        let wear = row(Spread::Lognormal(1e-4, 3e-3), Class::FromMemory);
        assert_eq!(of(&wear, 5e-4, 5e-4), Some(Distribution::lognormal_90(1e-4, 3e-3)));
        let named = of(&wear, 1e-3, 5e-4).unwrap();
        assert!((named.quantile(0.5) - 1e-3).abs() < 1e-15);
        assert!((named.quantile(0.95) / named.quantile(0.05) - 30.0).abs() < 1e-9);
        let capture = row(Spread::Beta(0.1, 0.4), Class::CommonPractice);
        assert_eq!(of(&capture, 0.2, 0.25), Some(Distribution::pert(0.1, 0.2, 0.4)));
        // outside its ends they move with it, but not beyond what is allowed
        assert_eq!(of(&capture, 0.75, 0.25), Some(Distribution::pert(0.1 * 3.0, 0.75, 1.0)));
    }

    #[test]
    fn a_range_of_what_there_is_does_not_doubt_a_survey() {
        let index = row(Spread::Uniform(0.2, 0.6), Class::FromMemory);
        assert_eq!(of(&index, 0.5, 0.5), Some(Distribution::Uniform { low: 0.2, high: 0.6 }));
        assert_eq!(of(&index, 0.4, 0.5), None);
        let closure = row(Spread::Uniform(0.2, 0.6), Class::Closure);
        assert_eq!(of(&closure, 0.4, 0.5), Some(Distribution::Triangular { low: 0.2, mode: 0.4, high: 0.6 }));
    }

    /// Every row that states a spread can be drawn, about its default or about a usual value.
    #[test]
    fn every_spread_of_the_register_is_a_distribution() {
        use crate::quantity::{Field, default_of};
        let mut rows = Vec::new();
        crate::line::Line::register(String::new(), &Row::BLANK, &mut rows);
        let mut stated = 0;
        for (path, row) in rows.iter().filter(|(_, row)| !matches!(row.spread, Spread::Unstated | Spread::Told(_))) {
            let default = default_of(row).filter(|default| *default != 0.0);
            let value = default.unwrap_or(0.5 * (row.allowed.low.max(0.0) + row.allowed.high.min(1.0)));
            let found = about(row, value, default, &|_| Some(10.0));
            let d = found.unwrap_or_else(|| panic!("{path} = {value}: {:?}", row.spread));
            assert!(d.quantile(0.05) < d.quantile(0.95), "{path}: {d:?}");
            d.check_within(path, row.unit.label, row.allowed.low, row.allowed.high).unwrap();
            assert!(!row.spread.words().is_empty());
            stated += 1;
        }
        assert!(stated > 60, "only {stated} rows state a spread");
    }

    #[test]
    fn nothing_of_zero_is_certain() {
        assert_eq!(of(&row(Spread::Factor(3.0), Class::Closure), 0.0, 0.5), None);
        assert_eq!(of(&row(Spread::Times(0.5, 2.0), Class::Survey), 0.0, 0.5), None);
        assert_eq!(of(&row(Spread::Unstated, Class::Survey), 0.3, 0.5), None);
    }

    #[test]
    fn efficiencies_lose_more_or_less() {
        let gear = row(Spread::Loss(0.5, 2.0), Class::FromMemory);
        let Some(Distribution::Triangular { low, mode, high }) = of(&gear, 0.96, 0.96) else { panic!() };
        assert!((low - 0.92).abs() < 1e-12 && mode == 0.96 && (high - 0.98).abs() < 1e-12);
    }

    #[test]
    fn shares_of_another_input_and_cut_bells() {
        let depth = Row { allowed: up_to(0.0, 10.0), ..row(Spread::ShareOf(0.03, 0.06, 0.1, "d"), Class::FromMemory) };
        let found = about_unnamed(&depth, &|_| Some(10.0));
        assert_eq!(found, Some(Distribution::Triangular { low: 0.3, mode: 0.6, high: 1.0 }));
        let cut = of(&row(Spread::PlusMinus(0.2), Class::FromMemory), 0.9, 0.9).unwrap();
        assert!(cut.quantile(0.9999) <= 1.0);
    }
}
