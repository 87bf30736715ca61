// What is typed on any page is there after a reload, however soon that comes.

import assert from "node:assert/strict";
import { journey, until } from "./harness.mjs";
import { PAGES, enter, holds, show } from "./pages.mjs";

const DELAYS = [0, 100, 350];

journey("a reload loses nothing on any page", { timeout: 600_000 }, async (page) => {
  const table = [];
  let number = 0;
  for (const of of PAGES) {
    const [first, second] = await enter(page, of);
    for (const delay of DELAYS) {
      let lost = 0;
      for (const box of new Set([first, second])) {
        number += 1;
        const text = String(100 + number);
        await page.run((id, text, delay) => {
          window.old = true;
          const box = document.getElementById(id);
          box.value = text;
          box.dispatchEvent(new Event("input", { bubbles: true }));
          if (delay) setTimeout(() => location.reload(), delay);
          else location.reload();
        }, box, text, delay);
        await until(async () => assert.equal(await page.run(() => window.old === undefined), true), 20_000);
        await page.started();
        await show(page, of);
        if ((await page.run(holds, box)) !== text) lost += 1;
      }
      table.push({ page: of.name, "reload after, ms": delay, tried: new Set([first, second]).size, lost });
    }
  }
  console.table(table);
  assert.deepEqual(table.filter(({ lost }) => lost > 0), []);
});
