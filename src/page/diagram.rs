//! A diagram in the page: the picture, read out as a whole, and a button over each part
//! of it that opens something.

use super::browser::document;
use crate::view::{diagram::Spot, drawing::Shown};
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// A diagram; nothing where there is none. `opens` tells the element that a part's key
/// opens.
#[component]
pub fn Diagram(
    shown: impl Fn() -> Option<Shown> + Send + Sync + 'static,
    #[prop(optional)] hint: &'static str,
    #[prop(optional)] opens: Option<fn(&str) -> String>,
) -> impl IntoView {
    let shown = Memo::new(move |_| shown());
    let drawn = move || shown.with(|shown| shown.as_ref().map(Shown::markup));
    let title = move || shown.with(|shown| shown.as_ref().map_or("", |shown| shown.title));
    let caption = move || shown.with(|shown| shown.as_ref().map(|shown| shown.caption.clone()));
    let spots = Memo::new(move |_| {
        shown.with(|shown| {
            let picture = shown.as_ref().map(|shown| &shown.picture);
            let all = picture.map_or(&[][..], |picture| &picture.spots).iter();
            all.map(|spot| placed(spot, shown)).collect::<Vec<_>>()
        })
    });
    let keys =
        move || spots.with(|spots| spots.iter().map(|spot| spot.0.clone()).collect::<Vec<_>>());
    let button = move |key: String| {
        opens.map(|opens| view! { <SpotButton spots=spots key=key opens=opens /> })
    };
    view! {
        <figure class="diagram" hidden=move || shown.with(Option::is_none)>
            <h3>{title}</h3>
            <div class="picture">
                // Its texts are escaped by the drawing.
                <div inner_html=drawn></div>
                <For each=keys key=String::clone children=button />
            </div>
            {(!hint.is_empty()).then(|| view! { <p class="hint">{hint}</p> })}
            <figcaption>{caption}</figcaption>
        </figure>
    }
}

/// Key, name and place of a part.
type Place = (String, String, String);

fn placed(spot: &Spot, shown: &Option<Shown>) -> Place {
    let style = shown.as_ref().map(|shown| spot.style(&shown.picture));
    (
        spot.key.clone(),
        spot.name.clone(),
        style.unwrap_or_default(),
    )
}

/// A button over a part of the picture, as large as that.
#[component]
fn SpotButton(spots: Memo<Vec<Place>>, key: String, opens: fn(&str) -> String) -> impl IntoView {
    let id = opens(&key);
    let of = move |read: fn(&Place) -> &String| {
        let key = key.clone();
        move || {
            spots.with(|spots| {
                let found = spots.iter().find(|spot| spot.0 == key);
                found.map(read).cloned().unwrap_or_default()
            })
        }
    };
    view! {
        <button
            type="button"
            class="picture-spot"
            aria-label=of(|place| &place.1)
            // As a property: a strict policy refuses the attribute.
            prop:style=of(|place| &place.2)
            on:click=move |_| open(&id)
        ></button>
    }
}

/// Opens a fold, brings it into sight and gives it the keyboard.
fn open(id: &str) {
    let Some(fold) = document().get_element_by_id(id) else {
        return;
    };
    let _ = fold.set_attribute("open", "");
    fold.scroll_into_view();
    let summary = fold.first_element_child();
    if let Some(summary) = summary.and_then(|one| one.dyn_into::<web_sys::HtmlElement>().ok()) {
        let _ = summary.focus();
    }
}
