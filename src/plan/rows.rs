//! Taking a row out of a list, with all that refers to it.
//!
//! Rows are referred to by their place. When one goes, what refers to a row
//! behind it follows that row, and what refers to the row itself goes with it:
//! addresses ([`Path`]) in the draft and on the reader's page, the asked mode, the
//! rows of the mode plan, and the claims made about a bank. All of it stands here.

mod ids;

pub use ids::RowIds;

use super::{
    Plan,
    claims::{Claim, Claimed},
    path::Path,
};

/// A row that was taken out: its list, and its place in it at that time.
pub type Removed = (Path, usize);

/// Where a row stands after another was taken out of its list; nothing if it is
/// that one.
const fn behind(at: usize, gone: usize) -> Option<usize> {
    if at == gone {
        None
    } else if at > gone {
        Some(at - 1)
    } else {
        Some(at)
    }
}

/// The same of a unit, where the list is that of the units.
fn unit_behind(unit: usize, (list, row): Removed) -> Option<usize> {
    if list == Path::Units {
        behind(unit, row)
    } else {
        Some(unit)
    }
}

/// The same of a mode, by its unit and its place there.
fn mode_behind((unit, mode): (usize, usize), one: Removed) -> Option<(usize, usize)> {
    let mode = if one.0 == Path::Modes(unit) {
        behind(mode, one.1)?
    } else {
        mode
    };
    Some((unit_behind(unit, one)?, mode))
}

impl Path {
    /// This address after a row was taken out of a list; nothing for an address
    /// within that row.
    #[must_use]
    pub fn without_row(self, (list, row): Removed) -> Option<Self> {
        let up = |at| behind(at, row);
        Some(match (list, self) {
            (Self::Banks, Self::Bank(at, field)) => Self::Bank(up(at)?, field),
            (Self::Banks, Self::Chemistry(at)) => Self::Chemistry(up(at)?),
            (Self::Banks, Self::OpenCircuit(at)) => Self::OpenCircuit(up(at)?),
            (Self::Units, Self::Unit(at, field)) => Self::Unit(up(at)?, field),
            (Self::Units, Self::UnitMap(at)) => Self::UnitMap(up(at)?),
            (Self::Units, Self::MapRow(at, row, field)) => Self::MapRow(up(at)?, row, field),
            (Self::UnitMap(unit), Self::MapRow(at, row, field)) if at == unit => {
                Self::MapRow(at, up(row)?, field)
            }
            (Self::Units, Self::Cooling(at, field)) => Self::Cooling(up(at)?, field),
            (Self::Units, Self::Modes(at)) => Self::Modes(up(at)?),
            (Self::Units | Self::Modes(_), Self::Mode(unit, mode, field)) => {
                let (unit, mode) = mode_behind((unit, mode), (list, row))?;
                Self::Mode(unit, mode, field)
            }
            (Self::Loads, Self::Load(at)) => Self::Load(up(at)?),
            (Self::Arrays, Self::Array(at, field)) => Self::Array(up(at)?, field),
            (Self::Chargers, Self::Charger(at, field)) => Self::Charger(up(at)?, field),
            (Self::ModePlan, Self::ModeRow(at, field)) => Self::ModeRow(up(at)?, field),
            (Self::CheckIns, Self::CheckIn(at, field)) => Self::CheckIn(up(at)?, field),
            (Self::Claims, Self::Claim(at, field)) => Self::Claim(up(at)?, field),
            (_, path) => path,
        })
    }
}

impl Plan {
    /// Takes a row out of a list. Rows that make no sense without it go too: what
    /// the mode plan switches to, and what is claimed of a bank.
    ///
    /// Returns every row taken out, in that order, for whoever else holds
    /// addresses. Nothing where there is no such row.
    pub fn remove_row(&mut self, list: Path, row: usize) -> Vec<Removed> {
        if !self.take_out((list, row)) {
            return Vec::new();
        }
        let mut gone = vec![(list, row)];
        match list {
            Path::Banks => self.claims_without_bank(row, &mut gone),
            Path::Units | Path::Modes(_) => self.modes_without((list, row), &mut gone),
            _ => {}
        }
        if let Some(reader) = &mut self.reader {
            let open = reader.open.iter();
            let follow = |path: &Path| {
                gone.iter()
                    .try_fold(*path, |path, &one| path.without_row(one))
            };
            reader.open = open.filter_map(follow).collect();
        }
        gone
    }

    /// The rows of a list without one of them; whether it was there.
    fn take_out(&mut self, (list, row): Removed) -> bool {
        fn take<T>(rows: &mut Vec<T>, row: usize) -> bool {
            let is_there = row < rows.len();
            if is_there {
                rows.remove(row);
            }
            is_there
        }
        match list {
            Path::Banks => take(&mut self.banks, row),
            Path::Units => take(&mut self.units, row),
            Path::Loads => take(&mut self.loads, row),
            Path::Arrays => take(&mut self.supply.arrays, row),
            Path::Chargers => take(&mut self.supply.chargers, row),
            Path::ModePlan => take(&mut self.mode_plan, row),
            Path::CheckIns => take(&mut self.check_ins, row),
            Path::Claims => take(&mut self.claims, row),
            Path::UnitMap(unit) => {
                let unit = self.units.get_mut(unit);
                unit.is_some_and(|unit| take(&mut unit.cooling.unit_map, row))
            }
            Path::Modes(unit) => {
                let unit = self.units.get_mut(unit);
                unit.is_some_and(|unit| take(&mut unit.modes, row))
            }
            _ => false,
        }
    }

    /// The asked mode and the mode plan without a unit or a mode. With the asked
    /// mode gone, the first one is asked for. A plan left with nothing but switching
    /// off is no plan any more.
    fn modes_without(&mut self, one: Removed, gone: &mut Vec<Removed>) {
        let night = &mut self.night;
        let asked = mode_behind((night.asked_unit, night.asked_mode), one);
        let unit = unit_behind(night.asked_unit, one).unwrap_or(0);
        (night.asked_unit, night.asked_mode) = asked.unwrap_or((unit, 0));
        let before = gone.len();
        for at in (0..self.mode_plan.len()).rev() {
            let row = &mut self.mode_plan[at];
            let to = row.mode.map(|mode| mode_behind((row.unit, mode), one));
            match to {
                // Off is off, whichever unit it was.
                None => row.unit = unit_behind(row.unit, one).unwrap_or(0),
                Some(Some((unit, mode))) => (row.unit, row.mode) = (unit, Some(mode)),
                Some(None) => self.take_also((Path::ModePlan, at), gone),
            }
        }
        if gone.len() > before && self.mode_plan.iter().all(|row| row.mode.is_none()) {
            for at in (0..self.mode_plan.len()).rev() {
                self.take_also((Path::ModePlan, at), gone);
            }
        }
    }

    fn take_also(&mut self, one: Removed, gone: &mut Vec<Removed>) {
        self.take_out(one);
        gone.push(one);
    }

    /// What is claimed of a bank that is gone goes; of other things a bank's place
    /// is not said, and stays at the first.
    fn claims_without_bank(&mut self, bank: usize, gone: &mut Vec<Removed>) {
        for at in (0..self.claims.len()).rev() {
            let claim = &mut self.claims[at];
            match behind(claim.bank, bank) {
                Some(bank) => claim.bank = bank,
                None if is_of_a_bank(claim) => self.take_also((Path::Claims, at), gone),
                None => claim.bank = 0,
            }
        }
    }
}

/// Whether a claim is about what a bank holds.
fn is_of_a_bank(claim: &Claim) -> bool {
    matches!(claim.about_taken(), Claimed::Charge | Claimed::Energy)
}

#[cfg(test)]
mod tests;
