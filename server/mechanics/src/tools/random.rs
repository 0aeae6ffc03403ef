//! Random numbers that are the same for the same seed on every machine and for ever: SplitMix64 (G. L.
//! Steele, D. Lea and C. H. Flood, OOPSLA 2014) and the Box-Muller transform.

/// A stream of random numbers.
pub(super) struct Stream(u64);

impl Stream {
    /// The stream of one input: adding another input does not move this one's draws. Inputs are told apart
    /// by their names.
    pub fn new(seed: u32, name: &str) -> Stream {
        // FNV-1a, which spreads short names well enough to start a stream.
        let mut hash = 0xcbf2_9ce4_8422_2325_u64;
        for byte in name.bytes() {
            hash = (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
        }
        Stream(hash ^ u64::from(seed).wrapping_mul(0x9E37_79B9_7F4A_7C15))
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// Above 0 and up to 1.
    fn share(&mut self) -> f64 {
        ((self.next() >> 11) + 1) as f64 / (1_u64 << 53) as f64
    }

    /// Two independent draws of the standard normal distribution.
    pub fn normal_pair(&mut self) -> (f64, f64) {
        let radius = f64::sqrt(-2.0 * libm::log(self.share()));
        let (sine, cosine) = libm::sincos(core::f64::consts::TAU * self.share());
        (radius * cosine, radius * sine)
    }

    /// A column of standard normal draws.
    pub fn normals(&mut self, count: usize) -> Vec<f64> {
        let mut column = Vec::with_capacity(count + 1);
        while column.len() < count {
            let (one, other) = self.normal_pair();
            column.push(one);
            column.push(other);
        }
        column.truncate(count);
        column
    }
}
