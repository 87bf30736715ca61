// Systems compared: figures against the same recipe solved by itself, prices asked in place, answers, draws of the chosen figures, files,
// paper, and that what was chosen is there again.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";
import { sealed } from "./sealed.mjs";

const AT = { hash: "#compare" };
const shows = (page, figure, expected) => page.until(async () => assert.equal(await page.figure(figure), expected));
const stage = (page) => page.run(() => document.querySelector("[data-stage]").dataset.stage);
const kept = (page) => page.run(() => localStorage["haulm/compare"] ?? "");
/** The comparison's state as it is kept. */
const state = async (page) => JSON.parse(await kept(page));
const tab = async (page, name) => page.press(name, { within: await page.css(".sections") });
/** Opens a fold by its id. */
const unfold = (page, id) => page.until(() => page.run((id) => {
  const fold = document.getElementById(id);
  if (!fold) return false;
  if (!fold.open) fold.querySelector("summary").click();
  return fold.open;
}, id));
const draws = async (page, wanted) => page.until(async () => (await stage(page)) === wanted || false, 20_000);
const add = async (page, system) => {
  if (!(await page.run(() => document.getElementById("compare-next")?.checkVisibility()))) await page.click("#compare-add-open");
  await page.choose("System", system, { within: await page.css("#compare-add") });
  await page.press("Add", { within: await page.css("#compare-add") });
};
/** The rows of the uncertainty: group, name and cells. */
const results = (page) =>
  page.run(() => [...document.querySelectorAll("table.sure tbody")].flatMap((body) => {
    const group = body.querySelector("tr.group th").textContent;
    return [...body.querySelectorAll("tr[data-result]")].map((row) => {
      const text = (css) => row.querySelector(css)?.textContent ?? "";
      return { group, name: text("button").trim(), value: text(".value"), expanded: text(".expanded"), first: text(".first-order"), drawn: text(".drawn"), use: text(".use") };
    });
  }));
const row = (rows, group, name) => rows.find((row) => group.test(row.group) && name.test(row.name));
/** Ticks or clears a figure whose uncertainty is worked out. */
async function pick(page, label) {
  if (!(await page.run(() => document.querySelector("#choose-results").checkVisibility()))) await page.click("#choose-results-open");
  await page.run((label) => {
    const box = [...document.querySelectorAll("#choose-results label")].find((own) => own.textContent.trim() === label)?.querySelector("input");
    if (!box) throw new Error(`no figure "${label}"`);
    box.click();
  }, label);
}

journey("at first the open recipe is beside two systems of the library, with a verdict and eight key figures", AT, async (page) => {
  // The example's own water dose, as the recipe page gives it: 568.5 kg/h.
  await shows(page, "water_dose.0", "568.5 kg/h");
  await shows(page, "water_dose.1", "0 kg/h");
  await page.sees("the furnish is too wet", { within: await page.css(".warnings") });
  await page.sees("Dry the fibre to 4.48 % dry basis", { within: await page.css(".warnings") });
  assert.equal(await page.run(() => document.querySelectorAll(".key-table tr[data-key]").length), 8);
  // UF is too wet to run: a mark and a word in its cell, not colour alone.
  const wet = await page.run(() => document.querySelector('[data-key="water_excess"]').cells[3].textContent);
  assert.match(wet, /too wet/);
  await page.sees("Cost of B and C: prices missing", { within: await page.css(".verdict") });
  // Every number of a row has the same decimals, and a difference is that of the figures shown.
  const [own, other, more] = await page.run(() => {
    const cells = [...document.querySelector('[data-key="finished_volume"]').querySelectorAll("td.system-col")];
    // The unit is only read out.
    const number = (text) => /[+−-]?[\d.]+/.exec(text)[0].replace("−", "-");
    return [cells[0].querySelector("[data-figure]"), cells[1].querySelector("[data-figure]"), cells[1].querySelector(".diff")].map((part) => number(part.textContent));
  });
  assert.ok(Math.abs(Number(other) - Number(own) - Number(more)) < 1e-9, `${other} − ${own} is not ${more}`);
  await unfold(page, "all-results");
  await shows(page, "binder_on_fibre.1", "12.0 %");
  await page.press(/^Binder on fibre, B UF/);
  await page.sees("With numbers");
  await page.keys(Key.ESCAPE);
  await page.until(async () => assert.equal(await page.run(() => document.querySelector(".working-panel")), null));
  assert.match(await page.run(() => document.activeElement.getAttribute("aria-controls")), /^all-working-binder_on_fibre/);
  await page.choose("Reference", "B UF");
  await page.sees("+568.5");
  await page.press("Remove: C Hybrid, UF and pMDI");
  await page.sees("removed", { within: await page.css(".notice") });
  await page.press("Undo", { within: await page.css(".notice") });
  await page.sees("C Hybrid, UF and pMDI");
  await page.press("Remove: C Hybrid, UF and pMDI");
  await add(page, "Library: PF");
  await page.sees("C PF");
  // Ctrl+Z takes back what was done here, and leaves the recipe as it is.
  const opener = await page.css("#compare-add-open");
  await opener.sendKeys(Key.chord(Key.CONTROL, "z"));
  await page.seesNot("C PF");
  await opener.sendKeys(Key.chord(Key.CONTROL, "y"));
  await page.sees("C PF");
  await page.press("Recipe");
  await page.shows("water_dose", "568.5 kg/h");
});

journey("a price that is missing is asked for in place: no cost, no mark and no break-even without it", AT, async (page) => {
  await shows(page, "water_dose.0", "568.5 kg/h");
  const strip = () => page.run(() => document.querySelector('[data-key="cost"] .strip-cell').textContent.trim());
  const marks = () => page.run(() => document.querySelectorAll('[data-key="cost"] .strip .mk').length);
  assert.equal(await marks(), 0);
  assert.match(await strip(), /Not drawn: a price is missing/);
  const cost = (at) => page.run((at) => document.querySelector('[data-key="cost"]').querySelectorAll("td.system-col")[at], at).then((cell) => page.run((cell) => (cell.querySelector("[data-figure]") ?? cell.querySelector(".value")).textContent.trim(), cell));
  assert.match(await cost(1), /^–/);
  for (const [liquid, price] of [["UF resin", "700"], ["Ammonium sulfate solution", "300"], ["Urea solution", "350"]]) {
    await page.type(`${liquid} price`, price);
    // The box stays while the row changes.
    assert.equal(await page.run(() => document.activeElement.value), price);
  }
  await page.until(async () => assert.match(await cost(1), /^\d/));
  await page.until(async () => assert.equal(await marks(), 3));
  // UF cannot run: from which fibre on it could, and what it would cost then.
  await page.sees("from fibre at 4.48", { within: await page.css(".verdict") });
  await page.sees("can run at 4.5 % db", { within: await page.css(".verdict") });
  // Release agent: for the systems with an isocyanate alone.
  assert.equal(await page.run(() => document.querySelectorAll('[data-key="cost_with_agent"] input').length), 2);
  await page.type("Release agent, per m² of board, C Hybrid, UF and pMDI", "0.1");
  await page.until(async () => assert.match(await page.figure("cost_with_agent.2"), /^\d/));
  await tab(page, "Solve & break-even");
  await page.sees("both cost the same per volume of board");
});

journey("what was chosen and typed is there after a reload", AT, async (page) => {
  await add(page, "Library: MUF");
  await page.choose("Reference", "B UF");
  await unfold(page, "all-results");
  await page.type("Hours a year", "6000");
  await tab(page, "Solve & break-even");
  await page.choose("Input", "Board density");
  await page.until(async () => {
    const { hours, solve, systems } = await state(page);
    assert.equal(hours.text, "6000");
    assert.equal(solve.input, "board_density");
    assert.match(JSON.stringify(systems), /muf/);
  });
  await page.reload();
  await page.sees("D MUF");
  await unfold(page, "all-results");
  await page.holds("Hours a year", "6000");
  assert.equal(await page.run(() => document.getElementById("compare-reference").selectedOptions[0].textContent), "B UF");
  await tab(page, "Solve & break-even");
  const chosen = () => page.run(() => document.getElementById("compare-solve.input").selectedOptions[0].textContent);
  assert.equal(await chosen(), "Board density");
});

journey("an input is solved for, out of reach is said, and two costs are made equal", AT, async (page) => {
  await tab(page, "Solve & break-even");
  const answer = await page.css(".answer");
  await page.sees("gives 0 kg/h for water dose", { within: answer });
  await page.type("Target", "1e6");
  await page.sees("no allowed value gives", { within: answer });
  await page.sees("The nearest is", { within: answer });
  await page.type("Target", "much");
  await page.sees("Enter a valid target value", { within: answer });
  // Without its prices nothing is known of the other system's cost: they are asked for.
  await page.sees("Prices are missing. UF");
  await page.type("UF resin price", "700");
  await page.type("Ammonium sulfate solution price", "300");
  await page.type("Urea solution price", "350");
  await page.sees("both cost the same per volume of board");
});

journey("draws of the chosen figures agree with first order, and can be cancelled", AT, async (page) => {
  await tab(page, "Uncertainty");
  await pick(page, "Fibre");
  await pick(page, "Mat weight, wet");
  await page.press("Run Monte Carlo");
  await draws(page, "done");
  await page.until(async () => assert.match(await page.run(() => document.querySelector("[data-stage]").textContent), /^100\s000 draws from seed 1/));
  // Each system and each difference against the reference, by both methods.
  const rows = await results(page);
  assert.ok(rows.length >= 15, `${rows.length} rows`);
  for (const row of rows) {
    assert.match(row.use || "exact", /^(exact|either|more draws needed|Monte Carlo: .+)$/, JSON.stringify(row));
    if (row.drawn !== "exact") assert.match(row.drawn, /\d to \S*\d/, JSON.stringify(row));
  }
  // The belt scale, ± 1 % as limits on 8500 kg/h: 85/√3 · 1.96 = 96 kg/h. What it reads too much is too much for all: nothing is left of it in the difference.
  assert.match(row(rows, /^Fibre,/, /^A /).expanded, /^±\s96$/);
  assert.equal(row(rows, /^Fibre difference/, /^B − A$/).expanded, "exact");
  const wide = ({ drawn }) => drawn.split(" to ").map((text) => Number(text.replace("−", "-"))).reduce((low, high) => high - low);
  const [wet, difference] = [row(rows, /^Mat weight, wet,/, /^B /), row(rows, /^Mat weight, wet difference/, /^B − A$/)];
  assert.ok(wide(difference) < wide(wet) / 2, JSON.stringify([wet, difference]));
  // Rounded to its ±, all of a group to the same place.
  for (const group of new Set(rows.map((row) => row.group))) {
    const decimals = rows.filter((row) => row.group === group && /\d/.test(row.expanded)).map((row) => row.expanded.split(".")[1]?.length ?? 0);
    assert.ok(new Set(decimals).size <= 1, `${group}: ${decimals}`);
  }
  await page.choose("Draws", "1\u202f000\u202f000");
  // Pressed by the page itself as soon as the button is there: a driver's click may come when all is done.
  await page.run(() => {
    const cancel = () => {
      const button = document.querySelector("#draw + button");
      if (button && !button.hidden) button.click();
      else requestAnimationFrame(cancel);
    };
    document.getElementById("draw").click();
    requestAnimationFrame(cancel);
  });
  await draws(page, "cancelled");
  await page.sees("Cancelled.");
});

journey("each ± can be typed, stated otherwise and left out, and the budget says what to improve", AT, async (page) => {
  await tab(page, "Uncertainty");
  await pick(page, "Mat weight, wet");
  await page.press(/^Mat weight, wet, .*, A .*show its budget/);
  const gauge = "± of Finished thickness";
  await page.holds(gauge, "0.1");
  await page.type(gauge, "0.2");
  const improve = await page.css(".budget");
  await page.sees("Finished thickness, 91 % of the variance", { within: improve });
  await page.type(gauge, "0");
  await page.keys(Key.TAB);
  await page.sees("which is not possible");
  await page.seesNot("Improve first: Finished thickness");
  await page.type(gauge, "0.4");
  await page.sees("Finished thickness, 97 % of the variance", { within: improve });
  await page.choose("Meaning of ± for Finished thickness", "Standard uncertainty");
  // The same number, stated otherwise, is a wider ±.
  await page.holds(gauge, "0.4");
  await page.sees("Finished thickness, 99 % of the variance", { within: improve });
});

journey("degrees of freedom are typed, checked, kept, and carried to the figures", AT, async (page) => {
  await tab(page, "Uncertainty");
  await pick(page, "Mat weight, wet");
  await page.press(/^Mat weight, wet, .*, A .*show its budget/);
  const detail = () => page.run(() => document.getElementById("budget-detail").textContent);
  const gauge = "Degrees of freedom of Finished thickness";
  await page.type(gauge, "0.5");
  await page.keys(Key.TAB);
  await page.sees("from 1");
  assert.match(await detail(), /∞ degrees of freedom/);
  await page.type(gauge, "3");
  await page.until(async () => assert.match(await detail(), / [3-9]\S* degrees of freedom/));
  const factor = Number(/factor ([\d.]+)/.exec(await detail())[1]);
  assert.ok(factor > 2.3, `${factor}`);
  await page.until(async () => {
    const { sources } = (await state(page)).uncertainty;
    assert.equal(sources.find(({ key }) => key === "thickness")?.freedom?.text, "3");
  });
  await page.reload();
  await tab(page, "Uncertainty");
  await page.holds(gauge, "3");
});

journey("typing the hours changes the cost per year and leaves the rest of the tables alone", AT, async (page) => {
  await shows(page, "water_dose.0", "568.5 kg/h");
  await unfold(page, "all-results");
  await page.until(async () => assert.match(await page.figure("cost_per_year.0"), /\d/));
  const before = await page.figure("cost_per_year.0");
  await page.run(() => {
    window.kept = [".key-table tbody tr", ".key-table svg.strip", "table.beside tbody tr", "table.beside [data-figure]"].map((css) => document.querySelector(css));
  });
  await page.type("Hours a year", "3750");
  await page.until(async () => assert.notEqual(await page.figure("cost_per_year.0"), before));
  assert.ok(await page.run(() => window.kept.every((node) => node.isConnected)));
  const digits = (text) => text.replace(/\D/g, "").slice(0, 3);
  const yearly = digits(await page.figure("cost_per_year.0"));
  await tab(page, "Uncertainty");
  await pick(page, "Cost per year");
  await page.until(async () => assert.equal(digits(row(await results(page), /^Cost per year/, /^A /).value), yearly));
});

journey("of many recipes a part of the name finds one", AT, async (page) => {
  await page.click("#compare-add-open");
  assert.equal(await page.run(() => document.getElementById("compare-find")), null);
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
  await page.click("#compare-add-open");
  await page.sees("200 of 221 recipes are listed");
  await page.type("Find by name", "trial 219");
  await page.seesNot("recipes are listed");
  await page.press("Add", { within: await page.css("#compare-add") });
  await page.sees("D Trial 219");
  await page.type("Find by name", "no such recipe");
  await page.sees("No other name contains this text");
});

journey("drawings are made for the width that they have, with labels of 14 pixels", AT, async (page) => {
  await tab(page, "Sensitivity");
  const widths = () => page.run(() => {
    const frame = document.querySelector(".chart-frame");
    const svg = frame.querySelector("svg");
    return [svg?.viewBox.baseVal.width ?? 0, svg?.getBoundingClientRect().width ?? -1, frame.clientWidth].map(Math.round);
  });
  for (const width of [1440, 500, 1200]) {
    await page.look({ width });
    await page.until(async () => {
      const [drawn, shown, frame] = await widths();
      assert.ok(frame > width * 0.8 - 100 && Math.abs(drawn - frame) <= 1 && Math.abs(shown - frame) <= 1, `${[drawn, shown, frame]} at ${width}`);
    });
  }
  await page.sees("more fibre moisture changes the water dose by", { within: await page.css(".verdict") });
  await page.sees("No water is left to dose above", { within: await page.css(".verdict") });
  await page.sees("4.48 % db with B UF", { within: await page.css(".verdict") });
  // Every system is named beside its line.
  const names = await page.run(() => [...document.querySelectorAll(".chart-frame .halo")].map((text) => text.textContent));
  for (const letter of ["A ", "B UF", "C Hybrid"]) assert.ok(names.some((name) => name.startsWith(letter)), `${letter} in ${names}`);
  await tab(page, "Operating map");
  await page.choose("System", "B UF");
  await page.sees("B UF lies outside its feasible region: furnish too wet", { within: await page.css(".verdict") });
  await page.sees("Nearest feasible point", { within: await page.css(".verdict") });
});

journey("table and drawings go to files, with the line cut after the load", AT, async (page) => {
  await page.arrived();
  await page.line({ offline: true });
  const save = async (name) => {
    if (!(await page.run(() => document.querySelector("#compare-more").checkVisibility()))) await page.click("#compare-more-open");
    return page.download(async () => page.press(name, { within: await page.css("#compare-more") }));
  };
  const csv = await save("Export as CSV");
  assert.equal(csv.name, "comparison.csv");
  assert.match(csv.bytes.toString("utf8"), /"Water dose \(water, by mass\)","kg\/h",568\.46/);
  assert.match(csv.bytes.toString("utf8"), /\r?\n"?Uncertainty"?\r?\n.*Degrees of freedom.*\r?\n"?Water dose: /s);
  const xlsx = await save("Export as XLSX");
  assert.equal(xlsx.bytes.subarray(0, 2).toString(), "PK");
  assert.match(xlsx.bytes.toString("latin1"), /<f>D\d+-C\d+<\/f>/);
  await tab(page, "Sensitivity");
  await page.css(".chart-frame svg");
  await page.click("#sweep-export-open");
  const svg = await page.download(() => page.press("Export as SVG"));
  assert.match(svg.bytes.toString("utf8"), /^<svg xmlns=.*Water dose over Fibre moisture/s);
  const png = await page.download(() => page.press("Export as PNG"));
  assert.equal(png.bytes.subarray(1, 4).toString(), "PNG");
  await tab(page, "Uncertainty");
  await page.press("Run Monte Carlo");
  await draws(page, "done");
});

journey("the report prints from any tab, a summary first, on at most four pages", AT, async (page) => {
  await shows(page, "water_dose.0", "568.5 kg/h");
  // From the browser's own menu, with the table open.
  for (const paper of ["A4", "Letter"]) {
    const pdf = await page.pdf(paper);
    assert.equal(pdf.subarray(0, 4).toString(), "%PDF");
    assert.ok(pdf.length > 20_000, `${pdf.length} bytes`);
    const pages = (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
    assert.ok(pages >= 1 && pages <= 4, `${pages} pages of ${paper}`);
  }
  await page.sees("Heat of water: IAPWS-95.");
  const order = await page.run(() => [...document.querySelectorAll(".report h3")].map((own) => own.textContent));
  assert.deepEqual(order.slice(0, 2), ["Warnings", "Key figures"]);
});

journey("six systems fit at 1280 px, and the heads stay in sight", { width: 1280, height: 900, ...AT }, async (page) => {
  // The three that are not there yet.
  for (let count = 3; count < 6; count += 1) {
    if (!(await page.run(() => document.getElementById("compare-next")?.checkVisibility()))) await page.click("#compare-add-open");
    const offered = await page.run(() => [...document.getElementById("compare-next").options].map((option) => option.textContent).find((own) => own.startsWith("Library:")));
    await add(page, offered);
  }
  await page.sees("Six systems is the maximum");
  await page.until(async () => assert.equal(await page.run(() => document.querySelectorAll(".key-table th.system-col").length), 6));
  const [wide, view] = await page.run(() => {
    const box = document.querySelector(".key-scroll");
    return [box.scrollWidth, box.clientWidth];
  });
  assert.ok(wide <= view, `${wide} px in ${view}`);
  await page.assertNoSideways();
  const cut = await page.run(() => [...document.querySelectorAll(".key-table td.system-col, .key-table th.system-col")].filter((cell) => cell.scrollWidth > cell.clientWidth + 1).map((cell) => cell.textContent));
  assert.deepEqual(cut, []);
  await page.screenshot("compare-six-1280", { full: true });
  await unfold(page, "all-results");
  await page.run(() => {
    const rows = document.querySelectorAll(".key-table tbody tr");
    rows[rows.length - 1].scrollIntoView({ block: "end" });
    window.scrollBy(0, document.querySelector(".key-table").getBoundingClientRect().top + 120);
  });
  await page.until(async () => {
    const top = await page.run(() => document.querySelector(".key-table thead th").getBoundingClientRect().top);
    assert.ok(top >= 0 && top < 120, `the head is at ${top} px`);
  });
});

const TABS = ["Table", "Solve & break-even", "Sensitivity", "Operating map", "Uncertainty", "Report"];
for (const [width, height, touch] of [[390, 844, true], [820, 1180, true], [1440, 900, false]]) {
  journey(`every tab is clean to axe at ${width} px, in light, dark and forced colours`, { width, height, touch, timeout: 400_000, ...AT }, async (page) => {
    await shows(page, "water_dose.0", "568.5 kg/h");
    for (const [at, name] of TABS.entries()) {
      await tab(page, name);
      await page.run(() => document.querySelectorAll("details").forEach((details) => (details.open = true)));
      if (name === "Uncertainty") {
        await page.press("Run Monte Carlo");
        await draws(page, "done");
      }
      if (name === "Solve & break-even") await page.type("Target", "much");
      await page.looksRight(`compare-${at + 1}-${width}`);
      if (width === 390) {
        await page.look({ width: 320 });
        await page.assertNoSideways();
        await page.look({ width });
      }
    }
  });
}
