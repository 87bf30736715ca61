// A library of 2 000 recipes: opened, searched and sorted in time.

import assert from "node:assert/strict";
import { test } from "node:test";
import { against, LIBRARY } from "../budgets.mjs";
import { open, pause, until } from "../harness.mjs";
import { median, told } from "../measure.mjs";
import { sealed } from "../sealed.mjs";

const COUNT = 2000;
const BINDERS = ["pMDI", "UF", "MUF"];

/** Minutes before the example that a recipe was saved: each once, in no order of the names. */
const age = (n) => ((n * 7919 + 5) % COUNT) + 1;
const aged = (minutes) => Array.from({ length: COUNT }, (_, n) => n).find((n) => age(n) === minutes);

/** `COUNT` recipes like `text`, each with a name, a time and a thickness of its own: [key, text] each. */
function recipes(text) {
  return Array.from({ length: COUNT }, (_, n) => {
    const record = JSON.parse(text);
    record.name = `Recipe ${n}, ${BINDERS[n % 3]} ${9 + (n % 22)} mm`;
    record.saved_at -= age(n) * 60_000;
    record.draft.plain.thickness.text = String(9 + (n % 22));
    return sealed(record);
  });
}

/** In the page: does `act`, and gives the milliseconds until what `ready` waits for has been through a frame. */
function timed(act, ready, done) {
  const began = performance.now();
  const end = () =>
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => done(performance.now() - began);
      port2.postMessage(0);
    });
  const good = new Function(`return (${ready})`);
  const watch = new MutationObserver(() => {
    if (!good()) return;
    watch.disconnect();
    end();
  });
  watch.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
  new Function(act)();
}

const type = (text) =>
  `const box = document.getElementById("library-search"); box.value = ${JSON.stringify(text)}; box.dispatchEvent(new Event("input", { bubbles: true }));`;
const sort = (key) =>
  `document.getElementById("sort-${key}").click();`;
const second = (name) => `document.querySelectorAll(".lines .name")[1]?.textContent.trim().startsWith(${JSON.stringify(name)})`;
const counts = (words) => `document.querySelector(".count")?.textContent.replace(/\\s+/g, " ") === ${JSON.stringify(words)}`;

test(`a library of ${COUNT} recipes`, { timeout: 180_000 }, async () => {
  const page = await open({ record: false });
  try {
    await page.press("Save");
    const text = await until(async () => Object.entries(await page.records()).find(([key]) => key.startsWith("haulm/revision/"))?.[1] ?? null);
    const made = recipes(text);
    for (let at = 0; at < COUNT; at += 200) {
      await page.putRecords(made.slice(at, at + 200));
    }
    const time = (act, ready) => page.driver.executeAsyncScript(timed, act, ready);
    const opened = [];
    const searched = [];
    const ordered = [];
    for (let round = 0; round < 5; round++) {
      await page.go("#recipe");
      // Long enough for the records to be read, as they are when somebody has looked at the recipe first.
      await pause(3000);
      opened.push(await time('document.querySelector(\'a[href="#library"]\').click()', counts("2001 recipes")));
      for (const [words, found] of [["muf", "666 of 2001 recipes"], ["recipe 1234", "1 of 2001 recipes"], ["", "2001 recipes"]]) {
        searched.push(await time(type(words), counts(found)));
      }
      for (const [key, n] of [["name", 0], ["name", COUNT - 2], ["saved", aged(1)], ["saved", aged(COUNT - 1)]]) {
        ordered.push(await time(sort(key), second(`Recipe ${n},`)));
      }
    }
    for (const [name, values] of Object.entries({ open: opened, search: searched, sort: ordered })) {
      const { words, held } = against({ ...LIBRARY, what: `${LIBRARY.what}: ${name}` }, median(values));
      console.log(words);
      console.log(told(`  ${name}`, values));
      assert.ok(held, words);
    }
  } finally {
    await page.close();
  }
});
