//! The words of a language: fetched before anything is said in it.
//!
//! Built without the feature `split`, as in tests, all of them are there from the start.

use crate::{plan::reader::Language, text::patterns};

/// Brings a language's words, unless they are there; `false` where they do not come.
pub async fn bring(language: Language) -> bool {
    if patterns::is_there(language) {
        return true;
    }
    let words = fetched::words(language.tag()).await.ok();
    let Some(words) = words.and_then(|words| words.as_string()) else {
        return false;
    };
    patterns::install(language, words);
    true
}

#[cfg(feature = "split")]
mod fetched {
    use wasm_bindgen::prelude::*;

    #[allow(unsafe_code, reason = "calls a script")]
    #[wasm_bindgen(module = "till-morning-parts")]
    extern "C" {
        /// A language's words by its tag (offline/parts.js, offline/parts_single.js).
        #[wasm_bindgen(catch)]
        pub async fn words(tag: &str) -> Result<JsValue, JsValue>;
    }
}

#[cfg(not(feature = "split"))]
mod fetched {
    use wasm_bindgen::JsValue;

    pub async fn words(_: &str) -> Result<JsValue, JsValue> {
        Err(JsValue::UNDEFINED)
    }
}
