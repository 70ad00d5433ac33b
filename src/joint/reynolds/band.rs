//! Direct solution of the pressure equations: a symmetric band, factored once as far as nothing changes.

use super::grid::Grid;

/// Factors L·D·Lᵀ of the pressure equations of a grid, cell after cell from the widest gap in the sense of turning.
///
/// Each row is worked out from the rows before it only. When the film ruptures elsewhere, the factors of all cells
/// ahead of the first change stay valid; that is what makes the search for the rupture cheap.
pub(super) struct Band {
    /// Per cell: pivot, then the entries of its row of D·Lᵀ to the next `along` cells.
    rows: Vec<f64>,
    /// Per cell: source after elimination.
    source: Vec<f64>,
    /// Pressure per cell, angular index first.
    pub pressure: Vec<f64>,
}

impl Band {
    /// Room for the equations of `grid`.
    pub fn new(grid: &Grid) -> Band {
        let cells = grid.around * grid.along;
        Band { rows: vec![0.0; cells * (grid.along + 1)], source: vec![0.0; cells], pressure: vec![0.0; cells] }
    }

    /// Factors the equations of the angular rows from `first` on, where axial row `j` carries pressure in its first
    /// `film[j]` cells and none beyond.
    pub fn factor(&mut self, grid: &Grid, film: &[usize], first: usize) {
        let (n, stride) = (grid.along, grid.along + 1);
        let last = film.iter().copied().max().unwrap_or(0);
        for i in first..last {
            for j in 0..n {
                let cell = i * n + j;
                let (before, rest) = self.rows.split_at_mut(cell * stride);
                let row = &mut rest[..stride];
                row.fill(0.0);
                if i >= film[j] {
                    row[0] = 1.0;
                    self.source[cell] = 0.0;
                    continue;
                }
                let (width, axial) = (grid.width[j], grid.axial[i]);
                let inner = if j > 0 { grid.axial_steepness[j - 1] } else { 0.0 };
                row[0] = (grid.circumferential[i] + grid.circumferential[i + 1]) * width
                    + axial * (inner + grid.axial_steepness[j]);
                if j + 1 < n && i < film[j + 1] {
                    row[1] = -axial * grid.axial_steepness[j];
                }
                if i + 1 < film[j] {
                    row[n] = -grid.circumferential[i + 1] * width;
                }
                let mut source = grid.wedge(i) * width;
                for back in 1..=n.min(cell) {
                    let earlier = &before[(cell - back) * stride..][..stride];
                    let entry = earlier[back];
                    if entry != 0.0 {
                        let share = entry / earlier[0];
                        source -= share * self.source[cell - back];
                        for (mine, theirs) in row.iter_mut().zip(&earlier[back..]) {
                            *mine -= share * theirs;
                        }
                    }
                }
                self.source[cell] = source;
            }
        }
    }

    /// Pressures of the angular rows from the last film cell back to `first`; zero beyond the film.
    pub fn solve(&mut self, grid: &Grid, film: &[usize], first: usize) {
        let (n, stride) = (grid.along, grid.along + 1);
        let end = film.iter().copied().max().unwrap_or(0) * n;
        self.pressure[end..].fill(0.0);
        for cell in (first * n..end).rev() {
            let row = &self.rows[cell * stride..][..stride];
            let (mine, ahead) = self.pressure[cell..].split_at_mut(1);
            let carried: f64 = row[1..].iter().zip(ahead.iter()).map(|(a, p)| a * p).sum();
            mine[0] = (self.source[cell] - carried) / row[0];
        }
    }
}
