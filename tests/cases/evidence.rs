//! What a current log proves, on synthetic logs with a known truth.

use crate::{Answer, number};
use pinfilm::log::change::{Cost, adjusted, change_points, partition, robust_noise};
use pinfilm::log::proof::{LoggingPlan, SavingsFactor, avoided};
use pinfilm::log::watch::{cusum_path, ewma_run_length};
use serde_json::{Value, json};
use synthetic::{Synthetic, philox4x32};

#[path = "../support/synthetic.rs"]
mod synthetic;

pub fn ours(case: &Value) -> Answer {
    let (id, inputs) = (case["id"].as_str()?, &case["inputs"]);
    let usual = || Synthetic { seed: 7, n: 120, split: 60, rho: 0.5, cut: 0.08, sd: 0.08 }.log();
    Some(match id {
        "D-037" => {
            let (y, load) = Synthetic {
                seed: number(inputs, "seed") as u32,
                n: number(inputs, "n") as usize,
                split: number(inputs, "split") as usize,
                rho: number(inputs, "rho"),
                cut: number(inputs, "cut"),
                sd: number(inputs, "sd"),
            }
            .log();
            json!({ "y": y[..4], "load": load[..4], "sum_y": y.iter().sum::<f64>() })
        }
        "D-039" => {
            let (y, load) = usual();
            let found = change_points(&y, &[&load], Cost::Mean, number(inputs, "min_seg") as usize).ok()?;
            let flat = adjusted(&y, &[&load]).ok()?;
            let noise = robust_noise(&flat);
            let independent = 3.0 * noise.deviation.powi(2) * (y.len() as f64).ln();
            json!({
                "points": found.points,
                "penalty": found.penalty,
                "robust_rho": noise.lag1,
                "robust_sd": noise.deviation,
                "iid_penalty_min_seg_3": partition(&flat, Cost::Mean, 3, independent),
            })
        }
        "D-041" => {
            let (y, load) = usual();
            let found = avoided(&y, 60, &[&load], 0.95).ok()?;
            json!({
                "avoided": found.avoided,
                "se": found.error_plain,
                "rho": found.lag1,
                "cv": found.cv_rmse,
                "F": found.share,
                "fsu90": found.guideline_uncertainty(1.645, SavingsFactor::Original),
            })
        }
        "D-043" => {
            let sys = inputs["sys_pct"].as_array()?;
            let least = |sys: &Value| least(&plan(inputs, sys.as_f64().unwrap_or(f64::NAN), 1.0), inputs);
            let days = plan(inputs, 0.0, 1.0).days_by_normal(0.01 * number(inputs, "target_pct"));
            json!({ "mdc": least(&sys[0]), "mdc_sys1": least(&sys[1]), "days": days })
        }
        "D-065" => {
            let in_place = plan(inputs, number(inputs, "sys_pct"), number(inputs, "sys_share"));
            let clean = plan(inputs, 0.0, 1.0);
            let normal: Vec<f64> = list(&inputs["n"]).map(|n| 100.0 * clean.least_change_by_normal(n, n)).collect();
            json!({ "mdc": least(&in_place, inputs), "normal_sys0": normal })
        }
        "D-045" => list(&inputs["L"])
            .map(|width| {
                list(&inputs["shift"])
                    .map(|shift| ewma_run_length(number(inputs, "lam"), width, shift))
                    .collect::<Vec<f64>>()
            })
            .collect(),
        "D-047" => {
            let values: Vec<f64> = list(&inputs["values"]).collect();
            let path = cusum_path(&values, number(inputs, "target"), number(inputs, "k"), number(inputs, "h"));
            json!([path.up, path.down, path.alarms])
        }
        "D-057" => {
            let log = Synthetic { seed: 7, n: 200, split: 130, rho: 0.7, cut: 0.05, sd: 0.06 };
            let (mut y, load) = log.log();
            y[60..100].iter_mut().for_each(|y| *y *= 1.06);
            let found = |cost| change_points(&y, &[&load], cost, 10).ok();
            let mean = found(Cost::Mean)?;
            json!({ "points": mean.points, "penalty": mean.penalty, "meanvar": found(Cost::MeanVariance)?.points })
        }
        _ => return None,
    })
}

fn list(value: &Value) -> impl Iterator<Item = f64> {
    value.as_array().into_iter().flatten().map(|v| v.as_f64().unwrap_or(f64::NAN))
}

fn plan(inputs: &Value, sys_pct: f64, independence: f64) -> LoggingPlan {
    LoggingPlan {
        noise: 0.01 * number(inputs, "cv_pct"),
        lag1: number(inputs, "rho"),
        systematic: 0.01 * sys_pct,
        systematic_independence: independence,
        significance: 0.05,
        power: 0.8,
    }
}

/// Least changes in per cent.
fn least(plan: &LoggingPlan, inputs: &Value) -> Vec<f64> {
    list(&inputs["n"]).map(|n| 100.0 * plan.least_change(n, n)).collect()
}

#[test]
fn philox_of_nothing() {
    assert_eq!(philox4x32([0; 4], [0; 2]), [0x6627_e8d5, 0xe169_c58d, 0xbc57_ac4c, 0x9b00_dbd8]);
}

/// Numbers of the same log from the same independent implementation that no case holds.
mod beyond_the_cases {
    use super::Synthetic;
    use pinfilm::log::proof::{avoided, before_after, placebo};

    fn near(ours: f64, expected: f64, digits: f64) {
        assert!((ours - expected).abs() <= digits, "expected {expected}, ours {ours}");
    }

    fn log() -> (Vec<f64>, Vec<f64>) {
        Synthetic { seed: 7, n: 120, split: 60, rho: 0.5, cut: 0.08, sd: 0.08 }.log()
    }

    #[test]
    fn saving_of_the_synthetic_log() {
        let (y, load) = log();
        let found = before_after(&y, 60, &[&load], 0.95).unwrap();
        near(100.0 * found.saving, 7.380846, 5e-7);
        near(100.0 * found.error_newey_west, 0.246626, 5e-7);
        near(100.0 * found.error_autoregressive, 0.298038, 5e-7);
        near(found.degrees, 40.584548, 5e-7);
        near(100.0 * found.interval.0, 6.778759, 5e-7);
        near(100.0 * found.interval.1, 7.982934, 5e-7);
        near(found.lag1, 0.443998, 5e-7);
        assert_eq!(found.lags, 7);
    }

    #[test]
    fn placebo_of_the_synthetic_log() {
        let (y, load) = log();
        let found = placebo(&y, 60, &[&load]).unwrap();
        assert_eq!((found.splits, found.agrees), (31, Some(true)));
        near(found.largest_t, 1.266092, 5e-7);
        near(found.real_t, 23.863807, 1e-6);
        near(found.rank, 0.03125, 0.0);
    }

    #[test]
    fn use_avoided_on_the_synthetic_log() {
        let (y, load) = log();
        let found = avoided(&y, 60, &[&load], 0.95).unwrap();
        near(found.error, 2.212477, 5e-7);
        near(found.degrees, 16.046286, 5e-7);
        near(found.interval.0, 40.192244, 5e-7);
        near(found.interval.1, 49.570528, 5e-7);
    }
}
