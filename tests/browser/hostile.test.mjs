// Links, files and drafts that somebody made to do harm, or that were damaged on the way: opened or refused within a second, with a
// true message, and what was on the page stays.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deflateRawSync } from "node:zlib";
import { journey } from "./harness.mjs";
import { holds, put } from "./pages.mjs";

const link = (recipe) => `#open=${deflateRawSync(JSON.stringify(recipe)).toString("base64url")}`;

/** Waits for the words; gives how long the page took, by its own clock. */
const told = (page, act, words) =>
  page.driver.executeAsyncScript(
    `const [words, done] = arguments;
     const began = performance.now();
     ${act};
     const look = () => document.body.textContent.includes(words) ? done(performance.now() - began) : performance.now() - began > 20000 ? done(null) : setTimeout(look, 5);
     look();`,
    words,
  );

journey("hostile links and drafts are refused within a second, and the next start is as quick", { timeout: 240_000, allow: [/favicon/] }, async (page) => {
  await page.type("Board density", "702");
  await page.until(async () => assert.match(await page.run(() => localStorage["haulm/draft"] ?? ""), /702/));
  const open = await page.run(() => localStorage["haulm/draft"]);
  const { draft } = JSON.parse(open);
  const many = { ...draft, liquids: Array.from({ length: 500 }, (_, id) => ({ ...draft.liquids[0], id: id + 1 })) };
  const recipe = (over) => ({ haulm: "recipe", version: 1, name: "x", draft, ...over });
  const table = [];
  for (const [what, file, words] of [
    ["500 liquids", recipe({ draft: many }), "500 liquids; at most 12 are read"],
    ["a name of 5 000 letters", recipe({ name: "n".repeat(5_000) }), "A text of 5000 characters"],
    ["a note of 100 000 letters", recipe({ note: "n".repeat(100_000) }), "A text of 100000 characters"],
    ["a number of 50 000 digits", recipe({ draft: { ...draft, plain: { ...draft.plain, thickness: { text: "9".repeat(50_000), unit: "mm" } } } }), "A text of 50000 characters"],
  ]) {
    const took = await told(page, `location.hash = ${JSON.stringify(link(file))}`, words);
    table.push({ what: `link: ${what}`, ms: Math.round(took ?? 1e9), lost: (await page.run(holds, "field-board_density")) === "702" ? 0 : 1 });
    await page.press("Close");
  }
  for (const [what, text] of [
    ["500 liquids", JSON.stringify({ ...JSON.parse(open), draft: many })],
    ["a later version", JSON.stringify({ ...JSON.parse(open), version: 9 })],
    ["half a text", open.slice(0, 300)],
    ["an empty text", ""],
  ]) {
    await page.driver.get(`${page.server.url}icon.svg`);
    await page.run((text) => (localStorage["haulm/draft"] = text), text);
    await page.go();
    const began = Date.now();
    await page.css("#field-board_density");
    table.push({ what: `draft: ${what}`, ms: Date.now() - began, lost: 0 });
    // It is set aside, as it was, and told.
    const aside = await page.run(() => Object.entries(localStorage).filter(([key]) => key.startsWith("haulm/aside/")).map(([, text]) => text));
    assert.ok(aside.includes(text), what);
    await page.sees("Set aside");
    await page.run(put, "field-board_density", "702");
    await page.until(async () => assert.match(await page.run(() => localStorage["haulm/draft"] ?? ""), /702/));
  }
  console.table(table);
  assert.deepEqual(table.filter(({ ms, lost }) => ms > 1000 || lost), []);
});

journey("each file that cannot be read is told by what is wrong with it", { hash: "#library" }, async (page) => {
  const folder = await mkdtemp(join(tmpdir(), "haulm-hostile-"));
  try {
    for (const [name, text, words] of [
      ["empty.json", "", "breaks off"],
      ["twice.json", '{"haulm":"recipe","version":1,"version":1,"draft":{}}', "is there twice"],
      ["list.json", "[]", "is not from Haulm"],
    ]) {
      await writeFile(join(folder, name), text);
      await page.upload("#import", join(folder, name));
      await page.sees(words);
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});

journey("a link never displaces work for good", async (page) => {
  await page.type("Board density", "703");
  const { draft } = JSON.parse(await page.until(() => page.run(() => localStorage["haulm/draft"] ?? null)));
  await page.run(put, "recipe-name", "My work");
  await page.run((to) => (location.hash = to), link({ haulm: "recipe", version: 1, name: "\u202eesreveR", draft }));
  await page.sees("from the link is open, and not saved yet");
  // A name that turns the text around stands by itself.
  assert.match(await page.run(() => document.querySelector(".notice.shown").textContent), /\u2068\u202eesreveR\u2069/);
  await page.reload();
  await page.press("Library");
  await page.sees("Unsaved work,");
  const name = await page.run(() => document.querySelector(".lines h2").textContent.trim());
  assert.match(name, /^Unsaved work, \d\d:\d\d: My work/);
});
