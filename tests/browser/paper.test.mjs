// What is printed and pinned to a panel, read off the pages that the browser makes of it.

import assert from "node:assert/strict";
import { mkdir } from "node:fs/promises";
import { SCREENSHOTS, journey } from "./harness.mjs";
import { code, pages, pictures, sizes } from "./pdf.mjs";

const DESK = { width: 1440, height: 900 };
const LINE = { ...DESK, hash: "#line" };
/** In mm, on its feet. */
const PAPER = { A4: [210, 297], Letter: [215.9, 279.4] };

const put = async (page, key, text) => page.type(await page.css(`[data-field="${key}"]`), text);
const leave = (page) => page.run(() => document.activeElement.blur());
const has = (text, ...all) => all.forEach((words) => (words instanceof RegExp ? assert.match(text, words) : assert.ok(text.includes(words), `"${words}" is not in: ${text}`)));
const hasNot = (text, ...all) => all.forEach((words) => assert.ok(!text.includes(words), `"${words}" is in: ${text}`));
/** That these come one after the other. */
const inOrder = (text, ...all) => all.reduce((from, words) => {
  const at = text.indexOf(words, from);
  assert.ok(at >= 0, `"${words}" does not come after place ${from} of: ${text}`);
  return at + words.length;
}, 0);

/** Prints on A4 and on Letter; `check(texts, paper)` reads the pages. Each is of the paper's own size, `wide` ones on their side. */
async function printed(page, name, check, wide = []) {
  await mkdir(SCREENSHOTS, { recursive: true });
  // The browser packs the code's link a moment after what is typed.
  await page.until(async () => hasNot(await atOnce(page, () => document.querySelector("body > .paper")?.textContent ?? ""), "The code was not ready"));
  for (const paper of ["A4", "Letter"]) {
    const pdf = await page.pdf(paper);
    await pictures(pdf, SCREENSHOTS, `paper-${name}-${paper}`);
    const texts = await pages(pdf);
    for (const [at, size] of (await sizes(pdf)).entries()) {
      const expected = wide.includes(at) ? PAPER[paper].toReversed() : PAPER[paper];
      size.forEach((side, way) => assert.ok(Math.abs(side - expected[way]) < 1, `${paper}, page ${at + 1}: ${size} mm`));
    }
    await check(texts, paper);
  }
}

/** What a document holds when the browser's `beforeprint` is over, without giving the page time for anything else. */
const atOnce = (page, read) =>
  page.run(
    (body) => {
      window.dispatchEvent(new Event("beforeprint"));
      const found = new Function(`return (${body})()`)();
      window.dispatchEvent(new Event("afterprint"));
      return found;
    },
    String(read),
  );

async function saveAs(page, initials) {
  await page.press("Settings");
  await page.type("Your initials", initials);
  await page.keys("\uE00C");
  await page.press("Save");
  await page.until(async () => assert.match(await page.run((e) => e.textContent, await page.css("#save-state")), /^Revision \d+ · Saved/));
}

const TODAY = () => new Date().toLocaleDateString("sv");

journey("the recipe is one page: who saved what and when, warnings first, doses, cautions, a line to sign on", DESK, async (page) => {
  await saveAs(page, "AB");
  await page.figure("liquid.1");
  await printed(page, "recipe", (texts) => {
    assert.equal(texts.length, 1, `${texts.length} pages`);
    const [text] = texts;
    has(text, "Example: wheat straw, pMDI, 15 mm", "Revision 1", "AB", TODAY());
    inOrder(text, "Revision 1", "No warnings", "Liquid", "pMDI", "340.0", "Wax emulsion", "123.6", "568.5", "Total", "Cautions", "Released by");
    // The cell of a name with a basis below it is read after the figures beside it.
    has(text, "Water");
    has(text, "4.5 % db · 4.31 % wb", "8883", "11.0", "7.7", "Line operator", "Date", "Isocyanate: no mist", /1 ?\/ ?1$/);
    assert.doesNotMatch(text, /\d{5} kg/, "what was typed is grouped as figures are");
    // A caution is a line.
    has(text, "▲ Straw and wood dust can explode: extract it, never blow it about.");
  });
});

journey("a recipe that is too wet says so on page one, before the doses", DESK, async (page) => {
  await put(page, "fibre_moisture", "14");
  await leave(page);
  await page.sees("too wet");
  await printed(page, "too-wet", ([text, ...more]) => {
    assert.equal(more.length, 0);
    inOrder(text, "warning", "the furnish is too wet", "Liquid", "340.0", "none: too wet");
  });
});

journey("an invalid recipe prints NOT VALID and why, no dose and nothing to sign", DESK, async (page) => {
  await page.figure("liquid.1");
  await put(page, "thickness", "0");
  await leave(page);
  await page.sees("Old result");
  await printed(page, "not-valid", (texts) => {
    assert.equal(texts.length, 1);
    const [text] = texts;
    inOrder(text, "NOT VALID", "Do not run.", "1 error", "Finished thickness", "0 mm", "above 0");
    has(text, "No signature.", "✕ 0 mm");
    hasNot(text, "340.0", "123.6", "568.5", "Released by", "Line operator");
  });
  assert.equal(await code(await page.pdf()), null, "a recipe that is not valid has no code");
});

journey("what was typed is apart from typical values that nobody has confirmed", DESK, async (page) => {
  await page.more("New recipe");
  for (const [key, text] of Object.entries({ fibre_flow: "10000", fibre_moisture: "4", mat_moisture: "10", board_density: "700", thickness: "16" })) await put(page, key, text);
  await page.choose("Add binder system", "UF resin with hardener and wax").catch(() => page.run(() => {
    const select = document.querySelector("#add-system");
    select.selectedIndex = 1;
    select.dispatchEvent(new Event("change", { bubbles: true }));
  }));
  await page.css('[data-figure="liquid.1"]');
  await printed(page, "typical", ([text]) => {
    const [typed, typical] = text.split("Typical values, not confirmed");
    has(typed, "Inputs, entered", "Finished thickness", "16 mm");
    has(typical, "Board moisture", "7 % db", "No allowance:");
    hasNot(typed.split("Inputs, entered")[1], "Board moisture");
  });
});

journey("the code is 45 mm wide, and opens the recipe from the paper", DESK, async (page) => {
  await saveAs(page, "AB");
  await page.click("#share-open");
  const link = await page.until(async () => {
    const value = await page.run((e) => e.value, await page.css("#link"));
    assert.match(value, /#open=[\w-]+$/);
    return value;
  });
  assert.ok(link.length < 690, `${link.length} characters`);
  for (const paper of ["A4", "Letter"]) {
    const found = await code(await page.pdf(paper));
    assert.ok(found, `${paper}: no code is read at 300 dpi`);
    assert.equal(found.text, link);
    assert.ok(found.millimetres >= 44.7, `${paper}: ${found.millimetres} mm`);
  }
  await page.forget();
  await page.go(link.slice(link.indexOf("#")));
  await page.until(async () => assert.equal(await page.figure("liquid.1"), "340.0 kg/h"));
});

journey("a document is complete when beforeprint is over, as a button prints without waiting", DESK, async (page) => {
  await page.figure("liquid.1");
  const read = () => document.querySelector("body > .paper")?.textContent ?? "";
  has(await atOnce(page, read), "pMDI", "340.0", "Released by");
  assert.equal(await page.run(read), "", "it is gone after printing");
  await page.press("Line");
  await page.figure("pump.1.setting");
  has(await atOnce(page, read), "Pump settings", "Settings table", "Set by");
});

journey("pump settings and settings table: each a page of its own, moisture, belt scale, tested range, catch test, drift", LINE, async (page) => {
  await page.until(async () => assert.match(await page.figure("pump.3.setting"), /314/));
  await printed(page, "settings", ([settings, table, ...more]) => {
    assert.equal(more.length, 0);
    inOrder(settings, "Pump settings", "Example: wheat straw, pMDI, 15 mm", "warning", "P1 binder", "Only at belt scale, wet", "8883");
    has(settings, "4.5 % db", "4.31 % wb", /42\.5 %/, /26\.7 Hz/, "314 rpm", "340.0 kg/h", "95 % interval", "Catch test 2026-03-09", "Drift", "Nozzles", "Set by", "Checked by", "Isocyanate: no mist");
    inOrder(table, "Settings table", "Example: wheat straw, pMDI, 15 mm", "P1 binder", "P2 wax", "P3 water", "8883");
    has(table, "314", "Present point, 8883 kg/h at 4.5 % db", "tested 20.0–80.0 %", "Set by");
  }, [1]);
  const cells = await atOnce(page, () => [...document.querySelectorAll(".print-matrix td.present")].map((cell) => cell.textContent));
  assert.equal(cells.length, 3, "one present point a pump");
  assert.match(cells[2], /^314$/);
});

journey("a pump that cannot says so in the place of a setting, and what helps", LINE, async (page) => {
  await put(page, "line.condition.belt", "14000");
  await leave(page);
  await page.sees("of 450");
  await printed(page, "cannot", ([settings, table, ...more]) => {
    assert.ok(more.length <= 1, `${more.length} pages more`);
    has(settings, /✕ Cannot: 49\d of 450 rpm/, "short", "oven-dry");
    assert.match(settings, /\d warnings?/);
    hasNot(settings, "95 % interval 49");
    has(table, "✕", "Cannot: outside allowed settings");
  }, [1, 2]);
});

journey("a long settings table has the recipe and its heads on every page; what was not tested is hatched", LINE, async (page) => {
  await page.run((e) => e.click(), await page.css("#settings-table > summary"));
  await page.run((e) => e.click(), await page.css(".table-range > summary"));
  await put(page, "line.table.flow_to", "22000");
  await leave(page);
  await page.until(async () => assert.ok((await page.run(() => document.querySelectorAll(".matrix tbody tr").length)) > 30));
  // The button below the table prints the table alone.
  const own = await page.run(() => {
    let text = "";
    window.print = () => {
      window.dispatchEvent(new Event("beforeprint"));
      text = document.querySelector("body > .paper").textContent;
      window.dispatchEvent(new Event("afterprint"));
    };
    [...document.querySelectorAll("button")].find((button) => button.textContent === "Print settings table").click();
    return text;
  });
  has(own, "Settings table", "Present point");
  hasNot(own, "Only at belt scale");
  const hatched = await atOnce(page, () => document.querySelectorAll(".print-matrix td.untested").length);
  assert.ok(hatched > 3, `${hatched} cells`);
  await printed(page, "long-table", ([, ...tables]) => {
    assert.ok(tables.length >= 3, `${tables.length} pages of table`);
    for (const text of tables) has(text, "Settings table", "Example: wheat straw, pMDI, 15 mm", "P1 binder", "P2 wax", "P3 water", "kg/h", "Columns: fibre moisture");
  }, [1, 2, 3, 4]);
});

journey("each tab of the line prints itself, and what has nothing to print says so", LINE, async (page) => {
  const told = {
    "Line check": ["Line check", "Readings", "1 of 11 out of tolerance: P2 wax", "Deviation", "New setting", "8880 kg/h", "Dose", "OK", "Read by"],
    "Tanks & deliveries": ["Tanks", "T1 binder", "pMDI", "Runs empty", "Order by", "20 000", "Read by"],
    "Pumps & catch tests": ["Nothing to print", "Catch tests have no sheet."],
    Changeover: ["Nothing to print", "No changeover planned."],
  };
  for (const [tab, words] of Object.entries(told)) {
    await page.press(tab, { within: await page.css(".tabs, nav.tabs, .line-sheet") });
    await printed(page, tab.toLowerCase().replace(/\W+/g, "-"), (texts) => {
      assert.equal(texts.length, 1, tab);
      has(texts[0], ...words);
      hasNot(texts[0], "Only at belt scale");
      if (words[0] === "Nothing to print") hasNot(texts[0], "Checked by");
    });
  }
});

journey("a changeover prints its steps with boxes to tick, by the time from the start", DESK, async (page) => {
  await page.press("Save");
  await page.until(async () => assert.match(await page.run((e) => e.textContent, await page.css("#save-state")), /^Revision 1 · Saved/));
  await put(page, "fibre_moisture", "6");
  await put(page, "thickness", "18");
  await leave(page);
  await page.press("Line");
  await page.press("Changeover");
  await page.run(() => {
    const choose = (id, at) => {
      const select = document.querySelector(id);
      select.selectedIndex = at;
      select.dispatchEvent(new Event("change", { bubbles: true }));
    };
    choose("#change-from", 2);
    choose("#change-to", 1);
  });
  await page.press("Plan changeover");
  await page.sees("Former");
  await printed(page, "changeover", (texts) => {
    assert.equal(texts.length, 1);
    inOrder(texts[0], "Changeover", "Not started: times count from the start", "+ 0:00", "P3 water", "Moister fibre last", "New furnish arrives", "Former", "Saw", "Transition board:", "Changed by");
  });
});

journey("a recipe with errors leaves nothing of the line to set", DESK, async (page) => {
  await page.figure("liquid.1");
  await put(page, "thickness", "0");
  await leave(page);
  await page.press("Line");
  await printed(page, "line-not-valid", (texts) => {
    assert.equal(texts.length, 1, "said once");
    for (const text of texts) {
      has(text, "Pump settings", "NOT VALID", "Finished thickness");
      hasNot(text, "42.5", "314", "Set by");
    }
  }, []);
});

journey("a recipe for the laboratory prints doses on fibre and no flows", DESK, async (page) => {
  await page.choose("Fibre flow set by", "None (laboratory)");
  await page.until(async () => assert.match(await page.figure("liquid_on_fibre.1"), /^4/));
  await printed(page, "laboratory", (texts) => {
    assert.equal(texts.length, 1);
    has(texts[0], "on OD fibre", "pMDI", "Released by");
    hasNot(texts[0], "340.0", "L/h", "Belt scale", "Line speed");
  });
});

journey("eight liquids and a long name: all doses and their total are on page one", DESK, async (page) => {
  await page.figure("liquid.1");
  for (let more = 0; more < 3; more++) {
    await page.run(() => {
      const select = document.querySelector("#add-system");
      select.selectedIndex = 2;
      select.dispatchEvent(new Event("change", { bubbles: true }));
    });
  }
  await page.type(await page.css("#recipe-name"), "Straw and wood, four liquids a side, with a name that takes two lines of the sheet");
  await leave(page);
  await printed(page, "many-liquids", (texts) => {
    assert.ok(texts.length <= 2, `${texts.length} pages`);
    inOrder(texts[0], "warning", "Liquid", "340.0", "Total");
  });
});

journey("the mixing card has water before salt, no glue that nobody asked for, and no mass where nothing can be made up", { ...DESK, hash: "#mixing" }, async (page) => {
  const [water, salt] = [await page.figure("solution_water"), await page.figure("crystals")].map((text) => text.replace(/[^\d.].*/, ""));
  assert.ok(Number(water) > Number(salt), `${water}, ${salt}`);
  await printed(page, "mixing", (texts) => {
    assert.equal(texts.length, 1);
    inOrder(texts[0], "Mixing card", "Solution from crystals", "by mass", "Add in this order", "Water", water, "Salt, dry and pure crystals", salt, "Solution", "Weighed by", "Checked by");
    hasNot(texts[0], "NOT VALID", "Glue");
  });
  await put(page, "concentration", "45");
  await leave(page);
  await page.sees("does not dissolve to 45 %");
  await printed(page, "mixing-not-valid", (texts) => {
    assert.equal(texts.length, 1);
    inOrder(texts[0], "1 error", "Solution from crystals", "NOT VALID", "does not dissolve to 45 %", "Weighed by");
    hasNot(texts[0], salt, "pure crystals");
  });
});
