//! Finds the table in a file: separator, heading, first row of data.

use super::Options;
use super::cells::{Splitter, quote_is_open};
use super::number::is_number_like;
use super::refusal::{Fault, Refusal};
use super::stamp;

/// Lines looked at before the columns are guessed.
const HEAD_LINES: usize = 400;
/// The last lines of the data are looked at too.
const TAIL_LINES: usize = 40;
/// They are sought in so many bytes at the end.
const TAIL_BYTES: usize = 16_384;
/// A heading may be cut over a few lines inside quotation marks.
const MOST_JOINED: usize = 5;

/// A line cut into cells.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Line of the text, from one.
    pub line: usize,
    /// Where the line starts, in bytes.
    pub starts_at: usize,
    /// Its cells.
    pub cells: Vec<String>,
}

/// Where the table lies and some of its rows to guess by.
#[derive(Debug, Clone, PartialEq)]
pub struct Head {
    /// The separator, an ASCII character.
    pub separator: u8,
    /// The headings, empty where the file has none.
    pub headings: Vec<String>,
    /// Line of the heading, if any.
    pub heading_line: Option<usize>,
    /// First line of data.
    pub data_line: usize,
    /// Where it starts, in bytes.
    pub data_at: usize,
    /// The number of columns.
    pub width: usize,
    /// Rows from the start and the end of the data.
    pub probe: Vec<Row>,
}

/// Finds the table.
///
/// Each separator is tried on the first lines; the one under which the most
/// rows look like data wins. Data start at a row of two cells or more that
/// are mostly numbers and times, with another such row soon below it.
///
/// # Errors
///
/// [`Fault::NoTable`] when no separator gives such rows.
pub fn find(text: &str, options: &Options) -> Result<Head, Refusal> {
    let tried: &[u8] = match options.separator {
        Some(separator) => &[separator.byte()],
        None => b";\t,",
    };
    let best = tried
        .iter()
        .filter_map(|&separator| {
            let rows = first_rows(text, separator);
            let skip = options.heading_line.unwrap_or(0);
            let start = data_start(&rows, skip)?;
            let score = rows[start..].iter().filter(|r| is_data(&r.cells)).count();
            Some((score, separator, rows, start))
        })
        // `max_by_key` takes the last of equals; the first named is wanted.
        .rev_max();
    let (_, separator, rows, start) = best.ok_or(Refusal::whole(Fault::NoTable))?;
    let (headings, heading_line) = heading_above(&rows[..start], rows[start].cells.len());
    let width = if headings.is_empty() {
        rows[start].cells.len()
    } else {
        headings.len()
    };
    let (data_line, data_at) = (rows[start].line, rows[start].starts_at);
    let mut probe = rows;
    probe.drain(..start);
    probe.extend(last_rows(text, data_at, separator));
    Ok(Head {
        separator,
        headings,
        heading_line,
        data_line,
        data_at,
        width,
        probe,
    })
}

/// The greatest by its first part, the earliest of equals.
trait RevMax<T> {
    fn rev_max(self) -> Option<T>;
}

impl<I, A, B, C> RevMax<(usize, A, B, C)> for I
where
    I: Iterator<Item = (usize, A, B, C)>,
{
    fn rev_max(self) -> Option<(usize, A, B, C)> {
        self.fold(None, |best, new| match best {
            Some(old) if old.0 >= new.0 => Some(old),
            _ => Some(new),
        })
    }
}

/// The first lines cut by one separator, blank ones left out. A line whose
/// quotation mark stays open is joined to those after it, as spreadsheets cut a
/// heading; in the data the same is refused later.
fn first_rows(text: &str, separator: u8) -> Vec<Row> {
    let mut splitter = Splitter::new(separator);
    let mut rows = Vec::new();
    let (mut at, mut line) = (0, 1);
    while at < text.len() && line <= HEAD_LINES {
        let (mut end, starts_at, first_line) = (line_end(text, at), at, line);
        while quote_is_open(&text[starts_at..end])
            && end < text.len()
            && line - first_line < MOST_JOINED
        {
            line += 1;
            end = line_end(text, end + 1);
        }
        if quote_is_open(&text[starts_at..end]) {
            // Never closed: a stray mark, not a cut heading. Take the line alone.
            (end, line) = (line_end(text, starts_at), first_line);
        }
        push_row(
            &mut rows,
            &mut splitter,
            &text[starts_at..end],
            first_line,
            starts_at,
        );
        at = end + 1;
        line += 1;
    }
    rows
}

/// Where the line that starts at `from` ends, its line feed left out.
fn line_end(text: &str, from: usize) -> usize {
    text.get(from..)
        .and_then(|rest| rest.find('\n'))
        .map_or(text.len(), |at| from + at)
}

/// Cuts a line and keeps it, unless all its cells are empty.
fn push_row(rows: &mut Vec<Row>, splitter: &mut Splitter, text: &str, line: usize, at: usize) {
    splitter.split(text.trim_end_matches('\r'));
    let cells: Vec<String> = splitter.all().map(str::to_owned).collect();
    if cells.iter().any(|cell| !cell.is_empty()) {
        rows.push(Row {
            line,
            starts_at: at,
            cells,
        });
    }
}

/// Rows of the end, whose line numbers are not known and not needed: dates and
/// number styles that the first rows leave open are settled there.
fn last_rows(text: &str, data_at: usize, separator: u8) -> Vec<Row> {
    let mut from = text.len().saturating_sub(TAIL_BYTES).max(data_at);
    while !text.is_char_boundary(from) {
        from += 1;
    }
    let mut splitter = Splitter::new(separator);
    let mut rows = Vec::new();
    let lines: Vec<&str> = text[from..].lines().skip(1).collect();
    for line in lines.iter().rev().take(TAIL_LINES).rev() {
        push_row(&mut rows, &mut splitter, line, 0, 0);
    }
    rows.retain(|row| is_data(&row.cells));
    rows
}

/// Whether most filled cells, and at least two, are numbers or times.
fn is_data(cells: &[String]) -> bool {
    let filled = cells.iter().filter(|c| !c.is_empty());
    let (mut all, mut good) = (0, 0);
    for cell in filled {
        all += 1;
        good += usize::from(is_number_like(cell) || is_time_like(cell));
    }
    good >= 2 && 2 * good >= all
}

/// Whether a cell is a clock time, a date or both, in any order.
#[must_use]
pub fn is_time_like(cell: &str) -> bool {
    use stamp::DateOrder::{DayFirst, MonthFirst};
    stamp::clock(cell).is_some()
        || [DayFirst, MonthFirst]
            .into_iter()
            .any(|order| stamp::date(cell, order).is_some() || stamp::moment(cell, order).is_some())
}

/// The first row of data below a line, if there is one.
fn data_start(rows: &[Row], after_line: usize) -> Option<usize> {
    (0..rows.len()).find(|&at| {
        rows[at].line > after_line && is_data(&rows[at].cells) && goes_on(&rows[at + 1..])
    })
}

/// Whether data go on below: at once, or after a remark or a row with holes,
/// but not after a heading. The end of the file will do.
fn goes_on(below: &[Row]) -> bool {
    const FEW: usize = 3;
    let names = |cell: &String| !is_number_like(cell) && super::heading::read(cell).is_some();
    let heading = |row: &Row| row.cells.iter().any(names);
    below
        .iter()
        .take(FEW)
        .take_while(|row| !heading(row))
        .any(|row| is_data(&row.cells))
        || below.is_empty()
}

/// The row of names above the data, a row of units below it joined in.
fn heading_above(above: &[Row], data_width: usize) -> (Vec<String>, Option<usize>) {
    let Some((last, before)) = above.split_last() else {
        return (Vec::new(), None);
    };
    if last.cells.len() < 2 {
        return (Vec::new(), None);
    }
    let bare = |cell: &String| cell.trim_matches(['(', ')', '[', ']']).to_owned();
    let is_unit = |cell: &String| {
        let cell = bare(cell);
        cell.is_empty() || super::unit::spelled(&cell).is_some() || super::unit::is_foreign(&cell)
    };
    let names = before
        .last()
        .filter(|names| names.cells.len() >= 2 && names.cells.len().abs_diff(data_width) <= 1);
    match names {
        Some(names) if last.cells.iter().all(is_unit) => {
            let join = |(at, name): (usize, &String)| match last
                .cells
                .get(at)
                .map(bare)
                .filter(|unit| !unit.is_empty())
            {
                Some(unit) => format!("{name} ({unit})"),
                None => name.clone(),
            };
            (
                names.cells.iter().enumerate().map(join).collect(),
                Some(names.line),
            )
        }
        _ => (rejoin(&last.cells, data_width), Some(last.line)),
    }
}

/// Headings such as `Current, mA` that a comma cut in two, put together again.
///
/// Only where the heading has more cells than the data, and only for a unit
/// behind a name that lacks just this one: else every column after it would shift.
fn rejoin(cells: &[String], data_width: usize) -> Vec<String> {
    let mut excess = cells.len().saturating_sub(data_width);
    let mut joined: Vec<String> = Vec::with_capacity(cells.len());
    for cell in cells {
        let unit_of = super::unit::spelled(cell).map(|(role, _)| role);
        let foreign = super::unit::is_foreign(cell);
        let lacks_it = |name: &&mut String| {
            super::heading::read(name)
                .is_some_and(|g| g.unit.is_none() && (foreign || unit_of == Some(g.role)))
        };
        match joined.last_mut().filter(lacks_it).filter(|_| excess > 0) {
            Some(name) => {
                *name = format!("{name} ({cell})");
                excess -= 1;
            }
            None => joined.push(cell.clone()),
        }
    }
    joined
}
