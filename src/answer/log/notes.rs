//! A run noted by hand, in numbers for a page.

use super::{LogMeter, StretchFigures};
use crate::{
    physics::bench::{
        instrument::Kind,
        measured::Measured,
        notebook::{Entry, Meters, Noted, figures},
    },
    plan::{
        Show,
        entry::{EntryError, read},
    },
    quantity::{amps, minutes, volts, watts},
    range::{self, Range},
};

/// A number of a note.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoteField {
    /// Bank volts under load, at the start.
    StartV,
    /// The same at the end.
    EndV,
    /// Amps out of the bank, at the start.
    StartA,
    /// The same at the end.
    EndA,
    /// Mean watts over the run.
    AverageW,
    /// How long it ran.
    Minutes,
}

/// The numbers noted, in the order of [`NoteField::ALL`].
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Note([Option<f64>; 6]);

/// What a note makes; each number with its expanded uncertainty where one can be claimed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoteFigures {
    /// As noted.
    pub hours: f64,
    /// Mean draw.
    pub watts: (f64, Option<f64>),
    /// Charge, where amps were noted or follow.
    pub ah: Option<(f64, Option<f64>)>,
    /// Energy.
    pub wh: Option<(f64, Option<f64>)>,
}

/// No number, or one outside its range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoNumber;

impl NoteField {
    /// In the order in which they are asked.
    pub const ALL: [Self; 6] = [
        Self::StartV,
        Self::EndV,
        Self::StartA,
        Self::EndA,
        Self::AverageW,
        Self::Minutes,
    ];

    /// For addresses in a page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::StartV => "start-v",
            Self::EndV => "end-v",
            Self::StartA => "start-a",
            Self::EndA => "end-a",
            Self::AverageW => "average-w",
            Self::Minutes => "min",
        }
    }

    /// The values that may be used.
    #[must_use]
    pub const fn range(self) -> Range {
        match self {
            Self::StartV | Self::EndV => range::SUPPLY_V,
            Self::StartA | Self::EndA => range::DRAW_A,
            Self::AverageW => range::DRAW_W,
            Self::Minutes => range::MEASURED_MIN,
        }
    }

    /// A text of it; nothing for an empty one.
    ///
    /// # Errors
    /// [`NoNumber`].
    pub fn read(self, text: &str) -> Result<Option<f64>, NoNumber> {
        let range = self.range();
        match read(text, range.unit, Show::METRIC) {
            Err(EntryError::Empty) => Ok(None),
            Ok(entry) if range.accepts(entry.value) => Ok(Some(entry.value)),
            _ => Err(NoNumber),
        }
    }
}

impl Note {
    /// A number in its [`NoteField::range`], or none.
    pub fn set(&mut self, field: NoteField, value: Option<f64>) {
        self.0[field as usize] = value;
    }

    fn get(&self, field: NoteField) -> Option<f64> {
        self.0[field as usize]
    }
}

/// A watch read to the minute.
const CLOCK_LIMIT_MIN: f64 = 1.0;

/// The figures of a note: a multimeter, and a clamp or a watt meter, at their
/// usual limits. `None` until minutes and a draw are there: watts, or volts and amps. A
/// reading at one end stands for both.
#[must_use]
pub fn noted(note: &Note) -> Option<NoteFigures> {
    use NoteField as N;
    let pair = |start: N, end: N| {
        (
            note.get(start).or(note.get(end)),
            note.get(end).or(note.get(start)),
        )
    };
    let (v, a) = (pair(N::StartV, N::EndV), pair(N::StartA, N::EndA));
    let minutes_noted = note.get(N::Minutes)?;
    let entry = Entry {
        lasted: minutes(minutes_noted),
        lasted_limit: minutes(CLOCK_LIMIT_MIN),
        volts: Noted {
            start: v.0.map(volts),
            end: v.1.map(volts),
            average: None,
        },
        amps: Noted {
            start: a.0.map(amps),
            end: a.1.map(amps),
            average: None,
        },
        watts: Noted {
            average: note.get(N::AverageW).map(watts),
            ..Noted::default()
        },
    };
    let clamp = LogMeter {
        is_clamp: true,
        ..LogMeter::default()
    };
    let meters = Meters {
        volts: Kind::Multimeter.usual(0.0),
        amps: clamp.amps(),
        watts: Kind::PlugInWattMeter.usual(0.0),
    };
    let figures = figures(&entry, &meters)?;
    let of = |m: Measured| (m.value, m.expanded());
    Some(NoteFigures {
        hours: minutes_noted / 60.0,
        watts: figures.watts.map(of)?,
        ah: figures.charge_ah.map(of),
        wh: figures.energy_wh.map(of),
    })
}

impl NoteFigures {
    /// As a stretch of a log, for its way into the plan.
    #[must_use]
    pub fn as_stretch(&self) -> StretchFigures {
        StretchFigures {
            from_h: 0.0,
            to_h: self.hours,
            draw: self.watts.0,
            is_amps: false,
            expanded: self.watts.1,
            least: self.watts.0,
            most: self.watts.0,
            amps: None,
            volts: None,
            ah: None,
            wh: None,
        }
    }
}
