//! Whether walkers have forgotten where they began, and how many independent draws theirs are worth.

/// Split R̂ of one parameter: how much the halves of the chains still differ; 1 when they agree.
///
/// Chains of equal length, at least 4. Source: Gelman, Carlin, Stern, Dunson, Vehtari and Rubin, Bayesian Data Analysis
/// (2013), section 11.4.
pub fn split_r_hat(chains: &[Vec<f64>]) -> f64 {
    let halves = split(chains);
    let (within, all) = variances(&halves);
    if within > 0.0 { (all / within).sqrt() } else { 1.0 }
}

/// Effective number of independent draws in the chains of one parameter.
///
/// Source: the same, section 11.5, with Geyer's initial monotone sequence, Statistical Science 7 (1992) 473.
pub fn effective_draws(chains: &[Vec<f64>]) -> f64 {
    let halves = split(chains);
    let (within, all) = variances(&halves);
    let (count, length) = (halves.len(), halves[0].len());
    let draws = (count * length) as f64;
    if within <= 0.0 {
        return draws;
    }
    let means: Vec<f64> = halves.iter().map(|half| mean(half)).collect();
    let correlation = |lag: usize| {
        let of = |(half, mean): (&&[f64], &f64)| {
            let pairs = half.iter().zip(&half[lag..]);
            pairs.map(|(a, b)| (a - mean) * (b - mean)).sum::<f64>() / (length - 1) as f64
        };
        let autocovariance = halves.iter().zip(&means).map(of).sum::<f64>() / count as f64;
        1.0 - (within - autocovariance) / all
    };
    let (mut time, mut before) = (-1.0, f64::INFINITY);
    for lag in (0..length - 1).step_by(2) {
        let pair = (correlation(lag) + correlation(lag + 1)).min(before);
        if pair <= 0.0 {
            break;
        }
        time += 2.0 * pair;
        before = pair;
    }
    // a time below 1 is noise of a few draws
    draws / time.max(1.0 / draws.log10())
}

fn split(chains: &[Vec<f64>]) -> Vec<&[f64]> {
    let half = |chain: &Vec<f64>| chain.len() / 2;
    chains.iter().flat_map(|chain| [&chain[..half(chain)], &chain[chain.len() - half(chain)..]]).collect()
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

/// Variance within the halves, and that of all draws estimated from within and between.
fn variances(halves: &[&[f64]]) -> (f64, f64) {
    let variance = |values: &[f64]| {
        let mean = mean(values);
        values.iter().map(|x| (x - mean).powi(2)).sum::<f64>() / (values.len() - 1) as f64
    };
    let length = halves[0].len() as f64;
    let within = mean(&halves.iter().map(|half| variance(half)).collect::<Vec<_>>());
    let between = variance(&halves.iter().map(|half| mean(half)).collect::<Vec<_>>());
    (within, within * (length - 1.0) / length + between)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::study::{normal_quantile, philox4x32, unit};

    fn noise(chain: u32, step: u32) -> f64 {
        normal_quantile(unit(philox4x32([chain, step, 0, 0], [3, 0])[0]))
    }

    /// AR(1) with ρ: n (1 − ρ)/(1 + ρ) effective draws.
    #[test]
    fn autoregressive_chains() {
        for rho in [0.0, 0.5, 0.9_f64] {
            let chain = |c| {
                let mut x = noise(c, 0);
                (1..4001)
                    .map(|step| {
                        x = rho * x + (1.0 - rho * rho).sqrt() * noise(c, step);
                        x
                    })
                    .collect()
            };
            let chains: Vec<Vec<f64>> = (0..4).map(chain).collect();
            let known = 16000.0 * (1.0 - rho) / (1.0 + rho);
            assert!((effective_draws(&chains) / known - 1.0).abs() < 0.15, "{rho} {}", effective_draws(&chains));
            assert!(split_r_hat(&chains) < 1.01);
        }
    }

    #[test]
    fn a_chain_that_is_elsewhere_is_seen() {
        let chains: Vec<Vec<f64>> =
            (0..4).map(|c| (0..500).map(|s| noise(c, s) + f64::from(c == 2)).collect()).collect();
        assert!(split_r_hat(&chains) > 1.05);
        let drift: Vec<Vec<f64>> =
            (0..4).map(|c| (0..500).map(|s| noise(c, s) + f64::from(s) / 250.0).collect()).collect();
        assert!(split_r_hat(&drift) > 1.05);
        assert_eq!(split_r_hat(&[vec![1.0; 10], vec![1.0; 10]]), 1.0);
    }
}
