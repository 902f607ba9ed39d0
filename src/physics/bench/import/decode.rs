//! From bytes to text: the encodings that loggers and spreadsheets write.

use super::refusal::{Fault, Refusal};

/// The most bytes that are read: 5 MB.
pub const MOST_BYTES: usize = 5_000_000;

/// How the bytes were read as text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Encoding {
    /// UTF-8, with or without a byte-order mark.
    Utf8,
    /// UTF-16, low byte first.
    Utf16Le,
    /// UTF-16, high byte first.
    Utf16Be,
    /// One byte a character. Taken when the bytes are not UTF-8; it matters
    /// only for a degree sign or an accent in a heading.
    Latin1,
}

/// The text of a file.
///
/// A file whose lines end in a lone carriage return is given line feeds, so
/// that lines can be counted.
///
/// # Errors
///
/// [`Fault::TooManyBytes`] above [`MOST_BYTES`].
pub fn decode(bytes: &[u8]) -> Result<(String, Encoding), Refusal> {
    if bytes.len() > MOST_BYTES {
        return Err(Refusal::whole(Fault::TooManyBytes { most: MOST_BYTES }));
    }
    let (text, encoding) = match bytes {
        [0xEF, 0xBB, 0xBF, rest @ ..] => eight_bit(rest),
        [0xFF, 0xFE, rest @ ..] => (utf16(rest, u16::from_le_bytes), Encoding::Utf16Le),
        [0xFE, 0xFF, rest @ ..] => (utf16(rest, u16::from_be_bytes), Encoding::Utf16Be),
        // Plain digits and separators in UTF-16 have a zero in every pair.
        [a, 0, _, 0, ..] if *a != 0 => (utf16(bytes, u16::from_le_bytes), Encoding::Utf16Le),
        [0, a, 0, _, ..] if *a != 0 => (utf16(bytes, u16::from_be_bytes), Encoding::Utf16Be),
        _ => eight_bit(bytes),
    };
    if text.contains('\r') && !text.contains('\n') {
        return Ok((text.replace('\r', "\n"), encoding));
    }
    Ok((text, encoding))
}

/// UTF-8 if it is that; else every byte a character, which cannot fail and keeps
/// all digits and separators as they are.
fn eight_bit(bytes: &[u8]) -> (String, Encoding) {
    match std::str::from_utf8(bytes) {
        Ok(text) => (text.to_owned(), Encoding::Utf8),
        Err(_) => (
            bytes.iter().map(|&b| char::from(b)).collect(),
            Encoding::Latin1,
        ),
    }
}

/// Pairs of bytes to text. A half pair at the end is dropped, and what is no
/// character becomes the replacement sign, which no number cell accepts.
fn utf16(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> String {
    let units = bytes.chunks_exact(2).map(|pair| unit([pair[0], pair[1]]));
    char::decode_utf16(units)
        .map(|c| c.unwrap_or(char::REPLACEMENT_CHARACTER))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_text_comes_out_of_every_encoding() {
        let want = "t,V\n0,12.8\n";
        let le: Vec<u8> = want.encode_utf16().flat_map(u16::to_le_bytes).collect();
        let be: Vec<u8> = want.encode_utf16().flat_map(u16::to_be_bytes).collect();
        let with = |mark: &[u8], body: &[u8]| [mark, body].concat();
        for (bytes, encoding) in [
            (want.as_bytes().to_vec(), Encoding::Utf8),
            (with(&[0xEF, 0xBB, 0xBF], want.as_bytes()), Encoding::Utf8),
            (with(&[0xFF, 0xFE], &le), Encoding::Utf16Le),
            (with(&[0xFE, 0xFF], &be), Encoding::Utf16Be),
            (le, Encoding::Utf16Le),
            (be, Encoding::Utf16Be),
        ] {
            assert_eq!(decode(&bytes), Ok((want.to_owned(), encoding)));
        }
    }

    #[test]
    fn a_lone_high_byte_is_latin_and_old_line_ends_are_counted() {
        let (text, encoding) = decode(b"temp \xB0C\r1\r2").unwrap();
        assert_eq!(
            (text.as_str(), encoding),
            ("temp °C\n1\n2", Encoding::Latin1)
        );
    }
}
