//! A part of the page that comes after the first answer: how far it is, and what stands
//! in its place until then.

use crate::{
    page::{
        browser::document,
        kit::{Press, anew},
        locale::say,
    },
    text::m,
};
use leptos::prelude::*;
use std::sync::LazyLock;

/// The part did not come.
pub struct Missing;

/// How far a part is.
#[derive(Clone, Copy)]
pub enum Far<T> {
    Waits,
    Coming,
    There(T),
    Missing,
}

impl<T> Far<T> {
    fn there(self) -> Option<T> {
        match self {
            Self::There(part) => Some(part),
            _ => None,
        }
    }
}

/// A part by the functions that it hands out, and a sign on the page's root that tells
/// scripts around it how far it is.
pub struct Part<T: Send + Sync + 'static> {
    sign: &'static str,
    far: LazyLock<ArcRwSignal<Far<T>>>,
}

impl<T: Copy + Send + Sync + 'static> Part<T> {
    pub const fn new(sign: &'static str) -> Self {
        Self {
            sign,
            far: LazyLock::new(|| ArcRwSignal::new(Far::Waits)),
        }
    }

    pub fn set(&self, far: Far<T>) {
        let value = match far {
            Far::Waits | Far::Coming => Some("coming"),
            Far::Missing => Some("missing"),
            Far::There(_) => None,
        };
        if let Some(root) = document().document_element() {
            let _ = match value {
                Some(value) => root.set_attribute(self.sign, value),
                None => root.remove_attribute(self.sign),
            };
        }
        self.far.set(far);
    }

    /// Brings it, unless it is there or on its way.
    pub async fn need(&self, bring: impl Future<Output = Result<T, Missing>>) -> bool {
        if self.there().is_none() {
            self.set(Far::Coming);
            let far = bring.await.map_or(Far::Missing, Far::There);
            // It may have been asked for twice; it is there once.
            if self.there().is_none() {
                self.set(far);
            }
        }
        self.there().is_some()
    }

    /// What it hands out, if it is there by now.
    pub fn there(&self) -> Option<T> {
        self.far.get_untracked().there()
    }

    /// The same, told again when it comes.
    pub fn follow(&self) -> Option<T> {
        self.far.get().there()
    }

    pub fn is_missing(&self) -> bool {
        matches!(self.far.get_untracked(), Far::Missing)
    }

    /// What `build` builds of it; until then a line on how far it is, and where it has
    /// not come, `again` at a tap.
    pub fn place(
        &'static self,
        again: fn(),
        build: impl Fn(T) -> AnyView + Clone + Send + Sync + 'static,
    ) -> AnyView {
        let inside = move |_| match self.far.get_untracked() {
            Far::There(part) => build(part),
            Far::Missing => view! {
                <p class="hint coming" role="status">
                    {say(m::PartMissing)}
                </p>
                <Press class="quiet" words=say(m::PartAgain) press=again />
            }
            .into_any(),
            Far::Waits | Far::Coming => view! {
                <p class="hint coming" role="status">
                    {say(m::PartComing)}
                </p>
            }
            .into_any(),
        };
        view! { <div>{anew(move || self.step(), inside)}</div> }.into_any()
    }

    /// What `build` builds of it, where the page is whole without it: nothing until it
    /// is there.
    pub fn extra(
        &'static self,
        build: impl Fn(T) -> AnyView + Clone + Send + Sync + 'static,
    ) -> AnyView {
        let inside = move |_| self.there().map_or_else(|| ().into_any(), &build);
        view! { <div>{anew(move || self.step(), inside)}</div> }.into_any()
    }

    /// What is shown anew when it changes.
    fn step(&self) -> u8 {
        match self.far.get() {
            Far::Waits | Far::Coming => 0,
            Far::There(_) => 1,
            Far::Missing => 2,
        }
    }
}
