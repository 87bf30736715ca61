//! One name means one type, and no folder is crowded.

use super::{File, files};
use std::collections::{BTreeMap, BTreeSet};

/// More Rust files than this directly in a folder are not found at a glance.
const FULLEST_FOLDER: usize = 18;

fn is_private(visibility: &syn::Visibility) -> bool {
    matches!(visibility, syn::Visibility::Inherited)
}

/// The types that a file defines for others, those of its macros' tables as well.
fn public_types(file: &File) -> Vec<String> {
    let syntax = syn::parse_file(&file.text).unwrap_or_else(|error| panic!("{}: {error}", file.path));
    let mut found = Vec::new();
    for item in &syntax.items {
        match item {
            syn::Item::Struct(item) if !is_private(&item.vis) => found.push(item.ident.to_string()),
            syn::Item::Enum(item) if !is_private(&item.vis) => found.push(item.ident.to_string()),
            syn::Item::Type(item) if !is_private(&item.vis) => found.push(item.ident.to_string()),
            syn::Item::Trait(item) if !is_private(&item.vis) => found.push(item.ident.to_string()),
            // A table that a macro makes types of; the macros themselves are no types.
            syn::Item::Macro(item) if item.ident.is_none() => {
                let mut tokens = item.mac.tokens.clone().into_iter().peekable();
                while let Some(token) = tokens.next() {
                    if matches!(&token, proc_macro2::TokenTree::Ident(word) if word == "struct" || word == "enum")
                        && let Some(proc_macro2::TokenTree::Ident(name)) = tokens.peek()
                    {
                        found.push(name.to_string());
                    }
                }
            }
            _ => {}
        }
    }
    found
}

/// Names that several files give to a type.
fn names_of_two(files: &[File]) -> Vec<String> {
    let mut places: BTreeMap<String, BTreeSet<&str>> = BTreeMap::new();
    for file in files.iter().filter(|file| file.is_rust()) {
        for name in public_types(file) {
            places.entry(name).or_default().insert(&file.path);
        }
    }
    let twice = places.into_iter().filter(|(_, places)| places.len() > 1);
    twice.map(|(name, places)| format!("{name}: {}", Vec::from_iter(places).join(", "))).collect()
}

fn crowded_folders(files: &[File]) -> Vec<String> {
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for file in files.iter().filter(|file| file.is_rust()) {
        *counts.entry(file.path.rsplit_once('/').map_or("", |(folder, _)| folder)).or_default() += 1;
    }
    let full = counts.into_iter().filter(|(_, count)| *count > FULLEST_FOLDER);
    full.map(|(folder, count)| format!("{folder}: {count} files")).collect()
}

#[test]
fn one_name_means_one_type() {
    let found = files("src");
    assert!(found.iter().flat_map(|file| if file.is_rust() { public_types(file) } else { Vec::new() }).count() > 400);
    let twice = names_of_two(&found);
    assert!(twice.is_empty(), "\n{}", twice.join("\n"));
}

#[test]
fn no_folder_is_crowded() {
    let crowded = crowded_folders(&files("src"));
    assert!(crowded.is_empty(), "\n{}", crowded.join("\n"));
}

/// Each rule on what it must catch and what it must let pass.
#[test]
fn the_rules_for_names_catch_what_they_are_for() {
    let of = |files: &[(&str, &str)]| files.iter().map(|(path, text)| File::new(path, text)).collect::<Vec<_>>();
    let two = |second: &str| names_of_two(&of(&[("src/a.rs", "pub struct Part;"), ("src/b.rs", second)])).len();
    assert_eq!(two("pub enum Part { A }"), 1);
    assert_eq!(two("pub(crate) type Part = u8;"), 1);
    assert_eq!(two("form! { enum Field at Spot { } struct Part; }"), 1);
    assert_eq!(two("struct Part; pub struct Parts;"), 0);
    assert_eq!(two("macro_rules! make { () => { pub struct Part; } }"), 0);

    let many = |count: usize| {
        let paths: Vec<String> = (0..count).map(|at| format!("src/a/{at}.rs")).collect();
        crowded_folders(&of(&paths.iter().map(|path| (path.as_str(), "")).collect::<Vec<_>>())).len()
    };
    assert_eq!((many(FULLEST_FOLDER), many(FULLEST_FOLDER + 1)), (0, 1));
}
