//! All sentences, labels, cautions and number formats.
//!
//! The engine answers in types; what a person reads is written here and nowhere
//! else, so that another language is another set of these functions.

mod answers;
mod cautions;
mod charts;
mod findings;
mod labels;
mod notices;
pub mod number;
mod working;

pub use answers::{
    bank_in_words, blocks_in_words, mode_name, run_sentence, run_short, share_in_words,
    sizing_sentence, stop_phrase, unit_name,
};
pub use cautions::{CAUTIONS, Caution};
pub use charts::{by_bank_takeaway, by_depth_takeaway, charge_takeaway, volts_takeaway};
pub use findings::finding_sentence;
pub use labels::{chemistry_name, field_hint, field_label, origin_mark, origin_name, unit_sign};
pub use notices::{Notice, entry_trouble, notice_sentence, reading_echo};
pub use working::{formula_text, source_text, term_label, working_value};
