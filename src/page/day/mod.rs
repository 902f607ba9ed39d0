//! "Will it last a hot day?": a sentence with its odds, three charts on one
//! clock, what happens and when, and everything it rests on.

mod band;
mod changes;
mod charts;
mod check_ins;
mod diagram;
mod enough;
mod forms;
mod import;
mod modes;
mod told;
mod weather;
mod working;

use super::{kit::Fold, state::State};
use crate::text::day_words as words;
use changes::{BedtimeLines, Changes};
use charts::Charts;
use check_ins::{CheckIns, Checked};
use enough::{Enough, LongestCoolNight};
use forms::{Forms, Start};
use leptos::prelude::*;
use told::{DayTold, Told};
use working::{ByDay, EnergyBalance, Events};

/// All that stands under the question. `is_open`: its fold is; folded away, nothing is
/// worked out.
#[component]
pub fn DayQuestion(is_open: RwSignal<bool>) -> impl IntoView {
    provide_context(Told::new(State::here(), is_open));
    view! {
        <DayTold />
        <Checked />
        <Fold title=|| words::CHECK_INS>
            <CheckIns />
        </Fold>
        <Start />
        <Charts />
        <diagram::Flows />
        <Changes />
        <BedtimeLines />
        <LongestCoolNight />
        <Fold title=|| words::ENOUGH>
            <Enough />
        </Fold>
        <Events />
        <ByDay />
        <EnergyBalance />
        <h3>{words::RESTS_ON}</h3>
        <Forms />
    }
}
