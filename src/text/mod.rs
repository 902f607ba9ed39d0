//! All sentences, labels, cautions and number formats.
//!
//! The engine answers in types; what a person reads is written here and nowhere
//! else, so that another language is another set of these functions.

mod answers;
mod cautions;
mod charts;
pub mod claims;
pub mod day;
pub mod day_words;
mod fields;
mod findings;
pub mod first;
pub mod formatter;
pub mod hand_on;
mod labels;
pub mod maker;
mod meanings;
pub mod message;
mod notices;
pub mod number;
pub mod patterns;
pub mod pictures;
pub mod reader;
mod signs;
#[cfg(test)]
mod tests;
pub mod value;
pub mod wiring;
pub mod words;
mod working;

use answers::{WITHIN_A_DAY_H, is_unnamed};
pub use answers::{
    bank_in_words, bank_sentence, batteries_in_words, duty_title, feed_title, full_mode_name,
    in_brackets, mode_in_sentence, mode_name, new_and_aged, numbered, run_detail, run_sentence,
    run_short, run_title, share_sentence, sizing_answer, stop_phrase, unit_name,
};
pub use cautions::{
    CautionText, caution, caution_on_sheet, caution_source, caution_text, usual_cautions,
};
pub use charts::{by_bank_takeaway, by_depth_takeaway, charge_takeaway, volts_takeaway};
pub use fields::{field_hint, field_label};
pub use findings::finding_sentence;
pub use formatter::{Formatter, Locale};
pub use labels::{chemistry_name, origin_mark, origin_name, origin_question, unit_in_label};
pub use meanings::field_meaning;
pub use message::m;
pub use notices::{Notice, echo_sentence, entry_trouble, notice_sentence};
pub use number::rounded;
pub use working::{formula_text, source_text, term_label, working_value};
