//! The days cut where anything changes by the clock.

use crate::plan::{Plan, cabin::CabinField, path::Path, supply::ChargerKind};

const DAY_MIN: u32 = 24 * 60;

/// When people sleep, minutes after midnight (common practice, no source).
const ASLEEP_MIN: (u32, u32) = (23 * 60, 7 * 60);

/// A stretch through which nothing changes by the clock, within one step of
/// the weather.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slot {
    /// Hours from the plan's start.
    pub from_h: f64,
    /// The same, its end.
    pub to_h: f64,
    /// The step of the weather it lies in, from 0 on.
    pub step: usize,
    /// Place of the mode among [`Timeline::modes`]; none: off.
    pub rig: Option<usize>,
    /// Whether people and animals are in the cabin.
    pub is_aboard: bool,
    /// Whether it is time to sleep.
    pub is_asleep: bool,
    /// A bit for each charger that is on, the plan's first the lowest.
    pub chargers: u32,
}

/// All slots of the days, and the modes that occur in them.
#[derive(Clone, Debug, PartialEq)]
pub struct Timeline {
    /// In the order of time, each beginning where the last ended.
    pub slots: Vec<Slot>,
    /// Places of a unit and of its mode in the plan, no two alike.
    pub modes: Vec<(usize, usize)>,
    /// Length of a step of the weather, h.
    pub step_h: f64,
}

/// Every day alike: from a clock minute on (0 to 1439, rising), a place among the modes or
/// none. What stands last runs on past midnight to the first.
pub type Rows = Vec<(u32, Option<usize>)>;

impl Timeline {
    /// The plan's own mode plan over so many steps.
    /// `per_hour` steps an hour, as the scene has them.
    #[must_use]
    pub fn new(plan: &Plan, steps: usize, per_hour: usize) -> Self {
        let mut modes = Vec::new();
        let rows = plan
            .mode_rows()
            .into_iter()
            .map(|(from_min, unit, mode)| {
                let place = mode.map(|mode| {
                    let known = modes.iter().position(|&at| at == (unit, mode));
                    known.unwrap_or_else(|| {
                        modes.push((unit, mode));
                        modes.len() - 1
                    })
                });
                (from_min, place)
            })
            .collect();
        Self::of_rows(plan, (steps, per_hour), modes, &rows)
    }

    /// Another mode plan: rows in the order of the clock, at least one.
    ///
    /// - `(steps, per_hour)`: how many steps, and how many an hour, as the scene has them
    /// - `modes`: (unit, mode) places in the plan, which `rows` name by their place here
    #[must_use]
    pub fn of_rows(
        plan: &Plan,
        (steps, per_hour): (usize, usize),
        modes: Vec<(usize, usize)>,
        rows: &Rows,
    ) -> Self {
        let step_min = 60.0 / per_hour as f64;
        let habits = Habits::of(plan);
        let start_min = plan.night.start_clock_min;
        let cuts = habits.cuts(rows, start_min);
        let mut slots = Vec::with_capacity(steps + 8 * cuts.len());
        for step in 0..steps {
            let first_min = step as f64 * step_min;
            let edge = |step: usize| step as f64 / per_hour as f64;
            let mut from_h = edge(step);
            let inner = cuts.iter().filter_map(|&cut_min| {
                let ahead = (f64::from(cut_min) - first_min).rem_euclid(f64::from(DAY_MIN));
                let inside = ahead > 0.0 && ahead < step_min;
                inside.then_some((first_min + ahead) / 60.0)
            });
            for to_h in inner.chain([edge(step + 1)]) {
                if to_h <= from_h {
                    continue;
                }
                let middle_min = f64::from(start_min) + 30.0 * (from_h + to_h);
                let clock_min = (middle_min as u32) % DAY_MIN;
                slots.push(habits.slot(rows, clock_min, (from_h, to_h), step));
                from_h = to_h;
            }
        }
        Self {
            slots,
            modes,
            step_h: 1.0 / per_hour as f64,
        }
    }
}

/// What else goes by the clock.
struct Habits {
    /// From and until, minutes after midnight; absent: nobody goes out.
    away_min: Option<(u32, u32)>,
    /// Of each charger when it is on; absent: never.
    chargers_min: Vec<Option<(u32, u32)>>,
}

impl Habits {
    /// A charger on shore power is on all day unless its hours are stated; any other is off
    /// unless they are.
    fn of(plan: &Plan) -> Self {
        let clock = |field| {
            plan.number(Path::Cabin(field))
                .map(|minute| minute.max(0.0) as u32 % DAY_MIN)
        };
        let away_min =
            clock(CabinField::AwayFromClockMin).zip(clock(CabinField::AwayUntilClockMin));
        let chargers_min = plan
            .supply
            .chargers
            .iter()
            .map(|charger| {
                let always = charger.kind.unwrap_or(ChargerKind::Shore) == ChargerKind::Shore;
                let stated = charger.from_clock_min.zip(charger.until_clock_min);
                stated.or(always.then_some((0, 0)))
            })
            .collect();
        Self {
            away_min,
            chargers_min,
        }
    }

    /// Minutes after the start, on the first day, at which something changes.
    fn cuts(&self, rows: &Rows, start_min: u32) -> Vec<u32> {
        let mut minutes: Vec<u32> = rows.iter().map(|row| row.0).collect();
        minutes.extend([ASLEEP_MIN.0, ASLEEP_MIN.1]);
        for span in self.chargers_min.iter().chain([&self.away_min]) {
            minutes.extend(span.iter().flat_map(|span| [span.0, span.1]));
        }
        let mut cuts: Vec<u32> = minutes
            .into_iter()
            .map(|minute| (minute % DAY_MIN + DAY_MIN - start_min % DAY_MIN) % DAY_MIN)
            .collect();
        cuts.sort_unstable();
        cuts.dedup();
        cuts
    }

    /// The slot of a span, by the clock in its middle.
    fn slot(&self, rows: &Rows, clock_min: u32, span_h: (f64, f64), step: usize) -> Slot {
        let (from_h, to_h) = span_h;
        let row = rows
            .iter()
            .rev()
            .find(|row| row.0 <= clock_min)
            .or(rows.last());
        let chargers = self
            .chargers_min
            .iter()
            .enumerate()
            .filter(|(_, span)| span.is_some_and(|span| is_within(clock_min, span)))
            .fold(0, |bits, (at, _)| bits | 1 << at);
        Slot {
            from_h,
            to_h,
            step,
            rig: row.and_then(|row| row.1),
            is_aboard: !self
                .away_min
                .is_some_and(|span| span.0 != span.1 && is_within(clock_min, span)),
            is_asleep: is_within(clock_min, ASLEEP_MIN),
            chargers,
        }
    }
}

/// Whether a clock time lies in a span that may pass midnight; one that ends
/// where it starts is the whole day.
fn is_within(clock_min: u32, (from, until): (u32, u32)) -> bool {
    if from == until {
        true
    } else if from < until {
        (from..until).contains(&clock_min)
    } else {
        clock_min >= from || clock_min < until
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slots_meet_and_cover_the_days() {
        let mut plan = Plan::demo();
        plan.night.start_clock_min = 21 * 60 + 7;
        let line = Timeline::new(&plan, 6 * 48, 6);
        assert_eq!(line.slots[0].from_h, 0.0);
        assert!((line.slots.last().unwrap().to_h - 48.0).abs() < 1e-9);
        for pair in line.slots.windows(2) {
            assert_eq!(pair[0].to_h, pair[1].from_h);
        }
        // Ten hours wanted: on for ten hours of each day.
        let on: f64 = line
            .slots
            .iter()
            .filter(|slot| slot.rig.is_some())
            .map(|slot| slot.to_h - slot.from_h)
            .sum();
        assert!((on - 20.0).abs() < 1e-9, "{on}");
        let asleep: f64 = line
            .slots
            .iter()
            .filter(|slot| slot.is_asleep)
            .map(|slot| slot.to_h - slot.from_h)
            .sum();
        assert!((asleep - 16.0).abs() < 1e-9, "{asleep}");
    }

    #[test]
    fn spans_pass_midnight() {
        assert!(is_within(10, (1380, 420)) && is_within(1400, (1380, 420)));
        assert!(!is_within(420, (1380, 420)) && is_within(5, (3, 3)));
    }
}
