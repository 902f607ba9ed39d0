//! The page inside a real browser (headless Chromium, by wasm-bindgen's runner).
#![cfg(target_arch = "wasm32")]

use till_morning::{answer::answer, page, plan::Plan};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

fn document() -> web_sys::Document {
    web_sys::window()
        .and_then(|window| window.document())
        .expect("a document")
}

fn text_of(selector: &str) -> String {
    let element = document().query_selector(selector).ok().flatten();
    element
        .and_then(|element| element.text_content())
        .unwrap_or_default()
}

/// Lets the effects of a change run: they come in turns, called by messages. As many
/// messages in a row let as many turns pass.
async fn settled() {
    for _ in 0..24 {
        let next = js_sys::Promise::new(&mut |done, _| {
            let channel = web_sys::MessageChannel::new().expect("a channel");
            channel.port1().set_onmessage(Some(&done));
            let _ = channel.port2().post_message(&JsValue::NULL);
        });
        let _ = wasm_bindgen_futures::JsFuture::from(next).await;
    }
}

/// Puts a text into a field as a keyboard would.
async fn type_into(id: &str, text: &str) {
    let field = document()
        .get_element_by_id(id)
        .expect("the field is on the page");
    let field: web_sys::HtmlInputElement = field.unchecked_into();
    field.set_value(text);
    let event = web_sys::Event::new("input").expect("an event");
    let _ = field.dispatch_event(&event);
    settled().await;
}

/// The same numbers in the browser as natively: the native ones are on file, and
/// held against outside sources there. (Maths functions differ in the last bit.)
#[wasm_bindgen_test]
fn the_engine_answers_as_it_does_natively() {
    let on_file: serde_json::Value =
        serde_json::from_str(include_str!("golden/answers/demo.json")).expect("JSON");
    let answer = answer(&Plan::demo());
    for (index, run) in answer.runs.iter().enumerate() {
        let native = on_file["runs"][index]["hours_h"]["likely"]
            .as_f64()
            .expect("a number");
        let likely = run.hours_h.likely;
        assert!(
            (likely / native - 1.0).abs() < 1e-5,
            "run {index}: {likely} {native}"
        );
    }
}

/// From the first sentence to a bad text and back, without a server.
#[wasm_bindgen_test]
async fn the_page_answers_and_keeps_what_is_typed() {
    page::start();
    settled().await;
    let first = text_of("#answer");
    assert!(first.starts_with("The cooling unit runs "), "{first}");

    type_into("banks-0--battery-rated-ah", "50").await;
    let second = text_of("#answer");
    assert_ne!(first, second);

    type_into("banks-0--battery-rated-ah", "plenty").await;
    assert_eq!(text_of("#answer"), second, "the last good answer stays");
    assert!(!text_of("#banks-0--battery-rated-ah-error").is_empty());
    assert!(!text_of(".stale-mark").is_empty());

    // Said by nobody it is what was assumed at first.
    type_into("banks-0--battery-rated-ah", "").await;
    assert_eq!(text_of("#answer"), first);
    assert!(text_of(".stale-mark").is_empty());
}
