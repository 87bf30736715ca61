// The browser is killed in the middle of saves, again and again over one profile. Every save that was told as done must be found again.
//
// Chromium writes local storage to disk some seconds after the page wrote it; what was told as saved, and a copy of what is typed, is in the database then.

import assert from "node:assert/strict";
import { mkdtemp, readFile, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { launch } from "./engine.mjs";
import { DIST, pause, until } from "./harness.mjs";
import { drafted, records } from "./inpage.mjs";
import { serve } from "./server.mjs";

/** Fifty in the long run: HAULM_KILLS=50. */
const TIMES = Number(process.env.HAULM_KILLS ?? 10);

/** The browser of a profile: its first process, whose end is the end of all of them. */
async function processOf(profile) {
  for (const pid of (await readdir("/proc")).filter((name) => /^\d+$/.test(name))) {
    const line = await readFile(`/proc/${pid}/cmdline`, "utf8").catch(() => "");
    if (line.includes(`--user-data-dir=${profile}`) && !line.includes("--type=") && !line.startsWith("chromedriver")) return Number(pid);
  }
  return null;
}

test(`every save told as done outlasts ${TIMES} kills`, { timeout: 60_000 + TIMES * 20_000 }, async () => {
  const server = await serve(DIST);
  const profile = await mkdtemp(join(tmpdir(), "haulm-killed-"));
  const folder = await mkdtemp(join(tmpdir(), "haulm-driver-"));
  const told = new Set();
  let back = 0;
  let typed = null;
  try {
    for (let time = 0; time <= TIMES; time++) {
      const { driver, close } = await launch({ folder, profile, record: false });
      const run = (act, ...args) => driver.executeScript(`return (${act})(...arguments)`, ...args);
      const kept = async () => Object.keys(await run(records)).filter((key) => key.startsWith("haulm/revision/"));
      await driver.get(server.url);
      await until(() => run(() => document.querySelector("#recipe-name") !== null), 60_000);
      if (typed !== null) {
        const shown = () => run(() => document.querySelector('[data-field="fibre_moisture"]').value);
        back += (await shown()) === typed ? 0 : 1;
        await until(async () => assert.equal(await shown(), typed, `typed before kill ${time}`));
      }
      await until(async () => {
        const now = new Set(await kept());
        const lost = [...told].filter((key) => !now.has(key));
        assert.deepEqual(lost, [], `after kill ${time}`);
      });
      if (time === TIMES) {
        await close();
        break;
      }
      const save = (density) =>
        run((density) => {
          const box = document.querySelector('[data-field="board_density"]');
          box.value = density;
          box.dispatchEvent(new Event("input", { bubbles: true }));
          box.dispatchEvent(new Event("change", { bubbles: true }));
          const name = document.querySelector("#recipe-name");
          [...document.querySelectorAll(".title .primary")][0].click();
          return name.value;
        }, String(density));
      await save(600 + time);
      await until(() => run(() => document.querySelector(".notice.shown")?.textContent.includes("Saved")));
      for (const key of await kept()) told.add(key);
      // What is typed and not saved is in both stores a moment later.
      typed = String(5 + time / 100);
      await run((typed) => {
        const box = document.querySelector('[data-field="fibre_moisture"]');
        box.value = typed;
        box.dispatchEvent(new Event("input", { bubbles: true }));
        box.dispatchEvent(new Event("change", { bubbles: true }));
      }, typed);
      await until(() => run((typed) => JSON.parse(localStorage["haulm/draft"]).draft.plain.fibre_moisture.text === typed, typed));
      await until(() => run(drafted, typed));
      // And one more that nobody was told of: it may be there or not, but never by half.
      await save(600.5 + time);
      await pause(Math.random() * 20);
      process.kill(await processOf(profile), "SIGKILL");
      await driver.quit().catch(() => {});
    }
  } finally {
    await server.close();
    for (const path of [profile, folder]) await rm(path, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
  }
  console.log(`${TIMES} kills, ${told.size} saves told as done, ${back} times what was typed was only in the database`);
  assert.ok(told.size >= TIMES);
});
