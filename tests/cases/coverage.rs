//! Coverage: waits, shares, locks, rounds by hand, the event simulator.

#![allow(clippy::unwrap_used)] // a test that cannot read its data has failed

use crate::{Answer, number};
use pinfilm::lubrication::coverage::{
    Clock, ManualRounds, Segment, Simulation, Timer, every_nth, every_nth_with_attachments, lock_risk, lock_time,
    never_reached_of_points, reached_joints, simulate,
};
use serde_json::{Value, json};

pub fn ours(case: &Value) -> Answer {
    let inputs = &case["inputs"];
    let count = |key: &str| inputs[key].as_i64().unwrap();
    let counts =
        |key: &str| -> Vec<i64> { inputs[key].as_array().unwrap().iter().map(|v| v.as_i64().unwrap()).collect() };
    let timer = || Timer::from_ticks(count("circuit_ticks"), count("run_ticks"), count("dwell_ticks")).unwrap();
    Some(match case["quantity"].as_str()? {
        "timer_coverage" => {
            let coverage = timer().coverage();
            let waits = coverage.waits();
            json!({
                "wait_circuits": waits.iter().map(|w| w.circuits).collect::<Vec<_>>(),
                "share_of_shots": waits.iter().map(|w| w.share_of_shots).collect::<Vec<_>>(),
                "share_of_joints": waits.iter().map(|w| w.share_of_joints).collect::<Vec<_>>(),
                "never_reached": coverage.never_reached,
                "mean_wait_circuits": coverage.mean_wait(),
                "worst_wait_circuits": coverage.worst_wait(),
                "cell": coverage.cell,
                "lock_den": coverage.lock_den,
            })
        }
        "age" => {
            let coverage = timer().coverage();
            let share = coverage.older_than(number(inputs, "older_than_circuits"));
            json!({ "share": share, "mean_age_circuits": coverage.mean_age() })
        }
        "reached_joints" => json!(reached_joints(&timer(), count("joints"))),
        "never_reached_points" => json!(never_reached_of_points(&timer(), &counts("offsets"))),
        "every_nth" => {
            let nth = every_nth(count("joints"), count("n")).unwrap();
            json!({ "reached": nth.reached, "never": nth.never, "spacing": nth.spacing, "wait_circuits": nth.wait })
        }
        "every_nth_with_attachments" => {
            let blocked = counts("blocked_residues");
            let attachments = count("attachment_pitches");
            json!(every_nth_with_attachments(count("joints"), count("n"), attachments, &blocked).unwrap())
        }
        "lock_time" => {
            let lock = lock_time(
                number(inputs, "circuit_s"),
                number(inputs, "run_s"),
                number(inputs, "period_s"),
                count("lock_den"),
                number(inputs, "ratio_error"),
                number(inputs, "correlation_s"),
            )?;
            json!({
                "starved_s": lock.starved,
                "constant": lock.constant,
                "random": lock.random,
                "contiguous": lock.contiguous,
            })
        }
        "lock_risk" => json!(lock_risk(
            number(inputs, "circuit_s"),
            number(inputs, "period_s"),
            number(inputs, "run_s"),
            number(inputs, "tolerance"),
            number(inputs, "longest_wait_s"),
        )),
        "manual_interval" => {
            let rounds = ManualRounds {
                interval: number(inputs, "mean_s"),
                spread: number(inputs, "cv"),
                miss: number(inputs, "miss"),
            };
            json!({
                "mean": rounds.mean(),
                "sd": rounds.variance().sqrt(),
                "p50": rounds.quantile(0.5).unwrap(),
                "p95": rounds.quantile(0.95).unwrap(),
                "laplace": rounds.laplace(number(inputs, "k_per_s")),
            })
        }
        "simulate" => return simulated(inputs, &case["expected"]),
        _ => return None,
    })
}

/// Runs a timetable written as `10 x [57600 s at 0.075 m/s, 28800 s stop]`; answers the keys that are expected.
fn simulated(inputs: &Value, expected: &Value) -> Answer {
    let (times, day) = inputs["segments"].as_str()?.split_once(" x [")?;
    let segment = |text: &str| -> Option<Segment> {
        let (duration, rest) = text.trim().split_once(" s ")?;
        let speed = if rest == "stop" { "0" } else { rest.strip_prefix("at ")?.strip_suffix(" m/s")? };
        Some(Segment { duration: duration.parse().ok()?, speed: speed.parse().ok()? })
    };
    let day: Vec<Segment> = day.trim_end_matches(']').split(',').map(segment).collect::<Option<_>>()?;
    let line = Simulation {
        loop_length: number(inputs, "loop_m"),
        joints: inputs["joints"].as_u64()? as usize,
        segments: &day.repeat(times.parse().ok()?),
        run: number(inputs, "run_s"),
        dwell: number(inputs, "dwell_s"),
        clock: if inputs["clock"] == "wall" { Clock::Wall } else { Clock::Machine },
        interlocked: inputs["interlock"].as_bool().unwrap_or(true),
        phase: 0.0,
        every: 1,
        counter_reset: false,
    };
    let result = simulate(&line).unwrap();
    let mut answer = json!({ "never": result.never, "standing_run_s": result.standing_run, "hits": result.hits });
    answer.as_object_mut()?.retain(|key, _| expected.get(key).is_some());
    Some(answer)
}
