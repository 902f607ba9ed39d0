//! Cells to numbers: decimal commas, grouped thousands, units behind.

/// How numbers are written in one file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NumberStyle {
    /// `.` or `,`.
    pub decimal: char,
    /// Whether the other mark groups thousands. Believed only when a cell of
    /// the file holds both marks, for `1,234` alone may be either.
    pub grouped: bool,
}

/// What a cell holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reading<'a> {
    /// Nothing, or a word for nothing.
    Missing,
    /// A number and what is written behind it, perhaps a unit.
    Number(f64, &'a str),
    /// Anything else.
    Other,
}

/// What loggers and spreadsheets write for no reading.
const NOTHING: [&str; 12] = [
    "", "-", "--", "---", "n/a", "na", "nan", "null", "none", "#n/a", "?", ".",
];

impl NumberStyle {
    /// Reads one cell.
    ///
    /// A mark that does not fit the style makes the cell `Reading::Other`:
    /// better refused than read a thousand times too large.
    #[must_use]
    pub fn read<'a>(&self, cell: &'a str) -> Reading<'a> {
        let cell = cell.trim();
        if NOTHING.iter().any(|word| cell.eq_ignore_ascii_case(word)) {
            return Reading::Missing;
        }
        let end = number_end(cell);
        let (digits, behind) = cell.split_at(end);
        match self
            .plain(digits.trim_end())
            .map(|text| text.parse::<f64>())
        {
            Some(Ok(number)) if number.is_finite() => Reading::Number(number, behind.trim()),
            _ => Reading::Other,
        }
    }

    /// The digits as Rust writes them, if they follow this style.
    fn plain(&self, digits: &str) -> Option<String> {
        let digits = digits.replace('\u{2212}', "-");
        let (mantissa, exponent) = match digits.find(['e', 'E']) {
            Some(at) => digits.split_at(at),
            None => (digits.as_str(), ""),
        };
        let (whole, part) = match mantissa.split_once(self.decimal) {
            Some((whole, part)) => (whole, Some(part)),
            None => (mantissa, None),
        };
        let mut plain = self.ungroup(whole)?;
        if let Some(part) = part {
            if !part.bytes().all(|b| b.is_ascii_digit()) {
                return None;
            }
            plain.push('.');
            plain.push_str(part);
        }
        plain.push_str(exponent);
        Some(plain)
    }

    /// The whole part without its groups, which must be of three digits.
    fn ungroup(&self, whole: &str) -> Option<String> {
        let other = if self.decimal == '.' { ',' } else { '.' };
        let is_group =
            |c: char| (self.grouped && c == other) || is_blank(c) || matches!(c, '\'' | '\u{2019}');
        if !whole.contains(is_group) {
            return (!whole.contains(other)).then(|| whole.to_owned());
        }
        let mut groups = whole.split(is_group);
        let first = groups.next()?;
        let lead = first.trim_start_matches(['+', '-']);
        let led = (1..=3).contains(&lead.len());
        let rest: Vec<&str> = groups.collect();
        let even = |g: &&str| g.len() == 3 && g.bytes().all(|b| b.is_ascii_digit());
        (led && rest.iter().all(even)).then(|| format!("{first}{}", rest.concat()))
    }
}

/// The blanks that group digits: plain, unbroken, thin and narrow.
fn is_blank(c: char) -> bool {
    matches!(c, ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}')
}

/// Where the number ends and a unit may begin.
fn number_end(cell: &str) -> usize {
    let bytes = cell.as_bytes();
    let mut end = 0;
    let mut chars = cell.char_indices().peekable();
    while let Some((at, c)) = chars.next() {
        let next = bytes.get(at + 1).copied().unwrap_or(b' ');
        let keeps = match c {
            '0'..='9' | '.' | ',' | '\'' | '\u{2019}' => true,
            '+' | '-' | '\u{2212}' => at == 0 || matches!(bytes[at - 1], b'e' | b'E'),
            'e' | 'E' => at > 0 && (next.is_ascii_digit() || matches!(next, b'+' | b'-')),
            blank if is_blank(blank) => chars.peek().is_some_and(|(_, c)| c.is_ascii_digit()),
            _ => false,
        };
        if !keeps {
            break;
        }
        end = at + c.len_utf8();
    }
    end
}

/// The style that a file's numbers follow, told from some of its cells.
///
/// Both marks in one cell settle it: the last is the decimal. Else a point
/// anywhere means points; else a comma anywhere means commas.
#[must_use]
pub fn detect_style<'a>(cells: impl Iterator<Item = &'a str>) -> NumberStyle {
    let (mut points, mut commas) = (false, false);
    for cell in cells.filter(|c| is_number_like(c)) {
        match (cell.rfind('.'), cell.rfind(',')) {
            (Some(point), Some(comma)) => {
                let decimal = if point > comma { '.' } else { ',' };
                return NumberStyle {
                    decimal,
                    grouped: true,
                };
            }
            (Some(_), None) => points = true,
            (None, Some(_)) => commas = true,
            (None, None) => {}
        }
    }
    let decimal = if commas && !points { ',' } else { '.' };
    NumberStyle {
        decimal,
        grouped: false,
    }
}

/// Whether a cell may be a number in some style, dates and clock times aside.
#[must_use]
pub fn is_number_like(cell: &str) -> bool {
    let end = number_end(cell.trim());
    let (digits, behind) = cell.trim().split_at(end);
    digits.bytes().any(|b| b.is_ascii_digit())
        && behind.trim().chars().count() <= 5
        && !behind
            .chars()
            .any(|c| c.is_ascii_digit() || matches!(c, ':' | '/' | '-' | ';' | '\t'))
        && digits.matches('.').count().min(digits.matches(',').count()) <= 1
        && (digits.matches('.').count() <= 1 || digits.contains(','))
}

#[cfg(test)]
mod tests {
    use super::*;

    const POINT: NumberStyle = NumberStyle {
        decimal: '.',
        grouped: false,
    };
    const COMMA: NumberStyle = NumberStyle {
        decimal: ',',
        grouped: false,
    };

    #[track_caller]
    fn check(style: NumberStyle, cell: &str, want: Reading) {
        assert_eq!(style.read(cell), want, "{cell:?}");
    }

    #[test]
    fn numbers_as_people_write_them() {
        check(POINT, "12.8", Reading::Number(12.8, ""));
        check(POINT, "-5.1 A", Reading::Number(-5.1, "A"));
        check(POINT, "\u{2212}3", Reading::Number(-3.0, ""));
        check(POINT, "1.2E+01", Reading::Number(12.0, ""));
        check(POINT, "950mA", Reading::Number(950.0, "mA"));
        check(POINT, "1 234.5", Reading::Number(1234.5, ""));
        check(COMMA, "12,8", Reading::Number(12.8, ""));
        check(COMMA, "1'234,5", Reading::Number(1234.5, ""));
        let grouped = NumberStyle {
            grouped: true,
            ..POINT
        };
        check(grouped, "1,234.5", Reading::Number(1234.5, ""));
        check(POINT, " N/A", Reading::Missing);
    }

    #[test]
    fn what_does_not_fit_the_style_is_refused() {
        for cell in ["12,8", "1.2.3", "inf", "1e999", "x", "--5", "1,23", "+"] {
            check(POINT, cell, Reading::Other);
        }
        for cell in ["12.8", "1.234"] {
            check(COMMA, cell, Reading::Other);
        }
        let grouped = NumberStyle {
            grouped: true,
            ..POINT
        };
        check(grouped, "12,8", Reading::Other);
    }

    #[test]
    fn the_style_is_told_from_the_cells() {
        assert_eq!(detect_style(["0", "12,8"].into_iter()), COMMA);
        assert_eq!(detect_style(["12,8", "3.5"].into_iter()), POINT);
        let both = detect_style(["5,1", "1.234,5"].into_iter());
        assert_eq!((both.decimal, both.grouped), (',', true));
        assert_eq!(
            detect_style(["05.03.2024 10:00:00", "12,8"].into_iter()),
            COMMA
        );
    }
}
