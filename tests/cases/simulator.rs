//! Closed form and event simulator of coverage on many random lines, where both apply.
//!
//! The two share no arithmetic: one is a gap theorem on whole ticks, the other walks every joint past the point.

use pinfilm::lubrication::coverage::{Clock, Segment, Simulation, Timer, every_nth, reached_joints, simulate};
use pinfilm::study::philox4x32;

const CASES: u32 = 12_000;

#[test]
fn closed_form_and_simulator_agree_on_random_lines() {
    let (mut locked, mut counted, mut stopped) = (0, 0, 0);
    for case in 0..CASES {
        let [a, b, c, d] = philox4x32([case, 0, 0, 0], [20, 26]);
        let circuit = 1 + i64::from(a % 48);
        let period = 2 + i64::from(b % 47);
        let run = 1 + i64::from(c) % period;
        // one joint for each tick of the circuit: the phases over which the closed form integrates
        let joints = circuit;
        let every = if d % 4 == 0 { 1 + i64::from(d >> 8) % 5 } else { 1 };
        let stops = if d % 3 == 0 { (d >> 4) % 3 } else { 0 };
        // a wall clock only where the chain never stops: in stops it is another timer
        let clock = if stops == 0 && d % 2 == 0 { Clock::Wall } else { Clock::Machine };

        let timer = Timer::from_ticks(circuit, run, period - run).unwrap();
        let closed = timer.counting(every, joints).unwrap().coverage();
        let circuits = 3 * period * every;
        let moving =
            Segment { duration: (circuits * circuit) as f64 / f64::from(stops + 1), speed: 0.25 + f64::from(d % 7) };
        let mut segments = vec![moving];
        for stop in 0..stops {
            segments.extend([Segment { duration: 11.7 + f64::from(stop), speed: 0.0 }, moving]);
        }
        let walked = simulate(&Simulation {
            loop_length: moving.speed * circuit as f64,
            joints: joints as usize,
            segments: &segments,
            run: run as f64,
            dwell: (period - run) as f64,
            clock,
            interlocked: d % 5 == 0,
            phase: 0.0,
            every: every as u64,
            counter_reset: false,
        })
        .unwrap();

        let what = format!("case {case}: C {circuit} R {run} P {period} n {every} {clock:?} stops {stops}");
        let waits: Vec<u64> = walked.waits.iter().map(|&(wait, _)| wait).collect();
        let turns = every_nth(joints, every).unwrap().wait;
        let expected: Vec<u64> = closed.waits().iter().map(|wait| (wait.circuits * turns) as u64).collect();
        if every == 1 {
            assert_eq!(walked.never as i64, joints - reached_joints(&timer, joints), "{what}");
            assert_eq!(walked.never as f64, (closed.never_reached * joints as f64).round(), "{what}");
            assert_eq!(waits, expected, "{what}");
        } else {
            // a counter on a short loop meets few phases: its waits are among those of the closed form
            assert!(waits.iter().all(|wait| expected.contains(wait)), "{what}: {waits:?} {expected:?}");
            counted += 1;
        }
        locked += u32::from(closed.never_reached > 0.0);
        stopped += u32::from(stops > 0);
    }
    println!(
        "closed form and simulator agree in {CASES} of {CASES} random cases: {locked} locked, {counted} with a counter, \
         {stopped} with stops"
    );
}
