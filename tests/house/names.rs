//! What each room may name.

use super::source::{File, room_of};

/// A rule: what of a file offends against it.
type Rule = fn(&File) -> Vec<String>;

pub const RULES: [Rule; 6] = [
    the_engine_knows_no_browser,
    the_engine_is_pure,
    imports_go_down,
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

/// The floors, from the ground up: a room may name what is on a lower one.
const FLOORS: [&[&str]; 10] = [
    &["linear", "quantity", "range", "search"],
    &[
        "physics::air",
        "physics::battery",
        "physics::bench",
        "physics::cabin",
        "physics::circuit",
        "physics::feed",
        "physics::solar",
        "physics::weather",
        "physics::wiring",
    ],
    &["plan"],
    &["simulate"],
    // What is drawn is sized too: night and sizing rest on spread, all three are one floor.
    &[
        "study::logged",
        "study::night",
        "study::sizing",
        "study::spread",
    ],
    &["answer"],
    &["text"],
    &["view::chart", "view::diagram", "view::drawing"],
    &["share"],
    &["page", "bin/module", "main"],
];

fn floor_of(room: &str) -> Option<usize> {
    FLOORS.iter().position(|rooms| rooms.contains(&room))
}

/// The rooms and floors that a file names, each with the path.
fn rooms_named(file: &File) -> Vec<(String, String)> {
    let room = |path: &String| room_of(&path.split("::").collect::<Vec<_>>());
    file.own_paths()
        .into_iter()
        .map(|path| (room(&path), path))
        .collect()
}

/// Imports go down the floors, and rooms of physics do not import one another. A
/// file of tests may look up: what it checks is often seen best from above.
fn imports_go_down(file: &File) -> Vec<String> {
    let room = file.room();
    if matches!(&*room, "lib" | "physics" | "study" | "view") || file.path.ends_with("/tests.rs") {
        return Vec::new();
    }
    let Some(floor) = floor_of(&room) else {
        return vec![format!("{room} stands on no floor")];
    };
    let is_down = |named: &str| match floor_of(named) {
        // The rooms of the ground floor and of one study or view lean on each other.
        Some(other) if other == floor => named == room || !room.starts_with("physics"),
        Some(other) => other < floor,
        // A floor by its own name, or what is no room.
        None => true,
    };
    let named = rooms_named(file).into_iter();
    named
        .filter(|(named, _)| !is_down(named))
        .map(|(_, path)| format!("{room} imports {path}"))
        .collect()
}

fn the_chart_knows_no_plan(file: &File) -> Vec<String> {
    if !matches!(file.room().as_str(), "view::chart" | "view::diagram") {
        return Vec::new();
    }
    rooms_named(file)
        .into_iter()
        .filter(|(named, _)| matches!(named.as_str(), "plan" | "answer" | "text"))
        .map(|(_, path)| format!("{} imports {path}", file.room()))
        .collect()
}

/// The page is a face on the contract: it reads plans and answers, words and
/// pictures. Of other rooms it may name the types that stand in a plan or an
/// answer, and nothing that reckons.
fn the_page_reads_the_contract_only(file: &File) -> Vec<String> {
    const ROOMS: [&str; 9] = [
        "answer",
        "plan",
        "range",
        "text",
        "view::chart",
        "view::diagram",
        "view::drawing",
        "share",
        "page",
    ];
    const TYPES: [&str; 9] = [
        // A look-up of the spread that an origin stands for, shown beside a field.
        "study::spread::percent_of",
        "physics::battery::Chemistry",
        "simulate::Stop",
        "study::sizing::Sizing",
        "study::sizing::Found",
        "study::sizing::NeededBank",
        "study::spread::Band",
        "study::spread::Share",
        "physics::wiring::Size",
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
        // `use crate::study::spread;` is judged by what is then named through it.
        .filter(|(room, path)| room != path || !names_only_types(file, room, &TYPES))
        .map(|(_, path)| format!("the page names {path}"))
        .collect();
    let sentences = file.strings.iter().filter(|text| speaks_of_physics(text));
    found.extend(sentences.map(|text| format!("the page says {text:?}: words live in text")));
    found
}

/// Whether a room that is imported by its own name is used for these types alone.
fn names_only_types(file: &File, room: &str, types: &[&str]) -> bool {
    let floor = room.rfind("::").map_or(0, |at| at + 2);
    let types: Vec<&str> = types.iter().filter_map(|one| one.get(floor..)).collect();
    file.names_only_through(&room[floor..], &types)
}

/// Rooms of the engine, and the other face.
fn is_known_room(room: &str) -> bool {
    floor_of(room).is_some() || room == "module"
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
