// Systems compared: figures against the same recipe solved by itself, answers, draws that never hold the page up, files, and that
// what was chosen is there again.

import assert from "node:assert/strict";
import { journey } from "./harness.mjs";
import { sealed } from "./sealed.mjs";

const AT = { hash: "#compare" };
const shows = (page, figure, expected) => page.until(async () => assert.equal(await page.figure(figure), expected));
const stage = (page) => page.run(() => document.querySelector("[data-stage]").dataset.stage);
const kept = (page) => page.run(() => localStorage["haulm/compare"] ?? "");
/** The comparison's state as it is kept. */
const state = async (page) => JSON.parse(await kept(page));
/** A section of the page, by the id of its heading. */
const section = (page, id) => page.css(`[aria-labelledby="${id}"]`);
const draws = async (page, wanted) => page.until(async () => (await stage(page)) === wanted || false, 20_000);
/** The table of all figures: figure, system, and the cells that follow. */
const figures = (page) =>
  page.run(() => {
    let figure = "";
    return [...document.querySelectorAll(".all-figures tbody tr")].map((row) => {
      const cells = [...row.cells].map((cell) => cell.textContent);
      if (row.cells[0].tagName === "TH") figure = row.cells[0].firstChild.textContent, cells.shift();
      const [system, value, standard, freedom, factor, expanded, drawn, interval, both] = cells;
      return { figure, system, value, standard, freedom, factor, expanded, drawn, interval, both };
    });
  });
const row = (rows, figure, system) => rows.find((row) => row.figure === figure && system.test(row.system));
/** The longest task of the page from now on, in milliseconds. */
journey("at first the open recipe stands beside two systems of the library, and a working opens", AT, async (page) => {
  // The example's own water dose, as the recipe page gives it: 568.5 kg/h.
  await shows(page, "water_dose.0", "568.5");
  await shows(page, "water_dose.1", "0");
  await shows(page, "binder_on_fibre.1", "12.0");
  await page.sees("the furnish is too wet");
  await page.sees("Dry the fibre to 4.48 % dry basis");
  await page.press(/^Binder on fibre, B UF/);
  await page.sees("Numbers put in");
  await page.press("Make reference: B UF");
  await page.sees("+568");
  await page.press("Remove: C Hybrid, UF and pMDI");
  await page.choose("Add a system", "Library: PF");
  await page.press("Add");
  await page.sees("C PF");
});

journey("what was chosen and typed is there after a reload", AT, async (page) => {
  await page.choose("Add a system", "Library: MUF");
  await page.press("Add");
  await page.press("Make reference: B UF");
  await page.type("Hours a year", "6000");
  await page.choose("Input", "Board density", { within: await section(page, "solve") });
  await page.until(async () => {
    const { hours, solve, systems } = await state(page);
    assert.equal(hours.text, "6000");
    assert.equal(solve.input, "board_density");
    assert.match(JSON.stringify(systems), /muf/);
  });
  await page.reload();
  await page.sees("D MUF");
  await page.holds("Hours a year", "6000");
  assert.equal(await page.run(() => document.querySelector('[aria-pressed="true"]').ariaLabel), "Make reference: B UF");
  const chosen = () => page.run(() => document.getElementById("compare-solve.input").selectedOptions[0].textContent);
  assert.equal(await chosen(), "Board density");
});

journey("an input is solved for, out of reach is said, and two costs are made equal", AT, async (page) => {
  const answer = await page.css(".answer");
  await page.sees("gives 0 kg/h for water dose", { within: answer });
  await page.type("Target", "1e6");
  await page.sees("no allowed value gives", { within: answer });
  await page.sees("The nearest is", { within: answer });
  await page.type("Target", "much");
  await page.sees("Enter a valid target value", { within: answer });
  // Without its prices nothing is known of the other system's cost: they are asked for.
  await page.sees("Prices are missing. UF");
  await page.run(() => document.querySelector('[aria-labelledby="side"] details summary').click());
  await page.type("Price, as delivered: UF resin", "700");
  await page.type("Price, as delivered: Ammonium sulfate solution", "300");
  await page.type("Price, as delivered: Urea solution", "350");
  await page.sees("both cost the same per volume of board");
});

journey("draws are made in slices, agree with first order, and can be cancelled", AT, async (page) => {
  await page.press("Run Monte Carlo");
  await draws(page, "done");
  await page.sees("100000 draws from seed 1");
  // Every figure at once: each system and each difference against the reference, by both methods.
  const rows = await figures(page);
  assert.ok(rows.length > 75, `${rows.length} rows`);
  for (const row of rows) {
    assert.match(row.both, /^(exact|agree|differ: [^;].*)$/, JSON.stringify(row));
    if (row.both !== "exact") assert.match(row.interval, /\d … /, JSON.stringify(row));
  }
  // The belt scale that all have in common reads the same too much for all: nothing is left of it in the difference.
  assert.equal(row(rows, "Fibre", /^A /).standard, "49");
  assert.deepEqual([row(rows, "Fibre", /^B − A$/).standard, row(rows, "Fibre", /^B − A$/).both], ["0", "exact"]);
  const [wet, difference] = [row(rows, "Mat weight, moist", /^B /), row(rows, "Mat weight, moist", /^B − A$/)];
  assert.ok(Number(difference.drawn) < Number(wet.drawn) / 2, JSON.stringify([wet, difference]));
  await page.sees("Both methods agree for");
  await page.choose("Draws", "1\u202f000\u202f000");
  // Pressed by the page itself as soon as the button is there: a driver's click may come when all is done.
  await page.run(() => {
    const cancel = () => {
      const button = document.querySelector("#draw + button");
      if (button && !button.disabled) button.click();
      else requestAnimationFrame(cancel);
    };
    document.getElementById("draw").click();
    requestAnimationFrame(cancel);
  });
  await draws(page, "cancelled");
  await page.sees("Cancelled.");
});

journey("each ± can be typed, stated otherwise and left out", AT, async (page) => {
  await page.run(() => [...document.querySelectorAll("summary")].find((s) => s.textContent.startsWith("Uncertainty of the inputs")).click());
  const gauge = "±: Thickness gauge: Finished thickness (all systems)";
  await page.holds(gauge, "0.1");
  await page.type(gauge, "0.2");
  await page.sees("it makes up 91 % of the variance");
  await page.type(gauge, "0");
  await page.sees("which cannot be");
  await page.seesNot("improve this first. Thickness gauge");
  await page.type(gauge, "0.4");
  await page.sees("it makes up 97 % of the variance");
});

journey("degrees of freedom are typed, checked, kept, and carried to the figures", AT, async (page) => {
  const open = () =>
    page.run(() => [...document.querySelectorAll("summary")].find((s) => s.textContent.startsWith("Uncertainty of the inputs")).click());
  await open();
  const gauge = "Degrees of freedom: Thickness gauge: Finished thickness (all systems)";
  await page.type(gauge, "0.5");
  await page.sees("from 1");
  assert.equal(row(await figures(page), "Mat weight, moist", /^A /).freedom, "∞");
  await page.type(gauge, "3");
  await page.until(async () => assert.match(row(await figures(page), "Mat weight, moist", /^A /).freedom, /^[3-9]/));
  const { factor } = row(await figures(page), "Mat weight, moist", /^A /);
  assert.ok(Number(factor) > 2.3, factor);
  await page.until(async () => {
    const { sources } = (await state(page)).uncertainty;
    assert.equal(sources.find(({ key }) => key === "thickness")?.freedom?.text, "3");
  });
  await page.reload();
  await open();
  await page.holds(gauge, "3");
});

journey("typing the hours changes the cost per year and leaves the rest of the tables alone", AT, async (page) => {
  await shows(page, "water_dose.0", "568.5");
  const before = await page.figure("cost_per_year.0");
  await page.run(() => {
    window.kept = [".beside tbody tr", ".all-figures tbody tr", ".multiples svg", ".drawing svg"].map((css) => document.querySelector(css));
  });
  await page.type("Hours a year", "3750");
  await page.until(async () => assert.notEqual(await page.figure("cost_per_year.0"), before));
  assert.ok(await page.run(() => window.kept.every((node) => node.isConnected)));
  const yearly = row(await figures(page), "Cost per year", /^A /);
  assert.equal(yearly.value.replace(/\D/g, "").slice(0, 3), (await page.figure("cost_per_year.0")).replace(/\D/g, "").slice(0, 3));
});

journey("of many recipes a part of the name finds one", AT, async (page) => {
  assert.equal(await page.run(() => document.getElementById("compare-find").checkVisibility()), false);
  await page.go("#recipe");
  await page.press("Save");
  const entry = async () => Object.entries(await page.records()).find(([key]) => key.startsWith("haulm/revision/"))?.[1] ?? null;
  const text = await page.until(entry);
  const made = Array.from({ length: 220 }, (_, n) => {
    const record = JSON.parse(text);
    record.saved_at -= (n + 1) * 60_000;
    record.name = `Trial ${n}`;
    return sealed(record);
  });
  await page.putRecords(made);
  await page.go("#compare");
  await page.sees("200 of 221 recipes are listed");
  await page.type("Find by name", "trial 219");
  await page.seesNot("recipes are listed");
  await page.press("Add");
  await page.sees("D Trial 219");
  await page.type("Find by name", "no such recipe");
  await page.sees("No other name contains this text");
});

journey("drawings follow the window's width", AT, async (page) => {
  const wide = () => page.run(() => document.querySelector('[aria-labelledby="sweep"] .drawing svg').viewBox.baseVal.width);
  await page.until(async () => assert.equal(await wide(), 680));
  await page.look({ width: 500 });
  await page.until(async () => assert.equal(await wide(), 340));
  await page.look({ width: 1200 });
  await page.until(async () => assert.equal(await wide(), 680));
});

journey("table and drawings go to files, with the line cut after the load", AT, async (page) => {
  await page.line({ offline: true });
  const csv = await page.download(() => page.press("Export table as CSV"));
  assert.equal(csv.name, "comparison.csv");
  assert.match(csv.bytes.toString("utf8"), /"Water dose \(water, by mass\)","kg\/h",568\.46/);
  assert.match(csv.bytes.toString("utf8"), /\r?\n"?Uncertainty"?\r?\n.*Degrees of freedom.*\r?\n"?Fibre: /s);
  const xlsx = await page.download(() => page.press("Export table as XLSX"));
  assert.equal(xlsx.bytes.subarray(0, 2).toString(), "PK");
  assert.match(xlsx.bytes.toString("latin1"), /<f>D\d+-C\d+<\/f>/);
  const sweep = await section(page, "sweep");
  const svg = await page.download(() => page.press("Export drawing as SVG", { within: sweep }));
  assert.match(svg.bytes.toString("utf8"), /^<svg xmlns=.*Water dose over Fibre moisture/s);
  const png = await page.download(() => page.press("Export drawing as PNG", { within: sweep }));
  assert.equal(png.bytes.subarray(1, 4).toString(), "PNG");
  await page.press("Run Monte Carlo");
  await draws(page, "done");
});

journey("the report prints", AT, async (page) => {
  await page.press("Show report");
  await page.sees("Heat of water: IAPWS-95.");
  const pdf = await page.pdf("A4");
  assert.equal(pdf.subarray(0, 4).toString(), "%PDF");
  assert.ok(pdf.length > 20_000, `${pdf.length} bytes`);
});

for (const [width, height, touch] of [[390, 844, true], [820, 1180, true], [1440, 900, false]]) {
  journey(`the page is clean to axe at ${width} px`, { width, height, touch, ...AT }, async (page) => {
    await page.run(() => document.querySelectorAll("details").forEach((details) => (details.open = true)));
    await page.press("Run Monte Carlo");
    await draws(page, "done");
    await page.type("Target(kg/h)", "much");
    await page.assertNoSideways();
    await page.axe();
    await page.screenshot(`compare-${width}`, { full: true });
    if (width === 390) {
      await page.look({ width: 320 });
      await page.assertNoSideways();
    }
  });
}
