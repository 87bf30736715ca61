// Files that are no use and take long to find out: far too large, nested far too deep, of far too many records.

import { mkdtemp, open as openFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

const LIBRARY = '{"haulm":"library","version":1,"records":[';

/** Runs `act` with each file's path and the words that it is refused by: `{ huge, deep, wide }`. */
export async function withUselessFiles(act) {
  const folder = await mkdtemp(join(tmpdir(), "haulm-useless-"));
  const written = async (name, text) => {
    await writeFile(join(folder, name), text);
    return join(folder, name);
  };
  try {
    const huge = join(folder, "huge.json");
    const file = await openFile(huge, "w");
    await file.truncate(100_000_000);
    await file.close();
    await act({
      huge: { path: huge, words: "100000 kB" },
      deep: { path: await written("deep.json", LIBRARY + "[".repeat(100_000)), words: "nests brackets" },
      wide: { path: await written("wide.json", `${LIBRARY}${"{},".repeat(1_000_000)}{}]}`), words: "left out" },
    });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
