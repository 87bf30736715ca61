//! One name means one type, no folder is crowded, and no word is left that nobody reads.

use super::{File, files};
use std::collections::{BTreeMap, BTreeSet};
use syn::visit::{self, Visit};

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

/// Every `.name` that is read, in code and in the macros that take code.
#[derive(Default)]
struct FieldsRead(BTreeSet<String>);

impl FieldsRead {
    fn read_tokens(&mut self, tokens: proc_macro2::TokenStream) {
        let mut after_dot = false;
        for token in tokens {
            match &token {
                proc_macro2::TokenTree::Ident(name) if after_dot => _ = self.0.insert(name.to_string()),
                proc_macro2::TokenTree::Group(group) => self.read_tokens(group.stream()),
                _ => {}
            }
            after_dot = matches!(&token, proc_macro2::TokenTree::Punct(mark) if mark.as_char() == '.');
        }
    }
}

impl<'ast> Visit<'ast> for FieldsRead {
    fn visit_expr_field(&mut self, field: &'ast syn::ExprField) {
        if let syn::Member::Named(name) = &field.member {
            self.0.insert(name.to_string());
        }
        visit::visit_expr_field(self, field);
    }
    fn visit_pat_struct(&mut self, pattern: &'ast syn::PatStruct) {
        for field in &pattern.fields {
            if let syn::Member::Named(name) = &field.member {
                self.0.insert(name.to_string());
            }
        }
        visit::visit_pat_struct(self, pattern);
    }
    fn visit_macro(&mut self, item: &'ast syn::Macro) {
        self.read_tokens(item.tokens.clone());
    }
}

/// The fields of the structs that hold a language's words, of which no file of `src` reads one of that name.
fn unread_words(files: &[File]) -> Vec<String> {
    let mut read = FieldsRead::default();
    let mut words = Vec::new();
    for file in files.iter().filter(|file| file.is_rust()) {
        let syntax = syn::parse_file(&file.text).unwrap_or_else(|error| panic!("{}: {error}", file.path));
        read.visit_file(&syntax);
        let is_list = file.path.strip_prefix("src/ui/text/").is_some_and(|name| !name.contains('/'));
        for item in syntax.items.iter().filter(|_| is_list) {
            if let syn::Item::Struct(item) = item {
                let names = item.fields.iter().filter_map(|field| field.ident.as_ref());
                words.extend(names.map(|name| (file.path.clone(), format!("{}.{name}", item.ident), name.to_string())));
            }
        }
    }
    assert!(words.len() > 100 || files.len() < 10, "{} words", words.len());
    let unread = words.into_iter().filter(|(_, _, name)| !read.0.contains(name));
    unread.map(|(path, whole, _)| format!("{path}: nobody reads {whole}")).collect()
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

#[test]
fn every_word_is_read() {
    let unread = unread_words(&files("src"));
    assert!(unread.is_empty(), "\n{}", unread.join("\n"));
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

    let list = ("src/ui/text/page.rs", "pub struct Tools { pub save: &'static str }");
    let unread = |code: &str| unread_words(&of(&[list, ("src/ui/part/bar.rs", code)])).len();
    assert_eq!(unread("const TOOLS: Tools = Tools { save: \"Save\" };"), 1);
    assert_eq!(unread("fn f(tools: &Tools) { g(tools.save) }"), 0);
    assert_eq!(unread("fn f(tools: &Tools) { let Tools { save } = tools; g(save) }"), 0);
    assert_eq!(unread("fn f(tools: &Tools) { view! { <p>{tools.save}</p> } }"), 0);
    assert_eq!(unread("fn f() { save() }"), 1);
}
