// Help: what stands there is what the program holds.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { journey } from "./harness.mjs";

const AT = { hash: "#help" };

journey("help names what is worked out and what is not, every window with its source, the keys and the version", AT, async (page) => {
  await page.heading("What it does not do");
  await page.sees("It controls nothing.");
  const windows = await page.byRole("region", "Of fibre, mat, press and board");
  const row = (words) => page.run((table, words) => {
    const found = [...table.querySelectorAll("tbody tr")].find((tr) => tr.cells[0].textContent === words);
    return found ? [...found.cells].map((cell) => cell.textContent.replace(/\s+/g, " ")) : null;
  }, windows, words);
  assert.deepEqual(await row("Mat moisture wanted"), ["Mat moisture wanted", "8 – 12 % dry basis", "Gruver et al.; Garay (2012)"]);
  assert.deepEqual(await row("Press factor wanted"), ["Press factor wanted", "5.6 – 14 s/mm", "Garay (2012) and others"]);
  const sources = await page.run((table) => [...table.querySelectorAll("tbody tr")].map((tr) => tr.cells[2].textContent.trim()), windows);
  assert.ok(sources.length > 20 && sources.every((source) => source.length > 3), "each window has a source");
  const liquids = await page.byRole("region", "Of liquids");
  await page.sees("pMDI: Dose, solids on oven-dry fibre, as the only binder", { within: liquids });
  await page.sees("Cheng, Han, Fang (2013), about 3 % on split wheat straw at 640 kg/m³", { within: liquids });
  await page.sees("Isocyanate");
  await page.sees("Ctrl+S");
  const { version } = /version = "(?<version>[^"]+)"/.exec(await readFile(new URL("../../Cargo.toml", import.meta.url), "utf8")).groups;
  await page.sees(`Haulm version ${version}`);
  await page.sees("sends nothing");
});

journey("windows follow the units chosen, and the list of contents leads to its sections", AT, async (page) => {
  await page.choose("Units", "US customary");
  await page.sees("24.97 – 62.43 lb/ft³");
  await page.press("Letters in the formulas");
  assert.equal(await page.run(() => document.activeElement.id), "help-symbols");
  await page.until(async () => assert.ok((await page.run(() => document.querySelectorAll("#help-symbols ~ dl math").length)) > 60));
});

for (const [width, height, touch] of [[390, 844, true], [1440, 900, false]]) {
  journey(`help is clean to axe at ${width} px`, { width, height, touch, ...AT }, async (page) => {
    await page.axe();
    await page.assertNoSideways();
    await page.screenshot(`help-${width}`, { full: true });
    await page.look({ dark: true });
    await page.screenshot(`help-${width}-dark`, { full: true });
  });
}
