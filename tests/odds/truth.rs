//! Truths by a generator of the test's own: what the engine foresaw is held against
//! plans that it did not draw.

use till_morning::{
    plan::{
        Plan,
        cabin::CabinField as C,
        path::{BankField as B, Path},
    },
    study::spread::half_width,
};

/// Chances in a row. The generator is SplitMix64 (Steele, Lea and Flood, OOPSLA 2014),
/// the normal numbers are Box and Muller's (Ann. Math. Stat. 29, 1958): neither is
/// the engine's way to its own.
pub struct Dice {
    state: u64,
}

impl Dice {
    pub fn of(seed: u64) -> Self {
        Self { state: seed }
    }

    /// Above 0 and below 1.
    pub fn uniform(&mut self) -> f64 {
        self.state = self.state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^= z >> 31;
        ((z >> 11) as f64 + 0.5) / 9_007_199_254_740_992.0
    }

    pub fn between(&mut self, from: f64, to: f64) -> f64 {
        from + (to - from) * self.uniform()
    }

    pub fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[((all.len() as f64) * self.uniform()) as usize]
    }

    /// Standard normal.
    pub fn normal(&mut self) -> f64 {
        let length = (-2.0 * self.uniform().ln()).sqrt();
        length * (std::f64::consts::TAU * self.uniform()).cos()
    }
}

/// What a plan may turn out to be in truth: each of its numbers normal about its value,
/// its spread being two standard deviations, within the accepted range; all of them
/// independent.
///
/// Not of a measured bank, nor with a check-in: there some numbers stand in for others.
pub fn truth(plan: &Plan, dice: &mut Dice) -> Plan {
    let mut truth = plan.clone();
    for path in plan.paths() {
        let (Some(figure), Some(range)) = (plan.figure(path), path.range()) else {
            continue;
        };
        let half = half_width(path, figure);
        // Of what follows from the length each has a spread of its own.
        if half <= 0.0 || path == Path::Cabin(C::InsideLengthM) {
            continue;
        }
        debug_assert!(!matches!(
            path,
            Path::Bank(_, B::MeasuredAh | B::MeasuredWh)
        ));
        let value = figure.value + 0.5 * half * dice.normal();
        truth.set_figure(path, figure.with(value.clamp(range.min, range.max)));
    }
    truth
}
