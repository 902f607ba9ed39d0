//! A plan being typed: the texts are the truth, the last good numbers answer.
//!
//! Nothing typed is ever lost. A text that reads as an accepted number goes into
//! the plan at once; any other stays as it is, beside the last good number, and
//! the answer is then marked stale.

use super::{
    Plan,
    entry::{Entry, EntryError, Reading, Shown, read, show},
    path::{BankField as B, Path},
};
use crate::range::{self, Range, Unit};
use serde::{Deserialize, Serialize};

/// A plan and the texts that are not settled into it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Draft {
    pub plan: Plan,
    /// A handful: a list weighs less in the page than a map does.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    typed: Vec<(Path, String)>,
}

/// Why a typed text is not in the plan.
#[derive(Clone, Debug, PartialEq)]
pub enum Trouble {
    /// Not a number of this kind.
    Unreadable(EntryError),
    /// A number outside what is answered.
    OutOfRange { value: f64, range: Range },
}

/// How a typed text was understood, where that is not plain to see.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Echo {
    /// Read as this number, in the field's unit.
    Value { value: f64, unit: Unit },
    /// Read as so many strings of so much.
    Strings { count: u32, each: f64, unit: Unit },
}

/// What a text does to the plan.
enum Effect {
    Clear,
    Set(f64),
    /// `2x100` in a block's charge: so many strings in parallel.
    Strings(u32, f64),
}

impl Draft {
    #[must_use]
    pub fn of(plan: Plan) -> Self {
        Self {
            plan,
            typed: Vec::new(),
        }
    }

    /// The text of a field: as typed, or else the plan's number written out.
    /// Empty for a number left to its default.
    #[must_use]
    pub fn text(&self, path: Path) -> String {
        self.typed_at(path).map(str::to_owned).unwrap_or_else(|| {
            self.plan
                .stated(path)
                .map_or_else(String::new, |figure| self.written(path, figure.value))
        })
    }

    /// A number as this field writes it.
    #[must_use]
    pub fn written(&self, path: Path, value: f64) -> String {
        path.range().map_or_else(String::new, |range| {
            show(value, range.unit, self.shown(range.unit))
        })
    }

    /// Takes what stands in a field now.
    pub fn type_text(&mut self, path: Path, text: &str) {
        match self.typed.iter_mut().find(|(at, _)| *at == path) {
            Some((_, typed)) => text.clone_into(typed),
            None => self.typed.push((path, text.to_owned())),
        }
        match self.effect(path, text) {
            Ok(Effect::Clear) => {
                self.plan.clear(path);
            }
            Ok(Effect::Set(value)) => {
                self.plan.set_number(path, value);
            }
            Ok(Effect::Strings(count, each)) => {
                self.plan.set_number(path, each);
                if let Path::Bank(bank, _) = path {
                    self.plan
                        .set_number(Path::Bank(bank, B::ParallelCount), f64::from(count));
                    self.untype(Path::Bank(bank, B::ParallelCount));
                }
            }
            Err(_) => {}
        }
    }

    /// Leaves a field: a text that was taken is from now on written out plainly,
    /// one that was not stays for mending.
    pub fn settle(&mut self, path: Path) {
        let taken = self
            .typed_at(path)
            .is_some_and(|text| self.effect(path, text).is_ok());
        if taken {
            self.untype(path);
        }
    }

    /// Whether the field shows a text that is not settled.
    #[must_use]
    pub fn is_typing(&self, path: Path) -> bool {
        self.typed_at(path).is_some()
    }

    /// Why the field's text is not in the plan, if it is not.
    #[must_use]
    pub fn trouble(&self, path: Path) -> Option<Trouble> {
        self.effect(path, self.typed_at(path)?).err()
    }

    /// Fields whose text is not in the plan, in the order they were typed into.
    #[must_use]
    pub fn troubled(&self) -> Vec<Path> {
        self.typed
            .iter()
            .map(|(path, _)| *path)
            .filter(|&path| self.trouble(path).is_some())
            .collect()
    }

    /// How the field's text was understood, where that is not plain to see.
    #[must_use]
    pub fn echo(&self, path: Path) -> Option<Echo> {
        let (text, unit) = (self.typed_at(path)?, path.range()?.unit);
        let entry = read(text, unit, self.shown(unit)).ok()?;
        match self.effect(path, text).ok()? {
            Effect::Clear => None,
            Effect::Strings(count, each) => Some(Echo::Strings { count, each, unit }),
            Effect::Set(value) => {
                let plain = entry.reading == Reading::Plain && entry.given == unit;
                (!plain).then_some(Echo::Value { value, unit })
            }
        }
    }

    /// Changes the plan otherwise than by typing. Texts of places that are no
    /// more, and of places whose number changed, go.
    pub fn edit(&mut self, change: impl FnOnce(&mut Plan)) {
        let before = self.plan.clone();
        change(&mut self.plan);
        self.drop_outdated(&before);
    }

    #[inline(never)]
    fn drop_outdated(&mut self, before: &Plan) {
        let plan = &self.plan;
        self.typed.retain(|&(path, _)| {
            let place = |plan: &Plan| plan.stated(path).map(|figure| figure.value);
            place(before) == place(plan) && (place(plan).is_some() || plan.is_optional(path))
        });
    }

    /// Takes a row out of a list with all that refers to it, its texts among them
    /// (see [`Plan::remove_row`]).
    pub fn remove(&mut self, list: Path, row: usize) {
        for gone in self.plan.remove_row(list, row) {
            self.typed = std::mem::take(&mut self.typed)
                .into_iter()
                .filter_map(|(path, text)| Some((path.without_row(gone)?, text)))
                .collect();
        }
    }

    fn typed_at(&self, path: Path) -> Option<&str> {
        let typed = self.typed.iter().find(|(at, _)| *at == path);
        typed.map(|(_, text)| text.as_str())
    }

    fn untype(&mut self, path: Path) {
        self.typed.retain(|(at, _)| *at != path);
    }

    fn shown(&self, unit: Unit) -> Shown {
        Shown::of(unit, self.plan.show.us_units)
    }

    fn effect(&self, path: Path, text: &str) -> Result<Effect, Trouble> {
        let Some(range) = path.range() else {
            return Err(Trouble::Unreadable(EntryError::Empty));
        };
        let entry = match read(text, range.unit, self.shown(range.unit)) {
            Err(EntryError::Empty) if self.plan.is_optional(path) => return Ok(Effect::Clear),
            other => other.map_err(Trouble::Unreadable)?,
        };
        let value = self.in_unit(path, &entry, range.unit);
        let is_block = matches!(path, Path::Bank(_, B::BlockRatedAh));
        if let (true, Some(count), Some(each)) = (is_block, entry.times, entry.each)
            && range::PARALLEL_COUNT.accepts(f64::from(count))
            && range.accepts(each)
        {
            return Ok(Effect::Strings(count, each));
        }
        if range.accepts(value) {
            Ok(Effect::Set(value))
        } else {
            Err(Trouble::OutOfRange { value, range })
        }
    }

    /// Watt-hours typed where ampere-hours stand, by the nominal voltage taken.
    fn in_unit(&self, path: Path, entry: &Entry, unit: Unit) -> f64 {
        match (path, entry.given, unit) {
            (Path::Bank(bank, _), Unit::WattHour, Unit::AmpHour) => {
                let volts = self
                    .plan
                    .banks
                    .get(bank)
                    .map_or(0.0, |bank| bank.reading().volts);
                entry.value / volts
            }
            _ => entry.value,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::path::ModeField;

    const AH: Path = Path::Bank(0, B::BlockRatedAh);
    const DEPTH: Path = Path::Bank(0, B::DepthPercent);

    fn typed(path: Path, text: &str) -> Draft {
        let mut draft = Draft::of(Plan::demo());
        draft.type_text(path, text);
        draft
    }

    #[test]
    fn a_good_text_goes_into_the_plan_and_stays_as_typed() {
        let mut draft = typed(AH, "99,5");
        assert_eq!(draft.plan.banks[0].block_rated_ah.value, 99.5);
        assert_eq!(draft.text(AH), "99,5");
        draft.settle(AH);
        assert_eq!(draft.text(AH), "99.5");
    }

    #[test]
    fn a_bad_text_stays_and_the_number_before_it_too() {
        for bad in ["", "plenty", "0", "99999999", "12 V"] {
            let mut draft = typed(AH, bad);
            assert!(draft.trouble(AH).is_some(), "{bad}");
            draft.settle(AH);
            assert_eq!(draft.text(AH), bad);
            assert_eq!(draft.plan, Plan::demo());
            assert_eq!(draft.troubled(), [AH]);
        }
    }

    #[test]
    fn an_emptied_optional_number_takes_its_default() {
        let mut draft = typed(DEPTH, "");
        assert_eq!(draft.trouble(DEPTH), None);
        assert_eq!(draft.plan.banks[0].depth_percent, None);
        draft.settle(DEPTH);
        assert_eq!(draft.text(DEPTH), "");
    }

    #[test]
    fn strings_and_watt_hours_are_understood_and_echoed() {
        let draft = typed(AH, "3x100");
        assert_eq!(draft.plan.banks[0].parallel_count, 3);
        assert_eq!(draft.plan.banks[0].block_rated_ah.value, 100.0);
        assert_eq!(
            draft.echo(AH),
            Some(Echo::Strings {
                count: 3,
                each: 100.0,
                unit: Unit::AmpHour
            })
        );
        let draft = typed(AH, "2560 Wh");
        assert_eq!(draft.plan.banks[0].block_rated_ah.value, 100.0);
        assert_eq!(
            draft.echo(AH),
            Some(Echo::Value {
                value: 100.0,
                unit: Unit::AmpHour
            })
        );
    }

    #[test]
    fn texts_follow_their_rows() {
        let power = |mode| Path::Mode(0, mode, ModeField::PowerW);
        let mut draft = typed(power(2), "hush");
        draft.type_text(power(0), "loud");
        draft.remove(Path::Modes(0), 0);
        assert_eq!(draft.text(power(1)), "hush");
        assert_eq!(draft.troubled(), [power(1)]);
        assert_eq!(draft.plan.units[0].modes.len(), 2);
    }
}
