// The harness sees what it is there to see: on pages made here, each with one thing wrong.

import assert from "node:assert/strict";
import { chmod, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { launchFirefox } from "./firefox.mjs";
import { journey, open, until } from "./harness.mjs";
import { keystrokes, median } from "./measure.mjs";
import { allOf } from "./program.mjs";

const HEAD = '<!doctype html><html lang="en"><title>t</title><link rel="icon" href="data:,">';

/** Runs `act` on a folder that holds one page with this body. */
async function withFolder(body, act) {
  const dir = await mkdtemp(join(tmpdir(), "haulm-page-"));
  try {
    await writeFile(join(dir, "index.html"), HEAD + body);
    await act(dir);
  } finally {
    await rm(dir, { recursive: true, force: true });
  }
}

const withPage = (body, act) =>
  withFolder(body, async (dir) => {
    const page = await open({ dir });
    try {
      await act(page);
    } finally {
      await page.close();
    }
  });

test("a page with nothing wrong passes", () =>
  withPage("<main><h1>Fine</h1></main>", async (page) => {
    await page.axe();
    await page.assertNoSideways();
    await page.assertClean();
  }));

test("an error in the console fails", () =>
  withPage("<script>setTimeout(() => { throw new Error('broken') })</script>", async (page) => {
    await page.until(async () => (await page.complaints()).length > 0);
    await assert.rejects(page.assertClean(), /broken/);
  }));

test("a request that leaves the origin fails", () =>
  withPage('<main><img alt="" src="http://127.0.0.1:1/away.png"></main>', async (page) => {
    await assert.rejects(page.assertClean());
    assert.deepEqual(await page.foreign(), ["http://127.0.0.1:1/away.png"]);
  }));

test("axe looks at the dark scheme too", () =>
  withPage(
    `<style>@media (prefers-color-scheme: dark) { body { background: #111; } h1 { color: white; } p { color: #333; } }</style>
     <main><h1>Dim</h1><p>dim in the dark</p></main>`,
    (page) => assert.rejects(page.axe(), /dark: color-contrast/),
  ));

test("a page wider than its view fails", () =>
  withPage('<main style="width: 3000px">wide</main>', (page) => assert.rejects(page.assertNoSideways(), /3000|3008/)));

test("fields are found by their labels, and typing replaces what stood there", () =>
  withPage(
    '<label>Flow <input value="old"></label><label for="m">Moisture, wet basis</label><input id="m"><button>Save</button>',
    async (page) => {
      await page.type("Flow", "12,5");
      assert.equal(await page.value("Flow"), "12,5");
      await page.type("Moisture", "8");
      assert.equal(await page.value("Moisture, wet basis"), "8");
      await page.press("Save");
      await assert.rejects(page.field("Density", { wait: 50 }), /Flow \| Moisture, wet basis/);
    },
  ));

test("a file that the page saves is handed over", () =>
  withPage('<a download="note.txt" href="data:text/plain,kept">Export</a>', async (page) => {
    const { name, bytes } = await page.download(() => page.press("Export"));
    assert.equal(name, "note.txt");
    assert.equal(bytes.toString(), "kept");
  }));

test("a page prints to a PDF", () =>
  withPage("<main><h1>Sheet</h1></main>", async (page) => {
    assert.equal((await page.pdf("Letter")).subarray(0, 5).toString(), "%PDF-");
  }));

test("a line that is cut fails what needs it", () =>
  withPage("<main>here</main>", async (page) => {
    await page.line({ offline: true });
    const fetched = () => page.driver.executeAsyncScript((done) => fetch("?").then(() => done(true), () => done(false)));
    assert.equal(await fetched(), false);
    await page.line(null);
    assert.equal(await fetched(), true);
  }));

test("a figure that comes 80 ms late is measured so", () =>
  withFolder(
    `<label>In <input data-field="in"></label><output data-figure="out"></output>
     <script>
       const field = document.querySelector("input");
       field.addEventListener("input", () => {
         const end = performance.now() + 80;
         while (performance.now() < end);
         document.querySelector("output").textContent = field.value;
       });
     </script>`,
    async (dir) => {
      const { painted } = await keystrokes({ dir, field: '[data-field="in"]', figure: '[data-figure="out"]', times: 6, slow: 1 });
      assert.equal(painted.length, 6);
      assert.ok(median(painted) >= 80, `${painted}`);
    },
  ));

test("a driver of Firefox that gives no session is ended", async () => {
  const folder = await mkdtemp(join(tmpdir(), "haulm-silent-"));
  const own = process.env.GECKODRIVER;
  try {
    // It starts, and starts something itself, and answers nothing.
    process.env.GECKODRIVER = join(folder, "geckodriver");
    await writeFile(process.env.GECKODRIVER, "#!/bin/sh\nsleep 600 &\nsleep 600\n");
    await chmod(process.env.GECKODRIVER, 0o755);
    const launched = launchFirefox({ folder, start: 5 });
    await Promise.all([assert.rejects(launched, /no session within 5 s/), until(() => allOf(folder).length > 0)]);
    await until(() => allOf(folder).length === 0);
  } finally {
    if (own === undefined) delete process.env.GECKODRIVER;
    else process.env.GECKODRIVER = own;
    await rm(folder, { recursive: true, force: true });
  }
});

// One browser goes from journey to journey.
journey("a journey leaves a tab, a size, a scheme, a store and an error behind", { width: 390, height: 844, touch: true, dark: true, allow: [/left behind/] }, async (page) => {
  await page.run(() => {
    localStorage.left = "here";
    console.error("left behind");
  });
  await page.slow(4);
  await page.driver.switchTo().newWindow("tab");
});

journey("and the next one finds none of them", async (page) => {
  assert.equal((await page.driver.getAllWindowHandles()).length, 1);
  const found = await page.run(() => [localStorage.left ?? null, innerWidth, matchMedia("(prefers-color-scheme: dark)").matches, matchMedia("(pointer: coarse)").matches]);
  assert.deepEqual(found, [null, 1440, false, false]);
  assert.deepEqual(await page.complaints(), []);
});
