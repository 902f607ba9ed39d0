//! Reading vector files and comparing numbers, for the published checks.

// Each test file uses some of it.
#![allow(dead_code)]

use std::collections::HashMap;

/// One row of a vector file as text, keyed by its header.
pub type Row = HashMap<String, String>;

/// Rows of a vector file; `#` lines are provenance.
pub fn rows(name: &str) -> Vec<Row> {
    csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path(format!("{}/tests/data/{name}", env!("CARGO_MANIFEST_DIR")))
        .unwrap()
        .deserialize()
        .collect::<Result<_, _>>()
        .unwrap()
}

/// A number of a row.
#[track_caller]
pub fn number(row: &Row, key: &str) -> f64 {
    row[key].trim().parse().unwrap()
}

/// Within an absolute tolerance.
#[track_caller]
pub fn near(got: f64, want: f64, tolerance: f64) {
    assert!(
        (got - want).abs() <= tolerance,
        "got {got}, want {want} within {tolerance}"
    );
}

/// Within a share of the wanted value.
#[track_caller]
pub fn near_share(got: f64, want: f64, share: f64) {
    near(got, want, share * want.abs());
}
