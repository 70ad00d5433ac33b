//! Sobol points: spread more evenly than chance, so that a few hundred say as much as ten thousand random ones.

use super::philox::{key, philox4x32};
use crate::error::{Code, Error, Result};
use std::sync::LazyLock;

/// The most dimensions a net can have: as many as the table of direction numbers holds here.
pub const MOST_DIMENSIONS: usize = 1024;

/// Words of direction numbers, bit by bit: `DIRECTIONS[bit * MOST_DIMENSIONS + dimension]`.
static DIRECTIONS: LazyLock<Vec<u32>> = LazyLock::new(|| {
    let mut all = vec![0; 32 * MOST_DIMENSIONS];
    let rows = include_str!("directions.txt").lines().filter(|line| !line.starts_with('#'));
    let rows = rows.map(|line| line.split(' ').filter_map(|word| word.parse().ok()).collect::<Vec<u32>>());
    // the first dimension is the van der Corput sequence: all m are 1
    for (dimension, row) in std::iter::once(vec![1, 0, 0]).chain(rows).enumerate() {
        for (bit, word) in direction_words(&row).into_iter().enumerate() {
            all[bit * MOST_DIMENSIONS + dimension] = word;
        }
    }
    all
});

/// The 32 direction words of a row (dimension, degree s, inner coefficients a, m_1 .. m_s).
///
/// Source: Bratley and Fox, ACM Trans. Math. Softw. 14 (1988) 88; notation of Joe and Kuo (2008).
fn direction_words(row: &[u32]) -> [u32; 32] {
    let (&[_, degree, inner], initial) = row.split_first_chunk().unwrap_or((&[1, 0, 0], &[]));
    let degree = degree as usize;
    let mut words = [0_u32; 32];
    for bit in 0..32 {
        words[bit] = if degree == 0 {
            1 << (31 - bit)
        } else if let Some(&m) = initial.get(bit) {
            m << (31 - bit)
        } else {
            let back = words[bit - degree];
            (1..degree)
                .filter(|k| inner >> (degree - 1 - k) & 1 == 1)
                .fold(back ^ (back >> degree), |word, k| word ^ words[bit - k])
        };
    }
    words
}

/// The uniform number in the middle of word `word`'s share of 0..1: never 0, never 1.
pub fn unit(word: u32) -> f64 {
    (f64::from(word) + 0.5) / 4_294_967_296.0
}

/// The Sobol sequence in some dimensions, shifted by a seed or as it is.
///
/// Points come in the order of the Gray code. The first 2^m of them are a net: take a power of two, never leave out the
/// first point, never thin. The shift (exclusive or with one random word per dimension) keeps the net and makes every
/// point uniform, so that nets of several seeds measure their own error.
/// Source: Sobol' (1967); Antonov and Saleev (1979) for the order; direction numbers of Joe and Kuo (2008).
#[derive(Debug, Clone, PartialEq)]
pub struct Net {
    shift: Vec<u32>,
}

impl Net {
    /// A net of so many dimensions; `seed` names its shift, `None` leaves it unshifted.
    pub fn new(dimensions: usize, seed: Option<u64>) -> Result<Net> {
        if dimensions > MOST_DIMENSIONS {
            let message = format!(
                "{dimensions} dimensions are more than the {MOST_DIMENSIONS} that the Sobol sequence holds here: name fewer \
                 uncertain inputs, or use the random generator"
            );
            let limit = format!("at most {MOST_DIMENSIONS}");
            return Err(Error::new(Code::OutOfRange, "uncertain", message).number(dimensions as f64).limit(limit));
        }
        let word = |dimension| seed.map_or(0, |seed| philox4x32([dimension as u32, 0, 0, 0], key(seed))[0]);
        Ok(Net { shift: (0..dimensions).map(word).collect() })
    }

    /// How many dimensions it has.
    pub fn dimensions(&self) -> usize {
        self.shift.len()
    }

    /// The words of point `index`, one per dimension.
    pub fn point(&self, index: u32, words: &mut [u32]) {
        words.copy_from_slice(&self.shift);
        let mut gray = index ^ (index >> 1);
        while gray != 0 {
            self.flip(gray.trailing_zeros(), words);
            gray &= gray - 1;
        }
    }

    /// Turns the words of point `index` into those of the next point.
    pub fn advance(&self, index: u32, words: &mut [u32]) {
        self.flip((!index).trailing_zeros(), words);
    }

    fn flip(&self, bit: u32, words: &mut [u32]) {
        let first = bit as usize * MOST_DIMENSIONS;
        for (word, direction) in words.iter_mut().zip(&DIRECTIONS[first..]) {
            *word ^= direction;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points(net: &Net, count: u32) -> Vec<Vec<u32>> {
        let point = |index| {
            let mut words = vec![0; net.dimensions()];
            net.point(index, &mut words);
            words
        };
        (0..count).map(point).collect()
    }

    /// Every one of 2^m equal strata of every dimension holds one of the first 2^m points, shifted or not.
    #[test]
    fn each_dimension_is_balanced() {
        for seed in [None, Some(42)] {
            let net = Net::new(MOST_DIMENSIONS, seed).unwrap();
            let points = points(&net, 256);
            for dimension in 0..MOST_DIMENSIONS {
                let mut hit = [false; 256];
                points.iter().for_each(|point| hit[(point[dimension] >> 24) as usize] = true);
                assert!(hit.iter().all(|&hit| hit), "dimension {dimension}");
            }
        }
    }

    /// The first two dimensions are a (0, m, 2)-net: every elementary rectangle of area 2^-m holds one point.
    #[test]
    fn the_first_two_dimensions_fill_every_rectangle() {
        let points = points(&Net::new(2, Some(7)).unwrap(), 1024);
        for wide in 0..=10 {
            let mut hit = vec![false; 1024];
            let cell = |point: &Vec<u32>| {
                let (x, y) = (u64::from(point[0]) >> (32 - wide), u64::from(point[1]) >> (22 + wide));
                (x << (10 - wide) | y) as usize
            };
            points.iter().for_each(|point| hit[cell(point)] = true);
            assert!(hit.iter().all(|&hit| hit), "{wide}");
        }
    }

    #[test]
    fn the_next_point_is_the_point_after() {
        let net = Net::new(20, Some(3)).unwrap();
        let points = points(&net, 300);
        let mut words = points[0].clone();
        for index in 0..299 {
            net.advance(index, &mut words);
            assert_eq!(words, points[index as usize + 1]);
        }
    }

    /// Source: first points of the unshifted sequence, printed in Joe and Kuo's notes: 0, 1/2, 3/4, 1/4, 3/8, 7/8 ...
    #[test]
    fn first_points() {
        let eighths: Vec<u32> = points(&Net::new(1, None).unwrap(), 8).iter().map(|point| point[0] >> 29).collect();
        assert_eq!(eighths, [0, 4, 6, 2, 3, 7, 5, 1]);
    }

    #[test]
    fn too_many_dimensions_are_refused() {
        assert_eq!(Net::new(1025, None).unwrap_err().code, Code::OutOfRange);
    }
}
