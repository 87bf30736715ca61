//! How long it takes, natively, to open and search a library of 2 000 recipes, and to refuse what is far too large or nested too
//! deep. Fails above the limits, which are loose: the budgets of the app itself are measured in a browser (`tests/browser/budget/`).
//!
//! `cargo bench --bench record`
#![allow(clippy::print_stdout, clippy::unwrap_used, clippy::panic, missing_docs)]

use haulm::domain::recipe::example::example;
use haulm::record::content::revision::{Stamp, Title};
use haulm::record::content::search::{SortColumn, SortOrder, find};
use haulm::record::file::recipe::RecipeFile;
use haulm::record::store::MemoryStore;
use haulm::record::{Library, Revision};
use std::time::Instant;

const RECIPES: u64 = 2_000;

/// Milliseconds.
const OPEN: f64 = 1_000.0;
const SEARCH: f64 = 100.0;
const REFUSE: f64 = 200.0;

/// Milliseconds of the quickest of a few runs: the others waited for something else.
fn quickest<T>(mut run: impl FnMut() -> T) -> f64 {
    let time = |run: &mut dyn FnMut() -> T| {
        let start = Instant::now();
        run();
        start.elapsed().as_secs_f64() * 1e3
    };
    (0..5).map(|_| time(&mut run)).fold(f64::INFINITY, f64::min)
}

fn main() {
    let store = MemoryStore::default();
    let mut library = Library::open(store.clone()).unwrap();
    for n in 0..RECIPES {
        let title = Title { name: format!("Recipe {n} of the mill"), ..Title::default() };
        library.save(Revision::first(title, example(), Stamp { at: n, ..Stamp::default() }).unwrap()).unwrap();
    }
    let open = quickest(|| Library::open(store.clone()).unwrap());
    let library = Library::open(store).unwrap();
    let search = quickest(|| {
        let listed = library.recipes();
        assert_eq!(find(&listed, "recipe 1234", SortOrder::first(SortColumn::Name)).len(), 1);
    });
    let huge = "[".repeat(100_000_000);
    let refuse = quickest(|| {
        assert!(RecipeFile::read(&huge).is_err());
        assert!(RecipeFile::read(&huge[..haulm::record::file::recipe::LARGEST]).is_err());
    });
    for (what, took, limit) in [
        ("2 000 recipes opened", open, OPEN),
        ("searched", search, SEARCH),
        ("100 MB, and brackets without end, refused", refuse, REFUSE),
    ] {
        println!("{what}: {took:.1} ms (limit {limit} ms)");
        assert!(took <= limit, "{what}: {took:.1} ms, more than {limit} ms");
    }
}
