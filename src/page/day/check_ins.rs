//! What was read off in the night: clock, monitor, thermometer.

use super::{State, told::Told};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::page::rows::{AddRow, Row, alike, rows};
use crate::plan::Plan;
use crate::text::m;
use crate::{
    page::{
        field::NumberField,
        kit::{Press, Sentences},
    },
    plan::{CheckIn, Path, check::MOST_CHECK_INS, day::CheckInField as I},
    text::day as say,
};
use leptos::prelude::*;

/// The readings, a card each.
#[component]
pub fn CheckIns() -> impl IntoView {
    let state = State::here();
    let count = |plan: &Plan| plan.check_ins.len();
    let add = move || {
        let now = js_sys::Date::new_0();
        let clock_min = 60 * now.get_hours() + now.get_minutes();
        state.edit(|plan| {
            plan.check_ins.push(CheckIn {
                clock_min: Some(clock_min),
                ..CheckIn::default()
            });
        });
    };
    let card = |row| view! { <CheckInCard row=row /> }.into_any();
    let has_room = move |plan: &Plan| count(plan) < MOST_CHECK_INS;
    view! {
        <p class="hint">{say(m::DayCheckInHint)}</p>
        <div>{rows(Path::CheckIns, move |plan| alike(count(plan)), card)}</div>
        <AddRow words=say(m::DayAddCheckIn) has_room=has_room press=add />
        <p class="hint">{say(m::DayCheckInLog { question: say(m::QuestionClaims) })}</p>
    }
}

#[component]
fn CheckInCard(row: Row) -> impl IntoView {
    let state = State::here();
    let at = row.at;
    let fields = [I::ClockMin, I::ChargePercent, I::CabinC, I::DayCount];
    let field = |field| view! { <NumberField path=Path::CheckIn(at, field) /> };
    let remove = move || state.remove_row(Path::CheckIns, at);
    view! {
        <fieldset class="card">
            <legend>{row.title(say(m::DayCheckIn))}</legend>
            <div class="grid">{fields.map(field).collect_view()}</div>
            <Press class="quiet" words=say(m::DayRemoveCheckIn) press=remove />
        </fieldset>
    }
}

/// What the readings make of the night; nothing before there is one.
#[component]
pub fn Checked() -> impl IntoView {
    let state = State::here();
    let late = Told::here().bands.check_in;
    let sentences = Memo::new(move |_| {
        late.get().map_or_else(Vec::new, |said| {
            state.with_plan(|plan| {
                let mut all = vec![say::check_in_sentence(formatter(), plan, &said)];
                all.push(say::onward_sentence(formatter(), plan, &said));
                all.extend(say::advice_sentence(formatter(), plan, &said));
                all
            })
        })
    });
    let lines = move || {
        let all = sentences.get();
        let last = all.len().saturating_sub(1);
        let lines = all.into_iter().enumerate().map(|(at, text)| {
            let class = if at == last {
                "answer advice"
            } else {
                "detail"
            };
            view! { <p class=class>{text}</p> }
        });
        lines.collect_view()
    };
    let fit = move || {
        let said = late.get();
        said.map_or_else(Vec::new, |said| say::fit_sentences(formatter(), &said.fit))
    };
    let take = move || {
        let Some(said) = late.get_now() else { return };
        state.edit(|plan| {
            if let Some(fitted) = said.fit.applied_to(plan) {
                *plan = fitted;
            }
        });
    };
    let none = Signal::derive(move || {
        let said = late.get();
        !said.is_some_and(|said| state.with_plan(|plan| say::is_fitted(&said, plan)))
    });
    view! {
        <div
            class="checked"
            class:behind=move || late.is_behind()
            hidden=move || late.get().is_none()
        >
            <h3>{say(m::DayChecked)}</h3>
            <div role="status" id="day-checked">
                {lines}
            </div>
            <Sentences class="findings" all=fit />
            <Press class="quiet" words=say(m::DayTakeFit) hidden=none press=take />
        </div>
    }
}
