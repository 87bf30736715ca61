// How fast the built app is where a machine and a line are slow. As a program it prints the raw data:
//
//   node tests/browser/measure.mjs [--field=SELECTOR] [--figure=SELECTOR] [--keys=30] [--loads=5]
//
// The limits are in budgets.mjs.

import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { open, pause, until } from "./harness.mjs";
import { watchKeys } from "./inpage.mjs";

/** A line of 1.6 Mbit/s with 150 ms there and back, as DevTools applies it: per request. */
export const LINE = { kbits: 1600, latency: 150 };
export const SLOW = 4;

export const FIELD = '[data-field="fibre_flow"]';
export const FIGURE = '[data-figure="water_dose"]';

/** The value at a share of a sorted list, by nearest rank. */
export function rank(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))];
}
export const median = (values) => rank(values, 0.5);

/** Milliseconds to the first contentful paint and to the started app; each load with a browser that has seen nothing before. */
export async function loads({ times = 5, slow = SLOW, line = LINE, ...options } = {}) {
  const paint = [];
  const started = [];
  for (let i = 0; i < times; i++) {
    const page = await open({ record: false, load: false, width: 390, height: 844, ...options });
    try {
      await page.line(line);
      await page.slow(slow);
      await page.driver.get(page.server.url);
      await page.started();
      started.push(await page.run(() => performance.now()));
      const first = () => performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? null;
      paint.push(await until(() => page.run(first)));
    } finally {
      await page.close();
    }
  }
  return { paint, started };
}

/** Milliseconds of later starts, with the server gone: from asking for the page until a figure is shown. */
export async function laterStarts({ times = 5, slow = SLOW, figure = FIGURE, ...options } = {}) {
  const page = await open({ record: false, width: 390, height: 844, ...options });
  try {
    await until(() => page.run(() => navigator.serviceWorker.controller !== null), 60_000);
    await page.server.close();
    await page.slow(slow);
    const starts = [];
    for (let i = 0; i < times; i++) {
      await page.reload();
      await page.css(figure);
      starts.push(await page.run(() => performance.now()));
    }
    return starts;
  } finally {
    await page.close();
  }
}

/**
 * Milliseconds from a key pressed in `field` until the changed `figure` had been painted, for each of `times` keys: digits added
 * and taken away in turn, so that each key changes the value. `changed` is up to the change of the document, `presented` the
 * browser's own account of keys that took 16 ms or more.
 */
export async function keystrokes({ field = FIELD, figure = FIGURE, times = 30, slow = SLOW, ...options } = {}) {
  const page = await open({ record: false, ...options });
  try {
    const input = await page.css(field);
    await page.css(figure);
    await page.type(input, "12");
    await pause(500);
    await page.run(watchKeys, field, figure);
    await page.slow(slow);
    const count = () => page.run(() => window.haulmKeys.keys.length);
    for (let i = 0; i < times; i++) {
      const digit = String(1 + (i % 9));
      const key =
        i % 2 === 0
          ? { key: digit, code: `Digit${digit}`, text: digit, windowsVirtualKeyCode: 48 + Number(digit) }
          : { key: "Backspace", code: "Backspace", windowsVirtualKeyCode: 8 };
      await page.command("Input.dispatchKeyEvent", { type: "keyDown", ...key });
      await page.command("Input.dispatchKeyEvent", { type: "keyUp", ...key, text: undefined });
      await until(async () => {
        if ((await count()) > i) return true;
        throw new Error(`${figure} did not change within 5 s after key ${i + 1} (${key.key}) in ${field}`);
      });
      // Not in step with the frames, and like a quick typist.
      await pause(60 + ((i * 7) % 17));
    }
    const { keys, presented } = await page.run(() => window.haulmKeys);
    return { painted: keys.map((key) => key.painted), changed: keys.map((key) => key.changed), presented };
  } finally {
    await page.close();
  }
}

/** One line of a report. */
export function told(name, values) {
  if (values.length === 0) return `${name}: none`;
  const list = values.map((value) => value.toFixed(1)).join(" ");
  return `${name}: median ${median(values).toFixed(1)} ms, p95 ${rank(values, 0.95).toFixed(1)} ms (n = ${values.length}: ${list})`;
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { values } = parseArgs({
    options: {
      field: { type: "string", default: FIELD },
      figure: { type: "string", default: FIGURE },
      keys: { type: "string", default: "30" },
      loads: { type: "string", default: "5" },
    },
  });
  const { paint, started } = await loads({ times: Number(values.loads) });
  console.log(`cold load at ${SLOW}x CPU slowdown, ${LINE.kbits} kbit/s, ${LINE.latency} ms`);
  console.log(told("  first contentful paint", paint));
  console.log(told("  app started", started));
  for (const slow of [SLOW, 1]) {
    const seen = await keystrokes({ field: values.field, figure: values.figure, times: Number(values.keys), slow });
    console.log(`key to painted figure at ${slow}x CPU slowdown`);
    console.log(told("  painted", seen.painted));
    console.log(told("  document changed", seen.changed));
    console.log(told("  presented, where 16 ms or more", seen.presented));
  }
}
