//! Dates with the month in letters: `03 Jul 2026`, `July 3, 2026`, `3. Juli 2026`.

use super::day_number;
use time::Month;

/// How the months begin, in English and German.
const MONTHS: [&[&str]; 12] = [
    &["jan", "jän"],
    &["feb"],
    &["mar", "mär", "mrz"],
    &["apr"],
    &["may", "mai"],
    &["jun"],
    &["jul"],
    &["aug"],
    &["sep"],
    &["oct", "okt"],
    &["nov"],
    &["dec", "dez"],
];

const MARKS: [char; 6] = [' ', '-', '/', '.', ',', '_'];

/// The day at the start of a text, and what stands behind it; `None` where no
/// month is spelled out there.
pub fn named_date(text: &str) -> Option<(f64, &str)> {
    let (a, rest) = word(text)?;
    let (b, rest) = word(rest)?;
    let (c, rest) = word(rest)?;
    let day = match (month(a), month(b)) {
        (Some(month), None) => day_number(c, month, b)?,
        (None, Some(month)) if a.len() == 4 => day_number(a, month, c)?,
        (None, Some(month)) => day_number(c, month, a)?,
        _ => return None,
    };
    Some((day, rest.trim_start_matches([' ', ',', '_', ':'])))
}

/// The next word and what follows it.
fn word(text: &str) -> Option<(&str, &str)> {
    let text = text.trim_start_matches(MARKS);
    let end = text
        .find(|c| MARKS.contains(&c) || c == ':')
        .unwrap_or(text.len());
    (end > 0).then(|| text.split_at(end))
}

fn month(word: &str) -> Option<Month> {
    let start: String = word.chars().take(3).flat_map(char::to_lowercase).collect();
    let at = MONTHS
        .iter()
        .position(|own| own.contains(&start.as_str()))?;
    Month::try_from(at as u8 + 1).ok()
}
