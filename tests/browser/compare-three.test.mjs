// Three systems side by side: A beyond a limit, B at a bound, C without prices. Each is said to be so, and goes out so.

import assert from "node:assert/strict";
import { journey } from "./harness.mjs";

const field = async (page, key, text) => page.type(await page.css(`[data-field="${key}"]`), text);
const tab = async (page, name) => page.press(name, { within: await page.css(".sections") });

journey("one beyond a limit, one at a bound, one without prices", { width: 1440, height: 900, hash: "#recipe", timeout: 300_000 }, async (page) => {
  await page.run(() => document.querySelectorAll("details").forEach((details) => (details.open = true)));
  // 8.5 t/h of fibre with 20 % of binder and 0.8 % of wax are 10.27 t/h of furnish: more than the blender takes of A alone.
  await field(page, "blender_capacity", "10 t/h");
  await field(page, "dose.1", "20");
  await page.go("#compare");
  await page.press("Remove: C Hybrid, UF and pMDI");
  await page.click("#compare-add-open");
  await page.choose("System", "Library: PF", { within: await page.css("#compare-add") });
  await page.press("Add", { within: await page.css("#compare-add") });
  await page.sees("C PF");
  for (const [liquid, price] of [["UF resin", "700"], ["Ammonium sulfate solution", "300"], ["Urea solution", "350"]]) {
    await page.type(`${liquid} price`, price);
  }

  // C: no cost and no mark, and what is missing is asked for.
  await page.sees("Cost of C: prices missing", { within: await page.css(".verdict") });
  const costs = () => page.run(() => [...document.querySelectorAll('[data-key="cost"] [data-figure^="cost."]')].map((cell) => cell.dataset.figure));
  await page.until(async () => assert.deepEqual(await costs(), ["cost.0", "cost.1"]));
  await page.until(async () => assert.equal(await page.run(() => document.querySelectorAll('[data-key="cost"] .strip .mk').length), 2));

  // A: beyond what the blender takes; its row says so, the sweep marks where that begins, and an answer beyond it says so.
  assert.match(await page.run(() => document.querySelector('[data-key="finished_volume"]').querySelectorAll("td.system-col")[0].textContent), /over limit/);
  await tab(page, "Sensitivity");
  await page.run(() => {
    const select = document.getElementById("compare-sweep.input");
    select.value = "fibre_flow";
    select.dispatchEvent(new Event("change", { bubbles: true }));
  });
  await page.sees("more furnish than the blender takes");
  await tab(page, "Solve & break-even");
  await page.sees("the blender takes", { within: await page.css(".answer") });

  // What another system doses is offered, and that this one does not use it is said.
  await page.run(() => {
    const select = document.getElementById("compare-solve.input");
    select.value = [...select.options].find((option) => option.value.includes("PF")).value;
    select.dispatchEvent(new Event("change", { bubbles: true }));
  });
  await page.sees("this recipe does not use it", { within: await page.css(".answer") });

  // B: its water dose is zero, a bound: by both methods zero is not called exact where draws lie on one side.
  await tab(page, "Table");
  await page.until(async () => assert.equal(await page.figure("water_dose.1"), "0 kg/h"));
  await tab(page, "Uncertainty");
  await page.press("Run Monte Carlo");
  await page.until(async () => (await page.run(() => document.querySelector("[data-stage]").dataset.stage)) === "done" || false, 30_000);
  await page.sees("its distribution is one-sided");
  const bound = await page.run(() => [...document.querySelectorAll("table.sure tr[data-result]")].find((row) => /^\s*B /.test(row.textContent)).textContent);
  assert.match(bound, /at its bound in \d+ % of draws/);
  assert.doesNotMatch(bound, /exact/);

  const save = async (name) => {
    if (!(await page.run(() => document.querySelector("#compare-more").checkVisibility()))) await page.click("#compare-more-open");
    return page.download(() => page.press(name));
  };
  const csv = (await save("Export as CSV")).bytes.toString("utf8");
  assert.match(csv, /Sensitivity\r\n|"Sensitivity"\r\n/);
  assert.match(csv, /Limited by more furnish than the blender takes/);
  assert.doesNotMatch(csv, /\de-1[0-9]/, "no rounding noise");
  const xlsx = await save("Export as XLSX");
  assert.equal(xlsx.bytes.subarray(0, 2).toString(), "PK");

  // ppm and mg/m³, both ways: 0.1 mg/m³ at 23 °C are 0.0809 ppm.
  await tab(page, "Table");
  await page.run(() => document.querySelectorAll(".compare-sheet details").forEach((details) => (details.open = true)));
  await page.type("Formaldehyde in air, mg/m³", "0.1");
  await page.until(async () => assert.ok(await page.run(() => document.body.textContent.includes("0.0809"))));
  await page.axe();
  await page.screenshot("compare-three-1440", { full: true });
});
