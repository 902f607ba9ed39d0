//! The night ribbon: one bar per mode along the clock.

use super::state::State;
use crate::{
    answer::Answer,
    chart::{
        axis::TickLabel,
        ribbon::{End, Ribbon, Window, ribbon},
    },
    plan::Plan,
    wording::{self, words},
};
use leptos::prelude::*;

/// Letters of the clock, and room at both sides for half a label.
const FONT_PX: f64 = 12.0;
const SIDE_PX: f64 = 20.0;
/// From one row's top to the next, and the bar's part of it below its words.
const ROW_PX: f64 = 44.0;
const BAR_TOP_PX: f64 = 22.0;
const BAR_PX: f64 = 14.0;
const CLOCK_PX: f64 = 24.0;

/// Bars for all runs, with their names and hours, on one clock.
#[component]
pub fn NightRibbon() -> impl IntoView {
    let state = State::get();
    move || {
        let width = state.width.get();
        state.plan.with(|plan| {
            state.answer.with(|answer| {
                (!answer.runs.is_empty()).then(|| draw(plan, answer, width).into_any())
            })
        })
    }
}

fn draw(plan: &Plan, answer: &Answer, width: f64) -> impl IntoView + use<> {
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
    let start_min = f64::from(plan.night.start_clock_min);
    let window = Window::for_ends(start_min, &ends);
    let laid = ribbon(window, &ends, None, (SIDE_PX, width - SIDE_PX), FONT_PX);
    let height = ROW_PX * answer.runs.len() as f64 + CLOCK_PX;
    let clock_y = height - 6.0;
    let rows = answer
        .runs
        .iter()
        .zip(&laid.bars)
        .enumerate()
        .map(|(row, (run, bar))| {
            let top = ROW_PX * row as f64;
            let title = wording::run_title(plan, answer, run);
            let short = wording::run_short(plan, run);
            view! {
                <g transform=format!("translate(0 {top})")>
                    <text class="row-name" x=SIDE_PX y=BAR_TOP_PX - 7.0>{title}</text>
                    <text class="row-hours" x=width - SIDE_PX y=BAR_TOP_PX - 7.0 text-anchor="end">{short}</text>
                    {bar.map(|bar| view! {
                        <rect class="bar-solid" x=bar.x0 y=BAR_TOP_PX width=bar.solid_end - bar.x0 height=BAR_PX/>
                        <rect class="bar-fade" x=bar.solid_end y=BAR_TOP_PX
                            width=bar.fade_end - bar.solid_end height=BAR_PX/>
                        {bar.likely.map(|x| view! {
                            <line class="bar-likely" x1=x x2=x y1=BAR_TOP_PX - 3.0 y2=BAR_TOP_PX + BAR_PX + 3.0/>
                        })}
                        {bar.clipped.then(|| view! {
                            <text class="bar-more" x=width - 4.0 y=BAR_TOP_PX + 11.0 text-anchor="end">"›"</text>
                        })}
                    })}
                </g>
            }
        })
        .collect_view();
    let (grid, labels) = clock(&laid, height - CLOCK_PX, clock_y);
    view! {
        <figure class="ribbon">
            <svg width=width height=height viewBox=format!("0 0 {width} {height}")
                role="img" aria-label=words::RIBBON_LABEL>
                <defs>
                    <linearGradient id="fade" x1="0" x2="1" y1="0" y2="0">
                        <stop class="fade-from" offset="0"/>
                        <stop class="fade-to" offset="1"/>
                    </linearGradient>
                </defs>
                <path class="grid" d=grid/>
                {rows}
                {labels}
            </svg>
            <figcaption>{words::RIBBON_CAPTION}</figcaption>
        </figure>
    }
}

/// Lines down from the clock's ticks, and their labels.
fn clock(laid: &Ribbon, bottom: f64, text_y: f64) -> (String, impl IntoView + use<>) {
    let grid = laid
        .ticks
        .iter()
        .map(|tick| format!("M{0} 0V{bottom}", tick.at))
        .collect();
    let labels = laid
        .ticks
        .iter()
        .map(|tick| {
            let TickLabel::Clock { minute, .. } = tick.label else { return None };
            let text = wording::number::clock(f64::from(minute));
            Some(view! {
                <text class="tick" class:midnight=tick.is_midnight() x=tick.at y=text_y text-anchor="middle">{text}</text>
            })
        })
        .collect_view();
    (grid, labels)
}
