//! Rounds made by hand: intervals that vary, joints that are missed, and the waits that follow.

use crate::error::{Code, Error, Result};
use statrs::function::erf::erfc_inv;
use statrs::function::gamma::ln_gamma;

/// Rounds at gamma distributed intervals, in each of which a joint is missed with the same chance, independently.
///
/// The time between two visits at a joint is the sum of as many intervals as it takes until it is not missed: a
/// geometric mixture of gamma distributions. Common practice for renewal processes; the numbers have no source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ManualRounds {
    /// Mean interval between two rounds, s; > 0.
    pub interval: f64,
    /// Coefficient of variation of the interval, 0.01 to 5, usually 0.1 to 1.
    pub spread: f64,
    /// Chance that a round misses a joint, 0 <= miss < 1.
    pub miss: f64,
}

/// Distribution function of the time between visits at one time, its density, and the slope of that.
struct Point {
    below: f64,
    density: f64,
    slope: f64,
}

/// What the gamma laws of 1, 2, … intervals have in common at all times: ln Γ of their shapes, as far as asked for.
#[derive(Default)]
struct Shapes {
    log_gamma: Vec<f64>,
}

impl ManualRounds {
    /// Mean time between two visits at a joint, s. Exact.
    pub fn mean(&self) -> f64 {
        self.interval / (1.0 - self.miss)
    }

    /// Variance of the time between two visits, s². Exact, by Wald's identity for a geometric number of intervals.
    pub fn variance(&self) -> f64 {
        let (sure, t) = (1.0 - self.miss, self.interval);
        (self.spread * t).powi(2) / sure + t * t * self.miss / (sure * sure)
    }

    /// Chance that the next visit comes within `time` s.
    pub fn within(&self, time: f64) -> f64 {
        match time {
            f64::INFINITY => 1.0,
            time if time > 0.0 => self.at(time, &mut Shapes::default()).below,
            _ => 0.0,
        }
    }

    /// Mean of e^(−`rate`·t) over the times between visits, `rate` 1/s, >= 0: what a loss leaves, on average, of the
    /// oil by the next visit. Exact: Laplace transform of a geometric sum of gamma variables.
    pub fn laplace(&self, rate: f64) -> f64 {
        let square = self.spread * self.spread;
        let one = (-(rate * self.interval * square).ln_1p() / square).exp();
        (1.0 - self.miss) * one / (1.0 - self.miss * one)
    }

    /// Number of rounds in a time, s.
    pub fn rounds(&self, time: f64) -> f64 {
        time / self.interval
    }

    /// The mixture at `time` > 0: gamma laws of 1, 2, … intervals, weighted by the chance of so many.
    fn at(&self, time: f64, shapes: &mut Shapes) -> Point {
        let shape = 1.0 / (self.spread * self.spread);
        let scale = self.interval / shape;
        let x = time / scale;
        let ln_x = x.ln();
        let mut point = Point { below: 0.0, density: 0.0, slope: 0.0 };
        let (mut weight, mut a) = (1.0 - self.miss, shape);
        // Each law is below the one before, so a term that no longer counts ends the sum.
        for visit in 0.. {
            if shapes.log_gamma.len() == visit {
                shapes.log_gamma.push(ln_gamma(a));
            }
            let scaled = (a * ln_x - x - shapes.log_gamma[visit]).exp();
            let below = below(a, x, scaled, 1e-17 * point.below / weight);
            let density = scaled / time;
            point.below += weight * below;
            point.density += weight * density;
            point.slope += weight * density * ((a - 1.0) / time - 1.0 / scale);
            weight *= self.miss;
            if weight * below <= 1e-16 * point.below || weight < 1e-16 {
                break;
            }
            a += shape;
        }
        point
    }

    /// Time within which the next visit comes with chance `chance`, s; 0 < chance < 1.
    ///
    /// Halley's method inside a bracket on \[0, 400 intervals\], from the visit that the chance falls on. An error if
    /// the quantile is longer than that.
    pub fn quantile(&self, chance: f64) -> Result<f64> {
        let [quantile] = self.quantiles([chance])?;
        Ok(quantile)
    }

    /// Several [`Self::quantile`]s, which share what they have in common.
    pub(super) fn quantiles<const N: usize>(&self, chances: [f64; N]) -> Result<[f64; N]> {
        let (mut shapes, mut quantiles) = (Shapes::default(), [0.0; N]);
        for (quantile, chance) in quantiles.iter_mut().zip(chances) {
            *quantile = self.quantile_of(chance, &mut shapes)?;
        }
        Ok(quantiles)
    }

    fn quantile_of(&self, chance: f64, shapes: &mut Shapes) -> Result<f64> {
        let longest = 400.0 * self.interval;
        let (mut low, mut high) = (0.0_f64, longest);
        let mut time = self.guess(chance).min(longest);
        for round in 0..200 {
            let point = self.at(time, shapes);
            let off = point.below - chance;
            if off < 0.0 {
                low = time;
            } else {
                high = time;
            }
            let newton = off / point.density;
            let next = time - newton / (1.0 - 0.5 * newton * point.slope / point.density).max(0.5);
            let inside = next > low && next < high; // false for a NaN where the density vanishes
            // Third order: a step of 1e-5 leaves an error of about 1e-15.
            if inside && (next - time).abs() <= 1e-5 * time {
                return Ok(next);
            }
            // A flat stretch between two visits may throw the method about: halve now and then.
            time = if inside && round % 4 != 3 { next } else { 0.5 * (low + high) };
            if high - low <= 1e-14 * high {
                if longest - low <= 1e-12 * longest {
                    break;
                }
                return Ok(time);
            }
        }
        let message = format!(
            "one joint in {:.0} waits longer than 400 rounds of {} s: the share of missed joints is too high to call \
             this a round",
            1.0 / (1.0 - chance),
            self.interval
        );
        Err(Error::new(Code::NotConverged, "miss_share", message).number(self.miss))
    }

    /// Where the quantile about lies: in the law of the visit that the chance falls on, by Wilson & Hilferty (1931).
    fn guess(&self, chance: f64) -> f64 {
        let (mut visit, mut left, mut weight) = (1.0, chance, 1.0 - self.miss);
        while left > weight && weight > 1e-16 {
            left -= weight;
            weight *= self.miss;
            visit += 1.0;
        }
        let share = (left / weight).clamp(0.02, 0.98);
        let square = self.spread * self.spread / visit / 9.0;
        let normal = -std::f64::consts::SQRT_2 * erfc_inv(2.0 * share);
        visit * self.interval * (1.0 - square + normal * square.sqrt()).max(0.1).powi(3)
    }
}

/// Distribution function of a gamma law of shape `a` > 0 and scale 1 at `x` > 0; `scaled` is x times its density. What is
/// less than `enough` does not count.
///
/// Source: Abramowitz & Stegun 1964, 6.5.29 (series) and 6.5.31 (continued fraction, by convergents).
fn below(a: f64, x: f64, scaled: f64, enough: f64) -> f64 {
    if scaled == 0.0 {
        return f64::from(u8::from(x > a));
    }
    if x < a + 1.0 {
        let (mut term, mut sum, mut shape) = (1.0 / a, 1.0 / a, a);
        let enough = enough / scaled;
        while term > 1e-17 * sum && term > enough {
            shape += 1.0;
            term *= x / shape;
            sum += term;
        }
        return scaled * sum;
    }
    let (mut b, mut c) = (x + 1.0 - a, f64::MAX);
    let mut d = 1.0 / b;
    let mut fraction = d;
    for n in 1..100_000 {
        let n = f64::from(n);
        let factor = -n * (n - a);
        b += 2.0;
        d = 1.0 / (factor * d + b);
        c = b + factor / c;
        fraction *= c * d;
        if (c * d - 1.0).abs() < 1e-16 {
            break;
        }
    }
    1.0 - scaled * fraction
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn everyday() -> ManualRounds {
        ManualRounds { interval: 28_800.0, spread: 0.3, miss: 0.05 }
    }

    #[test]
    fn eight_hour_rounds() {
        let rounds = everyday();
        assert!((rounds.mean() - 30_315.789).abs() < 1e-3);
        assert!((rounds.variance().sqrt() - 11_159.340_5).abs() < 1e-4);
        assert!((rounds.quantile(0.5).unwrap() - 28_502.784).abs() < 1e-3);
        assert!((rounds.quantile(0.95).unwrap() - 50_623.266).abs() < 1e-3);
    }

    #[test]
    fn mean_and_laplace_are_those_of_the_distribution() {
        let rounds = ManualRounds { interval: 10.0, spread: 0.6, miss: 0.3 };
        let (step, rate) = (0.01, 0.05);
        let middle = |i: i32| (f64::from(i) + 0.5) * step;
        let tail: f64 = (0..40_000).map(|i| (1.0 - rounds.within(middle(i))) * step).sum();
        assert!((tail - rounds.mean()).abs() < 1e-4);
        let left: f64 = (0..40_000).map(|i| rounds.within(middle(i)) * rate * (-rate * middle(i)).exp() * step).sum();
        assert!((left - rounds.laplace(rate)).abs() < 1e-4);
        assert_eq!(rounds.laplace(0.0), 1.0);
    }

    #[test]
    fn a_round_that_hardly_reaches_anything_is_no_round() {
        let rounds = ManualRounds { interval: 1.0, spread: 0.3, miss: 0.995 };
        assert_eq!(rounds.quantile(0.95).unwrap_err().code, Code::NotConverged);
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..Default::default() })]
        #[test]
        fn quantiles_go_back(spread in 0.05..1.5_f64, miss in 0.0..0.6_f64, chance in 0.001..0.999_f64) {
            let rounds = ManualRounds { interval: 3600.0, spread, miss };
            let time = rounds.quantile(chance).unwrap();
            let point = rounds.at(time, &mut Shapes::default());
            // Where the distribution is flat, the time is no better known than rounding allows.
            prop_assert!((point.below - chance).abs() < 1e-13 + 1e-10 * point.density * time, "{} {}", point.below, chance);
        }
    }
}
