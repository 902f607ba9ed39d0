//! What several sources hold out, each up to volts of its own.

use super::piece::MOST_CHARGERS;

/// The panels' controller, and every charger.
const MOST: usize = MOST_CHARGERS + 1;

/// Volts held and amps of each source; the panels first.
///
/// At one voltage of the bars: amps are what each could give there, 0 for one that is off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SourceCurrents {
    rows: [(f64, f64); MOST],
}

impl SourceCurrents {
    /// The panels, and chargers in their order, each as (volts held, amps).
    #[must_use]
    pub fn new(panels: (f64, f64), chargers: [(f64, f64); MOST_CHARGERS]) -> Self {
        let mut rows = [panels; MOST];
        rows[1..].copy_from_slice(&chargers);
        Self { rows }
    }

    /// The least volts above some that anything which gives current holds; nothing where no
    /// more is given.
    pub(super) fn next_hold_v(&self, above_v: f64) -> Option<f64> {
        self.rows
            .iter()
            .filter(|row| row.0 > above_v && row.1 > 0.0)
            .map(|row| row.0)
            .reduce(f64::min)
    }

    /// Amps of all that hold more than some volts.
    pub(super) fn above_a(&self, volts: f64) -> f64 {
        let above = self.rows.iter().filter(|row| row.0 > volts);
        above.map(|row| row.1).sum()
    }

    /// Who gives how much of a whole current: those that hold most first, and of
    /// those that hold alike the panels, then chargers in their order.
    ///
    /// In the order of the rows. What is beyond all of them together is nobody's.
    pub(super) fn split(&self, whole_a: f64) -> [f64; MOST] {
        let mut given = [0.0; MOST];
        let mut left_a = whole_a;
        let mut below_v = f64::INFINITY;
        while let Some(hold_v) = self
            .rows
            .iter()
            .filter(|row| row.0 < below_v)
            .map(|row| row.0)
            .reduce(f64::max)
        {
            for (given, row) in given.iter_mut().zip(&self.rows) {
                if row.0 == hold_v {
                    *given = row.1.min(left_a);
                    left_a -= *given;
                }
            }
            below_v = hold_v;
        }
        given
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn those_that_hold_most_give_first() {
        let mut chargers = [(14.0, 0.0); MOST_CHARGERS];
        chargers[0] = (13.8, 20.0);
        chargers[1] = (14.4, 10.0);
        let offers = SourceCurrents::new((14.2, 5.0), chargers);
        assert_eq!(offers.next_hold_v(0.0), Some(13.8));
        assert_eq!(offers.next_hold_v(13.8), Some(14.2));
        assert_eq!(offers.above_a(13.8), 15.0);
        assert_eq!(offers.split(17.0)[..3], [5.0, 2.0, 10.0]);
        assert_eq!(offers.split(4.0)[..3], [0.0, 0.0, 4.0]);
    }
}
