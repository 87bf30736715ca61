// Files that open on a page: what was typed there and not saved is set aside in the library, also across a reload.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fold, more } from "./bench.mjs";
import { journey } from "./harness.mjs";
import { put } from "./pages.mjs";

const trials = (page) => page.run(() => [...document.querySelectorAll(".saved-trials tbody .name b")].map((h) => h.textContent.replace(/[\u2066-\u2069]/g, "").trim()));
const name = (page) => page.run(() => document.getElementById("bench-name")?.value);

/** Runs `act` with the path of a trial's file, as the app writes it; the page has a trial of another name then. */
async function withTrialFile(page, act) {
  await page.type("Trial name", "From the file");
  await fold(page, "trials");
  const { bytes } = await page.download(() => more(page, "Export trial (JSON)"));
  const folder = await mkdtemp(join(tmpdir(), "haulm-trial-"));
  try {
    const path = join(folder, "series.trial.haulm.json");
    await writeFile(path, bytes);
    await page.type("Trial name", "Typed and not saved");
    await act(path);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

journey("importing a trial sets the one on the page aside, also across a reload", { hash: "#bench" }, async (page) => {
  await withTrialFile(page, async (path) => {
    await page.upload("#import-trial", path);
    await page.until(async () => assert.equal(await name(page), "From the file"));
    await page.reload();
    await page.until(async () => assert.equal(await name(page), "From the file"));
    await fold(page, "trials");
    await page.until(async () => assert.match((await trials(page)).join(), /^Unsaved work, \d\d:\d\d: Typed and not saved$/));
    // It opens with what was typed; and the trial of the file, which is in no library either, is set aside in turn.
    await page.press(/^Open .*Typed and not saved/);
    await page.until(async () => assert.match(await name(page), /Typed and not saved$/));
    await fold(page, "trials");
    await page.until(async () => assert.equal((await trials(page)).length, 2));
    // What is in the library already is not set aside once more.
    await page.press(/^Open .*From the file/);
    await page.until(async () => assert.match(await name(page), /From the file$/));
    await fold(page, "trials");
    await page.until(async () => assert.equal((await trials(page)).length, 2));
    await page.axe();
  });
});

journey("a trial's file that is chosen in the library or dropped on any page opens, and sets aside what the bench had", { hash: "#bench" }, async (page) => {
  await withTrialFile(page, async (path) => {
    // After a reload nothing has looked at the bench yet.
    await page.until(async () => assert.match(await page.run(() => localStorage["haulm/bench"] ?? ""), /Typed and not saved/));
    await page.go("#library");
    await page.upload("#import", path);
    await page.until(async () => assert.equal(await name(page), "From the file"));
    await fold(page, "trials");
    await page.until(async () => assert.match((await trials(page)).join(), /^Unsaved work, \d\d:\d\d: Typed and not saved$/));
  });
});

journey("importing a line check sets the line and the recipe on the page aside, also across a reload", { hash: "#line" }, async (page) => {
  const remark = async () => {
    await page.press("Line check", { within: await page.css(".sections") });
    return page.run(() => document.getElementById("check-remark").value);
  };
  await remark();
  const { bytes } = await page.download(() => page.press("Export check"));
  const file = JSON.parse(bytes);
  file.name = "Second line";
  file.line.remark = "from the second line";
  file.recipe.plain.board_density.text = "655";
  await page.press("Mark as own data");
  await page.run(put, "check-remark", "typed and not saved");
  await page.press("Recipe");
  await page.type("Board density", "702");
  await page.until(async () => assert.match(await page.run(() => localStorage["haulm/line"] + localStorage["haulm/draft"]), /typed and not saved.*"702"/s));
  const folder = await mkdtemp(join(tmpdir(), "haulm-line-"));
  try {
    const path = join(folder, "line-check.json");
    await writeFile(path, JSON.stringify(file));
    await page.press("Library");
    await page.upload("#import", path);
    await page.sees("“Second line” is open. Unsaved work is in the library.");
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  assert.equal(await remark(), "from the second line");
  await page.until(async () => assert.match(await page.run(() => localStorage["haulm/line"]), /from the second line/));
  await page.reload();
  assert.equal(await remark(), "from the second line");
  await page.press("Recipe");
  assert.equal(await page.value("Board density"), "655");
  // Both are in the library: the recipe that was changed, and the line.
  await page.press("Library");
  const recipe = await page.css(".lines .name");
  assert.match((await page.run((e) => e.textContent, recipe)).replace(/[\u2066-\u2069]/g, ""), /^Unsaved work, \d\d:\d\d: Example/);
  const lines = await page.byRole("list", "Lines set aside");
  await page.sees("Unsaved work,", { within: lines });
  await page.axe();
  await page.screenshot("library-lines", { full: true });
  await page.press(/^Open .*Unsaved work/, { within: lines });
  await page.byRole("heading", "Line");
  assert.equal(await remark(), "typed and not saved");
  await page.press("Recipe");
  assert.equal(await page.value("Board density"), "702");
  // The line of the file is set aside in turn; deleted, it comes back with Undo.
  await page.press("Library");
  await page.until(async () => assert.equal(await page.run((list) => list.children.length, await page.byRole("list", "Lines set aside")), 2));
  await page.press(/^(Delete|Remove) .*Second line/, { within: await page.byRole("list", "Lines set aside") });
  await page.until(async () => assert.equal(await page.run((list) => list.children.length, await page.byRole("list", "Lines set aside")), 1));
  await page.press("Undo", { within: await page.css(".notice") });
  await page.until(async () => assert.equal(await page.run((list) => list.children.length, await page.byRole("list", "Lines set aside")), 2));
});
