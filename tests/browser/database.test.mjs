// The database missing, hanging, deleted while the app is open, local storage full or blocked: what is told as saved is saved, the
// work stays on the page, and each message is gone once it is no longer true.

import assert from "node:assert/strict";
import { journey } from "./harness.mjs";
import { drafted as inDatabase } from "./inpage.mjs";
import { holds, put } from "./pages.mjs";

const stands = async (page) => page.run((e) => e.textContent, await page.css("#save-state"));
const drafted = (page, text) => page.until(() => page.run(inDatabase, text));
const revisions = async (page) => Object.keys(await page.records()).filter((key) => key.startsWith("haulm/revision/"));

/** Runs a script in every page before the app. */
const addScript = (page, source) => page.command("Page.addScriptToEvaluateOnNewDocument", { source });

/** From now on, or from the next page on, notes whenever something is told that matches, however briefly. */
const WATCH = `window.watchTold = (pattern) => {
  window.everTold = [];
  new MutationObserver(() => {
    for (const told of document.querySelectorAll(".trouble, .notice.shown, #save-state")) {
      if (pattern.test(told.textContent)) window.everTold.push(told.textContent);
    }
  }).observe(document, { subtree: true, childList: true, characterData: true });
};`;
const everTold = (page) => page.run(() => window.everTold);

journey("without a database that is said at once, nothing is told as saved, and everything goes to a file", async (page) => {
  await addScript(page, `${WATCH} watchTold(/^Saved|Saved at/); Object.defineProperty(window, "indexedDB", { get() { return undefined; } });`);
  await page.go();
  await page.sees("The browser does not let Haulm keep anything.");
  await page.type("Board density", "705");
  await page.press("Save");
  // It is in memory, and in the file that is offered.
  const { bytes } = await page.download(() => page.press("Export everything"));
  assert.equal(JSON.parse(bytes).records[0].draft.plain.board_density.text, "705");
  await page.axe();
  assert.deepEqual(await everTold(page), []);
});

journey("a database that does not answer is told, the work stays, and it is saved when it answers", async (page) => {
  // Requests to open it are held back until the page lets them through.
  await addScript(page, `${WATCH} watchTold(/^Saved|Saved at/); {
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
  // After three seconds of a machine with nothing else to do (tests/record/silence.rs); a busy one is given longer.
  await page.sees("The browser's database does not answer.", { wait: 90_000 });
  console.log(`told ${Date.now() - began} ms after the app was there`);
  await page.type("Board density", "706");
  await page.press("Save");
  // Until now nothing was told as saved, and the boxes hold what was typed.
  const moisture = await page.run(holds, "field-fibre_moisture");
  await page.run(put, "field-fibre_moisture", "7.25");
  await page.until(async () => assert.match(await page.run(() => localStorage["haulm/draft"]), /7\.25/));
  assert.equal(await page.run(holds, "field-board_density"), "706");
  const before = await page.run(() => {
    const told = [...window.everTold];
    window.letThrough();
    return told;
  });
  assert.deepEqual(before, []);
  await page.seesNot("The browser's database does not answer.", { wait: 60_000 });
  await page.until(async () => assert.equal((await revisions(page)).length, 1));
  await page.run(put, "field-fibre_moisture", moisture);
  await page.until(async () => assert.match(await stands(page), /Saved at/));
});

journey("an answer of the database that comes after the wait was given up does no harm", async (page) => {
  // From now on handlers hear only when the page lets them, those that are still there by then.
  await page.run(() => {
    window.held = [];
    window.letThrough = () => {
      window.letThrough = null;
      window.held.splice(0).forEach((hear) => hear());
    };
    for (const [of, name] of [[IDBTransaction, "complete"], [IDBTransaction, "abort"], [IDBRequest, "success"]]) {
      const handlers = new WeakMap();
      Object.defineProperty(of.prototype, `on${name}`, {
        get() {
          return handlers.get(this) ?? null;
        },
        set(handler) {
          if (!handlers.has(this)) {
            this.addEventListener(name, (event) => {
              const hear = () => handlers.get(this)?.call(this, event);
              if (window.letThrough) window.held.push(hear);
              else hear();
            });
          }
          handlers.set(this, handler);
        },
      });
    }
  });
  await page.press("Save");
  await page.sees("The browser's database does not answer.", { wait: 90_000 });
  assert.ok((await page.run(() => window.held.length)) > 0, "an answer was held back");
  await page.run(() => window.letThrough());
  // The next try is answered in time.
  await page.seesNot("The browser's database does not answer.", { wait: 60_000 });
  await page.until(async () => assert.match(await stands(page), /Saved at/));
  assert.deepEqual(await page.complaints(), []);
});

journey("a page that is busy for seconds does not take that for a database that does not answer", { timeout: 240_000 }, async (page) => {
  await page.driver.executeScript(`${WATCH} watchTold(/does not answer/);`);
  const took = await page.driver.executeAsyncScript((done) => {
    const began = performance.now();
    const asked = indexedDB.open("haulm");
    asked.onsuccess = () => {
      // Nothing else gets at the records while this step goes on asking.
      let pieces = 0;
      const step = asked.result.transaction("records", "readwrite");
      const ask = () => (step.objectStore("records").count().onsuccess = () => pieces < 12 ? ask() : asked.result.close());
      ask();
      document.querySelector(".title .primary").click();
      // Half a second of work at a time, six seconds in all.
      const work = () => {
        const end = performance.now() + 500;
        while (performance.now() < end);
        pieces += 1;
        if (pieces < 12) setTimeout(work);
        else done(performance.now() - began);
      };
      setTimeout(work);
    };
  });
  assert.ok(took > 6000, `busy for ${took} ms`);
  await page.until(async () => assert.match(await stands(page), /Saved at/));
  assert.deepEqual(await everTold(page), []);
  assert.equal((await revisions(page)).length, 1);
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
    await page.press("Restore them");
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
  await drafted(page, "7.75");
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
  await addScript(page, 'Object.defineProperty(window, "localStorage", { get() { throw new DOMException("no", "SecurityError"); } });');
  await page.go();
  await page.sees("Local storage is blocked.");
  await page.type("Board density", "707");
  await page.press("Save");
  await page.until(async () => assert.match(await stands(page), /Saved at/));
  await drafted(page, "707");
  await page.go();
  await page.until(async () => assert.equal(await page.run(holds, "field-board_density"), "707"));
  await page.until(async () => assert.match(await stands(page), /Saved at/));
});
