//! Words of the part that makes a reader's page.

use crate::plan::reader::MOST_OPEN;

pub const TITLE: &str = "A page for readers";
pub const HINT: &str = "The same answer with a few numbers left open: whoever opens it puts in their own bank and reads their own hours. Your plan is in the link; nothing else is kept or sent.";
pub const PAGE_TITLE: &str = "Its title";
pub const PAGE_NOTE: &str = "A line from you";
pub const OPEN: &str = "What readers may change, one to four";
pub const OPEN_AS_ONE: &str =
    "Where charge or voltage is open, readers see your batteries as one bank.";
pub const UNITS: &str = "Units";
pub const UNIT_NAMES: [&str; 3] = ["as in this plan", "metric", "US (ft, °F, cfm)"];
pub const THEME: &str = "Looks";
pub const THEME_NAMES: [&str; 3] = ["as the reader’s device has it", "by day", "by night"];
pub const LANGUAGE: &str = "Language";
pub const LANGUAGE_NAMES: [&str; 3] = ["the reader’s, where we have it", "English", "German"];
pub const SEE: &str = "See it";
pub const COPY_LINK: &str = "Copy its link";
pub const FRAME: &str = "In a page of your own";
pub const FRAME_HINT: &str = "A frame with the page as one file in it: it asks for scripts and nothing else, and works where storage is blocked.";
pub const COPY_FRAME: &str = "Copy the frame";
pub const SCRIPT_HINT: &str = "Once on that page, if the frame is to be as tall as what is in it:";
pub const COPY_SCRIPT: &str = "Copy the script";
pub const ONE_FILE: &str = "The page as one file, to put on a host of your own";

/// Why a fifth is not taken.
#[must_use]
pub fn too_many() -> String {
    format!("{MOST_OPEN} at the most: take one away first.")
}
