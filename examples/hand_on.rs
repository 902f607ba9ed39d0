//! A plan as JSON on standard input; everything that can be handed on of it,
//! into the folder named: figures, tables, answer, report, code of the link.
//!
//!     cargo run --example hand_on -- out < plan.json

use std::{
    env, fs,
    io::{self, Read},
    path::Path,
    process::ExitCode,
};
use till_morning::{
    answer::answer,
    plan::open::plan_from_json,
    plan::reader::Language,
    share::{
        figure::figures, link_from_plan, name::file_name, qr, report, table::Table, tables::tables,
    },
    text::{Formatter, Locale, m},
};

/// Where the link on paper leads; the page knows its own address.
const ADDRESS: &str = "https://example.org/till-morning/";

fn main() -> ExitCode {
    let Some(folder) = env::args().nth(1) else {
        return refuse("name a folder");
    };
    let mut text = String::new();
    if let Err(error) = io::stdin().read_to_string(&mut text) {
        return refuse(&error.to_string());
    }
    let plan = match plan_from_json(&text) {
        Ok(plan) => plan,
        Err(error) => return refuse(&format!("not a plan: {error:?}")),
    };
    let answer = answer(&plan);
    let link = link_from_plan(&plan).ok();
    let address = link.map(|link| format!("{ADDRESS}#{link}"));
    let f = Formatter::new(Locale::usual(Language::English), plan.show);
    let figures = figures(f, &plan, &answer);
    let mut files = vec![
        (
            file_name("report", "html"),
            report::file(f, &plan, &answer, address.as_deref()),
        ),
        (
            file_name("answer", "json"),
            serde_json::to_string(&answer).unwrap_or_default(),
        ),
    ];
    files.extend(
        figures
            .iter()
            .map(|figure| (file_name(&figure.title, "svg"), figure.svg(f))),
    );
    files.extend(
        tables(f, &plan, &answer, &figures)
            .iter()
            .flat_map(of_table),
    );
    if let Some(address) = &address {
        files.push(("link.txt".into(), address.clone()));
        files.extend(
            qr::svg(address, f.say(m::HandOnQrName)).map(|code| (file_name("link", "svg"), code)),
        );
    }
    match write(Path::new(&folder), &files) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => refuse(&error.to_string()),
    }
}

fn of_table(table: &Table) -> [(String, String); 2] {
    [
        (file_name(&table.title, "csv"), table.csv()),
        (
            file_name(&table.title, "md"),
            table.markdown(Formatter::ENGLISH),
        ),
    ]
}

fn write(folder: &Path, files: &[(String, String)]) -> io::Result<()> {
    fs::create_dir_all(folder)?;
    files
        .iter()
        .try_for_each(|(name, text)| fs::write(folder.join(name), text))
}

fn refuse(why: &str) -> ExitCode {
    eprintln!("{why}");
    ExitCode::from(2)
}
