//! A plan being typed: the texts are the truth, the last good numbers answer.
//!
//! Nothing typed is ever lost. A text that reads as an accepted number goes into
//! the plan at once; any other stays as it is, beside the last good number, and
//! the answer is then marked stale.
//!
//! From the first key in a field until it is left, what stood there before is
//! remembered: a text may change more than its own number (`2x100` a count, `45 A`
//! what kind of draw it is), and the next text in the same field undoes it.

mod effect;

use super::{
    Draw, Feed, Figure, Plan,
    entry::{EntryError, show, show_taken},
    path::{BankField as B, ModeField as M, Path},
};
use crate::range::{self, Range, Unit};
use effect::Effect;
use serde::{Deserialize, Serialize};

/// A plan and the texts that are not settled into it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Draft {
    pub plan: Plan,
    /// A handful: a list weighs less in the page than a map does.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    typed: Vec<(Path, String)>,
    /// Of the fields being typed in; of those left with a bad text no more.
    #[serde(skip)]
    before: Vec<(Path, Before)>,
    /// On a page with a few fields: these. Empty: every number has its field.
    #[serde(skip)]
    fields: Vec<Path>,
}

/// What a text may change, as it was before the first key.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Before {
    figure: Option<Figure>,
    /// Strings in parallel of the bank that the field is of.
    strings: Option<u32>,
    draw: Option<Draw>,
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
    /// A middle and half the way to both ends, which is its spread.
    Between { value: f64, half: f64, unit: Unit },
    /// Amps, with the voltage that they were taken at. It is told of a draw as long
    /// as it is one in amps: at another voltage they would be others.
    Amps { amps: f64, half: f64, at_v: f64 },
    /// Amps where watts are kept.
    Watts { watts: f64, amps: f64, at_v: f64 },
}

impl Draft {
    #[must_use]
    pub fn of(plan: Plan) -> Self {
        Self {
            plan,
            typed: Vec::new(),
            before: Vec::new(),
            fields: Vec::new(),
        }
    }

    /// The draft of a page that shows the plan's open fields alone: no text may
    /// then change what has no field there.
    #[must_use]
    pub fn of_open_fields(plan: Plan) -> Self {
        Self {
            fields: plan.open_fields(),
            ..Self::of(plan)
        }
    }

    /// The text of a field: as typed, or else the plan's number written out.
    /// Empty for a number left to its default.
    #[must_use]
    pub fn text(&self, path: Path) -> String {
        self.typed_at(path).map(str::to_owned).unwrap_or_else(|| {
            let path = self.plan.kept_at(path);
            self.plan
                .stated(path)
                .map_or_else(String::new, |figure| self.written(path, figure.value))
        })
    }

    /// A number as this field writes it.
    #[must_use]
    pub fn written(&self, path: Path, value: f64) -> String {
        self.plan
            .range(path)
            .map_or_else(String::new, |range| show(value, range.unit, self.plan.show))
    }

    /// The default of a field as it shows it: rounded, since nobody typed it.
    #[must_use]
    pub fn default_text(&self, path: Path) -> String {
        let default = self.plan.assumed(path).zip(self.plan.range(path));
        default.map_or_else(String::new, |(figure, range)| {
            show_taken(figure.value, range.unit, self.plan.show)
        })
    }

    /// The values that the field takes now, in the unit of a bare number in it. A
    /// mode's draw is in watts or in amps, as it stood before the first key.
    #[must_use]
    pub fn range(&self, path: Path) -> Option<Range> {
        match self.draw_at(path) {
            Some(Draw::Power { .. }) => Some(range::DRAW_W),
            Some(Draw::Current { .. }) => Some(range::DRAW_A),
            None => self.plan.range(path),
        }
    }

    /// The values to name where a text is not taken.
    #[must_use]
    pub fn wanted(&self, path: Path) -> Option<Range> {
        match self.trouble(path) {
            Some(Trouble::OutOfRange { range, .. }) => Some(range),
            _ => self.range(path),
        }
    }

    /// The unit that stands beside the field: none where the text has its own.
    #[must_use]
    pub fn unit_beside(&self, path: Path) -> Option<Unit> {
        let has_own = self
            .text(path)
            .contains(|c: char| c.is_ascii_alphabetic() || "°%\"'\u{3a9}\u{2126}".contains(c));
        self.range(path)
            .map(|range| range.unit)
            .filter(|_| !has_own)
    }

    /// Takes what stands in a field now.
    pub fn type_text(&mut self, path: Path, text: &str) {
        let before = self.begin(path);
        match self.typed.iter_mut().find(|(at, _)| *at == path) {
            Some((_, typed)) => text.clone_into(typed),
            None => self.typed.push((path, text.to_owned())),
        }
        if let Ok(effect) = self.effect(path, text) {
            self.put_back(path, &before);
            self.apply(path, effect, &before);
        }
    }

    /// Leaves a field: a text that was taken is from now on written out plainly,
    /// one that was not stays to be corrected.
    pub fn settle(&mut self, path: Path) {
        let taken = self
            .typed_at(path)
            .is_some_and(|text| self.effect(path, text).is_ok());
        if taken {
            self.untype(path);
        }
        self.before.retain(|(at, _)| *at != path);
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
        match self.typed_at(path) {
            Some(text) => self.echo_of(path, text),
            None => match self.draw_at(path)? {
                Draw::Current {
                    current_a,
                    measured_at_v,
                } => Some(Echo::Amps {
                    amps: current_a.value,
                    half: 0.0,
                    at_v: measured_at_v,
                }),
                Draw::Power { .. } => None,
            },
        }
    }

    /// Puts a number in by a tap: what was typed there goes.
    pub fn choose(&mut self, path: Path, value: f64) {
        self.untype(path);
        self.before.retain(|(at, _)| *at != path);
        self.plan.set_number(path, value);
    }

    /// Tells a mode's draw in amps or in watts. A number that somebody said stays what
    /// it is, since the unit was what they got wrong; the usual one is the same draw.
    pub fn draw_in(&mut self, (unit, mode): (usize, usize), amps: bool) {
        let at_v = self.volts_at_unit(unit);
        for field in [M::PowerW, M::CurrentA] {
            let path = Path::Mode(unit, mode, field);
            self.untype(path);
            self.before.retain(|(at, _)| *at != path);
        }
        let Some(mode) = self.plan.mode_mut((unit, mode)) else {
            return;
        };
        mode.draw = match mode.draw {
            Draw::Power { power_w } if amps => Draw::Current {
                current_a: match power_w.if_said() {
                    Some(said) if range::DRAW_A.accepts(said.value) => said,
                    _ => power_w.with(power_w.value / at_v),
                },
                measured_at_v: at_v,
            },
            Draw::Current {
                current_a,
                measured_at_v,
            } if !amps => Draw::Power {
                power_w: match current_a.if_said() {
                    Some(said) if range::DRAW_W.accepts(said.value) => said,
                    _ => current_a.with(current_a.value * measured_at_v),
                },
            },
            draw => draw,
        };
    }

    /// Feeds a unit otherwise. Amps that were taken at the usual voltage of the old side
    /// are taken at that of the new one: 2.2 A behind an inverter are no amps at 12 V.
    pub fn feed(&mut self, unit: usize, feed: Feed) {
        let before_v = self.volts_at_unit(unit);
        self.edit(|plan| {
            if let Some(unit) = plan.units.get_mut(unit) {
                unit.feed = feed;
            }
        });
        let now_v = self.volts_at_unit(unit);
        let modes = self.plan.units.get_mut(unit).map(|unit| &mut unit.modes);
        for mode in modes.into_iter().flatten() {
            if let Draw::Current { measured_at_v, .. } = &mut mode.draw
                && *measured_at_v == before_v
            {
                *measured_at_v = now_v;
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
            let place = |plan: &Plan| {
                let figure = plan.stated(plan.kept_at(path));
                figure.map(|figure| figure.value)
            };
            place(before) == place(plan) && (place(plan).is_some() || plan.is_optional(path))
        });
        let typed = &self.typed;
        self.before
            .retain(|(path, _)| typed.iter().any(|(at, _)| at == path));
    }

    /// Takes a row out of a list with all that refers to it, its texts among them
    /// (see [`Plan::remove_row`]).
    pub fn remove(&mut self, list: Path, row: usize) {
        self.before.clear();
        for gone in self.plan.remove_row(list, row) {
            self.typed = std::mem::take(&mut self.typed)
                .into_iter()
                .filter_map(|(path, text)| Some((path.without_row(gone)?, text)))
                .collect();
        }
    }

    /// A mode's draw as a bare number is meant: before the first key, or now.
    fn draw_at(&self, path: Path) -> Option<Draw> {
        let (unit, mode) = draw_of(path)?;
        match self.before.iter().find(|(at, _)| *at == path) {
            Some((_, before)) => before.draw,
            None => Some(self.plan.mode(unit, mode)?.draw),
        }
    }

    fn typed_at(&self, path: Path) -> Option<&str> {
        let typed = self.typed.iter().find(|(at, _)| *at == path);
        typed.map(|(_, text)| text.as_str())
    }

    fn untype(&mut self, path: Path) {
        self.typed.retain(|(at, _)| *at != path);
    }

    /// What stood there before the first key in a field; this may be it.
    fn begin(&mut self, path: Path) -> Before {
        if let Some((_, before)) = self.before.iter().find(|(at, _)| *at == path) {
            return *before;
        }
        let before = Before {
            figure: self.plan.stated(self.plan.kept_at(path)),
            strings: match path {
                Path::Bank(bank, B::BatteryRatedAh) => {
                    self.plan.banks.get(bank).map(|bank| bank.parallel_count)
                }
                _ => None,
            },
            draw: draw_of(path)
                .and_then(|(unit, mode)| self.plan.mode(unit, mode))
                .map(|mode| mode.draw),
        };
        self.before.push((path, before));
        before
    }

    /// Undoes what earlier texts of the field did beside its own number.
    fn put_back(&mut self, path: Path, before: &Before) {
        if let (Path::Bank(bank, _), Some(strings)) = (path, before.strings)
            && let Some(bank) = self.plan.banks.get_mut(bank)
        {
            bank.parallel_count = strings;
        }
        if let (Some(at), Some(draw)) = (draw_of(path), before.draw)
            && let Some(mode) = self.plan.mode_mut(at)
        {
            mode.draw = draw;
        }
    }

    fn apply(&mut self, path: Path, effect: Effect, before: &Before) {
        match effect {
            Effect::Clear => {
                self.plan.clear(self.plan.kept_at(path));
            }
            Effect::Set { value, half } => {
                let figure = as_typed(path, value, half, before.figure);
                self.plan.set_figure(path, figure);
            }
            Effect::Strings(count, each) => {
                let figure = as_typed(path, each, None, before.figure);
                self.plan.set_figure(path, figure);
                if let Path::Bank(bank, _) = path {
                    let count_at = Path::Bank(bank, B::ParallelCount);
                    self.plan.set_number(count_at, f64::from(count));
                    self.untype(count_at);
                }
            }
            Effect::Draw { value, half, at_v } => {
                let figure = as_typed(path, value, half, before.figure);
                let mode = draw_of(path).and_then(|at| self.plan.mode_mut(at));
                if let Some(mode) = mode {
                    mode.draw = match at_v {
                        None => Draw::Power { power_w: figure },
                        Some(measured_at_v) => Draw::Current {
                            current_a: figure,
                            measured_at_v,
                        },
                    };
                }
            }
        }
    }
}

/// The mode that a draw's field is of, in watts or in amps.
const fn draw_of(path: Path) -> Option<(usize, usize)> {
    match path {
        Path::Mode(unit, mode, M::PowerW | M::CurrentA) => Some((unit, mode)),
        _ => None,
    }
}

/// A number as somebody typed it: no guess any more, and with the spread of another
/// number no more.
fn as_typed(path: Path, value: f64, half: Option<f64>, before: Option<Figure>) -> Figure {
    let figure = before.unwrap_or(Figure::label(value));
    let spread_percent = match half {
        Some(half) => Some((100.0 * half / value).abs()),
        None => figure.spread_percent.filter(|_| figure.value == value),
    };
    Figure {
        value,
        from: path.origin_typed(figure.from),
        spread_percent,
    }
}

#[cfg(test)]
mod tests;
