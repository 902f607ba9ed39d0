//! Whether the set point is held.

use super::record::Happening;

/// How far above the band's top still counts as held, K.
const LEEWAY_K: f64 = 0.5;
/// How long a unit that was switched on may take to cool the cabin down before
/// the set point counts as lost, h. (Ours: a night whose first two hours are
/// spent cooling down is still a cool night.)
const PULL_DOWN_H: f64 = 2.0;

/// Watches the air while a mode is planned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SetpointMonitor {
    top_c: f64,
    state: Keeping,
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
    pub hours: (f64, f64),
    /// At both ends.
    pub air_c: (f64, f64),
}

impl SetpointMonitor {
    /// For a set point with a band of this whole width.
    #[must_use]
    pub fn new(set_c: f64, band_k: f64) -> Self {
        Self {
            top_c: set_c + 0.5 * band_k,
            state: Keeping::Idle,
        }
    }

    /// Takes in a stretch; says when the set point was lost or came back.
    pub fn watch(&mut self, is_planned: bool, stretch: &Stretch) -> Option<(f64, Happening)> {
        let (from_h, to_h) = stretch.hours;
        if !is_planned {
            self.state = Keeping::Idle;
            return None;
        }
        if self.state == Keeping::Idle {
            self.state = Keeping::Reaching(from_h);
        }
        let end_c = stretch.air_c.1;
        let is_warm = end_c > self.top_c + LEEWAY_K;
        match self.state {
            Keeping::Reaching(since_h) if is_warm && to_h - since_h > PULL_DOWN_H => {
                self.state = Keeping::Lost;
                Some((to_h, Happening::SetPointLost))
            }
            Keeping::Reaching(_) if end_c <= self.top_c => {
                self.state = Keeping::Held;
                None
            }
            Keeping::Held if is_warm => {
                self.state = Keeping::Lost;
                let at_h = crossing(stretch, self.top_c + LEEWAY_K);
                Some((at_h, Happening::SetPointLost))
            }
            Keeping::Lost if end_c <= self.top_c => {
                self.state = Keeping::Held;
                let at_h = crossing(stretch, self.top_c);
                Some((at_h, Happening::SetPointRegained))
            }
            _ => None,
        }
    }

    /// Whether the cabin is to be cool now and was so before.
    #[must_use]
    pub fn is_due(&self) -> bool {
        matches!(self.state, Keeping::Held | Keeping::Lost)
    }

    #[must_use]
    pub fn is_lost(&self) -> bool {
        self.state == Keeping::Lost
    }
}

/// When the air passed a level, by a straight line between the ends.
fn crossing(stretch: &Stretch, level_c: f64) -> f64 {
    let ((from_h, to_h), (from_c, to_c)) = (stretch.hours, stretch.air_c);
    let share = if to_c == from_c {
        1.0
    } else {
        ((level_c - from_c) / (to_c - from_c)).clamp(0.0, 1.0)
    };
    from_h + share * (to_h - from_h)
}
