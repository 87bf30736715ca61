// Starts the app, which takes the first paint of index.html away. No inline script: the page's policy forbids it.
let running = false;
// This script speaks where the program cannot, so its words are here, in each language.
const WORDS = {
  en: {
    notStarted:
      "Haulm did not start: a part of the program did not arrive, or this browser is too old to run it. " +
      "Reload the page; where that does not help, use a newer browser. What was saved in this browser is untouched.",
    stopped: "Haulm has stopped",
    fault: "A fault in the program, not in what you typed. All that was saved is kept, and what was open as of a moment ago.",
    exportAll: "Export everything",
    again: "Start again",
  },
  de: {
    notStarted:
      "Haulm ist nicht gestartet: Ein Teil des Programms ist nicht angekommen, oder dieser Browser ist zu alt dafür. " +
      "Seite neu laden; wenn das nicht hilft, einen neueren Browser verwenden. Was in diesem Browser gespeichert ist, bleibt unberührt.",
    stopped: "Haulm ist stehen geblieben",
    fault: "Ein Fehler im Programm, nicht in den Eingaben. Alles Gespeicherte ist noch da, und was gerade offen war, bis auf den letzten Augenblick.",
    exportAll: "Alles exportieren",
    again: "Neu starten",
  },
};
const words = () => {
  let chosen;
  try {
    chosen = JSON.parse(localStorage.getItem("haulm/settings")).language;
  } catch {
    // No settings yet, or no storage.
  }
  return WORDS[chosen] ?? WORDS[navigator.language?.split("-")[0]] ?? WORDS.en;
};
// From here on this script says how the start goes.
document.getElementById("start-late").remove();
try {
  const { default: start } = await import("./haulm.js");
  await start();
  running = true;
} catch (cause) {
  console.error(cause);
  document.getElementById("start-state").textContent = words().notStarted;
}
// A fault of the program itself stops it where it is. Started afresh at #rescue it only puts everything that is kept into a file.
const stopped = ({ error, reason }) => {
  if (!((error ?? reason) instanceof WebAssembly.RuntimeError) || document.getElementById("stopped")) return;
  const page = document.createElement("main");
  page.id = "stopped";
  const put = (tag, words, rest) => page.appendChild(Object.assign(document.createElement(tag), { textContent: words, ...rest }));
  const again = (hash) => () => {
    history.replaceState(null, "", hash);
    location.reload();
  };
  const { stopped: title, fault, exportAll, again: anew } = words();
  put("h1", title);
  put("p", fault);
  put("button", exportAll, { onclick: again("#rescue") });
  put("button", anew, { onclick: again("#recipe") }).focus();
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
    // The words of another language came before the worker was there to keep them: they are asked for once more, through it.
    navigator.serviceWorker.addEventListener("controllerchange", () => {
      const language = document.documentElement.lang;
      if (language !== "en") fetch(`./${language}.ftl`).catch(() => {});
    }, { once: true });
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
