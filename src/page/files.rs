//! A plan as a file: saved by the browser, opened from it.

use super::browser::document;
use super::{state::State, turns::spawn};
use crate::{
    plan::{
        Plan,
        draft::Draft,
        open::{MOST_BYTES, NotAPlan, plan_from_json, plan_to_json},
    },
    text::Notice,
};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};

/// Hands the plan to the browser as a download.
pub fn save(plan: &Plan) {
    let _ = download(
        "till-morning-plan.json",
        "application/json",
        &JsValue::from_str(&plan_to_json(plan)),
    );
}

/// Hands a text, or what a blob holds, to the browser under a name.
pub fn download(name: &str, kind: &str, part: &JsValue) -> Result<(), JsValue> {
    let parts = js_sys::Array::of1(part);
    let options = web_sys::BlobPropertyBag::new();
    options.set_type(kind);
    let blob = web_sys::Blob::new_with_blob_sequence_and_options(&parts, &options)?;
    let url = web_sys::Url::create_object_url_with_blob(&blob)?;
    let link: web_sys::HtmlAnchorElement = document().create_element("a")?.unchecked_into();
    link.set_href(&url);
    link.set_download(name);
    link.click();
    web_sys::Url::revoke_object_url(&url)
}

/// Opens the file that was chosen, if it is a plan.
pub fn open(state: State, event: &web_sys::Event) {
    let Some(input) = event
        .target()
        .and_then(|target| target.dyn_into::<web_sys::HtmlInputElement>().ok())
    else {
        return;
    };
    let file = input.files().and_then(|files| files.get(0));
    // So that the same file, mended, can be chosen again.
    input.set_value("");
    let Some(file) = file else { return };
    if file.size() > MOST_BYTES as f64 {
        state.notice.set(Some(Notice::FileTooLong));
        return;
    }
    spawn(async move {
        let text = wasm_bindgen_futures::JsFuture::from(file.text()).await;
        let text = text
            .ok()
            .and_then(|text| text.as_string())
            .unwrap_or_default();
        match plan_from_json(&text) {
            Ok(plan) => state.replace(Draft::of(plan), Notice::FileOpened),
            Err(NotAPlan::UnknownVersion { .. }) => {
                state.notice.set(Some(Notice::FileUnknownVersion));
            }
            Err(NotAPlan::TooLong { .. }) => state.notice.set(Some(Notice::FileTooLong)),
            Err(NotAPlan::Malformed { .. } | NotAPlan::OtherShape { .. }) => {
                state.notice.set(Some(Notice::FileNoPlan))
            }
        }
    });
}
