//! The losses that a nameplate fixes, before anything is said of leakage: each a share of what the plate leaves over.

use super::nameplate::{LossSplit, Nameplate};
use crate::error::{Code, Error, Result};
use crate::quantity::unit::RPM;
use std::f64::consts::TAU;

/// Greatest mismatch of the nameplate's own numbers before it is refused; above a third of it, a warning is due.
const MISMATCH_LIMIT: f64 = 0.10;

/// The standard's formula for stray loss is written for kilowatts.
const KILOWATT: f64 = 1e3;

/// Stray load loss over input power of a motor of rated power `power` (W).
fn assigned_stray_share(power: f64) -> f64 {
    let kilowatts = power / KILOWATT;
    if kilowatts <= 1.0 { 0.025 } else { (0.025 - 0.005 * kilowatts.log10()).max(0.005) }
}

/// What the nameplate fixes before the leakage is known.
pub(super) struct Losses {
    pub(super) nameplate: Nameplate,
    pub(super) mismatch: f64,
    pub(super) pole_pairs: f64,
    pub(super) slip: f64,
    pub(super) friction_windage: f64,
    pub(super) stray: f64,
    pub(super) air_gap: f64,
    pub(super) core: f64,
    pub(super) stator_resistance: f64,
}

impl Losses {
    pub(super) fn of(printed: &Nameplate, split: &LossSplit) -> Result<Losses> {
        let ratio =
            3f64.sqrt() * printed.voltage * printed.current * printed.efficiency * printed.power_factor / printed.power;
        if (ratio - 1.0).abs() > MISMATCH_LIMIT {
            return Err(Error::new(
                Code::Inconsistent,
                "rated_current",
                format!(
                    "√3 × voltage × current × efficiency × power factor is {ratio:.3} times the rated power: check that \
                     voltage and current belong to the connection in use and that no figure was misread"
                ),
            )
            .number(printed.current)
            .unit("A")
            .limit(format!("{:.3} to {:.3} A", printed.current * 0.9 / ratio, printed.current * 1.1 / ratio)));
        }
        let nameplate = Nameplate {
            current: printed.current / ratio.sqrt(),
            power_factor: printed.power_factor / ratio.sqrt(),
            ..*printed
        };
        if nameplate.power_factor >= 1.0 {
            return Err(infeasible(
                "rated_power_factor",
                printed.power_factor,
                "the power factor leaves no magnetising current",
            )
            .limit("below 1"));
        }
        // the small addition keeps a synchronous speed at its own pole number after the change of units
        let pole_pairs = (TAU * nameplate.frequency / nameplate.speed + 1e-9).floor();
        let slip = 1.0 - nameplate.speed * pole_pairs / (TAU * nameplate.frequency);
        if !(slip > 0.0005 && slip < 0.15) {
            return Err(infeasible(
                "rated_speed",
                RPM.from_si(nameplate.speed / TAU),
                "the rated speed is not a little below a synchronous speed (slip 0.05 to 15 %)",
            )
            .unit(RPM.label)
            .limit("0.05 to 15 % below a synchronous speed"));
        }
        let (power, input) = (nameplate.power, nameplate.input_power());
        let loss = input - power;
        let stray = split.stray_factor * assigned_stray_share(power) * input;
        let friction_windage = split.friction_windage_share * loss;
        let air_gap = (power + friction_windage + stray) / (1.0 - slip);
        let rest = loss - stray - friction_windage - slip * air_gap;
        if rest <= 0.02 * loss {
            return Err(infeasible(
                "rated_efficiency",
                nameplate.efficiency,
                "the slip is too large for that efficiency: nothing is left for stator and core loss",
            )
            .limit("a lower efficiency, or a higher rated speed"));
        }
        let copper = (1.0 - split.core_share) * rest;
        Ok(Losses {
            nameplate,
            mismatch: ratio - 1.0,
            pole_pairs,
            slip,
            friction_windage,
            stray,
            air_gap,
            core: split.core_share * rest,
            stator_resistance: copper / (3.0 * nameplate.current * nameplate.current),
        })
    }
}

/// The refusal of a nameplate.
pub(super) fn infeasible(field: &str, value: f64, why: &str) -> Error {
    Error::new(
        Code::MotorNameplate,
        field,
        format!("no induction motor can have this nameplate: {why}; check it, above all speed and efficiency"),
    )
    .number(value)
}
