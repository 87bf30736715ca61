// Help: what it shows is what the program uses.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { journey } from "./harness.mjs";

const AT = { hash: "#help" };

const row = (page, quantity, of) => page.run((quantity, of) => {
  const found = [...document.querySelectorAll("table.ranges tbody tr")].find((tr) => tr.cells[0].textContent === quantity && tr.cells[1].textContent === of);
  return found ? [...found.cells].slice(2).map((cell) => cell.textContent.replace(/\s+/g, " ")) : null;
}, quantity, of);
const count = (page) => page.run(() => document.querySelectorAll("table.ranges tbody tr").length);

journey("help names what is computed and what is not, every range with its source, the keys and the version", AT, async (page) => {
  await page.heading("What it does not do");
  await page.sees("It controls nothing.");
  const line = "Line and board";
  assert.deepEqual(await row(page, "Target mat moisture", line), ["8 – 12 % dry basis", "Garay (2012)"]);
  assert.deepEqual(await row(page, "Target press factor", line), ["5.6 – 14 s/mm", "Garay (2012)"]);
  const sources = await page.run(() => [...document.querySelectorAll("table.ranges tbody tr")].map((tr) => tr.cells[3].textContent.trim()));
  assert.ok(sources.length > 40 && sources.every((source) => source.length > 3), "each range has a source");
  assert.match((await row(page, "Dose, solids on oven-dry fibre, as the only binder", "pMDI"))[1], /^Cheng, Han, Fang \(2013\), about 3 % on split wheat straw at 640 kg\/m³/);
  await page.sees("Isocyanate");
  await page.sees("Ctrl+S");
  const { version } = /version = "(?<version>[^"]+)"/.exec(await readFile(new URL("../../Cargo.toml", import.meta.url), "utf8")).groups;
  await page.sees(`Haulm version ${version}`);
  await page.sees("sends nothing");
});

journey("ranges are searched as one types, by quantity, liquid and source", AT, async (page) => {
  const all = await count(page);
  await page.type("Search quantity, liquid or source", "pmdi dose");
  await page.until(async () => assert.equal(await count(page), 2));
  await page.sees(`2 of ${all} ranges`);
  await page.type("Search quantity, liquid or source", "Garay");
  await page.until(async () => assert.ok((await count(page)) > 1 && (await count(page)) < all));
  await page.type("Search quantity, liquid or source", "");
  await page.until(async () => assert.equal(await count(page), all));
});

journey("the glossary has every term that the app says, each with its meaning", AT, async (page) => {
  const terms = await page.run(() => [...document.querySelectorAll(".terms div")].map((div) => [...div.children].map((each) => each.textContent.trim())));
  for (const term of ["Target", "Oven-dry (OD)", "Solids content", "Correction", "Typical value", "Catch", "Weigh sheet", "Revision", "Bottleneck", "Linear mat weight", "Prediction interval", "Confidence interval", "95 % quantile", "Transition board", "Heel", "Aliases", "Break-even price", "Operating map", "Uncertainty budget"]) {
    assert.ok(terms.some(([name, meaning]) => name === term && meaning.length > 10), term);
  }
  assert.equal(new Set(terms.map(([name]) => name)).size, terms.length, "each once");
});

journey("ranges follow the units chosen, and the list of contents leads to its sections", AT, async (page) => {
  await page.choose("Units", "US customary");
  await page.sees("24.97 – 62.43 lb/ft³");
  await page.press("Letters in the formulas");
  assert.equal(await page.run(() => document.activeElement.id), "help-symbols");
  await page.until(async () => assert.ok((await page.run(() => document.querySelectorAll("#help-symbols ~ dl math").length)) > 60));
});

for (const [width, height, touch] of [[390, 844, true], [820, 1180, true], [1440, 900, false]]) {
  journey(`help is clean to axe at ${width} px`, { width, height, touch, ...AT }, async (page) => {
    await page.looksRight(`help-${width}`);
  });
}
