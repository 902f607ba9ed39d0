//! How long files are, and how they begin.

use super::source::{File, all_files};

const MOST_LINES: usize = 600;
const MOST_MEDIAN: usize = 200;

fn lines(file: &File) -> usize {
    file.text.lines().count()
}

/// Files with more lines than a reader wants.
fn too_long(files: &[File]) -> Vec<String> {
    let long = files.iter().filter(|file| lines(file) > MOST_LINES);
    long.map(|file| format!("{}: {} lines", file.path, lines(file)))
        .collect()
}

/// Files that do not say first what they are.
fn without_a_word(files: &[File]) -> Vec<&str> {
    let silent = files.iter().filter(|file| !file.text.starts_with("//! "));
    silent.map(|file| file.path.as_str()).collect()
}

fn median_lines(files: &[File]) -> usize {
    let mut all: Vec<usize> = files.iter().map(lines).collect();
    all.sort_unstable();
    all[all.len() / 2]
}

#[test]
fn files_are_short() {
    for folder in ["src", "tests", "examples"] {
        let files = all_files(folder);
        assert_eq!(too_long(&files), [""; 0]);
        let median = median_lines(&files);
        assert!(
            median < MOST_MEDIAN,
            "{folder}: half of the files have {median} lines or more"
        );
    }
}

#[test]
fn files_say_what_they_are() {
    assert_eq!(without_a_word(&all_files("src")), [""; 0]);
}

#[test]
fn long_and_silent_files_are_found() {
    let long = File::of("src/long.rs", &"//! A line.\n".repeat(MOST_LINES + 1));
    let silent = File::of("src/silent.rs", "use std::fmt;\n//! Too late.\n");
    let files = [long, silent];
    assert_eq!(too_long(&files), ["src/long.rs: 601 lines"]);
    assert_eq!(without_a_word(&files), ["src/silent.rs"]);
    assert_eq!(median_lines(&files), 601);
}
