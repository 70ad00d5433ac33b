//! Logs with a known truth, the same on every machine.

use statrs::distribution::{ContinuousCDF, Normal};

/// A log with a known truth: load, draw in proportion to it, a cut, autoregressive noise.
pub struct Synthetic {
    pub seed: u32,
    pub n: usize,
    pub split: usize,
    pub rho: f64,
    pub cut: f64,
    pub sd: f64,
}

impl Synthetic {
    /// Readings and loads.
    pub fn log(&self) -> (Vec<f64>, Vec<f64>) {
        let normal = |t: usize, j: u32| normal(t as u32, j, self.seed);
        let load: Vec<f64> = (0..self.n).map(|t| 100.0 + 10.0 * normal(t, 1)).collect();
        let mut error = self.sd * normal(0, 0) / (1.0 - self.rho * self.rho).sqrt();
        let readings = (0..self.n)
            .map(|t| {
                if t > 0 {
                    error = self.rho * error + self.sd * normal(t, 0);
                }
                (4.0 + 0.06 * load[t]) * if t < self.split { 1.0 } else { 1.0 - self.cut } + error
            })
            .collect();
        (readings, load)
    }
}

/// Philox4x32-10. Source: Salmon, Moraes, Dror and Shaw (2011).
pub fn philox4x32(mut counter: [u32; 4], mut key: [u32; 2]) -> [u32; 4] {
    for round in 0..10 {
        if round > 0 {
            key = [key[0].wrapping_add(0x9E37_79B9), key[1].wrapping_add(0xBB67_AE85)];
        }
        let wide = |a: u32, b: u32| u64::from(a) * u64::from(b);
        let (p, q) = (wide(0xD251_1F53, counter[0]), wide(0xCD9E_8D57, counter[2]));
        counter = [(q >> 32) as u32 ^ counter[1] ^ key[0], q as u32, (p >> 32) as u32 ^ counter[3] ^ key[1], p as u32];
    }
    counter
}

/// A standard normal number for each row, column and seed.
pub fn normal(row: u32, column: u32, seed: u32) -> f64 {
    let word = philox4x32([row, column, 0, 0], [seed, 0])[0];
    Normal::standard().inverse_cdf((f64::from(word) + 0.5) / 4_294_967_296.0)
}
