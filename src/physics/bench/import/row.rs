//! One row of data to a sample.

use super::cells::{Splitter, quote_is_open};
use super::columns::Column;
use super::number::{NumberStyle, Reading};
use super::refusal::{Fault, Refusal};
use super::stamp::{self, DateOrder};
use super::unit::{Role, Unit, accepted, spelled};
use crate::physics::bench::log::{CounterChange, Sample};

/// What a line turned out to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Kind {
    /// Nothing on it.
    Blank,
    /// The heading once more: the logger wrote it again.
    HeadingAgain,
    /// Words and no number in any used column.
    Remark,
    /// Readings, but no time to put them at.
    NoTime,
    /// A row of data.
    Data(Sample),
}

/// Reads rows by a settled layout.
#[derive(Debug, Clone)]
pub struct RowReader {
    splitter: Splitter,
    columns: Vec<Column>,
    style: NumberStyle,
    order: DateOrder,
    /// Whether its times name their zone, once one was read.
    pub zoned: Option<bool>,
    last_clock_s: Option<f64>,
    days: f64,
    /// Cells of used columns that were empty.
    pub missing_cells: usize,
    /// First and last of each counter column.
    pub counters: Vec<CounterChange>,
}

impl RowReader {
    /// A reader for this layout.
    #[must_use]
    pub fn new(separator: u8, columns: Vec<Column>, style: NumberStyle, order: DateOrder) -> Self {
        let counters = columns
            .iter()
            .enumerate()
            .filter(|(_, c)| matches!(c.role, Role::AmpHours | Role::WattHours))
            .map(|(column, c)| CounterChange {
                column,
                is_energy: c.role == Role::WattHours,
                first: None,
                last: None,
                rose: false,
                fell: false,
            })
            .collect();
        Self {
            splitter: Splitter::new(separator),
            columns,
            style,
            order,
            zoned: None,
            last_clock_s: None,
            days: 0.0,
            missing_cells: 0,
            counters,
        }
    }

    /// Cells on the line last read.
    #[must_use]
    pub fn width(&self) -> usize {
        self.splitter.all().count()
    }

    /// Reads one line.
    ///
    /// # Errors
    ///
    /// The cell that cannot be read, named by line and column.
    pub fn read(&mut self, line: usize, text: &str) -> Result<Kind, Refusal> {
        self.splitter.split(text);
        if self.splitter.all().all(str::is_empty) {
            return Ok(Kind::Blank);
        }
        let headings = self.columns.iter().map(|c| c.heading.as_str());
        if self.splitter.all().eq(headings) {
            return Ok(Kind::HeadingAgain);
        }
        if quote_is_open(text) {
            let column = self.splitter.all().count().max(1);
            return Err(Refusal::at(line, column, Fault::OpenQuote));
        }
        if self.is_remark() {
            return Ok(Kind::Remark);
        }
        self.check_width(line)?;
        let time_s = self.time(line)?;
        let sample = self.readings(line)?;
        Ok(match time_s {
            Some(time_s) => Kind::Data(Sample {
                time_s,
                line,
                ..sample
            }),
            None => Kind::NoTime,
        })
    }

    /// Whether no used cell holds a digit: an end mark, a unit row, a note. There is
    /// then nothing in the row to lose.
    fn is_remark(&self) -> bool {
        let mut used = self
            .columns
            .iter()
            .enumerate()
            .filter(|(_, c)| c.role != Role::Ignored);
        !used.any(|(at, _)| self.splitter.cell(at).bytes().any(|b| b.is_ascii_digit()))
    }

    /// Refuses cells past the last column: they mean that a separator stands inside
    /// a number, and every column after it would be misread.
    fn check_width(&self, line: usize) -> Result<(), Refusal> {
        let most = self.columns.len();
        let past = self
            .splitter
            .all()
            .enumerate()
            .skip(most)
            .find(|(_, cell)| !cell.is_empty());
        match past {
            Some((at, _)) => Err(Refusal::at(line, at + 1, Fault::TooManyCells { most })),
            None => Ok(()),
        }
    }

    /// The readings of the row last split; its time is seen to apart.
    fn readings(&mut self, line: usize) -> Result<Sample, Refusal> {
        let mut sample = Sample::default();
        for at in 0..self.columns.len() {
            let role = self.columns[at].role;
            if matches!(role, Role::Time | Role::Date | Role::Ignored) {
                continue;
            }
            let value = self.number(line, at)?;
            self.missing_cells += usize::from(value.is_none());
            match role {
                Role::Volts => sample.volts = value,
                Role::Amps => sample.amps = value,
                Role::Watts => sample.watts = value,
                Role::Temperature => sample.celsius = value,
                Role::Outdoors => sample.outdoor_c = value,
                _ => self.count(at, value),
            }
        }
        Ok(sample)
    }

    /// Takes a reading of a counter column into its change.
    fn count(&mut self, at: usize, value: Option<f64>) {
        let counter = self.counters.iter_mut().find(|c| c.column == at);
        if let (Some(counter), Some(value)) = (counter, value) {
            counter.count(value);
        }
    }

    /// One cell in the base unit of its role, `None` where it is empty.
    /// Refused: what is no number, a unit of another quantity, a value past all
    /// reason.
    fn number(&self, line: usize, at: usize) -> Result<Option<f64>, Refusal> {
        let Column { role, unit, .. } = self.columns[at];
        let refuse = |fault| Err(Refusal::at(line, at + 1, fault));
        let (number, behind) = match self.style.read(self.splitter.cell(at)) {
            Reading::Missing => return Ok(None),
            Reading::Number(number, behind) => (number, behind),
            Reading::Other => return refuse(Fault::NotANumber),
        };
        // A unit in the cell outranks the heading: some loggers scale by row.
        let unit = match (behind, spelled(behind)) {
            ("", _) => unit,
            (_, Some((named, unit))) if named == role.quantity() => unit,
            (_, Some(_)) => return refuse(Fault::WrongUnit),
            (_, None) => return refuse(Fault::NotANumber),
        };
        let (least, most) = accepted(role);
        let value = unit.to_base(number);
        if !(least..=most).contains(&value) {
            return refuse(Fault::OutOfRange { least, most });
        }
        Ok(Some(value))
    }

    /// Seconds of the row, or `None` where the cell is empty.
    fn time(&mut self, line: usize) -> Result<Option<f64>, Refusal> {
        let Some(at) = self.columns.iter().position(|c| c.role == Role::Time) else {
            return Ok(None);
        };
        let cell = self.splitter.cell(at);
        if self.style.read(cell) == Reading::Missing {
            return Ok(None);
        }
        let bad = Refusal::at(line, at + 1, Fault::NotATime);
        let unit = self.columns[at].unit;
        let seconds = match unit {
            Unit::Calendar => {
                let moment = stamp::moment(cell, self.order).ok_or(bad)?;
                if *self.zoned.get_or_insert(moment.zoned) != moment.zoned {
                    return Err(Refusal::at(line, at + 1, Fault::MixedZones));
                }
                moment.seconds
            }
            Unit::Clock => {
                let seconds = stamp::clock(cell)
                    .filter(|c| c.first < 24.0)
                    .ok_or(bad)?
                    .seconds();
                return self.day_of(line, seconds).map(Some);
            }
            Unit::HoursMinutes => stamp::clock(cell).ok_or(bad)?.seconds(),
            Unit::MinutesSeconds => stamp::clock(cell).ok_or(bad)?.seconds_short(),
            _ => self.counted(cell, unit).ok_or(bad)?,
        };
        Ok(Some(seconds))
    }

    /// Seconds from a time that is a plain number, its own unit first.
    fn counted(&self, cell: &str, unit: Unit) -> Option<f64> {
        let Reading::Number(number, behind) = self.style.read(cell) else {
            return None;
        };
        let unit = match (behind, spelled(behind)) {
            ("", _) => unit,
            (_, Some((Role::Time, unit))) => unit,
            _ => return None,
        };
        let seconds = unit.to_base(number);
        // Far past any date: 1e11 s is the year 5138.
        (seconds.abs() < 1e11).then_some(seconds)
    }

    /// A clock reading on its day: from the date column, or counted through
    /// midnight. A step back of more than half a day is midnight; a step ahead
    /// of nearly a whole one is a row of the day before that came late.
    fn day_of(&mut self, line: usize, clock_s: f64) -> Result<f64, Refusal> {
        const DAY: f64 = 86_400.0;
        if let Some(at) = self.columns.iter().position(|c| c.role == Role::Date) {
            let bad = Refusal::at(line, at + 1, Fault::NotATime);
            let day = stamp::date(self.splitter.cell(at), self.order).ok_or(bad)?;
            return Ok(day * DAY + clock_s);
        }
        let step = clock_s - self.last_clock_s.unwrap_or(clock_s);
        if step > DAY - 3600.0 && self.days > 0.0 {
            return Ok((self.days - 1.0) * DAY + clock_s);
        }
        if step < -DAY / 2.0 {
            self.days += 1.0;
        }
        self.last_clock_s = Some(clock_s);
        Ok(self.days * DAY + clock_s)
    }
}
