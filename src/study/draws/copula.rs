//! Correlated inputs: standard normal numbers tied to each other, then pushed through each input's own distribution.

use crate::error::{Code, Error, Result};
use nalgebra::DMatrix;

/// Correlations between the normal scores of inputs (Gaussian copula).
///
/// z = L z₀, L from Cholesky's R = L Lᵀ, z₀ independent. A matrix that is none is refused, never repaired.
/// Source: Nelsen, An Introduction to Copulas (2006); Iman and Conover (1982) for why scores and not values.
#[derive(Debug, Clone, PartialEq)]
pub struct Correlation {
    inputs: usize,
    /// Inputs that are correlated with others, rising.
    tied: Vec<usize>,
    /// Their correlations.
    matrix: DMatrix<f64>,
    /// Rows of L among them.
    lower: DMatrix<f64>,
}

impl Correlation {
    /// From the correlations of single pairs of `names`; all others are 0.
    pub fn from_pairs(names: &[&str], pairs: &[(usize, usize, f64)]) -> Result<Correlation> {
        let count = names.len();
        let mut matrix = DMatrix::identity(count, count);
        for &(i, j, r) in pairs {
            if i >= count || j >= count || i == j {
                let message = format!(
                    "a correlation is between two different inputs numbered 0 to {}: {i} and {j} are none",
                    count.saturating_sub(1)
                );
                return Err(Error::new(Code::UnknownKey, "correlation", message));
            }
            matrix[(i, j)] = r;
            matrix[(j, i)] = r;
        }
        Correlation::of(names, matrix)
    }

    /// From a full matrix, row by row, in the order of `names`.
    pub fn from_matrix(names: &[&str], rows: &[Vec<f64>]) -> Result<Correlation> {
        let count = names.len();
        if rows.len() != count || rows.iter().any(|row| row.len() != count) {
            let message =
                format!("a correlation matrix of {count} uncertain inputs has {count} rows of {count} numbers");
            return Err(Error::new(Code::Inconsistent, "correlation", message));
        }
        Correlation::of(names, DMatrix::from_fn(count, count, |i, j| rows[i][j]))
    }

    fn of(names: &[&str], matrix: DMatrix<f64>) -> Result<Correlation> {
        let inputs = names.len();
        check_entries(names, &matrix)?;
        let tied = (0..inputs).filter(|&i| (0..inputs).any(|j| i != j && matrix[(i, j)] != 0.0)).collect::<Vec<_>>();
        let matrix = DMatrix::from_fn(tied.len(), tied.len(), |i, j| matrix[(tied[i], tied[j])]);
        if tied.is_empty() {
            return Ok(Correlation { inputs, tied, lower: matrix.clone(), matrix });
        }
        let least = matrix.clone().symmetric_eigen().eigenvalues.iter().copied().fold(1.0, f64::min);
        // what rounding alone leaves of a matrix that is singular
        let singular = least <= 1e-12 * tied.len() as f64;
        match (!singular).then(|| matrix.clone().cholesky()).flatten() {
            Some(cholesky) => Ok(Correlation { inputs, tied, matrix, lower: cholesky.l() }),
            None => {
                let factor = (1.0 / (1.0 - least) * 1000.0 - 1.0).floor() / 1000.0;
                let names = tied.iter().map(|&i| names[i]).collect::<Vec<_>>().join(", ");
                let message = format!(
                    "the correlations of {names} cannot all hold at once (the matrix is not positive definite, smallest \
                     eigenvalue {least:.3}): check their signs, or multiply all of them by at most {factor}"
                );
                let limit = "all eigenvalues above 0";
                Err(Error::new(Code::Inconsistent, "correlation", message).number(least).limit(limit))
            }
        }
    }

    /// How many inputs it is about, correlated or not.
    pub fn inputs(&self) -> usize {
        self.inputs
    }

    /// Whether no input is correlated with another.
    pub fn is_none(&self) -> bool {
        self.tied.is_empty()
    }

    /// The inputs that are correlated with others.
    pub(super) fn tied(&self) -> &[usize] {
        &self.tied
    }

    /// Correlated score of the tied input `row` (its place among the tied ones) from independent scores `z`.
    pub(super) fn score(&self, row: usize, z: impl Fn(usize) -> f64) -> f64 {
        (0..=row).map(|column| self.lower[(row, column)] * z(column)).sum()
    }

    /// The inputs sorted into groups that are independent of each other: what an index of sensitivity can be given to.
    pub fn groups(&self) -> Vec<Vec<usize>> {
        let mut group: Vec<usize> = (0..self.inputs).collect();
        for (a, &i) in self.tied.iter().enumerate() {
            for (b, &j) in self.tied.iter().enumerate().skip(a + 1) {
                if self.matrix[(a, b)] != 0.0 && group[i] != group[j] {
                    let (keep, gone) = (group[i].min(group[j]), group[i].max(group[j]));
                    group.iter_mut().filter(|g| **g == gone).for_each(|g| *g = keep);
                }
            }
        }
        let members = |first: usize| (0..self.inputs).filter(|&i| group[i] == first).collect::<Vec<_>>();
        (0..self.inputs).map(members).filter(|members| !members.is_empty()).collect()
    }
}

fn check_entries(names: &[&str], matrix: &DMatrix<f64>) -> Result<()> {
    for i in 0..names.len() {
        for j in 0..=i {
            let (r, mirrored) = (matrix[(i, j)], matrix[(j, i)]);
            let refuse = |code, value: f64, what: &str, limit: &str| {
                let message = format!("the correlation of {} and {} is {value}: {what}", names[i], names[j]);
                Err(Error::new(code, "correlation", message).number(value).limit(limit))
            };
            if !r.is_finite() || !mirrored.is_finite() {
                let value = if r.is_finite() { mirrored } else { r };
                return refuse(
                    Code::NotFinite,
                    value,
                    "give a number between -1 and 1, 0 if nothing is known",
                    "finite",
                );
            }
            if r != mirrored {
                let what = format!("the other way round it is {mirrored}; give both the same number");
                return refuse(Code::Inconsistent, r, &what, "a symmetric matrix");
            }
            if i == j && r != 1.0 {
                return refuse(Code::Inconsistent, r, "an input is fully correlated with itself; write 1", "1");
            }
            if i != j && r.abs() >= 1.0 {
                let what = "it must lie between -1 and 1; inputs that move as one are one input, named once";
                return refuse(Code::OutOfRange, r, what, "between -1 and 1");
            }
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    const NAMES: [&str; 4] = ["friction", "price", "wear", "dust"];

    #[test]
    fn scores_have_the_correlations_asked_for() {
        let correlation = Correlation::from_pairs(&NAMES, &[(0, 2, 0.5), (2, 3, -0.3)]).unwrap();
        assert_eq!(correlation.tied(), [0, 2, 3]);
        let lower = &correlation.lower;
        assert!((lower * lower.transpose() - &correlation.matrix).norm() < 1e-15);
        assert_eq!(correlation.groups(), [vec![0, 2, 3], vec![1]]);
    }

    #[test]
    fn no_correlation_is_allowed() {
        let none = Correlation::from_pairs(&NAMES, &[]).unwrap();
        assert!(none.is_none());
        assert_eq!(none.groups().len(), 4);
    }

    #[test]
    fn what_is_no_correlation_matrix_is_refused() {
        let code = |pairs: &[(usize, usize, f64)]| Correlation::from_pairs(&NAMES, pairs).unwrap_err().code;
        assert_eq!(code(&[(0, 1, 1.0)]), Code::OutOfRange);
        assert_eq!(code(&[(0, 1, f64::NAN)]), Code::NotFinite);
        assert_eq!(code(&[(0, 4, 0.1)]), Code::UnknownKey);
        let contradiction = [(0, 1, 0.9), (1, 2, 0.9), (0, 2, -0.9)];
        let error = Correlation::from_pairs(&NAMES, &contradiction).unwrap_err();
        assert_eq!(error.code, Code::Inconsistent);
        let factor: f64 = error.message.rsplit(' ').next().unwrap().parse().unwrap();
        let weaker = contradiction.map(|(i, j, r)| (i, j, factor * r));
        Correlation::from_pairs(&NAMES, &weaker).unwrap();
        // exactly singular
        assert_eq!(code(&[(0, 1, 0.6), (1, 2, 0.8)]), Code::Inconsistent);

        let two = |rows: [[f64; 2]; 2]| Correlation::from_matrix(&NAMES[..2], &rows.map(|row| row.to_vec()));
        assert!(two([[1.0, 0.2], [0.2, 1.0]]).is_ok());
        assert_eq!(two([[1.0, 0.2], [0.3, 1.0]]).unwrap_err().code, Code::Inconsistent);
        assert_eq!(two([[0.9, 0.2], [0.2, 1.0]]).unwrap_err().code, Code::Inconsistent);
        assert!(Correlation::from_matrix(&NAMES, &[vec![1.0]]).is_err());
    }
}
