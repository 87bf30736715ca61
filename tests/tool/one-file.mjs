// Puts all of dist/ into one page that runs from a stick, by file://, with no server and no network: target/one-file/haulm.html.
// Style and script are inline there, so the page's policy names their hashes instead of 'self'; nothing can be fetched at all.

import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "../..");
const dist = (name) => readFile(join(root, "dist", name));
const hash = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
/** Exactly one place, or the build has changed and this must follow. */
const once = (text, pattern, into) => {
  if ([...text.matchAll(new RegExp(pattern, "g"))].length !== 1) throw new Error(`not once in the page: ${pattern}`);
  return text.replace(pattern, () => into);
};

const wasm = (await dist("haulm_bg.wasm")).toString("base64");
// The parts that a release build fetches later, and the other languages, are in the page, too, and answered from there.
const parts = {};
for (const name of await readdir(join(root, "dist"))) if (/_.*[.]wasm$|[.]ftl$/.test(name) && name !== "haulm_bg.wasm") parts[name] = (await dist(name)).toString("base64");
const glue = once(String(await dist("haulm.js")), /export \{[^}]*__wbg_init as default[^}]*\};?/, "").replace(
  /fetch\(new URL\(("\.\/\w+\.wasm"), import\.meta\.url\)\)/g,
  "part($1)",
);
const start = once(String(await dist("start.js")), /const \{ default: start \} = await import\("\.\/haulm\.js"\);/, "");
const script = `${glue}
const binary = "${wasm}";
const parts64 = ${JSON.stringify(parts)};
const bytes = (base64) => Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
const part = async (path) => new Response(bytes(parts64[path.slice(2)]), { headers: { "content-type": "application/wasm" } });
// The words of a language, which the program asks for itself.
window.fetch = part;
${once(start, /await start\(\);/, "await __wbg_init({ module_or_path: bytes(binary) });")}`;
const style = String(await dist("haulm.css"));
const icon = (await dist("icon.svg")).toString("base64");

let page = String(await dist("index.html"));
page = once(page, /<link [^>]*modulepreload[^>]*>/, "");
page = once(page, /<link [^>]*rel="?preload[^>]*>/, "");
page = once(page, /<link [^>]*manifest[^>]*>/, "");
page = once(page, /href="?\.\/icon\.svg"?/, `href="data:image/svg+xml;base64,${icon}"`);
page = once(page, /<link [^>]*stylesheet[^>]*>/, `<style>${style}</style>`);
page = once(page, /<script [^>]*src[^>]*><\/script>/, `<script type="module">${script}</script>`);
page = once(page, /script-src 'self' 'wasm-unsafe-eval'/, `script-src ${hash(script)} 'wasm-unsafe-eval'`);
page = once(page, /style-src 'self'/, `style-src ${hash(style)}`);
page = once(page, /img-src 'self' data:/, "img-src data:");
page = once(page, /connect-src 'self'; manifest-src 'self'; worker-src 'self'/, "connect-src 'none'");

const out = join(root, "target/one-file/haulm.html");
await mkdir(dirname(out), { recursive: true });
await writeFile(out, page);
console.log(`${out}: ${(page.length / 1000).toFixed(0)} kB`);
