//! From catalogues to code: a type for each message, and the words of each language as a
//! text of their own (src/text/patterns.rs). The first catalogue says what messages there
//! are and what each takes; the others must have the same, no more and no fewer.
//!
//! Of Fluent it knows messages with attributes, terms and references to messages (put in
//! where they are named), variables, `NUMBER($n)` and choices by a number's plural or by
//! a text. `a-message` becomes the type `AMessage`, its attribute `.hint` the type
//! `AMessageHint`.

use fluent_syntax::{
    ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, Variant, VariantKey},
    parser,
};
use std::{
    collections::{BTreeMap, BTreeSet},
    fmt::Write,
};

#[path = "../../src/text/signs.rs"]
mod signs;

/// The languages that there are catalogues of, by their folders.
pub const LANGUAGES: [&str; 3] = ["en", "de", "es"];

/// What the catalogues become.
#[derive(Debug, PartialEq)]
pub struct Generated {
    pub code: String,
    /// The words of each language, in the order of the catalogues.
    pub words: Vec<String>,
}

/// What the code made from them calls its own.
const OWN: [&str; 2] = ["to", "self"];

/// CLDR's plural categories, which Fluent has for keys.
const PLURALS: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    Text,
    Count,
}

/// What a message takes, in the order in which it is first named.
type Arguments = Vec<(String, Kind)>;

/// A message in one language: its pattern, with what it refers to put in.
#[derive(Clone, Debug, PartialEq)]
enum Piece {
    Text(String),
    Variable(String),
    Choice {
        by: String,
        cases: Vec<(Key, Vec<Piece>)>,
        usual: Vec<Piece>,
    },
}

#[derive(Clone, Debug, PartialEq)]
enum Key {
    Plural(&'static str),
    Exactly(f64),
    Word(String),
}

type Messages = BTreeMap<String, (Vec<Piece>, Arguments)>;

/// The code of all messages in all languages, or everything that is wrong with them.
pub fn generate<S: AsRef<str>>(catalogues: &[(&str, S)]) -> Result<Generated, Vec<String>> {
    let mut faults = Vec::new();
    let read: Vec<(&str, Messages)> = catalogues
        .iter()
        .map(|(tag, text)| (*tag, read(tag, text.as_ref(), &mut faults)))
        .collect();
    let Some(((_, first), others)) = read.split_first() else {
        return Err(vec!["no catalogue".into()]);
    };
    for (tag, messages) in others {
        compare(tag, first, messages, &mut faults);
    }
    if faults.is_empty() {
        Ok(Generated {
            code: write_code(first),
            words: read
                .iter()
                .map(|(_, messages)| write_words(first, messages))
                .collect(),
        })
    } else {
        Err(faults)
    }
}

fn compare(tag: &str, first: &Messages, messages: &Messages, faults: &mut Vec<String>) {
    for (id, (_, wanted)) in first {
        let Some((_, given)) = messages.get(id) else {
            faults.push(format!("{tag}: {id} is missing"));
            continue;
        };
        let names = |all: &Arguments| -> BTreeSet<String> {
            all.iter().map(|(name, _)| name.clone()).collect()
        };
        let (wanted_names, given_names) = (names(wanted), names(given));
        for name in wanted_names.difference(&given_names) {
            faults.push(format!("{tag}: {id} leaves out ${name}"));
        }
        for name in given_names.difference(&wanted_names) {
            faults.push(format!("{tag}: {id} has no ${name} to take"));
        }
        for (name, kind) in given {
            let is_text = wanted.contains(&(name.clone(), Kind::Text));
            if *kind == Kind::Count && is_text {
                faults.push(format!(
                    "{tag}: {id} counts ${name}: say NUMBER(${name}) in the first catalogue"
                ));
            }
            if *kind == Kind::Text && !is_text && chooses_by(&messages[id].0, name) {
                faults.push(format!(
                    "{tag}: {id} has words for ${name}, which the first catalogue counts"
                ));
            }
        }
    }
    for id in messages.keys().filter(|id| !first.contains_key(*id)) {
        faults.push(format!("{tag}: {id} is no message of the first catalogue"));
    }
}

fn chooses_by(pieces: &[Piece], name: &str) -> bool {
    pieces.iter().any(|piece| match piece {
        Piece::Choice { by, cases, usual } => {
            let mut inner = cases.iter().map(|(_, inner)| inner).chain([usual]);
            by == name || inner.any(|pieces| chooses_by(pieces, name))
        }
        _ => false,
    })
}

/// Everything of a catalogue that can be referred to.
struct Source<'a> {
    tag: &'a str,
    patterns: BTreeMap<String, &'a Pattern<&'a str>>,
}

fn read(tag: &str, text: &str, faults: &mut Vec<String>) -> Messages {
    let resource = match parser::parse(text) {
        Ok(resource) => resource,
        Err((resource, errors)) => {
            for error in errors {
                let line = text[..error.pos.start].matches('\n').count() + 1;
                faults.push(format!("{tag}.ftl, line {line}: {error}"));
            }
            resource
        }
    };
    let mut patterns = BTreeMap::new();
    let mut ids = Vec::new();
    for entry in &resource.body {
        let mut keep = |id: String, pattern| {
            if patterns.insert(id.clone(), pattern).is_some() {
                faults.push(format!("{tag}: {id} is there twice"));
            }
            id
        };
        match entry {
            Entry::Message(message) => {
                if let Some(value) = &message.value {
                    ids.push(keep(message.id.name.into(), value));
                }
                for one in &message.attributes {
                    let id = format!("{}.{}", message.id.name, one.id.name);
                    ids.push(keep(id, &one.value));
                }
            }
            Entry::Term(term) => {
                keep(format!("-{}", term.id.name), &term.value);
            }
            _ => {}
        }
    }
    let source = Source { tag, patterns };
    let mut messages = Messages::new();
    for id in ids {
        let (mut pieces, mut arguments) = (Vec::new(), Arguments::new());
        let mut open = vec![id.clone()];
        source.gather(
            source.patterns[&id],
            &mut open,
            &mut pieces,
            &mut arguments,
            faults,
        );
        for (name, _) in &arguments {
            if OWN.contains(&name.as_str()) {
                let fault = "that is the code’s own";
                faults.push(format!("{tag}: {id} names a variable {name}: {fault}"));
            }
        }
        messages.insert(id, (pieces, arguments));
    }
    messages
}

impl Source<'_> {
    /// The pieces of a pattern. `open`: the messages that it stands in, so that none
    /// stands in itself.
    fn gather(
        &self,
        pattern: &Pattern<&str>,
        open: &mut Vec<String>,
        pieces: &mut Vec<Piece>,
        arguments: &mut Arguments,
        faults: &mut Vec<String>,
    ) {
        for element in &pattern.elements {
            let expression = match element {
                PatternElement::TextElement { value } => {
                    push_text(pieces, value);
                    continue;
                }
                PatternElement::Placeable { expression } => expression,
            };
            match expression {
                Expression::Inline(inline) => self.inline(inline, open, pieces, arguments, faults),
                Expression::Select { selector, variants } => {
                    self.choice(selector, variants, open, pieces, arguments, faults);
                }
            }
        }
    }

    fn inline(
        &self,
        inline: &InlineExpression<&str>,
        open: &mut Vec<String>,
        pieces: &mut Vec<Piece>,
        arguments: &mut Arguments,
        faults: &mut Vec<String>,
    ) {
        let referred = match inline {
            InlineExpression::StringLiteral { value } => {
                let mut text = String::new();
                let _ = fluent_syntax::unicode::unescape_unicode(&mut text, value);
                return push_text(pieces, &text);
            }
            InlineExpression::NumberLiteral { value } => return push_text(pieces, value),
            InlineExpression::VariableReference { id } => {
                note(arguments, id.name, Kind::Text);
                return pieces.push(Piece::Variable(id.name.into()));
            }
            InlineExpression::FunctionReference { id, arguments: of } if id.name == "NUMBER" => {
                if let [InlineExpression::VariableReference { id }] = &*of.positional {
                    note(arguments, id.name, Kind::Count);
                    return pieces.push(Piece::Variable(id.name.into()));
                }
                "NUMBER of no variable".into()
            }
            InlineExpression::MessageReference { id, attribute } => match attribute {
                Some(attribute) => format!("{}.{}", id.name, attribute.name),
                None => id.name.into(),
            },
            InlineExpression::TermReference { id, .. } => format!("-{}", id.name),
            InlineExpression::Placeable { expression } => match &**expression {
                Expression::Inline(inner) => {
                    return self.inline(inner, open, pieces, arguments, faults);
                }
                Expression::Select { selector, variants } => {
                    return self.choice(selector, variants, open, pieces, arguments, faults);
                }
            },
            InlineExpression::FunctionReference { id, .. } => id.name.into(),
        };
        match self.patterns.get(&referred) {
            Some(pattern) if !open.contains(&referred) => {
                open.push(referred);
                self.gather(pattern, open, pieces, arguments, faults);
                open.pop();
            }
            _ => faults.push(format!(
                "{}: {} refers to {referred}, which it cannot",
                self.tag, open[0]
            )),
        }
    }

    fn choice(
        &self,
        selector: &InlineExpression<&str>,
        variants: &[Variant<&str>],
        open: &mut Vec<String>,
        pieces: &mut Vec<Piece>,
        arguments: &mut Arguments,
        faults: &mut Vec<String>,
    ) {
        let (by, is_number) = match selector {
            InlineExpression::VariableReference { id } => (id.name, false),
            InlineExpression::FunctionReference { id, arguments } if id.name == "NUMBER" => {
                match &*arguments.positional {
                    [InlineExpression::VariableReference { id }] => (id.name, true),
                    _ => return faults.push(format!("{}: {}: NUMBER", self.tag, open[0])),
                }
            }
            _ => {
                return faults.push(format!(
                    "{}: {}: a choice by no variable",
                    self.tag, open[0]
                ));
            }
        };
        let keys: Vec<Key> = variants.iter().map(|one| key_of(&one.key)).collect();
        // `*[other]` alone tells nothing: words may end in it too.
        let mut telling = variants.iter().zip(&keys).filter(|(one, _)| !one.default);
        let counts = is_number || telling.any(|(_, key)| !matches!(key, Key::Word(_)));
        note(arguments, by, if counts { Kind::Count } else { Kind::Text });
        let (mut cases, mut usual) = (Vec::new(), Vec::new());
        for (variant, key) in variants.iter().zip(keys) {
            let mut inner = Vec::new();
            self.gather(&variant.value, open, &mut inner, arguments, faults);
            if variant.default {
                usual = inner;
            } else if counts == matches!(key, Key::Word(_)) {
                faults.push(format!(
                    "{}: {}: words and plurals in one choice",
                    self.tag, open[0]
                ));
            } else {
                cases.push((key, inner));
            }
        }
        pieces.push(Piece::Choice {
            by: by.into(),
            cases,
            usual,
        });
    }
}

fn push_text(pieces: &mut Vec<Piece>, text: &str) {
    if let Some(Piece::Text(last)) = pieces.last_mut() {
        last.push_str(text);
    } else {
        pieces.push(Piece::Text(text.into()));
    }
}

/// A variable is counted if it is so anywhere.
fn note(arguments: &mut Arguments, name: &str, kind: Kind) {
    match arguments.iter_mut().find(|(known, _)| known == name) {
        Some((_, known)) if kind == Kind::Count => *known = kind,
        Some(_) => {}
        None => arguments.push((name.into(), kind)),
    }
}

fn key_of(key: &VariantKey<&str>) -> Key {
    match key {
        VariantKey::NumberLiteral { value } => value
            .parse()
            .map_or_else(|_| Key::Word((*value).into()), Key::Exactly),
        VariantKey::Identifier { name } => PLURALS
            .iter()
            .find(|plural| *plural == name)
            .map_or_else(|| Key::Word((*name).into()), |plural| Key::Plural(plural)),
    }
}

/// `run-ends.hint` as the name of a type: `RunEndsHint`.
pub fn type_name(id: &str) -> String {
    let words = id.split(['-', '.', '_']);
    words
        .map(|word| {
            let (first, rest) = word.split_at(word.len().min(1));
            format!("{}{rest}", first.to_ascii_uppercase())
        })
        .collect()
}

/// `at-clock` as the name of a field: `at_clock`.
fn field_name(name: &str) -> String {
    name.replace('-', "_")
}

fn write_code(messages: &Messages) -> String {
    let mut code = String::new();
    let ids: Vec<&String> = messages.keys().collect();
    let _ = writeln!(
        code,
        "/// The id of each message, by its number.\npub const IDS: [&str; {}] = {ids:?};\n",
        ids.len()
    );
    for (number, (id, (pieces, arguments))) in messages.iter().enumerate() {
        let doc = pieces.iter().fold(String::new(), |doc, piece| {
            doc + &match piece {
                Piece::Text(text) => text.replace('\n', " "),
                Piece::Variable(name) => format!("{{{name}}}"),
                Piece::Choice { by, .. } => format!("{{by {by}}}"),
            }
        });
        let _ = writeln!(code, "#[doc = {doc:?}]");
        if arguments.is_empty() {
            write_plain(&mut code, id, number);
        } else {
            write_with(&mut code, id, number, arguments);
        }
    }
    code
}

fn write_plain(code: &mut String, id: &str, number: usize) {
    let name = type_name(id);
    let _ = writeln!(
        code,
        "#[derive(Clone, Copy, Debug)]\npub struct {name};\nimpl Message for {name} {{\n    type Text = &'static str;\n    fn in_language(self, to: Formatter) -> &'static str {{\n        pattern(to.language(), {number})\n    }}\n}}\n"
    );
}

fn write_with(code: &mut String, id: &str, number: usize, arguments: &Arguments) {
    let name = type_name(id);
    let (mut letters, mut bounds, mut fields, mut given) = (vec![], vec![], vec![], vec![]);
    for (place, (argument, kind)) in arguments.iter().enumerate() {
        let field = field_name(argument);
        let (bound, read) = match kind {
            Kind::Text => ("AsRef<str>", format!("Given::Text(self.{field}.as_ref())")),
            Kind::Count => ("Counted", format!("Given::Count(self.{field}.count())")),
        };
        letters.push(format!("T{place}"));
        bounds.push(format!("T{place}: {bound}"));
        fields.push(format!("pub {field}: T{place}"));
        given.push(read);
    }
    let [letters, bounds, fields, given] =
        [letters, bounds, fields, given].map(|each| each.join(", "));
    let _ = writeln!(
        code,
        "#[derive(Clone, Copy, Debug)]\npub struct {name}<{letters}> {{ {fields} }}\nimpl<{bounds}> Message for {name}<{letters}> {{\n    type Text = String;\n    fn in_language(self, to: Formatter) -> String {{\n        filled(to, {number}, &[{given}])\n    }}\n}}\n"
    );
}

/// A language's patterns, in the order of the messages' numbers.
fn write_words(first: &Messages, messages: &Messages) -> String {
    let patterns = first.iter().map(|(id, (_, arguments))| {
        let mut pattern = String::new();
        write_pieces(&mut pattern, &messages[id].0, arguments);
        pattern
    });
    patterns.collect::<Vec<_>>().join(&signs::NEXT.to_string())
}

fn write_pieces(pattern: &mut String, pieces: &[Piece], arguments: &Arguments) {
    let place = |name: &str| {
        let place = arguments.iter().position(|(known, _)| known == name);
        let place = place.and_then(|place| u8::try_from(place).ok());
        // Compared before: each language takes what the first one takes.
        char::from(signs::FIRST_PLACE as u8 + place.expect("a place for it"))
    };
    for piece in pieces {
        match piece {
            Piece::Text(text) => pattern.push_str(text),
            Piece::Variable(name) => pattern.extend([signs::VARIABLE, place(name)]),
            Piece::Choice { by, cases, usual } => {
                pattern.extend([signs::CHOICE, place(by)]);
                for (key, inner) in cases {
                    pattern.push(signs::CASE);
                    let _ = match key {
                        Key::Plural(name) => write!(pattern, "{name}"),
                        Key::Exactly(value) => write!(pattern, "{value}"),
                        Key::Word(word) => write!(pattern, "{word}"),
                    };
                    pattern.push(signs::THEN);
                    write_pieces(pattern, inner, arguments);
                }
                pattern.extend([signs::CASE, signs::THEN]);
                write_pieces(pattern, usual, arguments);
                pattern.push(signs::END);
            }
        }
    }
}
