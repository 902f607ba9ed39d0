//! The report: plan, answer, assumptions, method and cautions on paper.
//!
//! HTML in classes only, so that the page can show it under a strict content
//! policy. [`file`] is the same with its own looks inside: one page to keep, to
//! mail or to print without us.

use super::{
    day_tables, figure, qr,
    table::{Cell, Table},
    tables::counts,
};
use crate::{
    answer::{Answer, METHOD, claims::ClaimsAnswer},
    plan::Plan,
    plan::finding::Severity,
    text::{self, claims as say, hand_on, words},
    view::chart::svg::escaped,
    view::drawing::{self, Shown},
};

/// The looks of a report, for page and file alike.
pub const STYLE: &str = include_str!("../../style/report.css");

/// Width of the ribbon, in the pixels of paper.
const RIBBON_PX: f64 = 640.0;

/// The report's `article`. `address` is the plan's link, if it is to be on paper.
#[must_use]
pub fn article(plan: &Plan, answer: &Answer, address: Option<&str>) -> String {
    let mut out = Html::default();
    out.raw("<article class=\"report\">");
    out.element("h1", &hand_on::report_title(plan));
    out.classed("p", "method", &hand_on::made_with(METHOD));
    hours(&mut out, plan, answer);
    size(&mut out, plan, answer);
    later(&mut out, plan, answer);
    out.element("h2", hand_on::REPORT_PLAN);
    numbers(&mut out, plan, true);
    out.element("h2", words::ASSUMED);
    numbers(&mut out, plan, false);
    findings(&mut out, plan, answer);
    cautions(&mut out, plan);
    if let Some(address) = address {
        link(&mut out, address);
    }
    out.raw("</article>");
    out.0
}

/// The report as a page of its own: needs no other file and no script.
#[must_use]
pub fn file(plan: &Plan, answer: &Answer, address: Option<&str>) -> String {
    let title = escaped(&hand_on::report_title(plan));
    let article = article(plan, answer, address);
    let curves = figure::STYLE;
    format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title}</title>\n<style>\n{STYLE}{curves}\n</style>\n</head>\n<body>\n{article}\n</body>\n</html>\n"
    )
}

/// The sentences of the first question, a row for each mode, and the ribbon.
fn hours(out: &mut Html, plan: &Plan, answer: &Answer) {
    out.element("h2", words::QUESTION_RUN);
    let asked = (plan.night.asked_unit, plan.night.asked_mode);
    let asked = answer.runs.iter().find(|run| (run.unit, run.mode) == asked);
    match asked.or(answer.runs.first()) {
        Some(run) => out.classed("p", "answer", &hand_on::sentence(plan, run)),
        None => return out.classed("p", "answer", words::NO_ANSWER),
    }
    let rows = answer.runs.iter().map(|run| {
        vec![
            text::run_title(plan, answer, run).into(),
            text::number::duration(run.hours_h.likely).into(),
            hand_on::from_to(run).into(),
            hand_on::until(plan, run).into(),
            text::stop_phrase(&run.stop).into(),
        ]
    });
    out.table(&Table {
        title: hand_on::TABLE_RUNS.into(),
        heads: hand_on::REPORT_RUN_HEADS.map(String::from).into(),
        rows: rows.collect(),
    });
    out.raw("<figure class=\"ribbon\">");
    // The page shows a ribbon of its own: two of one id would be one too many.
    let ribbon = drawing::night_ribbon(plan, answer, RIBBON_PX);
    out.raw(&ribbon.replacen("id=\"fade\"", "id=\"fade-paper\"", 1));
    out.element("figcaption", words::RIBBON_CAPTION);
    out.raw("</figure>");
}

fn size(out: &mut Html, plan: &Plan, answer: &Answer) {
    if answer.sizing.is_empty() {
        return;
    }
    out.element("h2", words::QUESTION_BANK);
    for sizing in &answer.sizing {
        out.element("p", &text::sizing_answer(plan, sizing));
    }
}

/// The hot day, the wiring and the claims, where there is something of them: what
/// the page says first, and the columns that fit on paper.
fn later(out: &mut Html, plan: &Plan, answer: &Answer) {
    if let Some(day) = &answer.day {
        let [_, days] = day_tables::day(plan, day);
        out.element("h2", words::QUESTION_DAY);
        out.element("p", &text::day::day_sentence(plan, day));
        if let Some(odds) = &day.odds {
            out.element("p", &text::day::odds_sentence(plan, day, odds));
        }
        out.table(&days.columns(&[0, 1, 4, 5, 7, 8, 9]));
    }
    if let Some(wiring) = &answer.wiring {
        out.element("h2", words::QUESTION_WIRING);
        out.element("p", &text::wiring::headline(wiring));
        out.diagram(&drawing::wiring_diagram(plan, wiring, drawing::PAPER_PX));
    }
    if let Some(refill) = &answer.refill {
        out.element("p", &text::wiring::refill::headline(plan, refill));
    }
    claims(out, plan, &answer.claims);
}

/// The bench report as a lab has it: rows, what each rests on, the air side with
/// its uncertainty, and what a watt-hour cost.
fn claims(out: &mut Html, plan: &Plan, answer: &ClaimsAnswer) {
    if answer.claims.is_empty() && answer.air.is_none() && answer.money.is_none() {
        return;
    }
    out.element("h2", words::QUESTION_CLAIMS);
    if !answer.claims.is_empty() {
        let rows = answer.claims.iter();
        out.table(&Table {
            title: hand_on::TABLE_CLAIMS.into(),
            heads: say::words::REPORT_HEADS.map(String::from).into(),
            rows: rows
                .map(|claim| say::report_row(plan, claim).map(Cell::from).into())
                .collect(),
        });
        out.raw("<dl>");
        for claim in &answer.claims {
            out.element("dt", &say::claim_title(plan, claim));
            out.element("dd", &say::report_notes(plan, claim).join(" "));
        }
        out.raw("</dl>");
        out.element("p", say::words::REPORT_NOTE);
    }
    if let Some(air) = &answer.air {
        out.element("p", &say::air_sentence(air, plan.show));
        out.element("p", &say::air_detail(air, plan.show));
    }
    if let Some(money) = &answer.money {
        out.element("p", &say::money_sentence(money));
    }
}

/// The plan's numbers, stated or assumed, a line for each part.
fn numbers(out: &mut Html, plan: &Plan, stated: bool) {
    let mut parts: Vec<(String, Vec<String>)> = Vec::new();
    let mut add = |part: String, line: String| match parts.iter_mut().find(|(of, _)| *of == part) {
        Some((_, lines)) => lines.push(line),
        None => parts.push((part, vec![line])),
    };
    if stated {
        for (bank, the_bank) in plan.banks.iter().enumerate() {
            let chemistry = text::chemistry_name(the_bank.chemistry);
            add(text::bank_in_words(plan, bank), chemistry.into());
        }
        for (unit, the_unit) in plan.units.iter().enumerate() {
            let feed = hand_on::fed(&the_unit.feed);
            add(text::unit_name(plan, unit), feed);
        }
    }
    let paths = plan.paths().into_iter();
    for (path, figure) in paths.filter_map(|path| Some((path, plan.figure(path)?))) {
        if plan.stated(path).is_some() == stated && counts(plan, path) {
            add(
                hand_on::part_of(plan, path),
                hand_on::plan_line(plan, path, figure),
            );
        }
    }
    out.raw("<dl>");
    for (part, lines) in parts {
        out.element("dt", &part);
        out.element("dd", &lines.join("; "));
    }
    out.raw("</dl>");
}

fn findings(out: &mut Html, plan: &Plan, answer: &Answer) {
    if answer.findings.is_empty() {
        return;
    }
    out.element("h2", hand_on::REPORT_FINDINGS);
    out.raw("<ul>");
    for finding in &answer.findings {
        let class = match finding.severity {
            Severity::Note => "note",
            Severity::Caution | Severity::Error => "caution",
        };
        out.classed("li", class, &text::finding_sentence(finding, plan.show));
    }
    out.raw("</ul>");
}

fn cautions(out: &mut Html, plan: &Plan) {
    out.element("h2", words::CAUTIONS_TITLE);
    out.raw("<ul class=\"cautions\">");
    for caution in crate::answer::cautions(plan) {
        let source = match text::caution_source(caution) {
            "" => String::new(),
            source => text::in_brackets(source),
        };
        let text = text::caution(plan, caution);
        out.element("li", &format!("{text}{source}"));
    }
    out.raw("</ul>");
}

/// The link to click in a file and to photograph on paper.
fn link(out: &mut Html, address: &str) {
    out.raw("<footer>");
    if let Some(code) = qr::svg(address, hand_on::QR_NAME) {
        out.raw(&code);
    }
    out.raw("<p><a href=\"");
    out.raw(&escaped(address));
    out.raw("\">");
    out.text(hand_on::REPORT_LINK);
    out.raw("</a></p></footer>");
}

/// HTML under construction. Texts are escaped.
#[derive(Default)]
struct Html(String);

impl Html {
    fn raw(&mut self, markup: &str) {
        self.0.push_str(markup);
    }

    fn text(&mut self, text: &str) {
        self.0.push_str(&escaped(text));
    }

    fn element(&mut self, tag: &str, text: &str) {
        self.raw(&format!("<{tag}>"));
        self.text(text);
        self.raw(&format!("</{tag}>"));
    }

    fn classed(&mut self, tag: &str, class: &str, text: &str) {
        self.raw(&format!("<{tag} class=\"{class}\">"));
        self.text(text);
        self.raw(&format!("</{tag}>"));
    }

    /// A diagram as wide as the paper; it scrolls where that is narrow.
    fn diagram(&mut self, shown: &Shown) {
        let name = escaped(shown.title);
        self.raw(&format!(
            "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"{name}\"><div class=\"picture on-paper\">"
        ));
        self.raw(&shown.markup());
        self.raw("</div></div>");
    }

    fn table(&mut self, table: &Table) {
        // It scrolls on a narrow screen: keys must reach it.
        let name = escaped(&table.title);
        self.raw(&format!(
            "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"{name}\"><table><thead><tr>"
        ));
        for head in &table.heads {
            self.raw("<th scope=\"col\">");
            self.text(head);
            self.raw("</th>");
        }
        self.raw("</tr></thead><tbody>");
        for row in &table.rows {
            self.raw("<tr>");
            for (index, cell) in row.iter().enumerate() {
                let tag = if index == 0 { "th scope=\"row\"" } else { "td" };
                self.raw(&format!("<{tag}>"));
                match cell {
                    Cell::Text(text) => self.text(text),
                    Cell::Number(value) => self.text(&text::number::plain(*value)),
                    Cell::Stated(value) => self.text(&text::number::stated(*value)),
                    Cell::Empty => {}
                }
                self.raw(if index == 0 { "</th>" } else { "</td>" });
            }
            self.raw("</tr>");
        }
        self.raw("</tbody></table></div>");
    }
}
