// A message is gone once it is no longer true.

import assert from "node:assert/strict";
import { journey } from "./harness.mjs";
import { put } from "./pages.mjs";

const drop = (page, name, text) =>
  page.run((name, text) => {
    const carried = new DataTransfer();
    carried.items.add(new File([text], name));
    document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: carried, cancelable: true, bubbles: true }));
  }, name, text);

journey("that a file or a link was refused is over once another one is opened", async (page) => {
  const { bytes } = await page.download(() => page.more("Export"));
  await page.click("#share-open");
  const link = await page.until(async () => {
    const value = await page.run((e) => e.value, await page.css("#link"));
    assert.match(value, /#open=[\w-]+$/);
    return value;
  });
  for (const [refuse, words] of [
    [() => drop(page, "picture.png", "PNG"), "is no JSON"],
    [() => page.run(() => (location.hash = "#open=nothing")), "There is no recipe in this link"],
  ]) {
    await refuse();
    await page.sees(words);
    await drop(page, "sound.haulm.json", String(bytes));
    await page.seesNot(words);
    await page.press("Recipe");
    await refuse();
    await page.sees(words);
    await page.run((to) => (location.hash = to), new URL(link).hash);
    await page.sees("opened from the link");
    await page.seesNot(words);
  }
  // A refusal at the button of the library, too.
  await page.press("Library");
  await page.run(() => {
    const carried = new DataTransfer();
    carried.items.add(new File(["PNG"], "picture.png"));
    const input = document.getElementById("import");
    input.files = carried.files;
    input.dispatchEvent(new Event("change", { bubbles: true }));
  });
  await page.sees("is no JSON");
  await drop(page, "sound.haulm.json", String(bytes));
  await page.seesNot("is no JSON");
});

journey("that a name is missing is over once one is typed", async (page) => {
  await page.more("New recipe");
  await page.press("Save");
  await page.sees("The name is blank.");
  await page.run(put, "recipe-name", "S");
  await page.seesNot("The name is blank.");
  assert.notEqual(await page.run(() => document.getElementById("recipe-name").getAttribute("aria-invalid")), "true");
});

journey("that a system's name is missing is over once one is typed", { hash: "#systems" }, async (page) => {
  await page.press("Save as own system");
  await page.sees("System name is blank.");
  await page.run(put, "system-name", "O");
  await page.seesNot("System name is blank.");
});

journey("that a file was not written is over once one is", async (page) => {
  await page.run(() => {
    const create = URL.createObjectURL;
    URL.createObjectURL = () => {
      URL.createObjectURL = create;
      throw new Error("no room for it");
    };
  });
  await page.more("Export");
  await page.sees("no room for it");
  await page.download(() => page.more("Export"));
  await page.seesNot("no room for it");
});
