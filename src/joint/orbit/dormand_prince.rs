//! Steps through time with the eighth-order method of Dormand & Prince and its fifth- and third-order error estimate.

use crate::error::{Code, Error, Result};

/// Runge-Kutta coefficients, stage by stage: which earlier slope, with which weight.
/// Source: Hairer, Nørsett & Wanner, Solving Ordinary Differential Equations I, 2nd ed. 1993, DOP853.
#[rustfmt::skip]
const STAGES: [&[(usize, f64)]; 11] = [
    &[(0, 5.26001519587677318785587544488e-2)],
    &[(0, 1.97250569845378994544595329183e-2), (1, 5.91751709536136983633785987549e-2)],
    &[(0, 2.95875854768068491816892993775e-2), (2, 8.87627564304205475450678981324e-2)],
    &[(0, 2.41365134159266685502369798665e-1), (2, -8.84549479328286085344864962717e-1), (3, 9.24834003261792003115737966543e-1)],
    &[(0, 3.7037037037037037037037037037e-2), (3, 1.70828608729473871279604482173e-1), (4, 1.25467687566822425016691814123e-1)],
    &[(0, 3.7109375e-2), (3, 1.70252211019544039314978060272e-1), (4, 6.02165389804559606850219397283e-2), (5, -1.7578125e-2)],
    &[(0, 3.70920001185047927108779319836e-2), (3, 1.70383925712239993810214054705e-1), (4, 1.07262030446373284651809199168e-1), (5, -1.53194377486244017527936158236e-2), (6, 8.27378916381402288758473766002e-3)],
    &[(0, 6.24110958716075717114429577812e-1), (3, -3.36089262944694129406857109825), (4, -8.68219346841726006818189891453e-1), (5, 2.75920996994467083049415600797e1), (6, 2.01540675504778934086186788979e1), (7, -4.34898841810699588477366255144e1)],
    &[(0, 4.77662536438264365890433908527e-1), (3, -2.48811461997166764192642586468), (4, -5.90290826836842996371446475743e-1), (5, 2.12300514481811942347288949897e1), (6, 1.52792336328824235832596922938e1), (7, -3.32882109689848629194453265587e1), (8, -2.03312017085086261358222928593e-2)],
    &[(0, -9.3714243008598732571704021658e-1), (3, 5.18637242884406370830023853209), (4, 1.09143734899672957818500254654), (5, -8.14978701074692612513997267357), (6, -1.85200656599969598641566180701e1), (7, 2.27394870993505042818970056734e1), (8, 2.49360555267965238987089396762), (9, -3.0467644718982195003823669022)],
    &[(0, 2.27331014751653820792359768449), (3, -1.05344954667372501984066689879e1), (4, -2.00087205822486249909675718444), (5, -1.79589318631187989172765950534e1), (6, 2.79488845294199600508499808837e1), (7, -2.85899827713502369474065508674), (8, -8.87285693353062954433549289258), (9, 1.23605671757943030647266201528e1), (10, 6.43392746015763530355970484046e-1)],
];
/// Weights of the step.
#[rustfmt::skip]
const STEP: &[(usize, f64)] = &[(0, 5.42937341165687622380535766363e-2), (5, 4.45031289275240888144113950566), (6, 1.89151789931450038304281599044), (7, -5.8012039600105847814672114227), (8, 3.1116436695781989440891606237e-1), (9, -1.52160949662516078556178806805e-1), (10, 2.01365400804030348374776537501e-1), (11, 4.47106157277725905176885569043e-2)];
/// Weights of the third-order step, whose difference from the step is one estimate of the error.
const THIRD_ORDER: &[(usize, f64)] = &[
    (0, 0.244094488188976377952755905512),
    (8, 0.733846688281611857341361741547),
    (11, 0.220588235294117647058823529412e-1),
];
/// Weights of the fifth-order estimate of the error.
#[rustfmt::skip]
const FIFTH_ORDER_ERROR: &[(usize, f64)] = &[(0, 0.1312004499419488073250102996e-1), (5, -0.1225156446376204440720569753e+1), (6, -0.4957589496572501915214079952), (7, 0.1664377182454986536961530415e+1), (8, -0.3503288487499736816886487290), (9, 0.3341791187130174790297318841), (10, 0.8192320648511571246570742613e-1), (11, -0.2235530786388629525884427845e-1)];

/// Steps before the motion is given up.
const MOST_STEPS: usize = 100_000;

/// State at the end of `duration` of dy/dt = `slope`(y), each step within `tolerance`(y) of each component.
///
/// Written out here rather than taken from a library: no allocation, a fixed small state, no dense output.
pub(super) fn travel<const N: usize>(
    start: [f64; N],
    duration: f64,
    tolerance: impl Fn(&[f64; N]) -> [f64; N],
    mut slope: impl FnMut(&[f64; N]) -> [f64; N],
) -> Result<[f64; N]> {
    let (mut state, mut time) = (start, 0.0);
    if duration <= 0.0 {
        return Ok(state);
    }
    let mut slopes = [[0.0; N]; 12];
    slopes[0] = slope(&state);
    let mut step = {
        let scale = tolerance(&state);
        let reach = norm(&state, &scale);
        let speed = norm(&slopes[0], &scale);
        (if reach > 0.0 && speed > 0.0 { 0.05 * reach / speed } else { 1e-6 * duration }).min(duration)
    };
    let mut rejected = false;
    for _ in 0..MOST_STEPS {
        let last = time + step >= duration * (1.0 - 1e-14);
        if last {
            step = duration - time;
        }
        for (stage, weights) in STAGES.iter().enumerate() {
            let at = moved(&state, step, weights, &slopes);
            slopes[stage + 1] = slope(&at);
        }
        let reached = moved(&state, step, STEP, &slopes);
        let zero = [0.0; N];
        let fifth = moved(&zero, 1.0, FIFTH_ORDER_ERROR, &slopes);
        let taken = moved(&zero, 1.0, STEP, &slopes);
        let third = moved(&zero, 1.0, THIRD_ORDER, &slopes);
        let scale = tolerance(&reached);
        let fine = norm(&fifth, &scale);
        let coarse = norm(&std::array::from_fn(|i| taken[i] - third[i]), &scale);
        let blend = fine.hypot(0.1 * coarse);
        let error = if blend > 0.0 { step * fine * (fine / blend) } else { 0.0 };
        if error < 1.0 {
            (state, time) = (reached, time + step);
            if last {
                return Ok(state);
            }
            slopes[0] = slope(&state);
            let grow = if error > 0.0 { 0.9 * error.powf(-0.125) } else { 6.0 };
            step *= grow.clamp(0.333, if rejected { 1.0 } else { 6.0 });
            rejected = false;
        } else {
            let shrink = 0.9 * error.powf(-0.125); // NaN keeps the floor
            step *= if shrink > 0.333 { shrink } else { 0.333 };
            rejected = true;
        }
    }
    Err(Error::new(Code::NotConverged, "pin motion", "the motion of the pin in its bush needs too many time steps"))
}

/// Root mean square of `values`, each over its `scale`.
#[inline]
fn norm<const N: usize>(values: &[f64; N], scale: &[f64; N]) -> f64 {
    let sum: f64 = values.iter().zip(scale).map(|(v, s)| (v / s).powi(2)).sum();
    (sum / N as f64).sqrt()
}

/// `state` + `step` · Σ weight · slope.
#[inline]
fn moved<const N: usize>(state: &[f64; N], step: f64, weights: &[(usize, f64)], slopes: &[[f64; N]; 12]) -> [f64; N] {
    let mut sum = [0.0; N];
    for &(stage, weight) in weights {
        for (s, slope) in sum.iter_mut().zip(&slopes[stage]) {
            *s += weight * slope;
        }
    }
    std::array::from_fn(|i| state[i] + step * sum[i])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_turn_of_an_oscillator_comes_back_to_its_start() {
        let end = travel([1.0, 0.0], std::f64::consts::TAU, |_| [1e-13; 2], |y| [y[1], -y[0]]).unwrap();
        assert!((end[0] - 1.0).abs() < 1e-11 && end[1].abs() < 1e-11, "{end:?}");
    }

    #[test]
    fn each_stage_looks_at_its_own_time() {
        // Row sums are the times of the stages; the weights of a step add up to one.
        let sum = |weights: &[(usize, f64)]| weights.iter().map(|w| w.1).sum::<f64>();
        assert!((sum(STEP) - 1.0).abs() < 1e-15 && (sum(THIRD_ORDER) - 1.0).abs() < 1e-15);
        assert!(sum(FIFTH_ORDER_ERROR).abs() < 1e-15);
        let times = [
            0.0526001519587677,
            0.0789002279381516,
            0.118350341907227,
            0.281649658092773,
            1.0 / 3.0,
            0.25,
            4.0 / 13.0,
            0.651282051282051,
            0.6,
            6.0 / 7.0,
            1.0,
        ];
        for (weights, time) in STAGES.iter().zip(times) {
            assert!((sum(weights) - time).abs() < 1e-13, "{time}");
        }
    }
}
