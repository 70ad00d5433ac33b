//! Certified statistical data sets, the Nile, effective sample sizes, ASHRAE Guideline 14.

use crate::{Answer, Check, Compared, number, numbers, relative, within};
use pinfilm::drive::effective_count;
use pinfilm::log::change::{Cost, change_points};
use pinfilm::log::least_squares;
use pinfilm::log::proof::{Interval, SavingsFactor, cv_rmse, fractional_savings_uncertainty, newey_west_se, nmbe};
use pinfilm::log::statistics::{durbin_watson, lag1, mean, standard_deviation, welch};
use serde_json::Value;

pub fn check(check: &Check) -> Answer {
    let (i, e) = (check.inputs, check.expected);
    Some(match check.id {
        "STA-001" => straight_line(&numbers(&i["x"]), &numbers(&i["y"]), e),
        "STA-003" => {
            let swing = |b: f64| [vec![b], [b - 0.1, b + 0.1].repeat(500)].concat();
            let sets = [("NumAcc1", numbers(&i["NumAcc1"]))].into_iter().chain([
                ("NumAcc2", swing(1.2)),
                ("NumAcc3", swing(1_000_000.2)),
                ("NumAcc4", swing(10_000_000.2)),
            ]);
            sets.flat_map(|(name, data)| univariate(name, &data, &e[name], [1e-14, 1e-8, 1e-9])).collect()
        }
        "STA-004" => {
            let r1 = number(e, "r1").abs();
            univariate("Lew", &numbers(&i["data"]), e, [1e-10, 1e-10, 1e-10 * r1])
        }
        "STA-006" => one_shift(e),
        "STA-008" => {
            let (flow, one) = (nile(), vec![1.0; nile().len()]);
            let se = |lags, small| newey_west_se(&[&one], &flow, lags, small).map_or(f64::NAN, |se| se[0]);
            let lags = number(i, "maxlags") as usize;
            let ols = least_squares(&[&one], &flow).map_or(f64::NAN, |fit| fit.standard_errors()[0]);
            vec![
                relative("ols", number(e, "ols_se"), ols, 1e-5),
                relative("hac", number(e, "hac_no_correction"), se(lags, false), 1e-5),
                relative("hac, small sample", number(e, "hac_small_sample"), se(lags, true), 1e-5),
                // no lags and n/(n − p) must be the ordinary error of a mean
                relative("hac without lags", ols, se(0, true), 1e-12),
            ]
        }
        "STA-010" => {
            let flow = nile();
            let (before, after) = flow.split_at(number(i, "split") as usize);
            let found = welch(before, after);
            vec![
                relative("t", number(e, "t"), found.t, 1e-4),
                relative("df", number(e, "df"), found.degrees, 1e-4),
                relative("p", number(e, "p"), found.p, 1e-4),
            ]
        }
        "STA-011" => {
            let residuals = step_residuals(&nile(), number(i, "split") as usize);
            let r1 = lag1(&residuals);
            vec![
                relative("r1", number(e, "r1"), r1, 1e-5),
                relative("n_eff", number(e, "n_eff"), effective_count(residuals.len() as f64, r1), 1e-5),
                relative("durbin_watson", number(e, "durbin_watson"), durbin_watson(&residuals), 1e-5),
            ]
        }
        "STA-012" => numbers(&i["rho"])
            .into_iter()
            .zip(numbers(e))
            .map(|(rho, printed)| relative("n_eff", printed, effective_count(number(i, "n"), rho), 1e-6))
            .collect(),
        "STA-013" => {
            let (y, f) = (numbers(&i["actual"]), numbers(&i["predicted"]));
            let (cv, bias) = (numbers(&e["CVRMSE"]), numbers(&e["NMBE"]));
            let row = |(k, p): (usize, f64)| {
                [
                    relative("CV(RMSE)", cv[k], 100.0 * cv_rmse(&y, &f, p as usize), 1e-5),
                    relative("NMBE", bias[k], 100.0 * nmbe(&y, &f, p as usize), 1e-5),
                ]
            };
            numbers(&i["p"]).into_iter().enumerate().flat_map(row).collect()
        }
        "STA-014" => [("monthly", Interval::Monthly), ("hourly", Interval::Hourly)]
            .into_iter()
            .flat_map(|(name, interval)| {
                let (spread, bias) = interval.limits();
                [
                    within(format!("CV(RMSE) {name}"), number(&e[name], "CVRMSE"), 100.0 * spread, 1e-12),
                    within(format!("NMBE {name}"), number(&e[name], "NMBE"), 100.0 * bias, 1e-12),
                ]
            })
            .collect(),
        "STA-015" => {
            let input = |key| number(i, key);
            let worth = effective_count(input("n"), input("rho"));
            let found = fractional_savings_uncertainty(
                input("t"),
                SavingsFactor::Original,
                input("CV"),
                input("F"),
                input("n"),
                worth,
                input("m"),
            );
            vec![relative("n'", number(e, "n_eff"), worth, 1e-12), relative("FSU", number(e, "FSU"), found, 1e-5)]
        }
        _ => return None,
    })
}

/// Yearly flow of the Nile, 1871 on.
fn nile() -> Vec<f64> {
    let rows = include_str!("../data/nile.csv").lines().filter(|line| !line.starts_with(['#', 'y']));
    rows.filter_map(|line| line.split(',').nth(1)?.parse().ok()).collect()
}

fn straight_line(x: &[f64], y: &[f64], e: &Value) -> Vec<Compared> {
    let one = vec![1.0; x.len()];
    let Ok(fit) = least_squares(&[&one, x], y) else { return Vec::new() };
    let (errors, variance) = (fit.standard_errors(), fit.residual_variance());
    let explained = 1.0 - variance * fit.degrees() / (standard_deviation(y).powi(2) * (y.len() as f64 - 1.0));
    let ours = [fit.coefficients[0], fit.coefficients[1], errors[0], errors[1], variance.sqrt(), explained];
    ["B0", "B1", "se_B0", "se_B1", "resid_sd", "R2"]
        .into_iter()
        .zip(ours)
        .map(|(name, ours)| relative(name, number(e, name), ours, 1e-9))
        .collect()
}

/// Mean and deviation within relative, autocorrelation within absolute tolerances.
fn univariate(name: &str, data: &[f64], e: &Value, [of_mean, of_sd, of_r1]: [f64; 3]) -> Vec<Compared> {
    vec![
        relative(format!("{name} mean"), number(e, "mean"), mean(data), of_mean),
        relative(format!("{name} sd"), number(e, "sd"), standard_deviation(data), of_sd),
        within(format!("{name} r1"), number(e, "r1"), lag1(data), of_r1),
    ]
}

fn step_residuals(flow: &[f64], split: usize) -> Vec<f64> {
    let (before, after) = flow.split_at(split);
    let around = |part: &[f64]| part.iter().map(|x| x - mean(part)).collect::<Vec<f64>>();
    [around(before), around(after)].concat()
}

fn one_shift(e: &Value) -> Vec<Compared> {
    let flow = nile();
    let squares = |x: &[f64]| standard_deviation(x).powi(2) * (x.len() as f64 - 1.0);
    let mut compared = Vec::new();
    for cost in [Cost::Mean, Cost::MeanVariance] {
        let Ok(found) = change_points(&flow, &[], cost, 10) else { return Vec::new() };
        compared.push(within("changes", 1.0, found.points.len() as f64, 0.0));
        let at = found.points.first().copied().unwrap_or(0);
        compared.push(within("n_before", number(e, "n_before"), at as f64, 0.0));
        compared.push(within("last year before", number(e, "last_year_before"), 1870.0 + at as f64, 0.0));
        if cost == Cost::Mean {
            let (rss0, rss1) = (squares(&flow), squares(&flow[..at]) + squares(&flow[at..]));
            let f = (rss0 - rss1) / (rss1 / (flow.len() as f64 - 2.0));
            for (name, ours) in [
                ("mean_before", found.levels[0]),
                ("mean_after", *found.levels.last().unwrap_or(&f64::NAN)),
                ("rss0", rss0),
                ("rss1", rss1),
                ("F", f),
            ] {
                compared.push(relative(name, number(e, name), ours, 1e-6));
            }
            // from the independent implementation, printed to ten digits
            compared.push(relative("penalty", 516_387.350_7, found.penalty, 1e-10));
        }
    }
    compared
}
