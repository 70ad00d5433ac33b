//! `pinfilm.motor`: the equivalent circuit of a three-phase cage induction motor, and current from a nameplate.

use super::outcomes::classes::OperatingPoint;
use super::prelude::*;
use crate::drive::{
    Drive, EquivalentCircuit, Leakage, LossSplit, Measured, Motor, Nameplate, ShaftState, Supply, angular_speed,
    synchronous_speed,
};
use crate::error::{Code, Error, Result};

/// A value that was given, none for the NaN that stands for one that was not.
fn given(value: f64) -> Option<f64> {
    (!value.is_nan()).then_some(value)
}

/// The motor that the arguments of the nameplate formulas describe, and what it is fed with.
fn motor(
    plate: [f64; 7],
    [supply_voltage, no_load_current, leakage, core, windage, stray]: [f64; 6],
) -> Result<(Motor, Supply)> {
    let [power, voltage, current, speed, efficiency, power_factor, frequency] = plate;
    let plate = Nameplate { voltage, power, current, speed: angular_speed(speed), efficiency, power_factor, frequency };
    let leakage = match given(no_load_current) {
        Some(current) => Leakage::From(Measured { current, shaft_power: 0.0, supply: plate.supply() }),
        None => Leakage::PerUnit(leakage),
    };
    let split = LossSplit { leakage, core_share: core, friction_windage_share: windage, stray_factor: stray };
    let supply = Supply { voltage: given(supply_voltage).unwrap_or(voltage), ..plate.supply() };
    Ok((Motor::fit(&plate, &split)?, supply))
}

formulas! { "motor"
    /// A three-phase cage induction motor at a slip or under a load, from its equivalent circuit.
    ///
    /// Parameters
    /// ----------
    /// stator_resistance_ohm, stator_reactance_ohm : array_like
    ///     Resistance and leakage reactance of the stator, each phase of the star; 0 to 1000000 Ω.
    /// rotor_resistance_ohm : array_like
    ///     Resistance of the rotor, referred to the stator; above 0 and at most 1000000 Ω.
    /// rotor_reactance_ohm : array_like
    ///     Leakage reactance of the rotor, referred to the stator; 0 to 1000000 Ω.
    /// magnetising_reactance_ohm : array_like
    ///     Magnetising reactance; above 0 and at most 1000000000 Ω.
    /// voltage_v : array_like
    ///     Voltage from line to line; above 0 and at most 100000 V.
    /// frequency_hz : array_like
    ///     Frequency, at which the reactances hold; above 0 and at most 1000 Hz.
    /// poles : array_like
    ///     Poles, twice the pole pairs; 2 to 96.
    /// slip : array_like, optional
    ///     Slip; 0 to 1. Give this or the load.
    /// shaft_power_w : array_like, optional
    ///     Load at the shaft; 0 to 10000000 W. Give this or the slip.
    /// core_resistance_ohm : array_like, optional
    ///     Resistance beside the magnetising reactance that stands for the core loss; above 0 and at most 1000000000000
    ///     Ω. Not given: no core loss there.
    /// friction_windage_w : array_like, optional
    ///     Friction and windage, or all rotational loss where the core loss is counted with it; 0 to 1000000 W; 0 if
    ///     not given.
    /// stray_loss_w : array_like, optional
    ///     Stray load loss at `stray_current_a`; 0 to 1000000 W; 0 if not given.
    /// stray_current_a : array_like, optional
    ///     Rotor current at which the stray loss was stated; above 0 and at most 100000 A; 1 A if not given.
    ///
    /// Returns
    /// -------
    /// OperatingPoint
    ///     Slip, speed, currents, power factor, powers, losses, efficiency and torques, each a float or an array.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     load beyond what the motor can turn is an error, and so are slip and load together, or neither.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// The T circuit, solved without approximation; a load is solved on the stable side of pull-out in closed form.
    /// Saturation and skin effect are not in it.
    ///
    /// References
    /// ----------
    /// Fitzgerald, Kingsley and Umans, Electric Machinery; the circle diagram of Heyland and Ossanna.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import motor
    /// >>> point = motor.equivalent_circuit(
    /// ...     0.641, 1.106, 0.332, 0.464, 26.3, voltage_v=460, frequency_hz=60, poles=4, slip=0.022,
    /// ...     friction_windage_w=1100,
    /// ... )
    /// >>> round(point.current_a, 3), round(point.power_factor, 4), round(point.speed_rpm, 1)
    /// (18.892, 0.8321, 1760.4)
    fn equivalent_circuit(
        stator_resistance_ohm: Own, stator_reactance_ohm: Own, rotor_resistance_ohm: Own, rotor_reactance_ohm: Own,
        magnetising_reactance_ohm: Own, voltage_v: Own, frequency_hz: Own, poles: Own;
        slip: Own, shaft_power_w: Own, core_resistance_ohm: Own, friction_windage_w: Own, stray_loss_w: Own,
        stray_current_a: Own
    ) -> OperatingPoint = |
        r1, x1, r2, x2, xm, voltage, frequency, poles, slip, load, core, windage, stray, stray_current
    | {
        let circuit = EquivalentCircuit {
            stator_resistance: r1,
            stator_reactance: x1,
            rotor_resistance: r2,
            rotor_reactance: x2,
            magnetising_reactance: xm,
            core_resistance: given(core).unwrap_or(f64::INFINITY),
            friction_windage: windage,
            stray_loss: stray,
            stray_current,
        };
        let on = circuit.on(&Supply { voltage, frequency_ratio: 1.0 });
        let point = match (given(slip), given(load)) {
            (Some(slip), None) => on.at_slip(slip),
            (None, Some(load)) => on.at_power(load)?,
            (None, None) => {
                let message = "neither slip nor shaft_power_w was given: say how the motor runs by one of them";
                return Err(Error::new(Code::Missing, "slip", message));
            }
            (Some(slip), Some(_)) => {
                let message = "slip and shaft_power_w were both given, but each follows from the other: give one";
                return Err(Error::new(Code::Inconsistent, "slip", message).number(slip));
            }
        };
        let shaft = ShaftState::of(&point, synchronous_speed(frequency, poles));
        Ok([
            point.slip,
            shaft.revolutions,
            point.current,
            point.rotor_current,
            point.power_factor,
            point.input_power,
            point.stator_copper_loss,
            point.core_loss,
            point.air_gap_power,
            point.rotor_copper_loss,
            point.converted_power,
            point.shaft_power,
            point.efficiency(),
            shaft.induced_torque,
            shaft.shaft_torque,
        ])
    };

    /// Line current of a motor under a load, from its nameplate.
    ///
    /// Parameters
    /// ----------
    /// shaft_power_kw : array_like
    ///     Load at the shaft; 0 to 5000 kW.
    /// rated_power_kw : array_like
    ///     Rated shaft power; above 0 and at most 1000 kW.
    /// rated_voltage_v : array_like
    ///     Rated line voltage; 50 to 1000 V.
    /// rated_current_a : array_like
    ///     Rated line current; above 0 and at most 5000 A.
    /// rated_speed_rpm : array_like
    ///     Rated speed; 100 to 3600 1/min.
    /// rated_efficiency : array_like
    ///     Rated efficiency; 0.05 to 0.999.
    /// rated_power_factor : array_like
    ///     Rated power factor; 0.05 to 0.999.
    /// rated_frequency_hz : array_like, optional
    ///     Rated frequency; 10 to 100 Hz; 50 Hz if not given.
    /// supply_voltage_v : array_like, optional
    ///     Actual line voltage; 20 to 1200 V; rated if not given.
    /// no_load_current_a : array_like, optional
    ///     Measured current of the uncoupled motor; above 0 and at most 5000 A. Worth more than the next four.
    /// leakage_pu : array_like, optional
    ///     Leakage reactance over rated impedance, where no current at no load is known; 0.02 to 0.4; 0.2 if not given.
    /// core_share : array_like, optional
    ///     Share of core loss in the losses of stator and core; 0 to 1; 0.4 if not given.
    /// friction_windage_share : array_like, optional
    ///     Share of friction and windage in all loss; 0 to 1; 0.1 if not given.
    /// stray_factor : array_like, optional
    ///     Stray load loss over its assigned value; 0 to 3; 1 if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Line current of the motor in A.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     nameplate that contradicts itself or that no motor can have, and a load beyond pull-out, are errors.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// An equivalent circuit that meets the nameplate exactly is found in closed form and solved for the load. Below a
    /// quarter load the result hangs on the leakage, which no nameplate states: measure the current without load.
    ///
    /// References
    /// ----------
    /// Stray load loss assigned as in IEC 60034-2-1; the split of the other losses is a closure of our own.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import motor
    /// >>> plate = dict(
    /// ...     rated_power_kw=4, rated_voltage_v=400, rated_current_a=8.05, rated_speed_rpm=1450,
    /// ...     rated_efficiency=0.886, rated_power_factor=0.81,
    /// ... )
    /// >>> round(motor.current_from_power_a(2.0, **plate), 3)
    /// 5.105
    fn current_from_power_a(
        shaft_power_kw: Own, rated_power_kw: Drive, rated_voltage_v: Drive, rated_current_a: Drive,
        rated_speed_rpm: Drive, rated_efficiency: Drive, rated_power_factor: Drive;
        rated_frequency_hz: Drive, supply_voltage_v: Own, no_load_current_a: Own, leakage_pu: Drive, core_share: Drive,
        friction_windage_share: Drive, stray_factor: Drive
    ) -> Floats = |
        load, power, voltage, current, speed, efficiency, factor, frequency, supply, no_load, leakage, core, windage,
        stray
    | {
        let (motor, supply) = motor(
            [power, voltage, current, speed, efficiency, factor, frequency],
            [supply, no_load, leakage, core, windage, stray],
        )?;
        Ok(motor.circuit.on(&supply).at_power(load)?.current)
    };

    /// Load of a motor from its line current and nameplate; the inverse of `current_from_power_a`.
    ///
    /// Parameters
    /// ----------
    /// current_a : array_like
    ///     Line current of the motor; 0 to 5000 A.
    /// rated_power_kw : array_like
    ///     Rated shaft power; above 0 and at most 1000 kW.
    /// rated_voltage_v : array_like
    ///     Rated line voltage; 50 to 1000 V.
    /// rated_current_a : array_like
    ///     Rated line current; above 0 and at most 5000 A.
    /// rated_speed_rpm : array_like
    ///     Rated speed; 100 to 3600 1/min.
    /// rated_efficiency : array_like
    ///     Rated efficiency; 0.05 to 0.999.
    /// rated_power_factor : array_like
    ///     Rated power factor; 0.05 to 0.999.
    /// rated_frequency_hz : array_like, optional
    ///     Rated frequency; 10 to 100 Hz; 50 Hz if not given.
    /// supply_voltage_v : array_like, optional
    ///     Actual line voltage; 20 to 1200 V; rated if not given.
    /// no_load_current_a : array_like, optional
    ///     Measured current of the uncoupled motor; above 0 and at most 5000 A. Worth more than the next four.
    /// leakage_pu : array_like, optional
    ///     Leakage reactance over rated impedance, where no current at no load is known; 0.02 to 0.4; 0.2 if not given.
    /// core_share : array_like, optional
    ///     Share of core loss in the losses of stator and core; 0 to 1; 0.4 if not given.
    /// friction_windage_share : array_like, optional
    ///     Share of friction and windage in all loss; 0 to 1; 0.1 if not given.
    /// stray_factor : array_like, optional
    ///     Stray load loss over its assigned value; 0 to 3; 1 if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Power at the shaft in kW.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN. A
    ///     current that no load draws is an error (`not_invertible`).
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Exact inverse on the stable side. Near no load the current is nearly all magnetising current and says little of
    /// the load: log the power there.
    ///
    /// References
    /// ----------
    /// As `current_from_power_a`.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import motor
    /// >>> plate = dict(
    /// ...     rated_power_kw=4, rated_voltage_v=400, rated_current_a=8.05, rated_speed_rpm=1450,
    /// ...     rated_efficiency=0.886, rated_power_factor=0.81,
    /// ... )
    /// >>> round(motor.power_from_current_kw(motor.current_from_power_a(2.0, **plate), **plate), 6)
    /// 2.0
    fn power_from_current_kw(
        current_a: Own, rated_power_kw: Drive, rated_voltage_v: Drive, rated_current_a: Drive, rated_speed_rpm: Drive,
        rated_efficiency: Drive, rated_power_factor: Drive;
        rated_frequency_hz: Drive, supply_voltage_v: Own, no_load_current_a: Own, leakage_pu: Drive, core_share: Drive,
        friction_windage_share: Drive, stray_factor: Drive
    ) -> Floats = |
        reading, power, voltage, current, speed, efficiency, factor, frequency, supply, no_load, leakage, core, windage,
        stray
    | {
        let (motor, supply) = motor(
            [power, voltage, current, speed, efficiency, factor, frequency],
            [supply, no_load, leakage, core, windage, stray],
        )?;
        motor.circuit.on(&supply).power_of_current(reading)
    };
}
