// The browser's own file dialogs: each button that opens one is pressed.
//
// What a driver cannot do: press the buttons of a dialog. For a file input it sets the file as the dialog would, once the button was
// pressed and the input was asked. For the File System Access interface (`showOpenFilePicker`, `showSaveFilePicker`) it hears that the
// dialog opens, and that is all: that the button opens it, and that closing it harms nothing, is seen here, and what follows a choice in
// files.test.mjs, on handles of the page's own file system, which have the same interface.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fold, more } from "./bench.mjs";
import { journey } from "./harness.mjs";

/** From now on dialogs are not shown but told; gives what was told so far. */
async function dialogs(page) {
  // Says so where another engine runs.
  await page.command("Page.enable");
  const connection = await page.driver.createCDPConnection("page");
  const opened = [];
  connection._wsConnection.on("message", (text) => {
    const { method, params } = JSON.parse(text);
    if (method === "Page.fileChooserOpened") opened.push(params);
  });
  await connection.send("Page.enable", {});
  await connection.send("Page.setInterceptFileChooserDialog", { enabled: true });
  return opened;
}

/** Presses the button of a file input, and chooses a file once the input was asked for its dialog. */
async function choose(page, id, path) {
  await page.run((id) => document.getElementById(id).addEventListener("click", () => (window.asked = id), { once: true }), id);
  await page.click(`label[for="${id}"]`);
  await page.until(async () => assert.equal(await page.run(() => window.asked), id));
  await page.run(() => (window.asked = null));
  await page.upload(`#${id}`, path);
}

async function withFile(name, bytes, act) {
  const folder = await mkdtemp(join(tmpdir(), "haulm-dialog-"));
  try {
    const path = join(folder, name);
    await writeFile(path, bytes);
    await act(path);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

journey("the library's button opens the browser's dialog, and the file that is chosen there is taken in, twice as well", async (page) => {
  await page.type(await page.css("#recipe-name"), "From a dialog");
  const { bytes } = await page.download(() => page.more("Export"));
  await withFile("chosen.haulm.json", bytes, async (path) => {
    await page.press("Library");
    await dialogs(page);
    for (const time of [1, 2]) {
      await choose(page, "import", path);
      await page.until(async () => assert.equal(await page.run(() => document.querySelectorAll(".lines .name").length), time));
    }
  });
});

journey("the bench's button opens the browser's dialog, and the trial that is chosen there opens", { hash: "#bench" }, async (page) => {
  await page.type("Trial name", "From a dialog");
  await fold(page, "trials");
  const { bytes } = await page.download(() => more(page, "Export trial (JSON)"));
  await withFile("chosen.trial.haulm.json", bytes, async (path) => {
    await more(page, "New trial");
    await page.until(async () => assert.equal(await page.run(() => document.getElementById("bench-name").value), ""));
    await dialogs(page);
    await choose(page, "import-trial", path);
    await page.until(async () => assert.equal(await page.run(() => document.getElementById("bench-name").value), "From a dialog"));
  });
});

journey("the dialogs of the shared file open, and closing them changes nothing", { hash: "#library" }, async (page) => {
  const opened = await dialogs(page);
  for (const [time, name] of [[1, "Use library file"], [2, "New library file"]]) {
    await page.press(name);
    await page.until(() => opened.length === time);
    // No box of the page: a file of this kind is not set by a driver.
    assert.equal(opened.at(-1).backendNodeId, undefined);
    await page.byRole("button", "Use library file");
    assert.equal(await page.run(() => document.querySelector("[aria-labelledby=shared-library] [role=alert]").textContent), "");
  }
});
