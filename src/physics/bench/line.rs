//! A straight line through points, with the uncertainty of both parameters: the
//! calibration of one meter by another.

/// `y = intercept + slope * x`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// Intercept.
    pub intercept: f64,
    /// Slope.
    pub slope: f64,
    /// Standard uncertainty of the intercept.
    pub intercept_standard: f64,
    /// Standard uncertainty of the slope.
    pub slope_standard: f64,
    /// Covariance of both.
    pub covariance: f64,
    /// Standard deviation of the points about the line.
    pub residual: f64,
    /// Degrees of freedom: the points less two.
    pub freedom: f64,
}

impl Line {
    /// The line at `x` and its standard uncertainty (JCGM 100:2008, H.3.4).
    #[must_use]
    pub fn at(&self, x: f64) -> (f64, f64) {
        let variance = self.intercept_standard * self.intercept_standard
            + x * x * self.slope_standard * self.slope_standard
            + 2.0 * x * self.covariance;
        (self.intercept + self.slope * x, variance.max(0.0).sqrt())
    }
}

/// Fits a line by least squares (JCGM 100:2008, H.3.2, H.13a to f), sums taken
/// about the mean so that digits survive.
///
/// The uncertainty is that of scatter about the line alone; limits of the
/// reference meter come on top (see [`instrument`](super::instrument)).
///
/// `None` of fewer than three points, of points above each other, or where a
/// number is not finite.
#[must_use]
pub fn fit(points: &[(f64, f64)]) -> Option<Line> {
    let count = points.len() as f64;
    if points.len() < 3 {
        return None;
    }
    let mean = |part: fn(&(f64, f64)) -> f64| points.iter().map(part).sum::<f64>() / count;
    let (x_mean, y_mean) = (mean(|p| p.0), mean(|p| p.1));
    let (mut xx, mut xy) = (0.0, 0.0);
    for (x, y) in points {
        xx += (x - x_mean) * (x - x_mean);
        xy += (x - x_mean) * (y - y_mean);
    }
    if !(xx > 0.0 && xx.is_finite()) {
        return None;
    }
    let slope = xy / xx;
    let intercept = y_mean - slope * x_mean;
    let left = |(x, y): &(f64, f64)| (y - y_mean) - slope * (x - x_mean);
    let freedom = count - 2.0;
    let variance = points.iter().map(|p| left(p) * left(p)).sum::<f64>() / freedom;
    let line = Line {
        intercept,
        slope,
        intercept_standard: (variance * (1.0 / count + x_mean * x_mean / xx)).sqrt(),
        slope_standard: (variance / xx).sqrt(),
        covariance: -variance * x_mean / xx,
        residual: variance.sqrt(),
        freedom,
    };
    let sound = line.intercept_standard.is_finite()
        && line.covariance.is_finite()
        && intercept.is_finite()
        && slope.is_finite();
    sound.then_some(line)
}
