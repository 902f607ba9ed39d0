//! Words of the part that makes a reader's page.

use crate::plan::reader::MOST_OPEN;
use crate::text::Formatter;

pub const UNIT_NAMES: [&str; 3] = ["as in this plan", "metric", "US (ft, °F, cfm)"];
pub const THEME_NAMES: [&str; 3] = ["as the reader’s device has it", "by day", "by night"];
pub const LANGUAGE_NAMES: [&str; 3] = ["the reader’s, where we have it", "English", "German"];

/// Why a fifth is not taken.
#[must_use]
pub fn too_many(_f: Formatter) -> String {
    format!("{MOST_OPEN} at the most: take one away first.")
}
