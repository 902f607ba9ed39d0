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
use crate::text::Formatter;
use crate::text::m;
use crate::{
    answer::{Answer, METHOD, claims::ClaimsAnswer},
    plan::Plan,
    plan::finding::Severity,
    text::{self, claims as say, hand_on},
    view::chart::svg::escaped,
    view::drawing::{self, Shown},
};

/// The looks of a report, for page and file alike.
pub const STYLE: &str = include_str!("../../style/report.css");

/// Width of the ribbon, in the pixels of paper.
const RIBBON_PX: f64 = 640.0;

/// The report's `article`. `address` is the plan's link, if it is to be on paper.
#[must_use]
pub fn article(f: Formatter, plan: &Plan, answer: &Answer, address: Option<&str>) -> String {
    let mut out = Html {
        markup: String::new(),
        f,
    };
    out.raw("<article class=\"report\">");
    out.element("h1", &hand_on::report_title(f, plan));
    out.classed("p", "method", &hand_on::made_with(f, METHOD));
    hours(&mut out, f, plan, answer);
    size(&mut out, f, plan, answer);
    later(&mut out, f, plan, answer);
    out.element("h2", f.say(m::HandOnReportPlan));
    numbers(&mut out, f, plan, true);
    out.element("h2", f.say(m::Assumed));
    numbers(&mut out, f, plan, false);
    findings(&mut out, f, plan, answer);
    cautions(&mut out, f, plan);
    if let Some(address) = address {
        link(&mut out, f, address);
    }
    out.raw("</article>");
    out.markup
}

/// The report as a page of its own: needs no other file and no script.
#[must_use]
pub fn file(f: Formatter, plan: &Plan, answer: &Answer, address: Option<&str>) -> String {
    let title = escaped(&hand_on::report_title(f, plan));
    let article = article(f, plan, answer, address);
    let curves = figure::STYLE;
    let language = f.language().tag();
    format!(
        "<!DOCTYPE html>\n<html lang=\"{language}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title}</title>\n<style>\n{STYLE}{curves}\n</style>\n</head>\n<body>\n{article}\n</body>\n</html>\n"
    )
}

/// The sentences of the first question, a row for each mode, and the ribbon.
fn hours(out: &mut Html, f: Formatter, plan: &Plan, answer: &Answer) {
    out.element("h2", f.say(m::QuestionRun));
    let asked = (plan.night.asked_unit, plan.night.asked_mode);
    let asked = answer.runs.iter().find(|run| (run.unit, run.mode) == asked);
    match asked.or(answer.runs.first()) {
        Some(run) => out.classed("p", "answer", &hand_on::sentence(f, plan, run)),
        None => return out.classed("p", "answer", f.say(m::NoAnswer)),
    }
    let rows = answer.runs.iter().map(|run| {
        vec![
            text::run_title(f, plan, answer, run).into(),
            f.duration(run.hours_h.likely).into(),
            hand_on::from_to(f, run).into(),
            hand_on::until(f, plan, run).into(),
            text::stop_phrase(f, &run.stop).into(),
        ]
    });
    out.table(&Table {
        title: f.say(m::HandOnTableRuns).into(),
        heads: hand_on::report_run_heads(f).map(String::from).into(),
        rows: rows.collect(),
    });
    out.raw("<figure class=\"ribbon\">");
    // The page shows a ribbon of its own: two of one id would be one too many.
    let ribbon = drawing::night_ribbon(f, plan, answer, RIBBON_PX);
    out.raw(&ribbon.replacen("id=\"fade\"", "id=\"fade-paper\"", 1));
    out.element("figcaption", f.say(m::RibbonCaption));
    out.raw("</figure>");
}

fn size(out: &mut Html, f: Formatter, plan: &Plan, answer: &Answer) {
    if answer.sizing.is_empty() {
        return;
    }
    out.element("h2", f.say(m::QuestionBank));
    for sizing in &answer.sizing {
        out.element("p", &text::sizing_answer(f, plan, sizing));
    }
}

/// The hot day, the wiring and the claims, where there is something of them: what
/// the page says first, and the columns that fit on paper.
fn later(out: &mut Html, f: Formatter, plan: &Plan, answer: &Answer) {
    if let Some(day) = &answer.day {
        let [_, days] = day_tables::day(f, plan, day);
        out.element("h2", f.say(m::QuestionDay));
        out.element("p", &text::day::day_sentence(f, plan, day));
        if let Some(odds) = &day.odds {
            out.element("p", &text::day::odds_sentence(f, plan, day, odds));
        }
        out.table(&days.columns(&[0, 1, 4, 5, 7, 8, 9]));
    }
    if let Some(wiring) = &answer.wiring {
        out.element("h2", f.say(m::QuestionWiring));
        out.element("p", &text::wiring::headline(f, wiring));
        out.diagram(&drawing::wiring_diagram(f, plan, wiring, drawing::PAPER_PX));
    }
    if let Some(refill) = &answer.refill {
        out.element("p", &text::wiring::refill::headline(f, plan, refill));
    }
    claims(out, f, plan, &answer.claims);
}

/// The bench report as a lab has it: rows, what each rests on, the air side with
/// its uncertainty, and what a watt-hour cost.
fn claims(out: &mut Html, f: Formatter, plan: &Plan, answer: &ClaimsAnswer) {
    if answer.claims.is_empty() && answer.air.is_none() && answer.money.is_none() {
        return;
    }
    out.element("h2", f.say(m::QuestionClaims));
    if !answer.claims.is_empty() {
        let rows = answer.claims.iter();
        out.table(&Table {
            title: f.say(m::HandOnTableClaims).into(),
            heads: say::words::report_heads(f).map(String::from).into(),
            rows: rows
                .map(|claim| say::report_row(f, plan, claim).map(Cell::from).into())
                .collect(),
        });
        out.raw("<dl>");
        for claim in &answer.claims {
            out.element("dt", &say::claim_title(f, plan, claim));
            out.element("dd", &say::report_notes(f, plan, claim).join(" "));
        }
        out.raw("</dl>");
        out.element("p", f.say(m::ClaimsReportNote));
    }
    if let Some(air) = &answer.air {
        out.element("p", &say::air_sentence(f, air));
        out.element("p", &say::air_detail(f, air));
    }
    if let Some(money) = &answer.money {
        out.element("p", &say::money_sentence(f, money));
    }
}

/// The plan's numbers, stated or assumed, a line for each part.
fn numbers(out: &mut Html, f: Formatter, plan: &Plan, stated: bool) {
    let mut parts: Vec<(String, Vec<String>)> = Vec::new();
    let mut add = |part: String, line: String| match parts.iter_mut().find(|(of, _)| *of == part) {
        Some((_, lines)) => lines.push(line),
        None => parts.push((part, vec![line])),
    };
    if stated {
        for (bank, the_bank) in plan.banks.iter().enumerate() {
            let chemistry = text::chemistry_name(f, the_bank.chemistry);
            add(text::bank_in_words(f, plan, bank), chemistry.into());
        }
        for (unit, the_unit) in plan.units.iter().enumerate() {
            let feed = hand_on::fed(f, &the_unit.feed);
            add(text::unit_name(f, plan, unit), feed);
        }
    }
    let paths = plan.paths().into_iter();
    for (path, figure) in paths.filter_map(|path| Some((path, plan.figure(path)?))) {
        if plan.stated(path).is_some() == stated && counts(plan, path) {
            add(
                hand_on::part_of(f, plan, path),
                hand_on::plan_line(f, plan, path, figure),
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

fn findings(out: &mut Html, f: Formatter, _plan: &Plan, answer: &Answer) {
    if answer.findings.is_empty() {
        return;
    }
    out.element("h2", f.say(m::HandOnReportFindings));
    out.raw("<ul>");
    for finding in &answer.findings {
        let class = match finding.severity {
            Severity::Note => "note",
            Severity::Caution | Severity::Error => "caution",
        };
        out.classed("li", class, &text::finding_sentence(f, finding));
    }
    out.raw("</ul>");
}

fn cautions(out: &mut Html, f: Formatter, plan: &Plan) {
    out.element("h2", f.say(m::CautionsTitle));
    out.raw("<ul class=\"cautions\">");
    for caution in crate::answer::cautions(plan) {
        let said = text::caution_text(f, plan, caution);
        let source = match said.source {
            "" => String::new(),
            source => text::in_brackets(source),
        };
        out.raw("<li>");
        out.text(&format!("{}{source}", said.text));
        if let Some(english) = said.english {
            out.raw(" <small lang=\"en\">");
            out.text(&english);
            out.raw("</small>");
        }
        out.raw("</li>");
    }
    out.raw("</ul>");
}

/// The link to click in a file and to photograph on paper.
fn link(out: &mut Html, f: Formatter, address: &str) {
    out.raw("<footer>");
    if let Some(code) = qr::svg(address, f.say(m::HandOnQrName)) {
        out.raw(&code);
    }
    out.raw("<p><a href=\"");
    out.raw(&escaped(address));
    out.raw("\">");
    out.text(f.say(m::HandOnReportLink));
    out.raw("</a></p></footer>");
}

/// HTML under construction. Texts are escaped.
struct Html {
    markup: String,
    f: Formatter,
}

impl Html {
    fn raw(&mut self, markup: &str) {
        self.markup.push_str(markup);
    }

    fn text(&mut self, text: &str) {
        self.markup.push_str(&escaped(text));
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
                    Cell::Number(value) => self.text(&self.f.plain(*value)),
                    Cell::Stated(value) => self.text(&self.f.stated(*value)),
                    Cell::Empty => {}
                }
                self.raw(if index == 0 { "</th>" } else { "</td>" });
            }
            self.raw("</tr>");
        }
        self.raw("</tbody></table></div>");
    }
}
