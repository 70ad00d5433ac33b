//! Walkers that draw from what the readings say, whatever its shape.

use super::super::draws::{key, philox4x32, unit};
use super::super::progress::{Progress, report};
use super::diagnostics::{effective_draws, split_r_hat};
use super::fit::Fit;
use super::problem::Problem;
use crate::error::{Code, Error, Result};
use rayon::prelude::*;

/// How long to walk.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EnsembleSettings {
    /// Walkers, an even number above twice the parameters.
    pub walkers: usize,
    /// Steps after which the run gives up.
    pub most_steps: usize,
    /// Split R̂ of every parameter, over four groups of walkers, must be below this.
    pub r_hat: f64,
    /// Effective draws of every parameter must be above this.
    pub draws: f64,
    /// Seed.
    pub seed: u64,
}

impl Default for EnsembleSettings {
    fn default() -> Self {
        EnsembleSettings { walkers: 32, most_steps: 20_000, r_hat: 1.01, draws: 400.0, seed: 0 }
    }
}

/// Draws of the parameters after the readings, on their scales.
#[derive(Debug, Clone, PartialEq)]
pub struct Ensemble {
    /// `chains[parameter][walker]`: that walker's places, the first quarter (still on the way) left out.
    pub chains: Vec<Vec<Vec<f64>>>,
    /// Split R̂ of each parameter over four groups of walkers.
    pub r_hat: Vec<f64>,
    /// Effective draws of each parameter.
    pub draws: Vec<f64>,
    /// Share of the proposed steps that were taken.
    pub accepted: f64,
}

/// Steps between two looks at the chains.
const STRETCH: usize = 500;
/// Groups of walkers whose halves must agree.
const GROUPS: usize = 4;
/// Split R̂ that single walkers must reach besides.
const OF_ONE_WALKER: f64 = 1.1;
/// The walkers start this much wider than the bell curve at the peak.
const WIDE: f64 = 1.5;

#[derive(Clone)]
struct Walker {
    theta: Vec<f64>,
    misfit: f64,
}

impl Ensemble {
    /// Walks from around `fit` until all parameters have settled; error `not_converged` if they do not.
    ///
    /// One half of the walkers moves at a time, guided by the other half: stretches along the line through another walker,
    /// and jumps by the difference of two others, as often the one as the other. Both are blind to scale and correlation
    /// of the parameters; the jumps halve the way along bent ridges. Step, walker and seed alone say which random numbers
    /// are used. Source: Goodman and Weare, Comm. App. Math. Comp. Sci. 5 (2010) 65; ter Braak, Stat. Comput. 16 (2006) 239.
    pub fn run(
        problem: &Problem<'_>,
        fit: &Fit,
        settings: &EnsembleSettings,
        progress: &mut Progress<'_>,
    ) -> Result<Ensemble> {
        let (width, count) = (problem.parameters().len(), settings.walkers);
        if count % 2 == 1 || count <= 2 * width {
            let message = format!("{count} walkers are too few or odd: take an even number above {}", 2 * width);
            return Err(Error::new(Code::OutOfRange, "walkers", message).number(count as f64));
        }
        let mut walkers: Vec<Walker> =
            (0..count).map(|walker| start(problem, fit, walker as u32, settings.seed)).collect();
        let mut steps: Vec<Vec<Walker>> = Vec::new();
        let mut taken = 0_usize;
        while steps.len() < settings.most_steps {
            for _ in 0..STRETCH {
                let step = steps.len() as u32;
                let (first, second) = walkers.split_at_mut(count / 2);
                taken += walk(problem, first, second, 0, step, settings.seed);
                taken += walk(problem, second, first, count / 2, step, settings.seed);
                steps.push(walkers.clone());
                // a word after every step: a step is a model run for every walker
                report(progress, steps.len(), settings.most_steps)?;
            }
            let chains = chains(&steps[steps.len() / 4..], width, count);
            let r_hat: Vec<f64> = chains.par_iter().map(|walkers| groups_r_hat(walkers)).collect();
            if r_hat.iter().any(|&r| r >= settings.r_hat) {
                continue;
            }
            let draws: Vec<f64> = chains.par_iter().map(|chains| effective_draws(chains)).collect();
            if draws.iter().all(|&draws| draws > settings.draws) {
                let accepted = taken as f64 / (count * steps.len()) as f64;
                return Ok(Ensemble { chains, r_hat, draws, accepted });
            }
        }
        let message = format!(
            "the walkers had not settled after {} steps (split R̂ not below {}): allow more steps, or add a reading; the \
             readings may allow two separate answers",
            settings.most_steps, settings.r_hat
        );
        Err(Error::new(Code::NotConverged, "calibrate", message).number(settings.most_steps as f64))
    }

    /// All draws of parameter `i`, walker after walker.
    pub fn of(&self, i: usize) -> Vec<f64> {
        self.chains[i].concat()
    }
}

/// First place of a walker; nearer to the peak where no line can be.
fn start(problem: &Problem<'_>, fit: &Fit, walker: u32, seed: u64) -> Walker {
    let word = |i: usize| philox4x32([walker, i as u32, 0, 1], key(seed))[0];
    let units: Vec<f64> = (0..fit.theta.len()).map(|i| unit(word(i))).collect();
    let mut drawn = vec![0.0; units.len()];
    fit.draw(&units, &mut drawn);
    for halvings in 0..60 {
        let wide = WIDE * 0.5_f64.powi(halvings);
        let theta: Vec<f64> = drawn.iter().zip(&fit.theta).map(|(far, peak)| peak + wide * (far - peak)).collect();
        if let Ok(misfit) = problem.misfit(&theta) {
            return Walker { theta, misfit };
        }
    }
    Walker { theta: fit.theta.clone(), misfit: fit.misfit }
}

/// One step of each of `moving` (numbered from `first`), guided by where `standing` are; how many were taken.
fn walk(
    problem: &Problem<'_>,
    moving: &mut [Walker],
    standing: &[Walker],
    first: usize,
    step: u32,
    seed: u64,
) -> usize {
    let one = |(i, walker): (usize, &mut Walker)| {
        let words = |block| philox4x32([(first + i) as u32, step, block, 0], key(seed));
        let [which, a, b, chance] = words(0);
        let at = |word| &standing[(unit(word) * standing.len() as f64) as usize].theta;
        let (theta, weight) = if which & 1 == 0 {
            stretch(&walker.theta, at(a), unit(b))
        } else {
            (jump(&walker.theta, at(a), at(b), unit(words(1)[0])), 0.0)
        };
        let Ok(misfit) = problem.misfit(&theta) else { return 0 };
        if unit(chance).ln() >= weight + walker.misfit - misfit {
            return 0;
        }
        *walker = Walker { theta, misfit };
        1
    };
    moving.par_iter_mut().enumerate().map(one).sum()
}

/// Along the line through `there`, by a factor between 1/2 and 2, and the logarithm of the weight that makes up for it.
fn stretch(here: &[f64], there: &[f64], u: f64) -> (Vec<f64>, f64) {
    let factor = 0.5 * (u + 1.0).powi(2); // density 1/√factor
    let theta: Vec<f64> = here.iter().zip(there).map(|(here, there)| there + factor * (here - there)).collect();
    let weight = (theta.len() as f64 - 1.0) * factor.ln();
    (theta, weight)
}

/// By the difference of two others, shortened to what is mostly taken; now and then whole, from one peak to another.
fn jump(here: &[f64], a: &[f64], b: &[f64], u: f64) -> Vec<f64> {
    let factor = if u < 0.1 { 1.0 } else { 2.38 / (2.0 * here.len() as f64).sqrt() };
    here.iter().zip(a).zip(b).map(|((here, a), b)| here + factor * (a - b)).collect()
}

/// Split R̂ of a parameter over groups of walkers; +∞ while a walker on its own has hardly moved about.
///
/// One walker's half chain is short, so that its R̂ is above 1 by chance alone long after the walkers agree.
fn groups_r_hat(walkers: &[Vec<f64>]) -> f64 {
    if split_r_hat(walkers) > OF_ONE_WALKER {
        return f64::INFINITY;
    }
    let group = |walkers: &[Vec<f64>]| -> Vec<f64> {
        (0..walkers[0].len()).flat_map(|step| walkers.iter().map(move |walker| walker[step])).collect()
    };
    split_r_hat(&walkers.chunks(walkers.len().div_ceil(GROUPS)).map(group).collect::<Vec<_>>())
}

fn chains(steps: &[Vec<Walker>], width: usize, count: usize) -> Vec<Vec<Vec<f64>>> {
    let chain = |i: usize, walker: usize| steps.iter().map(|walkers| walkers[walker].theta[i]).collect();
    (0..width).map(|i| (0..count).map(|walker| chain(i, walker)).collect()).collect()
}

#[cfg(test)]
mod tests {
    use super::super::fit::calibrate;
    use super::super::problem::{Observation, Parameter};
    use super::*;
    use crate::study::{quantile, sorted, unwatched};

    /// A linear model: the draws must have the mean, the spread and the percentiles of the exact bell curve.
    #[test]
    fn draws_a_known_bell_curve() {
        let parameters = [Parameter::plain("a", 1.0, 2.0), Parameter::plain("b", -1.0, 0.5)];
        let observed = [Observation { value: 4.0, error: 0.1 }, Observation { value: 0.5, error: 1.0 }];
        let model = |p: &[f64], y: &mut [f64]| {
            y.copy_from_slice(&[p[0] + p[1], p[1]]);
            Ok(())
        };
        let problem = Problem::new(&parameters, &observed, &model).unwrap();
        let fit = calibrate(&problem, 0, &mut unwatched).unwrap();
        let run = |threads: usize| {
            let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
            pool.install(|| Ensemble::run(&problem, &fit, &EnsembleSettings::default(), &mut unwatched)).unwrap()
        };
        let ensemble = run(1);
        assert!(ensemble.accepted > 0.3 && ensemble.accepted < 0.95);
        for i in 0..2 {
            let rising = sorted(&ensemble.of(i));
            let error = fit.sd[i] / ensemble.draws[i].sqrt();
            let mean = rising.iter().sum::<f64>() / rising.len() as f64;
            assert!((mean - fit.theta[i]).abs() < 4.0 * error, "{mean} {}", fit.theta[i]);
            let [low, high] = fit.interval(i, 0.9);
            assert!((quantile(&rising, 0.05) - low).abs() < 0.1 * fit.sd[i]);
            assert!((quantile(&rising, 0.95) - high).abs() < 0.1 * fit.sd[i]);
            assert!(ensemble.r_hat[i] < 1.01 && ensemble.draws[i] > 400.0);
        }
        assert_eq!(run(3), ensemble);
    }

    #[test]
    fn too_few_walkers_and_a_stop() {
        let parameters = [Parameter::plain("a", 0.0, 1.0)];
        let observed = [Observation { value: 0.0, error: 1.0 }];
        let model = |p: &[f64], y: &mut [f64]| {
            y[0] = p[0];
            Ok(())
        };
        let problem = Problem::new(&parameters, &observed, &model).unwrap();
        let fit = calibrate(&problem, 0, &mut unwatched).unwrap();
        let few = EnsembleSettings { walkers: 2, ..Default::default() };
        assert_eq!(Ensemble::run(&problem, &fit, &few, &mut unwatched).unwrap_err().code, Code::OutOfRange);
        let stopped = Ensemble::run(&problem, &fit, &EnsembleSettings::default(), &mut |done, _| done < 10);
        assert_eq!(stopped.unwrap_err().code, Code::Stopped);
        let hurried = EnsembleSettings { most_steps: 1, r_hat: 1.0, ..Default::default() };
        let not_settled = Ensemble::run(&problem, &fit, &hurried, &mut unwatched);
        assert_eq!(not_settled.unwrap_err().code, Code::NotConverged);
    }
}
