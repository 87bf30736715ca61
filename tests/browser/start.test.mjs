// The app arrives and starts, wherever its folder lies.

import assert from "node:assert/strict";
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { DIST, journey, open } from "./harness.mjs";

for (const [name, size] of Object.entries({
  phone: { width: 390, height: 844, touch: true },
  tablet: { width: 820, height: 1180, touch: true },
  desk: { width: 1440, height: 900 },
})) {
  journey(`the app starts at the size of a ${name}`, size, async (page) => {
    await page.heading("Recipe");
    await page.until(async () => assert.match(await page.figure("water_dose"), /\d/));
    await page.axe();
    await page.screenshot(`start-${name}`);
    await page.look({ dark: true });
    await page.screenshot(`start-${name}-dark`);
  });
}

journey("the page is sent in the fewest round trips, and only from its own folder", async (page) => {
  // Then everything is kept for offline use, out of what has arrived: only what the page itself has no need of is asked for.
  await page.until(() => page.run(() => navigator.serviceWorker.controller !== null));
  const asked = page.server.served.map(({ path, status }) => `${status} ${path.split("/").pop() || "page"}`).sort();
  const once = (file) => asked.filter((other) => other === file).length === 1;
  assert.ok(["200 haulm.css", "200 haulm.js", "200 haulm_bg.wasm", "200 start.js"].every(once), asked.join());
  // The icon of the window goes by a cache of its own.
  // A release build has the pages other than the recipe in parts of their own.
  const parts = (await readdir(DIST)).filter((file) => /^(split|chunk)_.*[.]wasm$/.test(file));
  const files = ["haulm.css", "haulm.js", "haulm_bg.wasm", "icon-192.png", "icon.svg", "index.html", "manifest.webmanifest", "offline.js", "page", "start.js", ...parts];
  assert.deepEqual([...new Set(asked)], files.map((file) => `200 ${file}`).sort());
  assert.deepEqual(page.server.served.filter(({ encoding }) => encoding !== "br"), []);
});

test("the sheet was understood and shortened", async () => {
  // Trunk only warns of a sheet that it cannot read, and copies it with its comments.
  assert.doesNotMatch(await readFile(join(DIST, "haulm.css"), "utf8"), /[/][*]/);
});

journey("it reflows at 320 px", { width: 320, height: 640 }, async (page) => {
  await page.assertNoSideways();
});

for (const [what, text] of Object.entries({ missing: null, "no script": "this is <no> script" })) {
  test(`where start.js is ${what}, the page says so after a while`, async () => {
    const dir = await mkdtemp(join(tmpdir(), "haulm-dist-"));
    try {
      await cp(DIST, dir, { recursive: true });
      if (text === null) await rm(join(dir, "start.js"));
      else await writeFile(join(dir, "start.js"), text);
      const page = await open({ dir, load: false });
      try {
        await page.driver.get(page.server.url);
        assert.equal(await (await page.css("#start-state")).isDisplayed(), true);
        const late = await page.css("#start-late");
        assert.equal(await late.isDisplayed(), false, "not before the wait is over");
        // The wait of the sheet itself, in a hundredth of the time.
        await page.command("Animation.enable");
        await page.command("Animation.setPlaybackRate", { playbackRate: 100 });
        await page.until(() => late.isDisplayed());
        assert.equal(await (await page.css("#start-state")).isDisplayed(), false, "nothing loads any more");
        await page.axe();
        await page.screenshot("start-late");
      } finally {
        await page.close();
      }
    } finally {
      await rm(dir, { recursive: true, force: true });
    }
  });
}

test("where the program does not arrive, the page says so", async () => {
  const dir = await mkdtemp(join(tmpdir(), "haulm-dist-"));
  try {
    await cp(DIST, dir, { recursive: true });
    await writeFile(join(dir, "haulm_bg.wasm"), "not a program");
    const page = await open({ dir, load: false });
    try {
      await page.driver.get(page.server.url);
      await page.sees("Haulm did not start");
      await page.seesNot("Haulm has not started");
      await page.axe();
      await page.screenshot("start-failed");
      assert.notDeepEqual(await page.complaints(), []);
    } finally {
      await page.close();
    }
  } finally {
    await rm(dir, { recursive: true, force: true });
  }
});

test("where a page's part of the program does not arrive, the page says so and tries again; nothing is lost", async (context) => {
  const dir = await mkdtemp(join(tmpdir(), "haulm-dist-"));
  try {
    await cp(DIST, dir, { recursive: true });
    const part = join(dir, "split_line.wasm");
    const program = await readFile(part).catch(() => null);
    if (!program) return context.skip("this build is one program; the release build is in parts");
    await rm(part);
    const page = await open({ dir });
    try {
      await page.type("Board density", "671");
      await page.press("Line");
      await page.sees("This page did not load.");
      await page.axe();
      await page.press("Recipe");
      await page.holds("Board density", "671");
      await page.press("Line");
      await page.sees("This page did not load.");
      await writeFile(part, program);
      await page.press("Try again");
      await page.heading("Line");
      await page.seesNot("This page did not load.");
    } finally {
      await page.close();
    }
  } finally {
    await rm(dir, { recursive: true, force: true });
  }
});

journey("each page takes the place of the one before, and a page that is open is not made anew", async (page) => {
  const headings = () => page.run(() => [...document.querySelectorAll("#content h1")].map((h) => h.textContent));
  for (const name of ["Bench", "Mixing", "Help", "Library", "Recipe", "Library", "Binder systems"]) {
    await page.press(name);
    await page.until(async () => assert.equal((await headings()).length, 1, `${name}: ${await headings()}`));
  }
  await page.type("System name", "typed and kept");
  await page.run(() => window.dispatchEvent(new HashChangeEvent("hashchange")));
  await page.holds("System name", "typed and kept");
});

journey("the browser's Back from a box that is being typed in leaves nothing behind: the other page opens, and the number is there", async (page) => {
  const box = async (key) => page.css(`[data-field="${key}"]`);
  const go = (hash) => page.run((to) => void (location.hash = to), hash);
  for (const [hash, heading, key] of [["#recipe", "Recipe", "board_density"], ["#bench", "Bench", "bench_mat_length"], ["#mixing", "Mixing", "concentration"]]) {
    await go(hash);
    await page.heading(heading);
    await page.type(await box(key), "31");
    await page.run((e) => e.focus(), await box(key));
    await go("#help");
    await page.heading("Help");
    await page.run(() => history.back());
    await page.heading(heading);
    await page.until(async () => assert.equal(await page.run((e) => e.value, await box(key)), "31"));
  }
});
