//! Help.

use crate::ui::text::HelpPage;

pub(super) const HELP: HelpPage = HelpPage {
    title: "Help",
    contents: "On this page",
    what: "What Haulm works out",
    what_list: &[
        "What to dose on dried fibre: each liquid by mass and by volume, and the water.",
        "What the mat must weigh, wet and oven-dry, and what it is made of.",
        "What the line then does: line speed, pressing time, press factor, and which machine limits.",
        "Losses, use and cost, per board volume, area, mass and shift.",
        "Whether the mass closes at every station, solids and water apart.",
        "How a hardener solution and a premixed glue are made up.",
    ],
    not: "What it does not do",
    not_list: &[
        "It controls nothing. Interlocks and the line's own limits stay in charge.",
        "It proves no emission class. That takes a test.",
        "It does not know your resin. The supplier's certificate goes before every typical value.",
        "It takes heat and drying on the way as you give them; it does not model dryer, blender or press.",
    ],
    tour: "A short tour, with the example",
    tour_list: &[
        "Open Recipe. A first start shows the example: an invented mill with wheat straw, pMDI and wax.",
        "Read what to dose: the first figures beside the boxes.",
        "Change the fibre moisture. Every figure follows at once; a wetter fibre takes less water.",
        "Type 25 there. The furnish is then too wet: the water dose is zero, and the finding names the way out. Undo takes it back.",
        "Choose any figure. Its formula and the numbers put in open below it.",
        "Go to Binder systems and use another one in the recipe. Undo takes that back, too.",
        "Give the recipe a name and save it. It stands on the Shelf, and each save stays there as a revision.",
    ],
    numbers: "Typing numbers",
    numbers_list: &[
        "Point and comma both mark decimals. Spaces group: 12 500.",
        "A unit may follow the number and is converted: 4 t/h, 2.5 US gal/min.",
        "What has two readings, such as 1,234, is asked about and never guessed.",
        "A percentage typed as a fraction, 0.65 for 65 %, is asked about, too.",
        "The unit beside a box can be changed; the quantity stays the same.",
    ],
    basis: "Moisture on two bases",
    basis_text: "Dry basis is water per oven-dry mass, as a laboratory oven gives it (EN 322). Wet basis is water per \
                 total mass, as many meters show it. 20 % dry basis is 16.7 % wet basis. Beside each moisture stands \
                 the other basis.",
    keys: "Keys",
    keys_list: &[
        ("Tab", "to the next box or button, in the material's order"),
        ("Enter", "in a box: to the next box"),
        ("/ or Ctrl+K", "find a page, a station or a field"),
        ("Ctrl+S", "save the recipe"),
        ("Ctrl+Z", "undo, outside a box"),
        ("Ctrl+Y", "redo, outside a box"),
        ("Esc", "close what was opened, cancel a name"),
    ],
    windows: "Usual windows",
    windows_text: "Outside one of these, Haulm says so and computes all the same: you know the mill. From memory means \
                   that nobody had the document open.",
    quantity: "What",
    usual: "Usual",
    source: "Source",
    of_liquids: "Of liquids",
    of_line: "Of fibre, mat, press and board",
    beside_another: "beside another binder",
    alone: "as the only binder",
    symbols: "Letters in the formulas",
    symbols_text: "A liquid's letters carry its place in the recipe as their index: m₁ is of the first liquid.",
    symbol: "Letter",
    of_fields: "What is typed",
    of_figures: "What is worked out",
    per_liquid: "of a liquid",
    sources: "Where values come from",
    sources_text: "Formulas are mass balances and definitions. Units follow NIST SP 811, water IAPWS-95, densities of \
                   solutions the CRC Handbook, molar masses IUPAC. Typical values name their source, or say that they \
                   are from memory or common practice. The supplier's certificate and the mill's own measurements go \
                   before all of them.",
    kept: "Where your work is kept",
    kept_list: &[
        "In this browser, on this device, and nowhere else. Nothing leaves it: there is no account and no server behind.",
        "What is on the page is kept as you type, and is back after a reload or a crash.",
        "Each save is a revision that never changes. An older one can be taken up again.",
        "What cannot be read is shown on the Shelf and left as it is.",
        "A browser may clear what it stores. Save recipes to files now and then.",
        "On a shared device, everybody who uses this browser sees the same shelf.",
    ],
    cautions: "Cautions",
    cautions_text: "General wording only. Local codes, the safety data sheet and licensed practice decide.",
    limits: "Limits",
    about: "About",
    version: "Haulm version",
    privacy: "Haulm works everything out in this browser and sends nothing.",
};
