// Binder systems: typical ones taken into the recipe, and the mill's own kept, changed and removed.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";

/** The liquids of the recipe, by their rows. */
const liquids = (page) => page.run(() => [...document.querySelectorAll("tr.liquid:not(.water) .name b")].map((h) => h.textContent.trim()));
const has = async (page, ...expected) => {
  await page.press("Recipe");
  await page.until(async () => assert.deepEqual(await liquids(page), expected));
};
const own = (page) => page.run(() => [...document.querySelectorAll('[aria-labelledby="own"] h3')].map((h) => h.textContent.trim()));
const owns = (page, ...expected) => page.until(async () => assert.deepEqual(await own(page), expected));

journey("a typical system says what is in it, marked and with its source, and goes into the recipe", async (page) => {
  await page.press("Binder systems");
  await page.sees("Typical values to start from. The supplier's certificate wins.");
  const table = await page.byRole("region", "UF");
  for (const words of ["UF resin", "12 %", "Solids on oven-dry fibre", "66 %", "1280 kg/m³", "Dunky (1998)", "Solids on the solids of UF resin"]) {
    await page.sees(words, { within: table });
  }
  await page.press("Use in the recipe: UF");
  await page.sees("The recipe now has the liquids of «UF».");
  await has(page, "UF resin", "Ammonium sulfate solution", "Urea solution", "Wax emulsion");
  await page.more("Undo");
  await has(page, "pMDI", "Wax emulsion");
  await page.press("Binder systems");
  await page.press("Add to the recipe: Soy-based");
  await page.sees("stand beside the recipe's own");
  await page.press("Undo", { within: await page.css(".notice") });
  await has(page, "pMDI", "Wax emulsion");
});

journey("the recipe's liquids are kept as an own system, changed, renamed, removed and put back", async (page) => {
  await page.press("Binder systems");
  await page.sees("None of your own yet.");
  await page.press("Save as your own system");
  await page.sees("The name is still empty.");
  await page.type("Name of the system", "pMDI, winter");
  await page.type("Where its values come from", "certificate of November");
  await page.press("Save as your own system");
  await page.sees("«pMDI, winter» is saved as your own system.");
  await owns(page, "pMDI, winter");
  await page.sees("certificate of November");
  await page.reload();
  await owns(page, "pMDI, winter");

  // To change one: use it, change it, and save it again under its name.
  await page.press("Use in the recipe: pMDI, winter");
  await page.press("Recipe");
  await page.type(await page.css('[data-field^="dose."]'), "4,75");
  await page.press("Binder systems");
  await page.type("Name of the system", "PMDI, Winter");
  await page.press("Save as your own system");
  await page.sees("is saved over what it was before.");
  await page.until(async () => assert.equal((await own(page)).length, 1));
  const table = () => page.byRole("region", "pMDI, winter");
  await page.sees("4,75 %", { within: await table() });
  await page.press("Undo", { within: await page.css(".notice") });
  await page.until(async () => page.seesNot("4,75 %", { within: await table(), wait: 100 }));

  await page.press("Rename pMDI, winter");
  await page.type("New name", "pMDI, summer");
  await page.keys(Key.ENTER);
  await owns(page, "pMDI, summer");
  await page.press("Remove pMDI, summer");
  await page.sees("None of your own yet.");
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.textContent), "Undo"));
  await page.keys(Key.ENTER);
  await owns(page, "pMDI, summer");
});

journey("values are shown in the units chosen, and a recipe without liquids has none to save", { hash: "#systems" }, async (page) => {
  await page.choose("Units", "US customary");
  await page.sees("10.68 lb/US gal", { within: await page.byRole("region", "UF") });
  await page.press("Recipe");
  await page.more("New recipe");
  await page.press("Binder systems");
  await page.sees("The recipe has no liquids to save.");
  assert.equal(await page.run(() => document.getElementById("system-name").checkVisibility()), false);
});

for (const [width, height, touch] of [[390, 844, true], [1440, 900, false]]) {
  journey(`the systems are clean to axe at ${width} px`, { width, height, touch, hash: "#systems" }, async (page) => {
    await page.type("Name of the system", "Own");
    await page.press("Save as your own system");
    await page.sees("is saved as your own system");
    await page.press("Rename Own");
    await page.field("New name");
    await page.axe();
    await page.assertNoSideways();
    await page.screenshot(`systems-${width}`, { full: true });
    await page.look({ dark: true });
    await page.screenshot(`systems-${width}-dark`, { full: true });
  });
}
