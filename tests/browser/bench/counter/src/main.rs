//! One button that counts.

use leptos::prelude::*;

#[component]
fn Counter() -> impl IntoView {
    let (count, set_count) = signal(0);
    view! {
        <h1>"Counter"</h1>
        <button on:click=move |_| set_count.update(|count| *count += 1)>"More"</button>
        <p id="answer">{count}</p>
    }
}

fn main() {
    mount_to_body(Counter);
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("data-ready", "");
    }
}
