// What journeys on the bench share.

import assert from "node:assert/strict";

/** Types into a box by its key. */
export const field = async (page, key, text) => page.type(await page.css(`[data-field="${key}"]`), text);

/** Shows a tab. */
export const tab = async (page, name) => page.press(name, { within: await page.css(".bench .sections") });

/** Opens a fold by its id, where it is closed. */
export async function fold(page, id) {
  const closed = await page.run((fold) => !fold.open, await page.css(`#${id}`));
  if (!closed) return;
  // Not under the notice or the foot of a phone.
  await page.run((id) => document.querySelector(`#${id} > summary`).scrollIntoView({ block: "center" }), id);
  await page.click(`#${id} > summary`);
}

/** Presses a button that is behind ⋯. */
export async function more(page, name) {
  if ((await page.run((e) => e.getAttribute("aria-expanded"), await page.css("#trial-more-open"))) === "false") await page.click("#trial-more-open");
  await page.press(name, { within: await page.css("#trial-more") });
}

/** A blank sheet in place of the example, with a mat of 450 × 450 mm. */
export async function mat(page) {
  await page.press("Start with a blank sheet");
  await field(page, "bench_mat_length", "450");
  await field(page, "bench_mat_width", "450");
}

/** What the box of a key holds. */
export const held = async (page, key) => (await page.css(`[data-field="${key}"]`)).getProperty("value");

/** The number of a figure, without its unit. */
export const number = async (page, figure) => Number((await page.figure(figure)).replace(/[^0-9.]/g, ""));

/** Waits until the trial on the page is stored with what `test` finds. */
export const stored = (page, test) => page.until(async () => assert.match((await page.run(() => localStorage["haulm/bench"])) ?? "", test));

/** Whether the results are struck as those of earlier entries. */
export const isOld = (page) =>
  page.run(() => {
    const value = document.querySelector(".weigh-sheet-tab.old .figure-value");
    return value !== null && getComputedStyle(value).textDecorationLine.includes("line-through");
  });
