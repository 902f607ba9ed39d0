//! The words of the reader's page: a table for each language, English complete.
//!
//! A [`Table`] has a place for everything that the page shows; a language that
//! left one out would not compile. Short texts stand in [`Texts`]; sentences with
//! numbers in them are functions, because their order and their plural are the
//! language's own.

use super::{
    Formatter,
    number::{self, Format},
};
use crate::{
    answer::{Pocket, RunAnswer},
    physics::battery::Chemistry,
    plan::finding::Finding,
    plan::{Path, Plan, draft::Echo, path::BankField as B, reader::Language},
    range::Range,
    text::ribbon::RibbonWords,
};

/// Everything that the reader's page says, in one language.
pub struct Table {
    pub format: Format,
    pub texts: Texts,
    pub ribbon: RibbonWords,
    /// What one run comes to.
    pub run_sentence: fn(Formatter, &Plan, &RunAnswer) -> String,
    /// How sure that is, and what ends it.
    pub run_detail: fn(Formatter, &RunAnswer) -> String,
    pub finding: fn(Formatter, &Finding) -> String,
    /// The pocket formula of a mode, or why it has none.
    pub pocket: fn(Formatter, &Plan, &Pocket) -> String,
    /// A field's name, with the reader's eyes: a bank of one battery is a bank.
    pub label: fn(Formatter, &Plan, Path) -> String,
    pub hint: fn(Formatter, Path) -> &'static str,
    pub chemistry: fn(Formatter, Chemistry) -> &'static str,
    /// Why a text is not taken, from the field's name and the values it takes.
    pub trouble: fn(Formatter, &str, Range) -> String,
    /// How a text was understood.
    pub echo: fn(Formatter, Echo) -> String,
}

macro_rules! texts {
    ($($(#[$doc:meta])* $key:ident,)+) => {
        /// Texts without numbers.
        pub struct Texts { $($(#[$doc])* pub $key: &'static str,)+ }

        impl Texts {
            /// Each key with its text.
            #[must_use]
            pub fn all(&self) -> Vec<(&'static str, &'static str)> {
                vec![$((stringify!($key), self.$key),)+]
            }
        }
    };
}

texts! {
    /// The page's title, where the author gives none.
    usual_title,
    yours,
    no_answer,
    stale,
    ribbon_caption,
    readings,
    on_paper,
    on_paper_hint,
    other_voltage,
    /// Where another bank lets the author's measurement go.
    not_the_measured,
    back,
    in_full,
    in_full_hint,
    caution,
    estimates,
    foot,
}

/// The table of a language.
#[must_use]
pub const fn table(language: Language) -> &'static Table {
    match language {
        Language::English | Language::Spanish => &ENGLISH,
        Language::German => &super::german::TABLE,
    }
}

const NEVER_LEAVE: &str = "Never leave children, animals or anyone who cannot get out unattended and relying on a battery-run cooler. A closed vehicle heats up by about 3.2\u{202f}°F (1.8\u{202f}°C) every 5 minutes, and most of the rise comes in the first 30.";
const ESTIMATES: &str =
    "This does not replace local codes or a licensed electrician. Estimates are not guarantees.";

static ENGLISH: Table = Table {
    format: number::ENGLISH,
    texts: Texts {
        usual_title: "How long will it run?",
        yours: "Yours",
        no_answer: "No answer yet: mend the fields marked below.",
        stale: "This is the answer to the last good numbers: a field below needs mending.",
        ribbon_caption: "Each bar runs from the start; its end fades from the early to the late end of the spread, with a line at the likely one.",
        readings: "How the numbers were read",
        on_paper: "On paper",
        on_paper_hint: "One line for each mode. Usable Wh: nominal volts times the Ah held, times how far down.",
        other_voltage: "Your bank has another voltage than the one this was published with: cut-offs, and the supply the unit wants, are taken in proportion.",
        not_the_measured: "Your bank is not the one that was measured: the measured charge and energy are left out, and its label counts.",
        back: "Back to the numbers as published",
        in_full: "Open in full",
        in_full_hint: "All of the plan, with your numbers in it: what was assumed, curves, how big a bank.",
        caution: NEVER_LEAVE,
        estimates: ESTIMATES,
        foot: "Till Morning. Worked out in this browser; nothing is sent anywhere.",
    },
    ribbon: super::RIBBON,
    run_sentence: super::run_sentence,
    run_detail: super::run_detail,
    finding: super::finding_sentence,
    pocket: super::claims::pocket_sentence,
    label: |f, plan, path| match own_label(plan, path) {
        Own::Bank(B::BatteryRatedAh) => "Capacity of the bank".into(),
        Own::Bank(B::BatteryNominalV) => "Voltage of the bank".into(),
        Own::Mode(unit, mode) => {
            let name = super::full_mode_name(f, plan, unit, mode);
            format!("{name}: {}", in_a_sentence(super::field_label(f, path)))
        }
        Own::Load(name) => format!("{name}: {}", in_a_sentence(super::field_label(f, path))),
        Own::Bank(_) | Own::None => super::field_label(f, path).into(),
    },
    hint: super::field_hint,
    chemistry: super::chemistry_name,
    trouble: |f, label, wanted| format!("{label}: give {}.", f.accepted(wanted)),
    echo: super::echo_sentence,
};

/// Where the reader's page has a label of its own.
pub(super) enum Own<'a> {
    /// Of a bank that is one battery.
    Bank(B),
    Mode(usize, usize),
    Load(&'a str),
    None,
}

pub(super) fn own_label(plan: &Plan, path: Path) -> Own<'_> {
    match path {
        Path::Bank(at, field) => {
            let counts = |bank: &crate::plan::Bank| (bank.series_count, bank.parallel_count);
            let alone = plan
                .banks
                .get(at)
                .is_some_and(|bank| counts(bank) == (1, 1));
            let open = plan.open_fields();
            let counted = [B::SeriesCount, B::ParallelCount]
                .iter()
                .any(|&field| open.contains(&Path::Bank(at, field)));
            if alone && !counted {
                Own::Bank(field)
            } else {
                Own::None
            }
        }
        Path::Mode(unit, mode, _) => Own::Mode(unit, mode),
        Path::Load(at) => {
            let name = plan.loads.get(at).map_or("", |load| load.name.trim());
            if name.is_empty() {
                Own::None
            } else {
                Own::Load(name)
            }
        }
        _ => Own::None,
    }
}

/// A label inside a sentence: `Draw while on` as `draw while on`.
fn in_a_sentence(label: &str) -> String {
    let mut letters = label.chars();
    letters.next().map_or_else(String::new, |first| {
        format!("{}{}", first.to_ascii_lowercase(), letters.as_str())
    })
}
