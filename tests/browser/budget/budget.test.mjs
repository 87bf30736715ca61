// The budgets of time, with the raw data printed. Medians are held against budgets.mjs; a busy machine shows in the p95 beside them.

import assert from "node:assert/strict";
import { test } from "node:test";
import { against, FIRST_PAINT, KEYSTROKE, LATER_START, TYPED_IN } from "../budgets.mjs";
import { keystrokes, laterStarts, LINE, loads, median, SLOW, told } from "../measure.mjs";

test(`a first visit at ${SLOW}x CPU slowdown, ${LINE.kbits} kbit/s, ${LINE.latency} ms`, async () => {
  const { paint, started } = await loads();
  console.log(told("first contentful paint", paint));
  console.log(told("app started", started));
  hold(FIRST_PAINT, paint);
  hold(TYPED_IN, started);
});

test(`a later start with no network, at ${SLOW}x CPU slowdown`, async () => {
  const starts = await laterStarts();
  console.log(told("figures there", starts));
  hold(LATER_START, starts);
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
