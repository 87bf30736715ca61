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
  const kept = (part) => Object.keys(localStorage).filter((key) => key.startsWith(`haulm/${part}`)).map((key) => localStorage[key]);
  const records = ["revision/", "system/", "trial/", "check/"].flatMap(kept);
  const text = `{"haulm":"library","version":1,"draft":${kept("draft")[0] ?? null},"records":[\n${records.join(",\n")}\n]}`;
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
