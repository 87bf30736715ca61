// The database missing, hanging, deleted while the app is open, local storage full or blocked: what is told as saved is saved, the
// work stays on the page, and each message is gone once it is no longer true.

import assert from "node:assert/strict";
import { journey, pause } from "./harness.mjs";
import { holds, put } from "./pages.mjs";

const stands = async (page) => page.run((e) => e.textContent, await page.css("#save-state"));
const told = (page) => page.run(() => document.querySelector(".notice.shown")?.textContent ?? "");
const revisions = async (page) => Object.keys(await page.records()).filter((key) => key.startsWith("haulm/revision/"));

/** Runs a script in every page before the app. */
const before = (page, source) => page.command("Page.addScriptToEvaluateOnNewDocument", { source });

journey("without a database that is said at once, nothing is told as saved, and everything goes to a file", async (page) => {
  await before(page, 'Object.defineProperty(window, "indexedDB", { get() { return undefined; } });');
  await page.go();
  await page.sees("The browser does not let Haulm keep anything.");
  await page.type("Board density", "705");
  await page.press("Save");
  await pause(500);
  assert.doesNotMatch(await stands(page), /Saved at/);
  assert.doesNotMatch(await told(page), /^Saved/);
  // It is in memory, and in the file that is offered.
  const { bytes } = await page.download(() => page.press("Save everything to a file"));
  assert.equal(JSON.parse(bytes).records[0].draft.plain.board_density.text, "705");
  await page.axe();
});

journey("a database that does not answer is told within three seconds, the work stays, and it is saved when it answers", async (page) => {
  // Requests to open it are held back until the page lets them through.
  await before(page, `{
    const open = IDBFactory.prototype.open;
    let through = false;
    IDBFactory.prototype.open = function (...all) {
      if (through) return open.apply(this, all);
      return new EventTarget();
    };
    window.letThrough = () => (through = true);
  }`);
  await page.go();
  const began = Date.now();
  await page.sees("The browser's database does not answer.", { wait: 6000 });
  console.log(`told ${Date.now() - began} ms after the app was there`);
  await page.type("Board density", "706");
  await page.press("Save");
  await pause(500);
  assert.doesNotMatch(await told(page), /^Saved/);
  assert.doesNotMatch(await stands(page), /Saved at/);
  assert.equal(await page.run(holds, "field-board_density"), "706");
  await page.run(() => window.letThrough());
  await page.seesNot("The browser's database does not answer.", { wait: 15_000 });
  await page.until(async () => assert.match(await stands(page), /Saved at/));
  assert.equal((await revisions(page)).length, 1);
});

journey("an answer of the database that comes after the wait was given up does no harm", async (page) => {
  // From now on handlers hear 5 s late, those that are still there by then.
  await page.run(() => {
    for (const [of, name] of [[IDBTransaction, "complete"], [IDBTransaction, "abort"], [IDBRequest, "success"]]) {
      const handlers = new WeakMap();
      Object.defineProperty(of.prototype, `on${name}`, {
        get() {
          return handlers.get(this) ?? null;
        },
        set(handler) {
          if (!handlers.has(this)) {
            this.addEventListener(name, (event) => setTimeout(() => {
              window.late = (window.late ?? 0) + 1;
              handlers.get(this)?.call(this, event);
            }, 5000));
          }
          handlers.set(this, handler);
        },
      });
    }
  });
  await page.press("Save");
  await page.sees("The browser's database does not answer.", { wait: 6000 });
  await page.until(async () => (await page.run(() => window.late ?? 0)) > 0);
  await pause(500);
  assert.deepEqual(await page.complaints(), []);
});

journey("a database deleted while the app is open takes what is saved afterwards", async (page) => {
  await page.press("Save");
  await page.sees("Saved at");
  assert.equal((await revisions(page)).length, 1);
  for (const [time, density] of [[1, "710"], [2, "711"]]) {
    await page.run(() => new Promise((done, fail) => {
      const asked = indexedDB.deleteDatabase("haulm");
      asked.onsuccess = done;
      asked.onerror = asked.onblocked = () => fail(new Error("not deleted"));
    }));
    await page.type("Board density", density);
    await page.press("Save");
    await page.until(async () => assert.match(await stands(page), new RegExp(`^Revision ${time + 1} · Saved at`)));
    // Told as saved: it is there.
    const there = Object.values(await page.records()).map((text) => JSON.parse(text).draft.plain.board_density.text);
    assert.ok(there.includes(density), `${there}`);
    // And what went is told, and comes back.
    await page.sees("that this tab knows are gone");
    await page.press("Write them back");
    await page.seesNot("that this tab knows are gone");
    await page.until(async () => assert.equal((await revisions(page)).length, time + 1));
  }
});

journey("with local storage full the draft goes to the database, and the warning stays until that is over", { timeout: 120_000 }, async (page) => {
  await page.run(() => {
    let text = "x".repeat(1 << 20);
    for (let i = 0; text.length; i++) {
      try {
        localStorage[`filler/${i}`] = text;
      } catch {
        text = text.slice(0, text.length >> 1);
      }
    }
  });
  await page.type("Fibre moisture", "7.75");
  await page.sees("Local storage is full.");
  await pause(500);
  await page.reload();
  await page.until(async () => assert.equal(await page.run(holds, "field-fibre_moisture"), "7.75"));
  await page.run(put, "field-fibre_moisture", "7.5");
  await page.sees("Local storage is full.");
  // The database takes a save all the same, and the warning is still true.
  await page.press("Save");
  await page.until(async () => assert.match(await stands(page), /Saved at/));
  await page.sees("Local storage is full.");
  assert.equal((await revisions(page)).length, 1);
  await page.run(() => Object.keys(localStorage).filter((key) => key.startsWith("filler/")).forEach((key) => localStorage.removeItem(key)));
  await page.run(() => dispatchEvent(new Event("focus")));
  await page.seesNot("Local storage is full.");
  assert.match(await page.run(() => localStorage["haulm/draft"]), /7\.5/);
});

journey("local storage that is blocked is told, and records are saved all the same", async (page) => {
  await before(page, 'Object.defineProperty(window, "localStorage", { get() { throw new DOMException("no", "SecurityError"); } });');
  await page.go();
  await page.sees("Local storage is blocked.");
  await page.type("Board density", "707");
  await page.press("Save");
  await page.until(async () => assert.match(await stands(page), /Saved at/));
  await pause(300);
  await page.go();
  await page.until(async () => assert.equal(await page.run(holds, "field-board_density"), "707"));
  await page.until(async () => assert.match(await stands(page), /Saved at/));
});
