//! Reading source as text: comments and strings apart, paths spelled out.

use std::{fs, path::Path};

/// One source file.
pub struct File {
    /// From the package's root, with forward slashes.
    pub path: String,
    pub text: String,
    /// The text without comments and without what its strings hold.
    pub code: String,
    pub strings: Vec<String>,
}

impl File {
    pub fn of(path: &str, text: &str) -> Self {
        let (code, strings) = apart(text);
        Self {
            path: path.replace('\\', "/"),
            text: text.into(),
            code,
            strings,
        }
    }

    /// Where the file stands in the package: `physics::wiring::size` of
    /// `src/physics/wiring/size.rs`.
    pub fn module(&self) -> Vec<String> {
        let inside = self.path.strip_prefix("src/").unwrap_or(&self.path);
        let parts = inside.trim_end_matches(".rs").split('/');
        let mut parts: Vec<String> = parts.map(str::to_owned).collect();
        if parts.last().is_some_and(|last| last == "mod") {
            parts.pop();
        }
        parts
    }

    /// The room that the file belongs to.
    pub fn room(&self) -> String {
        room_of(&self.module())
    }

    /// Every path into this package that the code names, group by group spelled
    /// out: `use crate::{a::{B, C}, d}` names `a::B`, `a::C` and `d`. `super::super`
    /// is followed up from where the file stands.
    pub fn own_paths(&self) -> Vec<String> {
        let mut found = Vec::new();
        for root in ["crate::", "till_morning::"] {
            for (at, _) in self.code.match_indices(root) {
                if !is_inside_a_name(&self.code, at) {
                    spell_out(&self.code[at + root.len()..], "", &mut found);
                }
            }
        }
        let module = self.module();
        for (at, _) in self.code.match_indices("super::super::") {
            if is_inside_a_name(&self.code, at) || self.code[..at].ends_with("super::") {
                continue;
            }
            let (mut rest, mut up) = (&self.code[at..], 0);
            while let Some(more) = rest.strip_prefix("super::") {
                (rest, up) = (more, up + 1);
            }
            let above = &module[..module.len().saturating_sub(up)];
            spell_out(rest, &above.join("::"), &mut found);
        }
        found
    }

    /// What the code takes of `std`, spelled out.
    pub fn std_paths(&self) -> Vec<String> {
        let mut found = Vec::new();
        for (at, root) in self.code.match_indices("std::") {
            if !is_inside_a_name(&self.code, at) {
                spell_out(&self.code[at + root.len()..], "", &mut found);
            }
        }
        found
    }

    /// Whether a room is named through its own name only for what is `allowed`
    /// (`spread::percent_of` and no other `spread::…`).
    pub fn names_only_through(&self, room: &str, allowed: &[&str]) -> bool {
        let prefix = format!("{room}::");
        self.code.match_indices(&prefix).all(|(at, _)| {
            let from_here = &self.code[at..];
            is_inside_a_name(&self.code, at)
                || allowed.iter().any(|path| {
                    from_here
                        .strip_prefix(path)
                        .is_some_and(|rest| !rest.starts_with(is_of_a_name))
                })
        })
    }

    /// Whether the code has this word, whole.
    pub fn names(&self, word: &str) -> bool {
        self.code.match_indices(word).any(|(at, _)| {
            let after = self.code[at + word.len()..].chars().next();
            !is_inside_a_name(&self.code, at) && !after.is_some_and(is_of_a_name)
        })
    }
}

/// The room of a path: the first name, or two where the first is a floor of rooms.
pub fn room_of<T: AsRef<str>>(path: &[T]) -> String {
    match path {
        [first, second, ..] if matches!(first.as_ref(), "physics" | "study" | "view" | "bin") => {
            let second = second.as_ref();
            let separator = if first.as_ref() == "bin" { "/" } else { "::" };
            format!("{}{separator}{second}", first.as_ref())
        }
        [first, ..] => first.as_ref().to_owned(),
        [] => String::new(),
    }
}

fn is_of_a_name(c: char) -> bool {
    c.is_alphanumeric() || c == '_'
}

fn is_inside_a_name(code: &str, at: usize) -> bool {
    code[..at].chars().next_back().is_some_and(is_of_a_name)
}

/// Adds the paths that begin here; returns what is left after them.
fn spell_out<'a>(text: &'a str, before: &str, found: &mut Vec<String>) -> &'a str {
    let text = text.trim_start();
    if let Some(mut rest) = text.strip_prefix('{') {
        loop {
            rest = spell_out(rest, before, found).trim_start();
            match rest.strip_prefix(',') {
                Some(more) if !more.trim_start().starts_with('}') => rest = more,
                Some(more) => return more.trim_start().strip_prefix('}').unwrap_or(more),
                None => return rest.strip_prefix('}').unwrap_or(rest),
            }
        }
    }
    if let Some(rest) = text.strip_prefix('*') {
        found.push(before.to_string());
        return rest;
    }
    let end = text.find(|c| !is_of_a_name(c)).unwrap_or(text.len());
    let (name, rest) = text.split_at(end);
    let path = if before.is_empty() {
        name.to_string()
    } else {
        format!("{before}::{name}")
    };
    if let Some(inner) = rest.strip_prefix("::") {
        return spell_out(inner, &path, found);
    }
    if !name.is_empty() {
        found.push(path);
    }
    // A new name given with `as`.
    match rest.trim_start().strip_prefix("as ") {
        Some(renamed) => renamed.trim_start().trim_start_matches(is_of_a_name),
        None => rest,
    }
}

/// Takes comments out, and strings out into a list.
fn apart(text: &str) -> (String, Vec<String>) {
    let (mut code, mut strings) = (String::new(), Vec::new());
    let mut rest = text;
    while let Some(c) = rest.chars().next() {
        if rest.starts_with("//") {
            rest = &rest[rest.find('\n').unwrap_or(rest.len())..];
        } else if c == '"' {
            let (string, after) = string_at(&rest[1..]);
            strings.push(string.to_string());
            code.push_str("\"\"");
            rest = after;
        } else if rest.starts_with("'\"'") || rest.starts_with("'\\\"'") {
            rest = &rest[rest[1..].find('\'').map_or(rest.len(), |end| end + 2)..];
        } else {
            code.push(c);
            rest = &rest[c.len_utf8()..];
        }
    }
    (code, strings)
}

/// A string's text, and what follows its closing quote.
fn string_at(text: &str) -> (&str, &str) {
    let mut escaped = false;
    for (at, c) in text.char_indices() {
        match c {
            '"' if !escaped => return (&text[..at], &text[at + 1..]),
            '\\' => escaped = !escaped,
            _ => escaped = false,
        }
    }
    (text, "")
}

/// Every Rust file below a folder of the package.
pub fn all_files(folder: &str) -> Vec<File> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut files = Vec::new();
    let mut folders = vec![root.join(folder)];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            let hidden = path.ends_with("node_modules");
            if path.is_dir() && !hidden {
                folders.push(path);
            } else if path.extension().is_some_and(|ext| ext == "rs") {
                let text = fs::read_to_string(&path).expect("source");
                let name = path.strip_prefix(root).expect("inside").to_string_lossy();
                files.push(File::of(&name, &text));
            }
        }
    }
    files.sort_by(|a, b| a.path.cmp(&b.path));
    files
}

#[test]
fn paths_are_spelled_out() {
    let code = "use crate::{a::{B, C as D, e::*}, f}; let x = crate::g::h(i); // crate::no\n";
    let file = File::of("src/x.rs", code);
    assert_eq!(file.own_paths(), ["a::B", "a::C", "a::e", "f", "g::h"]);
    assert_eq!(
        File::of("src/x.rs", "use std::{\n fmt,\n fs::File,\n};").std_paths(),
        ["fmt", "fs::File"]
    );
}

#[test]
fn comments_and_strings_are_apart() {
    let file = File::of(
        "src/x.rs",
        "let a = \"say \\\"leptos\\\" // here\"; // leptos\nlet b = '\"'; c",
    );
    assert!(!file.names("leptos") && file.names("c") && !file.names("le"));
    assert_eq!(file.strings, ["say \\\"leptos\\\" // here"]);
}

#[test]
fn the_way_up_is_followed() {
    let file = File::of(
        "src/physics/cabin/air/wet.rs",
        "use super::super::{shell::Shell}; use super::super::super::air::Humid; use super::near;",
    );
    assert_eq!(
        file.own_paths(),
        ["physics::cabin::shell::Shell", "physics::air::Humid"]
    );
}

#[test]
fn a_file_knows_its_room() {
    for (path, room) in [
        ("src/physics/battery/pack.rs", "physics::battery"),
        ("src/physics/circuit.rs", "physics::circuit"),
        ("src/search.rs", "search"),
        ("src/answer/day/mod.rs", "answer"),
        ("src/bin/module.rs", "bin/module"),
        ("src/main.rs", "main"),
    ] {
        assert_eq!(File::of(path, "").room(), room);
    }
}
