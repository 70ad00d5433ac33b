//! Sensitivity indices with a closed form, and a Monte Carlo run of a product of factors.

use crate::{Answer, Check, number, numbers, relative, within};
use pinfilm::study::{
    Design, Distribution, Generator, Indices, Input, NETS, Plan, mean_of_nets, quantile_over_nets, sensitivity,
    unwatched, variance_shares,
};
use std::f64::consts::PI;

fn indices(inputs: usize, outcome: impl Fn(&[f64]) -> f64 + Sync) -> Indices {
    let design = Design::new(1 << 14, inputs, Some(1)).unwrap();
    sensitivity(&design, &mut unwatched, outcome).unwrap().unwrap()
}

pub fn check(check: &Check) -> Answer {
    let (inputs, expected) = (check.inputs, check.expected);
    Some(match check.id {
        "SEN-001" => {
            let (a, b) = (number(inputs, "a"), number(inputs, "b"));
            let ours = indices(3, |u| {
                let x: Vec<f64> = u.iter().map(|u| PI * (2.0 * u - 1.0)).collect();
                x[0].sin() + a * x[1].sin().powi(2) + b * x[2].powi(4) * x[0].sin()
            });
            let mut compared = vec![
                within("mean", number(expected, "mean"), ours.mean, 0.01),
                within("variance", number(expected, "var"), ours.variance, 0.01 * number(expected, "var")),
            ];
            for (what, ours) in [("S", &ours.first), ("ST", &ours.total)] {
                let known = numbers(&expected[what]).into_iter().zip(ours).enumerate();
                compared.extend(known.map(|(i, (k, o))| within(format!("{what} {}", i + 1), k, o.value, 0.01)));
            }
            compared
        }
        "SEN-003" => {
            let (a, sd, known) = (numbers(&inputs["a"]), numbers(&inputs["sd"]), numbers(expected));
            let kind = |sd: &f64| Distribution::Normal { mean: 0.0, sd: *sd };
            let kinds: Vec<Distribution> = sd.iter().map(kind).collect();
            let drawn = indices(3, |u| (0..3).map(|i| a[i] * kinds[i].quantile(u[i])).sum());
            let closed = variance_shares(&a, &sd);
            // printed with seven digits
            let closed = known.iter().zip(closed).map(|(k, ours)| relative("share of variance", *k, ours, 5e-7));
            let drawn = known.iter().zip(&drawn.first).map(|(k, ours)| within("S drawn", *k, ours.value, 2e-3));
            closed.chain(drawn).collect()
        }
        "ECO-020" => {
            let factors = numbers(&inputs["medians"]).into_iter().zip(numbers(&inputs["ln_sd"]));
            let factor = |(i, (median, ln_sd))| Input {
                name: format!("factor {i}"),
                distribution: Distribution::Lognormal { median, ln_sd },
            };
            let plan = Plan::new(factors.enumerate().map(factor).collect(), None, Generator::Sobol, 1).unwrap();
            let net = |shift| -> Vec<f64> {
                let draws = plan.with_seed(shift).unwrap().table(0, 1 << 12);
                draws.rows().into_iter().map(|row| row.product()).collect()
            };
            let nets: Vec<Vec<f64>> = (0..NETS as u64).map(net).collect();
            let mean = |net: &Vec<f64>| net.iter().sum::<f64>() / net.len() as f64;
            let ln_sd = |net: &Vec<f64>| {
                let ln: Vec<f64> = net.iter().map(|x| x.ln()).collect();
                let mean = mean(&ln);
                (ln.iter().map(|x| (x - mean).powi(2)).sum::<f64>() / ln.len() as f64).sqrt()
            };
            let over = |of: &dyn Fn(&Vec<f64>) -> f64| mean_of_nets(&nets.iter().map(of).collect::<Vec<_>>());
            let ours = [
                ("median", quantile_over_nets(&nets, 0.5)),
                ("mean", over(&mean)),
                ("p05", quantile_over_nets(&nets, 0.05)),
                ("p95", quantile_over_nets(&nets, 0.95)),
                ("ln_sd", over(&ln_sd)),
            ];
            let compared =
                ours.into_iter().map(|(what, o)| within(what, number(expected, what), o.value, 4.0 * o.error.unwrap()));
            compared.collect()
        }
        _ => return None,
    })
}
