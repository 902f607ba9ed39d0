//! The night ribbon: one bar per mode along the clock.

use crate::text::{Formatter, m};
use crate::{
    answer::Answer,
    plan::Plan,
    text,
    view::chart::{
        axis::TickLabel,
        ribbon::{Bar, End, Window, ribbon},
        svg::{Anchor, Svg, escaped},
    },
};

/// Letters of the clock, and room at both sides for half a label.
const FONT_PX: f64 = 12.0;
const SIDE_PX: f64 = 20.0;
/// From one row's top to the next, and the bar's part of it below its words.
const ROW_PX: f64 = 44.0;
const BAR_TOP_PX: f64 = 22.0;
const BAR_PX: f64 = 14.0;
const CLOCK_PX: f64 = 24.0;

/// Bars for all runs, with their names and hours, on one clock, as SVG markup;
/// nothing if nothing runs. The name it goes by is in its `aria-label`.
#[must_use]
pub fn night_ribbon(f: Formatter, plan: &Plan, answer: &Answer, width: f64) -> String {
    if answer.runs.is_empty() {
        return String::new();
    }
    let ends: Vec<Option<End>> = answer
        .runs
        .iter()
        .map(|run| {
            let hours = run.hours_h;
            Some(End {
                likely_h: hours.likely,
                low_h: hours.low,
                high_h: hours.high,
            })
        })
        .collect();
    let window = Window::for_ends(f64::from(plan.night.start_clock_min), &ends);
    let laid = ribbon(window, &ends, None, (SIDE_PX, width - SIDE_PX), FONT_PX);
    let bottom = ROW_PX * answer.runs.len() as f64;
    let mut svg = Svg::new();
    svg.gradient("fade", "fade-from", "fade-to");
    for tick in &laid.ticks {
        svg.upright("grid", tick.at, (0.0, bottom));
        if let TickLabel::Clock { minute, .. } = tick.label {
            let class = if tick.is_midnight() {
                "tick midnight"
            } else {
                "tick"
            };
            let text = f.clock(f64::from(minute));
            svg.text(class, (tick.at, bottom + 18.0), Anchor::Middle, &text);
        }
    }
    for (row, (run, laid_bar)) in answer.runs.iter().zip(&laid.bars).enumerate() {
        let top = ROW_PX * row as f64;
        let text_y = top + BAR_TOP_PX - 7.0;
        let title = text::run_title(f, plan, answer, run);
        svg.text("row-name", (SIDE_PX, text_y), Anchor::Start, &title);
        let short = text::run_short(f, plan, run);
        svg.text("row-hours", (width - SIDE_PX, text_y), Anchor::End, &short);
        if let Some(bar) = laid_bar {
            draw_bar(&mut svg, bar, top + BAR_TOP_PX, width);
        }
    }
    let said: Vec<String> = answer
        .runs
        .iter()
        .map(|run| {
            format!(
                "{} {}",
                text::run_title(f, plan, answer, run),
                text::run_short(f, plan, run)
            )
        })
        .collect();
    let label = escaped(&format!("{}: {}", f.say(m::RibbonLabel), said.join("; ")));
    svg.finish(
        (width, bottom + CLOCK_PX),
        &format!(r#"role="img" aria-label="{label}""#),
    )
}

fn draw_bar(svg: &mut Svg, bar: &Bar, top: f64, width: f64) {
    svg.rect("bar-solid", (bar.x0, top), (bar.solid_end - bar.x0, BAR_PX));
    svg.rect(
        "bar-fade",
        (bar.solid_end, top),
        (bar.fade_end - bar.solid_end, BAR_PX),
    );
    if let Some(x) = bar.likely {
        svg.upright("bar-likely", x, (top - 3.0, top + BAR_PX + 3.0));
    }
    if bar.clipped {
        svg.text("bar-more", (width - 4.0, top + 11.0), Anchor::End, "›");
    }
}
