//! Yearly cost, savings, payback, rate of return.

#![allow(clippy::unwrap_used, clippy::panic)]

use crate::{Answer, number};
use pinfilm::economics::{
    CALENDAR_DAYS, Comparison, Items, Payback, Prices, Quantities, Replacements, Terms, compare,
    discounted_payback_years, irr, payback_days, payback_years, yearly,
};
use serde_json::{Map, Value, json};

/// Two years of cost of one line: base and both sides' own figures, life already computed.
fn items(parts: [&Value; 3], chain_life: f64) -> Items {
    let n = |key: &str| {
        let found = parts.iter().rev().map(|part| number(part, key)).find(|v| !v.is_nan());
        found.unwrap_or_else(|| panic!("no {key}"))
    };
    let quantities = Quantities {
        oil: n("oil_l_per_year"),
        applications: n("applications_per_year"),
        application_time: n("hours_per_application"),
        drive_power: n("drive_power_kw"),
        running_time: n("running_h_per_year"),
        cleanings: n("cleanings_per_year"),
        cleaning_time: n("cleaning_h"),
        breakdowns: n("breakdowns_per_year"),
        breakdown_time: n("breakdown_h"),
        planned_stop: n("planned_stop_h"),
        chain_length: n("chain_m"),
        fit_time: n("fit_h"),
        fit_downtime: n("fit_downtime_h"),
        chain_life,
        chains_per_sprocket: n("chains_per_sprocket"),
        waste: n("waste_oil_l_per_year"),
        upkeep: n("upkeep_per_year"),
    };
    let prices = Prices {
        oil: n("oil_price_per_l"),
        labour: n("labour_rate_per_h"),
        energy: n("energy_price_per_kwh"),
        cleaning_material: n("cleaning_material"),
        downtime: n("downtime_cost_per_h"),
        chain: n("chain_price_per_m"),
        sprocket_set: n("sprocket_set_price"),
        waste: n("waste_price_per_l"),
    };
    yearly(&quantities, &prices)
}

fn compared(line: &Value, life: fn(f64, f64) -> f64) -> (Items, Items, Comparison) {
    let other = number(&line["both"], "other_life_years");
    let side = |name: &str, i: usize| {
        let life = life(line["wear_life_years"][i].as_f64().unwrap(), other);
        items([&line["base"], &line["both"], &line[name]], life)
    };
    let (now, proposed) = (side("now", 0), side("new", 1));
    let terms = Terms {
        invest: number(line, "invest"),
        rate: number(line, "rate"),
        horizon: line["horizon"].as_u64().unwrap() as usize,
        year_days: CALENDAR_DAYS,
        escalation: Items::default(),
    };
    (now, proposed, compare(&now, &proposed, &terms, &Replacements::Annualised))
}

fn outcome(payback: Payback) -> Value {
    json!([payback.status(), payback.value()])
}

fn named(items: &Items) -> Value {
    Value::Object(Items::NAMES.iter().map(|n| n.to_string()).zip(items.values().map(|v| json!(v))).collect())
}

pub fn ours(case: &Value) -> Answer {
    let inputs = &case["inputs"];
    let quantity = case["quantity"].as_str()?;
    if quantity.starts_with("money, line") {
        let (now, proposed, worth) = compared(inputs, pinfilm::wear::service_life);
        Some(json!({
            "cost_now": now.total(), "cost_new": proposed.total(), "saving": worth.saving_per_year,
            "items": named(&worth.saving), "payback_days": worth.payback.value(), "npv": worth.npv,
            "irr": worth.irr.value, "discounted_payback_years": worth.discounted_payback.value(),
        }))
    } else if quantity == "payback_days degenerate" {
        let cases = inputs["cases"].as_array()?;
        let number = |v: &Value| v.as_f64().unwrap();
        Some(cases.iter().map(|c| outcome(payback_days(number(&c[0]), number(&c[1]), CALENDAR_DAYS))).collect())
    } else if quantity.starts_with("payback over cash flows") {
        let both = |f: Vec<f64>| json!([outcome(payback_years(&f)), outcome(discounted_payback_years(0.1, &f))]);
        Some(flows(inputs).into_iter().map(both).collect())
    } else if quantity.starts_with("irr") {
        let found = flows(inputs).into_iter().map(|f| irr(&f));
        Some(found.map(|r| json!([r.status.as_str(), r.value, r.roots])).collect())
    } else if quantity.starts_with("saving and payback of the five lines with min") {
        let mut answer = Map::new();
        for (name, line) in five_lines() {
            let (_, _, worth) = compared(&line, f64::min);
            let line = json!({"saving": worth.saving_per_year, "payback_days": worth.payback.value()});
            answer.insert(name.to_string(), line);
        }
        Some(Value::Object(answer))
    } else {
        None
    }
}

fn flows(inputs: &Value) -> Vec<Vec<f64>> {
    serde_json::from_value(inputs["flows"].clone()).unwrap()
}

/// The five invented lines: three stand in the cases, two are given here.
fn five_lines() -> Vec<(&'static str, Value)> {
    let cases: Vec<Value> = serde_json::from_str(include_str!("../data/cases-wear_money_evidence.json")).unwrap();
    let case = |name: &str| {
        let quantity = format!("money, line {name}");
        cases.iter().find(|case| case["quantity"] == *quantity).map(|case| case["inputs"].clone()).unwrap()
    };
    let base = case("oven")["base"].clone();
    let slat = json!({
        "base": base, "both": {
            "running_h_per_year": 4000, "downtime_cost_per_h": 600, "chain_m": 100, "chain_price_per_m": 95, "fit_h": 20,
            "fit_downtime_h": 8, "other_life_years": 7, "sprocket_set_price": 1400, "cleaning_material": 25,
            "cleaning_h": 2, "breakdown_h": 2.5, "planned_stop_h": 0 },
        "now": { "oil_l_per_year": 60, "applications_per_year": 240, "hours_per_application": 0.4, "drive_power_kw": 2.4,
            "cleanings_per_year": 12, "breakdowns_per_year": 1.2, "waste_oil_l_per_year": 45, "upkeep_per_year": 0 },
        "new": { "oil_l_per_year": 35, "oil_price_per_l": 22, "applications_per_year": 6, "hours_per_application": 0.5,
            "drive_power_kw": 2.1, "cleanings_per_year": 12, "breakdowns_per_year": 0.5, "waste_oil_l_per_year": 10,
            "upkeep_per_year": 300 },
        "invest": 6200, "wear_life_years": [1.7098512764719953, 51.377734055304295], "rate": 0.08, "horizon": 10 });
    let floor = json!({
        "base": base, "both": {
            "running_h_per_year": 5000, "downtime_cost_per_h": 700, "chain_m": 180, "chain_price_per_m": 110, "fit_h": 60,
            "fit_downtime_h": 16, "other_life_years": 10, "sprocket_set_price": 3200, "cleaning_material": 40,
            "cleaning_h": 4, "breakdown_h": 4, "planned_stop_h": 0 },
        "now": { "oil_l_per_year": 150, "applications_per_year": 30, "hours_per_application": 2, "drive_power_kw": 9.5,
            "cleanings_per_year": 4, "breakdowns_per_year": 1, "waste_oil_l_per_year": 90, "upkeep_per_year": 0 },
        "new": { "oil_l_per_year": 60, "applications_per_year": 8, "hours_per_application": 0.5, "drive_power_kw": 7.9,
            "cleanings_per_year": 2, "breakdowns_per_year": 0.4, "waste_oil_l_per_year": 8, "upkeep_per_year": 350 },
        "invest": 6800, "wear_life_years": [1.8678183347078503, 111.07552191369223], "rate": 0.08, "horizon": 10 });
    vec![
        ("oven", case("oven")),
        ("slat", slat),
        ("overhead", case("overhead")),
        ("floor", floor),
        ("packing", case("packing")),
    ]
}

/// Cost, saving, payback, NPV and rate of return of the two lines that stand in no case, and what pays on all five.
#[test]
fn money_of_five_lines() {
    let close = |printed: f64, ours: f64, digits: f64, what: &str| {
        assert!((ours - printed).abs() <= 0.5 * digits, "{what}: {printed} ours {ours}");
    };
    let printed = [
        ("slat", [20688.45853, 7302.904279, 13385.55425, 169.0628537, 83618.15857, 2.15893854]),
        ("floor", [38533.96730, 14252.05295, 24281.91435, 102.2159935, 156133.6218, 3.57086886]),
    ];
    let lines = five_lines();
    for (name, [now_cost, new_cost, saving, days, value, rate]) in printed {
        let line = &lines.iter().find(|line| line.0 == name).unwrap().1;
        let (now, proposed, worth) = compared(line, pinfilm::wear::service_life);
        close(now_cost, now.total(), 1.1e-5, name);
        close(new_cost, proposed.total(), 1.1e-5, name);
        close(saving, worth.saving_per_year, 1.1e-5, name);
        close(days, worth.payback.value().unwrap(), 1.1e-7, name);
        close(value, worth.npv, 1.1e-4, name);
        close(rate, worth.irr.value.unwrap(), 1.1e-8, name);
    }
    let energy_alone = [2636.0, 9429.0, 4345.0, 1551.0, 25882.0];
    let without_chain = [352.0, 437.0, 377.0, 350.0, 455.0];
    for (((name, line), energy), without) in lines.iter().zip(energy_alone).zip(without_chain) {
        let (_, _, worth) = compared(line, pinfilm::wear::service_life);
        let by_energy = payback_days(number(line, "invest"), worth.saving.energy, CALENDAR_DAYS).value().unwrap();
        close(energy, by_energy, 1.0, name);
        close(without, worth.payback_without_chain.value().unwrap(), 1.0, name);
    }
}

/// The comparisons of whole lines, from the yearly items that their cases expect.
#[test]
fn comparisons_of_whole_lines() {
    let cases: Vec<Value> = serde_json::from_str(include_str!("../data/cases-line.json")).unwrap();
    let find = |id: &Value| cases.iter().find(|case| case["id"] == *id).unwrap();
    for case in cases.iter().filter(|case| case["quantity"] == "compare") {
        let (now, proposed) = (find(&case["inputs"]["now"]), find(&case["inputs"]["proposed"]));
        let items = |side: &Value| Items::from_values(Items::NAMES.map(|name| number(&side["expected"]["cost"], name)));
        let costs = &proposed["inputs"]["costs"];
        let terms = Terms {
            invest: number(costs, "invest"),
            rate: number(costs, "discount_rate"),
            horizon: costs["horizon_years"].as_u64().unwrap() as usize,
            year_days: CALENDAR_DAYS,
            escalation: Items::default(),
        };
        let worth = compare(&items(now), &items(proposed), &terms, &Replacements::Annualised);
        let answer = json!({
            "saving_items": named(&worth.saving), "saving_per_year": worth.saving_per_year, "invest": terms.invest,
            "payback_status": worth.payback.status(), "payback_days": worth.payback.value(),
            "payback_days_without_chain": worth.payback_without_chain.value(), "npv": worth.npv,
            "irr": worth.irr.value, "irr_status": worth.irr.status.as_str(),
        });
        let mut wrong = Vec::new();
        crate::compare("", &case["expected"], &answer, (1e-9, 1e-9), &mut wrong);
        assert!(wrong.is_empty(), "{}: {}", case["id"], wrong.join("\n"));
    }
}
