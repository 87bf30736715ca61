// Serves a folder at a sub-path of this machine's own address, the way a plain web server does: right types, brotli where asked for,
// nothing outside the folder.

import { createHash } from "node:crypto";
import { createServer } from "node:http";
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { extname, join, normalize, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { brotliCompress, constants } from "node:zlib";

const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

/** What ships is smaller; larger is a build for trying, which would take half a minute to pack well. */
const SHIPS = 4_000_000;

/** Packed files by their digest and quality. Packing all of the app takes ten seconds, and 33 processes of journeys serve the same files. */
const PACKED = fileURLToPath(new URL("../../target/packed", import.meta.url));
const compress = promisify(brotliCompress);
const packing = new Map();

/** Brotli at its best setting, as a host that compresses beforehand would send it. */
export function brotli(bytes, quality = 11) {
  const name = `${createHash("sha256").update(bytes).digest("hex")}.${quality}.br`;
  if (!packing.has(name)) packing.set(name, pack(name, bytes, quality));
  return packing.get(name);
}

async function pack(name, bytes, quality) {
  const path = join(PACKED, name);
  const kept = await readFile(path).catch(() => null);
  if (kept) return kept;
  const small = await compress(bytes, {
    params: { [constants.BROTLI_PARAM_QUALITY]: quality, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length },
  });
  await mkdir(PACKED, { recursive: true });
  // Another process may be at the same file: each writes its own, and the last one's takes the name whole.
  await writeFile(`${path}.${process.pid}`, small);
  await rename(`${path}.${process.pid}`, path);
  return small;
}

/** Serves `dir`; gives `{ origin, url, served, close }`, where `served` lists what was answered. */
export async function serve(dir, base = "/some/sub/path/") {
  const served = [];
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url, "http://any").pathname);
    const answer = (status, headers, body) => {
      served.push({ path, status, bytes: body.length, encoding: headers["content-encoding"] ?? "" });
      response.writeHead(status, { "cache-control": "no-cache", ...headers }).end(body);
    };
    const inside = normalize(path.slice(base.length) || "index.html");
    try {
      if (!path.startsWith(base) || inside.startsWith("..") || inside.startsWith(sep)) throw new Error("outside");
      const file = join(dir, inside);
      const bytes = await readFile(file);
      const headers = { "content-type": TYPES[extname(file)] ?? "application/octet-stream" };
      if (!/\bbr\b/.test(request.headers["accept-encoding"] ?? "")) return answer(200, headers, bytes);
      const small = await brotli(bytes, bytes.length > SHIPS ? 4 : 11);
      answer(200, { ...headers, "content-encoding": "br" }, small);
    } catch {
      answer(404, { "content-type": "text/plain" }, Buffer.from("not found"));
    }
  });
  await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
  const origin = `http://127.0.0.1:${server.address().port}`;
  const close = () =>
    new Promise((closed) => {
      server.close(closed);
      server.closeAllConnections();
    });
  return { origin, url: origin + base, served, close };
}
