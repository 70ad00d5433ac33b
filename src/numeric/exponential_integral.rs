//! The exponential integrals E1(x) = ∫ exp(-t)/t dt from x to infinity, and Ei, to about 1e-14, in well under a microsecond.
//!
//! statrs has one, but it iterates to a tolerance it cannot always meet and returns nothing then.
//! Source: Abramowitz & Stegun 1964, 5.1.11 (series) and 5.1.22 (continued fraction).

/// Euler's constant (Abramowitz & Stegun 1964, 6.1.3).
const EULER: f64 = 0.577215664901532860606512090082402431;
/// Up to here the series is used.
const SERIES: f64 = 2.0;
/// Terms of the series: 2^26/(26 · 26!) is 6e-21.
const TERMS: usize = 26;

/// (-1)^(n+1)/(n n!) for n = 1, 2, …
const COEFFICIENTS: [f64; TERMS] = {
    let mut all = [0.0; TERMS];
    let (mut n, mut factor) = (1, 1.0);
    while n <= TERMS {
        all[n - 1] = factor / n as f64;
        n += 1;
        factor = -factor / n as f64;
    }
    all
};

/// Ein(x) = ∫ (1 - exp(-t))/t dt from 0 to x, for 0 <= x <= 2: the part of E1 that has no logarithm.
pub fn entire_part(x: f64) -> f64 {
    x * COEFFICIENTS.iter().rev().fold(0.0, |sum, coefficient| sum * x + coefficient)
}

/// E1(x) for x > 0.
pub fn exponential_integral(x: f64) -> f64 {
    from_logarithm(x, x.ln())
}

/// E1(x) from x and ln x, for an x so small that it may have become 0.
pub fn from_logarithm(x: f64, ln_x: f64) -> f64 {
    if x <= SERIES {
        return entire_part(x) - EULER - ln_x;
    }
    // Convergents of the even form of the fraction, without divisions; 90/x + 6 of them reach the last digit.
    let terms = (90.0 / x) as u32 + 6;
    let (mut p, mut p_before) = (1.0, 0.0);
    let (mut q, mut q_before) = (x + 1.0, 1.0);
    for n in 1..=terms {
        let n = f64::from(n);
        let (a, b) = (-n * n, x + 2.0 * n + 1.0);
        (p, p_before) = (b * p + a * p_before, p);
        (q, q_before) = (b * q + a * q_before, q);
    }
    (-x).exp() * p / q
}

/// Above this the asymptotic series of Ei has all its digits.
const FAR: f64 = 40.0;

/// 1/n for the series of Ei, which need at most so many terms up to [`FAR`].
const INVERSES: [f64; 180] = {
    let mut all = [0.0; 180];
    let mut n = 1;
    while n < all.len() {
        all[n] = 1.0 / n as f64;
        n += 1;
    }
    all
};

/// exp(-`scale`) Ei(x) for 0 < x <= `scale` and beyond, where Ei(x) = γ + ln x + Σ xⁿ/(n n!).
///
/// `faded` is exp(-`scale`), which callers have. Source: Abramowitz & Stegun 1964, 5.1.10 (series) and 5.1.51
/// (asymptotic).
pub fn scaled_ei(x: f64, scale: f64, faded: f64) -> f64 {
    if x > FAR {
        let (mut term, mut sum) = (1.0, 1.0);
        for n in 1..=FAR as u32 {
            term *= f64::from(n) / x;
            sum += term;
            if term < 1e-17 {
                break;
            }
        }
        return (x - scale).exp() * sum / x;
    }
    let (mut term, mut sum) = (1.0, 0.0);
    for inverse in &INVERSES[1..] {
        term *= x * inverse;
        let next = term * inverse;
        sum += next;
        if next <= 1e-17 * sum {
            break;
        }
    }
    faded * (EULER + x.ln() + sum)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn growing_integral() {
        // Abramowitz & Stegun 1964, table 5.1 (Ei, and x exp(-x) Ei at 10)
        for (x, value) in [(0.5, 0.454219904863173579), (1.0, 1.895117816355936755), (2.0, 4.954234356001890163)] {
            assert!((scaled_ei(x, 0.0, 1.0) / value - 1.0).abs() < 1e-14, "{x}");
        }
        assert!((10.0 * scaled_ei(10.0, 10.0, (-10.0_f64).exp()) - 1.131470205).abs() < 1e-9);
        assert!(
            (scaled_ei(FAR, FAR, (-FAR).exp()) / scaled_ei(FAR * (1.0 + 1e-15), FAR, (-FAR).exp()) - 1.0).abs() < 1e-13
        );
        for x in [0.3, 3.0, 17.0, 60.0f64] {
            let h = 1e-4 * x.min(1.0);
            let slope = (scaled_ei(x + h, x, (-x).exp()) - scaled_ei(x - h, x, (-x).exp())) / (2.0 * h);
            assert!((slope * x - 1.0).abs() < 1e-6, "{x}");
        }
    }

    #[test]
    fn tabulated_values() {
        // 1 - e. g. Abramowitz & Stegun 1964, table 5.1; more digits from 40-digit arithmetic
        for (x, value) in [
            (0.001, 6.33153936413614904),
            (0.1, 1.82292395841939059),
            (0.5, 0.559773594776160811),
            (1.0, 0.219383934395520274),
            (2.0, 0.0489005107080611195),
            (2.5, 0.0249149178702697399),
            (10.0, 4.15696892968532428e-06),
        ] {
            let ours = exponential_integral(x);
            assert!((ours / value - 1.0).abs() < 2e-14, "{x}: {ours} {value}");
        }
    }

    #[test]
    fn series_and_fraction_meet() {
        let below = exponential_integral(SERIES);
        let above = exponential_integral(SERIES * (1.0 + 1e-15));
        assert!((below / above - 1.0).abs() < 2e-14);
    }

    #[test]
    fn derivative_is_minus_exp_over_x() {
        for x in [0.01, 0.3, 1.9, 2.1, 5.0, 12.0, 33.0, 200.0f64] {
            let h = 1e-4 * x.min(1.0);
            let slope = (exponential_integral(x + h) - exponential_integral(x - h)) / (2.0 * h);
            assert!((slope * x * x.exp() + 1.0).abs() < 1e-6, "{x}");
        }
    }
}
