// The app in German: chosen by the browser's language or by hand, whole, kept for the times without a network, and nothing cut on a phone.

import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { cp, mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DIST, journey, open } from "./harness.mjs";

const GERMAN = { lang: "de-DE" };

/** Each page, and whether it has tabs. */
const PLACES = ["recipe", "line", "bench", "compare", "mixing", "library", "systems", "trials", "help"];

/** Goes through every page and tab with everything unfolded, and does `act` there. */
async function walk(page, act) {
  for (const hash of PLACES) {
    await page.run((hash) => (location.hash = hash), hash);
    await page.until(() => page.run((hash) => location.hash === `#${hash}` && document.querySelector("#content:empty, .arriving") === null, hash));
    const tabs = await page.run(() => document.querySelectorAll("#content .sections.tabs > button").length);
    for (let tab = 0; tab < Math.max(1, tabs); tab++) {
      if (tabs) await page.run((tab) => document.querySelectorAll("#content .sections.tabs > button")[tab].click(), tab);
      await settled(page);
      await page.run(() => document.querySelectorAll("#content details:not([open])").forEach((fold) => (fold.open = true)));
      await settled(page);
      await act(`${hash}${tabs ? ` ${tab + 1}` : ""}`);
    }
  }
}

/** Nothing has changed on the page for a moment. */
const settled = (page) =>
  page.until(() =>
    page.run(
      () =>
        new Promise((done) => {
          let changed = false;
          const watch = new MutationObserver(() => (changed = true));
          watch.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
          setTimeout(() => requestIdleCallback(() => (watch.disconnect(), done(!changed))), 150);
        }),
    ),
  );

/** In the page: all that is read there, in sight or by a screen reader, in pieces. */
function read() {
  const found = new Set();
  const put = (text) => {
    const words = text?.replace(/\s+/g, " ").trim();
    if (words && /\p{L}{3}/u.test(words)) found.add(words);
  };
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) if (!texts.currentNode.parentElement.closest("math, script, style")) put(texts.currentNode.data);
  for (const element of document.querySelectorAll("body *"))
    for (const name of ["aria-label", "placeholder", "title", "data-label", "label", "alt"]) put(element.getAttribute(name));
  return [...found];
}

/** In the page: texts that are not wholly in sight, and whether the page runs sideways. What sums up a fold is one line by design. */
function cut() {
  const faults = [];
  if (document.documentElement.scrollWidth > innerWidth) faults.push(`sideways, ${document.documentElement.scrollWidth} px`);
  for (const element of document.querySelectorAll("body *")) {
    if (!element.checkVisibility() || element.closest("svg, math, select, summary > .note, [style*=clip]")) continue;
    const style = getComputedStyle(element);
    if (style.clipPath !== "none" || style.display === "inline" || !["hidden", "clip"].includes(style.overflowX)) continue;
    const own = [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.data.trim());
    if (own && element.clientWidth > 1 && element.scrollWidth > element.clientWidth + 1) faults.push(`${element.tagName.toLowerCase()}.${element.className}: ${element.textContent.trim().slice(0, 60)}`);
  }
  return faults;
}

/** Units, and whatever has no word in it. */
const UNIT = /^[-–+±·,;:()\d\s.%°×²³€]*(mL|L|US gal|gal|kg|g|lb|short ton|t|ft|m|min|s|psi|ppm|Hz)?([/:](mL|L|US gal|h|kg|g|lb|short ton|t|ft|m|min|s|in)[²³]?)*$/u;

/** Names of substances, standards and keys, and words that both languages share. */
const SAME = new Set([
  "Haulm", "English", "Deutsch", "pMDI", "MUF", "Monte Carlo", "Thermometer", "Drift", "Tanks", "Tab", "Enter", "Esc", "Minimum, Maximum",
  "Material", "System", "Status", "Details", "Name",
  "ANSI A208.2, MDF", "29 CFR 1910.1048", "TSCA Title VI, 40 CFR 770", "Garay (2012)",
]);

/** Citations keep the titles of what they cite. */
const CITED = /Handbook/;

journey("every page is in German, whole and clean to axe: no text is the same as in English", { timeout: 420_000, width: 1440, height: 900, ...GERMAN }, async (page) => {
  assert.equal(await page.run(() => document.documentElement.lang), "de");
  const german = new Map();
  const faults = new Set();
  await walk(page, async (place) => {
    for (const text of await page.run(read)) if (!german.has(text)) german.set(text, place);
    for (const fault of await page.run(cut)) faults.add(`${place}: ${fault}`);
    await page.axe();
  });
  assert.deepEqual([...faults], []);
  const english = await open({ lang: "en-GB" });
  try {
    const same = new Set();
    let count = 0;
    const half = [...german.keys()].filter((text) => !CITED.test(text) && /\b(the|of|with|from|for|is|are|not|this|each|to)\b/.test(text));
    assert.deepEqual(half, [], "English words in a German text");
    await walk(english, async () => {
      for (const text of await english.run(read)) {
        count++;
        if (german.has(text) && !UNIT.test(text) && !SAME.has(text)) same.add(text);
      }
    });
    assert.ok(german.size > 800 && count > 800, `${german.size} texts in German, ${count} in English`);
    assert.deepEqual([...same].map((text) => `${german.get(text)}: ${text}`).sort(), []);
  } finally {
    await english.close();
  }
});

for (const [width, height] of [[390, 844], [820, 1180]])
  journey(`nothing is cut and nothing runs sideways in German at ${width} px`, { timeout: 420_000, width, height, touch: true, ...GERMAN }, async (page) => {
    const faults = new Set();
    await walk(page, async (place) => (await page.run(cut)).forEach((fault) => faults.add(`${place}: ${fault}`)));
    assert.deepEqual([...faults], []);
  });

journey("a language is chosen in the settings, speaks at once and keeps what was typed", async (page) => {
  await page.type("Board density", "702");
  await page.press("Settings");
  await page.choose(/^Language/, "Deutsch");
  await page.until(async () => assert.equal(await page.run(() => document.documentElement.lang), "de"));
  await page.started();
  await page.sees("Rezept");
  await page.until(async () => assert.equal(await page.run(() => document.querySelector("#field-board_density")?.value), "702"));
  await page.click("#settings-open");
  await page.run(() => {
    const choice = document.querySelector("#language");
    choice.value = "en";
    choice.dispatchEvent(new Event("change", { bubbles: true }));
  });
  await page.until(async () => assert.equal(await page.run(() => document.documentElement.lang), "en"));
});

journey("with the server gone it opens in German; whoever speaks English never fetches that", GERMAN, async (page) => {
  const kept = () => page.run(async () => Promise.all((await caches.keys()).map(async (key) => (await (await caches.open(key)).match("./de.ftl")) !== undefined)));
  await page.until(async () => assert.deepEqual(await kept(), [true]));
  await page.server.close();
  await page.reload();
  assert.equal(await page.run(() => document.documentElement.lang), "de");
  const english = await open();
  try {
    await english.until(() => english.run(() => navigator.serviceWorker.controller !== null));
    assert.ok(!english.server.served.some(({ path }) => path.endsWith(".ftl")), "no words of another language");
  } finally {
    await english.close();
  }
});

journey("where the words have not arrived, it speaks English and says so", { ...GERMAN, load: false, allow: [/de[.]ftl/] }, async (page) => {
  const folder = await mkdtemp(join(tmpdir(), "haulm-wordless-"));
  await cp(DIST, folder, { recursive: true });
  await rm(join(folder, "de.ftl"));
  const other = await open({ ...GERMAN, dir: folder, allow: [/de[.]ftl|404/] });
  try {
    await other.sees("“Deutsch” did not load");
    assert.equal(await other.run(() => document.documentElement.lang), "en");
    await other.type("Board density", "702");
  } finally {
    await other.close();
    await rm(folder, { recursive: true, force: true });
  }
});

journey("where the program does not arrive, that is said in German too", { ...GERMAN, load: false }, async () => {
  const folder = await mkdtemp(join(tmpdir(), "haulm-partless-"));
  await cp(DIST, folder, { recursive: true });
  await rm(join(folder, "haulm_bg.wasm"));
  const other = await open({ ...GERMAN, dir: folder, load: false, allow: [/./] });
  try {
    await other.driver.get(other.server.url);
    await other.sees("Haulm ist nicht gestartet");
  } finally {
    await other.close();
    await rm(folder, { recursive: true, force: true });
  }
});

journey("the build has each language as one file, in the worker's list with its hash", async () => {
  const worker = await readFile(join(DIST, "offline.js"), "utf8");
  const list = new Function(`return ${worker.match(/LANGUAGES = (\[.*\]);/)[1]}`)();
  assert.deepEqual(list.map(([name]) => name), (await readdir(DIST)).filter((name) => name.endsWith(".ftl")).sort());
  for (const [name, hash] of list) assert.equal(createHash("sha256").update(await readFile(join(DIST, name))).digest("hex"), hash, name);
});
