//! What holds for every file: the arrows between the modules, and what must stand nowhere. Each rule is a function from a file to
//! its complaints, so that the rules themselves are tested on lines that break them.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod circles;
mod names;

use std::fs;
use std::path::{Path, PathBuf};

/// Each may use itself and those before it.
const ARROWS: [&str; 6] = ["quantity", "statistics", "domain", "record", "browser", "ui"];

/// What may lie at the top level beside files whose name begins with a dot.
const TOP: [&str; 11] = [
    "CHANGELOG.md",
    "Cargo.lock",
    "Cargo.toml",
    "DEVELOPERS.md",
    "README.md",
    "Trunk.toml",
    "index.html",
    "rust-toolchain.toml",
    "src",
    "style",
    "tests",
];

const LONGEST_FILE: usize = 600;

/// A file by its path from the project's folder, always with `/`.
struct File {
    path: String,
    text: String,
}

impl File {
    fn new(path: &str, text: &str) -> Self {
        Self { path: path.to_owned(), text: text.to_owned() }
    }

    fn is_rust(&self) -> bool {
        self.path.ends_with(".rs")
    }

    /// The part of the crate that the file belongs to: `src/domain/mat.rs` to `domain`.
    fn part(&self) -> Option<&str> {
        let below = self.path.strip_prefix("src/")?;
        let name = below.split('/').next()?.trim_end_matches(".rs");
        ARROWS.contains(&name).then_some(name)
    }

    /// Lines with their numbers; for Rust without whole-line comments, which may speak of anything.
    fn code(&self) -> impl Iterator<Item = (usize, &str)> {
        let rust = self.is_rust();
        self.text
            .lines()
            .enumerate()
            .filter(move |(_, line)| !(rust && line.trim_start().starts_with("//")))
            .map(|(at, line)| (at + 1, line))
    }

    /// A complaint for each line of code that `wrong` names a fault of.
    fn lines(&self, wrong: impl Fn(&str) -> Option<String>) -> Vec<String> {
        self.code().filter_map(|(at, line)| Some(format!("{}:{at}: {}", self.path, wrong(line)?))).collect()
    }
}

/// Whether `word` stands in `line` as a word of its own.
fn says(line: &str, word: &str) -> bool {
    let inside = |c: char| c.is_alphanumeric() || c == '_';
    line.match_indices(word)
        .any(|(at, _)| !line[..at].ends_with(inside) && !line[at + word.len()..].starts_with(inside))
}

/// The first name of each path that starts at the crate's root or above the own module: `crate::a::b`, `crate::{a::b, c}`,
/// `super::super::a`.
fn roots(code: &str) -> Vec<(usize, String)> {
    let mut found = Vec::new();
    for start in ["crate::", "haulm::", "super::"] {
        for (at, _) in code.match_indices(start) {
            if code[..at].ends_with(|c: char| c.is_alphanumeric() || c == '_') {
                continue;
            }
            let rest = &code[at + start.len()..];
            let name =
                |s: &str| s.trim_start().chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect::<String>();
            match rest.strip_prefix('{') {
                None => found.push((at, name(rest))),
                Some(group) => {
                    let (mut depth, mut begin) = (0, 0);
                    for (i, c) in group.char_indices() {
                        match c {
                            '{' => depth += 1,
                            '}' if depth > 0 => depth -= 1,
                            ',' | '}' if depth == 0 => {
                                found.push((at, name(&group[begin..i])));
                                begin = i + 1;
                                if c == '}' {
                                    break;
                                }
                            }
                            _ => {}
                        }
                    }
                }
            }
        }
    }
    found
}

fn arrows(file: &File) -> Vec<String> {
    let rank = |part: &str| ARROWS.iter().position(|name| *name == part);
    let Some(own) = file.part().and_then(rank) else { return Vec::new() };
    let code: String = file.code().map(|(_, line)| format!("{line}\n")).collect();
    roots(&code)
        .into_iter()
        .filter(|(_, name)| rank(name).is_some_and(|other| other > own))
        .map(|(at, name)| {
            let line = code[at..].lines().next().unwrap_or_default();
            format!("{}: {} must not use {name}: {line}", file.path, ARROWS[own])
        })
        .collect()
}

/// The browser is touched in `browser` only; `ui` speaks to it through that.
fn browser_crates(file: &File) -> Vec<String> {
    let part = file.part();
    file.lines(|line| {
        let banned: &[&str] = match part {
            Some("browser") => &[],
            Some("ui") => &["web_sys", "js_sys", "gloo_storage", "leptos_dom", "reactive_graph"],
            _ => &["web_sys", "js_sys", "gloo_storage", "wasm_bindgen", "leptos_dom", "reactive_graph"],
        };
        let word = banned.iter().find(|word| says(line, word))?;
        file.path.starts_with("src/").then(|| format!("{word} outside its part"))
    })
}

/// No request may leave the origin. A namespace is a name, not an address.
fn addresses(file: &File) -> Vec<String> {
    file.lines(|line| {
        let mut after = ["http://", "https://"].into_iter().flat_map(|scheme| line.split(scheme).skip(1));
        let names = ["www.w3.org/", "schemas.openxmlformats.org/"];
        after
            .any(|rest| !names.iter().any(|name| rest.starts_with(name)))
            .then(|| "an address in what ships".to_owned())
    })
}

/// Number fields are text with `inputmode="decimal"`: the other kind eats what it does not understand.
fn number_inputs(file: &File) -> Vec<String> {
    file.lines(|line| {
        let bare = line.replace(['"', '\''], "").replace(" =", "=").replace("= ", "=");
        says(&bare, "type=number").then(|| "a number input".to_owned())
    })
}

fn length(file: &File) -> Vec<String> {
    let lines = file.text.lines().count();
    if lines > LONGEST_FILE { vec![format!("{}: {lines} lines", file.path)] } else { Vec::new() }
}

fn left_undone(file: &File) -> Vec<String> {
    // Put together here, so that this file passes.
    let words = [concat!("TO", "DO"), concat!("FIX", "ME")];
    let found = |(at, line): (usize, &str)| {
        words.iter().any(|word| says(line, word)).then(|| format!("{}:{}: left undone", file.path, at + 1))
    };
    file.text.lines().enumerate().filter_map(found).collect()
}

fn machine_paths(file: &File) -> Vec<String> {
    let places = ["work", "farm", "root", "home"].map(|name| format!("/{name}/"));
    let found = |(at, line): (usize, &str)| {
        places
            .iter()
            .any(|place| line.contains(place))
            .then(|| format!("{}:{}: a path of one machine", file.path, at + 1))
    };
    file.text.lines().enumerate().filter_map(found).collect()
}

fn top_level(names: &[String]) -> Vec<String> {
    // Made by the build, and never kept.
    let made = ["target", "dist"];
    let may = |name: &str| {
        name.starts_with('.') || name.starts_with("LICENSE") || TOP.contains(&name) || made.contains(&name)
    };
    names.iter().filter(|name| !may(name)).map(|name| format!("at the top level: {name}")).collect()
}

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// All text files below `at`, which is a path from the project's folder; what packages brought is left out.
fn files(at: &str) -> Vec<File> {
    fn walk(path: &Path, found: &mut Vec<File>) {
        if path.is_dir() {
            for entry in fs::read_dir(path).unwrap() {
                let entry = entry.unwrap();
                if entry.file_name() != "node_modules" {
                    walk(&entry.path(), found);
                }
            }
        } else if let Ok(text) = fs::read_to_string(path) {
            let path = path.strip_prefix(root()).unwrap().to_str().unwrap().replace('\\', "/");
            found.push(File { path, text });
        }
    }
    let mut found = Vec::new();
    walk(&root().join(at), &mut found);
    assert!(!found.is_empty(), "nothing to read at {at}");
    found
}

/// Holds `rule` against all files below `places`.
fn check(places: &[&str], rule: fn(&File) -> Vec<String>) {
    let complaints: Vec<String> = places.iter().flat_map(|at| files(at)).flat_map(|file| rule(&file)).collect();
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}

#[test]
fn arrows_point_one_way() {
    check(&["src"], arrows);
}

#[test]
fn only_browser_touches_the_browser() {
    check(&["src"], browser_crates);
}

#[test]
fn nothing_that_ships_names_an_address() {
    check(&["src", "style", "index.html"], addresses);
}

#[test]
fn number_fields_are_text() {
    check(&["src", "index.html"], number_inputs);
}

#[test]
fn files_stay_short() {
    check(&["src"], length);
}

#[test]
fn nothing_is_left_undone() {
    check(&["src", "style", "tests", "index.html"], left_undone);
}

#[test]
fn no_path_is_of_one_machine() {
    check(&["src", "style", "tests", "index.html", "Cargo.toml", "Trunk.toml", ".ci"], machine_paths);
}

#[test]
fn the_top_level_holds_what_it_should() {
    let names: Vec<String> =
        fs::read_dir(root()).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    assert_eq!(top_level(&names), Vec::<String>::new());
}

/// Each rule on what it must catch and what it must let pass.
#[test]
fn the_rules_catch_what_they_are_for() {
    let address = format!("let a = \"{}example.org/\";", "https://");
    let undone = format!("// {}: later", concat!("TO", "DO"));
    let place = format!("include!(\"/{}/a.rs\");", "home");
    let long = "x\n".repeat(LONGEST_FILE + 1);
    type Rule = fn(&File) -> Vec<String>;
    let cases: &[(Rule, &str, &str, usize)] = &[
        (arrows, "src/domain/mat.rs", "use crate::quantity::Basis;", 0),
        (arrows, "src/domain/mat.rs", "use crate::record::Recipe;", 1),
        (arrows, "src/domain/mat.rs", "    let x = crate::ui::text::EN;", 1),
        (arrows, "src/domain/mat.rs", "use crate::{quantity::{self, ui}, domain::Mat};", 0),
        (arrows, "src/domain/mat.rs", "use crate::{\n    quantity::{A, B},\n    browser::Store,\n};", 1),
        (arrows, "src/domain/mat.rs", "use super::super::ui::App;", 1),
        (arrows, "src/domain/mat.rs", "/// Shown by [`crate::ui`].", 0),
        (arrows, "src/domain/mat.rs", "use mycrate::ui::App;", 0),
        (arrows, "src/quantity/mod.rs", "use super::domain::Mat;", 1),
        (arrows, "src/ui/page/line.rs", "use crate::{browser, domain, quantity, record};", 0),
        (arrows, "src/main.rs", "haulm::ui::mount();", 0),
        (browser_crates, "src/domain/mat.rs", "use web_sys::Window;", 1),
        (browser_crates, "src/domain/mat.rs", "use reactive_graph::prelude::*;", 1),
        (browser_crates, "src/ui/app.rs", "use leptos_dom::web_sys::Window;", 1),
        (browser_crates, "src/ui/app.rs", "use crate::browser::graph::*;", 0),
        (browser_crates, "src/browser/store.rs", "use gloo_storage::LocalStorage;", 0),
        (addresses, "src/domain/mat.rs", &address, 1),
        (addresses, "src/ui/part/icon.rs", "xmlns=\"http://www.w3.org/2000/svg\"", 0),
        (addresses, "src/record/table/xlsx.rs", "\"http://schemas.openxmlformats.org/package\"", 0),
        (number_inputs, "src/ui/field/number.rs", "<input type=\"number\" />", 1),
        (number_inputs, "src/ui/field/number.rs", "<input type = number />", 1),
        (number_inputs, "src/ui/field/number.rs", "<input type=\"text\" inputmode=\"decimal\" />", 0),
        (length, "src/a.rs", &long, 1),
        (length, "src/a.rs", &long[2..], 0),
        (left_undone, "src/a.rs", &undone, 1),
        (left_undone, "src/a.rs", "let todos = 1;", 0),
        (machine_paths, "src/a.rs", &place, 1),
        (machine_paths, "src/a.rs", "a/work_done/b", 0),
    ];
    for (rule, path, text, expected) in cases {
        let complaints = rule(&File::new(path, text));
        assert_eq!(complaints.len(), *expected, "{path}: {text}\n{complaints:?}");
    }
    assert_eq!(top_level(&["src", ".ci", "LICENSE-MIT", "target"].map(str::to_owned)).len(), 0);
    assert_eq!(top_level(&["package.json", "docs"].map(str::to_owned)).len(), 2);
}
