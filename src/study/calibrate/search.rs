//! Damped least squares (Levenberg and Marquardt) from one start.

use super::problem::Problem;
use crate::error::Result;
use nalgebra::{DMatrix, DVector};

/// Step of the central differences, on the scales of the parameters (a factor of 1 ± 1e-5).
const DIFFERENCE: f64 = 1e-5;
/// The search ends when no parameter moves by more than this share of its spread.
const SMALLEST_STEP: f64 = 1e-11;
/// A smooth misfit takes some tens of steps; one with an edge at its lowest is crept along for ever.
const MOST_STEPS: usize = 250;
/// Share of its promised gain below which a step is a poor one.
const POOR: f64 = 0.25;

/// Where a search ended.
pub(super) struct Found {
    pub theta: Vec<f64>,
    pub misfit: f64,
    pub slopes: DMatrix<f64>,
    /// Whether the search came to rest; if not, it was still creeping, as along an edge of the misfit.
    pub settled: bool,
}

/// Slopes of the computed readings, in their errors, by the parameters (on their scales).
pub(super) fn slopes(problem: &Problem<'_>, theta: &[f64]) -> Result<DMatrix<f64>> {
    let mut slopes = DMatrix::zeros(problem.observed().len(), theta.len());
    let mut moved = theta.to_vec();
    for i in 0..theta.len() {
        moved[i] = theta[i] + DIFFERENCE;
        let above = problem.predict(&moved)?;
        moved[i] = theta[i] - DIFFERENCE;
        let below = problem.predict(&moved)?;
        moved[i] = theta[i];
        for (row, reading) in problem.observed().iter().enumerate() {
            slopes[(row, i)] = (above[row] - below[row]) / (2.0 * DIFFERENCE * reading.error);
        }
    }
    Ok(slopes)
}

/// Curvature of the misfit: slopes' squares plus the sharpness of the guesses.
pub(super) fn curvature(problem: &Problem<'_>, slopes: &DMatrix<f64>) -> DMatrix<f64> {
    let mut curvature = slopes.transpose() * slopes;
    for (i, parameter) in problem.parameters().iter().enumerate() {
        curvature[(i, i)] += parameter.sd.powi(-2);
    }
    curvature
}

/// Goes down the misfit from `start`.
///
/// Damping 1e-3 at first, a fifth after a step that helps, four times after one that does not or hardly does; a step to
/// parameters that make no line does not help. Where wear laws meet, the misfit has edges, and its lowest point may lie on
/// one: there the search does not come to rest. Source: Marquardt, J. SIAM 11 (1963) 431, scaled by the diagonal; gain
/// against promise as in Fletcher, AERE-R 6799 (1971). An error of `word`, which is asked before every step, ends it.
pub(super) fn descend(problem: &Problem<'_>, start: Vec<f64>, word: &mut dyn FnMut() -> Result<()>) -> Result<Found> {
    let mut theta = start;
    let mut misfit = problem.misfit(&theta)?;
    let mut damping = 1e-3;
    let mut steps = 0;
    loop {
        let slopes = slopes(problem, &theta)?;
        let curvature = curvature(problem, &slopes);
        let residuals = DVector::from_vec(problem.residuals(&problem.predict(&theta)?));
        let pull = problem.surprise(&theta).into_iter().zip(problem.parameters()).map(|(s, p)| s / p.sd);
        let down = slopes.transpose() * residuals - DVector::from_iterator(theta.len(), pull);
        loop {
            word()?;
            steps += 1;
            if steps > MOST_STEPS {
                return Ok(Found { theta, misfit, slopes, settled: false });
            }
            let mut damped = curvature.clone();
            (0..theta.len()).for_each(|i| damped[(i, i)] *= 1.0 + damping);
            // the guesses make it positive definite; only rounding can make it none, and damping mends that
            let Some(step) = damped.cholesky().map(|damped| damped.solve(&down)) else {
                damping *= 4.0;
                continue;
            };
            let small = |(step, p): (&f64, &super::Parameter)| step.abs() < SMALLEST_STEP * p.sd;
            let settled = step.iter().zip(problem.parameters()).all(small);
            let tried: Vec<f64> = theta.iter().zip(&step).map(|(theta, step)| theta + step).collect();
            let tried_misfit = problem.misfit(&tried).unwrap_or(f64::INFINITY);
            let promised = step.dot(&down) - 0.5 * step.dot(&(&curvature * &step));
            // a step that keeps little of its promise overshoots: the curvature is more than the slopes say
            damping *= if misfit - tried_misfit > POOR * promised { 0.2 } else { 4.0 };
            let lower = tried_misfit < misfit;
            if lower {
                (theta, misfit) = (tried, tried_misfit);
            }
            if settled {
                return Ok(Found { theta, misfit, slopes, settled: true });
            }
            if lower {
                break;
            }
        }
    }
}
