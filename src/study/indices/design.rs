//! Which rows of inputs to compute for the indices.

use super::super::draws::{Net, unit};
use crate::error::{Code, Error, Result};

/// Rows of uniform numbers in blocks of `n`: A, B, then for each group of inputs A with that group's columns from B.
///
/// A and B are the halves of one Sobol net of twice the dimensions. Inputs that are correlated belong in one group
/// ([`super::super::Plan::groups`]), otherwise each is its own.
/// Source: Saltelli, Annoni, Azzini, Campolongo, Ratto and Tarantola, Comput. Phys. Commun. 181 (2010) 259.
#[derive(Debug, Clone, PartialEq)]
pub struct Design {
    n: usize,
    net: Net,
    groups: Vec<Vec<usize>>,
    /// Group of each input.
    group: Vec<usize>,
}

impl Design {
    /// `n` rows a block (a power of two) of `inputs` inputs; `seed` names the shift of the net, `None` leaves it as it is.
    pub fn new(n: usize, inputs: usize, seed: Option<u64>) -> Result<Design> {
        Design::grouped(n, (0..inputs).map(|i| vec![i]).collect(), seed)
    }

    /// The same for groups of inputs, which hold every input 0, 1, .. once.
    pub fn grouped(n: usize, groups: Vec<Vec<usize>>, seed: Option<u64>) -> Result<Design> {
        if !n.is_power_of_two() || n > 1 << 31 {
            let message = format!("{n} rows a block are no net: ask for a power of two, such as 1024");
            return Err(Error::new(Code::OutOfRange, "n", message).number(n as f64).limit("a power of two"));
        }
        let inputs = groups.iter().map(Vec::len).sum();
        let mut group = vec![usize::MAX; inputs];
        for (g, members) in groups.iter().enumerate() {
            for &i in members {
                if i >= inputs || group[i] != usize::MAX {
                    let message = format!("groups of {inputs} inputs hold each of 0 to {} once: {i}", inputs - 1);
                    return Err(Error::new(Code::Inconsistent, "groups", message));
                }
                group[i] = g;
            }
        }
        Ok(Design { n, net: Net::new(2 * inputs, seed)?, groups, group })
    }

    /// Rows of one block.
    pub fn block(&self) -> usize {
        self.n
    }

    /// Inputs of a row.
    pub fn inputs(&self) -> usize {
        self.group.len()
    }

    /// Groups that get an index each.
    pub fn groups(&self) -> &[Vec<usize>] {
        &self.groups
    }

    /// All rows: a block for A, one for B, one for each group.
    pub fn rows(&self) -> usize {
        self.n * (self.groups.len() + 2)
    }

    /// Uniform numbers of row `row` (below [`Design::rows`]); `words` is scratch of twice as many.
    pub fn row(&self, row: usize, words: &mut [u32], units: &mut [f64]) {
        self.net.point((row % self.n) as u32, words);
        let (a, b) = words.split_at(self.group.len());
        let block = row / self.n;
        for (i, u) in units.iter_mut().enumerate() {
            let from_b = block == 1 || (block > 1 && self.group[i] == block - 2);
            *u = unit(if from_b { b[i] } else { a[i] });
        }
    }

    /// The row to compute at place `place` of a run: rows of the same base row follow one another, and all but two of them
    /// share all but one group with the row of A, so that what only hangs on the others need not be computed anew.
    pub fn in_turn(&self, place: usize) -> usize {
        let blocks = self.groups.len() + 2;
        let block = match place % blocks {
            0 => 1, // B, then A, then A with one group of B at a time
            1 => 0,
            other => other,
        };
        block * self.n + place / blocks
    }

    /// What was computed in turn, in the order of the rows.
    pub fn in_order<T>(&self, in_turn: Vec<T>) -> Vec<T> {
        let mut rows: Vec<Option<T>> = (0..in_turn.len()).map(|_| None).collect();
        in_turn.into_iter().enumerate().for_each(|(place, found)| rows[self.in_turn(place)] = Some(found));
        rows.into_iter().flatten().collect()
    }

    /// Scratch for [`Design::row`]: words and units.
    pub fn scratch(&self) -> (Vec<u32>, Vec<f64>) {
        (vec![0; 2 * self.inputs()], vec![0.0; self.inputs()])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn blocks_share_their_columns() {
        let design = Design::grouped(4, vec![vec![0, 2], vec![1]], Some(9)).unwrap();
        assert_eq!((design.rows(), design.inputs(), design.groups().len()), (16, 3, 2));
        let row = |row| {
            let (mut words, mut units) = design.scratch();
            design.row(row, &mut words, &mut units);
            units
        };
        for i in 0..4 {
            let (a, b, first, second) = (row(i), row(4 + i), row(8 + i), row(12 + i));
            assert_eq!(first, [b[0], a[1], b[2]]);
            assert_eq!(second, [a[0], b[1], a[2]]);
        }
    }

    #[test]
    fn every_row_has_its_turn() {
        let design = Design::new(8, 3, None).unwrap();
        let turns: Vec<usize> = (0..design.rows()).map(|place| design.in_turn(place)).collect();
        assert_eq!(turns[..6], [8, 0, 16, 24, 32, 9]);
        assert!(design.in_order(turns).into_iter().eq(0..design.rows()));
    }

    #[test]
    fn bad_designs_are_refused() {
        assert_eq!(Design::new(1000, 3, None).unwrap_err().code, Code::OutOfRange);
        assert_eq!(Design::new(1024, 513, None).unwrap_err().code, Code::OutOfRange);
        assert_eq!(Design::grouped(8, vec![vec![0, 0]], None).unwrap_err().code, Code::Inconsistent);
    }
}
