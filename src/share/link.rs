//! A plan inside a link: what stands after `#`, so that no server sees it.
//!
//! `p1.` and then, in base64url without padding (RFC 4648 section 5), the
//! deflate stream (RFC 1951) of the plan's compact JSON, common pieces of it as
//! single bytes (`fragments.rs`), made with a preset dictionary (`dictionary.rs`),
//! and the Adler-32 of the JSON. That is a zlib stream with a dictionary (RFC
//! 1950, FDICT) less its first six bytes, which would be the same in every link.
//! The `1` numbers this packing; the plan inside carries its own version. A link
//! cut short or mistyped says so and opens as no other plan.
//!
//! Measured in characters, with and without dictionary and pieces: the demonstration
//! 270 and 550; a plan of four banks and 24 modes 993 and 1650; the same with hot day,
//! wiring, claims and a reader's page 1458 and 2850, which no phone reads as a code.

use super::{
    dictionary::{DICTIONARY, FRAGMENTS},
    fragments::{Unreadable, lengthened, shortened},
};
use crate::plan::{
    Plan,
    open::{self, plan_from_json},
};
use base64::{Engine as _, engine::general_purpose::URL_SAFE_NO_PAD};
use miniz_oxide::{
    MZ_ADLER32_INIT,
    deflate::core::{
        CompressorOxide, TDEFLFlush, compress_to_output, create_comp_flags_from_zip_params,
    },
    inflate::{
        TINFLStatus,
        core::{
            DecompressorOxide, decompress, inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF,
        },
    },
    mz_adler32_oxide,
};

/// The packing that is written.
pub const VERSION: u64 = 1;

/// Bytes of link that are read and written: what browsers, chats and mail
/// carry without cutting it (common practice, no source).
pub const MOST_LINK_BYTES: usize = 8 * 1024;

/// Bytes of JSON that a link may unpack to.
pub const MOST_JSON_BYTES: usize = 64 * 1024;

/// The hardest that the compressor tries; slower, but a plan is small.
const EFFORT: i32 = 10;

/// The plan does not fit in a link; a file still carries it.
///
/// Only long own open-circuit tables or very long names come to this.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooLong {
    pub bytes: usize,
    pub most: usize,
}

/// Why a text after `#` gave no plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotALink {
    /// Nothing there.
    Absent,
    /// Something that does not begin as a link of ours: a place in the page, or
    /// another program's.
    NotOurs,
    /// Longer than [`MOST_LINK_BYTES`], or unpacks to more than
    /// [`MOST_JSON_BYTES`]; `most` says which.
    TooLong { most: usize },
    /// Packed, or the plan inside written, by a later version.
    UnknownVersion { version: u64 },
    /// Cut short, mistyped or changed on its way.
    Damaged,
    /// Arrived whole, but is no plan.
    NotAPlan(open::NotAPlan),
}

/// The text to put after `#`.
///
/// The same plan always gives the same text. Every number in the plan must be
/// finite, as it is in a plan that was read or typed.
///
/// # Errors
/// [`TooLong`] if the link would be too long for [`plan_from_link`] to read.
///
/// ```
/// use till_morning::{share::{link_from_plan, plan_from_link}, plan::Plan};
/// let link = link_from_plan(&Plan::demo()).unwrap();
/// assert!(link.starts_with("p1."));
/// assert_eq!(plan_from_link(&link), Ok(Plan::demo()));
/// ```
pub fn link_from_plan(plan: &Plan) -> Result<String, TooLong> {
    let json = serde_json::to_string(plan).unwrap_or_default();
    within(json.len(), MOST_JSON_BYTES)?;
    let packed = URL_SAFE_NO_PAD.encode(pack(json.as_bytes()));
    let link = format!("p{VERSION}.{packed}");
    within(link.len(), MOST_LINK_BYTES)?;
    Ok(link)
}

/// Reads the text after `#`, with or without it.
///
/// # Errors
/// See [`NotALink`]. As in a file, values outside their range are no error
/// here: the answer's findings name them.
///
/// ```
/// use till_morning::share::{NotALink, plan_from_link};
/// assert_eq!(plan_from_link("#"), Err(NotALink::Absent));
/// assert_eq!(plan_from_link("#question-2"), Err(NotALink::NotOurs));
/// assert_eq!(plan_from_link("#p2.q1Y"), Err(NotALink::UnknownVersion { version: 2 }));
/// assert_eq!(plan_from_link("#p1.q1Y"), Err(NotALink::Damaged));
/// ```
pub fn plan_from_link(text: &str) -> Result<Plan, NotALink> {
    if matches!(text, "" | "#") {
        return Err(NotALink::Absent);
    }
    let (version, packed) = split(text).ok_or(NotALink::NotOurs)?;
    if version != VERSION {
        return Err(NotALink::UnknownVersion { version });
    }
    if text.len() > MOST_LINK_BYTES {
        return Err(NotALink::TooLong {
            most: MOST_LINK_BYTES,
        });
    }
    let packed = URL_SAFE_NO_PAD
        .decode(packed)
        .map_err(|_| NotALink::Damaged)?;
    let json = String::from_utf8(unpack(&packed)?).map_err(|_| NotALink::Damaged)?;
    plan_from_json(&json).map_err(|error| match error {
        open::NotAPlan::UnknownVersion { version } => NotALink::UnknownVersion { version },
        error => NotALink::NotAPlan(error),
    })
}

/// Splits `#p12.rest` into 12 and the rest; nothing if it does not begin so.
fn split(text: &str) -> Option<(u64, &str)> {
    let text = text.strip_prefix('#').unwrap_or(text);
    let (digits, packed) = text.strip_prefix('p')?.split_once('.')?;
    let number = !digits.is_empty()
        && !digits.starts_with('0')
        && digits.bytes().all(|byte| byte.is_ascii_digit());
    // A number past u64 is no version that will ever be.
    number.then(|| digits.parse().ok())?.map(|n| (n, packed))
}

/// The dictionary as it stands behind what is packed: shortened like it.
fn dictionary() -> Vec<u8> {
    shortened(DICTIONARY.as_bytes(), &FRAGMENTS)
}

/// Deflates with the dictionary behind it, then the checksum.
///
/// The library has no call for a dictionary. Deflating it first up to a byte
/// boundary and dropping that output comes to the same.
fn pack(json: &[u8]) -> Vec<u8> {
    let raw = 0;
    let mut state = CompressorOxide::new(create_comp_flags_from_zip_params(EFFORT, raw, 0));
    compress_to_output(&mut state, &dictionary(), TDEFLFlush::Sync, |_| true);
    let mut packed = Vec::new();
    let short = shortened(json, &FRAGMENTS);
    compress_to_output(&mut state, &short, TDEFLFlush::Finish, |bytes| {
        packed.extend_from_slice(bytes);
        true
    });
    packed.extend_from_slice(&checksum(json).to_be_bytes());
    packed
}

/// Inflates into one bounded buffer that begins with the dictionary. The
/// checksum must agree and the stream must be all there is: text glued to a
/// link is damage, not a plan.
fn unpack(packed: &[u8]) -> Result<Vec<u8>, NotALink> {
    const TOO_LONG: NotALink = NotALink::TooLong {
        most: MOST_JSON_BYTES,
    };
    let (stream, sum) = packed.split_last_chunk().ok_or(NotALink::Damaged)?;
    let mut buffer = dictionary();
    let begin = buffer.len();
    buffer.resize(begin + MOST_JSON_BYTES, 0);
    let mut state = Box::<DecompressorOxide>::default();
    let flags = TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
    let written = match decompress(&mut state, stream, &mut buffer, begin, flags) {
        (TINFLStatus::Done, read, written) if read == stream.len() => written,
        (TINFLStatus::HasMoreOutput, ..) => return Err(TOO_LONG),
        _ => return Err(NotALink::Damaged),
    };
    let short = &buffer[begin..][..written];
    let json = lengthened(short, &FRAGMENTS, MOST_JSON_BYTES).map_err(|error| match error {
        Unreadable::TooLong => TOO_LONG,
        Unreadable::NoPiece => NotALink::Damaged,
    })?;
    let agrees = checksum(&json) == u32::from_be_bytes(*sum);
    agrees.then_some(json).ok_or(NotALink::Damaged)
}

/// Adler-32 (RFC 1950).
fn checksum(json: &[u8]) -> u32 {
    mz_adler32_oxide(MZ_ADLER32_INIT, json)
}

fn within(bytes: usize, most: usize) -> Result<(), TooLong> {
    if bytes > most {
        return Err(TooLong { bytes, most });
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_link_of_ours_is_told_by_its_beginning() {
        assert_eq!(split("#p1.abc"), Some((1, "abc")));
        assert_eq!(split("p12."), Some((12, "")));
        for text in [
            "",
            "#",
            "##p1.a",
            "p1",
            "p.a",
            "p01.a",
            "p+1.a",
            "P1.a",
            "question-2",
            "p１.a",
            "p99999999999999999999.a",
        ] {
            assert_eq!(split(text), None, "{text}");
        }
    }
}
