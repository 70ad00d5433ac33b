//! What a joint needs: the longest wait, the smallest shot, the demand of a line.

use super::{JointOil, periodic_fill};
use crate::lubrication::rotation::Rotation;

/// Halvings of the bracket of the smallest shot.
const HALVINGS: usize = 60;

/// Longest wait (s) after which a joint that was full still holds the share `floor`; `loss_rate` 1/s, > 0.
pub fn longest_wait(floor: f64, loss_rate: f64) -> f64 {
    -floor.ln() / loss_rate
}

/// Oil that a joint of `capacity` (m³) loses a second at the mean fill `target` (0.5 is usual): m³/s of running time.
///
/// Times the number of joints it is the demand of the line.
pub fn demand(loss_rate: f64, target: f64, capacity: f64) -> f64 {
    loss_rate * target * capacity
}

/// Smallest dose (m³) that keeps every joint above `floor` (share of the capacity).
///
/// `None` if the timer never reaches some joints, or if even full joints fall below the floor in the longest wait.
/// The dose of `oil` is not read. Bisection on a fill that rises with the dose.
pub fn smallest_shot(rotation: &Rotation, circuit: f64, oil: &JointOil, floor: f64) -> Option<f64> {
    let kept = (-oil.loss_rate * rotation.worst_wait() as f64 * circuit).exp();
    if rotation.never_reached() > 0.0 || kept < floor {
        return None;
    }
    let (mut low, mut high) = (0.0, oil.capacity);
    for _ in 0..HALVINGS {
        let dose = 0.5 * (low + high);
        if periodic_fill(rotation, circuit, &JointOil { dose, ..*oil }).lowest >= floor {
            high = dose;
        } else {
            low = dose;
        }
    }
    Some(high)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lubrication::rotation::of_timer;

    #[test]
    fn the_smallest_shot_just_keeps_the_floor() {
        let oil = JointOil { dose: 0.0, capacity: 2.0, loss_rate: 1e-6, uptake: 0.0 };
        let rotation = of_timer(1237, 300, 3300);
        let dose = smallest_shot(&rotation, 1237.0, &oil, 0.5).unwrap();
        let lowest = |dose| periodic_fill(&rotation, 1237.0, &JointOil { dose, ..oil }).lowest;
        assert!(lowest(dose * 1.000001) >= 0.5 && lowest(dose * 0.999999) < 0.5);
        assert_eq!(smallest_shot(&of_timer(1200, 600, 3000), 1200.0, &oil, 0.5), None);
        assert_eq!(smallest_shot(&rotation, 1237e3, &oil, 0.5), None);
        assert!(((-1e-6 * longest_wait(0.4, 1e-6)).exp() - 0.4).abs() < 1e-15);
    }
}
