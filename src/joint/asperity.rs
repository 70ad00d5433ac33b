//! Rough surfaces: how many asperity tips of one reach the other, and how hard they press.

use statrs::function::erf::erfc;
use std::f64::consts::{FRAC_1_SQRT_2, PI};

/// 1/√(2π), the height of the normal density.
const NORMAL: f64 = 0.398_942_280_401_432_7;

/// Combined roughness of two surfaces (m): root of the sum of squares of their Rq.
///
/// Source: Hamrock, Fundamentals of Fluid Film Lubrication (1994), film parameter.
pub fn combined_roughness(rq_1: f64, rq_2: f64) -> f64 {
    rq_1.hypot(rq_2)
}

/// Integral of Greenwood and Tripp, F_n(H) = (1/√(2π)) ∫_H^∞ (s − H)^n exp(−s²/2) ds, at any height ratio H.
///
/// `order` n > −1. Closed form for order 2 up to H = 4, where it starts to cancel; otherwise trapezoids after a double
/// exponential substitution, to about 12 digits. Source: Greenwood and Tripp (1970).
///
/// ```
/// use pinfilm::joint::asperity_integral;
/// assert!((asperity_integral(0.0, 2.5) - 0.6166342).abs() < 1e-7);
/// ```
pub fn asperity_integral(height_ratio: f64, order: f64) -> f64 {
    if order == 2.0 && height_ratio <= 4.0 {
        let h = height_ratio;
        return 0.5 * (1.0 + h * h) * erfc(h * FRAC_1_SQRT_2) - h * NORMAL * (-0.5 * h * h).exp();
    }
    // u = s − H = scale · exp(t − exp(−t)) takes the whole half line and the root at its start; the integrand is
    // about one wide in s, so far below the surface the steps shrink with its place u = −H
    let scale = if height_ratio > 1.0 { 1.0 / height_ratio } else { 1.0 };
    let step = 1.0 / (16.0 + 4.0 * (-height_ratio).max(0.0));
    let (from, to) = (-5.0, (60.0 + (-height_ratio).max(0.0)).ln() + 1.0);
    let count = ((to - from) / step) as u32;
    let mut sum = 0.0;
    for i in 0..=count {
        let t = from + f64::from(i) * step;
        let decay = (-t).exp();
        let u = scale * (t - decay).exp();
        let s = u + height_ratio;
        sum += u.powf(order) * (-0.5 * s * s).exp() * u * (1.0 + decay);
    }
    NORMAL * step * sum
}

/// Stiffness K (Pa) of rough surfaces: asperities press with K F_5/2(H).
///
/// `density_product` σβη (about 0.05), `slope` σ/β (about 0.01), `contact_modulus` E* Pa
/// (half the plane-strain modulus for equal steels). Known to a factor of ten; friction moves by less than 2 % with it.
/// Source: Greenwood and Tripp (1970): (16√2 π/15) (σβη)² E* √(σ/β).
pub fn asperity_stiffness(density_product: f64, slope: f64, contact_modulus: f64) -> f64 {
    16.0 * 2f64.sqrt() * PI / 15.0 * density_product * density_product * contact_modulus * slope.sqrt()
}

/// ln F_5/2 on H = 0..6 as a Chebyshev series in (H − 3)/3. Own fit to the integral; relative error 2e-12.
const SERIES: [f64; 17] = [
    -10.51307257768847,
    -11.78226607037335,
    -1.8293763116813,
    -0.0668237471601808,
    0.009096582501271648,
    -0.0008314051130435976,
    -1.565182627069436e-5,
    2.618323954679162e-5,
    -5.894913003966666e-6,
    5.784646095299146e-7,
    7.200393985324176e-8,
    -4.277529007482627e-8,
    8.791075800116881e-9,
    -6.126532618086223e-10,
    -2.168972353037591e-10,
    9.016631007684216e-11,
    -1.612320023539211e-11,
];

/// ln F_5/2 beyond H = 6: what the leading term leaves, a Chebyshev series in 72/H² − 1. Own fit, 1e-11.
const TAIL: [f64; 11] = [
    -0.0998446707727,
    -0.0969356286363,
    0.00276321952359,
    -0.000136296721169,
    8.79081154903e-6,
    -6.71180938862e-7,
    5.78086619365e-8,
    -5.4647453912e-9,
    5.57242982459e-10,
    -6.05768872261e-11,
    6.9613255009e-12,
];

/// ln[Γ(7/2)/√(2π)], of the leading term of the tail.
const TAIL_START: f64 = 0.282_035_069_142_401_5;

/// Coefficients of powers from those of a Chebyshev series: powers pair up in the processor, Clenshaw's sum does not.
const fn powers<const N: usize>(series: [f64; N]) -> [f64; N] {
    let mut sum = [0.0; N];
    let mut before = [0.0; N];
    let mut now = [0.0; N];
    before[0] = 1.0;
    now[1] = 1.0;
    let mut k = 0;
    while k < N {
        let mut i = 0;
        while i < N {
            sum[i] += series[k] * before[i];
            i += 1;
        }
        let mut next = [0.0; N];
        let mut i = 0;
        while i < N {
            next[i] = if i == 0 { -before[i] } else { 2.0 * now[i - 1] - before[i] };
            i += 1;
        }
        before = now;
        now = next;
        k += 1;
    }
    sum
}

const SERIES_POWERS: [f64; 17] = powers(SERIES);
const TAIL_POWERS: [f64; 11] = powers(TAIL);

/// Value and slope of a polynomial, even and odd powers side by side.
fn polynomial<const N: usize>(coefficients: &[f64; N], t: f64) -> (f64, f64) {
    let square = t * t;
    let (mut even, mut odd, mut even_slope, mut odd_slope) = (0.0, 0.0, 0.0, 0.0);
    let mut i = N - 1; // N is odd: the highest power is even
    loop {
        even_slope = even_slope * square + even;
        even = even * square + coefficients[i];
        if i == 0 {
            break;
        }
        odd_slope = odd_slope * square + odd;
        odd = odd * square + coefficients[i - 1];
        i -= 2;
    }
    (even + t * odd, 2.0 * t * even_slope + odd + 2.0 * square * odd_slope)
}

/// ln F_5/2(H) and its slope, for H ≥ 0. Source: own fit to Greenwood and Tripp's integral, relative error 1e-11.
pub(super) fn log_asperity_integral(height_ratio: f64) -> (f64, f64) {
    if height_ratio <= 6.0 {
        let (value, slope) = polynomial(&SERIES_POWERS, (height_ratio - 3.0) / 3.0);
        (value, slope / 3.0)
    } else {
        let h = height_ratio;
        let z = 36.0 / (h * h);
        let (value, slope) = polynomial(&TAIL_POWERS, 2.0 * z - 1.0);
        (TAIL_START - 0.5 * h * h - 3.5 * h.ln() + value, -h - 3.5 / h - 4.0 * z / h * slope)
    }
}

/// Height at which F_5/2 has a logarithm, H from 0 up, within 0.01: a start for a root.
pub(super) fn height_of_log_integral(log_integral: f64) -> f64 {
    let s = (LOG_AT_ZERO - log_integral).max(0.0).sqrt();
    s * (s * (0.659197 + s * (-0.126893 + s * 0.00901986)) - 0.00853673) - 0.00149474
}

/// F_5/2(0) and its logarithm.
pub(super) const AT_ZERO: f64 = 0.616_634_218_996_843_9;
const LOG_AT_ZERO: f64 = -0.483_479_268_805_199_3;
/// F_5/2 where the mean planes overlap by six times the roughness: beyond it there are no asperities left to speak of.
pub(super) const DEEPEST: f64 = 92.766_303_514_607_8;

/// Mean gap (in roughnesses) between a rough surface and a plane H above its mean: H Φ(H) + φ(H), and its slope Φ(H).
///
/// Source: mean of the positive part of a normally distributed gap; exact.
pub(super) fn mean_gap(height_ratio: f64) -> (f64, f64) {
    let below = 1.0 - 0.5 * erfc(height_ratio * FRAC_1_SQRT_2);
    (height_ratio * below + NORMAL * (-0.5 * height_ratio * height_ratio).exp(), below)
}

/// Mean gap where the mean planes touch: the valleys do not close further.
pub(super) const CLOSED_GAP: f64 = NORMAL;

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn close(a: f64, b: f64, relative: f64) -> bool {
        (a - b).abs() <= relative * b.abs()
    }

    #[test]
    fn integrals_of_order_five_halves() {
        for (h, printed, digits) in [
            (-1.0, 2.755_501_867, 1e-9),
            (-3.0, 18.811_329_83, 1e-9),
            (4.5, 1.994_588_388e-7, 1e-9),
            (30.0, 3.282_961_968e-201, 1e-9),
        ] {
            assert!(close(asperity_integral(h, 2.5), printed, digits), "{h} {}", asperity_integral(h, 2.5));
        }
        assert!(close(asperity_integral(-6.0, 2.5), DEEPEST, 1e-12));
        assert!(close(asperity_integral(0.0, 2.5), AT_ZERO, 1e-12));
        assert!(close(AT_ZERO.ln(), LOG_AT_ZERO, 1e-15));
        assert!((log_asperity_integral(6.0).0 - log_asperity_integral(6.0 + 1e-14).0).abs() < 2e-11);
    }

    #[test]
    fn stiffness_of_typical_surfaces() {
        let modulus = super::super::STEEL.plane_strain_modulus() / 2.0;
        assert!(close(asperity_stiffness(0.05, 0.01, modulus), 1.341_002_030e8, 1e-9));
    }

    proptest! {
        #[test]
        fn quadrature_meets_the_closed_forms(h in -30.0..20.0_f64) {
            // the library's erfc is good to ten digits
            let tail = 0.5 * erfc(h * FRAC_1_SQRT_2);
            prop_assert!(close(asperity_integral(h, 0.0), tail, 5e-10));
            if h < 3.0 {
                let first = NORMAL * (-0.5 * h * h).exp() - h * tail;
                prop_assert!(close(asperity_integral(h, 1.0), first, 1e-8));
                prop_assert!(close(asperity_integral(h, 2.0), asperity_integral(h, 2.0 + 1e-13), 1e-7));
            }
        }

        #[test]
        fn orders_are_chained(h in -8.0..12.0_f64, n in 1.0..4.0_f64) {
            // F_{n+1} = n F_{n−1} − H F_n
            let f = |order| asperity_integral(h, order);
            let scale = n * f(n - 1.0) + h.abs() * f(n);
            prop_assert!((f(n + 1.0) - n * f(n - 1.0) + h * f(n)).abs() < 1e-10 * scale);
        }

        #[test]
        fn fits_follow_the_integral(h in 0.0..35.0_f64) {
            let (ln, slope) = log_asperity_integral(h);
            prop_assert!(close(ln.exp(), asperity_integral(h, 2.5), 5e-11));
            prop_assert!(close(slope, -2.5 * asperity_integral(h, 1.5) / asperity_integral(h, 2.5), 1e-9));
            if h < 6.0 {
                prop_assert!((height_of_log_integral(ln) - h).abs() < 0.02);
            }
        }

        #[test]
        fn gap_is_the_first_integral_of_the_other_side(h in -5.0..5.0_f64) {
            prop_assert!(close(mean_gap(h).0, asperity_integral(-h, 1.0), 1e-8));
        }
    }
}
