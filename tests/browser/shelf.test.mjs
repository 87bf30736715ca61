// Recipes kept: saved, found again, renamed, copied, removed and put back, passed on as files; and what the store refuses.

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Key, journey } from "./harness.mjs";

const NAME = "Example: wheat straw, pMDI, 15 mm";

/** How the recipe on the page stands, as the bar says it. */
const stands = async (page) => page.run((e) => e.textContent, await page.css("[data-saved]"));
const saved = (page) => page.until(async () => assert.match(await stands(page), /^Saved at \d\d:\d\d$/));

/** The names in the list, in its order. */
const names = (page) => page.run(() => [...document.querySelectorAll(".lines h2")].map((h) => h.textContent.trim()));
const lists = (page, expected) => page.until(async () => assert.deepEqual(await names(page), expected));

/** What the browser stores under our keys. */
const stored = (page) =>
  page.run(() => Object.fromEntries(Object.keys(localStorage).filter((k) => k.startsWith("haulm/")).map((k) => [k, localStorage[k]])));
const records = async (page, kind = "revision") => Object.keys(await stored(page)).filter((key) => key.startsWith(`haulm/${kind}/`));

/** Goes to another page by the bar, without loading anything anew. */
const to = (page, name) => page.press(name, { within: null });

/** Saves the example under each of these names, as recipes of their own. */
async function saveAs(page, ...all) {
  for (const name of all) {
    await page.press("New recipe");
    await page.type("Name", name);
    await page.press("Save");
    await saved(page);
  }
}

journey("a recipe is saved, survives a reload, and opens again", async (page) => {
  assert.equal(await stands(page), "Not saved yet");
  await page.press("Save");
  await saved(page);
  assert.equal((await records(page)).length, 1);
  await page.type("Board density", "702,5");
  await page.until(async () => assert.match(await stands(page), /^Changed since /));
  await (await page.field("Board density")).sendKeys(Key.chord(Key.CONTROL, "s"));
  await saved(page);
  assert.equal((await records(page)).length, 2, "each save is a record of its own");
  await page.reload();
  assert.equal(await page.value("Board density"), "702,5");
  await saved(page);

  await to(page, "Shelf");
  await lists(page, [`${NAME} on the recipe page`]);
  await page.sees("pMDI · 15 mm · 702,5 kg/m³");
  await page.screenshot("shelf-one");
  await page.press(`History ${NAME}`);
  await page.press(/^Take this revision up again/);
  await page.sees("The older revision of");
  await page.sees("pMDI · 15 mm · 680 kg/m³");
  await page.press(`Open ${NAME}`);
  await page.sees("is open");
  assert.equal(await page.value("Board density"), "680");
  await saved(page);
});

journey("what is typed is there after a crash, saved or not", async (page) => {
  await page.type("Fibre moisture", "6,25");
  await page.until(async () => assert.match((await stored(page))["haulm/draft"] ?? "", /6,25/));
  await page.go();
  assert.equal(await page.value("Fibre moisture"), "6,25");
  assert.equal(await stands(page), "Not saved yet");
});
