//! What the page says of itself: storage, links, files, entries.

use super::fields::field_label;
use crate::text::{Formatter, m};
use crate::{
    plan::{Path, draft::Echo},
    range::Range,
};

/// Something that happened to the document, not to the night.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Notice {
    /// A part of the page that is needed for this has not arrived.
    PartNotThere,
    /// The words of the language that was chosen have not arrived.
    LanguageNotThere,
    StorageMissing,
    StorageFull,
    StorageDamaged,
    LinkDamaged,
    LinkUnknownVersion,
    LinkTooLong,
    FileUnknownVersion,
    FileNoPlan,
    FileTooLong,
    PlanFromLink,
    /// What stands behind the `#` is no link of ours.
    NotALink,
    OtherTabTaken,
    FileOpened,
    LinkCopied,
    LinkNotCopied,
    DemoTaken,
    PlanCleared,
}

/// A notice in words.
#[must_use]
pub fn notice_sentence(f: Formatter, notice: Notice) -> &'static str {
    match notice {
        Notice::PartNotThere => f.say(m::NoticePartNotThere),
        Notice::LanguageNotThere => f.say(m::NoticeLanguageNotThere),
        Notice::StorageMissing => f.say(m::NoticeStorageMissing),
        Notice::StorageFull => f.say(m::NoticeStorageFull),
        Notice::StorageDamaged => f.say(m::NoticeStorageDamaged),
        Notice::LinkDamaged => f.say(m::NoticeLinkDamaged),
        Notice::LinkUnknownVersion => f.say(m::NoticeLinkUnknownVersion),
        Notice::LinkTooLong => f.say(m::NoticeLinkTooLong),
        Notice::FileUnknownVersion => f.say(m::NoticeFileUnknownVersion),
        Notice::FileNoPlan => f.say(m::NoticeFileNoPlan),
        Notice::FileTooLong => f.say(m::NoticeFileTooLong),
        Notice::PlanFromLink => f.say(m::NoticePlanFromLink),
        Notice::NotALink => f.say(m::NoticeNotALink),
        Notice::OtherTabTaken => f.say(m::NoticeOtherTabTaken),
        Notice::FileOpened => f.say(m::NoticeFileOpened),
        Notice::LinkCopied => f.say(m::NoticeLinkCopied),
        Notice::LinkNotCopied => f.say(m::NoticeLinkNotCopied),
        Notice::DemoTaken => f.say(m::NoticeDemoTaken),
        Notice::PlanCleared => f.say(m::NoticePlanCleared),
    }
}

/// Why a typed text is not taken, and what would be.
#[must_use]
pub fn entry_trouble(f: Formatter, path: Path, wanted: Range) -> String {
    f.say(m::EntryTrouble {
        field: field_label(f, path),
        range: f.number_accepted(wanted),
    })
}

/// How a typed text was understood, where that is not plain.
#[must_use]
pub fn echo_sentence(f: Formatter, echo: Echo) -> String {
    match echo {
        Echo::Value { value, unit } => f.say(m::EchoValue {
            value: f.stated_value(value, unit),
        }),
        Echo::Strings { count, each, unit } => f.say(m::EchoStrings {
            count,
            each: f.stated_value(each, unit),
        }),
        Echo::Between { value, half, unit } => f.say(m::EchoBetween {
            value: f.stated_value(value, unit),
            half: f.width(half, unit),
        }),
        Echo::Amps { amps, half, at_v } => {
            let (amps, volts) = (f.with_unit(amps, "A"), f.with_unit(at_v, "V"));
            if half > 0.0 {
                let half = f.with_unit(half, "A");
                f.say(m::EchoAmpsBetween { amps, half, volts })
            } else {
                f.say(m::EchoAmps { amps, volts })
            }
        }
        Echo::Watts { watts, amps, at_v } => f.say(m::EchoWatts {
            watts: f.with_unit(watts, "W"),
            amps: f.with_unit(amps, "A"),
            volts: f.with_unit(at_v, "V"),
        }),
    }
}
