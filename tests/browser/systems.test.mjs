// Binder systems: typical ones taken into the recipe, and the mill's own kept, changed and removed.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";
import { act, unfoldRow } from "./pages.mjs";

/** The liquids of the recipe, by their rows. */
const liquids = (page) => page.run(() => [...document.querySelectorAll("tr.liquid:not(.water) .name b")].map((h) => h.textContent.trim()));
const has = async (page, ...expected) => {
  await page.press("Recipe");
  await page.until(async () => assert.deepEqual(await liquids(page), expected));
};
const own = (page) => page.run(() => [...document.querySelectorAll(".own-systems .name")].map((h) => h.textContent.trim()));
const owns = (page, ...expected) => page.until(async () => assert.deepEqual(await own(page), expected));

/** The library's tab, from anywhere. */
const toSystems = async (page) => {
  await page.press("Library");
  await page.press("Binder systems");
};

journey("a typical system says what is in it, marked and with its source, and goes into the recipe", async (page) => {
  await toSystems(page);
  await page.sees("Typical values to start from. The supplier’s certificate wins.");
  await page.sees("UF resin 12 % · ");
  await unfoldRow(page, "UF");
  const table = await page.byRole("region", "UF");
  for (const words of ["UF resin", "12 %", "Solids on oven-dry fibre", "66 %", "1280 kg/m³", "Dunky (1998)", "Solids on the solids of UF resin"]) {
    await page.sees(words, { within: table });
  }
  await page.press("Use in the recipe: UF");
  await page.sees("The recipe now has the liquids of “UF”.");
  await has(page, "UF resin", "Ammonium sulfate solution", "Urea solution", "Wax emulsion");
  await page.more("Undo");
  await has(page, "pMDI", "Wax emulsion");
  await toSystems(page);
  await page.press("Add to the recipe: Soy-based");
  await page.sees("Liquids of “Soy-based” added to the recipe.");
  await page.press("Undo", { within: await page.css(".notice") });
  await has(page, "pMDI", "Wax emulsion");
});

journey("the recipe's liquids are kept as an own system, changed, renamed, removed and put back", async (page) => {
  await toSystems(page);
  await page.sees("None yet. Save the recipe’s liquids as one.");
  await page.press("Save as own system");
  await page.sees("System name is blank.");
  await page.type("System name", "pMDI, winter");
  await page.type("Source of the values", "certificate of November");
  await page.press("Save as own system");
  await page.sees("“pMDI, winter” saved as own system.");
  await owns(page, "pMDI, winter");
  await page.sees("certificate of November");
  await page.reload();
  await owns(page, "pMDI, winter");

  // To change one: use it, change it, and save it again under its name.
  await page.press("Use in the recipe: pMDI, winter");
  await page.press("Recipe");
  await page.type(await page.css('[data-field^="dose."]'), "4,75");
  await toSystems(page);
  await page.type("System name", "PMDI, Winter");
  await page.press("Save as own system");
  await page.sees("“PMDI, Winter” replaced.");
  await page.until(async () => assert.equal((await own(page)).length, 1));
  const table = () => page.byRole("region", "pMDI, winter");
  await page.sees("pMDI 4,75 %");
  await unfoldRow(page, "pMDI, winter");
  await page.sees("4,75 %", { within: await table() });
  await page.press("Undo", { within: await page.css(".notice") });
  await page.seesNot("pMDI 4,75 %");
  await unfoldRow(page, "pMDI, winter");
  await page.until(async () => page.seesNot("4,75 %", { within: await table(), wait: 100 }));

  await act(page, "Rename", "pMDI, winter");
  await page.type("New name", "pMDI, summer");
  await page.keys(Key.ENTER);
  await owns(page, "pMDI, summer");
  await act(page, "Delete", "pMDI, summer");
  await page.sees("None yet. Save the recipe’s liquids as one.");
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.textContent), "Undo"));
  await page.keys(Key.ENTER);
  await owns(page, "pMDI, summer");
});

journey("values are shown in the units chosen, and a recipe without liquids has none to save", { hash: "#systems" }, async (page) => {
  await page.choose("Units", "US customary");
  await unfoldRow(page, "UF");
  await page.sees("10.68 lb/US gal", { within: await page.byRole("region", "UF") });
  await page.press("Recipe");
  await page.more("New recipe");
  await toSystems(page);
  await page.sees("The recipe has no liquids to save.");
  assert.equal(await page.run(() => document.getElementById("system-name").checkVisibility()), false);
});

for (const [width, height, touch] of [[390, 844, true], [820, 1180, true], [1440, 900, false]]) {
  journey(`the systems are clean to axe at ${width} px`, { width, height, touch, hash: "#systems" }, async (page) => {
    await page.type("System name", "Own");
    await page.press("Save as own system");
    await page.sees("saved as own system");
    await act(page, "Rename", "Own");
    await page.field("New name");
    await page.looksRight(`systems-${width}`);
  });
}
