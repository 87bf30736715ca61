// Pumps and catch tests: a new test from the keyboard, a pasted column, a catch that is excluded, the drawing at every width.
//
// Computed by hand: the water pump with 1.00 kg of vessel, 60 s: gross 4.00, 7.00 and 10.00 kg at 100, 200 and 300 rpm are 180, 360 and
// 540 kg/h, a line of 1.8 kg/h per rpm through the origin. The recipe takes 568.47 kg/h: 315.8 rpm, 316 rpm in the steps of the drive.
// The binder pump: without the third catch the line goes through the mean of the others, (162.6 + 279.6 + 518.4 + 636.6)/4 = 399.3 kg/h at
// 50 %. 6.22 kg in 60 s there are 373.2 kg/h: 26.1 kg/h below.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";

const DESK = { hash: "#line", width: 1440, height: 900 };
const shows = (page, figure, expected) => page.until(async () => assert.match(await page.figure(figure), expected));
const box = (page, key) => page.css(`[data-field="line.${key}"]`);
const value = async (page, key) => (await box(page, key)).getProperty("value");
const focused = (page, key) => page.until(async () => assert.equal(await page.run(() => document.activeElement.dataset.field), `line.${key}`));
/** Presses a button in the middle of the window: at a phone's foot the settings are over it. */
const pressInSight = async (page, name) => {
  const button = await page.button(name);
  await page.run((e) => e.scrollIntoView({ block: "center" }), button);
  await button.click();
};
/** In the page: a text pasted into the focused box. */
const paste = (page, text) =>
  page.run((text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", text);
    document.activeElement.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, text);

journey("a new catch test from the keyboard: Enter goes down, time and tare carry down, a column is pasted and taken back as one", DESK, async (page) => {
  await page.press("Pumps & catch tests");
  await page.press(/^P3 water/);
  await shows(page, "test.3.slope", /^1\.80 kg\/h per/);
  await (await page.button("New catch test")).sendKeys(Key.ENTER);
  await focused(page, "row.3.2.1.setting");
  assert.equal(await value(page, "calibration.3.2.density"), "998");
  for (const [at, setting] of [[2, "100"], [3, "200"], [4, "300"]]) {
    await page.keys(setting, Key.ENTER);
    if (at < 4) await focused(page, `row.3.2.${at}.setting`);
  }
  // A catch of which only the setting is known is no error.
  await page.until(async () => assert.ok(await page.run(() => document.querySelector(".catch-tab .entry-box.stop") === null)));
  await page.type(await box(page, "row.3.2.1.seconds"), "60");
  await page.type(await box(page, "row.3.2.1.tare"), "1.00");
  await page.until(async () => assert.equal(await value(page, "row.3.2.3.tare"), "1.00"));
  assert.match(await page.run((e) => getComputedStyle(e).fontStyle, await box(page, "row.3.2.3.tare")), /italic/);
  // Until it is valid the setting is by the test before, which is said.
  await page.sees("by the test of 2026-03-02");
  await page.run((e) => e.focus(), await box(page, "row.3.2.1.mass"));
  await paste(page, "4.00\r\n7.00\r\n10.00\r\n13.00\r\n");
  await page.sees("4 numbers pasted");
  await page.until(async () => assert.equal(await value(page, "row.3.2.4.mass"), "13.00"));
  assert.equal(await value(page, "row.3.2.4.seconds"), "60");
  await shows(page, "test.3.row.1.caught_flow", /^180\.0/);
  await shows(page, "test.3.row.3.caught_net", /^9\.000/);
  await shows(page, "test.3.intercept", /^0(\.0+)? kg\/h$/);
  await shows(page, "pump.3.setting", /^316 rpm$/);
  await page.press("Undo", { within: await page.css(".notice") });
  await page.until(async () => assert.equal(await value(page, "row.3.2.1.mass"), ""));
  assert.equal(await page.run(() => document.querySelector('[data-field="line.row.3.2.5.mass"]')), null);
  assert.equal(await value(page, "row.3.2.1.seconds"), "60");
  // A unit chosen right after a number is the unit of that number.
  await page.type(await box(page, "row.3.2.1.mass"), "6");
  await page.choose("Unit of Gross", "lb");
  assert.equal(await value(page, "row.3.2.1.mass"), "6");
  await page.press("Delete test");
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.id), "pump-3"));
  await shows(page, "pump.3.setting", /^314 rpm$/);
  // A test that was only begun is not begun twice.
  for (let press = 0; press < 2; press++) await page.press("New catch test");
  await focused(page, "row.3.2.1.setting");
  assert.equal(await page.run(() => document.querySelector('[data-field^="line.row.3.3."]')), null);
});

journey("an excluded catch says why and how far off it is, and goes with an Undo", DESK, async (page) => {
  await page.press("Pumps & catch tests");
  const before = await page.figure("test.1.row.5.residual");
  // What is typed in does not move, and neither does what is above it.
  const top = async () => page.run((e) => e.getBoundingClientRect().top, await box(page, "row.1.2.3.mass"));
  const at = await top();
  await page.type(await box(page, "row.1.2.3.mass"), "6.22");
  await page.sees("far off the line fitted through the other catches");
  assert.equal(await top(), at);
  await page.sees("3 far off");
  await page.press("Use catch 3");
  await page.seesNot("far off the line fitted through the other catches");
  await page.sees("26.1 kg/h below the line");
  await page.sees("3 excluded");
  assert.match(await page.run(() => getComputedStyle(document.querySelector(".catches-grid tr.out .figure-value")).textDecorationLine), /line-through/);
  await page.until(async () => assert.notEqual(await page.figure("test.1.row.5.residual"), before));
  await page.type("Excluded because", "hose slipped off");
  await page.until(async () => assert.ok((await page.run(() => localStorage.getItem("haulm/line") ?? "")).includes("hose slipped off")));
  await page.reload();
  await page.press("Pumps & catch tests");
  await page.holds("Excluded because", "hose slipped off");
  await page.sees("4 of 5", { within: await page.css(".earlier") });
  await page.press("Delete catch");
  await focused(page, "row.1.2.4.setting");
  await page.seesNot("26.1 kg/h below the line");
  await page.press("Undo", { within: await page.css(".notice") });
  await page.holds("Excluded because", "hose slipped off");
  // The next catch has its row, and typing there makes the row after it.
  assert.equal(await value(page, "row.1.2.6.seconds"), "60");
  await page.type(await box(page, "row.1.2.6.setting"), "90");
  await box(page, "row.1.2.7.setting");
  await focused(page, "row.1.2.6.setting");
});

journey("figures say whose they are, open their workings, and the tests over time lead to them", DESK, async (page) => {
  await page.press("Pumps & catch tests");
  const name = (figure) => page.run((figure) => document.querySelector(`button:has([data-figure="${figure}"])`).textContent.replace(/\s+/g, " "), figure);
  assert.match(await name("test.1.row.2.caught_flow"), /^P1 binder, catch 2: Flow of the catch: 279\.6 kg\/h$/);
  await page.click('button:has([data-figure="test.1.row.2.residual"])');
  await page.css('[id="working-test.1.row.2.residual"] math');
  await page.run((e) => e.focus(), await page.css('[id="working-test.1.row.2.residual"] button'));
  await page.keys(Key.ESCAPE);
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.querySelector("[data-figure]")?.dataset.figure), "test.1.row.2.residual"));
  // The example's binder pump delivers 2 % more than a week before.
  await shows(page, "pump.1.since.1.drift", /^\+\d(\.\d+)? %$/);
  await page.press("Show", { within: await page.css(".slot") });
  await page.until(async () => assert.equal(await page.run(() => document.activeElement.parentElement.id), "earlier-tests"));
  for (const table of await page.run(() => [...document.querySelectorAll(".catch-tab table")].map((table) => table.ariaLabel))) assert.ok(table);
});

journey("the drawing is made for its width, and waits behind a button on a phone", { ...DESK, width: 390, height: 844, touch: true }, async (page) => {
  await page.press("Pumps & catch tests");
  await page.until(async () => assert.match(await page.run(() => document.querySelector(".catch-tab .phone-foot").textContent), /P1 binder 42\.5/));
  assert.equal(await page.run(() => document.querySelector(".catch-chart").getClientRects().length), 0);
  await pressInSight(page, "Show chart");
  const drawn = (wide) =>
    page.until(async () => {
      const [svg, around, size] = await page.run(() => {
        const svg = document.querySelector(".catch-chart svg");
        return [svg?.getBoundingClientRect().width ?? 0, svg?.parentElement.clientWidth, Number.parseFloat(getComputedStyle(svg.querySelector("text")).fontSize)];
      });
      assert.equal(Math.round(svg), around);
      assert.ok(wide(svg), `${svg} px`);
      assert.equal(size, 14);
    });
  await drawn((width) => width > 300 && width < 390);
  await page.look({ width: 1440, height: 900, touch: false });
  await drawn((width) => width > 500);
  const label = await page.run(() => document.querySelector(".catch-chart svg").ariaLabel);
  assert.match(label, /line through 5 catches.*42\.5\s%/);
});

journey("pumps and catch tests: nothing axe finds, nothing sideways, in light, dark, forced colours and US units", { ...DESK, timeout: 300_000 }, async (page) => {
  await page.press("Pumps & catch tests");
  await page.type(await box(page, "row.1.2.3.mass"), "6.22");
  await page.press("Use catch 3");
  await page.click("#pump-setup > summary");
  await page.click("#catch-cautions > summary");
  for (const [width, height, touch] of [[1440, 900, false], [820, 1180, true], [390, 844, true]]) {
    await page.look({ width, height, touch });
    await page.looksRight(`line-catch-${width}`);
  }
  await pressInSight(page, "Show chart");
  await pressInSight(page, "Show time and tare");
  await page.choose("Units", "US customary");
  await shows(page, "test.1.slope", /lb\/h per %$/);
  await page.assertNoSideways();
  await page.axe();
  await page.screenshot("line-catch-390-us", { full: true });
});
