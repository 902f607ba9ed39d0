//! One unknown looked for from two sides.

/// Relative change of the mean open-circuit voltage that counts as none.
const AGREED: f64 = 1e-13;

/// The mean open-circuit voltage of a step, looked for: it makes a current, and
/// the current makes it. Mostly the next is as good as met; where the curve is
/// steep and chargers push against it, each answer overshoots the last, and the
/// two sides close in on it.
pub(super) struct Guess {
    /// The guess to be tried next, and what was found once it is met.
    pub ocv_v: f64,
    /// The last guess that lay below its answer, with how far.
    below: Option<(f64, f64)>,
    /// The same above.
    above: Option<(f64, f64)>,
    was_below: Option<bool>,
}

impl Guess {
    /// Starts from the voltage before the step.
    pub(super) fn new(ocv_v: f64) -> Self {
        Self {
            ocv_v,
            below: None,
            above: None,
            was_below: None,
        }
    }

    /// Takes the answer to the present guess. Whether the two agree; if not, the next guess
    /// is made.
    pub(super) fn is_met(&mut self, mean_v: f64) -> bool {
        let miss_v = mean_v - self.ocv_v;
        if miss_v.abs() <= AGREED * self.ocv_v {
            return true;
        }
        let tried = Some((self.ocv_v, miss_v));
        // Illinois: a side that stays twice counts for half, so that neither stalls.
        let half = |(at_v, miss_v): (f64, f64)| (at_v, 0.5 * miss_v);
        let is_below = miss_v > 0.0;
        let again = self.was_below == Some(is_below);
        self.was_below = Some(is_below);
        let (side, other) = if is_below {
            (&mut self.below, &mut self.above)
        } else {
            (&mut self.above, &mut self.below)
        };
        *side = tried;
        if again {
            *other = other.map(half);
        }
        self.ocv_v = match (self.below, self.above) {
            (Some((low_v, up_v)), Some((high_v, down_v))) if low_v < high_v => {
                low_v + (high_v - low_v) * up_v / (up_v - down_v)
            }
            _ => mean_v,
        };
        false
    }
}
