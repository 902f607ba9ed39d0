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
mod unit_map;
mod weather;
mod working;

use super::{kit::Fold, state::State};
use crate::page::locale::say;
use crate::text::m;
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
        <Fold title=|| say(m::DayCheckIns)>
            <CheckIns />
        </Fold>
        <p class="hint">{say(m::DayDutyFromWeather)}</p>
        <Start />
        <Charts />
        <diagram::Flows />
        <Changes />
        <BedtimeLines />
        <LongestCoolNight />
        <Fold title=|| say(m::DayEnough)>
            <Enough />
        </Fold>
        <Events />
        <ByDay />
        <EnergyBalance />
        <h3>{say(m::DayRestsOn)}</h3>
        <Forms />
    }
}
