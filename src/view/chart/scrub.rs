//! Reading values under a pointer, or point by point with keys.

use super::series::{Cut, Runs, Series, Shape};

/// A larger step passes this share of all stops.
const LARGE_SHARE: usize = 10;

/// A move along the stops. The page says which key means which.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    /// One stop back.
    Back,
    /// One stop on.
    On,
    /// A tenth of all stops back, at least one.
    FarBack,
    /// A tenth of all stops on, at least one.
    FarOn,
    /// The first stop.
    First,
    /// The last stop.
    Last,
}

/// What one series reads at a stop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Value {
    /// The curve: straight or held between samples; `None` in a gap.
    pub y: Option<f64>,
    /// The spread, low before high; `None` in a gap or without one.
    pub low_high: Option<(f64, f64)>,
}

/// All series at one stop.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// Where.
    pub x: f64,
    /// One per series, in order.
    pub values: Vec<Value>,
}

/// Series prepared for reading: cut at gaps once, with every sampled x as a stop.
#[derive(Clone, Debug, PartialEq)]
pub struct Scrubber {
    stops: Vec<f64>,
    cuts: Vec<Cut>,
}

impl Scrubber {
    /// Prepares series; their stops are all sampled x outside gaps.
    #[must_use]
    pub fn new(series: &[Series]) -> Self {
        let cuts: Vec<Cut> = series.iter().map(Series::cut).collect();
        let points = cuts.iter().flat_map(|cut| cut.line.iter().flatten());
        // Each curve's samples rise already: most go to the end, or are there.
        let mut stops: Vec<f64> = Vec::new();
        for x in points.map(|point| point.0) {
            let at = stops.partition_point(|stop| *stop < x);
            if stops.get(at) != Some(&x) {
                stops.insert(at, x);
            }
        }
        Self { stops, cuts }
    }

    /// How many stops there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.stops.len()
    }

    /// Whether there is nothing to read.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.stops.is_empty()
    }

    /// The stop nearest to an x, the earlier on a tie; `None` without stops or
    /// for an x that is not a number.
    #[must_use]
    pub fn nearest(&self, x: f64) -> Option<usize> {
        if self.is_empty() || x.is_nan() {
            return None;
        }
        let after = self.stops.partition_point(|stop| *stop < x);
        let last = self.stops.len() - 1;
        let (before, after) = (after.saturating_sub(1), after.min(last));
        let nearer = (self.stops[after] - x).abs() < (x - self.stops[before]).abs();
        Some(if nearer { after } else { before })
    }

    /// The stop a move leads to; held at the ends. A start beyond the last stop
    /// counts as the last. 0 without stops.
    #[must_use]
    pub fn moved(&self, from: usize, step: Step) -> usize {
        let last = self.stops.len().saturating_sub(1);
        let far = (self.stops.len() / LARGE_SHARE).max(1);
        let from = from.min(last);
        let to = match step {
            Step::Back => from.saturating_sub(1),
            Step::On => from + 1,
            Step::FarBack => from.saturating_sub(far),
            Step::FarOn => from + far,
            Step::First => 0,
            Step::Last => last,
        };
        to.min(last)
    }

    /// All series at a stop; `None` beyond the last.
    #[must_use]
    pub fn read(&self, stop: usize) -> Option<Reading> {
        let x = *self.stops.get(stop)?;
        let values = self.cuts.iter().map(|cut| Value {
            y: at(&cut.line, x, cut.shape, between),
            low_high: at(&cut.band, x, cut.shape, |a, b, share| {
                (between(a.0, b.0, share), between(a.1, b.1, share))
            }),
        });
        Some(Reading {
            x,
            values: values.collect(),
        })
    }
}

/// The value at x in the run that covers it; the later one where two share an x.
fn at<T: Copy>(
    runs: &Runs<T>,
    x: f64,
    shape: Shape,
    between: impl Fn(T, T, f64) -> T,
) -> Option<T> {
    // Runs follow one another along x, so the one to look in is the last that
    // has begun.
    let begun = runs.partition_point(|run| run[0].0 <= x);
    let run = &runs[begun.checked_sub(1)?];
    let next = run.partition_point(|point| point.0 <= x);
    let left = run[next - 1];
    if left.0 == x {
        return Some(left.1);
    }
    let right = run.get(next)?;
    Some(match shape {
        Shape::Step => left.1,
        Shape::Line => between(left.1, right.1, (x - left.0) / (right.0 - left.0)),
    })
}

/// A share of the way from one number to another, without overflow.
fn between(from: f64, to: f64, share: f64) -> f64 {
    from * (1.0 - share) + to * share
}

#[cfg(test)]
mod tests {
    use super::super::series::Sample;
    use super::*;

    fn scrubber(shape: Shape) -> Scrubber {
        let series = |points: &[(f64, Option<f64>)]| Series {
            samples: points
                .iter()
                .map(|(x, y)| Sample { x: *x, y: *y })
                .collect(),
            shape,
            ..Series::default()
        };
        Scrubber::new(&[
            series(&[
                (0.0, Some(0.0)),
                (4.0, Some(8.0)),
                (5.0, None),
                (6.0, Some(1.0)),
            ]),
            series(&[(1.0, Some(5.0)), (5.0, Some(5.0))]),
        ])
    }

    #[test]
    fn reads_between_samples_and_not_in_gaps() {
        let check = |shape, stop, x, first, second| {
            let reading = scrubber(shape).read(stop).unwrap();
            let ys: Vec<_> = reading.values.iter().map(|v| v.y).collect();
            assert_eq!((reading.x, ys), (x, vec![first, second]));
        };
        check(Shape::Line, 0, 0.0, Some(0.0), None);
        check(Shape::Line, 1, 1.0, Some(2.0), Some(5.0));
        check(Shape::Step, 1, 1.0, Some(0.0), Some(5.0));
        check(Shape::Line, 3, 5.0, None, Some(5.0));
        check(Shape::Line, 4, 6.0, Some(1.0), None);
        assert_eq!(scrubber(Shape::Line).read(5), None);
    }

    #[test]
    fn the_nearest_stop() {
        let nearest = |x| scrubber(Shape::Line).nearest(x);
        assert_eq!(nearest(-9.0), Some(0));
        assert_eq!(nearest(2.4), Some(1));
        assert_eq!(nearest(2.6), Some(2));
        assert_eq!(nearest(2.5), Some(1));
        assert_eq!(nearest(f64::INFINITY), Some(4));
        assert_eq!(nearest(f64::NAN), None);
        assert_eq!(Scrubber::new(&[]).nearest(1.0), None);
    }

    #[test]
    fn moves_stop_at_the_ends() {
        let moved = |from, step| scrubber(Shape::Line).moved(from, step);
        assert_eq!(moved(0, Step::Back), 0);
        assert_eq!(moved(0, Step::On), 1);
        assert_eq!(moved(4, Step::FarOn), 4);
        assert_eq!(moved(99, Step::FarBack), 3);
        assert_eq!(moved(2, Step::First), 0);
        assert_eq!(moved(2, Step::Last), 4);
        assert_eq!(Scrubber::new(&[]).moved(7, Step::On), 0);
    }
}
