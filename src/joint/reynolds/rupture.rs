//! Where the film ruptures: no pressure below ambient, and no oil lost while pressure remains (Swift-Stieber).

use super::band::Band;
use super::grid::Grid;
use crate::error::{Code, Error, Result};

/// Rounds that jump to where the rupture is expected before they go cell by cell, which always ends.
const JUMPS: usize = 8;
/// A ruptured cell takes part again when more oil than this share of the greatest wedge flows in.
const REJOIN: f64 = 1e-12;

/// Pressures, and how many cells of each axial row carry pressure.
pub(super) struct Film {
    /// Pressure per cell, angular index first.
    pub pressure: Vec<f64>,
    /// Cells with pressure in each axial row, counted from the widest gap.
    pub cells: Vec<usize>,
}

/// The film over the whole circumference; pressures may be negative.
pub(super) fn unbroken(grid: &Grid) -> Film {
    let cells = vec![grid.around; grid.along];
    let mut band = Band::new(grid);
    band.factor(grid, &cells, 0);
    band.solve(grid, &cells, 0);
    Film { pressure: band.pressure, cells }
}

/// The film with the Reynolds (Swift-Stieber) rupture: P ≥ 0 and A·P ≥ b with one of them equal in every cell.
///
/// The pair of conditions has one solution (the equations form an M-matrix), so any way to it is good: `start` holds a
/// guess of the cells under pressure in each axial row. The wedge feeds every cell before the narrow gap, so the film
/// is whole there and ruptures once in each axial row behind it; only the rows behind the narrow gap are solved anew.
/// Cell by cell (after the first rounds) this is the primal-dual active set method: Hintermüller, Ito & Kunisch 2002.
pub(super) fn ruptured(grid: &Grid, start: &[usize]) -> Result<Film> {
    let narrow = grid.around / 2;
    let mut cells: Vec<usize> = start.iter().map(|&c| c.clamp(narrow, grid.around)).collect();
    let mut band = Band::new(grid);
    let mut changed = 0;
    for round in 0..20 * grid.around {
        band.factor(grid, &cells, changed);
        band.solve(grid, &cells, narrow.saturating_sub(1));
        let next = moved(grid, &band.pressure, &cells, narrow, round < JUMPS);
        if next == cells {
            band.solve(grid, &cells, 0);
            return Ok(Film { pressure: band.pressure, cells });
        }
        changed = cells.iter().zip(&next).filter(|(a, b)| a != b).map(|(a, b)| *a.min(b)).min().unwrap_or(0);
        changed = changed.saturating_sub(1); // the row ahead of a change looks at it
        cells = next;
    }
    Err(Error::new(Code::NotConverged, "film pressure", "the edge of the oil film between pin and bush did not settle"))
}

/// Where the film should end in each axial row, from pressures with the ends at `cells`; the same where all is well.
fn moved(grid: &Grid, pressure: &[f64], cells: &[usize], narrow: usize, jump: bool) -> Vec<usize> {
    let n = grid.along;
    let at = |i: usize, j: usize| pressure[i * n + j];
    let least = REJOIN * (0..grid.around).map(|i| grid.wedge(i).abs()).fold(0.0, f64::max);
    let farthest = cells.iter().copied().max().unwrap_or(0);
    (0..n)
        .map(|j| {
            let end = cells[j];
            if let Some(first) = (narrow..end).find(|&i| at(i, j) <= 0.0) {
                // Too far by d cells makes the pressure negative over 2 d cells.
                return if jump { first + (end - first) / 2 } else { first };
            }
            let inflow = |i: usize| {
                let inner = if j > 0 { grid.axial_steepness[j - 1] * at(i, j - 1) } else { 0.0 };
                let outer = if j + 1 < n { grid.axial_steepness[j] * at(i, j + 1) } else { 0.0 };
                grid.circumferential[i] * grid.width[j] * at(i - 1, j) + grid.axial[i] * (inner + outer)
            };
            let sucked = |i: usize| -grid.wedge(i) * grid.width[j];
            match (end..(farthest + 1).min(grid.around)).rev().find(|&i| inflow(i) - sucked(i) > least * grid.width[j])
            {
                None => end,
                Some(last) if jump && last == end => {
                    // Too short by d cells leaves an inflow of about d + 1/2 times what the gap draws.
                    let ahead = (inflow(end) / sucked(end)).min(grid.around as f64) as usize;
                    (end + ahead.max(1)).min(grid.around)
                }
                Some(last) => last + 1,
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(60))]
        #[test]
        fn no_suction_and_no_oil_lost(e in 0.001..0.999f64, ratio in -1.5..1.5f64, guess in 0.0..1.0f64) {
            let grid = Grid::new(e, 10f64.powf(ratio), 60, 6);
            let start = vec![(60.0 * guess) as usize; 6];
            let film = ruptured(&grid, &start).unwrap();
            let greatest = (0..60).map(|i| grid.wedge(i).abs()).fold(0.0, f64::max);
            for i in 0..60 {
                for j in 0..6 {
                    let at = |i: usize, j: usize| film.pressure[i * 6 + j];
                    let fall = |other: Option<f64>, through: f64| through * (at(i, j) - other.unwrap_or(0.0));
                    let lost = grid.width[j]
                        * (fall(i.checked_sub(1).map(|i| at(i, j)), grid.circumferential[i])
                            + fall((i + 1 < 60).then(|| at(i + 1, j)), grid.circumferential[i + 1]))
                        + if j > 0 { fall(Some(at(i, j - 1)), grid.axial[i] * grid.axial_steepness[j - 1]) } else { 0.0 }
                        + fall((j + 1 < 6).then(|| at(i, j + 1)), grid.axial[i] * grid.axial_steepness[j])
                        - grid.wedge(i) * grid.width[j];
                    prop_assert!(at(i, j) >= 0.0);
                    if at(i, j) > 0.0 {
                        prop_assert!(lost.abs() < 1e-8 * greatest, "cell {i} {j}: {lost}");
                    } else {
                        prop_assert!(lost > -1e-8 * greatest, "cell {i} {j}: {lost}");
                    }
                }
            }
        }
    }
}
