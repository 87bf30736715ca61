// The records that never change, in a store that has room for all of them and says when a text has reached the disk: local storage
// has little room, and is written to disk by the browser only seconds later, so that a browser that is killed meanwhile would lose a
// save that was told as done.
const LAST = "haulm/last";
const RECORD = /^haulm\/(revision|system|trial|check)\//;
// Opens a database with one store; what it gives does something in that store, and tells the results once they are on the disk.
const database = (name, kept) => {
  const opened = new Promise((done, fail) => {
    const asked = indexedDB.open(name, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(kept);
    asked.onsuccess = () => {
      // A tab of a later version may need it otherwise.
      asked.result.onversionchange = () => asked.result.close();
      done(asked.result);
    };
    asked.onerror = () => fail(asked.error);
  });
  return async (mode, act, durability = "strict") => {
    const step = (await opened).transaction(kept, mode, { durability });
    const asked = act(step.objectStore(kept));
    // Not to wait for the next turn of the page.
    step.commit?.();
    await new Promise((done, fail) => {
      step.oncomplete = done;
      step.onerror = step.onabort = () => fail(step.error);
    });
    return asked.map(({ result }) => result);
  };
};
const records = database("haulm", "records");
// Keys of what is known to be on the disk, and the texts that local storage does not have.
const held = new Set();
const alone = new Map();
let there = true;
globalThis.haulmRecords = {
  there: () => there,
  holds: (key) => held.has(key),
  alone: (key) => alone.get(key),
  keysAlone: () => [...alone.keys()],
  sizeAlone: () => [...alone.values()].reduce((size, text) => size + text.length, 0),
  standIn: (key, text) => void alone.set(key, text),
  standBack: (key) => void alone.delete(key),
  /** Resolves when the text is on the disk, or has failed to get there. */
  put: (key, text) => records("readwrite", (store) => [store.put(text, key)]).then(() => held.add(key), () => {}),
  /** What is written over again and again, with the time: local storage has that of its own last one. */
  putOpen(key, text) {
    const at = Date.now();
    try {
      localStorage[LAST] = at;
    } catch {
      // Full: the copy then counts as the newer one, and says the same.
    }
    records("readwrite", (store) => [store.put({ at, text }, key)], "relaxed").catch(() => {});
  },
  /** Learns what is on the disk, reads what local storage does not have, and copies what is not on the disk. */
  async look() {
    const [all] = await records("readonly", (store) => [store.getAllKeys()]);
    const keys = all.filter((key) => RECORD.test(key));
    held.clear();
    for (const key of keys) held.add(key);
    const gone = keys.filter((key) => !Object.hasOwn(localStorage, key));
    const texts = await records("readonly", (store) => gone.map((key) => store.get(key)));
    gone.forEach((key, at) => alone.set(key, texts[at]));
    const here = Object.entries(localStorage).filter(([key]) => RECORD.test(key));
    const late = [...here, ...alone].filter(([key]) => !held.has(key));
    if (late.length) await records("readwrite", (store) => late.map(([key, text]) => store.put(text, key)));
    for (const [key] of late) held.add(key);
    return all.filter((key) => !RECORD.test(key));
  },
};
// What was typed in the seconds before the browser was killed never reached local storage.
const bringBack = async (keys) => {
  const kept = await records("readonly", (store) => keys.map((key) => store.get(key)));
  const last = Number(localStorage[LAST] ?? 0);
  kept.forEach(({ at, text }, which) => {
    try {
      if (at > last) localStorage[keys[which]] = text;
    } catch {
      // Full, and told when the app writes: what stands there stays.
    }
  });
};
// Where there is none, as in some private windows, local storage is all there is.
const looked = haulmRecords.look().then(bringBack).catch(() => (there = false));
// A library file on a shared drive, where the browser lets a page write to a file that was chosen once (File System Access). Others
// write to it, too: what stands there is looked at right before each write and right after it.
let handles = (mode, act) => (handles = database("haulm-file", "handles"))(mode, act);
const types = [{ accept: { "application/json": [".json"] } }];
const stamp = ({ lastModified, size }) => `${lastModified} ${size}`;
let file, seen;
globalThis.haulmFile = {
  can: () => "showSaveFilePicker" in globalThis,
  /** The name of the one chosen in an earlier visit. */
  async recall() {
    [file] = await handles("readonly", (store) => [store.get("library")]);
    return file?.name;
  },
  /** A dialog for a new file empties one that is there, so a file that is there is opened by another. */
  async choose(fresh, suggestedName) {
    const chosen = fresh ? await showSaveFilePicker({ suggestedName, types }) : (await showOpenFilePicker({ types }))[0];
    [file, seen] = [chosen, undefined];
    await handles("readwrite", (store) => [store.put(file, "library")]);
    return file.name;
  },
  async letGo() {
    file = undefined;
    await handles("readwrite", (store) => [store.delete("library")]);
  },
  /** Its text; undefined when it stands as last seen. Asks for leave only at somebody's press. */
  async look(ask, most) {
    const leave = { mode: "readwrite" };
    if ((await file.queryPermission(leave)) !== "granted" && !(ask && (await file.requestPermission(leave)) === "granted"))
      throw new DOMException("", "NotAllowedError");
    const there = await file.getFile();
    if (stamp(there) === seen) return undefined;
    if (there.size > most) throw new RangeError(there.size);
    const text = await there.text();
    seen = stamp(there);
    return text;
  },
  /** Whether the text stands there now; not when somebody wrote since the last look. */
  async write(text) {
    if (stamp(await file.getFile()) !== seen) return false;
    const out = await file.createWritable();
    await out.write(text);
    await out.close();
    const there = await file.getFile();
    if ((await there.text()) !== text) return false;
    seen = stamp(there);
    return true;
  },
};
// Starts the app and takes the first paint of index.html away. No inline script: the page's policy forbids it.
let running = false;
try {
  const { default: start } = await import("./haulm.js");
  // The program finds all records there; a store that does not answer does not keep it from starting.
  await Promise.race([looked, new Promise((done) => setTimeout(done, 2000))]);
  await start();
  document.getElementById("start").remove();
  running = true;
} catch (cause) {
  console.error(cause);
  document.getElementById("start-state").textContent =
    "Haulm did not start: a part of the program did not arrive, or this browser is too old to run it. " +
    "Reload the page; where that does not help, use a newer browser. What was saved in this browser is untouched.";
}
// A fault of the program itself stops it where it is. What is kept is offered as a file before anything else.
const stopped = ({ error, reason }) => {
  if (!((error ?? reason) instanceof WebAssembly.RuntimeError) || document.getElementById("stopped")) return;
  let texts = [...alone];
  try {
    texts.push(...Object.entries(localStorage));
  } catch {
    // Blocked: what stands elsewhere is offered all the same.
  }
  const kept = (part) => texts.filter(([key]) => key.startsWith(`haulm/${part}`)).flatMap(([, text]) => {
    try {
      return [JSON.parse(text)];
    } catch {
      // A damaged text would spoil the whole file.
      return [];
    }
  });
  const records = ["revision/", "system/", "trial/", "check/"].flatMap(kept);
  const text = JSON.stringify({ haulm: "library", version: 1, draft: kept("draft")[0] ?? null, records });
  const page = document.createElement("main");
  page.id = "stopped";
  const put = (tag, words, rest) => page.appendChild(Object.assign(document.createElement(tag), { textContent: words, ...rest }));
  put("h1", "Haulm has stopped");
  put("p", "A fault in the program, not in what you typed. All that was saved is kept, and the open recipe as of a moment ago.");
  put("a", "Save everything to a file", { href: URL.createObjectURL(new Blob([text], { type: "application/json" })), download: "haulm-library.json" });
  put("button", "Start again", { onclick: () => location.reload() }).focus();
  document.body.replaceChildren(page);
};
addEventListener("error", stopped);
addEventListener("unhandledrejection", stopped);
// Then keeps it for the times without a network. A page from a file cannot, and does not need to.
if (navigator.serviceWorker && location.protocol !== "file:") {
  try {
    const kept = await navigator.serviceWorker.register("offline.js", { updateViaCache: "none" });
    const use = () => {
      const coming = kept.waiting;
      // Another tab has taken it already.
      if (!coming) return location.reload();
      coming.addEventListener("statechange", () => coming.state === "activated" && location.reload());
      coming.postMessage("use");
    };
    const tell = () => {
      if (!kept.waiting || !navigator.serviceWorker.controller) return;
      // Where this version does not start, nothing is typed either.
      if (running) dispatchEvent(new Event("haulm-newer"));
      else use();
    };
    tell();
    const follow = (coming) => coming?.addEventListener("statechange", tell);
    follow(kept.installing);
    kept.addEventListener("updatefound", () => follow(kept.installing));
    addEventListener("haulm-use", use);
    // A tablet at the line may stay open for weeks.
    setInterval(() => kept.update().catch(() => {}), 3_600_000);
  } catch (cause) {
    // The app works without; it only will not open with no network.
    console.info("not kept for offline use", cause);
  }
}
