//! Browser tests look until it is so: what a page shows after an action is never
//! read once and held, for on a busy machine it may not be there yet.

use std::{fs, path::Path};

/// Calls that read what is shown just now.
const READS: [&str; 9] = [
    ".allInnerTexts(",
    ".count(",
    ".getAttribute(",
    ".innerText(",
    ".inputValue(",
    ".isChecked(",
    ".isHidden(",
    ".isVisible(",
    ".textContent(",
];

/// Lines that hold against a value what was read once.
fn too_early(text: &str) -> Vec<&str> {
    let reads_once = |line: &&str| {
        let read = READS.iter().any(|call| line.contains(call));
        line.contains("assert") && line.contains("await") && read
    };
    text.lines().filter(reads_once).collect()
}

#[test]
fn browser_tests_look_until_it_is_so() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/browser");
    let mut files = 0;
    for entry in fs::read_dir(folder).expect("the browser tests") {
        let path = entry.expect("an entry").path();
        if !path.to_string_lossy().ends_with(".e2e.mjs") {
            continue;
        }
        files += 1;
        let text = fs::read_to_string(&path).expect("a test");
        assert_eq!(too_early(&text), [""; 0], "{}", path.display());
    }
    assert!(files > 10, "{files} files read");
}

#[test]
fn a_test_that_looks_once_is_found() {
    let bad = "  assert.equal(await page.locator('#x').inputValue(), '3');";
    assert_eq!(too_early(bad), [bad]);
    assert!(too_early("  await expect(page.locator('#x')).toHaveValue('3');").is_empty());
}
