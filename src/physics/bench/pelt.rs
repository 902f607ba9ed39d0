//! Change points in a mean: PELT, after Killick, Fearnhead and Eckley 2012,
//! 'Optimal detection of changepoints with a linear computational cost',
//! J. Am. Stat. Assoc. 107, 1590.

/// Sums that give the squared deviation of any piece at once.
struct Sums {
    x: Vec<f64>,
    xx: Vec<f64>,
}

impl Sums {
    fn new(values: &[f64]) -> Self {
        // About the mean, so that the squares keep their digits.
        let mean = values.iter().sum::<f64>() / values.len().max(1) as f64;
        let (mut x, mut xx) = (vec![0.0], vec![0.0]);
        for value in values {
            let v = value - mean;
            x.push(x[x.len() - 1] + v);
            xx.push(xx[xx.len() - 1] + v * v);
        }
        Self { x, xx }
    }

    /// Squared deviation from the mean of values `from..to`.
    fn cost(&self, from: usize, to: usize) -> f64 {
        let sum = self.x[to] - self.x[from];
        (self.xx[to] - self.xx[from] - sum * sum / (to - from) as f64).max(0.0)
    }
}

/// A start that may still begin the last piece, until it is ruled out.
struct Start {
    at: usize,
    /// Best cost up to it, and of one piece from there to the value in hand.
    total: f64,
    ruled_out_from: usize,
}

/// The places where the mean changes: the cut that makes the squared deviation
/// of all pieces, plus `penalty` for each, least.
///
/// Each place is the first value of a new piece; pieces hold `least_size`
/// values or more (at least 1). Exact, not a heuristic. Empty where nothing
/// changes, where values are too few, or where one is not finite.
///
/// ```
/// use till_morning::physics::bench::pelt::change_points;
/// let watts = [640.0, 641.0, 639.0, 350.0, 348.0, 349.0];
/// assert_eq!(change_points(&watts, 100.0, 2), [3]);
/// // A penalty above the whole deviation cuts nothing.
/// assert!(change_points(&watts, 1e6, 2).is_empty());
/// ```
///
/// With a least size above 1 a start that a later one beats is kept until that
/// later one is allowed, else the optimum could be lost.
#[must_use]
pub fn change_points(values: &[f64], penalty: f64, least_size: usize) -> Vec<usize> {
    let (count, size) = (values.len(), least_size.max(1));
    if count < 2 * size || !penalty.is_finite() || !values.iter().all(|v| v.is_finite()) {
        return Vec::new();
    }
    let sums = Sums::new(values);
    let mut best = vec![f64::INFINITY; count + 1];
    let mut came_from = vec![0; count + 1];
    best[0] = -penalty;
    let mut starts: Vec<Start> = Vec::new();
    for end in size..=count {
        let newest = end - size;
        if newest == 0 || newest >= size {
            starts.push(Start {
                at: newest,
                total: 0.0,
                ruled_out_from: usize::MAX,
            });
        }
        starts.retain(|s| end < s.ruled_out_from);
        for start in &mut starts {
            start.total = best[start.at] + sums.cost(start.at, end);
            if start.total + penalty < best[end] {
                (best[end], came_from[end]) = (start.total + penalty, start.at);
            }
        }
        let beaten = best[end];
        for start in &mut starts {
            if start.total > beaten && start.ruled_out_from > end + size {
                start.ruled_out_from = end + size;
            }
        }
    }
    trace_back(&came_from, count)
}

/// The cuts of the best way to the end, first to last.
fn trace_back(came_from: &[usize], count: usize) -> Vec<usize> {
    let mut places = Vec::new();
    let mut at = came_from[count];
    while at > 0 {
        places.push(at);
        at = came_from[at];
    }
    places.reverse();
    places
}

/// The best single cut of values, at `nearby` places only: used to sharpen a
/// cut that was found on averaged values.
#[must_use]
pub fn best_cut(values: &[f64], nearby: std::ops::Range<usize>) -> Option<usize> {
    let whole = nearby.start.max(1)..nearby.end.min(values.len());
    let sum = |values: &[f64]| values.iter().sum::<f64>();
    let count = values.len() as f64;
    // About the mean, so that the squares keep their digits.
    let mean = sum(values) / count.max(1.0);
    let mut before = sum(values.get(..whole.start)?) - mean * whole.start as f64;
    let mut best: Option<(f64, usize)> = None;
    for cut in whole {
        // About the mean the two sums are opposite: what a cut takes off the
        // squared deviation is the square of one over both counts.
        let share = cut as f64;
        let taken_off = before * before * (1.0 / share + 1.0 / (count - share));
        if best.is_none_or(|(most, _)| taken_off > most) {
            best = Some((taken_off, cut));
        }
        before += values[cut] - mean;
    }
    best.map(|(_, cut)| cut)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every cut tried: the definition itself.
    fn brute(values: &[f64], penalty: f64, size: usize) -> f64 {
        let sums = Sums::new(values);
        let mut best = vec![f64::INFINITY; values.len() + 1];
        best[0] = -penalty;
        for end in size..=values.len() {
            for start in 0..=end - size {
                best[end] = best[end].min(best[start] + sums.cost(start, end) + penalty);
            }
        }
        best[values.len()]
    }

    fn total(values: &[f64], cuts: &[usize], penalty: f64) -> f64 {
        let sums = Sums::new(values);
        let mut ends = vec![0];
        ends.extend(cuts);
        ends.push(values.len());
        let costs: f64 = ends.windows(2).map(|w| sums.cost(w[0], w[1])).sum();
        costs + penalty * cuts.len() as f64
    }

    #[test]
    fn pruning_never_loses_the_optimum() {
        let mut state = 7_u64;
        // Even from -2 to 2 (Knuth's linear congruence).
        let mut noise = || {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            (state >> 33) as f64 / f64::from(1_u32 << 31) * 4.0 - 2.0
        };
        for round in 0..200 {
            let count = 6 + round % 40;
            let values: Vec<f64> = (0..count)
                .map(|k| f64::from(u8::from(k % 11 > 4)) * 3.0 + noise())
                .collect();
            for size in 1..4 {
                let penalty = 0.5 + round as f64 * 0.05;
                let cuts = change_points(&values, penalty, size);
                let (got, want) = (
                    total(&values, &cuts, penalty),
                    brute(&values, penalty, size),
                );
                assert!((got - want).abs() < 1e-9, "{got} {want}");
            }
        }
    }

    #[test]
    fn nothing_to_cut() {
        assert!(change_points(&[], 1.0, 2).is_empty());
        assert!(change_points(&[1.0, f64::NAN, 2.0, 3.0], 1.0, 1).is_empty());
        assert!(change_points(&[5.0; 50], 1e-9, 2).is_empty());
        assert_eq!(best_cut(&[0., 0., 0., 9., 9.], 1..5), Some(3));
        assert_eq!(best_cut(&[1.0], 0..9), None);
    }
}
