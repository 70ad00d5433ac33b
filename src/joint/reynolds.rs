//! The whole pressure field of a steady pin in its bush: the two-dimensional Reynolds equation, as a reference.
//!
//! Takes eccentricity and proportions; gives load, attitude, friction, flow. It is far too slow for a line of joints
//! (about a millisecond) and is there to judge the closed forms that are fast enough.

mod band;
mod grid;
mod rupture;

use crate::error::{Code, Error, Result};
use grid::Grid;
use rupture::Film;
use std::f64::consts::{PI, TAU};

/// What happens where the pressure would fall below ambient.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Cavitation {
    /// The film ruptures where pressure and its slope vanish (Swift-Stieber); what oil does.
    #[default]
    Reynolds,
    /// Negative pressures of the unbroken film are left out (half Sommerfeld, Gümbel).
    Half,
    /// Negative pressures count (full Sommerfeld); only for comparison with theory.
    Full,
}

/// A steady journal bearing as a solution of the Reynolds equation; all numbers without dimension.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ReynoldsBearing {
    /// Sommerfeld number S = (R/c)² η N/p with N in revolutions per second and p = load/(2 R L).
    pub sommerfeld: f64,
    /// Angle between load line and line of centres (rad).
    pub attitude: f64,
    /// (R/c) f with drag over the whole circumference, as Raimondi & Boyd count it.
    pub friction: f64,
    /// (R/c) f where behind the rupture only streamers fill the gap.
    pub friction_striated: f64,
    /// Oil that enters at the widest gap, Q/(R c N L).
    pub flow: f64,
    /// Share of it that leaves at the ends.
    pub side_flow_share: f64,
    /// Mean bearing pressure over greatest film pressure.
    pub pressure_ratio: f64,
}

/// Solves the Reynolds equation for a full (360°) bearing with oil at ambient pressure at the widest gap and both ends.
///
/// `eccentricity_ratio` 0 < e ≤ 0.999 (the cells resolve the narrow gap up to there), `length_to_diameter` > 0, infinite
/// for the long bearing. Steady, isoviscous, rigid. Grid of 240 × 24 cells on half the length: the load is within
/// 0.1 to 0.3 % of the limit of fine grids.
/// Source: Reynolds 1886; Raimondi & Boyd 1958 for the outputs; finite volumes of our own.
///
/// ```
/// use pinfilm::joint::reynolds::{Cavitation, reynolds_bearing};
/// let bearing = reynolds_bearing(0.8, 1.0, Cavitation::Reynolds)?;
/// assert!((bearing.sommerfeld - 0.0446).abs() < 2e-4); // Raimondi & Boyd 1958, L/D = 1
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn reynolds_bearing(
    eccentricity_ratio: f64,
    length_to_diameter: f64,
    cavitation: Cavitation,
) -> Result<ReynoldsBearing> {
    reynolds_bearing_on_grid(eccentricity_ratio, length_to_diameter, cavitation, 240, 24)
}

/// The same on a grid of `around` × `along` cells; the error falls with the square of the cell size.
///
/// Along the half length there is one cell for the infinitely long bearing, whatever `along`. `around` ≥ 8.
pub fn reynolds_bearing_on_grid(
    eccentricity_ratio: f64,
    length_to_diameter: f64,
    cavitation: Cavitation,
    around: usize,
    along: usize,
) -> Result<ReynoldsBearing> {
    let along = if length_to_diameter.is_finite() { along } else { 1 };
    let grid = Grid::new(eccentricity_ratio, length_to_diameter, around, along);
    let mut film = match cavitation {
        Cavitation::Reynolds => ruptured_film(eccentricity_ratio, length_to_diameter, &grid)?,
        Cavitation::Half | Cavitation::Full => rupture::unbroken(&grid),
    };
    if cavitation == Cavitation::Half {
        cut_suction(&grid, &mut film);
    }
    let bearing = outcome(eccentricity_ratio, length_to_diameter, &grid, &film);
    if bearing.sommerfeld.is_finite() {
        return Ok(bearing);
    }
    Err(Error::new(
        Code::OutOfRange,
        "eccentricity ratio",
        format!("a pin at eccentricity ratio {eccentricity_ratio} carries no load that can be computed: give one between 0 and 0.999"),
    )
    .number(eccentricity_ratio)
    .limit("0 < eccentricity ratio <= 0.999"))
}

/// The ruptured film, with the guess of the rupture from ever coarser grids.
fn ruptured_film(eccentricity_ratio: f64, length_to_diameter: f64, grid: &Grid) -> Result<Film> {
    let halves = |cells: usize| cells == 1 || cells.is_multiple_of(2);
    if grid.around < 60 || !grid.around.is_multiple_of(4) || !halves(grid.along) {
        return rupture::ruptured(grid, &vec![grid.around * 5 / 8; grid.along]);
    }
    let coarse = Grid::new(eccentricity_ratio, length_to_diameter, grid.around / 2, grid.along.div_ceil(2));
    let guess = ruptured_film(eccentricity_ratio, length_to_diameter, &coarse)?.cells;
    // Every cell of the coarse grid is two by two cells of this one.
    let start: Vec<usize> = (0..grid.along).map(|j| 2 * guess[j / 2]).collect();
    rupture::ruptured(grid, &start)
}

/// Takes away the pressures below ambient.
fn cut_suction(grid: &Grid, film: &mut Film) {
    for (j, end) in film.cells.iter_mut().enumerate() {
        *end = (0..grid.around).find(|i| film.pressure[i * grid.along + j] < 0.0).unwrap_or(grid.around);
    }
    film.pressure.iter_mut().for_each(|p| *p = p.max(0.0));
}

/// Load, angle, friction and flow of a film.
fn outcome(e: f64, length_to_diameter: f64, grid: &Grid, film: &Film) -> ReynoldsBearing {
    let n = grid.along;
    let (mut along_centres, mut across) = (0.0, 0.0);
    let mut side = 0.0;
    for i in 0..grid.around {
        let row = &film.pressure[i * n..][..n];
        let pushed: f64 = row.iter().zip(&grid.width).map(|(p, w)| p * w).sum();
        let (start, end) = (grid.angle[i], grid.angle[i + 1]);
        along_centres -= pushed * (end.sin() - start.sin());
        across += pushed * (end.cos() - start.cos());
        side += grid.axial[i] * grid.axial_steepness[n - 1] * row[n - 1];
    }
    let across = across.abs();
    let load = along_centres.hypot(across);
    let attitude = across.atan2(along_centres);

    let open = 1.0 - e * e;
    let drag = TAU / open.sqrt();
    let drag_striated: f64 =
        film.cells.iter().zip(&grid.width).map(|(&end, w)| w * streamer_drag(e, grid.angle[end])).sum();
    let pull = 0.5 * e * attitude.sin();

    let widest = 1.0 + e;
    let entering: f64 =
        (0..n).map(|j| (0.5 * widest - grid.circumferential[0] * film.pressure[j] / 12.0) * grid.width[j]).sum();
    let (flow, side_flow) = (TAU * entering, TAU * side / 12.0);
    ReynoldsBearing {
        sommerfeld: 1.0 / (PI * load),
        attitude,
        friction: drag / load + pull,
        friction_striated: drag_striated / load + pull,
        flow,
        side_flow_share: if length_to_diameter.is_finite() { side_flow / flow } else { 0.0 },
        pressure_ratio: 0.5 * load / greatest(grid, film),
    }
}

/// Drag of one axial row: a full film up to `rupture`, beyond it streamers that keep the width they have there.
///
/// ∫dθ/H up to the rupture and H(rupture) ∫dθ/H² beyond, both in closed form by Sommerfeld's substitution.
fn streamer_drag(e: f64, rupture: f64) -> f64 {
    let open = 1.0 - e * e;
    let squeeze = ((1.0 - e) / (1.0 + e)).sqrt();
    let g = 2.0 * (squeeze * (0.5 * rupture).sin()).atan2((0.5 * rupture).cos());
    let film = g / open.sqrt();
    let streamers = ((TAU - g) + e * g.sin()) / (open * open.sqrt());
    film + (1.0 + e * rupture.cos()) * streamers
}

/// Greatest pressure in the middle of the bearing: parabola through the highest cell and its neighbours.
fn greatest(grid: &Grid, film: &Film) -> f64 {
    let n = grid.along;
    let at = |i: usize| film.pressure[i * n];
    let centre = |i: usize| 0.5 * (grid.angle[i] + grid.angle[i + 1]);
    let top = (1..grid.around - 1).fold(1, |best, i| if at(i) > at(best) { i } else { best });
    let (left, right) = (centre(top - 1) - centre(top), centre(top + 1) - centre(top));
    let (down, up) = (at(top - 1) - at(top), at(top + 1) - at(top));
    // p − p(top) = slope·x + bend·x²
    let bend = (up / right - down / left) / (right - left);
    let slope = down / left - bend * left;
    if bend < 0.0 { at(top) - slope * slope / (4.0 * bend) } else { at(top) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn near(a: f64, b: f64, share: f64) -> bool {
        (a - b).abs() <= share * b.abs()
    }

    fn bearing(e: f64, length_to_diameter: f64, around: usize) -> ReynoldsBearing {
        reynolds_bearing_on_grid(e, length_to_diameter, Cavitation::Reynolds, around, around / 10).unwrap()
    }

    #[test]
    fn the_error_falls_with_the_square_of_the_cells() {
        let [a, b, c] = [60, 120, 240].map(|around| bearing(0.8, 1.0, around).sommerfeld);
        let ratio = (b - a) / (c - b);
        assert!((3.5..4.5).contains(&ratio), "{ratio}");
    }

    #[test]
    fn long_bearing_meets_sommerfeld() {
        for e in [0.1, 0.5, 0.9] {
            let o: f64 = 1.0 - e * e;
            // Full: W = 12π e/((2+e²) sqrt(o)); half: W = 6e sqrt(π² o + 4e²)/((2+e²) o).
            let full = 12.0 * PI * e / ((2.0 + e * e) * o.sqrt());
            let half = 6.0 * e * (PI * PI * o + 4.0 * e * e).sqrt() / ((2.0 + e * e) * o);
            for (cavitation, load) in [(Cavitation::Full, full), (Cavitation::Half, half)] {
                let ours = reynolds_bearing_on_grid(e, f64::INFINITY, cavitation, 4000, 1).unwrap();
                assert!(near(ours.sommerfeld, 1.0 / (PI * load), 1e-5), "{e} {cavitation:?}");
                assert_eq!(ours.side_flow_share, 0.0);
            }
            // A rupture with zero slope holds more film, so it carries more than the half film.
            assert!(bearing(e, f64::INFINITY, 240).sommerfeld < 1.0 / (PI * half));
            assert!(near(bearing(e, 200.0, 240).sommerfeld, bearing(e, f64::INFINITY, 240).sommerfeld, 0.01));
        }
    }

    #[test]
    fn a_pin_in_the_middle_is_refused() {
        assert_eq!(reynolds_bearing(0.0, 1.0, Cavitation::Reynolds).unwrap_err().code, Code::OutOfRange);
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(12))]
        #[test]
        fn short_bearing_meets_ocvirk(e in 0.05..0.9f64) {
            let length_to_diameter = 0.02;
            let o = 1.0 - e * e;
            let load = e / (o * o) * (PI * PI * o + 16.0 * e * e).sqrt() * length_to_diameter * length_to_diameter;
            let ours = bearing(e, length_to_diameter, 240);
            prop_assert!(near(ours.sommerfeld, 1.0 / (PI * load), 0.015), "{} {}", ours.sommerfeld * PI * load, e);
            prop_assert!((ours.attitude - (PI * o.sqrt()).atan2(4.0 * e)).abs() < 0.01);
        }

        #[test]
        fn sense_over_the_range(e in 0.01..0.999f64, ratio in -0.7..1.0f64) {
            let length_to_diameter = 10f64.powf(ratio);
            let ours = bearing(e, length_to_diameter, 120);
            prop_assert!(ours.sommerfeld > 0.0 && ours.attitude > 0.0 && ours.attitude < 0.5 * PI);
            prop_assert!(ours.friction_striated > 0.0 && ours.friction_striated < ours.friction);
            prop_assert!(ours.flow > 0.0 && ours.side_flow_share > 0.0 && ours.side_flow_share < 1.0);
            prop_assert!(ours.pressure_ratio > 0.0 && ours.pressure_ratio < 1.0);
            prop_assert!(bearing((e + 0.0005).min(0.9993), length_to_diameter, 120).sommerfeld < ours.sommerfeld);
        }
    }
}
