//! The licences that `Cargo.toml` and README name lie here, whole.

use std::fs;

/// What stands at the beginning, in the middle and at the end of each standard
/// text (SPDX licence list, from memory).
const PIECES: [(&str, &[&str]); 2] = [
    (
        "MIT",
        &[
            "Permission is hereby granted, free of charge",
            "shall be included in all\ncopies",
            "OR THE USE OR OTHER DEALINGS IN THE\nSOFTWARE.",
        ],
    ),
    (
        "Apache-2.0",
        &[
            "Version 2.0, January 2004",
            "   1. Definitions.",
            "   2. Grant of Copyright License.",
            "   3. Grant of Patent License.",
            "   4. Redistribution.",
            "   5. Submission of Contributions.",
            "   6. Trademarks.",
            "   7. Disclaimer of Warranty.",
            "   8. Limitation of Liability.",
            "   9. Accepting Warranty or Additional Liability.",
            "   END OF TERMS AND CONDITIONS",
            "   limitations under the License.",
        ],
    ),
];

fn read(path: &str) -> String {
    fs::read_to_string(path).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// The first piece that is missing or out of its place.
fn gap<'a>(mut text: &str, pieces: &[&'a str]) -> Option<&'a str> {
    for &piece in pieces {
        match text.find(piece) {
            Some(at) => text = &text[at + piece.len()..],
            None => return Some(piece),
        }
    }
    None
}

#[test]
fn the_texts_are_whole_and_linked() {
    let named = read("Cargo.toml");
    let named = named.split("license = \"").nth(1).expect("a licence");
    let named = named.split('"').next().unwrap_or_default();
    let readme = read("README.md");
    for id in named.split(" OR ") {
        let path = format!(".licenses/{id}.txt");
        let pieces = PIECES.iter().find(|(of, _)| *of == id).expect(id).1;
        assert_eq!(gap(&read(&path), pieces), None, "{path}");
        assert!(readme.contains(&format!("({path})")), "README: {path}");
    }
}

#[test]
fn a_gap_is_found() {
    assert_eq!(gap("a c b", &["a", "b", "c"]), Some("c"));
}
