//! The Fluent resources and the code ask for each other: every message of a `t!` is there with its variables, and none is
//! there that nothing asks for.

use fluent_syntax::ast;
use fluent_syntax::parser;
use haulm::ui::text::fluent::ENGLISH_RESOURCES;
use proc_macro2::{TokenStream, TokenTree};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// Ids with the variables that go with them.
type Messages = BTreeMap<String, BTreeSet<String>>;

fn defined() -> Messages {
    let mut found = Messages::new();
    for (file, text) in ENGLISH_RESOURCES {
        let resource = parser::parse(*text).unwrap_or_else(|(_, errors)| panic!("{file}: {errors:?}"));
        for entry in resource.body {
            if let ast::Entry::Message(message) = entry {
                let id = message.id.name.to_owned();
                let mut variables = BTreeSet::new();
                in_pattern(&message.value.unwrap_or_else(|| panic!("{id} has no text")), &mut variables);
                assert!(found.insert(id.clone(), variables).is_none(), "{id} is there twice");
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

/// Every `t!` below `path`.
fn asked(path: &Path, found: &mut Messages) {
    if path.is_dir() {
        for entry in fs::read_dir(path).unwrap() {
            asked(&entry.unwrap().path(), found);
        }
    } else if path.extension().is_some_and(|ending| ending == "rs") {
        let tokens: TokenStream = fs::read_to_string(path).unwrap().parse().unwrap();
        in_tokens(&tokens, found);
    }
}

fn in_tokens(tokens: &TokenStream, found: &mut Messages) {
    let tokens: Vec<TokenTree> = tokens.clone().into_iter().collect();
    for (at, tree) in tokens.iter().enumerate() {
        let TokenTree::Group(group) = tree else { continue };
        let is = |back: usize, text: &str| at.checked_sub(back).is_some_and(|at| tokens[at].to_string() == text);
        let inner: Vec<TokenTree> = group.stream().into_iter().collect();
        if let (true, true, Some(TokenTree::Literal(id))) = (is(1, "!"), is(2, "t"), inner.first()) {
            let id = id.to_string().trim_matches('"').to_owned();
            let follows_comma = |at: usize| inner[at - 1].to_string() == ",";
            let variables = inner.windows(2).enumerate().filter_map(|(at, pair)| match pair {
                [TokenTree::Ident(name), TokenTree::Punct(sign)] if sign.as_char() == '=' && follows_comma(at) => {
                    Some(name.to_string())
                }
                _ => None,
            });
            let variables: BTreeSet<String> = variables.collect();
            let before = found.insert(id.clone(), variables.clone());
            assert!(before.is_none_or(|before| before == variables), "{id} is asked for with different variables");
        }
        in_tokens(&group.stream(), found);
    }
}

#[test]
fn the_code_and_the_resources_ask_for_each_other() {
    let mut asked_for = Messages::new();
    asked(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src/ui"), &mut asked_for);
    let defined = defined();
    assert!(defined.len() > 100, "{} messages", defined.len());
    for (id, variables) in &asked_for {
        assert_eq!(defined.get(id), Some(variables), "{id}: resource and code differ");
    }
    let unused: Vec<&String> = defined.keys().filter(|id| !asked_for.contains_key(*id)).collect();
    assert!(unused.is_empty(), "nothing asks for {unused:?}");
}

#[test]
fn a_message_takes_its_variables_and_counts() {
    assert_eq!(haulm::t!("recipe-pasted", count = 1), "One number pasted");
    assert_eq!(haulm::t!("recipe-pasted", count = 12), "12 numbers pasted");
    assert_eq!(haulm::t!("recipe-liquid-deleted", name = "Wax"), "“Wax” deleted");
}

/// All messages of the new pages, to be read as a whole; a variable stands as its name.
#[test]
fn messages_as_they_read() {
    let told: Vec<String> = defined()
        .iter()
        .map(|(id, variables)| {
            let variables: Vec<(&'static str, fluent_bundle::FluentValue<'static>)> =
                variables.iter().map(|name| (&*name.clone().leak(), format!("‹{name}›").into())).collect();
            format!("{id}: {}", haulm::ui::text::fluent::message(id, &variables))
        })
        .collect();
    snapshot!("messages", "recipe_page", told.join("\n"));
}
