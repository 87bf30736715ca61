// The limits on time, with the raw data printed. Medians are held to the limits; a busy machine shows in the p95 beside them.

import assert from "node:assert/strict";
import { test } from "node:test";
import { keystrokes, LINE, loads, median, SLOW, told } from "../measure.mjs";

const FIRST_PAINT_MS = 1500;
const KEYSTROKE_MS = 50;

test(`first contentful paint within ${FIRST_PAINT_MS} ms at ${SLOW}x CPU slowdown, ${LINE.kbits} kbit/s, ${LINE.latency} ms`, async () => {
  const { paint, started } = await loads();
  console.log(told("first contentful paint", paint));
  console.log(told("app started", started));
  assert.ok(median(paint) <= FIRST_PAINT_MS, told("first contentful paint", paint));
});

for (const slow of [SLOW, 1]) {
  test(`key to painted figure within ${KEYSTROKE_MS} ms at ${slow}x CPU slowdown`, async () => {
    const { painted, changed } = await keystrokes({ slow });
    console.log(told("painted", painted));
    console.log(told("document changed", changed));
    assert.ok(median(painted) <= KEYSTROKE_MS, told("painted", painted));
  });
}
