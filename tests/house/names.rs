//! What each room may name.

use super::source::File;

/// A rule: what of a file offends against it.
type Rule = fn(&File) -> Vec<String>;

pub const RULES: [Rule; 6] = [
    the_engine_knows_no_browser,
    the_engine_is_pure,
    rooms_of_physics_stand_alone,
    the_chart_knows_no_plan,
    the_page_reads_the_contract_only,
    page_and_module_are_apart,
];

/// Everything in a file that breaks a rule, each with the file's name.
pub fn offences(file: &File) -> Vec<String> {
    RULES
        .iter()
        .flat_map(|rule| rule(file))
        .map(|offence| format!("{}: {offence}", file.path))
        .collect()
}

/// Rooms with the browser in them, and the two that start a program.
fn is_a_face(file: &File) -> bool {
    matches!(file.room().as_str(), "page" | "bin/module" | "main")
}

fn the_engine_knows_no_browser(file: &File) -> Vec<String> {
    const BROWSER: [&str; 8] = [
        "leptos",
        "web_sys",
        "js_sys",
        "wasm_bindgen",
        "gloo",
        "gloo_storage",
        "console_error_panic_hook",
        "serde_wasm_bindgen",
    ];
    if is_a_face(file) {
        return Vec::new();
    }
    let named = BROWSER.iter().filter(|name| file.names(name));
    named
        .map(|name| format!("the engine names {name}"))
        .collect()
}

/// No clock, no files, no environment, no output.
fn the_engine_is_pure(file: &File) -> Vec<String> {
    const IMPURE: [&str; 7] = ["time", "fs", "env", "io", "net", "process", "thread"];
    const OUTPUT: [&str; 5] = ["println", "print", "eprintln", "eprint", "dbg"];
    if is_a_face(file) {
        return Vec::new();
    }
    let std_paths = file.std_paths();
    let taken = std_paths
        .iter()
        .filter(|path| IMPURE.contains(&path.split("::").next().unwrap_or_default()))
        .map(|path| format!("the engine takes std::{path}"));
    let printed = OUTPUT
        .iter()
        .filter(|name| file.code.contains(&format!("{name}!")) && file.names(name))
        .map(|name| format!("the engine calls {name}!"));
    taken.chain(printed).collect()
}

/// The rooms that `simulate`, `sizing` and `answer` bring together.
const PHYSICS: [&str; 8] = [
    "bank", "draw", "supply", "air", "cabin", "weather", "wiring", "bench",
];

fn rooms_named(file: &File) -> Vec<(String, String)> {
    let first = |path: &String| path.split("::").next().unwrap_or_default().to_string();
    file.own_paths()
        .into_iter()
        .map(|path| (first(&path), path))
        .collect()
}

fn rooms_of_physics_stand_alone(file: &File) -> Vec<String> {
    let room = file.room();
    if !PHYSICS.contains(&room.as_str()) {
        return Vec::new();
    }
    rooms_named(file)
        .into_iter()
        .filter(|(named, _)| *named != room && PHYSICS.contains(&named.as_str()))
        .map(|(_, path)| format!("{room} imports {path}"))
        .collect()
}

fn the_chart_knows_no_plan(file: &File) -> Vec<String> {
    if file.room() != "chart" {
        return Vec::new();
    }
    rooms_named(file)
        .into_iter()
        .filter(|(named, _)| matches!(named.as_str(), "plan" | "answer"))
        .map(|(_, path)| format!("chart imports {path}"))
        .collect()
}

/// The page is a face on the contract: it reads plans and answers, words and
/// pictures. Of other rooms it may name the types that stand in a plan or an
/// answer, and nothing that reckons.
fn the_page_reads_the_contract_only(file: &File) -> Vec<String> {
    const ROOMS: [&str; 8] = [
        "answer", "plan", "finding", "range", "wording", "chart", "pass_on", "page",
    ];
    const TYPES: [&str; 9] = [
        // A look-up of the spread that an origin stands for, shown beside a field.
        "spread::percent_of",
        "bank::Chemistry",
        "simulate::Stop",
        "sizing::Sizing",
        "sizing::Found",
        "sizing::NeededBank",
        "spread::Band",
        "spread::Share",
        "wiring::Size",
    ];
    if file.room() != "page" {
        return Vec::new();
    }
    let is_allowed = |room: &str, path: &str| {
        let is_type = |a_type: &&str| {
            path.strip_prefix(*a_type)
                .is_some_and(|rest| rest.is_empty() || rest.starts_with("::"))
        };
        ROOMS.contains(&room) || TYPES.iter().any(is_type)
    };
    let mut found: Vec<String> = rooms_named(file)
        .into_iter()
        // `super::super` inside the page leads to its own rooms.
        .filter(|(room, path)| is_known_room(room) && !is_allowed(room, path))
        // `use crate::spread;` is judged by what is then named through it.
        .filter(|(room, path)| room != path || !file.names_only_through(room, &TYPES))
        .map(|(_, path)| format!("the page names {path}"))
        .collect();
    let sentences = file.strings.iter().filter(|text| speaks_of_physics(text));
    found.extend(sentences.map(|text| format!("the page says {text:?}: words live in wording")));
    found
}

/// Rooms of the engine that are not the page's to name.
fn is_known_room(room: &str) -> bool {
    const REST: [&str; 7] = [
        "quantity", "circuit", "simulate", "spread", "sizing", "search", "module",
    ];
    PHYSICS.contains(&room) || REST.contains(&room)
}

/// A sentence with a word of physics in it. Lists of class names are none: a
/// sentence begins with a capital and has four words at least.
fn speaks_of_physics(text: &str) -> bool {
    const WORDS: [&str; 14] = [
        "volt",
        "volts",
        "voltage",
        "amp",
        "amps",
        "current",
        "watt",
        "watts",
        "charge",
        "resistance",
        "capacity",
        "battery",
        "temperature",
        "peukert",
    ];
    let words: Vec<String> = text
        .split(|c: char| !c.is_alphabetic())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect();
    let is_sentence = words.len() >= 4 && text.trim().starts_with(char::is_uppercase);
    is_sentence && words.iter().any(|word| WORDS.contains(&word.as_str()))
}

/// The page and the module are two faces; neither leans on the other.
fn page_and_module_are_apart(file: &File) -> Vec<String> {
    let other = match file.room().as_str() {
        "page" => "module",
        "bin/module" => "page",
        _ => return Vec::new(),
    };
    rooms_named(file)
        .into_iter()
        .filter(|(named, _)| named == other)
        .map(|(_, path)| format!("names {path}"))
        .collect()
}
