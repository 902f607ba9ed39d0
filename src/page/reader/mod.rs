//! The reader's page: an author's plan with one to four numbers of one's own.
//!
//! The same page and the same wasm, by a link whose plan has a `reader`. Answer
//! first, then the fields, the ribbon and the line for paper. All of it stands
//! behind the door [`page`].

mod field;

use super::{
    app::follow_width,
    browser::{self, document, listen, window},
    dom::{El, always, button, h, named_fold, set_attr},
    keep,
    outcome::sentences,
    part::{self, AllThere, There},
    reactive::*,
    state::State,
};
use crate::{
    answer::{RunAnswer, pocket::pocket},
    drawing,
    finding::{Finding, Severity},
    plan::{
        Plan,
        draft::Draft,
        part::Choice,
        reader::{Language, Theme},
    },
    wording::reader::{Table, table},
};

/// What all parts of the page read.
#[derive(Clone, Copy)]
struct Open {
    there: There,
    state: State,
    say: &'static Table,
    /// The plan as it was published.
    author: StoredValue<Plan>,
}

/// A door: the reader's page, if the address brings one.
#[inline(never)]
pub fn page(there: There) -> Option<Vec<El>> {
    let plan = keep::linked().ok()?;
    let reader = plan.reader.clone()?;
    let author = plan.published();
    let state = State::new(Draft::of_open_fields(author.clone()));
    let language = reader
        .language
        .unwrap_or_else(|| Language::of_tag(&browser::language()));
    let say = table(language);
    let title = match reader.title.trim() {
        "" => say.texts.usual_title,
        title => title,
    };
    dress(title, language, reader.theme);
    follow_width(state);
    let open = Open {
        there,
        state,
        say,
        author: StoredValue::new(author),
    };
    follow_address(open);
    let note = reader.note.trim();
    let note = (!note.is_empty()).then(|| h("p", "strap").text(note));
    let head = h("header", "masthead")
        .child(h("h1", "").text(title))
        .children(note);
    Some(vec![head, body(open), foot(open)])
}

fn body(open: Open) -> El {
    let said =
        h("div", "")
            .attr("role", "status")
            .attr("aria-live", "polite")
            .child(h("p", "answer").attr("id", "answer").live_text(move || {
                let sentence = lead(open, open.say.run_sentence);
                sentence.unwrap_or_else(|| open.say.texts.no_answer.into())
            }))
            .child(h("p", "detail").live_text(move || {
                lead(open, |_, run| (open.say.run_detail)(run)).unwrap_or_default()
            }))
            .child(h("p", "stale-mark").live_text(move || {
                let stale = open.state.is_stale();
                if stale { open.say.texts.stale } else { "" }.into()
            }));
    let outcome = h("div", "outcome")
        .live_class("stale", move || open.state.is_stale())
        .child(said)
        .child(fields(open))
        .child(ribbon(open))
        .child(findings(open, false))
        .child(readings(open));
    h("main", "reader").child(
        // No section: its heading comes with the last part, and may not come at all.
        h("div", "question")
            .child(outcome)
            .child(part::extra(move |there| on_paper(there, open))),
    )
}

/// Something of the run that the author asks for.
fn lead(open: Open, of: impl Fn(&Plan, &RunAnswer) -> String) -> Option<String> {
    open.state.with_plan(|plan| {
        open.state.with_answer(|answer| {
            let asked = (plan.night.asked_unit, plan.night.asked_mode);
            let run = answer.runs.iter().find(|run| (run.unit, run.mode) == asked);
            run.or(answer.runs.first()).map(|run| of(plan, run))
        })
    })
}

/// The reader's numbers, and the way back to the author's.
fn fields(open: Open) -> El {
    let paths = open.author.with_value(Plan::open_fields);
    let of_author = move || {
        let same = |draft: &Draft| open.author.with_value(|author| draft.plan == *author);
        open.state.with_draft(same) && !open.state.is_stale()
    };
    let back = button("quiet", open.say.texts.back, move || {
        let author = open.author.get_value();
        open.state
            .change(|draft| *draft = Draft::of_open_fields(author));
    });
    let other = move || {
        let is_other = |plan: &Plan| open.author.with_value(|then| plan.is_other_voltage(then));
        let is_other = open.state.with_plan(is_other);
        if is_other {
            open.say.texts.other_voltage
        } else {
            ""
        }
        .into()
    };
    let not_measured = move || {
        let is_lost = |plan: &Plan| open.author.with_value(|then| plan.lost_measurement(then));
        if open.state.with_plan(is_lost) {
            open.say.texts.not_the_measured
        } else {
            ""
        }
        .into()
    };
    h("fieldset", "card")
        .child(h("legend", "").text(open.say.texts.yours))
        .child(
            h("div", "grid start").children(paths.into_iter().map(|path| field::field(open, path))),
        )
        .child(h("p", "hint").attr("role", "status").live_text(other))
        .child(
            h("p", "hint")
                .attr("id", "not-measured")
                .attr("role", "status")
                .live_text(not_measured),
        )
        .child(back.live_flag("hidden", of_author))
}

fn ribbon(open: Open) -> El {
    let markup = move || {
        let width = open.state.width.get();
        open.state.with_plan(|plan| {
            open.state.with_answer(|answer| {
                drawing::night_ribbon_in(plan, answer, width, &open.say.ribbon)
            })
        })
    };
    h("figure", "ribbon")
        .child(h("div", "").live_markup(markup))
        .child(h("figcaption", "").text(open.say.texts.ribbon_caption))
}

fn of_this_page(finding: &Finding, notes: bool) -> bool {
    Plan::is_of_the_night(finding) && (finding.severity == Severity::Note) == notes
}

fn findings(open: Open, notes: bool) -> El {
    let said = move || {
        open.state.with_answer(|answer| {
            let wanted = answer
                .findings
                .iter()
                .filter(|one| of_this_page(one, notes));
            let units = open.state.with_plan(|plan| plan.show);
            wanted
                .map(|one| (open.say.finding)(one, units))
                .collect::<Vec<_>>()
        })
    };
    let class = if notes {
        "findings"
    } else {
        "findings cautions-now"
    };
    sentences(class, said)
}

fn readings(open: Open) -> El {
    let fold = named_fold("fold small", open.say.texts.readings, move || {
        vec![findings(open, true)]
    });
    fold.live_flag("hidden", move || {
        let is_note = |finding: &Finding| of_this_page(finding, true);
        !open
            .state
            .with_answer(|answer| answer.findings.iter().any(is_note))
    })
}

/// A door to the part that comes last: the pocket formula of each mode, which runs the
/// engine over many banks.
#[inline(never)]
fn on_paper(_: AllThere, open: Open) -> Vec<El> {
    let lines = Memo::new(move |_| {
        open.state.with_plan(|plan| {
            let all = pocket(plan);
            let lines = all.iter().map(|one| (open.say.pocket)(plan, one));
            lines.collect::<Vec<_>>()
        })
    });
    let list = sentences("pocket", move || lines.get());
    vec![
        h("h2", "").text(open.say.texts.on_paper),
        h("p", "hint").text(open.say.texts.on_paper_hint),
        list,
    ]
}

fn foot(open: Open) -> El {
    let address = move || {
        let link = |plan: &Plan| keep::link_of(open.there, plan);
        keep::address_of(&open.state.with_plan(link))
    };
    let link = h("a", "")
        .attr("id", "in-full")
        .text(open.say.texts.in_full);
    let element = link.0.clone();
    always(move || set_attr(&element, "href", Some(&address())));
    let link = link.on("click", move |event| {
        // Around a frame stands somebody's page: the whole plan gets a window of
        // its own, unless the frame may open none.
        if keep::is_framed() {
            let opened = window().open_with_url_and_target(&untrack(address), "_blank");
            if matches!(opened, Ok(Some(_))) {
                event.prevent_default();
            }
        }
    });
    let texts = &open.say.texts;
    h("footer", "foot")
        .child(h("p", "").child(link))
        .child(h("p", "hint").text(texts.in_full_hint))
        .child(h("p", "").text(texts.estimates))
        .child(h("p", "").text(texts.caution))
        .child(h("p", "").text(texts.foot))
}

/// Title, language and looks of the whole page.
fn dress(title: &str, language: Language, theme: Option<Theme>) {
    document().set_title(title);
    if let Some(root) = document().document_element() {
        set_attr(&root, "lang", Some(language.key()));
        set_attr(&root, "data-theme", theme.map(Theme::key));
    }
}

/// The address follows the reader's numbers; a link opened in this tab is another
/// page.
fn follow_address(open: Open) {
    let plan = move || {
        let reader = open.author.with_value(|author| author.reader.clone());
        Plan {
            reader,
            ..open.state.plan.get()
        }
    };
    keep::follow(open.there, plan, open.author.with_value(Clone::clone));
    listen("hashchange", || {
        let _ = window().location().reload();
    });
}
