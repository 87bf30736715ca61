//! The pages whose program arrives after the start.
//!
//! With the feature `split` the build cuts the program where `wasm_split` says so, and a first visit waits only for what the
//! recipe needs. Without it everything is one program, and each of these pages is there at once.

use super::bench::BenchSheet;
use super::compare::CompareSheet;
use super::help::HelpSheet;
use super::library::LibrarySheet;
use super::line::LineSheet;
use super::mixing::MixingSheet;
use crate::browser::page::is_offline;
use crate::t;
use crate::ui::paper;
use crate::ui::route::Page;
use gloo_timers::future::TimeoutFuture;
use leptos::prelude::*;
use leptos::task::spawn_local;
#[cfg(feature = "split")]
use leptos::wasm_split::{SplitLoaderError, wasm_split};

/// A part of the program did not arrive: the network is gone, and this browser has not kept the part yet.
#[derive(Debug)]
struct NotArrived;

#[cfg(feature = "split")]
impl From<SplitLoaderError> for NotArrived {
    fn from(_: SplitLoaderError) -> Self {
        Self
    }
}

/// Functions that make a page once the part of the program that it belongs to is here, and those that fetch it in advance.
macro_rules! arriving {
    ($($page:ident, $fetch:ident in $part:ident: $make:expr;)+) => {$(
        #[cfg(feature = "split")]
        #[wasm_split($part, fallible, preload($fetch), wasm_split_path = leptos::wasm_split)]
        fn $page() -> Result<AnyView, NotArrived> {
            Ok($make)
        }

        #[cfg(not(feature = "split"))]
        fn $page() -> std::future::Ready<Result<AnyView, NotArrived>> {
            std::future::ready(Ok($make))
        }

        #[cfg(not(feature = "split"))]
        fn $fetch() -> std::future::Ready<Result<(), NotArrived>> {
            std::future::ready(Ok(()))
        }
    )+};
}

arriving! {
    line, fetch_line in line: {
        paper::prints(paper::line_documents);
        view! { <LineSheet/> }.into_any()
    };
    bench, fetch_bench in bench: {
        paper::prints(paper::bench_documents);
        view! { <BenchSheet/> }.into_any()
    };
    compare, fetch_compare in others: view! { <CompareSheet/> }.into_any();
    library, fetch_library in others: view! { <LibrarySheet/> }.into_any();
    mixing, fetch_mixing in others: {
        paper::prints(paper::mixing_documents);
        view! { <MixingSheet/> }.into_any()
    };
    help, fetch_help in others: view! { <HelpSheet/> }.into_any();
}

/// Fetches what is not here yet, once the start is over or the network is back: from then on each page opens at once, with a
/// network or without.
pub fn fetch_all() {
    const AFTER_START_MS: u32 = 1500;
    spawn_local(async {
        TimeoutFuture::new(AFTER_START_MS).await;
        // What this browser has kept comes when its page is opened.
        if is_offline() {
            return;
        }
        // A part that does not come now is asked for again when its page is opened.
        let _ = fetch_line().await;
        let _ = fetch_bench().await;
        let _ = fetch_compare().await;
        let _ = fetch_library().await;
        let _ = fetch_mixing().await;
        let _ = fetch_help().await;
    });
}

/// A page, once its program is here.
#[component]
pub fn LazyPage(
    /// Which one. Not the recipe: that comes with the start.
    page: Page,
) -> impl IntoView {
    let tries = RwSignal::new(0_u32);
    let shown = move || {
        tries.track();
        Suspend::new(async move {
            let arrived = match page {
                Page::Line => line().await,
                Page::Bench => bench().await,
                Page::Compare => compare().await,
                Page::Mixing => mixing().await,
                Page::Library | Page::Systems | Page::Trials => library().await,
                Page::Help => help().await,
                Page::Recipe => Ok(().into_any()),
            };
            arrived.unwrap_or_else(|NotArrived| {
                let again = move |_| tries.update(|tries| *tries += 1);
                view! {
                    <p role="alert">{t!("common-page-missing")}</p>
                    <p><button type="button" on:click=again>{t!("common-try-again")}</button></p>
                }
                .into_any()
            })
        })
    };
    view! { <Suspense fallback=|| view! { <p class="arriving" role="status">{t!("common-page-arrives")}</p> }>{shown}</Suspense> }
}
