//! Means round the loop of something that depends on the temperature of the chain.
//!
//! In each section the chain approaches its surroundings exponentially, so a rate that rises steeply with temperature
//! must be averaged over the path, never taken at the mean temperature.

use crate::numeric::GAUSS_LEGENDRE_16;

/// Beyond so many time constants the chain has the temperature of its surroundings.
const SETTLED: f64 = 40.0;

/// Means over `time` of the values of `f` along th(t) = `surroundings` + (`start` - `surroundings`) exp(-t/`time_constant`).
///
/// `start`, `surroundings` in the unit `f` takes; `time`, `time_constant` s, >= 0. Gauss-Legendre with 16 points on equal
/// panels of at most two time constants; several values share the temperatures. Source: quadrature, see
/// [`GAUSS_LEGENDRE_16`].
pub fn means_over_exponential<const N: usize>(
    start: f64,
    surroundings: f64,
    time: f64,
    time_constant: f64,
    mut f: impl FnMut(f64) -> [f64; N],
) -> [f64; N] {
    if start == surroundings || time <= 0.0 {
        return f(start);
    }
    if time_constant <= 0.0 {
        return f(surroundings);
    }
    let moving = time.min(SETTLED * time_constant);
    let panels = (moving / (2.0 * time_constant)).ceil().max(1.0);
    let half = 0.5 * moving / panels;
    let mut sum = [0.0; N];
    for panel in 0..panels as u32 {
        let middle = (2.0 * f64::from(panel) + 1.0) * half;
        for (node, weight) in GAUSS_LEGENDRE_16 {
            for t in [middle - half * node, middle + half * node] {
                let values = f(surroundings + (start - surroundings) * (-t / time_constant).exp());
                for (total, value) in sum.iter_mut().zip(values) {
                    *total += weight * half * value;
                }
            }
        }
    }
    if moving < time {
        for (total, value) in sum.iter_mut().zip(f(surroundings)) {
            *total += (time - moving) * value;
        }
    }
    sum.map(|total| total / time)
}

/// Mean over `time` of `f` along an exponential approach; see [`means_over_exponential`].
pub fn mean_over_exponential(
    start: f64,
    surroundings: f64,
    time: f64,
    time_constant: f64,
    mut f: impl FnMut(f64) -> f64,
) -> f64 {
    means_over_exponential(start, surroundings, time, time_constant, |temperature| [f(temperature)])[0]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_temperature_itself_has_a_closed_mean() {
        for time in [1.0, 400.0, 6000.0, 1e6] {
            let x: f64 = time / 500.0;
            let exact = 200.0 + (60.0 - 200.0) * -(-x).exp_m1() / x;
            let ours = mean_over_exponential(60.0, 200.0, time, 500.0, |th| th);
            assert!((ours - exact).abs() < 1e-10, "{time}: {ours} {exact}");
        }
    }

    #[test]
    fn no_time_and_no_inertia() {
        assert_eq!(mean_over_exponential(60.0, 200.0, 0.0, 500.0, |th| th), 60.0);
        assert_eq!(mean_over_exponential(60.0, 200.0, 10.0, 0.0, |th| th), 200.0);
        assert_eq!(means_over_exponential(60.0, 60.0, 10.0, 5.0, |th| [th, th * th]), [60.0, 3600.0]);
    }
}
