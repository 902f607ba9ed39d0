//! Hands files to the browser: texts as they are, pictures drawn from SVG.

use super::Said;
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    page::{browser::document, files::download},
    text::hand_on as words,
};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};

pub const SVG: &str = "image/svg+xml";
pub const CSV: &str = "text/csv;charset=utf-8";
pub const MARKDOWN: &str = "text/markdown;charset=utf-8";
pub const JSON: &str = "application/json";
pub const HTML: &str = "text/html;charset=utf-8";

/// Pictures are drawn at twice their size: sharp on a screen that has the dots.
const SCALE: f64 = 2.0;

/// A text as a file.
#[inline(never)]
pub fn text(said: Said, name: String, kind: &str, text: &str) {
    let done = download(&name, kind, &JsValue::from_str(text)).is_ok();
    tell(said, &name, done);
}

/// An SVG as a PNG: an image of it, drawn on a canvas.
#[inline(never)]
pub fn png(said: Said, name: String, svg: &str) {
    if draw(said, name, svg).is_err() {
        said.set(say(m::HandOnPngFailed).into());
    }
}

fn draw(said: Said, name: String, svg: &str) -> Result<(), JsValue> {
    let image = web_sys::HtmlImageElement::new()?;
    let drawn = image.clone();
    let on_load = Closure::once_into_js(move || {
        if onto_canvas(said, name, &drawn).is_err() {
            said.set(say(m::HandOnPngFailed).into());
        }
    });
    let on_error = Closure::once_into_js(move || said.set(say(m::HandOnPngFailed).into()));
    image.set_onload(Some(on_load.unchecked_ref()));
    image.set_onerror(Some(on_error.unchecked_ref()));
    // An address with the picture inside: in a sandboxed frame there is no other.
    let inside: String = js_sys::encode_uri_component(svg).into();
    image.set_src(&format!("data:{SVG};charset=utf-8,{inside}"));
    Ok(())
}

fn onto_canvas(said: Said, name: String, image: &web_sys::HtmlImageElement) -> Result<(), JsValue> {
    let (width, height) = (
        f64::from(image.width()) * SCALE,
        f64::from(image.height()) * SCALE,
    );
    let canvas: web_sys::HtmlCanvasElement = document().create_element("canvas")?.unchecked_into();
    canvas.set_width(width as u32);
    canvas.set_height(height as u32);
    let context = canvas.get_context("2d")?.ok_or(JsValue::NULL)?;
    let context: web_sys::CanvasRenderingContext2d = context.unchecked_into();
    context.draw_image_with_html_image_element_and_dw_and_dh(image, 0.0, 0.0, width, height)?;
    let made = Closure::once_into_js(move |blob: JsValue| {
        let done = !blob.is_null() && download(&name, "image/png", &blob).is_ok();
        tell(said, &name, done);
    });
    canvas.to_blob(made.unchecked_ref())
}

fn tell(said: Said, name: &str, done: bool) {
    said.set(if done {
        words::saved(formatter(), name)
    } else {
        say(m::HandOnNotSaved).into()
    });
}
