//! Names of files: by what they show.

/// What every file of ours begins with.
const OURS: &str = "till-morning";

/// A file's name from the title of what is in it: `till-morning-hours-of-each-mode.csv`.
///
/// Letters and digits of ASCII stay; everything else parts words.
///
/// ```
/// use till_morning::share::name::file_name;
/// assert_eq!(file_name("State of charge, %", "csv"), "till-morning-state-of-charge.csv");
/// assert_eq!(file_name("../é", "svg"), "till-morning.svg");
/// ```
#[must_use]
pub fn file_name(title: &str, ending: &str) -> String {
    let mut name = String::from(OURS);
    let words = title.split(|c: char| !c.is_ascii_alphanumeric());
    for word in words.filter(|word| !word.is_empty()) {
        name.push('-');
        name.extend(word.chars().map(|c| c.to_ascii_lowercase()));
    }
    format!("{name}.{ending}")
}
