//! A link as a QR code (ISO/IEC 18004), as an SVG of one path.

use fast_qr::{ECL, QRBuilder};
use std::fmt::Write;

/// Light modules around the symbol: the quiet zone of ISO/IEC 18004, 5.3.8 (from memory).
const QUIET: usize = 4;

/// Pixels of a module's side.
const MODULE_PX: usize = 4;

/// The most bytes that a symbol carries at this level of correction (version
/// 40-L; ISO/IEC 18004 table 7).
pub const MOST_BYTES: usize = 2953;

/// A text as a QR code, dark on white; nothing for a text that no symbol carries.
///
/// The lowest level of correction: a plan's link is long, and on a screen or on
/// clean paper fewer and larger modules read better than many corrected ones.
///
/// ```
/// use till_morning::share::qr;
/// assert!(qr::svg("https://example.org/#p1.abc", "A link").unwrap().starts_with("<svg"));
/// assert!(qr::svg(&"x".repeat(3000), "A link").is_none());
/// ```
#[must_use]
pub fn svg(text: &str, title: &str) -> Option<String> {
    if text.len() > MOST_BYTES {
        return None;
    }
    let code = QRBuilder::new(text).ecl(ECL::L).build().ok()?;
    let side = (code.size + 2 * QUIET) * MODULE_PX;
    let mut path = String::new();
    for row in 0..code.size {
        let is_dark = |column: usize| column < code.size && code[row][column].value();
        let mut column = 0;
        // One stroke for each run of dark modules.
        while column < code.size {
            let run = (column..).take_while(|&at| is_dark(at)).count();
            if run > 0 {
                let (x, y) = (column + QUIET, row + QUIET);
                let _ = write!(path, "M{x} {y}h{run}v1h-{run}z");
            }
            column += run.max(1);
        }
    }
    let (modules, title) = (
        code.size + 2 * QUIET,
        crate::view::chart::svg::escaped(title),
    );
    Some(format!(
        concat!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" width="{s}" height="{s}" viewBox="0 0 {m} {m}" "#,
            r#"shape-rendering="crispEdges" role="img" aria-label="{t}"><title>{t}</title>"#,
            r##"<path fill="#fff" d="M0 0h{m}v{m}H0z"/><path fill="#000" d="{p}"/></svg>"##
        ),
        s = side,
        m = modules,
        t = title,
        p = path
    ))
}
