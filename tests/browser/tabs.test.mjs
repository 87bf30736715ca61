// Two and three tabs on one page: what is typed in different boxes stays, of one box the later entry, and every tab sees it.

import assert from "node:assert/strict";
import { journey, pause, until } from "./harness.mjs";
import { PAGES, enter, holds, put, show } from "./pages.mjs";

/** Opens so many tabs at a page; gives their handles. */
async function tabs(page, count, of) {
  const handles = [await page.driver.getWindowHandle()];
  await enter(page, of);
  while (handles.length < count) {
    await page.driver.switchTo().newWindow("tab");
    await page.look({});
    await enter(page, of);
    handles.push(await page.driver.getWindowHandle());
  }
  return handles;
}

async function closeOthers(page, [first, ...others]) {
  for (const handle of others) {
    await page.driver.switchTo().window(handle);
    await page.driver.close();
  }
  await page.driver.switchTo().window(first);
}

/** Whether every tab shows these texts in these boxes. */
async function everywhere(page, handles, boxes, texts) {
  const wrong = [];
  for (const handle of handles) {
    await page.driver.switchTo().window(handle);
    try {
      await until(async () => {
        for (const [at, box] of boxes.entries()) assert.equal(await page.run(holds, box), texts[at]);
      });
    } catch (cause) {
      wrong.push(cause.message.split("\n").join(" "));
    }
  }
  return wrong;
}

journey("tabs merge what is typed, on every page", { timeout: 900_000 }, async (page) => {
  const table = [];
  let number = 0;
  const next = () => String(200 + (number += 1));
  for (const of of PAGES) {
    for (const count of [2, 3]) {
      const handles = await tabs(page, count, of);
      await page.driver.switchTo().window(handles[0]);
      const all = await show(page, of);
      const boxes = [...new Set(all)].slice(0, count);
      // In different boxes, one tab 200 ms after the other.
      const texts = [];
      for (const [at, box] of boxes.entries()) {
        await page.driver.switchTo().window(handles[at]);
        texts.push(next());
        await page.run(put, box, texts[at]);
        await pause(200);
      }
      let lost = await everywhere(page, handles, boxes, texts);
      table.push({ page: of.name, tabs: count, boxes: "different", tried: boxes.length, lost: lost.length });
      if (lost.length) console.log(of.name, count, lost);
      // In the same box: the later one.
      let last;
      for (const handle of handles) {
        await page.driver.switchTo().window(handle);
        last = next();
        await page.run(put, boxes[0], last);
        await pause(200);
      }
      lost = await everywhere(page, handles, [boxes[0]], [last]);
      table.push({ page: of.name, tabs: count, boxes: "same", tried: count, lost: lost.length });
      if (lost.length) console.log(of.name, count, lost);
      // And all of it is there after a reload.
      await closeOthers(page, handles);
      await page.reload();
      await show(page, of);
      lost = await everywhere(page, handles.slice(0, 1), boxes, [last, ...texts.slice(1)]);
      table.push({ page: of.name, tabs: count, boxes: "after a reload", tried: boxes.length, lost: lost.length });
      if (lost.length) console.log(of.name, count, lost);
    }
  }
  console.table(table);
  assert.deepEqual(table.filter(({ lost }) => lost > 0), []);
});

journey("a tab that nothing is typed in never writes over another one's work", async (page) => {
  const handles = await tabs(page, 2, PAGES.find(({ name }) => name === "Recipe"));
  await page.driver.switchTo().window(handles[0]);
  await page.run(put, "field-board_density", "711");
  await page.until(async () => assert.match(await page.run(() => localStorage["haulm/draft"] ?? ""), /711/));
  // The other one is left without a key typed, as long as it likes.
  await page.driver.switchTo().window(handles[1]);
  await page.reload();
  await page.run(() => dispatchEvent(new Event("pagehide")));
  assert.match(await page.run(() => localStorage["haulm/draft"]), /711/);
  assert.equal(await page.run(holds, "field-board_density"), "711");
});
