//! Sentences of the fourth question: can the wiring carry it?

mod labels;
mod notes;
mod paper;
mod said;
pub mod words;

pub use labels::{fuse_kind_name, hint, label, leg_name, place_name, strands_name, take_off_name};
pub use notes::{ALWAYS, note};
pub use paper::{
    amps_on_paper, decided_on_paper, drop_on_paper, fuse_on_paper, leg_on_paper, taken_for,
};
pub use said::{
    ampacity_text, amps, asked_by, blocks_line, both_sizes, burden_row, deciding, drop_text,
    fault_text, fitted_text, fuse_text, headline, kind_text, leg_line, leg_note, marine_text,
    place_text, rule_name, rule_source, size_text, solar_lines, start_line, string_fuse_line,
    take_off_line, verdict_name,
};
