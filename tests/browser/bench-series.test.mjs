// A series of eight boards from the plan to the report. In the middle, with four boards made, a new run order is drawn: it moves nothing
// that was made. One factor is computed, the other has a name and a unit of its own.

import assert from "node:assert/strict";
import { field, fold, mat, more, tab } from "./bench.mjs";
import { journey } from "./harness.mjs";
import { pages } from "./pdf.mjs";

/** The run order: number, replicate, dose, press temperature. */
const order = (page) =>
  page.run(() => [...document.querySelectorAll('[aria-label="Run order"] tbody tr')].map((row) => [...row.cells].slice(0, 4).map((cell) => cell.textContent)));
const state = (page, run, column) =>
  page.run((place, label) => document.querySelector(`.grid.runs [data-run="${place}"] [data-label="${label}"]`).textContent, run, column);

/** Enters the readings of a board; hotter boards are heavier here, so that the temperature shows in the density. */
async function tested(page, at, row) {
  const mass = (row[3].startsWith("200") ? 2150 : 2050) + (at % 3);
  for (const [key, text] of [["mass", `${mass}`], ["length", "450"], ["width", "450"], ["thickness.0", "15"]]) await field(page, `board_${key}.${at}`, text);
}

journey("eight boards from plan to report, with a redraw in the middle that moves nothing", { width: 1440, height: 900, hash: "#bench", timeout: 400_000 }, async (page) => {
  await mat(page);
  await tab(page, "Series");
  await page.press("Plan series");
  await field(page, "series_level.1.0", "3");
  await field(page, "series_level.1.1", "5");
  await page.press("+ Factor");
  await page.choose("Factor B", "Other factor");
  await page.sees("the factor has no name");
  await page.type("Factor name", "Press temperature");
  await page.type("Unit of the levels", "°C");
  await field(page, "series_level.2.0", "180");
  await field(page, "series_level.2.1", "hot");
  await page.sees("“hot” is not a number");
  await field(page, "series_level.2.1", "200");
  await field(page, "series_replicates", "2");
  await fold(page, "series-order");
  await field(page, "series_seed", "1");
  await page.until(async () => assert.equal((await order(page)).length, 8));
  const planned = await order(page);
  assert.deepEqual([...new Set(planned.map((row) => row[3]))].sort(), ["180 °C", "200 °C"].map((text) => text.replace(" ", "\u00a0")));

  // One selection for the sheet and print, with the levels of the run beside it.
  await tab(page, "Weigh sheet");
  const selected = (words) => page.until(async () => assert.match(await page.run(() => document.getElementById("bench-selection").textContent), words));
  await selected(/^$/);
  await page.choose("Run", "3 of 8");
  await selected(new RegExp(`^A .* ${planned[2][2]} · B Press temperature ${planned[2][3]}$`));
  // A column of cells fills the lines from the first one on; no two numbers become one.
  const lines = await page.run(() => [...document.querySelectorAll('[data-field^="weighed."]')].map((box) => box.dataset.field));
  await page.run((box) => {
    box.focus();
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "112\n8\n");
    box.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, await page.css(`[data-field="${lines[0]}"]`));
  for (const [at, text] of [[0, "112"], [1, "8"]]) {
    await page.until(async () => assert.equal(await (await page.css(`[data-field="${lines[at]}"]`)).getProperty("value"), text));
  }
  await page.press("Clear batch 1");
  const own = await pages(await page.pdf());
  assert.ok(own.length <= 2 && own.every((sheet) => sheet.includes("Run 3 ·")), `the selected run is printed alone: ${own}`);
  await page.screenshot("bench-selection-1440", { full: true });
  await page.choose("Run", "Base sheet");

  await tab(page, "Boards");
  await page.press("+ Board for every run");
  for (let at = 1; at <= 4; at++) await tested(page, at, planned[at - 1]);

  await tab(page, "Series");
  // What is made keeps its levels, and the grid says how far each run has come.
  for (let at = 1; at <= 4; at++) await page.until(async () => assert.equal(await state(page, at, "Pressed"), "1 of 1 ✓"));
  assert.equal(await state(page, 5, "Pressed"), "–");
  await page.sees("fixed", { within: await page.css('.grid.runs [data-run="4"]') });
  await page.sees("planned", { within: await page.css('.grid.runs [data-run="5"]') });
  await page.sees("4 runs are made: their levels are fixed.");
  await fold(page, "series-order");
  const asked = () => page.press("Draw new run order");
  await asked();
  await page.sees("4 runs are made and keep their numbers and levels.");
  await page.press("Keep order");
  await page.until(async () => assert.deepEqual(await order(page), planned));
  await asked();
  await page.press("Draw order");
  await page.seesNot("4 runs are made and keep their numbers and levels.");
  await page.until(async () => assert.notEqual(await (await page.css('[data-field="series_seed"]')).getProperty("value"), "1"));
  const drawn = await order(page);
  assert.deepEqual(drawn.slice(0, 4), planned.slice(0, 4), "what is made stays at its number, with its levels");
  const combinations = (rows) => rows.map((row) => row.slice(2).join()).sort();
  assert.deepEqual(combinations(drawn), combinations(planned), "each combination is still made twice");

  await tab(page, "Boards");
  for (let at = 5; at <= 8; at++) await tested(page, at, drawn[at - 1]);
  await fold(page, "requirements");
  await page.choose("Start from", "EN 622-5, MDF, over 12 to 19 mm");
  await page.holds("Standard or customer", "EN 622-5, MDF, over 12 to 19 mm");
  await page.sees("unverified");
  // Replicates together, each combination by itself; the runs on demand.
  const groups = () => page.run(() => [...document.querySelectorAll(".by-group tbody tr")].map((row) => [...row.cells].slice(0, 2).map((cell) => cell.textContent)));
  await page.sees("Results per combination");
  await page.until(async () => assert.deepEqual((await groups()).map(([, boards]) => boards), ["2", "2", "2", "2"]));
  await page.choose("Results per run or combination", "Results per run");
  await page.until(async () => assert.deepEqual((await groups()).map(([run]) => run), [1, 2, 3, 4, 5, 6, 7, 8].map((run) => `Run ${run}`)));

  await tab(page, "Effects");
  await page.choose("Model", "Main effects only");
  await page.sees("Press temperature, from 180");
  await page.axe();
  await page.screenshot("bench-series-effects-1440", { full: true });

  await page.type("Trial name", "Dose and heat");
  await page.press("Save trial");
  await page.sees("Saved at");
  await fold(page, "trials");
  await page.sees("8 boards");
  const csv = (await page.download(() => more(page, "Export results (CSV)"))).bytes.toString();
  const [head, ...rows] = csv.trim().split("\r\n");
  assert.match(head, /"B Press temperature \[°C\]"/);
  const densities = rows.filter((row) => row.includes('"combination"') && row.includes('"density"'));
  assert.equal(densities.length, 4, "one row a combination, never pooled");
  assert.ok(densities.every((row) => row.startsWith('"Dose and heat",') && row.includes('"kg/m³",2,')), densities.join("\n"));
  // On paper each tab is a document of its own: the report with the results by combination and by run, and what the factors do;
  const report = await pages(await page.pdf());
  for (const words of [/Results by combination/, /Results by run .*Run 8/, /Effects .*Press temperature .*significant/]) assert.match(report.join(" "), words);
  // the plan with the run order and the material, and behind it a sheet a run with its levels.
  await tab(page, "Series");
  const [plan, ...sheets] = await pages(await page.pdf());
  assert.match(plan, /Material for the series/);
  assert.ok(sheets.length >= 8, `${sheets.length} sheets`);
  for (const [run, , , temperature] of drawn) {
    const own = sheets.filter((sheet) => sheet.includes(`Run ${run} ·`));
    assert.ok(own.length > 0 && own.every((sheet) => sheet.includes(`B Press temperature ${temperature.replace(/\s/g, " ")}`) && /pMDI/.test(sheet)), `run ${run} at ${temperature}: ${own}`);
  }
  await page.reload();
  await tab(page, "Series");
  await page.until(async () => assert.deepEqual(await order(page), drawn, "and it is all there after a reload"));
  // From a run to its boards.
  await page.press("Boards, Run 3");
  await page.until(async () => assert.match(await page.run(() => document.getElementById("test-pieces").textContent), /board 3$/));
  await tab(page, "Series");
  await page.look({ width: 390, height: 844, touch: true });
  await page.assertNoSideways();
  await tab(page, "Weigh sheet");
  await page.assertNoSideways();
  await page.screenshot("bench-selection-390", { full: true });
});
