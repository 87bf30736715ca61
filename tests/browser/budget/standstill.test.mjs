// How long the page does not answer while it is busy: draws are made in slices, and a file that is no use is put aside soon.

import assert from "node:assert/strict";
import { test } from "node:test";
import { against, DRAWS, MANY_RECORDS, REFUSAL } from "../budgets.mjs";
import { open, until } from "../harness.mjs";
import { withUselessFiles } from "../useless.mjs";

function hold(budget, value) {
  const { words, held } = against(budget, value);
  console.log(words);
  assert.ok(held, words);
}

/** The longest time that the page did not answer, in milliseconds, while `act` ran. */
async function longest(page, act) {
  await page.run(() => {
    window.longest = 0;
    let last = performance.now();
    window.beat = setInterval(() => {
      window.longest = Math.max(window.longest, performance.now() - last);
      last = performance.now();
    }, 5);
  });
  await act();
  return page.run(() => {
    clearInterval(window.beat);
    return window.longest;
  });
}

test("100 000 draws never hold the page up", async () => {
  const page = await open({ record: false, hash: "#compare" });
  try {
    await page.run(() => {
      window.tasks = [0];
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) window.tasks.push(entry.duration);
      }).observe({ entryTypes: ["longtask"] });
    });
    await page.press("Uncertainty", { within: await page.css(".sections") });
    await page.press("Run Monte Carlo");
    await until(() => page.run(() => document.querySelector("[data-stage]").dataset.stage === "done"), 60_000);
    hold(DRAWS, Math.max(...(await page.run(() => window.tasks))));
  } finally {
    await page.close();
  }
});

test("files that are refused do not hold the page up", () =>
  withUselessFiles(async ({ huge, deep, wide }) => {
    const page = await open({ record: false, hash: "#library" });
    try {
      for (const [{ path, words }, budget] of [[huge, REFUSAL], [deep, REFUSAL], [wide, MANY_RECORDS]]) {
        const pause = await longest(page, async () => {
          await page.upload("#import", path);
          await page.sees(words, { wait: 60_000 });
        });
        hold(budget, pause);
      }
    } finally {
      await page.close();
    }
  }));
