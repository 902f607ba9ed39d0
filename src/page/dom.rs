//! Elements, and what keeps them true: a thin layer on Leptos' reactive graph.
//!
//! Leptos' own views are types built of types: every element of a page this
//! long has one of its own, and each is compiled whole. The same page written
//! with `view!` weighed 250 kB by brotli, past the budget for a phone on a slow
//! line. Here an element is an element, every closure is boxed at the door, and
//! signals, memos, owners and effects are Leptos'.

use super::{
    browser::{document, later},
    reactive::*,
};
use std::cell::{Cell, RefCell};
use wasm_bindgen::{JsCast, closure::Closure};

/// An element under construction.
#[derive(Clone)]
pub struct El(pub web_sys::Element);

/// An HTML element with a class (may be empty).
#[inline(never)]
pub fn h(tag: &str, class: &str) -> El {
    let element = document().create_element(tag).expect("a known tag");
    let el = El(element);
    if class.is_empty() {
        el
    } else {
        el.attr("class", class)
    }
}

impl El {
    #[inline(never)]
    pub fn attr(self, name: &str, value: &str) -> Self {
        let _ = self.0.set_attribute(name, value);
        self
    }

    /// Appends a text.
    #[inline(never)]
    pub fn text(self, text: &str) -> Self {
        let _ = self.0.append_child(&document().create_text_node(text));
        self
    }

    #[inline(never)]
    pub fn child(self, child: Self) -> Self {
        let _ = self.0.append_child(&child.0);
        self
    }

    pub fn children(self, children: impl IntoIterator<Item = Self>) -> Self {
        children.into_iter().fold(self, Self::child)
    }

    /// Calls `handle` at each event. The browser drops it with the element.
    pub fn on(self, event: &str, handle: impl FnMut(web_sys::Event) + 'static) -> Self {
        self.boxed_on(event, Box::new(handle))
    }

    #[inline(never)]
    fn boxed_on(self, event: &str, handle: Box<dyn FnMut(web_sys::Event)>) -> Self {
        let function = Closure::wrap(handle).into_js_value();
        let _ = self
            .0
            .add_event_listener_with_callback(event, function.unchecked_ref());
        self
    }

    pub fn on_click(self, handle: impl Fn() + 'static) -> Self {
        self.on("click", move |_| handle())
    }

    /// Keeps the element's whole text true.
    pub fn live_text(self, text: impl Fn() -> String + 'static) -> Self {
        self.boxed_text(Box::new(text))
    }

    #[inline(never)]
    fn boxed_text(self, text: Box<dyn Fn() -> String>) -> Self {
        let element = self.0.clone();
        always(move || set_text(&element, &text()));
        self
    }

    /// Keeps an attribute there, empty, while it should be.
    pub fn live_flag(self, name: &'static str, on: impl Fn() -> bool + 'static) -> Self {
        self.boxed_switch(name, Box::new(on), set_flag)
    }

    /// Keeps a class true.
    pub fn live_class(self, name: &'static str, on: impl Fn() -> bool + 'static) -> Self {
        self.boxed_switch(name, Box::new(on), set_class)
    }

    #[inline(never)]
    fn boxed_switch(self, name: &'static str, on: Box<dyn Fn() -> bool>, set: Switch) -> Self {
        let element = self.0.clone();
        let was = Cell::new(None);
        always(move || {
            let is = on();
            if was.replace(Some(is)) != Some(is) {
                set(&element, name, is);
            }
        });
        self
    }

    /// Keeps the element's markup true: for drawings, whose texts are escaped.
    pub fn live_markup(self, markup: impl Fn() -> String + 'static) -> Self {
        self.boxed_markup(Box::new(markup))
    }

    #[inline(never)]
    fn boxed_markup(self, markup: Box<dyn Fn() -> String>) -> Self {
        let element = self.0.clone();
        let was = RefCell::new(String::new());
        always(move || {
            let is = markup();
            if *was.borrow() != is {
                element.set_inner_html(&is);
                was.replace(is);
            }
        });
        self
    }

    /// Keeps the children true: built anew whenever `key` changes, and only then,
    /// so that a field within keeps its focus while numbers change.
    pub fn live_children(
        self,
        key: impl Fn() -> String + Send + Sync + 'static,
        build: impl Fn() -> Vec<Self> + 'static,
    ) -> Self {
        self.boxed_children(Box::new(key), Box::new(build))
    }

    #[inline(never)]
    fn boxed_children(self, key: Box<dyn Fn() -> String + Send + Sync>, build: Build) -> Self {
        let key = Memo::new(move |_| key());
        let element = self.0.clone();
        always(move || {
            // Asked for, not only tracked: a memo that nobody reads never wakes.
            key.with(|_| ());
            element.set_text_content(None);
            // Inside it is up to its own effects what they read.
            for child in untrack(&build) {
                let _ = element.append_child(&child.0);
            }
        });
        self
    }
}

/// Sets an attribute or a class on or off.
type Switch = fn(&web_sys::Element, &str, bool);
/// What builds children, boxed.
type Build = Box<dyn Fn() -> Vec<El>>;

/// Runs `work` now, and again whenever something it reads has changed, for as
/// long as its owner lives.
pub fn always(work: impl Fn() + 'static) {
    boxed_always(Box::new(work));
}

#[inline(never)]
fn boxed_always(work: Box<dyn Fn()>) {
    Lasting::keep(RenderEffect::new(move |_| work()));
}

/// Things that live as long as the present owner: dropped, they would stop.
pub struct Lasting;

impl Lasting {
    pub fn keep<T: 'static>(thing: T) {
        StoredValue::new_local(thing);
    }
}

/// Writes only what differs: a screen reader hears each writing.
pub fn set_text(element: &web_sys::Element, text: &str) {
    if element.text_content().as_deref() != Some(text) {
        element.set_text_content(Some(text));
    }
}

/// The same for an attribute: even the value it has would be styled anew.
pub fn set_attr(element: &web_sys::Element, name: &str, value: Option<&str>) {
    if element.get_attribute(name).as_deref() == value {
        return;
    }
    let _ = match value {
        Some(value) => element.set_attribute(name, value),
        None => element.remove_attribute(name),
    };
}

pub fn set_flag(element: &web_sys::Element, name: &str, on: bool) {
    set_attr(element, name, on.then_some(""));
}

pub fn set_class(element: &web_sys::Element, name: &str, on: bool) {
    let _ = element.class_list().toggle_with_force(name, on);
}

/// A text field's text.
pub fn text_of(event: &web_sys::Event) -> String {
    event.target().map_or_else(String::new, |target| {
        if let Some(input) = target.dyn_ref::<web_sys::HtmlInputElement>() {
            input.value()
        } else if let Some(select) = target.dyn_ref::<web_sys::HtmlSelectElement>() {
            select.value()
        } else {
            String::new()
        }
    })
}

/// A button with its words.
pub fn button(class: &str, words: &str, press: impl Fn() + 'static) -> El {
    h("button", class)
        .attr("type", "button")
        .text(words)
        .on_click(press)
}

/// A fold whose inside is built when it is first opened.
pub fn fold(class: &str, summary: El, inside: impl Fn() -> Vec<El> + 'static) -> El {
    boxed_fold(class, summary, Box::new(inside))
}

#[inline(never)]
fn boxed_fold(class: &str, summary: El, inside: Build) -> El {
    let owner = Owner::current();
    let body = h("div", "fold-body");
    let (built, at) = (Cell::new(false), body.clone());
    h("details", class)
        .on("toggle", move |event| {
            if built.get() || !is_open(&event) {
                return;
            }
            built.set(true);
            let build = || at.clone().children(inside());
            // What it keeps true lives as long as the fold, not as the event.
            let _ = match &owner {
                Some(owner) => owner.with(build),
                None => build(),
            };
        })
        .child(summary)
        .child(body)
}

/// Whether the fold that an event is of is open now.
fn is_open(event: &web_sys::Event) -> bool {
    let element = event
        .target()
        .and_then(|target| target.dyn_into::<web_sys::Element>().ok());
    element.is_some_and(|fold| fold.has_attribute("open"))
}

/// Tells whether the fold that an element will stand in is open: what is folded away
/// need not be worked out.
pub fn follow_fold(inside: &El, open: RwSignal<bool>) {
    let inside = inside.0.clone();
    // A moment later it stands in it.
    later(std::time::Duration::ZERO, move || {
        if let Ok(Some(fold)) = inside.closest("details") {
            El(fold).on("toggle", move |event| {
                // Folds within tell their own.
                if event.target() == event.current_target() {
                    open.set(is_open(&event));
                }
            });
        }
    });
}

/// A fold with plain words on it.
pub fn named_fold(class: &str, words: &str, inside: impl Fn() -> Vec<El> + 'static) -> El {
    fold(class, h("summary", "").text(words), inside)
}
