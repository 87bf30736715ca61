// What a first visit downloads: every file of dist/, as it is and as brotli -11, against budgets.mjs; and what of it comes before the page can be used.

import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { against, DOWNLOAD, START } from "./budgets.mjs";
import { DIST } from "./harness.mjs";
import { brotli } from "./server.mjs";

const entries = await readdir(DIST, { recursive: true, withFileTypes: true });
const rows = [];
for (const entry of entries.filter((entry) => entry.isFile())) {
  const bytes = await readFile(join(entry.parentPath ?? entry.path, entry.name));
  rows.push([entry.name, bytes.length, (await brotli(bytes)).length]);
}
rows.sort((a, b) => b[2] - a[2]);
// A language other than English is fetched by who chose it, and by nobody else.
const languages = rows.filter(([name]) => name.endsWith(".ftl"));
languages.forEach((row) => rows.splice(rows.indexOf(row), 1));
rows.push(["total", ...[1, 2].map((i) => rows.reduce((sum, row) => sum + row[i], 0))]);

const line = (name, raw, small) => console.log(name.padEnd(28) + String(raw).padStart(12) + String(small).padStart(12));
line("file", "raw, B", "brotli, B");
for (const row of rows) line(...row);
for (const row of languages) line(...row);

const later = rows.filter(([name]) => /^(split|chunk)_/.test(name)).reduce((sum, row) => sum + row[2], 0);
for (const [budget, bytes] of [[DOWNLOAD, rows.at(-1)[2]], [START, rows.at(-1)[2] - later]]) {
  const { words, held } = against(budget, bytes / 1000);
  console.log(words);
  if (!held) process.exitCode = 1;
}
