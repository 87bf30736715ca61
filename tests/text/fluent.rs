//! The Fluent resources and the code ask for each other: every message of a `t!` is there with its variables, and none is
//! there that nothing asks for.

use fluent_syntax::ast;
use fluent_syntax::parser;
use haulm::record::content::settings::Language;
use haulm::ui::text::fluent::ENGLISH_RESOURCES;
use proc_macro2::{TokenStream, TokenTree};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// Ids with the variables that go with them; an attribute is `id.attribute`.
type Messages = BTreeMap<String, BTreeSet<String>>;

/// The resources of a language other than English, as the build puts them together.
fn resources(language: &str) -> Vec<(String, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/ui/text").join(language);
    let files = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    files
        .map(|path| (path.file_name().unwrap().to_string_lossy().into_owned(), fs::read_to_string(path).unwrap()))
        .collect()
}

fn defined() -> Messages {
    defined_in(ENGLISH_RESOURCES.iter().map(|(file, text)| (*file, *text)))
}

fn defined_in<'a>(resources: impl Iterator<Item = (&'a str, &'a str)>) -> Messages {
    let mut found = Messages::new();
    for (file, text) in resources {
        let resource = parser::parse(text).unwrap_or_else(|(_, errors)| panic!("{file}: {errors:?}"));
        for entry in resource.body {
            let ast::Entry::Message(message) = entry else { continue };
            let id = message.id.name.to_owned();
            let attributes = message.attributes.iter().map(|each| (format!("{id}.{}", each.id.name), &each.value));
            let value = message.value.as_ref().map(|value| (id.clone(), value));
            for (id, pattern) in value.into_iter().chain(attributes) {
                let mut variables = BTreeSet::new();
                in_pattern(pattern, &mut variables);
                assert!(found.insert(id.clone(), variables).is_none(), "{file}: {id} is there twice");
            }
        }
    }
    found
}

fn in_pattern(pattern: &ast::Pattern<&str>, variables: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        let ast::PatternElement::Placeable { expression } = element else { continue };
        match expression {
            ast::Expression::Inline(inline) => in_inline(inline, variables),
            ast::Expression::Select { selector, variants } => {
                in_inline(selector, variables);
                variants.iter().for_each(|variant| in_pattern(&variant.value, variables));
            }
        }
    }
}

fn in_inline(inline: &ast::InlineExpression<&str>, variables: &mut BTreeSet<String>) {
    if let ast::InlineExpression::VariableReference { id } = inline {
        variables.insert(id.name.to_owned());
    }
}

/// Every message that the code below `path` asks for, and how.
fn asked(path: &Path, found: &mut Vec<Asked>) {
    if path.is_dir() {
        for entry in fs::read_dir(path).unwrap() {
            asked(&entry.unwrap().path(), found);
        }
    } else if path.extension().is_some_and(|ending| ending == "rs") {
        let tokens: TokenStream = fs::read_to_string(path).unwrap().parse().unwrap();
        in_tokens(&tokens, found);
    }
}

/// A macro of `ui::text::fluent` in the code.
struct Asked {
    /// The attribute that its message may have, beside the text.
    attribute: Option<&'static str>,
    id: String,
    variables: BTreeSet<String>,
}

/// The macros, and the attribute that each asks for.
const MACROS: [(&str, Option<&str>); 5] =
    [("t", None), ("label", None), ("field", Some("hint")), ("figure", Some("note")), ("told", Some("fix"))];

fn in_tokens(tokens: &TokenStream, found: &mut Vec<Asked>) {
    let tokens: Vec<TokenTree> = tokens.clone().into_iter().collect();
    for (at, tree) in tokens.iter().enumerate() {
        let TokenTree::Group(group) = tree else { continue };
        let before = |back: usize| at.checked_sub(back).map(|at| tokens[at].to_string()).unwrap_or_default();
        let called = MACROS.iter().find(|(name, _)| before(1) == "!" && before(2) == *name);
        let inner: Vec<TokenTree> = group.stream().into_iter().collect();
        if let (Some((_, attribute)), Some(TokenTree::Literal(id))) = (called, inner.first()) {
            let follows_comma = |at: usize| inner[at - 1].to_string() == ",";
            let variables = inner.windows(2).enumerate().filter_map(|(at, pair)| match pair {
                [TokenTree::Ident(name), TokenTree::Punct(sign)] if sign.as_char() == '=' && follows_comma(at) => {
                    Some(name.to_string())
                }
                _ => None,
            });
            let id = id.to_string().trim_matches('"').to_owned();
            found.push(Asked { attribute: *attribute, id, variables: variables.collect() });
        }
        in_tokens(&group.stream(), found);
    }
}

#[test]
fn the_code_and_the_resources_ask_for_each_other() {
    let mut asked_for = Vec::new();
    asked(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src/ui"), &mut asked_for);
    let defined = defined();
    assert!(defined.len() > 100, "{} messages", defined.len());
    let mut used = BTreeSet::new();
    for Asked { attribute, id, variables } in &asked_for {
        let text = defined.get(id).unwrap_or_else(|| panic!("{id} is asked for and not there"));
        let beside = attribute.map(|attribute| format!("{id}.{attribute}")).filter(|id| defined.contains_key(id));
        let all: BTreeSet<String> = text.iter().chain(beside.iter().flat_map(|id| &defined[id])).cloned().collect();
        assert_eq!(&all, variables, "{id}: resource and code differ");
        used.insert(id);
        used.extend(beside.as_ref().and_then(|id| defined.get_key_value(id)).map(|(id, _)| id));
    }
    let unused: Vec<&String> = defined.keys().filter(|id| !used.contains(id)).collect();
    assert!(unused.is_empty(), "nothing asks for {unused:?}");
}

#[test]
fn every_language_has_every_text_with_its_variables() {
    let english = defined();
    for language in Language::ALL.iter().filter_map(|language| language.code()).filter(|code| *code != "en") {
        let resources = resources(language);
        let texts = defined_in(resources.iter().map(|(file, text)| (file.as_str(), text.as_str())));
        let missing: Vec<&String> = english.keys().filter(|id| !texts.contains_key(*id)).collect();
        let extra: Vec<&String> = texts.keys().filter(|id| !english.contains_key(*id)).collect();
        let other: Vec<&String> =
            texts.iter().filter(|(id, own)| english.get(*id).is_some_and(|en| en != *own)).map(|(id, _)| id).collect();
        assert!(
            missing.is_empty() && extra.is_empty() && other.is_empty(),
            "{language}: {} missing {missing:?}, {} too many {extra:?}, {} with other variables {other:?}",
            missing.len(),
            extra.len(),
            other.len()
        );
    }
}

#[test]
fn a_message_takes_its_variables_and_counts() {
    assert_eq!(haulm::t!("recipe-pasted", count = 1), "One number pasted");
    assert_eq!(haulm::t!("recipe-pasted", count = 12), "12 numbers pasted");
    assert_eq!(haulm::t!("recipe-liquid-deleted", name = "Wax"), "“Wax” deleted");
}
