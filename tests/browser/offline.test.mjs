// With no network: the app opens and works, and a newer version waits to be asked for.

import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { cp, mkdtemp, readFile, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { DIST, journey, open } from "./harness.mjs";

/** The app's files are kept, and the worker answers for this page. */
const kept = (page) => page.until(() => page.run(() => navigator.serviceWorker.controller !== null));
const caches = (page) => page.run(async () => (await window.caches.keys()).map((key) => key.split(" ").at(-1)));
const density = async (page) => page.run((e) => e.value, await page.css('[data-field="board_density"]'));

test("the worker's list is every file of the build but itself, each with its hash", async () => {
  const list = new Function(`return ${(await readFile(join(DIST, "offline.js"), "utf8")).match(/FILES = (\[.*\]);/)[1]}`)();
  const names = (await readdir(DIST, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile()).map((entry) => entry.name);
  // A language is in a list of its own (languages.test.mjs).
  assert.deepEqual(list.map(([name]) => name).sort(), names.filter((name) => name !== "offline.js" && !name.endsWith(".ftl")).sort());
  for (const [name, hash] of list)
    assert.equal(createHash("sha256").update(await readFile(join(DIST, name))).digest("hex"), hash, name);
});

journey("with the server gone it opens, works, keeps and opens again", async (page) => {
  await kept(page);
  await page.server.close();
  await page.reload();
  await page.type("Board density", "702");
  await page.press("Save");
  await page.until(async () => assert.match(await page.run((e) => e.textContent, await page.css("#save-state")), /^Revision 1 · Saved/));
  for (const name of ["Line", "Compare", "Library", "Recipe"]) await page.press(name);
  await page.reload();
  assert.equal(await density(page), "702");
});

test("a newer version is told, waits, and is used when asked for", { timeout: 300_000 }, async () => {
  const folder = await mkdtemp(join(tmpdir(), "haulm-newer-"));
  await cp(DIST, folder, { recursive: true });
  const page = await open({ dir: folder });
  try {
    await kept(page);
    const [before] = await caches(page);
    const list = await readFile(join(folder, "offline.js"), "utf8");
    const start = await readFile(join(folder, "start.js"), "utf8");
    const sum = (text) => createHash("sha256").update(text).digest("hex");
    assert.ok(list.includes(sum(start)), "the list has the hash of start.js");

    // A host in the middle of an update: the list is new, a file still old. Nothing is taken over.
    const newer = `${start}\n// newer`;
    await writeFile(join(folder, "offline.js"), list.replace(sum(start), sum(newer)).replaceAll(before, "newer-version"));
    await page.reload();
    await page.run(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      // Refused where the browser tells that at once, else the worker that could not be set up is dropped.
      await registration.update().catch(() => {});
    });
    const worker = (state) => page.run(async (state) => (await navigator.serviceWorker.getRegistration())[state]?.state ?? "none", state);
    await page.until(async () => assert.equal(await worker("installing"), "none"));
    assert.equal(await worker("waiting"), "none");
    assert.deepEqual(await caches(page), [before]);

    await writeFile(join(folder, "start.js"), newer);
    await page.type("Board density", "703");
    await page.reload();
    await page.sees("A newer version of Haulm is here.");
    assert.deepEqual((await caches(page)).sort(), [before, "newer-version"].sort(), "it waits beside the one in use");
    await page.axe();
    await page.press("Not now");
    await page.seesNot("A newer version of Haulm is here.");
    await page.reload();
    await page.sees("A newer version of Haulm is here.");

    // What cannot be kept would be lost on the way to the newer version.
    await page.run(() => {
      // Neither home of the open documents takes anything.
      Storage.prototype.setItem = IDBObjectStore.prototype.put = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    });
    await page.type("Board density", "709");
    await page.press("Use the newer version");
    await page.byRole("button", "Save the recipe to a file");
    // The page decides before it offers the file, and asks the worker in the same step or not at all.
    assert.equal(await worker("waiting"), "installed");
    assert.deepEqual((await caches(page)).sort(), [before, "newer-version"].sort());
    assert.equal(await density(page), "709");
    await page.reload();
    await page.sees("A newer version of Haulm is here.");
    await page.press("Use the newer version");
    await page.until(async () => assert.deepEqual(await caches(page), ["newer-version"]));
    await page.until(async () => assert.equal(await density(page), "703"));
  } finally {
    await page.close();
    await rm(folder, { recursive: true, force: true });
  }
});

test("a version that does not start gives way to the next one by itself", { timeout: 300_000 }, async () => {
  const folder = await mkdtemp(join(tmpdir(), "haulm-broken-"));
  await cp(DIST, folder, { recursive: true });
  const list = await readFile(join(folder, "offline.js"), "utf8");
  const program = await readFile(join(folder, "haulm_bg.wasm"));
  const sum = (bytes) => createHash("sha256").update(bytes).digest("hex");
  await writeFile(join(folder, "haulm_bg.wasm"), "no program");
  await writeFile(join(folder, "offline.js"), list.replace(sum(program), sum("no program")).replace(/NAME = "[^"]*"/, 'NAME = "broken"'));
  const page = await open({ dir: folder, load: false });
  try {
    await page.driver.get(page.server.url);
    await page.sees("Haulm did not start");
    await kept(page);
    await writeFile(join(folder, "haulm_bg.wasm"), program);
    await writeFile(join(folder, "offline.js"), list);
    await page.run(async () => (await navigator.serviceWorker.getRegistration()).update());
    await page.started();
    assert.match(await density(page), /^\d+$/);
  } finally {
    await page.close();
    await rm(folder, { recursive: true, force: true });
  }
});

journey("it can be installed, and opens by the page's other name and with a query", async (page) => {
  await kept(page);
  const { errors, data } = await page.command("Page.getAppManifest");
  assert.deepEqual(errors, []);
  for (const { src } of JSON.parse(data).icons) assert.equal(await page.run(async (path) => (await fetch(path)).status, src), 200, src);
  assert.deepEqual((await page.command("Page.getInstallabilityErrors")).installabilityErrors, []);
  await page.server.close();
  for (const name of ["index.html", "?from=a-note"]) {
    await page.driver.get(`${page.server.url}${name}#library`);
    await page.started();
    await page.byRole("heading", "Library");
  }
});
