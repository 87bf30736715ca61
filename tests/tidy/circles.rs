//! No two files of `src` import each other in a circle, straight or through others.
//!
//! Every path in the code is followed to the file that defines what it names, through re-exports: a `mod.rs` that only lists what
//! its folder offers (`pub use`) is a table of contents and imports nothing by that.

use super::root;
use petgraph::algo::tarjan_scc;
use petgraph::graph::DiGraph;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use syn::visit::{self, Visit};

/// A path of names from the crate's root.
type Names = Vec<String>;

/// One file as a module.
#[derive(Default)]
struct Module {
    /// From the project's folder.
    file: String,
    /// What it defines.
    items: BTreeSet<String>,
    /// What its `use` lines bring in, public or not: the name here, and the path of what is meant.
    uses: BTreeMap<String, Names>,
    /// Modules all of whose names are brought in.
    globs: Vec<Names>,
    /// Paths to follow: all in its code and its `use` lines but re-exports.
    paths: BTreeSet<Names>,
}

#[derive(Default)]
struct Crate {
    modules: BTreeMap<Names, Module>,
}

fn is_for_tests(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        attribute.path().is_ident("cfg")
            && attribute.parse_args::<syn::Ident>().is_ok_and(|condition| condition == "test")
    })
}

/// `a::{b, c as d, e::*}` as its single paths.
fn leaves(tree: &syn::UseTree, before: &Names, found: &mut Vec<(Option<String>, Names)>) {
    let with = |name: &syn::Ident| before.iter().cloned().chain([name.to_string()]).collect::<Names>();
    match tree {
        syn::UseTree::Path(path) => leaves(&path.tree, &with(&path.ident), found),
        syn::UseTree::Name(name) if name.ident == "self" => {
            found.push((before.last().cloned(), before.clone()));
        }
        syn::UseTree::Name(name) => found.push((Some(name.ident.to_string()), with(&name.ident))),
        syn::UseTree::Rename(rename) if rename.ident == "self" => {
            found.push((Some(rename.rename.to_string()), before.clone()));
        }
        syn::UseTree::Rename(rename) => found.push((Some(rename.rename.to_string()), with(&rename.ident))),
        syn::UseTree::Glob(_) => found.push((None, before.clone())),
        syn::UseTree::Group(group) => group.items.iter().for_each(|item| leaves(item, before, found)),
    }
}

/// `super::a` and `self::a`, seen from `here`, from the root; other paths as they are.
fn absolute(path: &Names, here: &Names) -> Names {
    let mut base: Option<Names> = None;
    let mut rest = path.iter().peekable();
    while let Some(first) = rest.peek() {
        match first.as_str() {
            "crate" => base = Some(Names::new()),
            "self" => base = Some(base.unwrap_or_else(|| here.clone())),
            "super" => {
                let mut above = base.unwrap_or_else(|| here.clone());
                above.pop();
                base = Some(above);
            }
            _ => break,
        }
        rest.next();
    }
    match base {
        Some(base) => ["crate".to_owned()].into_iter().chain(base).chain(rest.cloned()).collect(),
        None => path.clone(),
    }
}

struct Reader<'a> {
    here: &'a Names,
    module: &'a mut Module,
}

impl Reader<'_> {
    fn read_use(&mut self, item: &syn::ItemUse) {
        let mut found = Vec::new();
        leaves(&item.tree, &Names::new(), &mut found);
        let re_export = !matches!(item.vis, syn::Visibility::Inherited);
        for (name, path) in found {
            let path = absolute(&path, self.here);
            if !re_export {
                self.module.paths.insert(path.clone());
            }
            match name {
                Some(name) => drop(self.module.uses.insert(name, path)),
                None => self.module.globs.push(path),
            }
        }
    }
}

impl<'ast> Visit<'ast> for Reader<'_> {
    fn visit_item_mod(&mut self, item: &'ast syn::ItemMod) {
        if item.content.is_some() && !is_for_tests(&item.attrs) {
            visit::visit_item_mod(self, item);
        }
    }
    fn visit_item_use(&mut self, item: &'ast syn::ItemUse) {
        if !is_for_tests(&item.attrs) {
            self.read_use(item);
        }
    }
    fn visit_path(&mut self, path: &'ast syn::Path) {
        let names: Names = path.segments.iter().map(|segment| segment.ident.to_string()).collect();
        if names.len() > 1 {
            self.module.paths.insert(absolute(&names, self.here));
        }
        visit::visit_path(self, path);
    }
    fn visit_item_fn(&mut self, item: &'ast syn::ItemFn) {
        if !is_for_tests(&item.attrs) {
            visit::visit_item_fn(self, item);
        }
    }
    // Paths in the macros that take expressions, such as `vec!` and `format!`.
    fn visit_macro(&mut self, item: &'ast syn::Macro) {
        let mut names = Names::new();
        let mut colons = 0;
        for token in flat(item.tokens.clone()) {
            match token {
                Token::Name(name) if colons == 2 || names.is_empty() => names.push(name),
                Token::Name(name) => {
                    self.keep(&mut names);
                    names.push(name);
                }
                Token::Colon => {
                    colons += 1;
                    continue;
                }
                Token::Other => self.keep(&mut names),
            }
            colons = 0;
        }
        self.keep(&mut names);
    }
}

impl Reader<'_> {
    fn keep(&mut self, names: &mut Names) {
        if names.len() > 1 {
            self.module.paths.insert(absolute(names, self.here));
        }
        names.clear();
    }
}

enum Token {
    Name(String),
    Colon,
    Other,
}

fn flat(tokens: proc_macro2::TokenStream) -> Vec<Token> {
    use proc_macro2::TokenTree;
    let mut found = Vec::new();
    for tree in tokens {
        match tree {
            TokenTree::Ident(name) => found.push(Token::Name(name.to_string())),
            TokenTree::Punct(mark) if mark.as_char() == ':' => found.push(Token::Colon),
            TokenTree::Group(group) => {
                found.push(Token::Other);
                found.extend(flat(group.stream()));
                found.push(Token::Other);
            }
            _ => found.push(Token::Other),
        }
    }
    found
}

fn item_name(item: &syn::Item) -> Option<String> {
    Some(match item {
        syn::Item::Const(item) => item.ident.to_string(),
        syn::Item::Enum(item) => item.ident.to_string(),
        syn::Item::Fn(item) => item.sig.ident.to_string(),
        syn::Item::Static(item) => item.ident.to_string(),
        syn::Item::Struct(item) => item.ident.to_string(),
        syn::Item::Trait(item) => item.ident.to_string(),
        syn::Item::Type(item) => item.ident.to_string(),
        syn::Item::Union(item) => item.ident.to_string(),
        syn::Item::Macro(item) => item.ident.as_ref()?.to_string(),
        _ => return None,
    })
}

impl Crate {
    /// Adds the file at `file`, a path from the project's folder that begins with `src/`.
    fn add(&mut self, file: &str, text: &str) {
        let mut here: Names =
            file.trim_start_matches("src/").trim_end_matches(".rs").split('/').map(str::to_owned).collect();
        if here.last().is_some_and(|last| last == "mod") || here == ["lib"] {
            here.pop();
        }
        let syntax = syn::parse_file(text).unwrap_or_else(|error| panic!("{file}: {error}"));
        let mut module = Module { file: file.to_owned(), ..Module::default() };
        module.items = syntax.items.iter().filter_map(item_name).collect();
        Reader { here: &here, module: &mut module }.visit_file(&syntax);
        self.modules.insert(here, module);
    }

    /// The file that defines what `path`, read in `here`, names.
    fn file_of(&self, path: &Names, here: &Names, depth: usize) -> Option<&str> {
        if depth > 16 {
            return None;
        }
        let (first, rest) = path.split_first()?;
        if first != "crate" {
            // A name that a `use` line brought in, or a module beside or below.
            let module = self.modules.get(here)?;
            if let Some(meant) = module.uses.get(first) {
                if meant == path {
                    return None;
                }
                let whole = meant.iter().chain(rest).cloned().collect();
                return self.file_of(&whole, here, depth + 1);
            }
            let below: Names = here.iter().chain([first]).cloned().collect();
            if self.modules.contains_key(&below) {
                let whole = ["crate".to_owned()].into_iter().chain(below).chain(rest.iter().cloned()).collect();
                return self.file_of(&whole, here, depth + 1);
            }
            return None;
        }
        let mut at = Names::new();
        for (which, name) in rest.iter().enumerate() {
            let below: Names = at.iter().chain([name]).cloned().collect();
            if self.modules.contains_key(&below) {
                at = below;
                continue;
            }
            let module = self.modules.get(&at)?;
            if module.items.contains(name) {
                return Some(&module.file);
            }
            let after = rest.get(which + 1..).unwrap_or_default();
            if let Some(meant) = module.uses.get(name) {
                let whole = meant.iter().chain(after).cloned().collect();
                return self.file_of(&whole, &at, depth + 1);
            }
            return module.globs.iter().find_map(|glob| {
                let whole = glob.iter().chain([name]).chain(after).cloned().collect();
                self.file_of(&whole, &at, depth + 1)
            });
        }
        self.modules.get(&at).map(|module| module.file.as_str())
    }

    /// Each file with those whose items it names.
    fn imports(&self) -> BTreeMap<&str, BTreeSet<&str>> {
        let mut all = BTreeMap::new();
        for (here, module) in &self.modules {
            let targets: BTreeSet<&str> = module
                .paths
                .iter()
                .filter_map(|path| self.file_of(path, here, 0))
                .filter(|to| *to != module.file)
                .collect();
            all.insert(module.file.as_str(), targets);
        }
        all
    }

    /// Groups of files that import each other in a circle.
    fn circles(&self) -> Vec<Vec<&str>> {
        let imports = self.imports();
        let mut graph = DiGraph::<&str, ()>::new();
        let nodes: BTreeMap<&str, _> = imports.keys().map(|file| (*file, graph.add_node(*file))).collect();
        for (from, targets) in &imports {
            for to in targets {
                if let (Some(from), Some(to)) = (nodes.get(from), nodes.get(to)) {
                    graph.add_edge(*from, *to, ());
                }
            }
        }
        let groups = tarjan_scc(&graph).into_iter().filter(|group| group.len() > 1);
        groups.map(|group| group.into_iter().map(|node| graph[node]).collect()).collect()
    }
}

fn read_all() -> Crate {
    fn walk(path: &Path, found: &mut Crate) {
        for entry in fs::read_dir(path).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                walk(&path, found);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                let file = path.strip_prefix(root()).unwrap().to_str().unwrap().replace('\\', "/");
                found.add(&file, &fs::read_to_string(&path).unwrap());
            }
        }
    }
    let mut found = Crate::default();
    walk(&root().join("src"), &mut found);
    found
}

#[test]
fn no_files_import_each_other_in_a_circle() {
    let all = read_all();
    let edges: usize = all.imports().values().map(BTreeSet::len).sum();
    assert!(all.modules.len() > 100 && edges > all.modules.len(), "{} files, {edges} imports", all.modules.len());
    let imports = all.imports();
    let told: Vec<String> = all
        .circles()
        .iter()
        .map(|group| {
            let mut lines = vec![format!("{} files:", group.len())];
            for from in group {
                let to: Vec<&str> = imports[from].iter().filter(|to| group.contains(to)).copied().collect();
                lines.push(format!("  {from} -> {}", to.join(", ")));
            }
            lines.join("\n")
        })
        .collect();
    assert!(told.is_empty(), "\n{}", told.join("\n"));
}

#[test]
fn circles_are_found_through_re_exports_and_not_made_by_them() {
    let of = |files: &[(&str, &str)]| {
        let mut all = Crate::default();
        for (file, text) in files {
            all.add(file, text);
        }
        all.circles().len()
    };
    let contents = ("src/a/mod.rs", "mod b; mod c; pub use b::B; pub use c::C;");
    assert_eq!(of(&[contents, ("src/a/b.rs", "pub struct B;"), ("src/a/c.rs", "use super::B; pub struct C(B);")]), 0);
    assert_eq!(
        of(&[
            contents,
            ("src/a/b.rs", "use crate::a::C; pub struct B;"),
            ("src/a/c.rs", "use super::B; pub struct C;")
        ]),
        1
    );
    assert_eq!(
        of(&[("src/x.rs", "pub fn f() { crate::y::g() }"), ("src/y.rs", "pub fn g() { vec![super::x::f()]; }")]),
        1
    );
    assert_eq!(
        of(&[
            ("src/x.rs", "pub fn f() {}"),
            ("src/y.rs", "pub fn g() {} #[cfg(test)] mod tests { use crate::x::f; }"),
            ("src/z.rs", "use crate::{x, y}; fn h() { x::f(); y::g(); }"),
        ]),
        0
    );
}
