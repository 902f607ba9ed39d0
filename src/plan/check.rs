//! What a plan must keep to before it can be answered.

use super::{
    Draw, Feed, Plan,
    cabin::CabinField,
    cooling::{CoolingField, MAP_ROWS, MapField},
    day::{CheckInField, DayField, ModeRowField},
    path::{BankField, ModeField, NightField, Path, UnitField},
    supply::{ArrayField, ChargerField, SupplyField},
};
use crate::{
    physics::battery::curve::Curve,
    plan::finding::{Finding, Matter},
    range,
};

/// Banks, units, modes and loads that one answer takes.
pub const MOST_BANKS: usize = 4;
pub const MOST_UNITS: usize = 4;
pub const MOST_MODES: usize = 12;
pub const MOST_LOADS: usize = 24;
/// Rows of an own open-circuit table.
pub const MOST_ROWS: usize = 201;
/// Groups of panels, chargers, rows of the mode plan, readings in the night.
pub const MOST_ARRAYS: usize = crate::physics::solar::MOST_GROUPS;
pub const MOST_CHARGERS: usize = 4;
pub const MOST_MODE_ROWS: usize = 24;
pub const MOST_CHECK_INS: usize = 24;
/// Hours imported: a week.
pub const MOST_IMPORTED: usize = 168;

impl Plan {
    /// Every address that holds a number in this plan, in the order of the page.
    #[must_use]
    pub fn paths(&self) -> Vec<Path> {
        let mut all = Vec::new();
        for bank in 0..self.banks.len() {
            all.extend(BankField::ALL.iter().map(|&field| Path::Bank(bank, field)));
        }
        for (index, unit) in self.units.iter().enumerate() {
            all.extend(UnitField::ALL.iter().map(|&field| Path::Unit(index, field)));
            all.extend(
                CoolingField::ALL
                    .iter()
                    .map(|&field| Path::Cooling(index, field)),
            );
            for row in 0..unit.cooling.unit_map.len() {
                let of_row = |&field| Path::MapRow(index, row, field);
                all.extend(MapField::ALL.iter().map(of_row));
            }
            for mode in 0..unit.modes.len() {
                all.extend(
                    ModeField::ALL
                        .iter()
                        .map(|&field| Path::Mode(index, mode, field)),
                );
            }
        }
        all.extend((0..self.loads.len()).map(Path::Load));
        all.extend(NightField::ALL.iter().map(|&field| Path::Night(field)));
        self.day_paths(&mut all);
        self.claim_paths(&mut all);
        self.wiring_paths(&mut all);
        all
    }

    /// The addresses of the third question's parts.
    fn day_paths(&self, all: &mut Vec<Path>) {
        fn rows<F: Copy>(
            all: &mut Vec<Path>,
            count: usize,
            fields: &[F],
            path: fn(usize, F) -> Path,
        ) {
            for at in 0..count {
                all.extend(fields.iter().map(|&field| path(at, field)));
            }
        }
        all.extend(DayField::ALL.iter().map(|&field| Path::Day(field)));
        all.extend(CabinField::ALL.iter().map(|&field| Path::Cabin(field)));
        all.extend(SupplyField::ALL.iter().map(|&field| Path::Supply(field)));
        let supply = &self.supply;
        rows(all, supply.arrays.len(), ArrayField::ALL, Path::Array);
        rows(all, supply.chargers.len(), ChargerField::ALL, Path::Charger);
        rows(all, self.mode_plan.len(), ModeRowField::ALL, Path::ModeRow);
        rows(all, self.check_ins.len(), CheckInField::ALL, Path::CheckIn);
    }

    /// Everything in the plan that cannot be answered as it stands.
    #[must_use]
    pub fn errors(&self) -> Vec<Finding> {
        let mut errors = self.counts();
        for path in self.paths() {
            let Some(figure) = self.stated(path) else {
                continue;
            };
            errors.extend(
                path.range()
                    .and_then(|range| Finding::of_value(path, figure.value, range)),
            );
            let spread = figure.spread_percent.unwrap_or(0.0);
            errors.extend(Finding::of_value(path, spread, range::SPREAD_PERCENT));
        }
        errors.extend(self.day_errors());
        errors.extend(self.claim_errors());
        for (index, bank) in self.banks.iter().enumerate() {
            let rows = &bank.battery_open_circuit;
            if rows.is_empty() {
                continue;
            }
            let table: Vec<_> = rows
                .iter()
                .map(|row| (row.charge_percent / 100.0, row.open_circuit_v))
                .collect();
            let path = Some(Path::OpenCircuit(index));
            if rows.len() > MOST_ROWS {
                errors.push(Finding::error(
                    path,
                    Matter::TooMany {
                        count: rows.len(),
                        most: MOST_ROWS,
                    },
                ));
            } else if let Err(bad) = Curve::new(&table) {
                errors.push(Finding::error(path, Matter::BadTable { row: bad.0 }));
            }
        }
        errors
    }

    fn counts(&self) -> Vec<Finding> {
        let mut lists = vec![
            (Path::Banks, self.banks.len(), 1, MOST_BANKS),
            (Path::Units, self.units.len(), 1, MOST_UNITS),
            (Path::Loads, self.loads.len(), 0, MOST_LOADS),
            (Path::Arrays, self.supply.arrays.len(), 0, MOST_ARRAYS),
            (Path::Chargers, self.supply.chargers.len(), 0, MOST_CHARGERS),
            (Path::ModePlan, self.mode_plan.len(), 0, MOST_MODE_ROWS),
            (Path::CheckIns, self.check_ins.len(), 0, MOST_CHECK_INS),
            (
                Path::Imported,
                self.day.imported.outdoor_c.len(),
                0,
                MOST_IMPORTED,
            ),
        ];
        for (index, unit) in self.units.iter().enumerate() {
            let rows = unit.cooling.unit_map.len();
            lists.push((Path::UnitMap(index), rows, 0, MAP_ROWS.1));
            lists.push((Path::Modes(index), unit.modes.len(), 1, MOST_MODES));
        }
        lists
            .into_iter()
            .filter_map(|(path, count, least, most)| {
                let matter = match count {
                    _ if count < least => Matter::NoneGiven,
                    _ if count > most => Matter::TooMany { count, most },
                    _ => return None,
                };
                Some(Finding::error(Some(path), matter))
            })
            .collect()
    }

    /// Whether an error stands in the bank, in the unit, or in what all share.
    #[must_use]
    pub fn blocks(error: &Finding, bank: usize, unit: usize, mode: usize) -> bool {
        match error.field {
            Some(Path::Bank(at, _) | Path::OpenCircuit(at)) => at == bank,
            Some(Path::Unit(at, _) | Path::Modes(at)) => at == unit,
            Some(Path::Mode(at, row, _)) => at == unit && row == mode,
            // The night asks; it changes no run. The day's parts are the day's.
            Some(path) if path == Path::Banks || path == Path::Units => true,
            Some(Path::Loads | Path::Load(_)) => true,
            Some(_) => false,
            None => true,
        }
    }

    /// Whether an error leaves a bank's own facts unknown.
    #[must_use]
    pub fn blocks_bank(error: &Finding, bank: usize) -> bool {
        match error.field {
            Some(Path::Bank(at, _) | Path::OpenCircuit(at)) => at == bank,
            field => matches!(field, Some(Path::Banks)),
        }
    }

    /// Whether an error leaves the night's question unanswerable.
    #[must_use]
    pub fn blocks_night(error: &Finding) -> bool {
        matches!(error.field, Some(Path::Night(_)))
    }

    /// The mode at an address, if there is one.
    #[must_use]
    pub fn mode(&self, unit: usize, mode: usize) -> Option<&super::Mode> {
        self.units.get(unit)?.modes.get(mode)
    }

    pub(super) fn mode_mut(&mut self, (unit, mode): (usize, usize)) -> Option<&mut super::Mode> {
        self.units.get_mut(unit)?.modes.get_mut(mode)
    }

    /// The address of the number that says what a mode draws.
    #[must_use]
    pub fn draw_path(&self, unit: usize, mode: usize) -> Option<Path> {
        let field = match self.mode(unit, mode)?.draw {
            Draw::Power { .. } => ModeField::PowerW,
            Draw::Current { .. } => ModeField::CurrentA,
        };
        Some(Path::Mode(unit, mode, field))
    }

    /// Where the number of a field stands now: a mode's draw has one field, and its
    /// watts or amps have an address each.
    #[must_use]
    pub fn kept_at(&self, path: Path) -> Path {
        let draw = match path {
            Path::Mode(unit, mode, ModeField::PowerW | ModeField::CurrentA) => {
                self.draw_path(unit, mode)
            }
            _ => None,
        };
        draw.unwrap_or(path)
    }

    /// Whether a unit hangs on the bank itself.
    #[must_use]
    pub fn is_direct(&self, unit: usize) -> bool {
        self.units
            .get(unit)
            .is_some_and(|unit| matches!(unit.feed, Feed::Direct))
    }
}

/// What only the third question minds.
impl Plan {
    /// Whether an error is one of the day's own parts, which leave the rest
    /// answerable.
    #[must_use]
    pub fn blocks_day_only(error: &Finding) -> bool {
        Self::blocks_claims_only(error)
            || Self::blocks_wiring_only(error)
            || matches!(
                error.field,
                Some(
                    Path::Day(_)
                        | Path::Imported
                        | Path::Cabin(_)
                        | Path::Cooling(..)
                        | Path::UnitMap(_)
                        | Path::MapRow(..)
                        | Path::Supply(_)
                        | Path::Arrays
                        | Path::Array(..)
                        | Path::Chargers
                        | Path::Charger(..)
                        | Path::ModePlan
                        | Path::ModeRow(..)
                        | Path::CheckIns
                        | Path::CheckIn(..)
                )
            )
    }

    /// What the ranges alone do not see.
    fn day_errors(&self) -> Vec<Finding> {
        let mut errors = Vec::new();
        for at in 0..self.mode_plan.len() {
            let row = &self.mode_plan[at];
            let known = row
                .mode
                .is_none_or(|mode| self.mode(row.unit, mode).is_some());
            if !known || row.unit >= self.units.len() {
                let path = Path::ModeRow(at, ModeRowField::FromClockMin);
                errors.push(Finding::error(Some(path), Matter::NoSuchMode));
            }
        }
        errors.extend(self.imported_error());
        errors
    }

    fn imported_error(&self) -> Option<Finding> {
        let imported = &self.day.imported;
        let hours = imported.outdoor_c.len();
        let may_lack = [
            (&imported.dew_point_c, range::DEW_POINT_C),
            (&imported.direct_w_m2, range::GLOBAL_W_M2),
            (&imported.diffuse_w_m2, range::GLOBAL_W_M2),
        ];
        let is_even = |len: usize| len == hours || len == 0;
        let even = imported.global_w_m2.len() == hours
            && may_lack.iter().all(|(values, _)| is_even(values.len()));
        let fits = |values: &[f64], range: range::Range| {
            values.iter().position(|&value| !range.accepts(value))
        };
        let row = if even {
            fits(&imported.outdoor_c, range::OUTDOOR_C)
                .or_else(|| fits(&imported.global_w_m2, range::GLOBAL_W_M2))
                .or_else(|| {
                    may_lack
                        .iter()
                        .find_map(|&(values, range)| fits(values, range))
                })?
        } else {
            hours.min(imported.global_w_m2.len())
        };
        Some(Finding::error(
            Some(Path::Imported),
            Matter::BadImport { row },
        ))
    }
}
