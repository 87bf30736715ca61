//! The end of a document: cautions in a line each, the signatures, and the code that opens the recipe again.

use crate::domain::Caution;
use crate::t;
use crate::ui::part::code::QrCode;
use crate::ui::persistence::link;
use crate::ui::state::State;
use leptos::prelude::*;

/// The end.
#[component]
pub fn End(
    /// The cautions that apply.
    cautions: Vec<Caution>,
    /// What is signed for, each on a line.
    signature: [String; 3],
    /// Whether the recipe's code is printed.
    #[prop(optional)]
    with_code: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let is_cautioned = !cautions.is_empty();
    // An address of this machine's own disk leads nowhere from elsewhere.
    let code = match link::present(state).filter(|_| with_code) {
        Some(link) if !link.starts_with("file:") => Some(
            view! {
                <figure class="print-code">
                    <QrCode link=link name=t!("paper-code") millimetres=45.0/>
                    <figcaption>{t!("paper-code-opens")}</figcaption>
                </figure>
            }
            .into_any(),
        ),
        // The code of an earlier recipe must not be printed beside these doses.
        None if with_code && state.link.with_untracked(Option::is_some) => {
            Some(view! { <p class="print-code">{t!("paper-code-late")}</p> }.into_any())
        }
        _ => None,
    };
    let line = |caution: Caution| view! { <li>{words(caution)}</li> };
    let listed = is_cautioned.then(|| {
        view! {
            <section>
                <h2>{t!("recipe-cautions")}</h2>
                <ul class="print-cautions">{cautions.into_iter().map(line).collect_view()}</ul>
            </section>
        }
    });
    view! {
        <div class="print-end">
            <div>
                {listed}
                <div class="print-sign">{signature.map(|words| view! { <span>{words}</span> }).collect_view()}</div>
            </div>
            {code}
        </div>
    }
}

/// A caution in one line.
fn words(caution: Caution) -> String {
    match caution {
        Caution::Steam => t!("paper-caution-steam"),
        Caution::Isocyanate => t!("paper-caution-isocyanate"),
        Caution::IsocyanateTank => t!("paper-caution-isocyanate-tank"),
        Caution::Emulsion => t!("paper-caution-emulsion"),
        Caution::IsocyanateCatch => t!("paper-caution-isocyanate-catch"),
        Caution::ReleaseAgent => t!("paper-caution-release-agent"),
        Caution::Formaldehyde => t!("paper-caution-formaldehyde"),
        Caution::PressVapour => t!("paper-caution-press-vapour"),
        Caution::BenchSpray => t!("paper-caution-bench-spray"),
        Caution::Alkaline => t!("paper-caution-alkaline"),
        Caution::Ammonia => t!("paper-caution-ammonia"),
        Caution::AcidCure => t!("paper-caution-acid-cure"),
        Caution::Oxidiser => t!("paper-caution-oxidiser"),
        Caution::Corrosion => t!("paper-caution-corrosion"),
        Caution::Cooling => t!("paper-caution-cooling"),
        Caution::Dust => t!("paper-caution-dust"),
        Caution::DampBales => t!("paper-caution-damp-bales"),
        Caution::HighPressure => t!("paper-caution-high-pressure"),
        Caution::Press => t!("paper-caution-press"),
        Caution::CatchTest => t!("paper-caution-catch-test"),
        Caution::Advice => t!("paper-caution-advice"),
    }
}
