//! `pinfilm.fill`: how fast a joint loses its oil, and how full it stays from shot to shot.

use super::outcomes::classes::{LossRates, PeriodicFill};
use super::prelude::*;
use crate::error::{Code, Error};
use crate::lubrication::Fill;
use crate::lubrication::coverage::Timer;
use crate::lubrication::fill::{self, JointOil};
use crate::lubrication::loss::{
    Articulation, Evaporation, Losses, Oxidation, articulation_rate, wall_time_rate, wash_rate,
};
use crate::lubrication::rotation::Rotation;
use crate::oil::Oil;

formulas! { "fill"
    /// What a joint loses in an hour, by cause, as shares of the oil that is in it.
    ///
    /// Parameters
    /// ----------
    /// temperature_c : array_like
    ///     Temperature of the joint; -100 to 400 °C.
    /// viscosity_mpa_s : array_like
    ///     Dynamic viscosity at that temperature; 0.01 to 1000000000 mPa s.
    /// angle_deg : array_like
    ///     Angle of one articulation; above 0 and at most 360 °.
    /// articulations_per_circuit : array_like
    ///     Articulations of a joint in a circuit; 0 to 1000000.
    /// circuit_time_s : array_like
    ///     Time of one revolution of the chain; 0.001 to 10000000000 s.
    /// mass_per_area_kg_per_m2 : array_like
    ///     Oil in the joint over its area open to the air; above 0 and at most 1000000 kg/m².
    /// noack_pct : array_like, optional
    ///     Evaporation loss in an hour at 250 °C; 0 to 99 %; 8 % if not given.
    /// vaporisation_kj_per_mol : array_like, optional
    ///     Heat of vaporisation; 20 to 300 kJ/mol; 100 kJ/mol if not given.
    /// air_factor : array_like, optional
    ///     Evaporation over that of the test cup; 0 to 100; 0.3, still air, if not given.
    /// noack_mass_per_area_kg_per_m2 : array_like, optional
    ///     Oil over open area in the test cup; above 0 and at most 1000 kg/m²; 23 kg/m² if not given.
    /// oxidation_half_life_h : array_like, optional
    ///     Time in which half of the oil is oxidised; above 0 and at most 10000000 h; 1000 h if not given.
    /// oxidation_reference_c : array_like, optional
    ///     Temperature of that half life; -20 to 300 °C; 100 °C if not given.
    /// pin_eccentricity : array_like, optional
    ///     Offset of the pin over the clearance; 0 to 1; 1 if not given.
    /// articulation_loss : array_like, optional
    ///     Share of the pumped oil that an articulation loses; 0 to 1; 0.0005 if not given.
    /// articulation_loss_exponent : array_like, optional
    ///     Exponent with which thicker oil is lost less; 0 to 3; 0.5 if not given.
    /// articulation_loss_reference_pa_s : array_like, optional
    ///     Viscosity at which that loss holds; 0.0001 to 1000 Pa s; 0.1 Pa s if not given.
    /// wash_interval_h : array_like, optional
    ///     Time between two washes, by the clock on the wall; above 0 and at most 1000000 h. Not given: no wash.
    /// wash_removed_share : array_like, optional
    ///     Share of the oil that one wash removes; 0 to 0.999; 0 if not given.
    /// running_share : array_like, optional
    ///     Share of time that the line runs; above 0 and at most 1; 1 if not given.
    ///
    /// Returns
    /// -------
    /// LossRates
    ///     Rates per running hour by cause, their sum and the half life; floats or arrays.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// First-order loss, dV/dt = −k V. Evaporation: the rate of the test, scaled by vapour pressure (Clausius-
    /// Clapeyron) and by mass over open area. Oxidation doubles with every 10 K. Pumping: a closure of our own on the
    /// side flow of a bearing. Uncalibrated, the sum is good to a factor of 5 to 10. For a joint that meets several
    /// temperatures average the rates, not the temperatures.
    ///
    /// References
    /// ----------
    /// ASTM D5800 for the evaporation test; the closures are our own.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import fill
    /// >>> rates = fill.loss_rates_per_h(60, 70, 30, 4, 1200, 0.9)
    /// >>> round(rates.total_per_h, 6), round(rates.half_life_h)
    /// (0.000642, 1079)
    fn loss_rates_per_h(
        temperature_c: Own, viscosity_mpa_s: Own, angle_deg: Own, articulations_per_circuit: Own, circuit_time_s: Own,
        mass_per_area_kg_per_m2: Own;
        noack_pct: Oil, vaporisation_kj_per_mol: Oil, air_factor: Fill, noack_mass_per_area_kg_per_m2: Fill,
        oxidation_half_life_h: Oil, oxidation_reference_c: Oil, pin_eccentricity: Own, articulation_loss: Fill,
        articulation_loss_exponent: Fill, articulation_loss_reference_pa_s: Fill, wash_interval_h: Own,
        wash_removed_share: Own, running_share: Own
    ) -> LossRates = |
        temperature, viscosity, angle, count, circuit, mass_per_area, noack_loss, heat, air, noack_mass_per_area,
        half_life, reference, eccentricity, loss, exponent, loss_reference, wash_interval: f64, removed, running
    | {
        let evaporation = Evaporation { noack_loss, heat, air, noack_mass_per_area, mass_per_area };
        let moved = [Articulation { count, angle, viscosity }];
        let wash = match wash_interval.is_nan() {
            true => 0.0,
            false => wall_time_rate(wash_rate(removed, wash_interval), running),
        };
        let losses = Losses {
            evaporation: evaporation.rate(temperature),
            oxidation: Oxidation { half_life, reference }.rate(temperature),
            articulation: articulation_rate(&moved, circuit, eccentricity, loss, exponent, loss_reference),
            wash,
            ..Losses::default()
        };
        [losses.evaporation, losses.oxidation, losses.articulation, losses.wash, losses.total(), losses.half_life()]
    };

    /// Fill of a joint some time after a shot.
    ///
    /// Parameters
    /// ----------
    /// fill_start : array_like
    ///     Fill at the start; 0 to 1.
    /// loss_rate_per_h : array_like
    ///     Share of its oil that the joint loses in a running hour; 0 to 1000000 1/h.
    /// time_h : array_like
    ///     Running time since; 0 to 1000000000 h.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Fill, 0 to 1.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// φ = φ₀ exp(−k t): loss in proportion to what is there.
    ///
    /// References
    /// ----------
    /// First-order loss, exact solution.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import fill
    /// >>> round(fill.fill_between_shots(0.8, 0.01, 24.0), 4)
    /// 0.6293
    fn fill_between_shots(fill_start: Own, loss_rate_per_h: Own, time_h: Own) -> Floats =
        |start, rate, time| fill::between_shots(start, rate, 0.0, time);

    /// How full the joints of a line are once a timer and the loss have settled.
    ///
    /// Parameters
    /// ----------
    /// circuit_time_s : array_like
    ///     Time of one revolution of the chain; 0.001 to 10000000000 s.
    /// run_s, dwell_s : array_like
    ///     Time for which oil is given; 0.001 to 10000000000 s and 0 to 10000000000 s.
    /// dose_ul : array_like
    ///     Oil that one shot brings into the joint; 0 to 10000000 µL.
    /// capacity_ul : array_like
    ///     Oil that the joint can hold; above 0 and at most 10000000 µL.
    /// loss_rate_per_h : array_like
    ///     Share of its oil that the joint loses in a running hour; 0 to 1000000 1/h.
    /// uptake_ul_per_joint_h : array_like, optional
    ///     Constant loss; 0 to 10000000 µL/h; 0 if not given.
    ///
    /// Returns
    /// -------
    /// PeriodicFill
    ///     Mean, lowest and greatest fill, overflow and the share never reached; floats or arrays.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Shots in, exponential loss, overflow at the capacity, over the waits that the timer makes with the circuit.
    /// Exact for locked timers, for joints that are always full and for cycles of up to 8192 shots; else sampled, good
    /// to 1e-6 usually.
    ///
    /// References
    /// ----------
    /// Slater 1967, Proc. Camb. Phil. Soc. 63, 1115, for the waits; the walk over the fills is our own.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import fill
    /// >>> settled = fill.periodic_fill(1440, 300, 6900, dose_ul=30, capacity_ul=100, loss_rate_per_h=0.018)
    /// >>> round(settled.mean_fill, 4), round(settled.never_reached, 4)
    /// (0.2046, 0.7917)
    fn periodic_fill(
        circuit_time_s: Own, run_s: Own, dwell_s: Own, dose_ul: Own, capacity_ul: Own, loss_rate_per_h: Own;
        uptake_ul_per_joint_h: Own
    ) -> PeriodicFill = |circuit, run, dwell, dose, capacity, loss_rate, uptake| {
        let rotation = Rotation::from(&Timer::new(circuit, run, dwell)?);
        let settled = fill::periodic_fill(&rotation, circuit, &JointOil { dose, capacity, loss_rate, uptake });
        Ok([
            settled.mean,
            settled.mean_reached,
            settled.lowest,
            settled.after,
            settled.overflow,
            settled.never_reached,
            f64::from(u8::from(settled.always_full)),
        ])
    };

    /// Smallest dose that keeps every joint above a floor.
    ///
    /// Parameters
    /// ----------
    /// circuit_time_s : array_like
    ///     Time of one revolution of the chain; 0.001 to 10000000000 s.
    /// run_s, dwell_s : array_like
    ///     Time for which oil is given; 0.001 to 10000000000 s and 0 to 10000000000 s.
    /// capacity_ul : array_like
    ///     Oil that the joint can hold; above 0 and at most 10000000 µL.
    /// loss_rate_per_h : array_like
    ///     Share of its oil that the joint loses in a running hour; 0 to 1000000 1/h.
    /// floor : array_like
    ///     Lowest fill; above 0 and at most 0.999.
    /// uptake_ul_per_joint_h : array_like, optional
    ///     Constant loss; 0 to 10000000 µL/h; 0 if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Dose in the joint in µL; divide by what is captured and enters to get the shot at the nozzle.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    ///     Where the timer never reaches some joints, or full joints fall below the floor in the longest wait, there is
    ///     no such dose: an error for numbers, NaN in arrays.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// Bisection on `periodic_fill`, whose lowest fill rises with the dose.
    ///
    /// References
    /// ----------
    /// As `periodic_fill`.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import fill
    /// >>> round(fill.smallest_shot_ul(1237, 300, 3300, capacity_ul=100, loss_rate_per_h=0.0036, floor=0.5), 4)
    /// 0.7716
    fn smallest_shot_ul(
        circuit_time_s: Own, run_s: Own, dwell_s: Own, capacity_ul: Own, loss_rate_per_h: Own, floor: Own;
        uptake_ul_per_joint_h: Own
    ) -> Floats = |circuit, run, dwell, capacity, loss_rate, floor, uptake| {
        let rotation = Rotation::from(&Timer::new(circuit, run, dwell)?);
        let oil = JointOil { dose: 0.0, capacity, loss_rate, uptake };
        fill::smallest_shot(&rotation, circuit, &oil, floor).ok_or_else(|| {
            let message = format!(
                "no dose keeps every joint above {floor}: the timer never reaches some joints, or a full joint falls \
                 below it in its longest wait; shorten the wait or change the period"
            );
            Error::new(Code::NoAnswer, "floor", message).number(floor)
        })
    };

    /// Oil that a joint needs in an hour to keep a mean fill.
    ///
    /// Parameters
    /// ----------
    /// loss_rate_per_h : array_like
    ///     Share of its oil that the joint loses in a running hour; 0 to 1000000 1/h.
    /// capacity_ul : array_like
    ///     Oil that the joint can hold; above 0 and at most 10000000 µL.
    /// target_fill : array_like, optional
    ///     Mean fill; 0 to 1; 0.5 if not given.
    ///
    /// Returns
    /// -------
    /// float or ndarray
    ///     Demand in µL per joint and running hour.
    ///
    /// Raises
    /// ------
    /// InputError
    ///     A number outside its range or not finite; in arrays the first such element is named, and NaN gives NaN.
    /// UnitError
    ///     A quantity of another dimension than the name says.
    ///
    /// Notes
    /// -----
    /// k φ V: what is lost must come back.
    ///
    /// References
    /// ----------
    /// First-order loss.
    ///
    /// Examples
    /// --------
    /// >>> from pinfilm import fill
    /// >>> round(fill.demand_ul_per_joint_h(0.018, 100), 4)
    /// 0.9
    fn demand_ul_per_joint_h(loss_rate_per_h: Own, capacity_ul: Own; target_fill: Own) -> Floats =
        |rate, capacity, target| fill::demand(rate, target, capacity);
}
