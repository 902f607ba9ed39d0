//! Handing a plan on: as the text of a link.

mod link;

pub use link::{MOST_CHARS, NotALink, link_from_plan, plan_from_link};
