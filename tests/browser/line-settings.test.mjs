// New pump settings for fibre of another moisture, as an operator needs them: from a cold start in two entries, with fingers and from the
// keyboard.
//
// Computed by hand from the mass balance of the invented mill, not by the app: fibre 8500 kg/h oven-dry; solids 8908 kg/h; the mat needs
// 11.3 % of them as water, 1006.60 kg/h, of which the wax brings 55.64. At 6 % the fibre brings 510: 440.97 kg/h to dose, belt scale
// 8500 · 1.06 = 9010 kg/h. Half of that on the belt, 4505 kg/h, takes half of everything: 170, 61.8 and 220.5 kg/h. Lines through the catch
// tests, by least squares: binder 7.912 kg/h per %, wax 4.665 kg/h per Hz, water 1.8042 kg/h per rpm + 2.1 kg/h, so water
// (440.97 - 2.1)/1.8042 = 243 rpm, and at half of it (220.49 - 2.1)/1.8042 = 121 rpm.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";

const shows = (page, figure, expected) => page.until(async () => assert.match(await page.figure(figure), expected));
const box = (page, key) => page.css(`[data-field="line.condition.${key}"]`);

async function newSettings(page) {
  await shows(page, "pump.3.setting", /^243\srpm$/);
  await page.sees("Belt target moved from 8883 to 9010");
  await shows(page, "pump.1.wanted", /^340(\.0+)?\skg\/h$/);
}

async function halfOfIt(page) {
  await shows(page, "pump.1.wanted", /^170(\.0+)?\skg\/h$/);
  await shows(page, "pump.2.wanted", /^61\.8\d*\skg\/h$/);
  await shows(page, "pump.3.setting", /^121\srpm$/);
}

journey("an operator gets new settings for a new moisture in two entries from a cold start, with fingers", { hash: "#line", width: 390, height: 844, touch: true }, async (page) => {
  await shows(page, "pump.3.setting", /^314\srpm$/);
  const ends = await page.run(() => document.querySelector('.pump-settings tr.pump:last-of-type .set').getBoundingClientRect().bottom);
  assert.ok(ends <= 844 - 44, `the last setting ends at ${ends} px`);
  await page.type(await box(page, "moisture"), "6");
  await newSettings(page);
  await page.type(await box(page, "belt"), "4.505 t/h");
  await halfOfIt(page);
  await page.sees("read as 4505");
  // It is a condition of the line: the recipe is as it was.
  await page.press("Recipe");
  assert.equal(await (await page.css('[data-field="fibre_moisture"]')).getProperty("value"), "4.5");
  await page.press("Line");
  await halfOfIt(page);
  await page.until(async () => assert.ok((await page.run(() => localStorage.getItem("haulm/line") ?? "")).includes("4.505 t/h")));
  await page.reload();
  await halfOfIt(page);
  await page.press("Clear");
  await shows(page, "pump.3.setting", /^314\srpm$/);
  await page.press("Undo", { within: await page.css(".notice") });
  await halfOfIt(page);
});

journey("the same from the keyboard, and what is wrong is told once the box is left", { hash: "#line", width: 1440, height: 900 }, async (page) => {
  await shows(page, "pump.3.setting", /^314\srpm$/);
  await page.run((e) => e.focus(), await box(page, "belt"));
  await page.keys(Key.TAB, Key.TAB);
  assert.equal(await page.run(() => document.activeElement.dataset.field), "line.condition.moisture");
  await page.keys("6");
  await newSettings(page);
  await page.run((e) => e.focus(), await box(page, "belt"));
  await page.keys("4505");
  await halfOfIt(page);
  // An entry that cannot be used strikes the settings, in place, and says why at the top.
  await page.keys("x");
  await page.keys(Key.TAB);
  await page.until(async () => assert.ok(await page.run(() => document.querySelector(".pump-settings-tab.old .slot.stop") !== null)));
  assert.match(await page.run(() => getComputedStyle(document.querySelector('.pump-settings-tab .figure-value')).textDecorationLine), /line-through/);
  await page.type(await box(page, "belt"), "6,200");
  await page.sees("Use 6200");
  await page.press("Use 6.2");
  assert.equal(await (await box(page, "belt")).getProperty("value"), "6.2");
  // Ctrl+Z on the line takes back what was entered there.
  await (await page.button("Print", { within: await page.css(".title") })).sendKeys(Key.chord(Key.CONTROL, "z"));
  await page.until(async () => assert.equal(await (await box(page, "belt")).getProperty("value"), "6,200"));
});

journey("fibre too wet for the recipe is told at the top, and the water pump stays off", { hash: "#line", width: 820, height: 1180, touch: true }, async (page) => {
  await page.type(await box(page, "moisture"), "15");
  await page.sees("the furnish is too wet", { within: await page.css(".warnings") });
  await shows(page, "pump.3.setting", /^off$/);
});

journey("pump settings and settings table: nothing axe finds, nothing sideways, in light, dark and forced colours", { hash: "#line", width: 1440, height: 900, timeout: 300_000 }, async (page) => {
  await shows(page, "pump.1.setting", /%$/);
  await page.click("#ratios > summary");
  await page.click("#settings-table > summary");
  await page.css(".matrix .here");
  await page.click('.pump-settings tr.pump .more button');
  for (const [width, height, touch] of [[1440, 900, false], [820, 1180, true], [390, 844, true]]) {
    await page.look({ width, height, touch });
    await page.looksRight(`line-settings-${width}`);
  }
  // The point of now is a cell of its own, with the settings of the table above.
  const here = await page.run(() => [...document.querySelectorAll(".matrix .here")].map((cell) => cell.firstChild.textContent.trim()));
  const settings = await page.run(() => [...document.querySelectorAll(".pump-settings .set [data-figure]")].map((value) => value.firstChild.textContent.trim()));
  assert.deepEqual(here, settings);
});
