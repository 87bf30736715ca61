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
  await page.press("New recipe");
  await put(page, "fibre_flow", "10000");
  await put(page, "fibre_moisture", "4");
  await put(page, "mat_moisture", "10");
  await put(page, "board_density", "700");
  await put(page, "thickness", "16");
}

journey("a pMDI board from a blank recipe: doses, water, mat", DESK, async (page) => {
  await page.press("New recipe");
  await page.sees("No result yet");
  await blank(page);
  await page.choose("Take a binder system", "pMDI, neat");
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
  await page.choose("Take a binder system", "UF");
  await put(page, "fibre_moisture", "9");
  await page.sees("too wet");
  await shows(page, "water_dose", "0 kg/h");
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
  await page.press("New recipe");
  await page.choose("Units", "US customary");
  await put(page, "fibre_flow", "20000");
  await put(page, "fibre_moisture", "4");
  await put(page, "mat_moisture", "10");
  await put(page, "board_density", "43");
  await put(page, "thickness", "0.625 in");
  await page.choose("Take a binder system", "pMDI, neat");
  await shows(page, "liquid.1", "800.0 lb/h");
  // 43 lb/ft³ over 0.625 in and 7 % moisture: 2093.1 lb oven-dry on 1000 ft².
  await shows(page, "mat_oven_dry", "2093 lb/1000 ft²");
});

journey("a unit typed behind the number is understood, a decimal comma too", DESK, async (page) => {
  await put(page, "fibre_flow", "8,5 t/h");
  await page.sees("8500 kg/h");
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
  await page.press("Use this: 50 %");
  await page.until(async () => assert.equal(await held(page, "solids.2"), "50"));
  // pMDI holds nothing but solids: less cannot be.
  await put(page, "solids.1", "1");
  await page.sees("Old result");
  assert.equal(await page.run((box) => box.getAttribute("aria-invalid"), await field(page, "solids.1")), "true");
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
  await put(page, "fibre_flow", "9000");
  await shows(page, "fibre", "9000 kg/h");
  await page.press("Undo");
  await shows(page, "fibre", "8500 kg/h");
  const liquids = () => page.run(() => document.querySelectorAll("ol.cards > *").length);
  const were = await liquids();
  await page.choose("Take a binder system", "UF");
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

journey("the recipe on paper has everything on few pages", DESK, async (page) => {
  const pdf = await page.pdf("A4");
  assert.ok(pdf.length > 10_000);
  assert.ok((await page.pdf("Letter")).length > 10_000);
});

for (const [name, size] of Object.entries({
  phone: { width: 390, height: 844, touch: true },
  tablet: { width: 820, height: 1180, touch: true },
})) {
  journey(`on a ${name} the first dose is in sight and nothing runs sideways`, size, async (page) => {
    const top = await page.run(() => document.querySelector('[data-figure="liquid.1"]').getBoundingClientRect().top);
    assert.ok(top < size.height, `the first dose begins at ${top} px`);
    await page.assertNoSideways();
    await put(page, "fibre_flow", "9000");
    await shows(page, "fibre", "9000 kg/h");
    await page.screenshot(`recipe-${name}`, { full: true });
  });
}
