//! Starts the page.

use leptos::prelude::*;

fn main() {
    console_error_panic_hook::set_once();
    mount_to_body(|| view! { <main><h1>"Till Morning"</h1></main> });
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("data-ready", "");
    }
}
