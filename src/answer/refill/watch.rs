//! Follows the charge through the days.

use crate::simulate::day::{DayPoint, Happening, Sink};

/// One day, h.
pub const DAY_H: f64 = 24.0;

/// Hours and charge at every step, and when the bank was first empty.
#[derive(Clone, Debug, Default)]
pub struct Watch {
    /// Hours from the start, per cent of what the bank holds.
    pub points: Vec<(f64, f64)>,
    /// Hours from the start; absent: it was not.
    pub empty_h: Option<f64>,
}

impl Sink for Watch {
    fn point(&mut self, point: &DayPoint) {
        self.points.push((point.hours_h, point.charge_percent));
    }
    fn event(&mut self, hours_h: f64, what: Happening) {
        if matches!(what, Happening::Empty { .. }) {
            self.empty_h.get_or_insert(hours_h);
        }
    }
}

impl Watch {
    /// The charge at an hour, straight between steps; nothing beyond the last.
    pub fn percent_at(&self, at_h: f64) -> Option<f64> {
        let after = self.points.iter().position(|at| at.0 >= at_h - 1e-9)?;
        let (b_h, b) = self.points[after];
        let Some(&(a_h, a)) = after.checked_sub(1).and_then(|at| self.points.get(at)) else {
            return Some(b);
        };
        Some(a + (b - a) * ((at_h - a_h) / (b_h - a_h)).min(1.0))
    }

    /// When a charge is first there from a time on, straight between steps; nothing where it
    /// never is.
    pub fn reaches(&self, from_h: f64, percent: f64) -> Option<f64> {
        let after = self.points.iter().position(|at| at.0 >= from_h)?;
        let at = after + self.points[after..].iter().position(|at| at.1 >= percent)?;
        if at == after {
            return Some(self.points[at].0);
        }
        let ((a_h, a), (b_h, b)) = (self.points[at - 1], self.points[at]);
        Some(a_h + (b_h - a_h) * (percent - a) / (b - a))
    }
}
