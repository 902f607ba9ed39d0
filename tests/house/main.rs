//! The rules of the house, held by reading the source as text.
//!
//! Each scan is tried on a bad snippet too: a scan that cannot fail says nothing.

mod browser;
mod licences;
mod names;
mod size;
mod source;

use names::{RULES, offences};
use source::{File, all_files};

#[test]
fn every_rule_is_kept() {
    let files = all_files("src");
    assert!(files.len() > 40, "{} files read", files.len());
    let found: Vec<String> = files.iter().flat_map(offences).collect();
    assert!(found.is_empty(), "\n{}\n", found.join("\n"));
}

/// What each rule must find, and what it must let pass.
#[test]
fn every_rule_can_fail() {
    let bad = [
        ("src/physics/battery/pack.rs", "use leptos::prelude::*;"),
        (
            "src/physics/battery/pack.rs",
            "fn f() { println!(\"12 V\"); }",
        ),
        ("src/plan/open.rs", "use std::{fmt, fs::File};"),
        ("src/plan/open.rs", "let now = std::time::Instant::now();"),
        ("src/answer/mod.rs", "let home = std::env::var(\"HOME\");"),
        ("src/view/chart/mod.rs", "use wasm_bindgen::JsCast;"),
        (
            "src/view/chart/mod.rs",
            "use crate::{view::chart::scale, plan::{Bank, Plan}};",
        ),
        (
            "src/view/diagram/bank.rs",
            "use crate::answer::wiring::BankLimits;",
        ),
        (
            "src/physics/wiring/drop.rs",
            "use crate::physics::battery::Pack;",
        ),
        (
            "src/physics/wiring/drop.rs",
            "fn f(pack: &crate::physics::battery::Pack) {}",
        ),
        (
            "src/physics/battery/mod.rs",
            "use crate::{\n    physics::feed::{DcDc},\n    quantity,\n};",
        ),
        (
            "src/physics/weather/sun.rs",
            "use super::super::cabin::Shell;",
        ),
        ("src/simulate/steady.rs", "use crate::answer::hours;"),
        (
            "src/plan/open.rs",
            "use crate::{physics::battery::Pack, text::words};",
        ),
        ("src/text/words.rs", "use crate::view::drawing::lay_out;"),
        ("src/cellar/door.rs", "fn f() {}"),
        ("src/page/app.rs", "use till_morning::quantity::in_volts;"),
        (
            "src/page/app.rs",
            "use till_morning::{answer::answer, simulate::run_down};",
        ),
        (
            "src/page/app.rs",
            "use crate::{study::spread}; let (band, _) = spread::band(plan);",
        ),
        ("src/page/app.rs", "use crate::physics::battery::Pack;"),
        (
            "src/page/app.rs",
            "view! { \"The voltage sags under a load\" }",
        ),
        ("src/page/app.rs", "use crate::module::Contract;"),
        ("src/bin/module.rs", "use till_morning::page::App;"),
    ];
    for (path, code) in bad {
        assert!(
            !offences(&File::of(path, code)).is_empty(),
            "{path}: {code}"
        );
    }
    let good = [
        (
            "src/page/app.rs",
            "use crate::{study::spread}; let percent = spread::percent_of(path, figure);",
        ),
        (
            "src/physics/battery/pack.rs",
            "// leptos and println! are named in a comment",
        ),
        (
            "src/physics/battery/pack.rs",
            "use super::{curve::Curve, peukert};",
        ),
        (
            "src/physics/battery/pack.rs",
            "use crate::{quantity::volts, search::search};",
        ),
        (
            "src/answer/mod.rs",
            "pub const METHOD: &str = env!(\"CARGO_PKG_VERSION\");",
        ),
        (
            "src/answer/mod.rs",
            "use crate::{physics::battery::Pack, physics::feed::DcDc};",
        ),
        (
            "src/view/chart/mod.rs",
            "use crate::view::chart::scale::Scale; let plane = explanation;",
        ),
        (
            "src/page/app.rs",
            "use leptos::prelude::*; use till_morning::{answer::answer, plan::Plan};",
        ),
        (
            "src/page/app.rs",
            "use till_morning::{physics::battery::Chemistry, simulate::Stop};",
        ),
        (
            "src/page/app.rs",
            "view! { <p class=\"watts of ribbon\">{text}</p> }",
        ),
        ("src/main.rs", "use leptos::mount; fn main() {}"),
    ];
    for (path, code) in good {
        let found = offences(&File::of(path, code));
        assert!(found.is_empty(), "{found:?}");
    }
    assert!(RULES.len() >= 5);
}
