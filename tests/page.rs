//! The page inside a real browser (headless Chromium, by wasm-bindgen's runner).
#![cfg(target_arch = "wasm32")]

use leptos::prelude::*;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// The ground under all other tests here: a signal reaches the document, and a
/// second value replaces the first. Source: Leptos' own contract of `mount_to`.
#[wasm_bindgen_test]
async fn a_signal_reaches_the_document() {
    let hours = RwSignal::new(7);
    mount_to_body(move || view! { <output id="hours">{hours}</output> });
    let shown = || {
        document()
            .get_element_by_id("hours")
            .and_then(|output| output.text_content())
    };
    assert_eq!(shown().as_deref(), Some("7"));
    hours.set(8);
    leptos::task::tick().await;
    assert_eq!(shown().as_deref(), Some("8"));
}
