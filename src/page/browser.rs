//! The few things asked of the browser that are no elements.

use leptos::prelude::*;
use std::time::Duration;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};

/// The window. There is one wherever the page runs.
pub fn window() -> web_sys::Window {
    web_sys::window().expect("a window")
}

pub fn document() -> web_sys::Document {
    window().document().expect("a document")
}

/// The tag of the language that the browser is set to. Some say what is no tag (`C`, from
/// a system without a locale), and their own tables throw at it: they get English.
pub fn language() -> String {
    let said = window().navigator().language();
    said.filter(|tag| is_tag(tag))
        .unwrap_or_else(|| "en".to_owned())
}

fn is_tag(tag: &str) -> bool {
    let canonical = js_sys::Reflect::get(&js_sys::global(), &"Intl".into())
        .and_then(|intl| js_sys::Reflect::get(&intl, &"getCanonicalLocales".into()))
        .and_then(JsCast::dyn_into::<js_sys::Function>)
        .and_then(|names| names.call1(&JsValue::UNDEFINED, &tag.into()));
    canonical.is_ok()
}

/// Whether numbers have a decimal comma where that language is spoken, by the browser's
/// own tables (CLDR's).
pub fn decimal_comma(tag: &str) -> bool {
    let number = js_sys::Number::from(1.5);
    let written = number.to_locale_string(tag);
    String::from(written).contains(',')
}

/// Whether the clock has twelve hours there.
pub fn clock_12h(tag: &str) -> bool {
    let options = js_sys::Object::new();
    let _ = js_sys::Reflect::set(&options, &"hour".into(), &"numeric".into());
    let tags = js_sys::Array::of1(&tag.into());
    let format = js_sys::Intl::DateTimeFormat::new(&tags, &options);
    let resolved = format.resolved_options();
    js_sys::Reflect::get(&resolved, &"hour12".into()).is_ok_and(|is| is.is_truthy())
}

/// Calls `heard` at each of the window's events, for as long as the owner lives.
pub fn listen(event: &'static str, heard: impl Fn() + 'static) {
    let heard: Box<dyn FnMut()> = Box::new(heard);
    let closure = Closure::wrap(heard);
    let _ = window().add_event_listener_with_callback(event, closure.as_ref().unchecked_ref());
    StoredValue::new_local(closure);
}

/// Calls `work` after a while; answers with what [`forget`] takes.
pub fn later(rest: Duration, work: impl FnOnce() + 'static) -> Option<i32> {
    let function = Closure::once_into_js(work);
    let millis = i32::try_from(rest.as_millis()).unwrap_or(i32::MAX);
    window()
        .set_timeout_with_callback_and_timeout_and_arguments_0(function.unchecked_ref(), millis)
        .ok()
}

/// Does not call it after all.
pub fn forget(timer: i32) {
    window().clear_timeout_with_handle(timer);
}
