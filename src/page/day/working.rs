//! What happens and when, day by day, and the books.

use super::{State, told::Told};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::{DayAnswer, day::DayEvent},
    page::kit::{Fold, anew},
    text::day as say,
};
use leptos::prelude::*;

/// Every event, with its clock time.
#[component]
pub fn Events() -> impl IntoView {
    view! {
        <Fold title=|| say(m::DayEvents)>
            <EventList />
        </Fold>
    }
}

#[component]
fn EventList() -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    let rows = Memo::new(move |_| {
        told.of(state, |plan, day| {
            let events = day.events.iter();
            let row = |event: &DayEvent| {
                (
                    say::moment(formatter(), plan, event.hours_h),
                    say::event_sentence(formatter(), plan, event),
                )
            };
            events.map(row).collect::<Vec<_>>()
        })
    });
    let row = |(when, what)| {
        view! {
            <li>
                <span class="when">{when}</span>
                <span>{what}</span>
            </li>
        }
    };
    view! { <ol class="events">{move || rows.get().into_iter().map(row).collect_view()}</ol> }
}

/// One row for each day.
#[component]
pub fn ByDay() -> impl IntoView {
    view! {
        <Fold title=|| say(m::DayByDay)>
            <DayTable />
        </Fold>
    }
}

#[component]
fn DayTable() -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    let build = move |_| {
        let rows = told.of(state, |plan, day| say::day_rows(formatter(), plan, day));
        let mut rows = rows.into_iter();
        let heads = rows.next().unwrap_or_default().into_iter();
        let heads = heads.map(|text| view! { <th scope="col">{text}</th> });
        let rows = rows.map(|cells| {
            let mut cells = cells.into_iter();
            let first = cells.next();
            let rest = cells.map(|cell| view! { <td>{cell}</td> });
            view! {
                <tr>
                    <th scope="row">{first}</th>
                    {rest.collect_view()}
                </tr>
            }
        });
        view! {
            <thead>
                <tr>{heads.collect_view()}</tr>
            </thead>
            <tbody>{rows.collect_view()}</tbody>
        }
        .into_any()
    };
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=say(m::DayByDay)>
            <table class="days">{anew(move || state.turn(), build)}</table>
        </div>
    }
}

/// The energy book and the heat book, and what they were reckoned by.
#[component]
pub fn EnergyBalance() -> impl IntoView {
    view! {
        <Fold title=|| say(m::DayBooks)>
            <h3>{say(m::DayEnergyBook)}</h3>
            <Book of=say::energy_rows />
            <h3>{say(m::DayHeatBook)}</h3>
            <Book of=say::heat_rows />
            <p class="source">{say(m::DayMethod)}</p>
        </Fold>
    }
}

#[component]
fn Book(of: fn(Formatter, &DayAnswer) -> Vec<say::BookRow>) -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    let rows = Memo::new(move |_| told.of(state, |_, day| of(formatter(), day)));
    let row = |(what, much)| {
        view! {
            <tr>
                <th scope="row">{what}</th>
                <td>{much}</td>
            </tr>
        }
    };
    view! {
        <table class="terms">
            <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
        </table>
    }
}
