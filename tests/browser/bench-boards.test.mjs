// Boards and test pieces as grids: typed, pasted and walked through by keyboard, and a whole board on one screen. Figures as in the sketch
// of the page: 1042 N over 50 mm by 50 mm is 0.417 N/mm², the mean of the eight loads 0.419 N/mm².

import assert from "node:assert/strict";
import { field, fold, held, mat, tab } from "./bench.mjs";
import { Key, journey } from "./harness.mjs";

const DESK = { width: 1440, height: 900, hash: "#bench" };
const isThere = (page, key) => page.run((k) => document.querySelector(`[data-field="${k}"]`) !== null, key);
const focused = (page) => page.run(() => document.activeElement.dataset.field);
const shows = (page, figure, expected) => page.until(async () => assert.equal(await page.figure(figure), expected));

async function paste(page, key, texts) {
  const box = await page.css(`[data-field="${key}"]`);
  await page.run((e) => e.focus(), box);
  await page.run((e, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", text);
    e.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, box, texts.join("\n"));
}

async function begin(page) {
  await mat(page);
  await tab(page, "Boards");
  await page.press("+ Board");
}

journey("a board of 3 internal bond, 6 bending and 4 swelling pieces is in one screen, and is entered by keyboard", DESK, async (page) => {
  await begin(page);
  // The box for the mass has the focus.
  await page.until(async () => assert.equal(await focused(page), "board_mass.1"));
  await page.keys("2150", Key.TAB, "450", Key.TAB, "450", Key.TAB, "15.1", Key.TAB, "15.2", Key.TAB, "15.0", Key.TAB, "15.1", Key.TAB, "7.8");
  for (const [key, text] of [["board_width.1", "450"], ["board_thickness.3.1", "15.1"], ["board_moisture.1", "7.8"]]) assert.equal(await held(page, key), text);
  // Enter goes down a column, into the row for the next piece.
  await page.run((e) => e.focus(), await page.css('[data-field="bond_load.0.1"]'));
  await page.keys("350", Key.ENTER, "340", Key.ENTER, "360");
  assert.equal(await focused(page), "bond_load.2.1");
  await field(page, "bond_length.0.1", "50");
  await field(page, "bond_width.0.1", "50");
  await shows(page, "board.1.bond.1", "0.136 N/mm²");
  // Carried down in italics, until something else is typed there.
  const look = (key) => page.run((k) => {
    const box = document.querySelector(`[data-field="${k}"]`);
    return [box.value, getComputedStyle(box).fontStyle];
  }, key);
  assert.deepEqual(await look("bond_length.0.1"), ["50", "normal"]);
  assert.deepEqual(await look("bond_length.2.1"), ["50", "italic"]);
  await field(page, "bond_length.2.1", "49");
  assert.deepEqual(await look("bond_length.2.1"), ["49", "normal"]);
  await paste(page, "bending_load.0.1", ["900", "910", "890", "905", "915", "895"]);
  await field(page, "bending_span.0.1", "300");
  await field(page, "bending_width.0.1", "50");
  await paste(page, "bending_thickness.0.1", Array(6).fill("15"));
  await paste(page, "swelling_before.0.1", Array(4).fill("15"));
  await paste(page, "swelling_after.0.1", ["16.5", "16.4", "16.6", "16.5"]);
  // By hand: 3 · 900 · 300 / (2 · 50 · 15²) is 36 N/mm².
  await shows(page, "board.1.mor.0", "36.0 N/mm²");
  await page.css('[data-field="bending_load.6.1"]');
  await page.run(() => document.querySelector(".bench .sections").scrollIntoView());
  const [from, to, boxes] = await page.run(() => {
    const seen = [...document.querySelectorAll(".boards-panel input, .test-pieces input, .test-pieces tfoot td")].map((e) => e.getBoundingClientRect());
    return [Math.min(...seen.map((r) => r.top)), Math.max(...seen.map((r) => r.bottom)), document.querySelectorAll(".test-pieces input").length];
  });
  // No grid runs into the next, nothing runs out of its panel, and the boxes of the board are under their heads.
  const spill = await page.run(() => [...document.querySelectorAll(".boards-panel > .grid, .piece-test")].filter((e) => e.scrollWidth > e.clientWidth + 1 || e.getBoundingClientRect().right > e.parentElement.getBoundingClientRect().right + 1).length);
  assert.equal(spill, 0);
  const [head, box] = await page.run(() => [[...document.querySelectorAll(".grid.boards thead th")].find((e) => e.textContent.startsWith("Moisture")), document.querySelector('[data-field="board_moisture.1"]')].map((e) => { const r = e.getBoundingClientRect(); return (r.left + r.right) / 2; }));
  assert.ok(Math.abs(head - box) < 40, `${head} and ${box}`);
  // 3, 6 and 4 pieces and the row for the next one of each.
  assert.equal(boxes, 4 * 3 + 7 * 5 + 5 * 2);
  assert.ok(from >= 0 && to <= 900, `the board is from ${from} to ${to} px`);
  await page.screenshot("bench-boards-1440");
});

journey("a pasted column makes its pieces and is taken back as one", DESK, async (page) => {
  await begin(page);
  await field(page, "bond_length.0.1", "50");
  await field(page, "bond_width.0.1", "50");
  await field(page, "bond_load.0.1", "999");
  await paste(page, "bond_load.0.1", ["1042", "1135", "986", "1078", "1121", "949", "1063", "1010"]);
  await page.sees("8 numbers pasted");
  await shows(page, "board.1.bond.0", "0.417 N/mm²");
  await shows(page, "board.1.bond.7", "0.404 N/mm²");
  await page.sees("0.419", { within: await page.css(".test-pieces tfoot") });
  await page.press("Undo", { within: await page.css(".notice") });
  await page.until(async () => assert.equal(await held(page, "bond_load.0.1"), "999"));
  assert.equal(await held(page, "bond_load.1.1"), "");
  assert.equal(await isThere(page, "bond_load.2.1"), false, "the pieces that came with the column are gone");
  // A line break never joins two numbers, and several columns are no column.
  await paste(page, "bond_load.0.1", ["1\t2", "3\t4"]);
  await page.sees("1; 2; 3; 4");
});

journey("what is wrong is told once the box is left, a slip is asked about, and a board comes back as it was", DESK, async (page) => {
  await begin(page);
  await field(page, "board_length.1", "4,500");
  await page.keys(Key.TAB);
  await page.sees("Use 4500");
  await page.press("Use 4.5");
  await page.until(async () => assert.equal(await held(page, "board_length.1"), "4.5"));
  await field(page, "board_length.1", "450");
  await field(page, "board_width.1", "450");
  await field(page, "board_thickness.0.1", "15");
  await field(page, "board_mass.1", "1800");
  await page.keys(Key.TAB);
  // Far too light: said of the board, with what that comes from, and its row is marked.
  await page.sees("off its target, of which thickness", { within: await page.css(".warnings") });
  await page.css('.grid.boards tr.board.warn[data-board="1"]');
  await page.press("Details of board 1");
  await page.type("Board label", "S-7");
  await page.choose("Board surface", "Sanded");
  await page.press("Remove board");
  await page.sees("No boards yet.");
  await page.press("Undo", { within: await page.css(".notice") });
  await page.sees("S-7");
  assert.equal(await held(page, "board_mass.1"), "1800");
});

journey("boards, series and effects: nothing axe finds, nothing sideways, in light, dark and forced colours", { ...DESK, timeout: 400_000 }, async (page) => {
  await mat(page);
  await tab(page, "Series");
  await page.press("Plan series");
  await field(page, "series_level.1.0", "3");
  await field(page, "series_level.1.1", "5");
  await field(page, "series_replicates", "2");
  await page.until(async () => assert.equal(await page.run(() => document.querySelectorAll(".grid.runs tbody tr").length), 4));
  const levels = await page.run(() => [...document.querySelectorAll(".grid.runs tbody tr")].map((row) => row.cells[2].textContent));
  await tab(page, "Boards");
  await page.press("+ Board for every run");
  for (let at = 1; at <= 4; at++) {
    await field(page, `board_mass.${at}`, `${2150 + 3 * at}`);
    await field(page, `board_length.${at}`, "450");
    await field(page, `board_width.${at}`, "450");
    await field(page, `board_thickness.0.${at}`, "15");
    await page.run((e) => e.focus(), await page.css(`[data-field="board_mass.${at}"]`));
    await page.css(`[data-field="bond_load.0.${at}"]`);
    await field(page, `bond_length.0.${at}`, "50");
    await field(page, `bond_width.0.${at}`, "50");
    const load = levels[at - 1].startsWith("5") ? 1100 : 900;
    await paste(page, `bond_load.0.${at}`, [load + 4 * at, load - 7 * at, load + 11]);
  }
  for (const [name, open] of [["Series", ["series-order", "series-material"]], ["Boards", ["next-mat", "requirements", "density-pieces", "result-statistics"]], ["Effects", ["anova", "level-means"]]]) {
    await page.look({ width: 1440, height: 900, touch: false });
    await tab(page, name);
    for (const id of open) await fold(page, id);
    if (name === "Effects") await page.sees("raises internal bond.");
    for (const [width, height, touch] of [[1440, 900, false], [820, 1180, true], [390, 844, true]]) {
      await page.look({ width, height, touch });
      await page.looksRight(`tab-${name.toLowerCase()}-${width}`);
    }
  }
});
