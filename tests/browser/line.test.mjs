// The line: pump settings first, catch tests, settings table, line check, changeover, delivery; with fingers, at two sizes.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";

const TABLET = { hash: "#line", width: 820, height: 1180, touch: true };
const PHONE = { hash: "#line", width: 390, height: 844, touch: true };
const shows = (page, figure, expected) => page.until(async () => assert.match(await page.figure(figure), expected));
const box = (page, key) => page.css(`[data-field="line.${key}"]`);
/** What is typed is kept after a pause. */
const kept = (page, words) =>
  page.until(async () => assert.ok((await page.run(() => localStorage.getItem("haulm/line") ?? "")).includes(words), `not kept: ${words}`));

/** Buttons, selects and boxes in sight that are lower than a gloved finger needs. */
const small = (page) =>
  page.run(() =>
    [...document.querySelectorAll(".line-page button:not(.link), .line-page select, .line-page input, .line-page summary")]
      .map((e) => [e.textContent.trim() || e.id, e.getBoundingClientRect()])
      .filter(([, r]) => r.height > 0 && r.height < 47.5)
      .map(([name, r]) => `${name}: ${r.height}`));

const SECTIONS = ["Pump settings", "Line check", "Pumps & catch tests", "Tanks & deliveries", "Changeover"];

journey("one tap from the recipe to the pump settings, and its figures open their workings", { width: 820, height: 1180, touch: true }, async (page) => {
  await page.press("Line");
  await page.sees("Example data.");
  await shows(page, "pump.1.setting", /^\d+(\.\d+)? %$/);
  await shows(page, "pump.2.setting", /Hz$/);
  await shows(page, "pump.3.setting", /rpm|min/);
  assert.match(await page.run((e) => e.getAttribute("aria-label"), await page.css('[data-pump="1"] .range-bar')), /within what was tested/);
  const size = await page.run((e) => Number.parseFloat(getComputedStyle(e).fontSize), await page.css('[data-figure="pump.1.setting"]'));
  assert.equal(size, 32);
  await (await page.css('button:has([data-figure="pump.1.setting"])')).click();
  await page.sees("least squares", { within: await page.css('[id="working-pump.1.setting"]') });
  await page.screenshot("line-sheet-820");
});

for (const [name, look] of [["a tablet", TABLET], ["a phone", PHONE]]) {
  journey(`all sections on ${name}: nothing axe finds, nothing sideways, targets for fingers`, { ...look, timeout: 300_000 }, async (page) => {
    for (const section of SECTIONS) {
      await page.press(section, { within: await page.css(".sections") });
      await page.heading(section);
      if (section === "Line check") await page.press("Save check");
      if (section === "Changeover") {
        await page.choose("To recipe", await page.run(() => document.querySelector("#change-to").options[1].textContent));
        await page.press("Plan changeover");
      }
      await page.assertNoSideways();
      assert.deepEqual(await small(page), [], section);
      await page.axe();
      await page.screenshot(`line-${look.width}-${section.toLowerCase().replaceAll(" ", "-")}`, { full: true });
    }
  });
}

journey("rows of a catch test come one by one, a wrong one is told, and a reload keeps all of it", TABLET, async (page) => {
  await page.press("Pumps & catch tests");
  await page.sees("Isolate and depressurise");
  const pump = await page.css('article[aria-labelledby="pump-1"]');
  await shows(page, "test.1.slope", /kg\/h$/);
  const before = await page.figure("test.1.intercept");
  await page.type(await box(page, "row.1.2.3.mass"), "66,8");
  await page.sees("far off the line through the others", { within: pump });
  await page.until(async () => assert.notEqual(await page.figure("test.1.intercept"), before));
  await page.press("Exclude", { within: await page.css('[aria-label="Row 3"]') });
  await page.seesNot("far off the line through the others", { within: pump });
  await page.type(await box(page, "row.1.2.1.seconds"), "0");
  await page.sees("Type a value above 0 and up to 36 000 s.", { within: pump });
  await page.type(await box(page, "row.1.2.1.seconds"), "60");
  await page.type(await box(page, "row.1.2.2.mass"), "-1");
  await page.css('[id="field-line.row.1.2.2.mass-says"] .finding.stop');
  await page.type(await page.css("#pump-name-2"), "P1 binder");
  await page.sees("two pumps of this name");
  await kept(page, "66,8");
  await page.reload();
  await page.press("Pumps & catch tests");
  assert.equal(await (await box(page, "row.1.2.3.mass")).getProperty("value"), "66,8");
  assert.equal(await (await box(page, "row.1.2.2.mass")).getProperty("value"), "-1");
});

journey("a pump out of its range is told with what helps, in the pump settings and in the settings table", TABLET, async (page) => {
  await page.press("Pumps & catch tests");
  const limits = await page.css('article[aria-labelledby="pump-1"] details.more summary');
  await limits.click();
  await page.type(await box(page, "pump.1.most_setting"), "30");
  await page.press("Pump settings");
  await page.sees("above the highest setting allowed. It serves fibre flows from");
  await page.sees("42.5 of 30 %", { within: await page.css('[data-pump="1"]') });
  assert.equal(await page.figure("pump.1.setting"), "cannot");
  await page.click("#settings-table > summary");
  await page.until(async () => assert.match(await (await page.css(".matrix .cannot")).getText(), /^✕/));
  await page.click(".table-range > summary");
  await page.type(await box(page, "table.flow_step"), "1");
  await page.sees("more than");
  assert.equal(await (await box(page, "table.flow_step")).getProperty("value"), "1");
});

journey("a check is held against the recipe, kept with its remark, plotted and given out", TABLET, async (page) => {
  await page.press("Line check");
  await page.sees("Actual and target");
  await page.type(await box(page, "pump.1.reading"), "400");
  await page.sees("Either the flow meter of P1 binder reads 18 % high, or the catch-test line of P1 binder reads 15 % low");
  await page.sees("Catch test first: the flow meter reads 400 kg/h");
  await page.type("Remark", "filter, cleaned");
  await page.press("Save check");
  await page.sees("filter, cleaned");
  await page.type(await box(page, "pump.1.reading"), "340");
  await page.press("Save check");
  await page.sees("Upper control limit");
  const { name, bytes } = await page.download(() => page.press("Save the log as a table (CSV)"));
  assert.match(name, /^line-log-.*\.csv$/);
  assert.match(bytes.toString(), /"filter, cleaned"/);
  await page.reload();
  await page.press("Line check");
  await page.sees("filter, cleaned");
});

journey("a changeover started goes on after a reload, with clock times", TABLET, async (page) => {
  await page.press("Recipe");
  await page.press("Save");
  await page.type(await page.css('[data-field="fibre_moisture"]'), "6");
  await page.press("Line");
  await page.press("Changeover");
  await page.press("Plan changeover");
  await page.sees("Select both recipes first.");
  const option = (id, at) => page.run((id, at) => [...document.querySelector(id).options].at(at).textContent, id, at);
  await page.choose("From recipe", await page.until(async () => (await option("#change-from", -1)).includes("(as open)") ? false : option("#change-from", -1)));
  await page.choose("To recipe", await option("#change-to", 1));
  await page.press("Plan changeover");
  await page.sees("Not started. Times count from the start.");
  await page.sees("Less water first");
  await page.sees("Moister fibre last");
  await page.press("Start now");
  await page.sees("Running since");
  await page.click("#change-arrivals > summary");
  await page.sees("in 2:");
  await kept(page, '"started":1');
  await page.reload();
  await page.press("Changeover");
  await page.click("#change-arrivals > summary");
  await page.sees("in 2:");
});

journey("a delivery shows what moves before it is accepted", TABLET, async (page) => {
  await page.press("Tanks & deliveries");
  await page.choose("Into", "Wax emulsion, no tank");
  await page.type(await box(page, "delivery.solids"), "50");
  await page.sees("P2 wax, new setting");
  await page.sees("No saved recipe uses this liquid.");
  // Four quick presses are one delivery.
  const accept = await page.button("Accept delivery");
  for (let press = 0; press < 4; press++) await accept.click();
  await page.sees("Delivery accepted.");
  const accepted = () => page.run(() => (localStorage.getItem("haulm/line") ?? "").match(/"tank_name":/g)?.length ?? 0);
  await page.until(async () => assert.equal(await accepted(), 1));
  await page.press("Undo", { within: await page.css(".notice") });
  await page.sees("Delivery undone.");
  await page.press("Recipe");
  await page.until(async () => assert.equal(await (await page.css('[data-field="solids.2"]')).getProperty("value"), "55"));
  // At a tablet Line opens at the pump settings again.
  await page.press("Line");
  await page.heading("Pump settings");
  await page.press("Tanks & deliveries");
  assert.equal(await (await box(page, "delivery.solids")).getProperty("value"), "50");
  await page.press("Accept delivery");
  await page.sees("Delivery accepted.");
  await page.until(async () => assert.equal(await accepted(), 1));
  await page.type(await box(page, "delivery.solids"), "500");
  await page.until(async () => assert.equal(await (await box(page, "delivery.solids")).getAttribute("aria-invalid"), "true"));
  await page.sees("Type a value above 0 and up to 100 %.", { within: await page.css(".certificate-side") });
});

journey("undo of a cleared example leaves what was typed after it, and Ctrl+Z acts on the open page alone", TABLET, async (page) => {
  await page.press("Recipe");
  await page.type(await page.css('[data-field="board_density"]'), "700");
  await page.press("Line");
  await page.press("Start with a blank line");
  await page.sees("Line cleared");
  await page.press("Pumps & catch tests");
  await page.press("Add a pump");
  await page.type(await page.css("#pump-name-1"), "My pump");
  await page.press("Undo", { within: await page.css(".notice") });
  const names = () => page.run(() => [...document.querySelectorAll("article.pump > h3")].map((h) => h.textContent));
  await page.until(async () => assert.deepEqual(await names(), ["P1 binder", "P2 wax", "P3 water", "My pump"]));
  await page.sees("Example data.");
  // Undo goes back step by step, Redo forward again; the recipe is not touched.
  await (await page.button("Add a pump")).sendKeys(Key.chord(Key.CONTROL, "z"));
  await page.until(async () => assert.deepEqual(await names(), ["My pump"]));
  await page.click("#line-more-open");
  const steps = await page.css("#line-more");
  await page.press("Undo", { within: steps });
  await page.until(async () => assert.notDeepEqual(await names(), ["My pump"]));
  await page.press("Redo", { within: steps });
  await page.until(async () => assert.deepEqual(await names(), ["My pump"]));
  for (let step = 0; step < 4; step++) await page.press("Undo", { within: steps });
  await page.until(async () => assert.deepEqual(await names(), ["P1 binder", "P2 wax", "P3 water"]));
  assert.equal(await page.run((e) => e.getAttribute("aria-disabled"), await page.button("Undo", { within: steps })), "true");
  await page.press("Recipe");
  await page.until(async () => assert.equal(await (await page.css('[data-field="board_density"]')).getProperty("value"), "700"));
});
