//! Sentences of the fourth question: can the wiring carry it?

mod batteries;
mod circuit;
mod fuse;
mod labels;
mod notes;
mod paper;
pub mod refill;
mod said;
mod sizes;
mod verdict;
pub mod words;

pub use batteries::{
    batteries_line, burden_row, solar_lines, start_line, string_fuse_line, take_off_line,
    verdict_name,
};
pub use circuit::{
    ampacity_text, asked_by, circuit_note, deciding, drop_text, remedies_text, rule_name,
    rule_source,
};
pub use fuse::{
    fault_text, fitted_text, fuse_text, kind_text, marine_text, place_text, source_text,
    start_above_text,
};
pub use labels::{circuit_name, fuse_kind_name, place_name, strands_name, take_off_name};
pub use notes::note;
pub use paper::{
    amps_on_paper, circuit_on_paper, decided_on_paper, drop_on_paper, fuse_on_paper,
    system_on_paper, taken_for,
};
pub use said::{amps, headline};
pub use sizes::{both_sizes, decided_by, judged, needed, none_passes, size_text, system_sign};
pub use verdict::{circuit_line, circuit_verdict, open_name, open_names};
