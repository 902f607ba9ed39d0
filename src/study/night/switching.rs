//! Mode plans that differ from the plan's own by a switch on the way.

use crate::{plan::Plan, simulate::day::timeline::Rows, study::spread::Draws};

const DAY_MIN: u32 = 24 * 60;

/// Lower modes that are tried, so that the work is bounded.
pub(super) const MOST_BELOW: usize = 5;

/// The modes in question, and how the plan has them by the clock.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Modes {
    /// Unit and mode, what draws most first.
    pub list: Vec<(usize, usize)>,
    /// Nominal draw of each, in the same order.
    watts: Vec<f64>,
    /// What is on from so many minutes after the start, in order, from 0 on.
    spans: Vec<(u32, Option<usize>)>,
    /// Clock at the plan's start, minutes after midnight.
    start_min: u32,
}

impl Modes {
    /// Every mode of the units that are planned, and the plan's own rows.
    pub(super) fn of(plan: &Plan) -> Self {
        let rows = plan.mode_rows();
        let mut list: Vec<(usize, usize)> = Vec::new();
        for (unit, the_unit) in plan.units.iter().enumerate() {
            let is_planned = |row: &(u32, usize, Option<usize>)| row.1 == unit && row.2.is_some();
            if rows.iter().any(is_planned) {
                list.extend((0..the_unit.modes.len()).map(|mode| (unit, mode)));
            }
        }
        let watts_of = |&(unit, mode): &(usize, usize)| {
            plan.mode(unit, mode)
                .map_or(0.0, |mode| mode.draw.nominal_w())
        };
        list.sort_by(|a, b| watts_of(b).total_cmp(&watts_of(a)));
        let start_min = plan.night.start_clock_min % DAY_MIN;
        let place = |unit, mode: Option<usize>| {
            list.iter()
                .position(|&at| Some(at.1) == mode && at.0 == unit)
        };
        let mut spans: Vec<_> = rows
            .iter()
            .map(|&(clock_min, unit, mode)| {
                let after_min = (clock_min % DAY_MIN + DAY_MIN - start_min) % DAY_MIN;
                (after_min, place(unit, mode))
            })
            .collect();
        spans.sort_by_key(|span| span.0);
        if spans.first().is_some_and(|span| span.0 > 0) {
            // What the day before ended with is still on.
            let last = spans[spans.len() - 1].1;
            spans.insert(0, (0, last));
        }
        Self {
            watts: list.iter().map(watts_of).collect(),
            list,
            spans,
            start_min,
        }
    }

    /// What the plan has on so many minutes after the start, within a day: a place in the list,
    /// or none.
    pub(super) fn at(&self, after_min: u32) -> Option<usize> {
        let on = self.spans.iter().rev().find(|span| span.0 <= after_min);
        on.and_then(|span| span.1)
    }

    /// The strongest mode that the plan has on before so many minutes after the start; nothing
    /// where it has none.
    pub(super) fn strongest_before(&self, after_min: u32) -> Option<usize> {
        let on = self.spans.iter().filter(|span| span.0 < after_min);
        // The list goes from strong to weak.
        on.filter_map(|span| span.1).min()
    }

    /// The strongest mode that the plan has on in a span, which may go on past the
    /// end of the day.
    pub(super) fn strongest_between(&self, from_min: u32, until_min: u32) -> Option<usize> {
        let starts = self.spans.iter().filter(|span| {
            let after_min = if span.0 < from_min {
                span.0 + DAY_MIN
            } else {
                span.0
            };
            (from_min..until_min).contains(&after_min)
        });
        let first = self.at(from_min % DAY_MIN);
        starts.filter_map(|span| span.1).chain(first).min()
    }

    /// Places of the modes of one's unit that draw less than it, strong to weak,
    /// [`MOST_BELOW`] at the most.
    pub(super) fn below(&self, place: usize) -> Vec<usize> {
        let unit = self.list[place].0;
        (place + 1..self.list.len())
            .filter(|&at| self.list[at].0 == unit && self.watts[at] < self.watts[place])
            .take(MOST_BELOW)
            .collect()
    }

    /// Watts of a mode, or of none.
    fn watts_of(&self, place: Option<usize>) -> f64 {
        place.map_or(0.0, |place| self.watts[place])
    }

    /// The plan's rows with a change to a lower mode, or to none, for part of
    /// every day: whatever draws more in that time gives way.
    ///
    /// `from_min` counts from the start and lies within a day of it, `until_min`
    /// within a day of `from_min`.
    pub(super) fn switched(&self, from_min: u32, until_min: u32, to: Option<usize>) -> Rows {
        let mut cuts: Vec<u32> = self.spans.iter().map(|span| span.0).collect();
        cuts.extend(
            [0, from_min, until_min]
                .iter()
                .filter(|&&cut| cut < DAY_MIN),
        );
        cuts.sort_unstable();
        cuts.dedup();
        let mut rows: Rows = cuts
            .into_iter()
            .map(|cut| {
                let own = self.at(cut);
                let gives_way =
                    (from_min..until_min).contains(&cut) && self.watts_of(own) > self.watts_of(to);
                (
                    (cut + self.start_min) % DAY_MIN,
                    if gives_way { to } else { own },
                )
            })
            .collect();
        rows.sort_by_key(|row| row.0);
        rows
    }

    /// Draws of a plan that has all these modes: their figures are spread alike.
    pub(super) fn draws(&self, plan: &Plan) -> Draws {
        let rows: Vec<_> = self
            .list
            .iter()
            .map(|&(unit, mode)| (self.start_min, unit, Some(mode)))
            .collect();
        Draws::of_modes(plan, &rows)
    }

    /// So many minutes after the start by the clock, 0 to 1439.
    pub(super) fn clock_min(&self, after_min: u32) -> u32 {
        (self.start_min + after_min) % DAY_MIN
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::ModeRow;

    #[test]
    fn a_switch_lies_over_the_plans_own_rows() {
        let mut plan = Plan::demo();
        let row = |from: u32, mode| ModeRow {
            from_clock_min: Some(from),
            unit: 0,
            mode,
        };
        // Plunge from nine, Hold from eleven, off from seven.
        plan.mode_plan = vec![row(1260, Some(0)), row(1380, Some(1)), row(420, None)];
        let modes = Modes::of(&plan);
        assert_eq!(modes.list, [(0, 0), (0, 1), (0, 2)]);
        assert_eq!(modes.at(119), Some(0));
        assert_eq!(modes.strongest_before(600), Some(0));
        assert_eq!(modes.below(0), [1, 2]);
        // Hush from one in the morning until six.
        assert_eq!(
            modes.switched(240, 540, Some(2)),
            [
                (60, Some(2)),
                (360, Some(1)),
                (420, None),
                (1260, Some(0)),
                (1380, Some(1))
            ]
        );
        // What is off stays off, and what is lower stays.
        assert_eq!(modes.switched(660, 700, Some(2))[1], (480, None));
        assert_eq!(modes.switched(180, 240, Some(0))[0], (0, Some(1)));
    }
}
