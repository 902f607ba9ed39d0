//! Where the catalogues lie: a folder a language, a file a part of the page.

use std::{fs, path::PathBuf};

pub const FOLDER: &str = "src/text/catalogue";

/// The files of a language, by name.
pub fn parts(tag: &str) -> Vec<PathBuf> {
    let folder = format!("{FOLDER}/{tag}");
    let entries = fs::read_dir(&folder).unwrap_or_else(|error| panic!("{folder}: {error}"));
    let mut parts: Vec<PathBuf> = entries
        .map(|entry| entry.expect("an entry").path())
        .collect();
    parts.sort();
    parts
}

/// All of them as one text.
pub fn whole(tag: &str) -> String {
    let texts = parts(tag).into_iter().map(|part| {
        fs::read_to_string(&part).unwrap_or_else(|error| panic!("{}: {error}", part.display()))
    });
    texts.collect::<Vec<_>>().join("\n")
}
