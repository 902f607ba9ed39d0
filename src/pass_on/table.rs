//! A table to hand on, and its two ways to be written: CSV and Markdown.
//!
//! Texts in a table may be anybody's: names of banks and modes are the user's
//! own, or came by a link. Both writers see to it that a text stays a text.

use crate::{plan::entry, wording::number};
use csv_core::{WriteResult, Writer, WriterBuilder};

/// What stands in a row at one column.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    Text(String),
    Number(f64),
    Empty,
}

impl From<&str> for Cell {
    fn from(text: &str) -> Self {
        Self::Text(text.into())
    }
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<f64> for Cell {
    fn from(value: f64) -> Self {
        Self::Number(value)
    }
}

impl From<Option<f64>> for Cell {
    fn from(value: Option<f64>) -> Self {
        value.map_or(Self::Empty, Self::Number)
    }
}

/// Rows under named columns. Every row has a cell for each column.
#[derive(Clone, Debug, PartialEq)]
pub struct Table {
    /// What it shows, in words.
    pub title: String,
    /// Column names, with the unit where there is one.
    pub heads: Vec<String>,
    pub rows: Vec<Vec<Cell>>,
}

/// Significant digits of a number in CSV: more than any input carries.
const DIGITS: i32 = 6;

impl Table {
    /// Comma-separated values by RFC 4180: a header row, CRLF, quotes where
    /// needed. Numbers have a point for the decimals and no thousands.
    ///
    /// A text that a spreadsheet would run as a formula (`=`, `+`, `-`, `@`, tab
    /// or return in front, in their wide forms too) gets an apostrophe before it,
    /// as OWASP's *CSV Injection* advises; numbers are written as they are,
    /// negative ones too.
    #[must_use]
    pub fn csv(&self) -> String {
        let mut out = Csv::new();
        let heads = self.heads.iter().map(|head| tame(head));
        out.row(heads);
        for row in &self.rows {
            out.row(row.iter().map(|cell| match cell {
                Cell::Text(text) => tame(text),
                Cell::Number(value) => digits(*value),
                Cell::Empty => String::new(),
            }));
        }
        out.finish()
    }

    /// The same with these columns alone.
    #[must_use]
    pub fn columns(&self, wanted: &[usize]) -> Self {
        let of = |row: &Vec<Cell>| {
            let cells = wanted.iter().filter_map(|&column| row.get(column));
            cells.cloned().collect()
        };
        let heads = wanted.iter().filter_map(|&column| self.heads.get(column));
        Self {
            title: self.title.clone(),
            heads: heads.cloned().collect(),
            rows: self.rows.iter().map(of).collect(),
        }
    }

    /// A table of GitHub-flavoured Markdown. Whatever would be markup in a text
    /// is escaped; numbers are as people read them.
    #[must_use]
    pub fn markdown(&self) -> String {
        let mut out = String::new();
        let mut line = |cells: &mut dyn Iterator<Item = String>| {
            out.push('|');
            for cell in cells {
                out.push(' ');
                out.push_str(&cell);
                out.push_str(" |");
            }
            out.push('\n');
        };
        line(&mut self.heads.iter().map(|head| plain_markdown(head)));
        line(&mut (0..self.heads.len()).map(|column| self.ruler(column).into()));
        for row in &self.rows {
            line(&mut row.iter().map(|cell| match cell {
                Cell::Text(text) => plain_markdown(text),
                Cell::Number(value) => number::plain(*value),
                Cell::Empty => String::new(),
            }));
        }
        out
    }

    /// Numbers stand to the right.
    fn ruler(&self, column: usize) -> &'static str {
        let mut cells = self.rows.iter().filter_map(|row| row.get(column));
        if cells.any(|cell| matches!(cell, Cell::Number(_))) {
            "---:"
        } else {
            "---"
        }
    }
}

/// A number of six significant digits, plainly: no exponent, no trailing zeros.
fn digits(value: f64) -> String {
    let size = value.abs().max(1e-9).log10().floor() as i32 + 1;
    let decimals = usize::try_from((DIGITS - size).clamp(0, 9)).unwrap_or(0);
    let text = entry::fixed(value, decimals);
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').into()
    } else {
        text
    }
}

/// A text that no spreadsheet takes for a formula.
fn tame(text: &str) -> String {
    const STARTS: [char; 11] = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];
    if text.starts_with(STARTS) {
        format!("'{text}")
    } else {
        text.into()
    }
}

/// A text as Markdown shows it letter by letter, on one line.
#[must_use]
pub fn plain_markdown(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            // The backslash of a pipe is read before the one of markup: `\\|` would end a cell.
            '\\' => out.push_str("&#92;"),
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '|' | '`' | '*' | '_' | '[' | ']' | '~' => {
                out.push('\\');
                out.push(c);
            }
            // What would make a link of its own accord.
            '/' if out.ends_with(":/") => {
                out.truncate(out.len() - 2);
                out.push_str("&#58;//");
            }
            '@' => out.push_str("&#64;"),
            '.' if ends_with_www(&out) => out.push_str("&#46;"),
            c if c.is_control() => out.push(' '),
            c => out.push(c),
        }
    }
    // Blanks at the ends are not a cell's own.
    out.trim().into()
}

fn ends_with_www(text: &str) -> bool {
    let end = text.len().checked_sub(3).and_then(|at| text.get(at..));
    end.is_some_and(|end| end.eq_ignore_ascii_case("www"))
}

/// Writes rows by the csv library's core, which allocates nothing itself.
struct Csv {
    writer: Writer,
    out: Vec<u8>,
}

/// A step of the writer, and how much it wrote.
type Call<'a> = &'a mut dyn FnMut(&mut Writer, &mut [u8]) -> (WriteResult, usize);

impl Csv {
    fn new() -> Self {
        let terminator = csv_core::Terminator::CRLF;
        Self {
            writer: WriterBuilder::new().terminator(terminator).build(),
            out: Vec::new(),
        }
    }

    fn row(&mut self, cells: impl Iterator<Item = String>) {
        for (index, cell) in cells.enumerate() {
            if index > 0 {
                self.step(&mut Writer::delimiter);
            }
            let mut rest = cell.as_bytes();
            self.step(&mut |writer, room| {
                let (result, read, wrote) = writer.field(rest, room);
                rest = &rest[read..];
                (result, wrote)
            });
        }
        self.step(&mut Writer::terminator);
    }

    /// Calls until the writer needs no more room.
    fn step(&mut self, call: Call<'_>) {
        let mut room = [0; 256];
        loop {
            let (result, wrote) = call(&mut self.writer, &mut room);
            self.out.extend_from_slice(&room[..wrote]);
            if matches!(result, WriteResult::InputEmpty) {
                return;
            }
        }
    }

    fn finish(self) -> String {
        // Cells went in as text and only ASCII was put between them.
        String::from_utf8(self.out).unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn table(cells: &[Cell]) -> Table {
        Table {
            title: "t".into(),
            heads: (0..cells.len()).map(|n| format!("h{n}")).collect(),
            rows: vec![cells.to_vec()],
        }
    }

    #[test]
    fn a_formula_becomes_a_text_and_a_number_stays() {
        let of = |cell: Cell| table(&[cell]).csv().lines().nth(1).unwrap().to_owned();
        assert_eq!(of("=1+1".into()), "'=1+1");
        assert_eq!(of("-3".into()), "'-3");
        assert_eq!(of("＝1".into()), "'＝1");
        assert_eq!(of((-3.5).into()), "-3.5");
        assert_eq!(of(0.000_012_345_67.into()), "0.000012346");
        assert_eq!(of(1_234_567.0.into()), "1234567");
        assert_eq!(of(6.820_631_4.into()), "6.82063");
        assert_eq!(of(None.into()), "\"\"");
        assert_eq!(of("a \"b\", c".into()), "\"a \"\"b\"\", c\"");
    }

    #[test]
    fn markdown_is_one_line_a_row() {
        let text = table(&["a|b\nc".into(), 12.0.into()]).markdown();
        assert_eq!(text, "| h0 | h1 |\n| --- | ---: |\n| a\\|b c | 12 |\n");
    }
}
