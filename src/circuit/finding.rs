//! What a circuit gives reason to say: findings with their numbers, for others to put into words.

use super::{Contact, GRAVITY, Layout, March, Plane, TurnKind, Way, centrifugal_tension, friction_heating, sag};
use std::f64::consts::TAU;

/// Teeth below which polygon action is rough.
const FEW_TEETH: u32 = 8;
/// Chain speed (m/s) above which conveyor practice ends.
const FAST: f64 = 2.5;
/// How far the turns of a plan may miss one revolution, rad (a degree, survey accuracy).
const PLAN_TOLERANCE: f64 = TAU / 360.0;
/// Share by which counted joints may differ from computed ones (elongation and adjustment are less).
const COUNT_TOLERANCE: f64 = 0.05;
/// Sag over span from which on the straight chain of the march is no picture of the strand.
const LARGE_SAG: f64 = 0.05;
/// Weight over tension in a vertical curve whose friction the march neglects.
const CURVE_WEIGHT: f64 = 0.2;
/// Jump of joint tension between straight and loaded turn, over tension.
const TENSION_JUMP: f64 = 0.02;
/// Friction heat that the temperature round the loop leaves out, K.
const HEATING: f64 = 5.0;

/// Something worth a warning or caution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Finding {
    /// Joints were computed, not counted: dosing every n-th joint may reach others than computed.
    JointsNotCounted {
        /// Computed joints.
        joints: u32,
    },
    /// An odd number of joints needs a cranked link.
    OddJoints {
        /// Counted joints.
        joints: u32,
    },
    /// Counted joints and surveyed lengths contradict each other.
    JointsDiffer {
        /// Counted joints.
        counted: u32,
        /// Joints that the lengths give.
        computed: u32,
    },
    /// A sprocket with few teeth.
    FewTeeth {
        /// The turn.
        section: usize,
        /// Its teeth.
        teeth: u32,
    },
    /// The chain is faster than conveyor chains usually are.
    FastChain {
        /// Speed, m/s.
        speed: f64,
    },
    /// The turns do not add up to one revolution: a turn is missing or has the wrong side.
    PlanNotClosed {
        /// Sum of side × wrap in the main plane, rad.
        turned: f64,
    },
    /// The take-up is slacker than the chain needs.
    SlackChain {
        /// Tension at the drive exit, N.
        take_up: f64,
        /// Tension that it should have, N.
        required: f64,
        /// Least tension, N; zero or less: the chain piles up and tensions there are not physical.
        least: f64,
    },
    /// A span sags much.
    LargeSag {
        /// The straight.
        section: usize,
        /// Sag over span; infinite where there is no tension.
        sag_share: f64,
    },
    /// In a vertical curve the weight presses on the track, which the march neglects.
    CurveWeight {
        /// The turn.
        section: usize,
        /// Weight on a radian over tension.
        weight_share: f64,
    },
    /// A concave curve without hold-down would lose its chain.
    ChainLifts {
        /// The turn.
        section: usize,
        /// Tension over weight on a radian.
        tension_over_weight: f64,
    },
    /// Load that counts on a turn but not on the straight beside it makes joint tension jump.
    TensionJump {
        /// The turn.
        section: usize,
        /// Jump over tension.
        share: f64,
    },
    /// Friction heats the chain more than the temperature round the loop can leave out.
    FrictionHeating {
        /// Upper bound, K.
        heating: f64,
    },
    /// Rises pull harder than all friction holds: without holdback or brake the chain runs back.
    RunBack {
        /// Pull of the rises, N.
        rises: f64,
        /// Friction, N.
        friction: f64,
    },
    /// The chain drives the drive.
    Overhauling {
        /// Pull, N; negative.
        pull: f64,
    },
    /// The heaviest strand comes too near to the tensile strength.
    Strength {
        /// Its tension at breakaway, N.
        strand_tension: f64,
        /// Tensile strength, N.
        tensile_strength: f64,
        /// Their ratio.
        safety: f64,
    },
}

/// Writes down what the layout alone gives reason to say.
pub fn inspect_layout(layout: &Layout, findings: &mut Vec<Finding>) {
    let joints = layout.joints;
    if !layout.counted {
        findings.push(Finding::JointsNotCounted { joints });
    } else if f64::from(joints.abs_diff(layout.computed_joints)) > COUNT_TOLERANCE * f64::from(joints) {
        findings.push(Finding::JointsDiffer { counted: joints, computed: layout.computed_joints });
    }
    if joints % 2 == 1 {
        findings.push(Finding::OddJoints { joints });
    }
    if layout.speed > FAST {
        findings.push(Finding::FastChain { speed: layout.speed });
    }
    let mut turned = 0.0;
    for place in &layout.places {
        let Some(turn) = place.turn() else { continue };
        if turn.plane == Plane::Main {
            turned += turn.side as f64 * turn.wrap;
        }
        if let Some(teeth) = turn.teeth.filter(|teeth| *teeth < FEW_TEETH) {
            findings.push(Finding::FewTeeth { section: place.section, teeth });
        }
    }
    if (f64::abs(turned) - TAU).abs() > PLAN_TOLERANCE {
        findings.push(Finding::PlanNotClosed { turned });
    }
}

/// Writes down what the tensions give reason to say.
pub fn inspect_march(layout: &Layout, march: &March, findings: &mut Vec<Finding>) {
    // The last digits of a take-up set to what is required are no reason to complain.
    if march.slack < march.required_take_up * (1.0 - 1e-9) {
        findings.push(Finding::SlackChain {
            take_up: march.slack,
            required: march.required_take_up,
            least: march.least,
        });
    }
    for place in &layout.places {
        let [entry, exit] = march.profile[place.section];
        let least = entry.min(exit);
        match &place.way {
            Way::Straight(straight) if straight.span > 0.0 => {
                let tension = least + place.centrifugal;
                let sag_share = if tension > 0.0 {
                    sag(straight.carried, straight.span, tension) / straight.span
                } else {
                    f64::INFINITY
                };
                if sag_share > LARGE_SAG {
                    findings.push(Finding::LargeSag { section: place.section, sag_share });
                }
            }
            Way::Straight(_) => {}
            Way::Turn(turn) => {
                let jump = centrifugal_tension(place.load, layout.speed);
                let tension = entry + place.centrifugal;
                if tension > 0.0 && jump > TENSION_JUMP * tension {
                    findings.push(Finding::TensionJump { section: place.section, share: jump / tension });
                }
                let vertical = place.rise != 0.0 && matches!(turn.kind, TurnKind::Curve | TurnKind::RollerTurn);
                let weight = place.mass * GRAVITY * turn.radius;
                if vertical && weight > CURVE_WEIGHT * least {
                    findings
                        .push(Finding::CurveWeight { section: place.section, weight_share: weight / least.max(0.0) });
                }
                // A trolley track holds the chain on both sides.
                let open = turn.kind == TurnKind::RollerTurn || turn.contact != Contact::Trolleys;
                if vertical && open && entry.max(exit) > weight {
                    findings.push(Finding::ChainLifts {
                        section: place.section,
                        tension_over_weight: entry.max(exit) / weight,
                    });
                }
            }
        }
    }
    let heating = friction_heating(layout, march.friction());
    if heating > HEATING {
        findings.push(Finding::FrictionHeating { heating });
    }
    let (rises, friction) = (march.cause(super::Cause::Rise), march.friction());
    if rises > friction {
        findings.push(Finding::RunBack { rises, friction });
    }
    if march.pull < 0.0 {
        findings.push(Finding::Overhauling { pull: march.pull });
    }
}
