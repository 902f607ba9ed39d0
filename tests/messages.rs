//! The catalogues and the code made from them.
//!
//! Plurals are checked against the rules printed in CLDR (Unicode Common Locale Data
//! Repository, "Language Plural Rules", cardinal, en, de and es), from memory; how a
//! catalogue is written against the Fluent Syntax Guide, from memory.

#[path = "../.tools/messages/generate.rs"]
mod generate;
#[path = "../.tools/messages/parts.rs"]
mod parts;

use generate::{LANGUAGES, generate};
use std::collections::BTreeSet;
use till_morning::{
    plan::{Show, part::Choice as _, reader::Language},
    text::{Formatter, Locale, m, message},
};

fn faults(catalogues: &[(&str, &str)]) -> Vec<String> {
    generate(catalogues).expect_err("it must not build")
}

#[test]
fn what_is_missing_or_too_much_does_not_build() {
    let english = "a = One { $x }\nb = Two\n    .hint = Three\n";
    assert!(generate(&[("en", english), ("de", english)]).is_ok());
    for (german, told) in [
        ("a = Eins { $x }\nb = Zwei\n", "de: b.hint is missing"),
        (
            "a = Eins { $x }\nb = Zwei\n    .hint = Drei\nc = Vier\n",
            "de: c is no message of the first catalogue",
        ),
        (
            "a = Eins\nb = Zwei\n    .hint = Drei\n",
            "de: a leaves out $x",
        ),
        (
            "a = Eins { $x } { $y }\nb = Zwei\n    .hint = Drei\n",
            "de: a has no $y to take",
        ),
        (
            "a = { $x ->\n    [one] Eins\n   *[other] { $x }\n }\nb = Zwei\n    .hint = Drei\n",
            "de: a counts $x: say NUMBER($x) in the first catalogue",
        ),
        (
            "a = Eins { $x }\na = Eins { $x }\nb = Zwei\n    .hint = Drei\n",
            "de: a is there twice",
        ),
        (
            "a = Eins { $x } { b }\nb = { a }\n    .hint = Drei\n",
            "de: a refers to a, which it cannot",
        ),
    ] {
        let told_of = faults(&[("en", english), ("de", german)]);
        assert!(told_of.contains(&told.to_owned()), "{german}: {told_of:?}");
    }
    assert!(faults(&[("en", "a = {\n")])[0].starts_with("en.ftl, line "));
    // A number has a plural, and no name: such a choice would never be made.
    assert_eq!(
        faults(&[
            ("en", "a = { NUMBER($x) }\n"),
            ("de", "a = { $x ->\n    [sun] Sonne\n   *[rain] Regen\n }\n")
        ]),
        ["de: a has words for $x, which the first catalogue counts"]
    );
    // A name that the code has for itself would not compile, and would not say why.
    assert_eq!(
        faults(&[("en", "a = { $to }\n")]),
        ["en: a names a variable to: that is the code’s own"]
    );
}

/// Every message is said somewhere, by the name of its type.
#[test]
fn nothing_stands_in_the_catalogue_unused() {
    let mut said = BTreeSet::new();
    each_file("src".as_ref(), &mut |text| {
        for after in text.split("m::").skip(1) {
            let end = after.find(|c: char| !c.is_ascii_alphanumeric());
            said.insert(after[..end.unwrap_or(after.len())].to_owned());
        }
    });
    let unused: Vec<_> = message::m::IDS
        .into_iter()
        .filter(|id| !said.contains(&generate::type_name(id)))
        .collect();
    assert!(unused.is_empty(), "nobody says {unused:?}");
}

fn each_file(folder: &std::path::Path, read: &mut impl FnMut(&str)) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            each_file(&path, read);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            read(&std::fs::read_to_string(path).unwrap());
        }
    }
}

/// The languages of the catalogues are those that the plan knows, in the same order.
#[test]
fn every_language_has_a_catalogue() {
    let tags: Vec<&str> = Language::ALL.iter().map(|one| one.tag()).collect();
    assert_eq!(tags, LANGUAGES);
}

/// Each language has words of its own, and its own rule of what is one.
#[test]
fn a_message_is_said_in_each_language() {
    for (language, one, more) in [
        (Language::English, "1 day", "2.5 days"),
        (Language::German, "1 Tag", "2,5 Tage"),
        (Language::Spanish, "1 día", "2,5 días"),
    ] {
        let f = Formatter::new(Locale::usual(language), Show::METRIC);
        let days = |count: f64| {
            let days = f.plain(count);
            f.say(m::DurationDays { count, days })
        };
        assert_eq!((&*days(1.0), &*days(2.5)), (one, more));
    }
}

#[test]
fn english_counts_by_its_rule() {
    let days = |hours| Formatter::ENGLISH.duration(hours);
    // one: i = 1 and v = 0, so 4.2 and 10 are other.
    assert_eq!(days(100.0), "4.2 days");
    assert_eq!(days(240.0), "10 days");
    let one = m::DurationDays {
        count: 1,
        days: "1",
    };
    assert_eq!(Formatter::ENGLISH.say(one), "1 day");
}

/// `tests/data/cldr_german.txt` was made by Node's `Intl`, and names its CLDR. Ours
/// differs in two signs: the minus is U+2212, and thousands are apart by a narrow space,
/// from five digits on, in every language (as the SI Brochure, section 5.4.4, from
/// memory).
#[test]
fn german_numbers_and_plural_are_those_of_cldr() {
    use intl_pluralrules::PluralCategory;
    let f = Formatter::new(Locale::usual(Language::German), Show::METRIC);
    let table = include_str!("data/cldr_german.txt");
    let rows: Vec<_> = table.lines().filter(|row| !row.starts_with('#')).collect();
    assert!(rows.len() > 20);
    for row in rows {
        let [value, written, category] = row.split(';').collect::<Vec<_>>()[..] else {
            panic!("{row}");
        };
        let value: f64 = value.parse().unwrap();
        let whole = written.split(',').next().unwrap();
        let digits = whole.chars().filter(char::is_ascii_digit).count();
        let between = if digits < 5 { "" } else { "\u{202f}" };
        let written = written.replace('-', "\u{2212}").replace('.', between);
        assert_eq!(f.fixed(value, 3), written);
        let is_one = f.plural(value) == PluralCategory::ONE;
        assert_eq!(is_one, category == "one", "{row}");
        assert_eq!(f.plural(value) == PluralCategory::OTHER, !is_one, "{row}");
    }
}

/// A line that is the same as in English, word for word, was not translated: but for
/// names of sources, and what has no words of its own.
#[test]
fn nothing_in_another_language_was_left_in_english() {
    const ENGLISH_WORDS: [&str; 12] = [
        "the", "of", "is", "are", "and", "for", "with", "not", "to", "this", "its", "your",
    ];
    for tag in ["de", "es"] {
        if !std::path::Path::new(&format!("{}/{tag}", parts::FOLDER)).exists() {
            continue;
        }
        for part in parts::parts(tag) {
            let name = part.file_name().unwrap();
            let english = std::path::Path::new(parts::FOLDER).join("en").join(name);
            let english = std::fs::read_to_string(english).unwrap();
            let english: BTreeSet<&str> = english.lines().collect();
            for line in std::fs::read_to_string(&part).unwrap().lines() {
                let is_words = !line.starts_with('#') && !line.contains("source");
                let text = line.split_once('=').map_or(line, |(_, text)| text);
                let mut words = text.split_whitespace();
                let is_english = words.any(|word| ENGLISH_WORDS.contains(&word));
                let was_left = is_words && is_english && english.contains(line);
                assert!(!was_left, "{}: {line}", part.display());
            }
        }
    }
}

#[test]
fn the_catalogues_are_complete() {
    let whole = LANGUAGES.map(|tag| (tag, parts::whole(tag)));
    assert_eq!(generate(&whole).err(), None);
    // What is put in is told from the words by control characters.
    for (tag, text) in whole {
        let stray = text.find(|c: char| c.is_control() && c != '\n');
        assert_eq!(stray, None, "{tag}");
    }
}

#[test]
fn each_catalogue_is_named_once() {
    let tags: BTreeSet<&str> = LANGUAGES.into_iter().collect();
    assert_eq!(tags.len(), LANGUAGES.len());
}

/// Every part of a catalogue that is begun has all of its English, and no more.
#[test]
fn a_part_that_is_there_is_whole() {
    for tag in ["de", "es"] {
        if !std::path::Path::new(&format!("{}/{tag}", parts::FOLDER)).exists() {
            continue;
        }
        for part in parts::parts(tag) {
            let name = part.file_name().unwrap();
            let english = std::path::Path::new(parts::FOLDER).join("en").join(name);
            let read = |path| std::fs::read_to_string(path).unwrap();
            let pair = [("en", read(english)), (tag, read(part.clone()))];
            assert_eq!(generate(&pair).err(), None, "{}", part.display());
        }
    }
}
