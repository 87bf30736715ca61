// Browser journeys: what a person does in the built app, told in the words on the screen.
//
// How to write one
//   1. `trunk build --cargo-profile start` first: a journey drives what is in dist/, served at a sub-path of this machine's own address.
//   2. In tests/browser/NAME.test.mjs:
//
//        import assert from "node:assert/strict";
//        import { journey } from "./harness.mjs";
//
//        journey("a typed flow changes the dose", { width: 390, height: 844, touch: true }, async (page) => {
//          await page.type("Fibre flow", "12,5");                     // a field by its label; real keys replace what stood there
//          await page.press("Save");                                  // a button or link by its name
//          await page.choose("Units", "US customary");                // an option of a select
//          await page.sees("Saved");                                  // waits until the words are visible
//          await page.shows("water_dose", "1 234 kg/h");           // waits until the figure is this
//          await page.axe();                                          // WCAG A and AA, light and dark, nothing found
//          await page.screenshot("dose-phone");                       // target/screenshots/dose-phone.png
//        });
//
//   3. `node --test tests/browser/NAME.test.mjs`. Every journey has a tab and, since its server has a port of its own, an origin with
//      stores of its own. The browser goes from one journey to the next, which saves the seconds of starting it.
//
// A name is matched whole, else as part of exactly one name; several or none is an error that lists the names there are. Finders
// wait up to fifteen seconds, which only a failure takes: a busy machine is no fault of the app. A journey fails by itself on any error in the console and on any request that leaves the origin; one
// that provokes an error names it: `{ allow: [/404/] }`. On failure there is a screenshot of the last state beside the others.
//
// Where words will not do, `page.css('[data-field="fibre_flow"]')` finds by selector; `page.type` takes such an element too.
// axe takes a transparent page for white, so the app's own sheet must set the background of both schemes.

import assert from "node:assert/strict";
import { mkdir, mkdtemp, readFile, readdir, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { after, test } from "node:test";
import { fileURLToPath } from "node:url";
import { By, Key } from "selenium-webdriver";
import { launch } from "./engine.mjs";
import * as inpage from "./inpage.mjs";
import { ChromiumOnly, DriverSilent } from "./program.mjs";
import { serve } from "./server.mjs";

export const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), "../..");
export const DIST = join(ROOT, "dist");
export const SCREENSHOTS = join(ROOT, "target/screenshots");

const WAIT = 15_000;
// A browser that was told to go may write for a moment longer.
const TREE = { recursive: true, force: true, maxRetries: 10, retryDelay: 100 };
const FIELDS = ["textbox", "searchbox", "combobox", "listbox", "checkbox", "switch", "radio", "slider", "spinbutton"];
const ACTIONS = ["button", "link", "tab", "menuitem", "option", "radio", "checkbox", "switch"];
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

const require = createRequire(import.meta.url);
const library = (path) => readFile(require.resolve(path), "utf8");
const LIBRARIES = {
  // With what asks it, in the page's own realm: it takes only a function of its own realm for one.
  TestingLibraryDom: async () =>
    `${await library("@testing-library/dom/dist/@testing-library/dom.umd.min.js")}\n;window.haulmNamed = ${inpage.named};`,
  axe: () => library("axe-core/axe.min.js"),
};

/** Browsers that wait for the next journey, by what they were started with. */
const waiting = new Map();
/** The origins of all journeys of this program: a tab of an earlier one is not foreign. */
const origins = new Set();
let ends = false;

/** A browser for a journey: one that another journey has left, or a new one. `close` leaves it for the next. */
async function borrow(options) {
  if (options.record === false) return launch(options);
  const { engine = "", lang = "" } = options;
  const kind = `${engine} ${lang}`;
  const free = waiting.get(kind) ?? [];
  waiting.set(kind, free);
  const left = free.pop();
  if (left) return left;
  const folder = await mkdtemp(join(tmpdir(), "haulm-"));
  const launched = await launch({ ...options, folder }).catch(async (cause) => {
    await rm(folder, TREE);
    throw cause;
  });
  const quit = async () => {
    await launched.close();
    await rm(folder, TREE);
  };
  // Only where a tab can be had anew as it was at first.
  const close = async () => {
    try {
      if (!launched.afresh) return await quit();
      await launched.afresh();
      free.push(lent);
    } catch {
      await quit();
    }
  };
  const lent = { ...launched, close, quit };
  return lent;
}

/**
 * A test with a tab of its own, closed and looked through for errors afterwards. Where the browser's driver falls silent, which
 * says nothing of the app, the journey is gone through once more from the start, and that is told; whatever else fails is never tried again.
 */
export function journey(name, options, act) {
  if (typeof options === "function") [options, act] = [{}, options];
  if (!ends) {
    ends = true;
    after(() => Promise.all([...waiting.values()].flat().map(({ quit }) => quit())));
  }
  test(name, { timeout: options.timeout ?? 180_000 }, async (context) => {
    const once = async () => {
      const page = await open(options, borrow);
      try {
        await act(page);
        await page.assertClean();
      } catch (cause) {
        await page.screenshot(`failed-${name.replace(/[^a-z0-9]+/gi, "-").toLowerCase()}`).catch(() => {});
        throw cause;
      } finally {
        await page.close();
      }
    };
    try {
      await once();
    } catch (cause) {
      // A journey that was written for another engine must not pass by being skipped.
      if (cause instanceof ChromiumOnly && !options.engine) return context.skip(cause.message);
      if (!(cause instanceof DriverSilent)) throw cause;
      context.diagnostic(`the driver fell silent (${cause.message}); once more`);
      await once();
    }
  });
}

/**
 * Opens the app. Options: `width`, `height`, `scale`, `touch`, `dark`, `lang` (BCP 47), `hash` (where in the app), `dir` (another
 * folder than dist/), `allow` (console errors that are meant), `record: false` (no logs, for timings), `load: false` (blank page), `engine`
 * (chromium, firefox or webkit, whatever HAULM_ENGINE says).
 */
export async function open(options = {}, start = launch) {
  const server = await serve(options.dir ?? DIST);
  origins.add(server.origin);
  const folder = await mkdtemp(join(tmpdir(), "haulm-"));
  let engine;
  try {
    engine = await start({ ...options, folder });
    const page = new Page(engine, server, folder, options);
    await page.look(options);
    if (options.load ?? true) await page.go(options.hash ?? "");
    return page;
  } catch (cause) {
    await engine?.close();
    await server.close();
    await rm(folder, TREE);
    throw cause;
  }
}

/** Tries `attempt` until it neither throws nor gives false or null; gives what it gave. */
export async function until(attempt, wait = WAIT) {
  const end = Date.now() + wait;
  for (;;) {
    let failure;
    try {
      const value = await attempt();
      // An attempt made of assertions gives undefined when they hold.
      if (value !== false && value !== null) return value;
      failure = new Error(`still ${value} after ${wait} ms: ${attempt}`);
    } catch (cause) {
      failure = cause;
    }
    if (Date.now() > end) throw failure;
    await pause(25);
  }
}

export const pause = (ms) => new Promise((done) => setTimeout(done, ms));

/** One open page, with what a person can do there. */
export class Page {
  #look = { width: 1440, height: 900, scale: 1, touch: false, dark: false, forced: false };
  #complaints = [];
  #requests = [];

  constructor(engine, server, folder, { allow = [] } = {}) {
    Object.assign(this, { engine, server, folder, allow, driver: engine.driver, command: engine.command });
  }

  /** Changes size, touch, scheme or forced colours (Chromium only); what is not named stays. With nothing named, a new tab gets all of it. */
  async look(change) {
    for (const key of Object.keys(this.#look)) if (change[key] !== undefined) this.#look[key] = change[key];
    const { dark, ...rest } = this.#look;
    const onlyColours = Object.keys(change).length > 0 && Object.keys(change).every((key) => key === "dark" || key === "forced");
    await this.engine.look({ ...rest, scheme: dark ? "dark" : "light", onlyColours });
  }

  // Going places

  /** Loads the app afresh at a place in it (`"#recipe"`), and waits until it has taken over from the first paint. */
  async go(hash = "") {
    await this.driver.get("about:blank");
    await this.driver.get(this.server.url + hash);
    await this.started();
  }

  async reload() {
    await this.driver.navigate().refresh();
    await this.started();
  }

  /** The app has taken over from the first paint, and the page that is open has arrived: all but the recipe come in parts of their own. */
  async started() {
    await until(async () => (await this.run(() => document.getElementById("start") === null && document.querySelector("#content:empty, .arriving") === null)) || false, 60_000);
    await this.engine.listen?.();
  }

  // Finding

  /** The one element of `role` (or of several roles) with this name. */
  async byRole(role, name, { within = null, wait = WAIT } = {}) {
    const roles = [role].flat();
    return until(async () => {
      await this.#need("TestingLibraryDom");
      const { elements, names } = await this.run((root, all) => window.haulmNamed(root, all), within, roles);
      const like = (test) => elements.filter((_, i) => test(names[i]));
      const exact = name instanceof RegExp ? like((n) => name.test(n)) : like((n) => n === name);
      const hits = exact.length || name instanceof RegExp ? exact : like((n) => n.includes(name));
      if (hits.length === 1) return hits[0];
      throw new Error(`${hits.length || "no"} ${roles.slice(0, 3).join("/")} named "${name}"; there are: ${names.join(" | ")}`);
    }, wait);
  }

  /** The input with this label. */
  field = (label, options) => this.byRole(FIELDS, label, options);
  button = (name, options) => this.byRole("button", name, options);
  link = (name, options) => this.byRole("link", name, options);
  heading = (name, options) => this.byRole("heading", name, options);

  /** The first element for a selector, for what has no words. */
  css = (selector) =>
    until(async () => {
      const [found] = await this.driver.findElements(By.css(selector));
      if (!found) throw new Error(`nothing on the page matches ${selector}`);
      return found;
    });

  /** Waits until the words are visible; gives the innermost element that holds them. */
  async sees(words, { within = null, wait = WAIT } = {}) {
    return until(async () => {
      const [found] = await this.run(inpage.holding, within, words);
      if (!found) throw new Error(`nowhere on the page: "${words}"`);
      return found;
    }, wait);
  }

  /** Waits until the words are gone. */
  async seesNot(words, { within = null, wait = WAIT } = {}) {
    return until(async () => {
      const found = await this.run(inpage.holding, within, words);
      assert.equal(found.length, 0, `still on the page: "${words}"`);
    }, wait);
  }

  /** What a figure shows, by its `data-figure`, spaces of any width as plain ones. */
  async figure(id) {
    const element = await this.css(`[data-figure="${id}"]`);
    return (await this.run((e) => e.textContent, element)).replace(/\s+/g, " ").trim();
  }

  /** What a field holds. */
  async value(label) {
    return (await this.field(label)).getProperty("value");
  }

  /** Waits until a field holds this text. */
  async holds(label, text) {
    await until(async () => assert.equal(await this.value(label), text));
  }

  /** Waits until a figure shows these words. */
  async shows(id, words) {
    await until(async () => assert.equal(await this.figure(id), words));
  }

  until = until;

  // Doing

  /** Replaces the text of a field, key by key. */
  async type(label, text) {
    const field = typeof label === "string" || label instanceof RegExp ? await this.field(label) : label;
    await this.engine.reveal?.(field);
    // In two calls but for Chromium: Firefox and WebKit take what comes after the chord for part of it.
    const all = Key.chord(Key.CONTROL, "a");
    const keys = text === "" ? Key.BACK_SPACE : text;
    for (const part of this.engine.name === "chromium" ? [[all, keys]] : [[all], [keys]]) await field.sendKeys(...part);
    return field;
  }

  /** Keys to whatever has the focus: `page.keys(Key.TAB)`; `Key` comes from this module. */
  async keys(...keys) {
    await this.driver.actions().sendKeys(...keys).perform();
  }

  /** Chooses an option of a select by its words. */
  async choose(label, words, { within = null } = {}) {
    const field = await this.field(label, { within });
    const options = await field.findElements(By.css("option"));
    const texts = await Promise.all(options.map((option) => this.run((o) => o.textContent.trim(), option)));
    assert.ok(texts.includes(words), `no option "${words}" in "${label}"; there are: ${texts.join(" | ")}`);
    await this.engine.reveal?.(field);
    await options[texts.indexOf(words)].click();
  }

  /** Clicks what a selector finds. */
  async click(selector) {
    const found = await this.css(selector);
    await this.engine.reveal?.(found);
    await found.click();
  }

  /** Presses a button, link, tab, option or box by its name. */
  async press(name, options) {
    const found = await this.byRole(ACTIONS, name, options);
    await this.engine.reveal?.(found);
    await found.click();
  }

  /** Presses a button of the recipe that is behind ⋯. */
  async more(name) {
    if ((await this.run((e) => e.getAttribute("aria-expanded"), await this.css("#recipe-more-open"))) === "false") await this.click("#recipe-more-open");
    await this.press(name, { within: await this.css("#recipe-more") });
  }

  /** Puts a file into a file input; it may be hidden behind a button, so it is found by selector. */
  async upload(selector, path) {
    await (await this.css(selector)).sendKeys(resolve(path));
  }

  /** Runs `act`, which makes the page save a file; gives `{ name, bytes }`. */
  async download(act) {
    const folder = await mkdtemp(join(this.folder, "download-"));
    await this.engine.downloads(folder);
    await act();
    const name = await until(async () => {
      const files = await readdir(folder);
      assert.ok(files.length === 1 && !/crdownload|[.]part$|^[.]/.test(files[0]), `instead of one saved file: ${files}`);
      return files[0];
    });
    return { name, bytes: await readFile(join(folder, name)) };
  }

  /** The page as it prints: the PDF's bytes. `paper` is "A4" or "Letter". */
  async pdf(paper = "A4") {
    const [paperWidth, paperHeight] = { A4: [8.27, 11.69], Letter: [8.5, 11] }[paper];
    const { data } = await this.command("Page.printToPDF", { paperWidth, paperHeight, preferCSSPageSize: true });
    return Buffer.from(data, "base64");
  }

  /** Makes the processor so many times slower; 1 is as it is. */
  slow = (rate) => this.command("Emulation.setCPUThrottlingRate", { rate });

  /** `{ kbits, latency }` of the line, each way; null takes the limit off. `{ offline: true }` cuts it. */
  async line(limit) {
    await this.command("Network.enable");
    const bytes = limit?.kbits ? (limit.kbits * 1000) / 8 : -1;
    await this.command("Network.emulateNetworkConditions", {
      offline: limit?.offline ?? false,
      latency: limit?.latency ?? 0,
      downloadThroughput: bytes,
      uploadThroughput: bytes,
    });
  }

  /** Every part of the program is here: those too that a release build fetches a moment after the start. */
  async arrived() {
    const parts = (await readdir(DIST)).filter((file) => /^split_.*[.]wasm$/.test(file));
    await until(async () => {
      const here = await this.run(() => performance.getEntriesByType("resource").filter(({ responseEnd }) => responseEnd > 0).map(({ name }) => name.split("/").pop()));
      assert.deepEqual(parts.filter((part) => !here.includes(part)), [], "not arrived");
    });
  }

  /** Runs a function in the page; it may use only its arguments. */
  run = (act, ...args) => this.driver.executeScript(act, ...args);

  // Judging

  /**
   * axe on the page as it stands: nothing may be found. In the first scheme of the engine by all rules, in the other one, and where
   * `forced` asks for it in forced colours, by those that colours decide: what the others read is the same there. `also` adds tags ("best-practice").
   */
  async axe({ also = [], forced = false } = {}) {
    const { dark, forced: wasForced } = this.#look;
    const found = [];
    // What is half scrolled under a bar that sticks to the top would be judged by the half in sight.
    await this.run(() => window.scrollTo(0, 0));
    await this.#need("axe");
    const judge = async (look, onlyColours) => {
      for (const rule of await this.driver.executeAsyncScript(inpage.judge, [...WCAG, ...also], onlyColours)) {
        const places = rule.nodes.map((node) => `    ${node.target.join(" ")}: ${node.failureSummary?.replace(/\s+/g, " ")}`);
        found.push(`${look}: ${rule.id} (${rule.impact}): ${rule.help}\n${places.join("\n")}`);
      }
    };
    for (const [at, scheme] of this.engine.schemes.entries()) {
      await this.look({ dark: scheme === "dark", forced: false });
      await judge(scheme, at > 0);
    }
    if (forced) {
      await this.look({ dark: false, forced: true });
      await judge("forced colours", true);
    }
    await this.look({ dark, forced: wasForced });
    assert.equal(found.length, 0, `axe found\n${found.join("\n")}`);
  }

  /** The page in light, dark and forced colours: nothing axe finds, nothing sideways, and a picture of each (`NAME`, `NAME-dark`, `NAME-forced`). */
  async looksRight(name) {
    await this.axe({ forced: true });
    for (const [suffix, look] of [["", {}], ["-dark", { dark: true }], ["-forced", { forced: true }]]) {
      await this.look({ dark: false, forced: false, ...look });
      await this.assertNoSideways();
      await this.screenshot(`${name}${suffix}`, { full: true });
    }
    await this.look({ dark: false, forced: false });
  }

  /** The page cannot be scrolled sideways (WCAG 1.4.10). */
  async assertNoSideways() {
    const [wide, view] = await this.run(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
    assert.ok(wide <= view, `the page is ${wide} px wide in a view of ${view} px`);
  }

  /** A picture into target/screenshots; `full` takes the whole page, not only what is in view. */
  async screenshot(name, { full = false } = {}) {
    if (this.engine.pictures === false) return;
    const data = full
      ? (await this.command("Page.captureScreenshot", { captureBeyondViewport: true })).data
      : await this.driver.takeScreenshot();
    await mkdir(SCREENSHOTS, { recursive: true });
    await writeFile(join(SCREENSHOTS, `${name}.png`), Buffer.from(data, "base64"));
  }

  /** Addresses asked for so far that are not this origin's, nor on this machine's own disk. */
  async foreign() {
    this.#requests.push(...(await this.engine.requests()));
    const own = (url) => [...origins].some((origin) => url.startsWith(`${origin}/`)) || /^(data|blob|about|chrome|resource|moz-extension|devtools|file):/.test(url);
    return this.#requests.filter((url) => !own(url));
  }

  /** Errors in the console so far, without those that are meant. */
  async complaints() {
    this.#complaints.push(...(await this.engine.complaints()));
    return this.#complaints.filter((text) => !this.allow.some((meant) => meant.test(text)));
  }

  /** All records of the database: texts by their keys. */
  records = () => this.run(inpage.records);

  /** Puts records into the database, as another laptop's would have come there: `[key, text]` each. */
  putRecords = (entries) => this.run(inpage.putRecords, entries);

  /** Clears all that the browser keeps of the app, as a person does in its settings. */
  forget = () => this.run(inpage.forget);

  async assertClean() {
    assert.deepEqual(await this.complaints(), [], "errors in the console");
    assert.deepEqual(await this.foreign(), [], "requests that leave the origin");
  }

  async close() {
    await this.engine.close();
    await this.server.close();
    await rm(this.folder, TREE);
  }

  async #need(name) {
    if (await this.run((key) => key in window, name)) return;
    await this.engine.inject(await LIBRARIES[name]());
  }
}

export { Key };
