//! Coverage: which joints of the loop a lubricator really reaches, and how long each waits between two shots.
//!
//! Takes a circuit time, a timer, a counter, a round made by hand or a dripper; gives the waits of the joints, the
//! share of the loop that is never reached, how old the oil of a joint is, and how long an unlucky timer stays locked
//! to the chain. Knows nothing of oil: a shot fired at a joint is not yet oil inside it.
//!
//! A timer against a circulating chain is a rotation of a circle. Every joint comes back after one circuit, by then
//! the timer has turned on by the circuit time modulo its period, and Slater's gap theorem (N. B. Slater, "Gaps and
//! steps for the sequence nθ mod 1", Proc. Camb. Phil. Soc. 63, 1967) says that the waits between two shots take at
//! most three values. All of that is arithmetic of whole ticks and exact: a near miss of a simple fraction and the
//! fraction itself are different machines, and floating point cannot tell them apart.
//!
//! ```
//! use pinfilm::lubrication::coverage::Timer;
//!
//! // An oven chain: one circuit 20 min, oil for 10 min in every hour. The same half of the loop gets it for ever.
//! let oven = Timer::new(1200.0, 600.0, 3000.0)?.coverage();
//! assert_eq!(oven.never_reached, 0.5);
//! // Five minutes more run, three less dwell: every joint is reached, the unluckiest after 13 circuits.
//! let cured = Timer::new(1200.0, 900.0, 2820.0)?.coverage();
//! assert_eq!((cured.never_reached, cured.worst_wait()), (0.0, 13));
//! # Ok::<(), pinfilm::Error>(())
//! ```

mod chance; // drippers, random shots: waits that luck decides
mod counter; // every n-th joint, attachments in the way
mod gaps; // the three-gap theorem on the unit circle, as a student meets it
mod lock; // how long a locked timer starves a stretch, and how likely that is
mod manual; // rounds made by hand: gamma intervals, missed joints
mod simulate; // event by event: stops, shifts, changes of speed
mod timer; // run and dwell against the circuit: waits, shares, ages

pub use chance::{ThreeWaits, drip_wait, drip_waits, expected_covered, shots_to_cover_all};
pub use counter::{
    EveryNth, every_nth, every_nth_with_attachments, every_nth_worst_over, joints_hit, joints_per_second,
    least_coprime, oil_per_circuit, shots_until,
};
pub use gaps::{Gap, three_gaps};
pub use lock::{LockTime, lock_risk, lock_time};
pub use manual::ManualRounds;
pub use simulate::{Clock, Segment, Simulated, Simulation, observe, simulate, simulate_while};
pub use timer::{
    LONGEST_TICKS, Pattern, PointsCoverage, Slater, TICKS_PER_SECOND, Timer, TimerCoverage, Wait, coverage_of_points,
    gcd, never_reached_of_points, reached_joints, reached_joints_of_points, ticks,
};
