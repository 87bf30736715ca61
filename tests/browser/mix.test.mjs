// Solutions and glues made up: figures against values from outside, refusals, and that what was typed is there again.

import assert from "node:assert/strict";
import { Key, journey } from "./harness.mjs";

const AT = { hash: "#mix" };
const shows = (page, figure, expected) => page.until(async () => assert.equal(await page.figure(figure), expected));

/** The recipe gets a UF system, whose liquids a tank can hold. */
async function withUf(page) {
  await page.press("Binder systems");
  await page.press("Use in the recipe: UF");
  await page.press("Make-up");
}

// Source: CRC Handbook of Chemistry and Physics, 102nd ed.: ammonium sulfate at 20 °C, 20 % 1.1154 g/cm³, 40 % 1.2277 g/cm³.
journey("a solution is made up by mass and by volume, with a decimal comma and with a unit typed behind", AT, async (page) => {
  await shows(page, "crystals", "20.00 kg");
  await shows(page, "solution_density", "1115 kg/m³");
  await page.sees("CRC Handbook of Chemistry and Physics");
  await page.sees("Solubility: from memory");
  await page.type("Concentration", "40");
  await page.type("Solution wanted", "0,25 t");
  await page.sees("read as 250.0 kg");
  await shows(page, "crystals", "100.0 kg");
  await shows(page, "solution_water", "150.0 kg");
  await shows(page, "solution_volume", "203.6 L");
  await page.choose("Amount asked for", "By volume", { within: await page.css('section[aria-labelledby="solution"]') });
  await page.type("Solution wanted, at 20 °C", "1000");
  await shows(page, "solution_mass", "1228 kg");
  await shows(page, "crystals", "491.1 kg");
  await page.sees("volume · density = 1000 L · 1228 kg/m³");
  await page.type("Measured density", "1230");
  await shows(page, "solution_mass", "1230 kg");
  await page.sees("Density: as measured.");
});

journey("a solution that does not dissolve is refused in words, and a beginner's fraction is asked about", AT, async (page) => {
  await page.type("Concentration", "45");
  await page.sees("ammonium sulfate does not dissolve to 45 % at 10 °C; at most 42.1 % does.");
  await page.type("Concentration", "0,2");
  await page.sees("did you mean 20 %?");
  await page.press("Use this: 20 %");
  await shows(page, "crystals", "20.00 kg");
  await page.type("Coldest temperature", "-5");
  await page.sees("which cannot be");
  await page.sees("Fill in the boxes to see the result.", { within: await page.css('[aria-labelledby="solution"]') });
  await page.type("Coldest temperature", "5");
  await page.choose("What is dissolved", "Ammonium nitrate");
  await page.sees("Oxidiser");
  await page.sees("No published density for this concentration here");
  await page.type("Concentration", "1,234");
  await page.sees("can be read as");
});

journey("a glue is mixed from the recipe's liquids, in its proportions or in parts typed", AT, async (page) => {
  // Nothing of a pMDI recipe goes into a tank by itself.
  await page.sees("Tick what goes into the tank to see the result.");
  await page.press("pMDI");
  await page.press("Water, the recipe's dose");
  await page.sees("an isocyanate and a liquid with water cannot share a tank.");
  await page.press("Water, the recipe's dose");
  await page.seesNot("an isocyanate and a liquid with water");

  await withUf(page);
  // UF 12 % at 66 %, hardener 2 % of its solids at 20 %, urea 3 % at 40 %: per 100 kg fibre 18.1818, 1.2 and 0.9 kg, 20.2818 in all.
  await shows(page, "weigh.0", "448.2 kg");
  await shows(page, "weigh.1", "29.58 kg");
  await shows(page, "weigh.2", "22.19 kg");
  await shows(page, "glue_mass", "500.0 kg");
  // Solids 12 + 0.24 + 0.36 of 20.2818.
  await shows(page, "glue_solids", "62.12 %");
  await page.sees("Density and litres by ideal mixing");
  await page.sees("A mixed batch has a pot life");
  await page.sees("Acid cure");

  await page.choose("Proportions", "Parts typed here");
  await page.holds("Parts by mass, as delivered, UF resin", "100");
  await page.holds("Parts by mass, as delivered, Ammonium sulfate solution", "6.6");
  await page.type("Parts by mass, as delivered, Ammonium sulfate solution", "10");
  await page.press("Urea solution");
  await shows(page, "weigh.0", "454.5 kg");
  await shows(page, "weigh.1", "45.45 kg");
  await page.type("Parts by mass, as delivered, Ammonium sulfate solution", "-1");
  await page.sees("which cannot be");
  await page.type("Parts by mass, as delivered, Ammonium sulfate solution", "0");
  await shows(page, "weigh.0", "500.0 kg");
  await shows(page, "glue_density", "1280 kg/m³");
});

// Source: definition with IUPAC abridged atomic weights: at 31.0 % NCO 66.457 g water and 162.348 g CO₂ a kg, 135.539 g/mol.
journey("an NCO content gives equivalent weight, water and gas", AT, async (page) => {
  await shows(page, "equivalent_weight", "135.5 g/mol");
  await shows(page, "water_used", "66.46 g/kg");
  await shows(page, "gas_released", "162.3 g/kg");
  await page.type("NCO content", "0.31");
  await page.sees("did you mean 31 %?");
});

// Source: from molar masses (IUPAC): 1000 g of 37 % formalin and 500 g urea 1.480099; with 100 g more 1.233415.
journey("formaldehyde to urea follows from the charge", AT, async (page) => {
  await page.type("Formalin in the charge", "1000 g");
  await page.type("Urea in the charge", "0,5");
  await shows(page, "fu_charge", "1.480 mol/mol");
  await page.type("Urea added later", "0,1");
  await shows(page, "fu_after", "1.233 mol/mol");
});

journey("what was typed is there after a reload, and units switch", AT, async (page) => {
  await page.choose("What is dissolved", "Urea");
  await page.type("Concentration", "32,5");
  await page.type("NCO content", "30,7");
  await page.until(async () => assert.match((await page.run(() => localStorage["haulm/mix"])) ?? "", /30,7/));
  await page.reload();
  await page.holds("Concentration", "32,5");
  await page.holds("NCO content", "30,7");
  await shows(page, "crystals", "32.50 kg");
  await page.choose("Units", "US customary");
  await shows(page, "crystals", "71.65 lb");
  await page.holds("Solution wanted", "220.4623");
});

journey("without a result of the recipe there is no glue, and that is said", AT, async (page) => {
  await (await page.css('nav a[href="#recipe"]')).click();
  await page.more("New recipe");
  await page.press("Make-up");
  await page.sees("The recipe has no result yet.");
});

for (const [width, height, touch] of [[390, 844, true], [1440, 900, false]]) {
  journey(`the make-up page is clean to axe at ${width} px`, { width, height, touch, ...AT }, async (page) => {
    await withUf(page);
    await page.choose("Proportions", "Parts typed here");
    await page.choose("What is dissolved", "Ammonium nitrate");
    await page.type("NCO content", "abc");
    await page.sees("is not a number");
    await page.axe();
    await page.assertNoSideways();
    await page.screenshot(`mix-${width}`, { full: true });
    await page.look({ dark: true });
    await page.screenshot(`mix-${width}-dark`, { full: true });
  });
}

journey("the make-up page works by keyboard alone", AT, async (page) => {
  const focused = () => page.run(() => document.activeElement.dataset.field ?? document.activeElement.id);
  const tabTo = async (wanted) => {
    for (let i = 0; i < 60 && (await focused()) !== wanted; i++) await page.keys(Key.TAB);
    assert.equal(await focused(), wanted);
  };
  await tabTo("concentration");
  await page.keys("2", "5", Key.ENTER);
  assert.equal(await focused(), "solution_mass", "Enter goes on");
  await tabTo("in-tank-1");
  await page.keys(Key.SPACE);
  await shows(page, "weigh.1", "500.0 kg");
});
