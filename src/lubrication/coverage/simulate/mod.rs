//! Event by event: a timer, a counter and a chain that stops, changes speed and rests at night.

mod passages; // the timer's phase, the counter and the joints, passage by passage

use crate::error::{Code, Error, Result};
use passages::{Counter, Joints, Phase};

/// Most passages that a simulation walks through: some seconds.
const MOST_PASSAGES: f64 = 2e8;

/// A stretch of time at one speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    /// Length of the stretch, s; >= 0.
    pub duration: f64,
    /// Chain speed, m/s; 0 is a stop.
    pub speed: f64,
}

/// What moves the timer on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Clock {
    /// The time of day: it goes on in stops.
    Wall,
    /// Running time of the chain: it stands in stops.
    Machine,
}

/// A line to simulate. Joint j of N stands j/N of the loop before the application point at the start.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Simulation<'a> {
    /// Length of the loop, m; > 0.
    pub loop_length: f64,
    /// Joints on it; >= 1.
    pub joints: usize,
    /// Speeds and stops, in order.
    pub segments: &'a [Segment],
    /// Time the timer oils in each period, s; > 0.
    pub run: f64,
    /// Time it rests in each period, s; >= 0.
    pub dwell: f64,
    /// What moves the timer on.
    pub clock: Clock,
    /// Whether the chain's drive interlocks the applicator: nothing is delivered onto a standing chain.
    pub interlocked: bool,
    /// Phase of the timer at the start, s after the beginning of a run; >= 0.
    pub phase: f64,
    /// Only every so many-th joint is dosed; 1 doses every joint.
    pub every: u64,
    /// The counter starts again at each run of the timer, so that the first joint of a run is dosed.
    pub counter_reset: bool,
}

/// What became of the joints.
#[derive(Debug, Clone, PartialEq)]
pub struct Simulated {
    /// Shots that each joint got.
    pub shots: Vec<u32>,
    /// Shots in all.
    pub hits: u64,
    /// Joints that got none.
    pub never: usize,
    /// Waits between two shots at the same joint in circuits, and how often each occurred; shortest first.
    pub waits: Vec<(u64, u64)>,
    /// The longest time between two shots at the same joint by the wall clock, s; 0 if no joint got two.
    pub longest_wait: f64,
    /// The longest running time between two shots at the same joint, s.
    pub longest_running_wait: f64,
    /// The longest time that each joint was without oil by the wall clock, s: between two shots, from the start to its
    /// first, from its last to the end.
    pub longest_dry: Vec<f64>,
    /// Time the applicator delivered onto a standing chain, s: a wall clock without an interlock.
    pub standing_run: f64,
    /// Time of runs lost because the chain stood and the interlock held the applicator, s: a wall clock only.
    pub lost_run: f64,
    /// Time of runs while the chain moved, s.
    pub moving_run: f64,
    /// Travel in circuits.
    pub circuits: f64,
    /// Running time, s.
    pub running: f64,
}

/// Walks every passage of every joint past the application point.
///
/// A joint is shot if the timer is in its run as it passes and the chain moves, and the counter has come to it. A
/// passage at the instant of a stop belongs to the next start. Agrees exactly with [`Timer::coverage`] at constant
/// speed with a machine clock, or with a wall clock and no stops. An error for a timer that no timer can be, or for a
/// simulation of more than some hundred million passages.
///
/// [`Timer::coverage`]: super::Timer::coverage
pub fn simulate(line: &Simulation) -> Result<Simulated> {
    walk(line, &mut |_, _| {}, &mut |_| true)
}

/// [`simulate`], and tells `on_shot` of every shot as it falls: the joint, and the running time, s.
pub fn observe(line: &Simulation, on_shot: &mut dyn FnMut(usize, f64)) -> Result<Simulated> {
    walk(line, on_shot, &mut |_| true)
}

/// [`simulate`], asking now and then whether to go on; told is the share of the time that is done.
///
/// Error `stopped` where the answer is no.
pub fn simulate_while(line: &Simulation, go_on: &mut dyn FnMut(f64) -> bool) -> Result<Simulated> {
    walk(line, &mut |_, _| {}, go_on)
}

/// Passages between two questions whether to go on: some milliseconds.
const ASK_EVERY: u64 = 1 << 17;

fn walk(
    line: &Simulation,
    on_shot: &mut dyn FnMut(usize, f64),
    go_on: &mut dyn FnMut(f64) -> bool,
) -> Result<Simulated> {
    let clock = Phase::of(line)?;
    let spacing = line.loop_length / line.joints as f64;
    let travel_in_all: f64 = line.segments.iter().map(|s| s.speed * s.duration).sum();
    if travel_in_all / spacing > MOST_PASSAGES {
        let message = format!(
            "the simulation has {:.1e} passages of joints, more than {MOST_PASSAGES:.0e}: simulate a shorter time",
            travel_in_all / spacing
        );
        return Err(Error::new(Code::OutOfRange, "segments", message).limit("2e8 passages"));
    }

    let mut joints = Joints::new(line.joints);
    let mut counter = Counter::of(line);
    let (mut wall, mut running, mut travel) = (0.0, 0.0, 0.0);
    let (mut standing_run, mut moving_run, mut next) = (0.0, 0.0, 0_u64);
    for segment in line.segments {
        if segment.speed > 0.0 {
            let end = travel + segment.speed * segment.duration;
            // The stop, or the change of speed, comes before a joint that is just there.
            while next as f64 * spacing < end - 1e-9 * spacing {
                let since = ((next as f64 * spacing - travel) / segment.speed).max(0.0);
                let (wall, running) = (wall + since, running + since);
                let run = clock.run_at(if line.clock == Clock::Wall { wall } else { running });
                if run.is_some_and(|run| counter.due(next, run)) {
                    on_shot((next % line.joints as u64) as usize, running);
                    joints.shoot(next, wall, running);
                }
                next += 1;
                if next.is_multiple_of(ASK_EVERY) && !go_on(next as f64 * spacing / travel_in_all) {
                    let message = "the simulation was stopped before its end; nothing of it was kept";
                    return Err(Error::new(Code::Stopped, "progress", message));
                }
            }
            let now = if line.clock == Clock::Wall { wall } else { running };
            moving_run += clock.run_until(now + segment.duration) - clock.run_until(now);
            travel = end;
            running += segment.duration;
        } else if line.clock == Clock::Wall {
            standing_run += clock.run_until(wall + segment.duration) - clock.run_until(wall);
        }
        wall += segment.duration;
    }
    let (standing_run, lost_run) = if line.interlocked { (0.0, standing_run) } else { (standing_run, 0.0) };
    joints.close(wall);
    Ok(Simulated {
        hits: joints.shots.iter().map(|&shots| u64::from(shots)).sum(),
        never: joints.shots.iter().filter(|&&shots| shots == 0).count(),
        shots: joints.shots,
        waits: joints.waits.into_iter().collect(),
        longest_wait: joints.longest_wall,
        longest_running_wait: joints.longest_running,
        longest_dry: joints.longest_dry,
        standing_run,
        moving_run,
        lost_run,
        circuits: travel / line.loop_length,
        running,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lubrication::coverage::{Timer, reached_joints};
    use proptest::prelude::*;

    fn days(running: f64, stopped: f64) -> Vec<Segment> {
        let day = [Segment { duration: running, speed: 0.075 }, Segment { duration: stopped, speed: 0.0 }];
        day.repeat(10)
    }

    fn oven<'a>(segments: &'a [Segment], clock: Clock) -> Simulation<'a> {
        Simulation {
            loop_length: 90.0,
            joints: 900,
            segments,
            run: 600.0,
            dwell: 3000.0,
            clock,
            interlocked: false,
            phase: 0.0,
            every: 1,
            counter_reset: false,
        }
    }

    #[test]
    fn a_night_of_whole_periods_keeps_the_lock_another_breaks_it() {
        let (whole, broken) = (days(57_600.0, 28_800.0), days(57_000.0, 29_400.0));
        assert_eq!(simulate(&oven(&whole, Clock::Wall)).unwrap().never, 450);
        assert_eq!(simulate(&oven(&broken, Clock::Wall)).unwrap().never, 0);
        assert_eq!(simulate(&oven(&broken, Clock::Machine)).unwrap().never, 450);
    }

    #[test]
    fn an_interlock_moves_standing_run_to_lost_run() {
        let whole = days(57_600.0, 28_800.0);
        let free = simulate(&oven(&whole, Clock::Wall)).unwrap();
        let held = simulate(&Simulation { interlocked: true, ..oven(&whole, Clock::Wall) }).unwrap();
        assert_eq!((free.standing_run, free.lost_run), (48_000.0, 0.0));
        assert_eq!((held.standing_run, held.lost_run), (0.0, 48_000.0));
        assert_eq!(free.shots, held.shots);
        assert_eq!(simulate(&oven(&whole, Clock::Machine)).unwrap().standing_run, 0.0);
    }

    #[test]
    fn twice_the_speed_halves_the_wait_in_seconds() {
        let slow = [Segment { duration: 36_000.0, speed: 0.075 }];
        let fast = [Segment { duration: 18_000.0, speed: 0.15 }];
        let always = |segments| Simulation { dwell: 0.0, ..oven(segments, Clock::Machine) };
        let (slow, fast) = (simulate(&always(&slow)).unwrap(), simulate(&always(&fast)).unwrap());
        assert_eq!(slow.shots, fast.shots);
        assert!((slow.longest_wait - 1200.0).abs() < 1e-6 && (fast.longest_wait - 600.0).abs() < 1e-6);
    }

    #[test]
    fn a_counter_that_restarts_can_starve_a_loop_that_a_free_one_covers() {
        // Run of one circuit in five: a free counter of 7 reaches all 900, a restarted one every seventh for ever.
        let time = [Segment { duration: 1200.0 * 5.0 * 60.0, speed: 0.075 }];
        let line = Simulation { run: 1200.0, dwell: 4800.0, every: 7, ..oven(&time, Clock::Machine) };
        assert_eq!(simulate(&line).unwrap().never, 0);
        let restarted = simulate(&Simulation { counter_reset: true, ..line }).unwrap();
        assert_eq!(restarted.never, 900 - 129);
    }

    #[test]
    fn impossible_simulations_are_refused() {
        let long = [Segment { duration: 1e12, speed: 1.0 }];
        assert_eq!(simulate(&oven(&long, Clock::Wall)).unwrap_err().code, Code::OutOfRange);
        let none = Simulation { run: 0.0, ..oven(&[], Clock::Wall) };
        assert_eq!(simulate(&none).unwrap_err().code, Code::OutOfRange);
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 150, failure_persistence: None, ..Default::default() })]
        #[test]
        fn constant_speed_agrees_with_the_closed_form(
            circuit in 1..60_i64, period in 2..50_i64, share in 0.0..1.0, every in 1..6_i64, wall: bool, stops in 0..3_usize,
        ) {
            let run = 1 + (share * period as f64) as i64;
            // One joint for each tick of the circuit: the phases are those that the closed form integrates over.
            let joints = circuit;
            let timer = Timer::from_ticks(circuit, run, period - run).unwrap();
            let due = timer.counting(every, joints).unwrap().coverage();
            let circuits = (3 * period * every) as f64;
            let moving = Segment { duration: circuits * circuit as f64 / (stops + 1) as f64, speed: 0.5 };
            let mut segments = vec![moving];
            for _ in 0..stops {
                segments.extend([Segment { duration: 7.3, speed: 0.0 }, moving]);
            }
            let line = Simulation {
                loop_length: 0.5 * circuit as f64,
                joints: joints as usize,
                segments: &segments,
                run: run as f64,
                dwell: (period - run) as f64,
                clock: if wall && stops == 0 { Clock::Wall } else { Clock::Machine },
                interlocked: false,
                phase: 0.0,
                every: every as u64,
                counter_reset: false,
            };
            let walked = simulate(&line).unwrap();
            if every == 1 {
                prop_assert_eq!(walked.never as i64, joints - reached_joints(&timer, joints));
                prop_assert_eq!(walked.never as f64, (due.never_reached * joints as f64).round());
                let waits: Vec<u64> = walked.waits.iter().map(|&(circuits, _)| circuits).collect();
                let closed: Vec<u64> = due.waits().iter().map(|wait| wait.circuits as u64).collect();
                prop_assert_eq!(waits, closed);
            } else {
                // Few joints are due: their waits are among those of the closed form.
                let turns = every / crate::lubrication::coverage::gcd(every, joints);
                for &(circuits, _) in &walked.waits {
                    prop_assert!(due.waits().iter().any(|wait| (wait.circuits * turns) as u64 == circuits));
                }
            }
        }
    }
}
