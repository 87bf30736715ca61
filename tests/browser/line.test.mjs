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
      // The label around a box to tick is its target.
      .map((e) => [e.textContent.trim() || e.id, (e.type === "checkbox" && e.closest("label") || e).getBoundingClientRect()])
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
      if (section === "Line check") await page.press("Save to log");
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
  await page.click("#catch-cautions > summary");
  await page.sees("Isolate and depressurise");
  const pump = await page.css('section[aria-labelledby="pump-1"]');
  await shows(page, "test.1.slope", /kg\/h per %$/);
  const before = await page.figure("test.1.intercept");
  await page.type(await box(page, "row.1.2.3.mass"), "66,8");
  await page.sees("far off the line fitted through the other catches", { within: pump });
  await page.until(async () => assert.notEqual(await page.figure("test.1.intercept"), before));
  await page.press("Use catch 3");
  await page.seesNot("far off the line fitted through the other catches", { within: pump });
  await page.type(await box(page, "row.1.2.1.seconds"), "0");
  await page.sees("Enter a value above 0 and up to 36 000 s.", { within: pump });
  await page.type(await box(page, "row.1.2.1.seconds"), "60");
  await page.type(await box(page, "row.1.2.2.mass"), "-1");
  await page.css('.entry-box.stop > [data-field="line.row.1.2.2.mass"]');
  await page.press(/^P2 wax/);
  await page.click("#pump-setup > summary");
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
  await page.click("#pump-setup > summary");
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

/** A row of the line check: its deviation, its status and what to set instead, spaces of any width as plain ones. */
const checked = (page, row) =>
  page.run((row) => {
    const cells = (which) => [...document.querySelectorAll(`[data-row="${row}"] :is(${which})`)].map((e) => e.textContent.replace(/\s+/g, " ").trim()).join(" ");
    return { deviation: cells("[data-check]"), status: cells(".status"), set: cells(".new") };
  }, row);
const checks = (page, row, expected) =>
  page.until(async () => {
    const found = await checked(page, row);
    for (const [key, words] of Object.entries(expected)) assert.match(found[key], words, `${row}, ${key}`);
  });
/** The warnings, all of them. */
const allWarnings = (page) => page.run(() => document.querySelector(".warnings").textContent.replace(/\s+/g, " "));

journey("a check is compared with the recipe, saved with its remark, charted and exported with the number of its revision", TABLET, async (page) => {
  await page.press("Recipe");
  await page.press("Save");
  await page.press("Line");
  await page.press("Line check");
  await checks(page, "flow.1", { deviation: /^.0\.3 %$/, status: /^OK$/, set: /keep/ });
  await checks(page, "flow.2", { deviation: /^.11\.0 %$/, status: /low/, set: /^26\.[67] Hz$/ });
  await checks(page, "mat_width", { deviation: /^$/, status: /^not read$/ });
  await page.sees("1 of 11 out of tolerance: P2 wax");
  await page.type(await box(page, "pump.1.reading"), "400");
  await page.sees("2 of 11 out of tolerance: P1 binder");
  await page.sees("Either the flow meter of P1 binder reads 18 % high, or the catch-test line of P1 binder reads 15 % low");
  await checks(page, "flow.1", { status: /high/, set: /catch test first/ });
  await page.until(async () => assert.match(await allWarnings(page), /P1 binder: Catch test first: the flow meter reads 400 kg\/h/));
  await page.type("Remark", "filter, cleaned");
  await page.press("Save to log");
  await page.sees("filter, cleaned");
  await page.type(await box(page, "pump.1.reading"), "340");
  await page.press("Save to log");
  await page.sees("Upper control limit");
  const { name, bytes } = await page.download(() => page.press("Export log (CSV)"));
  assert.match(name, /^line-log-.*\.csv$/);
  assert.match(bytes.toString(), /"filter, cleaned"/);
  assert.match(bytes.toString(), /"Example: wheat straw, pMDI, 15 mm",1,/);
  await page.reload();
  await page.press("Line check");
  await page.sees("filter, cleaned");
});

journey("a blank reading is not read, a meter by volume has its target by volume, a pump out of reach cannot, in US units nothing sideways", { ...PHONE, timeout: 300_000 }, async (page) => {
  await page.press("Pumps & catch tests");
  await page.press(/^P3/, { within: await page.css(".pump-choices") });
  await page.run(() => document.querySelector("#pump-setup > summary").scrollIntoView({ block: "center" }));
  await page.click("#pump-setup > summary");
  await page.type(await box(page, "pump.3.most_setting"), "300");
  await page.press("Line check");
  await page.type(await box(page, "pump.3.reading"), "");
  await page.click('[data-row="flow.3"] .more button');
  await page.type(await box(page, "pump.3.present_setting"), "");
  await checks(page, "flow.3", { deviation: /^$/, status: /^not read$/, set: /cannot 31\d of 300 rpm/ });
  await page.sees("1 of 10 out of tolerance: P2 wax");
  // By its setting alone it is read.
  await page.type(await box(page, "pump.3.present_setting"), "300");
  await checks(page, "flow.3", { deviation: /^.4\.\d %$/, status: /low/ });
  const choose = (id, unit) =>
    page.run((id, unit) => {
      const select = document.querySelector(`[data-row="flow.${id}"] select.unit`);
      select.value = unit;
      select.dispatchEvent(new Event("change", { bubbles: true }));
    }, id, unit);
  await choose(1, "L/h");
  // 340 kg/h of 1230 kg/m³ are 276.4 L/h; 8880 kg/h on the belt take 276.3.
  await page.until(async () => assert.match(await page.run(() => document.querySelector('[data-row="flow.1"] .target').textContent), /^276\.3/));
  // A number of the other kind is gone; one that was just typed is kept when its unit is chosen after it.
  const holds = (key, text) => page.until(async () => assert.equal(await (await box(page, key)).getProperty("value"), text));
  await holds("pump.1.reading", "");
  await page.type(await box(page, "pump.1.reading"), "339");
  await choose(1, "kg/h");
  await holds("pump.1.reading", "339");
  await page.type(await box(page, "pump.1.reading"), "276");
  await choose(1, "L/h");
  await holds("pump.1.reading", "276");
  await checks(page, "flow.1", { deviation: /^.0\.1 %$/ });
  // The basis of one moisture is its own.
  await page.run(() => {
    const select = document.querySelector('[data-row="fibre_moisture"] select.unit');
    select.value = "% wet basis";
    select.dispatchEvent(new Event("change", { bubbles: true }));
  });
  await holds("running.moisture", "4.30622");
  await holds("running.sample_moisture", "10.3");
  await page.assertNoSideways();
  for (const [row, unit] of [["belt_scale", "lb/h"], ["line_speed", "ft/min"]]) {
    await page.run((row, unit) => {
      const select = document.querySelector(`[data-row="${row}"] select.unit`);
      select.value = unit;
      select.dispatchEvent(new Event("change", { bubbles: true }));
    }, row, unit);
  }
  await page.assertNoSideways();
  await page.axe();
});

journey("the line check from the keyboard: Enter goes down, nothing moves while one types, Esc closes a working", { hash: "#line", width: 1440, height: 900 }, async (page) => {
  await page.press("Line check");
  await page.run((e) => e.select(), await box(page, "running.belt"));
  const place = () => page.run(() => document.querySelector('[data-row="board_moisture"]').getBoundingClientRect().top);
  const before = await place();
  await page.keys("9", "9", "9", "9", Key.ENTER);
  assert.equal(await page.run(() => document.activeElement.dataset.field), "line.running.moisture");
  assert.equal(await place(), before);
  await page.keys(Key.ENTER);
  assert.equal(await page.run(() => document.activeElement.dataset.field), "line.pump.1.reading");
  await page.sees("out of tolerance: Belt scale");
  assert.equal(await place(), before);
  // An ambiguous number is asked about, in a place that is kept free.
  await page.type(await box(page, "running.belt"), "8,880");
  await page.press("Use 8880");
  assert.equal(await (await box(page, "running.belt")).getProperty("value"), "8880");
  await page.click("#check-workings > summary");
  await (await page.css('button:has([data-figure="run.run_fibre"])')).click();
  await page.css('[id="working-run.run_fibre"]');
  await page.keys(Key.ESCAPE);
  await page.until(async () => assert.ok(await page.run(() => document.querySelector('[id="working-run.run_fibre"]') === null)));
  assert.equal(await page.run(() => document.activeElement.getAttribute("aria-controls")), "working-run.run_fibre");
  // A column from a spreadsheet is one step.
  await page.run((e) => e.focus(), await box(page, "running.belt"));
  await page.run(() => {
    const data = new DataTransfer();
    data.setData("text", "9000\n5\n350");
    document.activeElement.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
  });
  const values = () => page.run(() => ["running.belt", "running.moisture", "pump.1.reading"].map((key) => document.querySelector(`[data-field="line.${key}"]`).value));
  await page.until(async () => assert.deepEqual(await values(), ["9000", "5", "350"]));
  await page.press("Undo", { within: await page.css(".notice") });
  await page.until(async () => assert.deepEqual(await values(), ["8880", "4.5", "339"]));
});

journey("the line check with all its folds: nothing axe finds, nothing sideways, in light, dark and forced colours", { hash: "#line", width: 1440, height: 900, timeout: 400_000 }, async (page) => {
  await page.press("Line check");
  for (const reading of ["110", "118", "122"]) {
    await page.type(await box(page, "pump.2.reading"), reading);
    await page.press("Save to log");
    await page.sees("Check saved to the log");
  }
  for (const fold of ["reconciliation", "check-workings", "check-tolerances", "period"]) await page.click(`#${fold} > summary`);
  await page.sees("readings against the mass balances");
  await page.press("Start period");
  await page.press("Close", { within: await page.css(".notice") });
  await page.click(".logged tbody tr:not(.present) .more button");
  for (const [width, height, touch] of [[1440, 900, false], [820, 1180, true], [390, 844, true]]) {
    await page.look({ width, height, touch });
    await page.looksRight(`line-check-${width}`);
    if (touch) assert.deepEqual(await small(page), []);
  }
  // The drawing is drawn for the width that it has.
  const chart = () => page.run(() => [document.querySelector(".chart-place").offsetWidth, Number(document.querySelector(".chart-place svg").getAttribute("width"))]);
  await page.until(async () => {
    const [place, drawn] = await chart();
    assert.equal(drawn, place);
  });
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
  await page.sees("Enter a value above 0 and up to 100 %.", { within: await page.css(".certificate-side") });
});

journey("undo of a cleared example leaves what was typed after it, and Ctrl+Z acts on the open page alone", TABLET, async (page) => {
  await page.press("Recipe");
  await page.type(await page.css('[data-field="board_density"]'), "700");
  await page.press("Line");
  await page.press("Start with a blank line");
  await page.sees("Line cleared");
  await page.press("Pumps & catch tests");
  await page.press("+ Pump");
  assert.equal(await page.run(() => document.activeElement.id), "pump-name-1");
  await page.type(await page.css("#pump-name-1"), "My pump");
  await page.press("Undo", { within: await page.css(".notice") });
  const names = () => page.run(() => [...document.querySelectorAll(".pump-choices .name")].map((name) => name.textContent));
  await page.until(async () => assert.deepEqual(await names(), ["P1 binder", "P2 wax", "P3 water", "My pump"]));
  await page.sees("Example data.");
  // Undo goes back step by step, Redo forward again; the recipe is not touched.
  await (await page.button("+ Pump")).sendKeys(Key.chord(Key.CONTROL, "z"));
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
