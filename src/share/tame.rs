//! Texts in a CSV file that no spreadsheet takes for a formula.
//!
//! OWASP, *CSV Injection* (owasp.org/www-community/attacks/CSV_Injection): no
//! cell may begin with `=`, `+`, `-`, `@`, tab, return or line feed, their wide
//! forms included; and separators and quotes inside a text must not begin a cell
//! that does. A file written with commas is also opened where the semicolon or the
//! tab separates, so a text is looked at wherever any of them would cut it. What
//! is not seen (blanks, zero-width and bidirectional marks, control characters,
//! and quotes, which readers take off) hides no sign behind it.

/// The text with an apostrophe before all that would run.
pub fn tame(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 1);
    if text.starts_with(['\t', '\r', '\n']) && !runs(text) {
        out.push('\'');
    }
    let mut begins = true;
    for (at, c) in text.char_indices() {
        if begins && runs(&text[at..]) {
            out.push('\'');
        }
        begins = separates(c);
        // NUL and its like are no text: some readers end a file there.
        let is_text = !c.is_control() || separates(c);
        out.push(if is_text { c } else { ' ' });
    }
    out
}

/// Whether a cell that begins here would be a formula.
fn runs(cell: &str) -> bool {
    let seen = cell.trim_start_matches(|c: char| !separates(c) && is_unseen(c));
    seen.starts_with(SIGNS)
}

/// Signs that begin a formula, and their full-width and small forms.
const SIGNS: [char; 13] = [
    '=', '+', '-', '@', '＝', '＋', '－', '＠', '﹦', '﹢', '﹣', '﹫', '−',
];

/// Whether a reader of some country or setting begins a new cell after this.
const fn separates(c: char) -> bool {
    matches!(
        c,
        ',' | ';'
            | '|'
            | '\t'
            | '\r'
            | '\n'
            | '\u{b}'
            | '\u{c}'
            | '\u{85}'
            | '\u{2028}'
            | '\u{2029}'
    )
}

/// What readers drop or a person does not see: blanks, quotes, controls, and by
/// Unicode's `Default_Ignorable_Code_Point` (DerivedCoreProperties, from memory)
/// marks without a shape, with the annotation marks and the blank Braille cell.
fn is_unseen(c: char) -> bool {
    c.is_whitespace()
        || c.is_control()
        || matches!(c, '"' | '\'' | '“' | '”' | '„' | '‘' | '’')
        || matches!(c as u32,
            0xad | 0x34f | 0x61c | 0x115f..=0x1160 | 0x17b4..=0x17b5 | 0x180b..=0x180f
            | 0x200b..=0x200f | 0x202a..=0x202e | 0x2060..=0x206f | 0x2800 | 0x3164
            | 0xfe00..=0xfe0f | 0xfeff | 0xffa0 | 0xfff0..=0xfffb | 0x1bca0..=0x1bca3
            | 0x1d173..=0x1d17a | 0xe0000..=0xe0fff)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_would_run_is_a_text() {
        for (text, tamed) in [
            ("=1+1", "'=1+1"),
            ("＝1", "'＝1"),
            ("\tq", "'\tq"),
            ("\r=1", "'\r'=1"),
            ("\t=1", "'\t'=1"),
            ("x;=1+1;", "x;'=1+1;"),
            ("x; \u{200b}=1", "x;' \u{200b}=1"),
            ("\u{202e}=1", "'\u{202e}=1"),
            ("\0=1", "' =1"),
            ("a\n@b", "a\n'@b"),
            ("a,\"=1\"", "a,'\"=1\""),
        ] {
            assert_eq!(tame(text), tamed, "{text:?}");
        }
    }

    #[test]
    fn other_texts_stay_as_they_are() {
        for text in [
            "",
            "Hold",
            "a=b",
            "8-10 W",
            "x; y",
            "‘quoted’",
            "e@example.org",
            "Nacht, 2",
            "\u{200b}",
        ] {
            assert_eq!(tame(text), text);
        }
    }
}
