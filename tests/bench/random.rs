//! Random numbers for invented logs, the same every time.

/// `SplitMix64` (Steele, Lea and Flood 2014; the constants are Vigna's public
/// domain ones): a counter, mixed. Small, quick, and the same on every machine.
#[derive(Debug, Clone)]
pub struct SplitMix64(u64);

impl SplitMix64 {
    /// A stream of its own for each seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next 64 bits.
    pub fn next_bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let z = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Evenly from 0 to 1, both excluded.
    pub fn next_share(&mut self) -> f64 {
        ((self.next_bits() >> 11) as f64 + 0.5) / (1u64 << 53) as f64
    }
}
