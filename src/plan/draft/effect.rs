//! What a text does to the plan, and how that is told.

use super::{Draft, Echo, Trouble, draw_of};
use crate::{
    plan::{
        Draw, Feed, Path,
        entry::{Entry, EntryError, Reading, Spread, read_spread, split_volts},
        path::{BankField as B, ModeField as M},
    },
    range::{self, Range, Unit},
};

/// What a text does to the plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Effect {
    Clear,
    /// A number, and half the way between its ends where two were typed.
    Set {
        value: f64,
        half: Option<f64>,
    },
    /// `2x100` in a battery's capacity: so many strings in parallel.
    Strings(u32, f64),
    /// A mode's draw, in amps where a voltage is named.
    Draw {
        value: f64,
        half: Option<f64>,
        at_v: Option<f64>,
    },
}

/// The largest spread that a figure may have.
const MOST_SPREAD: Range = range::SPREAD_PERCENT;

impl Draft {
    pub(super) fn effect(&self, path: Path, text: &str) -> Result<Effect, Trouble> {
        if let Some(at) = draw_of(path) {
            return self.draw_effect(path, at, text);
        }
        let Some(range) = self.plan.range(path) else {
            return Err(Trouble::Unreadable(EntryError::Empty));
        };
        if let Some((amps, at_v)) = self.amps_for_watts(path, text, range.unit) {
            return in_range(amps * at_v, None, range);
        }
        let read = match read_spread(text, range.unit, self.plan.show) {
            Err(EntryError::Empty) if self.plan.is_optional(path) => return Ok(Effect::Clear),
            other => other.map_err(Trouble::Unreadable)?,
        };
        if read.half.is_some() && !self.plan.has_origin(path) {
            // A choice or a count has no spread.
            return Err(Trouble::Unreadable(EntryError::NotANumber));
        }
        let per_unit = self.per_unit(path, &read.entry, range.unit);
        if let Some(strings) = self.strings(path, &read.entry, per_unit, range) {
            return Ok(strings);
        }
        let half = read.half.map(|half| half * per_unit);
        in_range(read.entry.value * per_unit, half, range)
    }

    /// So many strings, where a product is typed and their count has a field.
    fn strings(&self, path: Path, entry: &Entry, per_unit: f64, range: Range) -> Option<Effect> {
        let Path::Bank(bank, B::BatteryRatedAh) = path else {
            return None;
        };
        let count_at = Path::Bank(bank, B::ParallelCount);
        let is_shown = self.fields.is_empty() || self.fields.contains(&count_at);
        let (count, each) = entry.times.zip(entry.each.map(|each| each * per_unit))?;
        let taken = range::PARALLEL_COUNT.accepts(f64::from(count)) && range.accepts(each);
        (is_shown && taken).then_some(Effect::Strings(count, each))
    }

    /// A mode's draw: watts or amps by the unit typed, a bare number as the draw
    /// stood before the first key.
    fn draw_effect(&self, path: Path, at: (usize, usize), text: &str) -> Result<Effect, Trouble> {
        if text.trim().is_empty() {
            return Ok(Effect::Clear);
        }
        let (text, said_v) = split_volts(text).map_err(Trouble::Unreadable)?;
        let bare = self.range(path).unwrap_or(range::DRAW_W);
        let (read, range) = self.read_draw(text, bare)?;
        if range.unit == Unit::Watt {
            // Watts are the same at any voltage: one said with them is a mistake.
            return match said_v {
                None => draw_in_range(&read, None, range),
                Some(_) => Err(Trouble::Unreadable(EntryError::OtherUnit {
                    given: Unit::Volt,
                })),
            };
        }
        let at_v = said_v.unwrap_or_else(|| self.volts_of_draw(path, at));
        if !range::SUPPLY_V.accepts(at_v) {
            return Err(Trouble::OutOfRange {
                value: at_v,
                range: range::SUPPLY_V,
            });
        }
        draw_in_range(&read, Some(at_v), range)
    }

    fn read_draw(&self, text: &str, bare: Range) -> Result<(Spread, Range), Trouble> {
        let read = |range: Range| read_spread(text, range.unit, self.plan.show);
        let (read, range) = match read(bare) {
            Err(EntryError::OtherUnit { given: Unit::Amp }) => (read(range::DRAW_A), range::DRAW_A),
            Err(EntryError::OtherUnit { given: Unit::Watt }) => {
                (read(range::DRAW_W), range::DRAW_W)
            }
            read => (read, bare),
        };
        Ok((read.map_err(Trouble::Unreadable)?, range))
    }

    /// The voltage that amps of a mode are taken at where none is said: the one said
    /// before, a converter's output, or the bank's.
    fn volts_of_draw(&self, path: Path, (unit, _): (usize, usize)) -> f64 {
        match self.draw_at(path) {
            Some(Draw::Current { measured_at_v, .. }) => measured_at_v,
            _ => self.volts_at_unit(unit),
        }
    }

    /// What a unit's amps are taken at where nobody says: the bank's volts, a converter's
    /// output, or the mains voltage of the place behind an inverter.
    pub(super) fn volts_at_unit(&self, unit: usize) -> f64 {
        match self.plan.units.get(unit).map(|unit| unit.feed) {
            Some(Feed::DcDc { output_v, .. }) => output_v,
            Some(Feed::Inverter { .. }) => self.plan.show.mains_v(),
            _ => self.volts_of_bank(),
        }
    }

    fn volts_of_bank(&self) -> f64 {
        self.plan
            .banks
            .first()
            .map_or(12.0, |bank| bank.nominal_v())
    }

    /// Amps typed where a load's or a standby's watts are kept, and their voltage.
    fn amps_for_watts(&self, path: Path, text: &str, unit: Unit) -> Option<(f64, f64)> {
        let at_v = match path {
            Path::Load(_) => self.volts_of_bank(),
            Path::Mode(unit, _, M::StandbyW) => self.volts_at_unit(unit),
            _ => return None,
        };
        let (text, said_v) = split_volts(text).ok()?;
        let other = read_spread(text, unit, self.plan.show).err()?;
        let is_amps = other == EntryError::OtherUnit { given: Unit::Amp };
        let amps = read_spread(text, Unit::Amp, self.plan.show).ok()?;
        (is_amps && amps.half.is_none()).then(|| (amps.entry.value, said_v.unwrap_or(at_v)))
    }

    /// What one of the typed unit is in the field's: watt-hours typed where
    /// ampere-hours stand, by the nominal voltage taken.
    fn per_unit(&self, path: Path, entry: &Entry, unit: Unit) -> f64 {
        match (path, entry.given, unit) {
            (Path::Bank(bank, _), Unit::WattHour, Unit::AmpHour) => {
                let bank = self.plan.banks.get(bank);
                1.0 / bank.map_or(0.0, |bank| bank.reading().volts)
            }
            _ => 1.0,
        }
    }

    pub(super) fn echo_of(&self, path: Path, text: &str) -> Option<Echo> {
        let unit = self.range(path)?.unit;
        match self.effect(path, text).ok()? {
            Effect::Clear => None,
            Effect::Strings(count, each) => Some(Echo::Strings { count, each, unit }),
            Effect::Set {
                value,
                half: Some(half),
            } => Some(Echo::Between { value, half, unit }),
            Effect::Set { value, half: None } => {
                if let Some((amps, at_v)) = self.amps_for_watts(path, text, unit) {
                    return Some(Echo::Watts {
                        watts: value,
                        amps,
                        at_v,
                    });
                }
                let entry = read_spread(text, unit, self.plan.show).ok()?.entry;
                let plain = entry.reading == Reading::Plain && entry.given == unit;
                (!plain).then_some(Echo::Value { value, unit })
            }
            Effect::Draw {
                value,
                half,
                at_v: Some(at_v),
            } => Some(Echo::Amps {
                amps: value,
                half: half.unwrap_or(0.0),
                at_v,
            }),
            Effect::Draw { value, half, .. } => {
                let unit = Unit::Watt;
                if let Some(half) = half {
                    return Some(Echo::Between { value, half, unit });
                }
                let entry = read_spread(text, unit, self.plan.show).ok()?.entry;
                (entry.reading != Reading::Plain).then_some(Echo::Value { value, unit })
            }
        }
    }
}

/// The number if it may be used, and its spread if it has one that may be.
fn accepted(value: f64, half: Option<f64>, range: Range) -> Result<(), Trouble> {
    let spread = half.map_or(0.0, |half| (100.0 * half / value).abs());
    if !range.accepts(value) {
        Err(Trouble::OutOfRange { value, range })
    } else if !MOST_SPREAD.accepts(spread) {
        Err(Trouble::Unreadable(EntryError::NotANumber))
    } else {
        Ok(())
    }
}

fn in_range(value: f64, half: Option<f64>, range: Range) -> Result<Effect, Trouble> {
    accepted(value, half, range)?;
    Ok(Effect::Set { value, half })
}

fn draw_in_range(read: &Spread, at_v: Option<f64>, range: Range) -> Result<Effect, Trouble> {
    let (value, half) = (read.entry.value, read.half);
    accepted(value, half, range)?;
    Ok(Effect::Draw { value, half, at_v })
}
