//! Whether the set point is held.
//!
//! Judged by means over a fixed time, so that it does not hang on the length of steps:
//! at its steps' ends a cabin between two starts of the unit is anywhere in its band
//! and above, and whoever looks there twice as often finds it too warm more often.

use super::{record::Happening, sky::COARSE_STEPS_PER_HOUR};

/// The air's mean over so long is what is judged: the longest step there is.
const MEAN_H: f64 = 1.0 / COARSE_STEPS_PER_HOUR as f64;

/// How far above the band's top still counts as held, K.
const LEEWAY_K: f64 = 0.5;
/// How long a unit that was switched on may take to cool the cabin down before
/// the set point counts as lost, h. (Ours: a night whose first two hours are
/// spent cooling down is still a cool night.)
const PULL_DOWN_H: f64 = 2.0;

/// Watches the air while a mode is planned.
///
/// Lost is what was held before, or was not reached two hours after a mode was first
/// planned. Once no mode is planned it starts anew.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SetpointMonitor {
    top_c: f64,
    state: Keeping,
    /// What has come in since the last mean.
    hours: f64,
    kelvin_h: f64,
    /// Middle of the last mean's time, and the mean.
    before: Option<(f64, f64)>,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Keeping {
    /// No mode is planned.
    Idle,
    /// Cooling down since.
    Reaching(f64),
    Held,
    Lost,
}

/// The air over a stretch of time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Its start and end, hours from the plan's start.
    pub hours: (f64, f64),
    /// Mean of the air, Celsius.
    pub mean_c: f64,
    /// The air at its end.
    pub end_c: f64,
}

/// What a mean says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Judged {
    /// The mean, where the cabin is to be cool and was so before.
    pub due_c: Option<f64>,
    /// The set point lost or come back, and when.
    pub event: Option<(f64, Happening)>,
}

impl SetpointMonitor {
    /// For a set point (Celsius) with a band of this whole width (K).
    #[must_use]
    pub fn new(set_c: f64, band_k: f64) -> Self {
        Self {
            top_c: set_c + 0.5 * band_k,
            state: Keeping::Idle,
            hours: 0.0,
            kelvin_h: 0.0,
            before: None,
        }
    }

    /// Takes in a stretch, each beginning where the last ended; says what came of it where a
    /// mean is complete.
    ///
    /// `is_planned`: a mode is planned, whether or not it can run.
    pub fn watch(&mut self, is_planned: bool, stretch: &Stretch) -> Option<Judged> {
        let (from_h, to_h) = stretch.hours;
        if !is_planned {
            *self = Self {
                top_c: self.top_c,
                ..Self::new(0.0, 0.0)
            };
            return None;
        }
        if self.state == Keeping::Idle {
            self.state = Keeping::Reaching(from_h);
        }
        self.hours += to_h - from_h;
        self.kelvin_h += stretch.mean_c * (to_h - from_h);
        // Steps that are cut by events add up to no whole number of minutes.
        if self.hours < MEAN_H - 1e-6 {
            return None;
        }
        let mean = (to_h - 0.5 * self.hours, self.kelvin_h / self.hours);
        (self.hours, self.kelvin_h) = (0.0, 0.0);
        let before = self.before.replace(mean).unwrap_or(mean);
        let was_due = self.is_due();
        let event = self.judge(stretch, before, mean);
        // The time in which the cabin came down to its set point is not held yet.
        let is_due = was_due && self.is_due();
        Some(Judged {
            due_c: is_due.then_some(mean.1),
            event,
        })
    }

    /// `before` and `mean` are the middle of the time and the mean, the last and this one.
    fn judge(
        &mut self,
        stretch: &Stretch,
        before: (f64, f64),
        mean: (f64, f64),
    ) -> Option<(f64, Happening)> {
        let (now_h, mean_c) = (stretch.hours.1, mean.1);
        let is_warm = mean_c > self.top_c + LEEWAY_K;
        // A small cabin's mean may stay above the band, its unit's starts being slow.
        let is_down = !is_warm && mean_c.min(stretch.end_c) <= self.top_c;
        match self.state {
            Keeping::Reaching(since_h) if is_warm && now_h - since_h > PULL_DOWN_H => {
                self.state = Keeping::Lost;
                Some((now_h, Happening::SetPointLost))
            }
            Keeping::Reaching(_) if is_down => {
                self.state = Keeping::Held;
                None
            }
            Keeping::Held if is_warm => {
                self.state = Keeping::Lost;
                let at_h = crossing(before, mean, self.top_c + LEEWAY_K);
                Some((at_h, Happening::SetPointLost))
            }
            Keeping::Lost if is_down => {
                self.state = Keeping::Held;
                let at_h = crossing(before, mean, self.top_c);
                Some((at_h, Happening::SetPointRegained))
            }
            _ => None,
        }
    }

    /// Whether the cabin is to be cool now and was so before.
    fn is_due(&self) -> bool {
        matches!(self.state, Keeping::Held | Keeping::Lost)
    }

    /// Whether it is lost now; false also where no mode is planned.
    #[must_use]
    pub fn is_lost(&self) -> bool {
        self.state == Keeping::Lost
    }
}

/// When the air passed a level, by a straight line between two means.
fn crossing((from_h, from_c): (f64, f64), (to_h, to_c): (f64, f64), level_c: f64) -> f64 {
    let share = if to_c == from_c {
        1.0
    } else {
        ((level_c - from_c) / (to_c - from_c)).clamp(0.0, 1.0)
    };
    from_h + share * (to_h - from_h)
}
