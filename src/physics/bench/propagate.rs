//! What goes into the uncertainty of a figure, and how sure that is itself (GUM).

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
