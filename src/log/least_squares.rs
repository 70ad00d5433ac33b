//! Regression by Householder's triangles: a handful of columns, any number of rows.
//!
//! The textbook's normal equations square the condition of the design, and covariates of a line often run together.
//! The one decomposition below also solves the square systems of the run lengths; a linear-algebra library for these
//! two uses would be the largest thing in the build.

use super::statistics::sum;
use crate::error::{Code, Error, Result};

/// A column is taken for a combination of those before it when this share of its length, or less, is left.
const DEPENDENT: f64 = 1e-10;

/// A matrix as reflections and a triangle. Source: Golub and Van Loan, Matrix Computations, Householder QR.
pub(super) struct Triangle {
    /// Columns: above the diagonal the triangle, from the diagonal down the reflections.
    columns: Vec<Vec<f64>>,
    diagonal: Vec<f64>,
    /// Half the squared length of each reflection.
    halves: Vec<f64>,
}

impl Triangle {
    /// Decomposes columns of equal length, at least as long as there are columns; `Err(j)` if column j depends on
    /// those before it.
    pub fn new(mut columns: Vec<Vec<f64>>) -> std::result::Result<Self, usize> {
        let (mut diagonal, mut halves) = (Vec::new(), Vec::new());
        for j in 0..columns.len() {
            let (head, tail) = columns.split_at_mut(j + 1);
            let column = &mut head[j];
            let whole = column.iter().map(|x| x * x).sum::<f64>().sqrt();
            let left = column[j..].iter().map(|x| x * x).sum::<f64>().sqrt();
            if left.is_nan() || left <= DEPENDENT * whole {
                return Err(j);
            }
            let corner = if column[j] > 0.0 { -left } else { left };
            let half = left * (left + column[j].abs());
            column[j] -= corner;
            for other in tail.iter_mut() {
                reflect(&column[j..], half, &mut other[j..]);
            }
            diagonal.push(corner);
            halves.push(half);
        }
        Ok(Triangle { columns, diagonal, halves })
    }

    /// Solves the system in the sense of least squares.
    pub fn solve(&self, rhs: &[f64]) -> Vec<f64> {
        let mut turned = rhs.to_vec();
        for (j, half) in self.halves.iter().enumerate() {
            reflect(&self.columns[j][j..], *half, &mut turned[j..]);
        }
        let p = self.diagonal.len();
        turned.truncate(p);
        for j in (0..p).rev() {
            turned[j] /= self.diagonal[j];
            for i in 0..j {
                turned[i] -= self.columns[j][i] * turned[j];
            }
        }
        turned
    }

    /// (XᵀX)⁻¹ from the triangle alone.
    fn inverse_of_products(&self) -> Vec<Vec<f64>> {
        let p = self.diagonal.len();
        // columns of the inverse triangle
        let mut inverse = vec![vec![0.0; p]; p];
        for (j, column) in inverse.iter_mut().enumerate() {
            column[j] = 1.0 / self.diagonal[j];
            for i in (0..j).rev() {
                let above: f64 = (i + 1..=j).map(|k| self.columns[k][i] * column[k]).sum();
                column[i] = -above / self.diagonal[i];
            }
        }
        let product = |a: usize, b: usize| (0..p).map(|k| inverse[k][a] * inverse[k][b]).sum();
        (0..p).map(|a| (0..p).map(|b| product(a, b)).collect()).collect()
    }
}

/// Reflects `other` in the plane across `mirror`, whose squared length is twice `half`.
fn reflect(mirror: &[f64], half: f64, other: &mut [f64]) {
    let dot: f64 = mirror.iter().zip(other.iter()).map(|(m, o)| m * o).sum();
    let share = dot / half;
    for (o, m) in other.iter_mut().zip(mirror) {
        *o -= share * m;
    }
}

/// An ordinary least-squares fit.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// One coefficient for each column.
    pub coefficients: Vec<f64>,
    /// Reading less fit, row by row.
    pub residuals: Vec<f64>,
    /// Inverse of the matrix of products XᵀX.
    pub inverse: Vec<Vec<f64>>,
}

impl Fit {
    /// Rows less columns.
    pub fn degrees(&self) -> f64 {
        (self.residuals.len() - self.coefficients.len()) as f64
    }

    /// Variance of the residuals, over [`Fit::degrees`].
    pub fn residual_variance(&self) -> f64 {
        sum(self.residuals.iter().map(|e| e * e)) / self.degrees()
    }

    /// Covariance of the coefficients if the readings were independent.
    pub fn covariance(&self) -> Vec<Vec<f64>> {
        let variance = self.residual_variance();
        self.inverse.iter().map(|row| row.iter().map(|x| variance * x).collect()).collect()
    }

    /// Standard errors of the coefficients if the readings were independent.
    pub fn standard_errors(&self) -> Vec<f64> {
        self.covariance().iter().enumerate().map(|(i, row)| row[i].sqrt()).collect()
    }
}

/// Ordinary least squares of `readings` on `columns` (the constant is a column of ones), by Householder's QR.
///
/// All columns as long as the readings, all numbers finite. Fails with fewer rows than columns plus one, and where a
/// column is a combination of those before it.
///
/// ```
/// let line = pinfilm::log::least_squares(&[&[1.0; 3], &[0.0, 1.0, 2.0]], &[1.0, 3.0, 5.0])?;
/// assert!((line.coefficients[1] - 2.0).abs() < 1e-14);
/// # Ok::<(), pinfilm::Error>(())
/// ```
pub fn least_squares(columns: &[&[f64]], readings: &[f64]) -> Result<Fit> {
    let (n, p) = (readings.len(), columns.len());
    if let Some(odd) = columns.iter().find(|column| column.len() != n) {
        return Err(Error::new(
            Code::Inconsistent,
            "covariates",
            format!("a covariate has {} rows and the readings {n}: give one value for each reading", odd.len()),
        ));
    }
    if n <= p {
        return Err(Error::new(
            Code::Inconsistent,
            "readings",
            format!("{n} readings cannot settle {p} parameters: log longer or leave covariates out"),
        )
        .number(n as f64)
        .limit(format!("more than {p}")));
    }
    let triangle = Triangle::new(columns.iter().map(|column| column.to_vec()).collect()).map_err(|column| {
        Error::new(
            Code::Inconsistent,
            "covariates",
            format!(
                "column {column} of the regression follows from those before it, so its effect cannot be told from theirs: \
                 leave out a covariate that does not vary or that runs with another"
            ),
        )
        .number(column as f64)
    })?;
    let coefficients = triangle.solve(readings);
    let fitted = |row: usize| columns.iter().zip(&coefficients).map(|(column, b)| column[row] * b).sum::<f64>();
    let residuals = readings.iter().enumerate().map(|(row, y)| y - fitted(row)).collect();
    Ok(Fit { residuals, inverse: triangle.inverse_of_products(), coefficients })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn residuals_stand_square_on_every_column(
            rows in prop::collection::vec((-5.0..5.0f64, 90.0..110.0f64, -1.0..1.0f64), 6..40),
        ) {
            let one = vec![1.0; rows.len()];
            let (a, b): (Vec<f64>, Vec<f64>) = rows.iter().map(|r| (r.0, r.1)).unzip();
            let y: Vec<f64> = rows.iter().map(|r| r.2).collect();
            let columns: [&[f64]; 3] = [&one, &a, &b];
            let fit = least_squares(&columns, &y).unwrap();
            for column in columns {
                let dot: f64 = column.iter().zip(&fit.residuals).map(|(x, e)| x * e).sum();
                prop_assert!(dot.abs() < 1e-9, "{}", dot);
            }
            // the inverse is one
            for i in 0..3 {
                for j in 0..3 {
                    let product: f64 = (0..3)
                        .map(|k| fit.inverse[i][k] * columns[k].iter().zip(columns[j]).map(|(x, y)| x * y).sum::<f64>())
                        .sum();
                    prop_assert!((product - f64::from(u8::from(i == j))).abs() < 1e-7);
                }
            }
        }

        #[test]
        fn square_systems(x in prop::collection::vec(-1.0..1.0f64, 5)) {
            // a diagonally heavy matrix
            let columns: Vec<Vec<f64>> =
                (0..5).map(|j| (0..5).map(|i| if i == j { 3.0 } else { x[(i * 7 + j * 3) % 5] / 2.0 }).collect()).collect();
            let rhs: Vec<f64> = (0..5).map(|i| (0..5).map(|j| columns[j][i] * x[j]).sum()).collect();
            let found = Triangle::new(columns).ok().unwrap().solve(&rhs);
            for (ours, truth) in found.iter().zip(&x) {
                prop_assert!((ours - truth).abs() < 1e-12);
            }
        }
    }

    #[test]
    fn a_covariate_that_does_not_vary_is_refused() {
        let error = least_squares(&[&[1.0; 5], &[70.0; 5]], &[1.0, 2.0, 3.0, 4.0, 5.0]).unwrap_err();
        assert_eq!((error.code, error.field.as_str()), (Code::Inconsistent, "covariates"));
        assert_eq!(least_squares(&[&[1.0; 2], &[0.0, 1.0]], &[1.0, 2.0]).unwrap_err().field, "readings");
        assert!(least_squares(&[&[1.0; 2]], &[1.0, 2.0, 3.0]).is_err());
    }
}
