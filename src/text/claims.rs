//! Sentences of the fifth question: does it do what it claims?

use crate::plan::{
    Path,
    claims::{AirField as A, ClaimField as C, PriceField as P},
};

/// What a field of the fifth question is called.
#[must_use]
pub const fn label(path: Path) -> &'static str {
    match path {
        Path::Claims => "Claims",
        Path::Claim(_, field) => claim(field),
        Path::Air(field) => air(field),
        Path::Price(field) => price(field),
        _ => "",
    }
}

const fn claim(field: C) -> &'static str {
    match field {
        C::ClaimedAh
        | C::ClaimedWh
        | C::ClaimedW
        | C::ClaimedM3H
        | C::ClaimedC
        | C::ClaimedCoolingW
        | C::ClaimedBtuPerWh => "Claimed",
        C::ClaimedMostAh
        | C::ClaimedMostWh
        | C::ClaimedMostW
        | C::ClaimedMostM3H
        | C::ClaimedMostC
        | C::ClaimedMostCoolingW
        | C::ClaimedMostBtuPerWh => "Claimed, up to",
        C::MeasuredAh
        | C::MeasuredWh
        | C::MeasuredW
        | C::MeasuredM3H
        | C::MeasuredC
        | C::MeasuredCoolingW
        | C::MeasuredBtuPerWh => "Measured",
        C::TolerancePercent => "Tolerance that the claim states",
        C::OfReadingPercent => "Limit, of the reading",
        C::OfFullScalePercent => "Limit, of full scale",
        C::FullScaleNumber => "Full scale of the meter",
        C::CountsNumber => "Limit, counts of the last digit",
        C::OneCountNumber => "One count is",
        C::MeasuredMin => "Measured for",
        C::RateA => "Mean current of the run",
        C::TestC => "Temperature in the test",
        C::RatedC => "Temperature of the claim",
        C::GrilleM2 => "Free area of the grille",
    }
}

const fn air(field: A) -> &'static str {
    match field {
        A::AltitudeM => "Height above the sea",
        A::InletC => "Air going in",
        A::InletHumidityPercent => "Humidity going in",
        A::OutletC => "Air coming out",
        A::OutletHumidityPercent => "Humidity coming out",
        A::AirflowM3H => "Airflow",
        A::FreeAreaM2 => "Free area of the grille",
        A::PowerW => "Draw at the same time",
    }
}

const fn price(field: P) -> &'static str {
    match field {
        P::PriceNumber => "Price paid for the bank",
        P::CyclesCount => "Cycles it is said to live",
        P::CycleDepthPercent => "Depth of each cycle",
        P::LeftPercent => "Capacity left by then",
    }
}

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
