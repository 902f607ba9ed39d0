//! One line of text to its cells.

use csv_core::{ReadRecordResult, Reader, ReaderBuilder};

/// The most cells that a line may hold.
pub const MOST_CELLS: usize = 256;

/// Splits lines into cells by one separator, quotation marks respected.
///
/// Lines come one at a time, so that a stray quotation mark cannot swallow the
/// rows after it. Buffers are kept from line to line.
#[derive(Debug, Clone)]
pub struct Splitter {
    reader: Box<Reader>,
    cells: Vec<u8>,
    ends: Vec<usize>,
    count: usize,
}

impl Splitter {
    /// A splitter by this separator, an ASCII character.
    #[must_use]
    pub fn new(separator: u8) -> Self {
        Self {
            reader: Box::new(ReaderBuilder::new().delimiter(separator).build()),
            cells: Vec::new(),
            ends: vec![0; MOST_CELLS],
            count: 0,
        }
    }

    /// Splits a line and returns the number of its cells; cells past
    /// [`MOST_CELLS`] are dropped.
    pub fn split(&mut self, line: &str) -> usize {
        self.reader.reset();
        self.cells.resize(line.len() + 1, 0);
        let mut input = line.as_bytes();
        let (mut written, mut ended) = (0, 0);
        loop {
            let (result, read, wrote, ends) =
                self.reader
                    .read_record(input, &mut self.cells[written..], &mut self.ends[ended..]);
            input = &input[read..];
            written += wrote;
            ended += ends;
            // After the line is eaten an empty input tells the reader to close.
            if !matches!(result, ReadRecordResult::InputEmpty) {
                self.count = ended;
                return ended;
            }
        }
    }

    /// The cell at this place, from zero, without surrounding blanks; empty
    /// past the last.
    #[must_use]
    pub fn cell(&self, index: usize) -> &str {
        if index >= self.count {
            return "";
        }
        let from = if index == 0 { 0 } else { self.ends[index - 1] };
        let bytes = self.cells.get(from..self.ends[index]).unwrap_or_default();
        // Separators and quotes are ASCII: a split never falls inside a character.
        std::str::from_utf8(bytes).unwrap_or_default().trim()
    }

    /// The cells of the line last split.
    pub fn all(&self) -> impl Iterator<Item = &str> {
        (0..self.count).map(|index| self.cell(index))
    }
}

/// Whether a quotation mark is left open at the end of this line.
#[must_use]
pub fn quote_is_open(line: &str) -> bool {
    line.bytes().filter(|&b| b == b'"').count() % 2 == 1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(separator: u8, line: &str, want: &[&str]) {
        let mut splitter = Splitter::new(separator);
        assert_eq!(splitter.split(line), want.len());
        assert_eq!(splitter.all().collect::<Vec<_>>(), want);
        assert_eq!(splitter.cell(want.len()), "");
    }

    #[test]
    fn quotes_hold_separators() {
        check(b',', "1,\"12,8\", x ", &["1", "12,8", "x"]);
        check(b';', "a;;\"say \"\"so\"\"\"", &["a", "", "say \"so\""]);
        check(b'\t', "1\t2\t", &["1", "2", ""]);
        check(b',', "", &[]);
    }

    #[test]
    fn a_line_of_too_many_cells_is_cut_not_looped_on() {
        let mut splitter = Splitter::new(b',');
        assert_eq!(splitter.split(&",".repeat(1000)), MOST_CELLS);
    }
}
