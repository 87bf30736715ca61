// What a printed document says: its pages as text and their sizes, and the code that a camera would read off them. Needs Debian's
// poppler-utils (pdftotext, pdfinfo, pdftoppm), which tests/tool/setup.sh installs.

import { execFile } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import jsQR from "jsqr";

const run = promisify(execFile);
const MM = 25.4;

async function withFile(pdf, act) {
  const folder = await mkdtemp(join(tmpdir(), "haulm-pdf-"));
  try {
    const path = join(folder, "printed.pdf");
    await writeFile(path, pdf);
    return await act(path, folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The text of each page, spaces of any width as one plain space; lines in the order in which they are read. */
export const pages = (pdf) =>
  withFile(pdf, async (path) => {
    const { stdout } = await run("pdftotext", ["-layout", path, "-"]);
    const texts = stdout.split("\f").map((text) => text.replace(/\s+/g, " ").trim());
    // A form feed ends the last page too.
    if (texts.at(-1) === "") texts.pop();
    return texts;
  });

/** Width and height of each page in mm. */
export const sizes = (pdf) =>
  withFile(pdf, async (path) => {
    const { stdout } = await run("pdfinfo", ["-f", "1", "-l", "99", path]);
    return [...stdout.matchAll(/Page\s+\d+ size:\s+([\d.]+) x ([\d.]+) pts/g)].map(([, width, height]) => [width, height].map((side) => (Number(side) / 72) * MM));
  });

/** Pictures of all pages, `NAME-1.png` and so on in `folder`, for who wants to look at them. */
export const pictures = (pdf, folder, name, dpi = 80) => withFile(pdf, (path) => run("pdftoppm", ["-r", String(dpi), "-png", path, join(folder, name)]));

/** The QR code on the first page as a camera with 300 dots an inch reads it: `{ text, millimetres }`, the width of the code itself. */
export const code = (pdf, dpi = 300) =>
  withFile(pdf, async (path, folder) => {
    await run("pdftoppm", ["-r", String(dpi), "-gray", "-f", "1", "-l", "1", "-singlefile", path, join(folder, "page")]);
    const { width, height, grey } = picture(await readFile(join(folder, "page.pgm")));
    const colours = new Uint8ClampedArray(width * height * 4);
    grey.forEach((value, at) => colours.fill(value, at * 4, at * 4 + 3).fill(255, at * 4 + 3, at * 4 + 4));
    const found = jsQR(colours, width, height);
    if (!found) return null;
    const { topLeftCorner: from, topRightCorner: to } = found.location;
    return { text: found.data, millimetres: (Math.hypot(to.x - from.x, to.y - from.y) / dpi) * MM };
  });

/** A grey picture in the portable format: "P5", width, height, the brightest value, and a byte a dot. */
function picture(bytes) {
  const [head, width, height] = bytes.subarray(0, 64).toString("latin1").match(/^P5\s+(\d+)\s+(\d+)\s+255\s/);
  return { width: Number(width), height: Number(height), grey: bytes.subarray(head.length) };
}
