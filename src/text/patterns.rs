//! The words of each language, and how a message's pattern becomes a sentence.
//!
//! The build makes a text of each catalogue: its messages in the order of their numbers,
//! with the signs of [`super::signs`] for what is put in. The hosted page has them in
//! files of their own, so that a visitor fetches one language and not all
//! ([`install`]); everywhere else they are part of the program.

use super::{formatter::Formatter, signs};
use crate::plan::reader::Language;
use intl_pluralrules::PluralCategory;
use std::sync::OnceLock;

/// What a message is given for one of its variables.
#[derive(Clone, Copy, Debug)]
pub enum Given<'a> {
    Text(&'a str),
    /// A number that is written as the language has it, and may decide a plural.
    Count(f64),
}

type Patterns = Vec<&'static str>;

/// By language, in the order of [`Language`].
static PATTERNS: [OnceLock<Patterns>; 3] = [const { OnceLock::new() }; 3];

/// Takes a language's words, as the build has written them. The first time counts.
pub fn install(language: Language, words: String) {
    let words: &'static str = Box::leak(words.into_boxed_str());
    let _ = PATTERNS[language as usize].set(words.split(signs::NEXT).collect());
}

/// Whether a language can be spoken by now.
#[must_use]
pub fn is_there(language: Language) -> bool {
    of(language).is_some()
}

#[cfg(feature = "split")]
fn of(language: Language) -> Option<&'static Patterns> {
    PATTERNS[language as usize].get()
}

#[cfg(not(feature = "split"))]
fn of(language: Language) -> Option<&'static Patterns> {
    let words = match language {
        Language::English => include_str!(concat!(env!("OUT_DIR"), "/words-en.txt")),
        Language::German => include_str!(concat!(env!("OUT_DIR"), "/words-de.txt")),
        Language::Spanish => include_str!(concat!(env!("OUT_DIR"), "/words-es.txt")),
    };
    Some(PATTERNS[language as usize].get_or_init(|| words.split(signs::NEXT).collect()))
}

/// A message's pattern by its number. Where the language is not there yet, in one that is.
pub(super) fn pattern(language: Language, number: u16) -> &'static str {
    let there = || PATTERNS.iter().find_map(OnceLock::get);
    let patterns = of(language).or_else(there);
    patterns
        .and_then(|patterns| patterns.get(usize::from(number)).copied())
        .unwrap_or_default()
}

/// The sentence of a pattern with what it was given; `given` by place.
pub(super) fn filled(to: Formatter, number: u16, given: &[Given]) -> String {
    let mut sentence = Sentence {
        to,
        given,
        out: String::new(),
    };
    sentence.pieces(pattern(to.language(), number), true);
    sentence.out
}

struct Sentence<'a> {
    to: Formatter,
    given: &'a [Given<'a>],
    out: String,
}

impl<'a> Sentence<'a> {
    /// Goes through a pattern to its end, or to the end of the case that it stands in,
    /// and answers with what comes after. Written down only where it is `said`.
    fn pieces<'p>(&mut self, mut rest: &'p str, said: bool) -> &'p str {
        loop {
            let sign = rest.find(|c| (signs::VARIABLE..=signs::END).contains(&c));
            let (text, from_sign) = rest.split_at(sign.unwrap_or(rest.len()));
            if said {
                self.out.push_str(text);
            }
            let mut after = from_sign.chars();
            match after.next() {
                Some(signs::VARIABLE) => {
                    let given = self.given(after.next());
                    if said {
                        self.put_in(given);
                    }
                    rest = after.as_str();
                }
                Some(signs::CHOICE) => {
                    let given = self.given(after.next());
                    rest = self.choice(after.as_str(), given, said);
                }
                _ => return from_sign,
            }
        }
    }

    /// The first case that fits is said, and no other.
    fn choice<'p>(&mut self, mut rest: &'p str, by: Given, said: bool) -> &'p str {
        let mut is_open = said;
        while let Some(case) = rest.strip_prefix(signs::CASE) {
            let (key, pattern) = case.split_once(signs::THEN).unwrap_or((case, ""));
            let fits = is_open && (key.is_empty() || self.fits(key, by));
            rest = self.pieces(pattern, fits);
            is_open &= !fits;
        }
        rest.strip_prefix(signs::END).unwrap_or(rest)
    }

    fn fits(&self, key: &str, by: Given) -> bool {
        match by {
            Given::Text(text) => text == key,
            Given::Count(count) => match key.parse::<f64>() {
                Ok(exactly) => exactly == count,
                Err(_) => key == plural_name(self.to.plural(count)),
            },
        }
    }

    fn given(&self, place: Option<char>) -> Given<'a> {
        let place = place.map_or(0, |place| place as usize - signs::FIRST_PLACE as usize);
        self.given.get(place).copied().unwrap_or(Given::Text(""))
    }

    fn put_in(&mut self, given: Given) {
        match given {
            Given::Text(text) => self.out.push_str(text),
            Given::Count(count) => self.out.push_str(&self.to.number(count)),
        }
    }
}

/// As catalogues name it.
const fn plural_name(category: PluralCategory) -> &'static str {
    match category {
        PluralCategory::ZERO => "zero",
        PluralCategory::ONE => "one",
        PluralCategory::TWO => "two",
        PluralCategory::FEW => "few",
        PluralCategory::MANY => "many",
        PluralCategory::OTHER => "other",
    }
}
