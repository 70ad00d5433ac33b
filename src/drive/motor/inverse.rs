//! From a current back to the load of a motor, as far as a current names one.

use super::energised::Energised;
use crate::error::{Code, Error, Result};
use crate::numeric::root;

/// Share of a slip by which a current may miss the no-load or pull-out point through rounding.
const ROUNDING: f64 = 1e-9;

impl Energised {
    /// Shaft powers (W) from no load to the greatest at which the line current is `current` (A): none, one or two.
    fn powers_of_current(&self, current: f64) -> [Option<f64>; 2] {
        let (lowest, highest) = (self.t_of_power(0.0), self.t_greatest());
        let square = current * current / self.synchronous_current.norm_sqr();
        // square |1 + short t|² = |1 + open t|², that is a t² + 2 b t + c = 0
        let a = square * self.short.norm_sqr() - self.open.norm_sqr();
        let b = square * self.short.re - self.open.re;
        let c = square - 1.0;
        let reach = -(b + (b * b - a * c).sqrt().copysign(b)); // NaN, and so no root inside, where there is none
        [reach / a, c / reach].map(|t| {
            let inside = t >= lowest * (1.0 - ROUNDING) && t <= highest * (1.0 + ROUNDING);
            inside.then(|| self.shaft_power_at(t.clamp(lowest, highest)).max(0.0))
        })
    }

    /// Shaft power (W) of the motor that draws the line current `current` (A).
    ///
    /// Exact inverse of [`Self::at_power`]. Fails with `not_invertible` below the no-load current, above the current at
    /// the greatest power, and where two loads draw the same current (a motor with little core loss, near no load).
    pub fn power_of_current(&self, current: f64) -> Result<f64> {
        match self.powers_of_current(current) {
            [Some(power), None] | [None, Some(power)] => Ok(power),
            [Some(_), Some(_)] => Err(self.unclear(current, "two loads draw this current")),
            [None, None] => Err(self.unclear(current, "no load of this motor draws this current")),
        }
    }

    /// Shaft power (W) of the motor that takes the electrical power `input` (W).
    ///
    /// Input rises with the load, so there is one answer between no load and the greatest power; `not_invertible` outside.
    pub fn power_of_input(&self, input: f64) -> Result<f64> {
        let greatest = self.greatest_shaft_power();
        let miss = |power: f64| self.at_power(power).map_or(f64::NAN, |point| point.input_power - input);
        let most = greatest * (1.0 - ROUNDING);
        if miss(0.0) > 0.0 || miss(most) < 0.0 {
            let (least, most) = (miss(0.0) + input, miss(most) + input);
            let message = format!(
                "no load of this motor takes {input:.1} W (no load takes {least:.1} W, the greatest load {most:.1} W): check \
                 the meter, its unit and the nameplate"
            );
            return Err(Error::new(Code::NotInvertible, "input_power", message)
                .number(input)
                .unit("W")
                .limit(format!("{least:.1} to {most:.1} W")));
        }
        root("shaft power", 0.0, most, 1e-12, 1e-9, miss)
    }

    /// Least and greatest shaft power (W) for a current of `current` ± `spread` (A), where one number would claim too
    /// much: a motor below a quarter load, or fed with another voltage than assumed.
    ///
    /// A current below every load's counts as no load, one above pull-out as the greatest power.
    pub fn power_bounds(&self, current: f64, spread: f64) -> (f64, f64) {
        let beyond = |i: f64| if i < self.current_at_greatest() { 0.0 } else { self.greatest_shaft_power() };
        let low = self.powers_of_current(current - spread).into_iter().flatten().reduce(f64::min);
        let high = self.powers_of_current(current + spread).into_iter().flatten().reduce(f64::max);
        (low.unwrap_or_else(|| beyond(current - spread)), high.unwrap_or_else(|| beyond(current + spread)))
    }

    fn current_at_greatest(&self) -> f64 {
        self.line_current(self.t_greatest()).norm()
    }

    fn unclear(&self, current: f64, why: &str) -> Error {
        let (no_load, greatest) = (self.at_no_load().current, self.current_at_greatest());
        Error::new(
            Code::NotInvertible,
            "current",
            format!(
                "{why} ({current:.3} A; no load draws {no_load:.3} A, the greatest load {greatest:.3} A): check where the \
                 clamp sits, the connection and the nameplate, or log the power instead"
            ),
        )
        .number(current)
        .unit("A")
        .limit(format!("{no_load:.3} to {greatest:.3} A"))
    }
}

#[cfg(test)]
mod tests {
    use super::super::energised::tests::{RATED, four_kilowatt, supplies};
    use super::super::equivalent_circuit::EquivalentCircuit;
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn current_gives_the_power_back(supply in supplies(), share in 0.03..0.999f64) {
            let on = four_kilowatt().on(&supply);
            let power = share * on.greatest_shaft_power();
            let current = on.at_power(power).unwrap().current;
            let input = on.at_power(power).unwrap().input_power;
            prop_assert!((on.power_of_input(input).unwrap() / power - 1.0).abs() < 1e-7);
            let back = on.power_of_current(current).unwrap();
            prop_assert!((back / power - 1.0).abs() < 1e-9, "{back} {power}");
            let (low, high) = on.power_bounds(current, 0.05);
            prop_assert!(low <= power && power <= high);
        }
    }

    #[test]
    fn a_current_outside_the_range_names_no_load() {
        let on = four_kilowatt().on(&RATED);
        let no_load = on.at_no_load();
        assert!(no_load.shaft_power.abs() < 1e-9);
        assert!(on.power_of_current(no_load.current).unwrap() < 1e-3);
        for current in [0.0, no_load.current * 0.99, 40.0, 1e3] {
            assert_eq!(on.power_of_current(current).unwrap_err().code, Code::NotInvertible);
        }
        assert_eq!(on.power_bounds(no_load.current, 100.0), (0.0, on.greatest_shaft_power()));
    }

    #[test]
    fn without_core_loss_two_light_loads_draw_the_same_current() {
        let circuit = EquivalentCircuit { core_resistance: f64::INFINITY, friction_windage: 0.0, ..four_kilowatt() };
        let on = circuit.on(&RATED);
        let at_rest = on.at_no_load();
        assert_eq!(at_rest.slip, 0.0);
        let dip = on.at_power(20.0).unwrap().current;
        assert!(dip < at_rest.current);
        assert_eq!(on.power_of_current(dip).unwrap_err().code, Code::NotInvertible);
    }
}
