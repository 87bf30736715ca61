// The bench: the sheet against the worked example, weighing by keyboard, a series with its effects, boards by the standards'
// formulas, trials kept and given out, and wrong input.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";

const AT = { hash: "#bench" };
const WIDE = { width: 1024, height: 768, ...AT };
const PHONE = { width: 390, height: 844, touch: true, ...AT };
const shows = (page, figure, expected) => page.until(async () => assert.equal(await page.figure(figure), expected));
const field = async (page, key, text) => page.type(await page.css(`[data-field="${key}"]`), text);
const section = async (page, name) => page.press(name, { within: await page.css(".bench .sections") });
const focused = (page) => page.run(() => document.activeElement.dataset.field ?? document.activeElement.id);
const stored = (page, test) => page.until(async () => assert.match((await page.run(() => localStorage["haulm/bench"])) ?? "", test));

async function mat(page) {
  await field(page, "bench_mat_length", "450");
  await field(page, "bench_mat_width", "450");
}

// By hand, of the example recipe: raw board 680 · (15 + 1.1 · 0.6) mm = 10.6488 kg/m², over 1.07 is 9.95215 kg/m² oven-dry;
// times 0.2025 m² is 2.01531 kg; at 10.5 % it is 2.22692 kg.
journey("the sheet begins with the recipe that is open, and every figure opens its working", WIDE, async (page) => {
  await page.sees("Enter mat length and width to see the weigh sheet.");
  await mat(page);
  await shows(page, "bench_mat_oven_dry", "2015.3 g");
  await shows(page, "bench_mat_moist", "2226.9 g");
  await shows(page, "bench_stops", "15.60 mm");
  await (await page.css('[aria-controls="working-bench_mat_moist"]')).click();
  await page.sees("Numbers put in");
  await page.css("#working-bench_mat_moist math");
  // Half a batch at a time.
  await field(page, "bench_boards", "4");
  await field(page, "bench_capacity", "5 kg");
  await page.sees("equal batches");
});

journey("wrong input is told at its box, the last sheet stays as an old one", WIDE, async (page) => {
  await mat(page);
  await shows(page, "bench_mat_moist", "2226.9 g");
  await field(page, "bench_mat_width", "abc");
  await page.sees("is not a number");
  await page.sees("Old sheet");
  await shows(page, "bench_mat_moist", "2226.9 g");
  await field(page, "bench_mat_width", "-3");
  await page.sees("which cannot be");
  await field(page, "bench_mat_width", "1,450");
  await page.sees("can be read as");
  await field(page, "bench_mat_width", "450");
  await page.seesNot("Old sheet");
  await field(page, "bench_boards", "1.5");
  await page.sees("not a whole number");
});

journey("weighing goes on with Enter, and what remains keeps the ratio", WIDE, async (page) => {
  await mat(page);
  await field(page, "bench_overage", "0");
  const planned = async (line) => Number((await page.figure(`planned.${line}`)).replace(/[^0-9.]/g, ""));
  await section(page, "Weighing");
  const [fibre, resin] = [await planned("fibre"), await planned("liquid.1")];
  await (await page.css('[data-field="weighed.fibre"]')).click();
  await page.keys(...String(fibre * 2), Key.ENTER);
  assert.equal(await focused(page), "weighed.liquid.1", "Enter goes to the next line");
  const toAdd = async (line) => Number((await page.figure(`to_add.${line}`)).replace(/[^0-9.]/g, ""));
  await page.until(async () => assert.ok(Math.abs((await toAdd("liquid.1")) / resin - 2) < 0.001));
  await page.keys("1", Key.ENTER);
  assert.notEqual(await focused(page), "weighed.liquid.1");
  await stored(page, /weighed/);
  await page.reload();
  await page.until(async () => assert.equal(await (await page.css('[data-field="bench_mat_length"]')).getProperty("value"), "450"));
  await section(page, "Weighing");
  assert.equal(await (await page.css('[data-field="weighed.liquid.1"]')).getProperty("value"), "1");
  await page.press("Clear this batch");
  await shows(page, "to_add.fibre", `${await page.figure("planned.fibre")}`);
});

// By hand: 350 N over 50 mm · 50 mm is 0.14 N/mm²; 3 · 900 · 300 / (2 · 50 · 15²) is 36 N/mm²; 25.5 g in 50 · 50 · 15 mm is
// 680 kg/m³, and dried to 23.8 g 7.143 %; 15 to 16.5 mm is 10 %.
journey("a board's raw readings become the standards' figures", WIDE, async (page) => {
  await mat(page);
  await section(page, "Boards made");
  await page.sees("No boards yet.");
  await page.press("+ Board");
  await page.click("#density-pieces > summary");
  const put = { "piece_mass.0": "25.5", "piece_length.0": "50", "piece_width.0": "50", "piece_thickness.0": "15", "piece_dry.0": "23.8",
    "bending_span.0": "300", "bending_width.0": "50", "bending_thickness.0": "15", "bending_load.0": "900",
    "bond_length.0": "50", "bond_width.0": "50", "bond_load.0": "350", "swelling_before.0": "15", "swelling_after.0": "16.5" };
  for (const [key, text] of Object.entries(put)) await field(page, `${key}.1`, text);
  await shows(page, "board.1.density.0", "680.0 kg/m³");
  await shows(page, "board.1.mor.0", "36.0 N/mm²");
  await shows(page, "board.1.bond.0", "0.140 N/mm²");
  await page.until(async () => assert.match(await page.figure("board.1.swelling.0"), /^10\.00? %$/));
  await page.click('[aria-controls="working-board.1.mor.0"]');
  await page.sees("EN 310", { within: await page.css('[id="working-board.1.mor.0"]') });
  // Esc closes a working and goes back to its figure.
  await page.keys(Key.ESCAPE);
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.getAttribute("aria-controls")), "working-board.1.mor.0"));
  await page.click("#next-mat > summary");
  await page.sees("Furnish, next mat");
  await page.click("#requirements > summary");
  await field(page, "required.internal_bond", "0.3");
  await page.sees("too few boards to tell");
  await field(page, "piece_dry.0.1", "26");
  await page.sees("heavier oven-dry than moist");
  await page.axe();
});

journey("a series is planned, made and told in plain words, and kept, given out, opened again", { ...WIDE, timeout: 300_000 }, async (page) => {
  await mat(page);
  await section(page, "Series");
  await page.press("Plan series");
  await field(page, "series_level.1.0", "3");
  await field(page, "series_level.1.1", "5");
  await page.press("+ Factor");
  await page.choose("Factor B", "Board density");
  await field(page, "series_level.2.0", "600");
  await field(page, "series_level.2.1", "700");
  await page.sees("2^2", { within: await page.css("#series-design") });
  await page.click("#series-material > summary");
  await page.sees("Material for the series");
  await page.sees("Fibre, moist", { within: await page.css("#series-material table") });
  const order = () => page.run(() => [...document.querySelectorAll(".grid.runs tbody tr")].map((row) => row.textContent).join("|"));
  // A new series draws its own seed; the journey begins at one that is known.
  await page.click("#series-order > summary");
  await field(page, "series_seed", "1");
  await stored(page, /"seed":\{[^}]*"1"/);
  const first = await order();
  await field(page, "series_seed", "7");
  await page.until(async () => assert.notEqual(await order(), first));
  await field(page, "series_seed", "1");
  await page.until(async () => assert.equal(await order(), first, "the same seed gives the same order"));
  const levels = await page.run(() => [...document.querySelectorAll(".grid.runs tbody tr")].map((row) => row.textContent));
  assert.ok(levels.length === 4 && levels.every((row) => row.includes("planned")), levels.join("|"));
  await section(page, "Boards made");
  await page.press("+ Board for every run");
  for (let at = 1; at <= 4; at++) {
    await field(page, `board_mass.${at}`, levels[at - 1].includes("700") ? "2150" : `${1850 + at}`);
    await field(page, `board_length.${at}`, "450");
    await field(page, `board_width.${at}`, "450");
    await field(page, `board_thickness.0.${at}`, "15");
  }
  await section(page, "Effects");
  await page.choose("Model", "Main effects only");
  await page.sees("Board density raises density.");
  await page.sees("No significant effect on density of dose of", { within: await page.css(".also-says") });
  await page.click("#anova > summary");
  await page.sees("Sum of squares", { within: await page.css("#anova") });
  await page.axe();
  await page.screenshot("bench-effects-1024", { full: true });
  await page.type("Trial name", "Dose and density");
  await page.press("Save trial");
  await page.sees("Saved at");
  await section(page, "Trials");
  await page.sees("Dose and density", { within: await page.css(".trials .lines") });
  const csv = await page.download(() => page.press("Export boards (CSV)"));
  assert.match(csv.bytes.toString(), /board_density/);
  assert.equal(csv.bytes.toString().trim().split("\r\n").length, 5);
  const json = await page.download(() => page.press("Export trial (JSON)"));
  assert.equal(JSON.parse(json.bytes).haulm, "trial");
  await page.press("New trial");
  await page.sees("Not saved yet");
  await page.press("Open Dose and density");
  await page.sees("Saved at");
  const pdf = await page.pdf();
  assert.ok((pdf.toString("latin1").match(/\/Type\s*\/Page\b/g) ?? []).length >= 5, "one page a board at least");
  await page.look({ width: 390, height: 844, touch: true });
  await section(page, "Series");
  await page.assertNoSideways();
  await page.axe();
  await page.screenshot("bench-series-390", { full: true });
});

for (const [name, look] of [["390", PHONE], ["1024", WIDE]]) {
  journey(`the bench is clean to axe at ${name} px`, look, async (page) => {
    await mat(page);
    await field(page, "bench_spray_volume", "100");
    await page.axe();
    await page.assertNoSideways();
    await page.screenshot(`bench-sheet-${name}`, { full: true });
    await section(page, "Weighing");
    await field(page, "weighed.fibre", "9,999.9");
    await page.axe();
    await page.assertNoSideways();
    await page.screenshot(`bench-weighing-${name}`, { full: true });
    await section(page, "Boards made");
    await page.press("+ Board");
    await page.axe();
    await page.assertNoSideways();
    await page.screenshot(`bench-boards-${name}`, { full: true });
  });
}
