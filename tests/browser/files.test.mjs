// Files: one on a shared drive that several people keep up to date, dropped ones, tables, and those that are far too much.

import assert from "node:assert/strict";
import { journey } from "./harness.mjs";
import { withUselessFiles } from "./useless.mjs";

const stands = async (page) => page.run((e) => e.textContent, await page.css("#save-state"));
const save = async (page, name, moisture) => {
  await page.press("Recipe");
  await page.more("New recipe");
  await page.type("Name", name);
  if (moisture) await page.type("Fibre moisture", moisture);
  await page.press("Save");
  await page.until(async () => assert.match(await stands(page), /^Revision 1 · Saved/));
};

/**
 * The dialogs of the browser cannot be pressed by a driver. They give a file of the page's own file system here, which has the same
 * interface; `others` is what somebody else writes to it.
 */
const withDialogs = (page) =>
  page.run(async () => {
    const folder = await navigator.storage.getDirectory();
    const file = () => folder.getFileHandle("shared.json", { create: true });
    window.showSaveFilePicker = async () => (window.chosenFile = await file());
    window.showOpenFilePicker = async () => [await file()];
  });
const read = (page) =>
  page.run(async () => (await (await (await navigator.storage.getDirectory()).getFileHandle("shared.json")).getFile()).text());
const write = (page, text) =>
  page.run(async (text) => {
    const out = await (await (await navigator.storage.getDirectory()).getFileHandle("shared.json", { create: true })).createWritable();
    await out.write(text);
    await out.close();
  }, text);
const names = async (page) => JSON.parse(await read(page)).records.map((record) => record.name).sort();
const list = (page) => page.run(() => [...document.querySelectorAll(".lines .name")].map((h) => h.textContent.trim()).sort());

journey("a library file on a shared drive takes in what others save, goes out with what is saved here, and loses nothing", async (page) => {
  await save(page, "Ours");
  await withDialogs(page);
  await page.press("Library");
  await page.press("New library file");
  await page.sees("1 record; 0 received, 1 sent");
  assert.deepEqual(await names(page), ["Ours"]);
  await page.axe();
  await page.screenshot("shared-file");

  // Somebody else saves: what we know of the file is old when we save next.
  const theirs = JSON.parse(await read(page));
  theirs.records.push({ ...theirs.records[0], name: "Theirs" });
  await write(page, JSON.stringify(theirs));
  await save(page, "Ours, too");
  await page.until(async () => assert.deepEqual(await names(page), ["Ours", "Ours, too", "Theirs"]));
  await page.press("Library");
  await page.until(async () => assert.deepEqual(await list(page), ["Ours", "Ours, too on the Recipe page", "Theirs"]));
  await page.sees("3 records; 1 received, 1 sent");

  // Somebody writes in the very moment between our look and our writing.
  // A look asks for leave before it gets the file; a writing gets it without.
  await page.run(() => {
    const handle = window.chosenFile;
    const { getFile, queryPermission } = FileSystemFileHandle.prototype;
    let look = false;
    handle.queryPermission = (wanted) => {
      look = true;
      return queryPermission.call(handle, wanted);
    };
    handle.getFile = async () => {
      if (!look) {
        delete handle.getFile;
        delete handle.queryPermission;
        const other = await (await navigator.storage.getDirectory()).getFileHandle("shared.json");
        const now = JSON.parse(await (await other.getFile()).text());
        now.records.push({ ...now.records[0], name: "Between" });
        const out = await other.createWritable();
        await out.write(JSON.stringify(now));
        await out.close();
      }
      look = false;
      return getFile.call(handle);
    };
  });
  await save(page, "Last");
  await page.until(async () => assert.deepEqual(await names(page), ["Between", "Last", "Ours", "Ours, too", "Theirs"]));

  // It is remembered; and what cannot be read is left as it is.
  await page.go("#library");
  await page.sees("Synced ");
  for (const [text, words] of [
    ["{\"haulm\":\"library\",\"version\":1,\"records\":[", "breaks off"],
    ["{\"haulm\":\"library\",\"version\":99,\"records\":[]}", "has format 99"],
    [JSON.stringify({ haulm: "library", version: 1, records: [{ haulm: "revision", version: 7 }] }), "cannot be read here"],
  ]) {
    await write(page, text);
    await page.press("Sync");
    await page.sees(words);
    // Nor is it forgotten at the next look, nor written over at the next save.
    await page.run(() => dispatchEvent(new Event("focus")));
    await save(page, `After ${words}`);
    await page.go("#library");
    await page.press("Sync");
    await page.sees(words);
    assert.equal(await read(page), text);
  }
  await page.run(async () => (await navigator.storage.getDirectory()).removeEntry("shared.json"));
  await page.press("Sync");
  await page.sees("The file is not where it was.");
  await page.press("Disconnect");
  await page.byRole("button", "Use library file");
  await page.go("#library");
  await page.byRole("button", "Use library file");
});

journey("where the browser cannot keep a file up to date, none is offered", async (page) => {
  await page.command("Page.addScriptToEvaluateOnNewDocument", { source: "delete window.showSaveFilePicker" });
  await page.go("#library");
  await page.byRole("button", "Back up now");
  await page.seesNot("shared drive");
});

const drop = (page, name, text) =>
  page.run((name, text) => {
    const carried = new DataTransfer();
    carried.items.add(new File([text], name));
    for (const type of ["dragover", "drop"]) {
      const event = new DragEvent(type, { dataTransfer: carried, cancelable: true, bubbles: true });
      document.body.dispatchEvent(event);
      if (!event.defaultPrevented) throw new Error(`the browser would open the file: ${type}`);
    }
  }, name, text);

journey("a file dropped on any page goes where a chosen one goes, or is refused in words", async (page) => {
  const { bytes } = await page.download(() => page.more("Export"));
  await page.press("Line");
  await drop(page, "dropped.haulm.json", String(bytes));
  await page.sees("imported.");
  await page.byRole("heading", "Library");
  await drop(page, "picture.png", "PNG");
  await page.sees("is no JSON");
});

journey("the list goes out as a table in which nothing computes, and markup in a name is text on every page", async (page) => {
  const name = "=1+1<img src=x onerror=alert(1)>";
  await save(page, name);
  await page.run(() => document.querySelectorAll("details").forEach((fold) => (fold.open = true)));
  await page.type("Note", "@SUM(A1)");
  await page.press("Save");
  await page.press("Library");
  await page.click("#library-more-open");
  const { bytes } = await page.download(() => page.press("Export list (CSV)"));
  const [head, row] = String(bytes).split("\r\n");
  assert.ok(head.startsWith('\u{feff}"name","tags","note",'), head);
  assert.ok(row.startsWith(`"'${name}","","'@SUM(A1)",`), row);
  for (const where of ["Recipe", "Line", "Bench", "Compare", "Library"]) {
    await page.press(where);
    await page.until(() => page.run((where) => document.querySelector(`[aria-current="page"]`)?.textContent.includes(where), where));
    assert.equal(await page.run(() => document.querySelectorAll("img[src=x]").length), 0, where);
  }
});

journey("a file of 100 MB and one nested a hundred thousand deep are refused", { hash: "#library", timeout: 300_000 }, (page) =>
  withUselessFiles(async (files) => {
    for (const { path, words } of Object.values(files)) {
      await page.upload("#import", path);
      await page.sees(words, { wait: 60_000 });
    }
    assert.deepEqual(await list(page), []);
  }));
