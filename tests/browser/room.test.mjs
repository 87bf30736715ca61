// More records than local storage has room for: they live in the database, and nobody notices.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { journey } from "./harness.mjs";

const RECIPES = 3000;

journey(`${RECIPES} recipes are kept, and none of them in local storage`, { hash: "#library" }, async (page) => {
  await page.press("Recipe");
  await page.press("Save");
  await page.sees("Saved at");
  const one = JSON.parse(Object.values(await page.records())[0]);
  const records = Array.from({ length: RECIPES }, (_, at) => ({ ...one, name: `Straw ${at}`, note: "x".repeat(500) }));
  const folder = await mkdtemp(join(tmpdir(), "haulm-room-"));
  try {
    const text = JSON.stringify({ haulm: "library", version: 1, records });
    assert.ok(text.length > 7e6, "it would not fit");
    await writeFile(join(folder, "library.json"), text);
    await page.press("Library");
    await page.upload("#import", join(folder, "library.json"));
    await page.sees("records added, 0 records already here", { wait: 60_000 });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  // What was told as added is on the disk.
  assert.equal(Object.keys(await page.records()).length, RECIPES + 1);
  for (const time of ["first", "second"]) {
    await page.go("#library");
    await page.sees(`${RECIPES + 1} recipes`, { wait: 60_000 });
    const [letters, quota] = await page.run(async () => [
      Object.entries(localStorage).reduce((sum, [key, text]) => sum + key.length + text.length, 0),
      (await navigator.storage.estimate()).quota,
    ]);
    console.log(`${time} start after: ${letters} letters in local storage, ${(quota / 1e9).toFixed(0)} GB for the database`);
    assert.ok(letters < 50_000, `${letters} letters`);
  }
  // What is typed and saved afterwards has room.
  await page.press("Recipe");
  await page.type("Fibre moisture", "7.75");
  await page.press("Save");
  await page.sees("Saved at");
  await page.seesNot("no room");
});
