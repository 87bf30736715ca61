// Solutions and glues made up: figures against values from outside, refusals, and that what was typed is there again.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";

const AT = { hash: "#mixing" };
const shows = (page, figure, expected) => page.until(async () => assert.equal(await page.figure(figure), expected));

const unfold = async (page) => {
  await page.run(() => document.querySelectorAll("details").forEach((fold) => (fold.open = true)));
  await page.css('[data-field="nco"]');
};

/** The recipe gets a UF system, whose liquids a tank can hold. */
async function withUf(page) {
  await page.press("Library");
  await page.press("Binder systems");
  await page.press("Use in the recipe: UF");
  await page.press("Mixing");
}

// Source: CRC Handbook of Chemistry and Physics, 102nd ed.: ammonium sulfate at 20 °C, 20 % 1.1154 g/cm³, 40 % 1.2277 g/cm³.
journey("a solution is made up by mass and by volume, with a decimal comma and with a unit typed behind", AT, async (page) => {
  await shows(page, "crystals", "20.00 kg");
  await shows(page, "solution_density", "1115 kg/m³");
  await unfold(page);
  await page.sees("CRC Handbook of Chemistry and Physics");
  await page.sees("Unverified, to about one point.");
  await page.type("Concentration", "40");
  await page.type("Solution", "0,25 t");
  await page.sees("read as 250.0 kg");
  await shows(page, "crystals", "100.0 kg");
  await shows(page, "solution_water", "150.0 kg");
  await shows(page, "solution_volume", "203.6 L");
  // The same batch in litres, not the same number.
  await page.choose("Unit of Solution", "L");
  await shows(page, "crystals", "100.0 kg");
  assert.match(await page.value("Solution"), /^203[.]6/);
  await page.type("Solution", "1000");
  await shows(page, "solution_mass", "1228 kg");
  await shows(page, "crystals", "491.1 kg");
  await page.sees("volume · density = 1000 L · 1228 kg/m³");
  await page.type("Measured density", "1230");
  await shows(page, "solution_mass", "1230 kg");
  await page.sees("As measured.");
});

journey("a solution that does not dissolve is refused in words, and a beginner's fraction is asked about", AT, async (page) => {
  await page.type("Concentration", "45");
  await page.sees("ammonium sulfate does not dissolve to 45 % at 10 °C; at most 42.1 % does.");
  await page.type("Concentration", "0,2");
  await page.sees("did you mean 20 %?");
  await page.press("Use 20 %");
  await shows(page, "crystals", "20.00 kg");
  await page.type("Coldest temperature", "-5");
  await page.sees("which is not possible");
  await page.sees("No result yet.", { within: await page.css('[aria-labelledby="solution"]') });
  await page.type("Coldest temperature", "5");
  await page.choose("Salt", "Ammonium nitrate");
  await unfold(page);
  await page.sees("Oxidiser");
  await page.sees("No published density at this concentration");
  await page.type("Concentration", "1,234");
  await page.sees("can be read as");
});

journey("a glue is mixed from the recipe's liquids, in its proportions or in parts typed", AT, async (page) => {
  // Nothing of a pMDI recipe goes into a tank by itself.
  await page.sees("Select what goes into the tank.");
  await page.press("pMDI in tank");
  await page.press("Water in tank");
  await page.sees("an isocyanate and a liquid with water cannot share a tank.");
  await page.press("Water in tank");
  await page.seesNot("an isocyanate and a liquid with water");

  await withUf(page);
  // UF 12 % at 66 %, hardener 2 % of its solids at 20 %, urea 3 % at 40 %: per 100 kg fibre 18.1818, 1.2 and 0.9 kg, 20.2818 in all.
  await shows(page, "weigh.0", "448.2 kg");
  await shows(page, "weigh.1", "29.58 kg");
  await shows(page, "weigh.2", "22.19 kg");
  await shows(page, "glue_mass", "500.0 kg");
  // Solids 12 + 0.24 + 0.36 of 20.2818.
  await shows(page, "glue_solids", "62.12 %");
  await page.sees("Volumes add up without contraction");
  await page.sees("Glue with hardener sets in the tank.", { within: await page.css(".slot") });
  await unfold(page);
  await page.sees("Acid cure");
  // 448.25 kg of resin at 18.1818 kg per 100 kg of fibre.
  await page.sees("Enough for 2465 kg of oven-dry fibre.");
  // What the glue takes of the hardener solution is one press away from the solution to make up.
  await page.press("Use glue below: 29.58 kg");
  await shows(page, "solution_mass", "29.58 kg");
  await page.keys(Key.ESCAPE);

  await page.choose("Proportions", "Parts by mass");
  await page.holds("Parts by mass, UF resin", "100");
  await page.holds("Parts by mass, Ammonium sulfate solution", "6.6");
  await page.type("Parts by mass, Ammonium sulfate solution", "10");
  await page.press("Urea solution in tank");
  await shows(page, "weigh.0", "454.5 kg");
  await shows(page, "weigh.1", "45.45 kg");
  await page.type("Parts by mass, Ammonium sulfate solution", "-1");
  await page.sees("which is not possible");
  await page.type("Parts by mass, Ammonium sulfate solution", "0");
  await shows(page, "weigh.0", "500.0 kg");
  await shows(page, "glue_density", "1280 kg/m³");
});

// Source: definition with IUPAC abridged atomic weights: at 31.0 % NCO 66.457 g water and 162.348 g CO₂ a kg, 135.539 g/mol.
journey("an NCO content gives equivalent weight, water and gas", AT, async (page) => {
  await page.sees("31.0 % NCO: 66.5 g water a kg, 162 g carbon dioxide");
  await unfold(page);
  await shows(page, "equivalent_weight", "135.5 g/mol");
  await shows(page, "water_used", "66.46 g/kg");
  await shows(page, "gas_released", "162.3 g/kg");
  await page.type("NCO content", "0.31");
  await page.sees("did you mean 31 %?");
});

// Source: from molar masses (IUPAC): 1000 g of 37 % formalin and 500 g urea 1.480099; with 100 g more 1.233415.
journey("formaldehyde to urea follows from the charge", AT, async (page) => {
  await unfold(page);
  await page.type("Formalin in the charge", "1000 g");
  await page.type("Urea in the charge", "0,5");
  await shows(page, "fu_charge", "1.480 mol/mol");
  await page.type("Urea added later", "0,1");
  await shows(page, "fu_after", "1.233 mol/mol");
});

journey("what was typed is there after a reload, and units switch", AT, async (page) => {
  await unfold(page);
  await page.choose("Salt", "Urea");
  await page.type("Concentration", "32,5");
  await page.type("NCO content", "30,7");
  await page.until(async () => assert.match((await page.run(() => localStorage["haulm/mix"])) ?? "", /30,7/));
  await page.reload();
  await unfold(page);
  await page.holds("Concentration", "32,5");
  await page.holds("NCO content", "30,7");
  await shows(page, "crystals", "32.50 kg");
  await page.choose("Units", "US customary");
  await shows(page, "crystals", "71.65 lb");
  await page.holds("Solution", "220.4623");
});

journey("without a result of the recipe there is no glue, and that is said", AT, async (page) => {
  await (await page.css('nav a[href="#recipe"]')).click();
  await page.more("New recipe");
  await page.press("Mixing");
  await page.sees("No recipe result yet.");
});

for (const [width, height, touch] of [[390, 844, true], [820, 1180, true], [1440, 900, false]]) {
  journey(`the mixing page is clean to axe at ${width} px`, { width, height, touch, ...AT }, async (page) => {
    await withUf(page);
    await page.press("Close");
    await page.choose("Proportions", "Parts by mass");
    await page.choose("Salt", "Ammonium nitrate");
    await page.screenshot(`mixing-${width}`, { full: true });
    await unfold(page);
    await page.type("NCO content", "abc");
    await page.sees("is not a number");
    await page.looksRight(`mixing-${width}-open`);
  });
}

journey("the mixing page works by keyboard alone", AT, async (page) => {
  const focused = () => page.run(() => document.activeElement.dataset.field ?? document.activeElement.id);
  const tabTo = async (wanted) => {
    for (let i = 0; i < 60 && (await focused()) !== wanted; i++) await page.keys(Key.TAB);
    assert.equal(await focused(), wanted);
  };
  await tabTo("concentration");
  await page.keys("2", "5", Key.ENTER);
  assert.equal(await focused(), "solution", "Enter goes on");
  await tabTo("in-tank-1");
  await page.keys(Key.SPACE);
  await shows(page, "weigh.1", "500.0 kg");
});

journey("a solution follows the recipe until it is typed, and each step is taken back on the page alone", AT, async (page) => {
  await withUf(page);
  await page.press("Recipe");
  const solids = async () => (await page.driver.findElements({ css: 'tr.liquid [data-field^="solids."]' }))[1];
  await page.type(await solids(), "30");
  await page.press("Mixing");
  await page.holds("Concentration", "30");
  await shows(page, "crystals", "30.00 kg");
  await page.type("Concentration", "25");
  await shows(page, "crystals", "25.00 kg");
  // Now it is another one than the recipe's, which is offered.
  await page.press("Use Ammonium sulfate solution: 30 %");
  await shows(page, "crystals", "30.00 kg");
  await page.press("Urea solution in tank");
  // Also with the focus on the tick, which takes no text.
  const chord = async (key) => (await page.css("#in-tank-2")).sendKeys(Key.chord(Key.CONTROL, key));
  await chord("z");
  await page.until(async () => assert.equal(await page.run(() => document.getElementById("in-tank-2").checked), true));
  await chord("z");
  await shows(page, "crystals", "25.00 kg");
  await chord("y");
  await shows(page, "crystals", "30.00 kg");
  // The recipe was not touched.
  await page.press("Recipe");
  assert.equal(await (await solids()).getProperty("value"), "30");
});

journey("a unit chosen after a number keeps its digits, and nothing is said between two keys", AT, async (page) => {
  await page.type("Solution", "6");
  await page.choose("Unit of Solution", "t");
  await page.holds("Solution", "6");
  await shows(page, "solution_mass", "6.000 t");
  await page.type("Solution", "8,");
  assert.equal(await page.run(() => document.querySelector(".make .box-messages").textContent.trim()), "");
});
