//! What an author puts into a page of their own: a frame, and a script for its height.

use crate::view::chart::svg::escaped;

/// Pixels until the page inside has told its own height, or for ever without the
/// script: a phone's reader's page with three modes is about so tall.
const HEIGHT_PX: u32 = 1200;

/// The frame, as HTML. It has the one permission that the page needs; no style, which a
/// strict policy would refuse.
///
/// ```
/// use till_morning::share::embed;
/// let frame = embed::frame("https://example.org/till-morning.html#p1.abc", "Ours & \"yours\"");
/// assert!(frame.contains(r#"title="Ours &amp; &quot;yours&quot;""#));
/// assert!(frame.contains(r#"sandbox="allow-scripts""#));
/// ```
#[must_use]
pub fn frame(address: &str, title: &str) -> String {
    format!(
        "<iframe src=\"{}\" title=\"{}\" sandbox=\"allow-scripts\" loading=\"lazy\" width=\"100%\" height=\"{HEIGHT_PX}\"></iframe>",
        escaped(address),
        escaped(title)
    )
}

/// The script that gives the frame its height, from beside the page at `address`.
///
/// ```
/// use till_morning::share::embed;
/// let script = embed::script("https://example.org/a/till-morning.html#p1.abc");
/// assert_eq!(script, r#"<script src="https://example.org/a/embed.js" async></script>"#);
/// ```
#[must_use]
pub fn script(address: &str) -> String {
    let page = address.split(['#', '?']).next().unwrap_or_default();
    let folder = page.rfind('/').map_or("", |at| &page[..=at]);
    format!(
        "<script src=\"{}embed.js\" async></script>",
        escaped(folder)
    )
}

/// Where the one-file page is, seen from a page of ours at `href`, with a link in it.
///
/// Only an address on the web can be framed by others; from a file it is a stand-in.
///
/// ```
/// use till_morning::share::embed;
/// let of = |href| embed::address(href, "p1.abc");
/// assert_eq!(of("https://x.org/a/?b#p1.z"), "https://x.org/a/till-morning.html#p1.abc");
/// assert_eq!(of("https://x.org/a/index.html"), "https://x.org/a/till-morning.html#p1.abc");
/// assert_eq!(of("https://x.org/mine.html"), "https://x.org/mine.html#p1.abc");
/// assert_eq!(of("file:///a/b.html"), "https://YOUR-HOST/till-morning.html#p1.abc");
/// ```
#[must_use]
pub fn address(href: &str, link: &str) -> String {
    let page = href.split(['#', '?']).next().unwrap_or_default();
    if !page.starts_with("http") {
        return format!("https://YOUR-HOST/till-morning.html#{link}");
    }
    let folder = page.strip_suffix("index.html").unwrap_or(page);
    if folder.ends_with('/') {
        format!("{folder}till-morning.html#{link}")
    } else {
        format!("{page}#{link}")
    }
}
