//! One quantity over time, in pieces between gaps.

/// Readings of one quantity: times ascend strictly, values are finite.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Series {
    /// Seconds.
    pub t_s: Vec<f64>,
    /// Values, one for each time.
    pub x: Vec<f64>,
    /// Places `k` where nothing is known between `k - 1` and `k`.
    pub gaps: Vec<usize>,
}

/// A gap is this many times longer than the usual step around it: one row
/// missing is bridged by a straight line, two are not.
const GAP_STEPS: f64 = 2.5;

/// So many steps before and after a long one tell what is usual there: a logger
/// that slows down at rest leaves no gaps.
const NEIGHBOURS: usize = 3;

impl Series {
    /// A series with its gaps found: steps longer than `gap_after_s`, or than
    /// 2.5 times the usual step where that is `None`.
    #[must_use]
    pub fn new(t_s: Vec<f64>, x: Vec<f64>, gap_after_s: Option<f64>) -> Self {
        let mut series = Self {
            t_s,
            x,
            gaps: Vec::new(),
        };
        series.gaps = match gap_after_s {
            Some(most) => series.steps_over(most, |_| 0.0),
            None if series.is_even() => Vec::new(),
            None => {
                let least = GAP_STEPS * series.usual_step_s();
                series.steps_over(least, |k| GAP_STEPS * series.local_step(k))
            }
        };
        series
    }

    /// Steps longer than `least` and than what `local` gives for them.
    fn steps_over(&self, least: f64, local: impl Fn(usize) -> f64) -> Vec<usize> {
        (1..self.t_s.len())
            .filter(|&k| self.step(k) > least && self.step(k) > local(k))
            .collect()
    }

    /// Whether no step can be a gap beside any other: spares most logs the
    /// search for a middle step.
    fn is_even(&self) -> bool {
        let steps = (1..self.t_s.len()).map(|k| self.step(k));
        let (least, most) = steps.fold((f64::MAX, 0.0), |(l, m), s| (s.min(l), s.max(m)));
        most <= GAP_STEPS * least
    }

    /// Seconds from the reading before.
    fn step(&self, k: usize) -> f64 {
        self.t_s[k] - self.t_s[k - 1]
    }

    /// The median step in seconds; zero for fewer than two readings.
    #[must_use]
    pub fn usual_step_s(&self) -> f64 {
        let steps: Vec<f64> = (1..self.t_s.len()).map(|k| self.step(k)).collect();
        median(steps)
    }

    /// The longer of the median steps just before and just after step `k`.
    fn local_step(&self, k: usize) -> f64 {
        let before = (k.saturating_sub(NEIGHBOURS).max(1)..k).map(|j| self.step(j));
        let after = (k + 1..(k + 1 + NEIGHBOURS).min(self.t_s.len())).map(|j| self.step(j));
        median(before.collect()).max(median(after.collect()))
    }

    /// The pieces between gaps, each a range of places.
    pub fn pieces(&self) -> impl Iterator<Item = std::ops::Range<usize>> {
        let starts = std::iter::once(0).chain(self.gaps.iter().copied());
        let ends = self.gaps.iter().copied().chain([self.t_s.len()]);
        starts.zip(ends).map(|(from, to)| from..to)
    }

    /// Seconds covered by the pieces.
    #[must_use]
    pub fn covered_s(&self) -> f64 {
        self.pieces()
            .filter(|p| !p.is_empty())
            .map(|p| self.t_s[p.end - 1] - self.t_s[p.start])
            .sum()
    }

    /// Least and greatest value; `None` when empty.
    #[must_use]
    pub fn extremes(&self) -> Option<(f64, f64)> {
        let first = *self.x.first()?;
        let widen = |(low, high): (f64, f64), &x: &f64| (low.min(x), high.max(x));
        Some(self.x.iter().fold((first, first), widen))
    }
}

/// The middle value, the upper one of two; zero of none.
#[must_use]
pub fn median(mut values: Vec<f64>) -> f64 {
    if values.is_empty() {
        return 0.0;
    }
    let middle = values.len() / 2;
    let (_, value, _) = values.select_nth_unstable_by(middle, f64::total_cmp);
    *value
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(t_s: &[f64], want: &[usize]) {
        let series = Series::new(t_s.to_vec(), vec![1.0; t_s.len()], None);
        assert_eq!(series.gaps, want);
    }

    #[test]
    fn a_gap_is_long_for_its_surroundings() {
        check(&[0., 10., 20., 30., 40.], &[]);
        check(&[0., 10., 30., 40., 50.], &[]);
        check(&[0., 10., 20., 50., 60., 70.], &[3]);
        // Slow rows at rest, then fast ones: nothing is missing.
        check(&[0., 60., 120., 180., 190., 200., 210., 220., 230.], &[]);
        check(&[], &[]);
        check(&[5.], &[]);
    }

    #[test]
    fn pieces_leave_gaps_out() {
        let series = Series::new(vec![0., 1., 9., 10.], vec![0.; 4], Some(2.0));
        assert_eq!(series.pieces().collect::<Vec<_>>(), [0..2, 2..4]);
        assert_eq!(series.covered_s(), 2.0);
    }
}
