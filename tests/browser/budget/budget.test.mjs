// The budgets of time, with the raw data printed. Medians are held against budgets.mjs; a busy machine shows in the p95 beside them.

import assert from "node:assert/strict";
import { test } from "node:test";
import { against, FIRST_PAINT, KEYSTROKE } from "../budgets.mjs";
import { keystrokes, LINE, loads, median, SLOW, told } from "../measure.mjs";

test(`first contentful paint at ${SLOW}x CPU slowdown, ${LINE.kbits} kbit/s, ${LINE.latency} ms`, async () => {
  const { paint, started } = await loads();
  console.log(told("first contentful paint", paint));
  console.log(told("app started", started));
  hold(FIRST_PAINT, paint);
});

for (const slow of [SLOW, 1]) {
  test(`key to painted figure at ${slow}x CPU slowdown`, async () => {
    const { painted, changed } = await keystrokes({ slow });
    console.log(told("painted", painted));
    console.log(told("document changed", changed));
    hold(KEYSTROKE, painted);
  });
}

function hold(budget, values) {
  const { words, held } = against(budget, median(values));
  console.log(words);
  assert.ok(held, `${words}\n${told(budget.what, values)}`);
}
