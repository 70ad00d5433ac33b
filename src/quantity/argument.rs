//! Rows of the register for formulas that are called by themselves: arguments and results that no survey and no
//! result of a line has under that name.

use super::row::{above, any, at_least, between, up_to};
use super::{Row, unit};

/// The row of that name; a name that is not there does not compile where this is asked in a constant.
pub const fn named(rows: &'static [Row], name: &str) -> &'static Row {
    let mut i = 0;
    while !same(rows[i].name, name) {
        i += 1;
    }
    &rows[i]
}

/// The row of that name, if there is one.
pub const fn find(rows: &'static [Row], name: &str) -> Option<&'static Row> {
    let mut i = 0;
    while i < rows.len() {
        if same(rows[i].name, name) {
            return Some(&rows[i]);
        }
        i += 1;
    }
    None
}

/// Whether two names are the same, also where constants are computed.
pub const fn same(a: &str, b: &str) -> bool {
    let (a, b) = (a.as_bytes(), b.as_bytes());
    let mut i = 0;
    while i < a.len() && i < b.len() && a[i] == b[i] {
        i += 1;
    }
    i == a.len() && i == b.len()
}

/// The default of a row as a number in its unit; none where the row has none.
pub fn default_of(row: &Row) -> Option<f64> {
    row.default.replace('_', "").parse().ok()
}

macro_rules! arguments {
    ($( $name:ident [$unit:ident $(= $default:literal)?] $means:literal $($range:ident: $value:expr)? ; )+) => {
        /// What formulas take and give, in the order of their modules. Allowed ranges are those of sense and of `f64`;
        /// where a formula itself holds for less, it says so and refuses the rest.
        pub const ARGUMENTS: &[Row] = &[ $( Row {
            name: stringify!($name),
            unit: &unit::$unit,
            means: $means,
            default: concat!($(stringify!($default))?),
            $($range: $value,)?
            ..Row::BLANK
        } ),+ ];
    };
}

arguments! {
    // kinematics
    teeth_1 [ONE] "teeth of the first sprocket" allowed: between(3.0, 200.0);
    teeth_2 [ONE] "teeth of the second sprocket" allowed: between(3.0, 200.0);
    speed_rpm [RPM] "speed of the shaft" allowed: between(0.0, 1e5);
    centre_mm [MM] "distance of the shafts" allowed: up_to(0.0, 1e7);
    length_pitches [PITCHES] "length of the closed chain in pitches" allowed: up_to(0.0, 1e6);
    pitch_diameter_mm [MM] "diameter of the circle through the joints on a sprocket";
    articulation_angle_deg [DEG] "angle by which a joint bends on a sprocket";
    speed_ripple [ONE] "greatest less least over mean chain speed within one tooth";
    chain_speed_m_per_s [M_PER_S] "mean speed of the chain" allowed: between(0.0, 1000.0);
    roller_chain_power_kw [KW] "rated power of a drive with this chain";
    chain_length_pitches [PITCHES] "length of the closed chain in pitches";
    centre_distance_mm [MM] "distance of the shafts";

    // tension
    friction [ONE] "friction coefficient" allowed: between(0.0, 5.0);
    axle_diameter_mm [MM] "diameter of the axle in the wheel: the bush in a chain roller" allowed: between(0.0, 1e4);
    wheel_diameter_mm [MM] "diameter of the wheel or roller" allowed: up_to(0.0, 1e4);
    wrap_deg [DEG] "angle of wrap" allowed: between(0.0, 7200.0);
    span_m [M] "level distance between two supports" allowed: up_to(0.0, 5000.0);
    sag_m [M] "sag in the middle of the span" allowed: up_to(0.0, 500.0);
    rolling_resistance [ONE] "resistance of a loaded wheel over its load";
    capstan_ratio [ONE] "tension after the turn over tension before it";
    sag_tension_n [N] "tension of the sagging strand";

    // oil
    temperature_c [C] "temperature" allowed: between(-100.0, 400.0);
    v40_mm2_s [MM2_PER_S] "kinematic viscosity at 40 °C" allowed: between(0.21, 2e7);
    v100_mm2_s [MM2_PER_S] "kinematic viscosity at 100 °C" allowed: between(0.21, 2e7);
    t1_c [C] "temperature of the first viscosity" allowed: between(-60.0, 350.0);
    v1_mm2_s [MM2_PER_S] "kinematic viscosity at the first temperature" allowed: between(0.21, 2e7);
    t2_c [C] "temperature of the second viscosity" allowed: between(-60.0, 350.0);
    v2_mm2_s [MM2_PER_S] "kinematic viscosity at the second temperature" allowed: between(0.21, 2e7);
    v_a_mm2_s [MM2_PER_S] "kinematic viscosity of the first oil" allowed: between(0.3, 2e7);
    v_b_mm2_s [MM2_PER_S] "kinematic viscosity of the second oil" allowed: between(0.3, 2e7);
    fraction_a [ONE] "share of the first oil by volume" allowed: between(0.0, 1.0);
    viscosity_index [ONE] "viscosity index";
    kinematic_viscosity_mm2_s [MM2_PER_S] "kinematic viscosity" allowed: up_to(0.0, 1e9);
    handbook_grade [ONE] "viscosity grade of ISO 3448 that a handbook names";
    handbook_sae_grade [ONE] "SAE number of the oil that a handbook names";
    blend_viscosity_mm2_s [MM2_PER_S] "kinematic viscosity of the blend";
    grade_limits_mm2_s [MM2_PER_S] "least and greatest viscosity of the grade at 40 °C";
    density_kg_per_m3 [KG_PER_M3 = 890.0] "density of the oil" allowed: between(500.0, 2000.0);
    dynamic_viscosity_mpa_s [MPA_S] "dynamic viscosity";

    // film
    pressure_mpa [MPA] "nominal bearing pressure of the pin in its bush";
    load_n [N] "load" allowed: up_to(0.0, 1e8);
    sommerfeld [ONE] "Sommerfeld number (η N 2 R L/W) (R/c)², N in revolutions per second" allowed: up_to(0.0, 1e12);
    sommerfeld_short [ONE] "Sommerfeld number of the short bearing";
    eccentricity_ratio [ONE] "offset of the pin over the radial clearance" allowed: between(1e-9, 0.999999999);
    eccentricity_short [ONE] "offset of the pin over the radial clearance";
    length_to_diameter [ONE] "length of the joint over the diameter of the pin" allowed: between(0.01, 1000.0);
    viscosity_mpa_s [MPA_S] "dynamic viscosity of the oil" allowed: between(0.01, 1e9);
    radius_mm [MM] "radius of the pin; of a line contact the reduced radius" allowed: up_to(0.0, 1e7);
    length_mm [MM] "length of the bush" allowed: up_to(0.0, 1e5);
    clearance_um [UM] "radial clearance of pin and bush" allowed: up_to(0.0, 1e5);
    e1 [ONE] "offset over clearance at the start" allowed: between(0.0, 0.999999999);
    e2 [ONE] "offset over clearance at the end, not below the start" allowed: between(0.0, 0.999999999);
    film [WORD = "half"] "which part of the film carries: half (the closing side) or full";
    squeeze_time_short_s [S] "time in which the load squeezes the film";
    cavitation [WORD = "reynolds"] "what happens below ambient pressure: reynolds (rupture), half or full";
    speed_m_per_s [M_PER_S] "entraining speed: mean of both surfaces" allowed: between(0.0, 1000.0);
    load_n_per_mm [N_PER_MM] "load over length of the contact" allowed: up_to(0.0, 1e6);
    pressure_viscosity_per_gpa [PER_GPA] "pressure-viscosity coefficient" allowed: between(0.0, 200.0);
    modulus_gpa [GPA = 226.374] "elastic modulus E′ of the pair: 2/[(1 − ν₁²)/E₁ + (1 − ν₂²)/E₂]" allowed: between(0.001, 2000.0);
    formula [WORD = "minimum"] "film and author: minimum, central or dowson_higginson";
    line_contact_film_um [UM] "thickness of the film";
    height_ratio [ONE] "distance of the mean planes over the roughness" allowed: between(-40.0, 35.0);
    order [ONE] "order of the integral" allowed: between(0.0, 10.0);
    asperity_integral [ONE] "integral of Greenwood and Tripp";

    // coverage
    step [ONE] "step round a circle of length 1" allowed: between(-1e9, 1e9);
    count [ONE] "number of points" allowed: between(1.0, 1e15);
    circuit_time_s [S] "time of one revolution of the chain" allowed: between(0.001, 1e10);
    run_s [S] "time for which oil is given" allowed: between(0.001, 1e10);
    dwell_s [S] "pause until the next run" allowed: between(0.0, 1e10);
    delays_s [S = 0.0] "travel time of the chain from a reference point to each application point" allowed: between(-1e10, 1e10);
    n [ONE] "joints per dose: the counter doses every n-th" allowed: between(1.0, 1e9);
    joints [ONE] "joints of one strand, counted" allowed: between(1.0, 1e9);
    attachment_every [ONE] "joints from one attachment to the next; not given: nothing is in the way" allowed: between(1.0, 1e6);
    blocked [ONE] "joints of that pattern, counted from 0, whose gap is hidden" allowed: between(0.0, 1e6);
    handbook_methods [WORD] "ways of oiling that a handbook names: slow_drip, fast_drip, dip, spray";
    reached_joints [ONE] "joints that are ever reached";
    ratio_error [ONE] "relative error of circuit time over period of the timer" allowed: up_to(0.0, 0.5);
    correlation_h [H = 8.0] "time over which the chain speed keeps its error" allowed: up_to(0.0, 1e4);
    lock_circuits [CIRCUITS] "circuits after which the pattern repeats; not given: exactly those of the timer" allowed: between(1.0, 1e13);
    speed_tolerance_pct [PCT] "how far circuit time and timer may drift apart" allowed: up_to(0.0, 49.9);
    longest_wait_h [H] "longest wait that a joint may have, in running time" allowed: up_to(0.0, 1e9);
    lock_risk [ONE] "share of the possible speed errors at which some stretch waits too long";

    // hydraulics
    flow_ml_per_min [ML_PER_MIN] "flow in the line" allowed: between(0.0, 1e6);
    bore_mm [MM] "bore of the line" allowed: between(0.1, 1000.0);
    length_m [M] "length, one way" allowed: between(0.0, 1e5);
    pressure_drop_kpa [KPA] "pressure lost in the line";
    depth_mm [MM] "depth to fill" allowed: between(0.0, 1e4);
    gap_um [UM] "full width of the slot" allowed: up_to(0.0, 1e4);
    contact_angle_deg [DEG] "angle at which the oil meets the steel" allowed: between(0.0, 180.0);
    angle_to_vertical_deg [DEG = 90.0] "way of the oil: 0 downwards, 90 level, 180 upwards" allowed: between(0.0, 180.0);
    penetration_time_s [S] "time to fill the slot to that depth";
    joint_entry_time_s [S] "time until the joint is full";
    plate_path_mm [MM] "way from the plate edge to the bush: half of plate depth less bush diameter" allowed: up_to(0.0, 500.0);
    joint_clearance_um [UM] "radial clearance of pin and bush; grows with wear" allowed: up_to(0.0, 1e4);
    joint_depth_mm [MM] "length of joint to fill from one gap: half if oiled from both sides" allowed: up_to(0.0, 1000.0);
    pin_eccentricity [ONE = 1.0] "offset of the resting pin over the clearance" allowed: between(0.0, 1.0);
    time_available_s [S] "time the oil has to enter" allowed: up_to(0.0, 1e9);
    articulations [ONE] "articulations between two shots" allowed: up_to(0.0, 1e9);
    angle_deg [DEG] "angle of one articulation" allowed: up_to(0.0, 360.0);
    film_time_h [H] "time for which the film must stay" allowed: up_to(0.0, 1e6);
    pressure_kpa [KPA] "pressure in the line at delivery" allowed: up_to(0.0, 1e5);
    reset_pressure_kpa [KPA] "pressure to which it must fall before the next shot" allowed: up_to(0.0, 1e5);
    vent_time_s [S] "time until the line has vented";

    // fill
    articulations_per_circuit [ONE] "articulations of one joint in a circuit" allowed: between(0.0, 1e6);
    running_share [ONE = 1.0] "share of time that the line runs" allowed: up_to(0.0, 1.0);
    mass_per_area_kg_per_m2 [KG_PER_M2] "oil in the joint over its area open to the air" allowed: up_to(0.0, 1e6);
    wash_interval_h [H] "time between two washes; not given: no wash" allowed: up_to(0.0, 1e6);
    wash_removed_share [ONE = 0.0] "share of the oil that one wash removes" allowed: between(0.0, 0.999);
    fill_start [ONE] "fill at the start" allowed: between(0.0, 1.0);
    loss_rate_per_h [PER_H] "share of its oil that a joint loses in a running hour" allowed: between(0.0, 1e6);
    time_h [H] "running time" allowed: between(0.0, 1e9);
    fill_between_shots [ONE] "fill after that time";
    dose_ul [UL] "oil that one shot brings into the joint" allowed: between(0.0, 1e7);
    capacity_ul [UL] "oil that the joint can hold" allowed: up_to(0.0, 1e7);
    uptake_ul_per_joint_h [UL_PER_H = 0.0] "constant loss, to dust" allowed: between(0.0, 1e7);
    floor [ONE] "lowest fill that a joint may fall to" allowed: up_to(0.0, 0.999);
    target_fill [ONE = 0.5] "mean fill to be kept" allowed: between(0.0, 1.0);
    smallest_shot_ul [UL] "smallest dose that keeps every joint above the floor";
    demand_ul_per_joint_h [UL_PER_H] "oil that a joint needs in a running hour";

    // electrics
    area_mm2 [MM2] "nominal cross-section of one conductor" allowed: between(0.5, 16.0);
    current_a [A] "current" allowed: between(0.0, 5000.0);
    power_w [W] "power of the load, the same at any voltage" allowed: up_to(0.0, 1e5);
    conductor_resistance_ohm_per_km [OHM_PER_KM] "greatest resistance of one conductor at 20 °C";
    voltage_drop_v [V] "voltage lost in the cable, there and back";
    load_voltage_v [V] "voltage at the load";

    // motor
    stator_resistance_ohm [OHM] "stator resistance, each phase of the star" allowed: between(0.0, 1e6);
    stator_reactance_ohm [OHM] "leakage reactance of the stator" allowed: between(0.0, 1e6);
    rotor_resistance_ohm [OHM] "rotor resistance, referred to the stator" allowed: up_to(0.0, 1e6);
    rotor_reactance_ohm [OHM] "leakage reactance of the rotor, referred to the stator" allowed: between(0.0, 1e6);
    magnetising_reactance_ohm [OHM] "magnetising reactance" allowed: up_to(0.0, 1e9);
    core_resistance_ohm [OHM] "resistance that stands for the core loss; not given: none" allowed: up_to(0.0, 1e12);
    voltage_v [V] "line voltage" allowed: up_to(0.0, 1e5);
    frequency_hz [HZ] "frequency, at which the reactances hold" allowed: up_to(0.0, 1000.0);
    poles [ONE] "poles, twice the pole pairs" allowed: between(2.0, 96.0);
    slip [ONE] "lag behind the synchronous speed, as a share of it" allowed: between(0.0, 1.0);
    shaft_power_w [W] "power at the shaft" allowed: between(0.0, 1e7);
    friction_windage_w [W = 0.0] "friction and windage; all rotational loss where the core loss is in it" allowed: between(0.0, 1e6);
    stray_loss_w [W = 0.0] "stray load loss at the stray current" allowed: between(0.0, 1e6);
    stray_current_a [A = 1.0] "rotor current at which the stray loss was stated" allowed: up_to(0.0, 1e5);
    shaft_power_kw [KW] "power at the shaft" allowed: between(0.0, 5000.0);
    no_load_current_a [A] "measured current of the uncoupled motor; not given: from the leakage" allowed: up_to(0.0, 5000.0);
    supply_voltage_v [V] "actual line voltage; not given: rated" allowed: between(20.0, 1200.0);
    current_from_power_a [A] "line current";
    power_from_current_kw [KW] "power at the shaft";

    // wear
    coefficient [ONE] "wear coefficient K of V = K W s/(3 H)" allowed: between(0.0, 1.0);
    distance_m [M] "sliding distance" allowed: between(0.0, 1e12);
    hardness_mpa [MPA] "hardness of the softer side" allowed: up_to(0.0, 1e6);
    archard_volume_mm3 [MM3] "volume worn off";
    pin_wear_um [UM] "depth worn off the pin" allowed: between(0.0, 1e6);
    bush_wear_um [UM] "depth worn off the bush" allowed: between(0.0, 1e6);
    elongation_pct [PCT] "elongation of the chain";
    pair [WORD = "mild_steel"] "dry pair: mild_steel, brass, hard_tool_steel, ferritic_stainless or polythene";
    unlubricated_coefficient [ONE] "measured wear coefficient of the dry pair, an order of magnitude";

    // economics
    rate [ONE] "discount rate of a year" allowed: above(-1.0);
    cash_flows [MONEY] "money now, then at the end of each year; paid is negative" allowed: any();
    years [YEARS_COUNTED] "years from now" allowed: at_least(0.0);
    saving_per_year [MONEY] "money saved in a year" allowed: any();
    npv [MONEY] "net present value";
    irr [ONE] "internal rate of return of a year; of several the one nearest zero";
    irr_roots [ONE] "all rates at which the net present value is nothing";
    irr_status [WORD] "what the rate is worth: unique, several, none or out_of_range";
    payback_years [YEARS_COUNTED] "time until the flows have paid back";
    discounted_payback_years [YEARS_COUNTED] "time until the discounted flows have paid back";
    payback_days [DAYS_COUNTED] "days until savings have paid for the investment";
    payback_status [WORD] "outcome: pays_back, pays_back_then_loses, immediate, never, loses_after or beyond_horizon";
    single_present_value_factor [ONE] "present value of one unit paid then";
    uniform_present_value_factor [ONE] "present value of one unit at every year end";

    // statistics
    values [ONE] "readings in the order of time, in any unit" allowed: any();
    measured [ONE] "readings, in any unit" allowed: any();
    modelled [ONE] "what the model says for each reading" allowed: any();
    parameters [ONE] "parameters that were fitted" allowed: between(0.0, 1000.0);
    lag1 [ONE] "lag-one autocorrelation" allowed: between(-0.999999, 0.999999);
    lags [ONE] "neighbours that are allowed for" allowed: between(0.0, 1e6);
    correction [WORD = "none"] "correction for short series: none or small_sample";
    cost [WORD = "mean"] "what changes from segment to segment: mean or mean_variance";
    least_segment [ONE = 10.0] "fewest readings between two changes" allowed: between(2.0, 1e6);
    target [ONE] "level that the readings should keep" allowed: any();
    k [ONE] "allowance: half of the shift that is to be found" allowed: at_least(0.0);
    h [ONE] "threshold of an alarm" allowed: above(0.0);
    quantile [ONE] "quantile of the confidence" allowed: up_to(0.0, 100.0);
    saved_share [ONE] "share of the use that was saved" allowed: up_to(0.0, 1.0);
    count_before [ONE] "readings before the change" allowed: between(1.0, 1e15);
    count_after [ONE] "readings after the change" allowed: between(1.0, 1e15);
    months [ONE] "months logged after the change; not given: only for the original factor" allowed: between(1.0, 120.0);
    savings_factor [WORD = "original"] "factor for the covariates: original, daily or monthly";
    effective_sample_size [ONE] "independent readings whose mean is as sure";
    newey_west_se [ONE] "standard error of the mean, in the unit of the readings";
    cv_rmse_pct [PCT] "root-mean-square error of a model over the mean reading" allowed: up_to(0.0, 1000.0);
    nmbe_pct [PCT] "mean error of a model over the mean reading";
    savings_uncertainty [ONE] "uncertainty of a saving over the saving";
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{OUTCOMES, unit::all};
    use std::collections::HashSet;

    /// Rows of formulas, one after the other.
    fn rows() -> impl Iterator<Item = &'static Row> {
        ARGUMENTS.iter().chain(OUTCOMES.iter().flat_map(|(_, rows)| rows.iter()))
    }

    #[test]
    fn a_name_has_one_row() {
        let mut seen = HashSet::new();
        for row in ARGUMENTS {
            assert!(seen.insert(row.name), "{} is declared twice", row.name);
        }
    }

    #[test]
    fn names_carry_their_units_and_pure_numbers_none() {
        // the first of two oils, a and b, is no ampere
        for row in rows() {
            assert!(row.unit.is_carried_by(row.name), "{} does not carry {}", row.name, row.unit.label);
            assert!(!row.means.is_empty(), "{} means nothing", row.name);
            if row.unit.label.is_empty() && row.name.contains('_') && row.name != "fraction_a" {
                let carried = all().iter().find(|unit| !unit.endings.is_empty() && unit.is_carried_by(row.name));
                assert!(carried.is_none(), "{} looks like {}", row.name, carried.map_or("", |unit| unit.label));
            }
        }
    }

    #[test]
    fn defaults_lie_inside_their_range() {
        for row in rows() {
            if let Some(default) = default_of(row) {
                assert!(row.allowed.holds(default), "{}", row.name);
            }
        }
        assert_eq!(default_of(named(ARGUMENTS, "modulus_gpa")), Some(226.374));
        assert_eq!(default_of(named(ARGUMENTS, "pitch_diameter_mm")), None);
    }
}
