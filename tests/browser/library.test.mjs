// Recipes kept: saved, found again, renamed, copied, removed and put back, passed on as files; and what the store refuses.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Key, journey } from "./harness.mjs";
import { act } from "./pages.mjs";

const NAME = "Example: wheat straw, pMDI, 15 mm";

/** How the recipe on the page stands to the library. */
const stands = async (page) => page.run((e) => e.textContent, await page.css("#save-state"));
const saved = (page, revision, remark) =>
  page.until(async () => assert.match(await stands(page), new RegExp(`^Revision ${revision} · Saved at \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d${remark ? ` · ${remark}` : ""}$`)));

const changed = (revision) => new RegExp(`^Revision ${revision} · \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d · unsaved changes$`);

/** The names in the list, in its order. */
const names = (page) => page.run(() => [...document.querySelectorAll(".lines .name")].map((h) => h.textContent.trim()));
const lists = (page, ...expected) => page.until(async () => assert.deepEqual(await names(page), expected));

/** Binder, thickness and density of the first row. */
const facts = (page) => page.run(() => [...document.querySelectorAll(".lines tr:first-child .fact")].slice(0, 3).map((cell) => cell.textContent.replace(/\s+/g, " ")));

/** What the browser stores under our keys. */
const stored = async (page) => ({
  ...(await page.run(() => Object.fromEntries(Object.keys(localStorage).filter((k) => k.startsWith("haulm/")).map((k) => [k, localStorage[k]])))),
  ...(await page.records()),
});
const revisions = async (page) => Object.keys(await stored(page)).filter((key) => key.startsWith("haulm/revision/"));

/** Saves a new recipe under each of these names. */
async function shelve(page, ...all) {
  for (const name of all) {
    await page.more("New recipe");
    await page.type("Name", name);
    await page.press("Save");
    await saved(page, 1);
  }
  await page.press("Library");
}

/** Puts files into a folder of their own for as long as `act` runs. */
async function withFiles(files, act) {
  const folder = await mkdtemp(join(tmpdir(), "haulm-files-"));
  try {
    for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text);
    await act((name) => join(folder, name));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

journey("a recipe is saved, survives a reload, opens again, and an older revision is taken up", async (page) => {
  await page.press("Save");
  await saved(page, 1);
  await page.type("Board density", "702,5");
  await page.until(async () => assert.match(await stands(page), changed(1)));
  await (await page.field("Board density")).sendKeys(Key.chord(Key.CONTROL, "s"));
  await saved(page, 2);
  assert.equal((await revisions(page)).length, 2, "each save is a record of its own");
  // What was typed can still be taken back; that it was saved is not.
  await page.more("Undo");
  await page.until(async () => assert.match(await stands(page), changed(2)));
  await page.more("Redo");
  await saved(page, 2);
  await page.reload();
  await page.holds("Board density", "702,5");
  await saved(page, 2);

  await page.press("Library");
  await lists(page, `${NAME} on the Recipe page`);
  assert.deepEqual(await facts(page), ["pMDI", "15 mm", "702,5 kg/m³"]);
  await act(page, "History", NAME);
  await page.sees("pMDI · 15 mm · 702,5 kg/m³");
  await page.press(/^Restore this revision/);
  await page.sees("restored.");
  await page.until(async () => assert.deepEqual(await facts(page), ["pMDI", "15 mm", "680 kg/m³"]));
  await page.press(`Open ${NAME}`);
  await saved(page, 3);
  await page.holds("Board density", "680");
});

journey("what is typed is there after a crash, saved or not", async (page) => {
  await page.type("Fibre moisture", "6,25");
  await page.until(async () => assert.match((await stored(page))["haulm/draft"] ?? "", /6,25/));
  await page.go();
  await page.holds("Fibre moisture", "6,25");
  assert.deepEqual(await revisions(page), []);
});

journey("a remark on a save survives a reload, stands in the history and is not said of the next one", async (page) => {
  const unfold = () => page.run(() => document.querySelectorAll("details").forEach((fold) => (fold.open = true)));
  await unfold();
  await page.type("Change note for the next save", "=drier straw");
  await page.until(async () => assert.match((await stored(page))["haulm/draft"], /"remark":"=drier straw"/));
  await page.reload();
  await unfold();
  await page.holds("Change note for the next save", "=drier straw");
  await page.press("Save");
  await saved(page, 1, "=drier straw");
  await page.holds("Change note for the next save", "");
  await page.type("Fibre moisture", "6");
  await page.press("Save");
  await saved(page, 2);
  await page.press("Library");
  await page.until(async () => assert.equal((await names(page)).length, 1));
  const name = (await names(page))[0].replace(" on the Recipe page", "");
  await act(page, "History", name);
  const rows = () => page.run(() => [...document.querySelectorAll(".revisions .revision")].map((row) => row.textContent.replace(/\d\d:\d\d/, "TIME")));
  await page.until(async () => assert.deepEqual(await rows(), ["Revision 2 · TIME", "Revision 1 · TIME · =drier straw"]));
});

journey("a save asks for a name, at the name's box", async (page) => {
  await page.more("New recipe");
  await page.press("Save");
  await page.sees("The name is blank.");
  assert.equal(await page.run(() => document.activeElement.id), "recipe-name");
  assert.deepEqual(await revisions(page), []);
  await page.keys("Straw 18", Key.ENTER);
  await saved(page, 1);
  await page.seesNot("The name is blank.");
});

journey("recipes are searched as one types, sorted, renamed, copied, removed and put back", async (page) => {
  await shelve(page, "Straw 12 mm", "Straw 9 mm", "Spruce 16 mm");
  await lists(page, "Spruce 16 mm on the Recipe page", "Straw 9 mm", "Straw 12 mm");
  // A press on a head sorts by the column, the next the other way round, and that is said.
  await page.press("Name");
  assert.equal(await page.run((head) => head.closest("th").ariaSort, await page.button("Name")), "ascending");
  await lists(page, "Spruce 16 mm on the Recipe page", "Straw 9 mm", "Straw 12 mm");
  await page.press("Name");
  assert.equal(await page.run((head) => head.closest("th").ariaSort, await page.button("Name")), "descending");
  await lists(page, "Straw 12 mm", "Straw 9 mm", "Spruce 16 mm on the Recipe page");
  await page.type("Filter recipes", "straw 9");
  await lists(page, "Straw 9 mm");
  await page.sees("1 of 3 recipes");
  await page.type("Filter recipes", "oak");
  await page.sees("No recipe matches");
  await page.type("Filter recipes", "");

  await act(page, "Rename", "Straw 9 mm");
  await page.type("New name", "");
  await page.keys(Key.ENTER);
  await page.sees("Name is blank.");
  await page.keys("Straw 9.5 mm", Key.ENTER);
  await lists(page, "Straw 12 mm", "Straw 9.5 mm", "Spruce 16 mm on the Recipe page");
  await page.press("Undo");
  await lists(page, "Straw 12 mm", "Straw 9 mm", "Spruce 16 mm on the Recipe page");

  await act(page, "Duplicate", "Straw 12 mm");
  await page.sees("4 recipes");
  await lists(page, "Straw 12 mm", "Straw 9 mm", "Spruce 16 mm on the Recipe page", "Copy of Straw 12 mm");

  // A removal leaves the focus on what takes it back.
  await act(page, "Delete", "Straw 12 mm");
  await page.sees("“Straw 12 mm” deleted.");
  await page.sees("3 recipes");
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.textContent), "Undo"));
  await page.keys(Key.ENTER);
  await page.sees("4 recipes");
  // And later it can be put back as well.
  await act(page, "Delete", "Straw 12 mm");
  await page.sees("3 recipes");
  await page.reload();
  await page.press("Deleted recipes (1)");
  await page.press("Restore Straw 12 mm");
  await page.sees("4 recipes");
  await page.sees("“Straw 12 mm” restored.");
});

journey("renaming and removing the recipe on the page is followed there", async (page) => {
  await shelve(page, "Straw A");
  await act(page, "Rename", "Straw A");
  await page.type("New name", "Straw B");
  await page.keys(Key.ENTER);
  await lists(page, "Straw B on the Recipe page");
  await page.press("Recipe");
  await page.holds("Name", "Straw B");
  await saved(page, 2);
  await page.press("Library");
  await act(page, "Delete", "Straw B");
  await page.sees("Nothing saved yet");
  await page.press("Recipe");
  await page.until(async () => assert.doesNotMatch(await stands(page), /Saved/));
  await page.press("Save");
  await page.press("Library");
  await lists(page, "Straw B on the Recipe page");
  assert.equal(await page.run(() => document.querySelectorAll(".lines .warn").length), 0, "one version only");
});

journey("opening another recipe can be taken back, with what was not saved", async (page) => {
  await shelve(page, "Straw A");
  await page.press("Recipe");
  await page.more("New recipe");
  await page.type("Name", "Half done");
  await page.type("Fibre moisture", "3.5");
  await page.press("Library");
  await page.press("Open Straw A");
  await page.sees("“Half done” was not saved; Undo brings it back.");
  await page.holds("Name", "Straw A");
  await page.press("Undo", { within: await page.css(".notice") });
  await page.holds("Name", "Half done");
  await page.holds("Fibre moisture", "3.5");
  await page.press("Save");
  await saved(page, 1);
  await page.press("Library");
  // What it took the place of is in the library as well, whatever becomes of Undo.
  await page.until(async () => {
    const [first, aside, last] = await names(page);
    assert.deepEqual([first, last], ["Half done on the Recipe page", "Straw A"]);
    assert.match(aside, /^Unsaved work, \d\d:\d\d: Half done$/);
  });
});

journey("a recipe goes out as a file and comes in again", async (page) => {
  await page.type("Board density", "655");
  await page.press("Save");
  await saved(page, 1);
  await page.press("Library");
  const backup = async () => page.run((e) => e.textContent, await page.css(".last-backup"));
  assert.equal(await backup(), "none yet");
  const { name, bytes } = await page.download(() => act(page, "Export", NAME));
  assert.equal(name, "example-wheat-straw-pmdi-15-mm.haulm.json");
  // One recipe in a file is no backup.
  assert.equal(await backup(), "none yet");
  await page.sees("1 recipe", { within: await page.css('[aria-labelledby="backup"]') });
  await page.download(() => page.press("Back up now"));
  await page.until(async () => assert.match(await backup(), /^\d{4}-\d\d-\d\d$/));
  await page.sees("0 recipes", { within: await page.css('[aria-labelledby="backup"]') });
  const file = JSON.parse(bytes);
  const [revision] = (await revisions(page)).map((key) => key.replace("haulm/revision/", ""));
  assert.deepEqual([file.haulm, file.version, file.name, file.revision], ["recipe", 1, NAME, revision]);
  assert.deepEqual(file.draft.plain.board_density, { text: "655", unit: "kg/m³" });
  assert.deepEqual(file.draft.liquids.map((liquid) => liquid.substance), ["pmdi", "wax_emulsion"]);

  const changed = JSON.stringify({ ...file, name: "From the other mill" });
  await withFiles({ [name]: bytes, "other.haulm.json": changed }, async (path) => {
    await page.upload("#import", path(name));
    await page.sees("is in the library already, unchanged. Nothing was added.");
    await page.upload("#import", path("other.haulm.json"));
    await page.sees("“From the other mill” imported.");
    await lists(page, "From the other mill", `${NAME} on the Recipe page`);
    await page.press("Open From the other mill");
    await page.holds("Board density", "655");
    await saved(page, 1);
  });
});

journey("a file that is none is refused in words that say what and where, and nothing changes", async (page) => {
  await shelve(page, "Straw A");
  const before = await revisions(page);
  const files = {
    "note.txt": "just a note",
    "short.json": '{"haulm": "recipe", "version": 1,\n "name": "x"',
    "foreign.json": '{"hello": "world"}',
    "newer.json": '{"haulm": "recipe", "version": 99}',
    "damaged.json": '{"haulm": "recipe", "version": 1, "draft": 5}',
    "huge.json": " ".repeat(1_000_001),
  };
  await withFiles(files, async (path) => {
    for (const [name, words] of [
      ["note.txt", "The file is no JSON text from line 1, byte 1 on."],
      ["short.json", "The file breaks off at line 2"],
      ["foreign.json", "The file is not from Haulm"],
      ["newer.json", "The file has format 99"],
      ["damaged.json", "The file is damaged at line 1"],
      ["huge.json", "The file has 1001 kB; at most 1000 kB are read."],
    ]) {
      await page.upload("#import", path(name));
      await page.sees(words);
    }
  });
  assert.deepEqual(await revisions(page), before);
  await lists(page, "Straw A on the Recipe page");
});

journey("a record that cannot be read is shown with its key and its reason, and kept untouched", async (page) => {
  await shelve(page, "Straw A", "Straw B");
  const key = (await revisions(page)).find((key) => key);
  const damaged = (await stored(page))[key].slice(0, 200);
  await page.putRecords([[key, damaged], ["haulm/revision/none", "?"]]);
  await page.reload();
  await page.sees("Records that cannot be read");
  await page.sees("The stored record breaks off at");
  await page.sees(key);
  await page.sees("The stored record has a key that names no record.");
  assert.equal((await names(page)).length, 1);
  await page.axe();
  const { bytes } = await page.download(() => page.press(`Export text ${key}`));
  assert.equal(bytes.toString(), damaged);
  assert.equal((await stored(page))[key], damaged);
  await page.screenshot("library-damaged");
});

const BARE = { allow: [/favicon/] };
journey("what was on the page and cannot be read is set aside, not written over", BARE, async (page) => {
  // From a page of the same store without the app, which keeps its own when it is left.
  await page.driver.get(page.server.url + "icon.svg");
  await page.run(() => (localStorage["haulm/draft"] = '{"haulm":"draft","version":1,'));
  await page.go("#library");
  await page.sees("The stored record breaks off");
  await page.press("Recipe");
  await page.type("Fibre moisture", "5");
  await page.until(async () => assert.match((await stored(page))["haulm/draft"], /"fibre_moisture":{"text":"5"/));
  await page.press("Library");
  await page.sees("Set aside");
  const aside = Object.entries(await stored(page)).filter(([key]) => key.startsWith("haulm/aside/"));
  assert.deepEqual(aside.map(([, text]) => text), ['{"haulm":"draft","version":1,']);
});

journey("two tabs: what one saves the other shows and goes on from", async (page) => {
  await shelve(page, "Straw A");
  await page.press("Recipe");
  const first = await page.driver.getWindowHandle();
  await page.driver.switchTo().newWindow("tab");
  await page.look({});
  await page.go();
  await page.holds("Name", "Straw A");
  await page.type("Fibre moisture", "4");
  await page.press("Save");
  await saved(page, 2);
  await page.driver.switchTo().window(first);
  await page.command("Page.bringToFront");
  // The first tab is on the newest revision already, and goes on from there.
  await saved(page, 2);
  await page.holds("Fibre moisture", "4");
  await page.type("Fibre moisture", "5");
  await page.press("Save");
  await saved(page, 3);
  await page.press("Library");
  await page.seesNot("2 versions");
  // Another tab clears everything: this one still has it, and says so.
  const second = (await page.driver.getAllWindowHandles()).find((handle) => handle !== first);
  await page.driver.switchTo().window(second);
  await page.forget();
  await page.driver.switchTo().window(first);
  await page.run(() => dispatchEvent(new Event("focus")));
  await page.sees("3 records that this tab knows are gone");
  await page.press("Restore them");
  await page.sees("3 records restored.");
  await page.until(async () => assert.equal((await revisions(page)).length, 3));
});

for (const [width, height, touch] of [[390, 844, true], [820, 1180, true], [1440, 900, false]]) {
  journey(`the library is clean to axe at ${width} px, empty and filled`, { width, height, touch, hash: "#library" }, async (page) => {
    await page.sees("Nothing saved yet");
    await page.axe();
    await page.press("Recipe");
    await page.press("Save");
    await shelve(page, "Straw A", "Straw B");
    await page.press("Close");
    await act(page, "Rename", "Straw A");
    await page.field("New name");
    await page.screenshot(`library-${width}-rename`, { full: true });
    await act(page, "History", "Straw B");
    await page.looksRight(`library-${width}`);
  });
}

journey("the library works by keyboard alone", { hash: "#library" }, async (page) => {
  await page.press("Recipe");
  await shelve(page, "Straw A", "Straw B");
  await page.keys("/");
  const focused = () => page.run(() => document.activeElement.getAttribute("aria-label") ?? document.activeElement.id);
  const tabTo = async (wanted) => {
    for (let i = 0; i < 60; i++) {
      if ((await focused()) === wanted) return;
      await page.keys(Key.TAB);
    }
    assert.fail(`Tab never came to ${wanted}`);
  };
  await tabTo("Filter recipes");
  await page.keys("straw b");
  await lists(page, "Straw B on the Recipe page");
  await tabTo("More for Straw B");
  await page.keys(Key.ENTER);
  await tabTo("Delete Straw B");
  await page.keys(Key.ENTER);
  await page.until(async () => assert.equal(await focused(), "notice-undo"));
  await page.keys(Key.ENTER);
  await lists(page, "Straw B on the Recipe page");
  await tabTo("Filter recipes");
  await tabTo("More for Straw B");
  await page.keys(Key.ENTER);
  await tabTo("Rename Straw B");
  await page.keys(Key.SPACE);
  await page.until(async () => assert.match(await focused(), /^rename-/));
  await page.keys(Key.ESCAPE);
  await page.until(async () => assert.equal(await focused(), "More for Straw B"));
  // Esc closes what was opened, and the focus stays at what opened it.
  await page.keys(Key.ESCAPE);
  assert.equal(await focused(), "More for Straw B");
  assert.equal(await page.run(() => document.querySelectorAll("tr.details").length), 0);
  await lists(page, "Straw B on the Recipe page");
});

journey("only released recipes are listed on demand, and a long name is clamped", async (page) => {
  await shelve(page, "Straw A", `Straw with a name ${"that goes on and on ".repeat(8)}`.trim());
  await act(page, "Release for the line", "Straw A");
  await page.sees("is released for the line");
  await page.press("Released", { within: await page.byRole("group", "Show") });
  await lists(page, "Straw A");
  await page.press("All", { within: await page.byRole("group", "Show") });
  await page.until(async () => assert.equal((await names(page)).length, 2));
  const height = await page.run(() => document.querySelector(".lines .open-recipe").clientHeight);
  assert.ok(height < 60, `${height} px`);
});

journey("trials are listed with their recipe, opened, deleted and put back; the tab has an address of its own", { hash: "#bench" }, async (page) => {
  await page.type("Trial name", "First boards");
  await page.press("Save trial");
  await page.until(async () => assert.equal(Object.keys(await page.records()).filter((key) => key.startsWith("haulm/trial/")).length, 1));
  await page.go("#trials");
  const trials = () => page.run(() => [...document.querySelectorAll(".trial-lines .name")].map((name) => name.textContent.trim()));
  await page.until(async () => assert.deepEqual(await trials(), ["First boards"]));
  await page.sees("1 trial");
  await page.axe();
  await page.press("Delete First boards");
  await page.sees("No trials yet.");
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.textContent), "Undo"));
  await page.keys(Key.ENTER);
  await page.until(async () => assert.deepEqual(await trials(), ["First boards"]));
  await page.press("Open First boards");
  await page.holds("Trial name", "First boards");
  // Back and forth between the tabs by their addresses.
  await page.go("#trials");
  await page.press("Binder systems");
  assert.equal(await page.run(() => location.hash), "#systems");
  await page.driver.navigate().back();
  await page.until(async () => assert.deepEqual(await trials(), ["First boards"]));
});
