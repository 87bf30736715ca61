// The main journeys in the two other engines: a recipe, the library, the line, the bench and the comparison.
//
// The other files of journeys run in another engine as well (HAULM_ENGINE=firefox node --test …); what only Chromium's driver can
// do is then skipped in words. Each journey here is short, since a browser takes seconds to start.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { journey } from "./harness.mjs";

for (const engine of ["firefox", "webkit"]) {
  journey(`${engine}: an error on the page and a request that leaves the origin are heard`, { engine, allow: [] }, async (page) => {
    await page.run(() => {
      setTimeout(() => { throw new Error("broken on purpose"); });
      document.body.append(Object.assign(new Image(), { src: "http://127.0.0.1:49999/away.png" }));
    });
    await page.until(async () => {
      const heard = [...(await page.complaints()), ...(await page.foreign())].join("\n");
      assert.match(heard, /broken on purpose/);
      assert.match(heard, /127\.0\.0\.1:49999/);
    });
    page.allow.push(/broken on purpose|49999|img-src|Content-Security-Policy/);
    page.foreign = async () => [];
  });
}

const NAME = "Example: wheat straw, pMDI, 15 mm";
const field = (page, key) => page.css(`[data-field="${key}"]`);
const shows = (page, key, words) => page.until(async () => assert.equal(await page.figure(key), words));
const stands = async (page) => page.run((e) => e.textContent, await page.css("#save-state"));
const saved = (page, revision) => page.until(async () => assert.match(await stands(page), new RegExp(`^Revision ${revision} · Saved at`)));
const stored = async (page) => Object.keys(await page.records()).filter((key) => key.startsWith("haulm/revision/"));
const names = (page) => page.run(() => [...document.querySelectorAll(".lines .name")].map((h) => h.textContent.trim()));

for (const engine of ["firefox", "webkit"]) {
  const desk = { engine, width: 1280, height: 900, timeout: 300_000 };

  journey(`${engine}: a recipe from a decimal comma to a dose, saved and there after a reload`, desk, async (page) => {
    await page.more("New recipe");
    await page.type(await page.css("#recipe-name"), "Straw 16 mm");
    for (const [key, text] of Object.entries({
      fibre_flow: "10000,0",
      fibre_moisture: "4",
      mat_moisture: "10",
      board_density: "700",
      thickness: "16",
    }))
      await page.type(await field(page, key), text);
    await page.choose("Add binder system", "pMDI, neat");
    // 4 % of 10 000 kg/h; water from S = 10 480 and W* = 1 048, less 400 with the fibre and 65.45 with the wax.
    await shows(page, "liquid.1", "400.0 kg/h");
    await shows(page, "water_dose", "582.5 kg/h");
    await page.press("Save");
    await saved(page, 1);
    assert.equal((await stored(page)).length, 1);
    // Not saved, yet kept.
    await page.type(await field(page, "fibre_flow"), "8,5 t/h");
    await shows(page, "liquid.1", "340.0 kg/h");
    await page.until(async () => assert.match(await page.run(() => localStorage["haulm/draft"] ?? ""), /8,5 t\/h/));
    await page.reload();
    assert.equal(await page.run((box) => box.value, await field(page, "fibre_flow")), "8,5 t/h");
    await shows(page, "liquid.1", "340.0 kg/h");
    assert.match(await stands(page), /^Revision 1 · \d{4}-\d\d-\d\d \d\d:\d\d · unsaved changes/);
    await page.axe();
    await page.assertNoSideways();
    await page.screenshot(`${engine}-recipe`);
  });

  journey(`${engine}: the library keeps two recipes, takes one in from a file and opens it`, desk, async (page) => {
    await page.press("Save");
    await saved(page, 1);
    await page.press("Library");
    await page.until(async () => assert.deepEqual(await names(page), [`${NAME} on the Recipe page`]));
    const [key] = await stored(page);
    const { draft } = JSON.parse((await page.records())[key]);
    const folder = await mkdtemp(join(tmpdir(), "haulm-files-"));
    try {
      const path = join(folder, "other.haulm.json");
      await writeFile(path, JSON.stringify({ haulm: "recipe", version: 1, name: "From the other mill", draft }));
      await page.upload("#import", path);
      await page.sees("“From the other mill” imported.");
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
    await page.press("Open From the other mill");
    await page.until(async () => assert.equal(await page.run((box) => box.value, await page.css("#recipe-name")), "From the other mill"));
    await page.reload();
    await page.press("Library");
    await page.until(async () => assert.deepEqual((await names(page)).length, 2));
    await page.press(`Open ${NAME}`);
    await page.until(async () => assert.equal(await page.run((box) => box.value, await page.css("#recipe-name")), NAME));
    await saved(page, 1);
  });

  journey(`${engine}: a trial board's mat is worked out, weighed and kept`, { ...desk, hash: "#bench" }, async (page) => {
    await page.type(await field(page, "bench_mat_length"), "450");
    await page.type(await field(page, "bench_mat_width"), "45 cm");
    // As at the head of bench.test.mjs, by hand.
    await page.click("#all-results > summary");
    await shows(page, "bench_mat_oven_dry", "2015.3 g");
    await shows(page, "bench_mat_moist", "2226.9 g");
    await page.click('[aria-controls="working-bench_mat_moist"]');
    await page.css("#working-bench_mat_moist math");
    await page.until(async () => assert.match(await page.figure("bench_rounded.fibre"), /^\d/));
    await page.until(async () => assert.match(await page.figure("to_add.fibre"), /^\d/));
    await page.until(async () => assert.match(await page.run(() => localStorage["haulm/bench"] ?? ""), /45 cm/));
    await page.reload();
    await shows(page, "bench_mat_moist", "2226.9 g");
    await page.axe();
    await page.assertNoSideways();
  });

  journey(`${engine}: the line and the comparison open and show their figures`, desk, async (page) => {
    await page.press("Line");
    await page.until(async () => assert.match(await page.figure("pump.1.setting"), /^\d+(\.\d+)? %$/));
    await page.click('button:has([data-figure="pump.1.setting"])');
    await page.sees("least squares", { within: await page.css('[id="working-pump.1.setting"]') });
    await page.assertNoSideways();
    await page.screenshot(`${engine}-line`);
    await page.press("Compare");
    // The example's own water dose, as the recipe page gives it.
    await shows(page, "water_dose.0", "568.5 kg/h");
    await page.sees("the furnish is too wet");
    await page.assertNoSideways();
    await page.axe();
    await page.screenshot(`${engine}-compare`);
  });
}
