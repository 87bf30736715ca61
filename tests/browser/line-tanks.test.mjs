// Tanks, deliveries and a changeover, as they are used: with fingers and from the keyboard.
//
// Computed by hand for the invented mill, not by the app. Its tank of 20 000 L at 42 % holds 8400 L, 7900 above the heel, 9717 kg of
// pMDI at 1230 kg/m³; at 340 kg/h or 276.4 L/h they last 28.6 h. A delivery takes 72 h, so the order is overdue by 43.4 h, and 7900 L
// over 72 h are 110 L/h. A shift of 8 h takes 2720 kg; 11 600 L are free.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";

const DESK = { hash: "#line", width: 1440, height: 900 };
const PHONE = { hash: "#line", width: 390, height: 844, touch: true };
const shows = (page, figure, expected) => page.until(async () => assert.match(await page.figure(figure), expected));
const box = (page, key) => page.css(`[data-field="line.${key}"]`);
const text = (page, selector) => page.run((selector) => document.querySelector(selector)?.textContent.replace(/\s+/g, " ").trim() ?? "", selector);
const until = (page, selector, expected) => page.until(async () => assert.match(await text(page, selector), expected));
const tab = (page, name) => page.css(".sections").then((within) => page.press(name, { within }));
const undo = (page) => page.css(".notice").then((within) => page.press("Undo", { within }));
/** Everything about the line, as it is kept after a pause. */
const kept = (page) => page.run(() => localStorage.getItem("haulm/line") ?? "");

journey("a tank has one row: what is left, when to order, and that it was ordered", DESK, async (page) => {
  await tab(page, "Tanks & deliveries");
  await shows(page, "tank.1.lasts", /^28\.6 h$/);
  await shows(page, "tank.1.usable", /^7900 L$/);
  await shows(page, "tank.1.per_shift", /^2720 kg$/);
  await shows(page, "tank.1.fits", /^11 600 L$/);
  await until(page, "#tank-row-1 .order-by", /^Overdue by 43\.4 h/);
  await until(page, ".warnings .slot", /T1 binder: the order is overdue by 43\.4 h\. Order now\. To last, use at most 110 L\/h\./);
  assert.match(await page.run(() => document.querySelector("#tank-row-1 .level-bar").getAttribute("aria-label")), /level 42(\.0)?\s%, heel 2\.50?\s%/);
  // The whole row is in the first screen, and so is the delivery's beginning.
  const ends = await page.run(() => document.querySelector("#delivery-into").getBoundingClientRect().bottom);
  assert.ok(ends < 900, `the delivery begins at ${ends} px`);
  // The figure explains itself, and Esc goes back to it.
  await (await page.css('button:has([data-figure="tank.1.lasts"])')).click();
  await page.sees("Use now", { within: await page.css('[id="working-tank.1.lasts"]') });
  await page.keys(Key.ESCAPE);
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.getAttribute("aria-controls")), "working-tank.1.lasts"));
  // From the warning to where the order is marked.
  await page.press("Show", { within: await page.css(".warnings") });
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.id), "tank-order-1"));
  await page.keys(Key.ENTER);
  await until(page, "#tank-row-1 .order-by", /^Comes 43\.4 h too late comes /);
  await until(page, ".warnings .slot", /runs empty 43\.4 h before its delivery comes\./);
  // Full to 95 % it lasts until the delivery comes: 18 500 L at 276.4 L/h are 66.9 h, at 60 h of lead time.
  await page.type(await box(page, "tank.1.content"), "95");
  await page.type(await box(page, "tank.1.lead_time"), "60");
  await until(page, "#tank-row-1 .order-by", /^Ordered comes /);
  await until(page, ".warnings .slot", /No warnings/);
  await page.press("Mark as not ordered");
  await until(page, "#tank-row-1 .order-by", /in 6\.9\d? h$/);
  await page.press("Remove tank");
  await page.sees("No tanks yet.");
  await undo(page);
  await shows(page, "tank.1.lasts", /h$/);
});

journey("tanks from the keyboard: a new one is no error, Enter goes down, a pasted column has one Undo", DESK, async (page) => {
  await tab(page, "Tanks & deliveries");
  await page.press("Add tank");
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.dataset.field), "line.tank.2.content"));
  assert.equal(await page.run(() => document.querySelectorAll('[data-field^="line.tank.2."][aria-invalid]').length), 0, "nothing of it was touched yet");
  await page.run((e) => e.focus(), await box(page, "tank.1.capacity"));
  await page.keys(Key.ENTER);
  assert.equal(await page.run(() => document.activeElement.dataset.field), "line.tank.2.capacity");
  await page.keys("8 m3");
  await page.keys(Key.TAB);
  await page.sees("Tank 2, capacity: read as 8000 L");
  assert.equal(await page.run(() => document.activeElement.dataset.field), "line.tank.2.heel");
  const paste = (words) =>
    page.run((words) => {
      const data = new DataTransfer();
      data.setData("text", words);
      document.activeElement.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
    }, words);
  await page.run((e) => e.focus(), await box(page, "tank.1.content"));
  await paste("50\n61,5");
  const contents = () => page.run(() => ["1", "2"].map((id) => document.querySelector(`[data-field="line.tank.${id}.content"]`).value));
  await page.until(async () => assert.deepEqual(await contents(), ["50", "61,5"]));
  await undo(page);
  await page.until(async () => assert.deepEqual(await contents(), ["42", ""]));
  await page.type(await box(page, "tank.2.content"), "x");
  await page.keys(Key.TAB);
  await page.until(async () => assert.equal(await (await box(page, "tank.2.content")).getAttribute("aria-invalid"), "true"));
});

journey("an untouched delivery shows no error, and an accepted one is in the list with its batch", DESK, async (page) => {
  await tab(page, "Tanks & deliveries");
  await page.sees("No delivery entered.");
  const red = () => page.run(() => document.querySelectorAll(".delivery .mark.stop, .delivery .stop, .delivery [aria-invalid]").length);
  assert.equal(await red(), 0);
  await page.choose("Into", "T1 binder · pMDI");
  await page.css(".certificate");
  assert.equal(await red(), 0);
  await page.until(async () => assert.equal(await page.run((e) => e.getAttribute("aria-disabled"), await page.button("Accept delivery")), "true"));
  // 5000 kg of 97 % at 1200 kg/m³ into 10 332 kg: 15 332 kg of 99.02 %. Without water in it nothing of it may be dosed otherwise.
  await page.type(await box(page, "delivery.amount"), "5000");
  await page.type(await box(page, "delivery.density"), "1200");
  await page.type(await page.css("#delivery-batch"), "B-0107");
  await page.until(async () => {
    const cells = await page.run(() => [...document.querySelector(".certificate tbody tr").cells].map((cell) => cell.textContent));
    assert.match(cells[1], /^10\s?332$/);
    assert.match(cells[3], /^15\s?332$/);
    assert.match(cells[4].replace(/\s/g, " "), /^fits, 7\s?433 L free$/);
  });
  await until(page, '[data-moved="1"] .label', /^P1 binder, new setting$/);
  await page.sees("Nothing changes before the delivery is accepted.");
  const accept = await page.button("Accept delivery");
  for (let press = 0; press < 4; press++) await accept.click();
  await page.sees("Delivery accepted.");
  await page.click("#earlier-deliveries > summary");
  await until(page, ".earlier tbody", /pMDI ?T1 binder ?5\s?000 kg ?1200 kg\/m³ ?B-0107$/);
  assert.equal(await page.run(() => document.querySelectorAll(".earlier tbody tr").length), 1);
  // The tank is fuller: 15 332 kg in 12 566.7 L are 62.83 %.
  assert.match(await (await box(page, "tank.1.content")).getProperty("value"), /^62\.8/);
  assert.match(await text(page, ".certificate tbody tr:last-child td"), /^B-0107$/);
  await undo(page);
  await page.sees("Delivery undone.");
  await page.until(async () => assert.equal(await page.run(() => document.querySelectorAll(".earlier tbody tr").length), 0));
  assert.equal(await (await box(page, "tank.1.content")).getProperty("value"), "42");
});

/** Two recipes to change between, with other water, mat and press gap. */
async function planned(page) {
  await page.press("Recipe");
  await page.press("Save");
  await page.type(await page.css('[data-field="thickness"]'), "18");
  await page.type(await page.css('[data-field="mat_moisture"]'), "9");
  await page.press("Line");
  await tab(page, "Changeover");
  const saved = await page.until(() => page.run(() => [...document.querySelector("#change-from").options].map((option) => option.textContent).find((words, at) => at > 1)));
  await page.choose("From recipe", saved);
  await page.choose("To recipe", await page.run(() => document.querySelector("#change-to").options[1].textContent));
  await page.press("Plan changeover");
  await page.css(".change-list");
}

journey("a changeover is followed step by step, and a discarded plan comes back", DESK, async (page) => {
  await planned(page);
  const keys = () => page.run(() => [...document.querySelectorAll(".change-list .step")].map((row) => row.dataset.step));
  assert.deepEqual(await keys(), ["pump.3", "mat_weight", "line_speed", "press_gap", "transition_boards", "first_board"]);
  const next = () => page.run(() => [...document.querySelectorAll(".change-list .next")].map((row) => row.dataset.step));
  assert.deepEqual(await next(), ["pump.3"]);
  // The time axis has the width that there is, and its text stays at 14 px.
  const [inner, drawn, size] = await page.run(() => {
    const place = document.querySelector(".time-axis");
    const svg = place.querySelector("svg");
    return [place.clientWidth, svg.getBoundingClientRect().width, getComputedStyle(svg.querySelector("text")).fontSize];
  });
  assert.ok(Math.abs(inner - drawn) < 1, `${drawn} of ${inner} px`);
  assert.equal(size, "14px");
  await page.press("Start now");
  await until(page, ".change-status", /^Running since .* 0 of 6 steps done\. Mat moisture never above 10\.5 % db\.$/);
  await page.css(".time-axis .now");
  await page.run((e) => e.click(), await page.css('[data-step="pump.3"] input'));
  await page.until(async () => assert.deepEqual(await next(), ["mat_weight", "line_speed"]));
  await until(page, ".change-status", /1 of 6 steps done/);
  await until(page, "#change-countdown", /^in [12]:\d\d min$/);
  await page.until(async () => assert.match(await kept(page), /"done":\{"pump\.3":\d+\}/));
  await page.reload();
  await tab(page, "Changeover");
  await page.until(async () => assert.deepEqual(await next(), ["mat_weight", "line_speed"]));
  await shows(page, "change.between_area", /m²$/);
  await (await page.css('button:has([data-figure="change.between_area"])')).click();
  await page.css('[id="working-change.between_area"]');
  await page.keys(Key.ESCAPE);
  await page.press("Discard plan");
  await page.sees("No changeover planned.");
  await undo(page);
  await page.until(async () => assert.deepEqual(await next(), ["mat_weight", "line_speed"]));
  // A blank time is told at the top, and the way leads to its box, out of the fold.
  await page.click("#transport-times > summary");
  await page.type(await box(page, "transport.former_to_press"), "");
  await page.click("#transport-times > summary");
  await page.press("Show", { within: await page.css(".warnings") });
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.dataset.field), "line.transport.former_to_press"));
});

journey("tanks, delivery and changeover: nothing axe finds, nothing sideways, in light, dark and forced colours", { ...PHONE, timeout: 500_000 }, async (page) => {
  await planned(page);
  await page.press("Start now");
  await page.css(".time-axis .now");
  await page.press("Close", { within: await page.css(".notice") });
  const looks = async (name, targets) => {
    for (const [width, height, touch] of [[390, 844, true], [820, 1180, true], [1440, 900, false]]) {
      await page.look({ width, height, touch });
      await page.looksRight(`${name}-${width}`);
      if (touch) assert.deepEqual(await small(page), [], targets);
    }
  };
  await looks("line-change", "changeover");
  await page.look({ width: 390, height: 844, touch: true });
  await tab(page, "Tanks & deliveries");
  await page.press("T1 binder: details");
  await page.choose("Into", "Wax emulsion, no tank");
  await page.type(await box(page, "delivery.solids"), "50");
  await page.css('[data-moved="2"]');
  await looks("line-tanks", "tanks");
});

/** Buttons, selects and boxes in sight that are lower than a gloved finger needs. */
const small = (page) =>
  page.run(() =>
    [...document.querySelectorAll(".line-page button:not(.link), .line-page select, .line-page input, .line-page summary")]
      .map((e) => [e.textContent.trim() || e.id || e.className, e.getBoundingClientRect()])
      .filter(([, r]) => r.height > 1 && r.height < 47.5)
      .map(([name, r]) => `${name}: ${r.height}`));
