//! Payback: an outcome in words, with a number only where there is one.

/// Days of a calendar year, the usual basis of a payback in days; the other is the plant's working days.
pub const CALENDAR_DAYS: f64 = 365.0;

/// Whether and when an investment has paid for itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Payback {
    /// After this time (years, or days from [`payback_days`]).
    PaysBack(f64),
    /// After this time, but later flows take it back.
    PaysBackThenLoses(f64),
    /// Nothing to pay back.
    Immediate,
    /// The savings never make up for the investment.
    Never,
    /// Money first, losses after.
    LosesAfter,
    /// It would pay back, but not within the flows given.
    BeyondHorizon,
}

impl Payback {
    /// The outcome as it is printed and compared.
    pub const fn status(&self) -> &'static str {
        match self {
            Payback::PaysBack(_) => "pays_back",
            Payback::PaysBackThenLoses(_) => "pays_back_then_loses",
            Payback::Immediate => "immediate",
            Payback::Never => "never",
            Payback::LosesAfter => "loses_after",
            Payback::BeyondHorizon => "beyond_horizon",
        }
    }

    /// The time, 0 for `immediate`, none where there is no payback.
    pub const fn value(&self) -> Option<f64> {
        match self {
            Payback::PaysBack(time) | Payback::PaysBackThenLoses(time) => Some(*time),
            Payback::Immediate => Some(0.0),
            Payback::Never | Payback::LosesAfter | Payback::BeyondHorizon => None,
        }
    }
}

/// Simple payback in days of an investment `invest` (money now) by `saving` (money a year, even inside the year).
///
/// `year_days` days that make a year: [`CALENDAR_DAYS`], or the working days. Source: definition.
///
/// ```
/// use pinfilm::economics::{CALENDAR_DAYS, Payback, payback_days};
/// assert_eq!(payback_days(1000.0, 500.0, CALENDAR_DAYS), Payback::PaysBack(730.0));
/// assert_eq!(payback_days(1000.0, 0.0, CALENDAR_DAYS), Payback::Never);
/// ```
pub fn payback_days(invest: f64, saving: f64, year_days: f64) -> Payback {
    if invest > 0.0 {
        if saving > 0.0 { Payback::PaysBack(invest / saving * year_days) } else { Payback::Never }
    } else if saving >= 0.0 {
        Payback::Immediate
    } else if invest == 0.0 {
        Payback::Never
    } else {
        Payback::LosesAfter
    }
}

/// Payback in years of `flows` (now, then year ends; even inside a year).
pub fn payback_years(flows: &[f64]) -> Payback {
    discounted_payback_years(0.0, flows)
}

/// Payback in years of `flows` discounted at `rate` a year (> −1).
///
/// Whether a payback that is not reached is `never` or only `beyond_horizon` is judged by the undiscounted flows. Source:
/// definition; linear inside the year, as in Ross, Westerfield and Jaffe, Corporate Finance.
pub fn discounted_payback_years(rate: f64, flows: &[f64]) -> Payback {
    let Some((&first, later)) = flows.split_first() else { return Payback::Immediate };
    let factor = 1.0 / (1.0 + rate);
    let discounted = || {
        later.iter().scan(1.0, move |power, flow| {
            *power *= factor;
            Some(flow * *power)
        })
    };
    // sums that differ from nothing by their own rounding are nothing: −0.3 + 0.1 + 0.1 + 0.1 has paid back
    let rounding = 4.0 * f64::EPSILON * (first.abs() + discounted().map(f64::abs).sum::<f64>());
    let below = |sum: f64| sum < -rounding;

    let mut sum = first;
    let mut reached = None;
    let mut dips = false;
    for (year, flow) in discounted().enumerate() {
        let before = sum;
        sum += flow;
        if below(before) && !below(sum) && reached.is_none() {
            reached = Some(year as f64 + (-before / flow).min(1.0));
        } else if below(sum) && (reached.is_some() || !below(first)) {
            dips = true;
        }
    }
    match (below(first), reached, dips) {
        (false, _, false) => Payback::Immediate,
        (false, _, true) => Payback::LosesAfter,
        (true, Some(years), false) => Payback::PaysBack(years),
        (true, Some(years), true) => Payback::PaysBackThenLoses(years),
        (true, None, _) if later.iter().sum::<f64>() <= 0.0 => Payback::Never,
        (true, None, _) => Payback::BeyondHorizon,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::economics::npv;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn even_savings_pay_back_when_the_sum_does(invest in 1.0..1e4f64, saving in 1.0..1e4f64) {
            let years = invest / saving;
            let mut flows = vec![saving; 60];
            flows.insert(0, -invest);
            match payback_years(&flows) {
                Payback::PaysBack(ours) => prop_assert!((ours / years - 1.0).abs() < 1e-9),
                other => prop_assert!(other == Payback::BeyondHorizon && years > 60.0 * (1.0 - 1e-9)),
            }
            let days = payback_days(invest, saving, 220.0).value().unwrap();
            prop_assert!((days / 220.0 / years - 1.0).abs() < 1e-14);
        }

        #[test]
        fn discounting_delays(flows in prop::collection::vec(1.0..100.0f64, 3..20), invest in 1.0..200.0f64, rate in 0.0..0.5f64) {
            let mut all = flows.clone();
            all.insert(0, -invest);
            let (simple, discounted) = (payback_years(&all), discounted_payback_years(rate, &all));
            if let Some(years) = discounted.value() {
                prop_assert!(simple.value().unwrap() <= years + 1e-9);
                let whole = years.ceil() as usize;
                prop_assert!(npv(rate, &all[..=whole]) >= -1e-9);
            } else {
                prop_assert!(npv(rate, &all) < 0.0);
            }
        }
    }

    #[test]
    fn rounding_is_not_a_debt() {
        let Payback::PaysBack(years) = payback_years(&[-0.3, 0.1, 0.1, 0.1]) else { panic!() };
        assert!((years - 3.0).abs() < 1e-12);
        assert_eq!(payback_years(&[0.3, -0.1, -0.1, -0.1]), Payback::Immediate);
    }

    #[test]
    fn nothing_and_late_flows() {
        assert_eq!(payback_years(&[]), Payback::Immediate);
        assert_eq!(payback_years(&[-1.0]), Payback::Never);
        assert_eq!(payback_years(&[-100.0, 0.0, 0.0, 200.0]), Payback::PaysBack(2.5));
        // undiscounted it pays, so that a longer look might: not never
        assert_eq!(discounted_payback_years(0.5, &[-100.0, 60.0, 60.0]), Payback::BeyondHorizon);
    }
}
