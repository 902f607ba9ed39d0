//! Chances that are the same every time.
//!
//! A number between 0 and 1 from a seed and a place, with no state between: any
//! draw can be made alone, in any order and in slices. Then through the inverse
//! of the normal distribution, so that a small change of an input moves every
//! drawn value a little and none jumps.

/// A number above 0 and below 1 for a seed, a run and an input ([`place_of`] its name): the
/// same three give the same number.
#[must_use]
pub fn uniform(seed: u32, run: u32, input: u64) -> f64 {
    let place = (u64::from(seed) << 32) | u64::from(run);
    let mixed = mix(mix(input).wrapping_add(place.wrapping_mul(0x9e37_79b9_7f4a_7c15)));
    // The upper 53 bits, and half a step: never 0 and never 1.
    ((mixed >> 11) as f64 + 0.5) / 9_007_199_254_740_992.0
}

fn mix(mut z: u64) -> u64 {
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

/// The place of a name among the inputs (FNV-1a, 64 bits): the same whatever
/// else is drawn.
#[must_use]
pub fn place_of(name: &str) -> u64 {
    name.bytes().fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

/// The standard normal deviate below which a share of all lie; good to 1e-9.
///
/// - `share`: above 0 and below 1
///
/// Source: Acklam's rational approximation (1.15e-9 relative), from memory; the
/// published check holds it against tabulated quantiles.
#[must_use]
pub fn normal(share: f64) -> f64 {
    const CENTRAL: f64 = 0.024_25;
    if share < CENTRAL {
        tail((-2.0 * share.ln()).sqrt())
    } else if share > 1.0 - CENTRAL {
        -tail((-2.0 * (1.0 - share).ln()).sqrt())
    } else {
        let from_middle = share - 0.5;
        let square = from_middle * from_middle;
        from_middle * polynomial(&MIDDLE_UP, square)
            / (square * polynomial(&MIDDLE_DOWN, square) + 1.0)
    }
}

fn tail(root: f64) -> f64 {
    polynomial(&TAIL_UP, root) / (root * polynomial(&TAIL_DOWN, root) + 1.0)
}

/// Highest power first.
fn polynomial(factors: &[f64], x: f64) -> f64 {
    factors.iter().fold(0.0, |sum, factor| sum * x + factor)
}

const MIDDLE_UP: [f64; 6] = [
    -3.969_683_028_665_376e1,
    2.209_460_984_245_205e2,
    -2.759_285_104_469_687e2,
    1.383_577_518_672_69e2,
    -3.066_479_806_614_716e1,
    2.506_628_277_459_239,
];
const MIDDLE_DOWN: [f64; 5] = [
    -5.447_609_879_822_406e1,
    1.615_858_368_580_409e2,
    -1.556_989_798_598_866e2,
    6.680_131_188_771_972e1,
    -1.328_068_155_288_572e1,
];
const TAIL_UP: [f64; 6] = [
    -7.784_894_002_430_293e-3,
    -3.223_964_580_411_365e-1,
    -2.400_758_277_161_838,
    -2.549_732_539_343_734,
    4.374_664_141_464_968,
    2.938_163_982_698_783,
];
const TAIL_DOWN: [f64; 4] = [
    7.784_695_709_041_462e-3,
    3.224_671_290_700_398e-1,
    2.445_134_137_142_996,
    3.754_408_661_907_416,
];
