// Each part of src/ui/components in its states, on the page that tests/tool/parts.sh builds.

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { Key, journey, ROOT } from "../harness.mjs";

const dir = join(ROOT, "target/parts");
const part = (page, name) => page.css(`[data-part="${name}"]`);
const says = async (page, name, words) => {
  const own = await part(page, name);
  await page.until(async () => assert.match(await page.run((e) => e.textContent, own), words));
};

journey("every part is there, but for those that follow the whole app", { dir }, async (page) => {
  await part(page, "Measured");
  const shown = await page.run(() => [...document.querySelectorAll("[data-part]")].map((e) => e.dataset.part));
  const exports = (await readFile(join(ROOT, "src/ui/components/mod.rs"), "utf8")).match(/^pub use .*;$/gm).join(" ");
  const components = [];
  for (const file of await readdir(join(ROOT, "src/ui/components"))) {
    const text = await readFile(join(ROOT, "src/ui/components", file), "utf8");
    for (const [, name] of text.matchAll(/#\[component\]\npub fn (\w+)/g)) if (exports.includes(name)) components.push(name);
  }
  const left = ["Announce", "CautionItem", "Cautions", "UndoNotice", "WorkingPanel"];
  // A text of several lines is beside the text of one.
  assert.deepEqual(components.filter((name) => !left.includes(name) && name !== "TextArea").sort(), shown.sort());
});

for (const [width, height] of [[390, 844], [820, 1180], [1440, 900]])
  journey(`the parts are clean to axe at ${width} px, and nothing runs sideways`, { dir, width, height }, async (page) => {
    await page.axe();
    assert.ok(await page.run(() => document.documentElement.scrollWidth <= innerWidth), "nothing sideways");
    await page.screenshot(`parts-${width}`, { full: true });
    await page.look({ dark: true });
    await page.screenshot(`parts-${width}-dark`, { full: true });
  });

journey("boxes, choices and figures tell what was done, by keyboard", { dir }, async (page) => {
  const box = await page.field("Follows its text");
  await page.run((e) => (e.focus(), e.select()), box);
  await page.keys("702", Key.TAB);
  await says(page, "NumberBox", /Heard: left at 702/);
  const wrong = await page.field("Error");
  assert.equal(await page.run((e) => e.getAttribute("aria-invalid"), wrong), "true");
  const told = await page.run((e) => e.getAttribute("aria-describedby").split(" ").map((id) => document.getElementById(id)?.textContent).join(" "), wrong);
  assert.match(told, /must be above 0 mm/);
  await page.press("Figure act");
  await says(page, "FigureValue", /Open: act/);
  await page.press("Figure act");
  await says(page, "FigureValue", /Open: none/);
});

journey("the gravest warning is first, and the others are behind a count", { dir }, async (page) => {
  await part(page, "WarningSlot");
  const slots = await page.run(() => [...document.querySelectorAll('[data-part="WarningSlot"] .warnings')].map((e) => e.textContent));
  assert.match(slots[2], /^\s*Error\s+Fibre moisture is missing/);
  assert.match(slots[2], /All 3/);
});

journey("Enter goes down a column, and a working gives the focus back", { dir }, async (page) => {
  const first = await page.field("Gross mass of catch 1");
  await page.run((e) => e.focus(), first);
  await page.keys(Key.ENTER);
  assert.equal(await page.run(() => document.activeElement.dataset.field), "gross-1");
  await page.press("Close", { within: await part(page, "WorkingFrame") });
  assert.equal(await page.run(() => document.querySelector("#working-of-part")), null);
});

journey("on a phone the tab chosen is wholly in view", { dir, width: 390, height: 844 }, async (page) => {
  const cut = () => page.run(() => {
    const nav = document.querySelector('[data-part="Tabs"] nav').getBoundingClientRect();
    const tab = document.querySelector('[data-part="Tabs"] [aria-current]').getBoundingClientRect();
    return Math.round(Math.max(0, nav.left - tab.left) + Math.max(0, tab.right - nav.right));
  });
  await page.until(async () => assert.equal(await cut(), 0, "the last tab, chosen at the start"));
  await page.press("Pump settings");
  await page.until(async () => assert.equal(await cut(), 0, "the first one"));
});
