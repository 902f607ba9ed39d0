//! A chart as a picture of its own: an SVG that needs nothing beside it.
//!
//! The page's charts take their looks from the page's style sheet, and stand
//! under a heading there. A picture that leaves has both inside: title, axis
//! names, what to see in it, and colours as they are, for white paper. Title
//! and takeaway are there for screen readers too (`title`, `desc`).

use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::{Answer, DayAnswer, METHOD},
    plan::Plan,
    text::{hand_on, pictures},
    view::chart::{
        scrub::Scrubber,
        svg::{Anchor, Svg, escaped},
    },
    view::drawing::{self, Drawing, Shown, Titles},
};

use super::table::{Cell, Table};

/// How wide a picture is: a column of a blog, or half a page in print.
const WIDTH_PX: f64 = 720.0;
const SIDE_PX: f64 = 16.0;
const INNER_PX: f64 = WIDTH_PX - 2.0 * SIDE_PX;
const TITLE_PX: f64 = 34.0;
const LINE_PX: f64 = 20.0;
/// Letters of the text lines that fit across, at the width that fonts have at most.
const LINE_CHARS: usize = 96;

/// The looks. Colours are Okabe and Ito's, those that pass 3:1 on white; curves
/// differ by dash too.
pub(super) const STYLE: &str = "svg{font-family:Helvetica,Arial,'Liberation Sans','DejaVu Sans',sans-serif}\
.sheet{fill:#fff}.title{font-size:18px;font-weight:600;fill:#2a2620}\
.line{font-size:13px;fill:#2a2620}.small{font-size:11px;fill:#5d564a}\
.grid{stroke:#cfc4ae;stroke-width:1;fill:none}.axis{stroke:#857a66;fill:none}\
.tick{font-size:11px;fill:#5d564a}.midnight{fill:#2a2620;font-weight:600}\
.curve{fill:none;stroke-width:2.25;stroke-linecap:round;stroke-linejoin:round}\
.curve.style-0{stroke:#0072b2}.curve.style-1{stroke:#b84a00;stroke-dasharray:8 4}\
.curve.style-2{stroke:#00795a;stroke-dasharray:2 5}.curve.style-3{stroke:#a8477f;stroke-dasharray:10 4 2 4}\
.curve.top{stroke-width:1.25;stroke-dasharray:none}\
.band{opacity:.18}.layer{opacity:.45}\
.band.style-0,.layer.style-0,.end-label.style-0{fill:#0072b2}\
.band.style-1,.layer.style-1,.end-label.style-1{fill:#b84a00}\
.band.style-2,.layer.style-2,.end-label.style-2{fill:#00795a}\
.band.style-3,.layer.style-3,.end-label.style-3{fill:#a8477f}\
.shade{fill:#2a2620;opacity:.07}.event{stroke:#857a66;stroke-dasharray:2 3;fill:none}\
.event-label{font-size:12px;fill:#2a2620}.end-label{font-size:12px;font-weight:600}\
.leader{stroke:#857a66;fill:none}\
.row-name{font-size:14px;font-weight:600;fill:#2a2620}.row-hours{font-size:14px;fill:#2a2620}\
.bar-solid{fill:#b3400f}.bar-fade{fill:url(#fade)}.fade-from{stop-color:#b3400f}\
.fade-to{stop-color:#b3400f;stop-opacity:.08}.bar-likely{stroke:#2a2620;stroke-width:2}\
.bar-more{fill:#2a2620;font-size:16px}\
.pic-title{font-size:13px;font-weight:600;fill:#2a2620}.pic-line{font-size:12px;fill:#2a2620}\
.pic-line.strong{font-weight:600}.pic-line.wrong{fill:#a3211b}\
.pic-symbol{stroke:#2a2620;stroke-width:1.25;fill:none;stroke-linejoin:round}\
.pic-plate{stroke:#2a2620;stroke-width:3.5;fill:none}.pic-bus{stroke:#2a2620;stroke-width:5;fill:none}\
.pic-wire,.pic-cable{stroke:#2a2620;stroke-width:2;fill:none}\
.pic-wire.plain{stroke:#857a66;stroke-width:1.25}.pic-wire.open{stroke-dasharray:7 4}\
.pic-wire.bad{stroke:#a3211b;stroke-width:3}.pic-fuse{stroke:#2a2620;stroke-width:1.25;fill:#fff}\
.pic-fuse.missing{stroke-dasharray:3 2.5}.pic-badge{stroke:#2a2620;stroke-width:1.5;stroke-linejoin:round}\
.pic-badge.good{fill:#2a2620}.pic-badge.open{fill:#fff}.pic-badge.bad{fill:#a3211b;stroke:#a3211b}\
.pic-sign{stroke:#fff;stroke-width:1.75;fill:none;stroke-linecap:round;stroke-linejoin:round}\
.pic-flow{stroke-width:1;fill-opacity:.45}\
.pic-flow.style-0{fill:#0072b2;stroke:#0072b2}.pic-flow.style-1{fill:#b84a00;stroke:#b84a00}\
.pic-flow.style-2{fill:#00795a;stroke:#00795a}.pic-flow.style-3{fill:#a8477f;stroke:#a8477f}\
.pic-flow.style-4{fill:#857a66;stroke:#857a66}\
.pic-spilled{fill:none;stroke:#b84a00;stroke-width:1.25;stroke-dasharray:4 3}.pic-node{fill:#2a2620}\
.pic-axis{stroke:#cfc4ae;stroke-width:1;fill:none}\
.pic-tolerance{fill:#2a2620;fill-opacity:.08;stroke:#857a66;stroke-dasharray:3 2.5}\
.pic-claimed{stroke:#2a2620;stroke-width:2.5;fill:none}.pic-whisker{stroke:#0072b2;stroke-width:2;fill:none}\
.pic-measured{fill:#0072b2;stroke:#0072b2;stroke-width:1.5}.pic-measured.hollow{fill:#fff}";

/// A picture to hand on, not drawn yet.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    pub title: String,
    /// One sentence: what to see in it.
    pub takeaway: String,
    what: What,
}

#[derive(Clone, Debug, PartialEq)]
enum What {
    /// SVG markup that is drawn already, and the numbers behind it where no other
    /// table has them.
    Drawn(String, Option<Table>),
    Chart(Box<(Titles, Drawing)>),
}

/// All pictures of an answer, in the order of the page.
#[must_use]
pub fn figures(f: Formatter, plan: &Plan, answer: &Answer) -> Vec<Figure> {
    if answer.runs.is_empty() {
        return Vec::new();
    }
    let ribbon = Figure {
        title: f.say(m::Ribbon).into(),
        takeaway: f.say(m::RibbonCaption).into(),
        what: What::Drawn(drawing::night_ribbon(f, plan, answer, INNER_PX), None),
    };
    let night = drawing::NIGHT
        .iter()
        .map(|chart| Figure::of_chart((chart.titles)(f), chart.draw(f, plan, answer)));
    let day = answer.day.iter().flat_map(|day| {
        drawing::DayChart::ALL.map(|chart| {
            Figure::of_chart(chart.titles(f, plan, day.span_h), chart.draw(f, plan, day))
        })
    });
    let books = answer.day.iter().flat_map(|day| books(f, day));
    let wiring = answer.wiring.iter().flat_map(|wiring| {
        let bank = drawing::bank_diagram(f, plan, wiring, INNER_PX);
        std::iter::once(drawing::wiring_diagram(f, plan, wiring, INNER_PX)).chain(bank)
    });
    let claims = drawing::claims_diagram(f, plan, &answer.claims, INNER_PX);
    let diagrams = wiring.chain(claims);
    let diagrams = diagrams.map(|shown| Figure::of_diagram(&shown, None));
    std::iter::once(ribbon)
        .chain(night)
        .chain(day)
        .chain(books)
        .chain(diagrams)
        .collect()
}

/// The day's two books as flows, each with its rows.
fn books(f: Formatter, day: &DayAnswer) -> [Figure; 2] {
    let energy = drawing::energy_flows(f, day, INNER_PX);
    let heat = drawing::heat_flows(f, day, INNER_PX);
    [
        (energy, drawing::energy_balance(f, day)),
        (heat, drawing::heat_balance(f, day)),
    ]
    .map(|(shown, balance)| {
        // The direction is a column: with a sign alone, a spreadsheet that guesses the
        // separator may take the minus for one.
        let rows = [balance.ins, balance.outs]
            .into_iter()
            .zip(pictures::flow_sides(f))
            .flat_map(|(flows, side)| {
                flows
                    .into_iter()
                    .map(move |flow| vec![flow.name.into(), side.into(), flow.value.into()])
            });
        let table = Table {
            title: shown.title.into(),
            heads: pictures::flow_heads(f).map(String::from).into(),
            rows: rows.collect(),
        };
        Figure::of_diagram(&shown, Some(table))
    })
}

impl Figure {
    /// A chart with the words around it.
    #[must_use]
    pub fn of_chart(titles: Titles, drawing: Drawing) -> Self {
        Self {
            title: titles.title.into(),
            takeaway: drawing.takeaway.clone(),
            what: What::Chart(Box::new((titles, drawing))),
        }
    }

    /// A diagram with its words; a table where its numbers stand in no other.
    #[must_use]
    pub fn of_diagram(shown: &Shown, table: Option<Table>) -> Self {
        Self {
            title: shown.title.into(),
            takeaway: shown.caption.clone(),
            what: What::Drawn(shown.picture.markup(""), table),
        }
    }

    /// The picture as an SVG file.
    #[must_use]
    pub fn svg(&self, f: Formatter) -> String {
        let mut top = TITLE_PX;
        let mut sheet = Svg::new();
        sheet.text("title", (SIDE_PX, 24.0), Anchor::Start, &self.title);
        let (inner, height) = match &self.what {
            What::Drawn(markup, _) => placed(markup, top),
            What::Chart(chart) => {
                let (titles, drawing) = &**chart;
                sheet.text(
                    "small",
                    (SIDE_PX, top + 12.0),
                    Anchor::Start,
                    titles.y_label,
                );
                top += LINE_PX;
                let laid = drawing::lay_out(drawing, INNER_PX);
                placed(&drawing::markup(f, drawing, &laid, None, ""), top)
            }
        };
        top += height;
        if let What::Chart(chart) = &self.what {
            let at = (WIDTH_PX - SIDE_PX, top + 12.0);
            sheet.text("small", at, Anchor::End, chart.0.x_label);
            top += LINE_PX;
        }
        for line in lines(&self.takeaway, LINE_CHARS) {
            sheet.text("line", (SIDE_PX, top + 14.0), Anchor::Start, &line);
            top += LINE_PX;
        }
        let source = hand_on::made_with(f, METHOD);
        sheet.text("small", (SIDE_PX, top + 14.0), Anchor::Start, &source);
        let size = (WIDTH_PX, top + LINE_PX + 4.0);
        finished(&self.title, &self.takeaway, size, &(sheet.inner() + &inner))
    }

    /// The numbers behind the curves; nothing for a picture that has no curves.
    #[must_use]
    pub fn table(&self, f: Formatter) -> Option<Table> {
        let chart = match &self.what {
            What::Chart(chart) => chart,
            What::Drawn(_, table) => return table.clone(),
        };
        let (titles, drawing) = &**chart;
        let scrubber = Scrubber::new(&drawing.series);
        let readings = (0..scrubber.len()).filter_map(|stop| scrubber.read(stop));
        let rows = readings.map(|reading| {
            let values = drawing.values(&reading).into_iter().map(Cell::from);
            std::iter::once(Cell::Number(reading.x))
                .chain(values)
                .collect()
        });
        let names = drawing.names.iter();
        let first = hand_on::column(f, titles.x_label, titles.x_text);
        let heads = names.map(|name| format!("{name}: {}", titles.y_label));
        Some(Table {
            title: self.title.clone(),
            heads: std::iter::once(first).chain(heads).collect(),
            rows: rows.collect(),
        })
    }
}

/// A drawing's markup moved to its place in the sheet, and its height.
fn placed(markup: &str, top: f64) -> (String, f64) {
    // Our own markup: its root begins with the name space, then the size.
    let height = markup
        .split_once(" height=\"")
        .and_then(|(_, rest)| rest.split('"').next()?.parse().ok())
        .unwrap_or(0.0);
    let place = format!(r#"<svg x="{SIDE_PX}" y="{top}" "#);
    (markup.replacen("<svg ", &place, 1), height)
}

/// The root, with title, description and looks inside.
fn finished(title: &str, description: &str, (width, height): (f64, f64), inner: &str) -> String {
    format!(
        concat!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" width="{w}" height="{h}" viewBox="0 0 {w} {h}" "#,
            r#"role="img" aria-labelledby="title desc"><title id="title">{t}</title><desc id="desc">{d}</desc>"#,
            r#"<style>{s}</style><rect class="sheet" width="{w}" height="{h}"/>{i}</svg>"#
        ),
        w = width,
        h = height,
        t = escaped(title),
        d = escaped(description),
        s = STYLE,
        i = inner
    )
}

/// A text in lines of at most so many letters, broken at blanks.
fn lines(text: &str, most: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        match lines.last_mut() {
            Some(line) if line.chars().count() + 1 + word.chars().count() <= most => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.into()),
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_broken_at_blanks() {
        assert_eq!(lines("one two  three", 7), ["one two", "three"]);
        assert_eq!(lines("", 7), [""; 0]);
    }

    #[test]
    fn a_name_cannot_become_markup() {
        let mut plan = Plan::demo();
        plan.units[0].modes[0].name = "<script>&\"'".into();
        let answer = crate::answer::answer(&plan);
        for figure in figures(Formatter::ENGLISH, &plan, &answer) {
            assert!(!figure.svg(Formatter::ENGLISH).contains("<script"));
        }
    }
}
