//! Chain temperature round the loop: each section pulls it towards its surroundings, exactly and periodically.

use super::{Layout, Place};
use crate::numeric::{GAUSS_LEGENDRE_4, GAUSS_LEGENDRE_8, GAUSS_LEGENDRE_16};
use std::f64::consts::PI;

/// Specific heat of steel, J/(kg K) (common value, from memory).
const STEEL_HEAT: f64 = 480.0;
/// Density of steel, kg/m³ (common value, from memory).
const STEEL_DENSITY: f64 = 7850.0;

/// Surface (m²/m) of one strand of `mass` kg/m: `surface_factor` times that of an equal round bar of steel.
///
/// Closure of our own; `surface_factor` 2 to 5.
fn exchange_perimeter(mass: f64, surface_factor: f64) -> f64 {
    surface_factor * 2.0 * (PI * mass / STEEL_DENSITY).sqrt()
}

/// Time (s) in which a chain comes within 1/e of its surroundings.
///
/// `mass` kg/m of one strand, `heat_transfer` W/(m² K), both > 0; `surface_factor` over an equal round bar. Lumped
/// body (temperature even across the chain); trays and hangers carried along are not included.
pub fn thermal_time_constant(mass: f64, heat_transfer: f64, surface_factor: f64) -> f64 {
    mass * STEEL_HEAT / (heat_transfer * exchange_perimeter(mass, surface_factor))
}

/// Chain temperature in one section, °C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SectionTemperature {
    /// At its entry.
    pub inlet: f64,
    /// At its exit.
    pub outlet: f64,
    /// Mean over the time in it.
    pub mean: f64,
    /// Halfway in time.
    pub middle: f64,
    /// Of the surroundings.
    pub environment: f64,
    /// Time constant, s.
    pub time_constant: f64,
}

impl SectionTemperature {
    /// Temperature (°C) `time` s after entry.
    pub fn after(&self, time: f64) -> f64 {
        self.environment + (self.inlet - self.environment) * (-time / self.time_constant).exp()
    }
}

/// Chain temperature round the loop.
#[derive(Debug, Clone, PartialEq)]
pub struct Temperatures {
    /// By section of the survey.
    pub sections: Vec<SectionTemperature>,
    /// Mean over one revolution, °C.
    pub mean: f64,
}

/// Periodic chain temperature.
///
/// In each section dϑ/dt = (ϑ_env − ϑ)/τ, so exit is affine in entry; composed once round the loop the start is that
/// which returns to itself. Closed form; nothing is stepped in time.
pub fn temperatures(layout: &Layout) -> Temperatures {
    let (mut total, mut offset) = (0.0, 0.0);
    for place in &layout.places {
        let ratio = place.duration / constant(layout, place);
        total += ratio;
        offset = offset * (-ratio).exp() - place.environment * (-ratio).exp_m1();
    }
    // total > 0, as every section has a length.
    let mut inlet = offset / -(-total).exp_m1();

    let unknown = SectionTemperature {
        inlet,
        outlet: inlet,
        mean: inlet,
        middle: inlet,
        environment: inlet,
        time_constant: f64::INFINITY,
    };
    let mut sections = vec![unknown; layout.places.len()];
    let mut sum = 0.0;
    for place in &layout.places {
        let time_constant = constant(layout, place);
        let ratio = place.duration / time_constant;
        let excess = inlet - place.environment;
        let half = (-ratio / 2.0).exp();
        let outlet = place.environment + excess * half * half;
        let mean = place.environment + excess * mean_of_decay(ratio);
        sections[place.section] = SectionTemperature {
            inlet,
            outlet,
            mean,
            middle: place.environment + excess * half,
            environment: place.environment,
            time_constant,
        };
        sum += mean * place.duration;
        inlet = outlet;
    }
    Temperatures { sections, mean: sum / layout.circuit_time }
}

fn constant(layout: &Layout, place: &Place) -> f64 {
    thermal_time_constant(layout.mass, place.heat_transfer, layout.surface_factor)
}

/// Mean of exp(−x) from 0 to `ratio`, 1 at 0.
fn mean_of_decay(ratio: f64) -> f64 {
    if ratio == 0.0 { 1.0 } else { -(-ratio).exp_m1() / ratio }
}

/// How much (K) friction can heat the chain at most: all friction heat leaves through the chain's own surface.
///
/// `friction` N of all causes ([`March::friction`](super::March::friction)); the lowest heat transfer of the loop
/// counts. Energy balance; an upper bound, since tracks and wheels take their part.
pub fn friction_heating(layout: &Layout, friction: f64) -> f64 {
    let lowest = layout.places.iter().map(|place| place.heat_transfer).fold(f64::INFINITY, f64::min);
    let surface = exchange_perimeter(layout.mass, layout.surface_factor) * layout.length * layout.strands;
    friction * layout.speed / (lowest * surface)
}

impl Temperatures {
    /// Means over one revolution of functions of chain temperature (°C), several at once.
    ///
    /// Never take the function of a mean temperature for strongly curved ones such as evaporation. Per section 16-point
    /// Gauss-Legendre (8 and 4 in short ones) on panels of at most two time constants up to 40 of them, the surroundings thereafter; a loop at
    /// one temperature takes one evaluation.
    pub fn time_mean<const COUNT: usize>(
        &self,
        layout: &Layout,
        mut of: impl FnMut(f64) -> [f64; COUNT],
    ) -> [f64; COUNT] {
        if self.is_even() {
            return of(self.mean);
        }
        let mut sum = [0.0; COUNT];
        let mut add = |values: [f64; COUNT], weight: f64| {
            sum.iter_mut().zip(values).for_each(|(sum, value)| *sum += weight * value);
        };
        for place in &layout.places {
            let section = &self.sections[place.section];
            let varying = place.duration.min(SETTLED * section.time_constant);
            if varying < place.duration {
                add(of(section.environment), place.duration - varying);
            }
            let panels = (varying / (2.0 * section.time_constant)).ceil().max(1.0);
            let (width, constants) = (varying / panels, varying / panels / section.time_constant);
            let rule: &[(f64, f64)] = match constants {
                ..=FEW_NODES => &GAUSS_LEGENDRE_4,
                ..=SOME_NODES => &GAUSS_LEGENDRE_8,
                _ => &GAUSS_LEGENDRE_16,
            };
            // the node and its mirror image in the middle of a panel
            let middle = (-0.5 * constants).exp();
            let mut decays = [(0.0, 0.0); 8];
            for (decay, (node, _)) in decays.iter_mut().zip(rule) {
                let later = (-0.5 * constants * node).exp();
                *decay = (middle * later, middle / later);
            }
            let mut excess = section.inlet - section.environment;
            // At most twenty panels.
            for _ in 0..panels as u32 {
                for ((later, sooner), (_, weight)) in decays.iter().zip(rule) {
                    add(of(section.environment + excess * sooner), 0.5 * width * weight);
                    add(of(section.environment + excess * later), 0.5 * width * weight);
                }
                excess *= middle * middle;
            }
        }
        sum.map(|sum| sum / layout.circuit_time)
    }

    /// Whether the chain has one temperature all round.
    pub fn is_even(&self) -> bool {
        self.sections.iter().all(|section| (section.inlet - self.mean).abs() < 1e-9)
    }
}

/// Time constants after which a chain is taken for as warm as its surroundings.
const SETTLED: f64 = 40.0;

/// Time constants across a panel up to which 4 nodes, and 8, leave no more than 16 do across two.
const FEW_NODES: f64 = 0.04;
const SOME_NODES: f64 = 0.5;

#[cfg(test)]
mod tests {
    use super::super::testing::*;
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn time_constants_of_an_independent_implementation() {
        assert!((thermal_time_constant(5.5, 12.0, 3.0) - 781.5378).abs() < 1e-4);
        assert!((thermal_time_constant(5.5, 25.0, 3.0) - 375.1381).abs() < 1e-4);
    }

    #[test]
    fn an_even_loop_has_the_temperature_of_its_surroundings() {
        let (layout, _) = laid_out(&simple_loop());
        let temperatures = temperatures(&layout);
        assert!(temperatures.is_even());
        assert!((temperatures.mean - 20.0).abs() < 1e-12);
        let mut calls = 0;
        let [mean] = temperatures.time_mean(&layout, |temperature| {
            calls += 1;
            [temperature]
        });
        assert!((mean - 20.0).abs() < 1e-12 && calls == 1);
    }

    #[test]
    fn fewer_nodes_in_short_sections_lose_nothing() {
        // a vapour pressure over 150 K of excess, against panels a hundred times shorter
        let vapour = |temperature: f64| (-12_000.0 / (temperature + 273.15)).exp();
        let mean = |constants: f64, rule: &[(f64, f64)]| {
            let at = |x: f64| vapour(40.0 + 150.0 * (-x).exp());
            let pair = |(node, weight): &(f64, f64)| {
                0.5 * weight * (at(0.5 * constants * (1.0 - node)) + at(0.5 * constants * (1.0 + node)))
            };
            rule.iter().map(pair).sum::<f64>()
        };
        for (constants, rule) in [(FEW_NODES, &GAUSS_LEGENDRE_4[..]), (SOME_NODES, &GAUSS_LEGENDRE_8)] {
            let ratio = mean(constants, rule) / mean(constants, &GAUSS_LEGENDRE_16);
            assert!((ratio - 1.0).abs() < 1e-12, "{constants} {ratio}");
        }
    }

    proptest! {
        #[test]
        fn the_chain_comes_back_as_it_left(sections in any_loop()) {
            let (layout, _) = laid_out(&sections);
            let temperatures = temperatures(&layout);
            let at = |index: usize| &temperatures.sections[layout.places[index].section];
            let count = layout.places.len();
            for index in 0..count {
                prop_assert!((at(index).outlet - at((index + 1) % count).inlet).abs() < 1e-9);
                let place = &layout.places[index];
                prop_assert!((at(index).after(place.duration) - at(index).outlet).abs() < 1e-9);
                prop_assert!((at(index).after(place.duration / 2.0) - at(index).middle).abs() < 1e-9);
            }
            let bounds = |pick: fn(f64, f64) -> f64, start: f64| {
                layout.places.iter().map(|place| place.environment).fold(start, pick)
            };
            prop_assert!(temperatures.mean <= bounds(f64::max, -300.0) + 1e-9);
            prop_assert!(temperatures.mean >= bounds(f64::min, 300.0) - 1e-9);
        }

        #[test]
        fn means_round_the_loop_are_integrals(sections in any_loop(), slow in 0.0005..0.3f64) {
            let (mut layout, _) = laid_out(&sections);
            let stretch = layout.speed / slow;
            layout.places.iter_mut().for_each(|place| place.duration *= stretch);
            layout.circuit_time *= stretch;
            let temperatures = temperatures(&layout);
            let of = |temperature: f64| [temperature, (0.05 * temperature).exp()];
            let ours = temperatures.time_mean(&layout, of);
            prop_assert!((ours[0] - temperatures.mean).abs() < 1e-8);
            let mut sum = 0.0;
            for place in &layout.places {
                let section = &temperatures.sections[place.section];
                let steps = (200.0 * (place.duration / section.time_constant).max(1.0)) as u32;
                let step = place.duration / f64::from(steps);
                for k in 0..steps {
                    sum += step * of(section.after((f64::from(k) + 0.5) * step))[1];
                }
            }
            prop_assert!((ours[1] / (sum / layout.circuit_time) - 1.0).abs() < 1e-3);
        }
    }
}
