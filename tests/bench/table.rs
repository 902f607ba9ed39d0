//! Reading the stored tables.

pub use super::vectors::near_share as near;

/// Rows of a data file: `#` lines and the heading left out.
pub fn rows(text: &str) -> Vec<Vec<String>> {
    let body: String = text
        .lines()
        .filter(|l| !l.starts_with('#'))
        .map(|l| format!("{l}\n"))
        .collect();
    csv::ReaderBuilder::new()
        .flexible(true)
        .from_reader(body.as_bytes())
        .records()
        .map(|r| r.unwrap().iter().map(str::to_owned).collect())
        .collect()
}

pub fn number(cell: &str) -> f64 {
    cell.parse()
        .unwrap_or_else(|_| panic!("{cell:?} is a number"))
}
