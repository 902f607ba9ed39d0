//! What a plan must keep to before it can be answered.

use super::{
    Draw, Feed, Plan,
    path::{BankField, ModeField, NightField, Path, UnitField},
};
use crate::{
    bank::curve::Curve,
    finding::{Finding, Matter},
    range,
};

/// Banks, units, modes and loads that one answer takes.
pub const MOST_BANKS: usize = 4;
pub const MOST_UNITS: usize = 4;
pub const MOST_MODES: usize = 12;
pub const MOST_LOADS: usize = 24;
/// Rows of an own open-circuit table.
pub const MOST_ROWS: usize = 201;

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
        all
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
        for (index, bank) in self.banks.iter().enumerate() {
            let rows = &bank.block_open_circuit;
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
        ];
        for (index, unit) in self.units.iter().enumerate() {
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
            // The night asks; it changes no run.
            Some(Path::Night(_)) => false,
            Some(Path::Banks | Path::Units | Path::Loads | Path::Load(_)) | None => true,
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

    /// The address of the number that says what a mode draws.
    #[must_use]
    pub fn draw_path(&self, unit: usize, mode: usize) -> Option<Path> {
        let field = match self.mode(unit, mode)?.draw {
            Draw::Power { .. } => ModeField::PowerW,
            Draw::Current { .. } => ModeField::CurrentA,
        };
        Some(Path::Mode(unit, mode, field))
    }

    /// Whether a unit hangs on the bank itself.
    #[must_use]
    pub fn is_direct(&self, unit: usize) -> bool {
        self.units
            .get(unit)
            .is_some_and(|unit| matches!(unit.feed, Feed::Direct))
    }
}
