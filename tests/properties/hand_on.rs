//! What is handed on as a table: texts stay texts, numbers stay numbers.
//!
//! Held by readers that are not ours: the csv library's, with the separators of
//! several countries, with quotes and without. What must not begin a cell is by
//! OWASP, *CSV Injection*; the shape of the file by RFC 4180.

use proptest::{collection::vec, prelude::*, sample::select};
use till_morning::text::Formatter;
use till_morning::{
    plan::{Show, entry},
    range::Unit,
    share::table::{Cell, Table},
};

/// Signs that run, what separates, what is quoted, and what nobody sees.
const NASTY: [char; 26] = [
    '=', '+', '-', '@', '＝', '＋', '－', '＠', ',', ';', '|', '\t', '\r', '\n', '"', '\'', ' ',
    '\0', '\u{200b}', '\u{feff}', '\u{202e}', '\u{2066}', '\u{ad}', '\u{a0}', 'a', '1',
];

/// Seen by nobody, or taken off by readers. An apostrophe is not among these: it
/// is what keeps a text a text.
fn unseen(c: char) -> bool {
    c.is_whitespace()
        || c.is_control()
        || [
            '"', '\u{200b}', '\u{feff}', '\u{202e}', '\u{2066}', '\u{ad}',
        ]
        .contains(&c)
}

fn nasty() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => vec(select(NASTY.to_vec()), 0..12).prop_map(String::from_iter),
        1 => any::<String>(),
    ]
}

fn any_number() -> impl Strategy<Value = f64> {
    any::<u64>().prop_map(f64::from_bits)
}

fn finite() -> impl Strategy<Value = f64> {
    any_number().prop_filter("finite", |value| value.is_finite())
}

fn table(row: Vec<Cell>) -> Table {
    Table {
        title: "t".into(),
        heads: (0..row.len()).map(|at| format!("h{at}")).collect(),
        rows: vec![row],
    }
}

/// The cells of a file, as a reader with this separator has them.
fn cells(text: &str, separator: u8, quotes: bool) -> Vec<Vec<String>> {
    let reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(separator)
        .quoting(quotes)
        .from_reader(text.as_bytes());
    let row = |row: csv::StringRecord| row.iter().map(String::from).collect();
    reader.into_records().map(|one| row(one.unwrap())).collect()
}

proptest! {
    #[test]
    fn no_text_runs_in_a_reader_of_any_country(
        first in nasty(), second in nasty(), number in finite(),
    ) {
        let csv = table(vec![first.into(), second.into(), number.into()]).csv();
        for separator in *b",;\t|" {
            for quotes in [true, false] {
                for cell in cells(&csv, separator, quotes).iter().flatten() {
                    let shown = cell.trim_start_matches(unseen);
                    let is_number = shown.parse() == Ok(read_back(number));
                    prop_assert!(
                        is_number || !shown.starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠']),
                        "{cell:?} in {csv:?}, at {:?}", separator as char,
                    );
                }
            }
        }
        // One row of three cells, to whom reads as it was written.
        let rows = cells(&csv, b',', true);
        prop_assert_eq!(rows.len(), 2);
        prop_assert_eq!(rows[1].len(), 3);
        prop_assert_eq!(rows[1][2].parse(), Ok(read_back(number)));
    }

    #[test]
    fn a_name_that_runs_nowhere_comes_back_letter_by_letter(
        name in "[a-zA-Z0-9é☾.:/°#&<>][a-zA-Z0-9é☾ .:/°#&<>=+@\"'-]{0,20}[a-z]",
    ) {
        let csv = table(vec![name.as_str().into(), 1.0.into()]).csv();
        prop_assert_eq!(&cells(&csv, b',', true)[1][0], &name);
    }

    #[test]
    fn every_finite_number_is_written_as_itself(value in finite()) {
        let read = read_back(value);
        let off = (read - value).abs();
        // Six significant digits, and every whole number to its last.
        prop_assert!(off <= 5.000_001e-6 * value.abs() + f64::from_bits(1) && off <= 0.5, "{} for {}", read, value);
    }

    /// The writers of numbers for people take what comes.
    #[test]
    fn no_number_stops_a_writer(value in any_number(), decimals in 0_usize..20) {
        let texts = [
            Formatter::ENGLISH.plain(value),
            Formatter::ENGLISH.fixed(value, decimals),
            Formatter::ENGLISH.exact(value, decimals),
            Formatter::ENGLISH.percent(value),
            Formatter::ENGLISH.duration(value),
            Formatter::ENGLISH.duration_fine(value),
            Formatter::ENGLISH.clock(value),
            Formatter::ENGLISH.clock_after(0, value),
            table(vec![value.into()]).markdown(Formatter::ENGLISH),
        ];
        prop_assert!(texts.iter().all(|text| !text.is_empty()));
        for shown in [Show::METRIC, Show::US] {
            for unit in [Unit::Watt, Unit::Celsius, Unit::Meter, Unit::ClockMinute] {
                prop_assert!(!entry::show(value, unit, shown).is_empty());
            }
        }
        // Whole beyond what a double tells apart: the digits are its own.
        if value.is_finite() && value.abs() >= 1e16 {
            prop_assert_eq!(entry::fixed(value, decimals).parse(), Ok(value));
        }
    }
}

/// A number through a CSV file.
fn read_back(value: f64) -> f64 {
    let csv = table(vec!["x".into(), value.into()]).csv();
    cells(&csv, b',', true)[1][1].parse().expect("a number")
}
