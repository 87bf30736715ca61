// Keeps the app's files, so that it opens with no network. The build puts in the lists of files with their hashes: NAME, FILES, and
// LANGUAGES, of which only those are kept that somebody chose here.
// A newer list waits until the page asks for it: no file is swapped under somebody's work.
const NAME = "/*NAME*/";
const FILES = [/*FILES*/];
const LANGUAGES = [/*LANGUAGES*/];
// Other apps of the same address have their own.
const OURS = `haulm ${registration.scope} `;

const hex = (bytes) => [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, "0")).join("");

/**
 * A file that has its hash: a host that is just being updated must not leave a mixture here. What the page has fetched already is
 * not fetched once more.
 */
async function fetched(path, hash) {
  for (const cache of ["force-cache", "reload"]) {
    const response = await fetch(path, { cache });
    if (!response.ok) continue;
    const bytes = await response.arrayBuffer();
    if (hex(await crypto.subtle.digest("SHA-256", bytes)) !== hash) continue;
    // The bytes are unpacked by now. An answer of our own also forgets that a host sent it by a detour, which no page may be opened by.
    const headers = new Headers(response.headers);
    headers.delete("content-encoding");
    headers.delete("content-length");
    return new Response(bytes, { headers });
  }
  throw new Error(`${path} is not of this version`);
}

self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const chosen = [];
    for (const language of LANGUAGES) if (await caches.match(language[0])) chosen.push(language);
    const got = await Promise.all([...FILES, ...chosen].map(async ([path, hash]) => [path, await fetched(path, hash)]));
    const cache = await caches.open(OURS + NAME);
    for (const [path, response] of got) await cache.put(path, response);
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    for (const key of await caches.keys()) if (key.startsWith(OURS) && key !== OURS + NAME) await caches.delete(key);
    await clients.claim();
  })());
});

self.addEventListener("message", (event) => {
  if (event.data === "use") skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(registration.scope)) return;
  event.respondWith((async () => {
    const cache = await caches.open(OURS + NAME);
    const kept = await cache.match(request.url.split(/[?#]/, 1)[0] === registration.scope ? "index.html" : request, { ignoreSearch: true, ignoreVary: true });
    if (kept) return kept;
    const language = LANGUAGES.find(([path]) => request.url === registration.scope + path);
    if (!language) return fetch(request);
    const words = await fetched(...language);
    await cache.put(language[0], words.clone());
    return words;
  })());
});
