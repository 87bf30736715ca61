// A second copy of the records that never change, in a store that says when a text has reached the disk: the first one is written to
// disk by the browser only seconds later, and a browser that is killed meanwhile would lose a save that was told as done.
const RECORD = /^haulm\/(revision|system|trial|check)\//;
const copies = new Promise((done, fail) => {
  const asked = indexedDB.open("haulm", 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore("records");
  asked.onsuccess = () => done(asked.result);
  asked.onerror = () => fail(asked.error);
});
// Where there is none, as in some private windows, the first copy is all there is.
copies.catch(() => {});
const records = async (mode, act) => {
  const step = (await copies).transaction("records", mode, { durability: "strict" });
  const asked = act(step.objectStore("records"));
  // Not to wait for the next turn of the page.
  step.commit?.();
  await new Promise((done, fail) => {
    step.oncomplete = done;
    step.onerror = step.onabort = () => fail(step.error);
  });
  return asked?.result;
};
globalThis.haulmCopies = {
  /** Resolves when the text is on the disk. */
  put: (key, text) => records("readwrite", (store) => store.put(text, key)),
  /** Copies what has no second copy yet; gives keys and texts, in turn, of what has no first one. */
  async level() {
    const keys = new Set(await records("readonly", (store) => store.getAllKeys()));
    const alone = Object.keys(localStorage).filter((key) => RECORD.test(key) && !keys.has(key));
    if (alone.length) await records("readwrite", (store) => alone.forEach((key) => store.put(localStorage[key], key)));
    const lost = [];
    for (const key of keys) if (localStorage.getItem(key) === null) lost.push(key, await records("readonly", (store) => store.get(key)));
    return lost;
  },
};
// Starts the app and takes the first paint of index.html away. No inline script: the page's policy forbids it.
try {
  const { default: start } = await import("./haulm.js");
  await start();
  document.getElementById("start").remove();
} catch (cause) {
  console.error(cause);
  document.getElementById("start-state").textContent =
    "Haulm did not start: a part of the program did not arrive, or this browser is too old to run it. " +
    "Reload the page; where that does not help, use a newer browser. What was saved in this browser is untouched.";
}
// A fault of the program itself stops it where it is. What is kept is offered as a file before anything else.
const stopped = ({ error, reason }) => {
  if (!((error ?? reason) instanceof WebAssembly.RuntimeError) || document.getElementById("stopped")) return;
  const kept = (part) => {
    try {
      // A damaged text would spoil the whole file.
      return Object.keys(localStorage).filter((key) => key.startsWith(`haulm/${part}`)).flatMap((key) => {
        try {
          return [JSON.parse(localStorage[key])];
        } catch {
          return [];
        }
      });
    } catch {
      return [];
    }
  };
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
    const kept = await navigator.serviceWorker.register("offline.js");
    const tell = () => kept.waiting && navigator.serviceWorker.controller && dispatchEvent(new Event("haulm-newer"));
    tell();
    kept.addEventListener("updatefound", () => kept.installing?.addEventListener("statechange", tell));
    addEventListener("haulm-use", () => {
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
      kept.waiting?.postMessage("use");
    });
  } catch (cause) {
    // The app works without; it only will not open with no network.
    console.info("not kept for offline use", cause);
  }
}
