//! Chance from a seed: splitmix64, so that a failing history can be told again from its number.

pub struct Chance(pub u64);

impl Chance {
    pub fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    pub fn below(&mut self, most: usize) -> usize {
        (self.next() % most as u64) as usize
    }

    /// Whether one chance in so many comes up.
    pub fn one_in(&mut self, many: usize) -> bool {
        self.below(many) == 0
    }

    pub fn of<T: Copy>(&mut self, from: &[T]) -> T {
        from[self.below(from.len())]
    }
}
