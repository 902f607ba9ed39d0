//! What the page says of itself: storage, links, files, entries.

use super::fields::field_label;
use crate::text::Formatter;
use crate::{
    plan::{Path, draft::Echo},
    range::Range,
};

/// Something that happened to the document, not to the night.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Notice {
    /// A part of the page that is needed for this has not arrived.
    PartNotThere,
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
pub fn notice_sentence(_f: Formatter, notice: Notice) -> &'static str {
    match notice {
        Notice::PartNotThere => {
            "The part of the page that opens, saves and links plans has not arrived yet. It comes in a moment, or once there is a signal; a plan of your own is opened then."
        }
        Notice::StorageMissing => {
            "This browser keeps nothing here (a private window, or a frame). Save the plan as a file or copy its link."
        }
        Notice::StorageFull => {
            "The browser’s storage is full: changes are not kept. Save the plan as a file or copy its link."
        }
        Notice::StorageDamaged => {
            "The plan kept in this browser could not be read. It is set aside, not deleted; this is the example."
        }
        Notice::LinkDamaged => {
            "The link is damaged: a part of it is missing or changed. Your own plan is shown instead."
        }
        Notice::LinkUnknownVersion => {
            "The link was made by a later version of this page. Reload to update, then open it again."
        }
        Notice::LinkTooLong => {
            "The link is longer than any plan of ours. Your own plan is shown instead."
        }
        Notice::FileUnknownVersion => {
            "The file was made by a later version of this page. Reload to update, then open it again."
        }
        Notice::FileNoPlan => "The file is not a plan. Nothing was changed.",
        Notice::FileTooLong => "The file is too long to be a plan. Nothing was changed.",
        Notice::PlanFromLink => "This plan came by a link. Undo brings back your own.",
        Notice::NotALink => {
            "What stands behind the # in the address is no link of this page. Your own plan is shown."
        }
        Notice::OtherTabTaken => {
            "The other tab’s plan is open here. Undo brings back the one of this tab."
        }
        Notice::FileOpened => "The plan from the file is open. Undo brings back the one before.",
        Notice::LinkCopied => "The link is copied.",
        Notice::LinkNotCopied => {
            "The browser does not let the page copy: select the link below and copy it."
        }
        Notice::DemoTaken => "This is the example. Undo brings back your own plan.",
        Notice::PlanCleared => "A fresh plan. Undo brings back the one before.",
    }
}

/// Why a typed text is not taken, and what would be.
#[must_use]
pub fn entry_trouble(f: Formatter, path: Path, wanted: Range) -> String {
    format!("{}: give {}.", field_label(f, path), f.accepted(wanted))
}

/// How a typed text was understood, where that is not plain.
#[must_use]
pub fn echo_sentence(f: Formatter, echo: Echo) -> String {
    let value_of = |value, unit| f.stated_value(value, unit);
    let read = match echo {
        Echo::Value { value, unit } => value_of(value, unit),
        Echo::Strings { count, each, unit } => {
            format!("{count} strings of {}", value_of(each, unit))
        }
        Echo::Between { value, half, unit } => {
            format!("{} ±{}", value_of(value, unit), f.width(half, unit))
        }
        Echo::Amps { amps, half, at_v } => {
            let spread = if half > 0.0 {
                format!(" ±{}", f.with_unit(half, "A"))
            } else {
                String::new()
            };
            format!(
                "{}{spread} at {}",
                f.with_unit(amps, "A"),
                f.with_unit(at_v, "V")
            )
        }
        Echo::Watts { watts, amps, at_v } => format!(
            "{}: {} at {}",
            f.with_unit(watts, "W"),
            f.with_unit(amps, "A"),
            f.with_unit(at_v, "V")
        ),
    };
    format!("read as {read}")
}
