//! Uncertainty of a computed figure by sampling (JCGM 101:2008), seeded.

use super::propagate::{Input, Unsound, check};

/// How an input spreads about its value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// The bell.
    Normal,
    /// Each value within the limits as likely; the limits are root 3 times the
    /// standard uncertainty.
    Even,
}

/// What sampling gives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sampled {
    /// Mean.
    pub mean: f64,
    /// Standard deviation.
    pub standard: f64,
    /// 2.5 % lie below.
    pub low: f64,
    /// 2.5 % lie above.
    pub high: f64,
    /// Draws at which the model gave no finite number, left out.
    pub undefined: usize,
}

/// The most draws.
pub const MOST_DRAWS: usize = 1_000_000;

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

    /// Normal, of mean 0 and standard deviation 1 (Box and Muller 1958).
    pub fn next_normal(&mut self) -> f64 {
        let radius = (-2.0 * self.next_share().ln()).sqrt();
        radius * (std::f64::consts::TAU * self.next_share()).cos()
    }
}

/// Samples `model` so many times, from 100 to [`MOST_DRAWS`].
///
/// Correlation, row by row or empty, acts on the normal inputs by Cholesky's
/// factor (JCGM 101:2008, C.4); even inputs must be uncorrelated.
///
/// # Errors
///
/// [`Unsound::Correlation`] also for correlations that cannot be together, or
/// that touch an even input; [`Unsound::Model`] when no draw is finite.
pub fn sample(
    model: impl Fn(&[f64]) -> f64,
    inputs: &[(Input, Shape)],
    correlation: &[f64],
    draws: usize,
    seed: u64,
) -> Result<Sampled, Unsound> {
    let plain: Vec<Input> = inputs.iter().map(|(input, _)| *input).collect();
    check(&plain, correlation)?;
    let count = inputs.len();
    let factor = cholesky(correlation, count).ok_or(Unsound::Correlation)?;
    let tied = |i: usize| (0..count).any(|j| j != i && factor_of(correlation, count, i, j) != 0.0);
    if (0..count).any(|i| inputs[i].1 == Shape::Even && tied(i)) {
        return Err(Unsound::Correlation);
    }
    let mut random = SplitMix64::new(seed);
    let (mut z, mut x) = (vec![0.0; count], vec![0.0; count]);
    let draws = draws.clamp(100, MOST_DRAWS);
    let mut results = Vec::with_capacity(draws);
    for _ in 0..draws {
        z.fill_with(|| random.next_normal());
        for (i, (input, shape)) in inputs.iter().enumerate() {
            let unit = match shape {
                Shape::Normal => (0..=i).map(|j| factor[i * count + j] * z[j]).sum(),
                Shape::Even => (2.0 * random.next_share() - 1.0) * 3f64.sqrt(),
            };
            x[i] = input.value + input.standard * unit;
        }
        results.push(model(&x));
    }
    summarise(results)
}

/// One correlation; none given means one with itself and none else.
fn factor_of(correlation: &[f64], count: usize, i: usize, j: usize) -> f64 {
    correlation
        .get(i * count + j)
        .copied()
        .unwrap_or(f64::from(i == j))
}

/// The lower triangle whose square is the correlation; `None` where there is
/// none. A zero on the way is kept: inputs may be wholly tied.
fn cholesky(correlation: &[f64], count: usize) -> Option<Vec<f64>> {
    let mut l = vec![0.0; count * count];
    for i in 0..count {
        for j in 0..=i {
            let known: f64 = (0..j).map(|k| l[i * count + k] * l[j * count + k]).sum();
            let rest = factor_of(correlation, count, i, j) - known;
            let pivot = l[j * count + j];
            l[i * count + j] = match () {
                () if i == j && rest < -1e-9 => return None,
                () if i == j => rest.max(0.0).sqrt(),
                () if pivot > 1e-9 => rest / pivot,
                () if rest.abs() > 1e-6 => return None,
                () => 0.0,
            };
        }
    }
    Some(l)
}

/// Mean, spread and ends of what is finite. The mean is summed in shares, so that
/// large values do not run past the largest number.
fn summarise(mut results: Vec<f64>) -> Result<Sampled, Unsound> {
    let all = results.len();
    results.retain(|r| r.is_finite());
    if results.len() < 2 {
        return Err(Unsound::Model);
    }
    results.sort_unstable_by(f64::total_cmp);
    let count = results.len() as f64;
    let mean = results.iter().map(|r| r / count).sum::<f64>();
    let squares: f64 = results.iter().map(|r| (r - mean) * (r - mean)).sum();
    let at = |share: f64| results[((count - 1.0) * share).round() as usize];
    let standard = (squares / (count - 1.0)).sqrt();
    if !(mean.is_finite() && standard.is_finite()) {
        return Err(Unsound::Model);
    }
    Ok(Sampled {
        mean,
        standard,
        low: at(0.025),
        high: at(0.975),
        undefined: all - results.len(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_stream_is_the_published_one() {
        // First outputs of SplitMix64 for seed 1234567, as printed in the
        // Rosetta Code task 'Pseudo-random numbers/Splitmix64' (from memory).
        let mut random = SplitMix64::new(1_234_567);
        for want in [
            6_457_827_717_110_365_317,
            3_203_168_211_198_807_973,
            9_817_491_932_198_370_423,
            4_593_380_528_125_082_431,
            16_408_922_859_458_223_821,
        ] {
            assert_eq!(random.next_bits(), want);
        }
    }

    #[test]
    fn impossible_correlations_are_refused() {
        let inputs = [(Input::new(0.0, 1.0), Shape::Normal); 3];
        let r = [1.0, 0.9, -0.9, 0.9, 1.0, 0.9, -0.9, 0.9, 1.0];
        let got = sample(|x| x[0], &inputs, &r, 100, 1);
        assert_eq!(got, Err(Unsound::Correlation));
        // Wholly tied inputs are possible.
        let tied = [(Input::new(0.0, 1.0), Shape::Normal); 2];
        let got = sample(|x| x[0] - x[1], &tied, &[1.0; 4], 1000, 1).unwrap();
        assert!(got.standard < 1e-12);
    }

    #[test]
    fn a_model_without_a_value_is_told() {
        let inputs = [(Input::new(0.0, 1.0), Shape::Even)];
        assert_eq!(
            sample(|_| f64::NAN, &inputs, &[], 100, 1),
            Err(Unsound::Model)
        );
        let half = sample(|x| x[0].sqrt(), &inputs, &[], 1000, 1).unwrap();
        assert!(half.undefined > 300 && half.mean.is_finite());
    }
}
