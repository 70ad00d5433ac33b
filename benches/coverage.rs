//! Closed form of coverage against the event simulator, on the same timers.
#![allow(missing_docs, clippy::unwrap_used)]

use criterion::{Criterion, criterion_group, criterion_main};
use pinfilm::lubrication::coverage::{Clock, Segment, Simulation, Timer, simulate};
use std::hint::black_box;

/// Name, circuit, run, dwell (s), joints of the timers of invented lines; walked for a week.
const TIMERS: [(&str, f64, f64, f64, usize); 3] =
    [("oven", 1200.0, 900.0, 2820.0, 900), ("slat", 126.0, 120.0, 1680.0, 504), ("floor", 1240.0, 900.0, 27900.0, 620)];

fn coverage(criterion: &mut Criterion) {
    for (name, circuit, run, dwell, joints) in TIMERS {
        let mut group = criterion.benchmark_group(name);
        group.bench_function("closed form", |bench| {
            bench.iter(|| Timer::new(black_box(circuit), run, dwell).unwrap().coverage().worst_wait());
        });
        let segments = [Segment { duration: 604_800.0, speed: 0.1 }];
        let line = Simulation {
            loop_length: 0.1 * circuit,
            joints,
            segments: &segments,
            run,
            dwell,
            clock: Clock::Machine,
            interlocked: true,
            phase: 0.0,
            every: 1,
            counter_reset: false,
        };
        group.bench_function("simulator, a week", |bench| bench.iter(|| simulate(black_box(&line)).unwrap().never));
        group.finish();
    }
}

criterion_group!(benches, coverage);
criterion_main!(benches);
