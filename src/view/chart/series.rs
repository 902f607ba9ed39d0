//! Samples, spreads, and the gaps between them.

use super::scale::drawable;

/// One sample of a curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Position along the axis.
    pub x: f64,
    /// The value there; `None` marks a gap.
    pub y: Option<f64>,
}

/// The spread about a curve at one position.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// Position along the axis.
    pub x: f64,
    /// Low and high, in either order; `None` marks a gap.
    pub low_high: Option<(f64, f64)>,
}

/// How a curve goes from one sample to the next.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Shape {
    /// Straight: what is drawn between samples is interpolated.
    #[default]
    Line,
    /// Held until the next sample: for switched loads and modes.
    Step,
}

/// A curve, and the spread about it where there is one.
///
/// Its place in the list it is passed in is its style: the page gives each
/// place a dash and a colour.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Series {
    /// Samples in rising order of x; one that goes back is a gap.
    pub samples: Vec<Sample>,
    /// The spread, sampled as it likes; empty for none.
    pub spread: Vec<Spread>,
    /// Line or step.
    pub shape: Shape,
    /// Characters in the label at its end; 0 for no label.
    pub label_chars: usize,
}

/// Unbroken stretches of points, each with at least one.
pub type Runs<T> = Vec<Vec<(f64, T)>>;

/// A series cut at its gaps, once, for all that draws or reads it.
#[derive(Clone, Debug, PartialEq)]
pub struct Cut {
    /// The curve.
    pub line: Runs<f64>,
    /// The spread, low before high.
    pub band: Runs<(f64, f64)>,
    /// Line or step.
    pub shape: Shape,
}

impl Cut {
    /// Every x that is drawn, curve and spread.
    pub fn xs(&self) -> impl Iterator<Item = f64> {
        let band = self.band.iter().flatten().map(|point| point.0);
        self.line.iter().flatten().map(|point| point.0).chain(band)
    }

    /// Every y that is drawn, curve and both ends of the spread.
    pub fn ys(&self) -> impl Iterator<Item = f64> {
        let band = self.band.iter().flatten();
        let ends = band.flat_map(|(_, (low, high))| [*low, *high]);
        self.line.iter().flatten().map(|point| point.1).chain(ends)
    }
}

impl Series {
    /// The series cut at its gaps.
    #[must_use]
    pub fn cut(&self) -> Cut {
        Cut {
            line: self.runs(),
            band: self.spread_runs(),
            shape: self.shape,
        }
    }

    /// The stretches of the curve between gaps.
    #[must_use]
    pub fn runs(&self) -> Runs<f64> {
        runs(self.samples.iter().map(|s| {
            let y = s.y.filter(|y| drawable(*y));
            (s.x, y)
        }))
    }

    /// The stretches of the spread between gaps, low before high.
    #[must_use]
    pub fn spread_runs(&self) -> Runs<(f64, f64)> {
        runs(self.spread.iter().map(|s| {
            let ends = s.low_high.filter(|(a, b)| drawable(*a) && drawable(*b));
            (s.x, ends.map(|(a, b)| (a.min(b), a.max(b))))
        }))
    }
}

/// Cuts points at gaps: a missing value, an x that cannot be drawn, an x that goes back.
fn runs<T>(points: impl Iterator<Item = (f64, Option<T>)>) -> Runs<T> {
    let mut runs: Runs<T> = Vec::new();
    let mut open = false;
    let mut farthest = f64::NEG_INFINITY;
    for (x, value) in points {
        let usable = value.filter(|_| drawable(x) && x >= farthest);
        let Some(value) = usable else {
            open = false;
            continue;
        };
        farthest = x;
        match runs.last_mut() {
            Some(run) if open => run.push((x, value)),
            _ => runs.push(vec![(x, value)]),
        }
        open = true;
    }
    runs
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gaps_cut_the_curve() {
        let sample = |x, y| Sample { x, y };
        let series = Series {
            samples: vec![
                sample(0.0, Some(1.0)),
                sample(1.0, None),
                sample(2.0, Some(2.0)),
                sample(3.0, Some(3.0)),
                sample(4.0, Some(f64::NAN)),
                sample(5.0, Some(4.0)),
                sample(4.5, Some(5.0)),
                sample(f64::INFINITY, Some(5.0)),
                sample(6.0, Some(6.0)),
            ],
            ..Series::default()
        };
        let runs = series.runs();
        let expected: Runs<f64> = vec![
            vec![(0.0, 1.0)],
            vec![(2.0, 2.0), (3.0, 3.0)],
            vec![(5.0, 4.0)],
            vec![(6.0, 6.0)],
        ];
        assert_eq!(runs, expected);
    }

    #[test]
    fn spread_is_put_in_order() {
        let series = Series {
            spread: vec![Spread {
                x: 0.0,
                low_high: Some((2.0, 1.0)),
            }],
            ..Series::default()
        };
        assert_eq!(series.spread_runs(), [[(0.0, (1.0, 2.0))]]);
    }
}
