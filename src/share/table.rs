//! A table to hand on, and its two ways to be written: CSV and Markdown.
//!
//! Texts in a table may be anybody's: names of banks and modes are the user's
//! own, or came by a link. Both writers see to it that a text stays a text
//! (see [`super::tame`]).

use super::tame::tame;
use crate::text::Formatter;

/// What stands in a row at one column.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    Text(String),
    /// Worked out.
    Number(f64),
    /// As somebody stated it: nothing of it is rounded off.
    Stated(f64),
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

/// Decimals of a number in CSV after its first digit: six significant digits,
/// more than any input carries.
const DECIMALS: usize = 5;

/// Numbers of this size are written plainly, all others with an exponent: a
/// spreadsheet keeps 15 digits.
const PLAIN: std::ops::Range<f64> = 1e-9..1e15;

/// From here on six digits would round whole numbers.
const WHOLE: f64 = 1e5;

impl Table {
    /// Comma-separated values by RFC 4180: a header row, CRLF, quotes where
    /// needed. Numbers have a point for the decimals and no thousands.
    ///
    /// A text that a spreadsheet would run as a formula, at its start or where a
    /// reader of another separator would begin a cell, gets an apostrophe there;
    /// numbers are written as they are, negative ones too. A number that is not
    /// finite is an empty cell.
    #[must_use]
    pub fn csv(&self) -> String {
        let mut out = String::new();
        line(&mut out, self.heads.iter().map(|head| quoted(&tame(head))));
        for row in &self.rows {
            line(&mut out, row.iter().map(csv_cell));
        }
        out
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
    pub fn markdown(&self, f: Formatter) -> String {
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
                Cell::Number(value) => f.plain(*value),
                Cell::Stated(value) => f.stated(*value),
                Cell::Empty => String::new(),
            }));
        }
        out
    }

    /// Numbers stand to the right.
    fn ruler(&self, column: usize) -> &'static str {
        let mut cells = self.rows.iter().filter_map(|row| row.get(column));
        if cells.any(|cell| matches!(cell, Cell::Number(_) | Cell::Stated(_))) {
            "---:"
        } else {
            "---"
        }
    }
}

/// A row. One empty cell alone is in quotes, or the line would be no row.
fn line(out: &mut String, cells: impl Iterator<Item = String>) {
    let row = cells.collect::<Vec<_>>().join(",");
    out.push_str(if row.is_empty() { "\"\"" } else { &row });
    out.push_str("\r\n");
}

fn csv_cell(cell: &Cell) -> String {
    match cell {
        Cell::Text(text) => quoted(&tame(text)),
        Cell::Number(value) => digits(*value),
        Cell::Stated(value) if value.is_finite() => plainly(*value),
        Cell::Stated(_) => String::new(),
        Cell::Empty => String::new(),
    }
}

/// A text in quotes where any reader would cut it without them: at a comma, but
/// also at the separators of other countries.
fn quoted(text: &str) -> String {
    let cut = |c: char| matches!(c, ',' | ';' | '\t' | '|' | '"' | '\r' | '\n');
    if text.contains(cut) || text.trim() != text {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text.into()
    }
}

/// A number of six significant digits, all of its whole ones; nothing where it
/// is not finite, for a spreadsheet has no such number.
fn digits(value: f64) -> String {
    if !value.is_finite() {
        return String::new();
    }
    let size = value.abs();
    let rounded = if size >= WHOLE {
        value.round()
    } else {
        format!("{value:.DECIMALS$e}").parse().unwrap_or(value)
    };
    plainly(rounded)
}

/// A number to its last digit.
fn plainly(value: f64) -> String {
    match value.abs() {
        0.0 => "0".into(),
        size if PLAIN.contains(&size) => value.to_string(),
        _ => format!("{value:e}"),
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

    fn written(cell: Cell) -> String {
        let csv = table(&[cell]).csv();
        let rest = csv.strip_prefix("h0\r\n").unwrap();
        rest.strip_suffix("\r\n").unwrap().into()
    }

    #[test]
    fn a_formula_becomes_a_text_and_a_number_stays() {
        assert_eq!(written("=1+1".into()), "'=1+1");
        assert_eq!(written("x;=1+1;".into()), "\"x;'=1+1;\"");
        assert_eq!(written("-3".into()), "'-3");
        assert_eq!(written("a \"b\", c".into()), "\"a \"\"b\"\", c\"");
        assert_eq!(written((-3.5).into()), "-3.5");
        assert_eq!(written(0.000_012_345_67.into()), "0.0000123457");
        assert_eq!(written(1_234_567.0.into()), "1234567");
        assert_eq!(written(6.820_631_4.into()), "6.82063");
        assert_eq!(written(None.into()), "\"\"");
    }

    #[test]
    fn numbers_of_any_size_are_written() {
        assert_eq!(written(1e308.into()), "1e308");
        assert_eq!(written(f64::MAX.into()), "1.7976931348623157e308");
        assert_eq!(written((-5e-324).into()), "-5e-324");
        assert_eq!(written((-0.0).into()), "0");
        assert_eq!(written(99_999.96.into()), "100000");
        for none in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(written(none.into()), "\"\"");
        }
    }

    #[test]
    fn markdown_is_one_line_a_row() {
        let text = table(&["a|b\nc".into(), 12.0.into()]).markdown(Formatter::ENGLISH);
        assert_eq!(text, "| h0 | h1 |\n| --- | ---: |\n| a\\|b c | 12 |\n");
    }
}
