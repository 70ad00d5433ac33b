//! Internal rate of return: all rates at which the net present value is nothing, and how much that says.

use super::present_value::npv;
use crate::numeric::root;

/// What the internal rate of return is worth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum IrrStatus {
    /// No rate makes the net present value nothing.
    None,
    /// One rate does.
    Unique,
    /// More than one does: no decision value; look at the curve.
    Several,
    /// The one that does lies below −99.9 % or above about a million per cent.
    OutOfRange,
}

impl IrrStatus {
    /// The status as it is printed and compared.
    pub const fn as_str(self) -> &'static str {
        match self {
            IrrStatus::None => "none",
            IrrStatus::Unique => "unique",
            IrrStatus::Several => "several",
            IrrStatus::OutOfRange => "out_of_range",
        }
    }
}

/// Internal rate of return with all its roots.
#[derive(Debug, Clone, PartialEq)]
pub struct Irr {
    /// What the value is worth.
    pub status: IrrStatus,
    /// The rate a year; with several, the root nearest zero.
    pub value: Option<f64>,
    /// All roots, rising.
    pub roots: Vec<f64>,
}

/// Bounds of ln(1 + rate) in the search for a unique root.
const LN_RATE: (f64, f64) = (-6.9, 9.2);
/// Roots closer than this (relative) in the discount factor are one root of even multiplicity, split by rounding.
const SAME: f64 = 1e-6;

/// Internal rate of return of `flows` (now, then year ends).
///
/// One change of sign: the unique root by Descartes' rule of signs. More: every positive root of the polynomial in the
/// discount factor, see [`irr_roots`].
///
/// ```
/// use pinfilm::economics::{IrrStatus, irr};
/// let two = irr(&[-100.0, 230.0, -132.0]);
/// assert_eq!(two.status, IrrStatus::Several);
/// assert!((two.roots[0] - 0.1).abs() < 1e-12 && (two.roots[1] - 0.2).abs() < 1e-12);
/// ```
pub fn irr(flows: &[f64]) -> Irr {
    let flows = without_outer_zeros(flows);
    let changes = sign_changes(flows);
    let roots = match changes {
        0 => Vec::new(),
        1 => match unique_root(flows) {
            Some(rate) => vec![rate],
            None => return Irr { status: IrrStatus::OutOfRange, value: None, roots: Vec::new() },
        },
        _ => irr_roots(flows),
    };
    let status = match roots.len() {
        0 => IrrStatus::None,
        1 => IrrStatus::Unique,
        _ => IrrStatus::Several,
    };
    let value = roots.iter().copied().min_by(|a, b| a.abs().total_cmp(&b.abs()));
    Irr { status, value, roots }
}

/// All rates above −1 at which the net present value of `flows` is nothing, rising; a multiple root once.
///
/// In the discount factor x = 1/(1 + rate) the value is a polynomial. The roots of each derivative split the axis into
/// pieces on which the one before it is monotone, so each piece holds one root at most and Brent finds it. Rates below
/// zero are found in 1/x with the flows reversed, which keeps all powers at or below one.
pub fn irr_roots(flows: &[f64]) -> Vec<f64> {
    let flows = without_outer_zeros(flows);
    if flows.len() < 2 {
        return Vec::new();
    }
    let reversed: Vec<f64> = flows.iter().rev().copied().collect();
    let gains = roots_in_unit_interval(flows).into_iter().map(|x| (1.0 - x) / x);
    let losses = roots_in_unit_interval(&reversed).into_iter().map(|x| x - 1.0);
    let mut rates: Vec<f64> = gains.chain(losses).filter(|rate| rate.is_finite()).collect();
    rates.sort_by(f64::total_cmp);
    rates.dedup_by(|b, a| (*b - *a).abs() <= SAME * (1.0 + *a));
    rates
}

/// Modified internal rate of return: outlays discounted at `finance_rate`, receipts compounded at `reinvest_rate`.
///
/// A single rate where the internal one has several; none without both an outlay and a receipt. Source: definition, e.g.
/// Brealey, Myers and Allen, Principles of Corporate Finance (from memory).
pub fn modified_irr(flows: &[f64], finance_rate: f64, reinvest_rate: f64) -> Option<f64> {
    let part = |keep: fn(f64) -> f64, rate| npv(rate, &flows.iter().map(|&flow| keep(flow)).collect::<Vec<_>>());
    let outlays = part(|flow| flow.min(0.0), finance_rate);
    let receipts = part(|flow| flow.max(0.0), reinvest_rate);
    if outlays >= 0.0 || receipts <= 0.0 {
        return None;
    }
    let years = (flows.len() - 1) as f64;
    Some((receipts / -outlays).powf(1.0 / years) * (1.0 + reinvest_rate) - 1.0)
}

fn without_outer_zeros(flows: &[f64]) -> &[f64] {
    let Some(first) = flows.iter().position(|&flow| flow != 0.0) else { return &[] };
    let last = flows.iter().rposition(|&flow| flow != 0.0).unwrap_or(first);
    &flows[first..=last]
}

fn sign_changes(flows: &[f64]) -> usize {
    let signs: Vec<bool> = flows.iter().filter(|&&flow| flow != 0.0).map(|&flow| flow > 0.0).collect();
    signs.windows(2).filter(|pair| pair[0] != pair[1]).count()
}

fn unique_root(flows: &[f64]) -> Option<f64> {
    let (low, high) = LN_RATE;
    // scaled so that the largest power is one, whatever the sign of the rate
    let value = |ln_rate: f64| {
        let factor = (-ln_rate.abs()).exp();
        let horner = |sum: f64, flow: &f64| sum * factor + flow;
        if ln_rate >= 0.0 { flows.iter().rev().fold(0.0, horner) } else { flows.iter().fold(0.0, horner) }
    };
    if (value(low) < 0.0) == (value(high) < 0.0) {
        return None;
    }
    root("rate of return", low, high, 1e-15, 1e-16, value).ok().map(f64::exp_m1)
}

/// Polynomial at `x`, lowest power first, and the sum of the sizes of its terms: what rounding is measured by.
fn polynomial(coefficients: &[f64], x: f64) -> (f64, f64) {
    coefficients.iter().rev().fold((0.0, 0.0), |(value, size), c| (value * x + c, size * x + c.abs()))
}

/// Roots in (0, 1] of a polynomial, lowest power first.
fn roots_in_unit_interval(coefficients: &[f64]) -> Vec<f64> {
    // a root at nothing would hide the sign of the first piece; the scale keeps high derivatives finite
    let coefficients = without_outer_zeros(coefficients);
    if coefficients.len() < 2 {
        return Vec::new();
    }
    let degree = (coefficients.len() - 1) as f64;
    let derivative: Vec<f64> =
        coefficients.iter().enumerate().skip(1).map(|(power, c)| c * (power as f64 / degree)).collect();
    let mut pieces = roots_in_unit_interval(&derivative);
    pieces.push(1.0);
    // a turning point that touches zero within rounding is a root of even multiplicity
    let sign = |x: f64| {
        let (value, size) = polynomial(coefficients, x);
        if value.abs() <= 16.0 * coefficients.len() as f64 * f64::EPSILON * size { 0.0 } else { value.signum() }
    };
    let mut roots: Vec<f64> = Vec::new();
    let (mut low, mut low_sign) = (0.0, sign(0.0));
    for high in pieces {
        let high_sign = sign(high);
        if high_sign == 0.0 {
            roots.push(high);
        } else if low_sign * high_sign < 0.0
            && let Ok(x) = root("discount factor", low, high, 1e-15, 1e-300, |x| polynomial(coefficients, x).0)
        {
            roots.push(x);
        }
        (low, low_sign) = (high, high_sign);
    }
    roots.dedup_by(|b, a| *b - *a <= SAME * *a);
    roots
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Flows whose roots are the given rates.
    fn flows_of(rates: &[f64]) -> Vec<f64> {
        rates.iter().fold(vec![-1.0], |flows, rate| {
            let mut next = vec![0.0; flows.len() + 1];
            for (i, flow) in flows.iter().enumerate() {
                next[i] += flow;
                next[i + 1] -= flow * (1.0 + rate);
            }
            next
        })
    }

    proptest! {
        #[test]
        fn finds_every_rate(mut rates in prop::collection::vec(-0.7..3.0f64, 1..5)) {
            rates.sort_by(f64::total_cmp);
            prop_assume!(rates.windows(2).all(|pair| pair[1] - pair[0] > 0.05));
            let found = irr(&flows_of(&rates));
            prop_assert_eq!(found.roots.len(), rates.len());
            for (ours, rate) in found.roots.iter().zip(&rates) {
                prop_assert!((ours - rate).abs() < 1e-7, "{} {}", ours, rate);
            }
            let nearest = rates.iter().map(|r| r.abs()).fold(f64::INFINITY, f64::min);
            prop_assert!((found.value.unwrap().abs() - nearest).abs() < 1e-7);
        }

        #[test]
        fn an_ordinary_investment_has_one(savings in prop::collection::vec(1.0..100.0f64, 1..30), invest in 1.0..2000.0f64) {
            let mut flows = savings;
            flows.insert(0, -invest);
            let found = irr(&flows);
            prop_assert_eq!(found.status, IrrStatus::Unique);
            prop_assert!(npv(found.value.unwrap(), &flows).abs() < 1e-9 * invest);
            let all = irr_roots(&flows);
            prop_assert!(all.len() == 1 && (all[0] - found.value.unwrap()).abs() < 1e-9 * (1.0 + all[0]));
        }
    }

    #[test]
    fn touching_roots_count_once() {
        for rates in [vec![0.1, 0.1], vec![0.0, 0.0], vec![-0.3, -0.3], vec![0.2, 0.2, 0.2]] {
            let found = irr(&flows_of(&rates));
            assert_eq!(found.status, IrrStatus::Unique, "{rates:?} {found:?}");
            assert!((found.value.unwrap() - rates[0]).abs() < 1e-4);
        }
    }

    #[test]
    fn statuses() {
        assert_eq!(irr(&[]).status, IrrStatus::None);
        assert_eq!(irr(&[0.0, 5.0, 0.0]).status, IrrStatus::None);
        assert_eq!(irr(&[-1.0, -2.0]).status, IrrStatus::None);
        assert_eq!(irr(&[100.0, -100.0, 100.0]).status, IrrStatus::None);
        assert_eq!(irr(&[-1.0, 1e-9]).status, IrrStatus::OutOfRange);
        assert_eq!(irr(&[-1.0, 1e9]).status, IrrStatus::OutOfRange);
        assert_eq!(irr(&[0.0, -100.0, 110.0, 0.0]).value.map(|r| (r * 1e12).round()), Some(1e11));
        let long = irr(&[&[-1.0][..], &[2.0; 30]].concat());
        assert!((long.value.unwrap() - 2.0).abs() < 1e-9);
    }

    #[test]
    fn years_without_flows_hide_no_rate() {
        // one unit of x is two years: the rates are those of the flows without the gaps, halved
        let found = irr(&[-100.0, 0.0, 230.0, 0.0, -132.0]);
        assert_eq!(found.roots.len(), 2);
        for (ours, biennial) in found.roots.iter().zip([1.1f64, 1.2]) {
            assert!((ours - (biennial.sqrt() - 1.0)).abs() < 1e-10);
        }
        // the derivative of −1 + 6x² − 8x³ has its first root at nothing and its second at one half
        let rates = irr_roots(&[-1.0, 0.0, 6.0, -8.0]);
        let value = |rate: f64| npv(rate, &[-1.0, 0.0, 6.0, -8.0]);
        assert!(rates.iter().all(|&rate| value(rate).abs() < 1e-9));
    }

    #[test]
    fn three_rates_of_a_doubtful_project() {
        let found = irr(&[-5.0, 10.5, 1.0, -8.0, 1.0]);
        for (ours, printed) in found.roots.iter().zip([-0.870201, 0.088598, 0.709560]) {
            assert!((ours - printed).abs() < 1e-6);
        }
        assert_eq!((found.roots.len(), found.status), (3, IrrStatus::Several));
        assert_eq!(found.value, Some(found.roots[1]));
    }

    #[test]
    fn modified_rate_of_one_outlay_and_one_receipt() {
        assert!((modified_irr(&[-100.0, 0.0, 121.0], 0.3, 0.4).unwrap() - 0.1).abs() < 1e-12);
        assert_eq!(modified_irr(&[100.0, 121.0], 0.1, 0.1), None);
        assert_eq!(modified_irr(&[], 0.1, 0.1), None);
    }
}
