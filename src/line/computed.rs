//! What is computed of a line, and its numbers under their public names.

use super::checked::Checked;
use super::course::Course;
use super::driving::Driving;
use super::oiling::Oiling;
use super::reach::Reach;
use super::result::Evaluation;
use super::settle::Settled;
use super::starting::Starting;
use super::warnings::warnings;
use super::wearing::Wearing;
use crate::circuit::{EventKind as Bend, Kinematics, KinematicsSi, Tension, TensionSi, Way};
use crate::drive::{DriveState, DriveStateSi};
use crate::economics::{Cost, CostSi};
use crate::error::Result;
use crate::joint::{EventKind, EventSi, JointState, JointStateSi, RollerContactSi};
use crate::lubrication::fill::demand;
use crate::lubrication::loss::{after_wash_fill, solids_rate, time_to_block};
use crate::lubrication::{FillState, FillStateSi, LossPartsSi, LubricationSi};
use crate::quantity::unit::ONE;
use crate::quantity::{Field, Note, Notes, Place, Row, infinite};
use crate::supply::{SupplyState, SupplyStateSi};
use crate::wear::{WearState, WearStateSi};
use std::borrow::Cow;

/// Share of the capacity at which the demand of a joint is quoted: half full.
const TARGET_FILL: f64 = 0.5;

/// A line, computed: what each room gave. Numbers and warnings are taken out of it as they are wanted.
pub struct Computed {
    pub(super) survey: Checked,
    pub(super) course: Course,
    pub(super) oiling: Oiling,
    pub(super) reach: Reach,
    pub(super) settled: Settled,
    pub(super) starting: Starting,
    pub(super) wearing: Wearing,
    pub(super) driving: Driving,
    pub(super) supply: SupplyStateSi,
    pub(super) cost: CostSi,
}

/// The groups of results of an [`Evaluation`](super::Evaluation), without survey, warnings and cautions.
#[derive(Debug, Clone, PartialEq)]
pub struct Numbers {
    /// Lengths, times and temperatures.
    pub kinematics: Kinematics,
    /// Pull and tension.
    pub tension: Tension,
    /// What the joints go through.
    pub joint: JointState,
    /// Oil in the joints.
    pub fill: FillState,
    /// Wear and life.
    pub wear: WearState,
    /// Power, current, energy.
    pub drive: DriveState,
    /// Oil used and its supply.
    pub supply: SupplyState,
    /// Cost of a year.
    pub cost: Cost,
}

impl Numbers {
    fn are_finite(&self) -> Result<()> {
        let notes = &mut Notes::default();
        self.kinematics.check(&Place::root("kinematics"), &Row::BLANK, notes)?;
        self.tension.check(&Place::root("tension"), &Row::BLANK, notes)?;
        self.joint.check(&Place::root("joint"), &Row::BLANK, notes)?;
        self.fill.check(&Place::root("fill"), &Row::BLANK, notes)?;
        self.wear.check(&Place::root("wear"), &Row::BLANK, notes)?;
        self.drive.check(&Place::root("drive"), &Row::BLANK, notes)?;
        self.supply.check(&Place::root("supply"), &Row::BLANK, notes)?;
        self.cost.check(&Place::root("cost"), &Row::BLANK, notes)
    }
}

impl Computed {
    /// Every number, under its public name and unit; refused where one of them is infinite or none.
    pub fn numbers(&self) -> Result<Numbers> {
        let Computed { survey, course, oiling, reach, settled, starting, wearing, driving, .. } = self;
        let numbers = Numbers {
            kinematics: Kinematics::public(kinematics(survey, course), &ONE),
            tension: Tension::public(tension(course, settled, starting), &ONE),
            joint: JointState::public(joint(course, settled, wearing), &ONE),
            fill: FillState::public(fill(survey, course, oiling, reach), &ONE),
            wear: WearState::public(wear(wearing), &ONE),
            drive: DriveState::public(drive(survey, driving), &ONE),
            supply: SupplyState::public(self.supply.clone(), &ONE),
            cost: Cost::public(self.cost.clone(), &ONE),
        };
        numbers.are_finite().map_err(infinite::<Evaluation>)?;
        Ok(numbers)
    }

    /// The warnings that the numbers call for, with code, field and value, but without limits and sentences.
    pub fn warning_codes(&self, numbers: &Numbers) -> Vec<Note> {
        warnings(self, numbers, true).warnings
    }
}

fn kinematics(survey: &Checked, course: &Course) -> KinematicsSi {
    let layout = &course.layout;
    let teeth = layout.drive().turn().and_then(|turn| turn.teeth).unwrap_or_default();
    KinematicsSi {
        joints: i64::from(layout.joints),
        joints_counted: layout.counted,
        survey_length: layout.length,
        length: layout.length,
        circuit_time: layout.circuit_time,
        joint_time: layout.joint_time,
        speed_ripple: crate::chain::speed_ripple(f64::from(teeth)),
        running: survey.running_share,
        section_temperature: course.temperatures.sections.iter().map(|s| [s.inlet, s.outlet, s.mean]).collect(),
        mean_temperature: course.temperatures.mean,
    }
}

fn tension(course: &Course, settled: &Settled, starting: &Starting) -> TensionSi {
    let march = &settled.march;
    let drive = course.layout.drive();
    TensionSi {
        pull: march.pull,
        tight: march.tight,
        slack: march.slack,
        least: march.least,
        required_take_up: march.required_take_up,
        take_up_sensitivity: march.take_up_sensitivity,
        heaviest_strand: course.layout.strand_tension(march.greatest, drive.centrifugal),
        breakaway_pull: starting.breakaway.pull,
        shares: march.shares().map(|(cause, share)| (Cow::Borrowed(cause.as_str()), share)).collect(),
        profile: march.profile.clone(),
    }
}

fn joint(course: &Course, settled: &Settled, wearing: &Wearing) -> JointStateSi {
    let events = settled.events.iter().zip(&wearing.event_coefficients).map(|(joint, wear)| EventSi {
        section: joint.event.section as i64,
        kind: match joint.event.kind {
            Bend::Entry => EventKind::Entry,
            Bend::Exit => EventKind::Exit,
            Bend::Idler => EventKind::Idler,
        },
        count: joint.event.count,
        time: joint.event.time,
        tension: joint.event.tension,
        angle: joint.event.angle,
        temperature: joint.event.temperature,
        rest: joint.event.rest,
        rest_tension: joint.event.rest_tension,
        viscosity: joint.viscosity,
        pressure: joint.contact.pressure,
        contact_pressure: joint.contact.arc.mean_pressure,
        film: joint.reached.film,
        lambda: joint.reached.lambda,
        lambda_full: joint.contact.lambda_at_fill_1,
        regime: joint.reached.regime,
        asperity_share: joint.reached.asperity_share,
        friction_reached: joint.reached.coefficient,
        friction: joint.friction,
        flash_temperature: joint.contact.flash_temperature(joint.reached.coefficient),
        wear_coefficient_reached: *wear,
    });
    let roller = settled.rollers.iter().map(|rollers| RollerContactSi {
        section: rollers.section as i64,
        load: rollers.load,
        contact_pressure: rollers.contact.arc.mean_pressure,
        lambda: rollers.reached.lambda,
        friction_reached: rollers.friction_reached,
        friction: rollers.friction,
    });
    let bends = |way: &Way| matches!(way, Way::Turn(_));
    let places = &course.layout.places;
    let of = |section: usize| (section as i64, settled.coefficients.joint[section]);
    let turns = places.iter().filter(|place| place.bends() && bends(&place.way)).map(|place| of(place.section));
    let idlers = places.iter().filter(|place| place.bends() && !bends(&place.way)).map(|place| of(place.section));
    JointStateSi {
        events: events.collect(),
        mu_joint: turns.chain(idlers).collect(),
        mu_joint_drive: settled.coefficients.joint[course.layout.drive().section],
        roller: roller.collect(),
        plate_track: settled.coefficients.plate_track,
        rounds: settled.rounds,
    }
}

fn fill(survey: &Checked, course: &Course, oiling: &Oiling, reach: &Reach) -> FillStateSi {
    let at = &oiling.application;
    let (most, least) = oiling.window(survey, course, reach.worst_wait);
    let losses = &oiling.losses;
    let oil = &survey.si.oil;
    let solids = solids_rate(
        reach.mean_reached * oiling.capacity.total,
        losses.evaporation,
        losses.oxidation,
        oil.residue_evaporation_share,
        oil.residue_oxidation_share,
    );
    let residue = time_to_block(oiling.capacity.annulus, solids) / survey.running_share;
    FillStateSi {
        never_reached: reach.never,
        never_reached_if_miscounted: reach.never_if_miscounted,
        wait: reach.waits.iter().map(|wait| wait.wait).collect(),
        wait_weight: reach.waits.iter().map(|wait| wait.weight).collect(),
        wait_circuits: reach.wait_circuits.clone(),
        wait_hours: matches!(survey.si.lubrication, LubricationSi::Manual(_))
            .then(|| reach.waits.iter().map(|wait| wait.wait).collect()),
        share_of_joints: reach.share_of_joints.clone(),
        mean_interval: reach.mean_interval,
        worst_wait: reach.worst_wait,
        visits: reach.visits,
        pass_chance: reach.pass_chance,
        always_full: reach.always_full,
        lock_risk: reach.lock_risk,
        application_section: Some(at.spot.section as i64),
        application_position: Some(at.spot.position),
        application_side: Some(at.spot.side),
        application_score: at.score,
        application_temperature: at.temperature,
        viscosity_application: at.viscosity,
        time_available: at.time_available,
        entry_plate_gap: at.plate_time,
        entry_joint: at.annulus_time,
        entered_share: at.entered,
        viscosity_most: most,
        viscosity_least: least,
        capacity: oiling.capacity.total,
        retained_width: oiling.retained_width,
        dose_in_joint: reach.dose,
        loss_rate: oiling.loss_rate,
        loss_parts: LossPartsSi {
            evaporation: losses.evaporation,
            oxidation: losses.oxidation,
            articulation: losses.articulation,
            wash: losses.wash,
            dust: losses.dust,
            standing: losses.standing,
        },
        half_life: losses.half_life(),
        after_shot: reach.after_shot,
        mean: reach.mean(),
        mean_reached: reach.mean_reached,
        lowest_reached: reach.lowest_reached,
        after_wash: survey
            .si
            .duty
            .wash_interval
            .map(|_| after_wash_fill(reach.mean_reached, survey.si.duty.wash_removed_share)),
        effective: reach.effective,
        demand: demand(oiling.loss_rate, TARGET_FILL, oiling.capacity.total),
        residue: residue.is_finite().then_some(residue),
    }
}

fn wear(wearing: &Wearing) -> WearStateSi {
    WearStateSi {
        coefficient_reached: wearing.coefficient_reached,
        coefficient_never: wearing.coefficient_never,
        temperature: wearing.temperature,
        hardness_factor: wearing.hardness_factor,
        limit: wearing.limit,
        sliding: wearing.sliding_rate,
        elongation_1_year: wearing.elongation_1_year,
        life: wearing.lives.life,
        life_mean: wearing.lives.mean,
        life_local: wearing.lives.local,
        life_pin: wearing.lives.pin,
        life_bush: wearing.lives.bush,
        case_through: wearing.lives.case_through,
        governs: wearing.lives.governs,
        service_life: wearing.service_life,
        sprocket_flank: wearing.sprocket_flank,
        roller_bush: wearing.roller_bush,
    }
}

fn drive(survey: &Checked, driving: &Driving) -> DriveStateSi {
    let running = driving.load.running;
    DriveStateSi {
        chain_power: driving.load.chain_power,
        shaft_power: driving.load.shaft_power,
        load: driving.load.load_ratio,
        current: running.map(|running| running.clamp_current),
        input_power: driving.input_power,
        power_factor: driving.power_factor,
        slip: running.map(|running| running.slip),
        no_load_current: driving.load.no_load_current,
        current_per_pull: running.map(|running| running.current_per_pull),
        energy: driving.input_power.unwrap_or(0.0) * survey.running_share,
        pull_detectable: driving.pull_detectable,
        current_drop_joint: driving.current_drop_joint,
        current_drop_all: driving.current_drop_all,
    }
}
