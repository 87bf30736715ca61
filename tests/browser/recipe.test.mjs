// The main job: from a recipe to what is dosed and what the mat weighs.

import assert from "node:assert/strict";
import { journey, Key } from "./harness.mjs";

const DESK = { width: 1440, height: 900 };

const field = (page, key) => page.css(`[data-field="${key}"]`);
const put = async (page, key, text) => page.type(await field(page, key), text);
const held = async (page, key) => page.run((box) => box.value, await field(page, key));
const shows = (page, key, words) =>
  page.until(async () => assert.equal((await page.figure(key)).replaceAll("\u00a0", " "), words));

/** A blank recipe with everything that a result needs, but no liquid. */
async function blank(page) {
  await page.more("New recipe");
  await put(page, "fibre_flow", "10000");
  await put(page, "fibre_moisture", "4");
  await put(page, "mat_moisture", "10");
  await put(page, "board_density", "700");
  await put(page, "thickness", "16");
}

/** Opens one of the folds below the figures. */
const unfold = async (page, id) => {
  // A phone has its figures at the foot of the screen, over what is half scrolled there.
  await page.run((id) => document.querySelector(`#${id} > summary`).scrollIntoView({ block: "center", behavior: "instant" }), id);
  await page.click(`#${id} > summary`);
};
/** What has the focus. */
const active = (page) => page.run(() => document.activeElement.id || document.activeElement.dataset.field || document.activeElement.textContent);
const isActive = (page, id) => page.until(async () => assert.equal(await active(page), id));
const chord = (page, key) => page.driver.actions().keyDown(Key.CONTROL).sendKeys(key).keyUp(Key.CONTROL).perform();
/** In the page: a text pasted into the focused box. */
const paste = (page, text) =>
  page.run((text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", text);
    document.activeElement.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, text);

journey("a pMDI board from a blank recipe: doses, water, mat", DESK, async (page) => {
  await page.more("New recipe");
  await page.sees("No result yet");
  await blank(page);
  await page.choose("Add binder system", "pMDI, neat");
  // 4 % of 10 000 kg/h, over 1.23 kg/L; wax 0.8 % over 55 % solids.
  await shows(page, "liquid.1", "400.0 kg/h");
  await shows(page, "volume.1", "325.2 L/h");
  await shows(page, "liquid.2", "145.5 kg/h");
  // S = 10 480; W* = 1 048; on hand 400 with the fibre and 65.45 with the wax.
  await shows(page, "water_dose", "582.5 kg/h");
  // 700 kg/m³ at 16 mm and 7 % moisture, oven-dry.
  await shows(page, "mat_oven_dry", "10.47 kg/m²");
  await shows(page, "mat_wet", "11.51 kg/m²");
  await page.axe();
  await page.screenshot("recipe-pmdi");
});

journey("a UF board that comes out too wet says by how much and what would fix it", DESK, async (page) => {
  await blank(page);
  await page.choose("Add binder system", "UF");
  await put(page, "fibre_moisture", "9");
  await page.sees("too wet");
  await shows(page, "water_dose", "0 kg/h");
  await unfold(page, "all-results");
  const excess = await page.figure("water_excess");
  assert.match(excess, /^[1-9]/);
  const way = Number.parseFloat(await page.figure("fibre_moisture_for_no_water"));
  assert.ok(way > 0 && way < 9, `${way}`);
  // Fibre dried to just below that is no longer too wet and needs next to no water.
  await put(page, "fibre_moisture", (way - 0.05).toFixed(2));
  await page.seesNot("too wet");
  await page.until(async () => assert.ok(Number.parseFloat(await page.figure("water_dose")) < 11));
  await page.axe();
});

journey("units switch at once and back, and what was typed comes back to the letter", DESK, async (page) => {
  await put(page, "fibre_flow", "8500,5");
  await page.choose("Units", "US customary");
  await page.until(async () => assert.equal(await held(page, "fibre_flow"), "18740.39"));
  assert.match(await page.figure("liquid.1"), /lb\/h$/);
  assert.match(await page.figure("volume.1"), /US gal\/min$/);
  await page.choose("Units", "Metric");
  await page.until(async () => assert.equal(await held(page, "fibre_flow"), "8500,5"));
});

journey("a US board: inches, pounds, gallons", DESK, async (page) => {
  await page.more("New recipe");
  await page.choose("Units", "US customary");
  await put(page, "fibre_flow", "20000");
  await put(page, "fibre_moisture", "4");
  await put(page, "mat_moisture", "10");
  await put(page, "board_density", "43");
  await put(page, "thickness", "0.625 in");
  await page.choose("Add binder system", "pMDI, neat");
  await shows(page, "liquid.1", "800.0 lb/h");
  // 43 lb/ft³ over 0.625 in and 7 % moisture: 2093.1 lb oven-dry on 1000 ft².
  await shows(page, "mat_oven_dry", "2093 lb/1000 ft²");
});

journey("a unit typed behind the number is understood, a decimal comma too", DESK, async (page) => {
  await put(page, "fibre_flow", "8,5 t/h");
  await page.sees("read as 8500 kg/h");
  await unfold(page, "all-results");
  await shows(page, "fibre", "8500 kg/h");
  assert.equal(await held(page, "fibre_flow"), "8,5 t/h");
  await put(page, "fibre_moisture", "4.31 % wb");
  await page.until(async () => assert.match(await page.figure("fibre_water"), /^382[.,]/));
});

journey("what is wrong is said at the field, and the last result stays, marked as old", DESK, async (page) => {
  const before = await page.figure("water_dose");
  await put(page, "fibre_flow", "12..5");
  await page.sees("two decimal marks");
  await page.sees("Old result");
  assert.equal(await page.figure("water_dose"), before);
  assert.equal(await held(page, "fibre_flow"), "12..5");
  assert.equal(await page.run((box) => box.getAttribute("aria-invalid"), await field(page, "fibre_flow")), "true");
  await page.axe();
  await put(page, "fibre_flow", "-5");
  await page.sees("Old result");
  await put(page, "fibre_flow", "9000");
  await page.seesNot("Old result");
  await put(page, "solids.2", "0.5");
  await page.sees("did you mean 50 %");
  await page.press("Use 50 %");
  await page.until(async () => assert.equal(await held(page, "solids.2"), "50"));
  // pMDI holds nothing but solids: less cannot be.
  await put(page, "solids.1", "1");
  await page.sees("Old result");
  // Told at a pause, not between two keys.
  await page.until(async () => assert.equal(await page.run((box) => box.getAttribute("aria-invalid"), await field(page, "solids.1")), "true"));
  await put(page, "solids.1", "100");
  await page.seesNot("Old result");
});

journey("a number that can be read in two ways is asked about", DESK, async (page) => {
  await put(page, "board_density", "1,234");
  await page.sees("can be read as");
  await page.press(/1234/);
  await page.until(async () => assert.equal(await held(page, "board_density"), "1234"));
});

journey("every figure shows its working, by keyboard", DESK, async (page) => {
  const button = await page.css('button[aria-controls="working-water_dose"]');
  await page.run((element) => element.focus(), button);
  await page.keys(Key.ENTER);
  await page.until(async () =>
    assert.ok((await page.run(() => document.querySelectorAll("#working-water_dose math").length)) >= 2),
  );
  assert.equal(await page.run((element) => element.getAttribute("aria-expanded"), button), "true");
  await page.axe();
});

journey("steps are taken back, a removed liquid too", DESK, async (page) => {
  await unfold(page, "all-results");
  await put(page, "fibre_flow", "9000");
  await shows(page, "fibre", "9000 kg/h");
  await page.more("Undo");
  await shows(page, "fibre", "8500 kg/h");
  const liquids = () => page.run(() => document.querySelectorAll("tr.liquid:not(.water)").length);
  const were = await liquids();
  await page.choose("Add binder system", "UF");
  await page.until(async () => assert.notEqual(await liquids(), were));
  await page.run(() => document.activeElement.blur());
  await page.driver.actions().keyDown(Key.CONTROL).sendKeys("z").keyUp(Key.CONTROL).perform();
  await page.until(async () => assert.equal(await liquids(), were));
});

journey("Enter goes on to the next box", DESK, async (page) => {
  const first = await field(page, "fibre_flow");
  await page.run((box) => box.focus(), first);
  await page.keys(Key.ENTER);
  await page.until(async () => assert.notEqual(await page.run(() => document.activeElement.dataset.field), "fibre_flow"));
  assert.ok(await page.run(() => Boolean(document.activeElement.dataset.field)));
});

for (const [name, size] of Object.entries({
  phone: { width: 390, height: 844, touch: true },
  tablet: { width: 820, height: 1180, touch: true },
})) {
  journey(`on a ${name} the first dose is in sight and nothing runs sideways`, size, async (page) => {
    const top = await page.run(() => document.querySelector('[data-figure="liquid.1"]').getBoundingClientRect().top);
    assert.ok(top < size.height, `the first dose begins at ${top} px`);
    assert.ok(await page.run(() => document.querySelector("tr.liquid.water .basis select").checkVisibility()), "the basis of the water can be chosen");
    await page.assertNoSideways();
    await put(page, "fibre_flow", "9000");
    await shows(page, "liquid.1", "360.0 kg/h");
    await unfold(page, "all-results");
    await shows(page, "fibre", "9000 kg/h");
    await page.screenshot(`recipe-${name}`, { full: true });
  });
}

journey("the main job is on one screen, in at most seven large figures, and few Tab stops away", DESK, async (page) => {
  const bottom = (selector) => page.run((selector) => document.querySelector(selector).getBoundingClientRect().bottom, selector);
  for (const selector of ['[data-figure="liquid.1"]', '[data-figure="water_dose"]', '[data-figure="mat_wet"]', ".capacity"]) {
    const at = await bottom(selector);
    assert.ok(at < DESK.height, `${selector} ends at ${at} px`);
  }
  const large = await page.run(() => [...document.querySelectorAll(".act-on, .lead")].filter((e) => e.checkVisibility()).length);
  assert.ok(large >= 4 && large <= 7, `${large} large figures`);
  let stops = 0;
  do {
    await page.keys(Key.TAB);
    stops += 1;
  } while (stops < 26 && !(await page.run(() => document.activeElement.matches(".figure-value"))));
  assert.ok(stops <= 25, `${stops} Tab stops to the first figure`);
});

journey("a unit chosen after typing is that of the number typed; otherwise the number is converted", DESK, async (page) => {
  await put(page, "fibre_flow", "6");
  await page.choose(/^Unit of Fibre flow/, "t/h");
  await page.until(async () => assert.equal(await held(page, "fibre_flow"), "6"));
  // 4 % of 6 t/h.
  await shows(page, "liquid.1", "240.0 kg/h");
  await page.choose(/^Unit of Fibre flow/, "kg/h");
  await page.until(async () => assert.equal(await held(page, "fibre_flow"), "6000"));
  await shows(page, "liquid.1", "240.0 kg/h");
});

journey("the basis of one moisture changes no other box", DESK, async (page) => {
  const bases = () => page.run(() => ["fibre_moisture", "board_moisture", "mat_moisture"].map((key) => {
    const box = document.querySelector(`[data-field="${key}"]`);
    return `${box.value} ${box.parentElement.querySelector(".unit").value}`;
  }));
  const [fibre, board, mat] = await bases();
  await page.choose(/^Unit of Fibre moisture/, "% wb");
  await page.until(async () => assert.notEqual((await bases())[0], fibre));
  assert.deepEqual((await bases()).slice(1), [board, mat]);
  await page.reload();
  assert.match((await bases())[0], /wb|wet/);
  assert.deepEqual((await bases()).slice(1), [board, mat]);
});

journey("a column goes in by Enter and from a spreadsheet, and comes out by one Undo", DESK, async (page) => {
  await page.run((box) => box.focus(), await field(page, "dose.1"));
  await page.keys(Key.ENTER);
  await isActive(page, "field-dose.2");
  await page.run((box) => box.focus(), await field(page, "dose.1"));
  const before = [await held(page, "dose.1"), await held(page, "dose.2")];
  await paste(page, "3\r\n0,5\r\n");
  await page.until(async () => assert.deepEqual([await held(page, "dose.1"), await held(page, "dose.2")], ["3", "0,5"]));
  await page.sees("2 numbers pasted");
  await page.press("Undo", { within: await page.css(".notice") });
  await page.until(async () => assert.deepEqual([await held(page, "dose.1"), await held(page, "dose.2")], before));
  // Two cells never become one number.
  await page.run((box) => box.focus(), await field(page, "thickness"));
  await paste(page, "6\n200");
  await page.until(async () => assert.equal(await held(page, "thickness"), "6; 200"));
  await page.sees("Old result");
});

journey("the focus stays where one works: after moving, deleting, Enter before a fold, Find, and Esc", DESK, async (page) => {
  await page.click("#liquid-more-1");
  await page.press("Move down");
  await isActive(page, "liquid-down-1");
  await page.click("#liquid-more-2");
  await page.press("Delete liquid");
  await isActive(page, "liquid-more-1");
  // The notice can be reached and takes back that one act.
  await page.run(() => document.querySelector(".bar a").focus());
  let stops = 0;
  while (stops < 20 && (await active(page)) !== "notice-undo") {
    await page.keys(Key.TAB);
    stops += 1;
  }
  assert.equal(await active(page), "notice-undo", `after ${stops} Tab stops`);
  await page.keys(Key.ENTER);
  await page.css('[data-figure="liquid.2"]');

  await page.run((box) => box.focus(), await field(page, "press_length"));
  await page.keys(Key.ENTER);
  await page.until(async () => assert.match(await active(page), /^field-dose[.]/));

  await page.run(() => document.activeElement.blur());
  await page.keys("/");
  await page.keys("board density", Key.ENTER);
  await isActive(page, "field-board_density");
  await page.keys("4");
  await page.until(async () => assert.equal(await held(page, "board_density"), "4"));
  await put(page, "board_density", "680");

  await page.click("#recipe-more-open");
  await page.keys(Key.TAB, Key.ESCAPE);
  await isActive(page, "recipe-more-open");
  assert.equal(await page.run(() => document.querySelector("#recipe-more").checkVisibility()), false);
  const button = await page.css('button[aria-controls="working-liquid.1"]');
  await page.run((element) => element.focus(), button);
  await page.keys(Key.ENTER);
  await page.run((element) => element.querySelector("button").focus(), await page.css('[id="working-liquid.1"]'));
  await page.keys(Key.ESCAPE);
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.getAttribute("aria-controls")), "working-liquid.1"));
});

journey("a laboratory recipe needs no fibre flow: doses per oven-dry fibre, and the mat's weight", DESK, async (page) => {
  await page.choose("Fibre flow set by", "None (laboratory)");
  // 4 % neat pMDI; 0.8 % solids in an emulsion of 55 %.
  await page.until(async () => assert.match(await page.figure("liquid_on_fibre.1"), /^4[.]00? %$/));
  await page.until(async () => assert.match(await page.figure("liquid_on_fibre.2"), /^1[.]45 %$/));
  await shows(page, "mat_oven_dry", "9.952 kg/m²");
  await page.seesNot("No result yet");
  await page.axe();
  await page.choose("Fibre flow set by", "Flow, oven-dry");
  await shows(page, "liquid.1", "340.0 kg/h");
});

journey("Ctrl+Z takes back what was done on this page, and nothing from another one", DESK, async (page) => {
  await put(page, "fibre_flow", "9000");
  await page.press("Line");
  await page.run(() => document.activeElement.blur());
  await chord(page, "z");
  await page.press("Recipe");
  assert.equal(await held(page, "fibre_flow"), "9000");
  await page.run(() => document.activeElement.blur());
  await chord(page, "z");
  await page.until(async () => assert.equal(await held(page, "fibre_flow"), "8500"));
});

journey("a result is read out with its warning, and a figure says whose it is", DESK, async (page) => {
  await put(page, "fibre_moisture", "14");
  await page.until(async () => {
    const said = await page.run(() => document.querySelector('p[role="status"].out-of-sight').textContent);
    assert.match(said, /too wet.*Water dose 0\skg\/h/i);
  });
  await page.byRole("button", /^pMDI: Flow by mass: 340[.]0/);
});

journey("nothing moves while one types, nor when the box is left", DESK, async (page) => {
  const tops = () => page.run(() => [...document.querySelectorAll("[data-field], .figure-value")].filter((e) => e.checkVisibility()).map((e) => Math.round(e.getBoundingClientRect().top)));
  const before = await tops();
  const box = await field(page, "fibre_flow");
  await page.run((box) => box.focus(), box);
  await page.keys("1");
  const while_typed = await tops();
  await put(page, "fibre_flow", "12..5");
  await page.sees("two decimal marks");
  const with_error = await tops();
  await page.keys(Key.TAB);
  assert.deepEqual([while_typed, with_error, await tops()], [before, before, before]);
});

for (const [width, height, touch] of [[390, 844, true], [820, 1180, true], [1440, 900, false]]) {
  journey(`the recipe is clean to axe at ${width} px, in forced colours too, and with everything open`, { width, height, touch, timeout: 300_000 }, async (page) => {
    await put(page, "fibre_moisture", "14");
    await page.sees("too wet");
    await page.looksRight(`recipe-sheet-${width}`);
    await page.click("#liquid-more-1");
    await page.run(() => document.querySelectorAll("details").forEach((fold) => (fold.open = true)));
    await page.css("#mass-balance table");
    await page.axe();
    await page.assertNoSideways();
    await page.screenshot(`recipe-sheet-${width}-open`, { full: true });
  });
}
