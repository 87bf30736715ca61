//! One section a part, each state below its name.

use haulm::domain::Grade;
use haulm::quantity::{Kind, Unit};
use haulm::ui::components::{
    BoxMessage, BoxState, Choice, ChoiceOption, FigureValue, Fold, Grid, LimitBar, Mark, Measured, Menu, NumberBox,
    Rank, SlotLine, Tabs, TextArea, TextBox, UnitChoice, WarningSlot, WorkingFrame,
};
use leptos::prelude::*;

/// The page.
#[component]
pub fn Parts() -> impl IntoView {
    view! {
        <main id="content" class="parts">
            <h1>"Parts"</h1>
            <Marks/>
            <NumberBoxes/>
            <Units/>
            <Choices/>
            <Texts/>
            <Figures/>
            <Limits/>
            <Slots/>
            <Folds/>
            <TabRows/>
            <Menus/>
            <Grids/>
            <Workings/>
            <Widths/>
        </main>
    }
}

/// A part by its name, with its states.
#[component]
fn Part(
    /// The name of the component.
    name: &'static str,
    /// Its states.
    children: Children,
) -> impl IntoView {
    view! {
        <section class="panel" data-part=name aria-label=name>
            <h2>{name}</h2>
            {children()}
        </section>
    }
}

/// What a part tells whoever uses it, in sight.
#[component]
fn Heard(
    /// The last thing heard.
    told: RwSignal<String>,
) -> impl IntoView {
    view! { <p class="note">"Heard: " <output>{move || told.get()}</output></p> }
}

#[component]
fn Marks() -> impl IntoView {
    let all = [(Grade::Stop, "Error"), (Grade::Unusual, "Warning"), (Grade::Note, "Note")];
    let one = |(grade, name)| view! { <p><Mark grade=grade/> " " {name}</p> };
    view! { <Part name="Mark">{all.map(one).collect_view()}</Part> }
}

fn message(grade: Grade, words: &str) -> Option<BoxMessage> {
    Some(BoxMessage { grade, words: words.to_owned() })
}

#[component]
fn NumberBoxes() -> impl IntoView {
    let told = RwSignal::new(String::new());
    let typed = RwSignal::new("650".to_owned());
    let live = Signal::derive(move || BoxState { text: typed.get(), ..BoxState::default() });
    let state = |text: &str| BoxState { text: text.to_owned(), ..BoxState::default() };
    let states = [
        ("Blank", BoxState { aside: "required".to_owned(), ..BoxState::default() }),
        ("Entered", state("650")),
        ("Typical value", BoxState { typical: true, ..state("11.2") }),
        ("Read as", BoxState { aside: "read as 6 200 kg/h".to_owned(), ..state("6200") }),
        ("Note", BoxState { message: message(Grade::Note, "The other basis is 10.1 % wet basis."), ..state("11.2") }),
        (
            "Warning",
            BoxState { message: message(Grade::Unusual, "Above the typical range, 2 to 14 %."), ..state("40") },
        ),
        (
            "Error",
            BoxState {
                message: message(Grade::Stop, "Thickness must be above 0 mm. Enter a thickness."),
                ..state("-3")
            },
        ),
    ];
    let one = move |(name, state): (&'static str, BoxState)| {
        view! {
            <NumberBox
                key=name.to_lowercase().replace(' ', "-")
                label=Some(Signal::stored(name.to_owned()))
                name=Signal::stored(name.to_owned())
                state=Signal::stored(state)
                on_input=Callback::new(move |text| told.set(text))
                on_leave=Callback::new(move |()| told.set("left".to_owned()))
            />
        }
    };
    view! {
        <Part name="NumberBox">
            <div class="part-row">
                {states.map(one).collect_view()}
                <NumberBox
                    key="followed".to_owned()
                    label=Some(Signal::stored("Follows its text".to_owned()))
                    name=Signal::stored("Follows its text".to_owned())
                    state=live
                    placeholder=Signal::stored("the recipe's".to_owned())
                    on_input=Callback::new(move |text| typed.set(text))
                    on_leave=Callback::new(move |()| told.set(format!("left at {}", typed.get_untracked())))
                >
                    <span class="unit-fixed">"kg/m³"</span>
                </NumberBox>
                <NumberBox
                    key="read-only".to_owned()
                    label=Some(Signal::stored("Read only".to_owned()))
                    name=Signal::stored("Read only".to_owned())
                    state=Signal::stored(state("650"))
                    readonly=Signal::stored(true)
                    on_input=Callback::new(move |text| told.set(text))
                    on_leave=Callback::new(|()| {})
                />
            </div>
            <Heard told=told/>
        </Part>
    }
}

#[component]
fn Units() -> impl IntoView {
    let told = RwSignal::new(String::new());
    let one = move |kind: Kind, name: &'static str| {
        let unit = RwSignal::new(kind.units().next().unwrap_or(Unit::One));
        view! {
            <p class="part-row">
                <span>{name}</span>
                <UnitChoice
                    kind=Signal::stored(kind)
                    unit=unit
                    symbol=Callback::new(|unit: Unit| unit.symbol().to_owned())
                    name=Signal::stored(name.to_owned())
                    on_choose=Callback::new(move |to: Unit| {
                        unit.set(to);
                        told.set(to.symbol().to_owned());
                    })
                />
            </p>
        }
    };
    view! {
        <Part name="UnitChoice">
            {one(Kind::FibreFlow, "Several units")}
            {one(Kind::Moisture, "A basis")}
            {one(Kind::SettingFrequency, "One unit")}
            <Heard told=told/>
        </Part>
    }
}

#[component]
fn Choices() -> impl IntoView {
    let chosen = RwSignal::new("straw".to_owned());
    let options = || {
        vec![ChoiceOption::new("straw", "Wheat straw"), ChoiceOption::new("wood", "Wood, softwood chips of the region")]
    };
    let choose = Callback::new(move |value: String| chosen.set(value));
    view! {
        <Part name="Choice">
            <Choice id="with-label" name=Signal::stored("With its name".to_owned()) labelled=true options=options() value=chosen on_choose=choose/>
            <Choice id="without-label" name=Signal::stored("Without it".to_owned()) options=options() value=chosen on_choose=choose/>
            <Heard told=chosen/>
        </Part>
    }
}

#[component]
fn Texts() -> impl IntoView {
    let text = RwSignal::new("Trial of the night shift".to_owned());
    let told = RwSignal::new(String::new());
    let input = Callback::new(move |own: String| text.set(own));
    let left = Callback::new(move |()| told.set(text.get_untracked()));
    view! {
        <Part name="TextBox">
            <TextBox id="text-plain" label="Name" value=text longest=40 on_input=input on_leave=left/>
            <TextBox id="text-hint" label="With a hint" hint="Separated by commas." when_left=true value=text longest=40 on_input=input on_leave=left/>
            <TextArea id="text-area" label="Note" value=text longest=400 on_input=input on_leave=left/>
            <Heard told=told/>
        </Part>
    }
}

#[component]
fn Figures() -> impl IntoView {
    let open = RwSignal::new(None::<&'static str>);
    let one = move |key: &'static str, rank: Rank, text: (&str, &str), unit_in_head: bool| {
        let text = (text.0.to_owned(), text.1.to_owned());
        view! {
            <p>
                <FigureValue
                    key=key.to_owned()
                    controls=format!("working-{key}")
                    name=Signal::stored(format!("Figure {key}"))
                    text=Signal::stored(text)
                    rank=rank
                    unit_in_head=unit_in_head
                    open=Signal::derive(move || open.get() == Some(key))
                    on_press=Callback::new(move |()| open.update(|now| *now = if *now == Some(key) { None } else { Some(key) }))
                />
            </p>
        }
    };
    view! {
        <Part name="FigureValue">
            {one("act", Rank::Act, ("26.7", "Hz"), false)}
            {one("lead", Rank::Lead, ("217.0", "kg/h"), false)}
            {one("body", Rank::Body, ("10.6", "kg/m²"), false)}
            {one("in-head", Rank::Body, ("10.6", "kg/m²"), true)}
            {one("missing", Rank::Body, ("", ""), false)}
            <p class="note">"Open: " <output>{move || open.get().unwrap_or("none")}</output></p>
        </Part>
    }
}

#[component]
fn Limits() -> impl IntoView {
    let one = |(used, name): (f64, &'static str)| {
        view! { <p class="part-row"><span>{name}</span> <LimitBar used=Signal::stored(used)/></p> }
    };
    view! {
        <Part name="LimitBar">
            {[(0.0, "Nothing"), (0.4, "40 %"), (0.98, "98 %"), (1.0, "At the limit"), (1.6, "160 %")].map(one).collect_view()}
        </Part>
    }
}

fn line(grade: Grade, words: &str, show: Option<Callback<()>>) -> SlotLine {
    let word = match grade {
        Grade::Stop => "Error",
        Grade::Unusual => "Warning",
        Grade::Note => "Note",
    };
    SlotLine { grade, word: word.to_owned(), words: words.to_owned(), show }
}

#[component]
fn Slots() -> impl IntoView {
    let told = RwSignal::new(String::new());
    let show = Callback::new(move |()| told.set("shown".to_owned()));
    let several = vec![
        line(Grade::Note, "The belt scale was not read for a day.", None),
        line(Grade::Stop, "Fibre moisture is missing. Enter the moisture of the fibre that runs now.", Some(show)),
        line(
            Grade::Unusual,
            "The mat is wetter than the press takes, 14 % dry basis. Dry the fibre to 4 % dry basis or use less water.",
            Some(show),
        ),
    ];
    let one = vec![line(Grade::Unusual, "The mat is wetter than the press takes. Dry the fibre.", Some(show))];
    view! {
        <Part name="WarningSlot">
            <h3>"None"</h3>
            <WarningSlot lines=Signal::stored(Vec::new())/>
            <h3>"One"</h3>
            <WarningSlot lines=Signal::stored(one)/>
            <h3>"Several, the gravest first"</h3>
            <WarningSlot lines=Signal::stored(several)/>
            <Heard told=told/>
        </Part>
    }
}

#[component]
fn Folds() -> impl IntoView {
    let note = Signal::stored("three figures".to_owned());
    view! {
        <Part name="Fold">
            <Fold title="Closed" id="fold-closed" note=note><p>"What is in it."</p></Fold>
            <Fold title="Open" id="fold-open" open=true><p>"What is in it."</p></Fold>
        </Part>
    }
}

#[component]
fn TabRows() -> impl IntoView {
    let shown = RwSignal::new(5_usize);
    let tabs = ["Pump settings", "Settings table", "Catch test", "Line check", "Tanks", "Changeover"];
    view! {
        <Part name="Tabs">
            <Tabs name="Line" tabs=tabs.map(str::to_owned).to_vec() shown=shown on_choose=Callback::new(move |at| shown.set(at))/>
            <p class="note">"Shown: " <output>{move || tabs[shown.get()]}</output></p>
        </Part>
    }
}

#[component]
fn Menus() -> impl IntoView {
    view! {
        <Part name="Menu">
            <Menu id="menu-named" label="Save as"><button type="button">"A recipe"</button></Menu>
            <Menu id="menu-sign" label="More" sign="⋯"><button type="button">"Delete"</button></Menu>
        </Part>
    }
}

#[component]
fn Grids() -> impl IntoView {
    let cells = RwSignal::new(vec!["120".to_owned(), "121".to_owned(), String::new()]);
    let put = move |key: &str, text: String| {
        let at = key.rsplit('-').next().and_then(|at| at.parse::<usize>().ok());
        cells.update(|cells| {
            if let Some(cell) = at.and_then(|at| cells.get_mut(at)) {
                *cell = text;
            }
        });
    };
    let row = move |at: usize| {
        let key = format!("gross-{at}");
        let own = key.clone();
        view! {
            <tr>
                <th scope="row">{(at + 1).to_string()}</th>
                <td class="input">
                    <NumberBox
                        key=key
                        label=None
                        name=Signal::stored(format!("Gross mass of catch {}", at + 1))
                        state=Signal::derive(move || BoxState { text: cells.with(|cells| cells[at].clone()), ..BoxState::default() })
                        column=Some("gross")
                        on_input=Callback::new(move |text| put(&own, text))
                        on_leave=Callback::new(|()| {})
                    />
                </td>
                <td>{move || cells.with(|cells| cells[at].parse::<f64>().map_or_else(|_| "–".to_owned(), |gross| format!("{:.1}", gross - 20.0)))}</td>
            </tr>
        }
    };
    view! {
        <Part name="Grid">
            <Grid
                name="Catches"
                class="part-grid"
                head=view! { <tr><th scope="col">"Catch"</th><th scope="col">"Gross, g"</th><th scope="col">"Net, g"</th></tr> }.into_any()
                foot=view! { <tr><td colspan="3">"Enter goes down, a column can be pasted."</td></tr> }.into_any()
                on_paste=Callback::new(move |column: Vec<(String, String)>| {
                    for (key, text) in column {
                        put(&key, text);
                    }
                })
            >
                {(0..3).map(row).collect_view()}
            </Grid>
        </Part>
    }
}

#[component]
fn Workings() -> impl IntoView {
    let open = RwSignal::new(true);
    view! {
        <Part name="WorkingFrame">
            <button type="button" aria-expanded=move || open.get().to_string() on:click=move |_| open.set(true)>"Open it"</button>
            <Show when=move || open.get()>
                <WorkingFrame id="working-of-part".to_owned() name="Mat weight, oven-dry".to_owned() on_close=Callback::new(move |()| open.set(false))>
                    <p>"How the figure was computed."</p>
                </WorkingFrame>
            </Show>
        </Part>
    }
}

#[component]
fn Widths() -> impl IntoView {
    let width = RwSignal::new(0.0);
    view! {
        <Part name="Measured">
            <Measured width=width><p>{move || format!("{:.0} px wide", width.get())}</p></Measured>
        </Part>
    }
}
