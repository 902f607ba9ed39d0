//! Reading the stored tables, and comparing.

#[track_caller]
pub fn near(got: f64, want: f64, relative: f64) {
    let off = (got - want).abs();
    assert!(off <= relative * want.abs(), "got {got}, want {want}");
}

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
