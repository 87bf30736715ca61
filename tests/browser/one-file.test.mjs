// All of the app as one file, opened from a disk (`file:`) with the server gone: in each engine it runs and keeps what is saved.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { before, test } from "node:test";
import { fileURLToPath, pathToFileURL } from "node:url";
import { open } from "./harness.mjs";

const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), "../..");
const FILE = pathToFileURL(join(ROOT, "target/one-file/haulm.html")).href;

before(() => execFileSync(process.execPath, [join(ROOT, "tests/tool/one-file.mjs")], { stdio: "pipe" }));

const stands = async (page) => page.run((e) => e.textContent, await page.css("#save-state"));
const saved = (page) => page.until(async () => assert.match(await stands(page), /^Revision 1 · Saved/));
const density = async (page) => page.run((e) => e.value, await page.css('[data-field="board_density"]'));
const revisions = async (page) => Object.keys(await page.records()).filter((key) => key.startsWith("haulm/revision/"));

async function start(page) {
  await page.driver.get(FILE);
  await page.started();
}

/** The file in an engine, with nothing to answer a request. */
async function fromDisk(options, act) {
  const page = await open({ ...options, load: false });
  try {
    await page.server.close();
    await start(page);
    await act(page);
    await page.assertClean();
  } finally {
    await page.close();
  }
}

for (const engine of ["chromium", "firefox", "webkit"]) {
  test(`${engine}: one file from a disk runs and keeps a recipe and what is typed`, { timeout: 300_000 }, () =>
    fromDisk({ engine }, async (page) => {
      await page.type("Board density", "704");
      await page.press("Save");
      await saved(page);
      await page.type("Board density", "705");
      await page.until(async () => assert.match(await page.run(() => localStorage["haulm/draft"] ?? ""), /705/));
      await page.driver.navigate().refresh();
      await page.started();
      await page.until(async () => assert.equal(await density(page), "705"));
      // Nothing says that this browser keeps nothing, and it is true.
      assert.equal(await page.run(() => document.querySelector(".trouble").textContent), "");
      assert.equal((await revisions(page)).length, 1);
      await page.press("Library");
      await page.sees("1 recipe");
      // Pages from a disk share one store: every key says whose it is.
      assert.equal(await page.run(() => Object.keys(localStorage).every((key) => key.startsWith("haulm/"))), true);
    }));
}

test("chromium: what one file from a disk has saved is there after the browser was closed", { timeout: 300_000 }, async () => {
  const profile = await mkdtemp(join(tmpdir(), "haulm-profile-"));
  try {
    const on = { engine: "chromium", profile };
    await fromDisk(on, async (page) => {
      await page.type("Board density", "704");
      await page.press("Save");
      await saved(page);
    });
    await fromDisk(on, async (page) => {
      await page.until(async () => assert.equal(await density(page), "704"));
      await saved(page);
      assert.equal((await revisions(page)).length, 1);
    });
  } finally {
    await rm(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
  }
});

// A browser may refuse a page from a disk its stores; none of the three does as it comes.
test("one file from a disk says at once where the browser will keep nothing, and offers a file", { timeout: 300_000 }, async () => {
  const page = await open({ engine: "chromium", load: false });
  try {
    await page.server.close();
    await page.command("Page.addScriptToEvaluateOnNewDocument", {
      source: 'for (const store of ["indexedDB", "localStorage"]) Object.defineProperty(window, store, { get() { throw new DOMException("no", "SecurityError"); } });',
    });
    await start(page);
    await page.sees("The browser does not let Haulm keep anything.");
    await page.type("Board density", "706");
    const { bytes } = await page.download(() => page.more("Export"));
    assert.equal(JSON.parse(bytes).draft.plain.board_density.text, "706");
  } finally {
    await page.close();
  }
});
