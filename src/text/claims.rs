//! Sentences of the fifth question: does it do what it claims?

mod figures;
mod log;
mod report;
mod rows;
mod said;
pub mod words;

pub use figures::is_typed;
pub use log::{
    column_title, cut_in_two, edge_label, edge_step_h, end_sentence, fault_sentence, gap_sentence,
    hours_of_seconds, lasted_text, leave_out, make_mode, make_noted, means_text, minutes_of,
    moment_of, note_label, note_trouble, note_unit, noted_sentence, offset_of, offset_sentence,
    place, reading_text, role_name, sampling_sentence, shortest_name, stretch_detail, stretch_text,
    stretch_title, total_text, unit_name, why_words,
};
pub use report::{Row, air_detail, air_rows, money_rows, report_notes, report_row};
pub use rows::rows_text;
pub(super) use said::not_judged;
pub use said::{
    about_name, air_refusal, air_sentence, budget_name, claim_number, claim_title, class_name,
    end_by_name, full_by_name, headline, list_bad, missing_sentence, money_sentence, next_sentence,
    plainly, pocket_sentence, verdict_text, watts_text, whole_percent,
};
