//! Reads the log of any meter: separated text to samples in time.
//!
//! The reader knows no maker's format. It looks for two rows of numbers below
//! each other, takes the heading above them, guesses what each column holds and
//! says why; the caller can overrule each guess. What cannot be read is refused
//! by line and column: better no total than a wrong one.
//!
//! Work comes in slices, so that a page stays alive while 200,000 rows are read.
//!
//! ```
//! use till_morning::physics::bench::import::{Importer, Options, Progress};
//! let file = b"elapsed;bank V;draw A\n0:00;13,2;10,0\n0:30;13,1;10,0\n1:00;13,0;10,0\n";
//! let mut importer = Importer::new(file, Options::default())?;
//! while importer.step(5_000)? != Progress::Done {}
//! let log = importer.finish()?;
//! assert_eq!(log.samples.len(), 3);
//! assert_eq!(log.samples[1].time_s, 1800.0);
//! # Ok::<(), till_morning::physics::bench::import::Refusal>(())
//! ```

mod cells;
mod columns;
mod decode;
mod head;
mod heading;
mod number;
mod order;
mod refusal;
mod row;
mod stamp;
#[cfg(test)]
mod tests;
mod unit;

pub use columns::{Column, Given};
pub use decode::{Encoding, MOST_BYTES};
pub use heading::Why;
pub use number::NumberStyle;
pub use order::Ordered;
pub use refusal::{Fault, Refusal};
pub use stamp::DateOrder;
pub use unit::{Role, Unit};

use super::log::{ClockTimes, Log, Notes, Sample, Sense};
use crate::quantity::Time;
use row::{Kind, RowReader};

/// The most rows of data that are read.
pub const MOST_ROWS: usize = 200_000;

/// What stands between cells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Separator {
    /// `,`
    Comma,
    /// `;`
    Semicolon,
    /// A tabulator.
    Tab,
}

impl Separator {
    fn byte(self) -> u8 {
        match self {
            Separator::Comma => b',',
            Separator::Semicolon => b';',
            Separator::Tab => b'\t',
        }
    }

    fn of(byte: u8) -> Self {
        match byte {
            b';' => Separator::Semicolon,
            b'\t' => Separator::Tab,
            _ => Separator::Comma,
        }
    }
}

/// The caller's say over what is guessed; the default guesses all.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Options {
    /// What stands between cells.
    pub separator: Option<Separator>,
    /// How numbers are written.
    pub numbers: Option<NumberStyle>,
    /// The order of day and month.
    pub dates: Option<DateOrder>,
    /// The line of the heading, from one; data start below it.
    pub heading_line: Option<usize>,
    /// Columns spoken for.
    pub columns: Vec<Given>,
    /// Two rows further apart than this have a gap between them. By default
    /// 2.5 times the usual distance around the place.
    pub gap_after: Option<Time>,
    /// Which sign of the amperes and watts is the draw.
    pub sense: Sense,
}

/// How far the reading is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Progress {
    /// Rows read so far, and the share of the text eaten.
    More {
        /// Rows so far.
        rows: usize,
        /// From 0 to 1.
        share: f64,
    },
    /// Everything is read; call [`Importer::finish`].
    Done,
}

/// How the file is laid out, as found or as told.
#[derive(Debug, Clone, PartialEq)]
pub struct Layout {
    /// How the bytes were read.
    pub encoding: Encoding,
    /// What stands between cells.
    pub separator: Separator,
    /// How numbers are written.
    pub numbers: NumberStyle,
    /// The order of day and month, where dates are written with strokes.
    pub dates: DateOrder,
    /// Line of the heading, from one.
    pub heading_line: Option<usize>,
    /// The columns.
    pub columns: Vec<Column>,
}

/// A file being read.
#[derive(Debug, Clone)]
pub struct Importer {
    text: String,
    at: usize,
    line: usize,
    layout: Layout,
    reader: RowReader,
    samples: Vec<Sample>,
    headings_again: Vec<usize>,
    notes: Notes,
    options: Options,
}

impl Importer {
    /// Finds the table and guesses its columns; no row is read yet.
    ///
    /// # Errors
    ///
    /// A file that is too large, holds no table, or lacks a time or a flow.
    pub fn new(bytes: &[u8], options: Options) -> Result<Self, Refusal> {
        let (text, encoding) = decode::decode(bytes)?;
        let head = head::find(&text, &options)?;
        let all_cells = || {
            head.probe
                .iter()
                .flat_map(|row| &row.cells)
                .map(String::as_str)
        };
        let numbers = options
            .numbers
            .unwrap_or_else(|| number::detect_style(all_cells()));
        let dates = options.dates.unwrap_or_else(|| columns::date_order(&head));
        let columns = columns::guess(&head, numbers, dates, &options.columns)?;
        let reader = RowReader::new(head.separator, columns.clone(), numbers, dates);
        let layout = Layout {
            encoding,
            separator: Separator::of(head.separator),
            numbers,
            dates,
            heading_line: head.heading_line,
            columns,
        };
        Ok(Self {
            text,
            at: head.data_at,
            line: head.data_line,
            layout,
            reader,
            samples: Vec::new(),
            headings_again: Vec::new(),
            notes: Notes::default(),
            options,
        })
    }

    /// The layout as it is read: to show, and to overrule in [`Options`].
    #[must_use]
    pub fn layout(&self) -> &Layout {
        &self.layout
    }

    /// Reads up to so many lines more.
    ///
    /// # Errors
    ///
    /// The first cell that cannot be read, or [`Fault::TooManyRows`].
    pub fn step(&mut self, most_lines: usize) -> Result<Progress, Refusal> {
        for _ in 0..most_lines {
            let Some(rest) = self.text.get(self.at..).filter(|rest| !rest.is_empty()) else {
                return Ok(Progress::Done);
            };
            let end = rest.find('\n');
            let eaten = end.map_or(rest.len(), |end| end + 1);
            let text = rest[..end.unwrap_or(rest.len())].trim_end_matches('\r');
            let kind = self.reader.read(self.line, text)?;
            // The last row of a file cut off while it was written.
            let short = end.is_none() && self.reader.width() < self.layout.columns.len();
            if short && matches!(kind, Kind::Data(_)) {
                self.notes.cut_short = true;
            } else {
                self.take(kind)?;
            }
            self.at += eaten;
            self.line += 1;
        }
        let share = self.at as f64 / self.text.len().max(1) as f64;
        Ok(Progress::More {
            rows: self.samples.len(),
            share,
        })
    }

    fn take(&mut self, kind: Kind) -> Result<(), Refusal> {
        match kind {
            Kind::Blank => {}
            Kind::HeadingAgain => self.headings_again.push(self.line),
            Kind::Remark => self.notes.remark_lines += 1,
            Kind::NoTime => self.notes.rows_without_time += 1,
            Kind::Data(sample) => {
                if self.samples.len() >= MOST_ROWS {
                    let fault = Fault::TooManyRows { most: MOST_ROWS };
                    return Err(Refusal::at(self.line, 1, fault));
                }
                self.samples.push(sample);
            }
        }
        Ok(())
    }

    fn clock_times(&self, time_column: Option<usize>) -> ClockTimes {
        let unit = time_column.and_then(|at| self.layout.columns.get(at));
        match unit.map(|column| column.unit) {
            Some(Unit::Calendar) if self.reader.zoned == Some(true) => ClockTimes::Universal,
            Some(Unit::EpochSeconds | Unit::EpochMilliseconds) => ClockTimes::Universal,
            Some(Unit::Calendar | Unit::Clock) => ClockTimes::Local,
            _ => ClockTimes::Elapsed,
        }
    }

    /// The log, its rows in order of time.
    ///
    /// # Errors
    ///
    /// [`Fault::TimeOverlaps`], [`Fault::TooFewRows`].
    pub fn finish(self) -> Result<Log, Refusal> {
        self.in_order()?.log()
    }

    /// The first half of [`Importer::finish`].
    ///
    /// # Errors
    ///
    /// As there.
    pub fn in_order(mut self) -> Result<Ordered, Refusal> {
        let last_line = self.line.saturating_sub(1).max(1);
        let time_column = self
            .layout
            .columns
            .iter()
            .position(|c| c.role == Role::Time);
        self.notes.missing_cells = self.reader.missing_cells;
        self.notes.counters = self.reader.counters.clone();
        self.notes.clock = self.clock_times(time_column);
        let flows = |s: &&Sample| s.amps.is_some() || s.watts.is_some();
        if self.samples.iter().filter(flows).nth(1).is_none() {
            return Err(Refusal::at(last_line, 1, Fault::TooFewRows));
        }
        let samples = order::put_in_order(
            self.samples,
            &self.headings_again,
            time_column.unwrap_or(0),
            &mut self.notes,
        )?;
        Ok(Ordered {
            samples,
            notes: self.notes,
            gap_after: self.options.gap_after,
            sense: self.options.sense,
            last_line,
        })
    }
}

/// Reads a whole file at once: for tests and for hosts that may block.
///
/// # Errors
///
/// As [`Importer::new`], [`Importer::step`] and [`Importer::finish`].
pub fn read_all(bytes: &[u8], options: Options) -> Result<(Log, Layout), Refusal> {
    let mut importer = Importer::new(bytes, options)?;
    while importer.step(10_000)? != Progress::Done {}
    let layout = importer.layout().clone();
    Ok((importer.finish()?, layout))
}

/// The headings of a file whose columns could not be guessed, for a person to say
/// what they are; none of them is read yet.
///
/// # Errors
///
/// A file that is too large or holds no table.
pub fn headings(bytes: &[u8], options: &Options) -> Result<Vec<Column>, Refusal> {
    let (text, _) = decode::decode(bytes)?;
    let head = head::find(&text, options)?;
    let column = |at: usize| Column {
        heading: head.headings.get(at).cloned().unwrap_or_default(),
        role: Role::Ignored,
        unit: Unit::None,
        why: Why::NothingFits,
        also_fits: None,
    };
    Ok((0..head.width).map(column).collect())
}
