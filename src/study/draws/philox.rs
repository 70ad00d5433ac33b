//! Random numbers from a counter: the same row gives the same number on any machine and any thread.

/// Ten rounds of Philox 4x32 on `counter` under `key`: four uniform 32-bit words.
///
/// Source: Salmon, Moraes, Dror and Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11 (2011), with its constants.
///
/// ```
/// let words = pinfilm::study::philox4x32([0; 4], [0; 2]);
/// assert_eq!(words, [0x6627_e8d5, 0xe169_c58d, 0xbc57_ac4c, 0x9b00_dbd8]);
/// ```
pub fn philox4x32(counter: [u32; 4], key: [u32; 2]) -> [u32; 4] {
    let ([mut a, mut b, mut c, mut d], [mut k, mut l]) = (counter, key);
    for round in 0..10 {
        if round > 0 {
            k = k.wrapping_add(0x9E37_79B9);
            l = l.wrapping_add(0xBB67_AE85);
        }
        let (first, second) = (wide(0xD251_1F53, a), wide(0xCD9E_8D57, c));
        [a, b, c, d] = [high(second) ^ b ^ k, low(second), high(first) ^ d ^ l, low(first)];
    }
    [a, b, c, d]
}

/// The two halves of a seed, low first.
pub(in crate::study) fn key(seed: u64) -> [u32; 2] {
    [low(seed), high(seed)]
}

fn wide(a: u32, b: u32) -> u64 {
    u64::from(a) * u64::from(b)
}

fn high(x: u64) -> u32 {
    (x >> 32) as u32
}

fn low(x: u64) -> u32 {
    x as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: the known-answer vectors published with the paper's code (kat_vectors).
    #[test]
    fn known_answers() {
        let ones = u32::MAX;
        assert_eq!(philox4x32([ones; 4], [ones; 2]), [0x408f_276d, 0x41c8_3b0e, 0xa20b_c7c6, 0x6d54_51fd]);
        let pi = [0x243f_6a88, 0x85a3_08d3, 0x1319_8a2e, 0x0370_7344];
        assert_eq!(philox4x32(pi, [0xa409_3822, 0x299f_31d0]), [0xd16c_fe09, 0x94fd_cceb, 0x5001_e420, 0x2412_6ea1]);
    }
}
