//! Hours from a weather file: picked or dropped, the hottest stretch taken.

use super::State;
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::day::import::{MOST_BYTES, Refusal, Stamp, Stretch, Taken, read},
    page::{field::Choice, kit::Press, turns::spawn},
    text::{day as say, day_words as words},
};
use leptos::{ev, html, prelude::*};
use wasm_bindgen::{JsCast, JsValue};

/// What became of the last file.
#[derive(Clone, Debug, PartialEq)]
enum Said {
    Nothing,
    Wrong(Refusal),
    Taken(Taken),
}

#[derive(Clone, Copy)]
struct Desk {
    state: State,
    said: RwSignal<Said>,
    stamp: RwSignal<usize>,
    stretch: RwSignal<usize>,
}

const STAMPS: [Stamp; 3] = [Stamp::EndOfHour, Stamp::MiddleOfHour, Stamp::StartOfHour];
const STRETCHES: [Stretch; 2] = [Stretch::Hottest, Stretch::PlanDate];

/// Where a file is dropped, and what was read of it.
#[component]
pub fn Import() -> impl IntoView {
    let state = State::here();
    let desk = Desk {
        state,
        said: RwSignal::new(Said::Nothing),
        stamp: RwSignal::new(1),
        stretch: RwSignal::new(0),
    };
    let picker = NodeRef::<html::Input>::new();
    let pick = move || {
        if let Some(picker) = picker.get_untracked() {
            picker.click();
        }
    };
    let none =
        Signal::derive(move || state.with_plan(|plan| plan.day.imported.outdoor_c.is_empty()));
    let said = move || match desk.said.get() {
        Said::Nothing => String::new(),
        Said::Wrong(error) => say::weather_fault(formatter(), &error),
        Said::Taken(taken) => state.with_plan(|plan| say::weather_taken(formatter(), plan, &taken)),
    };
    view! {
        <div>
            <h3>{say(m::DayWeatherFile)}</h3>
            <div
                class="drop"
                on:dragover=|event| event.prevent_default()
                on:drop=move |event| dropped(desk, &event)
            >
                <p class="hint">{say(m::DayWeatherFileHint)}</p>
                <Select
                    id="weather-stretch"
                    label=say(m::DayStretch)
                    names=words::stretches(formatter()).into()
                    at=desk.stretch
                />
                <Select
                    id="weather-stamp"
                    label=say(m::DayStamp)
                    names=words::stamps(formatter()).into()
                    at=desk.stamp
                />
                <div class="buttons">
                    <Press words=say(m::DayPickWeather) press=pick />
                    <Press words=say(m::DayForgetWeather) hidden=none press=move || forget(desk) />
                </div>
                <input
                    node_ref=picker
                    class="hidden"
                    id="weather-file"
                    type="file"
                    accept=".epw,.csv,.tm2,.tm3,.txt,text/csv,text/plain"
                    aria-label=say(m::DayPickWeather)
                    tabindex="-1"
                    on:change=move |event| picked(desk, &event)
                />
                <p
                    class="log-said"
                    class:wrong-log=move || matches!(desk.said.get(), Said::Wrong(_))
                    role="status"
                    id="weather-said"
                >
                    {said}
                </p>
            </div>
        </div>
    }
}

#[component]
fn Select(
    id: &'static str,
    label: &'static str,
    names: Vec<&'static str>,
    at: RwSignal<usize>,
) -> impl IntoView {
    let names = move || names.iter().map(|&name| name.to_owned()).collect();
    view! {
        <Choice
            id=id
            label=label
            names=names
            chosen=move || at.get()
            choose=move |index| at.set(index)
        />
    }
}

fn forget(desk: Desk) {
    desk.said.set(Said::Nothing);
    desk.state
        .edit(|plan| plan.day.imported = Default::default());
}

fn take(desk: Desk, bytes: &[u8]) {
    let stamp = STAMPS[desk.stamp.get_untracked().min(2)];
    let stretch = STRETCHES[desk.stretch.get_untracked().min(1)];
    match read(bytes, stamp) {
        Ok(file) => {
            let plan = desk.state.plan.get_untracked();
            let (next, taken) = file.taken_into(&plan, stretch);
            desk.state.edit(|plan| *plan = next);
            desk.said.set(Said::Taken(taken));
        }
        // What was there stays.
        Err(error) => desk.said.set(Said::Wrong(error)),
    }
}

fn picked(desk: Desk, event: &ev::Event) {
    let target = event.target();
    let Some(input) = target.and_then(|t| t.dyn_into::<web_sys::HtmlInputElement>().ok()) else {
        return;
    };
    let file = input.files().and_then(|files| files.get(0));
    // So that the same file, corrected, can be chosen again.
    input.set_value("");
    open(desk, file);
}

fn dropped(desk: Desk, event: &ev::DragEvent) {
    event.prevent_default();
    let get = |of: &JsValue, key: &str| js_sys::Reflect::get(of, &JsValue::from_str(key)).ok();
    let files = get(event, "dataTransfer").and_then(|data| get(&data, "files"));
    let files = files.and_then(|files| files.dyn_into::<web_sys::FileList>().ok());
    open(desk, files.and_then(|files| files.get(0)));
}

fn open(desk: Desk, file: Option<web_sys::File>) {
    let Some(file) = file else { return };
    // Read no more than would be refused for its size anyway.
    let Ok(part) = file.slice_with_f64_and_f64(0.0, MOST_BYTES as f64 + 1.0) else {
        return;
    };
    spawn(async move {
        let buffer = wasm_bindgen_futures::JsFuture::from(part.array_buffer()).await;
        if let Ok(buffer) = buffer {
            take(desk, &js_sys::Uint8Array::new(&buffer).to_vec());
        }
    });
}
