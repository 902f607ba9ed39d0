//! A plan as the fragment of a link: `p1.` and base64url of zlib of JSON.
//!
//! The fragment is never sent to a server. zlib's Adler-32 is the checksum, so
//! a link that lost a letter says so instead of opening as another plan.

use crate::plan::{
    Plan,
    open::{NotAPlan, plan_from_json},
};
use base64::{Engine, engine::general_purpose::URL_SAFE_NO_PAD};
use miniz_oxide::{deflate::compress_to_vec_zlib, inflate::decompress_to_vec_zlib_with_limit};

/// Characters of a link that are read.
pub const MOST_CHARS: usize = 8 * 1024;
/// Bytes of JSON that a link may unpack to.
const MOST_BYTES: usize = 64 * 1024;
/// The version of this packing; a plan carries a version of its own.
const PACKING: u32 = 1;
/// zlib's smallest.
const LEVEL: u8 = 10;

/// Why a fragment brings no plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotALink {
    /// No fragment, or one that is not a plan's: a place in the page.
    Absent,
    TooLong {
        chars: usize,
        most: usize,
    },
    /// Packed in a way that this version does not know.
    UnknownVersion {
        packing: u32,
    },
    /// A letter is missing or changed.
    Damaged,
    NotAPlan(NotAPlan),
}

/// The text after `#` that carries `plan`. The same plan gives the same text.
///
/// ```
/// use till_morning::{pass_on::{NotALink, link_from_plan, plan_from_link}, plan::Plan};
/// let link = link_from_plan(&Plan::demo());
/// assert_eq!(plan_from_link(&link), Ok(Plan::demo()));
/// assert_eq!(plan_from_link(&link[..link.len() - 3]), Err(NotALink::Damaged));
/// ```
#[must_use]
pub fn link_from_plan(plan: &Plan) -> String {
    let json = serde_json::to_vec(plan).unwrap_or_default();
    format!(
        "p{PACKING}.{}",
        URL_SAFE_NO_PAD.encode(compress_to_vec_zlib(&json, LEVEL))
    )
}

/// The plan of a fragment, with or without its `#`.
///
/// Reads at most [`MOST_CHARS`] characters and unpacks at most 64 kB.
///
/// # Errors
/// See [`NotALink`].
pub fn plan_from_link(fragment: &str) -> Result<Plan, NotALink> {
    let text = fragment.strip_prefix('#').unwrap_or(fragment);
    let (packing, packed) = split(text).ok_or(NotALink::Absent)?;
    if text.len() > MOST_CHARS {
        return Err(NotALink::TooLong {
            chars: text.len(),
            most: MOST_CHARS,
        });
    }
    if packing != PACKING {
        return Err(NotALink::UnknownVersion { packing });
    }
    let bytes = URL_SAFE_NO_PAD
        .decode(packed)
        .map_err(|_| NotALink::Damaged)?;
    let json =
        decompress_to_vec_zlib_with_limit(&bytes, MOST_BYTES).map_err(|_| NotALink::Damaged)?;
    let json = String::from_utf8(json).map_err(|_| NotALink::Damaged)?;
    plan_from_json(&json).map_err(NotALink::NotAPlan)
}

/// `p` and a number before the first point; anything else is no link of ours.
fn split(text: &str) -> Option<(u32, &str)> {
    let (head, packed) = text.split_once('.')?;
    let number = head.strip_prefix('p')?;
    let digits = !number.is_empty() && number.bytes().all(|byte| byte.is_ascii_digit());
    digits
        .then(|| number.parse().ok())?
        .map(|packing| (packing, packed))
}
