//! Uncertainty of a computed figure by the GUM: first order, with correlation.

use super::student::coverage_factor;

/// An input: best value, standard uncertainty, degrees of freedom.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// Best value.
    pub value: f64,
    /// Standard uncertainty, not negative.
    pub standard: f64,
    /// Degrees of freedom; `None` where the uncertainty itself is certain.
    pub freedom: Option<f64>,
}

impl Input {
    /// An input whose uncertainty is taken as known.
    #[must_use]
    pub fn new(value: f64, standard: f64) -> Self {
        Self {
            value,
            standard,
            freedom: None,
        }
    }

    /// An input known to lie within `limit` either way, each value as likely:
    /// `limit / sqrt 3` (JCGM 100:2008, 4.3.7).
    #[must_use]
    pub fn within(value: f64, limit: f64) -> Self {
        Self::new(value, limit.abs() / 3f64.sqrt())
    }

    /// The mean of repeated readings (type A, JCGM 100:2008, 4.2): its standard
    /// uncertainty is their standard deviation over the root of their number.
    /// `None` of fewer than two readings or of one that is not finite.
    #[must_use]
    pub fn repeated(readings: &[f64]) -> Option<Self> {
        let count = readings.len() as f64;
        if readings.len() < 2 || !readings.iter().all(|x| x.is_finite()) {
            return None;
        }
        let value = readings.iter().sum::<f64>() / count;
        let squares: f64 = readings.iter().map(|x| (x - value) * (x - value)).sum();
        let standard = (squares / (count - 1.0) / count).sqrt();
        let sound = value.is_finite() && standard.is_finite();
        sound.then_some(Self {
            value,
            standard,
            freedom: Some(count - 1.0),
        })
    }
}

/// A computed figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Output {
    /// The model at the best values.
    pub value: f64,
    /// Combined standard uncertainty.
    pub standard: f64,
    /// Effective degrees of freedom (Welch-Satterthwaite).
    pub freedom: Option<f64>,
}

impl Output {
    /// Expanded uncertainty at 95.45 %: k = 2, or Student's factor where the
    /// degrees of freedom are few.
    #[must_use]
    pub fn expanded(&self) -> f64 {
        coverage_factor(self.freedom) * self.standard
    }
}

/// Why nothing was computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unsound {
    /// An input is not finite, or its uncertainty is negative.
    Input(usize),
    /// The correlations are not a symmetric matrix with ones on its diagonal
    /// and all else between -1 and 1, of the size of the inputs.
    Correlation,
    /// The model gives no finite number at or around the best values.
    Model,
}

/// Propagates uncertainty through `model` (JCGM 100:2008, equations 10, 13 and
/// 16; sensitivities by central differences, 5.1.3 note 2).
///
/// `correlation` is row by row, or empty for none.
///
/// # Errors
///
/// [`Unsound`], naming what is.
///
/// ```
/// use till_morning::physics::bench::propagate::{Input, propagate};
/// // 12.8 V and 24 A within half a per cent each: 307.2 W.
/// let inputs = [Input::within(12.8, 0.064), Input::within(24.0, 0.12)];
/// let power = propagate(|x| x[0] * x[1], &inputs, &[])?;
/// assert!((power.standard - 307.2 * 0.005 * (2f64 / 3.0).sqrt()).abs() < 1e-6);
/// # Ok::<(), till_morning::physics::bench::propagate::Unsound>(())
/// ```
pub fn propagate(
    model: impl Fn(&[f64]) -> f64,
    inputs: &[Input],
    correlation: &[f64],
) -> Result<Output, Unsound> {
    check(inputs, correlation)?;
    let mut at: Vec<f64> = inputs.iter().map(|i| i.value).collect();
    let value = model(&at);
    let count = inputs.len();
    let mut parts = Vec::with_capacity(count);
    for (k, input) in inputs.iter().enumerate() {
        parts.push(slope(&model, &mut at, k, input.standard) * input.standard);
    }
    let mut variance = 0.0;
    for i in 0..count {
        for j in 0..count {
            let r = correlation
                .get(i * count + j)
                .copied()
                .unwrap_or(f64::from(i == j));
            variance += r * parts[i] * parts[j];
        }
    }
    let standard = variance.max(0.0).sqrt();
    if !(value.is_finite() && standard.is_finite()) {
        return Err(Unsound::Model);
    }
    let freedom = effective_freedom(
        standard,
        parts
            .iter()
            .zip(inputs)
            .map(|(part, input)| (*part, input.freedom)),
    );
    Ok(Output {
        value,
        standard,
        freedom,
    })
}

/// The change of the model per unit of input `k`. The step is a thousandth of
/// the uncertainty: small against the curvature, large against rounding.
fn slope(model: impl Fn(&[f64]) -> f64, at: &mut [f64], k: usize, standard: f64) -> f64 {
    let middle = at[k];
    let step = (standard / 1000.0).max(middle.abs() * 1e-9);
    if standard == 0.0 {
        return 0.0;
    }
    at[k] = middle + step;
    let above = model(at);
    at[k] = middle - step;
    let below = model(at);
    at[k] = middle;
    (above - below) / (2.0 * step)
}

/// Whether inputs and correlations can be worked with.
pub(super) fn check(inputs: &[Input], correlation: &[f64]) -> Result<(), Unsound> {
    let bad = |i: &Input| {
        let freedom = i.freedom.is_none_or(|f| f >= 1.0);
        !(i.value.is_finite() && i.standard.is_finite() && i.standard >= 0.0 && freedom)
    };
    if let Some(at) = inputs.iter().position(bad) {
        return Err(Unsound::Input(at));
    }
    let count = inputs.len();
    let sound = correlation.is_empty()
        || correlation.len() == count * count
            && (0..count).all(|i| {
                (0..count).all(|j| {
                    let r = correlation[i * count + j];
                    let diagonal = i != j || r == 1.0;
                    diagonal && r.abs() <= 1.0 && r == correlation[j * count + i]
                })
            });
    if sound {
        Ok(())
    } else {
        Err(Unsound::Correlation)
    }
}

/// Welch-Satterthwaite (JCGM 100:2008, G.2b); `None` when every part is certain.
#[must_use]
pub fn effective_freedom(
    standard: f64,
    parts: impl Iterator<Item = (f64, Option<f64>)>,
) -> Option<f64> {
    let sum: f64 = parts
        .filter_map(|(part, freedom)| freedom.map(|f| part.powi(4) / f))
        .sum();
    let freedom = standard.powi(4) / sum;
    (sum > 0.0 && freedom.is_finite()).then_some(freedom.max(1.0))
}
