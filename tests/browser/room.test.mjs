// More records than local storage has room for: they live in the database, and nobody notices.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { journey } from "./harness.mjs";

const RECIPES = 3000;

/** Letters of our keys and texts in local storage, and how many revisions are in each store. */
const room = (page) =>
  page.run(async () => {
    const ours = Object.entries(localStorage).filter(([key]) => key.startsWith("haulm/"));
    const revisions = (keys) => keys.filter((key) => key.startsWith("haulm/revision/")).length;
    return {
      letters: ours.reduce((sum, [key, text]) => sum + key.length + text.length, 0),
      quick: revisions(ours.map(([key]) => key)),
      alone: revisions(haulmRecords.keysAlone()),
      quota: (await navigator.storage.estimate()).quota,
    };
  });

journey(`${RECIPES} recipes are kept though local storage ends at five megabytes`, { hash: "#shelf" }, async (page) => {
  await page.press("Recipe");
  await page.press("Save");
  await page.sees("Saved at");
  const one = JSON.parse(await page.run(() => localStorage[Object.keys(localStorage).find((key) => key.startsWith("haulm/revision/"))]));
  const records = Array.from({ length: RECIPES }, (_, at) => ({ ...one, name: `Straw ${at}`, note: "x".repeat(500) }));
  const folder = await mkdtemp(join(tmpdir(), "haulm-room-"));
  try {
    const text = JSON.stringify({ haulm: "library", version: 1, records });
    assert.ok(text.length > 7e6, "it would not fit");
    await writeFile(join(folder, "library.json"), text);
    await page.press("Shelf");
    await page.upload("#import", join(folder, "library.json"));
    await page.sees("records added, 0 records here already", { wait: 20_000 });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  // All that this browser will keep is on the disk before the page is left.
  await page.until(() => page.run(() => haulmRecords.keysAlone().every((key) => haulmRecords.holds(key))));

  for (const time of ["first", "second"]) {
    await page.go("#shelf");
    await page.sees(`${RECIPES + 1} recipes`, { wait: 20_000 });
    const { letters, quick, alone, quota } = await room(page);
    console.log(`${time} start after: ${quick} revisions in local storage (${(letters / 1e6).toFixed(2)} million letters), ${alone} in the database alone, of ${(quota / 1e9).toFixed(0)} GB`);
    assert.equal(quick + alone, RECIPES + 1);
    assert.ok(letters < 2_500_000, `${letters} letters`);
  }
  // What is typed and saved afterwards has room.
  await page.press("Recipe");
  await page.type("Fibre moisture", "7.75");
  await page.press("Save");
  await page.sees("Saved at");
  await page.seesNot("no room");
  const { quick } = await room(page);
  assert.ok(quick > 0);
});

journey("a start with local storage full to the last letter still has the database", async (page) => {
  await page.type("Fibre moisture", "7.75");
  await page.until(() => page.run(() => localStorage["haulm/draft"]?.includes("7.75")));
  const thrown = await page.run(() => {
    localStorage.removeItem("haulm/last");
    localStorage.removeItem("haulm/draft");
    let text = "x".repeat(1 << 20);
    for (let i = 0; text.length; i++) {
      try {
        localStorage[`filler/${i}`] = text;
      } catch {
        text = text.slice(0, text.length >> 1);
      }
    }
    try {
      haulmRecords.putOpen("haulm/draft", localStorage["filler/0"].slice(0, 10));
      return null;
    } catch (cause) {
      return String(cause);
    }
  });
  assert.equal(thrown, null, "the program would stop at this");
  await page.reload();
  assert.equal(await page.run(() => haulmRecords.there()), true);
  await page.run(() => Object.keys(localStorage).filter((key) => key.startsWith("filler/")).forEach((key) => localStorage.removeItem(key)));
});
